//! A yard for the tests of the views: three invented animals, a day at a time.

use crate::acts::{Act, Context, New, apply};
use crate::shelf::Shelf;
use tussock_core::animal::{
    Animal, AnimalId, Appetite, Goal, Health, Kind, Phase, StageFacts, State, Temperament,
    Workload, YardId,
};
use tussock_core::log::bodies::AnimalV2;
use tussock_core::log::{Body, DeviceId, Known, Record, Subject, ZoneTable};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, Span};

/// The clock in London, summer.
pub(crate) fn zone() -> ZoneTable {
    tussock_core::log::Case::read(include_str!(
        "../../../../core/examples/cases/two-cobs-and-a-shetland.json"
    ))
    .unwrap()
    .zone
}

/// Noon of a day of May 2026.
pub(crate) fn at(day: i64) -> Instant {
    Instant::from_ms(1_777_978_800_000) + Span::hours(24 * day)
}

pub(crate) fn animal(name: &str) -> Animal {
    Animal {
        id: AnimalId(name.into()),
        name: name.into(),
        kind: Kind::Pony,
        body_type: None,
        sex: None,
        born: None,
        height: None,
        state: State::Adult,
        stage: StageFacts::default(),
        work: Workload::Maintenance(Temperament::Average),
        health: Health {
            appetite: Appetite::Eating,
            ..Health::default()
        },
        goal: Goal::Lose,
        phase: Phase::New,
        target: None,
    }
}

pub(crate) type Entry<'a> = (&'a str, &'a str, Body, i64);

/// An animal as an entry.
pub(crate) fn add<'a>(id: &'a str, animal: &Animal, day: i64) -> Entry<'a> {
    (id, id, Body::Animal(AnimalV2::of(animal).unwrap()), day)
}

pub(crate) fn shelf_of(entries: &[Entry<'_>]) -> Shelf {
    after(&Shelf::default(), entries)
}

/// The shelf after entries were written: id, animal, body, day.
pub(crate) fn after(shelf: &Shelf, entries: &[Entry<'_>]) -> Shelf {
    entries
        .iter()
        .fold(shelf.clone(), |shelf, (id, about, body, day)| {
            written(
                &shelf,
                &Act::Add(New {
                    id: RecordId((*id).into()),
                    subject: Subject::animal(&AnimalId((*about).into())),
                    at: None,
                    known: Known::Seen,
                    body: body.clone(),
                }),
                at(*day),
            )
        })
}

/// Who, when and where, after what is on a shelf.
pub(crate) fn context(shelf: &Shelf, now: Instant) -> Context {
    Context {
        now,
        offset_min: 60,
        zone: "Europe/London".into(),
        yard: YardId("y".into()),
        by: None,
        device: DeviceId::from_text("abcdefgh").unwrap(),
        last: shelf.versions().map(|record| record.stamp).max(),
    }
}

/// The shelf after an act at an instant.
pub(crate) fn written(shelf: &Shelf, act: &Act, now: Instant) -> Shelf {
    let context = context(shelf, now);
    let mut next = shelf.clone();
    for row in apply(act, shelf, &context, None).unwrap().writes.rows {
        next.put(Record::from_text(&row.json).unwrap());
    }
    next
}
