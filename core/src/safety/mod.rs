//! The last word on every plan.
//!
//! [`judge`] is the only way from a [`Draft`] to a [`Plan`]: `Plan` has no other constructor, so nothing unjudged can be
//! shown, kept or exported. A refusal says why and what to do meanwhile; forage is never taken away by it.
//!
//! [`stops`] says what is wrong with an animal before there is any plan; [`will_not_eat`] what a handful of dry hay says
//! of one that leaves its forage.
//!
//! This is no diagnosis and no treatment: it defers to the vet, and gives no drug doses.

mod caution;
mod judge;
pub mod published;
mod refusal;
#[cfg(test)]
mod tests;
mod vitals;
mod wont_eat;

pub use caution::{Caution, cautions, of_health};
pub use judge::{GroupPlan, GroupVerdict, Plan, SafetyVerdict, judge, judge_group};
pub use refusal::{Meanwhile, Refusal, Refused, StopsFor, VetUrgency, stops};
pub use vitals::{Normal, Vital, VitalStanding, from_fahrenheit, unusual};
pub use wont_eat::{EatStep, LastAte, Offered, WillNotEat, will_not_eat};
