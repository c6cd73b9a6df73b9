//! Latitude and longitude as people type and copy them.

use tussock_core::graze::GrazeError;
use tussock_core::graze::sun::{Latitude, Longitude};
use tussock_core::units::OutOfRange;

/// One of the two figures of a place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// How far north or south.
    Latitude,
    /// How far east or west.
    Longitude,
}

/// Why what was typed was not read.
#[derive(Clone, Debug, PartialEq)]
pub enum Unread {
    /// Nothing was typed, and the other figure was.
    Empty(Field),
    /// No degrees could be read.
    NotDegrees(Field, String),
    /// A letter of the other figure, such as E behind a latitude.
    WrongSide(Field, char),
    /// Minutes or seconds of a degree go up to 59.
    Sixty(Field, f64),
    /// More degrees than there are.
    OutOfRange(Field, OutOfRange),
}

impl Unread {
    /// The field it stands under.
    pub const fn field(&self) -> Field {
        match self {
            Self::Empty(field)
            | Self::NotDegrees(field, _)
            | Self::WrongSide(field, _)
            | Self::Sixty(field, _)
            | Self::OutOfRange(field, _) => *field,
        }
    }
}

impl Field {
    /// Both, in the order in which they are asked.
    pub const ALL: [Self; 2] = [Self::Latitude, Self::Longitude];

    /// The degrees when they are on the earth.
    ///
    /// # Errors
    /// More than there are.
    fn on_earth(self, degrees: f64) -> Result<f64, GrazeError> {
        Ok(match self {
            Self::Latitude => Latitude::degrees(degrees)?.to_degrees(),
            Self::Longitude => Longitude::degrees(degrees)?.to_degrees(),
        })
    }

    /// The letter of the side that counts up, and of the side that counts down.
    const fn letters(self) -> [char; 2] {
        match self {
            Self::Latitude => ['N', 'S'],
            Self::Longitude => ['E', 'W'],
        }
    }

    /// Reads degrees: `51.2`, `-3,4`, `51.2 N`, `W 3.4`, `51° 12' 30" N`, `51 12.5`. North and east count up.
    ///
    /// A comma parts decimals: no figure of a place has thousands.
    ///
    /// # Errors
    /// What is wrong with it, with what was typed and what is allowed.
    pub fn read(self, typed: &str) -> Result<f64, Unread> {
        let (text, side) = self.side(typed.trim())?;
        let refused = || Unread::NotDegrees(self, typed.trim().to_owned());
        let (text, below) = match text.strip_prefix(['-', '\u{2212}', '\u{2013}']) {
            Some(rest) => (rest, true),
            None => (text.strip_prefix('+').unwrap_or(&text), false),
        };
        // "-3 S" could be read two ways.
        if below && side.is_some() {
            return Err(refused());
        }
        let figures = figures(text).ok_or_else(refused)?;
        let (degrees, parts) = figures.split_first().ok_or_else(refused)?;
        let mut sum = *degrees;
        let mut of = 1.0;
        let mut before = *degrees;
        for part in parts {
            // What has minutes has no decimals of degrees.
            if 0.0 < before.fract() {
                return Err(refused());
            }
            if 60.0 <= *part {
                return Err(Unread::Sixty(self, *part));
            }
            of *= 60.0;
            sum += part / of;
            before = *part;
        }
        let [_, down] = self.letters();
        let signed = if below || side == Some(down) {
            -sum
        } else {
            sum
        };
        self.on_earth(signed).map_err(|error| match error {
            GrazeError::OutOfRange(error) => Unread::OutOfRange(self, error),
            _ => refused(),
        })
    }

