//! A weight, from a tape or a scale.

use super::base::{BodyGrams, BodyWeight, Distance, JobKey, Millimetres};
use super::vehicle::VehicleWeight;
use crate::assess::{
    Answered, DoubtAnswer, DoubtKind, Earlier, LengthKind, Measure, Reading, ScaleInstrument,
    ScaleWeight, Tape, TapeTool,
};
use crate::log::error::{Allowed, LogError, Path};
use crate::log::stored::{fields, tagged, twin, words};
use crate::sources::RecordId;
use crate::units::{Length, LocalDate};

words!(LengthKind {
    Wrap = "wrap",
    Straight = "straight",
    ElbowToTuber = "elbow_to_tuber",
});
words!(Measure {
    HeartGirth = "heart_girth",
    Length = "length",
    Height = "height",
    Neck = "neck",
    UmbilicalGirth = "umbilical_girth",
});
words!(TapeTool {
    Tape = "tape",
    StringAndRuler = "string_and_ruler",
});
words!(ScaleInstrument {
    AnimalScale = "animal_scale",
    VehicleWeighbridge = "vehicle_weighbridge",
});
words!(DoubtKind {
    Inches = "inches",
    Pounds = "pounds",
    Unusual = "unusual",
    OtherLength = "other_length",
    SmallHorse = "small_horse",
    Apart = "apart",
    Odd = "odd",
    FrameDiffers = "frame_differs",
    Fell = "fell",
    Rose = "rose",
});
words!(DoubtAnswer {
    Right = "right",
    Again = "again",
    OtherUnit = "other_unit",
    LeftOut = "left_out",
});
fields!(Answered {
    doubt,
    measure,
    answer
});

twin! {
    /// One of several readings of a measure.
    TakeV1 {
        /// The measure.
        measure: Measure,
        /// What the tape showed.
        reading: Distance,
        /// A person left it out of the mean.
        left_out: Option<bool>,
    }
}
twin! {
    /// What was taken with a tape, in one go. A measure that was taken more than once stands here as the mean of those
    /// that count, and its readings in `takes`.
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
        /// With what; a tape measure when nobody said otherwise.
        tool: Option<TapeTool>,
        /// The readings of each measure that was taken more than once, in the order they were taken.
        takes: Option<Vec<TakeV1>>,
    }
}
twin! {
    /// One of several readings of a scale.
    ScaleTakeV1 {
        /// What it showed.
        reading: BodyWeight,
        /// A person left it out of the mean.
        left_out: Option<bool>,
    }
}
twin! {
    /// What a scale showed. When it was read more than once the weight is the mean of those that count; of a weighbridge
    /// for vehicles it is the difference.
    ScaleV1 {
        /// The weight.
        weight: BodyWeight,
        /// What the animal stood on.
        instrument: ScaleInstrument,
        /// The readings, when there were more than one, in the order they were taken.
        takes: Option<Vec<ScaleTakeV1>>,
        /// The vehicle with the animal.
        with_animal: Option<VehicleWeight>,
        /// The vehicle without it.
        without_animal: Option<VehicleWeight>,
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
        /// What was asked back before it was saved, and what a person answered.
        answered: Option<Vec<Answered>>,
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
                    tool: None,
                    takes: None,
                },
            },
            Reading::Scale(scale) => ReadingV1::Scale {
                scale: ScaleV1 {
                    weight: BodyWeight::of(scale.mass, None)?,
                    instrument: scale.instrument,
                    takes: None,
                    with_animal: None,
                    without_animal: None,
                },
            },
        };
        Ok(Self {
            reading,
            job: None,
            answered: None,
        })
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

impl TapeV1 {
    /// The mean of a measure, when it was taken.
    pub fn mean(&self, measure: Measure) -> Option<Length> {
        let distance = match measure {
            Measure::HeartGirth => Some(&self.heart_girth),
            Measure::Length => self.length.as_ref(),
            Measure::Height => self.height.as_ref(),
            Measure::Neck => self.neck.as_ref(),
            Measure::UmbilicalGirth => self.umbilical_girth.as_ref(),
        };
        distance.map(|distance| distance.mm.length())
    }

    /// A measure as it is looked back on from a later day; `None` when it was not taken.
    pub fn earlier(&self, measure: Measure, day: LocalDate) -> Option<Earlier> {
        let counted = self
            .takes
            .iter()
            .flatten()
            .filter(|take| take.measure == measure && take.left_out != Some(true))
            .count();
        Some(Earlier {
            measure,
            length: self.mean(measure)?,
            kind: self.length_kind.filter(|_| measure == Measure::Length),
            tool: self.tool.unwrap_or_default(),
            takes: counted.max(1),
            day,
        })
    }
}
