//! Six answers to a first plan: kind and rough height, age, girth, ribs, laminitis, hay and visits.
//!
//! What was answered roughly is stored roughly: a rough height is no measured one, so that it is kept as a remark and
//! the animal's height stays not known. The rules for small ponies then hold for every pony until somebody measures it.
//! What nobody was asked stays not known.

mod offers;
#[cfg(test)]
mod tests;

pub use offers::{Ever, RIBS, Sort, Visits, hays, key, of_key};

use crate::acts::{Act, New};
use crate::shelf::Shelf;
use chrono::Datelike;
use tussock_core::animal::{
    Animal, AnimalId, Birth, Goal, Health, LotId, Phase, StageFacts, State, Temperament, Workload,
    YardId,
};
use tussock_core::assess::published::AGE;
use tussock_core::assess::{AssessError, Reading, Ribs, Tape, weigh_in_condition};
use tussock_core::forage::ForageClass;
use tussock_core::limits::published::GROWN;
use tussock_core::log::bodies::{
    AnimalV2, ConditionTakenV1, ConditionV1, LotV1, VisitsV1, WeightV1, YardV2,
};
use tussock_core::log::{Body, Kind, Known, LogError, Name, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{LengthUnit, ParseError, length, number};
use tussock_core::units::{Length, LocalDate};

/// What was answered.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Answers {
    /// The name; empty for the word of the kind.
    pub name: String,
    /// Kind and rough height.
    pub sort: Option<Sort>,
    /// Its age in years.
    pub age: String,
    /// Its heart girth.
    pub girth: String,
    /// The ribs.
    pub ribs: Option<Ribs>,
    /// Laminitis.
    pub ever: Option<Ever>,
    /// What the hay is said to be.
    pub hay: Option<ForageClass>,
    /// The visits.
    pub visits: Option<Visits>,
}

/// The ids of what is written, made once a form: saving twice writes it once.
#[derive(Clone, Debug, PartialEq)]
pub struct Ids {
    /// The yard, which may be there already.
    pub yard: YardId,
    /// The animal.
    pub animal: AnimalId,
    /// The weight.
    pub weight: RecordId,
    /// The condition.
    pub condition: RecordId,
    /// The lot.
    pub lot: RecordId,
    /// The visits.
    pub visits: RecordId,
}

/// The names of what nobody named, and the remark that keeps a rough height.
#[derive(Clone, Debug, PartialEq)]
pub struct Named {
    /// The animal.
    pub animal: String,
    /// The lot.
    pub lot: String,
    /// The yard.
    pub yard: String,
    /// The answer about kind and rough height, in words.
    pub sort: String,
}

/// A question that is answered by a key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// Kind and rough height.
    Sort,
    /// The ribs.
    Ribs,
    /// Laminitis.
    Ever,
    /// The hay.
    Hay,
    /// The visits.
    Visits,
}

/// What is wrong with an answer.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// A question has no answer yet.
    Unanswered(Asked),
    /// The age.
    Age(ParseError),
    /// The girth.
    Girth(ParseError),
    /// The girth gives no weight.
    Assess(AssessError),
    /// The name cannot be stored.
    Name(LogError),
}

impl Answers {
    /// The act that writes everything in one batch, or all that is wrong.
    ///
    /// # Errors
    /// What is not answered or cannot be read. Then nothing is written.
    pub fn act(&self, ids: &Ids, named: &Named, today: LocalDate) -> Result<Act, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let mut unanswered = |asked, missing: bool| {
            if missing {
                wrong.push(Wrong::Unanswered(asked));
            }
        };
        unanswered(Asked::Sort, self.sort.is_none());
        unanswered(Asked::Ribs, self.ribs.is_none());
        unanswered(Asked::Ever, self.ever.is_none());
        unanswered(Asked::Hay, self.hay.is_none());
        unanswered(Asked::Visits, self.visits.is_none());
        let age = read_age(&self.age).map_err(|error| wrong.push(Wrong::Age(error)));
        let girth = read_girth(&self.girth).map_err(|error| wrong.push(Wrong::Girth(error)));
        let (Some(sort), Some(ribs), Some(ever), Some(hay), Some(visits), Ok(age), Ok(girth)) = (
            self.sort,
            self.ribs,
            self.ever,
            self.hay,
            self.visits,
            age,
            girth,
        ) else {
            return Err(wrong);
        };
        let animal = self.animal(ids, named, sort, ribs, ever, today.year() - age, age);
        let reading = Reading::Tape(Tape::girth(girth));
        weigh_in_condition(&animal, &reading, Some(ribs.condition()), today)
            .map_err(|error| vec![Wrong::Assess(error)])?;
        bodies(&animal, sort, &reading, ribs, hay, visits, named)
            .map(|bodies| batch(bodies, ids))
            .map_err(|error| vec![Wrong::Name(error)])
    }

    #[allow(
        clippy::too_many_arguments,
        reason = "the answers, each of its own type, once they are there"
    )]
    fn animal(
        &self,
        ids: &Ids,
        named: &Named,
        sort: Sort,
        ribs: Ribs,
        ever: Ever,
        born: i32,
        age: i32,
    ) -> Animal {
        let typed = self.name.trim();
        let name = if typed.is_empty() {
            named.animal.trim()
        } else {
            typed
        };
        Animal {
            id: ids.animal.clone(),
            name: name.to_owned(),
            kind: sort.kind(),
            body_type: None,
            sex: None,
            born: Some(Birth::Year(born)),
            height: None,
            state: if age < *GROWN {
                State::Growing
            } else {
                State::Adult
            },
            stage: StageFacts::default(),
            work: Workload::Maintenance(Temperament::Average),
            health: Health {
                laminitis: ever.laminitis(),
                ..Health::default()
            },
            goal: goal(ribs),
            phase: phase(ribs, ever),
            target: None,
        }
    }
}

