//! Grass: when it is opened, how much stands there, and what an animal eats of it.
//!
//! - [`sun`] has sunrise, noon and sunset of a place and a day.
//! - [`window`] says from when to when grass is open on a day, or what closes it (practice rule 16).
//! - [`season`] is the year of grass at a latitude.
//! - [`sward`] is how much grass stands on a paddock, and [`plants`] what grows there.
//! - [`strip`] is the size of a strip of it.
//! - [`intake`] is what an animal eats of it, with both ends.
//!
//! What this room does not do: it makes no grass safe, knows no forecast, and lets no plan rest on a muzzle or on the
//! model of intake alone.

mod error;
pub mod intake;
pub mod plants;
pub mod season;
pub mod strip;
pub mod sun;
pub mod sward;
pub mod window;

pub use error::GrazeError;
