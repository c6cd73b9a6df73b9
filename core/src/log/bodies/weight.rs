//! A weight, from a tape or a scale.

use super::base::{BodyGrams, BodyWeight, Distance, JobKey, Millimetres};
use crate::assess::{LengthKind, Reading, ScaleInstrument, ScaleWeight, Tape};
use crate::log::error::{Allowed, LogError, Path};
use crate::log::stored::{tagged, twin, words};
use crate::sources::RecordId;

words!(LengthKind {
    Wrap = "wrap",
    Straight = "straight",
    ElbowToTuber = "elbow_to_tuber",
});
words!(ScaleInstrument {
    AnimalScale = "animal_scale",
    VehicleWeighbridge = "vehicle_weighbridge",
});

twin! {
    /// What was taken with a tape, in one go.
    TapeV1 {
        /// Heart girth.
        heart_girth: Distance,
        /// A body length.
        length: Option<Distance>,
        /// Which body length; there exactly when `length` is.
        length_kind: Option<LengthKind>,
        /// Height at the withers.
        height: Option<Distance>,
        /// Neck, halfway.
        neck: Option<Distance>,
        /// Girth at the navel.
        umbilical_girth: Option<Distance>,
    }
}
twin! {
    /// What a scale showed.
    ScaleV1 {
        /// The weight.
        weight: BodyWeight,
        /// What the animal stood on.
        instrument: ScaleInstrument,
    }
}

/// What was read.
#[derive(Clone, Debug, PartialEq)]
pub enum ReadingV1 {
    /// A tape.
    Tape {
        /// What it showed.
        tape: TapeV1,
    },
    /// A scale.
    Scale {
        /// What it showed.
        scale: ScaleV1,
    },
}

tagged!(ReadingV1, by "method" {
    Tape = "tape" { tape: tape },
    Scale = "scale" { scale: scale },
});

twin! {
    /// A weighing of the animal that the record is about.
    WeightV1 {
        /// What was read.
        reading: ReadingV1,
        /// The job that this does.
        job: Option<JobKey>,
    }
}

impl WeightV1 {
    /// The twin of a reading, without what was typed.
    ///
    /// Errors: a measure that no tape or scale gives.
    pub fn of(reading: &Reading) -> Result<Self, LogError> {
        let distance = |length| Distance::of(length, None);
        let reading = match reading {
            Reading::Tape(tape) => ReadingV1::Tape {
                tape: TapeV1 {
                    heart_girth: distance(tape.heart_girth)?,
                    length: tape
                        .length
                        .map(|(length, _)| distance(length))
                        .transpose()?,
                    length_kind: tape.length.map(|(_, kind)| kind),
                    height: tape.height.map(distance).transpose()?,
                    neck: tape.neck.map(distance).transpose()?,
                    umbilical_girth: tape.umbilical_girth.map(distance).transpose()?,
                },
            },
            Reading::Scale(scale) => ReadingV1::Scale {
                scale: ScaleV1 {
                    weight: BodyWeight::of(scale.mass, None)?,
                    instrument: scale.instrument,
                },
            },
        };
        Ok(Self { reading, job: None })
    }

    /// The reading behind a record. Its measures are not judged here: see [`Tape::check`].
    ///
    /// Error: a length without its kind, or a kind without a length.
    pub fn reading(&self, id: &RecordId) -> Result<Reading, LogError> {
        let cm = |distance: &Option<Distance>| distance.as_ref().map(|d| Millimetres::length(d.mm));
        match &self.reading {
            ReadingV1::Scale { scale } => Ok(Reading::Scale(ScaleWeight {
                mass: BodyGrams::mass(scale.weight.g),
                instrument: scale.instrument,
            })),
            ReadingV1::Tape { tape } => {
                let length = match (cm(&tape.length), tape.length_kind) {
                    (Some(length), Some(kind)) => Some((length, kind)),
                    (None, None) => None,
                    _ => {
                        let record = Path::Record(id.0.as_str());
                        let body = record.key("body.reading.tape");
                        return Err(body.key("length_kind").refuse("", Allowed::AsItsWordAsks));
                    }
                };
                Ok(Reading::Tape(Tape {
                    heart_girth: tape.heart_girth.mm.length(),
                    length,
                    height: cm(&tape.height),
                    neck: cm(&tape.neck),
                    umbilical_girth: cm(&tape.umbilical_girth),
                }))
            }
        }
    }
}
