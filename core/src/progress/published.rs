//! Constants of `progress`: from when on something is done.

use crate::sources::{Mark, Published, Work, list_constants};

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

/// A chance from which on something is done.
pub const LIKELY: Published<f64> =
    ours("progress.likely", 0.8, "chance", "practice rule 13, 4 in 5");
/// Days over which a rate must have been watched before amounts change.
pub const LEAST_DAYS: Published<i64> = Published {
    id: "progress.least_days",
    value: 28,
    unit: "days",
    work: Work::Wooldridge2017,
    place: "no loss in a month: cut",
    mark: Mark::Published,
};
/// Readings over which a rate must have been watched before amounts change.
pub const LEAST_READINGS: Published<u32> =
    ours("progress.least_readings", 5, "readings", "practice rule 13");
/// A loss a week under which nothing moves.
pub const SLOW: Published<f64> = ours(
    "progress.slow",
    0.0025,
    "of body weight a week",
    "practice rule 13",
);
/// A loss a week from which on it is on course.
pub const ON_COURSE: Published<f64> = Published {
    id: "progress.on_course",
    value: 0.005,
    unit: "of body weight a week",
    work: Work::Eceim2019,
    place: "aim at 0.5 to 1 % a week",
    mark: Mark::FromMemory,
};
/// A loss a week over which it is fed more.
pub const FAST: Published<f64> = Published {
    id: "progress.fast",
    value: 0.01,
    unit: "of body weight a week",
    work: Work::Eceim2019,
    place: "aim at 0.5 to 1 % a week",
    mark: Mark::FromMemory,
};
/// Weighings of a new animal before anything is decided.
pub const NEW_WEIGHINGS: Published<u32> =
    ours("progress.new_weighings", 2, "weighings", "phases: new");
/// Readings over the band of a holding animal after which it is losing again.
pub const READINGS_OVER: Published<u32> =
    ours("progress.readings_over", 2, "readings", "phases: holding");
/// Centimetres of girth by which a holding animal has grown when it is losing again.
pub const GIRTH_UP_CM: Published<f64> = ours("progress.girth_up", 2.0, "cm", "phases: holding");
/// Condition under which the vet is asked before anything else.
pub const VERY_THIN: Published<f64> = ours(
    "progress.very_thin",
    3.0,
    "condition 1 to 9",
    "under it no target is reckoned",
);
/// Scores that show an animal has filled out.
pub const SCORES_FILLED: Published<usize> = ours(
    "progress.scores_filled",
    2,
    "scores",
    "never on one reading",
);
/// By so much of the plan what was eaten may differ from it.
pub const OFF_PLAN: Published<f64> = ours(
    "progress.off_plan",
    0.1,
    "of the plan",
    "a tenth: more than a scale and a wet net are out",
);
/// The least part of what was offered that somebody saw, for the ledger to count as checked.
pub const LEAST_SEEN: Published<f64> = ours(
    "progress.least_seen",
    0.5,
    "of what was offered",
    "taken as planned is not seen",
);
/// The most of what was offered that nobody may know, for the ledger to count as checked.
pub const MOST_NOT_KNOWN: Published<f64> = ours(
    "progress.most_not_known",
    0.2,
    "of what was offered",
    "1 in 5, the other side of 4 in 5",
);
/// Days a lot must still last for a test to be worth asking about.
pub const LONG_LOT_DAYS: Published<i64> = ours(
    "progress.long_lot",
    42,
    "days",
    "practice section 3: a lot over 6 weeks",
);
/// Days before an episode that are looked back over.
pub const LOOK_BACK_DAYS: Published<u64> = ours(
    "progress.look_back",
    30,
    "days",
    "practice section 2, After an episode",
);

list_constants![
    LIKELY,
    LEAST_DAYS,
    LEAST_READINGS,
    SLOW,
    ON_COURSE,
    FAST,
    NEW_WEIGHINGS,
    READINGS_OVER,
    GIRTH_UP_CM,
    VERY_THIN,
    SCORES_FILLED,
    OFF_PLAN,
    LEAST_SEEN,
    MOST_NOT_KNOWN,
    LONG_LOT_DAYS,
    LOOK_BACK_DAYS,
];
