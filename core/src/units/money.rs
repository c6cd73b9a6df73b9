//! Prices in minor units with their currency. Nothing is converted.

use super::AsFed;

/// An ISO 4217 code.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Currency([u8; 3]);

/// Currencies whose minor unit is the whole.
const WITHOUT_MINOR: [&str; 5] = ["CLP", "ISK", "JPY", "KRW", "VND"];

impl Currency {
    /// How many minor units make a whole one.
    pub fn minor_in_whole(self) -> i64 {
        if WITHOUT_MINOR.contains(&self.code().as_str()) {
            1
        } else {
            100
        }
    }

    /// From a code of three capital letters.
    pub fn from_code(code: &str) -> Result<Self, MoneyError> {
        match <[u8; 3]>::try_from(code.as_bytes()) {
            Ok(letters) if letters.iter().all(u8::is_ascii_uppercase) => Ok(Self(letters)),
            _ => Err(MoneyError::NotACurrency {
                code: code.to_owned(),
            }),
        }
    }

    /// The code.
    pub fn code(&self) -> String {
        self.0.iter().map(|letter| char::from(*letter)).collect()
    }
}

/// An amount of money in the currency's minor unit (pence, cents).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Money {
    /// How many minor units.
    pub minor: i64,
    /// Of which currency.
    pub currency: Currency,
}

impl Money {
    /// From whole units as people type them, to the nearest minor unit.
    pub fn of(whole: f64, currency: Currency) -> Result<Self, MoneyError> {
        let minor = whole * currency.minor_in_whole() as f64;
        Self::nearest(minor, currency).ok_or(MoneyError::TooLarge)
    }

    /// The whole minor units nearest to an amount that was worked out; `None` when it is not finite or beyond what is
    /// told apart.
    #[allow(
        clippy::cast_possible_truncation,
        reason = "what does not fit was let go above"
    )]
    pub fn nearest(minor: f64, currency: Currency) -> Option<Self> {
        let whole = minor.round();
        // numeric: 2^53, up to which every whole number is exact
        (whole.abs() < 9_007_199_254_740_992.0).then_some(Self {
            minor: whole as i64,
            currency,
        })
    }

    /// In whole units, as a person would type it: `6.5`.
    pub fn typed(self) -> String {
        (self.minor as f64 / self.currency.minor_in_whole() as f64).to_string()
    }

    /// What a kilogram costs when this was paid for so much as fed; `None` for a price of no weight.
    pub fn per_kg(self, weight: AsFed) -> Option<PricePerKg> {
        let minor = self.minor as f64 / weight.to_kg();
        (weight.to_kg() > 0.0 && minor.is_finite()).then_some(PricePerKg {
            minor,
            currency: self.currency,
        })
    }

    /// The sum, when both are of one currency and it fits.
    pub fn plus(self, other: Self) -> Result<Self, MoneyError> {
        if self.currency != other.currency {
            return Err(MoneyError::TwoCurrencies {
                first: self.currency,
                second: other.currency,
            });
        }
        match self.minor.checked_add(other.minor) {
            Some(minor) => Ok(Self {
                minor,
                currency: self.currency,
            }),
            None => Err(MoneyError::TooLarge),
        }
    }
}

/// The price of a kilogram as fed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PricePerKg {
    /// Minor units for a kilogram as fed; not rounded.
    pub minor: f64,
    /// Of which currency.
    pub currency: Currency,
}

impl PricePerKg {
    /// What so much of it costs.
    pub fn cost_of(self, fed: AsFed) -> Cost {
        Cost {
            minor: self.minor * fed.to_kg(),
            currency: self.currency,
        }
    }
}

/// What something costs, reckoned and not paid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cost {
    /// Minor units; not rounded.
    pub minor: f64,
    /// Of which currency.
    pub currency: Currency,
}

impl Cost {
    /// The sum; `None` of two currencies, for nothing is converted.
    pub fn plus(self, other: Self) -> Option<Self> {
        (self.currency == other.currency).then_some(Self {
            minor: self.minor + other.minor,
            currency: self.currency,
        })
    }
}

/// Why an amount of money was refused.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum MoneyError {
    /// Not three capital letters.
    NotACurrency {
        /// What was given.
        code: String,
    },
    /// A total over two currencies has no meaning here.
    TwoCurrencies {
        /// The first.
        first: Currency,
        /// The second.
        second: Currency,
    },
    /// The sum does not fit.
    TooLarge,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_kilogram_is_the_pack_divided_and_no_weight_has_no_price() {
        let gbp = Currency::from_code("GBP").unwrap();
        let pack = Money {
            minor: 2_495,
            currency: gbp,
        };
        let kilogram = pack.per_kg(AsFed::kg(20.0)).unwrap();
        assert!((kilogram.minor - 124.75).abs() < 1e-12);
        assert_eq!(kilogram.currency, gbp);
        assert_eq!(pack.per_kg(AsFed::ZERO), None);
    }

    #[test]
    fn a_total_over_two_currencies_is_refused() {
        let eur = Currency::from_code("EUR").unwrap();
        let gbp = Currency::from_code("GBP").unwrap();
        let a = Money {
            minor: 250,
            currency: eur,
        };
        assert_eq!(a.plus(a).unwrap().minor, 500);
        assert!(matches!(
            a.plus(Money {
                minor: 1,
                currency: gbp
            }),
            Err(MoneyError::TwoCurrencies { .. })
        ));
        assert!(Currency::from_code("eur").is_err());
        assert_eq!(Money::of(6.5, gbp).unwrap().minor, 650);
        assert_eq!(Money::of(6.5, gbp).unwrap().typed(), "6.5");
        let yen = Currency::from_code("JPY").unwrap();
        assert_eq!(Money::of(900.0, yen).unwrap().minor, 900);
        assert_eq!(Money::of(f64::NAN, yen), Err(MoneyError::TooLarge));
    }
}
