//! The soaks of the day, tub by tub: which nets lie in the water together, what is not soaked today, the tubs of the yard.

use crate::shelf::Shelf;
use crate::views::hay::strictest_of;
use crate::views::nets::{DayNet, nets_day};
use crate::views::round::Today;
use crate::views::tub::{YardTub, yard_tubs};
use tussock_core::animal::{AnimalId, LotId, TubId};
use tussock_core::forage::{Fed, Judgement, WayOut, estimate, judge};
use tussock_core::limits::sugar_limits;
use tussock_core::log::{Body, Kind};
use tussock_core::round::{DryVisit, Job, JobKind, Key, Load, Subject, TubRoom, Visit, loads};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Instant, LocalTime, Span};

/// How far ahead a soak for another day is listed: the evening sees the morning's.
const AHEAD_HOURS: i64 = 12;

/// How long before its time a tub is offered to be started.
const START_HOURS: i64 = 2;

/// A load with the name of its tub.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadSeen {
    /// What lies in it, and when.
    pub load: Load,
    /// What its tub is called; `None` for one that is not there yet.
    pub tub: Option<String>,
    /// How much hay goes into that tub.
    pub capacity: Option<AsFed>,
    /// Whether it may be started now: hay that lies wet for hours before its visit is thrown away the sooner.
    pub now: bool,
}

/// The dry hay of somebody against its limit, where it is not within.
#[derive(Clone, Debug, PartialEq)]
pub struct DrySugar {
    /// For whom.
    pub name: String,
    /// The hay.
    pub hay: String,
    /// The judgement on the hay as it comes.
    pub judgement: Judgement,
    /// What can be done today: what is not soaking it.
    pub ways_out: Vec<WayOut>,
}

/// A soak that is planned and not begun.
#[derive(Clone, Debug, PartialEq)]
pub struct Planned {
    /// The job.
    pub job: Job,
    /// The sugar of its hay when it is fed dry, for each lot that is not within the limit.
    pub sugar: Vec<DrySugar>,
}

/// A net that is not soaked today.
#[derive(Clone, Debug, PartialEq)]
pub struct DryHang {
    /// Its number among the nets of its visit.
    pub nth: u32,
    /// The net with its reading.
    pub net: DayNet,
}

/// The nets of a visit that are not soaked.
#[derive(Clone, Debug, PartialEq)]
pub struct DrySeen {
    /// What was said.
    pub said: DryVisit,
    /// For whom.
    pub subject: Subject,
    /// The name of that animal or group.
    pub name: String,
    /// The visit.
    pub visit: Visit,
    /// Its nets that are not hung yet.
    pub nets: Vec<DryHang>,
    /// The sugar of its hay when it is fed dry.
    pub sugar: Vec<DrySugar>,
}

/// A tub of the yard, with what lies in it.
#[derive(Clone, Debug, PartialEq)]
pub struct TubRow {
    /// The tub.
    pub tub: YardTub,
    /// How much hay goes into it.
    pub capacity: Option<AsFed>,
    /// The soak in the water, and when it is lifted out.
    pub soak: Option<(RecordId, Instant)>,
}

/// The soaks of the day.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Soaks {
    /// What is to go into the water, earliest first.
    pub loads: Vec<LoadSeen>,
    /// The soaks that are planned, of which each may be left out today.
    pub planned: Vec<Planned>,
    /// What is not soaked.
    pub dry: Vec<DrySeen>,
    /// The tubs.
    pub tubs: Vec<TubRow>,
}

/// The soaks from the records of [`super::round::needs`].
pub fn soaks(shelf: &Shelf, today: &Today) -> Soaks {
    let rooms = rooms(shelf);
    let soon = |visit: Option<Visit>, goes_in: Instant| {
        visit.is_some_and(|visit| visit.day <= today.day)
            || goes_in <= today.now + Span::hours(AHEAD_HOURS)
    };
    let loads = loads(&today.round, &today.due.soaks, &rooms, today.now)
        .into_iter()
        .filter(|load| soon(Some(load.visit), load.goes_in))
        .map(|load| {
            let of_tub = |room: &&TubRoom| Some(&room.id) == load.tub.as_ref();
            LoadSeen {
                tub: load.tub.as_ref().and_then(|tub| tub_name(shelf, tub)),
                now: load.goes_in <= today.now + Span::hours(START_HOURS),
                capacity: rooms.iter().find(of_tub).and_then(|room| room.capacity),
                load,
            }
        })
        .collect();
    Soaks {
        loads,
        planned: today
            .round
            .jobs
            .iter()
            .filter(|job| job.kind == JobKind::StartSoak && soon(job.visit, job.due))
            .map(|job| Planned {
                sugar: dry_sugar(shelf, today, job),
                job: job.clone(),
            })
            .collect(),
        dry: dry(shelf, today),
        tubs: tubs(shelf, today),
    }
}

/// The tubs of the yard with what goes into them, by name.
pub fn rooms(shelf: &Shelf) -> Vec<TubRoom> {
    let mut rooms: Vec<(String, TubRoom)> = shelf
        .bodies(&Kind::Tub)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::Tub(body) => Some((
                body.name.as_str().to_owned(),
                TubRoom {
                    id: TubId(record.id.0.clone()),
                    capacity: body.capacity.map(|capacity| capacity.g.as_fed()),
                },
            )),
            _ => None,
        })
        .collect();
    rooms.sort_by(|(a, tub), (b, other)| (a.len(), a, &tub.id).cmp(&(b.len(), b, &other.id)));
    rooms.into_iter().map(|(_, room)| room).collect()
}

