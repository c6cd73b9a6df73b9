//! What a lot costs as it is eaten, with its ends; and two lots beside each other.
//!
//! Sugar comes first: a cheaper hay that stands worse on sugar is never the better one, and one that is over the limit
//! is not recommended at all.

use super::cost::{Losses, Price, feed_cost};
use super::energy::ForageEnergy;
use super::error::ForageError;
use super::lot::DryEstimate;
use super::published::NET_WASTE;
use super::stock::BaleWeight;
use super::verdict::Verdict;
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{AsFed, Currency, MoneyError};

/// The cost of what is eaten, with its ends.
#[derive(Clone, Debug, PartialEq)]
pub struct CostBand {
    /// Minor units for a kilogram of dry matter eaten.
    pub per_kg_dry: Ends<f64>,
    /// Minor units for a megacalorie eaten. Of no use for donkeys, which go by weight and condition.
    pub per_mcal: Ends<f64>,
    /// The currency.
    pub currency: Currency,
    /// Where the losses come from.
    pub from: Provenance,
}

/// How much of a lot is soaked, and what that takes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Soaked {
    /// The part of it that is soaked, 0 to 1.
    pub part: f64,
    /// The part of the dry matter that a soak takes.
    pub lost: Ends<f64>,
}

impl Soaked {
    /// None of it is soaked.
    pub const NONE: Self = Self {
        part: 0.0,
        lost: Ends::exactly(0.0),
    };
}

/// The cost of a lot from nets: price / (weight × dry matter × (1 - waste) × (1 - soaked part × soak loss)). Each end
/// takes the ends of all of them. `bale` is what a bale weighs, for a price by the bale.
///
/// # Errors
/// Those of [`feed_cost`].
pub fn cost_band(
    price: Price,
    bale: Option<&BaleWeight>,
    dry: &DryEstimate,
    energy: &ForageEnergy,
    soaked: Soaked,
) -> Result<CostBand, ForageError> {
    let [waste_least, waste_most] = *NET_WASTE;
    let waste = Ends::new(
        waste_least,
        f64::midpoint(waste_least, waste_most),
        waste_most,
    );
    let lost = soaked.lost.map(|lost| lost * soaked.part);
    let weight = match (price, bale) {
        (Price::Bale { .. }, Some(bale)) => Some(bale.mean()),
        (Price::Bale { weight, .. }, None) => Some(Ends::exactly(weight)),
        (Price::Tonne(_), _) => None,
    };
    let with = |weight: Option<AsFed>| match (price, weight) {
        (Price::Bale { price, .. }, Some(weight)) => Price::Bale { price, weight },
        (price, _) => price,
    };
    let at = |weight, dry, energy, waste, soaked_out| {
        feed_cost(with(weight), dry, energy, Losses { waste, soaked_out })
    };
    // The heaviest bale of the driest hay with the least lost is the cheapest.
    let cheap = at(
        weight.map(|ends| ends.most),
        dry.high,
        energy.high,
        waste.least,
        lost.least,
    )?;
    let likely = at(
        weight.map(|ends| ends.likely),
        dry.value,
        energy.value,
        waste.likely,
        lost.likely,
    )?;
    let dear = at(
        weight.map(|ends| ends.least),
        dry.low,
        energy.low,
        waste.most,
        lost.most,
    )?;
    Ok(CostBand {
        per_kg_dry: Ends::new(
            cheap.minor_per_kg_dry,
            likely.minor_per_kg_dry,
            dear.minor_per_kg_dry,
        ),
        per_mcal: Ends::new(
            cheap.minor_per_mcal,
            likely.minor_per_mcal,
            dear.minor_per_mcal,
        ),
        currency: likely.currency,
        from: Provenance::new().constant(&NET_WASTE),
    })
}

/// One of two lots.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The first.
    First,
    /// The second.
    Second,
}

/// A lot as it is compared.
#[derive(Clone, Debug, PartialEq)]
pub struct Offer {
    /// The verdict on its sugar for the strictest animal; `None` where no rule asks for one.
    pub verdict: Option<Verdict>,
    /// What it costs as it is eaten; `None` while that is not known.
    pub cost: Option<CostBand>,
}

/// How two lots stand to each other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Comparison {
    /// Both are over the limit: neither is for the strictest animal, whatever it costs.
    BothOver,
    /// One stands better on sugar, and that decides.
    BySugar {
        /// The better one.
        better: Side,
        /// The other is over the limit.
        other_over: bool,
        /// The better one costs this much more a kilogram of dry matter, in minor units; less than nothing when it is
        /// also the cheaper, `None` where a price is not known.
        dearer_by: Option<f64>,
    },
    /// Sugar does not tell them apart, and one is likely cheaper.
    ByCost {
        /// The cheaper.
        cheaper: Side,
        /// By so much a kilogram of dry matter, in minor units.
        by: f64,
        /// The bands do not touch.
        surely: bool,
    },
    /// Nothing tells them apart.
    Alike,
    /// Sugar does not tell them apart, and what one of them costs is not known.
    CostNotKnown,
}

