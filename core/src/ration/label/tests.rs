//! Units of labels, and what cannot be.

use super::super::food::Food;
use super::*;
use crate::limits::Nutrient;
use proptest::prelude::*;

fn label(class: FoodClass, lines: &[(Content, f64, &str)]) -> RawLabel {
    RawLabel {
        id: None,
        name: "A food".into(),
        class,
        basis: LabelBasis::AsFed,
        dry_percent: Some(90.0),
        serving_g: None,
        rate_g_per_kg: None,
        lines: lines
            .iter()
            .map(|(content, value, unit)| LabelLine {
                content: *content,
                value: *value,
                unit: LabelUnit::from_word(unit).unwrap(),
            })
            .collect(),
        record: None,
    }
}

const COPPER: Content = Content::Of(Nutrient::Copper);
const CALCIUM: Content = Content::Of(Nutrient::Calcium);
const VITAMIN_E: Content = Content::Of(Nutrient::VitaminE);

/// A nutrient in its own unit in a kilogram as fed.
fn read(raw: &RawLabel, nutrient: Nutrient) -> Option<f64> {
    let (label, _) = check_label(raw);
    label
        .per_kg
        .iter()
        .find(|(of, _)| *of == nutrient)
        .map(|(_, value)| *value)
}

fn near(a: Option<f64>, b: f64) {
    assert!(
        (a.unwrap() - b).abs() < 1e-9 * b.abs().max(1.0),
        "{a:?} {b}"
    );
}

#[test]
fn one_copper_in_every_unit_is_the_same_copper() {
    // 400 mg/kg; a serving of 50 g; 1 g a kilogram of body: 100 g for 100 kg.
    for (value, unit) in [
        (0.04, "%"),
        (0.04, "g/100g"),
        (0.4, "g/kg"),
        (400.0, "mg/kg"),
        (400.0, "ppm"),
        (400_000.0, "ug/kg"),
        (20.0, "mg/serving"),
        (0.02, "g/serving"),
        (20_000.0, "ug/serving"),
        (40.0, "mg/100kg"),
        (0.04, "g/100kg"),
        (40_000.0, "ug/100kg"),
    ] {
        let mut raw = label(FoodClass::Balancer, &[(COPPER, value, unit)]);
        raw.serving_g = Some(50.0);
        raw.rate_g_per_kg = Some(1.0);
        near(read(&raw, Nutrient::Copper), 400.0);
        assert_eq!(check_label(&raw).1, [], "{unit}");
    }
}

#[test]
fn dry_matter_and_as_fed_are_two_bases_but_a_serving_is_an_amount() {
    let mut raw = label(FoodClass::Balancer, &[(CALCIUM, 4.0, "%")]);
    near(read(&raw, Nutrient::Calcium), 40.0);
    raw.basis = LabelBasis::DryMatter;
    near(read(&raw, Nutrient::Calcium), 36.0);
    raw.lines = label(FoodClass::Balancer, &[(CALCIUM, 2.0, "g/serving")]).lines;
    raw.serving_g = Some(50.0);
    near(read(&raw, Nutrient::Calcium), 40.0);
    raw.dry_percent = None;
    near(read(&raw, Nutrient::Calcium), 40.0);
    raw.lines = label(FoodClass::Balancer, &[(CALCIUM, 4.0, "%")]).lines;
    let (read, findings) = check_label(&raw);
    assert!(read.per_kg.is_empty());
    assert_eq!(
        findings,
        [LabelFinding::Needs {
            content: CALCIUM,
            unit: LabelUnit::Percent,
            field: LabelField::DryMatter
        }]
    );
}

#[test]
fn a_serving_without_its_weight_and_a_dose_without_its_rate_are_left_out() {
    for (unit, field) in [
        ("mg/serving", LabelField::Serving),
        ("mg/100kg", LabelField::Rate),
    ] {
        let raw = label(FoodClass::Balancer, &[(COPPER, 20.0, unit)]);
        let (read, findings) = check_label(&raw);
        assert!(read.per_kg.is_empty());
        assert!(
            matches!(findings.as_slice(), [LabelFinding::Needs { field: found, .. }] if *found == field)
        );
    }
}

