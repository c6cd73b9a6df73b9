//! The plan's view, from records that the form of six answers wrote.

mod day;
mod offers;

use super::*;
use crate::acts::{Context, apply};
use crate::forms::start::{Answers, Ever, Ids, Named, RIBS, Sort, Visits};
use crate::forms::vet;
use crate::words::{English, PlanScreenWords, SafetyWords};
use tussock_core::animal::{VetScope, YardId};
use tussock_core::assess::Ribs;
use tussock_core::forage::ForageClass;
use tussock_core::log::DeviceId;
use tussock_core::plan::BucketLine;
use tussock_core::safety::{Caution, Refusal, VetUrgency};
use tussock_core::units::LocalTime;

struct Utc;

impl Zone for Utc {
    fn offset_min(&self, _: Instant) -> i32 {
        0
    }
}

/// 2026-05-05, 08:00.
const NOW: Instant = Instant::from_ms(1_777_968_000_000);
const DAY_MS: i64 = 86_400_000;

fn day() -> LocalDate {
    Utc.to_local(NOW).date
}

fn later(days: i64) -> Instant {
    Instant::from_ms(NOW.to_ms() + days * DAY_MS)
}

fn id() -> AnimalId {
    AnimalId("bramble".into())
}

fn does(shelf: &Shelf, act: &Act, now: Instant) -> Shelf {
    let context = Context {
        now,
        offset_min: 0,
        zone: "Etc/UTC".into(),
        yard: YardId("yard".into()),
        by: None,
        device: DeviceId::from_text("abcdefgh").unwrap(),
        last: None,
    };
    let outcome = apply(act, shelf, &context, None).unwrap();
    let mut next = shelf.clone();
    for row in &outcome.writes.rows {
        next.put(Record::from_text(&row.json).unwrap());
    }
    next
}

fn started(sort: Sort, girth: &str, ribs: Ribs, ever: Ever) -> Shelf {
    let record = |id: &str| RecordId(id.to_owned());
    let answers = Answers {
        name: "Bramble".into(),
        sort: Some(sort),
        age: "12".into(),
        girth: girth.into(),
        ribs: Some(ribs),
        ever: Some(ever),
        hay: Some(ForageClass::Grass),
        visits: Some(Visits::Two),
    };
    let ids = Ids {
        yard: YardId("yard".into()),
        animal: id(),
        weight: record("weight"),
        condition: record("condition"),
        lot: record("lot"),
        visits: record("visits"),
    };
    let named = Named {
        animal: "Pony".into(),
        lot: "Grass hay".into(),
        yard: "Yard".into(),
        sort: "Pony under 112 cm".into(),
    };
    let act = answers.act(&ids, &named, day()).unwrap();
    does(&Shelf::default(), &act, NOW)
}

fn small_pony() -> Shelf {
    started(
        Sort::SmallPony,
        "130",
        Ribs::FeltWithPressure,
        Ever::SoundNow,
    )
}

fn seen(shelf: &Shelf, now: Instant) -> PlanView {
    plan(shelf, &id(), now, &Utc).unwrap()
}

fn allowed(view: &PlanView) -> &Plan {
    match &view.outcome {
        Outcome::Allowed(plan) => plan,
        other => panic!("{other:?}"),
    }
}

