//! Work, as practice rule 17 gives it, and the published equations of its energy.

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

const fn practice<T: Copy>(id: &'static str, value: T, unit: &'static str) -> Published<T> {
    let place = "work for insulin-dysregulated animals";
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

const fn pagan_hintz(id: &'static str, value: f64, unit: &'static str) -> Published<f64> {
    let place = "equation of energy above maintenance by speed";
    of(
        id,
        value,
        unit,
        Work::PaganHintz1986,
        place,
        Mark::Published,
    )
}

const fn anderson(id: &'static str, value: f64, unit: &'static str) -> Published<f64> {
    let place = "daily form";
    of(id, value, unit, Work::Anderson1983, place, Mark::Published)
}

const fn speeds(id: &'static str, value: [f64; 2], place: &'static str) -> Published<[f64; 2]> {
    let unit = "m/min";
    of(
        id,
        value,
        unit,
        Work::PaganHintz1986,
        place,
        Mark::FromMemory,
    )
}

const fn eceim<T: Copy>(
    id: &'static str,
    value: T,
    unit: &'static str,
    place: &'static str,
) -> Published<T> {
    of(id, value, unit, Work::Eceim2019, place, Mark::FromMemory)
}

const fn moving<T: Copy>(id: &'static str, value: T, unit: &'static str) -> Published<T> {
    of(
        id,
        value,
        unit,
        Work::DeLaat2016,
        "abstract",
        Mark::Published,
    )
}

/// Minutes of a session: over 30.
pub const WORK_MINUTES: Published<u32> = practice("work.minutes", 30, "min");
/// Sessions a week of a sound animal: five or six.
pub const WORK_A_WEEK: Published<u32> = practice("work.a_week", 5, "a week");
/// Sessions a week after recovery: three or more.
pub const RECOVERED_A_WEEK: Published<u32> = eceim(
    "work.recovered_a_week",
    3,
    "a week",
    "exercise after laminitis",
);
/// Sessions a week of a donkey or mule: nothing is published.
pub const DONKEY_A_WEEK: Published<u32> =
    ours("work.donkey_a_week", 3, "a week", "walking a donkey");
/// Minutes to begin with when unfit.
pub const UNFIT_MINUTES: Published<u32> = ours(
    "work.unfit_minutes",
    15,
    "min",
    "practice rule 17, building up the unfit",
);
/// Weeks over which to build up.
pub const BUILD_UP_WEEKS: Published<u32> = ours(
    "work.build_up_weeks",
    4,
    "weeks",
    "practice rule 17, building up the unfit",
);
/// Sessions that make a week one that is built upon.
pub const WEEK_COUNTS: Published<u32> = ours(
    "work.week_counts",
    3,
    "a week",
    "practice rule 17, three sessions are not zero",
);
/// Minutes of walk before and after the faster work.
pub const WALK_MINUTES: Published<[u32; 2]> = of(
    "work.walk_minutes",
    [5, 5],
    "min",
    Work::Bamford2019,
    "sessions",
    Mark::Published,
);
/// Minutes of canter in a whole session; the rest of it is trot.
pub const CANTER_MINUTES: Published<u32> = ours(
    "work.canter_minutes",
    5,
    "min",
    "the parts of a session that is built up",
);
/// How long after the work it may blow, where nobody has a heart rate monitor.
pub const SETTLES_MINUTES: Published<u32> = practice("work.settles_minutes", 10, "min");
/// The heart rate in work of an animal that never had laminitis.
pub const HEART_SOUND: Published<[f64; 2]> = eceim(
    "work.heart_sound",
    [130.0, 170.0],
    "beats/min",
    "exercise, never laminitic",
);
/// The heart rate in work of one that recovered from laminitis.
pub const HEART_RECOVERED: Published<[f64; 2]> = eceim(
    "work.heart_recovered",
    [110.0, 150.0],
    "beats/min",
    "exercise after laminitis",
);

/// Pagan and Hintz, in the exponent.
pub const PH_BASE: Published<f64> = pagan_hintz("work.ph_base", 3.02, "");
/// Pagan and Hintz, in the exponent by speed.
pub const PH_SPEED: Published<f64> = pagan_hintz("work.ph_speed", 0.0065, "a m/min");
/// Pagan and Hintz, what is spent at rest.
pub const PH_REST: Published<f64> = pagan_hintz("work.ph_rest", 13.92, "cal/kg/min");
/// Pagan and Hintz, from a minute's calories to an hour's kilocalories.
pub const PH_HOUR: Published<f64> = pagan_hintz("work.ph_hour", 0.06, "kcal min/(cal h)");
/// Pagan and Hintz, the part of digestible energy that work can use.
pub const PH_EFFICIENCY: Published<f64> =
    pagan_hintz("work.ph_efficiency", 0.57, "of digestible energy");
/// Pagan and Hintz, the fastest that was measured.
pub const PH_FASTEST: Published<f64> = pagan_hintz("work.ph_fastest", 400.0, "m/min");

/// Anderson, a day without work.
pub const ANDERSON_BASE: Published<f64> = anderson("work.anderson_base", 5.97, "Mcal/d");
/// Anderson, by weight.
pub const ANDERSON_WEIGHT: Published<f64> = anderson("work.anderson_weight", 0.021, "Mcal/kg/d");
/// Anderson, by work.
pub const ANDERSON_WORK: Published<f64> =
    anderson("work.anderson_work", 5.036, "Mcal a 1,000 kg km");
/// Anderson, by the square of the work.
pub const ANDERSON_SQUARE: Published<f64> =
    anderson("work.anderson_square", -0.48, "Mcal a (1,000 kg km)²");
/// Anderson, the most work that was measured.
pub const ANDERSON_MOST: Published<f64> = anderson("work.anderson_most", 3.56, "1,000 kg km/d");

/// Eaton, oxygen by heart rate: the factor.
pub const EATON_FACTOR: Published<f64> = of(
    "work.eaton_factor",
    0.0019,
    "mL/kg/min",
    Work::Eaton1995,
    "in NRC 2007",
    Mark::FromMemory,
);
/// Eaton, oxygen by heart rate: the power.
pub const EATON_POWER: Published<f64> = of(
    "work.eaton_power",
    2.0653,
    "",
    Work::Eaton1995,
    "in NRC 2007",
    Mark::FromMemory,
);

/// A slow and a fast walk.
pub const WALK_SPEEDS: Published<[f64; 2]> =
    speeds("work.walk_speeds", [59.0, 95.0], "slow and fast walk");
/// A slow and a fast trot.
pub const TROT_SPEEDS: Published<[f64; 2]> =
    speeds("work.trot_speeds", [200.0, 300.0], "slow and fast trot");
/// A slow and a medium canter.
pub const CANTER_SPEEDS: Published<[f64; 2]> = speeds(
    "work.canter_speeds",
    [300.0, 350.0],
    "slow and medium canter",
);
/// Rider and tack that nobody weighed, at least and at most, as a part of the animal's weight.
pub const LOAD_NOT_KNOWN: Published<[f64; 2]> = ours(
    "work.load_not_known",
    [0.1, 0.2],
    "of body weight",
    "rider and tack, a tenth to a fifth",
);
/// Minutes of one gait in a session that are believed.
pub const LONGEST_MINUTES: Published<f64> = ours(
    "work.longest_minutes",
    600.0,
    "min",
    "ten hours in the saddle",
);
/// Heart rates that are believed.
pub const HEART_BELIEVED: Published<[f64; 2]> = ours(
    "work.heart_believed",
    [20.0, 260.0],
    "beats/min",
    "wider than any living equid",
);
/// Hours after which a session on the clock was left running, and is written down by hand.
pub const LEFT_RUNNING_HOURS: Published<i64> = ours(
    "work.left_running_hours",
    10,
    "h",
    "as long as the longest session",
);

/// How much farther ponies went at a feeder that moves.
pub const MOVING_TIMES: Published<f64> = moving("work.moving_times", 3.7, "times the distance");
/// Their condition before and after three months.
pub const MOVING_CONDITION: Published<[f64; 2]> =
    moving("work.moving_condition", [6.53, 5.38], "condition 1 to 9");
/// Their crest before and after.
pub const MOVING_CREST: Published<[f64; 2]> =
    moving("work.moving_crest", [2.56, 1.63], "crest score 0 to 5");

list_constants![
    WORK_MINUTES,
    WORK_A_WEEK,
    RECOVERED_A_WEEK,
    DONKEY_A_WEEK,
    UNFIT_MINUTES,
    BUILD_UP_WEEKS,
    WEEK_COUNTS,
    WALK_MINUTES,
    CANTER_MINUTES,
    SETTLES_MINUTES,
    HEART_SOUND,
    HEART_RECOVERED,
    PH_BASE,
    PH_SPEED,
    PH_REST,
    PH_HOUR,
    PH_EFFICIENCY,
    PH_FASTEST,
    ANDERSON_BASE,
    ANDERSON_WEIGHT,
    ANDERSON_WORK,
    ANDERSON_SQUARE,
    ANDERSON_MOST,
    EATON_FACTOR,
    EATON_POWER,
    WALK_SPEEDS,
    TROT_SPEEDS,
    CANTER_SPEEDS,
    LOAD_NOT_KNOWN,
    LONGEST_MINUTES,
    HEART_BELIEVED,
    LEFT_RUNNING_HOURS,
    MOVING_TIMES,
    MOVING_CONDITION,
    MOVING_CREST,
];
