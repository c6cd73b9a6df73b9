//! Constants of plans: parts, shares, looks again.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{LocalTime, PartOfBody, Span};

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

/// An animal that may eat more than its level is reckoned to eat at most this.
pub const MOST_DRY_MATTER: Published<PartOfBody> = Published {
    id: "plan.most_dry_matter",
    value: PartOfBody::percent(2.5),
    unit: "",
    work: Work::CommonPractice,
    place: "dry matter intake ceiling of 2.5 to 3 %, the low end",
    mark: Mark::CommonPractice,
};
/// A mare in milk eats more.
pub const MOST_DRY_MATTER_IN_MILK: Published<PartOfBody> = Published {
    id: "plan.most_dry_matter_in_milk",
    value: PartOfBody::percent(3.0),
    unit: "",
    work: Work::CommonPractice,
    place: "dry matter intake ceiling of 2.5 to 3 %, the high end",
    mark: Mark::CommonPractice,
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
    PARTS_SLACK,
    SHARE_LEAST,
    SHARE_MOST,
    LOOK_AGAIN_SOON,
    LOOK_AGAIN_BEFORE,
    LOOK_AGAIN_TONIGHT,
    MOST_DRY_MATTER,
    MOST_DRY_MATTER_IN_MILK,
];
