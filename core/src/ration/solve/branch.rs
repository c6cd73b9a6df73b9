//! Whole doses, and how many foods: branch and bound over the walk.
//!
//! A corner whose dose is not whole parts into one with at most the whole doses below and one with at least those above.
//! A corner that uses more bought foods than allowed parts into one without a food and one in which the food counts as
//! used (the food's own yes or no, set without a column for it). Foods are settled before doses, each branch as deep as it
//! goes, first with the food and towards the nearer dose. A branch is given up
//! when its proven floor is not under the cheapest ration found, or when it is proven that nothing fits. The search is cut
//! off by counting branches.
#![allow(
    clippy::indexing_slicing,
    reason = "indices of columns come from loops over them or from `left_out`, whose callers take them from an answer of \
              the same problem; the vectors are `columns` long, and bounds and values longer"
)]

use super::answer::{Answer, Solution};
use super::certify::{Searched, certified};
use super::error::SolveError;
use super::problem::Problem;
use super::published as p;
use super::scaled::Scaled;
use super::simplex::End;
use super::tableau::Tableau;

/// What a search came to.
#[derive(Clone, Debug)]
pub(super) enum Search {
    /// The cheapest.
    Best(Solution),
    /// Nothing fits, proven in every branch.
    Nothing,
    /// The cost falls without end along a column.
    WithoutEnd(usize),
    /// Cut off.
    CutOff {
        /// The cheapest so far.
        best: Option<Solution>,
        /// No ration costs less.
        least: f64,
    },
}

#[derive(Clone)]
struct Branch<'a> {
    tableau: Tableau<'a>,
    /// Bought foods that count as used, whether they are or not.
    counted: Vec<bool>,
    /// What its parent proved: nothing in it costs less, scaled.
    floor: f64,
}

/// What a corner still breaks.
enum Broken {
    /// A dose that is not whole: the column, and the whole doses under it.
    Dose { column: usize, below: f64 },
    /// Too many foods, of which this one.
    Food { column: usize },
}

struct Searcher<'a> {
    problem: &'a Problem,
    scaled: &'a Scaled,
    /// The cheapest found, and its scaled cost.
    best: Option<(Solution, f64)>,
    /// The least floor of all branches that were given up or ended, scaled.
    least: f64,
    branches: usize,
    open: Vec<Branch<'a>>,
}

/// The scaled size under which an amount is rounding.
fn is_used(value: f64) -> bool {
    value.abs() > *p::SOLVE_WHOLE
}

impl<'a> Searcher<'a> {
    /// Whether a floor leaves nothing to win.
    fn is_beaten(&self, floor: f64) -> bool {
        self.best
            .as_ref()
            .is_some_and(|(_, cost)| floor >= cost - *p::SOLVE_WIN * cost.abs())
    }

    /// The dose that is least whole.
    fn parted_dose(&self, tableau: &Tableau<'_>, least: f64) -> Option<Broken> {
        let mut worst: Option<(f64, Broken)> = None;
        for (column, dose) in self.scaled.dose.iter().enumerate() {
            let Some(dose) = dose else { continue };
            let doses = tableau.value[column] / dose;
            let off = (doses - doses.round()).abs();
            if off > least && worst.as_ref().is_none_or(|(than, _)| off > *than) {
                let below = doses.floor();
                worst = Some((off, Broken::Dose { column, below }));
            }
        }
        worst.map(|(_, broken)| broken)
    }

    /// When more foods are used than allowed, the one whose part in the cost is most: without it the floor rises most, and
    /// with it few others are left to count.
    fn surplus_food(&self, branch: &Branch<'_>) -> Option<Broken> {
        let allowed = self.problem.at_most_bought?;
        let (mut count, mut dearest) = (0, None::<(f64, usize)>);
        for column in (0..self.scaled.columns).filter(|j| self.scaled.bought[*j]) {
            let value = branch.tableau.value[column];
            if branch.counted[column] {
                count += 1;
            } else if is_used(value) {
                count += 1;
                let part = (self.scaled.cost[column] * value).abs();
                if dearest.is_none_or(|(than, _)| part > than) {
                    dearest = Some((part, column));
                }
            }
        }
        if count <= allowed {
            return None;
        }
        dearest.map(|(_, column)| Broken::Food { column })
    }

