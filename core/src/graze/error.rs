//! Why this room refused.

use crate::units::OutOfRange;

/// Why this room refused.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum GrazeError {
    /// A value outside its range: field, value and range.
    OutOfRange(OutOfRange),
}

impl From<OutOfRange> for GrazeError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}
