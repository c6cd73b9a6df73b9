//! Heights of a paddock one after another, or the clicks of a plate.

use crate::acts::{Act, New};
use tussock_core::animal::{Answer, PaddockId};
use tussock_core::graze::GrazeError;
use tussock_core::graze::sward::published::{CLICKS, HEIGHT, READINGS_ASKED};
use tussock_core::graze::sward::{Readings, mean_clicks, readings};
use tussock_core::log::bodies::base::{Count, Millimetres};
use tussock_core::log::bodies::{PlateV1, SwardV1};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{LengthUnit, ParseError, length, number};
use tussock_core::units::{Length, OutOfRange};

/// In what is read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// A ruler, in centimetres.
    Cm,
    /// A ruler, in inches.
    Inch,
    /// A rising plate, in its clicks.
    Clicks,
}

/// The ways with the words that stand in a draft.
pub const WAYS: [(Way, &str); 3] = [(Way::Cm, "cm"), (Way::Inch, "in"), (Way::Clicks, "clicks")];

/// Why a reading is not taken.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// It cannot be read, or is none that is believed.
    Parse(ParseError),
    /// A counter says whole clicks.
    NotWhole,
    /// Nothing was read yet.
    NothingRead,
    /// It cannot be stored.
    Log(LogError),
}

impl From<OutOfRange> for Wrong {
    fn from(error: OutOfRange) -> Self {
        Self::Parse(ParseError::OutOfRange(error))
    }
}

/// What was read so far, in the way that it is read.
#[derive(Clone, Debug, PartialEq)]
pub struct Taken {
    /// In what.
    pub way: Way,
    /// Each reading as it was typed.
    pub texts: Vec<String>,
}

/// What the readings come to.
#[derive(Clone, Debug, PartialEq)]
pub enum Summed {
    /// Heights.
    Heights(Readings),
    /// Clicks of a plate: their mean, and how many.
    Clicks {
        /// The mean.
        mean: f64,
        /// How many.
        count: usize,
    },
}

impl Taken {
    /// What a draft holds.
    pub fn of(way: Way, held: &str) -> Self {
        Self {
            way,
            texts: held.split_whitespace().map(str::to_owned).collect(),
        }
    }

    /// As it stands in a draft.
    pub fn text(&self) -> String {
        self.texts.join(" ")
    }

    /// How many are still to be read; none where there are enough.
    pub fn left(&self) -> usize {
        READINGS_ASKED.saturating_sub(self.texts.len())
    }

    /// With one more reading.
    ///
    /// # Errors
    /// What cannot be read, or is none that is believed.
    pub fn with(&self, typed: &str) -> Result<Self, Wrong> {
        let typed = typed.trim();
        match self.way {
            Way::Cm | Way::Inch => {
                self.height(typed)?;
            }
            Way::Clicks => {
                clicks(typed)?;
            }
        }
        let mut next = self.clone();
        // No space stands within a number, so that spaces part them.
        next.texts.push(typed.split_whitespace().collect());
        Ok(next)
    }

    /// Without the last.
    #[must_use]
    pub fn taken_back(&self) -> Self {
        let mut before = self.clone();
        before.texts.pop();
        before
    }

    fn height(&self, typed: &str) -> Result<Length, Wrong> {
        let bare = match self.way {
            Way::Inch => LengthUnit::Inch,
            Way::Cm | Way::Clicks => LengthUnit::Cm,
        };
        let height = length(typed, bare).map_err(Wrong::Parse)?;
        HEIGHT.check(height.to_cm())?;
        Ok(height)
    }

    fn heights(&self) -> Result<Vec<Length>, Wrong> {
        self.texts.iter().map(|text| self.height(text)).collect()
    }

    fn clicks(&self) -> Result<Vec<i64>, Wrong> {
        self.texts.iter().map(|text| clicks(text)).collect()
    }