const fn rank(verdict: Option<Verdict>) -> u8 {
    match verdict {
        None | Some(Verdict::Within { .. }) => 2,
        Some(Verdict::NotProven { .. }) => 1,
        Some(Verdict::Over { .. }) => 0,
    }
}

/// Compares two lots for the strictest animal: sugar first, then the cost of a kilogram of dry matter eaten.
///
/// # Errors
/// Prices in two currencies: nothing is converted here.
pub fn compare(first: &Offer, second: &Offer) -> Result<Comparison, ForageError> {
    let costs = match (&first.cost, &second.cost) {
        (Some(first), Some(second)) if first.currency != second.currency => {
            return Err(MoneyError::TwoCurrencies {
                first: first.currency,
                second: second.currency,
            }
            .into());
        }
        (Some(first), Some(second)) => Some((first.per_kg_dry, second.per_kg_dry)),
        _ => None,
    };
    let (rank_first, rank_second) = (rank(first.verdict), rank(second.verdict));
    if rank_first == 0 && rank_second == 0 {
        return Ok(Comparison::BothOver);
    }
    if rank_first != rank_second {
        let better = if rank_second < rank_first {
            Side::First
        } else {
            Side::Second
        };
        let dearer = costs.map(|(first, second)| match better {
            Side::First => first.likely - second.likely,
            Side::Second => second.likely - first.likely,
        });
        return Ok(Comparison::BySugar {
            better,
            other_over: rank_first.min(rank_second) == 0,
            dearer_by: dearer,
        });
    }
    let Some((first, second)) = costs else {
        return Ok(Comparison::CostNotKnown);
    };
    let (cheaper, low, high) = if second.likely < first.likely {
        (Side::Second, second, first)
    } else {
        (Side::First, first, second)
    };
    let by = high.likely - low.likely;
    Ok(if 0.0 < by {
        Comparison::ByCost {
            cheaper,
            by,
            surely: low.most < high.least,
        }
    } else {
        Comparison::Alike
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn offer(verdict: Verdict, per_kg: f64, code: &str) -> Offer {
        let ends = Ends::new(per_kg * 0.9, per_kg, per_kg * 1.1);
        Offer {
            verdict: Some(verdict),
            cost: Some(CostBand {
                per_kg_dry: ends,
                per_mcal: ends,
                currency: Currency::from_code(code).unwrap(),
                from: Provenance::new(),
            }),
        }
    }

    const WITHIN: Verdict = Verdict::Within { chance: 0.95 };
    const OVER: Verdict = Verdict::Over { chance: 0.02 };
    const OPEN: Verdict = Verdict::NotProven { chance: Some(0.4) };

    #[test]
    fn a_cheaper_hay_over_the_limit_is_never_the_better() {
        let dear = offer(WITHIN, 40.0, "GBP");
        let cheap = offer(OVER, 20.0, "GBP");
        assert_eq!(
            compare(&cheap, &dear),
            Ok(Comparison::BySugar {
                better: Side::Second,
                other_over: true,
                dearer_by: Some(20.0)
            })
        );
        assert_eq!(compare(&cheap, &cheap), Ok(Comparison::BothOver));
        assert!(matches!(
            compare(&offer(OPEN, 10.0, "GBP"), &dear),
            Ok(Comparison::BySugar {
                better: Side::Second,
                other_over: false,
                ..
            })
        ));
    }

    #[test]
    fn where_sugar_does_not_tell_the_cost_does() {
        let (a, b) = (offer(OPEN, 20.0, "GBP"), offer(OPEN, 22.0, "GBP"));
        assert!(matches!(
            compare(&b, &a),
            Ok(Comparison::ByCost {
                cheaper: Side::Second,
                surely: false,
                ..
            })
        ));
        assert_eq!(compare(&a, &a), Ok(Comparison::Alike));
        let unknown = Offer {
            verdict: Some(OPEN),
            cost: None,
        };
        assert_eq!(compare(&a, &unknown), Ok(Comparison::CostNotKnown));
    }

    #[test]
    fn two_currencies_are_refused() {
        let (pounds, euros) = (offer(OPEN, 20.0, "GBP"), offer(OPEN, 22.0, "EUR"));
        assert!(matches!(
            compare(&pounds, &euros),
            Err(ForageError::Money(MoneyError::TwoCurrencies { .. }))
        ));
    }
}
