//! What this room refuses.

use crate::units::{Bounds, OutOfRange};
use std::fmt;

use super::published::{
    LEAST_CONDITION, LEAST_WEIGHT_KG, MOST_ASKED_PERCENT, MOST_CONDITION, MOST_WEIGHT_KG,
};

/// A weight of an animal that is believed.
pub(super) const WEIGHT: Bounds =
    Bounds::new("weight_kg", LEAST_WEIGHT_KG.value, MOST_WEIGHT_KG.value);
/// A condition score.
pub(super) const CONDITION: Bounds =
    Bounds::new("condition", LEAST_CONDITION.value, MOST_CONDITION.value);
/// A level of dry matter that may be asked for.
pub(super) const ASKED: Bounds = Bounds::new("asked_percent", 0.0, MOST_ASKED_PERCENT.value);

/// An input that cannot be used.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LimitsError {
    /// A value outside its range or not finite.
    OutOfRange(OutOfRange),
    /// A range whose three values do not rise.
    NotInOrder {
        /// The field.
        field: &'static str,
        /// Its least, likely and most.
        values: [f64; 3],
    },
}

impl From<OutOfRange> for LimitsError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}

impl fmt::Display for LimitsError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OutOfRange(error) => error.fmt(f),
            Self::NotInOrder {
                field,
                values: [least, likely, most],
            } => write!(f, "{field}: {least}, {likely}, {most} do not rise"),
        }
    }
}

impl std::error::Error for LimitsError {}
