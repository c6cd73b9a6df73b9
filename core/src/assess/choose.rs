//! From a reading to a weight: which equation the animal and its measures allow.

use super::age::{AgeClass, age_class, under_three};
use super::donkey;
use super::error::AssessError;
use super::finding::Finding;
use super::horse;
use super::published as p;
use super::ribs::ConditionRange;
use super::tape::{LengthKind, Measure, Reading, Tape};
use super::weight::{WeightEstimate, on_scale};
use crate::animal::{Animal, Kind, State};
use crate::units::{Length, LocalDate};

/// The weight of an animal from a reading on a day, and what is worth saying beside it.
///
/// The closest published equation for the kind, body type, age and measures is used; where it does not hold, the next
/// one, with a [`Finding::FellBack`]. A tape of the girth alone gives a weight too, with a wide band.
///
/// # Errors
/// A measure out of range or missing, a length of the wrong kind, an age or a weight no equation was made for.
pub fn weigh(
    animal: &Animal,
    reading: &Reading,
    day: LocalDate,
) -> Result<(WeightEstimate, Vec<Finding>), AssessError> {
    weigh_in_condition(animal, reading, None, day)
}

/// Like [`weigh`], with the condition last scored: fat donkeys in little work have an equation of their own.
pub fn weigh_in_condition(
    animal: &Animal,
    reading: &Reading,
    condition: Option<ConditionRange>,
    day: LocalDate,
) -> Result<(WeightEstimate, Vec<Finding>), AssessError> {
    let tape = match reading {
        Reading::Scale(scale) => return Ok((on_scale(scale)?, Vec::new())),
        Reading::Tape(tape) => tape,
    };
    tape.check()?;
    let case = Case {
        animal,
        tape,
        height: known_height(animal, tape)?,
        condition,
    };
    let mut findings = Vec::new();
    if animal.state == State::Pregnant {
        findings.push(Finding::InFoal);
    }
    let weight = match animal.kind {
        Kind::Donkey => {
            let young = under_three(animal, day)?;
            case.note_proportion(&mut findings);
            case.note_age(&mut findings);
            donkey::weight(&case, young, &mut findings)?
        }
        Kind::Horse | Kind::Pony | Kind::Miniature | Kind::Mule => {
            let age = age_class(animal, day)?;
            case.note_proportion(&mut findings);
            if age == AgeClass::NotKnown {
                findings.push(Finding::AgeNotKnown);
            }
            horse::weight(&case, age, &mut findings)?
        }
    };
    Ok((weight, findings))
}

/// An animal with its tape.
pub(super) struct Case<'a> {
    pub(super) animal: &'a Animal,
    pub(super) tape: &'a Tape,
    /// The height of the tape, else the animal's own.
    pub(super) height: Option<Length>,
    /// Condition on the scale 1 to 9, when it was scored.
    pub(super) condition: Option<ConditionRange>,
}

impl Case<'_> {
    /// A measure that the equation cannot do without.
    pub(super) fn need(value: Option<Length>, measure: Measure) -> Result<Length, AssessError> {
        value.ok_or(AssessError::Missing(measure))
    }

    /// The length, if it is of the kind an equation is for.
    pub(super) fn length(&self, wanted: LengthKind) -> Result<Length, AssessError> {
        match self.tape.length {
            Some((length, given)) if given == wanted => Ok(length),
            Some((_, given)) => Err(AssessError::WrongLength { wanted, given }),
            None => Err(AssessError::Missing(Measure::Length)),
        }
    }

    fn note_age(&self, findings: &mut Vec<Finding>) {
        if self.animal.born.is_none() && self.animal.state != State::Growing {
            findings.push(Finding::AgeNotKnown);
        }
    }

    /// Says when length and girth do not go together: a slipped tape, or a length of another kind.
    fn note_proportion(&self, findings: &mut Vec<Finding>) {
        let Some((length, kind)) = self.tape.length else {
            return;
        };
        let usual = match kind {
            LengthKind::Wrap | LengthKind::Straight => p::USUAL_PROPORTION,
            LengthKind::ElbowToTuber => p::USUAL_PROPORTION_DONKEY,
        };
        let length_to_girth = length / self.tape.heart_girth;
        if usual.check(length_to_girth).is_err() {
            findings.push(Finding::UnusualProportion { length_to_girth });
        }
    }
}

/// The height of the tape, else the animal's own; refuses one that is not believed.
pub(super) fn known_height(animal: &Animal, tape: &Tape) -> Result<Option<Length>, AssessError> {
    let height = tape.height.or(animal.height);
    if let Some(height) = height {
        Measure::Height.bounds().check(height.to_cm())?;
    }
    Ok(height)
}
