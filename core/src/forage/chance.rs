//! The chance that a true value lies under a limit.

use crate::units::ShareOfDm;

/// What is believed of a content: normal, with this mean and spread (standard deviation).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Belief {
    /// The mean.
    pub mean: ShareOfDm,
    /// The standard deviation; 0 is a value taken as exact.
    pub spread: ShareOfDm,
}

impl Belief {
    /// From percent of dry matter.
    pub const fn percent(mean: f64, spread: f64) -> Self {
        Self {
            mean: ShareOfDm::percent(mean),
            spread: ShareOfDm::percent(spread),
        }
    }

    /// The chance, 0 to 1, that the true value is at most `limit`; not a number when a part of it is not finite.
    pub fn chance_at_most(self, limit: ShareOfDm) -> f64 {
        let room = limit - self.mean;
        if self.spread <= ShareOfDm::ZERO {
            return if room >= ShareOfDm::ZERO { 1.0 } else { 0.0 };
        }
        normal_below(room / self.spread)
    }

    /// The sum of two independent contents.
    #[must_use]
    pub fn plus(self, other: Self) -> Self {
        Self {
            mean: self.mean + other.mean,
            spread: joint(self.spread, other.spread),
        }
    }

    /// This content diluted to a part of a mix.
    #[must_use]
    pub fn diluted(self, part: f64) -> Self {
        Self {
            mean: self.mean * part,
            spread: self.spread * part,
        }
    }
}

/// The spread of two independent spreads together.
pub(super) fn joint(a: ShareOfDm, b: ShareOfDm) -> ShareOfDm {
    ShareOfDm::fraction(a.to_fraction().hypot(b.to_fraction()))
}

/// The standard normal distribution function: the chance of a value at most `z`.
///
/// Through the complementary error function, so that small chances keep their digits in both tails.
pub fn normal_below(z: f64) -> f64 {
    libm::erfc(-z / 2.0_f64.sqrt()) / 2.0
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn an_untested_grass_hay_is_under_ten_one_time_in_three() {
        let grass = Belief::percent(12.0, 4.5);
        assert!((grass.chance_at_most(ShareOfDm::percent(10.0)) - 0.33).abs() < 0.01);
        assert!((grass.chance_at_most(ShareOfDm::percent(12.0)) - 0.50).abs() < 0.01);
        let oats = Belief::percent(22.1, 6.0);
        assert!((oats.chance_at_most(ShareOfDm::percent(12.0)) - 0.046).abs() < 0.001);
    }

    #[test]
    fn an_exact_value_is_on_one_side_or_the_other() {
        let exact = Belief::percent(10.0, 0.0);
        assert_eq!(exact.chance_at_most(ShareOfDm::percent(10.0)), 1.0);
        assert_eq!(exact.chance_at_most(ShareOfDm::percent(9.9)), 0.0);
    }
}
