//! Whether grass is in its flush on a day, and how long until it is.

use super::part::{Note, Noted, YearPart};
use super::published::{FLUSH_LASTS, MAY_BE_EARLY, RAIN_LASTS};
use super::year::{begins, follows_rain, usual_part};
use crate::graze::sun::Latitude;
use crate::units::LocalDate;
use chrono::{Datelike, Duration};

/// What an answer rests on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Known {
    /// The calendar of the latitude.
    ByLatitude,
    /// What a person saw, on this day.
    ByNote(LocalDate),
}

/// Whether grass is in its flush.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Flush {
    /// It is.
    On(Known),
    /// It is not, and by the calendar it begins on this day, which is less than three weeks off.
    Near {
        /// The usual first day.
        usual: LocalDate,
    },
    /// It is not.
    Off(Known),
    /// Nobody said where the place is, or grass follows the rain there, and nobody noted anything.
    NotKnown,
}

impl Flush {
    /// Whether grass is in its flush for certain.
    pub const fn is_on(self) -> bool {
        matches!(self, Self::On(_))
    }
}

/// The season of a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SeasonOn {
    /// Whether grass is in its flush.
    pub flush: Flush,
    /// Whether rain after a dry time makes it grow again: by a note of the last six weeks, or by the calendar.
    pub autumn: bool,
    /// The part by the calendar; `None` where nobody said the place.
    pub part: Option<YearPart>,
}

impl SeasonOn {
    /// A day of which nothing is known.
    pub const NOT_KNOWN: Self = Self {
        flush: Flush::NotKnown,
        autumn: false,
        part: None,
    };
}

fn days_since(day: LocalDate, earlier: LocalDate) -> i64 {
    (day - earlier).num_days()
}

/// The last note of such a kind up to the day.
fn last(notes: &[Note], day: LocalDate, which: impl Fn(Noted) -> bool) -> Option<Note> {
    notes
        .iter()
        .filter(|note| note.date <= day && which(note.what))
        // A day with both is one on which it began.
        .max_by_key(|note| (note.date, note.what != Noted::FlushOver))
        .copied()
}

/// The usual first day of the first flush after a day.
fn next_usual(latitude: Latitude, after: LocalDate) -> Option<LocalDate> {
    begins(latitude, after.year())
        .into_iter()
        .find(|b| b.part == YearPart::Flush && after < b.on)
        .map(|b| b.on)
}

fn by_latitude(latitude: Option<Latitude>, day: LocalDate) -> Flush {
    let Some(latitude) = latitude.filter(|l| !follows_rain(*l)) else {
        return Flush::NotKnown;
    };
    if usual_part(latitude, day) == Some(YearPart::Flush) {
        return Flush::On(Known::ByLatitude);
    }
    match next_usual(latitude, day) {
        Some(usual) if days_since(usual, day) <= *MAY_BE_EARLY => Flush::Near { usual },
        _ => Flush::Off(Known::ByLatitude),
    }
}

fn flush(latitude: Option<Latitude>, day: LocalDate, notes: &[Note]) -> Flush {
    let by_latitude = by_latitude(latitude, day);
    let rain_counts = latitude.is_some_and(follows_rain);
    let said = last(notes, day, |what| match what {
        Noted::FlushBegan | Noted::FlushOver => true,
        Noted::AutumnRain => rain_counts,
        Noted::FirstFrost | Noted::HardFreeze | Noted::Drought | Noted::Other => false,
    });
    let Some(note) = said else {
        return by_latitude;
    };
    let since = days_since(day, note.date);
    let known = Known::ByNote(note.date);
    match note.what {
        Noted::FlushBegan if since <= *FLUSH_LASTS => Flush::On(known),
        Noted::AutumnRain if since <= *RAIN_LASTS => Flush::On(known),
        Noted::FlushOver => {
            // It holds until the next flush is due.
            let next = latitude.and_then(|l| next_usual(l, note.date));
            let due = next.unwrap_or_else(|| {
                let lasts = Duration::days(*FLUSH_LASTS);
                note.date.checked_add_signed(lasts).unwrap_or(note.date)
            });
            if day < due && !matches!(by_latitude, Flush::Near { .. }) {
                Flush::Off(known)
            } else {
                by_latitude
            }
        }
        _ => by_latitude,
    }
}

/// The season of a day at a latitude, with what a person noted.
///
/// The last note of this year holds before the calendar: "the flush began" for three months or until "the flush is over",
/// and that until the next flush is due. Notes of days to come are not read. In the tropics and subtropics, rain after a dry
/// time counts as a flush of six weeks (ours). Without a latitude and without a note it is not known.
pub fn season_on(latitude: Option<Latitude>, day: LocalDate, notes: &[Note]) -> SeasonOn {
    let part = latitude.and_then(|l| usual_part(l, day));
    let rained = last(notes, day, |what| what == Noted::AutumnRain)
        .is_some_and(|note| days_since(day, note.date) <= *RAIN_LASTS);
    SeasonOn {
        flush: flush(latitude, day, notes),
        autumn: rained || part == Some(YearPart::AutumnBreak),
        part,
    }
}

/// How long it is until the flush.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum UntilFlush {
    /// It is on.
    Begun,
    /// By the calendar it begins on this day.
    Begins {
        /// The usual first day; a year may be three weeks earlier.
        on: LocalDate,
        /// Whole weeks until then; below one week it is none.
        weeks: i64,
    },
    /// Grass follows the rain here, or nobody said where the place is.
    NotKnown,
}

/// How long it is until the flush: the time in which an animal can still come out of winter leaner.
pub fn until_flush(latitude: Option<Latitude>, day: LocalDate, notes: &[Note]) -> UntilFlush {
    if flush(latitude, day, notes).is_on() {
        return UntilFlush::Begun;
    }
    let next = latitude
        .filter(|l| !follows_rain(*l))
        .and_then(|l| next_usual(l, day));
    match next {
        None => UntilFlush::NotKnown,
        Some(on) => UntilFlush::Begins {
            on,
            // numeric: days of a week
            weeks: days_since(on, day) / 7,
        },
    }
}