#[test]
fn copper_of_25_percent_or_25_grams_a_kilogram_was_milligrams() {
    for (unit, allowed) in [("%", 0.02), ("g/kg", 0.2)] {
        let raw = label(FoodClass::Compound, &[(COPPER, 25.0, unit)]);
        let (_, findings) = check_label(&raw);
        let [
            LabelFinding::Unlikely {
                content,
                value,
                allowed: [_, most],
                likely,
                ..
            },
        ] = findings.as_slice()
        else {
            panic!("{findings:?}");
        };
        assert_eq!((*content, *value), (COPPER, 25.0));
        assert!((most - allowed).abs() < 1e-12, "{most}");
        assert_eq!(*likely, Some(LabelUnit::PerKg(Measure::Milligram)));
    }
    // As a sulphate it is a quarter copper.
    let raw = label(FoodClass::Source, &[(COPPER, 25.0, "%")]);
    assert_eq!(check_label(&raw).1, []);
}

#[test]
fn calcium_in_milligrams_was_percent_or_grams() {
    let raw = label(FoodClass::Balancer, &[(CALCIUM, 4.5, "mg/kg")]);
    let (_, findings) = check_label(&raw);
    assert!(matches!(
        findings.as_slice(),
        [LabelFinding::Unlikely {
            likely: Some(LabelUnit::PerKg(Measure::Gram)),
            ..
        }]
    ));
}

#[test]
fn more_than_the_whole_less_than_nothing_and_no_number_cannot_be() {
    for value in [140.0, -1.0, f64::NAN, f64::INFINITY] {
        let raw = label(FoodClass::Source, &[(CALCIUM, value, "%")]);
        let (read, findings) = check_label(&raw);
        assert!(read.per_kg.is_empty());
        assert!(
            matches!(
                findings.as_slice(),
                [LabelFinding::Impossible {
                    allowed: [least, most],
                    ..
                }] if *least == 0.0 && (most - 100.0).abs() < 1e-9
            ),
            "{value} {findings:?}"
        );
    }
}

#[test]
fn megajoules_are_not_megacalories() {
    let raw = label(FoodClass::Compound, &[(Content::Energy, 10.46, "MJ/kg")]);
    let (read, findings) = check_label(&raw);
    assert_eq!(findings, []);
    near(read.energy_mcal_per_kg, 2.5);
    let raw = label(FoodClass::Compound, &[(Content::Energy, 10.46, "Mcal/kg")]);
    let (read, findings) = check_label(&raw);
    assert_eq!(read.energy_mcal_per_kg, None);
    assert!(matches!(
        findings.as_slice(),
        [LabelFinding::Impossible {
            likely: Some(LabelUnit::MjPerKg),
            ..
        }]
    ));
}

#[test]
fn a_vitamin_by_mass_and_a_mineral_in_units_are_of_the_other_sort() {
    for (content, unit) in [
        (VITAMIN_E, "mg/kg"),
        (VITAMIN_E, "%"),
        (COPPER, "IU/kg"),
        (Content::Energy, "%"),
        (COPPER, "MJ/kg"),
    ] {
        let raw = label(FoodClass::Balancer, &[(content, 3.0, unit)]);
        let (read, findings) = check_label(&raw);
        assert!(read.per_kg.is_empty());
        assert!(matches!(
            findings.as_slice(),
            [LabelFinding::UnitOfOtherSort { .. }]
        ));
    }
    let raw = label(FoodClass::Balancer, &[(VITAMIN_E, 1500.0, "IU/kg")]);
    near(read(&raw, Nutrient::VitaminE), 1500.0);
}

