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

/// How far back the chips of the weather are looked at for frost and for a dry spell. Longer than the week that grass is
/// closed after a hard freeze.
pub const WEATHER_LOOKED_BACK_DAYS: Published<i64> = Published {
    id: "log.weather_looked_back_days",
    value: 14,
    unit: "days",
    work: Work::Tussock,
    place: "twice the week after a hard freeze",
    mark: Mark::Ours,
};

/// How long what somebody saw of a paddock's leaf holds.
pub const LEAF_SEEN_DAYS: Published<i64> = Published {
    id: "log.leaf_seen_days",
    value: 3,
    unit: "days",
    work: Work::Tussock,
    place: "leaf is looked at every day",
    mark: Mark::Ours,
};

list_constants![FUTURE_BOUND_MIN, WEATHER_LOOKED_BACK_DAYS, LEAF_SEEN_DAYS];
