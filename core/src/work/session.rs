//! What was done.

use super::energy::{HeartRate, oxygen};
use super::gait::GaitTimes;
use crate::animal::Answer;
use crate::sources::RecordId;
use crate::units::{BodyMass, Instant, LocalDate};

/// How it worked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum How {
    /// Ridden.
    Ridden,
    /// Led in hand.
    Led,
    /// Lunged, or long-reined.
    Lunged,
    /// Loose.
    Free,
}

/// What it worked on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Surface {
    /// Soft: an arena, good grass.
    Soft,
    /// Firm: dry ground, a hard track.
    Firm,
    /// Hard: a road, stones, frozen ground.
    Hard,
}

/// A session of work.
#[derive(Clone, Debug, PartialEq)]
pub struct Session {
    /// Its record.
    pub record: RecordId,
    /// When it began.
    pub start: Instant,
    /// The local day it began on.
    pub day: LocalDate,
    /// How long each gait was gone.
    pub times: GaitTimes,
    /// How it worked.
    pub how: How,
    /// On what; `None` when nobody said.
    pub surface: Option<Surface>,
    /// Rider and tack, when they were weighed.
    pub load: Option<BodyMass>,
    /// The heart rate in work, when it was measured.
    pub heart: Option<HeartRate>,
    /// Whether it blew and had settled ten minutes after.
    pub settled: Answer,
    /// Whether it went sound after it.
    pub sound: Answer,
}

/// How hard a session was among those with a heart rate.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct EffortRank {
    /// Harder than so many of the others.
    pub harder_than: usize,
    /// So many others have a heart rate.
    pub of: usize,
}

/// Ranks a session among the others by the oxygen that its heart rate stands for. `None` without a heart rate, or when no
/// other has one.
pub fn effort_rank(session: &Session, all: &[Session]) -> Option<EffortRank> {
    let own = oxygen(session.heart?);
    let others: Vec<f64> = all
        .iter()
        .filter(|other| other.record != session.record)
        .filter_map(|other| other.heart.map(oxygen))
        .collect();
    (!others.is_empty()).then(|| EffortRank {
        harder_than: others.iter().filter(|other| **other < own).count(),
        of: others.len(),
    })
}