fn tub_name(shelf: &Shelf, tub: &TubId) -> Option<String> {
    match Body::read(shelf.get(&tub.0)?) {
        Ok(Body::Tub(body)) => Some(body.name.as_str().to_owned()),
        _ => None,
    }
}

fn tubs(shelf: &Shelf, today: &Today) -> Vec<TubRow> {
    let rooms = rooms(shelf);
    yard_tubs(shelf, today)
        .into_iter()
        .map(|tub| {
            let room = rooms.iter().find(|room| room.id == tub.id);
            let soak = today
                .due
                .soaks
                .iter()
                .find(|soak| soak.tub.as_ref() == Some(&tub.id) && soak.times.lifted.is_none());
            TubRow {
                capacity: room.and_then(|room| room.capacity),
                soak: soak.map(|soak| (soak.id.clone(), soak.times.wetted + soak.recipe.soak())),
                tub,
            }
        })
        .collect()
}

/// The members that hay of a subject is fed to.
fn eaters(shelf: &Shelf, today: &Today, subject: &Subject) -> Vec<AnimalId> {
    match subject {
        Subject::Animal(id) => vec![id.clone()],
        Subject::Group(id) => shelf.group(id).map_or_else(Vec::new, |group| {
            group.on(today.day).into_iter().cloned().collect()
        }),
        Subject::Yard(_) => shelf
            .animals()
            .into_iter()
            .map(|animal| animal.id)
            .collect(),
    }
}

/// The hay of a job as it comes, for the strictest of those it is fed to: each lot whose sugar is not within the limit.
fn dry_sugar(shelf: &Shelf, today: &Today, job: &Job) -> Vec<DrySugar> {
    let mut lots: Vec<&LotId> = today
        .round
        .jobs
        .iter()
        .filter(|hang| {
            hang.kind == JobKind::HangNet
                && hang.subject == job.subject
                && hang.visit == job.visit
                && (hang.soaked || hang.not_soaked.is_some())
        })
        .filter_map(|hang| hang.lot.as_ref())
        .chain(job.lot.as_ref())
        .collect();
    lots.sort_unstable();
    lots.dedup();
    let sugar = lots.into_iter();
    sugar
        .filter_map(|lot| sugar_of(shelf, today, &job.subject, &job.name, lot))
        .collect()
}

/// One lot as it comes, for the strictest of those it is fed to; `None` when it is within the limit, or none is asked.
pub fn sugar_of(
    shelf: &Shelf,
    today: &Today,
    subject: &Subject,
    name: &str,
    lot: &LotId,
) -> Option<DrySugar> {
    let eaters = eaters(shelf, today, subject);
    let limits = sugar_limits(strictest_of(shelf, |animal| eaters.contains(animal)))?;
    let record = shelf.get(lot.as_str())?;
    let Ok(Body::Lot(body)) = Body::read(record) else {
        return None;
    };
    let (lot, _) = body.lot(&record.id).ok()?;
    let judgement = judge(&estimate(&lot, Fed::Dry), &limits);
    if judgement.verdict.is_within() {
        return None;
    }
    // What can be done about today's hay: grass first, for it is in nobody's way; soaking is what was left out.
    let mut ways_out = vec![WayOut::LessGrass];
    ways_out.extend(
        judgement
            .ways_out
            .iter()
            .copied()
            .filter(|way| !matches!(way, WayOut::Soak | WayOut::TestSoaked | WayOut::LessGrass)),
    );
    Some(DrySugar {
        name: name.to_owned(),
        hay: body.name.as_str().to_owned(),
        judgement,
        ways_out,
    })
}

/// What is not soaked and not hung yet, by visit.
fn dry(shelf: &Shelf, today: &Today) -> Vec<DrySeen> {
    let mut found: Vec<DrySeen> = Vec::new();
    for said in &today.due.dry {
        let Key::Day {
            subject, day, slot, ..
        } = &said.start
        else {
            continue;
        };
        let of_visit = |job: &&Job| {
            job.kind == JobKind::HangNet
                && job.not_soaked.is_some()
                && job.subject == *subject
                && job.slot().is_some_and(|place| place.visit == slot.visit)
                && job.visit.is_some_and(|visit| visit.day == *day)
        };
        let hangs: Vec<&Job> = today.round.jobs.iter().filter(of_visit).collect();
        let Some(first) = hangs.first() else {
            continue;
        };
        let nets = nets_day(shelf, today, subject.parts().1, *day).map_or_else(Vec::new, |of| {
            of.nets
                .into_iter()
                .filter_map(|net| {
                    let job = hangs.iter().find(|job| job.key == net.key)?;
                    Some(DryHang {
                        nth: job.slot().map_or(0, |slot| slot.nth),
                        net,
                    })
                })
                .collect()
        });
        let visit = first.visit.unwrap_or(Visit {
            day: *day,
            time: LocalTime::MIN,
        });
        found.retain(|seen| seen.said.start != said.start);
        found.push(DrySeen {
            subject: subject.clone(),
            name: first.name.clone(),
            visit,
            nets,
            sugar: dry_sugar(shelf, today, first),
            said: said.clone(),
        });
    }
    found
}

impl Soaks {
    /// The net of which the reading is told in large: the first that is not hung.
    pub fn lighter(&self) -> Option<(&DrySeen, &DryHang)> {
        self.dry
            .iter()
            .find_map(|seen| Some((seen, seen.nets.first()?)))
    }
}

#[cfg(test)]
mod tests;
