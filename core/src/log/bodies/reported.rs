//! What laboratories and labels say, in the units that are understood.

use super::base::Reported;
use crate::log::error::{Allowed, LogError, Path};
use crate::units::Energy;

/// The units in which a share is understood, in parts of a whole, and how many of them make a percent.
const SHARE_UNITS: &[(&str, f64)] = &[
    ("%", 1.0),
    ("g/100g", 1.0),
    ("g/kg", 10.0),
    // numeric: milligrams in a kilogram that make a percent
    ("mg/kg", 10_000.0),
    // numeric: the same by another name
    ("ppm", 10_000.0),
    // numeric: micrograms in a kilogram that make a percent
    ("ug/kg", 10_000_000.0),
];
/// The same units, for the error.
const SHARE_WORDS: &[&str] = &["%", "g/100g", "g/kg", "mg/kg", "ppm", "ug/kg"];
/// The units in which energy is understood.
const ENERGY_WORDS: &[&str] = &["Mcal/kg", "MJ/kg", "kcal/kg", "Mcal/lb"];
/// Milligrams in a kilogram that make a percent.
// numeric: 1,000,000 / 100
pub(super) const MG_PER_KG_IN_PERCENT: f64 = 10_000.0;

/// A reported share in percent.
pub(super) fn percent(reported: &Reported, path: &Path<'_>) -> Result<f64, LogError> {
    let unit = reported.unit.as_str();
    SHARE_UNITS
        .iter()
        .find(|(known, _)| *known == unit)
        .map(|(_, in_percent)| reported.value.number() / in_percent)
        .ok_or_else(|| path.key("unit").refuse(unit, Allowed::OneOf(SHARE_WORDS)))
}

/// A reported energy in Mcal a kilogram.
pub(super) fn mcal_per_kg(reported: &Reported, path: &Path<'_>) -> Result<f64, LogError> {
    let value = reported.value.number();
    match reported.unit.as_str() {
        "Mcal/kg" => Ok(value),
        "MJ/kg" => Ok(Energy::mj(value).to_mcal()),
        "kcal/kg" => Ok(value / 1000.0),
        "Mcal/lb" => Ok(value / crate::units::BodyMass::lb(1.0).to_kg()),
        other => Err(path.key("unit").refuse(other, Allowed::OneOf(ENERGY_WORDS))),
    }
}

/// A feeding rate in grams a kilogram of body weight a day.
pub(super) fn rate_g_per_kg(reported: &Reported, path: &Path<'_>) -> Result<f64, LogError> {
    match reported.unit.as_str() {
        "g/kg" => Ok(reported.value.number()),
        "g/100kg" => Ok(reported.value.number() / 100.0),
        other => Err(path.key("unit").refuse(other, Allowed::OneOf(RATE_WORDS))),
    }
}

/// A weight in grams.
pub(super) fn grams(reported: &Reported, path: &Path<'_>) -> Result<f64, LogError> {
    match reported.unit.as_str() {
        "g" => Ok(reported.value.number()),
        "kg" => Ok(reported.value.number() * 1000.0),
        other => Err(path.key("unit").refuse(other, Allowed::OneOf(GRAM_WORDS))),
    }
}

/// The units in which a weight is understood.
const GRAM_WORDS: &[&str] = &["g", "kg"];
/// The units in which a feeding rate is understood, of feed to body weight.
const RATE_WORDS: &[&str] = &["g/kg", "g/100kg"];

#[cfg(test)]
mod tests {
    use super::*;
    use crate::log::Name;
    use crate::log::bodies::base::Decimal;

    fn reported(value: &str, unit: &str) -> Reported {
        Reported {
            value: Decimal::new(value).unwrap(),
            unit: Name::new(unit).unwrap(),
            typed: None,
        }
    }

    #[test]
    fn the_units_of_the_table_and_of_the_error_are_the_same() {
        let table: Vec<&str> = SHARE_UNITS.iter().map(|(unit, _)| *unit).collect();
        assert_eq!(table, SHARE_WORDS);
    }

    #[test]
    fn one_content_is_the_same_in_every_unit() {
        for (value, unit) in [
            ("1.25", "%"),
            ("1.25", "g/100g"),
            ("12.5", "g/kg"),
            ("12500", "mg/kg"),
            ("12500", "ppm"),
            ("12500000", "ug/kg"),
        ] {
            let share = percent(&reported(value, unit), &Path::Root).unwrap();
            assert!((share - 1.25).abs() < 1e-12, "{unit}");
        }
        let energy = |value, unit| mcal_per_kg(&reported(value, unit), &Path::Root).unwrap();
        assert!((energy("8.368", "MJ/kg") - 2.0).abs() < 1e-12);
        assert!((energy("2000", "kcal/kg") - 2.0).abs() < 1e-12);
        assert!((energy("0.90718474", "Mcal/lb") - 2.0).abs() < 1e-9);
        let error = percent(&reported("1", "cups"), &Path::Root).unwrap_err();
        assert_eq!(error.place().unwrap().field, "unit");
    }
}
