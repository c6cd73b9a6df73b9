//! The round: what is due now, on one cord.

mod place;

pub use place::Round;
