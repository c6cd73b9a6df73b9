//! Why this room refused a value.

use crate::units::{Length, OutOfRange, SwardMass};

/// A refusal: the field, the value, the allowed range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum GrazeError {
    /// A value outside its range.
    OutOfRange(OutOfRange),
    /// No height was read.
    NoReadings,
    /// Nobody grazes, or nothing is asked for.
    NothingAsked,
    /// Nothing stands above what is left standing, even at the most: there is no strip in it.
    NothingToGraze {
        /// What stands above it at the most.
        most: SwardMass,
    },
    /// A track that leaves no inside.
    TrackTooWide {
        /// The track.
        width: Length,
        /// It must be narrower than this: half of the field's narrow side.
        under: Length,
    },
}

impl From<OutOfRange> for GrazeError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}
