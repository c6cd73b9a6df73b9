//! How an animal or a group goes out to grass.

use super::vet::read_day;
use crate::acts::{Act, New};
use tussock_core::animal::PaddockId;
use tussock_core::log::bodies::{GrazingMinutes, GrazingV1};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::LocalDate;

/// The times a day that are offered as keys, in minutes.
pub const OFFERED: [i64; 7] = [15, 30, 60, 90, 120, 180, 240];

/// Minutes of an hour.
const HOUR: i64 = 60;
/// Days of a week.
const WEEK: u64 = 7;

/// Since when it is used to such turnout.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Used {
    /// It begins today.
    Today,
    /// For about three weeks.
    ThreeWeeks,
    /// For six weeks or longer.
    SixWeeks,
    /// Since a day that is typed.
    On,
}

impl Used {
    /// All of them, in the order in which they are asked.
    pub const ALL: [Self; 4] = [Self::Today, Self::ThreeWeeks, Self::SixWeeks, Self::On];

    /// The key in a draft.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Today => "today",
            Self::ThreeWeeks => "three",
            Self::SixWeeks => "six",
            Self::On => "on",
        }
    }

    /// The answer of a key.
    pub fn of_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|used| used.key() == key)
    }
}

/// A field of the form.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// How long a day.
    Time,
    /// Since which day it is used to it.
    Since,
}

/// What is wrong with the form.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// Nobody said how long.
    NoTime,
    /// The time cannot be read.
    NotATime(String),
    /// Longer than a day, or nothing.
    TimeOutside {
        /// What was read, in minutes.
        minutes: i64,
        /// The most.
        most: i64,
    },
    /// The day cannot be read, or is still to come.
    Since,
    /// What cannot be stored.
    Log(LogError),
}

impl Wrong {
    /// The field it stands under; `None` for one of the whole form.
    pub const fn field(&self) -> Option<Field> {
        match self {
            Self::NoTime | Self::NotATime(_) | Self::TimeOutside { .. } => Some(Field::Time),
            Self::Since => Some(Field::Since),
            Self::Log(_) => None,
        }
    }
}

/// What is typed and chosen.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Typed {
    /// Onto which paddock; `None` when paddocks are not told apart.
    pub paddock: Option<PaddockId>,
    /// How long a day.
    pub time: String,
    /// With a muzzle.
    pub muzzle: bool,
    /// Since when it is used to such turnout; not said counts as today.
    pub used: Option<Used>,
    /// The day, where that is the answer.
    pub since: String,
}

/// Reads a time in minutes ("45", "45 min") or in hours and minutes ("1 h 20", "1:20", "1.5 h").
///
/// # Errors
/// Nothing typed, what is no time, and what is not between a minute and a day.
pub fn read_time(typed: &str) -> Result<GrazingMinutes, Wrong> {
    let text = typed.trim().to_lowercase().replace(',', ".");
    if text.is_empty() {
        return Err(Wrong::NoTime);
    }
    let minutes = minutes_of(&text).ok_or_else(|| Wrong::NotATime(typed.trim().to_owned()))?;
    let (_, most) = GrazingMinutes::RANGE;
    GrazingMinutes::new(minutes)
        .ok()
        .filter(|read| 0 < read.get())
        .ok_or(Wrong::TimeOutside { minutes, most })
}

fn minutes_of(text: &str) -> Option<i64> {
    let unit = |text: &str, units: [&str; 4]| {
        units
            .iter()
            .find_map(|unit| text.strip_suffix(unit))
            .map(|rest| rest.trim().to_owned())
    };
    let minutes = |text: &str| {
        let bare = unit(text, ["minutes", "minute", "min", "m"]);
        whole(bare.as_deref().unwrap_or(text))
    };
    let under_an_hour = |text: &str| minutes(text).filter(|minutes| *minutes < HOUR);
    if let Some((hours, rest)) = text.split_once(':') {
        return Some(whole(hours)? * HOUR + under_an_hour(rest)?);
    }
    let Some((hours, rest)) = text.split_once('h') else {
        return minutes(text);
    };
    let rest = rest
        .trim_start_matches(['o', 'u', 'r', 's'])
        .trim_start_matches('.')
        .trim();
    let hours = hours.trim();
    if rest.is_empty() {
        let read: f64 = figure(hours)?.parse().ok()?;
        let minutes = read * HOUR as f64;
        #[allow(clippy::cast_possible_truncation, reason = "four digits at most")]
        return Some(minutes.round() as i64);
    }
    Some(whole(hours)? * HOUR + under_an_hour(rest)?)
}

/// A figure of a few digits, with or without a decimal point.
fn figure(text: &str) -> Option<&str> {
    let known = text.chars().all(|c| c.is_ascii_digit() || c == '.');
    // Longer than any time of a day, however it is written.
    (known && text.len() <= 6).then_some(text)
}

fn whole(text: &str) -> Option<i64> {
    figure(text.trim())?.parse().ok()
}

/// A time as a text to type on from: "45", "1 h", "1 h 20".
pub fn time_text(minutes: i64) -> String {
    match (minutes.div_euclid(HOUR), minutes.rem_euclid(HOUR)) {
        (0, minutes) => minutes.to_string(),
        (hours, 0) => format!("{hours} h"),
        (hours, minutes) => format!("{hours} h {minutes}"),
    }
}

