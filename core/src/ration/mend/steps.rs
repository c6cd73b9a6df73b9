//! Amounts that can be weighed: whole steps of the scale, or whole scoops.
//!
//! First the foods that the best ration uses are taken as settled and their steps made whole, which is quick and loses at
//! most a step of each. Where that fits no limit, every food that may be used is tried in whole steps.

use super::rows::Rows;
use crate::ration::solve::{Column, Problem, Solution, SolveError, cheapest};

/// The same ration in whole steps; `None` when none was found.
pub(super) fn whole(
    rows: &Rows<'_>,
    problem: &Problem,
    best: &Solution,
) -> Result<Option<Solution>, SolveError> {
    let used = best.used();
    let settled = in_steps(rows, problem, |column| used.contains(&column))?;
    if let Some(found) = cheapest(&settled)?.solution() {
        return Ok(Some(found.clone()));
    }
    let any = in_steps(rows, problem, |_| true)?;
    Ok(cheapest(&any)?.solution().cloned())
}

fn in_steps(
    rows: &Rows<'_>,
    problem: &Problem,
    may: impl Fn(usize) -> bool,
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
            column.clone().in_doses(food.step.to_kg())
        })
        .collect();
    Problem::new(columns, problem.rows().to_vec(), problem.at_most_bought())
}
