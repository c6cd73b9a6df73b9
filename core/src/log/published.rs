//! Constants of `log`.

use crate::sources::{Mark, Published, Work, list_constants};

/// How far a received stamp may lie ahead of this device before it is flagged and no longer moves its clock.
pub const FUTURE_BOUND_MIN: Published<i64> = Published {
    id: "log.future_bound_min",
    value: 10,
    unit: "min",
    work: Work::Tussock,
    place: "log/published.rs",
    mark: Mark::Ours,
};

list_constants![FUTURE_BOUND_MIN];
