//! What was measured of an animal before: what a new reading is held against, and the measures over time.

use crate::shelf::Shelf;
use tussock_core::animal::Animal;
use tussock_core::assess::{
    Before, Change, Earlier, Measure, NeckLine, Reading, change, frame_holds, neck_to_height,
};
use tussock_core::log::bodies::{ReadingV1, WeightV1};
use tussock_core::log::{Body, Kind, Record};
use tussock_core::units::{BodyMass, Instant, Length, LocalDate, Zone};

/// The measures, in the order in which they are shown.
pub const ALL: [Measure; 5] = [
    Measure::HeartGirth,
    Measure::UmbilicalGirth,
    Measure::Neck,
    Measure::Length,
    Measure::Height,
];

/// The weighings of an animal up to now, the oldest first, each with its local day; what cannot be read is left out.
fn weighings<'a>(
    shelf: &'a Shelf,
    animal: &Animal,
    now: Instant,
    zone: &impl Zone,
) -> Vec<(LocalDate, &'a Record, WeightV1)> {
    let mut found: Vec<(LocalDate, &Record, WeightV1)> = shelf
        .records()
        .filter(|record| {
            record.kind == Kind::Weight
                && record.subject.id() == animal.id.as_str()
                && record.at <= now
        })
        .filter_map(|record| match Body::read(record) {
            Ok(Body::Weight(body)) => Some((zone.to_local(record.at).date, record, body)),
            _ => None,
        })
        .collect();
    found.sort_by_key(|(_, record, _)| (record.at, record.stamp));
    found
}

/// What a reading of now is held against; `weight` is the one that holds.
pub fn before(
    shelf: &Shelf,
    animal: &Animal,
    weight: Option<BodyMass>,
    now: Instant,
    zone: &impl Zone,
) -> Before {
    let mut before = Before {
        weight,
        ..Before::default()
    };
    for (day, record, body) in weighings(shelf, animal, now, zone) {
        match body.reading(&record.id) {
            Ok(Reading::Tape(read)) => {
                let whole = match before.tape {
                    Some((taken_on, earlier)) if frame_holds(animal, taken_on, day) => {
                        read.with_frame_of(&earlier)
                    }
                    _ => read,
                };
                before.tape = Some((day, whole));
            }
            Ok(Reading::Scale(scale)) => before.scale = Some((day, scale)),
            Err(_) => continue,
        }
        if let ReadingV1::Tape { tape } = &body.reading {
            for earlier in ALL.iter().filter_map(|measure| tape.earlier(*measure, day)) {
                before
                    .measures
                    .retain(|held| held.measure != earlier.measure);
                before.measures.push(earlier);
            }
        }
    }
    before
}

/// The measures of one tape, and what changed since each was taken before it.
#[derive(Clone, Debug, PartialEq)]
pub struct Taped {
    /// The day.
    pub day: LocalDate,
    /// Each measure that was taken, with what changed since the time before; `None` for a first one.
    pub measures: Vec<(Earlier, Option<Change>)>,
    /// The neck as a part of the height, when the neck was taken and a height is known.
    pub neck: Option<(f64, NeckLine)>,
}

/// The tapes of an animal, the newest first.
pub fn history(shelf: &Shelf, animal: &Animal, now: Instant, zone: &impl Zone) -> Vec<Taped> {
    let mut last: Vec<Earlier> = Vec::new();
    let mut found = Vec::new();
    for (day, _, body) in weighings(shelf, animal, now, zone) {
        let ReadingV1::Tape { tape } = &body.reading else {
            continue;
        };
        let mut measures = Vec::new();
        for taken in ALL.iter().filter_map(|measure| tape.earlier(*measure, day)) {
            let before = last.iter().find(|held| held.measure == taken.measure);
            measures.push((taken, before.and_then(|before| change(&taken, before))));
            last.retain(|held| held.measure != taken.measure);
            last.push(taken);
        }
        let known = |measure: Measure| -> Option<Length> {
            last.iter()
                .find(|held| held.measure == measure)
                .map(|held| held.length)
        };
        let neck = tape
            .mean(Measure::Neck)
            .zip(known(Measure::Height).or(animal.height))
            .map(|(neck, height)| neck_to_height(animal, neck, height));
        found.push(Taped {
            day,
            measures,
            neck,
        });
    }
    found.reverse();
    found
}

