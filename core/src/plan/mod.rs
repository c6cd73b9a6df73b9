//! Joins the loop into a draft, with reasons.
//!
//! [`draft`] takes one animal, its measurements, one or more forages, a balancer, the visits and the nets, and gives a
//! [`Draft`]: dry matter and kilograms as fed, energy against its floor, the sugar verdict, what must be soaked, what hay
//! alone is short of, the balancer that covers it, the nets of the day, and what would change it most. [`group`] does so
//! for animals on one hay.
//!
//! A draft is not shown, kept or exported: [`crate::safety`] judges it first.

mod buckets;
mod build;
mod draft;
mod error;
mod grass;
mod group;
mod hay;
mod input;
mod levers;
pub mod published;
mod standard;
mod work;

pub use build::draft;
pub(crate) use build::eaten_within_h;
pub use draft::{BucketLine, Draft, EnergyLine, GrassDay, GrassLine, HayLine, Raised};
pub use error::PlanError;
pub use group::{
    GroupDraft, GroupFor, GroupGrass, GroupGrassDay, GroupHay, GroupVisit, MemberShare,
    NoGroupDraft, RaisedForAll, Separate, group,
};
pub(crate) use group::{lowest_allowed, share_of, straw_for_all, together};
pub(crate) use hay::sugar as sugar_as_fed;
pub use input::{
    AtRest, Grazing, HayOffer, LookAgain, LookedOver, NetUse, PlanFor, Scored, Signs, Soaked,
    Soaking, Taken,
};
pub use levers::Lever;
pub use standard::Standard;
