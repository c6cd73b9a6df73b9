//! Labels as they are stored.

use super::*;
use crate::log::bodies::base::Decimal;

fn line(content: LabelContent, value: &str, unit: &str) -> LabelLineV1 {
    LabelLineV1 {
        content: Some(content),
        name: None,
        reported: Reported {
            value: Decimal::new(value).unwrap(),
            unit: Name::new(unit).unwrap(),
            typed: None,
        },
    }
}

fn balancer(basis: LabelBasis, label: Vec<LabelLineV1>) -> FoodV1 {
    FoodV1 {
        name: Name::new("Balancer").unwrap(),
        food_use: FoodUse::Balancer,
        basis,
        dry_matter: None,
        label,
        rate: None,
        pack: None,
        price: None,
    }
}

#[test]
fn every_content_has_its_word() {
    let nutrients = Nutrient::ALL.map(Nutrient::key);
    let words = [nutrients.as_slice(), &["sugar_starch", "starch"]].concat();
    assert_eq!(CONTENTS, words);
    for word in CONTENTS {
        let value = Value::from(*word);
        let read = LabelContent::read(Some(&value), &Path::Root).unwrap();
        assert_eq!(read.write(), Some(value));
    }
}

#[test]
fn every_unit_of_a_label_is_understood_and_is_of_one_sort() {
    let both = [MASS_WORDS, IU_WORDS].concat();
    assert_eq!(LABEL_UNITS.len(), both.len());
    for word in LABEL_UNITS {
        assert!(
            LabelUnit::from_word(word).is_some() && both.contains(word),
            "{word}"
        );
    }
}

#[test]
fn a_label_is_read_in_its_own_units() {
    let id = RecordId("balancer".to_owned());
    let label = vec![
        line(LabelContent::Nutrient(Nutrient::Calcium), "3.2", "%"),
        line(LabelContent::Nutrient(Nutrient::Copper), "400", "mg/kg"),
        line(LabelContent::Nutrient(Nutrient::VitaminE), "2500", "IU/kg"),
        line(LabelContent::SugarStarch, "14", "%"),
    ];
    let food = balancer(LabelBasis::AsFed, label.clone())
        .food(&id)
        .unwrap()
        .unwrap();
    for (nutrient, value) in [
        (Nutrient::Calcium, 32.0),
        (Nutrient::Copper, 400.0),
        (Nutrient::VitaminE, 2500.0),
    ] {
        assert_eq!(food.per_kg(nutrient), Some(nutrient.amount(value)));
    }
    assert!((food.sugar_starch.unwrap().to_percent() - 14.0).abs() < 1e-12);
    assert!(!food.typical);
    // On dry matter nothing can be said without the dry matter.
    let error = balancer(LabelBasis::DryMatter, label)
        .food(&id)
        .unwrap_err();
    assert_eq!(error.place().unwrap().field, "body.dry_matter");
    let none = balancer(LabelBasis::AsFed, Vec::new()).food(&id).unwrap();
    assert_eq!(none, None);
    // So much for 100 kg of body weight, at the label's rate.
    let mut dosed = balancer(
        LabelBasis::AsFed,
        vec![line(
            LabelContent::Nutrient(Nutrient::Zinc),
            "80",
            "mg/100kg",
        )],
    );
    let error = dosed.food(&id).unwrap_err();
    assert_eq!(error.place().unwrap().field, "body.rate");
    dosed.rate = Some(line(LabelContent::Starch, "1", "g/kg").reported);
    let zinc = dosed.food(&id).unwrap().unwrap().per_kg(Nutrient::Zinc);
    assert!((Nutrient::Zinc.in_unit(zinc.unwrap()).unwrap() - 800.0).abs() < 1e-9);
    let much = vec![line(LabelContent::Starch, "140", "%")];
    let error = balancer(LabelBasis::AsFed, much).food(&id).unwrap_err();
    assert!(matches!(error, LogError::OutOfRange { .. }));
    let cups = vec![line(
        LabelContent::Nutrient(Nutrient::VitaminA),
        "1",
        "mg/kg",
    )];
    let error = balancer(LabelBasis::AsFed, cups).food(&id).unwrap_err();
    assert_eq!(error.place().unwrap().field, "body.label[0].reported.unit");
}
