//! Why grass is open or closed.

use super::Said;
use tussock_core::graze::window::{Care, Closed, Stretch, WhyTo};
use tussock_core::units::Zone;

/// What opens and closes grass.
pub trait GrassWords {
    /// What to do instead.
    fn instead_of_grass(&self, closed: &Closed) -> &'static str;
    /// Why grass is closed.
    fn closed(&self, closed: &Closed) -> Said;
    /// What asks for care.
    fn care(&self, care: &Care, zone: &dyn Zone) -> Said;
    /// Why the morning ends when it does.
    fn why_to(&self, why: WhyTo) -> &'static str;
    /// A stretch: "05:24 to 09:00".
    fn stretch(&self, stretch: &Stretch, zone: &dyn Zone) -> String;
}
