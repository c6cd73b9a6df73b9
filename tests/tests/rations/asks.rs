//! What a person may ask of a mend: few foods, other foods, only what has a price.

use crate::cases::{REST, keeps_everything};
use crate::stall::{Stall, typical, untested};
use tussock_core::animal::Kind;
use tussock_core::forage::ForageClass;
use tussock_core::ration::TypicalFood;
use tussock_core::ration::mend::{Aim, Mended, Mends, next_mends};

/// Whoever wants few bags gets no more than the cheapest ration has, and whoever allows one food gets one.
#[test]
fn fewest_foods_are_no_more_than_the_cheapest_has() {
    let room = || {
        vec![
            typical(TypicalFood::Balancer, 400.0),
            typical(TypicalFood::Salt, 45.0),
            typical(TypicalFood::CopperSulphate, 300.0),
            typical(TypicalFood::ZincSulphate, 300.0),
            typical(TypicalFood::VitaminE, 900.0),
            typical(TypicalFood::SeleniumYeast, 900.0),
        ]
    };
    let stall = |aim| Stall {
        hays: vec![untested(ForageClass::Grass, 22.0)],
        foods: room(),
        aim,
        ..Stall::grown(Kind::Horse, 500.0, REST)
    };
    let bags = |aim| {
        let stall = stall(aim);
        let (mended, whole) = stall.signed();
        keeps_everything(&whole);
        mended.foods.iter().filter(|fed| fed.to_kg() > 0.0).count()
    };
    assert!(bags(Aim::FewestFoods) <= bags(Aim::Cheapest));
    assert!(bags(Aim::FewestFoods) <= bags(Aim::Lightest));
}

/// The next sets cost no less than the first, and none is the same foods.
#[test]
fn the_next_sets_are_other_foods_and_cost_no_less() {
    let stall = Stall {
        hays: vec![untested(ForageClass::Grass, 22.0)],
        foods: vec![
            typical(TypicalFood::Balancer, 160.0),
            typical(TypicalFood::Salt, 45.0),
            typical(TypicalFood::CopperSulphate, 300.0),
            typical(TypicalFood::ZincSulphate, 300.0),
            typical(TypicalFood::VitaminE, 900.0),
            typical(TypicalFood::LowSugarFeed, 60.0),
        ],
        ..Stall::grown(Kind::Horse, 500.0, REST)
    };
    let (first, _) = stall.signed();
    let next = next_mends(&stall.wanted(), &stall.forages(), &stall.choices(), 3).expect("sets");
    assert!(!next.is_empty());
    let used = |mended: &Mended| -> Vec<bool> {
        mended.foods.iter().map(|fed| fed.to_kg() > 0.0).collect()
    };
    let cost = |mended: &Mended| mended.cost.expect("prices");
    for one in &next {
        assert_ne!(used(one), used(&first));
        // A step of ten grams of each is what rounding may give back.
        assert!(
            cost(one) >= cost(&first) - 10.0,
            "{} {}",
            cost(one),
            cost(&first)
        );
    }
}

/// A food without a price is left out where cost decides, and that is said.
#[test]
fn what_has_no_price_is_left_out_and_named() {
    let mut balancer = typical(TypicalFood::Balancer, 160.0);
    balancer.price = None;
    let stall = Stall {
        hays: vec![untested(ForageClass::Grass, 22.0)],
        foods: vec![
            balancer,
            typical(TypicalFood::LowSugarFeed, 60.0),
            typical(TypicalFood::Salt, 45.0),
            typical(TypicalFood::CopperSulphate, 300.0),
            typical(TypicalFood::ZincSulphate, 300.0),
            typical(TypicalFood::VitaminE, 900.0),
            typical(TypicalFood::SeleniumYeast, 900.0),
        ],
        ..Stall::grown(Kind::Horse, 500.0, REST)
    };
    match stall.mend() {
        Mends::Found(mended) | Mends::NotProven(mended) => {
            assert_eq!(mended.without_price, [0]);
            assert!(stall.given(&mended, TypicalFood::Balancer) <= 0.0);
        }
        Mends::NothingFits(closest) => assert!(closest.foods[0].to_kg() <= 0.0),
        Mends::NotKnown => panic!("no answer"),
    }
}

/// Where the owner has settled how much of the forage is straw, and it is more than a horse may have, the plan says that;
/// copper and zinc are mended all the same.
#[test]
fn settled_straw_over_its_cap_does_not_stand_in_the_way_of_the_minerals() {
    let settled = |class, price, part| crate::stall::Hay {
        part: Some(part),
        ..untested(class, price)
    };
    let stall = Stall {
        teeth: tussock_core::animal::Teeth::NotKnown,
        hays: vec![
            settled(ForageClass::Grass, 30.0, 0.6),
            settled(ForageClass::OatStraw, 12.0, 0.4),
        ],
        foods: vec![
            typical(TypicalFood::Balancer, 160.0),
            typical(TypicalFood::SoybeanMeal, 70.0),
            typical(TypicalFood::VitaminE, 900.0),
            typical(TypicalFood::Salt, 45.0),
        ],
        level: [1.75, 1.75],
        ..Stall::grown(Kind::Horse, 500.0, REST)
    };
    let (mended, whole) = stall.signed();
    assert!(stall.given(&mended, TypicalFood::Balancer) > 0.0);
    assert!(matches!(
        whole.forage.straw,
        tussock_core::limits::CapVerdict::Over { .. }
    ));
}

/// What is set to nothing by hand is out: it is neither missed for want of a price nor said to pay.
#[test]
fn a_food_that_was_taken_out_is_not_talked_of() {
    let mut out = typical(TypicalFood::LowSugarFeed, 60.0).set(0.0);
    out.price = None;
    let stall = Stall {
        hays: vec![untested(ForageClass::Grass, 22.0)],
        foods: vec![
            typical(TypicalFood::Balancer, 160.0),
            typical(TypicalFood::SoybeanMeal, 70.0),
            typical(TypicalFood::Salt, 45.0),
            out,
        ],
        ..Stall::grown(Kind::Horse, 500.0, REST)
    };
    let (mended, _) = stall.signed();
    assert!(mended.without_price.is_empty());
    assert!(mended.pays.iter().all(|pays| pays.food != 3));
}
