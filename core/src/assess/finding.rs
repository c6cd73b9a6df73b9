//! What is worth saying beside a result.

use super::condition::Site;
use super::equation::MeasuredType;
use super::tape::{LengthKind, Measure};
use crate::animal::BodyType;
use crate::units::{BodyMass, Length};

/// Something a person should know beside a result.
#[derive(Clone, Debug, PartialEq)]
pub enum Finding {
    /// No usable length: the weight is from girth alone, and wider.
    LengthNotTaken,
    /// A scale weight is wanted before any restriction.
    AskForScaleWeight(ScaleReason),
    /// The closer equation could not be used, and why.
    FellBack(Fallback),
    /// The age is not known; the animal was taken as grown.
    AgeNotKnown,
    /// The height of a pony is not known; it was taken as one under 112 cm, with the wider band.
    HeightNotKnown,
    /// In foal: no equation was made for it, and the weight is not the mare's own.
    InFoal,
    /// Length and girth do not go together as they usually do: measure again.
    UnusualProportion {
        /// The length as a part of the girth.
        length_to_girth: f64,
    },
    /// Sites that were skipped, in walking order.
    SitesSkipped(Vec<Site>),
    /// So fat that condition says little: the target is a first one, for condition 7.
    FirstAimForSeven,
    /// The target from condition and the published ideal weight differ by more than 5 %: show both.
    IdealWeightDiffers {
        /// The target from condition.
        by_condition: BodyMass,
        /// The ideal weight from length and height.
        by_measures: BodyMass,
    },
}

/// Why a scale weight is wanted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum ScaleReason {
    /// A miniature: the published equation could not be found.
    Miniature,
    /// Under 112 cm: the equations were not made for it.
    Small {
        /// Its height.
        height: Length,
    },
    /// A Shetland whose height nobody measured.
    ShetlandWithoutHeight,
    /// A mule or hinny: no equation was found.
    Mule,
}

/// Why the closer equation was not used.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Fallback {
    /// The body type is not known.
    BodyTypeNotKnown,
    /// This body type has no equation of four measures here.
    BodyTypeHasNone(BodyType),
    /// A measure is missing.
    Missing {
        /// The type whose equation would have been used; `None` for the equation of fat donkeys.
        wanted: Option<MeasuredType>,
        /// The measure.
        measure: Measure,
    },
    /// The length is of the other kind, and lengths are never mixed.
    WrongLength {
        /// The length the equation is for.
        wanted: LengthKind,
        /// The length that was taken.
        given: LengthKind,
    },
    /// Under three years.
    UnderThree,
    /// In foal.
    InFoal,
}
