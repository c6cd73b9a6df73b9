//! What a mend is asked for: the animal and its limits, the hay, and the foods that may be given.

use super::topping::Topping;
use crate::forage::{ForageClass, SugarEstimate, Supply};
use crate::limits::MealLimit;
use crate::ration::{Against, Food};
use crate::units::{AsFed, DryFraction, DryMatter, Energy};

/// What is best.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Aim {
    /// The lowest cost. Foods without a price are left out.
    Cheapest,
    /// The fewest bought foods, and of these the lightest.
    FewestFoods,
    /// The least weight of bought foods.
    Lightest,
}

/// The animal and its limits.
#[derive(Clone, Debug)]
pub struct Wanted<'a> {
    /// The animal and its needs.
    pub against: Against<'a>,
    /// All dry matter of the day, at least and at most.
    pub dry_matter: [DryMatter; 2],
    /// Forage of the day, at least.
    pub forage_least: DryMatter,
    /// Conserved forage, exactly, where what is bought comes on top of it.
    pub hay: Option<DryMatter>,
    /// Digestible energy, at least; `None` where it goes by weight and condition.
    pub energy_least: Option<Energy>,
    /// What a bucket may hold.
    pub meal: MealLimit,
    /// In how many buckets a day the foods can be given.
    pub feeds: u32,
    /// What may be given on top of hay.
    pub topping: Topping,
    /// How many bought foods at most; `None` for any number.
    pub at_most_bought: Option<usize>,
    /// What is best.
    pub aim: Aim,
}

/// A forage that is fed.
#[derive(Clone, Copy, Debug)]
pub struct ForageChoice<'a> {
    /// Its dry matter as eaten.
    pub dry: DryFraction,
    /// What it is said to be.
    pub class: ForageClass,
    /// What it brings.
    pub supply: &'a Supply,
    /// Its sugar; `None` when nobody knows it.
    pub sugar: Option<&'a SugarEstimate>,
    /// How much of it, at least and at most; equal when it is locked.
    pub between: [AsFed; 2],
    /// Its part of the dry matter of all these forages, when that is settled.
    pub part: Option<f64>,
    /// What a kilogram costs, in minor units of one currency; `None` when nobody knows.
    pub price: Option<f64>,
}

/// A food that may be given.
#[derive(Clone, Copy, Debug)]
pub struct FoodChoice<'a> {
    /// The food.
    pub food: &'a Food,
    /// How much of it, at least and at most; equal when it is locked.
    pub between: [AsFed; 2],
    /// The step in which it is weighed, or one scoop.
    pub step: AsFed,
    /// Whether only whole steps can be given, such as scoops; else the step is a matter of the kitchen scale.
    pub whole_steps: bool,
    /// Whether it is on offer; of what is not, the answer may still say that it would mend the ration.
    pub offered: bool,
    /// What a kilogram costs, in minor units of the same currency; `None` when nobody knows.
    pub price: Option<f64>,
}

impl FoodChoice<'_> {
    /// Whether a person set the amount.
    pub fn is_locked(&self) -> bool {
        let [least, most] = self.between;
        least >= most
    }
}
