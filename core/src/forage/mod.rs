//! Hay and its like: lots, lab reports, typical classes, energy from analysis, the sugar verdict.
//!
//! - [`Lot`] is one delivery of one forage; its [`ForageClass`] says what it is said to be, its [`LabReport`]s what a
//!   laboratory found, dry or after soaking.
//! - [`LabReport`] keeps WSC, ESC, starch and NSC apart, turns an as-fed report into dry matter, and notes values that
//!   cannot be. A [`ClassProfile`] gives mean and spread where nobody tested; iron, manganese and selenium of an
//!   untested hay are not known.
//! - [`supply`] is what a kilogram of dry matter brings: each [`Content`] with its origin, and [`ForageEnergy`].
//! - [`estimate`] and [`mix`] say what is believed of the sugar; [`judge`] gives the [`Judgement`]: within the limit,
//!   over it, or not proven with the chance. The shape is the normal distribution.
//! - [`left`] is what there is of a lot, [`lasting`] how long it lasts and by when to order, [`cost_band`] what it costs as
//!   it is eaten; [`compare`] puts two lots beside each other, sugar first. [`judge_moisture`] and [`judge_heat`] watch the
//!   stack; [`instead`] is the lot that was opened in place of another; [`tonight`] is a night without hay.
//! - [`test_outlook`] says what a laboratory test would be likely to decide, [`worth_of_test`] whether it pays;
//!   [`hazards`] what else to look at.
//! - [`read_report`] reads a pasted report into proposals, none of which is taken before the person accepts it.
//!
//! What this room does not do: it knows no limit of its own (the caller gives it), it soaks nothing (room `soak`), and
//! an untested hay is never safe here.

mod analyte;
mod chance;
mod class;
mod compare;
mod cost;
mod energy;
mod error;
mod estimate;
mod hazards;
mod in_place;
mod lasting;
mod lot;
pub mod published;
mod report;
mod sampling;
mod stock;
mod storage;
mod supply;
mod text;
mod tonight;
mod verdict;
mod worth;

#[cfg(test)]
mod laws;
#[cfg(test)]
mod tests;

pub use analyte::{Analyte, AnalyteUnit};
pub use chance::{Belief, normal_below};
pub use class::{ClassProfile, ForageClass, ForageKind};
pub use compare::{Comparison, CostBand, Offer, Side, Soaked, compare, cost_band};
pub use cost::{FeedCost, Losses, Price, feed_cost};
pub use energy::{EnergyOrigin, ForageEnergy, forage_equation, pagan_equation};
pub use error::ForageError;
pub use estimate::{MixPart, SugarEstimate, SugarNote, SugarOrigin, estimate, mix};
pub use hazards::{Fault, Hazard, hazards};
pub use in_place::{Instead, NotInPlace, instead, may_stand_in};
pub use lasting::{DailyUse, Lasting, UseFrom, daily_use, lasting};
pub use lot::{Delivery, DryEstimate, DryOrigin, Fed, Lot};
pub use report::{Basis, LabReport, RawReport, ReportFinding};
pub use sampling::{TestOutlook, composite_error, test_outlook};
pub use stock::{
    BaleWeight, Held, HowKnown, Left, NoStock, Sampled, WeighedOut, bale_weight, bales_weighed,
    left, sampled, slices_weighed,
};
pub use storage::{
    BaleKind, HeatVerdict, MoistureVerdict, Rod, StoredBadly, judge_heat, judge_moisture,
    most_moisture, watch_until,
};
pub use supply::{Content, ContentOrigin, Supply, supply};
pub use text::{PastedReport, ReportLine, ReportText, read_report};
pub use tonight::{Borrowed, Hungry, Pulp, Straw, Tonight, tonight};
pub use verdict::{Doubt, Judgement, SugarMeasure, Verdict, WayOut, judge};
pub use worth::{
    Branch, BreakEven, Cost, Doing, Otherwise, TestedPrice, Way, Worth, WorthFor, WorthNote,
    worth_of_test,
};
