//! What the list of soaks writes: a tub started with all that lies in it, hay that is not soaked today, a tub of the yard.

use crate::acts::{Act, New};
use crate::forms::tub::{InTub, Wrong, checked};
use crate::views::round::{Today, about};
use tussock_core::animal::{LotId, TubId};
use tussock_core::log::bodies::base::{FeedWeight, JobKey};
use tussock_core::log::bodies::{
    JobAnswer, JobV1, RecipeV1, SoakMinutes, SoakStart, SoakStep, SoakStepV1, TubV1,
};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::round::{Job, Key, Load, LoadPart};
use tussock_core::soak::{Air, NotSoaked, Recipe};
use tussock_core::sources::RecordId;
use tussock_core::units::AsFed;
use tussock_core::units::parse::{MassUnit, ParseError, as_fed};

/// The act that starts a tub: a soak for each animal or group and lot in it, all first wet at the same moment.
///
/// # Errors
/// A soak that the air does not allow, hay of which nobody said the lot, ids that are too long.
pub fn start(
    load: &Load,
    today: &Today,
    air: Air,
    yard: &Subject,
    tub: &InTub,
    mut id: impl FnMut() -> String,
) -> Result<Act, Wrong> {
    checked(load.recipe, air)?;
    let (tub, new) = match tub {
        InTub::There(tub) => (tub.clone(), None),
        InTub::New { id, name } => {
            let body = Body::Tub(TubV1 {
                name: Name::new(name)?,
                capacity: None,
            });
            (TubId(id.clone()), Some(add(yard, id, body)))
        }
    };
    let mut acts: Vec<Act> = new.into_iter().collect();
    for part in &load.parts {
        let lot = part.lot.clone().ok_or(Wrong::NoLot)?;
        let body = step(load.recipe, &tub, part, lot, begun(today, &part.start))?;
        acts.push(add(&about(&part.subject), &id(), Body::SoakStep(body)));
    }
    Ok(Act::All(acts))
}

/// The act that starts what lies in a load for one job: its own part.
///
/// # Errors
/// As [`start`].
pub fn start_part(
    load: &Load,
    job: &Job,
    today: &Today,
    air: Air,
    yard: &Subject,
    tub: &InTub,
    id: impl FnMut() -> String,
) -> Result<Act, Wrong> {
    let own = Load {
        parts: load
            .parts
            .iter()
            .filter(|part| part.start == job.key)
            .cloned()
            .collect(),
        ..load.clone()
    };
    start(&own, today, air, yard, tub, id)
}

/// Whether some of the hay of a job went into the water already.
fn begun(today: &Today, start: &Key) -> bool {
    let mut soaks = today.due.soaks.iter();
    soaks.any(|soak| soak.started_by.as_ref() == Some(start))
}

fn step(
    recipe: Recipe,
    tub: &TubId,
    part: &LoadPart,
    lot: LotId,
    begun: bool,
) -> Result<SoakStepV1, LogError> {
    let named = || {
        part.hangs
            .iter()
            .map(JobKey::of)
            .collect::<Result<Vec<_>, _>>()
    };
    // Hay that is for all nets of its visit need not name them.
    let hangs = if part.whole && !begun {
        None
    } else {
        Some(named()?)
    };
    Ok(SoakStepV1 {
        happened: SoakStep::Started {
            start: SoakStart {
                tub: Some(tub.clone()),
                lot,
                hay: Some(FeedWeight::of(part.hay, None)?),
                nets: part.nets.clone(),
                recipe: RecipeV1 {
                    water: recipe.water(),
                    minutes: SoakMinutes::new(recipe.soak().to_minutes())?,
                },
                hangs,
            },
        },
        job: Some(JobKey::of(&part.start)?),
    })
}

/// The act of "not soaked today", one tap on its reason.
///
/// # Errors
/// Ids that are too long.
pub fn not_soaked(job: &Job, why: NotSoaked, id: &str) -> Result<Act, LogError> {
    let body = Body::Job(JobV1 {
        job: JobKey::of(&job.key)?,
        answer: JobAnswer::NotDone,
        note: None,
        not_soaked: Some(why),
    });
    Ok(add(&about(&job.subject), id, body))
}

/// The act that takes it back: the hay is soaked after all.
pub fn soaked_after_all(today: &Today, start: &Key) -> Act {
    let said = today.due.dry.iter().filter(|said| said.start == *start);
    Act::All(said.map(|said| Act::Remove(said.record.clone())).collect())
}

/// A tub of the yard, as typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TubForm {
    /// What it is called.
    pub name: String,
    /// How much hay goes into it; empty when nobody knows.
    pub capacity: String,
}

/// What is wrong with a tub.
#[derive(Clone, Debug, PartialEq)]
pub enum TubWrong {
    /// It has no name.
    NoName,
    /// The capacity cannot be read.
    Parse(ParseError),
    /// Nothing goes into it.
    NoRoom,
    /// It cannot be stored.
    Log(LogError),
}

impl TubWrong {
    /// Whether it is shown at the name; else at the capacity.
    pub const fn at_name(&self) -> bool {
        matches!(self, Self::NoName | Self::Log(_))
    }
}

impl TubForm {
    /// The act that writes it: a new one, or one that is there.
    ///
    /// # Errors
    /// A name that is missing, a capacity that cannot be read.
    pub fn act(&self, yard: &Subject, id: &str, there: Option<&TubV1>) -> Result<Act, TubWrong> {
        if self.name.trim().is_empty() {
            return Err(TubWrong::NoName);
        }
        let name = Name::new(self.name.trim()).map_err(TubWrong::Log)?;
        let capacity = match self.capacity.trim() {
            "" => None,
            typed => Some(capacity(typed)?),
        };
        let id = RecordId(id.to_owned());
        Ok(match there {
            Some(there) => Act::Change {
                id,
                body: Body::Tub(TubV1 {
                    name,
                    // What was typed before stands where it says the same.
                    capacity: match (&capacity, &there.capacity) {
                        (Some(new), Some(held)) if new.g == held.g => Some(held.clone()),
                        _ => capacity,
                    },
                }),
                at: None,
            },
            None => add(yard, &id.0, Body::Tub(TubV1 { name, capacity })),
        })
    }
}

fn capacity(typed: &str) -> Result<FeedWeight, TubWrong> {
    let read = as_fed(typed, MassUnit::Kg).map_err(TubWrong::Parse)?;
    if read <= AsFed::ZERO {
        return Err(TubWrong::NoRoom);
    }
    FeedWeight::of(read, Some(typed.to_owned())).map_err(TubWrong::Log)
}

fn add(about: &Subject, id: &str, body: Body) -> Act {
    Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: about.clone(),
        at: None,
        known: Known::Seen,
        body,
    })
}
