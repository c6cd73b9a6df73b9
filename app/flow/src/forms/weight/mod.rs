//! A weight by tape or scale.

use crate::acts::{Act, New};
use tussock_core::animal::Animal;
use tussock_core::assess::{
    AssessError, LengthKind, Reading, ScaleInstrument, ScaleWeight, Tape, weigh,
};
use tussock_core::log::bodies::WeightV1;
use tussock_core::log::{Body, Known, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{LengthUnit, MassUnit, ParseError, body_mass, length};
use tussock_core::units::{BodyMass, Length, LocalDate};

/// With what it is weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// A tape.
    Tape,
    /// A scale.
    Scale,
}

/// What was typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed {
    /// With what.
    pub how: How,
    /// The heart girth.
    pub heart_girth: String,
    /// The length; empty when it was not taken.
    pub length: String,
    /// What the scale showed.
    pub scale: String,
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// The text of this field cannot be read.
    Parse(&'static str, ParseError),
    /// The measures give no weight.
    Assess(AssessError),
}

impl Wrong {
    /// The field it is shown at.
    pub const fn field(&self) -> &'static str {
        match self {
            Self::Parse(field, _) => field,
            Self::Assess(_) => "girth",
        }
    }
}

impl Typed {
    /// The reading that was typed. A donkey's length is from the elbow, every other one is wrapped round the quarter.
    fn reading(&self, animal: &Animal) -> Result<Reading, Vec<Wrong>> {
        if self.how == How::Scale {
            let mass = body_mass(&self.scale, MassUnit::Kg)
                .map_err(|error| vec![Wrong::Parse("scale", error)])?;
            return Ok(Reading::Scale(ScaleWeight {
                mass,
                instrument: ScaleInstrument::AnimalScale,
            }));
        }
        let mut wrong = Vec::new();
        let mut read = |field, text: &str| match length(text, LengthUnit::Cm) {
            Ok(length) => Some(length),
            Err(error) => {
                wrong.push(Wrong::Parse(field, error));
                None
            }
        };
        let girth = read("girth", &self.heart_girth);
        let along = if self.length.trim().is_empty() {
            None
        } else {
            read("length", &self.length)
        };
        let kind = if animal.kind.is_donkey() {
            LengthKind::ElbowToTuber
        } else {
            LengthKind::Wrap
        };
        match girth {
            Some(girth) if wrong.is_empty() => Ok(Reading::Tape(Tape {
                length: along.map(|along| (along, kind)),
                ..Tape::girth(girth)
            })),
            _ => Err(wrong),
        }
    }

    /// The act that writes it, or everything that is wrong. A reading that gives no weight is asked back, not stored.
    pub fn act(&self, animal: &Animal, today: LocalDate, record: &str) -> Result<Act, Vec<Wrong>> {
        let reading = self.reading(animal)?;
        weigh(animal, &reading, today).map_err(|error| vec![Wrong::Assess(error)])?;
        let body = WeightV1::of(&reading).map_err(|_| {
            vec![Wrong::Parse(
                "girth",
                ParseError::NotANumber {
                    typed: self.heart_girth.clone(),
                },
            )]
        })?;
        Ok(Act::Add(New {
            id: RecordId(record.to_owned()),
            subject: Subject::animal(&animal.id),
            at: None,
            known: Known::Seen,
            body: Body::Weight(body),
        }))
    }
}

/// What was understood of a length while it is typed; `None` as long as it cannot be read.
pub fn echo_length(text: &str) -> Option<Length> {
    length(text, LengthUnit::Cm).ok()
}

/// What was understood of a weight while it is typed.
pub fn echo_mass(text: &str) -> Option<BodyMass> {
    body_mass(text, MassUnit::Kg).ok()
}
