//! From when to when grass is open.

use super::asked::{Night, Sky, WindowFor};
use super::closed::{Care, Closed, at_risk, judged};
use super::published::{
    AFTER_FREEZE, BARE, CLOSES_CLEAR, CLOSES_DULL, CLOSES_LATEST, COLD_NIGHT, EARLIEST,
    EVENING_BEGINS, EVENING_HOURS, LEAF_LEFT_ALONE, LIGHT_ENOUGH,
};
use crate::graze::sun::{SunDay, at_clock, clock_ahead, clock_fits, sun_day};
use crate::sources::Provenance;
use crate::units::{Instant, LocalDate, LocalTime, Span, Zone};
use chrono::Duration;

/// What a stretch begins with.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Begins {
    /// Sunrise.
    Sunrise,
    /// An hour of the clock, because the sun gives none.
    Clock,
    /// Late evening of a mild night.
    LateEvening,
}

/// A stretch in which grass is open.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stretch {
    /// Its beginning.
    pub from: Instant,
    /// Its end: in by then.
    pub to: Instant,
    /// What it begins with.
    pub begins: Begins,
}

/// Why the morning ends when it does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WhyTo {
    /// A clear sky.
    Clear,
    /// Nobody said what the sky is, so it is taken for clear.
    SkyNotSaid,
    /// Lasting cloud.
    LastingCloud,
    /// The paddock lies in shade.
    Shade,
}

/// When grass is open on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Window {
    /// The local day.
    pub day: LocalDate,
    /// What the sun does; `None` where nobody said the place.
    pub sun: Option<SunDay>,
    /// The stretches in order; empty when it is closed.
    pub opens: Vec<Stretch>,
    /// Why it is closed; empty when it is open.
    pub closed: Vec<Closed>,
    /// What asks for care.
    pub care: Vec<Care>,
    /// Why the morning ends when it does.
    pub why_to: WhyTo,
    /// The latest of any day, which only lasting cloud or shade goes past.
    pub latest: Instant,
    /// The constants behind it.
    pub from: Provenance,
}

impl Window {
    /// Whether grass is open at an instant.
    pub fn is_open(&self, at: Instant) -> bool {
        self.opens.iter().any(|s| s.from <= at && at < s.to)
    }

    /// The end of the stretch an instant lies in, or of the next one: in by then.
    pub fn in_by(&self, at: Instant) -> Option<Instant> {
        self.opens.iter().map(|s| s.to).find(|to| at < *to)
    }
}

/// The clock and the sun of a day.
struct Hours<'a, Z> {
    day: LocalDate,
    zone: &'a Z,
    sun: Option<SunDay>,
    /// Whether the clock is that of the place.
    fits: bool,
}

impl<Z: Zone> Hours<'_, Z> {
    fn clock(&self, hour: u32) -> Instant {
        let time = LocalTime::MIN + Duration::hours(i64::from(hour));
        at_clock(self.day, time, self.zone)
    }

    fn by_sun(&self, hour: u32) -> Option<Instant> {
        // numeric: noon by the sun
        let before_noon = Span::hours(12 - i64::from(hour));
        Some(self.sun?.noon() - before_noon)
    }

    /// The earlier of an hour by the clock and by the sun; by the sun alone where the clock is of elsewhere.
    fn earlier(&self, hour: u32) -> Instant {
        match self.by_sun(hour) {
            Some(sun) if self.fits => sun.min(self.clock(hour)),
            Some(sun) => sun,
            None => self.clock(hour),
        }
    }

    /// The later of the two.
    fn later(&self, hour: u32) -> Instant {
        match self.by_sun(hour) {
            Some(sun) if self.fits => sun.max(self.clock(hour)),
            Some(sun) => sun,
            None => self.clock(hour),
        }
    }
}

/// Why the morning ends when it does, and the hour.
fn closing(ask: &WindowFor<'_>) -> (WhyTo, u32) {
    match ask.weather.sky {
        _ if ask.shade => (WhyTo::Shade, *CLOSES_DULL),
        Sky::Dull => (WhyTo::LastingCloud, *CLOSES_DULL),
        Sky::Sunny => (WhyTo::Clear, *CLOSES_CLEAR),
        Sky::NotSaid => (WhyTo::SkyNotSaid, *CLOSES_CLEAR),
    }
}

