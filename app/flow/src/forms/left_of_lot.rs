//! What is left of a lot, counted: bales or a weight, as typed.

use crate::acts::{Act, New};
use tussock_core::animal::LotId;
use tussock_core::log::bodies::{BaleTenths, HeldV1, LotCountV1, LotWeight};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{MassUnit, ParseError, as_fed, number};

/// What an amount of a lot is given in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum In {
    /// Bales.
    Bales,
    /// A weight.
    Weight,
}

impl In {
    /// Both with the words that stand in a draft, in the order in which a person is asked.
    pub const ALL: [(Self, &'static str); 2] = [(Self::Bales, "bales"), (Self::Weight, "weight")];

    /// Of the word in a draft.
    pub fn of(word: &str) -> Option<Self> {
        let mut all = Self::ALL.iter();
        all.find(|(_, key)| *key == word).map(|(found, _)| *found)
    }

    /// The word in a draft.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Bales => "bales",
            Self::Weight => "weight",
        }
    }
}

/// What is wrong with an amount.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// Nobody said whether it is bales or a weight.
    NoUnit,
    /// It cannot be read.
    Parse(ParseError),
    /// It cannot be stored.
    Log(LogError),
}

impl From<LogError> for Wrong {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

impl From<ParseError> for Wrong {
    fn from(error: ParseError) -> Self {
        Self::Parse(error)
    }
}

/// An amount as typed: a count of bales, halves too, or a weight in the unit given, kilograms unless it says otherwise.
///
/// # Errors
/// What cannot be read or is beyond what is stored.
pub fn amount(of: In, typed: &str) -> Result<HeldV1, Wrong> {
    Ok(match of {
        In::Bales => HeldV1::Bales {
            tenths: BaleTenths::of(number(typed)?)?,
        },
        In::Weight => HeldV1::Weight {
            weight: LotWeight::of(as_fed(typed, MassUnit::Kg)?, Some(typed.trim().to_owned()))?,
        },
    })
}

/// The act that writes down what is left of a lot. From now on only what is weighed out goes off.
///
/// # Errors
/// What is wrong with it.
pub fn count(lot: &LotId, of: Option<In>, typed: &str, id: &str) -> Result<Act, Wrong> {
    let left = amount(of.ok_or(Wrong::NoUnit)?, typed)?;
    Ok(Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: Subject::lot(lot),
        at: None,
        known: Known::Seen,
        body: Body::LotCount(LotCountV1 { left, note: None }),
    }))
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_core::forage::Held;
    use tussock_core::units::AsFed;

    fn held(of: In, typed: &str) -> Held {
        amount(of, typed).unwrap().held()
    }

    #[test]
    fn bales_and_weights_are_read_as_people_write_them() {
        assert_eq!(held(In::Bales, "31,5"), Held::Bales(31.5));
        assert_eq!(held(In::Weight, "640"), Held::Weight(AsFed::kg(640.0)));
        assert_eq!(held(In::Bales, "0"), Held::Bales(0.0));
        assert!(matches!(amount(In::Bales, ""), Err(Wrong::Parse(_))));
        assert!(matches!(amount(In::Bales, "-4"), Err(Wrong::Log(_))));
        let lot = LotId("lane".into());
        assert_eq!(count(&lot, None, "3", "id"), Err(Wrong::NoUnit));
        assert!(count(&lot, Some(In::Bales), "3", "id").is_ok());
    }
}
