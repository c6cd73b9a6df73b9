//! What the window of a day is asked with, from the records.

use crate::shelf::Shelf;
use crate::views::paddock::yard;
use tussock_core::animal::{Answer, PaddockId, RiskLevel};
use tussock_core::graze::season::{Note, SeasonOn, season_on};
use tussock_core::graze::sun::Place;
use tussock_core::graze::window::{Closed, DayWeather, Window, WindowFor, window};
use tussock_core::log::bodies::{GrazingV1, PaddockV2, SwardV1};
use tussock_core::log::published::LEAF_SEEN_DAYS;
use tussock_core::log::{Body, Kind, Record, day_weather_of};
use tussock_core::units::{Instant, LocalDate, Zone};

/// What the records say of grass, for every subject alike.
pub(super) struct Grass<'a, Z> {
    pub shelf: &'a Shelf,
    pub records: &'a [&'a Record],
    pub now: Instant,
    pub day: LocalDate,
    pub zone: &'a Z,
    pub place: Option<Place>,
    pub notes: Vec<Note>,
}

/// For whom and where a window is asked.
pub(super) struct For<'a> {
    pub risk: RiskLevel,
    pub paddock: Option<&'a PaddockId>,
    pub also: &'a [Closed],
}

impl<'a, Z: Zone> Grass<'a, Z> {
    pub(super) fn of(
        shelf: &'a Shelf,
        records: &'a [&'a Record],
        now: Instant,
        zone: &'a Z,
    ) -> Self {
        Self {
            shelf,
            records,
            now,
            day: zone.to_local(now).date,
            zone,
            place: yard(shelf).and_then(|yard| yard.place?.place()),
            notes: notes(shelf),
        }
    }

    /// The season of a day.
    pub(super) fn season(&self, day: LocalDate) -> SeasonOn {
        season_on(self.place.map(|place| place.latitude), day, &self.notes)
    }

    /// The weather of a day as it was said.
    pub(super) fn weather(&self, day: LocalDate) -> DayWeather {
        day_weather_of(self.records, day).into()
    }

    /// The paddocks, by name.
    pub(super) fn paddocks(&self) -> Vec<(PaddockId, String)> {
        let mut found: Vec<(PaddockId, String)> = self
            .shelf
            .bodies(&Kind::Paddock)
            .into_iter()
            .filter_map(|(record, body)| match body {
                Body::Paddock(body) => Some((
                    PaddockId(record.id.0.clone()),
                    body.name.as_str().to_owned(),
                )),
                _ => None,
            })
            .collect();
        found.sort_by(|a, b| (a.1.to_lowercase(), &a.0).cmp(&(b.1.to_lowercase(), &b.0)));
        found
    }

    fn field(&self, id: &PaddockId) -> Option<PaddockV2> {
        match Body::read(self.shelf.get(id.as_str())?) {
            Ok(Body::Paddock(body)) => Some(body),
            _ => None,
        }
    }

    /// What somebody saw of a paddock's grass last, up to a day and no longer ago than it holds.
    pub(super) fn sward(&self, paddock: Option<&PaddockId>, day: LocalDate) -> Option<SwardV1> {
        let paddock = paddock?;
        let seen = self.shelf.bodies(&Kind::Sward).into_iter();
        seen.filter(|(record, _)| record.subject.id() == paddock.as_str())
            .find_map(|(record, body)| {
                let ago = (day - self.zone.to_local(record.at).date).num_days();
                match body {
                    Body::Sward(body) if (0..=*LEAF_SEEN_DAYS).contains(&ago) => Some(body),
                    _ => None,
                }
            })
    }

    /// The last decision about a subject's grass that has begun on a day, when by it it goes out.
    pub(super) fn decided(&self, subject: &str, day: LocalDate) -> Option<GrazingV1> {
        let mut bodies = self.shelf.bodies(&Kind::Grazing);
        bodies.sort_by_key(|(record, _)| std::cmp::Reverse((record.at, record.stamp)));
        bodies
            .into_iter()
            .filter(|(record, _)| record.subject.id() == subject)
            .find_map(|(_, body)| match body {
                Body::Grazing(body) if body.from <= day => Some(body),
                _ => None,
            })
            .filter(|body| body.holds(day))
    }

    /// When grass is open on a day. Of a day to come nobody knows weather or leaf: its chips are left unsaid, and a dry
    /// spell and a freeze go on.
    pub(super) fn window(&self, day: LocalDate, of: &For<'_>) -> Window {
        let to_come = self.day < day;
        let said = self.weather(day);
        let field = of.paddock.and_then(|id| self.field(id));
        let sward = self.sward(of.paddock, day);
        let rests = field
            .as_ref()
            .is_some_and(|field| field.rest_from.is_some_and(|from| from <= day));
        let mut also = of.also.to_vec();
        if rests {
            also.push(Closed::Resting { until: None });
        }
        let ask = WindowFor {
            risk: of.risk,
            day,
            to_come,
            place: self.place,
            weather: said,
            season: self.season(day),
            leaf: sward.as_ref().and_then(SwardV1::leaf_height),
            seeding: sward.map_or(Answer::NotKnown, |sward| sward.seeding),
            shade: field.is_some_and(|field| field.shade == Some(true)),
            also: &also,
        };
        window(&ask, self.zone)
    }
}

/// What was noted of the year of grass.
pub(super) fn notes(shelf: &Shelf) -> Vec<Note> {
    shelf
        .bodies(&Kind::SeasonNote)
        .into_iter()
        .filter_map(|(_, body)| match body {
            Body::SeasonNote(note) => Some(note.noted()),
            _ => None,
        })
        .collect()
}
