//! One event of a calendar file.

use super::fold::line;
use super::text::escape;
use chrono::DateTime;
use tussock_core::log::Stamp;
use tussock_core::units::{Instant, LocalDate, LocalTime};

/// The domain behind every id of ours.
const DOMAIN: &str = "tussock";
/// How long an event is drawn in a calendar, in minutes; it stands for a moment.
const DRAWN_MIN: u32 = 10;
/// 2026-01-01 00:00 UTC: the numbers of the versions count seconds from here.
const COUNTED_FROM: Instant = Instant::from_ms(1_767_225_600_000);
/// Milliseconds in a second.
const SECOND: i64 = 1_000;

/// When an event is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// At one instant; written in UTC.
    At(Instant),
    /// Every day at a time by the clock on the wall, the last day included; written without a zone.
    Daily {
        /// The first day.
        first: LocalDate,
        /// The last day.
        last: LocalDate,
        /// The time.
        time: LocalTime,
    },
}

/// An event.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Event {
    /// What it is called for ever, without our domain: letters, digits, dashes and points.
    pub id: String,
    /// The newest version among the records behind it.
    pub revised: Option<Stamp>,
    /// When.
    pub when: When,
    /// What it says.
    pub says: String,
    /// What stands behind it.
    pub why: String,
    /// Whether it holds. One that does not is written as cancelled, so that a calendar that has it takes it out.
    pub holds: bool,
    /// How many minutes before it rings.
    pub rings_before: Vec<u32>,
}

/// The number of a version: whole seconds of the newest stamp behind an event, counted from 2026. A stamp always rises,
/// even when the clock is set back, so every correction has a higher number than what it corrects; two within one second
/// have the same.
pub fn sequence(revised: Option<Stamp>) -> u32 {
    let seconds = revised.map_or(0, |stamp| {
        stamp
            .instant()
            .since(COUNTED_FROM)
            .to_ms()
            .div_euclid(SECOND)
    });
    // Calendars keep it as a signed number of 32 bits.
    u32::try_from(seconds.clamp(0, i64::from(i32::MAX))).unwrap_or_default()
}

impl Event {
    /// Its id for ever, with our domain.
    pub fn uid(&self) -> String {
        format!("{}@{DOMAIN}", self.id)
    }

    pub(super) fn write(&self, out: &mut String) {
        line(out, "BEGIN:VEVENT");
        line(out, &format!("UID:{}", escape(&self.uid())));
        let revised = self.revised.map_or(COUNTED_FROM, |stamp| stamp.instant());
        line(out, &format!("DTSTAMP:{}", utc(revised)));
        line(out, &format!("SEQUENCE:{}", sequence(self.revised)));
        match self.when {
            When::At(at) => line(out, &format!("DTSTART:{}", utc(at))),
            When::Daily { first, last, time } => {
                line(out, &format!("DTSTART:{}", local(first, time)));
                line(
                    out,
                    &format!("RRULE:FREQ=DAILY;UNTIL={}", local(last, time)),
                );
            }
        }
        line(out, &format!("DURATION:PT{DRAWN_MIN}M"));
        line(out, &format!("SUMMARY:{}", escape(&self.says)));
        if !self.why.is_empty() {
            line(out, &format!("DESCRIPTION:{}", escape(&self.why)));
        }
        let status = if self.holds { "CONFIRMED" } else { "CANCELLED" };
        line(out, &format!("STATUS:{status}"));
        line(out, "TRANSP:TRANSPARENT");
        if self.holds {
            for minutes in &self.rings_before {
                self.alarm(*minutes, out);
            }
        }
        line(out, "END:VEVENT");
    }

    fn alarm(&self, before: u32, out: &mut String) {
        line(out, "BEGIN:VALARM");
        line(out, "ACTION:DISPLAY");
        line(out, &format!("DESCRIPTION:{}", escape(&self.says)));
        let sign = if before == 0 { "" } else { "-" };
        line(out, &format!("TRIGGER:{sign}PT{before}M"));
        line(out, "END:VALARM");
    }
}

/// An instant as `20260505T060500Z`; one beyond the calendar is the first we count from.
fn utc(at: Instant) -> String {
    DateTime::from_timestamp_millis(at.to_ms())
        .or_else(|| DateTime::from_timestamp_millis(COUNTED_FROM.to_ms()))
        .map(|at| at.format("%Y%m%dT%H%M%SZ").to_string())
        .unwrap_or_default()
}

/// A local time as `20260505T060500`.
fn local(date: LocalDate, time: LocalTime) -> String {
    date.and_time(time).format("%Y%m%dT%H%M%S").to_string()
}
