//! The vet's word, written down: what about, whose, how, and until when.

use crate::acts::{Act, New};
use tussock_core::animal::{AnimalId, VetPermit, VetScope, VetWord};
use tussock_core::limits::default_expiry;
use tussock_core::limits::published::{FLOOR, MOST_ASKED_PERCENT};
use tussock_core::log::bodies::VetWordV1;
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{ParseError, number};
use tussock_core::units::{Bounds, LocalDate, PartOfBody};

/// The matters, in the order in which a person is asked.
pub const ABOUT: &[VetScope] = &[
    VetScope::LowestLevel,
    VetScope::Work,
    VetScope::ReturnToGrass,
];

/// How a word is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// By telephone.
    Telephone,
    /// At a visit.
    Visit,
    /// In writing.
    Writing,
}

impl How {
    /// All of them, in the order in which a person is asked.
    pub const ALL: &'static [Self] = &[Self::Telephone, Self::Visit, Self::Writing];
}

/// What was typed.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Typed {
    /// What it is about.
    pub about: Option<VetScope>,
    /// The lowest level in percent of body weight; read only when it is about that.
    pub percent: String,
    /// The vet.
    pub vet: String,
    /// The practice; may be empty.
    pub practice: String,
    /// How it was given, in the words that are kept; empty when nobody chose.
    pub how: String,
    /// The day it was given; empty for today.
    pub given: String,
    /// Its last day; empty for the default.
    pub expires: String,
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// Nobody said what it is about.
    About,
    /// The level.
    Percent(ParseError),
    /// No vet is named.
    NoVet,
    /// Nobody said how it was given.
    NoHow,
    /// The day it was given cannot be read, or is still to come.
    Given,
    /// The last day cannot be read, or lies before the day it was given.
    Expires,
    /// What cannot be stored.
    Log(LogError),
}

/// A day as people write it: `2026-05-05`, `5.5.2026` or `5/5/2026`, the day before the month.
pub fn read_day(text: &str) -> Option<LocalDate> {
    let text = text.trim();
    ["%Y-%m-%d", "%d.%m.%Y", "%d/%m/%Y", "%d %b %Y", "%d %B %Y"]
        .iter()
        .find_map(|form| LocalDate::parse_from_str(text, form).ok())
}

/// The day a word was given: what was typed, else today; `None` when it cannot be read.
pub fn given(text: &str, today: LocalDate) -> Option<LocalDate> {
    if text.trim().is_empty() {
        Some(today)
    } else {
        read_day(text).filter(|day| *day <= today)
    }
}

/// The last day of a word: what was typed, else the default; `None` when it cannot be read or lies before `given`.
pub fn expires(text: &str, given: LocalDate) -> Option<LocalDate> {
    if text.trim().is_empty() {
        Some(default_expiry(given))
    } else {
        read_day(text).filter(|day| given <= *day)
    }
}

impl Typed {
    /// The act that writes it, or everything that is wrong.
    ///
    /// # Errors
    /// A field that is empty, cannot be read or cannot be.
    pub fn act(
        &self,
        animal: &AnimalId,
        today: LocalDate,
        record: &RecordId,
    ) -> Result<Act, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let permit = self.permit().map_err(|error| wrong.push(error));
        if self.vet.trim().is_empty() {
            wrong.push(Wrong::NoVet);
        }
        if self.how.trim().is_empty() {
            wrong.push(Wrong::NoHow);
        }
        let given = given(&self.given, today).ok_or_else(|| wrong.push(Wrong::Given));
        let expires = expires(&self.expires, given.unwrap_or(today))
            .ok_or_else(|| wrong.push(Wrong::Expires));
        let (Ok(permit), Ok(given), Ok(expires), true) = (permit, given, expires, wrong.is_empty())
        else {
            return Err(wrong);
        };
        let word = VetWord {
            animal: animal.clone(),
            permit,
            vet: self.vet.trim().to_owned(),
            practice: self.practice.trim().to_owned(),
            given,
            how: self.how.trim().to_owned(),
            expires,
            written: None,
        };
        let body = VetWordV1::of(&word).map_err(|error| vec![Wrong::Log(error)])?;
        Ok(Act::Add(New {
            id: record.clone(),
            subject: Subject::animal(animal),
            at: None,
            known: Known::Seen,
            body: Body::VetWord(body),
        }))
    }

    fn permit(&self) -> Result<VetPermit, Wrong> {
        match self.about {
            None => Err(Wrong::About),
            Some(VetScope::Work) => Ok(VetPermit::Work),
            Some(VetScope::ReturnToGrass) => Ok(VetPermit::ReturnToGrass),
            Some(VetScope::LowestLevel) => read_level(&self.percent)
                .map_err(Wrong::Percent)
                .map(VetPermit::LowestLevel),
        }
    }
}

/// A level, from the floor that no word opens to the most that is believed.
fn read_level(text: &str) -> Result<PartOfBody, ParseError> {
    let bounds = Bounds::new("asked_percent", FLOOR.to_percent(), *MOST_ASKED_PERCENT);
    let typed = text.trim().trim_end_matches('%');
    Ok(PartOfBody::percent(bounds.check(number(typed)?)?))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> LocalDate {
        text.parse().unwrap()
    }

    fn typed() -> Typed {
        Typed {
            about: Some(VetScope::LowestLevel),
            percent: "1,25 %".into(),
            vet: "A. Marsh".into(),
            how: "by telephone".into(),
            ..Typed::default()
        }
    }

    fn word(typed: &Typed) -> Result<VetWord, Vec<Wrong>> {
        let id = AnimalId("moss".into());
        let act = typed.act(&id, day("2026-05-05"), &RecordId("w".into()))?;
        let Act::Add(New {
            body: Body::VetWord(body),
            ..
        }) = act
        else {
            panic!("adds a vet's word")
        };
        Ok(body.word())
    }

    #[test]
    fn what_is_left_out_is_today_and_eight_weeks() {
        let word = word(&typed()).unwrap();
        assert_eq!(word.given, day("2026-05-05"));
        assert_eq!(word.expires, default_expiry(word.given));
        assert_eq!(
            word.permit,
            VetPermit::LowestLevel(PartOfBody::percent(1.25))
        );
    }

    #[test]
    fn every_field_says_what_is_wrong_with_it() {
        let none = Typed {
            given: "tomorrow".into(),
            expires: "soon".into(),
            ..Typed::default()
        };
        assert_eq!(
            word(&none).unwrap_err(),
            [
                Wrong::About,
                Wrong::NoVet,
                Wrong::NoHow,
                Wrong::Given,
                Wrong::Expires
            ]
        );
    }

    #[test]
    fn no_word_goes_under_the_floor_or_ends_before_it_is_given() {
        let under = Typed {
            percent: "0.9".into(),
            ..typed()
        };
        assert!(matches!(
            word(&under).unwrap_err().as_slice(),
            [Wrong::Percent(ParseError::OutOfRange(_))]
        ));
        let ended = Typed {
            given: "5.5.2026".into(),
            expires: "4/5/2026".into(),
            ..typed()
        };
        assert_eq!(word(&ended).unwrap_err(), [Wrong::Expires]);
        let later = Typed {
            given: "2026-05-06".into(),
            ..typed()
        };
        assert_eq!(word(&later).unwrap_err(), [Wrong::Given]);
    }

    #[test]
    fn days_are_read_as_people_write_them() {
        for text in ["2026-05-05", "5.5.2026", "05/05/2026", "5 May 2026"] {
            assert_eq!(read_day(text), Some(day("2026-05-05")), "{text}");
        }
        assert_eq!(read_day("5.13.2026"), None);
    }
}
