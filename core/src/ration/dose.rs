//! How much of a food covers what a ration is short of.

use super::balance::{Line, Standing};
use super::food::Food;
use super::published::FOOD_STEP;
use crate::limits::{MealLimit, Nutrient, feeds_needed};
use crate::sources::Provenance;
use crate::units::{AsFed, BodyMass};

/// What decides the amount of a dose.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum DecidedBy {
    /// The need of a nutrient.
    Need(Nutrient),
    /// The food's own rate.
    Rate,
    /// A ration that somebody decided on.
    Ration,
}

/// A dose of a food.
#[derive(Clone, Debug, PartialEq)]
pub struct Dose {
    /// How much a day.
    pub a_day: AsFed,
    /// In how many feeds, so that each bucket keeps its limit; `None` when the label does not say what it holds of
    /// sugar and starch, or when no number of feeds would keep the limit.
    pub feeds: Option<u32>,
    /// What decides the amount.
    pub decided_by: DecidedBy,
    /// What stays short because the food holds none of it or too little at its rate.
    pub stays_short: Vec<Nutrient>,
    /// Where it comes from.
    pub from: Provenance,
}

/// The least of a food that covers every shortage it can cover, in whole steps, at most the food's own rate.
///
/// Selenium, which nobody knows of an untested hay, is treated as missing whole: what is added must itself be within
/// its rule, which the balance after the dose shows. `None` when nothing is short that the food holds.
pub fn dose(lines: &[Line], food: &Food, body: BodyMass, limit: &MealLimit) -> Option<Dose> {
    let wanted: Vec<(Nutrient, f64)> = lines
        .iter()
        .filter_map(|line| {
            let missing = match line.standing {
                Standing::Short { by } => by,
                Standing::NotKnown => match line.supplied {
                    Some(known) => line.need.plus(known.scaled(-1.0))?,
                    None => line.need,
                },
                Standing::Within | Standing::Over { .. } => return None,
            };
            let in_a_kg = food.per_kg(line.nutrient)?;
            Some((line.nutrient, missing.times(in_a_kg)?))
        })
        .collect();
    let (decisive, kg) = wanted.iter().copied().max_by(|a, b| a.1.total_cmp(&b.1))?;
    let step = AsFed::kg(*FOOD_STEP / 1000.0);
    let most = food.most_a_day(body);
    let whole = crate::units::show::step_up(AsFed::kg(kg), step);
    let (a_day, decided_by) = if whole <= most {
        (whole, DecidedBy::Need(decisive))
    } else {
        (crate::units::show::step_down(most, step), DecidedBy::Rate)
    };
    if a_day <= AsFed::ZERO {
        return None;
    }
    let counted = match limit {
        MealLimit::SugarAndStarch { .. } => food.sugar_starch_in(a_day),
        MealLimit::Starch { .. } => food.starch_in(a_day).or(food.sugar_starch_in(a_day)),
    };
    let covered = |nutrient: Nutrient| {
        wanted
            .iter()
            .any(|(found, kg)| *found == nutrient && *kg <= a_day.to_kg() + STEP_SLACK)
    };
    let stays_short = lines
        .iter()
        .filter(|line| matches!(line.standing, Standing::Short { .. }) && !covered(line.nutrient))
        .map(|line| line.nutrient)
        .collect();
    Some(Dose {
        a_day,
        feeds: counted.and_then(|grams| feeds_needed(limit, grams)),
        decided_by,
        stays_short,
        from: food.from.clone().constant(&FOOD_STEP),
    })
}

/// What is lost in the last bit of a sum.
// numeric: a nanogram in a kilogram
const STEP_SLACK: f64 = 1e-12;
