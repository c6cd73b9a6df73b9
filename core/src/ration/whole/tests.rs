//! Whole rations: what is short, over, unknown, and what no unit may hide.

mod levels;

use super::super::balance::Standing;
use super::super::catalogue::{TypicalFood, typical_forage};
use super::*;
use crate::animal::{LotId, Temperament, Workload};
use crate::forage::{Fed, Lot, estimate};
use crate::limits::{NeedFor, Stage, needs};
use proptest::prelude::*;

struct Yard {
    hay: Supply,
    sugar: SugarEstimate,
    needs: Needs,
    class: ForageClass,
}

fn yard(class: ForageClass, kg: f64, stage: Stage) -> Yard {
    let lot = Lot::of_class(LotId("a".into()), "Top meadow", class);
    let of = NeedFor {
        kind: Kind::Horse,
        stage,
        work: Workload::Maintenance(Temperament::Average),
        current: BodyMass::kg(kg),
        target: Some(BodyMass::kg(kg)),
    };
    Yard {
        hay: typical_forage(class),
        sugar: estimate(&lot, Fed::Dry),
        needs: needs(&of).unwrap().0,
        class,
    }
}

fn grown() -> Yard {
    yard(ForageClass::Grass, 500.0, Stage::Adult)
}

impl Yard {
    fn hay(&self, kg: f64) -> Forage<'_> {
        Forage {
            fed: AsFed::kg(kg),
            dry: DryFraction::percent(88.0).unwrap(),
            class: self.class,
            supply: &self.hay,
            sugar: Some(&self.sugar),
        }
    }

    fn against(&self, kg: f64, risk: RiskLevel) -> Against<'_> {
        Against {
            kind: Kind::Horse,
            state: State::Adult,
            weight: Ends::exactly(BodyMass::kg(kg)),
            teeth: Teeth::Good,
            risk,
            needs: &self.needs,
        }
    }
}

