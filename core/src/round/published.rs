//! Constants of `round`.

use crate::sources::{Mark, Published, Work, list_constants};
use crate::units::{LocalTime, Span};

const fn ours<T>(
    id: &'static str,
    value: T,
    unit: &'static str,
    place: &'static str,
) -> Published<T>
where
    T: Copy,
{
    Published {
        id,
        value,
        unit,
        work: Work::Tussock,
        place,
        mark: Mark::Ours,
    }
}

/// How long before a visit its jobs count as due: whoever comes is in the yard a little earlier.
pub const DUE_BEFORE_VISIT: Published<Span> = ours(
    "round.due_before_visit",
    Span::minutes(15),
    "",
    "coming to a visit",
);
/// How long after a visit its jobs are not yet late: nets are hung one after another.
pub const VISIT_LATE_AFTER: Published<Span> = ours(
    "round.visit_late_after",
    Span::minutes(30),
    "",
    "walking a visit",
);
/// How long after its time a job at a tub is not yet late: the tub goes on soaking.
pub const TUB_LATE_AFTER: Published<Span> = ours(
    "round.tub_late_after",
    Span::minutes(5),
    "",
    "standing at a tub",
);
/// Days between weighings: the weekly check of the girths.
pub const WEIGH_EVERY: Published<i64> = ours(
    "round.weigh_every",
    7,
    "days",
    "practice section 4, a weekly check",
);
/// Days until a plan is looked at again when its review waits for the vet or for the animal's return.
pub const VET_REVIEW: Published<i64> = ours(
    "round.vet_review",
    14,
    "days",
    "as in the first days of a plan",
);
/// How long nobody must have answered before the days become one card.
pub const AWAY_AFTER: Published<Span> = ours(
    "round.away_after",
    Span::hours(24),
    "",
    "practice section 2, By exception",
);
/// The most days that one card goes back.
pub const AWAY_LOOK_BACK: Published<i64> = ours(
    "round.away_look_back",
    31,
    "days",
    "practice section 2, By exception",
);
/// How long before its time bringing in counts as due: the animal has to be caught and led.
pub const BRING_IN_DUE_BEFORE: Published<Span> = ours(
    "round.bring_in_due_before",
    Span::minutes(10),
    "",
    "walking to a paddock",
);
/// How long after going out an animal is to be brought in where nobody said when.
pub const BRING_IN_AFTER: Published<Span> = ours(
    "round.bring_in_after",
    Span::hours(1),
    "",
    "a short turnout: nobody forgets it over the day",
);
/// When the jobs of a day fall due where nobody said when somebody comes.
pub const MORNING: Published<LocalTime> = ours(
    "round.morning",
    match LocalTime::from_hms_opt(8, 0, 0) {
        Some(time) => time,
        None => LocalTime::MIN,
    },
    "local time",
    "defaults",
);

list_constants![
    DUE_BEFORE_VISIT,
    VISIT_LATE_AFTER,
    TUB_LATE_AFTER,
    WEIGH_EVERY,
    VET_REVIEW,
    AWAY_AFTER,
    AWAY_LOOK_BACK,
    MORNING,
    BRING_IN_DUE_BEFORE,
    BRING_IN_AFTER,
];
