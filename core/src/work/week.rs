//! Weeks of work, from Monday to Sunday, and how far they have built an animal up.

use super::gait::GaitTimes;
use super::published::{BUILD_UP_WEEKS, UNFIT_MINUTES, WEEK_COUNTS};
use super::session::Session;
use crate::animal::{Answer, Workload};
use crate::units::{LocalDate, Span};
use chrono::{Datelike, Days};

/// Days of a week.
// numeric: the calendar's
const DAYS: u64 = 7;

/// The Monday of the week of a day.
pub fn week_from(day: LocalDate) -> LocalDate {
    let past = u64::from(day.weekday().num_days_from_monday());
    day.checked_sub_days(Days::new(past)).unwrap_or(day)
}

/// What was done in a week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Week {
    /// Its Monday.
    pub from: LocalDate,
    /// Sessions.
    pub sessions: u32,
    /// How long each gait was gone in all of them.
    pub times: GaitTimes,
}

impl Week {
    /// The week of a day.
    pub fn of(sessions: &[Session], day: LocalDate) -> Self {
        let from = week_from(day);
        sessions
            .iter()
            .filter(|session| week_from(session.day) == from)
            .fold(
                Self {
                    from,
                    sessions: 0,
                    times: GaitTimes::default(),
                },
                |week, session| Self {
                    sessions: week.sessions.saturating_add(1),
                    times: week.times.and(session.times),
                    ..week
                },
            )
    }
}

/// From what the building up of an animal is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CountsFrom {
    /// Sessions before this day do not count: it was stopped, or the vet's word was given then.
    pub since: Option<LocalDate>,
    /// Its work as it was described: one in work already needs no building up.
    pub work: Workload,
}

/// How many weeks of building up lie behind an animal, from 0 to one less than there are.
///
/// A week with three sessions or more is a step up, one with none a step down, any other leaves it where it is; the
/// present week counts when it is over. Sessions shorter than the first one asked do not count, and nothing does that lies
/// before what stopped it: a session after which it was not sound stopped it too.
pub fn built(sessions: &[Session], from: CountsFrom, today: LocalDate) -> u32 {
    let last = BUILD_UP_WEEKS.saturating_sub(1);
    let stopped = sessions
        .iter()
        .filter(|session| session.sound == Answer::No)
        .map(|session| session.day)
        .max();
    let since = from.since.max(stopped);
    let least = Span::minutes(i64::from(*UNFIT_MINUTES));
    let counts = |session: &&Session| {
        let after = stopped.is_none_or(|stopped| stopped < session.day)
            && since.is_none_or(|since| since <= session.day);
        after && session.day <= today && least <= session.times.total()
    };
    let in_work = !matches!(from.work, Workload::Maintenance(_)) && since.is_none();
    let mut step = if in_work { last } else { 0 };
    let Some(first) = sessions
        .iter()
        .filter(counts)
        .map(|session| session.day)
        .min()
    else {
        return step;
    };
    let this_week = week_from(today);
    let mut monday = week_from(first);
    while monday < this_week {
        let done = sessions
            .iter()
            .filter(counts)
            .filter(|session| week_from(session.day) == monday)
            .count();
        step = if *WEEK_COUNTS as usize <= done {
            step.saturating_add(1).min(last)
        } else if done == 0 {
            step.saturating_sub(1)
        } else {
            step
        };
        let Some(next) = monday.checked_add_days(Days::new(DAYS)) else {
            break;
        };
        monday = next;
    }
    step
}
