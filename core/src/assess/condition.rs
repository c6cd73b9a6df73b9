//! Condition by eye and hand, on the two scales in use. A score keeps its scale; nothing is converted back.

use super::error::AssessError;
use super::finding::Finding;
use super::published as p;
use super::ribs::ConditionRange;
use crate::units::Bounds;

/// The scale of a condition score.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ConditionScale {
    /// 1 to 9 by six sites (Henneke et al. 1983).
    NineStep,
    /// 0 to 5 by three sites (Carroll & Huntington 1988).
    FiveStep,
}

/// A site that is scored.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Site {
    /// The neck; on both scales.
    Neck,
    /// The withers.
    Withers,
    /// Behind the shoulder.
    BehindShoulder,
    /// The ribs.
    Ribs,
    /// The loin and back.
    Loin,
    /// The tail head.
    TailHead,
    /// Back and ribs together; on 0 to 5 only.
    BackAndRibs,
    /// The pelvis and rump; on 0 to 5 only, and what that scale starts from.
    Pelvis,
}

impl ConditionScale {
    /// Its sites in the order of walking along the animal, from head to tail.
    pub const fn sites(self) -> &'static [Site] {
        match self {
            Self::NineStep => &[
                Site::Neck,
                Site::Withers,
                Site::BehindShoulder,
                Site::Ribs,
                Site::Loin,
                Site::TailHead,
            ],
            Self::FiveStep => &[Site::Neck, Site::BackAndRibs, Site::Pelvis],
        }
    }

    /// Its lowest and highest score.
    pub const fn bounds(self) -> Bounds {
        match self {
            Self::NineStep => p::CONDITION_NINE.value,
            Self::FiveStep => p::CONDITION_FIVE.value,
        }
    }
}

/// A condition score: its scale, its sites where they were scored, and the score.
#[derive(Clone, Debug, PartialEq)]
pub struct ConditionScore {
    scale: ConditionScale,
    sites: Vec<(Site, f64)>,
    value: f64,
}

impl ConditionScore {
    /// From the sites that were scored, in half points, in any order; a site that is not there was skipped.
    ///
    /// 1 to 9: the mean of the sites, of which at least four of the six must be scored (ours). 0 to 5: the pelvis, moved
    /// half a point towards neck or back and ribs where one of them differs by a point or more; where they pull both
    /// ways it stays.
    pub fn by_sites(
        scale: ConditionScale,
        scored: &[(Site, f64)],
    ) -> Result<(Self, Vec<Finding>), AssessError> {
        for (index, (site, value)) in scored.iter().enumerate() {
            if !scale.sites().contains(site) {
                return Err(AssessError::SiteOfOtherScale { scale, site: *site });
            }
            if scored.iter().take(index).any(|(other, _)| other == site) {
                return Err(AssessError::SiteTwice(*site));
            }
            half_point(scale, *value)?;
        }
        let mut sites = scored.to_vec();
        sites.sort_by_key(|(site, _)| *site);
        let value = match scale {
            ConditionScale::NineStep => mean_of(&sites)?,
            ConditionScale::FiveStep => from_pelvis(&sites)?,
        };
        let skipped: Vec<Site> = scale
            .sites()
            .iter()
            .copied()
            .filter(|site| !sites.iter().any(|(scored, _)| scored == site))
            .collect();
        let findings = if skipped.is_empty() {
            Vec::new()
        } else {
            vec![Finding::SitesSkipped(skipped)]
        };
        let score = Self {
            scale,
            sites,
            value,
        };
        Ok((score, findings))
    }

    /// A score given as one number, in half points, without its sites.
    pub fn overall(scale: ConditionScale, value: f64) -> Result<Self, AssessError> {
        Ok(Self {
            scale,
            sites: Vec::new(),
            value: half_point(scale, value)?,
        })
    }

    /// Its scale.
    pub const fn scale(&self) -> ConditionScale {
        self.scale
    }

    /// The scored sites in walking order; empty when it was given as one number.
    pub fn sites(&self) -> &[(Site, f64)] {
        &self.sites
    }

    /// The score, on its own scale.
    pub const fn value(&self) -> f64 {
        self.value
    }

