//! The desk: rations and foods, and everything else that is done sitting down.

mod change_over;
mod mend;
mod place;
mod ration;

pub use change_over::ChangeOver;
pub use mend::Mend;
pub use place::Desk;
pub use ration::Ration;
