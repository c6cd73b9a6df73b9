//! The sun of a place and a day.
//!
//! What this part does not do: it knows no hills, trees or weather, which move the light by minutes and more.

mod place;
pub mod published;
mod sky;

pub use place::{Hemisphere, Latitude, Longitude, Place};
pub use sky::{elevation, hour_by_sun};

use super::GrazeError;
use crate::units::{Instant, LocalDate, LocalStamp, LocalTime, Span, Zone};
use published::NOON_BY_CLOCK;

/// What the sun does on a day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SunDay {
    /// It rises before noon and sets after it.
    Rises {
        /// When its upper edge comes over a level horizon.
        sunrise: Instant,
        /// When it stands highest.
        noon: Instant,
        /// When its upper edge goes under.
        sunset: Instant,
    },
    /// It stays under the horizon, at noon too.
    NeverRises {
        /// When it stands highest.
        noon: Instant,
    },
    /// It is up at noon and does not both rise in the half day before and set in the half day after.
    NeverSets {
        /// When it stands highest.
        noon: Instant,
    },
}

impl SunDay {
    /// When the sun stands highest.
    pub const fn noon(self) -> Instant {
        match self {
            Self::Rises { noon, .. } | Self::NeverRises { noon } | Self::NeverSets { noon } => noon,
        }
    }

    /// When it rises, where it does.
    pub const fn sunrise(self) -> Option<Instant> {
        match self {
            Self::Rises { sunrise, .. } => Some(sunrise),
            Self::NeverRises { .. } | Self::NeverSets { .. } => None,
        }
    }

    /// When it sets, where it does.
    pub const fn sunset(self) -> Option<Instant> {
        match self {
            Self::Rises { sunset, .. } => Some(sunset),
            Self::NeverRises { .. } | Self::NeverSets { .. } => None,
        }
    }
}

/// A time of a local day as an instant; a time that the clock leaps over goes forward, a doubled one is the first.
pub(crate) fn at_clock(day: LocalDate, time: LocalTime, zone: &impl Zone) -> Instant {
    zone.to_instant(LocalStamp { date: day, time }).planned()
}

/// What the sun does on a local day: its noon is the one of that day by the zone's clock, and sunrise and sunset are those
/// on either side of that noon.
///
/// So an event is never that of the neighbouring day, east or west of the date line, and in the far north a sunset shortly
/// after midnight belongs to the day that it ends. Times are for the upper edge of the disk on a level horizon with the
/// usual refraction: good to a minute below 60 degrees and to two above, where hills and weather do not decide.
/// Refuses years outside -499 to 2999.
pub fn sun_day(place: Place, day: LocalDate, zone: &impl Zone) -> Result<SunDay, GrazeError> {
    let around = sky::around(place, at_clock(day, LocalTime::MIN, zone))?;
    let noon = around.noon;
    Ok(match (around.rise, around.set) {
        (Some(sunrise), Some(sunset)) => SunDay::Rises {
            sunrise,
            noon,
            sunset,
        },
        (None, None) if !around.up => SunDay::NeverRises { noon },
        _ => SunDay::NeverSets { noon },
    })
}

/// How far the sun's noon is from 12 by the clock; positive where the clock is ahead of the sun, as with summer time.
pub fn clock_ahead(sun: SunDay, day: LocalDate, zone: &impl Zone) -> Span {
    // numeric: noon by the clock
    let twelve = LocalTime::MIN + chrono::Duration::hours(12);
    sun.noon().since(at_clock(day, twelve, zone))
}

/// Whether the clock can be that of the place. It cannot when a device is abroad and still keeps the time of home, or keeps
/// the time of where it is for a yard far away.
pub fn clock_fits(sun: SunDay, day: LocalDate, zone: &impl Zone) -> bool {
    let [earliest, latest] = *NOON_BY_CLOCK;
    // numeric: noon by the clock
    let hour = 12.0 + clock_ahead(sun, day, zone).to_hours();
    earliest <= hour && hour <= latest
}

#[cfg(test)]
mod tests;
