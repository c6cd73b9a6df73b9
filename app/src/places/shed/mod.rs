//! The shed: nets on the scale, soak tubs, hay.

mod begin;
mod hay;
mod hay_form;
mod nets;
mod new_tub;
mod place;
mod scale;
mod tub;
mod tub_times;
mod visits;
mod work;
mod worth;

pub use hay::{Hay, NewHay};
pub use nets::Nets;
pub use new_tub::NewTub;
pub use place::Shed;
pub use tub::Tub;
pub use visits::Visits;
pub(crate) use work::{Work, shape, yard};
pub use worth::WorthOfTest;
