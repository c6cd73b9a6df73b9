//! Amounts that can be weighed: whole steps of the scale, or whole scoops.
//!
//! First the foods that the best ration uses are taken as settled and their steps made whole, which is quick and loses at
//! most a step of each; where that fits no limit, their grams; then every food that may be used in its own steps.

use super::rows::Rows;
use crate::ration::published::SOURCE_STEP;
use crate::ration::solve::{Column, Problem, Solution, SolveError, cheapest};

/// The same ration in whole steps; `None` when none was found.
pub(super) fn whole(
    rows: &Rows<'_>,
    problem: &Problem,
    best: &Solution,
) -> Result<Option<Solution>, SolveError> {
    let used = best.used();
    let settled = |column: usize| used.contains(&column);
    let own = |step: f64| step;
    let grams = |_: f64| *SOURCE_STEP / 1000.0;
    for tried in [
        in_steps(rows, problem, settled, own)?,
        in_steps(rows, problem, settled, grams)?,
        every_food(rows, problem)?,
    ] {
        if let Some(found) = cheapest(&tried)?.solution() {
            return Ok(Some(found.clone()));
        }
    }
    Ok(None)
}

/// The problem with every food that may be used in its own steps.
pub(super) fn every_food(rows: &Rows<'_>, problem: &Problem) -> Result<Problem, SolveError> {
    in_steps(rows, problem, |_| true, |step| step)
}

fn in_steps(
    rows: &Rows<'_>,
    problem: &Problem,
    may: impl Fn(usize) -> bool,
    step: impl Fn(f64) -> f64,
) -> Result<Problem, SolveError> {
    let first_food = rows.forages.len();
    let columns: Vec<Column> = problem
        .columns()
        .iter()
        .enumerate()
        .map(|(at, column)| {
            let Some(food) = at
                .checked_sub(first_food)
                .and_then(|food| rows.foods.get(food))
            else {
                return column.clone();
            };
            if column.is_locked() {
                return column.clone();
            }
            if !may(at) {
                let none = column.lower;
                return column.clone().between(none, none);
            }
            let own = food.step.to_kg();
            let dose = if food.whole_steps { own } else { step(own) };
            column.clone().in_doses(dose)
        })
        .collect();
    Problem::new(columns, problem.rows().to_vec(), problem.at_most_bought())
}
