//! What the window of a day is asked with, from the records.

use crate::shelf::Shelf;
use crate::views::fields::by_name;
use crate::views::grazing::{decided, decisions};
use crate::views::paddock::yard;
use tussock_core::animal::{Answer, PaddockId, RiskLevel};
use tussock_core::graze::season::{Note, SeasonOn, season_on};
use tussock_core::graze::sun::Place;
use tussock_core::graze::window::{Closed, DayWeather, Window, WindowFor, window};
use tussock_core::log::bodies::{GrazingV1, PaddockV2, SwardV1, TurnoutV1};
use tussock_core::log::published::{LEAF_SEEN_DAYS, SEED_SEEN_DAYS};
use tussock_core::log::{Body, Kind, Record, Subject, day_weather_of};
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
    /// The turnouts, the newest first.
    pub turnouts: Vec<(&'a Record, TurnoutV1)>,
    swards: Vec<(&'a Record, SwardV1)>,
    decisions: Vec<(Subject, GrazingV1)>,
    fields: Vec<(PaddockId, PaddockV2)>,
    today: DayWeather,
}

/// The bodies of a kind, the newest first, each read once.
fn read_all<'a, T>(
    shelf: &'a Shelf,
    kind: &Kind,
    of: impl Fn(Body) -> Option<T>,
) -> Vec<(&'a Record, T)> {
    let all = shelf.bodies(kind).into_iter();
    all.filter_map(|(record, body)| Some((record, of(body)?)))
        .collect()
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
        let day = zone.to_local(now).date;
        Self {
            shelf,
            records,
            now,
            day,
            zone,
            place: yard(shelf).and_then(|yard| yard.place?.place()),
            notes: notes(shelf),
            turnouts: read_all(shelf, &Kind::Turnout, |body| match body {
                Body::Turnout(body) => Some(body),
                _ => None,
            }),
            swards: read_all(shelf, &Kind::Sward, |body| match body {
                Body::Sward(body) => Some(body),
                _ => None,
            }),
            decisions: decisions(shelf),
            fields: by_name(shelf),
            today: day_weather_of(records, day),
        }
    }

    /// The season of a day.
    pub(super) fn season(&self, day: LocalDate) -> SeasonOn {
        season_on(self.place.map(|place| place.latitude), day, &self.notes)
    }

    /// The weather of a day as it was said.
    pub(super) fn weather(&self, day: LocalDate) -> DayWeather {
        if day == self.day {
            return self.today;
        }
        day_weather_of(self.records, day)
    }

    /// The paddocks, by name.
    pub(super) fn paddocks(&self) -> Vec<(PaddockId, String)> {
        self.fields
            .iter()
            .map(|(id, body)| (id.clone(), body.name.as_str().to_owned()))
            .collect()
    }

    fn field(&self, id: &PaddockId) -> Option<&PaddockV2> {
        let found = self.fields.iter().find(|(other, _)| other == id);
        found.map(|(_, body)| body)
    }

    /// What somebody saw of a paddock's grass, up to a day and no longer ago than it holds: of each thing the last word, for
    /// who looks at one thing takes back nothing of another. Seed heads stand until somebody says that they are gone.
    pub(super) fn sward(&self, paddock: Option<&PaddockId>, day: LocalDate) -> Option<SwardV1> {
        let paddock = paddock?;
        let mut found: Option<SwardV1> = None;
        for (record, seen) in &self.swards {
            if record.subject.id() != paddock.as_str() {
                continue;
            }
            let ago = (day - self.zone.to_local(record.at).date).num_days();
            let lately = (0..=*LEAF_SEEN_DAYS).contains(&ago);
            let stands = (0..=*SEED_SEEN_DAYS).contains(&ago);
            if !lately && !stands {
                continue;
            }
            let all = found.get_or_insert_with(|| SwardV1 {
                leaf: None,
                seeding: Answer::NotKnown,
                heights_mm: Vec::new(),
                plate: None,
                note: None,
            });
            if lately && all.leaf.is_none() {
                all.leaf = seen.leaf;
            }
            if lately && all.heights_mm.is_empty() {
                all.heights_mm.clone_from(&seen.heights_mm);
                all.plate.clone_from(&seen.plate);
            }
            if stands && all.seeding == Answer::NotKnown {
                all.seeding = seen.seeding;
            }
        }
        found
    }

    /// The last decision about a subject's grass that has begun on a day, when by it it goes out.
    pub(super) fn decided(&self, subject: &str, day: LocalDate) -> Option<GrazingV1> {
        decided(&self.decisions, subject, day)
            .filter(|body| body.holds(day))
            .cloned()
    }

    /// When grass is open on a day. Of a day to come nobody knows weather or leaf: its chips are left unsaid, and a dry
    /// spell and a freeze go on.
    pub(super) fn window(&self, day: LocalDate, of: &For<'_>) -> Window {
        let to_come = self.day < day;
        let said = self.weather(day);
        let field = of.paddock.and_then(|id| self.field(id));
        let sward = self.sward(of.paddock, day);
        let rests = field.is_some_and(|field| field.rest_from.is_some_and(|from| from <= day));
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
