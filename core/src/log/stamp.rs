//! The clock of the log: a hybrid logical clock as sortable text, `ms(13)-counter(4)-device(8)`.
//!
//! A stamp says which version of a record is later. It follows the clock of the device while that goes forward, and
//! counts on when it stands still or goes back, so that a later version always has a later stamp. The text sorts as the
//! stamp does. Nothing here reads a clock: now is an argument, and the last stamp of a device is kept by the caller.

use super::error::{Allowed, Form, LogError, Path};
use super::published::FUTURE_BOUND_MIN;
use crate::units::{Instant, Span};
use std::fmt;

/// Digits of the milliseconds.
// numeric: enough until the year 2286
const MS_DIGITS: usize = 13;
/// Digits of the counter.
// numeric: ten thousand writes in one millisecond before the stamp runs ahead of the clock
const COUNTER_DIGITS: usize = 4;
/// Characters of a device id.
// numeric: 36^8 ids
const DEVICE_LETTERS: usize = 8;
/// The last millisecond that a stamp can say.
// numeric: thirteen nines
const LAST_MS: i64 = 9_999_999_999_999;
/// The last count in a millisecond.
// numeric: four nines
const LAST_COUNT: u16 = 9_999;

/// A device: eight lower-case letters or digits, made at its first write.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct DeviceId([u8; DEVICE_LETTERS]);

impl DeviceId {
    /// From a number: its last eight digits in base 36.
    pub fn of_number(number: u64) -> Self {
        // numeric: letters and digits of a device id
        const BASE: u64 = 36;
        let mut rest = number;
        let mut letters = [b'0'; DEVICE_LETTERS];
        for letter in letters.iter_mut().rev() {
            let digit = u8::try_from(rest % BASE).unwrap_or_default();
            *letter = if digit < 10 {
                b'0' + digit
            } else {
                b'a' + digit - 10
            };
            rest /= BASE;
        }
        Self(letters)
    }

    /// From its text.
    pub fn from_text(text: &str) -> Result<Self, LogError> {
        Self::read(text, &Path::Root.key("device"))
    }

    pub(crate) fn read(text: &str, path: &Path<'_>) -> Result<Self, LogError> {
        match <[u8; DEVICE_LETTERS]>::try_from(text.as_bytes()) {
            Ok(letters)
                if letters
                    .iter()
                    .all(|l| l.is_ascii_lowercase() || l.is_ascii_digit()) =>
            {
                Ok(Self(letters))
            }
            _ => Err(path.refuse(text, Allowed::Form(Form::Device))),
        }
    }
}

impl fmt::Display for DeviceId {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        self.0
            .iter()
            .try_for_each(|letter| write!(f, "{}", char::from(*letter)))
    }
}

/// A stamp of the log's clock. Its order is the order of its text.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Stamp {
    /// Milliseconds, 0 to 9,999,999,999,999.
    ms: i64,
    /// The count within the millisecond, 0 to 9,999.
    counter: u16,
    /// The device that made it.
    device: DeviceId,
}

/// How far a received stamp lies in the future of this device: its clock, or the other one's, is wrong.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Ahead(pub Span);

impl Stamp {
    /// The first stamp of a device at an instant.
    pub fn first(now: Instant, device: DeviceId) -> Self {
        Self {
            ms: now.to_ms().clamp(0, LAST_MS),
            counter: 0,
            device,
        }
    }

    /// The next stamp of a device: now if the clock went forward, else counted on from the last stamp.
    ///
    /// `over` is the version that the new one replaces: the new stamp is later than that too, even when it came from a
    /// device whose clock runs ahead. Keep as the device's last stamp only what [`Stamp::clock`] gives.
    ///
    /// Error: [`LogError::ClockAtEnd`] when nothing later can be said.
    pub fn tick(
        last: Option<&Self>,
        over: Option<&Self>,
        now: Instant,
        device: DeviceId,
    ) -> Result<Self, LogError> {
        let fresh = Self::first(now, device);
        let Some(floor) = last.max(over) else {
            return Ok(fresh);
        };
        if fresh.ms > floor.ms {
            Ok(fresh)
        } else if floor.counter < LAST_COUNT {
            Ok(Self {
                ms: floor.ms,
                counter: floor.counter + 1,
                device,
            })
        } else if floor.ms < LAST_MS {
            Ok(Self {
                ms: floor.ms + 1,
                counter: 0,
                device,
            })
        } else {
            Err(LogError::ClockAtEnd)
        }
    }

