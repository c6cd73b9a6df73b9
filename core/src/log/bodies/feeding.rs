//! How an animal or a group is fed: what a person chose, from which a plan is worked out.

use super::base::{BodyHundredths, FeedWeight, whole_number};
use super::soak_step::RecipeV1;
use crate::animal::{FoodId, LotId};
use crate::day::NetKind;
use crate::log::stored::twin;

whole_number! {
    /// A part of the whole, in percent.
    PartPercent = (0, 100)
}
twin! {
    /// A forage that is offered.
    HayShareV1 {
        /// The lot.
        lot: LotId,
        /// Its part of the forage dry matter.
        percent: PartPercent,
    }
}
twin! {
    /// How the animal or group that the record is about is fed.
    FeedingV1 {
        /// The forages; their parts add up to 100.
        hays: Vec<HayShareV1>,
        /// The balancer in the feed room; `None` for none, and then a typical one stands in.
        balancer: Option<FoodId>,
        /// What the forage is eaten from.
        net_kind: NetKind,
        /// The most that can hang at one visit.
        most_at_once: Option<FeedWeight>,
        /// How hay is soaked here, when it must be.
        soaking: Option<RecipeV1>,
        /// The level of dry matter that somebody asks for; `None` leaves it to the rules.
        asked: Option<BodyHundredths>,
    }
}
