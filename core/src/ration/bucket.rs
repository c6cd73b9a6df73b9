//! Bucket meals: sugar and starch of each, and starch of the day.
//!
//! A food of which nobody knows the sugar holds at most its own dry matter: a spoon of it cannot break a limit, a scoop
//! may. Hay is not counted.

use super::food::Food;
use crate::limits::{Ends, MealLimit, MealVerdict, feeds_needed, judge_meal};
use crate::units::{AsFed, NutrientMass};

/// One bucket meal.
#[derive(Clone, Debug, Default)]
pub struct Bucket<'a> {
    /// Its foods.
    pub foods: Vec<(AsFed, &'a Food)>,
}

/// Starch of all buckets of a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum DayStarch {
    /// The limit of the meal is the strict one and no limit of the day holds.
    ByMeal,
    /// Under the limit.
    Within {
        /// What the day holds at most.
        holds: NutrientMass,
    },
    /// At or over it.
    Over {
        /// What the day holds at least.
        holds: NutrientMass,
        /// The limit.
        limit: NutrientMass,
    },
    /// A label does not say: it cannot be cleared.
    NotKnown,
}

/// What foods hold of what a limit counts, at least and at most.
fn ends<'a>(
    foods: impl Iterator<Item = &'a (AsFed, &'a Food)>,
    limit: &MealLimit,
) -> (NutrientMass, NutrientMass) {
    let nothing = (NutrientMass::ZERO, NutrientMass::ZERO);
    foods.fold(nothing, |(least, most), (fed, food)| {
        let together = food.sugar_starch_in(*fed);
        let known = match limit {
            MealLimit::SugarAndStarch { .. } => together,
            MealLimit::Starch { .. } => food.starch_in(*fed),
        };
        let whole = NutrientMass::g(fed.dry(food.dry).to_kg() * 1000.0);
        (
            least + known.unwrap_or(NutrientMass::ZERO),
            // Starch is a part of sugar and starch, and either is a part of the dry matter.
            most + known.or(together).unwrap_or(whole),
        )
    })
}

/// In how many feeds foods are given so that each keeps its limit, what nobody says counted in full; `None` when no number
/// of feeds would keep it.
pub fn feeds_for(foods: &[(AsFed, &Food)], limit: &MealLimit) -> Option<u32> {
    feeds_needed(limit, ends(foods.iter(), limit).1).map(|feeds| feeds.max(1))
}

/// How one bucket stands to the limit of a meal.
pub fn bucket_verdict(bucket: &Bucket<'_>, limit: &MealLimit) -> MealVerdict {
    let judged = |mass| match limit {
        MealLimit::SugarAndStarch { .. } => judge_meal(
            limit,
            Some(Ends::exactly(mass)),
            Some(Ends::exactly(NutrientMass::ZERO)),
        ),
        MealLimit::Starch { .. } => judge_meal(limit, None, Some(Ends::exactly(mass))),
    };
    let (least, most) = ends(bucket.foods.iter(), limit);
    match (judged(least), judged(most)) {
        (_, MealVerdict::Within) => MealVerdict::Within,
        (over @ MealVerdict::Over { .. }, _) => over,
        _ => MealVerdict::NotKnown,
    }
}

/// How the starch of all buckets stands to the limit of the day.
pub fn day_starch(buckets: &[Bucket<'_>], limit: &MealLimit) -> DayStarch {
    let MealLimit::Starch { day, .. } = limit else {
        return DayStarch::ByMeal;
    };
    let (least, most) = ends(buckets.iter().flat_map(|bucket| &bucket.foods), limit);
    if most < *day {
        DayStarch::Within { holds: most }
    } else if least >= *day {
        DayStarch::Over {
            holds: least,
            limit: *day,
        }
    } else {
        DayStarch::NotKnown
    }
}
