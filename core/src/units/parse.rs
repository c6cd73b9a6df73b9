//! Reading what people type: "1,5", "14.2 hh", "12 st", "480 lb".
//!
//! A comma or a point may part the decimals. What could be read two ways ("1,234") is refused with both readings,
//! so that the person is asked. Nothing is guessed beyond the unit that the field declares.

mod land;

pub use land::{Ground, area, ground};

use super::bounds::OutOfRange;
use super::quantity::{BodyMass, Length, Temperature};
use super::{AsFed, published::OZ_PER_LB};

/// Why a typed value was refused.
#[derive(Clone, Debug, PartialEq)]
pub enum ParseError {
    /// Nothing was typed.
    Empty,
    /// No number could be read.
    NotANumber {
        /// What was typed.
        typed: String,
    },
    /// Two readings are possible, such as 1.234 and 1234.
    TwoReadings {
        /// What was typed.
        typed: String,
        /// The comma or point read as parting decimals.
        as_decimals: f64,
        /// The comma or point read as parting thousands.
        as_thousands: f64,
    },
    /// The unit is not one of this field.
    UnknownUnit {
        /// What was typed after the number.
        unit: String,
        /// The units that are understood.
        known: &'static [&'static str],
    },
    /// Hands go by four: 14.4 hh does not exist.
    NotHands {
        /// What was typed.
        typed: String,
    },
    /// A number outside what the field allows.
    OutOfRange(OutOfRange),
}

impl From<OutOfRange> for ParseError {
    fn from(error: OutOfRange) -> Self {
        Self::OutOfRange(error)
    }
}

/// The unit a bare number is read in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum MassUnit {
    /// Kilograms.
    Kg,
    /// Pounds.
    Lb,
}

/// The unit a bare number is read in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LengthUnit {
    /// Centimetres.
    Cm,
    /// Inches.
    Inch,
}

/// Digits in a group of thousands.
// numeric: how thousands are written
const GROUP: usize = 3;

/// Splits typed text into number-and-unit pairs: "12 st 4 lb" is two.
fn pairs(typed: &str) -> Result<Vec<(&str, String)>, ParseError> {
    let text = typed.trim();
    if text.is_empty() {
        return Err(ParseError::Empty);
    }
    let mut found = Vec::new();
    let mut rest = text;
    while !rest.is_empty() {
        let number_end = rest
            .find(|c: char| !(c.is_ascii_digit() || c == '.' || c == ',' || c == '-' || c == '+'))
            .unwrap_or(rest.len());
        let (number, after) = rest.split_at(number_end);
        if number.is_empty() {
            return Err(ParseError::NotANumber {
                typed: typed.to_owned(),
            });
        }
        let after = after.trim_start();
        let unit_end = after
            .find(|c: char| c.is_ascii_digit() || c == '-' || c == '+')
            .unwrap_or(after.len());
        let (unit, next) = after.split_at(unit_end);
        found.push((number, unit.trim().trim_end_matches('.').to_lowercase()));
        rest = next;
    }
    Ok(found)
}

/// Reads a number with a comma or a point before its decimals.
///
/// Exactly three digits after a single comma ("1,234") could be thousands, and is asked back; after a single point
/// they are decimals, since every scale and every label here writes the decimal point so. A leading zero ("0,125")
/// leaves one reading.
pub fn number(typed: &str) -> Result<f64, ParseError> {
    let text: String = typed.chars().filter(|c| !c.is_whitespace()).collect();
    if text.is_empty() {
        return Err(ParseError::Empty);
    }
    let not_a_number = || ParseError::NotANumber {
        typed: typed.to_owned(),
    };
    let unsigned = text.strip_prefix(['-', '+']).unwrap_or(&text);
    if unsigned.is_empty()
        || !unsigned.starts_with(|c: char| c.is_ascii_digit() || c == '.' || c == ',')
        || !unsigned
            .chars()
            .all(|c| c.is_ascii_digit() || c == '.' || c == ',')
        || !unsigned.chars().any(|c| c.is_ascii_digit())
    {
        return Err(not_a_number());
    }
    let read = |plain: &str| {
        plain
            .parse::<f64>()
            .ok()
            .filter(|value| value.is_finite())
            .ok_or_else(not_a_number)
    };
    let marks: Vec<char> = unsigned.chars().filter(|c| !c.is_ascii_digit()).collect();
    match marks.as_slice() {
        [] | ['.'] => read(&text),
        [','] => {
            let as_decimals = read(&text.replace(',', "."))?;
            let ambiguous = unsigned.split_once(',').is_some_and(|(whole, part)| {
                part.len() == GROUP && !whole.is_empty() && !whole.starts_with('0')
            });
            if ambiguous {
                return Err(ParseError::TwoReadings {
                    typed: typed.to_owned(),
                    as_decimals,
                    as_thousands: read(&text.replace(',', ""))?,
                });
            }
            Ok(as_decimals)
        }
        [first, .., last] if first != last => {
            // "1,234.5" or "1.234,5": the last mark parts the decimals, and it may stand once.
            if marks.iter().filter(|mark| *mark == last).count() == 1
                && marks.iter().rev().skip(1).all(|m| m == first)
            {
                read(&text.replace(*first, "").replace(*last, "."))
            } else {
                Err(not_a_number())
            }
        }
        _ => Err(not_a_number()),
    }
}

