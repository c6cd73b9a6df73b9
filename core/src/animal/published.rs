//! Constants of risk.

use crate::sources::{Mark, Published, Work, list_constants};

/// A crest of this score or more counts as at risk (five times the odds of insulin dysregulation in 26 ponies).
pub const CREST_AT_RISK: Published<f64> = Published {
    id: "animal.crest_at_risk",
    value: 3.0,
    unit: "crest score 0 to 5",
    work: Work::Fitzgerald2019,
    place: "abstract",
    mark: Mark::Published,
};

/// Condition of this score or more counts as at risk when nobody tested insulin.
pub const CONDITION_AT_RISK: Published<f64> = Published {
    id: "animal.condition_at_risk",
    value: 7.0,
    unit: "condition 1 to 9",
    work: Work::Carter2009Laminitis,
    place: "cut-offs",
    mark: Mark::FromMemory,
};

list_constants![CREST_AT_RISK, CONDITION_AT_RISK];
