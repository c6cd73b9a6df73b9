//! What a clock may be off from the sun.

use crate::sources::{Mark, Published, Work, list_constants};

/// The sun's noon by a clock that fits its place, at the earliest and at the latest, as hours of the clock.
pub const NOON_BY_CLOCK: Published<[f64; 2]> = Published {
    id: "graze.noon_by_clock",
    value: [10.5, 15.5],
    unit: "h",
    work: Work::Tussock,
    place: "the widest that any zone in use is off its sun, with half an hour to spare",
    mark: Mark::Ours,
};

list_constants![NOON_BY_CLOCK];
