//! Why a food or a ration was refused.

use crate::limits::Nutrient;
use crate::units::OutOfRange;

/// Why a food or a ration was refused.
#[derive(Clone, Debug, PartialEq)]
pub enum RationError {
    /// A value outside its range.
    OutOfRange(OutOfRange),
    /// A content of a label that cannot be: below nothing, or not a number.
    Content {
        /// Of which nutrient.
        nutrient: Nutrient,
        /// As typed, in the nutrient's unit in a kilogram as fed.
        value: f64,
    },
}

impl From<OutOfRange> for RationError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}
