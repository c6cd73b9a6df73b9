//! Work, as practice rule 17 gives it.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{LocalTime, Span};

const fn practice(id: &'static str, value: u32, unit: &'static str) -> Published<u32> {
    Published {
        id,
        value,
        unit,
        work: Work::CommonPractice,
        place: "work for insulin-dysregulated animals",
        mark: Mark::CommonPractice,
    }
}

const fn ours(id: &'static str, value: u32, unit: &'static str) -> Published<u32> {
    Published {
        id,
        value,
        unit,
        work: Work::Tussock,
        place: "building up the unfit",
        mark: Mark::Ours,
    }
}

/// Minutes of a session: over 30.
pub const WORK_MINUTES: Published<u32> = practice("plan.work_minutes", 30, "min");
/// Sessions a week of a sound animal: five or six.
pub const WORK_A_WEEK: Published<u32> = practice("plan.work_a_week", 5, "a week");
/// Sessions a week after recovery: three or more.
pub const RECOVERED_A_WEEK: Published<u32> = Published {
    id: "plan.recovered_a_week",
    value: 3,
    unit: "a week",
    work: Work::Eceim2019,
    place: "exercise after laminitis",
    mark: Mark::FromMemory,
};
/// Minutes to begin with when unfit.
pub const UNFIT_MINUTES: Published<u32> = ours("plan.unfit_minutes", 15, "min");
/// Weeks over which to build up.
pub const BUILD_UP_WEEKS: Published<u32> = ours("plan.build_up_weeks", 4, "weeks");

/// How far the parts of forages may be from adding up.
pub const PARTS_SLACK: Published<f64> = Published {
    id: "plan.parts_slack",
    value: 1e-6,
    unit: "of the forage",
    work: Work::Tussock,
    place: "plan/published.rs",
    mark: Mark::Ours,
};

/// A member of a group eats at least this part of its share by weight.
pub const SHARE_LEAST: Published<f64> = Published {
    id: "plan.share_least",
    value: 0.7,
    unit: "of its share by weight",
    work: Work::Tussock,
    place: "practice section 2, Together",
    mark: Mark::Ours,
};
/// A member of a group eats at most this part of its share by weight.
pub const SHARE_MOST: Published<f64> = Published {
    id: "plan.share_most",
    value: 1.4,
    unit: "of its share by weight",
    work: Work::Tussock,
    place: "practice section 2, Together",
    mark: Mark::Ours,
};

const fn rule_15<T: Copy>(id: &'static str, value: T, unit: &'static str) -> Published<T> {
    Published {
        id,
        value,
        unit,
        work: Work::Tussock,
        place: "practice rule 15",
        mark: Mark::Ours,
    }
}

/// How long after a warm hoof or lying more somebody looks again; a look so long before the evening's is the evening's.
pub const LOOK_AGAIN_SOON: Published<Span> = rule_15("plan.look_again_soon", Span::hours(2), "");
/// How much before its time a look again counts.
pub const LOOK_AGAIN_BEFORE: Published<Span> =
    rule_15("plan.look_again_before", Span::minutes(15), "");
/// When somebody looks again in the evening.
pub const LOOK_AGAIN_TONIGHT: Published<LocalTime> = rule_15(
    "plan.look_again_tonight",
    match LocalTime::from_hms_opt(20, 0, 0) {
        Some(time) => time,
        None => LocalTime::MIN,
    },
    "local time",
);

list_constants![
    WORK_MINUTES,
    WORK_A_WEEK,
    RECOVERED_A_WEEK,
    UNFIT_MINUTES,
    BUILD_UP_WEEKS,
    PARTS_SLACK,
    SHARE_LEAST,
    SHARE_MOST,
    LOOK_AGAIN_SOON,
    LOOK_AGAIN_BEFORE,
    LOOK_AGAIN_TONIGHT,
];
