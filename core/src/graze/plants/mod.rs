//! What grows on a paddock: grasses by the sugar they may hold, and plants that harm.
//!
//! - [`PlantId`] is the catalogue, by stable key, common and scientific name.
//! - [`grasses`] are those safer, in the middle and higher for sugar; no kind of grass is safe by its kind.
//! - [`hazards_in`] are the hazards of the regions a person ticks, [`hazards_of`] those of plants that were seen.
//! - [`oxalate`] is the rule of calcium to oxalate, [`ergovaline`] and [`nitrate`] the limits of two tests.
//!
//! What this part does not do: it names no plant from a picture, and treats none. An animal that ate a plant that harms is
//! for the vet.

mod grasses;
mod harm;
mod hazards;
mod names;
mod oxalate;
pub mod published;
mod tested;
#[cfg(test)]
mod tests;

pub use grasses::{SugarPotential, clover_most, grasses, known_in};
pub use harm::{Act, Harm, Hazard, Region, When, Whom, hazards_in, hazards_of};
pub use hazards::hazards;
pub use names::{Growth, PlantId};
pub use oxalate::{
    CalciumToOxalate, bound_by, calcium_shortfall, calcium_to_oxalate, limestone_for,
    typical_oxalate,
};
pub use tested::{Endophyte, Nitrate, ergovaline, mares_off_days, nitrate};
