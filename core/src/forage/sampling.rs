//! How far a tested value may be from the truth, and what a test would be likely to decide.

use super::chance::{Belief, joint, normal_below};
use super::published as p;
use crate::units::ShareOfDm;

/// The standard error of a composite of `cores` cores, one a bale, for a spread between bales; `None` without cores.
pub fn composite_error(between_bales: ShareOfDm, cores: u32) -> Option<ShareOfDm> {
    (cores > 0).then(|| between_bales / f64::from(cores).sqrt())
}

/// The spread of a tested value about the truth: 1 percentage point for sampling and laboratory together when twenty
/// bales were cored or nobody says how many, more with fewer.
pub(super) fn test_spread(cores: Option<u32>) -> ShareOfDm {
    let whole = ShareOfDm::percent(*p::TEST_SPREAD);
    let between = ShareOfDm::percent(*p::BETWEEN_BALES);
    let error = |count| composite_error(between, count);
    match (cores, error(*p::FULL_CORES)) {
        (Some(count), Some(full)) if count < *p::FULL_CORES => {
            let square = |share: ShareOfDm| share.to_fraction() * share.to_fraction();
            let laboratory = (square(whole) - square(full)).max(0.0).sqrt();
            error(count).map_or(whole, |few| joint(ShareOfDm::fraction(laboratory), few))
        }
        _ => whole,
    }
}

/// What a laboratory test of an untested forage would be likely to say.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TestOutlook {
    /// The chance that it comes out within the limit.
    pub within: f64,
    /// The chance that it comes out over the limit.
    pub over: f64,
    /// The chance that it still leaves the hay not proven.
    pub not_proven: f64,
    /// The highest tested value that is within the limit.
    pub passes_at_most: ShareOfDm,
}

/// The outlook of a test: the chance of each verdict, before the sample is taken, from what is believed now. A tested
/// value scatters about the truth by the laboratory's spread, and the truth about the belief by its own.
pub fn test_outlook(believed: Belief, limit: ShareOfDm) -> TestOutlook {
    let laboratory = test_spread(None);
    let guard = laboratory * *p::SURE_Z;
    let scatter = joint(believed.spread, laboratory);
    let below = |value: ShareOfDm| normal_below((value - believed.mean) / scatter);
    let within = below(limit - guard);
    let over = normal_below((believed.mean - limit - guard) / scatter);
    TestOutlook {
        within,
        over,
        not_proven: (1.0 - within - over).max(0.0),
        passes_at_most: limit - guard,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn twenty_cores_halve_the_error_of_five() {
        let between = ShareOfDm::percent(2.5);
        let twenty = composite_error(between, 20).unwrap().to_percent();
        let five = composite_error(between, 5).unwrap().to_percent();
        assert!((twenty - 0.56).abs() < 0.01);
        assert!((five - 1.12).abs() < 0.01);
        assert_eq!(composite_error(between, 0), None);
    }

    #[test]
    fn a_grab_from_one_bale_proves_less_than_twenty_cores() {
        let points = |cores| test_spread(cores).to_percent();
        assert!((points(None) - 1.0).abs() < 1e-9);
        assert!((points(Some(20)) - 1.0).abs() < 1e-9);
        assert!((points(Some(60)) - 1.0).abs() < 1e-9);
        assert!(points(Some(5)) > 1.3);
        assert!(points(Some(1)) > points(Some(5)));
    }

    #[test]
    fn a_test_passes_at_eight_point_seven_for_a_limit_of_ten() {
        let outlook = test_outlook(Belief::percent(12.0, 4.5), ShareOfDm::percent(10.0));
        assert!((outlook.passes_at_most.to_percent() - 8.72).abs() < 0.01);
        assert!((outlook.within + outlook.over + outlook.not_proven - 1.0).abs() < 1e-12);
        assert!(outlook.over > outlook.within);
    }
}
