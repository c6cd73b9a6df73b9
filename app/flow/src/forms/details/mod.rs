//! The details of an animal: raw text or a key a field, and the record they become.

mod field;
mod keys;
#[cfg(test)]
mod tests;

pub use field::Field;
pub use keys::{
    ANSWERS, BODY_TYPES, GOALS, INSULIN, KINDS, LAMINITIS, NOT_KNOWN, PPID, SEXES, STATES, TEETH,
    WORK, value_of,
};

use crate::acts::Act;
use crate::forms::animal::{optional, read_height, read_year};
use keys::{key_of, optional_key};
use std::collections::BTreeMap;
use tussock_core::animal::{Birth, Insulin, InsulinTest, Laminitis, Phase};
use tussock_core::log::bodies::AnimalV1;
use tussock_core::log::bodies::base::Distance;
use tussock_core::log::{Body, Name};
use tussock_core::sources::RecordId;
use tussock_core::units::LocalDate;
use tussock_core::units::parse::ParseError;

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// No name, or one that is too long.
    Name,
    /// A number.
    Parse(Field, ParseError),
    /// No day, or one that has not come.
    Date(Field),
}

impl Wrong {
    /// Where it is shown.
    pub const fn field(&self) -> Field {
        match self {
            Self::Name => Field::Name,
            Self::Parse(field, _) | Self::Date(field) => *field,
        }
    }
}

/// The raw text of every field.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Details(BTreeMap<Field, String>);

impl Details {
    /// What holds, as it would be typed.
    pub fn of(held: &AnimalV1) -> Self {
        let mut fields = BTreeMap::new();
        let mut put = |field, text: String| {
            fields.insert(field, text);
        };
        let key = str::to_owned;
        put(Field::Name, held.name.as_str().to_owned());
        put(Field::Kind, key(key_of(&KINDS, &held.kind)));
        put(
            Field::BodyType,
            key(optional_key(&BODY_TYPES, held.body_type)),
        );
        put(Field::Sex, key(optional_key(&SEXES, held.sex)));
        put(
            Field::Born,
            match held.born {
                Some(Birth::Year(year)) => year.to_string(),
                Some(Birth::Day(day)) => day.to_string(),
                None => String::new(),
            },
        );
        put(
            Field::Height,
            held.height.as_ref().map_or_else(String::new, |height| {
                height
                    .typed
                    .clone()
                    .unwrap_or_else(|| format!("{:.1} cm", height.mm.length().to_cm()))
            }),
        );
        put(Field::State, key(key_of(&STATES, &held.state)));
        put(Field::Work, key(key_of(&WORK, &held.work)));
        put(Field::Goal, key(key_of(&GOALS, &held.goal)));
        let (laminitis, ended) = match held.health.laminitis {
            Laminitis::Ever { last } => (Laminitis::Ever { last: None }, last),
            other => (other, None),
        };
        put(Field::Laminitis, key(key_of(&LAMINITIS, &laminitis)));
        put(
            Field::LaminitisEnded,
            ended.map(|day| day.to_string()).unwrap_or_default(),
        );
        let test = match &held.health.insulin {
            Insulin::Tested(test) => Some(test),
            Insulin::NotKnown => None,
        };
        put(
            Field::Insulin,
            key(key_of(&INSULIN, &test.map(|test| test.dysregulated))),
        );
        put(
            Field::InsulinOn,
            test.map(|test| test.on.to_string()).unwrap_or_default(),
        );
        put(
            Field::InsulinBy,
            test.map(|test| test.by.clone()).unwrap_or_default(),
        );
        put(
            Field::InsulinTest,
            test.map(|test| test.test.clone()).unwrap_or_default(),
        );
        put(Field::Ppid, key(key_of(&PPID, &held.health.ppid)));
        put(Field::Teeth, key(key_of(&TEETH, &held.health.teeth)));
        put(
            Field::NativeOrCob,
            key(key_of(&ANSWERS, &held.health.native_or_cob)),
        );
        Self(fields)
    }

    /// The text of a field.
    pub fn text(&self, field: Field) -> &str {
        self.0.get(&field).map_or("", String::as_str)
    }

    /// The same with another text in a field.
    #[must_use]
    pub fn with(mut self, field: Field, text: impl Into<String>) -> Self {
        self.0.insert(field, text.into());
        self
    }

