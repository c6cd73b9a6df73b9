//! A job, and a round of them.

use super::input::Answered;
use super::key::{JobKind, Key, Slot, Subject};
use crate::animal::{FoodId, LotId, NetId, TubId, VetScope};
use crate::safety::{Refusal, VetUrgency};
use crate::soak::{NotSoaked, Recipe};
use crate::sources::RecordId;
use crate::units::{AsFed, Instant, LocalDate, LocalTime, Span};

/// How a job stands to now. It never goes back as time passes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum JobState {
    /// Its time is to come.
    Later,
    /// To be done now.
    Due,
    /// It should be done by now.
    Late {
        /// How long after its time it is.
        by: Span,
    },
}

/// A visit of a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Visit {
    /// The local day.
    pub day: LocalDate,
    /// The local time.
    pub time: LocalTime,
}

/// Why a plan waits while it goes on being fed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Waits {
    /// For the vet: something stops an animal that it feeds.
    Vet,
    /// For somebody to look again at a warm hoof or at one that lies more.
    Look,
    /// For the vet's word: the one it was made under has ended, and its hay is back at what holds without it.
    Word,
    /// For a new plan: other animals eat of it now than those it was made for.
    Members,
}

/// A job to do.
#[derive(Clone, Debug, PartialEq)]
pub struct Job {
    /// Its key: the entry that does the job carries it.
    pub key: Key,
    /// Its kind.
    pub kind: JobKind,
    /// For whom.
    pub subject: Subject,
    /// The name of that animal, group or yard.
    pub name: String,
    /// When.
    pub due: Instant,
    /// How it stands to now.
    pub state: JobState,
    /// How much of what is weighed out, before soaking and without the net; `None` when nobody knows or nothing is
    /// weighed.
    pub amount: Option<AsFed>,
    /// The visit it belongs to: for a soak the one its hay is hung at.
    pub visit: Option<Visit>,
    /// The lot.
    pub lot: Option<LotId>,
    /// Whether the hay is soaked.
    pub soaked: bool,
    /// The soak: of a step of it, or the open one that a net to hang comes out of.
    pub soak: Option<RecordId>,
    /// The tub of that soak.
    pub tub: Option<TubId>,
    /// What that tub is called.
    pub tub_name: Option<String>,
    /// Which net, when the plan says it.
    pub net: Option<NetId>,
    /// Which food; `None` for a typical balancer.
    pub food: Option<FoodId>,
    /// It was done today, and what came out asks to do it again now.
    pub again: bool,
    /// About which matter the vet's word is.
    pub scope: Option<VetScope>,
    /// What stops the animal and how soon the vet is rung, the most urgent first; empty but for a stop.
    pub stops: Vec<(Refusal, VetUrgency)>,
    /// Why the plan that a net or feed belongs to waits; it is fed all the same.
    pub waits: Option<Waits>,
    /// Water and time as the plan soaks it, of a soak to start.
    pub recipe: Option<Recipe>,
    /// Why its hay is not soaked though the plan soaks it: `amount` is then the lighter one.
    pub not_soaked: Option<NotSoaked>,
    /// What the plan weighs before soaking, of a net that is not soaked.
    pub before_soaking: Option<AsFed>,
    /// What `amount` is less than the plan's, for it was at grass today, before soaking.
    pub less_for_grass: Option<AsFed>,
    /// What the paddock is called, of one to bring in.
    pub paddock_name: Option<String>,
}

impl Job {
    /// A job with its key, to which the rest is added.
    pub(super) fn new(
        kind: JobKind,
        key: Key,
        subject: &Subject,
        name: &str,
        due: Instant,
    ) -> Self {
        Self {
            key,
            kind,
            subject: subject.clone(),
            name: name.to_owned(),
            due,
            state: JobState::Later,
            amount: None,
            visit: None,
            lot: None,
            soaked: false,
            soak: None,
            tub: None,
            tub_name: None,
            net: None,
            food: None,
            again: false,
            scope: None,
            stops: Vec::new(),
            waits: None,
            recipe: None,
            not_soaked: None,
            before_soaking: None,
            less_for_grass: None,
            paddock_name: None,
        }
    }

    /// Its place in the day of the plan; `None` for a step of a soak and for bringing in.
    pub const fn slot(&self) -> Option<Slot> {
        match &self.key {
            Key::Day { slot, .. } => Some(*slot),
            Key::Tub { .. } | Key::Out { .. } | Key::Away { .. } => None,
        }
    }
}

/// Days on which jobs were due and nobody answered any, both ends included.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DaysAway {
    /// The first day.
    pub from: LocalDate,
    /// The last day.
    pub to: LocalDate,
    /// The key that answers all of them.
    pub key: Key,
}

/// How many jobs there are.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Summary {
    /// Late.
    pub late: usize,
    /// Due.
    pub due: usize,
    /// Later.
    pub later: usize,
    /// Answered today.
    pub done: usize,
}

/// The jobs due.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Round {
    /// What stops an animal first, the most urgent first; then late, then by time.
    pub jobs: Vec<Job>,
    /// Days away, in place of what was due on them.
    pub away: Option<DaysAway>,
    /// What was answered today, each job once, in the order it was answered.
    pub done: Vec<Answered>,
}

impl Round {
    /// How many jobs there are.
    pub fn summary(&self) -> Summary {
        let mut summary = Summary {
            done: self.done.len(),
            ..Summary::default()
        };
        for job in &self.jobs {
            match job.state {
                JobState::Late { .. } => summary.late += 1,
                JobState::Due => summary.due += 1,
                JobState::Later => summary.later += 1,
            }
        }
        summary
    }

    /// The keys of a visit that "all as planned" answers: its nets and feeds that are not answered yet, of every subject.
    /// A soak, a look-over and a weighing are never assumed.
    pub fn as_planned(&self, visit: Visit) -> Vec<&Key> {
        self.jobs
            .iter()
            .filter(|job| job.visit == Some(visit) && job.kind.may_be_as_planned())
            .map(|job| &job.key)
            .collect()
    }
}
