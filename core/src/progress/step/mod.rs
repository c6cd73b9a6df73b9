//! The next step: a table of rows, the first of which that holds decides.

mod condition;
mod course;
mod decide;
mod facts;
mod reason;
mod table;
#[cfg(test)]
pub(super) mod tests;

pub use condition::If;
pub use course::donkey_too_fast;
pub use decide::{Decision, Step, When, decide};
pub use facts::{Eaten, Facts, FastLoss, HayKnown, HowSoon, Pace, RateBands, TargetStands};
pub use reason::{Band, Reason};
pub use table::{Origin, Row, TABLE, Then};
