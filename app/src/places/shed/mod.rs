//! The shed: nets on the scale, soak tubs, hay.

mod another_hay;
mod begin;
mod came_form;
mod compare;
mod count;
mod hanging;
mod hay;
mod hay_form;
mod hay_stock;
mod keys;
mod left;
mod net_form;
mod net_list;
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
pub use hanging::Hanging;
pub use hay::{Hay, NewHay};
pub use net_form::{Net, NewNet};
pub use net_list::YardNets;
pub use nets::{Nets, WeighNets};
pub use new_tub::NewTub;
pub use place::Shed;
pub use tonight::Tonight;
pub use tub::Tub;
pub use visits::Visits;
pub(crate) use work::{Work, shape, yard};
