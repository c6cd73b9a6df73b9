//! What an animal needs and what it may have.
//!
//! - [`needs`]: energy, protein, minerals and vitamins a day of every [`Stage`]; [`upper_limit`] and the ratios bound
//!   them from above.
//! - [`energy_floor`], [`judge_energy`]: how little energy a day may hold.
//! - [`allowance`]: dry matter a day, the starting level, what stands in the way of less, and what never is less.
//! - [`vet_list`], [`lowest_level_word`]: who is never restricted without a vet's word, and the word that opens it.
//! - [`sugar_limits`], [`meal_limit`]: sugar and starch of the hay, the day and the bucket.
//! - [`straw_cap`], [`lucerne_cap`], [`water_need`], [`salt_for`]: straw, lucerne, water and salt.
//! - [`intervals`]: look-over and review of each phase.
//!
//! The room judges and does not plan: it does not know hay, nets or visits, it steps nothing down by itself, and it is
//! no diagnosis. Growing animals and mares in foal or in milk have needs, so that a ration can be balanced for them, and
//! are never restricted.

mod allowance;
mod bar;
mod by_work;
mod caps;
mod ends;
mod energy;
mod error;
mod need;
mod nutrient;
mod phase;
pub mod published;
mod rules;
mod salt;
pub mod stage;
mod sugar;
mod upper;
mod vet_list;
mod water;

#[cfg(test)]
mod laws;
#[cfg(test)]
mod tests;

pub use allowance::{
    Allowance, AllowanceFor, AllowanceReason, Offer, Weighings, allowance, starting_level,
    step_down, step_up,
};
pub use bar::{ConditionScore, RestrictionBar};
pub use by_work::ByWork;
pub use caps::{
    CapVerdict, DonkeyLossVerdict, ForagePart, LucerneCap, StrawCap, donkey_loss_cap, judge_cap,
    judge_donkey_loss, judge_lucerne, lucerne_cap, straw_cap,
};
pub use ends::Ends;
pub use energy::{EnergyFloor, EnergyNeed, EnergyVerdict, energy_floor, energy_need, judge_energy};
pub use error::LimitsError;
pub use need::{Basis, Finding, Need, NeedFor, Needs, needs};
pub use nutrient::{Amount, Nutrient, NutrientUnit};
pub use phase::{Intervals, Review, intervals};
pub use rules::RULES_VERSION;
pub use salt::{salt_for, salt_sodium};
pub use stage::{Milk, Stage, StageGap, daily_gain, growing_weight, milk};
pub use sugar::{
    MealLimit, MealVerdict, SugarLimits, feeds_needed, judge_meal, meal_limit, sugar_limits,
};
pub use upper::{
    RatioVerdict, UpperContent, UpperLimit, UpperVerdict, calcium_to_phosphorus, iron_to_copper,
    judge_added_selenium, judge_salt, judge_upper, upper_limit, vitamin_e_most, zinc_to_copper,
};
pub use vet_list::{VetListReason, default_expiry, lowest_level_word, vet_list};
pub use water::{Litres, WaterNeed, WaterWeather, water_need};
