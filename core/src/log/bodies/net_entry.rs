//! Filling and hanging: two jobs, often on two days.

use super::base::{Count, FeedGrams, FeedWeight, JobKey};
use crate::animal::{LotId, NetId};
use crate::log::stored::{twin, words};
use crate::soak::NotSoaked;
use crate::sources::RecordId;

words!(NotSoaked {
    Frozen = "frozen",
    NoTime = "no_time",
    HoseBan = "hose_ban",
    Refused = "refused",
});

twin! {
    /// A net filled. The record is about the animal or group it is for.
    NetFilledV1 {
        /// Which net; `None` when nets are not told apart.
        net: Option<NetId>,
        /// From which lot.
        lot: LotId,
        /// The hay in it, without the net.
        hay: FeedWeight,
        /// What the scale showed, net and all.
        reading: Option<FeedWeight>,
        /// The net's own weight that was taken off.
        own_weight: Option<FeedGrams>,
        /// The target it was filled to.
        target: Option<FeedGrams>,
        /// Slices counted instead of weighed.
        slices: Option<Count>,
        /// The hay will be soaked.
        to_soak: bool,
        /// The job that this does.
        job: Option<JobKey>,
    }
}
twin! {
    /// A net hung in front of the animal or group that the record is about.
    NetHungV1 {
        /// Which net; `None` when nets are not told apart.
        net: Option<NetId>,
        /// The filling that hangs in it, when it was logged.
        filling: Option<RecordId>,
        /// From which lot, when no filling says it.
        lot: Option<LotId>,
        /// The hay in it as filled; `None` when nobody knows.
        hay: Option<FeedWeight>,
        /// The soak that the hay came out of.
        soak: Option<RecordId>,
        /// It was to be soaked and was not, and why.
        not_soaked: Option<NotSoaked>,
        /// The job that this does.
        job: Option<JobKey>,
    }
}
