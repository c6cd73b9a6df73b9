//! What a forage costs for each kilogram of dry matter and each megacalorie that is eaten.

use super::error::ForageError;
use super::published::LOSS_FIELD;
use crate::units::{AsFed, Bounds, Currency, DryFraction, EnergyDensity, Money, PricePerKg};

/// A price as it was paid.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Price {
    /// For a tonne as fed.
    Tonne(Money),
    /// For a bale of this weight.
    Bale {
        /// The price of one.
        price: Money,
        /// Its weight.
        weight: AsFed,
    },
}

impl Price {
    /// For a kilogram as fed; `None` for a price of no weight.
    pub fn per_kg(self) -> Option<PricePerKg> {
        match self {
            Self::Tonne(money) => money.per_kg(AsFed::kg(1000.0)),
            Self::Bale { price, weight } => price.per_kg(weight),
        }
    }
}

/// What is paid for and not eaten, as parts of dry matter.
#[derive(Clone, Copy, Debug, PartialEq, Default)]
pub struct Losses {
    /// Trodden, soiled, left.
    pub waste: f64,
    /// Washed out in soaking.
    pub soaked_out: f64,
}

/// The cost of what is eaten. Compare forages on this, after their sugar, never on the price of a tonne or a bale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FeedCost {
    /// Minor units for a kilogram of dry matter eaten.
    pub minor_per_kg_dry: f64,
    /// Minor units for a megacalorie eaten.
    pub minor_per_mcal: f64,
    /// The currency.
    pub currency: Currency,
}

/// The cost of a forage from its price, dry matter, energy and losses.
pub fn feed_cost(
    price: Price,
    dry: DryFraction,
    energy: EnergyDensity,
    losses: Losses,
) -> Result<FeedCost, ForageError> {
    let waste = LOSS_FIELD.check(losses.waste)?;
    let soaked_out = LOSS_FIELD.check(losses.soaked_out)?;
    let (paid, weight) = match price {
        Price::Tonne(money) => (money, AsFed::kg(1000.0)),
        Price::Bale { price, weight } => (price, weight),
    };
    // Anything above nothing: a price for no weight, or energy of nothing, is no price.
    let above_nothing = |field| Bounds::new(field, f64::MIN_POSITIVE, f64::MAX);
    let weight = above_nothing("bale_kg").check(weight.to_kg())?;
    let energy = above_nothing("energy_mcal_per_kg").check(energy.to_mcal_per_kg())?;
    let eaten = AsFed::kg(weight).dry(dry).to_kg() * (1.0 - waste) * (1.0 - soaked_out);
    let minor_per_kg_dry = paid.minor as f64 / eaten;
    Ok(FeedCost {
        minor_per_kg_dry,
        minor_per_mcal: minor_per_kg_dry / energy,
        currency: paid.currency,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn wet_hay_at_a_lower_price_is_no_cheaper() {
        let euro = Currency::from_code("EUR").unwrap();
        let cost = |minor, dry| {
            feed_cost(
                Price::Tonne(Money {
                    minor,
                    currency: euro,
                }),
                DryFraction::percent(dry).unwrap(),
                EnergyDensity::mcal_per_kg(2.0),
                Losses::default(),
            )
            .unwrap()
            .minor_per_kg_dry
        };
        assert!((cost(30_000, 90.0) - cost(26_000, 78.0)).abs() < 1e-9);
    }

    #[test]
    fn a_bale_of_no_weight_has_no_cost() {
        let price = Price::Bale {
            price: Money {
                minor: 600,
                currency: Currency::from_code("GBP").unwrap(),
            },
            weight: AsFed::ZERO,
        };
        let dry = DryFraction::percent(88.0).unwrap();
        let energy = EnergyDensity::mcal_per_kg(2.0);
        assert!(feed_cost(price, dry, energy, Losses::default()).is_err());
    }
}
