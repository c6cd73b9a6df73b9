//! The next step from records that the form of six answers and the forms beside an animal wrote.

use super::*;
use crate::acts::{Act, New, apply};
use crate::forms::left_of_lot::{self, In};
use crate::forms::look_over::body as looked_over;
use crate::forms::start::{Answers, Ever, Ids, Named, Sort};
use crate::views::look_back::look_back;
use crate::views::plan::{Offer as PlanOffer, Outcome, PlanView, plan, plan_at};
use crate::views::test_yard::{at, context, written, zone};
use crate::words::English;
use tussock_core::animal::{Answer, Goal, GroupId, Laminitis, YardId};
use tussock_core::assess::{Reading, Ribs, ScaleInstrument, ScaleWeight};
use tussock_core::forage::ForageClass;
use tussock_core::log::bodies::WeightV1;
use tussock_core::log::bodies::base::BodyHundredths;
use tussock_core::log::{Body, Difference, Known, Subject};
use tussock_core::plan::Signs;
use tussock_core::progress::{Changed, NotLogged};
use tussock_core::sources::RecordId;
use tussock_core::units::{BodyMass, PartOfBody};

fn id() -> AnimalId {
    AnimalId("bramble".into())
}

fn record(id: &str) -> RecordId {
    RecordId(id.to_owned())
}

/// A fat pony that was never laminitic, with its first plan in use since the fifth of May.
fn with_a_plan() -> Shelf {
    let answers = Answers {
        name: "Bramble".into(),
        sort: Some(Sort::Pony),
        age: "12".into(),
        girth: "162".into(),
        ribs: Some(Ribs::NotFelt),
        ever: Some(Ever::No),
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
        sort: "Pony".into(),
    };
    let day = zone().to_local(at(0)).date;
    let act = answers.act(&ids, &named, day).unwrap();
    let shelf = written(&Shelf::default(), &act, at(0));
    let use_it = plan(&shelf, &id(), at(0), &zone())
        .unwrap()
        .use_it(&record("plan"));
    written(&shelf, &use_it.unwrap().unwrap(), at(0))
}

fn add(shelf: &Shelf, id_of: &str, body: Body, day: i64) -> Shelf {
    let act = Act::Add(New {
        id: record(id_of),
        subject: Subject::animal(&id()),
        at: None,
        known: Known::Seen,
        body,
    });
    written(shelf, &act, at(day))
}

fn weighed(shelf: &Shelf, id_of: &str, kg: f64, day: i64) -> Shelf {
    let reading = Reading::Scale(ScaleWeight {
        mass: BodyMass::kg(kg),
        instrument: ScaleInstrument::AnimalScale,
    });
    let body = Body::Weight(WeightV1::of(&reading).unwrap());
    add(shelf, id_of, body, day)
}

fn seen(shelf: &Shelf, day: i64) -> NextStep {
    next_step(shelf, None, &id(), at(day), &zone()).unwrap()
}

fn planned(shelf: &Shelf, asked: Option<f64>, day: i64) -> PlanView {
    let asked = asked.map(PartOfBody::percent);
    plan_at(shelf, &id(), asked, at(day), &zone()).unwrap()
}

#[test]
fn a_new_animal_settles_and_only_what_protects_it_may_be_chosen() {
    let view = seen(&with_a_plan(), 3);
    assert_eq!(view.decision.step, Step::Keep);
    assert_eq!((view.animal.phase, view.phase_day), (Phase::New, 4));
    assert_eq!(view.stands(), Stands::KeepOn);
    assert_eq!(view.first(), Offer::GoOn);
    assert_eq!(view.proposal, None);
    let open: Vec<Phase> = view
        .others
        .iter()
        .filter(|(_, why_not)| why_not.is_none())
        .map(|(phase, _)| *phase)
        .collect();
    assert_eq!(
        open,
        [Phase::NeedsWeight, Phase::Episode, Phase::OtherHands]
    );
    assert!(view.take(Phase::Losing).is_none());
    let thin = view.take(Phase::NeedsWeight).unwrap();
    let thin = seen(&written(&with_a_plan(), &thin, at(3)), 3);
    assert_eq!(thin.animal.goal, Goal::Gain, "as the phase wants it");
    assert!(!view.looks_back() && !view.needs_the_vet());
    assert!(!view.sources(&English::default()).is_empty());
}