    /// What they come to; `None` while there are none.
    pub fn summed(&self) -> Option<Summed> {
        match self.way {
            Way::Cm | Way::Inch => {
                let read: Result<_, GrazeError> = readings(&self.heights().ok()?);
                Some(Summed::Heights(read.ok()?.0))
            }
            Way::Clicks => {
                let clicks = self.clicks().ok()?;
                Some(Summed::Clicks {
                    mean: mean_clicks(&clicks)?,
                    count: clicks.len(),
                })
            }
        }
    }

    /// The act that writes all of them as one look at the paddock.
    ///
    /// # Errors
    /// None was read, or one that cannot be stored.
    pub fn act(&self, paddock: &PaddockId, id: &str) -> Result<Act, Wrong> {
        if self.texts.is_empty() {
            return Err(Wrong::NothingRead);
        }
        let mut body = SwardV1 {
            leaf: None,
            seeding: Answer::NotKnown,
            heights_mm: Vec::new(),
            plate: None,
            note: None,
        };
        match self.way {
            Way::Cm | Way::Inch => {
                let heights = self.heights()?.into_iter().map(Millimetres::of);
                body.heights_mm = heights.collect::<Result<_, _>>().map_err(Wrong::Log)?;
            }
            Way::Clicks => {
                let clicks = self.clicks()?.into_iter().map(Count::new);
                body.plate = Some(PlateV1 {
                    clicks: clicks.collect::<Result<_, _>>().map_err(Wrong::Log)?,
                });
            }
        }
        Ok(Act::Add(New {
            id: RecordId(id.to_owned()),
            subject: Subject::paddock(paddock),
            at: None,
            known: Known::Seen,
            body: Body::Sward(body),
        }))
    }
}

fn clicks(typed: &str) -> Result<i64, Wrong> {
    let read = CLICKS.check(number(typed).map_err(Wrong::Parse)?)?;
    if 0.0 < read.fract() {
        return Err(Wrong::NotWhole);
    }
    #[allow(
        clippy::cast_possible_truncation,
        reason = "a whole number of at most 60"
    )]
    Ok(read as i64)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn all(way: Way, typed: &[&str]) -> Taken {
        typed.iter().fold(Taken::of(way, ""), |taken, typed| {
            taken.with(typed).unwrap()
        })
    }

    fn body(taken: &Taken) -> SwardV1 {
        match taken.act(&PaddockId("top".into()), "read") {
            Ok(Act::Add(New {
                body: Body::Sward(body),
                ..
            })) => body,
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn heights_are_taken_one_by_one_and_the_last_is_taken_back() {
        let taken = all(Way::Cm, &["8", "10,5", "9"]);
        assert_eq!(taken.left(), 27);
        assert_eq!(Taken::of(Way::Cm, &taken.text()), taken);
        let Some(Summed::Heights(read)) = taken.taken_back().summed() else {
            panic!("no mean");
        };
        assert_eq!(read.count, 2);
        assert!((read.mean.to_cm() - 9.25).abs() < 1e-9);
        let stored: Vec<i64> = body(&taken).heights_mm.iter().map(|mm| mm.get()).collect();
        assert_eq!(stored, [80, 105, 90]);
    }

    #[test]
    fn inches_and_clicks_are_stored_as_what_they_are() {
        assert_eq!(body(&all(Way::Inch, &["4"])).heights_mm[0].get(), 102);
        let plate = all(Way::Clicks, &["18", "22"]);
        assert_eq!(
            plate.summed(),
            Some(Summed::Clicks {
                mean: 20.0,
                count: 2
            })
        );
        let stored = body(&plate);
        assert!(stored.heights_mm.is_empty());
        assert_eq!(stored.plate.unwrap().clicks.len(), 2);
    }

    #[test]
    fn what_is_no_reading_is_not_taken() {
        let none = Taken::of(Way::Cm, "");
        assert!(matches!(none.with("tall"), Err(Wrong::Parse(_))));
        assert!(matches!(none.with("900"), Err(Wrong::Parse(_))));
        let plate = Taken::of(Way::Clicks, "");
        assert_eq!(plate.with("12.5"), Err(Wrong::NotWhole));
        assert_eq!(none.summed(), None);
        let nothing = none.act(&PaddockId("top".into()), "read");
        assert_eq!(nothing, Err(Wrong::NothingRead));
    }
}
