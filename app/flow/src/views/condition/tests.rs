//! What the walk-round is compared with.

use super::*;
use crate::acts::Act;
use crate::forms::condition::{Scorer, act, score};
use crate::views::beside::{Last, visit};
use crate::views::test_yard::{add, animal, at, shelf_of, written, zone};
use crate::words::Task;
use ConditionScale::{FiveStep, NineStep};
use tussock_core::animal::{Kind as AnimalKind, YardId};
use tussock_core::units::Span;

fn id() -> AnimalId {
    AnimalId("moss".into())
}

fn person(name: &str) -> PersonId {
    PersonId(name.into())
}

fn sites(scale: ConditionScale, neck: f64, rest: f64) -> Vec<(Site, f64)> {
    scale
        .sites()
        .iter()
        .map(|site| (*site, if *site == Site::Neck { neck } else { rest }))
        .collect()
}

fn scored(
    shelf: &Shelf,
    scale: ConditionScale,
    (neck, rest): (f64, f64),
    by: &Scorer,
    record: &str,
    now: Instant,
) -> Shelf {
    let act: Act = act(
        &id(),
        scale,
        &sites(scale, neck, rest),
        by,
        &YardId("y".into()),
        record,
    )
    .unwrap();
    written(shelf, &act, now)
}

fn known(name: &str) -> Scorer {
    Scorer::Known(person(name))
}

#[test]
fn the_summary_names_the_sites_that_changed() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let last = |shelf: &Shelf, day| before(shelf, &id(), NineStep, None, at(day), &zone());
    assert_eq!(last(&shelf, 1), None);
    let shelf = scored(&shelf, NineStep, (6.0, 6.0), &Scorer::NotSaid, "c1", at(0));
    let (now, _) = score(NineStep, &sites(NineStep, 6.5, 6.0)).unwrap();
    let summary = summary(&now, last(&shelf, 20).as_ref());
    assert_eq!(summary.changes, Some(vec![(Site::Neck, 0.5)]));
    assert!(summary.noise);
    assert_eq!(summary.other, None);
}

#[test]
fn the_last_score_on_the_other_scale_is_a_range_and_is_not_compared() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let shelf = scored(&shelf, FiveStep, (3.0, 3.0), &Scorer::NotSaid, "c1", at(0));
    let last = before(&shelf, &id(), NineStep, None, at(30), &zone()).unwrap();
    let (now, _) = score(NineStep, &sites(NineStep, 6.0, 6.0)).unwrap();
    let summary = summary(&now, Some(&last));
    assert_eq!(summary.changes, None);
    assert!(!summary.noise);
    let range = summary.other.unwrap().on_nine().unwrap();
    assert_eq!((range.low(), range.high()), (5.0, 6.0));
    // And a score from 1 to 9 is never turned into one from 0 to 5.
    let shelf = scored(&shelf, NineStep, (6.0, 6.0), &Scorer::NotSaid, "c2", at(30));
    let Some(Before::Other(given)) = before(&shelf, &id(), FiveStep, None, at(60), &zone()) else {
        panic!("on the other scale")
    };
    assert_eq!(given.on_nine(), None);
}

#[test]
fn a_donkey_begins_from_0_to_5_and_stays_on_the_scale_it_was_scored_on() {
    let mut fern = animal("moss");
    fern.kind = AnimalKind::Donkey;
    let shelf = shelf_of(&[add("moss", &fern, 0)]);
    let begin = |shelf: &Shelf, day| begin(shelf, &id(), None, at(day), &zone()).unwrap();
    assert_eq!(begin(&shelf, 0).scale, FiveStep);
    let shelf = scored(&shelf, NineStep, (6.0, 6.0), &Scorer::NotSaid, "c1", at(0));
    let begun = begin(&shelf, 30);
    assert_eq!((begun.usual, begun.scale), (FiveStep, NineStep));
}

