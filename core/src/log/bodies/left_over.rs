//! What an animal left. Soaked hay that is left is wet: it is judged by eye, never weighed as if it were dry.

use super::base::{FeedWeight, JobKey};
use crate::animal::{LotId, NetId};
use crate::log::stored::{choice, tagged, twin};
use crate::sources::RecordId;

choice! {
    /// How much of what was given is left, by eye.
    Quarters {
        /// None.
        None = "none",
        /// A quarter.
        One = "one",
        /// Half.
        Two = "two",
        /// Three quarters.
        Three = "three",
        /// All of it: untouched.
        All = "all",
    }
}

impl Quarters {
    /// The part, 0 to 1.
    pub const fn part(self) -> f64 {
        // numeric: quarters of one
        match self {
            Self::None => 0.0,
            Self::One => 0.25,
            Self::Two => 0.5,
            Self::Three => 0.75,
            Self::All => 1.0,
        }
    }
}

/// How much is left.
#[derive(Clone, Debug, PartialEq)]
pub enum LeftAmount {
    /// By eye.
    ByEye {
        /// In quarters.
        quarters: Quarters,
    },
    /// Dry hay, weighed.
    Dry {
        /// The weight.
        hay: FeedWeight,
    },
    /// Wet hay, weighed against the wet weight of the same net.
    Wet {
        /// What is left, wet.
        left: FeedWeight,
        /// What the same net weighed wet when it was hung.
        hung: FeedWeight,
    },
}

tagged!(LeftAmount, by "how" {
    ByEye = "by_eye" { quarters: quarters },
    Dry = "dry" { hay: hay },
    Wet = "wet" { left: left, hung: hung },
});

twin! {
    /// What the animal or group that the record is about left.
    LeftOverV1 {
        /// Of which hanging, when it was logged.
        hung: Option<RecordId>,
        /// Of which net.
        net: Option<NetId>,
        /// Of which lot.
        lot: Option<LotId>,
        /// How much.
        left: LeftAmount,
        /// The job that this does.
        job: Option<JobKey>,
    }
}
