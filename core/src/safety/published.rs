//! Ages and times at which safety speaks.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::LocalTime;

/// From this age on a test for PPID is worth asking for.
pub const PPID_AGE: Published<i32> = Published {
    id: "safety.ppid_age",
    value: 15,
    unit: "years",
    work: Work::Tussock,
    place: "practice rule 19",
    mark: Mark::Ours,
};

/// Days after a trim or new shoes in which footing says little.
pub const AFTER_TRIM_DAYS: Published<i64> = Published {
    id: "safety.after_trim_days",
    value: 3,
    unit: "days",
    work: Work::Tussock,
    place: "practice rule 19",
    mark: Mark::Ours,
};

/// Hours off feed that are the latest, not the wait.
pub const OFF_FEED_HOURS: Published<i64> = Published {
    id: "safety.off_feed_hours",
    value: 12,
    unit: "h",
    work: Work::Tussock,
    place: "practice rule 14; refusal of food in ponies and donkeys is for the vet (JAVMA 234)",
    mark: Mark::Ours,
};

/// An hour at which a part of the day begins: the earlier end of what people mean by it.
const fn part_of_day(id: &'static str, hour: u32) -> Published<LocalTime> {
    Published {
        id,
        value: match LocalTime::from_hms_opt(hour, 0, 0) {
            Some(time) => time,
            None => LocalTime::MIN,
        },
        unit: "local time",
        work: Work::Tussock,
        place: "the earliest that is meant by it, so that no hour without food is left out",
        mark: Mark::Ours,
    }
}

/// When a morning begins.
pub const MORNING_FROM: Published<LocalTime> = part_of_day("safety.morning_from", 5);
/// When an afternoon begins.
pub const AFTERNOON_FROM: Published<LocalTime> = part_of_day("safety.afternoon_from", 12);
/// When an evening begins.
pub const EVENING_FROM: Published<LocalTime> = part_of_day("safety.evening_from", 17);

/// Below this age a foal's pulse, breathing and temperature are not those of the grown.
pub const FOAL_YEARS: Published<i32> = Published {
    id: "safety.foal_years",
    value: 1,
    unit: "years",
    work: Work::Tussock,
    place: "foals differ; their ranges are not given here",
    mark: Mark::Ours,
};

/// A range of the resting grown horse: several open pages give nearly the same.
const fn horse(id: &'static str, value: f64, unit: &'static str) -> Published<f64> {
    Published {
        id,
        value,
        unit,
        work: Work::CommonPractice,
        place: "vital signs of the resting horse, open pages read second-hand",
        mark: Mark::CommonPractice,
    }
}

/// A range of the resting grown donkey.
const fn donkey(id: &'static str, value: f64, unit: &'static str) -> Published<f64> {
    Published {
        id,
        value,
        unit,
        work: Work::CommonPractice,
        place: "vital signs of the resting donkey",
        mark: Mark::FromMemory,
    }
}

/// The lowest temperature of a resting horse.
pub const HORSE_TEMPERATURE_LOW: Published<f64> =
    horse("safety.horse_temperature_low", 37.2, "degC");
/// The highest temperature of a resting horse.
pub const HORSE_TEMPERATURE_HIGH: Published<f64> =
    horse("safety.horse_temperature_high", 38.6, "degC");
/// Above this temperature of a horse the vet is rung.
pub const HORSE_TEMPERATURE_RING: Published<f64> =
    horse("safety.horse_temperature_ring", 38.9, "degC");
/// The slowest pulse of a resting horse.
pub const HORSE_PULSE_LOW: Published<f64> = horse("safety.horse_pulse_low", 28.0, "per minute");
/// The fastest pulse of a resting horse.
pub const HORSE_PULSE_HIGH: Published<f64> = horse("safety.horse_pulse_high", 44.0, "per minute");
/// Above this pulse of a horse at rest the vet is rung.
pub const HORSE_PULSE_RING: Published<f64> = horse("safety.horse_pulse_ring", 50.0, "per minute");
/// The slowest breathing of a resting horse.
pub const HORSE_BREATHS_LOW: Published<f64> = horse("safety.horse_breaths_low", 8.0, "per minute");
/// The fastest breathing of a resting horse.
pub const HORSE_BREATHS_HIGH: Published<f64> =
    horse("safety.horse_breaths_high", 16.0, "per minute");

/// The lowest temperature of a resting donkey.
pub const DONKEY_TEMPERATURE_LOW: Published<f64> =
    donkey("safety.donkey_temperature_low", 36.2, "degC");
/// The highest temperature of a resting donkey.
pub const DONKEY_TEMPERATURE_HIGH: Published<f64> =
    donkey("safety.donkey_temperature_high", 37.8, "degC");
/// The slowest pulse of a resting donkey.
pub const DONKEY_PULSE_LOW: Published<f64> = donkey("safety.donkey_pulse_low", 36.0, "per minute");
/// The fastest pulse of a resting donkey.
pub const DONKEY_PULSE_HIGH: Published<f64> =
    donkey("safety.donkey_pulse_high", 52.0, "per minute");
/// The slowest breathing of a resting donkey.
pub const DONKEY_BREATHS_LOW: Published<f64> =
    donkey("safety.donkey_breaths_low", 12.0, "per minute");
/// The fastest breathing of a resting donkey.
pub const DONKEY_BREATHS_HIGH: Published<f64> =
    donkey("safety.donkey_breaths_high", 28.0, "per minute");

list_constants![
    PPID_AGE,
    AFTER_TRIM_DAYS,
    OFF_FEED_HOURS,
    MORNING_FROM,
    AFTERNOON_FROM,
    EVENING_FROM,
    FOAL_YEARS,
    HORSE_TEMPERATURE_LOW,
    HORSE_TEMPERATURE_HIGH,
    HORSE_TEMPERATURE_RING,
    HORSE_PULSE_LOW,
    HORSE_PULSE_HIGH,
    HORSE_PULSE_RING,
    HORSE_BREATHS_LOW,
    HORSE_BREATHS_HIGH,
    DONKEY_TEMPERATURE_LOW,
    DONKEY_TEMPERATURE_HIGH,
    DONKEY_PULSE_LOW,
    DONKEY_PULSE_HIGH,
    DONKEY_BREATHS_LOW,
    DONKEY_BREATHS_HIGH,
];
