//! The sugar of an average day, for one line of a drawing.

use super::published::{MOST_SUGAR_HOUR, SUGAR_OF_DAY};

/// Where the sugar of an average day stands at an hour by the sun: 0 at its least (05:00), 1 at its most (17:00), a half at
/// 11:00 and 23:00. The hour may lie beyond a day on either side.
///
/// A cosine (published times from memory). It says nothing of how much sugar there is: a day is worth 20 to 30 g/kg, and
/// season, kind of grass and frost 100 and more.
pub fn sugar_shape(hour_by_sun: f64) -> f64 {
    let turn = (hour_by_sun - *MOST_SUGAR_HOUR) / crate::units::published::HOURS_PER_DAY as f64;
    f64::midpoint(1.0, (std::f64::consts::TAU * turn).cos())
}

/// Sugar and starch at an hour by the sun, in g/kg of dry matter, for a day whose mean and whose swing from least to most
/// are known. The published swings are 20 to 30.
pub fn sugar_at(mean: f64, swing: f64, hour_by_sun: f64) -> f64 {
    mean + swing * (sugar_shape(hour_by_sun) - f64::midpoint(0.0, 1.0))
}

/// How much more sugar the most of a day is than its least, at least and at most, as a part of a daily mean.
pub fn day_of_mean(mean: f64) -> [f64; 2] {
    SUGAR_OF_DAY.map(|swing| swing / mean)
}
