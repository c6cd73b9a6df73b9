//! The numbers of a food's form, read.

use super::{Field, Wrong};
use crate::forms::hay::reported;
use tussock_core::log::bodies::base::{FeedWeight, Reported};
use tussock_core::units::AsFed;
use tussock_core::units::parse::{MassUnit, ParseError, as_fed, number};

/// A weight whose bare number is grams.
pub(super) fn grams(typed: &str) -> Result<AsFed, ParseError> {
    match number(typed) {
        Ok(grams) => Ok(AsFed::kg(grams / 1000.0)),
        Err(_) => as_fed(typed, MassUnit::Kg),
    }
}

/// A weight whose bare number is kilograms.
pub(super) fn kilograms(typed: &str) -> Result<AsFed, ParseError> {
    as_fed(typed, MassUnit::Kg)
}

pub(super) fn weight(
    typed: &str,
    field: Field,
    read: fn(&str) -> Result<AsFed, ParseError>,
) -> Result<Option<FeedWeight>, Wrong> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    let weight = read(typed).map_err(|error| Wrong::Parse(field, error))?;
    FeedWeight::of(weight, Some(typed.to_owned()))
        .map(Some)
        .map_err(Wrong::Log)
}

/// What a serving weighs, to the gram where it is not typed as grams.
pub(super) fn serving(typed: &str) -> Result<Option<Reported>, Wrong> {
    let typed = typed.trim();
    if typed.is_empty() || number(typed).is_ok() {
        return plain(typed, "g", Field::Serving);
    }
    let Some(weight) = weight(typed, Field::Serving, grams)? else {
        return Ok(None);
    };
    let whole = reported(&weight.g.get().to_string(), "g").map_err(Wrong::Log)?;
    Ok(Some(Reported {
        typed: Some(typed.to_owned()),
        ..whole
    }))
}

/// A number in a unit that is fixed.
pub(super) fn plain(typed: &str, unit: &str, field: Field) -> Result<Option<Reported>, Wrong> {
    let typed = typed.trim();
    if typed.is_empty() {
        return Ok(None);
    }
    number(typed).map_err(|error| Wrong::Parse(field, error))?;
    reported(typed, unit).map(Some).map_err(Wrong::Log)
}

/// A stored rate in grams for 100 kg.
pub(super) fn rate_text(rate: &Reported) -> String {
    match rate.unit.as_str() {
        "g/100kg" => rate.value.digits().to_owned(),
        _ => (rate.value.number() * 100.0).to_string(),
    }
}
