//! Reading what people type.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::units::parse::{self, LengthUnit, MassUnit, ParseError};
use tussock_core::units::show::fixed;
use tussock_core::units::{AsFed, BodyMass};

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs()).max(1.0)
}

/// Digits, marks and units in any order, as a cold hand might type them.
fn typed() -> impl Strategy<Value = String> {
    prop_oneof![
        any::<String>(),
        "[0-9.,+ -]{0,12}",
        "[0-9]{1,4}[.,]?[0-9]{0,4} ?(kg|g|lb|st|oz|cm|m|in|hh|F|C|°F)?",
        "[0-9]{1,3} ?(st|lb|hh) ?[0-9.,]{0,5} ?(lb|oz|st)?",
        "[1-9][0-9]{300,320}(kg|st|lb|hh|m|F|in)?",
    ]
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn what_is_shown_is_read_back(value in -1.0e6..1.0e6_f64, decimals in 0_usize..6) {
        let shown = fixed(value, decimals);
        let read = parse::number(&shown);
        prop_assert!(read.is_ok(), "{shown}: {read:?}");
        let half = 0.5 * 10_f64.powi(-i32::try_from(decimals).unwrap_or(0));
        prop_assert!((read.unwrap_or(f64::NAN) - value).abs() <= half * (1.0 + 1e-6), "{shown}");
    }

    #[test]
    fn a_comma_reads_as_a_point_or_is_asked_back(value in 0.0..1.0e5_f64, decimals in 1_usize..6) {
        let point = fixed(value, decimals);
        let comma = point.replace('.', ",");
        let expected = parse::number(&point).unwrap_or(f64::NAN);
        match parse::number(&comma) {
            Ok(read) => {
                prop_assert!(near(read, expected), "{comma}");
                prop_assert!(decimals != 3 || comma.starts_with('0'), "{comma} has two readings");
            }
            Err(ParseError::TwoReadings { as_decimals, as_thousands, .. }) => {
                prop_assert!(decimals == 3 && !comma.starts_with('0'), "{comma} has one reading");
                prop_assert!(near(as_decimals, expected));
                prop_assert!(near(as_thousands, expected * 1000.0));
            }
            Err(other) => prop_assert!(false, "{comma}: {other:?}"),
        }
    }

    #[test]
    fn whatever_is_typed_is_read_as_a_finite_number_or_refused(text in typed()) {
        if let Ok(value) = parse::number(&text) {
            prop_assert!(value.is_finite(), "{text}");
        }
        for bare in [MassUnit::Kg, MassUnit::Lb] {
            if let Ok(value) = parse::body_mass(&text, bare) {
                prop_assert!(value.is_finite(), "{text}");
            }
            if let Ok(value) = parse::as_fed(&text, bare) {
                prop_assert!(value.is_finite(), "{text}");
            }
        }
        for bare in [LengthUnit::Cm, LengthUnit::Inch] {
            if let Ok(value) = parse::length(&text, bare) {
                prop_assert!(value.is_finite(), "{text}");
            }
        }
        if let Ok(value) = parse::temperature(&text) {
            prop_assert!(value.is_finite(), "{text}");
        }
    }

    #[test]
    fn spaces_and_capitals_change_nothing(value in 1_u32..2000, unit in "(kg|lb|st)") {
        let plain = parse::body_mass(&format!("{value} {unit}"), MassUnit::Kg);
        prop_assert!(plain.is_ok());
        for typed in [
            format!("{value}{unit}"),
            format!("  {value}   {}  ", unit.to_uppercase()),
            format!("{value} {unit}."),
        ] {
            prop_assert_eq!(&parse::body_mass(&typed, MassUnit::Lb), &plain, "{}", typed);
        }
    }

    #[test]
    fn stones_and_pounds_are_pounds(stones in 1_u32..120, pounds in 0_u32..14) {
        let together = parse::body_mass(&format!("{stones} st {pounds} lb"), MassUnit::Kg);
        let bare = parse::body_mass(&format!("{stones} st {pounds}"), MassUnit::Kg);
        let plain = parse::body_mass(&format!("{} lb", 14 * stones + pounds), MassUnit::Kg);
        prop_assert_eq!(&together, &bare);
        let (a, b) = (together.map(BodyMass::to_lb), plain.map(BodyMass::to_lb));
        prop_assert!(matches!((&a, &b), (Ok(a), Ok(b)) if near(*a, *b)), "{a:?} {b:?}");
    }

    #[test]
    fn pounds_and_ounces_are_ounces(pounds in 0_u32..200, ounces in 0_u32..16) {
        let together = parse::as_fed(&format!("{pounds} lb {ounces} oz"), MassUnit::Kg);
        let plain = parse::as_fed(&format!("{} oz", 16 * pounds + ounces), MassUnit::Kg);
        let (a, b) = (together.map(AsFed::to_kg), plain.map(AsFed::to_kg));
        prop_assert!(matches!((&a, &b), (Ok(a), Ok(b)) if near(*a, *b)), "{a:?} {b:?}");
    }

    #[test]
    fn hands_go_by_four_inches(hands in 5_u8..20, inches in 0_u8..10) {
        let read = parse::length(&format!("{hands}.{inches} hh"), LengthUnit::Cm);
        if inches < 4 {
            let expected = f64::from(4 * u32::from(hands) + u32::from(inches));
            prop_assert!(read.is_ok_and(|length| near(length.to_inches(), expected)));
        } else {
            let refused = matches!(read, Err(ParseError::NotHands { .. }));
            prop_assert!(refused);
        }
    }

    #[test]
    fn an_unknown_unit_is_named_and_never_guessed(value in 1_u32..500, unit in "[a-z]{4,8}") {
        let known = ["kilo", "kilos", "gram", "grams", "pound", "pounds", "stone", "stones", "ounce", "ounces"];
        prop_assume!(!known.contains(&unit.as_str()));
        match parse::body_mass(&format!("{value} {unit}"), MassUnit::Kg) {
            Err(ParseError::UnknownUnit { unit: named, known }) => {
                prop_assert_eq!(named, unit);
                prop_assert!(!known.is_empty());
            }
            other => prop_assert!(false, "{other:?}"),
        }
    }
}
