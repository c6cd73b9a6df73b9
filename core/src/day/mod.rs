//! The day: visits and nets, laid out so that the animal is without forage for as short a time as the visits allow.
//!
//! A net that hangs is eaten at a rate ([`rate`]); when it is empty the animal waits for the next visit. The longest
//! such wait is the **gap**. [`lay_out`] shares the day's dry matter over the visits so that the longest gap is as
//! short as it can be, within what can hang at once and, for soaked hay, what must be eaten by its time; the shares
//! are whole steps of the scale and add up to the day. [`mends`] says what would shorten the rest, cheapest first.
//!
//! Once a net has been timed the animal's own rate wins ([`own_rate`]); a net that was found empty says only how fast it
//! is eaten at least. What was left is a part of what hung, as a band ([`left_part`]); wet hay is never taken for dry.
//! Grass with leaf is forage, a bare paddock and hours at work are not ([`Away`]).
//!
//! A net on the scale reads its hay and its own weight; [`on_scale`] says how a reading stands to its target.
//!
//! A net that was to be soaked and is not hangs lighter: [`unsoaked`].
//!
//! What was offered, left and eaten is the [`Ledger`]; each amount is seen, assumed or not known.
//!
//! Hunger is judged with the fast end of the eating rate, which leaves the animal longest without forage.

mod bounds;
mod error;
mod exact;
mod gaps;
mod in_hand;
mod layout;
mod ledger;
mod left;
mod mends;
pub mod published;
mod rate;
mod reach;
mod real;
mod rest;
mod scale;
#[cfg(test)]
mod tests;
mod timing;
mod unsoaked;

pub use error::DayError;
pub use gaps::{Gap, gaps};
pub use in_hand::{in_nets, places};
pub use layout::{
    DayNeeds, GapVerdict, Hanging, Layout, gap_verdict, judged, lay_out, lay_out_all,
};
pub use ledger::{
    DayOfLedger, HowKnown, Ledger, LeftOver, LevelEaten, Serving, Shares, Source, Sum, Totals,
};
pub use left::{Left, left_dry, left_part};
pub use mends::{Mend, mends};
pub use rate::{EatingRate, EatingTime, NetKind, eating_time, measured_rate, rate};
pub use reach::{Away, Eats};
pub use real::{Happened, Out, RealDay, RealVerdict, real_day};
pub use rest::{Rest, RestOfDay, lay_out_rest};
pub use scale::{OnScale, hay_in, key_step, nudged, on_scale, reading_for, slices_in, usual_net};
pub use timing::{OwnRate, Timed, Timing, own_rate};
pub use unsoaked::{Unsoaked, unsoaked};
