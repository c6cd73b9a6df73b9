//! How likely each rate is: decisions are taken on a chance, never on one reading.

use super::filter::Belief;
use super::published::{LIKELY, RATE_FAST, RATE_SLOW, RATE_WANTED};

/// The chances of a weekly rate, each 0 to 1. The first four are apart and make 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Chances {
    /// Loses less than 0.25 % a week, holds or gains.
    pub under_quarter: f64,
    /// Loses 0.25 to 0.5 % a week.
    pub quarter_to_half: f64,
    /// Loses 0.5 to 1 % a week.
    pub half_to_one: f64,
    /// Loses more than 1 % a week.
    pub over_one: f64,
    /// Gains; a part of the first.
    pub gaining: f64,
    /// Over how many weeks this is known.
    pub weeks: f64,
    /// From how many readings, without the odd ones.
    pub readings: usize,
}

impl Chances {
    /// The chances of a change in percent a week, negative where it loses.
    pub fn of(change: Belief, weeks: f64, readings: usize) -> Self {
        let loses_more = |percent: f64| change.chance_at_most(-percent);
        let (slow, wanted, fast) = (
            loses_more(*RATE_SLOW),
            loses_more(*RATE_WANTED),
            loses_more(*RATE_FAST),
        );
        Self {
            under_quarter: 1.0 - slow,
            quarter_to_half: slow - wanted,
            half_to_one: wanted - fast,
            over_one: fast,
            gaining: 1.0 - loses_more(0.0),
            weeks,
            readings,
        }
    }
}

/// Whether a chance is enough to act on: 4 in 5.
pub fn likely(chance: f64) -> bool {
    chance >= *LIKELY
}
