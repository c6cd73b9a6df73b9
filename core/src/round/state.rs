//! How a job stands to now.

use super::job::JobState;
use super::key::JobKind;
use super::published::{BRING_IN_DUE_BEFORE, DUE_BEFORE_VISIT, TUB_LATE_AFTER, VISIT_LATE_AFTER};
use crate::units::{Instant, LocalDate, LocalStamp, LocalTime, Span, Zone};

/// The instant of a local time on a day: a missing hour goes forward, a doubled hour takes the first.
pub(super) fn at(zone: &impl Zone, date: LocalDate, time: LocalTime) -> Instant {
    zone.to_instant(LocalStamp { date, time }).planned()
}

/// A day after another; `None` beyond the calendar.
pub(super) fn plus(day: LocalDate, days: i64) -> Option<LocalDate> {
    day.checked_add_signed(chrono::TimeDelta::try_days(days)?)
}

/// From when a job is due, and from when it is late.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Window {
    due: Instant,
    late: Instant,
}

impl Window {
    /// Of a job of a visit, or of a step of a soak: a tub is not to be touched before its time.
    pub(super) fn of(kind: JobKind, due: Instant) -> Self {
        let (before, after) = if kind.is_of_a_tub() {
            (Span::ZERO, *TUB_LATE_AFTER)
        } else {
            (*DUE_BEFORE_VISIT, *VISIT_LATE_AFTER)
        };
        Self {
            due: due - before,
            late: due + after,
        }
    }

    /// Of a job of a whole day: due from its midnight, late from the next.
    pub(super) fn of_day(zone: &impl Zone, day: LocalDate) -> Self {
        let midnight = |day| at(zone, day, LocalTime::MIN);
        let due = midnight(day);
        Self {
            due,
            late: plus(day, 1).map_or(due, midnight),
        }
    }

    /// Of bringing in: due a little before its time, for it has to be caught, and late after it.
    pub(super) fn of_turnout(by: Instant) -> Self {
        Self {
            due: by - *BRING_IN_DUE_BEFORE,
            late: by,
        }
    }

    /// The state of a job with this window that is for `due`.
    pub(super) fn state(self, due: Instant, now: Instant) -> JobState {
        if now < self.due {
            JobState::Later
        } else if now < self.late {
            JobState::Due
        } else {
            JobState::Late { by: now.since(due) }
        }
    }
}
