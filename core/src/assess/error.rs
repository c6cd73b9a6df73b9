//! Why a reading or a score gave no result.

use super::condition::{ConditionScale, Site};
use super::tape::{LengthKind, Measure};
use crate::animal::Kind;
use crate::units::OutOfRange;

/// Why this room refused.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AssessError {
    /// A value outside its range: field, value and range.
    OutOfRange(OutOfRange),
    /// No equation can do without this measure.
    Missing(Measure),
    /// The only equation there is wants another length, and lengths are never mixed.
    WrongLength {
        /// The length the equation is for.
        wanted: LengthKind,
        /// The length that was taken.
        given: LengthKind,
    },
    /// The equations for the young go by age, and the day of birth (or for older animals the year) is not known.
    BirthNeeded,
    /// There is no equation, or no target, for this class of animal.
    Refused(Refused),
    /// A score that is no half point.
    NotHalfPoint {
        /// The score given.
        value: f64,
    },
    /// A site that is not scored on this scale.
    SiteOfOtherScale {
        /// The scale.
        scale: ConditionScale,
        /// The site.
        site: Site,
    },
    /// A site that was scored twice.
    SiteTwice(Site),
    /// Too few sites for a mean.
    TooFewSites {
        /// How many were scored.
        scored: usize,
        /// How many it takes.
        needed: usize,
    },
    /// The site that the scale starts from was skipped.
    BaseSiteSkipped(Site),
    /// Scores of two scales are never compared.
    TwoScales,
}

/// A class of animal without an equation or without a target.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Refused {
    /// No tape equation for the young of this kind: ask for a scale weight.
    Young(Kind),
    /// A mare in foal has no target weight: her weight is not her own.
    TargetInFoal,
    /// A growing animal has no target weight.
    TargetGrowing,
    /// No published ideal weight for this body type.
    NoIdealWeight,
}

impl From<OutOfRange> for AssessError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}
