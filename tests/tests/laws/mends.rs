//! Laws of a mend: whatever the animal, the hay and the prices, what is found keeps the limits, and what it costs is no more
//! than any other ration that was tried.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::animal::{Kind, LotId, RiskLevel, State, Teeth, Temperament, Workload};
use tussock_core::forage::{Fed, ForageClass, Lot, estimate, supply};
use tussock_core::limits::{
    Ends, NeedFor, Stage, UpperVerdict, energy_floor, judge_added_selenium, meal_limit, needs,
};
use tussock_core::ration::mend::{
    Aim, FoodChoice, ForageChoice, Mended, Mends, Topping, Wanted, mend,
};
use tussock_core::ration::{
    Against, Bucket, Changing, Food, FoodClass, Forage, Pace, Ration, Standing, TypicalFood, Whole,
    change_days, change_over, feeds_for, whole,
};
use tussock_core::units::{AsFed, BodyMass, DryMatter, NutrientMass, PartOfBody};

#[derive(Clone, Debug)]
struct Case {
    kg: f64,
    kind: Kind,
    risk: RiskLevel,
    loses: bool,
    level: f64,
    class: ForageClass,
    prices: Vec<Option<f64>>,
    aim: Aim,
    feeds: u32,
}

fn cases() -> impl Strategy<Value = Case> {
    (
        120.0..700.0f64,
        prop::sample::select(vec![Kind::Horse, Kind::Pony, Kind::Donkey]),
        prop::sample::select(vec![
            RiskLevel::Proven,
            RiskLevel::AtRisk,
            RiskLevel::NotKnown,
            RiskLevel::Clear,
        ]),
        any::<bool>(),
        1.3..2.2f64,
        prop::sample::select(vec![
            ForageClass::Grass,
            ForageClass::Meadow,
            ForageClass::GrassLegume,
        ]),
        prop::collection::vec(
            prop::option::weighted(0.8, 10.0..900.0f64),
            TypicalFood::ALL.len(),
        ),
        prop::sample::select(vec![Aim::Cheapest, Aim::FewestFoods, Aim::Lightest]),
        1u32..4,
    )
        .prop_map(
            |(kg, kind, risk, loses, level, class, prices, aim, feeds)| Case {
                kg,
                kind,
                risk,
                loses,
                level,
                class,
                prices,
                aim,
                feeds,
            },
        )
}

/// A case asked, and what was found held against the animal.
fn asked(case: &Case) -> (Option<(Mended, Whole)>, Vec<Food>) {
    let body = BodyMass::kg(case.kg);
    let (needs, _) = needs(&NeedFor {
        kind: case.kind,
        stage: Stage::Adult,
        work: Workload::Maintenance(Temperament::Low),
        current: body,
        target: Some(body),
    })
    .unwrap();
    let lot = Lot::of_class(LotId("hay".into()), "Hay", case.class);
    let (supply, sugar) = (supply(&lot, Fed::Dry), estimate(&lot, Fed::Dry));
    let dry = lot.dry_matter().unwrap().value;
    let foods: Vec<Food> = TypicalFood::ALL
        .iter()
        .map(|typical| typical.food())
        .collect();
    let against = Against {
        kind: case.kind,
        state: State::Adult,
        weight: Ends::exactly(body),
        teeth: Teeth::Good,
        risk: case.risk,
        needs: &needs,
    };
    let level: DryMatter = PartOfBody::percent(case.level).of(body);
    let meal = meal_limit(case.risk, body).unwrap();
    let wanted = Wanted {
        against: against.clone(),
        dry_matter: [level, level],
        forage_least: PartOfBody::percent(1.0).of(body),
        hay: None,
        energy_least: energy_floor(case.kind, body)
            .unwrap()
            .map(|floor| floor.without_vet),
        meal: meal.clone(),
        feeds: case.feeds,
        topping: Topping::of(case.loses, case.risk),
        at_most_bought: None,
        aim: case.aim,
    };
    let forages = [ForageChoice {
        dry,
        class: case.class,
        supply: &supply,
        sugar: Some(&sugar),
        between: [AsFed::ZERO, AsFed::kg(40.0)],
        part: None,
        price: Some(20.0),
    }];
    let choices: Vec<FoodChoice<'_>> = foods
        .iter()
        .zip(&case.prices)
        .map(|(food, price)| FoodChoice {
            food,
            between: [AsFed::ZERO, food.most_a_day(body)],
            step: food.step(),
            whole_steps: false,
            offered: true,
            price: *price,
        })
        .collect();
    let found = mend(&wanted, &forages, &choices).unwrap();
    let held = found.ration().map(|mended| {
        let given: Vec<(AsFed, &Food)> = mended.foods.iter().copied().zip(&foods).collect();
        let buckets = feeds_for(&given, &meal).unwrap();
        assert!(buckets <= case.feeds);
        let each = Bucket {
            foods: given
                .iter()
                .map(|(fed, food)| (*fed * (1.0 / f64::from(buckets)), *food))
                .collect(),
        };
        let ration = Ration {
            forage: vec![Forage {
                fed: mended.forages[0],
                dry,
                class: case.class,
                supply: &supply,
                sugar: Some(&sugar),
            }],
            grass: DryMatter::ZERO,
            buckets: (0..buckets).map(|_| each.clone()).collect(),
        };
        (mended.clone(), whole(&ration, &against).unwrap())
    });
    assert!(!matches!(found, Mends::NotKnown), "{found:?}");
    (held, foods)
}

