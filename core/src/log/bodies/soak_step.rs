//! The steps of a soak: one entry each, at the instant it happened. Nothing is counted down; state is worked out from
//! the instants and now.

use super::base::{FeedWeight, JobKey};
use crate::animal::{LotId, NetId, TubId};
use crate::log::stored::{choice, tagged, twin};
use crate::sources::RecordId;

choice! {
    /// The water.
    SoakWater {
        /// As it comes.
        Cold = "cold",
        /// Hand-hot, 40 to 45 degrees.
        Hot = "hot",
    }
}
twin! {
    /// What went into the water.
    SoakStart {
        /// The tub; `None` when tubs are not told apart.
        tub: Option<TubId>,
        /// The lot.
        lot: LotId,
        /// The hay, dry.
        hay: Option<FeedWeight>,
        /// The nets in it.
        nets: Vec<NetId>,
        /// The water.
        water: SoakWater,
    }
}

/// A step of a soak. The instant is the `at` of the record.
#[derive(Clone, Debug, PartialEq)]
pub enum SoakStep {
    /// First wet: the clock of throwing away starts. The id of this record is the id of the soak.
    Started {
        /// What went in.
        start: SoakStart,
    },
    /// Lifted out.
    Lifted {
        /// Of which soak.
        soak: RecordId,
    },
    /// Drained.
    Drained {
        /// Of which soak.
        soak: RecordId,
    },
    /// Fed.
    Fed {
        /// Of which soak.
        soak: RecordId,
    },
    /// What was left is thrown away.
    ThrownAway {
        /// Of which soak.
        soak: RecordId,
    },
    /// Broken off: it did not happen as begun.
    Stopped {
        /// Of which soak.
        soak: RecordId,
    },
}

tagged!(SoakStep, by "step" {
    Started = "started" { start: start },
    Lifted = "lifted" { soak: soak },
    Drained = "drained" { soak: soak },
    Fed = "fed" { soak: soak },
    ThrownAway = "thrown_away" { soak: soak },
    Stopped = "stopped" { soak: soak },
});

twin! {
    /// A step of a soak.
    SoakStepV1 {
        /// Which step.
        happened: SoakStep,
        /// The job that this does.
        job: Option<JobKey>,
    }
}
