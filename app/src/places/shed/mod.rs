//! The shed: nets on the scale, soak tubs, hay.

mod begin;
mod hay;
mod hay_form;
mod nets;
mod new_tub;
mod place;
mod scale;
mod soaks;
mod tub;
mod tub_form;
mod tub_times;
mod visits;
mod work;

pub use hay::{Hay, NewHay};
pub use nets::Nets;
pub use new_tub::NewTub;
pub use place::Shed;
pub use soaks::Soaks;
pub use tub::Tub;
pub use tub_form::{AddTub, TubForm};
pub use visits::Visits;
pub(crate) use work::{Work, shape, yard};
