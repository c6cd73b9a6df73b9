//! The animals, and everything done beside one.

mod list;
mod new;
mod one;
mod weigh;

pub use list::List;
pub use new::New;
pub use one::One;
pub use weigh::Weigh;