fn morning<Z: Zone>(hours: &Hours<'_, Z>, to: Instant) -> Option<(Stretch, Option<Care>)> {
    let by_clock = |care: Option<Care>| {
        let from = hours.earlier(*EARLIEST);
        let begins = Begins::Clock;
        (from < to).then_some((Stretch { from, to, begins }, care))
    };
    match hours.sun {
        Some(SunDay::Rises { sunrise, .. }) if sunrise + Span::minutes(*LIGHT_ENOUGH) <= to => {
            let stretch = Stretch {
                from: sunrise,
                to,
                begins: Begins::Sunrise,
            };
            Some((stretch, None))
        }
        Some(SunDay::Rises { sunrise, .. }) => by_clock(Some(Care::DarkUntil(sunrise))),
        Some(SunDay::NeverRises { .. }) => by_clock(Some(Care::NoSun)),
        Some(SunDay::NeverSets { .. }) => by_clock(Some(Care::NoNight)),
        None => by_clock(None),
    }
}

/// Late evening after a mild night: for an animal at risk only under cloud, for then the day made little sugar.
fn evening<Z: Zone>(ask: &WindowFor<'_>, hours: &Hours<'_, Z>) -> Option<Stretch> {
    let mild = ask.weather.night == Night::Mild;
    let sky = !at_risk(ask) || ask.weather.sky == Sky::Dull;
    if !mild || !sky || ask.to_come {
        return None;
    }
    let late = hours.later(*EVENING_BEGINS);
    let from = match hours.sun {
        Some(SunDay::Rises { sunset, .. }) => late.max(sunset),
        Some(SunDay::NeverSets { .. }) => return None,
        Some(SunDay::NeverRises { .. }) | None => late,
    };
    Some(Stretch {
        from,
        to: from + Span::hours(*EVENING_HOURS),
        begins: Begins::LateEvening,
    })
}

/// When grass is open on a day, by practice rule 16.
///
/// The morning runs from sunrise to 9, or to 11 under lasting cloud or in shade, by the clock or by the sun, whichever is
/// earlier; a clock that is not that of the place is left aside. An evening stretch is offered after a mild night. An animal
/// at risk, or of which nothing is known, is closed out by the flush or a season that is not known, a cold night, a night nobody spoke of, drought and
/// seeding grass; frost, the week after a hard freeze and short leaf close it for every animal. Without a place the clock
/// alone tells it.
pub fn window(ask: &WindowFor<'_>, zone: &impl Zone) -> Window {
    let sun = ask
        .place
        .and_then(|place| sun_day(place, ask.day, zone).ok());
    let hours = Hours {
        day: ask.day,
        zone,
        sun,
        fits: sun.is_none_or(|sun| clock_fits(sun, ask.day, zone)),
    };
    let (closed, mut care) = judged(ask);
    let (why_to, hour) = closing(ask);
    let mut opens = Vec::new();
    if closed.is_empty() {
        if let Some((stretch, more)) = morning(&hours, hours.earlier(hour)) {
            opens.push(stretch);
            care.extend(more);
        }
        if let Some(stretch) = evening(ask, &hours) {
            opens.push(stretch);
            care.push(Care::EveningIfMild);
        }
    }
    match sun {
        None => care.push(Care::NoPlace),
        Some(sun) if !hours.fits => care.push(Care::ClockOfElsewhere {
            ahead: clock_ahead(sun, ask.day, zone),
        }),
        Some(_) => {}
    }
    Window {
        day: ask.day,
        sun,
        opens,
        closed,
        care,
        why_to,
        latest: hours.earlier(*CLOSES_LATEST),
        from: sources(),
    }
}

/// The constants behind every window.
fn sources() -> Provenance {
    Provenance::new()
        .constant(&CLOSES_CLEAR)
        .constant(&CLOSES_LATEST)
        .constant(&CLOSES_DULL)
        .constant(&COLD_NIGHT)
        .constant(&AFTER_FREEZE)
        .constant(&LEAF_LEFT_ALONE)
        .constant(&BARE)
        .constant(&EVENING_BEGINS)
}
