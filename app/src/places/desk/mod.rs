//! The desk: rations and foods, and everything else that is done sitting down.

mod change_over;
mod food_form;
mod food_lines;
mod foods;
mod mend;
mod mend_asked;
mod mend_shown;
mod paste;
mod place;
mod ration;
mod typical;

pub use change_over::ChangeOver;
pub use food_form::{Food, NewFood};
pub use foods::Foods;
pub use mend::Mend;
pub use place::Desk;
pub use ration::Ration;
pub use typical::Typical;
