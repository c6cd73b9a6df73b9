//! How much of a lot is left: what there was, less what was weighed out since.
//!
//! A lot is bales, of which some are weighed, or one heap by weight. Bales differ, so what is left is a band. Stock is
//! counted anew whenever somebody counts; from then on only what was weighed out since the count goes off.

use super::error::ForageError;
use super::published::{BALE_FIELD, BALE_SPREAD, SLICE_FIELD, SURE_Z};
use crate::limits::Ends;
use crate::units::AsFed;

/// An amount of a lot, as it was bought or counted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Held {
    /// So many bales.
    Bales(f64),
    /// So much by weight.
    Weight(AsFed),
}

/// Samples that were weighed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sampled {
    /// Their mean.
    pub mean: AsFed,
    /// Their standard deviation (n - 1); `None` for a single one, which says nothing of it.
    pub spread: Option<AsFed>,
    /// The standard error of the mean, spread / sqrt(n).
    pub error: Option<AsFed>,
    /// How many.
    pub count: usize,
}

/// Mean, spread and standard error of weighed samples; `None` without any.
pub fn sampled(weights: &[AsFed]) -> Option<Sampled> {
    if weights.is_empty() {
        return None;
    }
    let count = weights.len() as f64;
    let mean = weights.iter().copied().sum::<AsFed>() / count;
    let squares: f64 = weights
        .iter()
        .map(|weight| (weight.to_kg() - mean.to_kg()).powi(2))
        .sum();
    let spread = (1 < weights.len()).then(|| (squares / (count - 1.0)).sqrt());
    Some(Sampled {
        mean,
        spread: spread.map(AsFed::kg),
        error: spread.map(|spread| AsFed::kg(spread / count.sqrt())),
        count: weights.len(),
    })
}

/// Samples of bales, each within what a bale weighs.
///
/// # Errors
/// A weight that no bale has.
pub fn bales_weighed(weights: &[AsFed]) -> Result<Option<Sampled>, ForageError> {
    for weight in weights {
        BALE_FIELD.check(weight.to_kg())?;
    }
    Ok(sampled(weights))
}

/// Samples of slices, each within what a slice weighs.
///
/// # Errors
/// A weight that no slice has.
pub fn slices_weighed(weights: &[AsFed]) -> Result<Option<Sampled>, ForageError> {
    for weight in weights {
        SLICE_FIELD.check(weight.to_kg())?;
    }
    Ok(sampled(weights))
}

/// What a bale of a lot weighs.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BaleWeight {
    /// What is reckoned with.
    pub value: AsFed,
    /// How far one bale lies from another.
    pub spread: AsFed,
    /// How far the value may be off.
    pub error: AsFed,
    /// How many were weighed; 0 for a weight that was only said.
    pub weighed: usize,
    /// The spread is the usual one, for fewer than two were weighed.
    pub usual_spread: bool,
}

/// The weight of a bale: from those that were weighed, else as it was said. `None` while nobody knows it.
pub fn bale_weight(weighed: Option<&Sampled>, said: Option<AsFed>) -> Option<BaleWeight> {
    let usual = |value: AsFed, weighed| BaleWeight {
        value,
        spread: value * *BALE_SPREAD,
        error: value * *BALE_SPREAD,
        weighed,
        usual_spread: true,
    };
    match weighed {
        Some(sampled) => Some(match (sampled.spread, sampled.error) {
            (Some(spread), Some(error)) => BaleWeight {
                value: sampled.mean,
                spread,
                error,
                weighed: sampled.count,
                usual_spread: false,
            },
            _ => usual(sampled.mean, sampled.count),
        }),
        None => said
            .filter(|said| AsFed::ZERO < *said)
            .map(|said| usual(said, 0)),
    }
}

impl BaleWeight {
    /// The weight of so many bales: nine in ten times at least the least, and nine in ten at most the most. The bales
    /// differ from each other, which evens out, and their mean may be off, which does not:
    /// sqrt(n spread² + (n error)²).
    pub fn of(&self, bales: f64) -> Ends<AsFed> {
        let spread = self.spread.to_kg();
        let error = self.error.to_kg();
        let off = (bales * spread.powi(2) + (bales * error).powi(2)).sqrt() * *SURE_Z;
        let likely = self.value * bales;
        Ends::new(
            (likely - AsFed::kg(off)).max(AsFed::ZERO),
            likely,
            likely + AsFed::kg(off),
        )
    }

    /// The ends of the mean itself: nine in ten either way.
    pub fn mean(&self) -> Ends<AsFed> {
        let off = self.error * *SURE_Z;
        Ends::new(
            (self.value - off).max(AsFed::ZERO),
            self.value,
            self.value + off,
        )
    }
}

/// How far an amount is known that was weighed out.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HowKnown {
    /// Somebody read the scale.
    Seen,
    /// Taken as planned.
    Assumed,
}

/// What was weighed out of a lot.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct WeighedOut {
    /// Read off a scale.
    pub seen: AsFed,
    /// Taken as planned.
    pub assumed: AsFed,
    /// Nets of which nobody knows how much was in them.
    pub not_known: usize,
}

