//! A new animal.

use crate::acts::{Act, New};
use chrono::Datelike;
use tussock_core::animal::{
    Animal, AnimalId, Birth, Goal, Health, Kind, Phase, StageFacts, State, Temperament, Workload,
};
use tussock_core::limits::published::GROWN;
use tussock_core::log::bodies::AnimalV2;
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{LengthUnit, ParseError, length, number};
use tussock_core::units::{Bounds, Length, LocalDate};

/// The heights that are believed, in centimetres.
const HEIGHT: Bounds = Bounds::new("height_cm", 40.0, 220.0);
/// The years of birth that are believed.
const BORN: Bounds = Bounds::new("born_year", 1960.0, 2100.0);

/// What was typed.
#[derive(Clone, Debug, PartialEq)]
pub struct NewAnimal {
    /// The name.
    pub name: String,
    /// The kind that was chosen.
    pub kind: Option<Kind>,
    /// The height; empty when it was left out.
    pub height: String,
    /// The year of birth; empty when it was left out.
    pub born: String,
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// No name.
    NoName,
    /// No kind.
    NoKind,
    /// The height.
    Height(ParseError),
    /// The year of birth.
    Born(ParseError),
}

impl NewAnimal {
    /// The act that writes it, or everything that is wrong. What nobody said stays not known: whether it eats, and how
    /// fat it is, so that its weight is to hold until somebody wants it otherwise. `today` says whether it still grows.
    pub fn act(&self, id: &AnimalId, today: LocalDate) -> Result<Act, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let name = self.name.trim();
        if name.is_empty() {
            wrong.push(Wrong::NoName);
        }
        if self.kind.is_none() {
            wrong.push(Wrong::NoKind);
        }
        let height = optional(&self.height, read_height).unwrap_or_else(|error| {
            wrong.push(Wrong::Height(error));
            None
        });
        let born = optional(&self.born, read_year).unwrap_or_else(|error| {
            wrong.push(Wrong::Born(error));
            None
        });
        let Some(kind) = self.kind.filter(|_| wrong.is_empty()) else {
            return Err(wrong);
        };
        let animal = Animal {
            id: id.clone(),
            name: name.to_owned(),
            kind,
            body_type: None,
            sex: None,
            born: born.map(Birth::Year),
            height,
            state: match born {
                Some(born) if today.year() - born < *GROWN => State::Growing,
                _ => State::Adult,
            },
            stage: StageFacts::default(),
            work: Workload::Maintenance(Temperament::Average),
            health: Health::default(),
            goal: Goal::Hold,
            phase: Phase::New,
            target: None,
        };
        let body = AnimalV2::of(&animal).map_err(|error| vec![of_log(&error)])?;
        Ok(Act::Add(New {
            id: RecordId(id.0.clone()),
            subject: Subject::animal(id),
            at: None,
            known: Known::Seen,
            body: Body::Animal(body),
        }))
    }
}

/// The log refuses of an animal only a name that is none.
const fn of_log(_: &LogError) -> Wrong {
    Wrong::NoName
}

pub(crate) fn optional<T>(
    text: &str,
    read: impl Fn(&str) -> Result<T, ParseError>,
) -> Result<Option<T>, ParseError> {
    if text.trim().is_empty() {
        Ok(None)
    } else {
        read(text).map(Some)
    }
}

pub(crate) fn read_height(text: &str) -> Result<Length, ParseError> {
    let height = length(text, LengthUnit::Cm)?;
    HEIGHT.check(height.to_cm())?;
    Ok(height)
}

#[allow(
    clippy::cast_possible_truncation,
    reason = "a whole year within its bounds"
)]
pub(crate) fn read_year(text: &str) -> Result<i32, ParseError> {
    let year = BORN.check(number(text)?)?;
    if year.fract() > 0.0 {
        return Err(ParseError::NotANumber {
            typed: text.to_owned(),
        });
    }
    Ok(year as i32)
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_core::animal::Appetite;

    fn today() -> LocalDate {
        "2026-05-05".parse().unwrap()
    }

    /// What the act writes of the animal.
    fn written(typed: &NewAnimal) -> AnimalV2 {
        match typed.act(&AnimalId("a".into()), today()).unwrap() {
            Act::Add(New {
                body: Body::Animal(body),
                ..
            }) => body,
            other => panic!("adds an animal: {other:?}"),
        }
    }

    #[test]
    fn nothing_is_invented_of_an_animal_nobody_looked_at() {
        let body = written(&typed("Bramble", Some(Kind::Pony), "", ""));
        assert_eq!(body.health, Health::default());
        assert_eq!(body.health.appetite, Appetite::NotKnown);
        assert_eq!((body.goal, body.state), (Goal::Hold, State::Adult));
    }

    #[test]
    fn one_that_is_not_grown_is_growing() {
        let state = |born: &str| written(&typed("Fern", Some(Kind::Pony), "", born)).state;
        assert_eq!(state("2024"), State::Growing);
        assert_eq!(state("2023"), State::Adult);
    }

    fn typed(name: &str, kind: Option<Kind>, height: &str, born: &str) -> NewAnimal {
        NewAnimal {
            name: name.into(),
            kind,
            height: height.into(),
            born: born.into(),
        }
    }

    #[test]
    fn every_field_says_what_is_wrong_with_it() {
        let wrong = typed(" ", None, "14.7 hh", "12")
            .act(&AnimalId("a".into()), today())
            .unwrap_err();
        assert_eq!(wrong.len(), 4);
    }

    #[test]
    fn what_is_left_out_stays_not_known() {
        let body = written(&typed("Bramble", Some(Kind::Pony), "", ""));
        assert!(body.height.is_none() && body.born.is_none());
    }

    #[test]
    fn hands_and_a_year_are_understood() {
        let body = written(&typed("Bramble", Some(Kind::Pony), "13.2 hh", "2014"));
        assert_eq!(body.height.unwrap().mm.get(), 1372);
        assert_eq!(body.born, Some(Birth::Year(2014)));
    }
}
