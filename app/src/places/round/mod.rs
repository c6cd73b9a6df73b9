//! The round: what is due now, on one cord.

mod place;
mod waits;

pub use place::Round;
