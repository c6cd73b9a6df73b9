//! How it goes: the phase of an animal, the next step with its reasons, and what changed before an episode.
//!
//! - [`Facts`] is what phases and the next step are decided on: plain values, whoever found them.
//! - [`decide`] gives the next step by a table ([`TABLE`]): rows with conditions and an outcome, the first row that holds.
//! - [`propose`] says which change of phase is due and why ([`CHANGES`]); [`may_change`] what a person may choose.
//! - [`LookBack`] lists what changed in the days before an episode.
//!
//! What this room does not do: it reads no records, changes no amount and no phase. A person confirms a change of phase,
//! and amounts change only at a review. It is no diagnosis.

mod look_back;
mod phase;
pub mod published;
mod step;

pub use look_back::{Changed, GrassWeather, Happened, LookBack, NotLogged, look_back};
pub use phase::{CHANGES, Change, Proposal, WhyNot, goal_of, may_change, propose};
pub use step::{
    Band, Decision, Eaten, Facts, FastLoss, HayKnown, HowSoon, If, Origin, Pace, RateBands, Reason,
    Row, Step, TABLE, TargetStands, Then, When, decide,
};
