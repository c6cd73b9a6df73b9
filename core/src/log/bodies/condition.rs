//! A condition score.

use super::base::{JobKey, Tenths};
use crate::assess::{AssessError, ConditionScale, ConditionScore, Finding, Ribs, Site};
use crate::log::LogError;
use crate::log::stored::{tagged, twin, words};

words!(ConditionScale { NineStep = "nine_step", FiveStep = "five_step" });
words!(Site {
    Neck = "neck",
    Withers = "withers",
    BehindShoulder = "behind_shoulder",
    Ribs = "ribs",
    Loin = "loin",
    TailHead = "tail_head",
    BackAndRibs = "back_and_ribs",
    Pelvis = "pelvis",
});
words!(Ribs {
    Seen = "seen",
    FeltEasily = "felt_easily",
    FeltWithPressure = "felt_with_pressure",
    NotFelt = "not_felt",
});

twin! {
    /// The score of one site.
    SiteScoreV1 {
        /// The site.
        site: Site,
        /// Its score.
        tenths: Tenths,
    }
}

/// How the condition was taken.
#[derive(Clone, Debug, PartialEq)]
pub enum ConditionTakenV1 {
    /// Site by site.
    Sites {
        /// The scale.
        scale: ConditionScale,
        /// The sites that were scored.
        sites: Vec<SiteScoreV1>,
    },
    /// As one number.
    Overall {
        /// The scale.
        scale: ConditionScale,
        /// The score.
        tenths: Tenths,
    },
    /// By one answer about the ribs.
    Ribs {
        /// The answer.
        ribs: Ribs,
    },
}

tagged!(ConditionTakenV1, by "how" {
    Sites = "sites" { scale: scale, sites: sites },
    Overall = "overall" { scale: scale, tenths: tenths },
    Ribs = "ribs" { ribs: ribs },
});

twin! {
    /// A condition score of the animal that the record is about.
    ConditionV1 {
        /// How it was taken, and what came of it.
        taken: ConditionTakenV1,
        /// The job that this does.
        job: Option<JobKey>,
    }
}

/// A condition as the room `assess` reads it.
#[derive(Clone, Debug, PartialEq)]
pub enum Condition {
    /// A score on its scale, with what is worth saying beside it.
    Score(ConditionScore, Vec<Finding>),
    /// One answer about the ribs.
    Ribs(Ribs),
}

impl ConditionV1 {
    /// The twin of a score.
    ///
    /// Error: a score that lies on no scale.
    pub fn of(score: &ConditionScore) -> Result<Self, LogError> {
        let scale = score.scale();
        let taken = if score.sites().is_empty() {
            ConditionTakenV1::Overall {
                scale,
                tenths: Tenths::of(score.value())?,
            }
        } else {
            let twin = |(site, value): &(Site, f64)| {
                Ok(SiteScoreV1 {
                    site: *site,
                    tenths: Tenths::of(*value)?,
                })
            };
            ConditionTakenV1::Sites {
                scale,
                sites: score
                    .sites()
                    .iter()
                    .map(twin)
                    .collect::<Result<_, LogError>>()?,
            }
        };
        Ok(Self { taken, job: None })
    }

    /// The condition behind a record.
    ///
    /// Errors: those of [`ConditionScore::by_sites`] and [`ConditionScore::overall`].
    pub fn condition(&self) -> Result<Condition, AssessError> {
        match &self.taken {
            ConditionTakenV1::Sites { scale, sites } => {
                let scored: Vec<(Site, f64)> = sites
                    .iter()
                    .map(|scored| (scored.site, scored.tenths.score()))
                    .collect();
                let (score, findings) = ConditionScore::by_sites(*scale, &scored)?;
                Ok(Condition::Score(score, findings))
            }
            ConditionTakenV1::Overall { scale, tenths } => {
                let score = ConditionScore::overall(*scale, tenths.score())?;
                Ok(Condition::Score(score, Vec::new()))
            }
            ConditionTakenV1::Ribs { ribs } => Ok(Condition::Ribs(*ribs)),
        }
    }
}
