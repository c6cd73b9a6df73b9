//! What was measured: a tape or a scale.

use super::error::AssessError;
use super::published as p;
use crate::units::{BodyMass, Bounds, Length};

/// Which body length was taken. They differ by up to a third and are never mixed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LengthKind {
    /// Point of shoulder to point of buttock, the tape laid around the buttock.
    Wrap,
    /// Point of shoulder straight back to a line square to the point of buttock.
    Straight,
    /// Elbow to the point of buttock (tuber ischii): the length of the donkey equations.
    ElbowToTuber,
}

/// A measure of the tape.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measure {
    /// Around the chest behind the elbow and the withers.
    HeartGirth,
    /// A body length; see [`LengthKind`].
    Length,
    /// At the withers (third thoracic vertebra), without shoes.
    Height,
    /// Around the neck halfway from poll to withers.
    Neck,
    /// Around the belly at the navel.
    UmbilicalGirth,
}

impl Measure {
    /// What is believed of this measure, in cm (ours): beyond it a slip of the pen is likelier than the animal.
    pub const fn bounds(self) -> Bounds {
        match self {
            Self::HeartGirth => p::HEART_GIRTH.value,
            Self::Length => p::BODY_LENGTH.value,
            Self::Height => p::HEIGHT.value,
            Self::Neck => p::NECK.value,
            Self::UmbilicalGirth => p::UMBILICAL_GIRTH.value,
        }
    }
}

/// With what a length was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum TapeTool {
    /// A tape measure.
    #[default]
    Tape,
    /// A string, then a ruler.
    StringAndRuler,
}

/// What was taken with a tape, in one go.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Tape {
    /// Heart girth.
    pub heart_girth: Length,
    /// A body length, with its kind.
    pub length: Option<(Length, LengthKind)>,
    /// Height at the withers; without it the animal's own height is used.
    pub height: Option<Length>,
    /// Neck, halfway.
    pub neck: Option<Length>,
    /// Girth at the navel; the equation of young donkeys wants it.
    pub umbilical_girth: Option<Length>,
}

impl Tape {
    /// A tape with the heart girth only.
    pub const fn girth(heart_girth: Length) -> Self {
        Self {
            heart_girth,
            length: None,
            height: None,
            neck: None,
            umbilical_girth: None,
        }
    }

    /// This tape with length, height and neck of an earlier one where they were not taken: bone does not change, and
    /// the neck changes a weight little. Girths are never carried over.
    #[must_use]
    pub fn with_frame_of(self, earlier: &Self) -> Self {
        Self {
            length: self.length.or(earlier.length),
            height: self.height.or(earlier.height),
            neck: self.neck.or(earlier.neck),
            ..self
        }
    }

    /// Refuses what is not finite or not believed; see [`Measure::bounds`].
    pub fn check(&self) -> Result<(), AssessError> {
        let taken = [
            (Measure::HeartGirth, Some(self.heart_girth)),
            (Measure::Length, self.length.map(|(length, _)| length)),
            (Measure::Height, self.height),
            (Measure::Neck, self.neck),
            (Measure::UmbilicalGirth, self.umbilical_girth),
        ];
        for (measure, length) in taken {
            if let Some(length) = length {
                measure.bounds().check(length.to_cm())?;
            }
        }
        Ok(())
    }
}

/// What the animal stood on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ScaleInstrument {
    /// A weighing platform made for large animals.
    AnimalScale,
    /// A weighbridge for vehicles: trailer with and without the animal.
    VehicleWeighbridge,
}

/// A weight from a scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ScaleWeight {
    /// What it showed.
    pub mass: BodyMass,
    /// What it was.
    pub instrument: ScaleInstrument,
}

/// A reading that gives a weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Reading {
    /// A tape.
    Tape(Tape),
    /// A scale.
    Scale(ScaleWeight),
}
