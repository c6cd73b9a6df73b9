//! Why this room refused a value.

use super::analyte::Analyte;
use crate::units::{Bounds, MoneyError, OutOfRange};

/// A refusal: the field, the value, the allowed range.
#[derive(Clone, Debug, PartialEq)]
pub enum ForageError {
    /// A value outside its range.
    OutOfRange(OutOfRange),
    /// A report as fed needs its dry matter: without it nothing can be compared.
    AsFedWithoutDryMatter,
    /// A report that gives nothing.
    EmptyReport,
    /// An energy equation lacks a value.
    EnergyLacks {
        /// What is missing.
        analyte: Analyte,
    },
    /// The energy equation does not hold for this fibre: it turns upward above its range.
    OutsideEquation {
        /// Which value.
        analyte: Analyte,
        /// The value, in percent of dry matter.
        value: f64,
        /// The range in which the equation holds.
        allowed: Bounds,
    },
    /// A price that does not add up.
    Money(MoneyError),
}

impl From<OutOfRange> for ForageError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}

impl From<MoneyError> for ForageError {
    fn from(error: MoneyError) -> Self {
        Self::Money(error)
    }
}