#[test]
fn after_a_fortnight_and_two_weighings_losing_is_proposed_taken_and_undone() {
    let shelf = with_a_plan();
    assert_eq!(seen(&shelf, 14).first(), Offer::Weigh);
    let shelf = weighed(&shelf, "w2", 330.0, 14);
    let view = seen(&shelf, 14);
    assert_eq!(view.decision.step, Step::DecidePhase { to: Phase::Losing });
    assert_eq!(view.first(), Offer::Take(Phase::Losing));
    assert_eq!(view.stands(), Stands::Due);
    assert!(!view.because().is_empty());
    assert!(view.others.iter().all(|(phase, _)| *phase != Phase::Losing));
    let act = view.take(Phase::Losing).unwrap();
    let outcome = apply(&act, &shelf, &context(&shelf, at(14)), None).unwrap();
    let after = written(&shelf, &act, at(14));
    let now = seen(&after, 14);
    assert_eq!((now.animal.phase, now.phase_day), (Phase::Losing, 1));
    assert_eq!(now.animal.goal, Goal::Lose);
    assert_eq!(now.facts.phase_before, Some(Phase::New));
    assert_eq!(now.proposal, None);
    let back = seen(&written(&after, &Act::Undo(outcome.saved), at(14)), 14);
    assert_eq!((back.animal.phase, back.since), (Phase::New, view.since));
    assert_eq!(back.first(), Offer::Take(Phase::Losing));
}

#[test]
fn other_hands_give_it_back_to_the_phase_it_came_from() {
    let shelf = with_a_plan();
    let act = seen(&shelf, 2).take(Phase::OtherHands).unwrap();
    let view = seen(&written(&shelf, &act, at(2)), 5);
    assert_eq!(view.animal.goal, Goal::Lose, "as it was");
    assert_eq!(view.decision.step, Step::Keep);
    assert!(view.take(Phase::New).is_some());
    assert!(view.take(Phase::Losing).is_none());
}

#[test]
fn what_stops_it_goes_before_everything() {
    let pulse = Body::LookOver(looked_over(&Signs {
        strong_pulse: Answer::Yes,
        ..Signs::default()
    }));
    let shelf = weighed(&with_a_plan(), "w2", 330.0, 14);
    let view = seen(&add(&shelf, "look", pulse, 14), 14);
    assert!(matches!(view.stop, Some(Stop::Vet(..))));
    assert_eq!(view.first(), Offer::LookOver);
    assert_eq!(view.stands(), Stands::Vet);
    assert!(view.needs_the_vet());
    assert_eq!(view.proposal, None);
    assert_eq!(view.rings_by_weight(), None, "one block a screen");
    assert!(view.take(Phase::Losing).is_none());
    assert!(view.take(Phase::Episode).is_some());
}

/// The shelf after it was said to have laminitis.
fn laminitic(shelf: &Shelf, day: i64) -> Shelf {
    let mut body = details::held(shelf, &id()).unwrap();
    body.health.laminitis = Laminitis::Active;
    body.phase = Phase::Episode;
    let act = Act::Change {
        id: record("bramble"),
        body: Body::Animal(body),
        at: None,
    };
    written(shelf, &act, at(day))
}

#[test]
fn an_episode_is_looked_back_on_by_day_and_what_nobody_logged_is_named() {
    let shelf = weighed(&with_a_plan(), "w2", 330.0, 9);
    let before = look_back(&shelf, &id(), at(20), &zone()).unwrap();
    assert_eq!(before.back, None);
    let warm = Body::LookOver(looked_over(&Signs {
        warm_hoof: Answer::Yes,
        ..Signs::default()
    }));
    let shelf = laminitic(&add(&shelf, "look", warm, 18), 20);
    let view = seen(&shelf, 20);
    assert!(view.looks_back() && view.needs_the_vet());
    assert_eq!(view.first(), Offer::LookOver);
    let back = look_back(&shelf, &id(), at(20), &zone())
        .unwrap()
        .back
        .unwrap();
    assert_eq!(back.began, zone().to_local(at(20)).date);
    let days: Vec<LocalDate> = back.days.iter().map(|day| day.day).collect();
    let mut sorted = days.clone();
    sorted.sort_by_key(|day| std::cmp::Reverse(*day));
    sorted.dedup();
    assert_eq!(days, sorted, "each day once, the latest first");
    assert_eq!(back.days[0].what, [Changed::EarlySign]);
    let first = back.days.last().unwrap();
    assert!(
        first
            .what
            .iter()
            .any(|what| matches!(what, Changed::PlanIssued { before: None, .. })),
        "{first:?}"
    );
    for missing in [NotLogged::Grass, NotLogged::Work] {
        assert!(back.not_logged.contains(&missing), "{missing:?}");
    }
}

