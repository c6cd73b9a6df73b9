//! The calendar file of the day's routine: every visit of every plan, until its review.

use super::{Calendar, Event, When};
use crate::views::remind::{DailyBell, DayReminder};
use crate::words::RemindWords;

/// The file of the day. It names no amounts: a calendar would still say them when the plan has changed.
pub fn day(of: &DayReminder, words: &impl RemindWords) -> Calendar {
    let event = |bell: &DailyBell, holds| {
        let (kind, subject) = bell.subject.parts();
        let what = if bell.soak { "soak" } else { "visit" };
        Event {
            id: format!("{what}.{}.{kind}.{subject}", bell.visit),
            revised: of.revised,
            when: When::Daily {
                first: bell.first,
                last: bell.last,
                time: bell.time,
            },
            says: words.bell_of_day(bell),
            why: words.bell_of_day_why(bell.review),
            holds,
            rings_before: vec![0],
        }
    };
    let live = of.bells.iter().map(|bell| event(bell, true));
    let gone = of.gone.iter().map(|bell| event(bell, false));
    Calendar {
        name: "tussock-day.ics",
        events: live.chain(gone).collect(),
    }
}
