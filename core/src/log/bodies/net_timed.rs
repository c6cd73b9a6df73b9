//! A net that was timed, from hanging until it was empty.

use super::base::FeedWeight;
use crate::animal::{LotId, NetId};
use crate::day::{NetKind, Timing};
use crate::log::stored::twin;
use crate::sources::RecordId;
use crate::units::{DryMatter, Instant};

twin! {
    /// A net that the animal the record is about ate up.
    NetTimedV1 {
        /// Its hanging.
        hung: Option<RecordId>,
        /// Which net; `None` when nets are not told apart.
        net: Option<NetId>,
        /// What it was eaten from.
        net_kind: NetKind,
        /// From which lot.
        lot: Option<LotId>,
        /// The hay in it as filled, before soaking.
        hay: FeedWeight,
        /// It was soaked: soaked hay is eaten more slowly, and its timings stand apart.
        soaked: bool,
        /// When it was hung.
        from: Instant,
        /// When it was seen to be empty.
        to: Instant,
        /// Nobody saw the end of it: it was found empty, and the time is the most it can have taken.
        found: bool,
    }
}

impl NetTimedV1 {
    /// The hours from hanging until it was seen to be empty.
    pub fn hours(&self) -> f64 {
        self.to.since(self.from).to_hours()
    }

    /// The timing of so much dry matter.
    pub fn timing(&self, eaten: DryMatter) -> Timing {
        Timing {
            eaten,
            hours: self.hours(),
            found: self.found,
        }
    }
}
