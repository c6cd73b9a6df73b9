//! The bought feeds of a ration that somebody decided on; its hay is the plan's.

use super::base::{FeedGrams, JobKey};
use crate::animal::{FoodId, PersonId};
use crate::log::stored::{choice, twin};
use crate::units::LocalDate;

choice! {
    /// How its amounts came about.
    DecidedAs {
        /// Set by a person.
        ByHand = "by_hand",
        /// The cheapest of those that keep every limit.
        Cheapest = "cheapest",
        /// The fewest foods.
        Fewest = "fewest",
        /// The least to carry, where prices are not known.
        Lightest = "lightest",
    }
}
twin! {
    /// What is given of one bought feed a day.
    RationFoodV1 {
        /// Which; `None` for the typical balancer.
        food: Option<FoodId>,
        /// How much, as fed.
        as_fed_g: FeedGrams,
    }
}
twin! {
    /// The bought feeds of the animal that the record is about. The next plan is made with them.
    RationV1 {
        /// The first day.
        from: LocalDate,
        /// What is given; empty for hay alone.
        foods: Vec<RationFoodV1>,
        /// How its amounts came about.
        decided_as: DecidedAs,
        /// Who decided.
        decided_by: Option<PersonId>,
        /// The job that this does.
        job: Option<JobKey>,
    }
}