impl WeighedOut {
    /// With one more amount; `None` for one that nobody knows. What is below nothing takes nothing off and adds nothing.
    #[must_use]
    pub fn and(mut self, amount: Option<AsFed>, known: HowKnown) -> Self {
        match (amount.map(|amount| amount.max(AsFed::ZERO)), known) {
            (Some(amount), HowKnown::Seen) => self.seen = self.seen + amount,
            (Some(amount), HowKnown::Assumed) => self.assumed = self.assumed + amount,
            (None, _) => self.not_known += 1,
        }
        self
    }

    /// All that is known to have gone.
    pub fn total(&self) -> AsFed {
        self.seen + self.assumed
    }

    /// The part of it that was read off a scale, 0 to 1; `None` while nothing has gone.
    pub fn seen_part(&self) -> Option<f64> {
        let total = self.total();
        (AsFed::ZERO < total).then(|| self.seen / total)
    }
}

/// What is left of a lot.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Left {
    /// Its weight as fed, with its ends.
    pub mass: Ends<AsFed>,
    /// The same in bales, where a bale's weight is known.
    pub bales: Option<f64>,
    /// More was weighed out than there can have been: it must be counted.
    pub overdrawn: bool,
}

/// Why it cannot be said what is left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NoStock {
    /// Nobody said how much was bought, and nobody counted.
    NothingSaid,
    /// So many bales, and no bale was weighed.
    BaleNotWeighed {
        /// The bales that were bought or counted.
        bales: f64,
    },
}

/// What is left: what there was, less what was weighed out since. It never rises by weighing out.
///
/// # Errors
/// Nothing was said, or bales of which none was weighed.
pub fn left(
    start: Option<Held>,
    bale: Option<&BaleWeight>,
    out: &WeighedOut,
) -> Result<Left, NoStock> {
    let start = match (start, bale) {
        (None, _) => return Err(NoStock::NothingSaid),
        (Some(Held::Weight(weight)), _) => Ends::exactly(weight),
        (Some(Held::Bales(bales)), Some(bale)) => bale.of(bales),
        (Some(Held::Bales(bales)), None) => return Err(NoStock::BaleNotWeighed { bales }),
    };
    let gone = out.total();
    let mass = start.map(|was| (was - gone).max(AsFed::ZERO));
    Ok(Left {
        mass,
        bales: bale
            .filter(|bale| AsFed::ZERO < bale.value)
            .map(|bale| mass.likely / bale.value),
        overdrawn: start.most < gone,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kg(values: &[f64]) -> Vec<AsFed> {
        values.iter().copied().map(AsFed::kg).collect()
    }

    #[test]
    fn three_bales_give_mean_spread_and_standard_error() {
        let three = bales_weighed(&kg(&[18.0, 20.0, 22.0])).unwrap().unwrap();
        assert!((three.mean.to_kg() - 20.0).abs() < 1e-9);
        assert!((three.spread.unwrap().to_kg() - 2.0).abs() < 1e-9);
        assert!((three.error.unwrap().to_kg() - 2.0 / 3.0_f64.sqrt()).abs() < 1e-9);
        let one = bales_weighed(&kg(&[20.0])).unwrap().unwrap();
        assert_eq!((one.spread, one.error), (None, None));
        assert_eq!(bales_weighed(&[]), Ok(None));
        assert!(bales_weighed(&kg(&[20_000.0])).is_err());
    }

    #[test]
    fn bales_that_nobody_weighed_have_no_weight() {
        assert_eq!(bale_weight(None, None), None);
        assert_eq!(bale_weight(None, Some(AsFed::ZERO)), None);
        let said = bale_weight(None, Some(AsFed::kg(20.0))).unwrap();
        assert!(said.usual_spread && said.weighed == 0);
        assert_eq!(
            left(Some(Held::Bales(40.0)), None, &WeighedOut::default()),
            Err(NoStock::BaleNotWeighed { bales: 40.0 })
        );
        assert_eq!(
            left(None, Some(&said), &WeighedOut::default()),
            Err(NoStock::NothingSaid)
        );
    }

    #[test]
    fn many_bales_even_out_and_a_wrong_mean_does_not() {
        let three = sampled(&kg(&[18.0, 20.0, 22.0])).unwrap();
        let bale = bale_weight(Some(&three), None).unwrap();
        let wide = |bales| {
            let ends = bale.of(bales);
            (ends.most - ends.least).to_kg() / ends.likely.to_kg()
        };
        assert!(wide(100.0) < wide(2.0));
        let mean = bale.mean();
        assert!(wide(1e6) * 0.999 < (mean.most - mean.least).to_kg() / mean.likely.to_kg());
    }

    #[test]
    fn what_is_left_is_what_there_was_less_what_went() {
        let out = WeighedOut::default()
            .and(Some(AsFed::kg(30.0)), HowKnown::Seen)
            .and(Some(AsFed::kg(10.0)), HowKnown::Assumed)
            .and(None, HowKnown::Seen);
        let heap = left(Some(Held::Weight(AsFed::kg(100.0))), None, &out).unwrap();
        assert!((heap.mass.likely.to_kg() - 60.0).abs() < 1e-9);
        assert_eq!(heap.bales, None);
        assert!((out.seen_part().unwrap() - 0.75).abs() < 1e-9);
        assert_eq!(out.not_known, 1);
        let empty = left(Some(Held::Weight(AsFed::kg(30.0))), None, &out).unwrap();
        assert!(empty.overdrawn && empty.mass.most == AsFed::ZERO);
    }
}
