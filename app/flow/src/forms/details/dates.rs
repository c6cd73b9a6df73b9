//! Days, months and years as people write them.

use super::{Field, Wrong};
use crate::forms::animal::{optional, read_year};
use tussock_core::animal::Birth;
use tussock_core::units::LocalDate;

/// A birth as it would be typed.
pub(super) fn birth_text(born: Birth) -> String {
    match born {
        Birth::Day(day) => day.to_string(),
        Birth::Month { year, month } => format!("{year:04}-{month:02}"),
        Birth::Year(year) => year.to_string(),
    }
}

/// A day as people write it: 2026-05-01, or 1.5.2026 and 1/5/2026 with the day first.
pub(super) fn read_day(text: &str) -> Option<LocalDate> {
    let parts: Vec<&str> = text.split(['-', '.', '/', ' ']).collect();
    let [first, month, last] = parts.as_slice() else {
        return None;
    };
    let (year, day) = if first.len() == 4 {
        (first, last)
    } else {
        (last, first)
    };
    if year.len() != 4 {
        return None;
    }
    LocalDate::from_ymd_opt(year.parse().ok()?, month.parse().ok()?, day.parse().ok()?)
}

/// A month as people write it: 2026-05, 5.2026 or 5/2026.
fn read_month(text: &str) -> Option<Birth> {
    let (first, last) = text.split_once(['-', '.', '/', ' '])?;
    let (year, month) = if first.len() == 4 {
        (first, last)
    } else {
        (last, first)
    };
    if year.len() != 4 || !(1..=2).contains(&month.len()) {
        return None;
    }
    let born = Birth::Month {
        year: year.parse().ok()?,
        month: month.parse().ok()?,
    };
    born.latest().map(|_| born)
}

/// A birth: a day, a month, or a year alone; nothing is not known.
pub(super) fn read_birth(text: &str, today: LocalDate) -> Result<Option<Birth>, Wrong> {
    match read_day(text).map(Birth::Day).or_else(|| read_month(text)) {
        Some(born) if begun(born, today) => Ok(Some(born)),
        Some(_) => Err(Wrong::Date(Field::Born)),
        None => optional(text, read_year)
            .map(|year| year.map(Birth::Year))
            .map_err(|error| Wrong::Parse(Field::Born, error)),
    }
}

/// Whether a day or a month has come.
fn begun(born: Birth, today: LocalDate) -> bool {
    match born {
        Birth::Day(day) => day <= today,
        Birth::Month { .. } | Birth::Year(_) => 0 <= born.oldest_on(today),
    }
}