fn hay_alone(hay: Forage<'_>) -> Ration<'_> {
    Ration {
        forage: vec![hay],
        ..Ration::default()
    }
}

fn row(whole: &Whole, nutrient: Nutrient) -> &Row {
    whole
        .rows
        .iter()
        .find(|row| row.line.nutrient == nutrient)
        .unwrap()
}

#[test]
fn as_fed_and_dry_matter_differ_by_the_water() {
    let yard = grown();
    let ration = hay_alone(yard.hay(10.0));
    let found = whole(&ration, &yard.against(500.0, RiskLevel::AtRisk)).unwrap();
    assert!((found.dry.to_kg() - 8.8).abs() < 1e-9);
    assert!((found.of_body.to_percent() - 1.76).abs() < 1e-9);
    let calcium = row(&found, Nutrient::Calcium);
    // 0.44 % of dry matter is 0.3872 % as fed, and 38.72 g in 10 kg.
    let Some(UpperContent::Share(in_dry)) = calcium.in_dry else {
        panic!()
    };
    let Some(FedContent::Share(in_fed)) = calcium.in_fed else {
        panic!()
    };
    assert!((in_dry.to_percent() - 0.44).abs() < 1e-9);
    assert!((in_fed.to_percent() - 0.3872).abs() < 1e-9);
    let supplied = Nutrient::Calcium.in_unit(calcium.line.supplied.unwrap());
    assert!((supplied.unwrap() - 38.72).abs() < 1e-9);
    assert_eq!(calcium.line.standing, Standing::Within);
    // The ceiling is of dry matter: 2 % of 8.8 kg.
    let most = Nutrient::Calcium.in_unit(calcium.most.unwrap()).unwrap();
    assert!((most - 176.0).abs() < 1e-9);
}

#[test]
fn hay_alone_is_short_of_copper_and_nobody_knows_its_selenium() {
    let yard = grown();
    let ration = hay_alone(yard.hay(10.0));
    let found = whole(&ration, &yard.against(500.0, RiskLevel::AtRisk)).unwrap();
    let copper = row(&found, Nutrient::Copper);
    assert!(matches!(copper.line.standing, Standing::Short { .. }));
    assert!(copper.unknown < 1e-12);
    let selenium = row(&found, Nutrient::Selenium);
    assert_eq!(selenium.line.standing, Standing::NotKnown);
    assert!((selenium.unknown - 1.0).abs() < 1e-12);
    assert_eq!((selenium.in_dry, selenium.in_fed), (None, None));
    assert_eq!(found.iron_to_copper, RatioVerdict::NotKnown);
    assert_eq!(found.added_selenium, UpperVerdict::Within);
    assert!(matches!(found.calcium_to_phosphorus, RatioVerdict::Wide { ratio } if ratio > 2.0));
}

#[test]
fn grass_is_dry_matter_of_which_nothing_is_known() {
    let yard = grown();
    let ration = Ration {
        forage: vec![yard.hay(5.0)],
        grass: DryMatter::kg(4.4),
        buckets: Vec::new(),
    };
    let found = whole(&ration, &yard.against(500.0, RiskLevel::AtRisk)).unwrap();
    assert!((found.forage.of_dry.unwrap() - 1.0).abs() < 1e-12);
    for unknown in [
        found.energy.unknown,
        found.sugar.unknown,
        found.forage.fibre_unknown,
        row(&found, Nutrient::Calcium).unknown,
    ] {
        assert!((unknown - 0.5).abs() < 1e-9);
    }
    assert_eq!(row(&found, Nutrient::Calcium).in_fed, None);
    assert_eq!(found.calcium_to_phosphorus, RatioVerdict::NotKnown);
    assert!(
        found
            .sugar
            .judged
            .is_some_and(|judged| !judged.verdict.is_within())
    );
}

#[test]
fn half_a_kilogram_of_balancer_is_given_in_two() {
    let yard = grown();
    let balancer = TypicalFood::Balancer.food();
    let in_feeds = |feeds: usize, risk| {
        let kg = 0.5 / f64::from(u8::try_from(feeds).unwrap());
        let bucket = Bucket {
            foods: vec![(AsFed::kg(kg), &balancer)],
        };
        let ration = Ration {
            forage: vec![yard.hay(8.0)],
            grass: DryMatter::ZERO,
            buckets: vec![bucket; feeds],
        };
        whole(&ration, &yard.against(500.0, risk)).unwrap()
    };
    let once = in_feeds(1, RiskLevel::NotKnown);
    assert!(matches!(
        once.buckets.as_slice(),
        [MealVerdict::Over { .. }]
    ));
    assert_eq!(once.day_starch, DayStarch::ByMeal);
    let twice = in_feeds(2, RiskLevel::NotKnown);
    assert_eq!(twice.buckets, [MealVerdict::Within, MealVerdict::Within]);
    // How it is parted changes nothing of the day.
    for (a, b) in once.rows.iter().zip(&twice.rows) {
        let part = a.line.supplied.zip(b.line.supplied);
        let part = part.and_then(|(a, b)| a.times(b));
        assert!(part.is_none_or(|part| (part - 1.0).abs() < 1e-12));
    }
    let clear = in_feeds(1, RiskLevel::Clear);
    assert_eq!(clear.buckets, [MealVerdict::Within]);
    assert!(matches!(clear.day_starch, DayStarch::Within { .. }));
    assert_eq!(clear.sugar.judged, None);
}

#[test]
fn a_spoon_of_yeast_cannot_break_a_meal_and_a_scoop_cannot_be_cleared() {
    let yeast = TypicalFood::LiveYeast.food();
    let yard = grown();
    let verdict = |kg: f64, risk| {
        let ration = Ration {
            forage: vec![yard.hay(8.0)],
            grass: DryMatter::ZERO,
            buckets: vec![Bucket {
                foods: vec![(AsFed::kg(kg), &yeast)],
            }],
        };
        whole(&ration, &yard.against(500.0, risk)).unwrap()
    };
    let spoon = verdict(0.02, RiskLevel::Proven);
    assert_eq!(spoon.buckets, [MealVerdict::Within]);
    assert!(!matches!(
        spoon.calcium_to_phosphorus,
        RatioVerdict::NotKnown
    ));
    assert_eq!(
        verdict(1.0, RiskLevel::Proven).buckets,
        [MealVerdict::NotKnown]
    );
    assert_eq!(
        verdict(1.5, RiskLevel::Clear).day_starch,
        DayStarch::NotKnown
    );
}

#[test]
fn oats_are_over_the_starch_of_a_meal_and_of_a_day() {
    let oats = TypicalFood::Oats.food();
    let yard = grown();
    let ration = Ration {
        forage: vec![yard.hay(8.0)],
        grass: DryMatter::ZERO,
        buckets: vec![
            Bucket {
                foods: vec![(AsFed::kg(1.3), &oats)],
            };
            2
        ],
    };
    let found = whole(&ration, &yard.against(500.0, RiskLevel::Clear)).unwrap();
    assert!(
        matches!(found.buckets.as_slice(), [MealVerdict::Over { holds, .. }, _] if holds.to_g() > 500.0)
    );
    assert!(matches!(found.day_starch, DayStarch::Over { holds, limit } if holds > limit));
}

#[test]
fn two_supplements_are_too_much_selenium_and_the_added_part_says_so_first() {
    let yard = grown();
    let yeast = TypicalFood::SeleniumYeast.food();
    let balancer = TypicalFood::Balancer.food();
    let with = |grams: f64| {
        let ration = Ration {
            forage: vec![yard.hay(10.0)],
            grass: DryMatter::ZERO,
            buckets: vec![Bucket {
                foods: vec![
                    (AsFed::kg(0.5), &balancer),
                    (AsFed::kg(grams / 1000.0), &yeast),
                ],
            }],
        };
        whole(&ration, &yard.against(500.0, RiskLevel::AtRisk)).unwrap()
    };
    // 1.6 mg of the balancer are 0.18 mg/kg; a gram of yeast makes 0.39.
    assert_eq!(with(0.0).added_selenium, UpperVerdict::Within);
    let one = with(1.0);
    assert!(matches!(one.added_selenium, UpperVerdict::Over { .. }));
    assert_eq!(
        row(&one, Nutrient::Selenium).line.standing,
        Standing::Within
    );
    assert!(matches!(
        row(&with(10.0), Nutrient::Selenium).line.standing,
        Standing::Over { .. }
    ));
}

#[test]
fn vitamin_e_is_bounded_by_weight_and_by_dry_matter_whichever_is_less() {
    let yard = grown();
    let powder = TypicalFood::VitaminE.food();
    for (hay, most) in [(10.0, 8_800.0), (14.0, 10_000.0)] {
        let ration = Ration {
            forage: vec![yard.hay(hay)],
            grass: DryMatter::ZERO,
            buckets: vec![Bucket {
                foods: vec![(AsFed::kg(0.025), &powder)],
            }],
        };
        let found = whole(&ration, &yard.against(500.0, RiskLevel::AtRisk)).unwrap();
        let vitamin = row(&found, Nutrient::VitaminE);
        let Some(Amount::Iu(bound)) = vitamin.most else {
            panic!()
        };
        assert!((bound.to_iu() - most).abs() < 50.0, "{bound:?}");
        assert_eq!(
            vitamin.line.standing,
            Standing::Over {
                most: Amount::Iu(bound)
            }
        );
    }
}

#[test]
fn lucerne_is_counted_in_the_bucket_too_and_straw_within_its_cap() {
    let hay = yard(ForageClass::Grass, 500.0, Stage::Adult);
    let straw = yard(ForageClass::WheatStraw, 500.0, Stage::Adult);
    let chaff = TypicalFood::LucerneChaff.food();
    let found = |chaff_kg: f64, straw_kg: f64| {
        let ration = Ration {
            forage: vec![hay.hay(5.0), straw.hay(straw_kg)],
            grass: DryMatter::ZERO,
            buckets: vec![Bucket {
                foods: vec![(AsFed::kg(chaff_kg), &chaff)],
            }],
        };
        whole(&ration, &hay.against(500.0, RiskLevel::AtRisk))
            .unwrap()
            .forage
    };
    assert!(matches!(found(1.0, 0.0).lucerne, CapVerdict::Within { .. }));
    assert!(matches!(found(1.8, 0.0).lucerne, CapVerdict::Watch { .. }));
    assert!(matches!(found(2.5, 0.0).lucerne, CapVerdict::Over { .. }));
    assert!(matches!(found(0.0, 4.0).straw, CapVerdict::Within { .. }));
    assert!(matches!(found(0.0, 6.0).straw, CapVerdict::Over { .. }));
    assert!((found(1.0, 0.0).of_dry.unwrap() - 1.0).abs() < 1e-12);
}

#[test]
fn a_mare_in_milk_is_balanced_like_any_other() {
    let yard = yard(ForageClass::Grass, 500.0, Stage::Lactating { month: 1 });
    let ration = hay_alone(yard.hay(14.0));
    let found = whole(&ration, &yard.against(500.0, RiskLevel::Clear)).unwrap();
    assert!(found.energy.of_need().unwrap() < 0.9);
    for nutrient in [
        Nutrient::CrudeProtein,
        Nutrient::Phosphorus,
        Nutrient::Copper,
    ] {
        let standing = row(&found, nutrient).line.standing;
        assert!(matches!(standing, Standing::Short { .. }), "{nutrient:?}");
    }
}

#[test]
fn an_amount_that_cannot_be_is_refused() {
    let yard = grown();
    for kg in [-1.0, f64::NAN, f64::INFINITY, 1000.0] {
        let ration = hay_alone(yard.hay(kg));
        let found = whole(&ration, &yard.against(500.0, RiskLevel::AtRisk));
        assert!(matches!(found, Err(RationError::OutOfRange(_))), "{kg}");
    }
    let nothing = whole(&Ration::default(), &yard.against(500.0, RiskLevel::AtRisk)).unwrap();
    assert!(nothing.forage.of_dry.is_none() && nothing.sugar.judged.is_none());
    assert!(nothing.energy.supplied.most <= Energy::ZERO);
}

proptest! {
    /// More of a food never brings less of anything, never makes a shortage of what was met, and every unknown part is a
    /// part.
    #[test]
    fn more_of_a_food_never_brings_less(
        hay in 2.0..14.0_f64,
        kg in 0.0..3.0_f64,
        more in 0.0..2.0_f64,
        food in prop::sample::select(TypicalFood::ALL.to_vec()),
    ) {
        let yard = grown();
        let made = food.food();
        let with = |kg: f64| {
            let ration = Ration {
                forage: vec![yard.hay(hay)],
                grass: DryMatter::ZERO,
                buckets: vec![Bucket { foods: vec![(AsFed::kg(kg), &made)] }],
            };
            whole(&ration, &yard.against(500.0, RiskLevel::AtRisk)).unwrap()
        };
        let (less, more) = (with(kg), with(kg + more));
        prop_assert!(less.dry.to_kg() <= less.fed.to_kg());
        for (a, b) in less.rows.iter().zip(&more.rows) {
            prop_assert!((0.0..=1.0 + 1e-12).contains(&a.unknown));
            if let (Some(a), Some(b)) = (a.line.supplied, b.line.supplied) {
                let (a, b) = (b.plus(a.scaled(-1.0)).unwrap(), b);
                prop_assert!(a.times(b).is_none_or(|part| part >= -1e-9));
            }
            let met = a.line.standing == Standing::Within;
            let short = matches!(b.line.standing, Standing::Short { .. });
            prop_assert!(!(met && short));
        }
        prop_assert!(less.energy.supplied.least <= less.energy.supplied.most);
    }
}
