//! The list of foods and what is known of a typical one.

use super::*;
use crate::acts::Act;
use crate::forms::food::{LineTyped, Typed, take};
use crate::views::test_yard::{Entry, shelf_of};
use tussock_core::limits::Nutrient;
use tussock_core::log::Subject;
use tussock_core::log::bodies::LabelBasis;

/// The food that an act adds, as an entry of the yard.
fn entry(id: &str, act: Act) -> Entry<'_> {
    let Act::Add(new) = act else {
        panic!("adds a food")
    };
    (id, "yard", new.body, 0)
}

fn yard() -> Subject {
    Subject::yard(&tussock_core::animal::YardId("yard".into()))
}

fn id(text: &str) -> FoodId {
    FoodId(text.to_owned())
}

#[test]
fn own_foods_say_their_class_price_and_where_their_numbers_come_from() {
    let hulls = take(TypicalFood::SoyaHulls, "soya hulls", &yard(), &id("hulls")).unwrap();
    let mix = Typed {
        name: "Mix".into(),
        class: Some(FoodClass::Balancer),
        basis: Some(LabelBasis::AsFed),
        pack: "20".into(),
        price: "24.95".into(),
        currency: "GBP".into(),
        lines: vec![LineTyped {
            content: "calcium".into(),
            value: "3".into(),
            unit: "%".into(),
        }],
        ..Typed::default()
    };
    let bare = Typed {
        name: "Bran".into(),
        class: Some(FoodClass::Cereal),
        ..Typed::default()
    };
    let shelf = shelf_of(&[
        entry("hulls", hulls),
        entry("mix", mix.act(&yard(), &id("mix"), None).unwrap()),
        entry("bran", bare.act(&yard(), &id("bran"), None).unwrap()),
    ]);
    let rows = own(&shelf);
    let seen: Vec<(&str, &Numbers)> = rows
        .iter()
        .map(|row| (row.name.as_str(), &row.numbers))
        .collect();
    assert_eq!(
        seen,
        [
            ("Bran", &Numbers::NotKnown),
            ("Mix", &Numbers::Label(1)),
            ("soya hulls", &Numbers::Typical(TypicalFood::SoyaHulls)),
        ]
    );
    assert!(rows[1].price.is_some() && rows[2].price.is_none());
    assert_eq!(currency(&shelf), "GBP");
    assert_eq!(one(&shelf, &id("mix")).unwrap().class, FoodClass::Balancer);
    assert!(one(&shelf, &id("none")).is_none());
}

#[test]
fn every_typical_food_stands_in_its_class_once() {
    let listed: Vec<TypicalFood> = catalogue()
        .into_iter()
        .flat_map(|(_, foods)| foods)
        .collect();
    assert_eq!(listed.len(), TypicalFood::ALL.len());
}

#[test]
fn a_number_is_shown_where_it_is_known_and_nowhere_else() {
    for food in TypicalFood::ALL {
        let made = food.food();
        for row in typical(*food) {
            let known = match row.content {
                Content::DryMatter => true,
                Content::Energy => made.energy.is_some(),
                Content::NeutralFibre => made.fibre.is_some(),
                Content::SugarStarch => made.sugar_starch.is_some(),
                Content::Starch => made.starch.is_some(),
                Content::Dha => made.dha.is_some(),
                Content::Of(nutrient) => made.per_kg(nutrient).is_some(),
            };
            assert_eq!(row.number.is_some(), known, "{food:?} {:?}", row.content);
        }
    }
    // A selenium of hulls is not known; a copper of salt is none.
    let number = |food, content| {
        let mut rows = typical(food).into_iter();
        rows.find(|row| row.content == content).unwrap().number
    };
    assert_eq!(
        number(TypicalFood::SoyaHulls, Content::Of(Nutrient::Selenium)),
        None
    );
    let copper = number(TypicalFood::Salt, Content::Of(Nutrient::Copper)).unwrap();
    assert!(copper.value.abs() < 1e-12);
}
