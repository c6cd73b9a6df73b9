//! Eating rates, gaps and what mends them.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{Bounds, Length, LocalTime};

const fn glunk(
    id: &'static str,
    value: f64,
    unit: &'static str,
    place: &'static str,
) -> Published<f64> {
    Published {
        id,
        value,
        unit,
        work: Work::Glunk2014Nets,
        place,
        mark: Mark::Published,
    }
}

/// Hours to eat 1 % of body weight from the floor.
pub const HOURS_LOOSE: Published<f64> = glunk(
    "day.hours_loose",
    3.1,
    "h per 1 % of body weight",
    "abstract, time to finish",
);
/// Hours to eat 1 % of body weight from a net with 15.2 cm holes.
pub const HOURS_LARGE: Published<f64> = glunk(
    "day.hours_large",
    3.4,
    "h per 1 % of body weight",
    "abstract, time to finish",
);
/// Hours to eat 1 % of body weight from a net with 4.4 cm holes.
pub const HOURS_MEDIUM: Published<f64> = glunk(
    "day.hours_medium",
    5.1,
    "h per 1 % of body weight",
    "abstract, time to finish",
);
/// Hours to eat 1 % of body weight from a net with 3.2 cm holes.
pub const HOURS_SMALL: Published<f64> = glunk(
    "day.hours_small",
    6.5,
    "h per 1 % of body weight",
    "abstract, time to finish",
);

/// Rate from the floor.
pub const RATE_LOOSE: Published<f64> =
    glunk("day.rate_loose", 1.49, "kg dry matter/h", "mean rate");
/// Rate from a net with 15.2 cm holes.
pub const RATE_LARGE: Published<f64> =
    glunk("day.rate_large", 1.33, "kg dry matter/h", "mean rate");
/// Rate from a net with 4.4 cm holes.
pub const RATE_MEDIUM: Published<f64> =
    glunk("day.rate_medium", 1.11, "kg dry matter/h", "mean rate");
/// Rate from a net with 3.2 cm holes.
pub const RATE_SMALL: Published<f64> =
    glunk("day.rate_small", 0.88, "kg dry matter/h", "mean rate");

const fn hole(id: &'static str, cm: f64) -> Published<Length> {
    Published {
        id,
        value: Length::cm(cm),
        unit: "",
        work: Work::Glunk2014Nets,
        place: "hole sizes of the trial",
        mark: Mark::Published,
    }
}

/// The small holes of the trial.
pub const HOLE_SMALL: Published<Length> = hole("day.hole_small", 3.2);
/// The medium holes of the trial.
pub const HOLE_MEDIUM: Published<Length> = hole("day.hole_medium", 4.4);
/// The large holes of the trial.
pub const HOLE_LARGE: Published<Length> = hole("day.hole_large", 15.2);

/// Grams of dry matter a kilogram of body weight an hour, from the floor, in the same trial.
pub const LOOSE_PER_BODY: Published<f64> = Published {
    id: "day.loose_per_body",
    value: 3.0,
    unit: "g dry matter/kg body weight/h",
    work: Work::Glunk2014Nets,
    place: "1.5 kg/h for horses of about 500 kg",
    mark: Mark::WorkedOut,
};

/// How much longer a double net lasts than a single one: 16:45 to 03:00 against 16:45 to 01:38.
pub const DOUBLE_NET: Published<f64> = Published {
    id: "day.double_net",
    value: 1.154,
    unit: "times as long",
    work: Work::Ellis2015,
    place: "6 kg from single and double 2.5 cm nets, finishing times",
    mark: Mark::WorkedOut,
};

/// How far an animal's rate lies from the published one, each way.
pub const RATE_SPREAD: Published<f64> = Published {
    id: "day.rate_spread",
    value: 0.2,
    unit: "of the rate",
    work: Work::Tussock,
    place: "day/published.rs",
    mark: Mark::Ours,
};

/// The gap to plan for by day.
pub const GAP_PLANNED: Published<f64> = Published {
    id: "day.gap_planned",
    value: 4.0,
    unit: "h",
    work: Work::Harris2017,
    place: "no more than 4 to 5 h without forage",
    mark: Mark::FromMemory,
};

