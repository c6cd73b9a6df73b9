//! The steps of a soak: what each writes, and what is typed when one is started or corrected.

pub use super::correct::{clock, correct};

use crate::acts::{Act, New};
use crate::views::round::{Today, about};
use crate::views::tub::{Tub, YardTub};
use tussock_core::animal::{LotId, TubId};
use tussock_core::forage::ForageKind;
use tussock_core::log::bodies::base::{FeedWeight, JobKey};
use tussock_core::log::bodies::{
    NetHungV1, RecipeV1, SoakMinutes, SoakStart, SoakStep, SoakStepV1, TubV1,
};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::round::{Job, JobKind, Key, OpenSoak};
use tussock_core::soak::{Air, Ended, Recipe, RecipeFinding, SoakError, TubStep, Water};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{MassUnit, ParseError, as_fed, number};
use tussock_core::units::{AsFed, Instant};

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// No lot is chosen.
    NoLot,
    /// The text of this field cannot be read.
    Parse(&'static str, ParseError),
    /// A time that is none.
    Time(String),
    /// A time to come.
    ToCome,
    /// The recipe, or the order of the steps.
    Soak(SoakError),
    /// It cannot be stored.
    Log(LogError),
}

impl From<LogError> for Wrong {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

impl Wrong {
    /// The field it is shown at.
    pub const fn field(&self) -> &'static str {
        match self {
            Self::Parse(field, _) => field,
            Self::NoLot => "lot",
            Self::Soak(_) => "minutes",
            Self::Time(_) | Self::ToCome => "time",
            Self::Log(_) => "hay",
        }
    }
}

/// In which tub: one that is there, or a new one with this name.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum InTub {
    /// One of the yard's.
    There(TubId),
    /// A new one.
    New {
        /// Its id.
        id: String,
        /// Its name.
        name: String,
    },
}

/// The first tub with nothing in it, else a new one with the next number.
pub fn free_tub(tubs: &[YardTub], name: impl Fn(usize) -> String, id: String) -> InTub {
    match tubs.iter().find(|tub| !tub.in_use) {
        Some(tub) => InTub::There(tub.id.clone()),
        None => InTub::New {
            id,
            name: name(tubs.len().saturating_add(1)),
        },
    }
}

/// A soak to begin.
#[derive(Clone, Debug, PartialEq)]
pub struct Start {
    /// For whom.
    pub about: Subject,
    /// In which tub.
    pub tub: InTub,
    /// From which lot.
    pub lot: Option<LotId>,
    /// The hay, dry, as typed; empty for `amount`.
    pub hay: String,
    /// The hay as planned; `None` when nobody knows.
    pub amount: Option<AsFed>,
    /// The water.
    pub water: Water,
    /// Minutes in it, as typed; empty for the least time.
    pub minutes: String,
    /// The job that it does.
    pub job: Option<Key>,
}

impl Start {
    /// Water and time.
    ///
    /// # Errors
    /// Minutes that cannot be read or are out of range.
    pub fn recipe(&self) -> Result<Recipe, Wrong> {
        recipe(self.water, &self.minutes)
    }

    /// The act that writes it: the tub where it is new, and the step, whose id is that of the soak.
    ///
    /// # Errors
    /// Everything that is wrong; a soak that the air does not allow is refused.
    pub fn act(&self, yard: &Subject, air: Air, soak: &str) -> Result<Act, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let recipe = self
            .recipe()
            .and_then(|recipe| checked(recipe, air).map(|_| recipe))
            .map_err(|error| wrong.push(error))
            .ok();
        let hay = if self.hay.trim().is_empty() {
            self.amount
        } else {
            as_fed(&self.hay, MassUnit::Kg)
                .map_err(|error| wrong.push(Wrong::Parse("hay", error)))
                .ok()
        };
        if self.lot.is_none() {
            wrong.push(Wrong::NoLot);
        }
        let (Some(recipe), Some(lot), true) = (recipe, &self.lot, wrong.is_empty()) else {
            return Err(wrong);
        };
        self.written(yard, soak, recipe, lot, hay)
            .map_err(|error| vec![Wrong::Log(error)])
    }

    fn written(
        &self,
        yard: &Subject,
        soak: &str,
        recipe: Recipe,
        lot: &LotId,
        hay: Option<AsFed>,
    ) -> Result<Act, LogError> {
        let typed = Some(self.hay.trim().to_owned()).filter(|typed| !typed.is_empty());
        let (tub, new_tub) = match &self.tub {
            InTub::There(id) => (id.clone(), None),
            InTub::New { id, name } => (
                TubId(id.clone()),
                Some(add(
                    yard,
                    id,
                    Known::Seen,
                    Body::Tub(TubV1 {
                        name: Name::new(name)?,
                        capacity: None,
                    }),
                )),
            ),
        };
        let body = SoakStepV1 {
            happened: SoakStep::Started {
                start: SoakStart {
                    tub: Some(tub),
                    lot: lot.clone(),
                    hay: hay.map(|hay| FeedWeight::of(hay, typed)).transpose()?,
                    nets: Vec::new(),
                    recipe: RecipeV1 {
                        water: recipe.water(),
                        minutes: SoakMinutes::new(recipe.soak().to_minutes())?,
                    },
                    hangs: None,
                },
            },
            job: self.job.as_ref().map(JobKey::of).transpose()?,
        };
        let step = add(&self.about, soak, Known::Seen, Body::SoakStep(body));
        Ok(Act::All(new_tub.into_iter().chain([step]).collect()))
    }
}

