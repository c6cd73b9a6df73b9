//! The day: visits and nets, laid out so that the animal is without forage for as short a time as the visits allow.
//!
//! A net that hangs is eaten at a rate ([`rate`]); when it is empty the animal waits for the next visit. The longest
//! such wait is the **gap**. [`lay_out`] shares the day's dry matter over the visits so that the longest gap is as
//! short as it can be, within what can hang at once and, for soaked hay, what must be eaten by its time; the shares
//! are whole steps of the scale and add up to the day. [`mends`] says what would shorten the rest, cheapest first.
//!
//! A net on the scale reads its hay and its own weight; [`on_scale`] says how a reading stands to its target.
//!
//! A net that was to be soaked and is not hangs lighter: [`unsoaked`].
//!
//! Hunger is judged with the fast end of the eating rate, which leaves the animal longest without forage.

mod error;
mod gaps;
mod layout;
mod mends;
pub mod published;
mod rate;
mod scale;
#[cfg(test)]
mod tests;
mod unsoaked;

pub use error::DayError;
pub use gaps::{Gap, gaps};
pub use layout::{DayNeeds, GapVerdict, Hanging, Layout, lay_out};
pub use mends::{Mend, mends};
pub use rate::{EatingRate, NetKind, measured_rate, rate};
pub use scale::{OnScale, hay_in, on_scale, reading_for, usual_net};
pub use unsoaked::{Unsoaked, unsoaked};