/// Each case is solved several times over.
fn tried() -> ProptestConfig {
    let config = config();
    ProptestConfig {
        cases: config.cases.div_ceil(4),
        ..config
    }
}

proptest! {
    #![proptest_config(tried())]

    /// Nothing is over, nothing that is asked is short, the level is kept, the food suits the animal, and steps are whole.
    #[test]
    fn what_is_found_keeps_every_limit(case in cases()) {
        let (found, foods) = asked(&case);
        let Some((mended, whole)) = found else { return Ok(()) };
        for row in &whole.rows {
            prop_assert!(
                matches!(row.line.standing, Standing::Within | Standing::NotKnown),
                "{:?} {:?}", row.line.nutrient, row.line.standing
            );
        }
        prop_assert!((whole.of_body.to_percent() - case.level).abs() < 1e-6);
        let added: NutrientMass = foods
            .iter()
            .zip(&mended.foods)
            .filter(|(food, _)| food.class.is_fortified())
            .filter_map(|(food, fed)| food.brings(tussock_core::limits::Nutrient::Selenium, *fed))
            .map(|amount| match amount {
                tussock_core::limits::Amount::Mass(mass) => mass,
                tussock_core::limits::Amount::Iu(_) => NutrientMass::ZERO,
            })
            .sum();
        prop_assert!(matches!(judge_added_selenium(added, whole.dry), UpperVerdict::Within));
        let topping = Topping::of(case.loses, case.risk);
        for (food, fed) in foods.iter().zip(&mended.foods) {
            let grams = fed.to_kg() * 1000.0;
            prop_assert!((grams - grams.round()).abs() < 1e-6, "{grams} g");
            if AsFed::ZERO < *fed {
                prop_assert!(topping.offers(food).is_ok());
                prop_assert!(!(case.loses && food.class == FoodClass::Cereal));
            }
        }
    }

    /// Dearer hay or not, the same question has the same answer.
    #[test]
    fn a_question_has_one_answer(case in cases()) {
        let foods = |found: Option<(Mended, Whole)>| found.map(|(mended, _)| mended.foods);
        prop_assert_eq!(foods(asked(&case).0), foods(asked(&case).0));
    }

    /// On the way from one ration to another no amount leaves the two, and the last day has all of the second.
    #[test]
    fn a_change_goes_from_one_to_the_other_and_never_past(
        ends in prop::collection::vec((0.0..6.0f64, 0.0..6.0f64, any::<bool>()), 1..5),
        better in any::<bool>(),
    ) {
        let changing: Vec<Changing> = ends
            .iter()
            .map(|(from, to, slow)| Changing {
                from: AsFed::kg(*from),
                to: AsFed::kg(*to),
                pace: if *slow { Pace::InSteps } else { Pace::AtOnce },
                step: AsFed::kg(0.05),
            })
            .collect();
        let stages = change_over(&changing, change_days(better));
        let mut next = 1;
        for stage in &stages {
            prop_assert_eq!(stage.first, next);
            next = stage.last.map_or(next, |last| last + 1);
            for (one, fed) in changing.iter().zip(&stage.amounts) {
                let (low, high) = (one.from.min(one.to), one.from.max(one.to));
                prop_assert!(low <= *fed && *fed <= high, "{fed:?} of {one:?}");
            }
        }
        let last = stages.last().unwrap();
        prop_assert!(last.last.is_none());
        for (one, fed) in changing.iter().zip(&last.amounts) {
            prop_assert_eq!(one.to, *fed);
        }
        // From stage to stage each comes nearer.
        for pair in stages.windows(2) {
            for ((one, before), after) in changing.iter().zip(&pair[0].amounts).zip(&pair[1].amounts) {
                let far = |fed: &AsFed| (one.to - *fed).to_kg().abs();
                prop_assert!(far(after) <= far(before) + 1e-9);
            }
        }
    }
}
