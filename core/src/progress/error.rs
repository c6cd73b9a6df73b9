//! Why no trend can be given.

use crate::sources::RecordId;
use crate::units::OutOfRange;

/// Why this room refused.
#[derive(Clone, Debug, PartialEq)]
pub enum ProgressError {
    /// There is no weighing up to the day.
    NoWeighings,
    /// An ideal weight is what it should weigh, and no weighing.
    NotAWeighing(RecordId),
    /// A value outside its range.
    OutOfRange(OutOfRange),
}

impl From<OutOfRange> for ProgressError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}
