//! Why no draft could be made.

use crate::animal::LotId;
use crate::assess::AssessError;
use crate::day::DayError;
use crate::limits::LimitsError;
use crate::units::OutOfRange;

/// Why no draft could be made: something is missing or cannot be used. It is no refusal of the plan; that is safety's.
#[derive(Clone, Debug, PartialEq)]
pub enum PlanError {
    /// It was never weighed or taped.
    NoWeight,
    /// No forage was named.
    NoForage,
    /// The parts of the forages do not add up to the whole.
    PartsDoNotAddUp {
        /// Their sum.
        sum: f64,
    },
    /// Haylage of which nobody knows the dry matter: it must be asked.
    DryMatterNotKnown {
        /// Which lot.
        lot: LotId,
    },
    /// A group without members on the day.
    EmptyGroup,
    /// From the room `assess`.
    Assess(AssessError),
    /// From the room `limits`.
    Limits(LimitsError),
    /// From the room `day`.
    Day(DayError),
    /// A value outside its range.
    OutOfRange(OutOfRange),
}

impl From<AssessError> for PlanError {
    fn from(error: AssessError) -> Self {
        Self::Assess(error)
    }
}

impl From<LimitsError> for PlanError {
    fn from(error: LimitsError) -> Self {
        Self::Limits(error)
    }
}

impl From<DayError> for PlanError {
    fn from(error: DayError) -> Self {
        Self::Day(error)
    }
}

impl From<OutOfRange> for PlanError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}