#[test]
fn a_second_person_begins_without_the_first_ones_score() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let shelf = scored(&shelf, NineStep, (6.0, 6.0), &known("ab"), "c0", at(0));
    let shelf = scored(&shelf, NineStep, (7.0, 6.0), &known("ab"), "c1", at(30));
    let soon = at(30) + Span::hours(1);
    let cd = person("cd");
    // Last time is the one of another day, whoever scored it.
    let last = before(&shelf, &id(), NineStep, Some(&cd), soon, &zone()).unwrap();
    assert_eq!(last.same().unwrap().site(Site::Neck), Some(6.0));
    let begun = begin(&shelf, &id(), Some(&cd), soon, &zone()).unwrap();
    assert!(begun.second);
    assert_eq!(begun.early, None);
    // For the same person it is the last score, and a new one stands in its place.
    let ab = person("ab");
    let begun = begin(&shelf, &id(), Some(&ab), soon, &zone()).unwrap();
    assert!(begun.early.unwrap().again && !begun.second);
    assert_eq!(two(&shelf, &id(), soon, &zone()), None);

    let new = Scorer::New {
        initials: "CD".into(),
        role: Role::Consultant,
    };
    let shelf = scored(&shelf, NineStep, (6.0, 6.0), &new, "c2", soon);
    let two = two(&shelf, &id(), soon, &zone()).unwrap();
    assert_eq!(two.apart, Ok(vec![(Site::Neck, 1.0)]));
    assert_eq!(two.second.initials.as_deref(), Some("CD"));
    assert_eq!(two.first.by, Some(ab));
    assert_eq!(persons(&shelf)[0].initials, "CD");
    // Both stand: what is reckoned with is the range that holds both, and an animal that was scored is not scored again.
    let visit = visit(&shelf, &id(), soon, &zone()).unwrap();
    let range = visit.condition.unwrap();
    assert!((range.low() - 6.0).abs() < 1e-9);
    assert!((range.high() - (7.0 + 6.0 * 5.0) / 6.0).abs() < 1e-9);
    assert!(!visit.to_score);
}

#[test]
fn what_one_person_scores_anew_stands_for_what_that_person_scored_before() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let soon = at(0) + Span::hours(1);
    let shelf = scored(&shelf, NineStep, (9.0, 9.0), &known("ab"), "c1", at(0));
    let shelf = scored(&shelf, NineStep, (6.0, 6.0), &known("ab"), "c2", soon);
    let range = visit(&shelf, &id(), soon, &zone())
        .unwrap()
        .condition
        .unwrap();
    assert_eq!((range.low(), range.high()), (6.0, 6.0));
}

#[test]
fn on_the_way_to_a_score_the_last_one_is_not_told() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let shelf = scored(&shelf, NineStep, (6.0, 6.0), &known("ab"), "c1", at(0));
    let last = |day| {
        let visit = visit(&shelf, &id(), at(day), &zone()).unwrap();
        let step = visit
            .steps
            .into_iter()
            .find(|step| step.task == Task::Condition);
        (step.unwrap().last, visit.to_score)
    };
    assert!(matches!(last(1), (Some(Last::Condition(..)), false)));
    assert_eq!(
        last(14),
        (Some(Last::ConditionToScore { by_sites: true }), true)
    );
}

#[test]
fn monthly_is_enough_but_a_new_animal_is_scored_twice_two_weeks_apart() {
    let early = |phase: Phase, day: i64| {
        let mut moss = animal("moss");
        moss.phase = phase;
        let shelf = shelf_of(&[add("moss", &moss, 0)]);
        let shelf = scored(&shelf, NineStep, (6.0, 6.0), &Scorer::NotSaid, "c1", at(0));
        begin(&shelf, &id(), None, at(day), &zone())
            .unwrap()
            .early
            .map(|early| early.days)
    };
    assert_eq!(early(Phase::Losing, 27), Some(27));
    assert_eq!(early(Phase::Losing, 28), None);
    assert_eq!(early(Phase::New, 13), Some(13));
    assert_eq!(early(Phase::New, 14), None);
}
