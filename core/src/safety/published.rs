//! Ages and times at which safety speaks.

use crate::sources::{Mark, Published, Work, list_constants};

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

list_constants![PPID_AGE, AFTER_TRIM_DAYS, OFF_FEED_HOURS];
