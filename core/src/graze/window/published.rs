//! When grass is open: practice rule 16, and the sugar of an average day.

use crate::sources::{Mark, Published, Work, list_constants};

const fn of<T: Copy>(
    id: &'static str,
    value: T,
    unit: &'static str,
    work: Work,
    place: &'static str,
    mark: Mark,
) -> Published<T> {
    Published {
        id,
        value,
        unit,
        work,
        place,
        mark,
    }
}

const fn practice<T: Copy>(
    id: &'static str,
    value: T,
    unit: &'static str,
    place: &'static str,
) -> Published<T> {
    of(
        id,
        value,
        unit,
        Work::CommonPractice,
        place,
        Mark::CommonPractice,
    )
}

const fn ours<T: Copy>(
    id: &'static str,
    value: T,
    unit: &'static str,
    place: &'static str,
) -> Published<T> {
    of(id, value, unit, Work::Tussock, place, Mark::Ours)
}

const fn read<T: Copy>(
    id: &'static str,
    value: T,
    unit: &'static str,
    work: Work,
    place: &'static str,
) -> Published<T> {
    of(id, value, unit, work, place, Mark::Published)
}

/// Off by this hour on a clear day.
pub const CLOSES_CLEAR: Published<u32> =
    practice("graze.closes_clear", 9, "h", "off by nine on a clear day");
/// Off by this hour at the latest.
pub const CLOSES_LATEST: Published<u32> =
    practice("graze.closes_latest", 10, "h", "ten at the latest");
/// Off by this hour under lasting cloud or in shade.
pub const CLOSES_DULL: Published<u32> = practice(
    "graze.closes_dull",
    11,
    "h",
    "eleven to twelve in all-day cloud, the earlier end",
);
/// A night at or under this keeps the sugar of the day before.
pub const COLD_NIGHT: Published<f64> = practice(
    "graze.cold_night",
    5.0,
    "degC",
    "after a night at five or under",
);
/// The night below which sugar stays in the grass.
pub const COLD_NIGHT_READ: Published<f64> = read(
    "graze.cold_night_read",
    40.0,
    "degF",
    Work::UmnGrazing,
    "nights below 40 degrees",
);
/// A hard freeze, for some hours.
pub const HARD_FREEZE: Published<f64> = read(
    "graze.hard_freeze",
    28.0,
    "degF",
    Work::UmnGrazing,
    "after a killing frost",
);
/// Days to keep off after a hard freeze.
pub const AFTER_FREEZE: Published<i64> = read(
    "graze.after_freeze",
    7,
    "d",
    Work::UmnGrazing,
    "keep off up to seven days",
);
/// Leaf shorter than this is left alone to grow.
pub const LEAF_LEFT_ALONE: Published<f64> = read(
    "graze.leaf_left_alone",
    7.5,
    "cm",
    Work::UmnGrazing,
    "take stock off at three inches",
);
/// A paddock with leaf under this is bare, and no forage.
pub const BARE: Published<f64> = practice("graze.bare", 5.0, "cm", "a bare paddock is not forage");
/// The earliest by the clock, where the sun gives no beginning.
pub const EARLIEST: Published<u32> = ours(
    "graze.earliest",
    4,
    "h",
    "before four nobody is asked to turn out",
);
/// So much light before closing makes sunrise the beginning; with less the clock does.
pub const LIGHT_ENOUGH: Published<i64> = ours(
    "graze.light_enough",
    60,
    "min",
    "an hour of light before closing",
);
/// Late evening begins, by the clock and by the sun.
pub const EVENING_BEGINS: Published<u32> = ours(
    "graze.evening_begins",
    22,
    "h",
    "late evening of a mild night",
);
/// How long an evening stretch is.
pub const EVENING_HOURS: Published<i64> =
    ours("graze.evening_hours", 2, "h", "from ten to midnight");

/// The hour by the sun with the most sugar; the least is half a day before.
pub const MOST_SUGAR_HOUR: Published<f64> = of(
    "graze.most_sugar_hour",
    17.0,
    "h",
    Work::McIntosh2007,
    "lowest 4 to 5, highest 16 to 17",
    Mark::FromMemory,
);
/// From the least to the most sugar of a day.
pub const SUGAR_OF_DAY: Published<[f64; 2]> = read(
    "graze.sugar_of_day",
    [20.0, 30.0],
    "g/kg dry matter",
    Work::Shewmaker2006,
    "in general, dawn to dusk",
);
/// The mean of a day in May, July, August and September.
pub const FESCUE_MEAN: Published<[f64; 4]> = read(
    "graze.fescue_mean",
    [239.0, 231.0, 143.0, 120.0],
    "g/kg dry matter",
    Work::Shewmaker2006,
    "tall fescue, daily mean of four months",
);
/// The rise from dawn to dusk in the same months.
pub const FESCUE_RISE: Published<[f64; 4]> = read(
    "graze.fescue_rise",
    [22.4, 16.8, 21.0, 30.8],
    "g/kg dry matter",
    Work::Shewmaker2006,
    "tall fescue, dawn to dusk of four months",
);
/// Leaf after fifteen hours of light, in times of leaf after nine hours of dark.
pub const LEAF_AFTER_LIGHT: Published<f64> = read(
    "graze.leaf_after_light",
    1.6,
    "times",
    Work::Mayland2003,
    "leaf of tall fescue; its stems stayed the same",
);
/// What season, kind of grass and frost may be worth, and more.
pub const SUGAR_OF_REST: Published<f64> = ours(
    "graze.sugar_of_rest",
    100.0,
    "g/kg dry matter",
    "May against September in tall fescue (Shewmaker 2006) is 119",
);

list_constants![
    CLOSES_CLEAR,
    CLOSES_LATEST,
    CLOSES_DULL,
    COLD_NIGHT,
    COLD_NIGHT_READ,
    HARD_FREEZE,
    AFTER_FREEZE,
    LEAF_LEFT_ALONE,
    BARE,
    EARLIEST,
    LIGHT_ENOUGH,
    EVENING_BEGINS,
    EVENING_HOURS,
    MOST_SUGAR_HOUR,
    SUGAR_OF_DAY,
    FESCUE_MEAN,
    FESCUE_RISE,
    LEAF_AFTER_LIGHT,
    SUGAR_OF_REST,
];
