//! When somebody comes: the times of a day, and the act that writes them.

use super::tub::clock;
use crate::acts::{Act, New};
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::horses::kind_of_limit;
use tussock_core::log::bodies::VisitsV1;
use tussock_core::log::{Body, Kind, Known, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::LocalTime;

/// The fields, one a visit; a field that is left empty is no visit.
pub const FIELDS: [&str; 6] = ["time-1", "time-2", "time-3", "time-4", "time-5", "time-6"];

/// How many versions of the visits are asked for: those from the six answers and those that came after.
const LATEST: u32 = 10;

/// What is wrong.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Wrong {
    /// The text of a field, by its place from 0, is no time.
    NoTime {
        /// The field.
        field: usize,
        /// What was typed.
        typed: String,
    },
    /// A field, by its place from 0, has the time of another.
    Twice {
        /// The field.
        field: usize,
    },
    /// Nobody comes at all.
    Nobody,
}

impl Wrong {
    /// The field it is shown at, by its place from 0.
    pub const fn field(&self) -> usize {
        match self {
            Self::NoTime { field, .. } | Self::Twice { field } => *field,
            Self::Nobody => 0,
        }
    }
}

/// What the screen asks the disk for.
pub fn needs() -> Vec<Range> {
    vec![kind_of_limit(&Kind::Visits, LATEST)]
}

/// The visits that stand, and their record; `None` where nobody said when somebody comes.
pub fn held(shelf: &Shelf) -> Option<(RecordId, VisitsV1)> {
    let record = shelf.of_kind(&Kind::Visits).into_iter().next()?;
    match Body::read(record) {
        Ok(Body::Visits(body)) => Some((record.id.clone(), body)),
        _ => None,
    }
}

/// The times as typed, rising.
///
/// # Errors
/// Everything that is wrong, by its field.
pub fn times(typed: &[String]) -> Result<Vec<LocalTime>, Vec<Wrong>> {
    let mut wrong = Vec::new();
    let mut times: Vec<LocalTime> = Vec::new();
    for (field, text) in typed.iter().enumerate() {
        if text.trim().is_empty() {
            continue;
        }
        match clock(text) {
            Ok(time) if times.contains(&time) => wrong.push(Wrong::Twice { field }),
            Ok(time) => times.push(time),
            Err(_) => wrong.push(Wrong::NoTime {
                field,
                typed: text.trim().to_owned(),
            }),
        }
    }
    if wrong.is_empty() && times.is_empty() {
        wrong.push(Wrong::Nobody);
    }
    times.sort_unstable();
    if wrong.is_empty() {
        Ok(times)
    } else {
        Err(wrong)
    }
}

/// The act that writes the times: into the record that stands, else into a new one of the yard.
pub fn act(
    held: Option<(RecordId, VisitsV1)>,
    yard: &Subject,
    times: Vec<LocalTime>,
    id: &str,
) -> Act {
    match held {
        Some((id, body)) => Act::Change {
            id,
            body: Body::Visits(VisitsV1 { times, ..body }),
            at: None,
        },
        None => Act::Add(New {
            id: RecordId(id.to_owned()),
            subject: yard.clone(),
            at: None,
            known: Known::Seen,
            body: Body::Visits(VisitsV1 { times, from: None }),
        }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::views::test_yard::{at, written};
    use tussock_core::animal::YardId;

    fn typed(texts: &[&str]) -> Result<Vec<LocalTime>, Vec<Wrong>> {
        let texts: Vec<String> = texts.iter().map(|text| (*text).to_owned()).collect();
        times(&texts)
    }

    fn clocks(times: &[LocalTime]) -> Vec<String> {
        times
            .iter()
            .map(|time| time.format("%H:%M").to_string())
            .collect()
    }

    #[test]
    fn times_are_read_as_people_write_them_and_stand_rising() {
        let read = typed(&["18.30", "", "6:05", "1300"]).unwrap();
        assert_eq!(clocks(&read), ["06:05", "13:00", "18:30"]);
    }

    #[test]
    fn every_field_says_what_is_wrong_with_it() {
        assert_eq!(typed(&["", " "]), Err(vec![Wrong::Nobody]));
        let wrong = typed(&["7:00", "early", "7"]).unwrap_err();
        assert_eq!(
            wrong,
            [
                Wrong::NoTime {
                    field: 1,
                    typed: "early".into()
                },
                Wrong::Twice { field: 2 }
            ]
        );
    }

    #[test]
    fn they_are_written_once_and_corrected_from_then_on() {
        let yard = Subject::yard(&YardId("y".into()));
        let first = act(None, &yard, typed(&["7", "18"]).unwrap(), "visits");
        let shelf = written(&Shelf::default(), &first, at(0));
        let stands = held(&shelf).unwrap();
        assert_eq!(clocks(&stands.1.times), ["07:00", "18:00"]);
        let next = act(
            Some(stands),
            &yard,
            typed(&["6:30", "21"]).unwrap(),
            "unused",
        );
        let shelf = written(&shelf, &next, at(1));
        assert_eq!(clocks(&held(&shelf).unwrap().1.times), ["06:30", "21:00"]);
        assert_eq!(shelf.records().count(), 1);
    }
}
