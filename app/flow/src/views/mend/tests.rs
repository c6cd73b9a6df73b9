//! Mends of the rations of the invented yard.

use super::{Asks, Found, Made, MendView, Outcome, keys, mend_of, use_it};
use crate::acts::{Context, apply};
use crate::example;
use crate::shelf::Shelf;
use crate::words::{English, MendReasonWords, MendWords, RationWords};
use tussock_core::animal::{AnimalId, FoodId, YardId};
use tussock_core::log::{Body, DeviceId, Kind, Subject};
use tussock_core::ration::FoodClass;
use tussock_core::ration::mend::Aim;
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Instant, Span, Zone};

struct Utc;

impl Zone for Utc {
    fn offset_min(&self, _: Instant) -> i32 {
        0
    }
}

const NOW: Instant = Instant::from_ms(1_777_960_800_000);

fn context(now: Instant) -> Context {
    Context {
        now,
        offset_min: 0,
        zone: "UTC".into(),
        yard: YardId("yard".into()),
        by: None,
        device: DeviceId::of_number(7),
        last: None,
    }
}

fn invented() -> Shelf {
    let act = example::yard(&YardId("yard".into()), NOW).unwrap();
    let outcome = apply(&act, &Shelf::default(), &context(NOW), None).unwrap();
    Shelf::of(outcome.writes.rows)
}

fn id(name: &str) -> AnimalId {
    AnimalId(name.to_owned())
}

fn seen(shelf: &Shelf, animal: &str, asks: &Asks) -> MendView {
    match mend_of(shelf, &id(animal), asks, NOW, &Utc) {
        Some(Outcome::Shown(view)) => *view,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_pony_that_loses_is_offered_minerals_and_no_pulp() {
    let shelf = invented();
    let view = seen(&shelf, "bramble", &Asks::default());
    assert_eq!(view.aim, Aim::Cheapest);
    let Found::Rations { proposals, proven } = &view.found else {
        panic!("{:?}", view.found);
    };
    assert!(proven);
    let first = &proposals[0];
    let classes: Vec<FoodClass> = first
        .ration
        .foods
        .iter()
        .map(|given| given.of.food.class)
        .collect();
    assert!(classes.contains(&FoodClass::MineralMix), "{classes:?}");
    assert!(!classes.contains(&FoodClass::Fibre));
    assert!(first.balance.counts().over == 0 && first.balance.counts().short == 0);
    // Whole scoops of forty grams.
    for given in &first.ration.foods {
        if let Some(scoop) = given.of.scoop {
            let scoops = given.a_day.to_kg() / scoop.to_kg();
            assert!((scoops - scoops.round()).abs() < 1e-9, "{scoops}");
        }
    }
    assert_eq!(
        first.slip.bought_a_day.is_some(),
        first
            .ration
            .foods
            .iter()
            .all(|given| given.of.price.is_some())
            && view.now.foods.iter().all(|given| given.of.price.is_some())
    );
}

#[test]
fn what_is_set_by_hand_stays_as_it_is_set() {
    let shelf = invented();
    let asks = Asks {
        set: vec![("pulp".to_owned(), AsFed::kg(0.3))],
        ..Asks::default()
    };
    let view = seen(&shelf, "bramble", &asks);
    let given = view
        .proposal(0)
        .unwrap()
        .ration
        .foods
        .iter()
        .find(|given| given.of.food.class == FoodClass::Fibre)
        .map(|given| given.a_day);
    assert_eq!(given, Some(AsFed::kg(0.3)));
    assert!(keys(&shelf, &id("bramble"), NOW, &Utc).contains(&"pulp".to_owned()));
}

#[test]
fn a_used_ration_is_what_the_next_plan_is_made_with() {
    let mut shelf = invented();
    let asks = Asks {
        typical_too: true,
        aim: Some(Aim::FewestFoods),
        ..Asks::default()
    };
    let view = seen(&shelf, "bramble", &asks);
    let proposal = view.proposal(0).unwrap().clone();
    let words = English::default();
    let yard = Subject::yard(&YardId("yard".into()));
    let made = Made {
        ration: RecordId("ration-1".into()),
        food: &|typical| FoodId(format!("food-{}", typical.key())),
        yard: &yard,
        name: &|typical| words.typical_food(typical).to_owned(),
        by_hand: false,
    };
    let act = use_it(&view, &proposal, &made).unwrap();
    let later = NOW + Span::hours(1);
    let outcome = apply(&act, &shelf, &context(later), None).unwrap();
    for row in outcome.writes.rows {
        for record in Shelf::of([row]).versions() {
            shelf.put(record.clone());
        }
    }
    assert_eq!(shelf.of_kind(&Kind::Ration).len(), 1);
    let again = match mend_of(&shelf, &id("bramble"), &asks, later, &Utc) {
        Some(Outcome::Shown(view)) => *view,
        other => panic!("{other:?}"),
    };
    let amounts = |foods: &[tussock_core::log::GivenFood]| -> Vec<AsFed> {
        foods.iter().map(|given| given.a_day).collect()
    };
    assert_eq!(amounts(&again.now.foods), amounts(&proposal.ration.foods));
    let Ok(Body::Ration(_)) = Body::read(shelf.get("ration-1").unwrap()) else {
        panic!("a ration");
    };
}

#[test]
fn everything_that_can_come_is_worded() {
    let shelf = invented();
    let words = English::default();
    for animal in ["bramble", "moss", "fern"] {
        for aim in [Aim::Cheapest, Aim::FewestFoods, Aim::Lightest] {
            for typical_too in [false, true] {
                for at_most in [None, Some(1)] {
                    let asks = Asks {
                        aim: Some(aim),
                        typical_too,
                        at_most,
                        set: Vec::new(),
                    };
                    let view = seen(&shelf, animal, &asks);
                    assert!(!words.mend_sentence(&view, 0).is_empty());
                    match &view.found {
                        Found::Rations { proposals, .. } => {
                            for proposal in proposals {
                                for decides in &proposal.mended.decides {
                                    assert!(!words.decides(&view, decides)[0].is_empty());
                                }
                                assert!(!words.set_of_foods(&view, proposal)[0].is_empty());
                            }
                        }
                        Found::Nothing(closest) => {
                            assert!(!closest.missed.is_empty());
                            for by in &closest.mends {
                                assert!(!words.mended_by(&view, by).is_empty());
                            }
                        }
                        Found::NotKnown | Found::Failed(_) => panic!("{animal}: {:?}", view.found),
                    }
                }
            }
        }
    }
}
