//! The ration of an invented pony on hay that nobody tested, from the records that the six answers wrote.

mod stages;

use super::cord::{CEILING, END, Knots, NEED};
use super::*;
use crate::acts::Act;
use crate::forms::start::{Answers, Ever, Ids, Named, Sort};
use crate::views::test_yard::{at, written, zone};
use crate::words::{BalanceWords, English, LimitsWords};
use proptest::prelude::*;
use tussock_core::animal::YardId;
use tussock_core::assess::Ribs;
use tussock_core::forage::ForageClass;
use tussock_core::log::{GivenFood, YardFood};
use tussock_core::ration::{Food, Standing, TypicalFood, typical_balancer};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Currency, PricePerKg};

fn id() -> AnimalId {
    AnimalId("bramble".into())
}

fn started(sort: Sort, girth: &str) -> Shelf {
    let record = |id: &str| RecordId(id.to_owned());
    let answers = Answers {
        name: "Bramble".into(),
        sort: Some(sort),
        age: "12".into(),
        girth: girth.into(),
        ribs: Some(Ribs::FeltWithPressure),
        ever: Some(Ever::SoundNow),
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
    let act: Act = answers.act(&ids, &named, day).unwrap();
    written(&Shelf::default(), &act, at(0))
}

fn seen(shelf: &Shelf) -> RationView {
    ration(shelf, &id(), at(0), &zone()).unwrap()
}

fn shown(shelf: &Shelf) -> Shown {
    match seen(shelf).outcome {
        Outcome::Shown(shown) => *shown,
        other => panic!("{other:?}"),
    }
}

/// What a pony on grass hay is given.
pub(crate) fn pony() -> DayRation {
    shown(&started(Sort::Pony, "150")).ration
}

/// So much of a food, with a price in pence a kilogram.
pub(crate) fn given(food: Food, kg: f64, price: Option<f64>) -> GivenFood {
    GivenFood {
        of: YardFood {
            food,
            price: price.map(|minor| PricePerKg {
                minor,
                currency: Currency::from_code("GBP").unwrap(),
            }),
            scoop: None,
        },
        a_day: AsFed::kg(kg),
    }
}

pub(crate) fn typical(food: TypicalFood) -> Food {
    food.food()
}

fn amounts(ration: &DayRation) -> Vec<AsFed> {
    ration.forages.iter().map(|given| given.as_fed).collect()
}

#[test]
fn the_draft_is_shown_where_no_plan_is_in_use_and_every_row_is_counted_once() {
    let view = seen(&started(Sort::Pony, "150"));
    assert!(view.problems.is_empty());
    let Outcome::Shown(shown) = view.outcome else {
        panic!("{:?}", view.outcome)
    };
    assert_eq!(shown.ration.by, GivenBy::Draft);
    assert_eq!(shown.untested(), ["Grass hay"]);
    let balance = &shown.balance;
    let counts = balance.counts();
    let told = balance.judged.iter().map(Judged::look);
    let beside = told
        .chain([balance.energy.stands.look()])
        .filter(|look| look.needs_a_look())
        .count();
    assert_eq!(
        balance.to_look_at().count() + balance.unknown().count() + beside,
        counts.over + counts.short + counts.not_known
    );
    assert_eq!(
        balance.to_look_at().count() + balance.unknown().count() + balance.within().count(),
        balance.rows.len()
    );
    // Of an untested hay nobody takes the selenium from a mean, and a balancer that meets the need clears nothing.
    assert!(balance.not_known().contains(&Nutrient::Selenium));
    let of_it = |row: &&NutrientRow| row.nutrient == Nutrient::Selenium;
    let selenium = balance.rows.iter().find(of_it).unwrap();
    assert_eq!(selenium.is.standing, Standing::Within);
    assert_eq!(selenium.is.look(), Look::NotKnown);
    // The level is of all dry matter, and its feed takes nothing from the forage that would be a restriction.
    assert_eq!(balance.judged[0].look(), Look::Within);
    let words = English::default();
    let said = words.balance_sentence(balance);
    assert!(said.contains("not known"), "{said}");
    assert!(said.chars().count() <= 44, "{said}");
}

#[test]
fn a_plan_at_the_starting_level_is_no_restriction_however_small_the_animal() {
    for girth in ["90", "105", "118", "135", "150", "170"] {
        let shown = shown(&started(Sort::Pony, girth));
        let verdict = &shown.balance.judged[0];
        assert_eq!(verdict.look(), Look::Within, "{girth}: {verdict:?}");
    }
}

#[test]
fn the_worst_stands_first_and_every_row_agrees_with_its_words() {
    let ration = pony();
    let mut foods = ration.foods.clone();
    foods.push(given(typical(TypicalFood::SeleniumYeast), 0.05, None));
    let ration = ration.with(&amounts(&ration), foods);
    let balance = balance(&ration, None).unwrap();
    let looks: Vec<Look> = balance.rows.iter().map(|row| row.is.look()).collect();
    assert!(looks.is_sorted(), "{looks:?}");
    assert_eq!(looks.first(), Some(&Look::Over));
    assert_eq!(balance.rows[0].nutrient, Nutrient::Selenium);
    let words = English::default();
    assert!(words.row_stands(&balance.rows[0]).starts_with("over by "));
    for row in &balance.rows {
        let cord = row.cord.unwrap();
        let said = words.row_stands(row);
        match row.is.standing {
            Standing::Over { .. } => assert!(CEILING <= cord.at.unwrap(), "{said}"),
            Standing::Short { .. } => {
                assert!(said.starts_with("short by "));
                assert!(cord.at.unwrap() <= NEED && !cord.dotted);
            }
            Standing::NotKnown => {
                assert!(cord.dotted);
                assert!(cord.at.is_none_or(|at| at <= NEED));
                assert!(said.starts_with("not known"), "{said}");
            }
            Standing::Within => {
                let poison = row.nutrient == Nutrient::Selenium;
                assert!(!poison || row.is.look() == Look::NotKnown);
                let at = cord.at.unwrap();
                assert!((NEED..=CEILING).contains(&at), "{:?} {at}", row.nutrient);
            }
        }
        assert_eq!(cord.ceiling, row.is.ceiling.is_some());
        let name = words.row_cord(row);
        assert!(name.starts_with(words.nutrient(row.nutrient)), "{name}");
        assert_eq!(words.numbers_row(row).len(), words.numbers_columns().len());
        if row.is.unknown > 0.0 && row.is.supplied.is_some() {
            assert!(words.row_has(row).starts_with("at least "));
        }
    }
    assert_eq!(
        words.numbers_energy(&balance.energy).len(),
        words.numbers_columns().len()
    );
}

#[test]
fn a_proposed_ration_hangs_beside_the_one_that_is_there() {
    let now = pony();
    let none = now.with(&amounts(&now), Vec::new());
    let fed = now.with(&amounts(&now), vec![given(typical_balancer(), 0.4, None)]);
    let both = balance(&none, Some(&fed)).unwrap();
    let before = balance(&none, None).unwrap();
    let after = balance(&fed, None).unwrap();
    assert_eq!(both.counts(), after.counts());
    for row in &both.rows {
        let of = |balance: &Balance| {
            balance
                .rows
                .iter()
                .find(|other| other.nutrient == row.nutrient)
                .map(|other| (other.is, other.cord.and_then(|cord| cord.at)))
        };
        assert_eq!(
            Some((row.is, row.cord.and_then(|cord| cord.at))),
            of(&after)
        );
        let was = row.was.map(|was| (was, row.cord.and_then(|cord| cord.was)));
        assert_eq!(was, of(&before));
        // What is mended stays in sight.
        if row.was.unwrap().look().needs_a_look() {
            assert!(row.needs_a_look());
        }
    }
    assert!(both.to_look_at().any(|row| row.is.look() == Look::Within));
    assert!(both.energy.was.is_some());
    let copper = both
        .rows
        .iter()
        .find(|row| row.nutrient == Nutrient::Copper);
    let name = English::default().row_cord(copper.unwrap());
    assert!(name.contains(" It was "), "{name}");
}

#[test]
fn a_donkey_goes_by_weight_and_condition_and_has_no_cord_of_energy() {
    let shelf = started(Sort::Donkey, "120");
    let records: Vec<&Record> = shelf.records().collect();
    let ration = day_ration(&records, &id(), at(0), &zone(), &Wish::default());
    let ration = ration.unwrap().unwrap();
    let energy = balance(&ration, None).unwrap().energy;
    assert_eq!(energy.stands, EnergyStands::ByWeightAndCondition);
    assert_eq!((energy.need, energy.cord), (None, None));
    assert_eq!(
        English::default().energy_stands(&energy),
        "goes by weight and condition"
    );
}

#[test]
fn what_safety_refuses_is_not_shown_as_what_it_could_be_given() {
    // Every diet of a donkey starts with the vet.
    let view = seen(&started(Sort::Donkey, "120"));
    assert!(matches!(view.outcome, Outcome::Refused(_)));
}

#[test]
fn energy_has_two_ends_and_is_judged_by_the_lower() {
    let ration = pony();
    let energy = balance(&ration, None).unwrap().energy;
    let cord = energy.cord.unwrap();
    let [least, most] = cord.band.unwrap();
    assert!(least <= cord.at.unwrap() && cord.at.unwrap() <= most);
    assert!(cord.need && !cord.ceiling);
    let less: Vec<AsFed> = amounts(&ration).iter().map(|fed| *fed * 0.3).collect();
    let little = balance(&ration.with(&less, Vec::new()), None).unwrap();
    assert!(matches!(little.energy.stands, EnergyStands::Short { .. }));
    assert_eq!(little.judged[0].look(), Look::Short);
}

#[test]
fn what_is_missing_is_said_and_nothing_is_shown() {
    use crate::views::test_yard::{add, animal, shelf_of};
    let shelf = shelf_of(&[add("bramble", &animal("bramble"), 0)]);
    assert!(matches!(seen(&shelf).outcome, Outcome::Nothing(_)));
    assert_eq!(
        ration(&Shelf::default(), &id(), at(0), &zone()),
        None,
        "nobody is there"
    );
}

#[test]
fn a_plan_in_use_says_since_when_and_is_what_is_held() {
    let shelf = started(Sort::Pony, "150");
    let plan = plan::plan(&shelf, &id(), at(0), &zone()).unwrap();
    let act = plan.use_it(&RecordId("plan".into())).unwrap().unwrap();
    let shown = shown(&written(&shelf, &act, at(0)));
    assert!(matches!(shown.ration.by, GivenBy::Plan { .. }));
    assert_eq!(shown.refused, None);
    let words = English::default();
    assert!(words.given_by(shown.ration.by).starts_with("By the plan"));
}

#[test]
fn a_cord_needs_its_ceiling_above_its_need() {
    assert_eq!(Knots::of(Some(3.0), Some(3.0)), None);
    assert_eq!(Knots::of(Some(3.0), Some(2.0)), None);
    assert_eq!(Knots::of(None, None), None);
    assert_eq!(Knots::of(Some(f64::NAN), None), None);
    assert_eq!(Knots::of(Some(0.0), Some(2.0)), Some(Knots::Ceiling(2.0)));
    let frayed = Cord::between(Knots::Need(2.0), Some(400.0), false);
    assert!((frayed.at.unwrap() - frayed.end()).abs() < 1e-9);
}

/// Knots of every sort.
fn knots() -> impl Strategy<Value = Knots> {
    let amount = || 1e-4_f64..1e5;
    prop_oneof![
        (amount(), 1.001_f64..1e4).prop_map(|(need, times)| Knots::Both {
            need,
            ceiling: need * times
        }),
        amount().prop_map(Knots::Need),
        amount().prop_map(Knots::Ceiling),
    ]
}

fn need_of(knots: Knots) -> Option<f64> {
    match knots {
        Knots::Both { need, .. } | Knots::Need(need) => Some(need),
        Knots::Ceiling(_) => None,
    }
}

fn ceiling_of(knots: Knots) -> Option<f64> {
    match knots {
        Knots::Both { ceiling, .. } | Knots::Ceiling(ceiling) => Some(ceiling),
        Knots::Need(_) => None,
    }
}

proptest! {
    #[test]
    fn a_tag_rises_with_its_supply_and_stays_on_the_cord(
        knots in knots(),
        less in 0.0_f64..2e9,
        more in 0.0_f64..2e9,
    ) {
        let (less, more) = (less.min(more), less.max(more));
        let (low, high) = (knots.position(less), knots.position(more));
        prop_assert!(low <= high + 1e-9, "{low} {high}");
        prop_assert!((0.0..=END).contains(&low) && (0.0..=END).contains(&high));
        prop_assert!(knots.position(0.0) <= 0.0);
    }

    #[test]
    fn knots_are_level_and_a_tag_is_never_on_the_wrong_side(
        knots in knots(),
        part in 0.0_f64..6.0,
    ) {
        for (fixed, level) in [(need_of(knots), NEED), (ceiling_of(knots), CEILING)] {
            let Some(fixed) = fixed else { continue };
            prop_assert!((knots.position(fixed) - level).abs() < 1e-9);
            let at = knots.position(fixed * part);
            if part < 1.0 {
                prop_assert!(at <= level + 1e-9, "{at}");
            } else {
                prop_assert!(level - 1e-9 <= at, "{at}");
            }
        }
    }

    #[test]
    fn what_is_no_amount_hangs_at_nothing(knots in knots()) {
        for supply in [f64::NAN, f64::NEG_INFINITY, -3.0] {
            prop_assert!(knots.position(supply) <= 0.0);
        }
        prop_assert!(knots.position(f64::INFINITY) <= END);
    }
}
