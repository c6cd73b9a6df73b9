//! A visit as it goes: begun, broken off, gone on with, ended; and the next one, which says first what changed.

use super::report::report;
use super::since::{Change, YardChange, since};
use super::*;
use crate::forms::condition::{Scorer, act as condition_act, crest_act};
use crate::forms::yard_visit::{NoAnimal, as_before, end, start};
use crate::views::test_yard::{add, animal, at, shelf_of, written, zone};
use crate::words::{English, YardVisitWords};
use tussock_core::animal::{Answer, YardId};
use tussock_core::assess::{ConditionScale, Crest, Reading, ScaleInstrument, ScaleWeight};
use tussock_core::log::bodies::WeightV1;
use tussock_core::log::{Known, Subject};
use tussock_core::plan::Signs;
use tussock_core::units::{BodyMass, Span};

fn id(name: &str) -> AnimalId {
    AnimalId(name.to_owned())
}

fn new(record: &str, about: Subject, body: Body) -> crate::acts::Act {
    crate::acts::Act::Add(crate::acts::New {
        id: RecordId(record.to_owned()),
        subject: about,
        at: None,
        known: Known::Seen,
        body,
    })
}

fn on_scale(record: &str, of: &str, kg: f64) -> crate::acts::Act {
    let reading = Reading::Scale(ScaleWeight {
        mass: BodyMass::kg(kg),
        instrument: ScaleInstrument::AnimalScale,
    });
    let body = Body::Weight(WeightV1::of(&reading).unwrap());
    new(record, Subject::animal(&id(of)), body)
}

fn looked(record: &str, of: &str, signs: Signs) -> crate::acts::Act {
    let body = Body::LookOver(crate::forms::look_over::body(&signs));
    new(record, Subject::animal(&id(of)), body)
}

fn all_normal() -> Signs {
    let mut signs = Signs::default();
    for sign in crate::words::Sign::ALL {
        sign.answer(&mut signs, Answer::No);
    }
    signs
}

fn scored(record: &str, of: &str, score: f64) -> crate::acts::Act {
    let sites: Vec<_> = ConditionScale::NineStep
        .sites()
        .iter()
        .map(|site| (*site, score))
        .collect();
    let nine = ConditionScale::NineStep;
    let yard = YardId("y".into());
    condition_act(&id(of), nine, &sites, &Scorer::NotSaid, &yard, record).unwrap()
}

/// A yard with two ponies and a visit to both that began on a day of May at noon.
fn begun(day: i64) -> Shelf {
    let yard = shelf_of(&[
        add("bramble", &animal("bramble"), 0),
        add("moss", &animal("moss"), 0),
    ]);
    let act = start(&YardId("y".into()), &[id("bramble"), id("moss")], "v1").unwrap();
    written(&yard, &act, at(day))
}

fn minutes(day: i64, minutes: i64) -> Instant {
    at(day) + Span::minutes(minutes)
}

#[test]
fn nobody_to_see_is_no_visit() {
    assert_eq!(start(&YardId("y".into()), &[], "v1"), Err(NoAnimal));
    assert_eq!(under_way(&begun(1), at(0)), None);
}

#[test]
fn a_visit_that_is_left_goes_on_where_it_was() {
    let shelf = begun(1);
    let now = underway(&shelf, minutes(1, 1), &zone()).unwrap();
    assert_eq!(now.seen_of(), (0, 2));
    assert_eq!(
        now.next(),
        Next::Step(id("bramble"), "bramble".into(), Task::Weigh)
    );
    // Weighed and scored; then the telephone rings, and the phone is taken up again an hour later.
    let shelf = written(&shelf, &on_scale("w1", "bramble", 305.0), minutes(1, 2));
    let shelf = written(&shelf, &scored("c1", "bramble", 7.0), minutes(1, 4));
    let later = underway(&shelf, minutes(1, 64), &zone()).unwrap();
    let bramble = later.animal(&id("bramble")).unwrap();
    assert_eq!(bramble.done, [Task::Weigh, Task::Condition]);
    assert_eq!(
        later.next(),
        Next::Step(id("bramble"), "bramble".into(), Task::Crest)
    );
    assert_eq!(bramble.standing(Task::Weigh, Standing::Due), Standing::Done);
    assert_eq!(bramble.standing(Task::Crest, Standing::Done), Standing::Due);
}

#[test]
fn what_was_measured_before_the_visit_is_due_in_it() {
    let yard = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let yard = written(&yard, &on_scale("w0", "moss", 320.0), at(0));
    let act = start(&YardId("y".into()), &[id("moss")], "v1").unwrap();
    let shelf = written(&yard, &act, at(1));
    let visit = underway(&shelf, minutes(1, 1), &zone()).unwrap();
    assert!(
        visit
            .animal(&id("moss"))
            .unwrap()
            .open
            .contains(&Task::Weigh)
    );
}

