//! What changed since a measure was last taken, and whether that is more than a tape varies by itself.

use super::published as p;
use super::tape::{LengthKind, Measure, TapeTool};
use crate::animal::{Animal, Kind};
use crate::sources::Published;
use crate::units::{Length, LocalDate};

/// A measure as it was last taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Earlier {
    /// The measure.
    pub measure: Measure,
    /// What it was, the mean of its readings.
    pub length: Length,
    /// Which length, of a body length.
    pub kind: Option<LengthKind>,
    /// With what.
    pub tool: TapeTool,
    /// How many readings are in it.
    pub takes: usize,
    /// On which day.
    pub day: LocalDate,
}

/// A change since last time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Change {
    /// The measure.
    pub measure: Measure,
    /// By how much it grew; less than nothing when it shrank.
    pub by: Length,
    /// How far two such readings differ by themselves, four times in five, either way.
    pub noise: Length,
    /// The day of the earlier reading.
    pub since: LocalDate,
    /// Both were taken with the same thing.
    pub same_tool: bool,
}

impl Change {
    /// More than the tape varies by itself.
    pub fn is_more_than_noise(&self) -> bool {
        self.noise.to_cm() < self.by.to_cm().abs()
    }
}

impl Measure {
    /// How far one reading is out by itself, in percent of the measure.
    pub const fn noise(self) -> &'static Published<f64> {
        match self {
            Self::HeartGirth | Self::Height => &p::NOISE_GIRTH,
            Self::UmbilicalGirth => &p::NOISE_BELLY,
            Self::Neck | Self::Length => &p::NOISE_LENGTH,
        }
    }
}

/// The change of a measure since it was last taken. The noise of each is that of one reading over the root of their
/// count, and both add as squares. `None` for two lengths of different kinds, which are never compared.
pub fn change(now: &Earlier, before: &Earlier) -> Option<Change> {
    if now.measure != before.measure || now.kind != before.kind {
        return None;
    }
    let noise = |of: &Earlier| {
        let one = of.length.to_cm() * of.measure.noise().value / 100.0;
        one / (of.takes.max(1) as f64).sqrt()
    };
    Some(Change {
        measure: now.measure,
        by: now.length - before.length,
        noise: Length::cm(noise(now).hypot(noise(before))),
        since: before.day,
        same_tool: now.tool == before.tool,
    })
}

/// What is known of a neck beside the height of its animal.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NeckLine {
    /// A pony, over or under the line above which ponies later foundered.
    Pony {
        /// The line.
        line: f64,
        /// It is over it.
        over: bool,
    },
    /// No line for this kind could be confirmed.
    NotConfirmed,
}

/// The neck as a part of the height, and what is known beside it. A thick neck is one sign among several.
pub fn neck_to_height(animal: &Animal, neck: Length, height: Length) -> (f64, NeckLine) {
    let ratio = neck / height;
    let line = match animal.kind {
        Kind::Pony | Kind::Miniature => NeckLine::Pony {
            line: p::NECK_TO_HEIGHT_PONY.value,
            over: p::NECK_TO_HEIGHT_PONY.value < ratio,
        },
        Kind::Horse | Kind::Donkey | Kind::Mule => NeckLine::NotConfirmed,
    };
    (ratio, line)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::assess::choose::tests::{animal, by_tape};
    use crate::assess::{LengthKind, Tape};

    fn earlier(measure: Measure, cm: f64, takes: usize) -> Earlier {
        Earlier {
            measure,
            length: Length::cm(cm),
            kind: None,
            tool: TapeTool::Tape,
            takes,
            day: "2026-04-28".parse().unwrap(),
        }
    }

    #[test]
    fn a_centimetre_of_girth_is_noise_and_three_are_not() {
        let girth = |cm, takes| earlier(Measure::HeartGirth, cm, takes);
        let of = |now, before| change(&now, &before).unwrap();
        assert!(!of(girth(151.0, 1), girth(152.0, 1)).is_more_than_noise());
        assert!(!of(girth(150.0, 1), girth(152.0, 1)).is_more_than_noise());
        let three = of(girth(149.0, 1), girth(152.0, 1));
        assert!(three.is_more_than_noise());
        assert!((three.noise.to_cm() - 2.128).abs() < 0.01);
        // Three readings each halve the doubt, nearly.
        assert!(of(girth(150.0, 3), girth(152.0, 3)).is_more_than_noise());
    }

    #[test]
    fn lengths_of_two_kinds_are_not_compared() {
        let length = |kind| Earlier {
            kind: Some(kind),
            ..earlier(Measure::Length, 130.0, 1)
        };
        assert_eq!(
            change(&length(LengthKind::Wrap), &length(LengthKind::Straight)),
            None
        );
        assert!(change(&length(LengthKind::Wrap), &length(LengthKind::Wrap)).is_some());
    }

    #[test]
    fn one_centimetre_of_girth_is_one_to_two_percent_of_weight() {
        let cob = animal(Kind::Horse, None);
        let weight = |girth: f64| {
            let tape = Tape {
                length: Some((Length::cm(120.0), LengthKind::Wrap)),
                ..Tape::girth(Length::cm(girth))
            };
            by_tape(&cob, tape).unwrap().0.value.to_kg()
        };
        let (low, high) = p::CM_OF_GIRTH.value;
        for girth in [105.0, 130.0, 150.0, 180.0, 198.0] {
            let percent = 100.0 * (weight(girth + 1.0) / weight(girth) - 1.0);
            assert!(low <= percent && percent <= high, "{girth}: {percent}");
        }
    }

    #[test]
    fn a_pony_has_a_line_for_its_neck_and_a_horse_has_none() {
        let pony = animal(Kind::Pony, None);
        let (ratio, line) = neck_to_height(&pony, Length::cm(93.0), Length::cm(128.0));
        assert!((ratio - 0.7266).abs() < 1e-3);
        assert_eq!(
            line,
            NeckLine::Pony {
                line: 0.71,
                over: true
            }
        );
        let (_, line) = neck_to_height(&pony, Length::cm(90.0), Length::cm(128.0));
        assert!(matches!(line, NeckLine::Pony { over: false, .. }));
        for kind in [Kind::Horse, Kind::Donkey, Kind::Mule] {
            let (_, line) =
                neck_to_height(&animal(kind, None), Length::cm(120.0), Length::cm(150.0));
            assert_eq!(line, NeckLine::NotConfirmed);
        }
    }
}