/// The change of the belly girth over the tapes, from the first to the last that has one: what follows weight and inner fat.
pub fn belly_since_first(history: &[Taped]) -> Option<Change> {
    let of = |taped: &Taped| {
        taped
            .measures
            .iter()
            .map(|(earlier, _)| *earlier)
            .find(|earlier| earlier.measure == Measure::UmbilicalGirth)
    };
    let newest = history.iter().find_map(of)?;
    let oldest = history.iter().rev().find_map(of)?;
    (oldest.day < newest.day)
        .then(|| change(&newest, &oldest))
        .flatten()
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::acts::{Act, New};
    use crate::forms::weight::Filled;
    use crate::views::test_yard::{add, animal, at, shelf_of, written, zone};
    use tussock_core::assess::LengthKind;

    /// A yard in which Moss was taped on days of May, each tape with its fields.
    pub(crate) fn taped(tapes: &[(i64, &[(&str, &str)])]) -> (Shelf, Animal) {
        let moss = animal("moss");
        let mut shelf = shelf_of(&[add("moss", &moss, -60)]);
        for (index, (day, fields)) in tapes.iter().enumerate() {
            let text = |field: &str| {
                fields
                    .iter()
                    .find(|(name, _)| *name == field)
                    .map(|(_, text)| (*text).to_owned())
                    .unwrap_or_default()
            };
            let filled = Filled {
                animal: &moss,
                before: &before(&shelf, &moss, None, at(*day), &zone()),
                today: zone().to_local(at(*day)).date,
                text: &text,
            };
            let act = filled.act(&format!("w{index}"));
            let Ok(Act::Add(new)) = act else {
                panic!("{fields:?} is saved: {act:?}");
            };
            let act = Act::Add(New {
                at: Some(at(*day)),
                ..new
            });
            shelf = written(&shelf, &act, at(*day));
        }
        (shelf, moss)
    }

    #[test]
    fn each_measure_is_held_against_the_last_time_it_was_taken() {
        let (shelf, moss) = taped(&[
            (-14, &[("girth", "152"), ("length", "134"), ("neck", "90")]),
            (-7, &[("girth", "151"), ("belly", "168"), ("belly2", "169")]),
        ]);
        let before = before(&shelf, &moss, None, at(0), &zone());
        let cm = |measure| before.of(measure).map(|earlier| earlier.length.to_cm());
        assert_eq!(cm(Measure::HeartGirth), Some(151.0));
        assert_eq!(cm(Measure::UmbilicalGirth), Some(168.5));
        assert_eq!(before.of(Measure::UmbilicalGirth).unwrap().takes, 2);
        assert_eq!(cm(Measure::Neck), Some(90.0));
        assert_eq!(
            before.of(Measure::Length).unwrap().kind,
            Some(LengthKind::Wrap)
        );
        // The frame of the first tape stands for the second.
        let (_, tape) = before.tape.unwrap();
        assert_eq!(tape.length.map(|(length, _)| length.to_cm()), Some(134.0));
        assert_eq!(tape.heart_girth.to_cm(), 151.0);
        // Of another day, and of another animal, nothing is known.
        assert_eq!(
            super::before(&shelf, &moss, None, at(-20), &zone()),
            Before::default()
        );
        assert_eq!(
            super::before(&shelf, &animal("fern"), None, at(0), &zone()),
            Before::default()
        );
    }

    #[test]
    fn a_weekly_girth_is_weighed_with_the_length_of_the_tape_before_it() {
        let (shelf, moss) = taped(&[
            (-7, &[("girth", "152"), ("length", "134")]),
            (0, &[("girth", "151")]),
        ]);
        let kg = |day| {
            let beside = crate::views::horses::beside(&shelf, &moss.id, at(day), &zone());
            beside.unwrap().weight.unwrap().weight.value.to_kg()
        };
        assert!((kg(-7) - 152.0_f64.powi(2) * 134.0 / 11_900.0).abs() < 1e-6);
        assert!((kg(0) - 151.0_f64.powi(2) * 134.0 / 11_900.0).abs() < 1e-6);
    }

    #[test]
    fn measures_over_time_say_what_changed_and_the_belly_since_the_first() {
        let (shelf, moss) = taped(&[
            (
                -28,
                &[
                    ("girth", "152"),
                    ("belly", "172"),
                    ("neck", "92"),
                    ("height", "124"),
                ],
            ),
            (-14, &[("girth", "151.5"), ("belly", "170")]),
            (0, &[("girth", "151"), ("belly", "167"), ("neck", "88")]),
        ]);
        let history = history(&shelf, &moss, at(0), &zone());
        let [newest, middle, oldest] = history.as_slice() else {
            panic!("three tapes: {history:?}");
        };
        let neck = newest.neck.unwrap().0;
        assert!((neck - 88.0 / 124.0).abs() < 1e-9);
        let over =
            |taped: &Taped| matches!(taped.neck, Some((_, NeckLine::Pony { over: true, .. })));
        assert!(!over(newest) && over(oldest) && middle.neck.is_none());
        let change = newest
            .measures
            .iter()
            .find_map(|(earlier, change)| change.filter(|_| earlier.measure == Measure::Neck))
            .unwrap();
        assert!((change.by.to_cm() + 4.0).abs() < 1e-9);
        assert!(oldest.measures.iter().all(|(_, change)| change.is_none()));
        let belly = belly_since_first(&history).unwrap();
        assert!((belly.by.to_cm() + 5.0).abs() < 1e-9 && belly.is_more_than_noise());
        assert_eq!(belly_since_first(&history[1..2]), None);
    }
}
