//! Sugar and starch: of the hay and the whole day by risk, and of one bucket meal.
//!
//! Two conventions are kept apart: WSC + starch, and ESC + starch. A verdict with its chance is for the room `forage`.

use super::ends::Ends;
use super::error::{LimitsError, WEIGHT};
use super::published::{
    DAY_STARCH, ESC_AND_STARCH, MEAL_STARCH, MEAL_SUGAR_AND_STARCH, SUGAR_AT_RISK, SUGAR_UPPER,
};
use crate::animal::RiskLevel;
use crate::sources::Provenance;
use crate::units::{BodyMass, NutrientMass, ShareOfDm};

/// The limits of hay and of the whole day's dry matter.
#[derive(Clone, Debug, PartialEq)]
pub struct SugarLimits {
    /// Most WSC + starch.
    pub wsc_and_starch: ShareOfDm,
    /// Most ESC + starch.
    pub esc_and_starch: ShareOfDm,
    /// When ESC + starch passes and WSC + starch lies above this, the conventions disagree about the hay.
    pub conventions_disagree_above: ShareOfDm,
    /// Whether such a hay, and a haylage that passes, is treated as not proven.
    pub doubt_counts_against: bool,
    /// Where they come from.
    pub from: Provenance,
}

/// The sugar limits of a risk level. `None` for an animal that a test says is clear: its hay is bounded by energy alone.
/// Of which nothing is known has the upper of the published bounds for hay; its bucket follows the strict rule.
pub fn sugar_limits(level: RiskLevel) -> Option<SugarLimits> {
    let most = match level {
        RiskLevel::Clear => return None,
        RiskLevel::NotKnown => SUGAR_UPPER,
        RiskLevel::Proven | RiskLevel::AtRisk => SUGAR_AT_RISK,
    };
    Some(SugarLimits {
        wsc_and_starch: *most,
        esc_and_starch: *ESC_AND_STARCH,
        conventions_disagree_above: *SUGAR_UPPER,
        doubt_counts_against: level.restricts_sugar(),
        from: Provenance::new()
            .constant(&most)
            .constant(&ESC_AND_STARCH)
            .constant(&SUGAR_UPPER),
    })
}

/// What one bucket meal may hold; hay is not counted.
#[derive(Clone, Debug, PartialEq)]
pub enum MealLimit {
    /// Insulin-dysregulated, ever laminitic, or not known: sugar and starch together.
    SugarAndStarch {
        /// At most, one meal.
        meal: NutrientMass,
        /// Where it comes from.
        from: Provenance,
    },
    /// All others: starch.
    Starch {
        /// Under this, one meal.
        meal: NutrientMass,
        /// Under this, a day.
        day: NutrientMass,
        /// Where it comes from.
        from: Provenance,
    },
}

/// The limit of a bucket meal. `weight` is the lowest likely weight, for a ceiling is judged on what gives most.
///
/// # Errors
/// A weight that is not believed.
pub fn meal_limit(level: RiskLevel, weight: BodyMass) -> Result<MealLimit, LimitsError> {
    WEIGHT.check(weight.to_kg())?;
    let of_body = |rate: f64| NutrientMass::g(rate * weight.to_kg());
    Ok(if level.restricts_meals() {
        MealLimit::SugarAndStarch {
            meal: of_body(*MEAL_SUGAR_AND_STARCH),
            from: Provenance::new().constant(&MEAL_SUGAR_AND_STARCH),
        }
    } else {
        MealLimit::Starch {
            meal: of_body(*MEAL_STARCH),
            day: of_body(*DAY_STARCH),
            from: Provenance::new()
                .constant(&MEAL_STARCH)
                .constant(&DAY_STARCH),
        }
    })
}

/// How a meal stands to its limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MealVerdict {
    /// Within it.
    Within,
    /// Over it.
    Over {
        /// What the meal holds, at the end that gives most.
        holds: NutrientMass,
        /// The limit.
        limit: NutrientMass,
    },
    /// The label does not say: it cannot be cleared.
    NotKnown,
}

/// Judges one meal on the end that gives most. `sugar` and `starch` are what the bucket holds, `None` when nobody knows.
pub fn judge_meal(
    limit: &MealLimit,
    sugar: Option<Ends<NutrientMass>>,
    starch: Option<Ends<NutrientMass>>,
) -> MealVerdict {
    let (holds, most, may_touch) = match limit {
        MealLimit::SugarAndStarch { meal, .. } => match (sugar, starch) {
            (Some(sugar), Some(starch)) => (sugar.most + starch.most, *meal, true),
            // One part alone can already be too much.
            (Some(part), None) | (None, Some(part)) if part.most > *meal => {
                (part.most, *meal, true)
            }
            _ => return MealVerdict::NotKnown,
        },
        MealLimit::Starch { meal, .. } => match starch {
            Some(starch) => (starch.most, *meal, false),
            None => return MealVerdict::NotKnown,
        },
    };
    if !holds.is_finite() {
        MealVerdict::NotKnown
    } else if holds < most || (may_touch && holds <= most) {
        MealVerdict::Within
    } else {
        MealVerdict::Over { holds, limit: most }
    }
}

/// In how many feeds a day's bucket must be given so that each is within its limit: half a kilogram of a balancer with
/// 14 % for 500 kg in two. `day` is what the day's bucket holds of what the limit counts, at the end that gives most.
/// `None` when it is not a number, or more starch than the day may hold: then no number of feeds mends it.
pub fn feeds_needed(limit: &MealLimit, day: NutrientMass) -> Option<u32> {
    if !day.is_finite() || day < NutrientMass::ZERO {
        return None;
    }
    let (meal, whole) = match limit {
        MealLimit::SugarAndStarch { meal, .. } => (*meal, (day / *meal).ceil()),
        MealLimit::Starch {
            meal, day: most, ..
        } => {
            if day >= *most {
                return None;
            }
            (*meal, (day / *meal).floor() + 1.0)
        }
    };
    if meal <= NutrientMass::ZERO || whole > f64::from(u16::MAX) {
        return None;
    }
    // Between 1 and 65,535 by the lines above.
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "bounded above"
    )]
    Some(whole.max(1.0) as u32)
}
