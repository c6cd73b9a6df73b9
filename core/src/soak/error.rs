//! Why this room refused a value.

use super::air::Air;
use crate::units::{Instant, OutOfRange};

/// A refusal: the field, the value, the allowed range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SoakError {
    /// A value outside its range.
    OutOfRange(OutOfRange),
    /// Haylage is not soaked.
    Haylage,
    /// A soak of more than two hours in air of 16 degrees or more.
    LongSoakInWarmAir {
        /// The air.
        air: Air,
    },
    /// A step before the step it follows.
    OutOfOrder {
        /// The earlier step's instant.
        earlier: Instant,
        /// The later step's instant, which comes before it.
        later: Instant,
    },
}

impl From<OutOfRange> for SoakError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}
