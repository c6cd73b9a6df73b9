//! Condition on its two scales.

use super::*;
use ConditionScale::{FiveStep, NineStep};

fn nine(scores: &[f64]) -> Result<(ConditionScore, Vec<Finding>), AssessError> {
    let scored: Vec<_> = NineStep
        .sites()
        .iter()
        .copied()
        .zip(scores.iter().copied())
        .collect();
    ConditionScore::by_sites(NineStep, &scored)
}

fn five(pelvis: f64, back: f64, neck: f64) -> f64 {
    let scored = [
        (Site::Pelvis, pelvis),
        (Site::BackAndRibs, back),
        (Site::Neck, neck),
    ];
    ConditionScore::by_sites(FiveStep, &scored)
        .unwrap()
        .0
        .value()
}

#[test]
fn a_cob_scored_at_six_sites_is_their_mean() {
    let (score, findings) = nine(&[8.0, 7.0, 7.5, 7.0, 7.0, 8.5]).unwrap();
    assert_eq!(score.value(), 7.5);
    assert!(findings.is_empty());
}

#[test]
fn two_sites_may_be_skipped_and_are_named() {
    let scored = [
        (Site::TailHead, 6.0),
        (Site::Neck, 7.0),
        (Site::Ribs, 6.0),
        (Site::Withers, 6.0),
    ];
    let (score, findings) = ConditionScore::by_sites(NineStep, &scored).unwrap();
    assert_eq!(score.value(), 6.25);
    assert_eq!(score.sites()[0].0, Site::Neck);
    assert_eq!(
        findings,
        [Finding::SitesSkipped(vec![
            Site::BehindShoulder,
            Site::Loin
        ])]
    );
    assert_eq!(
        nine(&[7.0, 7.0, 7.0]),
        Err(AssessError::TooFewSites {
            scored: 3,
            needed: 4
        })
    );
}

#[test]
fn scores_come_in_half_points_on_their_own_scale_and_site() {
    assert_eq!(
        nine(&[6.3, 6.0, 6.0, 6.0]),
        Err(AssessError::NotHalfPoint { value: 6.3 })
    );
    assert!(nine(&[0.5, 6.0, 6.0, 6.0]).is_err());
    assert!(nine(&[f64::NAN, 6.0, 6.0, 6.0]).is_err());
    assert_eq!(
        ConditionScore::by_sites(NineStep, &[(Site::Pelvis, 3.0)]),
        Err(AssessError::SiteOfOtherScale {
            scale: NineStep,
            site: Site::Pelvis
        })
    );
    assert_eq!(
        ConditionScore::by_sites(NineStep, &[(Site::Ribs, 3.0), (Site::Ribs, 4.0)]),
        Err(AssessError::SiteTwice(Site::Ribs))
    );
}

#[test]
fn the_pelvis_is_moved_half_a_point_towards_a_neck_a_point_away() {
    assert_eq!(five(3.0, 3.0, 4.0), 3.5);
    assert_eq!(five(3.0, 3.5, 3.5), 3.0);
    assert_eq!(five(3.0, 2.0, 3.0), 2.5);
    assert_eq!(five(3.0, 4.5, 4.0), 3.5);
    assert_eq!(five(3.0, 2.0, 4.0), 3.0);
    assert_eq!(
        ConditionScore::by_sites(FiveStep, &[(Site::Neck, 3.0)]),
        Err(AssessError::BaseSiteSkipped(Site::Pelvis))
    );
}

#[test]
fn a_three_of_five_stands_for_five_to_six_of_nine() {
    let range = |value| ConditionScore::overall(FiveStep, value).unwrap().on_nine();
    for (five, low, high) in [
        (0.0, 1.0, 1.0),
        (1.0, 2.0, 3.0),
        (2.0, 4.0, 4.0),
        (2.5, 4.5, 5.0),
        (3.0, 5.0, 6.0),
        (3.5, 6.0, 7.0),
        (4.0, 7.0, 8.0),
        (5.0, 9.0, 9.0),
    ] {
        assert_eq!((range(five).low(), range(five).high()), (low, high));
    }
    let mut before = range(0.0);
    for half in 1..=10 {
        let next = range(f64::from(half) / 2.0);
        assert!(before.low() <= next.low() && before.high() <= next.high());
        assert_eq!(ConditionRange::new(next.low(), next.high()), Ok(next));
        before = next;
    }
}

#[test]
fn a_donkey_is_scored_from_0_to_5_unless_somebody_chooses_otherwise() {
    assert_eq!(ConditionScale::usual_for(Kind::Donkey), FiveStep);
    assert_eq!(ConditionScale::usual_for(Kind::Mule), FiveStep);
    assert_eq!(ConditionScale::usual_for(Kind::Pony), NineStep);
}

#[test]
fn two_people_differ_by_one_at_the_ribs() {
    let (one, _) = nine(&[7.0, 7.0, 6.0, 7.0, 6.5, 7.0]).unwrap();
    let (other, _) = nine(&[7.0, 7.0, 6.0, 6.0, 6.5]).unwrap();
    assert_eq!(apart(&one, &other), Ok(vec![(Site::Ribs, 1.0)]));
    assert_eq!(apart(&other, &one), Ok(vec![(Site::Ribs, 1.0)]));
    assert_eq!(apart(&one, &one), Ok(Vec::new()));
    let five = ConditionScore::overall(FiveStep, 3.0).unwrap();
    assert_eq!(apart(&one, &five), Err(AssessError::TwoScales));
}

#[test]
fn under_a_point_is_noise_and_two_scales_are_not_compared() {
    let nine = |value| ConditionScore::overall(NineStep, value).unwrap();
    let five = |value| ConditionScore::overall(FiveStep, value).unwrap();
    assert!(nine(6.5).since(&nine(7.0)).unwrap().noise);
    assert!(!nine(6.0).since(&nine(7.0)).unwrap().noise);
    assert!(five(3.0).since(&five(3.5)).unwrap().noise);
    assert!(!five(3.0).since(&five(4.0)).unwrap().noise);
    assert_eq!(nine(6.0).since(&five(3.0)), Err(AssessError::TwoScales));
}
