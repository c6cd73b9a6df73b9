//! Weight from tape or scale, condition, crest and target weight, each with its error.
//!
//! - [`weigh`] turns a [`Reading`] (a [`Tape`] or a [`ScaleWeight`]) into a [`WeightEstimate`]: the published equation
//!   for the kind, body type, age and measures there are, with its band. Where an equation does not hold, another is
//!   used and a [`Finding`] says why, or an [`AssessError`] names field, value and range. [`best`] picks the weight
//!   that holds: a scale overrides a tape.
//! - A measure is taken up to three times ([`Takes`]) and counts as the mean; [`doubts`] asks back what is likelier a slip
//!   (inches, pounds, another length, an odd reading, a jump), and never refuses; [`change`] says whether a measure
//!   changed by more than a tape varies by itself.
//! - [`ConditionScore`] keeps its scale (1 to 9, or 0 to 5) and its sites; [`ConditionScore::on_nine`] converts only
//!   as a [`ConditionRange`], and never back. [`Ribs`] gives a range from one answer.
//! - [`Crest`] has flags of its own, which condition does not cancel.
//! - [`target`] gives a target weight as a range, beside the published ideal weight where there is one.
//!
//! What this room does not do: it follows no weight over time, judges no risk and sets no ration. No weight from here
//! is a dose: drugs are dosed by the vet.

mod age;
mod change;
mod choose;
mod condition;
mod crest;
mod donkey;
mod doubt;
mod equation;
mod error;
mod finding;
mod horse;
pub mod published;
mod ribs;
mod taken;
mod takes;
mod tape;
mod target;
mod usual;
mod weight;

pub use change::{Change, Earlier, NeckLine, change, neck_to_height};
pub use choose::{weigh, weigh_in_condition};
pub use condition::{ConditionChange, ConditionScale, ConditionScore, Site, apart};
pub use crest::{Crest, CrestFlag};
pub use doubt::{Answered, Doubt, DoubtAnswer, DoubtKind, Doubts, Jump, doubts, frame_holds};
pub use equation::{Equation, MeasuredType};
pub use error::{AssessError, Refused};
pub use finding::{Fallback, Finding, ScaleReason};
pub use ribs::{ConditionRange, Ribs};
pub use taken::{Before, Measured, ScaleTaken, Taken, TapeTaken};
pub use takes::{Agreement, Take, Takes};
pub use tape::{LengthKind, Measure, Reading, ScaleInstrument, ScaleWeight, Tape, TapeTool};
pub use target::{Aim, Target, ideal_weight, target};
pub use weight::{DatedWeight, WeightEstimate, WeightMethod, best};
