//! The bought feeds of a plan: those that were decided on, or what the hay is short of.

use super::draft::BucketLine;
use super::hay::Feeding;
use crate::limits::{MealLimit, Needs, Nutrient};
use crate::ration::{DecidedBy, Dose, Food, Line, Part, Standing, balance, feeds_for};
use crate::units::{AsFed, DryMatter};

/// The foods that somebody decided on, each in as many feeds as keep the limit of a bucket for all of them.
pub(super) fn decided_doses<'a>(
    decided: &'a [(AsFed, Food)],
    meal: &MealLimit,
) -> Vec<(&'a Food, Dose)> {
    let together: Vec<(AsFed, &Food)> = decided.iter().map(|(fed, food)| (*fed, food)).collect();
    let feeds = feeds_for(&together, meal);
    together
        .into_iter()
        .filter(|(fed, _)| AsFed::ZERO < *fed)
        .map(|(a_day, food)| {
            let dose = Dose {
                a_day,
                feeds,
                decided_by: DecidedBy::Ration,
                stays_short: Vec::new(),
                from: food.from.clone(),
            };
            (food, dose)
        })
        .collect()
}

pub(super) fn with_buckets(
    feedings: &[Feeding<'_>],
    forage: DryMatter,
    foods: &[(&Food, Dose)],
    needs: &Needs,
) -> Vec<Line> {
    let mut with = super::build::parts(feedings, forage);
    with.extend(
        foods
            .iter()
            .map(|(food, dose)| Part::Food(dose.a_day, food)),
    );
    balance(&with, &needs.rows)
}

/// What stays short of a ration that was decided is told once, with its first food.
pub(super) fn bucket_lines(
    foods: Vec<(&Food, Dose)>,
    with: &[Line],
    decided: bool,
) -> Vec<BucketLine> {
    let short: Vec<Nutrient> = with
        .iter()
        .filter(|line| matches!(line.standing, Standing::Short { .. }))
        .map(|line| line.nutrient)
        .collect();
    foods
        .into_iter()
        .enumerate()
        .map(|(at, (food, dose))| BucketLine {
            name: food.name.clone(),
            class: food.class,
            typical: food.typical,
            food: food.id.clone(),
            dry: dose.a_day.dry(food.dry),
            dose: if decided && at == 0 {
                Dose {
                    stays_short: short.clone(),
                    ..dose
                }
            } else {
                dose
            },
        })
        .collect()
}
