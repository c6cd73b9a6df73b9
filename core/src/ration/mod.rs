//! Foods other than forage, and a ration held against the limits.
//!
//! - [`Food`] is what a label says: every content in a kilogram as fed; what the label does not say is unknown, never
//!   zero. [`TypicalFood`] is the catalogue of what a feed room meets; [`typical_balancer`] stands in until a label is typed, and is marked as from memory.
//! - [`check_label`] brings a label in its own units to a kilogram as fed and says what cannot be or was likely swapped.
//! - [`read_label`] reads a pasted text into proposals, none of which is taken before the person accepts it.
//! - [`balance`] adds up what forage and foods bring and holds each nutrient against its need and its ceiling.
//! - [`whole`] holds a whole ration against everything at once: rows with ceilings and unknown parts, ratios, sugar and
//!   starch of the day and of each bucket, forage, lucerne and straw.
//! - [`dose`] is the least of a food that covers what a hay-only ration is short of.
//! - [`change_over`] is the way from one ration to another, day by day.
//! - [`mend`] finds the cheapest mend of a ration: hay and foods within every limit, what decides it, what comes next.
//! - [`solve`] finds the cheapest amounts between bounds and limits, and knows nothing of foods.

mod balance;
mod bucket;
pub mod catalogue;
mod changeover;
mod class;
mod content;
mod dose;
mod error;
mod food;
mod label;
pub mod mend;
pub mod published;
pub mod solve;
mod whole;

pub use balance::{Line, Part, Standing, balance};
pub use bucket::{Bucket, DayStarch, bucket_verdict, day_starch, feeds_for};
pub use catalogue::{CountedIn, KnownNumber, Stated, Typical, TypicalFood, typical_forage};
pub use changeover::{Changing, Pace, Stage, change_days, change_over};
pub use class::FoodClass;
pub use content::Content;
pub use dose::{DecidedBy, Dose, dose};
pub use error::RationError;
pub use food::{Food, FoodLabel, typical_balancer};
pub use label::{
    FromText, LabelBasis, LabelField, LabelFinding, LabelLine, LabelUnit, Measure, PastedLabel,
    RawLabel, check_label, read_label,
};
pub use whole::{
    Against, EnergyRow, FedContent, Forage, ForageRow, ForageVerdict, Ration, Row, SugarRow, Whole,
    whole,
};
