//! How much grass stands on a paddock, and for how long.
//!
//! - [`Leaf`] is what a person sees by the boot; [`readings`] sums up heights that were read; [`Measured`] is either, or
//!   the clicks of a rising plate.
//! - [`standing`] is what stands above the residual, with both ends: mass = (height − residual) × density, ± 30 %.
//! - [`days_of_grass`] says for how long it lasts, [`regrowth`] when it is back, [`rest`] how long it rests.
//!
//! What this part does not do: height makes no grass safe. A short sward is stressed and its stem bases hold sugar; a
//! tall one is more of it. It knows the mass of no sward within a quarter.

mod asked;
mod growth;
mod leaf;
mod mass;
pub mod published;
mod readings;
#[cfg(test)]
mod tests;

pub use asked::{Grazer, asked};
pub use growth::{GrowthSeason, RegrowthDays, Rest, growth, regrowth, rest};
pub use leaf::{Leaf, SwardFinding, look};
pub use mass::{
    Measured, Stand, Standing, SwardKind, days_of_grass, density, mean_clicks, offered, plate,
    standing,
};
pub use readings::{Readings, readings};
