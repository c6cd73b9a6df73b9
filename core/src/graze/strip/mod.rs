//! Strips of grass behind a fence, and tracks around a field.
//!
//! - [`strip`] is today's strip for these animals: area = 10 000 × dry matter / (mass × grazed part). The dry matter is a
//!   limit, so it is sized with the most that may stand there; what it holds at the least is told with it.
//! - [`area_for`] is the bare formula, [`grazed_by_days`] the part that is grazed, [`lead_move`] the move of the trial.
//! - [`may_strip`] says what stands against a strip, [`LIMITS`] what the reckoning cannot do.
//! - [`track`] lays hay and water along a track.
//!
//! What this part does not do: a strip limits how much is eaten, by a mass that nobody knows within a quarter; it makes no
//! grass safe, and no animal's safety rests on it.

mod area;
mod fences;
mod may;
pub mod published;
#[cfg(test)]
mod tests;
mod track;

pub use area::{Strip, StripFor, area_for, grazed_by_days, strip};
pub use fences::{Fences, LEAD_STANDS_DAYS, back_fence, lead_move, of_paces, paces};
pub use may::{LIMITS, StripAgainst, StripLimit, StripWhere, may_strip, recent_case};
pub use track::{Field, Track, TrackFinding, farther_on_a_track, track};
