//! The desk: rations and foods, and everything else that is done sitting down.

mod place;
mod ration;

pub use place::Desk;
pub use ration::Ration;
