//! The desk: rations and foods, and everything else that is done sitting down.

mod place;

pub use place::Desk;
