//! What the catalogue must hold, whatever its numbers are.

use super::*;
use crate::sources::{Mark, Work};

/// Every number of a food.
fn numbers() -> impl Iterator<Item = (TypicalFood, Content, f64)> {
    TypicalFood::ALL.iter().flat_map(|food| {
        food.profile()
            .rows
            .iter()
            .flat_map(|row| row.value.iter())
            .map(|(content, value)| (*food, *content, *value))
    })
}

#[test]
fn no_food_says_the_same_thing_twice_and_every_one_says_its_dry_matter() {
    for food in TypicalFood::ALL {
        let contents: Vec<Content> = numbers()
            .filter(|(of, ..)| of == food)
            .map(|(_, content, _)| content)
            .collect();
        let mut once = contents.clone();
        once.sort();
        once.dedup();
        assert_eq!(once.len(), contents.len(), "{food:?}");
        if *food != TypicalFood::Balancer {
            let dry = food.number(Content::DryMatter).unwrap().value;
            assert!((food.food().dry.to_percent() - dry).abs() < 1e-9);
        }
        assert_eq!(food.food().profile, Some(*food));
        assert_eq!(food.food().class, food.class());
        assert!(food.food().typical && food.food().name.is_empty());
    }
}

#[test]
fn every_number_is_more_than_nothing_and_no_food_is_more_than_whole() {
    for (food, content, value) in numbers() {
        assert!(value > 0.0, "{food:?} {content:?}: unknown is never 0");
    }
    for food in TypicalFood::ALL {
        let of = |content| food.number(content).map_or(0.0, |stated| stated.value);
        let parts = of(Content::Of(Nutrient::CrudeProtein))
            + of(Content::NeutralFibre)
            + of(Content::SugarStarch);
        assert!(parts <= 100.0, "{food:?} {parts}");
        assert!(
            of(Content::Starch) <= of(Content::SugarStarch),
            "{food:?}: starch is a part of sugar and starch"
        );
        assert!(of(Content::Energy) < 9.5, "{food:?}: Mcal, not MJ");
    }
}

#[test]
fn no_plant_has_a_mean_of_selenium_and_no_legume_one_of_its_soil() {
    for food in TypicalFood::ALL {
        let made = food.class().is_fortified();
        let selenium = food.food().per_kg(Nutrient::Selenium);
        assert!(
            made || *food == TypicalFood::Oil || selenium.is_none(),
            "{food:?}"
        );
        if food.class() == FoodClass::Legume {
            assert_eq!(food.food().per_kg(Nutrient::Iron), None);
            assert_eq!(food.food().per_kg(Nutrient::Manganese), None);
        }
    }
}

#[test]
fn a_single_substance_holds_nothing_else_and_yeast_is_not_known() {
    let salt = TypicalFood::Salt.food();
    let sodium = Nutrient::Sodium.in_unit(salt.per_kg(Nutrient::Sodium).unwrap());
    assert!((sodium.unwrap() - 393.4).abs() < 1e-9);
    assert_eq!(
        salt.per_kg(Nutrient::CrudeProtein),
        Some(Nutrient::CrudeProtein.amount(0.0))
    );
    assert_eq!(salt.sugar_starch, Some(crate::units::ShareOfAsFed::ZERO));
    assert_eq!(TypicalFood::Limestone.food().per_kg(Nutrient::Iron), None);
    let yeast = TypicalFood::LiveYeast.food();
    for nutrient in Nutrient::ALL {
        assert_eq!(yeast.per_kg(nutrient), None, "{nutrient:?}");
    }
    assert_eq!((yeast.energy, yeast.sugar_starch), (None, None));
    assert_eq!(TypicalFood::Linseed.food().energy, None);
}

#[test]
fn a_number_knows_its_row() {
    let calcium = TypicalFood::BeetPulp
        .number(Content::Of(Nutrient::Calcium))
        .unwrap();
    assert_eq!(calcium.row.work, Work::Nasem2021);
    assert_eq!(calcium.row.mark, Mark::Published);
    let lysine = TypicalFood::BeetPulp
        .number(Content::Of(Nutrient::Lysine))
        .unwrap();
    assert_eq!(lysine.row.mark, Mark::FromMemory);
}

#[test]
fn as_fed_and_dry_matter_are_kept_apart() {
    // 0.77 % of dry matter, 92 % dry: 7.084 g in a kilogram as fed.
    let pulp = TypicalFood::BeetPulp.food();
    let calcium = pulp.per_kg(Nutrient::Calcium).unwrap();
    assert!((Nutrient::Calcium.in_unit(calcium).unwrap() - 7.084).abs() < 1e-9);
    assert!((pulp.sugar_starch.unwrap().to_percent() - 5.796).abs() < 1e-9);
    assert!((pulp.fibre.unwrap().to_percent() - 46.9).abs() < 1e-9);
    let energy = pulp.energy_in(crate::units::AsFed::kg(1.0)).unwrap();
    assert!((energy.to_mcal() - 2.3644).abs() < 1e-9);
    // Half of it acetate: 500 IU in a gram as fed.
    let powder = TypicalFood::VitaminE.food().per_kg(Nutrient::VitaminE);
    assert!((Nutrient::VitaminE.in_unit(powder.unwrap()).unwrap() - 499_800.0).abs() < 1e-6);
}

#[test]
fn forage_and_foods_are_looked_through_together() {
    assert_eq!(
        Typical::all().count(),
        ForageClass::ALL.len() + TypicalFood::ALL.len()
    );
    let hay = typical_forage(ForageClass::Grass);
    assert!(hay.nutrient(Nutrient::Calcium).is_some());
    assert!(hay.nutrient(Nutrient::Selenium).is_none());
}
