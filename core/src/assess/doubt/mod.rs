//! What is asked back before a reading is kept. Nothing is refused here: a person may say that it is right.

mod jump;
mod scale;
mod tape;
#[cfg(test)]
mod tests;

use super::age::{AgeClass, age_class, under_three};
use super::published as p;
use super::taken::{Before, Taken};
use super::takes::Agreement;
use super::tape::{LengthKind, Measure};
use crate::animal::{Animal, Kind};
use crate::units::{BodyMass, Length, LocalDate};
use chrono::Days;

/// A weight that differs from the last.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Jump {
    /// By so much of the last weight; less than nothing when it fell.
    pub part: f64,
    /// Days since then.
    pub days: i64,
}

/// A question about what was taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Doubt {
    /// Not usual as it was read, and usual in inches.
    Inches {
        /// The measure.
        measure: Measure,
        /// As it was read.
        read: Length,
        /// The same figure in inches.
        as_inches: Length,
    },
    /// Not usual as it was read, and usual in pounds.
    Pounds {
        /// As it was read.
        read: BodyMass,
        /// The same figure in pounds.
        as_pounds: BodyMass,
    },
    /// A measure that is not usual for this animal.
    UnusualMeasure {
        /// The measure.
        measure: Measure,
        /// What was read.
        read: Length,
    },
    /// A weight that is not usual for this animal.
    UnusualWeight {
        /// What was read.
        read: BodyMass,
    },
    /// The length is rather one that starts elsewhere.
    OtherLength {
        /// What it was taken for.
        taken: LengthKind,
        /// What it looks like.
        looks_like: LengthKind,
        /// The length as a part of the girth.
        length_to_girth: f64,
    },
    /// A horse under 112 cm.
    SmallHorse {
        /// Its height.
        height: Length,
    },
    /// Two readings of a measure lie apart.
    Apart(Measure),
    /// Of three readings of a measure one lies away from the others.
    Odd {
        /// The measure.
        measure: Measure,
        /// Which, by its place.
        which: usize,
        /// What it was.
        read: Length,
    },
    /// Of three readings of a measure no two lie together.
    Scattered(Measure),
    /// Two or three readings of the scale lie apart.
    ScaleApart,
    /// A length or height of a grown animal that differs from the last: bone does not change.
    FrameDiffers {
        /// The measure.
        measure: Measure,
        /// What it was.
        before: Length,
        /// What it is.
        now: Length,
    },
    /// Much lighter than last time, read once: measure again now.
    Fell(Jump),
    /// Much heavier than last time.
    Rose(Jump),
}

/// What a question is about, as it is stored beside its answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DoubtKind {
    /// Inches.
    Inches,
    /// Pounds.
    Pounds,
    /// Not usual.
    Unusual,
    /// Another length.
    OtherLength,
    /// A horse under 112 cm.
    SmallHorse,
    /// Readings that lie apart.
    Apart,
    /// An odd reading.
    Odd,
    /// A length or height that differs from the last.
    FrameDiffers,
    /// Lighter than last time.
    Fell,
    /// Heavier than last time.
    Rose,
}

/// What a person answered.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DoubtAnswer {
    /// It is right.
    Right,
    /// It was measured again.
    Again,
    /// It was in the other unit.
    OtherUnit,
    /// That reading was left out of the mean.
    LeftOut,
}

/// A question and what was answered to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Answered {
    /// The question.
    pub doubt: DoubtKind,
    /// The measure, where it was about one.
    pub measure: Option<Measure>,
    /// The answer.
    pub answer: DoubtAnswer,
}

impl Doubt {
    /// What it is about.
    pub const fn kind(&self) -> DoubtKind {
        match self {
            Self::Inches { .. } => DoubtKind::Inches,
            Self::Pounds { .. } => DoubtKind::Pounds,
            Self::UnusualMeasure { .. } | Self::UnusualWeight { .. } => DoubtKind::Unusual,
            Self::OtherLength { .. } => DoubtKind::OtherLength,
            Self::SmallHorse { .. } => DoubtKind::SmallHorse,
            Self::Apart(_) | Self::Scattered(_) | Self::ScaleApart => DoubtKind::Apart,
            Self::Odd { .. } => DoubtKind::Odd,
            Self::FrameDiffers { .. } => DoubtKind::FrameDiffers,
            Self::Fell(_) => DoubtKind::Fell,
            Self::Rose(_) => DoubtKind::Rose,
        }
    }

    /// The measure it is about; `None` for the weight. A weight by tape that jumped is about the heart girth.
    pub const fn measure(&self, by_tape: bool) -> Option<Measure> {
        match self {
            Self::Inches { measure, .. }
            | Self::UnusualMeasure { measure, .. }
            | Self::Apart(measure)
            | Self::Odd { measure, .. }
            | Self::Scattered(measure)
            | Self::FrameDiffers { measure, .. } => Some(*measure),
            Self::OtherLength { .. } => Some(Measure::Length),
            Self::SmallHorse { .. } => Some(Measure::Height),
            Self::Fell(_) | Self::Rose(_) if by_tape => Some(Measure::HeartGirth),
            Self::Fell(_)
            | Self::Rose(_)
            | Self::Pounds { .. }
            | Self::UnusualWeight { .. }
            | Self::ScaleApart => None,
        }
    }
}

/// What is asked back of a reading.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Doubts {
    /// The questions.
    pub asked: Vec<Doubt>,
    /// It fell over the line, and two readings or more say so: no question any more.
    pub confirmed: Option<Jump>,
}

/// What is asked back of what was taken on a day.
///
/// Of an animal that grows nothing is usual, so only readings that lie apart are asked back. One that is in foal may
/// grow heavier.
pub fn doubts(animal: &Animal, taken: &Taken, before: &Before, day: LocalDate) -> Doubts {
    let mut found = Doubts::default();
    let grown = is_grown(animal, day);
    match taken {
        Taken::Tape(tape) => {
            for measured in &tape.measures {
                tape::apart(measured, &mut found.asked);
            }
            if grown {
                tape::ask(animal, tape, before, day, &mut found);
            }
        }
        Taken::Scale(scale) => {
            if scale.takes.agreement(&p::TAKES_APART_SCALE) != Agreement::Together {
                found.asked.push(Doubt::ScaleApart);
            }
            if grown {
                scale::ask(animal, scale, before, day, &mut found);
            }
        }
    }
    found
}

fn is_grown(animal: &Animal, day: LocalDate) -> bool {
    match animal.kind {
        Kind::Donkey => under_three(animal, day) == Ok(false),
        Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule => matches!(
            age_class(animal, day),
            Ok(AgeClass::Grown | AgeClass::NotKnown)
        ),
    }
}

/// Whether the frame of a tape may stand in for what was not taken on a day: of a grown animal, for a year.
pub fn frame_holds(animal: &Animal, taken_on: LocalDate, day: LocalDate) -> bool {
    let last = u64::try_from(*p::FRAME_DAYS)
        .ok()
        .and_then(|days| taken_on.checked_add_days(Days::new(days)));
    is_grown(animal, taken_on) && last.is_some_and(|last| taken_on <= day && day <= last)
}