/// What is wanted of its weight, until somebody says otherwise (ours): to gain when the ribs are seen, to hold when
/// they are easily felt, else to lose.
const fn goal(ribs: Ribs) -> Goal {
    match ribs {
        Ribs::Seen => Goal::Gain,
        Ribs::FeltEasily => Goal::Hold,
        Ribs::FeltWithPressure | Ribs::NotFelt => Goal::Lose,
    }
}

const fn phase(ribs: Ribs, ever: Ever) -> Phase {
    match (ever, ribs) {
        (Ever::HasItNow, _) => Phase::Episode,
        (_, Ribs::Seen) => Phase::NeedsWeight,
        _ => Phase::New,
    }
}

struct Bodies {
    yard: YardV2,
    animal: AnimalV2,
    weight: WeightV1,
    condition: ConditionV1,
    lot: LotV1,
    visits: VisitsV1,
}

fn bodies(
    animal: &Animal,
    sort: Sort,
    reading: &Reading,
    ribs: Ribs,
    hay: ForageClass,
    visits: Visits,
    named: &Named,
) -> Result<Bodies, LogError> {
    let mut twin = AnimalV2::of(animal)?;
    twin.note = sort.says_height().then(|| named.sort.clone());
    Ok(Bodies {
        yard: YardV2::named(Name::new(&named.yard)?),
        animal: twin,
        weight: WeightV1::of(reading)?,
        condition: ConditionV1 {
            taken: ConditionTakenV1::Ribs { ribs },
            job: None,
        },
        lot: LotV1::of_class(&named.lot, hay)?,
        visits: VisitsV1 {
            times: visits.times(),
            from: None,
        },
    })
}

/// The lot that the answer about hay already stands for: the newest one, when it is of that class, has the name that the
/// answer gives, and no laboratory looked at it. A second animal is fed from the same stack, not from another one.
pub fn the_same_lot(shelf: &Shelf, hay: ForageClass, name: &str) -> Option<RecordId> {
    let (record, body) = shelf.bodies(&Kind::Lot).into_iter().next()?;
    match body {
        Body::Lot(lot)
            if lot.class == hay && lot.name.as_str() == name && lot.reports.is_empty() =>
        {
            Some(record.id.clone())
        }
        _ => None,
    }
}

/// One batch. The visits are those a person means to make, and the rest is what was seen.
fn batch(bodies: Bodies, ids: &Ids) -> Act {
    let yard = Subject::yard(&ids.yard);
    let animal = Subject::animal(&ids.animal);
    let lot = Subject::lot(&LotId(ids.lot.0.clone()));
    let add = |id: &RecordId, subject: &Subject, body: Body| {
        Act::Add(New {
            id: id.clone(),
            subject: subject.clone(),
            at: None,
            known: Known::Seen,
            body,
        })
    };
    Act::All(vec![
        add(
            &RecordId(ids.yard.0.clone()),
            &yard,
            Body::Yard(bodies.yard),
        ),
        add(
            &RecordId(ids.animal.0.clone()),
            &animal,
            Body::Animal(bodies.animal),
        ),
        add(&ids.weight, &animal, Body::Weight(bodies.weight)),
        add(&ids.condition, &animal, Body::Condition(bodies.condition)),
        add(&ids.lot, &lot, Body::Lot(bodies.lot)),
        add(&ids.visits, &yard, Body::Visits(bodies.visits)),
    ])
}

#[allow(
    clippy::cast_possible_truncation,
    reason = "a whole number of years within its bounds"
)]
fn read_age(text: &str) -> Result<i32, ParseError> {
    let age = AGE.check(number(text)?)?;
    if age.fract() > 0.0 {
        return Err(ParseError::NotANumber {
            typed: text.to_owned(),
        });
    }
    Ok(age as i32)
}

fn read_girth(text: &str) -> Result<Length, ParseError> {
    length(text, LengthUnit::Cm)
}