/// The gap that is not to be passed.
pub const GAP_LINE: Published<f64> = Published {
    id: "day.gap_line",
    value: 6.0,
    unit: "h",
    work: Work::Luthersson2009,
    place: "more than 6 h between forage meals, odds of gastric ulcers",
    mark: Mark::FromMemory,
};

/// How much worse than the accepted plan the real day may be before it alarms.
pub const GAP_ALARM: Published<f64> = Published {
    id: "day.gap_alarm",
    value: 1.0,
    unit: "h",
    work: Work::Tussock,
    place: "practice rule 10",
    mark: Mark::Ours,
};

/// Less than so many hours' forage is no net: it is not laid out, and a wait is not cut in two by it.
pub const LEAST_NET_H: Published<f64> = Published {
    id: "day.least_net_h",
    value: 0.25,
    unit: "h",
    work: Work::Tussock,
    place: "day/published.rs",
    mark: Mark::Ours,
};

/// How much longer a kilogram of straw is eaten than one of hay.
pub const STRAW_LONGER: Published<f64> = Published {
    id: "day.straw_longer",
    value: 1.25,
    unit: "times as long",
    work: Work::CommonPractice,
    place: "straw is chewed longer than hay; from memory, and the low end of it",
    mark: Mark::FromMemory,
};

/// The smallest part of the forage that straw is proposed for.
pub const STRAW_STEP: Published<f64> = Published {
    id: "day.straw_step",
    value: 0.05,
    unit: "of forage dry matter",
    work: Work::Tussock,
    place: "day/published.rs",
    mark: Mark::Ours,
};

/// Straw is at most this part of forage for horses and ponies.
pub const STRAW_PART: Published<f64> = Published {
    id: "day.straw_part",
    value: 0.3,
    unit: "of forage dry matter",
    work: Work::Jansson2021,
    place: "half of forage in the trial; 30 to 50 % as a cap is from memory",
    mark: Mark::FromMemory,
};

/// The smallest step a net is weighed to.
pub const SCALE_STEP: Published<f64> = Published {
    id: "day.scale_step",
    value: 0.05,
    unit: "kg",
    work: Work::CommonPractice,
    place: "hanging scales of 50 g",
    mark: Mark::CommonPractice,
};

/// How far a reading may be from its target and still count as within it: a step of the scale.
pub const SCALE_WITHIN: Published<f64> = Published {
    id: "day.scale_within",
    value: 0.05,
    unit: "kg",
    work: Work::CommonPractice,
    place: "hanging scales of 50 g",
    mark: Mark::CommonPractice,
};
/// A reading of this part of its target or less, or of that much or more, is asked back: a slip of the finger or of the
/// hook is likelier.
pub const SCALE_DOUBT: Published<[f64; 2]> = Published {
    id: "day.scale_doubt",
    value: [0.55, 1.8],
    unit: "of the target",
    work: Work::Tussock,
    place: "about half and about double",
    mark: Mark::Ours,
};
/// What an empty net weighs when nobody weighed it.
pub const NET_OWN_WEIGHT: Published<f64> = Published {
    id: "day.net_own_weight",
    value: 0.75,
    unit: "kg",
    work: Work::Tussock,
    place: "defaults; asked with the first net",
    mark: Mark::Ours,
};

/// Night for the longest gap: from this hour.
pub const NIGHT_FROM: Published<u32> = Published {
    id: "day.night_from",
    value: 20,
    unit: "hour of the day",
    work: Work::Tussock,
    place: "after Husted 2009: fasting by night did no harm where fasting by day did; the hours are ours",
    mark: Mark::Ours,
};

/// Night for the longest gap: to this hour.
pub const NIGHT_TO: Published<u32> = Published {
    id: "day.night_to",
    value: 7,
    unit: "hour of the day",
    work: Work::Tussock,
    place: "after Husted 2009: fasting by night did no harm where fasting by day did; the hours are ours",
    mark: Mark::Ours,
};

