//! Constants of `log`.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::Span;

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

/// For how many days what was seen of a paddock's leaf holds.
pub const LEAF_SEEN_DAYS: Published<i64> = Published {
    id: "log.leaf_seen_days",
    value: 3,
    unit: "days",
    work: Work::Tussock,
    place: "grass is eaten down sooner than it is seen to be",
    mark: Mark::Ours,
};

/// For so many days seed heads that somebody saw stand, unless somebody sees that they are gone.
pub const SEED_SEEN_DAYS: Published<i64> = Published {
    id: "log.seed_seen_days",
    value: 30,
    unit: "days",
    work: Work::Tussock,
    place: "about as long as seed heads stand that nobody tops",
    mark: Mark::Ours,
};

/// From so many hours a day at grass, as the mean of a week, grass fills the gut and no longer hay.
pub const GRASS_FILLS_FROM: Published<Span> = Published {
    id: "log.grass_fills_from",
    value: Span::hours(3),
    unit: "a day",
    work: Work::Tussock,
    place: "about a quarter of what is eaten in a day at grass",
    mark: Mark::Ours,
};

/// After so many days without grass a turnout is a first one.
pub const WITHOUT_GRASS_DAYS: Published<i64> = Published {
    id: "log.without_grass_days",
    value: 28,
    unit: "days",
    work: Work::Tussock,
    place: "a winter off grass, and shorter ones of the same weight",
    mark: Mark::Ours,
};

/// So much more grass a day, a week beside the week before it, is longer turnout.
pub const LONGER_BY: Published<Span> = Published {
    id: "log.longer_by",
    value: Span::hours(1),
    unit: "a day",
    work: Work::Tussock,
    place: "log/published.rs",
    mark: Mark::Ours,
};

list_constants![
    FUTURE_BOUND_MIN,
    WEATHER_LOOKED_BACK_DAYS,
    LEAF_SEEN_DAYS,
    SEED_SEEN_DAYS,
    GRASS_FILLS_FROM,
    WITHOUT_GRASS_DAYS,
    LONGER_BY,
];
