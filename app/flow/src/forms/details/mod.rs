//! The details of an animal: raw text or a key a field, and the record they become.

mod dates;
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
use crate::forms::animal::{optional, read_height};
use dates::{read_birth, read_day};
use keys::{key_of, optional_key};
use std::collections::BTreeMap;
use tussock_core::animal::{Insulin, InsulinTest, Laminitis, Phase, State};
use tussock_core::limits::published::{LEAST_WEIGHT_KG, MOST_WEIGHT_KG};
use tussock_core::log::bodies::AnimalV2;
use tussock_core::log::bodies::base::{BodyWeight, Distance};
use tussock_core::log::{Body, Name};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{MassUnit, ParseError, body_mass};
use tussock_core::units::{Bounds, LocalDate};

/// The weights that are believed of a grown animal, in kilograms.
const GROWN_WEIGHT: Bounds = Bounds::new("grown_kg", LEAST_WEIGHT_KG.value, MOST_WEIGHT_KG.value);

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
    pub fn of(held: &AnimalV2) -> Self {
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
            held.born.map(dates::birth_text).unwrap_or_default(),
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
        let date = |day: Option<LocalDate>| day.map(|day| day.to_string()).unwrap_or_default();
        put(Field::Covered, date(held.covered));
        put(Field::Foaled, date(held.foaled));
        put(
            Field::Grown,
            held.grown.as_ref().map_or_else(String::new, |grown| {
                grown
                    .typed
                    .clone()
                    .unwrap_or_else(|| format!("{:.0} kg", grown.g.mass().to_kg()))
            }),
        );
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
    pub fn act(&self, held: &AnimalV2, id: &RecordId, today: LocalDate) -> Result<Act, Vec<Wrong>> {
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
        if let Err(errors) = self.stage(held, &mut next, today) {
            wrong.extend(errors);
        }
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

    /// Since when it is in its state, and to what weight it grows. What belongs to another state no longer holds: a mare
    /// that foaled is not in foal since the day she was covered.
    fn stage(
        &self,
        held: &AnimalV2,
        next: &mut AnimalV2,
        today: LocalDate,
    ) -> Result<(), Vec<Wrong>> {
        let mut wrong = Vec::new();
        let mut date = |field, wanted| match self.day(field, today) {
            Ok(day) if next.state == wanted => day,
            Err(error) if next.state == wanted => {
                wrong.push(error);
                None
            }
            Ok(_) | Err(_) => None,
        };
        let covered = date(Field::Covered, State::Pregnant);
        let foaled = date(Field::Foaled, State::Lactating);
        let grown = if next.state != State::Growing {
            None
        } else if self.text(Field::Grown) == Self::of(held).text(Field::Grown) {
            held.grown.clone()
        } else {
            self.grown().unwrap_or_else(|error| {
                wrong.push(error);
                None
            })
        };
        (next.covered, next.foaled, next.grown) = (covered, foaled, grown);
        if wrong.is_empty() { Ok(()) } else { Err(wrong) }
    }

    fn grown(&self) -> Result<Option<BodyWeight>, Wrong> {
        let typed = self.text(Field::Grown).trim();
        let refused = |error| Wrong::Parse(Field::Grown, error);
        optional(typed, |typed| {
            let grown = body_mass(typed, MassUnit::Kg)?;
            GROWN_WEIGHT.check(grown.to_kg())?;
            Ok(grown)
        })
        .map_err(refused)?
        .map(|grown| {
            BodyWeight::of(grown, Some(typed.to_owned())).map_err(|_| {
                refused(ParseError::NotANumber {
                    typed: typed.to_owned(),
                })
            })
        })
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
