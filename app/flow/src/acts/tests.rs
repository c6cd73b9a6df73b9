//! What an act writes, and what undo writes back.

use super::*;
use tussock_core::animal::AnimalId;
use tussock_core::assess::Crest;
use tussock_core::log::bodies::CrestV1;

fn context(last: Option<Stamp>) -> Context {
    Context {
        now: Instant::from_ms(1_777_000_000_000),
        offset_min: 60,
        zone: "Europe/London".into(),
        yard: YardId("y".into()),
        by: None,
        device: DeviceId::from_text("abcdefgh").unwrap(),
        last,
    }
}

fn crest(score: u8) -> Body {
    Body::Crest(CrestV1::of(Crest::new(score).unwrap()))
}

fn add(id: &str, score: u8) -> Act {
    Act::Add(New {
        id: RecordId(id.into()),
        subject: Subject::animal(&AnimalId("bramble".into())),
        at: None,
        known: Known::Seen,
        body: crest(score),
    })
}

fn shelf_after(shelf: &Shelf, outcome: &Outcome) -> Shelf {
    let mut next = shelf.clone();
    for row in &outcome.writes.rows {
        next.put(Record::from_text(&row.json).unwrap());
    }
    next
}

#[test]
fn saving_twice_saves_one_record() {
    let first = apply(
        &add("a", 3),
        &Shelf::default(),
        &context(None),
        Some("#/horses/x/crest"),
    )
    .unwrap();
    assert_eq!(first.writes.rows.len(), 1);
    assert_eq!(first.writes.clear_drafts, ["#/horses/x/crest"]);
    let shelf = shelf_after(&Shelf::default(), &first);
    let again = apply(
        &add("a", 3),
        &shelf,
        &context(None),
        Some("#/horses/x/crest"),
    )
    .unwrap();
    assert!(again.writes.rows.is_empty() && again.saved.is_empty());
}

#[test]
fn undo_writes_a_new_version_that_says_what_held_before() {
    let first = apply(&add("a", 2), &Shelf::default(), &context(None), None).unwrap();
    let shelf = shelf_after(&Shelf::default(), &first);
    let change = Act::Change {
        id: RecordId("a".into()),
        body: crest(4),
        at: None,
    };
    let changed = apply(&change, &shelf, &context(None), None).unwrap();
    let shelf = shelf_after(&shelf, &changed);
    let undone = apply(&Act::Undo(changed.saved), &shelf, &context(None), None).unwrap();
    let shelf = shelf_after(&shelf, &undone);
    let held = shelf.get("a").unwrap();
    assert_eq!(Body::read(held).unwrap(), crest(2));
    assert!(!held.gone);
    let removed = apply(&Act::Undo(first.saved), &shelf, &context(None), None).unwrap();
    assert!(shelf_after(&shelf, &removed).get("a").unwrap().gone);
}

#[test]
fn stamps_of_one_batch_rise_and_the_last_is_kept() {
    let all = Act::All(vec![add("a", 1), add("b", 2), add("c", 3)]);
    let outcome = apply(&all, &Shelf::default(), &context(None), None).unwrap();
    let stamps: Vec<&str> = outcome
        .writes
        .rows
        .iter()
        .map(|row| row.stamp.as_str())
        .collect();
    assert!(stamps.is_sorted_by(|a, b| a < b));
    assert_eq!(
        outcome.writes.meta.get(LAST_STAMP).map(String::as_str),
        stamps.last().copied()
    );
}

#[test]
fn what_a_person_says_carries_that_person_and_the_device_keeps_who_it_was() {
    let kit = PersonId("kit".into());
    let all = Act::All(vec![
        Act::By(kit.clone(), Box::new(add("a", 1))),
        add("b", 2),
    ]);
    let outcome = apply(&all, &Shelf::default(), &context(None), None).unwrap();
    let shelf = shelf_after(&Shelf::default(), &outcome);
    assert_eq!(shelf.get("a").unwrap().by, Some(kit));
    assert_eq!(shelf.get("b").unwrap().by, None);
    assert_eq!(
        outcome.writes.meta.get(WHO).map(String::as_str),
        Some("kit")
    );
    let nobody = apply(&add("c", 3), &Shelf::default(), &context(None), None).unwrap();
    assert_eq!(nobody.writes.meta.get(WHO), None);
}

#[test]
fn what_is_not_there_cannot_be_changed_and_nothing_is_written() {
    let act = Act::All(vec![add("a", 1), Act::Remove(RecordId("nobody".into()))]);
    assert_eq!(
        apply(&act, &Shelf::default(), &context(None), None),
        Err(Problem::NotThere(RecordId("nobody".into())))
    );
}