#[test]
fn what_the_animals_share_is_asked_once() {
    let shelf = begun(1);
    let visit = underway(&shelf, minutes(1, 1), &zone()).unwrap();
    assert_eq!(visit.open_facts(), SharedFact::ALL);
    let act = as_before(&visit.held, &visit.open_facts());
    let shelf = written(&shelf, &act, minutes(1, 2));
    let visit = underway(&shelf, minutes(1, 3), &zone()).unwrap();
    assert_eq!(visit.open_facts(), []);
    // Times that are written down anew are no longer as before.
    let times = Body::Visits(tussock_core::log::bodies::VisitsV1 {
        times: vec!["07:00".parse::<tussock_core::units::LocalTime>().unwrap()],
        from: None,
    });
    let act = new("t1", Subject::yard(&YardId("y".into())), times);
    let shelf = written(&shelf, &act, minutes(1, 5));
    let visit = underway(&shelf, minutes(1, 6), &zone()).unwrap();
    let state = |fact| visit.facts.iter().find(|(of, _)| *of == fact).unwrap().1;
    assert_eq!(state(SharedFact::Visits), FactState::Changed);
    assert_eq!(state(SharedFact::Hay), FactState::AsBefore);
}

/// Bramble seen whole, Moss only weighed.
fn walked(shelf: &Shelf, day: i64, tag: &str, kg: f64, score: f64) -> Shelf {
    let named = |what: &str| format!("{what}-{tag}");
    let shelf = written(
        shelf,
        &on_scale(&named("w"), "bramble", kg),
        minutes(day, 2),
    );
    let shelf = written(
        &shelf,
        &scored(&named("c"), "bramble", score),
        minutes(day, 5),
    );
    let crest = crest_act(&id("bramble"), Crest::new(3).unwrap(), &named("k"));
    let shelf = written(&shelf, &crest, minutes(day, 6));
    let look = looked(&named("l"), "bramble", all_normal());
    let shelf = written(&shelf, &look, minutes(day, 7));
    written(
        &shelf,
        &on_scale(&named("m"), "moss", 240.0),
        minutes(day, 9),
    )
}

#[test]
fn the_next_visit_says_first_what_changed() {
    let shelf = walked(&begun(1), 1, "a", 320.0, 7.5);
    let visit = under_way(&shelf, minutes(1, 20)).unwrap();
    assert_eq!(since(&shelf, &visit, minutes(1, 20), &zone()), None);
    let shelf = written(
        &shelf,
        &end(&visit, "Visit.\n", minutes(1, 21)),
        minutes(1, 21),
    );
    assert_eq!(under_way(&shelf, minutes(1, 22)), None);
    let over = before(&shelf, minutes(1, 22)).unwrap();
    assert_eq!(over.body.report.as_deref(), Some("Visit."));

    let act = start(&YardId("y".into()), &[id("bramble"), id("moss")], "v2").unwrap();
    let shelf = written(&shelf, &act, at(29));
    let shelf = walked(&shelf, 29, "b", 305.0, 7.0);
    let visit = under_way(&shelf, minutes(29, 20)).unwrap();
    let changed = since(&shelf, &visit, minutes(29, 20), &zone()).unwrap();
    assert_eq!(changed.ended, minutes(1, 21));
    let (name, of_bramble) = changed.animals.first().unwrap();
    assert_eq!(name, "bramble");
    let weight = of_bramble.iter().find_map(|change| match change {
        Change::Weight {
            before: Some(before),
            now,
        } => Some((before.weight.value, now.weight.value)),
        _ => None,
    });
    assert_eq!(weight, Some((BodyMass::kg(320.0), BodyMass::kg(305.0))));
    assert!(
        of_bramble
            .iter()
            .any(|change| matches!(change, Change::Condition { .. }))
    );
    assert!(
        !of_bramble
            .iter()
            .any(|change| matches!(change, Change::Crest { .. }))
    );
    assert_eq!(changed.yard, Vec::<YardChange>::new());
}

#[test]
fn the_report_names_what_was_measured_and_what_was_not_done() {
    let shelf = walked(&begun(1), 1, "a", 320.0, 7.5);
    let (visit, of) = report(&shelf, minutes(1, 20), &zone()).unwrap();
    assert_eq!(visit.seen_of(), (0, 2), "a first plan is still to be made");
    let words = English::default();
    let text = words.draft_report(&of);
    for said in [
        "Visit of 6 May 2026",
        "bramble\nWeight 320 kg, give or take",
        "condition 7.5 of 9; crest 3 of 5.",
        "Look-over: No signs seen.",
        "No plan is in use.",
        "Not done this time: condition, crest, look-over and plan.",
        "Ring the vet the same day",
        "no basis for the dose of a medicine",
    ] {
        assert!(text.contains(said), "{said} in {text}");
    }
}

#[test]
fn an_animal_that_is_stopped_is_named_first_in_its_paragraph() {
    let mut signs = all_normal();
    signs.strong_pulse = Answer::Yes;
    let shelf = written(&begun(1), &looked("l", "moss", signs), minutes(1, 3));
    let (_, of) = report(&shelf, minutes(1, 5), &zone()).unwrap();
    let text = English::default().draft_report(&of);
    assert!(
        text.contains("moss\nStop grazing and work. Soft bed. Vet today"),
        "{text}"
    );
}
