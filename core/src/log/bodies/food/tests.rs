//! Labels as they are stored.

use super::words::{CONTENTS, ENERGY_WORDS, IU_WORDS, LABEL_UNITS, MASS_WORDS};
use super::*;
use crate::limits::Nutrient;
use crate::log::bodies::base::{Decimal, FeedGrams};
use crate::log::stored::Stored;
use crate::units::Currency;
use serde_json::{Value, json};

fn reported(value: &str, unit: &str) -> Reported {
    Reported {
        value: Decimal::new(value).unwrap(),
        unit: Name::new(unit).unwrap(),
        typed: None,
    }
}

fn line(content: Content, value: &str, unit: &str) -> LabelLineV2 {
    LabelLineV2 {
        content: Some(content),
        name: None,
        reported: reported(value, unit),
    }
}

fn of(nutrient: Nutrient, value: &str, unit: &str) -> LabelLineV2 {
    line(Content::Of(nutrient), value, unit)
}

fn balancer(basis: LabelBasis, label: Vec<LabelLineV2>) -> FoodV2 {
    FoodV2 {
        name: Name::new("Balancer").unwrap(),
        class: FoodClass::Balancer,
        profile: None,
        basis,
        dry_matter: None,
        serving: None,
        label,
        rate: None,
        scoop: None,
        pack: None,
        price: None,
    }
}

fn id() -> RecordId {
    RecordId("balancer".to_owned())
}

#[test]
fn every_content_class_and_typical_food_has_its_word() {
    let keys: Vec<&str> = Content::all().map(Content::key).collect();
    assert_eq!(CONTENTS, keys);
    for content in Content::all() {
        let read = Content::read(content.write().as_ref(), &Path::Root).unwrap();
        assert_eq!(read, content);
    }
    for class in FoodClass::ALL {
        let read = FoodClass::read(class.write().as_ref(), &Path::Root).unwrap();
        assert_eq!(read, *class);
    }
    for food in TypicalFood::ALL {
        assert_eq!(food.write(), Some(Value::from(food.key())));
        let read = TypicalFood::read(food.write().as_ref(), &Path::Root).unwrap();
        assert_eq!(read, *food);
    }
    let unknown = Value::from("moon_dust");
    assert!(TypicalFood::read(Some(&unknown), &Path::Root).is_err());
}

#[test]
fn every_unit_of_a_label_is_understood_and_is_of_one_sort() {
    let known: Vec<&str> = LabelUnit::words().collect();
    assert_eq!(LABEL_UNITS, known);
    let sorts = [MASS_WORDS, IU_WORDS, ENERGY_WORDS].concat();
    assert_eq!(LABEL_UNITS.len(), sorts.len());
    assert!(LABEL_UNITS.iter().all(|word| sorts.contains(word)));
}

#[test]
fn a_label_is_read_in_its_own_units() {
    let label = vec![
        of(Nutrient::Calcium, "3.2", "%"),
        of(Nutrient::Copper, "400", "mg/kg"),
        of(Nutrient::VitaminE, "2500", "IU/kg"),
        line(Content::SugarStarch, "14", "%"),
        line(Content::Energy, "10.46", "MJ/kg"),
        line(Content::Dha, "1", "%"),
    ];
    let food = balancer(LabelBasis::AsFed, label.clone())
        .food(&id())
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
    assert!((food.dha.unwrap().to_percent() - 1.0).abs() < 1e-12);
    let energy = food.energy_in(crate::units::AsFed::kg(1.0)).unwrap();
    assert!((energy.to_mcal() - 2.5).abs() < 1e-9);
    assert!(!food.typical);
    // On dry matter nothing can be said without the dry matter.
    let error = balancer(LabelBasis::DryMatter, label)
        .food(&id())
        .unwrap_err();
    assert_eq!(error.place().unwrap().field, "body.dry_matter");
    let none = balancer(LabelBasis::AsFed, Vec::new()).food(&id()).unwrap();
    assert_eq!(none, None);
}

#[test]
fn a_dose_needs_its_rate_and_a_serving_its_weight() {
    for (unit, lacks) in [("mg/100kg", "body.rate"), ("mg/serving", "body.serving")] {
        let mut dosed = balancer(LabelBasis::AsFed, vec![of(Nutrient::Zinc, "80", unit)]);
        let error = dosed.food(&id()).unwrap_err();
        assert_eq!(error.place().unwrap().field, lacks);
        // A gram a kilogram of body weight is 100 g for 100 kg.
        dosed.rate = Some(reported("1", "g/kg"));
        dosed.serving = Some(reported("0.1", "kg"));
        let zinc = dosed.food(&id()).unwrap().unwrap().per_kg(Nutrient::Zinc);
        assert!((Nutrient::Zinc.in_unit(zinc.unwrap()).unwrap() - 800.0).abs() < 1e-9);
    }
    let mut odd = balancer(LabelBasis::AsFed, vec![of(Nutrient::Zinc, "1", "%")]);
    odd.serving = Some(reported("1", "cups"));
    let error = odd.food(&id()).unwrap_err();
    assert_eq!(error.place().unwrap().field, "body.serving.unit");
}

