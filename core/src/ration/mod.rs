//! Foods other than forage, and a ration held against the limits.
//!
//! - [`Food`] is what a label says: every content in a kilogram as fed; what the label does not say is unknown, never
//!   zero. [`typical_balancer`] stands in until a label is typed, and is marked as from memory.
//! - [`balance`] adds up what forage and foods bring and holds each nutrient against its need and its ceiling.
//! - [`dose`] is the least of a food that covers what a hay-only ration is short of.
//! - [`solve`] finds the cheapest amounts between bounds and limits, and knows nothing of foods.

mod balance;
mod dose;
mod error;
mod food;
pub mod published;
pub mod solve;

pub use balance::{Line, Part, Standing, balance};
pub use dose::{Dose, dose};
pub use error::RationError;
pub use food::{Food, FoodLabel, typical_balancer};