/// Water and time as typed; nothing typed is the least time for this water.
///
/// # Errors
/// Minutes that cannot be read or are out of range.
pub fn recipe(water: Water, minutes: &str) -> Result<Recipe, Wrong> {
    if minutes.trim().is_empty() {
        return Ok(Recipe::usual(water));
    }
    let read = number(minutes).map_err(|error| Wrong::Parse("minutes", error))?;
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "a cast saturates, and the recipe knows its range"
    )]
    Recipe::minutes(water, read.round() as u32).map_err(Wrong::Soak)
}

/// What to know before hay goes into the water.
///
/// # Errors
/// A soak that the air does not allow.
pub fn checked(recipe: Recipe, air: Air) -> Result<Vec<RecipeFinding>, Wrong> {
    recipe.check(ForageKind::Hay, air).map_err(Wrong::Soak)
}

fn add(about: &Subject, id: &str, known: Known, body: Body) -> Act {
    Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: about.clone(),
        at: None,
        known,
        body,
    })
}

/// A step of a soak, with the job it does.
pub(crate) fn step(
    soak: &OpenSoak,
    happened: SoakStep,
    kind: Option<JobKind>,
    known: Known,
    id: &str,
) -> Result<Act, LogError> {
    let key = kind.map(|kind| Key::Tub {
        kind,
        soak: soak.id.clone(),
    });
    let body = SoakStepV1 {
        happened,
        job: key.as_ref().map(JobKey::of).transpose()?,
    };
    Ok(add(&about(&soak.subject), id, known, Body::SoakStep(body)))
}

/// Lifting hay out of a tub lifts out what went in beside it: `own` is the act of the one.
pub(crate) fn lift_with(
    open: &OpenSoak,
    today: &Today,
    own: Result<Act, LogError>,
    mut id: impl FnMut() -> String,
) -> Result<Act, LogError> {
    let mut acts = vec![own?];
    let beside = today.due.soaks.iter().filter(|soak| soak.is_beside(open));
    for soak in beside.filter(|soak| soak.times.lifted.is_none()) {
        let lifted = SoakStep::Lifted {
            soak: soak.id.clone(),
        };
        let lift_out = Some(JobKind::LiftOut);
        acts.push(step(soak, lifted, lift_out, Known::Seen, &id())?);
    }
    Ok(Act::All(acts))
}

/// Nets of a soak that were not hung yet.
pub(crate) fn nets_of<'a>(today: &'a Today, soak: &RecordId) -> Vec<&'a Job> {
    today
        .round
        .jobs
        .iter()
        .filter(|job| job.kind == JobKind::HangNet && job.soak.as_ref() == Some(soak))
        .collect()
}

/// A net that is hung, out of a soak or not.
pub(crate) fn hung(
    job: &Job,
    filling: Option<(RecordId, AsFed)>,
    known: Known,
    id: &str,
) -> Result<Act, LogError> {
    let hay = filling.as_ref().map(|(_, hay)| *hay).or(job.amount);
    let body = NetHungV1 {
        net: job.net.clone(),
        filling: filling.map(|(id, _)| id),
        lot: job.lot.clone(),
        hay: hay.map(|hay| FeedWeight::of(hay, None)).transpose()?,
        soak: job.soak.clone(),
        not_soaked: job.not_soaked,
        job: Some(JobKey::of(&job.key)?),
    };
    Ok(add(&about(&job.subject), id, known, Body::NetHung(body)))
}

/// What the primary action of a tub writes; `None` where there is none. Feeding it hangs the nets that wait for it.
///
/// # Errors
/// Ids that are too long.
pub fn next(
    tub: &Tub,
    today: &Today,
    now: Instant,
    mut id: impl FnMut() -> String,
) -> Result<Option<Act>, LogError> {
    let soak = || tub.soak.id.clone();
    let one = |happened, kind, id: &str| step(&tub.soak, happened, Some(kind), Known::Seen, id);
    Ok(Some(match tub.state(now).step() {
        TubStep::InWater | TubStep::LiftOut => {
            let own = one(SoakStep::Lifted { soak: soak() }, JobKind::LiftOut, &id());
            lift_with(&tub.soak, today, own, id)?
        }
        TubStep::Draining | TubStep::Feed => {
            let mut acts = vec![one(
                SoakStep::Fed { soak: soak() },
                JobKind::DrainAndFeed,
                &id(),
            )?];
            for net in nets_of(today, &tub.soak.id) {
                // What came out of the water hangs, whichever hay was opened meanwhile.
                let lot = Some(tub.soak.lot.clone());
                let net = Job { lot, ..net.clone() };
                acts.push(hung(&net, None, Known::Seen, &id())?);
            }
            Act::All(acts)
        }
        TubStep::Fed | TubStep::ThrowAway => one(
            SoakStep::ThrownAway { soak: soak() },
            JobKind::ThrowAway,
            &id(),
        )?,
        TubStep::Empty | TubStep::Done => return Ok(None),
    }))
}

/// How a soak ends beside its last step: eaten up, or broken off.
///
/// # Errors
/// Ids that are too long.
pub fn end(tub: &Tub, how: Ended, id: &str) -> Result<Act, LogError> {
    let soak = tub.soak.id.clone();
    let happened = match how {
        Ended::Eaten => SoakStep::Eaten { soak },
        Ended::ThrownAway => SoakStep::ThrownAway { soak },
        Ended::Stopped => SoakStep::Stopped { soak },
    };
    let job = Some(JobKind::ThrowAway);
    step(&tub.soak, happened, job, Known::Seen, id)
}

/// Breaks a soak off.
///
/// # Errors
/// Ids that are too long.
pub fn stop(tub: &Tub, id: &str) -> Result<Act, LogError> {
    end(tub, Ended::Stopped, id)
}
