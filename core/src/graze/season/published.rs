//! When the parts of the year of grass usually come.

use crate::sources::{Mark, Published, Work, list_constants};

const fn memory<T: Copy>(id: &'static str, value: T, unit: &'static str) -> Published<T> {
    Published {
        id,
        value,
        unit,
        work: Work::CommonPractice,
        place: "the calendar of the trade",
        mark: Mark::FromMemory,
    }
}

const fn ours<T: Copy>(
    id: &'static str,
    value: T,
    unit: &'static str,
    place: &'static str,
) -> Published<T> {
    Published {
        id,
        value,
        unit,
        work: Work::Tussock,
        place,
        mark: Mark::Ours,
    }
}

const fn read<T: Copy>(
    id: &'static str,
    value: T,
    unit: &'static str,
    work: Work,
    place: &'static str,
) -> Published<T> {
    Published {
        id,
        value,
        unit,
        work,
        place,
        mark: Mark::Published,
    }
}

/// North: the months in which early spring, the flush, summer, autumn rains and frosts begin.
pub const NORTH_BEGINS: Published<[u32; 5]> =
    memory("graze.north_begins", [3, 4, 7, 9, 11], "month");
/// South: the months in which the flush, summer, the autumn break and frosts begin.
pub const SOUTH_BEGINS: Published<[u32; 4]> = memory("graze.south_begins", [9, 12, 3, 6], "month");
/// North: the month with most laminitis.
pub const NORTH_PEAK: Published<u32> = read(
    "graze.north_peak",
    5,
    "month",
    Work::MenziesGow2010,
    "abstract, prevalence 2.6 % in May",
);
/// Episodes in Britain, and the horse-years in which they fell: no season was without.
pub const EPISODES: Published<[f64; 2]> = read(
    "graze.episodes",
    [123.0, 1068.0],
    "episodes, horse-years",
    Work::Pollard2019,
    "abstract",
);
/// Days later in spring, and earlier in autumn, for each degree towards the pole.
pub const DAYS_A_DEGREE: Published<f64> = Published {
    id: "graze.days_a_degree",
    value: 4.0,
    unit: "d/degree",
    work: Work::Hopkins1920,
    place: "the bioclimatic law",
    mark: Mark::FromMemory,
};
/// The latitudes for which the calendars stand, north and south.
pub const CALENDAR_STANDS_FOR: Published<[f64; 2]> = ours(
    "graze.calendar_stands_for",
    [52.0, 38.0],
    "degrees",
    "where the calendars of the trade come from",
);
/// The most by which a latitude moves the spring.
pub const MOVES_AT_MOST: Published<f64> = ours(
    "graze.moves_at_most",
    28.0,
    "d",
    "four weeks; beyond it the law of latitude is not trusted",
);
/// How much of the spring's move the autumn makes, the other way.
pub const AUTUMN_MOVES: Published<f64> = ours(
    "graze.autumn_moves",
    0.5,
    "of the spring's",
    "autumn rains follow the weather more than the latitude",
);
/// Nearer the equator than this grass follows the rain.
pub const FOLLOWS_RAIN: Published<f64> = ours(
    "graze.follows_rain",
    30.0,
    "degrees",
    "tropics and subtropics: after the first rains",
);
/// How long a flush lasts that a person saw begin, unless it is said to be over.
pub const FLUSH_LASTS: Published<i64> = ours(
    "graze.flush_lasts",
    91,
    "d",
    "three months, as the calendar has it",
);
/// How long rain after a dry time makes grass grow fast.
pub const RAIN_LASTS: Published<i64> =
    ours("graze.rain_lasts", 42, "d", "six weeks after the rain");
/// How long before the usual day a flush may begin.
pub const MAY_BE_EARLY: Published<i64> = ours(
    "graze.may_be_early",
    21,
    "d",
    "three weeks, as years differ",
);
/// How far from its usual day a note may move a part of the year.
pub const NOTE_REACHES: Published<i64> = ours(
    "graze.note_reaches",
    90,
    "d",
    "a quarter of a year; farther off it is of another part",
);
/// The condition to have at the end of winter; a little rib showing is fine.
pub const LEAN_BY_SPRING: Published<f64> = Published {
    id: "graze.lean_by_spring",
    value: 5.0,
    unit: "condition 1 to 9",
    work: Work::CommonPractice,
    place: "before the flush",
    mark: Mark::CommonPractice,
};

list_constants![
    NORTH_BEGINS,
    SOUTH_BEGINS,
    NORTH_PEAK,
    EPISODES,
    DAYS_A_DEGREE,
    CALENDAR_STANDS_FOR,
    MOVES_AT_MOST,
    AUTUMN_MOVES,
    FOLLOWS_RAIN,
    FLUSH_LASTS,
    RAIN_LASTS,
    MAY_BE_EARLY,
    NOTE_REACHES,
    LEAN_BY_SPRING,
];