/// A number of hundreds of digits can be read and yet not be converted: it is no number then.
fn finite<T>(value: T, is_finite: bool, typed: &str) -> Result<T, ParseError> {
    if is_finite {
        Ok(value)
    } else {
        Err(ParseError::NotANumber {
            typed: typed.to_owned(),
        })
    }
}

/// Reads the weight of an animal: kg, lb, st, or "12 st 4 lb". Range: see `assess`.
pub fn body_mass(typed: &str, bare: MassUnit) -> Result<BodyMass, ParseError> {
    const KNOWN: &[&str] = &["kg", "lb", "st"];
    let parts = pairs(typed)?;
    let several = parts.len() > 1;
    let mut total = BodyMass::ZERO;
    for (index, (text, unit)) in parts.iter().enumerate() {
        let value = number(text)?;
        total = total
            + match (unit.as_str(), bare) {
                ("kg" | "kgs" | "kilo" | "kilos", _) if !several => BodyMass::kg(value),
                ("st" | "stone" | "stones", _) if index == 0 => BodyMass::stone(value),
                ("lb" | "lbs" | "pound" | "pounds", _) if !several || index == 1 => {
                    BodyMass::lb(value)
                }
                // "12 st 4": what stands bare after stones is pounds.
                ("", _) if several && index == 1 => BodyMass::lb(value),
                ("", MassUnit::Kg) if !several => BodyMass::kg(value),
                ("", MassUnit::Lb) if !several => BodyMass::lb(value),
                _ => {
                    return Err(ParseError::UnknownUnit {
                        unit: unit.clone(),
                        known: KNOWN,
                    });
                }
            };
    }
    finite(total, total.is_finite(), typed)
}

/// Reads a weight of feed or of a net on the scale: kg, g, lb, oz.
pub fn as_fed(typed: &str, bare: MassUnit) -> Result<AsFed, ParseError> {
    const KNOWN: &[&str] = &["kg", "g", "lb", "oz"];
    let parts = pairs(typed)?;
    let several = parts.len() > 1;
    let mut total = AsFed::ZERO;
    for (index, (text, unit)) in parts.iter().enumerate() {
        let value = number(text)?;
        let pounds = |lb: f64| AsFed::kg(BodyMass::lb(lb).to_kg());
        total = total
            + match (unit.as_str(), bare) {
                ("kg" | "kgs" | "kilo" | "kilos", _) if !several => AsFed::kg(value),
                ("g" | "gram" | "grams", _) if !several => AsFed::kg(value / 1000.0),
                ("lb" | "lbs" | "pound" | "pounds", _) if index == 0 => pounds(value),
                ("oz" | "ounce" | "ounces", _) if !several || index == 1 => {
                    pounds(value / OZ_PER_LB)
                }
                ("", MassUnit::Kg) if !several => AsFed::kg(value),
                ("", MassUnit::Lb) if !several => pounds(value),
                _ => {
                    return Err(ParseError::UnknownUnit {
                        unit: unit.clone(),
                        known: KNOWN,
                    });
                }
            };
    }
    finite(total, total.is_finite(), typed)
}

/// Reads a length: cm, m, in, or hands ("14.2 hh" is 14 hands and 2 inches).
pub fn length(typed: &str, bare: LengthUnit) -> Result<Length, ParseError> {
    const KNOWN: &[&str] = &["cm", "m", "in", "hh"];
    let parts = pairs(typed)?;
    let [(text, unit)] = parts.as_slice() else {
        return Err(ParseError::NotANumber {
            typed: typed.to_owned(),
        });
    };
    let length = match (unit.as_str(), bare) {
        ("cm", _) | ("", LengthUnit::Cm) => Length::cm(number(text)?),
        ("m", _) => Length::cm(number(text)? * 100.0),
        ("in" | "inch" | "inches" | "\"", _) | ("", LengthUnit::Inch) => {
            Length::inches(number(text)?)
        }
        ("hh" | "h" | "hands" | "hand", _) => hands(text, typed)?,
        _ => {
            return Err(ParseError::UnknownUnit {
                unit: unit.clone(),
                known: KNOWN,
            });
        }
    };
    finite(length, length.is_finite(), typed)
}