    /// The act that changes the record, or everything that is wrong. What was noted and is not asked here stays.
    pub fn act(&self, held: &AnimalV1, id: &RecordId, today: LocalDate) -> Result<Act, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let mut next = held.clone();
        match Name::new(self.text(Field::Name).trim()) {
            Ok(name) => next.name = name,
            Err(_) => wrong.push(Wrong::Name),
        }
        let born = self.text(Field::Born).trim();
        match read_birth(born, today) {
            Ok(read) => next.born = read,
            Err(error) => wrong.push(error),
        }
        if self.text(Field::Height) != Self::of(held).text(Field::Height) {
            match self.height() {
                Ok(height) => next.height = height,
                Err(error) => wrong.push(error),
            }
        }
        next.kind = value_of(&KINDS, self.text(Field::Kind)).unwrap_or(held.kind);
        next.body_type = value_of(&BODY_TYPES, self.text(Field::BodyType));
        next.sex = value_of(&SEXES, self.text(Field::Sex));
        next.state = value_of(&STATES, self.text(Field::State)).unwrap_or(held.state);
        next.work = value_of(&WORK, self.text(Field::Work)).unwrap_or(held.work);
        next.goal = value_of(&GOALS, self.text(Field::Goal)).unwrap_or(held.goal);
        let health = &mut next.health;
        health.ppid = value_of(&PPID, self.text(Field::Ppid)).unwrap_or_default();
        health.teeth = value_of(&TEETH, self.text(Field::Teeth)).unwrap_or_default();
        health.native_or_cob =
            value_of(&ANSWERS, self.text(Field::NativeOrCob)).unwrap_or_default();
        match self.laminitis(today) {
            Ok(laminitis) => health.laminitis = laminitis,
            Err(error) => wrong.push(error),
        }
        match self.insulin(today) {
            Ok(insulin) => health.insulin = insulin,
            Err(error) => wrong.push(error),
        }
        next.phase = phase(held.phase, held.health.laminitis, next.health.laminitis);
        if wrong.is_empty() {
            Ok(Act::Change {
                id: id.clone(),
                body: Body::Animal(next),
                at: None,
            })
        } else {
            Err(wrong)
        }
    }

    fn height(&self) -> Result<Option<Distance>, Wrong> {
        let typed = self.text(Field::Height).trim();
        let refused = || {
            let typed = typed.to_owned();
            Wrong::Parse(Field::Height, ParseError::NotANumber { typed })
        };
        optional(typed, read_height)
            .map_err(|error| Wrong::Parse(Field::Height, error))?
            .map(|height| Distance::of(height, Some(typed.to_owned())).map_err(|_| refused()))
            .transpose()
    }

    fn laminitis(&self, today: LocalDate) -> Result<Laminitis, Wrong> {
        Ok(
            match value_of(&LAMINITIS, self.text(Field::Laminitis)).unwrap_or_default() {
                Laminitis::Ever { .. } => Laminitis::Ever {
                    last: self.day(Field::LaminitisEnded, today)?,
                },
                other => other,
            },
        )
    }

    fn insulin(&self, today: LocalDate) -> Result<Insulin, Wrong> {
        let Some(dysregulated) = value_of(&INSULIN, self.text(Field::Insulin)).flatten() else {
            return Ok(Insulin::NotKnown);
        };
        // A test without its day says nothing: results grow old.
        let on = self
            .day(Field::InsulinOn, today)?
            .ok_or(Wrong::Date(Field::InsulinOn))?;
        Ok(Insulin::Tested(InsulinTest {
            dysregulated,
            by: self.text(Field::InsulinBy).trim().to_owned(),
            on,
            test: self.text(Field::InsulinTest).trim().to_owned(),
        }))
    }

    fn day(&self, field: Field, today: LocalDate) -> Result<Option<LocalDate>, Wrong> {
        let text = self.text(field).trim();
        if text.is_empty() {
            return Ok(None);
        }
        match read_day(text) {
            Some(day) if day <= today => Ok(Some(day)),
            _ => Err(Wrong::Date(field)),
        }
    }
}

/// Laminitis now is an episode, and the vet is in charge; after it the animal recovers until the vet says it is over.
const fn phase(held: Phase, before: Laminitis, now: Laminitis) -> Phase {
    match (before, now, held) {
        (_, Laminitis::Active, _) => Phase::Episode,
        (Laminitis::Active, Laminitis::Ever { .. }, Phase::Episode) => Phase::Recovering,
        (Laminitis::Active, _, Phase::Episode) => Phase::New,
        _ => held,
    }
}

/// A day as people write it: 2026-05-01, or 1.5.2026 and 1/5/2026 with the day first.
fn read_day(text: &str) -> Option<LocalDate> {
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

fn read_birth(text: &str, today: LocalDate) -> Result<Option<Birth>, Wrong> {
    match read_day(text) {
        Some(day) if day <= today => Ok(Some(Birth::Day(day))),
        Some(_) => Err(Wrong::Date(Field::Born)),
        None => optional(text, read_year)
            .map(|year| year.map(Birth::Year))
            .map_err(|error| Wrong::Parse(Field::Born, error)),
    }
}
