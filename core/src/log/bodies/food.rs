//! A food other than forage, with its label as typed.

use super::base::{FeedWeight, Reported};
use crate::log::stored::{Name, choice, twin};
use crate::units::Money;

choice! {
    /// What a food is for.
    FoodUse {
        /// A balancer: little of it, with the minerals a hay lacks.
        Balancer = "balancer",
        /// A mineral mix or lick.
        Mineral = "mineral",
        /// Salt.
        Salt = "salt",
        /// Oil or fat.
        Oil = "oil",
        /// Fibre in a bucket: beet pulp, chaff, fibre cubes.
        Fibre = "fibre",
        /// A compound feed.
        Compound = "compound",
        /// Anything else.
        Other = "other",
    }
}
choice! {
    /// What the shares on a label are of.
    LabelBasis {
        /// Of the feed as it lies in the bag.
        AsFed = "as_fed",
        /// Of dry matter.
        DryMatter = "dry_matter",
    }
}
twin! {
    /// A line of a label.
    LabelLineV1 {
        /// The name as printed.
        name: Name,
        /// The value as printed.
        reported: Reported,
    }
}
twin! {
    /// A food other than forage.
    FoodV1 {
        /// Its name, as the person calls it.
        name: Name,
        /// What it is for.
        food_use: FoodUse,
        /// What the shares on its label are of.
        basis: LabelBasis,
        /// Its dry matter, when the label says it.
        dry_matter: Option<Reported>,
        /// The label; empty when nobody typed it, and then a typical profile stands in, marked as such.
        label: Vec<LabelLineV1>,
        /// What a pack weighs.
        pack: Option<FeedWeight>,
        /// What a pack costs.
        price: Option<Money>,
    }
}
