//! Soaking hay: how long, when to lift it out, what it loses, when to throw it away.
//!
//! - [`Recipe`] is water and time; [`Recipe::check`] says whether it is long enough and whether the air allows it.
//! - [`SoakTimes`] are the instants that were stored; [`timeline`] gives the deadlines, and [`state`] what the tub is
//!   now. Nothing is counted: correct a time and everything follows.
//! - [`sugar_loss`] is a band, never a pass: [`soaked`] marks a sugar estimate so that its verdict stays not proven
//!   until the soaked hay is tested. [`dry_loss`] says how much dry matter goes down the drain, and
//!   [`weigh_before_soaking`] what to weigh so that the animal still eats its share.
//! - [`NotSoaked`] says why a net was hung dry, and [`reading_not_soaked`] what it then weighs.
//!
//! What this room does not do: it soaks no haylage, and it knows no clock; now is an argument.

mod air;
mod error;
mod loss;
pub mod published;
mod recipe;
mod state;
mod timeline;
mod weighing;

#[cfg(test)]
mod laws;

pub use air::Air;
pub use error::SoakError;
pub use loss::{
    DryLoss, LossBand, LossBasis, SugarLoss, after_soaking, concentration_after,
    concentration_lost, dry_loss, dry_loss_by_fibre, mass_lost, model_dry_loss, model_sugar_loss,
    soaked, sugar_loss,
};
pub use recipe::{Recipe, RecipeFinding, Water};
pub use state::{TubState, TubStep, state};
pub use timeline::{Ended, Shortened, SoakTimes, Timeline, timeline};
pub use weighing::{
    Liquor, NotSoaked, feeds_like, reading_not_soaked, water_needed, weigh_before_soaking,
};
