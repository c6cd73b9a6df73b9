//! Grass: when it is open and to whom, who is out and until when, and what they were at grass.

mod asked;
mod by_plan;
mod goes;
mod outings;
pub mod picture;
mod week;
mod who;

#[cfg(test)]
mod tests;

pub use by_plan::ByPlan;
pub use goes::{Goes, Out, Stands, WhyBy};
pub use outings::Outing;
pub use week::{WeekDay, week};

use super::horses::kind_of_limit;
use super::shed::{self, Weather};
use super::{beside, round};
use crate::forms::shed::of_one_day;
use crate::rows::Range;
use crate::shelf::Shelf;
use asked::Grass;
use tussock_core::animal::PaddockId;
use tussock_core::graze::season::{SeasonOn, season_on};
use tussock_core::graze::sun::Place;
use tussock_core::log::bodies::YardV2;
use tussock_core::log::{Body, Kind, Record, Subject};
use tussock_core::units::{Instant, LocalDate, Zone};

/// The most things of a yard that are asked for.
const OF_A_YARD: u32 = 200;

/// What the paddock's screens ask the disk for.
pub fn needs(now: Instant) -> Vec<Range> {
    let mut ranges = beside::group_needs();
    ranges.extend(round::needs(now));
    ranges.extend(
        [
            Kind::Yard,
            Kind::Paddock,
            Kind::Sward,
            Kind::Grazing,
            Kind::Turnout,
            Kind::SeasonNote,
        ]
        .iter()
        .map(|kind| kind_of_limit(kind, OF_A_YARD)),
    );
    ranges
}

/// The yard as it was described last.
pub fn yard(shelf: &Shelf) -> Option<YardV2> {
    let mut found = shelf.bodies(&Kind::Yard).into_iter();
    found.find_map(|(_, body)| match body {
        Body::Yard(yard) => Some(yard),
        _ => None,
    })
}

/// The name of the zone the yard's clocks go by, when somebody said or a device knew.
pub fn zone_name(shelf: &Shelf) -> Option<String> {
    let zone = yard(shelf)?.place?.zone?;
    Some(zone.as_str().to_owned())
}

/// The season of a day, by where the yard lies and the notes of the year.
pub(crate) fn season(shelf: &Shelf, day: LocalDate) -> SeasonOn {
    let place = yard(shelf).and_then(|yard| yard.place?.place());
    season_on(place.map(|place| place.latitude), day, &asked::notes(shelf))
}

/// What a person chose on the screen beside what was decided.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Chosen {
    /// For whom: the choice is nobody else's.
    pub whose: Option<Subject>,
    /// Another paddock.
    pub paddock: Option<PaddockId>,
    /// With or without a muzzle.
    pub muzzle: Option<bool>,
}

/// Grass on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Paddock {
    /// Now.
    pub now: Instant,
    /// The local day of the yard.
    pub day: LocalDate,
    /// Where the yard lies, when somebody said.
    pub place: Option<Place>,
    /// The season.
    pub season: SeasonOn,
    /// The chips of the day.
    pub weather: Weather,
    /// Animals and groups that go out: first who is out, then those with a decision, then the others, by name.
    pub goes: Vec<Goes>,
    /// The paddocks, by name.
    pub paddocks: Vec<(PaddockId, String)>,
}

impl Chosen {
    /// What was chosen for one; of another's choice nothing stays.
    #[must_use]
    pub fn for_one(self, about: &Subject) -> Self {
        if self.whose.as_ref() == Some(about) {
            return self;
        }
        Self {
            whose: Some(about.clone()),
            ..Self::default()
        }
    }
}

impl Paddock {
    /// The one of an id; without one the first.
    pub fn of(&self, id: Option<&str>) -> Option<&Goes> {
        match id {
            Some(id) => self.goes.iter().find(|goes| goes.about.id() == id),
            None => self.goes.first(),
        }
    }
}

/// The chips without what was said of another night and another day: those do not speak of today, and are asked anew.
fn said_today(mut weather: Weather) -> Weather {
    if weather.carried {
        weather.chips.retain(|chip| !of_one_day(*chip));
        weather.carried = !weather.chips.is_empty();
    }
    weather
}

/// Grass now.
pub fn paddock(shelf: &Shelf, now: Instant, zone: &impl Zone, chosen: &Chosen) -> Paddock {
    let records: Vec<&Record> = shelf.records().collect();
    let grass = Grass::of(shelf, &records, now, zone);
    let mut goes: Vec<Goes> = who::who(&grass)
        .into_iter()
        .filter_map(|who| goes::goes(&grass, who, chosen))
        .collect();
    goes.sort_by_key(|goes| (goes.out.is_none(), goes.decided.is_none()));
    Paddock {
        now,
        day: grass.day,
        place: grass.place,
        season: grass.season(grass.day),
        weather: said_today(shed::weather(shelf, grass.day)),
        goes,
        paddocks: grass.paddocks(),
    }
}