#[test]
fn what_cannot_be_is_refused_at_its_place() {
    let much = vec![line(Content::Starch, "140", "%")];
    let error = balancer(LabelBasis::AsFed, much).food(&id()).unwrap_err();
    assert!(matches!(error, LogError::OutOfRange { .. }));
    for line in [
        of(Nutrient::VitaminA, "1", "mg/kg"),
        of(Nutrient::Copper, "1", "IU/kg"),
        line(Content::Energy, "1", "%"),
        of(Nutrient::Copper, "1", "cups"),
    ] {
        let error = balancer(LabelBasis::AsFed, vec![line])
            .food(&id())
            .unwrap_err();
        assert_eq!(error.place().unwrap().field, "body.label[0].reported.unit");
    }
}

#[test]
fn a_typical_food_stands_in_until_a_label_is_typed() {
    let mut hulls = balancer(LabelBasis::AsFed, Vec::new());
    hulls.class = FoodClass::Fibre;
    hulls.profile = Some(TypicalFood::SoyaHulls);
    let food = hulls.food(&id()).unwrap().unwrap();
    assert!(food.typical);
    assert_eq!(food.id, Some(FoodId("balancer".to_owned())));
    assert_eq!(food.name, "Balancer");
    let typical = TypicalFood::SoyaHulls.food();
    for nutrient in Nutrient::ALL {
        assert_eq!(food.per_kg(nutrient), typical.per_kg(nutrient));
    }
    // What the person says of it holds.
    let body = crate::units::BodyMass::kg(500.0);
    hulls.rate = Some(reported("100", "g/100kg"));
    let food = hulls.food(&id()).unwrap().unwrap();
    assert!((food.most_a_day(body).to_kg() - 0.5).abs() < 1e-12);
    hulls.rate = Some(reported("900", "g/kg"));
    assert!(hulls.food(&id()).is_err());
    hulls.rate = None;
    hulls.label = vec![of(Nutrient::Calcium, "1", "%")];
    let food = hulls.food(&id()).unwrap().unwrap();
    assert!(!food.typical && food.profile.is_none());
    assert_eq!(food.per_kg(Nutrient::Copper), None);
}

#[test]
fn a_kilogram_has_a_price_when_a_pack_has_weight_and_price() {
    let mut food = balancer(LabelBasis::AsFed, Vec::new());
    assert_eq!(food.price_per_kg(), None);
    let gbp = Currency::from_code("GBP").unwrap();
    food.price = Some(Money {
        minor: 2_495,
        currency: gbp,
    });
    assert_eq!(food.price_per_kg(), None);
    food.pack = Some(FeedWeight {
        g: FeedGrams::new(20_000).unwrap(),
        typed: None,
    });
    assert!((food.price_per_kg().unwrap().minor - 124.75).abs() < 1e-9);
}

#[test]
fn the_first_version_climbs_and_nothing_is_invented() {
    for (food_use, class) in [
        ("balancer", FoodClass::Balancer),
        ("mineral", FoodClass::MineralMix),
        ("salt", FoodClass::Source),
        ("oil", FoodClass::Fat),
        ("fibre", FoodClass::Fibre),
        ("compound", FoodClass::Compound),
        ("other", FoodClass::Other),
    ] {
        let old = json!({
            "name": "A food", "food_use": food_use, "basis": "as_fed", "label": [], "later": 1,
        });
        let climbed = food_with_class(old);
        assert_eq!(climbed["later"], json!(1));
        assert!(climbed.get("food_use").is_none());
        let read = FoodV2::read(Some(&climbed), &Path::Root).unwrap();
        assert_eq!(read.class, class);
        assert_eq!((read.profile, read.serving, read.scoop), (None, None, None));
    }
    let unknown = food_with_class(json!({
        "name": "A food", "food_use": "moon_dust", "basis": "as_fed", "label": [],
    }));
    let error = FoodV2::read(Some(&unknown), &Path::Root).unwrap_err();
    assert_eq!(error.place().unwrap().field, "class");
}
