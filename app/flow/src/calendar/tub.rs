//! The calendar file of one tub: when to lift out, to feed and to throw away.

use super::{Calendar, Event, When};
use crate::views::remind::{Deadline, TubReminder};
use crate::words::RemindWords;

/// Minutes before lifting out at which it rings too: on the way to the tub.
const ON_THE_WAY: u32 = 5;
/// Minutes before throwing away at which it rings too.
const TO_COLLECT: u32 = 30;

/// The file of a tub. A step that is done, and every step of a tub that is over, is cancelled in it.
pub fn tub(of: &TubReminder, words: &impl RemindWords) -> Calendar {
    let events = of
        .deadlines
        .iter()
        .map(|deadline| Event {
            id: format!("{}.{}", word(deadline.what), of.soak.0),
            revised: of.revised,
            when: When::At(deadline.at),
            says: words.bell_of_tub(deadline.what, of.tub.as_deref(), &of.whose),
            why: words.bell_of_tub_why(deadline.what).to_owned(),
            holds: deadline.open,
            rings_before: match deadline.what {
                Deadline::LiftOut => vec![0, ON_THE_WAY],
                Deadline::Feed => vec![0],
                Deadline::ThrowAway => vec![0, TO_COLLECT],
            },
        })
        .collect();
    Calendar {
        name: "tussock-tub.ics",
        events,
    }
}

/// The word of a deadline in an id. It is never changed: calendars hold it.
const fn word(deadline: Deadline) -> &'static str {
    match deadline {
        Deadline::LiftOut => "lift-out",
        Deadline::Feed => "feed",
        Deadline::ThrowAway => "throw-away",
    }
}
