//! The waits without forage of a day that repeats.

use super::layout::Hanging;
use crate::units::LocalTime;
use crate::units::published::{HOURS_PER_DAY, MINUTES_PER_HOUR};
use chrono::Timelike;

/// A wait without forage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gap {
    /// The visit after which it begins, in the order of the hangings.
    pub after: usize,
    /// The hour of the day at which the forage is gone, 0 to 24.
    pub from_hour: f64,
    /// How long it lasts, in hours; 0 when there is forage until the next visit.
    pub hours: f64,
}

/// Hours in a day.
pub(super) fn day_hours() -> f64 {
    HOURS_PER_DAY as f64
}

/// A local time as an hour of the day with its fraction.
pub(super) fn hour_of(time: LocalTime) -> f64 {
    f64::from(time.hour()) + f64::from(time.minute()) / MINUTES_PER_HOUR as f64
}

/// Hours from each visit to the next, around the day. One visit comes round after a whole day.
pub(super) fn intervals(times: &[LocalTime]) -> Vec<f64> {
    times
        .iter()
        .zip(times.iter().cycle().skip(1))
        .map(|(here, next)| {
            let hours = (hour_of(*next) - hour_of(*here)).rem_euclid(day_hours());
            if hours > 0.0 { hours } else { day_hours() }
        })
        .collect()
}

/// The gap after every hanging when the same day repeats and forage is eaten at `rate` kg of dry matter an hour.
///
/// What is left at the next visit is eaten on, so a long net covers the time of the next one.
pub fn gaps(hangings: &[Hanging], rate: f64) -> Vec<Gap> {
    let times: Vec<LocalTime> = hangings.iter().map(|hanging| hanging.visit).collect();
    let intervals = intervals(&times);
    // Two rounds: the first fills what is carried over midnight, the second reads it. With a repeating day the carry
    // is settled after one round unless more hangs than a day can eat, and then no gap is left at all.
    let mut carried = 0.0;
    let mut found = Vec::with_capacity(hangings.len());
    for round in 0..2 {
        found.clear();
        for (index, (hanging, interval)) in hangings.iter().zip(&intervals).enumerate() {
            let lasts = carried + hanging.dry.to_kg() / rate;
            carried = (lasts - interval).max(0.0);
            if round == 1 {
                found.push(Gap {
                    after: index,
                    from_hour: (hour_of(hanging.visit) + lasts).rem_euclid(day_hours()),
                    hours: (interval - lasts).max(0.0),
                });
            }
        }
    }
    found
}
