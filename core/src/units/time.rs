//! Instants, local dates and times, and the zone that joins them.

use super::published::{MINUTES_PER_HOUR, MS_PER_MINUTE};
use chrono::{DateTime, NaiveDateTime};
use std::ops::{Add, Sub};

/// A local day, shown and stored as `YYYY-MM-DD`.
pub type LocalDate = chrono::NaiveDate;
/// A local time of day.
pub type LocalTime = chrono::NaiveTime;

/// A point in time: milliseconds of UTC since 1970. It is an argument everywhere; the core reads no clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Instant(i64);

/// A length of time in milliseconds; may be negative.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Span(i64);

impl Instant {
    /// From milliseconds of UTC since 1970.
    pub const fn from_ms(ms: i64) -> Self {
        Self(ms)
    }

    /// As milliseconds of UTC since 1970.
    pub const fn to_ms(self) -> i64 {
        self.0
    }

    /// The length of time since another instant; negative when this one is earlier.
    pub const fn since(self, earlier: Self) -> Span {
        Span(self.0.saturating_sub(earlier.0))
    }
}

impl Span {
    /// No time.
    pub const ZERO: Self = Self(0);

    /// From milliseconds.
    pub const fn ms(ms: i64) -> Self {
        Self(ms)
    }

    /// From minutes.
    pub const fn minutes(minutes: i64) -> Self {
        Self(minutes.saturating_mul(MS_PER_MINUTE))
    }

    /// From hours.
    pub const fn hours(hours: i64) -> Self {
        Self::minutes(hours.saturating_mul(MINUTES_PER_HOUR))
    }

    /// As whole minutes, rounded towards the past, so that a countdown never shows time that is not left.
    pub const fn to_minutes(self) -> i64 {
        self.0.div_euclid(MS_PER_MINUTE)
    }

    /// As milliseconds.
    pub const fn to_ms(self) -> i64 {
        self.0
    }

    /// As hours with their fraction.
    pub fn to_hours(self) -> f64 {
        self.0 as f64 / (MS_PER_MINUTE * MINUTES_PER_HOUR) as f64
    }
}

impl Add<Span> for Instant {
    type Output = Self;
    fn add(self, span: Span) -> Self {
        Self(self.0.saturating_add(span.0))
    }
}

impl Sub<Span> for Instant {
    type Output = Self;
    fn sub(self, span: Span) -> Self {
        Self(self.0.saturating_sub(span.0))
    }
}

impl Add for Span {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0.saturating_add(other.0))
    }
}

/// An instant as the clock on the wall shows it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct LocalStamp {
    /// The local day.
    pub date: LocalDate,
    /// The local time.
    pub time: LocalTime,
}

/// What a local date and time mean in a zone.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Resolved {
    /// One instant.
    One(Instant),
    /// None: the clock went forward over it. The instant is as long after the change as the time lies in the gap.
    Missing(Instant),
    /// Two: the clock went back over it. The first is the earlier.
    Twice(Instant, Instant),
}

impl Resolved {
    /// The instant a daily plan uses: a missing hour goes forward, a doubled hour takes the first.
    pub const fn planned(self) -> Instant {
        match self {
            Self::One(at) | Self::Missing(at) | Self::Twice(at, _) => at,
        }
    }
}

/// A time zone as an argument: made from the browser's calendar in the app and from a table in tests.
pub trait Zone {
    /// The offset of the wall clock from UTC at an instant, in minutes east.
    fn offset_min(&self, at: Instant) -> i32;

    /// What the wall clock shows at an instant.
    fn to_local(&self, at: Instant) -> LocalStamp {
        let local = local_of(at, self.offset_min(at));
        LocalStamp {
            date: local.date(),
            time: local.time(),
        }
    }

    /// What a local date and time mean in this zone.
    fn to_instant(&self, stamp: LocalStamp) -> Resolved {
        let naive = stamp.date.and_time(stamp.time).and_utc().timestamp_millis();
        // The offsets on either side of any clock change near this local time; a change is never more than a day's
        // worth of clock, so one day before and after see both sides.
        let day = Span::hours(super::published::HOURS_PER_DAY);
        let before = self.offset_min(Instant(naive) - day);
        let after = self.offset_min(Instant(naive) + day);
        let at = |offset: i32| {
            Instant(naive.saturating_sub(i64::from(offset).saturating_mul(MS_PER_MINUTE)))
        };
        let holds = |offset: i32| self.offset_min(at(offset)) == offset;
        match (holds(before), holds(after)) {
            (true, true) if before == after => Resolved::One(at(before)),
            (true, true) => {
                let (a, b) = (at(before), at(after));
                Resolved::Twice(a.min(b), a.max(b))
            }
            (true, false) => Resolved::One(at(before)),
            (false, true) => Resolved::One(at(after)),
            // Read with the offset from before the change, a missing time lands just after it.
            (false, false) => Resolved::Missing(at(before)),
        }
    }
}

/// The wall clock at an instant for a known offset; instants beyond the calendar are clamped to its ends.
fn local_of(at: Instant, offset_min: i32) -> NaiveDateTime {
    let ms =
        at.0.saturating_add(i64::from(offset_min).saturating_mul(MS_PER_MINUTE));
    match DateTime::from_timestamp_millis(ms) {
        Some(stamp) => stamp.naive_utc(),
        None if ms < 0 => NaiveDateTime::MIN,
        None => NaiveDateTime::MAX,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A zone with one change of the clock.
    struct OneChange {
        at: i64,
        before: i32,
        after: i32,
    }

    impl Zone for OneChange {
        fn offset_min(&self, at: Instant) -> i32 {
            if at.to_ms() < self.at {
                self.before
            } else {
                self.after
            }
        }
    }

    fn stamp(date: &str, time: &str) -> LocalStamp {
        LocalStamp {
            date: date.parse().unwrap(),
            time: time.parse().unwrap(),
        }
    }

    fn utc(date: &str, time: &str) -> Instant {
        let s = stamp(date, time);
        Instant::from_ms(s.date.and_time(s.time).and_utc().timestamp_millis())
    }

    #[test]
    fn the_missing_hour_goes_forward_and_the_doubled_hour_takes_the_first() {
        let spring = OneChange {
            at: utc("2026-03-29", "01:00:00").to_ms(),
            before: 0,
            after: 60,
        };
        assert_eq!(
            spring.to_instant(stamp("2026-03-29", "01:30:00")),
            Resolved::Missing(utc("2026-03-29", "01:30:00"))
        );
        assert_eq!(
            spring.to_local(utc("2026-03-29", "01:30:00")),
            stamp("2026-03-29", "02:30:00")
        );
        let autumn = OneChange {
            at: utc("2026-10-25", "01:00:00").to_ms(),
            before: 60,
            after: 0,
        };
        assert_eq!(
            autumn.to_instant(stamp("2026-10-25", "01:30:00")).planned(),
            utc("2026-10-25", "00:30:00")
        );
        assert_eq!(
            autumn.to_instant(stamp("2026-10-25", "06:00:00")),
            Resolved::One(utc("2026-10-25", "06:00:00"))
        );
    }

    #[test]
    fn a_countdown_never_shows_time_that_is_not_left() {
        assert_eq!(Span::minutes(42).to_minutes(), 42);
        assert_eq!(
            Instant::from_ms(59_999)
                .since(Instant::from_ms(0))
                .to_minutes(),
            0
        );
        assert_eq!(
            Instant::from_ms(0).since(Instant::from_ms(1)).to_minutes(),
            -1
        );
    }
}