    /// The score on the scale 1 to 9: itself, or the range that stands for a score of 0 to 5 (ours: no conversion was
    /// ever validated). There is no way back.
    pub fn on_nine(&self) -> ConditionRange {
        match self.scale {
            ConditionScale::NineStep => ConditionRange::of((self.value, self.value)),
            ConditionScale::FiveStep => {
                let half_points = self.value * 2.0;
                let away = |index: usize| (index as f64 - half_points).abs();
                // The score is a half point of the scale, so the nearest row is its own.
                p::FIVE_AS_NINE
                    .iter()
                    .enumerate()
                    .min_by(|(a, _), (b, _)| away(*a).total_cmp(&away(*b)))
                    .map_or(
                        ConditionRange::of((p::CONDITION_NINE.min, p::CONDITION_NINE.max)),
                        |(_, pair)| ConditionRange::of(*pair),
                    )
            }
        }
    }

    /// What changed since an earlier score. Scores of two scales are never compared.
    pub fn since(&self, earlier: &Self) -> Result<ConditionChange, AssessError> {
        if self.scale != earlier.scale {
            return Err(AssessError::TwoScales);
        }
        let difference = self.value - earlier.value;
        let noise = match self.scale {
            ConditionScale::NineStep => difference.abs() < p::NOISE_NINE.value,
            ConditionScale::FiveStep => difference.abs() <= p::NOISE_FIVE.value,
        };
        Ok(ConditionChange { difference, noise })
    }
}

/// The difference of two scores on one scale.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ConditionChange {
    /// Later less earlier, in units of the scale.
    pub difference: f64,
    /// Whether two people, or one on two days, differ by as much: under 1 on 1 to 9, up to 0.5 on 0 to 5 (ours).
    pub noise: bool,
}

fn half_point(scale: ConditionScale, value: f64) -> Result<f64, AssessError> {
    scale.bounds().check(value)?;
    if (value * 2.0).fract() == 0.0 {
        Ok(value)
    } else {
        Err(AssessError::NotHalfPoint { value })
    }
}

fn mean_of(sites: &[(Site, f64)]) -> Result<f64, AssessError> {
    let needed = *p::NINE_STEP_SITES;
    if sites.len() < needed {
        return Err(AssessError::TooFewSites {
            scored: sites.len(),
            needed,
        });
    }
    let sum: f64 = sites.iter().map(|(_, value)| value).sum();
    Ok(sum / sites.len() as f64)
}

fn from_pelvis(sites: &[(Site, f64)]) -> Result<f64, AssessError> {
    let score_of = |wanted| {
        sites
            .iter()
            .find(|(site, _)| *site == wanted)
            .map(|(_, value)| *value)
    };
    let pelvis = score_of(Site::Pelvis).ok_or(AssessError::BaseSiteSkipped(Site::Pelvis))?;
    let others = [score_of(Site::Neck), score_of(Site::BackAndRibs)];
    let pulls = |up: bool| {
        others.iter().flatten().any(|other| {
            let difference = if up { other - pelvis } else { pelvis - other };
            p::FIVE_STEP_MOVES_FROM.value <= difference
        })
    };
    Ok(match (pulls(true), pulls(false)) {
        (true, false) => pelvis + p::FIVE_STEP_MOVE.value,
        (false, true) => pelvis - p::FIVE_STEP_MOVE.value,
        (true, true) | (false, false) => pelvis,
    })
}

#[cfg(test)]
mod tests {
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
    fn under_a_point_is_noise_and_two_scales_are_not_compared() {
        let nine = |value| ConditionScore::overall(NineStep, value).unwrap();
        let five = |value| ConditionScore::overall(FiveStep, value).unwrap();
        assert!(nine(6.5).since(&nine(7.0)).unwrap().noise);
        assert!(!nine(6.0).since(&nine(7.0)).unwrap().noise);
        assert!(five(3.0).since(&five(3.5)).unwrap().noise);
        assert!(!five(3.0).since(&five(4.0)).unwrap().noise);
        assert_eq!(nine(6.0).since(&five(3.0)), Err(AssessError::TwoScales));
    }
}
