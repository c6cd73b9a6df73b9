//! What is wrong with a value of work.

use crate::units::OutOfRange;
use std::fmt;

/// Why something could not be worked out.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum WorkError {
    /// A value outside what is believed, or outside what was measured.
    OutOfRange(OutOfRange),
}

impl From<OutOfRange> for WorkError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}

impl fmt::Display for WorkError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::OutOfRange(error) => error.fmt(f),
        }
    }
}

impl std::error::Error for WorkError {}
