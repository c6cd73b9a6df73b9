//! Whether sugar is a danger to this animal, with the facts that say so. There is no score.

use super::health::{Answer, Insulin, Laminitis, VetFlag};
use super::kind::{Animal, BodyType, Kind};
use super::published::{CONDITION_AT_RISK, CREST_AT_RISK};

/// How sugar is to be treated.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RiskLevel {
    /// It had laminitis, or a test says insulin-dysregulated.
    Proven,
    /// Nobody tested, and a fact below makes it likely; treated as at risk.
    AtRisk,
    /// Nobody tested, and nothing known makes it likely; bucket meals are treated as at risk.
    NotKnown,
    /// A test says it is not.
    Clear,
}

impl RiskLevel {
    /// Whether hay, grass and bucket meals follow the rules for animals at risk.
    pub const fn restricts_sugar(self) -> bool {
        matches!(self, Self::Proven | Self::AtRisk)
    }

    /// Whether bucket meals follow the rules for animals at risk: then also when nothing is known.
    pub const fn restricts_meals(self) -> bool {
        !matches!(self, Self::Clear)
    }
}

/// A fact that makes an animal one at risk.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum RiskFactor {
    /// Laminitis now or before.
    Laminitis,
    /// A test said insulin-dysregulated.
    TestedDysregulated,
    /// A native or cob type, or a donkey.
    Type,
    /// A crest of 3 or more.
    Crest,
    /// Condition of 7 or more.
    Condition,
    /// Footsore after trims.
    Footsore,
}

/// The level and every fact behind it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Risk {
    /// How sugar is to be treated.
    pub level: RiskLevel,
    /// The facts, strongest first.
    pub factors: Vec<RiskFactor>,
}

/// Judges the risk from what is known; `condition` is on the scale 1 to 9, `crest` on 0 to 5, as last scored.
///
/// Default of practice (ours): at risk if native or cob type, crest 3 or more, condition 7 or more, ever laminitic, or
/// footsore after trims; a test that says clear overrides these, laminitis overrides the test.
pub fn risk(animal: &Animal, condition: Option<f64>, crest: Option<f64>) -> Risk {
    let health = &animal.health;
    let mut factors = Vec::new();
    let laminitic = matches!(health.laminitis, Laminitis::Ever { .. } | Laminitis::Active);
    if laminitic {
        factors.push(RiskFactor::Laminitis);
    }
    let tested = match &health.insulin {
        Insulin::Tested(test) => Some(test.dysregulated),
        Insulin::NotKnown => None,
    };
    if tested == Some(true) {
        factors.push(RiskFactor::TestedDysregulated);
    }
    let by_type = health.native_or_cob == Answer::Yes
        || animal.kind.is_donkey()
        || matches!(animal.kind, Kind::Miniature)
        || matches!(
            animal.body_type,
            Some(BodyType::Pony | BodyType::Shetland | BodyType::Icelandic)
        );
    if by_type {
        factors.push(RiskFactor::Type);
    }
    if crest.is_some_and(|score| *CREST_AT_RISK <= score) {
        factors.push(RiskFactor::Crest);
    }
    if condition.is_some_and(|score| *CONDITION_AT_RISK <= score) {
        factors.push(RiskFactor::Condition);
    }
    if health.flags.contains(&VetFlag::FootsoreAfterTrims) {
        factors.push(RiskFactor::Footsore);
    }
    let level = match tested {
        Some(true) => RiskLevel::Proven,
        _ if laminitic => RiskLevel::Proven,
        Some(false) => RiskLevel::Clear,
        None if factors.is_empty() => RiskLevel::NotKnown,
        None => RiskLevel::AtRisk,
    };
    Risk { level, factors }
}