#[test]
fn parts_that_are_more_than_their_whole_are_said() {
    let protein = Content::Of(Nutrient::CrudeProtein);
    let lines = [
        (Content::SugarStarch, 10.0, "%"),
        (Content::Starch, 12.0, "%"),
        (protein, 45.0, "%"),
        (Content::NeutralFibre, 50.0, "%"),
        (protein, 40.0, "%"),
    ];
    let (_, findings) = check_label(&label(FoodClass::Compound, &lines));
    assert!(findings.contains(&LabelFinding::GivenTwice { content: protein }));
    assert!(findings.iter().any(|finding| matches!(
        finding,
        LabelFinding::PartOverWhole {
            part: Content::Starch,
            whole: Content::SugarStarch,
            ..
        }
    )));
    assert!(findings.iter().any(
        |finding| matches!(finding, LabelFinding::PartsOverWhole { sum, most } if sum > most)
    ));
}

#[test]
fn a_field_outside_its_range_is_taken_as_not_said() {
    let mut raw = label(FoodClass::Balancer, &[(COPPER, 20.0, "mg/serving")]);
    raw.dry_percent = Some(900.0);
    raw.serving_g = Some(0.0);
    raw.rate_g_per_kg = Some(f64::NAN);
    let (read, findings) = check_label(&raw);
    assert_eq!((read.dry_percent, read.rate_g_per_kg), (None, None));
    // Three fields, and the line that cannot be reckoned without one of them.
    assert_eq!(findings.len(), 4, "{findings:?}");
}

#[test]
fn every_unit_has_its_word_and_every_nutrient_its_range() {
    for word in LabelUnit::words() {
        let unit = LabelUnit::from_word(word).unwrap();
        assert_eq!(LabelUnit::from_word(unit.word()), Some(unit));
    }
    for nutrient in Nutrient::ALL {
        let believed = super::super::published::BELIEVED
            .iter()
            .find(|row| row.nutrient == nutrient)
            .unwrap();
        assert!(believed.least < believed.feed && believed.feed <= believed.balancer);
    }
    // Nothing of the catalogue is unlikely.
    for food in super::super::TypicalFood::ALL {
        let made = food.food();
        let lines: Vec<LabelLine> = Nutrient::ALL
            .into_iter()
            .filter_map(|nutrient| {
                let value = nutrient.in_unit(made.per_kg(nutrient)?)?;
                let unit = match nutrient.unit() {
                    crate::limits::NutrientUnit::Gram => "g/kg",
                    crate::limits::NutrientUnit::Milligram => "mg/kg",
                    crate::limits::NutrientUnit::InternationalUnit => "IU/kg",
                };
                Some(LabelLine {
                    content: Content::Of(nutrient),
                    value,
                    unit: LabelUnit::from_word(unit).unwrap(),
                })
            })
            .collect();
        let raw = RawLabel {
            lines,
            ..label(food.class(), &[])
        };
        let (read, findings) = check_label(&raw);
        assert_eq!(findings, [], "{food:?}");
        let again = Food::read(read).unwrap();
        for nutrient in Nutrient::ALL {
            match (again.per_kg(nutrient), made.per_kg(nutrient)) {
                (Some(a), Some(b)) => {
                    let (a, b) = (nutrient.in_unit(a).unwrap(), nutrient.in_unit(b).unwrap());
                    assert!((a - b).abs() <= 1e-9 * b.abs().max(1.0));
                }
                (a, b) => assert_eq!(a, b, "{food:?} {nutrient:?}"),
            }
        }
    }
}

proptest! {
    #[test]
    fn reading_a_label_never_panics_and_never_makes_more_than_whole(
        value in prop_oneof![any::<f64>(), 0.0..1e6_f64],
        word in prop::sample::select(LabelUnit::words().collect::<Vec<_>>()),
        serving in prop::option::of(any::<f64>()),
        rate in prop::option::of(0.0..30.0_f64),
    ) {
        for content in [COPPER, VITAMIN_E, Content::Energy, Content::Starch] {
            let mut raw = label(FoodClass::Compound, &[(content, value, word)]);
            raw.serving_g = serving;
            raw.rate_g_per_kg = rate;
            let (read, _) = check_label(&raw);
            prop_assert!(Food::read(read).is_ok());
        }
    }
}
