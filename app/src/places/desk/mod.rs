//! The desk: rations and foods, and everything else that is done sitting down.

mod food_form;
mod food_lines;
mod foods;
mod paste;
mod place;
mod typical;

pub use food_form::{Food, NewFood};
pub use foods::Foods;
pub use place::Desk;
pub use typical::Typical;
