//! Exercise planned and done.
//!
//! [`standing`] says whether an animal works at all and what stops it; [`asked`] what its sessions of this week are, built
//! up over the weeks that were really worked ([`built`]). A [`Session`] is what was done, a [`Week`] what was done in one,
//! and [`timed`] what the taps of a session on the clock add up to. [`session_energy`] is the energy of a session as a
//! band, by the published equations. [`moving_feeder`] is what is known of movement without riding.
//!
//! Lame, on pain relief, on box rest, in an episode or with a sign that stands: no work (practice rule 17). After
//! laminitis the vet's word comes first.
//!
//! What this room does not do: it feeds nothing for work, it makes no diagnosis, and it judges no fitness but by the weeks
//! that were worked. Energy from heart rate only ranks sessions.

mod asked;
mod energy;
mod error;
mod gait;
mod movement;
pub mod published;
mod session;
mod standing;
mod timed;
mod week;

#[cfg(test)]
mod laws;
#[cfg(test)]
mod tests;

pub use asked::{Asked, HeartStanding, asked};
pub use energy::{
    DaysEnergy, HeartRate, WorkDone, WorkEnergy, WorkRate, anderson_day, energy_of, oxygen,
    session_energy, work_rate,
};
pub use error::WorkError;
pub use gait::{Gait, GaitTimes};
pub use movement::{MovingFeeder, moving_feeder};
pub use session::{EffortRank, How, Session, Surface, effort_rank};
pub use standing::{Standing, WorkFor, WorkLine, WorkStop, standing};
pub use timed::{Tap, Timed, timed};
pub use week::{CountsFrom, Week, built, week_from};
