//! Reading areas and lengths on the ground: "0.8 ha", "2 acres", "30 m", "40 paces".

use super::{ParseError, finite, number};
use crate::units::published::CM_PER_M;
use crate::units::{Area, Length};

/// A length on the ground, as it was typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Ground {
    /// By a tape or a wheel.
    Measured(Length),
    /// So many paces of whoever walked it.
    Paces(f64),
}

/// A number, and what stands behind it in small letters.
fn parted(typed: &str) -> Result<(f64, String), ParseError> {
    let text = typed.trim();
    if text.is_empty() {
        return Err(ParseError::Empty);
    }
    let end = text
        .find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '+')))
        .unwrap_or(text.len());
    let (figure, unit) = text.split_at(end);
    if figure.is_empty() {
        return Err(ParseError::NotANumber {
            typed: typed.to_owned(),
        });
    }
    Ok((
        number(figure)?,
        unit.trim().trim_end_matches('.').to_lowercase(),
    ))
}

/// Reads an area of land: square metres where no unit stands, m2, ha or acres.
pub fn area(typed: &str) -> Result<Area, ParseError> {
    const KNOWN: &[&str] = &["m2", "ha", "acres"];
    let (figure, unit) = parted(typed)?;
    let area = match unit.as_str() {
        "" | "m2" | "m²" | "sq m" | "sqm" => Area::sq_m(figure),
        "ha" | "hectare" | "hectares" => Area::hectares(figure),
        "ac" | "acre" | "acres" => Area::acres(figure),
        _ => return Err(ParseError::UnknownUnit { unit, known: KNOWN }),
    };
    finite(area, area.is_finite(), typed)
}

/// Reads a length on the ground: metres where no unit stands, m, cm, ft or paces.
pub fn ground(typed: &str) -> Result<Ground, ParseError> {
    const KNOWN: &[&str] = &["m", "ft", "paces"];
    // numeric: a foot is twelve inches
    const INCHES_PER_FOOT: f64 = 12.0;
    let (figure, unit) = parted(typed)?;
    let length = match unit.as_str() {
        "" | "m" | "metre" | "metres" => Length::cm(figure * CM_PER_M),
        "cm" => Length::cm(figure),
        "ft" | "foot" | "feet" | "'" => Length::inches(figure * INCHES_PER_FOOT),
        "pace" | "paces" | "step" | "steps" => return Ok(Ground::Paces(figure)),
        _ => return Err(ParseError::UnknownUnit { unit, known: KNOWN }),
    };
    finite(Ground::Measured(length), length.is_finite(), typed)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_area_is_read_in_its_unit() {
        for (typed, sq_m) in [
            ("2000", 2000.0),
            ("2000 m2", 2000.0),
            ("2 000 m²", 0.0),
            ("0,8 ha", 8000.0),
            ("1 acre", 4046.856),
            ("2 ac.", 8093.713),
        ] {
            let read = area(typed);
            if sq_m > 0.0 {
                assert!((read.unwrap().to_sq_m() - sq_m).abs() < 0.01, "{typed}");
            } else {
                assert!(read.is_err(), "{typed}");
            }
        }
        assert_eq!(area(" "), Err(ParseError::Empty));
        assert!(matches!(
            area("3 rods"),
            Err(ParseError::UnknownUnit { .. })
        ));
        assert!(matches!(area("big"), Err(ParseError::NotANumber { .. })));
    }

    #[test]
    fn a_length_on_the_ground_is_measured_or_paced() {
        let metres = |typed: &str| match ground(typed).unwrap() {
            Ground::Measured(length) => length.to_m(),
            Ground::Paces(_) => 0.0,
        };
        assert!((metres("30") - 30.0).abs() < 1e-9);
        assert!((metres("30,5 m") - 30.5).abs() < 1e-9);
        assert!((metres("100 ft") - 30.48).abs() < 1e-9);
        assert_eq!(ground("40 paces"), Ok(Ground::Paces(40.0)));
        assert!(ground("40 strides").is_err());
    }
}