/// Hands: the digit after the mark is inches, 0 to 3, and may carry a half ("14.2.5" is not written).
fn hands(text: &str, typed: &str) -> Result<Length, ParseError> {
    let not_hands = || ParseError::NotHands {
        typed: typed.to_owned(),
    };
    let (whole, inches) = text.split_once(['.', ',']).unwrap_or((text, "0"));
    let whole: u8 = whole.parse().map_err(|_| not_hands())?;
    match inches {
        "" | "0" | "1" | "2" | "3" => {
            let inches: u8 = if inches.is_empty() {
                0
            } else {
                inches.parse().map_err(|_| not_hands())?
            };
            Ok(Length::hands(whole, f64::from(inches)))
        }
        _ => Err(not_hands()),
    }
}

/// Reads a temperature: degrees Celsius, or Fahrenheit with an F.
pub fn temperature(typed: &str) -> Result<Temperature, ParseError> {
    const KNOWN: &[&str] = &["C", "F"];
    let parts = pairs(typed)?;
    let [(text, unit)] = parts.as_slice() else {
        return Err(ParseError::NotANumber {
            typed: typed.to_owned(),
        });
    };
    let temperature = match unit.trim_start_matches(['°', 'º']).trim() {
        "" | "c" => Temperature::celsius(number(text)?),
        "f" => Temperature::fahrenheit(number(text)?),
        _ => {
            return Err(ParseError::UnknownUnit {
                unit: unit.clone(),
                known: KNOWN,
            });
        }
    };
    finite(temperature, temperature.is_finite(), typed)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(a: f64, b: f64) -> bool {
        (a - b).abs() < 1e-9
    }

    #[test]
    fn a_comma_or_a_point_parts_the_decimals() {
        for (typed, value) in [
            ("1,5", 1.5),
            ("1.5", 1.5),
            (" 12 ", 12.0),
            ("0,125", 0.125),
            ("1,234.5", 1234.5),
            ("1.234,5", 1234.5),
            ("-2", -2.0),
            (".5", 0.5),
        ] {
            assert!(near(number(typed).unwrap(), value), "{typed}");
        }
    }

    #[test]
    fn what_can_be_read_two_ways_is_asked_back() {
        let Err(ParseError::TwoReadings {
            as_decimals,
            as_thousands,
            ..
        }) = number("1,234")
        else {
            panic!("1,234 has two readings");
        };
        assert!(near(as_decimals, 1.234) && near(as_thousands, 1234.0));
    }

    #[test]
    fn what_is_no_number_is_named() {
        for typed in [
            "", "  ", "abc", "1,2,3", "1.2.3", "--1", "1-2", "1e5", ",", "NaN", "inf",
        ] {
            assert!(number(typed).is_err(), "{typed:?}");
        }
    }

    #[test]
    fn hands_go_by_four() {
        // Checked against pint: 14.2 hands means 14 hands 2 inches = 147.32 cm.
        assert!(near(
            length("14.2 hh", LengthUnit::Cm).unwrap().to_cm(),
            147.32
        ));
        assert!(near(
            length("14hh", LengthUnit::Cm).unwrap().to_cm(),
            142.24
        ));
        assert_eq!(
            length("14.4 hh", LengthUnit::Cm),
            Err(ParseError::NotHands {
                typed: "14.4 hh".into()
            })
        );
    }

    #[test]
    fn pounds_and_stones_become_kilograms() {
        assert!(near(
            body_mass("480 lb", MassUnit::Kg).unwrap().to_kg(),
            217.724_337_6
        ));
        assert!(near(
            body_mass("12 st", MassUnit::Kg).unwrap().to_kg(),
            76.203_518_16
        ));
        assert!(near(
            body_mass("12 st 4", MassUnit::Kg).unwrap().to_lb(),
            172.0
        ));
        assert!(near(body_mass("305", MassUnit::Kg).unwrap().to_kg(), 305.0));
        assert!(matches!(
            body_mass("305 cm", MassUnit::Kg),
            Err(ParseError::UnknownUnit { .. })
        ));
        assert!(near(as_fed("3,6", MassUnit::Kg).unwrap().to_kg(), 3.6));
        assert!(near(as_fed("750 g", MassUnit::Kg).unwrap().to_kg(), 0.75));
        assert!(near(
            temperature("102 F").unwrap().to_celsius(),
            38.888_888_888_9
        ));
    }
}
