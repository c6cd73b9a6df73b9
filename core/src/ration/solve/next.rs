//! The next cheapest sets of foods, and the fewest foods.
//!
//! A cheaper set is cut off by asking that one of its foods at least is left out. The cut is made by its cases: a search
//! without the first of them, one without the second, and so on; the cheapest case not yet reported is the next set
//! (E. L. Lawler, A procedure for computing the K best solutions to discrete optimization problems, Management Science 18,
//! 1972, 401-405).

use super::answer::{Answer, Solution};
use super::branch::{Search, cheapest, search};
use super::error::SolveError;
use super::problem::Problem;
use super::published as p;
use super::scaled::Scaled;
use std::collections::BTreeSet;

/// A ration without some foods, not reported yet.
struct Case {
    without: BTreeSet<usize>,
    solution: Solution,
}

impl Problem {
    /// The used columns of a ration that could be left out.
    fn dispensable(&self, solution: &Solution) -> BTreeSet<usize> {
        solution
            .used()
            .into_iter()
            .filter(|column| {
                self.columns
                    .get(*column)
                    .is_some_and(|column| column.lower <= 0.0 && column.upper >= 0.0)
            })
            .collect()
    }
}

/// The next cheapest sets of foods after a ration, cheapest first, each with its own cheapest amounts. None holds a
/// cheaper one whole: each leaves out at least one food of every set before it. Fewer come back when there are no more, or
/// when the number of searches that is allowed is used up.
///
/// # Errors
/// As of [`cheapest`].
pub fn next_sets(
    problem: &Problem,
    first: &Solution,
    how_many: usize,
) -> Result<Vec<Solution>, SolveError> {
    let scaled = Scaled::new(problem);
    let mut tried = BTreeSet::new();
    let mut open: Vec<Case> = vec![Case {
        without: BTreeSet::new(),
        solution: first.clone(),
    }];
    let mut reported: Vec<BTreeSet<usize>> = Vec::new();
    let mut found = Vec::new();
    let mut searches = p::SOLVE_SETS.value;
    while found.len() < how_many {
        let cheapest = open
            .iter()
            .enumerate()
            .min_by(|(_, a), (_, b)| a.solution.cost.total_cmp(&b.solution.cost))
            .map(|(index, _)| index);
        let Some(index) = cheapest else { break };
        let case = open.remove(index);
        let used = problem.dispensable(&case.solution);
        let known = reported.iter().find(|set| set.is_subset(&used)).cloned();
        let cut = known.unwrap_or_else(|| {
            if !reported.is_empty() {
                found.push(case.solution);
            }
            reported.push(used.clone());
            used
        });
        for column in cut {
            let mut without = case.without.clone();
            without.insert(column);
            if !tried.insert(without.clone()) {
                continue;
            }
            let Some(left) = searches.checked_sub(1) else {
                return Ok(found);
            };
            searches = left;
            let columns: Vec<usize> = without.iter().copied().collect();
            let solution = match search(problem, &scaled, &columns, p::SOLVE_SIDE_BRANCHES.value)? {
                Search::Best(solution) => Some(solution),
                Search::CutOff { best, .. } => best,
                Search::Nothing | Search::WithoutEnd(_) => None,
            };
            if let Some(solution) = solution {
                open.push(Case { without, solution });
            }
        }
    }
    Ok(found)
}

/// The cheapest among the rations with the fewest bought foods.
///
/// # Errors
/// As of [`cheapest`].
pub fn fewest(problem: &Problem) -> Result<Answer, SolveError> {
    let bought = problem.columns.iter().filter(|c| c.bought).count();
    let most = problem.at_most_bought.unwrap_or(bought).min(bought);
    let scaled = Scaled::new(problem);
    for allowed in 0..most {
        let fewer = Problem {
            at_most_bought: Some(allowed),
            ..problem.clone()
        };
        match search(&fewer, &scaled, &[], p::SOLVE_BRANCHES.value)? {
            Search::Nothing => {}
            Search::Best(solution) => return Ok(Answer::Cheapest(solution)),
            Search::WithoutEnd(column) => return Ok(Answer::WithoutEnd { column }),
            Search::CutOff { best, least } => return Ok(Answer::CutOff { best, least }),
        }
    }
    cheapest(problem)
}

/// Whether anything fits.
pub(super) fn fits(problem: &Problem) -> Result<bool, SolveError> {
    let scaled = Scaled::new(problem);
    Ok(matches!(
        search(problem, &scaled, &[], p::SOLVE_SIDE_BRANCHES.value)?,
        Search::Best(_) | Search::CutOff { best: Some(_), .. }
    ))
}
