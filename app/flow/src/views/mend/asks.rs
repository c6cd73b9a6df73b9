//! How a mend is asked for: what a person chose and set, as raw text.

use tussock_core::ration::mend::Aim;
use tussock_core::units::parse::{MassUnit, ParseError, as_fed, number};
use tussock_core::units::{AsFed, Bounds, OutOfRange};

/// The field of what is best.
pub const AIM: &str = "aim";
/// The field of whether typical foods may be bought.
pub const FROM: &str = "from";
/// The field of how many bought foods at most.
pub const MOST: &str = "most";
/// Before the key of a food, the field of its amount.
pub const SET: &str = "set-";
/// The word of typical foods.
pub const TYPICAL: &str = "typical";
/// The word of the yard's own foods alone.
pub const HERE: &str = "here";

/// What is best, with the words that stand in a draft.
pub const AIMS: [(Aim, &str); 3] = [
    (Aim::Cheapest, "cheapest"),
    (Aim::FewestFoods, "fewest"),
    (Aim::Lightest, "lightest"),
];

/// What an amount set by hand may be.
const SET_KG: Bounds = Bounds::new("set_kg", 0.0, 20.0);

/// How a mend is asked for.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Asks {
    /// What is best; `None` leaves it to the prices.
    pub aim: Option<Aim>,
    /// Typical foods may be bought, too.
    pub typical_too: bool,
    /// How many bought foods at most.
    pub at_most: Option<usize>,
    /// Amounts a day that a person set, by the key of the food; nothing takes the food out.
    pub set: Vec<(String, AsFed)>,
}

/// What is wrong with an amount.
#[derive(Clone, Debug, PartialEq)]
pub enum SetWrong {
    /// It cannot be read.
    Parse(ParseError),
    /// It is not believed.
    OutOfRange(OutOfRange),
}

/// An amount a day as typed: grams, or with its unit.
///
/// # Errors
/// What cannot be read or is not believed.
pub fn amount(typed: &str) -> Result<AsFed, SetWrong> {
    let kg = match number(typed) {
        Ok(grams) => grams / 1000.0,
        // Grams written out, or kilograms, or pounds.
        Err(error) => match grams_written(typed) {
            Some(grams) => number(grams).map_err(SetWrong::Parse)? / 1000.0,
            None => as_fed(typed, MassUnit::Kg)
                .map(AsFed::to_kg)
                .map_err(|_| SetWrong::Parse(error))?,
        },
    };
    SET_KG
        .check(kg)
        .map(AsFed::kg)
        .map_err(SetWrong::OutOfRange)
}

fn grams_written(typed: &str) -> Option<&str> {
    let text = typed.trim();
    let number = text.strip_suffix('g')?;
    (!number.ends_with(['k', 'K'])).then_some(number)
}

impl Asks {
    /// Of the raw text of the fields, and what is wrong with an amount, by the key of its food.
    pub fn read(
        text: impl Fn(&str) -> Option<String>,
        keys: impl Iterator<Item = String>,
    ) -> (Self, Vec<(String, SetWrong)>) {
        let aim = text(AIM).and_then(|word| {
            let mut aims = AIMS.iter();
            aims.find(|(_, key)| *key == word).map(|(aim, _)| *aim)
        });
        let mut asks = Self {
            aim,
            typical_too: text(FROM).as_deref() != Some(HERE),
            at_most: text(MOST).and_then(|word| word.parse().ok()),
            set: Vec::new(),
        };
        let mut wrong = Vec::new();
        for key in keys {
            let typed = text(&format!("{SET}{key}")).unwrap_or_default();
            if typed.trim().is_empty() {
                continue;
            }
            match amount(&typed) {
                Ok(a_day) => asks.set.push((key, a_day)),
                Err(error) => wrong.push((key, error)),
            }
        }
        (asks, wrong)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn amounts_are_grams_unless_they_say_otherwise() {
        for (typed, kg) in [
            ("200", 0.2),
            ("200 g", 0.2),
            ("12,5", 0.0125),
            ("0.5 kg", 0.5),
            ("0", 0.0),
        ] {
            let read = amount(typed).unwrap().to_kg();
            assert!((read - kg).abs() < 1e-9, "{typed}: {read}");
        }
        assert!(matches!(amount("a cup"), Err(SetWrong::Parse(_))));
        assert!(matches!(
            amount("-4"),
            Err(SetWrong::OutOfRange(_) | SetWrong::Parse(_))
        ));
        assert!(matches!(amount("90000"), Err(SetWrong::OutOfRange(_))));
    }

    #[test]
    fn an_untouched_form_asks_for_typical_foods_and_leaves_the_aim_to_the_prices() {
        let (asks, wrong) = Asks::read(|_| None, std::iter::empty());
        assert!(asks.typical_too && asks.aim.is_none() && asks.at_most.is_none());
        assert!(wrong.is_empty());
    }
}