/// The earliest and the latest visit that is proposed.
pub const VISIT_HOURS: Published<[LocalTime; 2]> = Published {
    id: "day.visit_hours",
    value: match (
        LocalTime::from_hms_opt(6, 0, 0),
        LocalTime::from_hms_opt(22, 0, 0),
    ) {
        (Some(first), Some(last)) => [first, last],
        _ => [LocalTime::MIN; 2],
    },
    unit: "local time",
    work: Work::Tussock,
    place: "nobody is asked to get up at night",
    mark: Mark::Ours,
};

/// What a day's dry matter may be, in kilograms.
pub const DAY_DRY_MATTER: Published<Bounds> = Published {
    id: "day.day_dry_matter",
    value: Bounds::new("day_dry_matter_kg", 0.1, 60.0),
    unit: "",
    work: Work::Tussock,
    place: "outside it a misplaced decimal is likelier",
    mark: Mark::Ours,
};
/// What a measured eating rate may be, in kilograms of dry matter an hour.
pub const MEASURED_RATE: Published<Bounds> = Published {
    id: "day.measured_rate",
    value: Bounds::new("eating_rate_kg_per_h", 0.02, 6.0),
    unit: "",
    work: Work::Tussock,
    place: "outside it a misplaced decimal is likelier",
    mark: Mark::Ours,
};

/// The longest that somebody is taken to have looked in on a net; a net that took longer was found empty, and its time is
/// the most it can have taken.
pub const WATCHED_MOST: Published<f64> = Published {
    id: "day.watched_most",
    value: 8.0,
    unit: "h",
    work: Work::Tussock,
    place: "day/published.rs; a night without anybody looking is longer",
    mark: Mark::Ours,
};
/// How many of the last timings make the animal's own rate: it learns, and its teeth change.
pub const TIMINGS_USED: Published<usize> = Published {
    id: "day.timings_used",
    value: 5,
    unit: "last timings",
    work: Work::Tussock,
    place: "day/published.rs",
    mark: Mark::Ours,
};
/// How far a judgement by eye in quarters may be out, either way.
pub const EYE_BAND: Published<f64> = Published {
    id: "day.eye_band",
    value: 0.125,
    unit: "of the net",
    work: Work::Tussock,
    place: "half a quarter",
    mark: Mark::Ours,
};
/// What a kilogram of wet hay that was left stands for against a kilogram of the same net as it was hung: rain makes it
/// heavier, and it dries as it hangs.
pub const WET_BAND: Published<[f64; 2]> = Published {
    id: "day.wet_band",
    value: [0.9, 1.25],
    unit: "of the part by weight",
    work: Work::Tussock,
    place: "day/published.rs; rain and drying while it hangs",
    mark: Mark::Ours,
};
/// How wide a hole may be, in centimetres.
pub const HOLE: Published<Bounds> = Published {
    id: "day.hole",
    value: Bounds::new("hole_cm", 0.5, 40.0),
    unit: "",
    work: Work::Tussock,
    place: "outside it millimetres for centimetres are likelier",
    mark: Mark::Ours,
};
/// What a key beside the slot of the scale puts in or takes out.
pub const KEY_STEP: Published<f64> = Published {
    id: "day.key_step",
    value: 0.1,
    unit: "kg",
    work: Work::CommonPractice,
    place: "a large handful",
    mark: Mark::CommonPractice,
};

list_constants![
    HOLE_SMALL,
    HOLE_MEDIUM,
    HOLE_LARGE,
    HOURS_LOOSE,
    HOURS_LARGE,
    HOURS_MEDIUM,
    HOURS_SMALL,
    RATE_LOOSE,
    RATE_LARGE,
    RATE_MEDIUM,
    RATE_SMALL,
    LOOSE_PER_BODY,
    DOUBLE_NET,
    RATE_SPREAD,
    GAP_PLANNED,
    GAP_LINE,
    GAP_ALARM,
    LEAST_NET_H,
    STRAW_LONGER,
    STRAW_STEP,
    STRAW_PART,
    SCALE_STEP,
    SCALE_WITHIN,
    SCALE_DOUBT,
    NET_OWN_WEIGHT,
    NIGHT_FROM,
    NIGHT_TO,
    VISIT_HOURS,
    DAY_DRY_MATTER,
    MEASURED_RATE,
    WATCHED_MOST,
    TIMINGS_USED,
    EYE_BAND,
    WET_BAND,
    HOLE,
    KEY_STEP,
];