#[test]
fn a_weight_that_came_in_is_named_and_changes_nothing_before_the_review() {
    let shelf = with_a_plan();
    let same = planned(&shelf, None, 3);
    assert_eq!(same.accepted.unwrap().differs, []);
    let shelf = weighed(&shelf, "w2", 380.0, 3);
    let view = planned(&shelf, None, 3);
    let accepted = view.accepted.as_ref().unwrap();
    let about = |test: fn(&Difference) -> bool| accepted.differs.iter().any(|one| test(&one.what));
    assert!(about(|what| matches!(what, Difference::Weight { .. })));
    let hay = accepted
        .differs
        .iter()
        .find(|one| matches!(one.what, Difference::Hay { .. }));
    assert_eq!(hay.unwrap().name.as_deref(), Some("Grass hay"));
    assert!(view.follows().is_some(), "the plan in use stays");
    assert_eq!(view.first(), PlanOffer::GoOn);
}

#[test]
fn more_that_is_asked_for_is_used_at_once_and_less_waits_for_the_review() {
    let shelf = with_a_plan();
    let more = planned(&shelf, Some(2.3), 3);
    let accepted = more.accepted.as_ref().unwrap();
    assert!(accepted.would_differ && accepted.holds);
    assert!(matches!(more.outcome, Outcome::Allowed(_)));
    assert!(more.raises() && more.follows().is_none());
    assert_eq!(more.first(), PlanOffer::Use);
    let less = planned(&shelf, Some(1.25), 3);
    assert!(!less.raises());
    assert_eq!(less.first(), PlanOffer::GoOn);
    // What is asked for is judged as ever: a new animal is not given less.
    let Outcome::Allowed(plan) = &less.outcome else {
        panic!("a plan")
    };
    assert!(!plan.planned().allowance.is_restriction());
}

#[test]
fn a_plan_whose_review_has_come_is_renewed() {
    let shelf = weighed(&with_a_plan(), "w2", 330.0, 14);
    let act = seen(&shelf, 14).take(Phase::Losing).unwrap();
    let view = seen(&written(&shelf, &act, at(14)), 15);
    assert_eq!(view.decision.step, Step::Keep);
    assert!(view.review_is_due());
    assert_eq!((view.stands(), view.first()), (Stands::Due, Offer::Plan));
}

#[test]
fn how_long_its_hay_lasts_is_known_once_somebody_counted_it() {
    let shelf = with_a_plan();
    let lasts = |shelf: &Shelf| hay_lasts(shelf, shelf, &id(), at(0), &zone());
    assert_eq!(lasts(&shelf), None);
    let act = left_of_lot::count(&LotId("lot".into()), Some(In::Weight), "400", "count");
    let days = lasts(&written(&shelf, &act.unwrap(), at(0))).unwrap();
    assert!((50..120).contains(&days), "{days}");
}

#[test]
fn a_member_of_a_group_goes_by_its_groups_plan() {
    let mut view = seen(&weighed(&with_a_plan(), "w2", 330.0, 14), 14);
    view.fed_with = Some(Group {
        id: GroupId("field".into()),
        name: "Top field".into(),
        members: Vec::new(),
    });
    view.decision.step = Step::StepDown {
        to: PartOfBody::percent(1.25),
    };
    assert_eq!(view.first(), Offer::SeeGroup(GroupId("field".into())));
    view.fed_with = None;
    let level = BodyHundredths::new(125).unwrap();
    assert_eq!(view.first(), Offer::PlanAt(level));
    view.decision.when = When::AtReview(view.today);
    assert_eq!(view.first(), Offer::GoOn);
}