impl Typed {
    /// What was decided last, as the form shows it.
    pub fn of(before: Option<&GrazingV1>) -> Self {
        let Some(before) = before else {
            return Self::default();
        };
        // One that stopped has lost the habit of it.
        let since = (!before.stopped).then(|| before.adapted_since.unwrap_or(before.from));
        Self {
            paddock: before.paddock.clone(),
            time: time_text(before.minutes.get()),
            muzzle: before.muzzle,
            used: since.map(|_| Used::On),
            since: since.map(|day| day.to_string()).unwrap_or_default(),
        }
    }

    /// Since which day it is used to it.
    fn adapted_since(&self, today: LocalDate) -> Result<Option<LocalDate>, Wrong> {
        let weeks = |weeks: u64| today.checked_sub_days(chrono::Days::new(weeks * WEEK));
        match self.used {
            None => Ok(None),
            Some(Used::Today) => Ok(Some(today)),
            Some(Used::ThreeWeeks) => Ok(weeks(3)),
            Some(Used::SixWeeks) => Ok(weeks(6)),
            Some(Used::On) => read_day(&self.since)
                .filter(|day| *day <= today)
                .map(Some)
                .ok_or(Wrong::Since),
        }
    }

    /// What is decided, from today on.
    ///
    /// # Errors
    /// Everything that is wrong.
    pub fn body(
        &self,
        before: Option<&GrazingV1>,
        today: LocalDate,
    ) -> Result<GrazingV1, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let minutes = read_time(&self.time).map_err(|error| wrong.push(error));
        let since = self.adapted_since(today).map_err(|error| wrong.push(error));
        match (minutes, since) {
            (Ok(minutes), Ok(adapted_since)) => Ok(GrazingV1 {
                paddock: self.paddock.clone(),
                from: today,
                minutes,
                muzzle: self.muzzle,
                adapted_since,
                out: before.and_then(|before| before.out),
                stopped: false,
            }),
            _ => Err(wrong),
        }
    }
}

/// The decision that it no longer goes out, from today on.
pub fn stays_in(before: &GrazingV1, today: LocalDate) -> GrazingV1 {
    GrazingV1 {
        from: today,
        stopped: true,
        ..before.clone()
    }
}

/// The act that writes a decision.
pub fn act(subject: &Subject, decided: GrazingV1, id: &str) -> Act {
    Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: subject.clone(),
        at: None,
        known: Known::Seen,
        body: Body::Grazing(decided),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> LocalDate {
        read_day(text).unwrap()
    }

    #[test]
    fn a_time_is_read_in_minutes_and_in_hours_with_minutes() {
        for (typed, minutes) in [
            ("45", 45),
            ("45 min", 45),
            ("90 minutes", 90),
            ("1 h", 60),
            ("2 hours", 120),
            ("1 hour", 60),
            ("1.5 h", 90),
            ("1,5 h", 90),
            ("1 h 20", 80),
            ("1h20", 80),
            ("1 h 20 min", 80),
            ("1 hour 20 minutes", 80),
            ("1:20", 80),
            ("24 h", 1440),
        ] {
            assert_eq!(read_time(typed).unwrap().get(), minutes, "{typed}");
        }
        for minutes in [5, 60, 80, 240] {
            assert_eq!(read_time(&time_text(minutes)).unwrap().get(), minutes);
        }
    }

    #[test]
    fn what_is_no_time_of_a_day_is_refused() {
        assert_eq!(read_time(" "), Err(Wrong::NoTime));
        for typed in [
            "all day",
            "1 h 75",
            "1:60",
            "-5",
            "1.5",
            "h",
            "1 h h",
            "99999999999 h",
        ] {
            assert!(
                matches!(read_time(typed), Err(Wrong::NotATime(_))),
                "{typed}: {:?}",
                read_time(typed)
            );
        }
        for typed in ["0", "25 h", "1441"] {
            assert!(
                matches!(read_time(typed), Err(Wrong::TimeOutside { most: 1440, .. })),
                "{typed}"
            );
        }
    }

    #[test]
    fn it_is_decided_from_today_on_and_comes_back_as_it_was_said() {
        let today = day("2026-05-26");
        let typed = Typed {
            paddock: Some(PaddockId("top".to_owned())),
            time: "1 h 20".to_owned(),
            muzzle: true,
            used: Some(Used::ThreeWeeks),
            since: String::new(),
        };
        let body = typed.body(None, today).unwrap();
        assert_eq!((body.from, body.stopped), (today, false));
        assert_eq!(body.adapted_since, Some(day("2026-05-05")));
        let shown = Typed::of(Some(&body));
        assert_eq!(
            (shown.used, shown.since.as_str()),
            (Some(Used::On), "2026-05-05")
        );
        assert_eq!(shown.body(Some(&body), today).unwrap(), body);
        let stopped = stays_in(&body, today);
        assert!(!stopped.holds(today));
        assert_eq!(Typed::of(Some(&stopped)).used, None);
    }

    #[test]
    fn a_day_still_to_come_is_not_what_it_is_used_to() {
        let typed = Typed {
            used: Some(Used::On),
            since: "2026-06-01".to_owned(),
            ..Typed::default()
        };
        let wrong = typed.body(None, day("2026-05-26")).unwrap_err();
        assert_eq!(wrong, [Wrong::NoTime, Wrong::Since]);
    }
}
