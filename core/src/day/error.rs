//! Why a day cannot be laid out.

use crate::units::OutOfRange;

/// Why a day cannot be laid out.
#[derive(Clone, Debug, PartialEq)]
pub enum DayError {
    /// Nobody comes: at least one visit is needed.
    NoVisits,
    /// A value outside its range.
    OutOfRange(OutOfRange),
    /// More hay than the nets and the times to eat it can hold.
    CannotHang {
        /// The dry matter, in kilograms, that finds no place.
        left_kg: f64,
    },
    /// More is said to be left than hung.
    MoreLeftThanHung,
    /// What was soaked is wet and cannot be weighed as dry hay.
    WetAsDry,
}

impl From<OutOfRange> for DayError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}
