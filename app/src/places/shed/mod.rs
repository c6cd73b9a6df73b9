//! The shed: nets on the scale, soak tubs, hay.

mod begin;
mod bell;
mod hay;
mod hay_form;
mod means;
mod nets;
mod new_tub;
mod place;
mod remind;
mod reminders;
mod scale;
mod tub;
mod tub_times;
mod visits;
mod work;

pub use bell::Bell;
pub use hay::{Hay, NewHay};
pub use nets::Nets;
pub use new_tub::NewTub;
pub use place::Shed;
pub use remind::Remind;
pub use reminders::Reminders;
pub use tub::Tub;
pub use visits::Visits;
pub(crate) use work::{Work, shape, yard};