fn refused(view: &PlanView) -> &Refused {
    match &view.outcome {
        Outcome::Refused(refused) => refused,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_pony_that_foundered_gets_its_starting_level_on_day_one() {
    let view = seen(&small_pony(), NOW);
    assert!(view.problems.is_empty() && view.accepted.is_none() && !view.visits_stand_in);
    let plan = allowed(&view);
    let words = English::default();
    let tags = tags(plan, &words);
    let parts: Vec<Part> = tags.iter().map(|tag| tag.part).collect();
    assert_eq!(parts, Part::ALL);
    assert!(tags[0].result.starts_with("1.5 % of its weight"));
    assert!(tags.iter().all(|tag| !tag.result.is_empty()));
    let of = |part: Part| tags.iter().find(|tag| tag.part == part).unwrap();
    assert_eq!(of(Part::Grass).told, Told::Stop);
    assert_eq!(of(Part::Hay).told, Told::NotKnown);
    assert_eq!(of(Part::Work).told, Told::Care);
    assert_eq!(tags.iter().filter(|tag| tag.told == Told::Stop).count(), 1);
    let decided = decision(plan.planned(), &words);
    assert!(decided.ends_with("no grass"), "{decided}");
    assert!(decided.chars().count() <= 48, "{decided}");
}

#[test]
fn every_caution_is_said_once_in_its_tag_or_below() {
    let words = English::default();
    let view = seen(&small_pony(), NOW);
    let plan = allowed(&view);
    let tags = tags(plan, &words);
    let below = besides(plan, &words);
    for caution in plan.cautions() {
        let said = words.caution(caution);
        let in_tag =
            Part::of(caution) == Part::Grass || tags.iter().any(|tag| tag.reason == said.sentence);
        assert!(in_tag != below.contains(&said), "{caution:?}");
        let reasons = reasons(plan, &words);
        assert!(
            below.contains(&said) || reasons.contains(&said),
            "{caution:?}"
        );
    }
}

#[test]
fn every_default_is_shown() {
    let words = English::default();
    let view = seen(&small_pony(), NOW);
    let said = stands_in(allowed(&view).planned(), &words).join("\n");
    for part in [
        "not tested",
        "height at the withers",
        "body length",
        "default for hay",
        "How fast it eats",
    ] {
        assert!(said.contains(part), "{part} in {said}");
    }
    let typical = allowed(&view)
        .planned()
        .buckets
        .iter()
        .any(BucketLine::wants_label);
    assert_eq!(typical, said.contains("A typical balancer"));
}

#[test]
fn every_number_has_its_source() {
    let words = English::default();
    let view = seen(&small_pony(), NOW);
    let lines = sources(allowed(&view).planned(), view.records(), &words);
    assert!(10 < lines.len());
    assert!(
        lines
            .iter()
            .all(|line| !line.name.is_empty() && !line.from.is_empty())
    );
    assert!(lines.iter().any(|line| line.from.contains("(published)")));
    assert!(lines.iter().filter(|line| line.value.is_some()).count() * 2 > lines.len());
    let records = lines.iter().find(|line| line.name == words.your_records());
    assert_eq!(records.unwrap().value.as_deref(), Some("5"));
    let start = lines.iter().find(|line| line.name == "Start").unwrap();
    assert_eq!(start.value.as_deref(), Some("0.015 of body weight"));
}

#[test]
fn a_donkey_that_is_to_lose_waits_for_the_vet_and_one_in_good_order_has_a_plan() {
    let fat = started(Sort::Donkey, "118", Ribs::NotFelt, Ever::No);
    let view = seen(&fat, NOW);
    assert_eq!(refused(&view).why, [Refusal::DonkeyDiet]);
    assert_eq!(refused(&view).vet, Some(VetUrgency::First));
    let good = started(Sort::Donkey, "118", Ribs::FeltEasily, Ever::No);
    let view = seen(&good, NOW);
    let tags = tags(allowed(&view), &English::default());
    assert!(
        tags[0].result.starts_with("1.3 % of its weight"),
        "{tags:?}"
    );
    assert!(allowed(&view).cautions().contains(&Caution::Donkey));
}

#[test]
fn has_it_now_is_refused_until_the_vets_word_is_written_down() {
    let shelf = started(Sort::Pony, "160", Ribs::FeltWithPressure, Ever::HasItNow);
    let view = seen(&shelf, NOW);
    assert_eq!(refused(&view).why, [Refusal::LaminitisNow]);
    assert_eq!(refused(&view).vet, Some(VetUrgency::Today));
    assert!(!refused(&view).meanwhile.is_empty());
    assert!(view.use_it(&RecordId("p".into())).is_none());
    let said = vet::Typed {
        about: Some(VetScope::LowestLevel),
        percent: "1.5".into(),
        vet: "A. Marsh".into(),
        how: "By telephone".into(),
        ..vet::Typed::default()
    };
    let act = said.act(&id(), day(), &RecordId("word".into())).unwrap();
    let shelf = does(&shelf, &act, NOW);
    assert!(matches!(seen(&shelf, NOW).outcome, Outcome::Allowed(_)));
    // Its last day is the 30th of June; the day after it is refused again.
    assert!(matches!(
        seen(&shelf, later(57)).outcome,
        Outcome::Refused(_)
    ));
}

#[test]
fn an_accepted_plan_holds_until_something_changes() {
    let shelf = small_pony();
    let act = seen(&shelf, NOW)
        .use_it(&RecordId("plan".into()))
        .unwrap()
        .unwrap();
    let shelf = does(&shelf, &act, NOW);
    for days in [0, 1, 10] {
        let view = seen(&shelf, later(days));
        let accepted = view.accepted.clone().unwrap();
        assert_eq!(accepted.from, day());
        assert!(day() < accepted.review);
        assert!(!accepted.would_differ, "after {days} days");
        let not_given = allowed(&view)
            .cautions()
            .iter()
            .any(|caution| matches!(caution, Caution::RestrictionNotGiven { .. }));
        assert!(!not_given, "after {days} days");
    }
    let Ok(Body::Plan(body)) = Body::read(shelf.get("plan").unwrap()) else {
        panic!("a plan")
    };
    let inputs: Vec<&str> = body
        .inputs
        .iter()
        .map(|input| input.record.0.as_str())
        .collect();
    for id in ["bramble", "weight", "condition", "lot", "visits"] {
        assert!(inputs.contains(&id), "{id}");
    }
    assert!(!inputs.contains(&"yard"));

    let three = Act::Change {
        id: RecordId("visits".into()),
        body: Body::Visits(tussock_core::log::bodies::VisitsV1 {
            times: Visits::Three.times(),
            from: None,
        }),
        at: None,
    };
    let shelf = does(&shelf, &three, later(1));
    assert!(seen(&shelf, later(1)).accepted.unwrap().would_differ);
}

#[test]
fn whatever_is_answered_an_accepted_plan_is_the_plan_of_the_next_day() {
    let words = English::default();
    let mut plans = 0;
    for (sort, girth) in [
        (Sort::SmallPony, "125"),
        (Sort::Pony, "158"),
        (Sort::Horse, "190"),
        (Sort::Miniature, "95"),
        (Sort::Donkey, "118"),
        (Sort::Mule, "150"),
    ] {
        for ribs in RIBS {
            for ever in Ever::ALL {
                let shelf = started(sort, girth, *ribs, *ever);
                let view = seen(&shelf, NOW);
                let case = format!("{sort:?} {ribs:?} {ever:?}");
                let Outcome::Allowed(plan) = &view.outcome else {
                    assert!(matches!(view.outcome, Outcome::Refused(_)), "{case}");
                    continue;
                };
                plans += 1;
                let head = decision(plan.planned(), &words);
                assert!(head.chars().count() <= 48, "{case}: {head}");
                let act = view.use_it(&RecordId("plan".into())).unwrap().unwrap();
                let next = seen(&does(&shelf, &act, NOW), later(1));
                assert!(!next.accepted.clone().unwrap().would_differ, "{case}");
                assert_eq!(tags(plan, &words), tags(allowed(&next), &words), "{case}");
            }
        }
    }
    assert!(30 < plans, "{plans}");
}

#[test]
fn without_visits_two_stand_in_and_say_so() {
    let shelf = does(&small_pony(), &Act::Remove(RecordId("visits".into())), NOW);
    let view = seen(&shelf, NOW);
    assert!(view.visits_stand_in);
    let visits: Vec<LocalTime> = allowed(&view)
        .planned()
        .layout
        .hangings
        .iter()
        .map(|hanging| hanging.visit)
        .collect();
    assert_eq!(visits, Visits::Two.times());
}

#[test]
fn without_a_weight_or_a_hay_the_plan_says_what_is_missing() {
    let no_weight = does(&small_pony(), &Act::Remove(RecordId("weight".into())), NOW);
    assert_eq!(
        seen(&no_weight, NOW).outcome,
        Outcome::Nothing(PlanError::NoWeight)
    );
    let no_hay = does(&small_pony(), &Act::Remove(RecordId("lot".into())), NOW);
    assert_eq!(
        seen(&no_hay, NOW).outcome,
        Outcome::Nothing(PlanError::NoForage)
    );
    assert!(plan(&no_hay, &AnimalId("nobody".into()), NOW, &Utc).is_none());
}

#[test]
fn a_minute_later_it_reads_the_same_and_a_day_later_it_does_not() {
    let shelf = small_pony();
    let view = seen(&shelf, NOW);
    let minute = seen(&shelf, Instant::from_ms(NOW.to_ms() + 60_000));
    assert!(view != minute && view.reads_as(&minute));
    let tomorrow = seen(&shelf, later(1));
    assert!(!view.reads_as(&tomorrow));
    // What is issued begins on the day it is worked out for.
    let issued = |view: &PlanView| match view.use_it(&RecordId("p".into())) {
        Some(Ok(Act::Add(New {
            body: Body::Plan(body),
            ..
        }))) => body.from,
        other => panic!("{other:?}"),
    };
    assert_eq!(issued(&view), day());
    assert_eq!(issued(&tomorrow), day().succ_opt().unwrap());
}
