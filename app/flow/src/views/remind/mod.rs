//! Reminders: what rings, when, and what this device has to ring with.
//!
//! Everything here is a function of stored instants and now. While a page is open it rings what falls due; when none is
//! open only the device's own calendar and timer do, and the screens say so.

mod day;
mod means;
mod ring;
mod tub;

pub use day::{DailyBell, DayReminder, day_reminder};
pub use means::{Has, Means, Reminders, Sent, Stands};
pub use ring::{Fresh, Ring, RingsFor, due, fresh, open_tubs};
pub use tub::{Deadline, TubDeadline, TubReminder, tub_reminder};
