//! Nets that were timed: the animal's own eating rate.

use super::error::DayError;
use super::published::{MEASURED_RATE, RATE_SPREAD, TIMINGS_USED, WATCHED_MOST};
use super::rate::{EatingRate, measured_rate};
use crate::sources::Provenance;
use crate::units::DryMatter;

/// A net that was hung and is empty.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Timing {
    /// The dry matter that was in it, after soaking, less what was left.
    pub eaten: DryMatter,
    /// From hanging until it was seen to be empty.
    pub hours: f64,
    /// Nobody saw the end of it: it was found empty.
    pub found: bool,
}

/// What a timing says.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Timed {
    /// A rate, in kilograms of dry matter an hour.
    Rate {
        /// The rate.
        kg_per_h: f64,
    },
    /// Its time is the most it can have taken, so the animal eats at least so fast.
    AtLeast {
        /// That rate.
        kg_per_h: f64,
    },
}

impl Timing {
    /// What it says. A net that was found empty, or took longer than anybody is taken to watch ([`WATCHED_MOST`], 8 h,
    /// ours), is a bound and no rate.
    ///
    /// # Errors
    /// A rate that no animal eats at, so a slip in weight or time: 0.02 to 6 kg of dry matter an hour.
    pub fn says(&self) -> Result<Timed, DayError> {
        let kg_per_h = MEASURED_RATE.check(self.eaten.to_kg() / self.hours)?;
        Ok(if self.found || *WATCHED_MOST < self.hours {
            Timed::AtLeast { kg_per_h }
        } else {
            Timed::Rate { kg_per_h }
        })
    }
}

/// The animal's own rate, from all its timings with one sort of net, dry or soaked.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct OwnRate {
    /// The rate with its ends; `None` before one was seen to its end.
    pub rate: Option<EatingRate>,
    /// How many timings it is the mean of.
    pub timings: usize,
    /// It eats at least so fast, by nets that were found empty.
    pub at_least: Option<f64>,
}

/// The rate from timings, the oldest first; those that cannot be are left out.
///
/// The mean of the last five (ours). Its ends are half the spread between animals away, or as far as the slowest and the
/// fastest of them. A net that was found empty raises what lies below the rate it shows, and lowers nothing.
pub fn own_rate(timings: &[Timing]) -> OwnRate {
    let mut rates = Vec::new();
    let mut at_least: Option<f64> = None;
    let said = timings.iter().rev().filter_map(|timing| timing.says().ok());
    for timed in said {
        match timed {
            Timed::Rate { kg_per_h } if rates.len() < *TIMINGS_USED => rates.push(kg_per_h),
            Timed::Rate { .. } => {}
            Timed::AtLeast { kg_per_h } => {
                at_least = Some(at_least.map_or(kg_per_h, |held| held.max(kg_per_h)));
            }
        }
    }
    let timings = rates.len();
    let rate = mean(&rates).map(|rate| at_least.map_or(rate.clone(), |least| rate.at_least(least)));
    OwnRate {
        rate,
        timings,
        at_least,
    }
}

fn mean(rates: &[f64]) -> Option<EatingRate> {
    // One timing is a meal of so many kilograms in one hour.
    if let [one] = rates {
        return measured_rate(DryMatter::kg(*one), 1.0).ok();
    }
    let slowest = rates.iter().copied().reduce(f64::min)?;
    let fastest = rates.iter().copied().reduce(f64::max)?;
    let likely = rates.iter().sum::<f64>() / rates.len() as f64;
    let spread = *RATE_SPREAD / 2.0;
    Some(EatingRate {
        slow: slowest.min(likely * (1.0 - spread)),
        likely,
        fast: fastest.max(likely * (1.0 + spread)),
        from: Provenance::new()
            .constant(&RATE_SPREAD)
            .constant(&TIMINGS_USED),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn timing(kg: f64, hours: f64, found: bool) -> Timing {
        Timing {
            eaten: DryMatter::kg(kg),
            hours,
            found,
        }
    }

    #[test]
    fn a_night_without_anybody_looking_is_a_bound_and_no_rate() {
        assert_eq!(
            timing(3.0, 5.0, false).says(),
            Ok(Timed::Rate { kg_per_h: 0.6 })
        );
        for night in [timing(3.0, 5.0, true), timing(4.8, 8.0 + 1e-6, false)] {
            assert!(matches!(night.says(), Ok(Timed::AtLeast { .. })));
        }
        assert!(matches!(
            timing(4.8, 8.0, false).says(),
            Ok(Timed::Rate { .. })
        ));
        assert!(timing(30.0, 1.0, false).says().is_err());
        assert!(timing(3.0, 0.0, false).says().is_err());
        assert!(timing(3.0, -2.0, true).says().is_err());
        let only = own_rate(&[timing(3.0, 12.0, true)]);
        assert_eq!(
            (only.rate, only.timings, only.at_least),
            (None, 0, Some(0.25))
        );
    }

    #[test]
    fn several_timings_are_averaged_and_their_ends_hold_every_one() {
        let own = own_rate(&[
            timing(3.0, 5.0, false),
            timing(3.0, 3.75, false),
            timing(3.0, 7.5, false),
        ]);
        let rate = own.rate.unwrap();
        assert_eq!(own.timings, 3);
        assert!((rate.likely - 0.6).abs() < 1e-9);
        assert!((rate.slow - 0.4).abs() < 1e-9 && (rate.fast - 0.8).abs() < 1e-9);
        let alike = own_rate(&[timing(3.0, 5.0, false), timing(3.0, 5.0, false)]);
        let rate = alike.rate.unwrap();
        assert!((rate.slow - 0.54).abs() < 1e-9 && (rate.fast - 0.66).abs() < 1e-9);
    }

    #[test]
    fn the_last_five_count_and_a_bound_lifts_what_lies_below_it() {
        let mut all = vec![timing(6.0, 2.0, false)];
        all.extend([timing(3.0, 5.0, false); 5]);
        let own = own_rate(&all);
        assert_eq!(own.timings, 5);
        assert!((own.rate.unwrap().likely - 0.6).abs() < 1e-9);
        let own = own_rate(&[timing(3.0, 5.0, false), timing(7.0, 10.0, true)]);
        let rate = own.rate.unwrap();
        assert!(
            [rate.slow, rate.likely, rate.fast]
                .iter()
                .all(|end| 0.7 - 1e-9 < *end)
        );
    }
}
