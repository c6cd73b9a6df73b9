//! The jobs due, derived from accepted plans, open tubs and nets, answered keys and now.
//!
//! [`round`] takes a [`RoundFor`] and gives a [`Round`]: the [`Job`]s of today, what is overdue, and what comes until
//! tomorrow's first visit, hay past its time first, then late, then by time; a [`Summary`] of them; what was done today;
//! and, when nobody answered for more than a day, one card [`DaysAway`] in place of a pile. Jobs are never stored and
//! nothing is counted down: the same plans, soaks, answers and now always give the same round.
//!
//! A job has a [`Key`] of what was planned (kind, subject, local day, [`Slot`]) or of a soak (step, soak), never of a
//! computed time. The entry that does the job carries it, so a tick elsewhere silences it, and a day that is laid out
//! anew cannot lose it.
//!
//! - A daily plan is local time, resolved day by day: a missing hour goes forward, a doubled hour takes the first.
//! - A soaked net has a job [`JobKind::StartSoak`] at its visit less the time in the water and the time to drain, so that
//!   it can be hung at its visit. Once its soak is open, hanging it is also what ends the draining.
//! - A job of a visit expires when the next of its kind falls due for the same subject. An open tub and a look-over stay.
//! - What stops an animal comes first, whether a plan feeds it or not, and no answer ends it; what feeds that animal stays
//!   and says that its plan waits. So do the looks again after a warm hoof.
//! - A net out of a soak that is past its time is not offered: that hay is only thrown away.
//! - Turning out is called for on its day only, and whether grass is open then is not asked here. Bringing in stands until
//!   the record says that it came in; what something stops is not turned out, and is brought in at once.
//! - Of two plans the one that was issued later holds, from its first day on.
//!
//! Hay that is not soaked on a day ([`DryVisit`]) hangs dry at its lighter amount. [`loads`] says which nets lie in a tub
//! together, and what goes into another tub or a second filling.
//!
//! What this room does not do: it words nothing, knows no clock, and takes nothing from a log.

mod answers;
mod away;
mod daily;
mod error;
mod grass;
mod input;
mod job;
mod key;
mod lighter;
mod loads;
pub mod published;
mod routine;
mod slots;
mod state;
mod stopped;
mod tubs;
mod watch;
mod whole;

#[cfg(test)]
mod laws;
#[cfg(test)]
mod tests;

pub use error::RoundError;
pub use grass::{OpenTurnout, TurnoutPlanned};
pub use input::{
    Answered, DayAnew, DryVisit, HeldWord, IssuedPlan, OpenSoak, PlannedFeed, PlannedNet, Rests,
    RoundFor, Stopped, Watched, WatchedWork,
};
pub use job::{DaysAway, Job, JobState, Round, Summary, Visit, Waits};
pub use key::{JobKind, Key, Slot, Subject};
pub use lighter::{LighterFor, lighter};
pub use loads::{Load, LoadPart, TubRoom, loads};
pub use routine::{DailyJob, Routine, routines};
pub use slots::{PlanSlot, slots};
pub use whole::round;
