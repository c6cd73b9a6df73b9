//! The one door to the crate that knows where the sun stands.

use super::Place;
use crate::graze::GrazeError;
use crate::units::{Bounds, Instant, Span};
use solar_positioning::time::JulianDate;
use solar_positioning::{Horizon, Location, SolarEvents, SolarPositions, delta_t};

// numeric: 1970-01-01 as a Julian date, and the milliseconds of a day
const EPOCH: (f64, f64) = (2_440_587.5, 86_400_000.0);

/// What the sun does around one noon.
pub(super) struct Around {
    /// Its highest.
    pub(super) noon: Instant,
    /// The rise in the twelve hours before.
    pub(super) rise: Option<Instant>,
    /// The set in the twelve hours after.
    pub(super) set: Option<Instant>,
    /// Whether it is up at noon.
    pub(super) up: bool,
}

fn julian(at: Instant) -> f64 {
    EPOCH.0 + at.to_ms() as f64 / EPOCH.1
}

#[allow(
    clippy::cast_possible_truncation,
    reason = "milliseconds within the years that are allowed"
)]
fn instant(julian: f64) -> Instant {
    Instant::from_ms(((julian - EPOCH.0) * EPOCH.1).round() as i64)
}

/// The difference of the clocks of the earth and of the planets, and that the year is one that it is known for.
fn clocks(at: Instant) -> Result<f64, GrazeError> {
    // numeric: the days of an average year
    let year = 1970.0 + at.to_ms() as f64 / (EPOCH.1 * 365.2425);
    // numeric: the years that the crate's estimate holds for
    let bounds = Bounds::new("year", -499.0, 2999.0);
    let year = bounds.check(year)?;
    delta_t::estimate(year).map_err(|_| refused(bounds, year))
}

fn refused(bounds: Bounds, value: f64) -> GrazeError {
    GrazeError::OutOfRange(crate::units::OutOfRange { bounds, value })
}

fn location(place: Place) -> Location {
    Location {
        latitude: place.latitude.to_degrees(),
        longitude: place.longitude.to_degrees(),
    }
}

/// What the sun does around the first noon after an instant. The upper edge of the disk on a level horizon, with the
/// usual refraction, as calendars give it.
pub(super) fn around(place: Place, from: Instant) -> Result<Around, GrazeError> {
    let dt = clocks(from)?;
    let at = location(place);
    let events = SolarEvents::new();
    let start = julian(from);
    let far = || refused(Bounds::new("julian_date", start, start), start);
    // From noon to noon is a day give or take half a minute.
    let noon = events
        .next_transit_from_julian(start, start + 2.0, at.longitude, dt)
        .map_err(|_| far())?
        .ok_or_else(far)?;
    // numeric: half a day on either side of noon
    let half = 0.5;
    let horizon = Horizon::SunriseSunset;
    let rise = events
        .next_rise_from_julian(noon - half, noon, at, dt, horizon)
        .map_err(|_| far())?;
    let set = events
        .next_set_from_julian(noon, noon + half, at, dt, horizon)
        .map_err(|_| far())?;
    let up = horizon.elevation_angle() < height(place, instant(noon), dt)?;
    Ok(Around {
        noon: instant(noon),
        rise: rise.map(instant),
        set: set.map(instant),
        up,
    })
}

fn height(place: Place, at: Instant, dt: f64) -> Result<f64, GrazeError> {
    let julian = julian(at);
    let bounds = Bounds::new("julian_date", julian, julian);
    let time = JulianDate::new(julian, dt).map_err(|_| refused(bounds, julian))?;
    SolarPositions::new()
        .at_from_julian(time, location(place), 0.0, None)
        .map(|position| position.elevation_angle())
        .map_err(|_| refused(bounds, julian))
}

/// How high the middle of the sun stands over a level horizon, in degrees, without refraction; below it is negative.
///
/// Refuses years that the clocks of the earth and of the planets are not known for (-499 to 2999).
pub fn elevation(place: Place, at: Instant) -> Result<f64, GrazeError> {
    height(place, at, clocks(at)?)
}

/// The length of time by which an instant lies before or after the sun's noon, as an hour of the day by the sun.
///
/// Noon is 12; the hour goes on counting below 0 and above 24.
pub fn hour_by_sun(at: Instant, noon: Instant) -> f64 {
    let since: Span = at.since(noon);
    // numeric: noon
    12.0 + since.to_hours()
}
