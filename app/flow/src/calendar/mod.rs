//! Calendar files (RFC 5545): what rings when no page is open, because the device's own calendar rings it.
//!
//! Deadlines of a tub are instants of UTC: a change of the zone or of the clock does not move them. The day's routine is
//! floating local time with a daily rule: 20:00 stays 20:00 over a clock change. Lines end in CRLF and have at most 75
//! octets; alarms stand last in their event, because some calendars find no event otherwise; no method is named, so that
//! a calendar takes the file as its own. The same records always make the same file.

mod day;
mod event;
mod fold;
mod text;
mod tub;

#[cfg(test)]
pub(crate) mod tests;

pub use day::day;
pub use event::{Event, When, sequence};
pub use tub::tub;

use fold::line;

/// Who made the file, as every calendar file must say.
const MADE_BY: &str = "-//Tussock//Tussock//EN";

/// The type of a calendar file.
pub const CALENDAR_TYPE: &str = "text/calendar";

/// A calendar file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Calendar {
    /// What the file is called.
    pub name: &'static str,
    /// Its events.
    pub events: Vec<Event>,
}

impl Calendar {
    /// The text of the file.
    pub fn text(&self) -> String {
        let mut out = String::new();
        for fixed in ["BEGIN:VCALENDAR", "VERSION:2.0"] {
            line(&mut out, fixed);
        }
        line(&mut out, &format!("PRODID:{MADE_BY}"));
        line(&mut out, "CALSCALE:GREGORIAN");
        for event in &self.events {
            event.write(&mut out);
        }
        line(&mut out, "END:VCALENDAR");
        out
    }
}
