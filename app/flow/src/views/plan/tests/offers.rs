//! The plan in use beside the plan of today, and what the screen offers.

use super::*;
use tussock_core::animal::{Laminitis, State, VetFlag};
use tussock_core::log::bodies::{AnimalV2, WeightV1};

/// A pony with its plan in use since the first day, and the day of the review.
fn with_plan() -> (Shelf, i64) {
    let shelf = small_pony();
    let act = seen(&shelf, NOW).use_it(&RecordId("plan".into()));
    let shelf = does(&shelf, &act.unwrap().unwrap(), NOW);
    let review = seen(&shelf, NOW).accepted.unwrap().review;
    (shelf, (review - day()).num_days())
}

/// The shelf with the pony's own record changed.
fn changed(shelf: &Shelf, now: Instant, change: impl FnOnce(&mut AnimalV2)) -> Shelf {
    let Ok(Body::Animal(mut body)) = Body::read(shelf.get("bramble").unwrap()) else {
        panic!("an animal")
    };
    change(&mut body);
    let act = Act::Change {
        id: RecordId("bramble".into()),
        body: Body::Animal(body),
        at: None,
    };
    does(shelf, &act, now)
}

/// The shelf with a lighter girth, taped on a day.
fn taped(shelf: &Shelf, now: Instant) -> Shelf {
    let girth = tussock_core::units::Length::cm(126.0);
    let reading = tussock_core::assess::Reading::Tape(tussock_core::assess::Tape::girth(girth));
    let act = Act::Add(New {
        id: RecordId("lighter".into()),
        subject: Subject::animal(&id()),
        at: None,
        known: Known::Seen,
        body: Body::Weight(WeightV1::of(&reading).unwrap()),
    });
    does(shelf, &act, now)
}

#[test]
fn at_its_review_a_plan_that_stays_the_same_is_used_anew() {
    let (shelf, days) = with_plan();
    let before = seen(&shelf, later(days - 1));
    assert!(!before.review_is_due() && before.follows().is_none());
    assert_eq!(before.first(), Offer::GoOn);
    let due = seen(&shelf, later(days));
    assert!(!due.accepted.as_ref().unwrap().would_differ);
    assert_eq!((due.review_is_due(), due.first()), (true, Offer::Use));
    let act = due.use_it(&RecordId("next".into())).unwrap().unwrap();
    let next = seen(&does(&shelf, &act, later(days)), later(days));
    assert_eq!((next.review_is_due(), next.first()), (false, Offer::GoOn));
}

#[test]
fn a_weight_that_comes_in_changes_nothing_before_the_review() {
    let (shelf, days) = with_plan();
    let shelf = taped(&shelf, later(3));
    let view = seen(&shelf, later(3));
    let followed = view.follows().expect("the plan in use is followed");
    assert!(followed.would_differ && followed.holds);
    // What it feeds is what was issued, and not what would come out today.
    let issued = match Body::read(shelf.get("plan").unwrap()) {
        Ok(Body::Plan(plan)) => plan,
        other => panic!("{other:?}"),
    };
    let hay = issued.amounts[0].as_fed_g.as_fed();
    assert_eq!(followed.hays[0].as_fed, hay);
    assert_eq!(followed.hays[0].name, "Grass hay");
    assert_eq!(followed.nets.len(), issued.nets.len());
    assert_eq!(view.first(), Offer::GoOn);
    assert_eq!(view.beside(), [Offer::UseBeforeReview, Offer::VetsWord]);
    let due = seen(&shelf, later(days));
    assert!(due.follows().is_none());
    assert_eq!(
        (due.first(), due.beside()),
        (Offer::Use, vec![Offer::VetsWord])
    );
}

#[test]
fn a_plan_that_cannot_be_fed_or_that_the_vet_spoke_after_is_not_followed() {
    let (shelf, _) = with_plan();
    // Nobody comes when its nets hang.
    let hour = |hour| LocalTime::from_hms_opt(hour, 0, 0).unwrap();
    let other = Act::Change {
        id: RecordId("visits".into()),
        body: Body::Visits(tussock_core::log::bodies::VisitsV1 {
            times: vec![hour(9), hour(20)],
            from: None,
        }),
        at: None,
    };
    let view = seen(&does(&shelf, &other, later(1)), later(1));
    assert!(view.follows().is_none());
    assert_eq!(view.first(), Offer::Use);
    // A word of the vet came after it.
    let said = vet::Typed {
        about: Some(VetScope::LowestLevel),
        percent: "1.4".into(),
        vet: "A. Marsh".into(),
        how: "By telephone".into(),
        ..vet::Typed::default()
    };
    let today = Utc.to_local(later(1)).date;
    let act = said.act(&id(), today, &RecordId("word".into())).unwrap();
    let view = seen(&does(&taped(&shelf, later(1)), &act, later(1)), later(1));
    assert!(!view.accepted.as_ref().unwrap().holds && view.follows().is_none());
    assert_eq!(view.first(), Offer::Use);
}

#[test]
fn the_vets_word_is_in_reach_of_every_plan_and_first_only_where_it_lifts_the_refusal() {
    let first = |change: fn(&mut AnimalV2)| {
        let view = seen(&changed(&small_pony(), NOW, change), NOW);
        assert!(matches!(view.outcome, Outcome::Refused(_)));
        let reached = view.first() == Offer::VetsWord || view.beside().contains(&Offer::VetsWord);
        assert!(reached);
        view.first()
    };
    let grain = first(|body| body.health.flags.push(VetFlag::GotAtGrain { at: NOW }));
    assert_eq!(grain, Offer::LookOver);
    assert_eq!(
        first(|body| body.health.flags.push(VetFlag::Sick)),
        Offer::LookOver
    );
    assert_eq!(first(|body| body.state = State::Growing), Offer::Details);
    assert_eq!(first(|body| body.state = State::Pregnant), Offer::Details);
    assert_eq!(
        first(|body| body.health.laminitis = Laminitis::Active),
        Offer::VetsWord
    );
    let view = seen(&small_pony(), NOW);
    assert_eq!(
        (view.first(), view.beside()),
        (Offer::Use, vec![Offer::VetsWord])
    );
    let no_weight = does(&small_pony(), &Act::Remove(RecordId("weight".into())), NOW);
    let view = seen(&no_weight, NOW);
    assert_eq!(
        (view.first(), view.beside()),
        (Offer::Weigh, vec![Offer::VetsWord])
    );
}

#[test]
fn visits_that_stand_in_and_visits_at_which_no_net_fits_lead_to_the_times() {
    let none = does(&small_pony(), &Act::Remove(RecordId("visits".into())), NOW);
    let view = seen(&none, NOW);
    assert_eq!(view.beside(), [Offer::VetsWord, Offer::Visits]);
    let one = Act::Change {
        id: RecordId("visits".into()),
        body: Body::Visits(tussock_core::log::bodies::VisitsV1 {
            times: Visits::One.times(),
            from: None,
        }),
        at: None,
    };
    let view = seen(&does(&small_pony(), &one, NOW), NOW);
    assert!(matches!(view.outcome, Outcome::Nothing(PlanError::Day(_))));
    assert_eq!(
        (view.first(), view.beside()),
        (Offer::Visits, vec![Offer::VetsWord])
    );
}
