//! The shed: nets on the scale, soak tubs, hay.

mod another_hay;
mod begin;
mod came_form;
mod compare;
mod count;
mod hay;
mod hay_form;
mod hay_stock;
mod nets;
mod new_tub;
mod place;
mod scale;
mod tonight;
mod tub;
mod tub_times;
mod visits;
mod work;

pub(crate) use another_hay::in_place;
pub use compare::Compare;
pub use count::CountHay;
pub use hay::{Hay, NewHay};
pub use nets::Nets;
pub use new_tub::NewTub;
pub use place::Shed;
pub use tonight::Tonight;
pub use tub::Tub;
pub use visits::Visits;
pub(crate) use work::{Work, shape, yard};
