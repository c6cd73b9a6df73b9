//! Where a yard lies, and whose plants and hazards it goes by.
//!
//! A place is kept to a hundredth of a degree, about a kilometre: enough for the sun, and not where somebody lives.

mod degrees;

pub use degrees::{Field, Unread};

use crate::acts::{Act, New};
use crate::rows::Range;
use crate::shelf::Shelf;
use tussock_core::animal::YardId;
use tussock_core::graze::plants::Region;
use tussock_core::graze::sun::{Place, clock_fits, sun_day};
use tussock_core::log::bodies::base::MicroDegrees;
use tussock_core::log::bodies::{PlaceV2, YardV2};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::show::fixed;
use tussock_core::units::{Instant, LocalTime, Zone};

/// Millionths of a degree in a degree.
const MICRO: f64 = 1_000_000.0;
/// Parts that a degree is kept in.
const PARTS: f64 = 100.0;

/// Why the phone does not say where it is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NoFix {
    /// This browser does not know where it is.
    NotHere,
    /// The person said no, or the browser did.
    Refused,
    /// It looked, and did not find itself.
    NotFound,
}

/// How the search for the phone's place stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Looking {
    /// Nobody asked.
    NotAsked,
    /// It looks.
    Now,
    /// It found itself, and the figures stand in the fields.
    Found,
    /// It did not.
    Failed(NoFix),
}

/// What is wrong with the form.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// A figure.
    Degrees(Unread),
    /// What cannot be stored.
    Log(LogError),
}

impl Wrong {
    /// The field it stands under; `None` for one of the whole form.
    pub const fn field(&self) -> Option<Field> {
        match self {
            Self::Degrees(unread) => Some(unread.field()),
            Self::Log(_) => None,
        }
    }
}

/// What is typed and ticked.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Typed {
    /// How far north or south.
    pub latitude: String,
    /// How far east or west.
    pub longitude: String,
    /// The clock the place goes by, as `Europe/London`.
    pub zone: String,
    /// The regions whose plants and hazards are ticked.
    pub regions: Vec<Region>,
}

/// The sun's noon by a clock.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Noon {
    /// When, by the clock.
    pub at: LocalTime,
    /// Whether that can be the clock of the place.
    pub fits: bool,
}

/// A figure as it is kept and shown: to a hundredth of a degree.
pub fn coarse(degrees: f64) -> f64 {
    (degrees * PARTS).round() / PARTS
}

/// The same as a text to type on from.
pub fn coarse_text(degrees: f64) -> String {
    fixed(coarse(degrees), 2)
}

/// What the form asks the disk for.
pub fn needs(yard: &YardId) -> Vec<Range> {
    vec![Range::One(yard.0.clone())]
}

/// The record of the yard, when there is one.
pub fn yard(shelf: &Shelf, yard: &YardId) -> Option<YardV2> {
    let record = shelf.get(yard.as_str()).filter(|record| !record.gone)?;
    match Body::read(record) {
        Ok(Body::Yard(body)) => Some(body),
        _ => None,
    }
}

/// A figure of a stored place, in degrees.
fn degrees(held: MicroDegrees) -> f64 {
    held.get() as f64 / MICRO
}

impl Typed {
    /// What is stored, as the form shows it; with the zone of this device where none is stored.
    pub fn of(body: Option<&YardV2>, device_zone: &str) -> Self {
        let place = body.and_then(|body| body.place.as_ref());
        let zone = place.and_then(|place| place.zone.as_ref());
        Self {
            latitude: place.map_or_else(String::new, |held| coarse_text(degrees(held.latitude))),
            longitude: place.map_or_else(String::new, |held| coarse_text(degrees(held.longitude))),
            zone: zone.map_or_else(|| device_zone.to_owned(), |zone| zone.as_str().to_owned()),
            regions: body.map_or_else(Vec::new, |body| body.regions.clone()),
        }
    }

    /// A figure, coarse, as far as it can be read.
    pub fn figure(&self, field: Field) -> Option<f64> {
        field.read(self.text(field)).ok().map(coarse)
    }

    /// When the sun stands highest there today by a clock, which tells a swapped side and a wrong clock; `None` while no
    /// place can be read.
    pub fn noon(&self, now: Instant, zone: &impl Zone) -> Option<Noon> {
        let north = self.figure(Field::Latitude)?;
        let east = self.figure(Field::Longitude)?;
        let day = zone.to_local(now).date;
        let sun = sun_day(Place::degrees(north, east).ok()?, day, zone).ok()?;
        Some(Noon {
            at: zone.to_local(sun.noon()).time,
            fits: clock_fits(sun, day, zone),
        })
    }

    fn text(&self, field: Field) -> &str {
        match field {
            Field::Latitude => &self.latitude,
            Field::Longitude => &self.longitude,
        }
    }

    /// The place; `None` when nothing is typed, which leaves the window to the clock.
    ///
    /// # Errors
    /// Every figure that is wrong.
    pub fn place(&self) -> Result<Option<PlaceV2>, Vec<Wrong>> {
        if Field::ALL
            .iter()
            .all(|field| self.text(*field).trim().is_empty())
        {
            return Ok(None);
        }
        let mut wrong = Vec::new();
        let mut read = |field: Field| {
            let typed = self.text(field);
            let read = if typed.trim().is_empty() {
                Err(Wrong::Degrees(Unread::Empty(field)))
            } else {
                field
                    .read(typed)
                    .map_err(Wrong::Degrees)
                    .and_then(|degrees| micro(degrees).map_err(Wrong::Log))
            };
            read.map_err(|error| wrong.push(error)).ok()
        };
        let (latitude, longitude) = (read(Field::Latitude), read(Field::Longitude));
        let zone = match self.zone.trim() {
            "" => None,
            zone => Name::new(zone)
                .map_err(|error| wrong.push(Wrong::Log(error)))
                .ok(),
        };
        match (latitude, longitude) {
            (Some(latitude), Some(longitude)) if wrong.is_empty() => Ok(Some(PlaceV2 {
                latitude,
                longitude,
                zone,
            })),
            _ => Err(wrong),
        }
    }

    /// The act that writes it over what the yard says of itself; a yard of which nothing is written down gets this name.
    ///
    /// # Errors
    /// Everything that is wrong.
    pub fn act(&self, id: &YardId, there: Option<&YardV2>, name: &str) -> Result<Act, Vec<Wrong>> {
        let place = self.place()?;
        let before = match there {
            Some(yard) => yard.clone(),
            None => YardV2::named(Name::new(name).map_err(|error| vec![Wrong::Log(error)])?),
        };
        let body = Body::Yard(YardV2 {
            place,
            regions: self.regions.clone(),
            ..before
        });
        let record = RecordId(id.0.clone());
        Ok(match there {
            Some(_) => Act::Change {
                id: record,
                body,
                at: None,
            },
            None => Act::Add(New {
                id: record,
                subject: Subject::yard(id),
                at: None,
                known: Known::Seen,
                body,
            }),
        })
    }
}

/// Coarse, as it is stored.
fn micro(degrees: f64) -> Result<MicroDegrees, LogError> {
    let micro = coarse(degrees) * MICRO;
    #[allow(
        clippy::cast_possible_truncation,
        reason = "at most 180 degrees, which were checked"
    )]
    MicroDegrees::new(micro.round() as i64)
}

#[cfg(test)]
mod tests;
