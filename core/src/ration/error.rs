//! Why a food or a ration was refused.

use crate::limits::{LimitsError, Nutrient};
use crate::units::{Bounds, OutOfRange};

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

impl From<LimitsError> for RationError {
    fn from(error: LimitsError) -> Self {
        Self::OutOfRange(match error {
            LimitsError::OutOfRange(error) => error,
            LimitsError::NotInOrder {
                field,
                values: [least, likely, most],
            } => OutOfRange {
                bounds: Bounds::new(field, least, most),
                value: likely,
            },
        })
    }
}
