//! Condition by eye and hand, on the two scales in use. A score keeps its scale; nothing is converted back.

#[cfg(test)]
mod tests;

use super::error::AssessError;
use super::finding::Finding;
use super::published as p;
use super::ribs::ConditionRange;
use crate::animal::Kind;
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

    /// The scale that is usual here for a kind of animal; anybody may choose the other.
    pub const fn usual_for(kind: Kind) -> Self {
        if kind.is_donkey() {
            p::DONKEY_SCALE.value
        } else {
            Self::NineStep
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

/// How far two people who scored on one day lie apart, site by site; sites that only one of them scored are left out.
///
/// # Errors
/// Scores of two scales are never compared.
pub fn apart(
    one: &ConditionScore,
    other: &ConditionScore,
) -> Result<Vec<(Site, f64)>, AssessError> {
    if one.scale != other.scale {
        return Err(AssessError::TwoScales);
    }
    let theirs = |site: Site| {
        let found = other.sites.iter().find(|(scored, _)| *scored == site);
        found.map(|(_, value)| *value)
    };
    Ok(one
        .sites
        .iter()
        .filter_map(|(site, value)| Some((*site, (value - theirs(*site)?).abs())))
        .filter(|(_, apart)| 0.0 < *apart)
        .collect())
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