    /// What a device keeps as its last stamp after it made or received one.
    ///
    /// The record is taken as it is. A stamp further ahead than the bound does not drag this device's clock along: the
    /// clock stays where it was, and the second value says by how much the stamp is ahead, to be shown.
    pub fn clock(last: Option<&Self>, seen: &Self, now: Instant) -> (Self, Option<Ahead>) {
        let ahead = seen.ms.saturating_sub(now.to_ms());
        let bound = Span::minutes(FUTURE_BOUND_MIN.value).to_ms();
        let flag = (ahead > bound).then(|| Ahead(Instant::from_ms(seen.ms).since(now)));
        let kept = match (last, flag) {
            (Some(last), Some(_)) => *last,
            (Some(last), None) => *last.max(seen),
            (None, Some(_)) => Self::first(now, seen.device),
            (None, None) => *seen,
        };
        (kept, flag)
    }

    /// The instant it says; it is a wish, not a proof.
    pub const fn instant(&self) -> Instant {
        Instant::from_ms(self.ms)
    }

    /// The device that made it.
    pub const fn device(&self) -> DeviceId {
        self.device
    }

    /// From its text.
    pub fn from_text(text: &str) -> Result<Self, LogError> {
        Self::read(text, &Path::Root.key("stamp"))
    }

    pub(crate) fn read(text: &str, path: &Path<'_>) -> Result<Self, LogError> {
        let refuse = || path.refuse(text, Allowed::Form(Form::Stamp));
        let mut parts = text.split('-');
        let (Some(ms), Some(counter), Some(device), None) =
            (parts.next(), parts.next(), parts.next(), parts.next())
        else {
            return Err(refuse());
        };
        let digits = |part: &str, count: usize| {
            part.len() == count && part.bytes().all(|digit| digit.is_ascii_digit())
        };
        if !digits(ms, MS_DIGITS) || !digits(counter, COUNTER_DIGITS) {
            return Err(refuse());
        }
        Ok(Self {
            ms: ms.parse().map_err(|_| refuse())?,
            counter: counter.parse().map_err(|_| refuse())?,
            device: DeviceId::read(device, path).map_err(|_| refuse())?,
        })
    }
}

impl fmt::Display for Stamp {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(
            f,
            "{:0MS_DIGITS$}-{:0COUNTER_DIGITS$}-{}",
            self.ms, self.counter, self.device
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn device(text: &str) -> DeviceId {
        DeviceId::from_text(text).unwrap()
    }

    fn stamp(text: &str) -> Stamp {
        Stamp::from_text(text).unwrap()
    }

    #[test]
    fn a_stamp_counts_on_when_the_clock_stands_or_goes_back() {
        let d = device("moss0001");
        let at = Instant::from_ms(1_777_000_000_000);
        let first = Stamp::tick(None, None, at, d).unwrap();
        assert_eq!(first.to_string(), "1777000000000-0000-moss0001");
        let second = Stamp::tick(Some(&first), None, at, d).unwrap();
        assert_eq!(second.to_string(), "1777000000000-0001-moss0001");
        let back = Stamp::tick(Some(&second), None, Instant::from_ms(5), d).unwrap();
        assert_eq!(back.to_string(), "1777000000000-0002-moss0001");
    }

    #[test]
    fn a_full_counter_goes_into_the_next_millisecond() {
        let d = device("moss0001");
        let full = stamp("1777000000000-9999-moss0001");
        let next = Stamp::tick(Some(&full), None, Instant::from_ms(0), d).unwrap();
        assert_eq!(next.to_string(), "1777000000001-0000-moss0001");
        let end = stamp("9999999999999-9999-moss0001");
        assert_eq!(
            Stamp::tick(Some(&end), None, Instant::from_ms(i64::MAX), d),
            Err(LogError::ClockAtEnd)
        );
    }

    #[test]
    fn a_stamp_from_far_ahead_is_flagged_and_does_not_drag_the_clock() {
        let now = Instant::from_ms(1_777_000_000_000);
        let last = stamp("1776999999999-0000-moss0001");
        for hours in [1, 24 * 365] {
            let far = Stamp::first(now + Span::hours(hours), device("fern0001"));
            let (kept, flag) = Stamp::clock(Some(&last), &far, now);
            assert_eq!(kept, last);
            assert_eq!(flag, Some(Ahead(Span::hours(hours))));
            // An edit of that record is later than it all the same.
            let edit = Stamp::tick(Some(&kept), Some(&far), now, last.device()).unwrap();
            assert!(edit > far);
        }
        let near = Stamp::first(now + Span::minutes(2), device("fern0001"));
        assert_eq!(Stamp::clock(Some(&last), &near, now), (near, None));
    }

    #[test]
    fn what_is_no_stamp_is_refused() {
        for text in [
            "",
            "1777000000000-0000",
            "1777000000000-0000-moss0001-",
            "177700000000-00000-moss0001",
            "1777000000000-0000-MOSS0001",
            "+777000000000-0000-moss0001",
            "1777000000000-00é-moss0001",
        ] {
            assert!(Stamp::from_text(text).is_err(), "{text:?}");
        }
    }
}
