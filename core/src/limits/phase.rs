//! How often an animal is looked over and its plan reviewed, by phase.

use super::published::{
    LOOK_OVER_EPISODE, LOOK_OVER_HOLDING, LOOK_OVER_LOSING, LOOK_OVER_NEEDS_WEIGHT, LOOK_OVER_NEW,
    LOOK_OVER_OTHER_HANDS, LOOK_OVER_PLATEAU, LOOK_OVER_RECOVERING, REVIEW_HOLDING, REVIEW_LOSING,
    REVIEW_NEEDS_WEIGHT, REVIEW_NEW, REVIEW_PLATEAU, REVIEW_RECOVERING,
};
use crate::animal::Phase;
use crate::sources::{Provenance, Published};

/// When a plan is reviewed. Amounts change only then, never because a weight came in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Review {
    /// Every so many days.
    EveryDays(i64),
    /// When the vet says so: the vet is in charge.
    AtVetsWord,
    /// When it comes back to its keeper.
    OnReturn,
}

/// The intervals of a phase.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Intervals {
    /// Days between look-overs.
    pub look_over_days: i64,
    /// When the plan is reviewed.
    pub review: Review,
    /// Where they come from.
    pub from: Provenance,
}

/// The intervals of a phase.
pub fn intervals(phase: Phase) -> Intervals {
    let every = |days: Published<i64>| (Review::EveryDays(*days), Some(days));
    let (look_over, (review, days)) = match phase {
        Phase::New => (LOOK_OVER_NEW, every(REVIEW_NEW)),
        Phase::Losing => (LOOK_OVER_LOSING, every(REVIEW_LOSING)),
        Phase::Plateau => (LOOK_OVER_PLATEAU, every(REVIEW_PLATEAU)),
        Phase::Holding => (LOOK_OVER_HOLDING, every(REVIEW_HOLDING)),
        Phase::NeedsWeight => (LOOK_OVER_NEEDS_WEIGHT, every(REVIEW_NEEDS_WEIGHT)),
        Phase::Episode => (LOOK_OVER_EPISODE, (Review::AtVetsWord, None)),
        Phase::Recovering => (LOOK_OVER_RECOVERING, every(REVIEW_RECOVERING)),
        Phase::OtherHands => (LOOK_OVER_OTHER_HANDS, (Review::OnReturn, None)),
    };
    let from = Provenance::new().constant(&look_over);
    Intervals {
        look_over_days: *look_over,
        review,
        from: match days {
            Some(days) => from.constant(&days),
            None => from,
        },
    }
}