    /// What was typed without its letter, and the letter.
    fn side(self, typed: &str) -> Result<(String, Option<char>), Unread> {
        let upper = typed.to_uppercase();
        let letter = |found: Option<char>| found.filter(|c| c.is_alphabetic());
        let (rest, side) = match (
            letter(upper.chars().next()),
            letter(upper.chars().next_back()),
        ) {
            (Some(side), None) => (upper.strip_prefix(side), side),
            (None, Some(side)) => (upper.strip_suffix(side), side),
            _ => return Ok((upper, None)),
        };
        let rest = rest.unwrap_or_default().trim().to_owned();
        if self.letters().contains(&side) {
            Ok((rest, Some(side)))
        } else if Self::ALL.iter().any(|one| one.letters().contains(&side)) {
            Err(Unread::WrongSide(self, side))
        } else {
            Err(Unread::NotDegrees(self, typed.to_owned()))
        }
    }
}

/// Degrees, minutes and seconds; `None` where anything else stands among them, or more than three.
fn figures(text: &str) -> Option<Vec<f64>> {
    const MARKS: &[char] = &[
        '°', 'º', '˚', '\'', '’', '′', '"', '”', '″', ' ', '\u{a0}', '\u{202f}',
    ];
    let parts: Vec<&str> = text.split(MARKS).filter(|part| !part.is_empty()).collect();
    if 3 < parts.len() {
        return None;
    }
    parts
        .into_iter()
        .map(|part| {
            let plain = part.replace(',', ".");
            let known = plain.chars().all(|c| c.is_ascii_digit() || c == '.');
            known.then(|| plain.parse::<f64>().ok()).flatten()
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(field: Field, typed: &str, degrees: f64) {
        let read = field.read(typed).unwrap();
        assert!((read - degrees).abs() < 1e-9, "{typed}: {read}");
    }

    #[test]
    fn degrees_are_read_as_people_type_and_copy_them() {
        use Field::{Latitude, Longitude};
        near(Latitude, "51.2", 51.2);
        near(Latitude, " 51,2083 ", 51.2083);
        near(Latitude, "51,234", 51.234);
        near(Latitude, "51.2 N", 51.2);
        near(Latitude, "n51.2", 51.2);
        near(Latitude, "33.9° S", -33.9);
        near(Latitude, "-33.9", -33.9);
        near(Latitude, "\u{2212}33.9", -33.9);
        near(Latitude, "51° 12' 30\" N", 51.0 + 12.5 / 60.0);
        near(Latitude, "51°12′30″N", 51.0 + 12.5 / 60.0);
        near(Latitude, "51 12.5", 51.0 + 12.5 / 60.0);
        near(Longitude, "3° 24' W", -3.4);
        near(Longitude, "w 3,4", -3.4);
        near(Longitude, "-0.5", -0.5);
        near(Longitude, "0° 30' W", -0.5);
        near(Longitude, "+174.8", 174.8);
        near(Longitude, "180", 180.0);
    }

    #[test]
    fn what_cannot_be_is_refused_with_its_field_and_range() {
        use Field::{Latitude, Longitude};
        for typed in [
            "", "north", "51.2.3", "5 1 2 3", "51.2 10", "-33 S", "N 51 N", "51x",
        ] {
            assert!(
                matches!(Latitude.read(typed), Err(Unread::NotDegrees(Latitude, _))),
                "{typed}: {:?}",
                Latitude.read(typed)
            );
        }
        assert_eq!(
            Latitude.read("3.4 W"),
            Err(Unread::WrongSide(Latitude, 'W'))
        );
        assert_eq!(
            Longitude.read("S 3.4"),
            Err(Unread::WrongSide(Longitude, 'S'))
        );
        assert!(matches!(
            Latitude.read("51 60"),
            Err(Unread::Sixty(Latitude, _))
        ));
        let beyond = Latitude.read("91");
        assert!(
            matches!(&beyond, Err(Unread::OutOfRange(Latitude, error)) if 90.0 < error.value),
            "{beyond:?}"
        );
        assert!(matches!(
            Longitude.read("181 W"),
            Err(Unread::OutOfRange(Longitude, _))
        ));
    }
}
