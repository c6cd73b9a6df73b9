//! Weight over time: the trend, the weekly rate, the forecast, and when weight alone is an alarm.
//!
//! - [`Filter`] is the kernel: a local linear trend (level and slope) with an exact diffuse start, constant offsets of
//!   instruments and people, irregular days and several readings on a day.
//! - [`Trend::fit`] reads an animal's weighings with it. Odd readings are marked and kept. Where the fill of the gut
//!   changes the level may jump; the rate may not.
//! - [`Rate`] is what it loses or gains in a week, with its band and its [`Chances`]; a [`Plateau`] is found on those.
//! - [`Trend::forecast`] says when a target is reached, as a band of weeks.
//! - [`Trend::alarms`] is the rule of the rate: measure again, ring the vet, feed more.
//! - [`Facts`] is what phases and the next step are decided on; [`decide`] gives the next step by a table ([`TABLE`]), the
//!   first row that holds.
//! - [`propose`] says which change of phase is due and why ([`CHANGES`]); [`may_change`] what a person may choose.
//! - [`LookBack`] lists what changed in the days before an episode.
//!
//! What this room does not do: it reads no records, sets no ration and no phase by itself, and it never reckons a loss
//! from energy.

mod alarm;
mod chances;
mod error;
mod filter;
mod forecast;
mod look_back;
mod model;
mod phase;
pub mod published;
mod step;
mod trend;
mod weighing;

pub use alarm::{Again, Alarm, Ring, TooFast};
pub use chances::{Chances, likely};
pub use error::ProgressError;
pub use filter::{Belief, Filter, LeftOut, Start, Sum};
pub use forecast::{Aim, Forecast};
pub use look_back::{Changed, GrassWeather, Happened, LookBack, NotLogged, look_back};
pub use phase::{CHANGES, PhaseChange, Proposal, WhyNot, goal_of, may_change, propose};
pub use step::{
    Band, Decision, Eaten, Facts, FastLoss, HayKnown, HowSoon, If, Origin, Pace, RateBands, Reason,
    Row, Step, TABLE, TargetStands, Then, When, decide, donkey_too_fast,
};
pub use trend::{Footing, Judged, Plateau, Rate, Trend};
pub use weighing::{Change, DatedChange, GutFill, Weighing};
