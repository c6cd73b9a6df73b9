//! The fields of the tape and the scale, and how their texts are read.

use super::Wrong;
use tussock_core::assess::Measure;
use tussock_core::units::parse::{LengthUnit, MassUnit, ParseError, body_mass, length};
use tussock_core::units::{BodyMass, Length};

/// Whether a tape or a scale.
pub const HOW: &str = "how";
/// Which body length.
pub const KIND: &str = "kind";
/// A tape measure, or string and ruler.
pub const TOOL: &str = "tool";
/// What the animal stood on.
pub const INSTRUMENT: &str = "instrument";
/// The vehicle with the animal.
pub const WITH: &str = "with";
/// The vehicle without it.
pub const WITHOUT: &str = "without";
/// Whether the measures behind the girths are in sight.
pub const MORE: &str = "more";

/// The measures of the tape, those of every week first.
pub const MEASURES: [Measure; 5] = [
    Measure::HeartGirth,
    Measure::UmbilicalGirth,
    Measure::Neck,
    Measure::Length,
    Measure::Height,
];

/// The measures that stand behind the girths.
pub const BEHIND: [Measure; 3] = [Measure::Neck, Measure::Length, Measure::Height];

/// The fields of a measure: its first, second and third reading.
pub const fn of_measure(measure: Measure) -> [&'static str; 3] {
    match measure {
        Measure::HeartGirth => ["girth", "girth2", "girth3"],
        Measure::UmbilicalGirth => ["belly", "belly2", "belly3"],
        Measure::Neck => ["neck", "neck2", "neck3"],
        Measure::Length => ["length", "length2", "length3"],
        Measure::Height => ["height", "height2", "height3"],
    }
}

/// The fields of the scale.
pub const OF_SCALE: [&str; 3] = ["scale", "scale2", "scale3"];

/// A field that was read: its name, what was typed, the value, and whether a unit was typed.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Read<T> {
    pub(super) field: &'static str,
    pub(super) typed: String,
    pub(super) value: T,
    pub(super) unit_said: bool,
}

/// Reads the fields that hold something, in their order; what cannot be read is named.
pub(super) fn read<T>(
    fields: &[&'static str],
    text: &dyn Fn(&str) -> String,
    parse: impl Fn(&str) -> Result<(T, bool), ParseError>,
    wrong: &mut Vec<Wrong>,
) -> Vec<Read<T>> {
    let mut found = Vec::new();
    for field in fields {
        let typed = text(field).trim().to_owned();
        if typed.is_empty() {
            continue;
        }
        match parse(&typed) {
            Ok((value, unit_said)) => found.push(Read {
                field,
                typed,
                value,
                unit_said,
            }),
            Err(error) => wrong.push(Wrong::Parse(field, error)),
        }
    }
    found
}

/// A length, and whether its unit was typed: without one the field's own would decide.
pub(super) fn a_length(text: &str) -> Result<(Length, bool), ParseError> {
    let read = length(text, LengthUnit::Cm)?;
    let unit_said = length(text, LengthUnit::Inch).is_ok_and(|other| other == read);
    Ok((read, unit_said))
}

/// A weight, and whether its unit was typed.
pub(super) fn a_mass(text: &str) -> Result<(BodyMass, bool), ParseError> {
    let read = body_mass(text, MassUnit::Kg)?;
    let unit_said = body_mass(text, MassUnit::Lb).is_ok_and(|other| other == read);
    Ok((read, unit_said))
}

/// What was understood of a length while it is typed; `None` as long as it cannot be read.
pub fn echo_length(text: &str) -> Option<Length> {
    a_length(text).ok().map(|(length, _)| length)
}

/// What was understood of a weight while it is typed.
pub fn echo_mass(text: &str) -> Option<BodyMass> {
    a_mass(text).ok().map(|(mass, _)| mass)
}
