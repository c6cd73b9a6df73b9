//! What rings while a page is open: each deadline once, and again only when its time was corrected.

use super::tub::Deadline;
use crate::routes::Route;
use crate::views::round::Today;
use tussock_core::animal::TubId;
use tussock_core::round::{Job, JobKind, JobState, Key, OpenSoak, Waits};
use tussock_core::soak::{TubState, state};
use tussock_core::units::Instant;

/// How many deadlines that are over are remembered as told.
const TOLD: usize = 64;

/// For what it rings.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum RingsFor {
    /// A step of a soak.
    Tub {
        /// Which step.
        what: Deadline,
        /// The soak.
        soak: String,
        /// What the tub is called.
        tub: Option<String>,
    },
    /// Bringing in from grass.
    BringIn {
        /// What the paddock is called.
        paddock: Option<String>,
        /// Why it may not be at grass at all, where something stops it.
        waits: Option<Waits>,
    },
}

/// A deadline that has come, or an animal at grass that is to be brought in now.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ring {
    /// What tells it from every other: the job and its time.
    pub key: String,
    /// For what.
    pub what: RingsFor,
    /// When it came; bringing in rings a little before its time, for it has to be caught.
    pub at: Instant,
    /// For whom; empty for the whole yard.
    pub whose: String,
}

impl Ring {
    /// Where it is done.
    pub fn opens(&self) -> Route {
        match &self.what {
            RingsFor::Tub { soak, .. } => Route::Tub(TubId(soak.clone())),
            RingsFor::BringIn { .. } => Route::Round,
        }
    }
}

/// Whether a tub is open.
pub fn open_tubs(today: &Today) -> bool {
    !today.due.soaks.is_empty()
}

/// The deadlines that have come and at which nothing was done yet, the latest late first. What was missed while the page
/// slept is among them once, as what is to be done at that tub now.
pub fn due(today: &Today, now: Instant) -> Vec<Ring> {
    let mut rings: Vec<Ring> = today
        .due
        .soaks
        .iter()
        .filter_map(|soak| ring(soak, now))
        .chain(today.round.jobs.iter().filter_map(bring_in))
        .collect();
    rings.sort_by(|a, b| (a.at, &a.key).cmp(&(b.at, &b.key)));
    rings
}

fn bring_in(job: &Job) -> Option<Ring> {
    let comes = job.kind == JobKind::BringIn && job.state != JobState::Later;
    comes.then(|| Ring {
        key: format!("{}/{}", job.key, job.due.to_ms()),
        what: RingsFor::BringIn {
            paddock: job.paddock_name.clone(),
            waits: job.waits,
        },
        at: job.due,
        whose: job.name.clone(),
    })
}

fn ring(soak: &OpenSoak, now: Instant) -> Option<Ring> {
    let (what, kind, at) = match state(Some((soak.recipe, soak.times)), soak.air, now) {
        TubState::LiftOut { due, .. } => (Deadline::LiftOut, JobKind::LiftOut, due),
        TubState::Feed { since, .. } => (Deadline::Feed, JobKind::DrainAndFeed, since),
        TubState::ThrowAway { since, .. } => (Deadline::ThrowAway, JobKind::ThrowAway, since),
        TubState::Empty
        | TubState::InWater { .. }
        | TubState::Draining { .. }
        | TubState::Fed { .. }
        | TubState::Done { .. } => return None,
    };
    let key = Key::Tub {
        kind,
        soak: soak.id.clone(),
    };
    Some(Ring {
        key: format!("{key}/{}", at.to_ms()),
        what: RingsFor::Tub {
            what,
            soak: soak.id.0.clone(),
            tub: soak.tub_name.clone(),
        },
        at,
        whose: soak.name.clone(),
    })
}

/// What is still to be told, and what is remembered as told from then on.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Fresh {
    /// To be told now, the latest late first.
    pub rings: Vec<Ring>,
    /// The keys that are told: all that are due, and the newest of those that are over.
    pub told: Vec<String>,
}

/// Of what is due, what was not told yet.
pub fn fresh(due: &[Ring], told: &[String]) -> Fresh {
    let rings = due
        .iter()
        .filter(|ring| !told.contains(&ring.key))
        .cloned()
        .collect();
    let over: Vec<&String> = told
        .iter()
        .filter(|key| !due.iter().any(|ring| ring.key == **key))
        .collect();
    let kept = over.iter().skip(over.len().saturating_sub(TOLD)).copied();
    Fresh {
        rings,
        told: kept
            .cloned()
            .chain(due.iter().map(|ring| ring.key.clone()))
            .collect(),
    }
}