    /// The branch without a food.
    fn without(branch: &Branch<'a>, column: usize) -> Branch<'a> {
        let mut less = branch.clone();
        less.tableau.bound(column, 0.0, 0.0);
        less
    }

    /// The branch in which a food counts as used; when no more may be, all others are out.
    fn count(&self, mut branch: Branch<'a>, column: usize) -> Branch<'a> {
        branch.counted[column] = true;
        self.close(&mut branch);
        branch
    }

    /// When as many foods count as may be used, all others are out.
    fn close(&self, branch: &mut Branch<'a>) {
        let bought = |j: &usize| self.scaled.bought[*j];
        let columns = 0..self.scaled.columns;
        let counted = columns
            .clone()
            .filter(|j| bought(j) && branch.counted[*j])
            .count();
        if self
            .problem
            .at_most_bought
            .is_none_or(|most| counted < most)
        {
            return;
        }
        for column in columns.filter(bought) {
            if !branch.counted[column] && branch.tableau.upper[column] > 0.0 {
                branch.tableau.bound(column, 0.0, 0.0);
            }
        }
    }

    fn part(&mut self, branch: Branch<'a>, broken: &Broken) {
        match *broken {
            Broken::Dose { column, below } => {
                let Some(dose) = self.scaled.dose[column] else {
                    return;
                };
                let (low, high) = (branch.tableau.lower[column], branch.tableau.upper[column]);
                let nearer_down = branch.tableau.value[column] / dose - below <= 1.0 / 2.0;
                let mut down = branch.clone();
                let mut up = branch;
                down.tableau.bound(column, low, below * dose);
                up.tableau.bound(column, (below + 1.0) * dose, high);
                let (first, second) = if nearer_down { (down, up) } else { (up, down) };
                for side in [second, first] {
                    if side.tableau.lower[column] <= side.tableau.upper[column] {
                        self.open.push(side);
                    }
                }
            }
            Broken::Food { column } => {
                let without = Self::without(&branch, column);
                let with = self.count(branch, column);
                self.open.push(without);
                self.open.push(with);
            }
        }
    }

    /// The corner with its doses whole to the last bit and its unused foods out; `Nothing` when it does not fit so.
    fn settle(&self, branch: &Branch<'a>) -> Result<Option<(Solution, f64)>, SolveError> {
        let mut tableau = branch.tableau.clone();
        for column in 0..self.scaled.columns {
            let value = tableau.value[column];
            if let Some(dose) = self.scaled.dose[column] {
                let whole = (value / dose).round() * dose;
                tableau.bound(column, whole, whole);
            } else if self.problem.at_most_bought.is_some()
                && self.scaled.bought[column]
                && !is_used(value)
                && tableau.lower[column] <= 0.0
            {
                tableau.bound(column, 0.0, 0.0);
            }
        }
        for _ in 0..p::SOLVE_ATTEMPTS.value {
            if !matches!(tableau.walk()?, End::Best { .. }) {
                return Ok(None);
            }
            tableau.rebuild();
            tableau.follow_all();
            tableau.refine();
            let searched = Searched {
                branches: self.branches,
                least: f64::NEG_INFINITY,
            };
            // A corner that is not quite one after the rebuilding is walked on from there.
            if tableau.is_best() {
                let solution = certified(self.problem, &tableau, &searched)?;
                return Ok(Some((solution, tableau.cost())));
            }
        }
        let searched = Searched {
            branches: self.branches,
            least: f64::NEG_INFINITY,
        };
        let solution = certified(self.problem, &tableau, &searched)?;
        Ok(Some((solution, tableau.cost())))
    }

    /// One branch; `Some` when the search is over with it.
    fn look(&mut self, mut branch: Branch<'a>) -> Result<Option<Search>, SolveError> {
        let floor = match branch.tableau.walk()? {
            End::Nothing => return Ok(None),
            End::Endless { column } => return Ok(Some(Search::WithoutEnd(column))),
            End::Best { floor } => floor.max(branch.floor),
        };
        branch.floor = floor;
        if self.is_beaten(floor) {
            self.least = self.least.min(floor);
            return Ok(None);
        }
        let broken = self
            .surplus_food(&branch)
            .or_else(|| self.parted_dose(&branch.tableau, *p::SOLVE_WHOLE));
        let broken = match broken {
            Some(broken) => broken,
            None => match self.settle(&branch)? {
                Some((solution, cost)) => {
                    self.least = self.least.min(floor);
                    if self.best.as_ref().is_none_or(|(_, than)| cost < *than) {
                        self.best = Some((solution, cost));
                    }
                    return Ok(None);
                }
                // Whole but for the last bits, and not to be had quite whole: part there.
                None => match self.parted_dose(&branch.tableau, 0.0) {
                    Some(broken) => broken,
                    None => return Ok(None),
                },
            },
        };
        self.part(branch, &broken);
        Ok(None)
    }

    fn given(&self, scaled: f64) -> f64 {
        scaled / self.scaled.cost_factor
    }

    fn run(mut self, most_branches: usize) -> Result<Search, SolveError> {
        while let Some(branch) = self.open.pop() {
            if self.is_beaten(branch.floor) {
                self.least = self.least.min(branch.floor);
                continue;
            }
            if self.branches >= most_branches {
                self.open.push(branch);
                break;
            }
            self.branches += 1;
            if let Some(over) = self.look(branch)? {
                return Ok(over);
            }
        }
        let cut = !self.open.is_empty();
        let least = self
            .open
            .iter()
            .fold(self.least, |least, branch| least.min(branch.floor));
        let least = self.given(least);
        let branches = self.branches;
        let best = self.best.map(|(mut solution, _)| {
            solution.certificate.least = least.min(solution.cost);
            solution.certificate.branches = branches;
            solution
        });
        Ok(match (cut, best) {
            (true, best) => Search::CutOff { best, least },
            (false, Some(best)) => Search::Best(best),
            (false, None) => Search::Nothing,
        })
    }
}

/// Searches a problem without some of its columns.
pub(super) fn search(
    problem: &Problem,
    scaled: &Scaled,
    left_out: &[usize],
    most_branches: usize,
) -> Result<Search, SolveError> {
    let mut tableau = Tableau::new(scaled);
    for column in left_out {
        tableau.bound(*column, 0.0, 0.0);
    }
    let columns = 0..scaled.columns;
    // What may not be left out counts from the start.
    let counted: Vec<bool> = columns
        .map(|j| scaled.bought[j] && (scaled.lower[j] > 0.0 || scaled.upper[j] < 0.0))
        .collect();
    let forced = counted.iter().filter(|counted| **counted).count();
    if problem.at_most_bought.is_some_and(|most| forced > most) {
        return Ok(Search::Nothing);
    }
    let mut searcher = Searcher {
        problem,
        scaled,
        best: None,
        least: f64::INFINITY,
        branches: 0,
        open: Vec::new(),
    };
    let mut root = Branch {
        tableau,
        counted,
        floor: f64::NEG_INFINITY,
    };
    searcher.close(&mut root);
    searcher.open.push(root);
    searcher.run(most_branches)
}

/// The cheapest amounts within their bounds whose sums are within their limits.
///
/// Shapes, units and ranges are those of [`Problem`]. The answer is proven: see [`super::Certificate`].
///
/// # Errors
/// What was found could not be held closely enough against the problem, or the walk was longer than is allowed.
pub fn cheapest(problem: &Problem) -> Result<Answer, SolveError> {
    let scaled = Scaled::new(problem);
    Ok(
        match search(problem, &scaled, &[], p::SOLVE_BRANCHES.value)? {
            Search::Best(solution) => Answer::Cheapest(solution),
            Search::Nothing => Answer::NothingFits,
            Search::WithoutEnd(column) => Answer::WithoutEnd { column },
            Search::CutOff { best, least } => Answer::CutOff { best, least },
        },
    )
}
