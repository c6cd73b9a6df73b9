//! When nothing fits: what comes closest, and what would mend it.

use super::branch::{Search, search};
use super::error::SolveError;
use super::next::fewest;
use super::problem::{Column, Problem};
use super::published as p;
use super::scaled::Scaled;

/// A side of a limit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Side {
    /// The lower bound or limit.
    Lower,
    /// The upper bound or limit.
    Upper,
}

/// What a row lacks of its lower limit, or has over its upper one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Missing {
    /// The index of the row.
    pub row: usize,
    /// Which limit is broken.
    pub side: Side,
    /// By how much, in the row's unit, above nothing.
    pub by: f64,
}

/// One thing that could be changed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mend {
    /// A bound or lock of a column, by its index. A food that is not to be had has an upper bound of nothing.
    Column {
        /// The index.
        column: usize,
        /// Which bound.
        side: Side,
    },
    /// A limit of a row, by its index.
    Row {
        /// The index.
        row: usize,
        /// Which limit.
        side: Side,
    },
    /// How many foods may be bought.
    Bought,
}

/// A change that alone would make a ration fit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Mended {
    /// What is changed.
    pub mend: Mend,
    /// To what, at the least, in its own unit.
    pub to: f64,
    /// How large the change is, in scales of its column or row; of the number of foods, as a share of it.
    pub change: f64,
}

/// What comes closest when nothing fits.
#[derive(Clone, Debug, PartialEq)]
pub struct Shortfall {
    /// The amounts, one a column: within their bounds and locks, as near to the limits as can be, and the cheapest that
    /// miss just so much.
    pub amounts: Vec<f64>,
    /// What they cost.
    pub cost: f64,
    /// The sums, one a row.
    pub sums: Vec<f64>,
    /// Which rows miss their limits, and by how much.
    pub missing: Vec<Missing>,
    /// All of it together, in scales of the rows: no amounts within their bounds have less.
    pub total: f64,
    /// Single changes that would each make a ration fit, the smallest first.
    pub mends: Vec<Mended>,
}

/// The problem with a further column for each limit that can be missed, which brings what is missing.
struct Elastic {
    problem: Problem,
    missing: Vec<(usize, Side)>,
}

impl Elastic {
    fn new(problem: &Problem, at_most_bought: Option<usize>) -> Self {
        let sides: Vec<(usize, Side)> = problem
            .rows
            .iter()
            .enumerate()
            .flat_map(|(i, row)| {
                let lower = row.lower.is_finite().then_some((i, Side::Lower));
                let upper = row.upper.is_finite().then_some((i, Side::Upper));
                [lower, upper].into_iter().flatten()
            })
            .collect();
        let mut columns: Vec<Column> = problem
            .columns
            .iter()
            .map(|column| Column {
                cost: 0.0,
                ..column.clone()
            })
            .collect();
        let mut rows = problem.rows.clone();
        for (place, side) in &sides {
            let scale = problem.rows.get(*place).map_or(1.0, |row| row.scale);
            columns.push(Column::new("missing", 1.0 / scale));
            for (i, row) in rows.iter_mut().enumerate() {
                row.terms.push(match side {
                    _ if i != *place => 0.0,
                    Side::Lower => 1.0,
                    Side::Upper => -1.0,
                });
            }
        }
        Self {
            problem: Problem {
                columns,
                rows,
                at_most_bought,
            },
            missing: sides,
        }
    }

    /// The amounts of all its columns, and what they cost.
    fn solve(&self) -> Result<Option<(Vec<f64>, f64)>, SolveError> {
        Ok(
            found(&self.problem, p::SOLVE_BRANCHES.value)?.map(|solution| {
                let amounts = solution.amounts.iter().map(|amount| amount.value);
                (amounts.collect(), solution.cost)
            }),
        )
    }
}

fn found(
    problem: &Problem,
    branches: usize,
) -> Result<Option<super::answer::Solution>, SolveError> {
    Ok(
        match search(problem, &Scaled::new(problem), &[], branches)? {
            Search::Best(solution) => Some(solution),
            Search::CutOff { best, .. } => best,
            Search::Nothing | Search::WithoutEnd(_) => None,
        },
    )
}

/// The least or most of a sum of columns in a problem, if anything fits it.
fn extreme(mut problem: Problem, terms: &[f64], most: bool) -> Result<Option<f64>, SolveError> {
    let sign = if most { -1.0 } else { 1.0 };
    for (column, term) in problem.columns.iter_mut().zip(terms) {
        column.cost = sign * term;
    }
    Ok(found(&problem, p::SOLVE_SIDE_BRANCHES.value)?.map(|solution| sign * solution.cost))
}

/// What one bound of one column would have to be.
fn mend_column(problem: &Problem, column: usize, side: Side) -> Result<Option<Mended>, SolveError> {
    let mut looser = problem.clone();
    let Some(given) = looser.columns.get_mut(column) else {
        return Ok(None);
    };
    let (lower, upper, scale) = (given.lower, given.upper, given.scale);
    let now = match side {
        Side::Upper if upper.is_finite() => {
            given.upper = f64::INFINITY;
            upper
        }
        Side::Lower if lower.is_finite() && lower > 0.0 => {
            given.lower = 0.0;
            lower
        }
        Side::Lower | Side::Upper => return Ok(None),
    };
    let one: Vec<f64> = (0..problem.columns.len())
        .map(|j| if j == column { 1.0 } else { 0.0 })
        .collect();
    let to = extreme(looser, &one, side == Side::Lower)?;
    Ok(to.map(|to| Mended {
        mend: Mend::Column { column, side },
        to,
        change: (to - now).abs() / scale,
    }))
}

/// What one limit of one row would have to be.
fn mend_row(problem: &Problem, row: usize, side: Side) -> Result<Option<Mended>, SolveError> {
    let mut looser = problem.clone();
    let Some(given) = looser.rows.get_mut(row) else {
        return Ok(None);
    };
    let (terms, scale) = (given.terms.clone(), given.scale);
    let now = match side {
        Side::Upper => std::mem::replace(&mut given.upper, f64::INFINITY),
        Side::Lower => std::mem::replace(&mut given.lower, f64::NEG_INFINITY),
    };
    if now.is_infinite() {
        return Ok(None);
    }
    let to = extreme(looser, &terms, side == Side::Lower)?;
    Ok(to.map(|to| Mended {
        mend: Mend::Row { row, side },
        to,
        change: (to - now).abs() / scale,
    }))
}

fn mends(problem: &Problem) -> Result<Vec<Mended>, SolveError> {
    let mut found = Vec::new();
    for side in [Side::Lower, Side::Upper] {
        for column in 0..problem.columns.len() {
            found.extend(mend_column(problem, column, side)?);
        }
        for row in 0..problem.rows.len() {
            found.extend(mend_row(problem, row, side)?);
        }
    }
    if let Some(now) = problem.at_most_bought {
        let any = Problem {
            at_most_bought: None,
            ..problem.clone()
        };
        if super::next::fits(&any)?
            && let Some(solution) = fewest(&any)?.solution()
        {
            let bought = |j: &usize| problem.columns.get(*j).is_some_and(|c| c.bought);
            let needed = solution.used().iter().filter(|j| bought(j)).count();
            found.push(Mended {
                mend: Mend::Bought,
                to: needed as f64,
                change: needed.saturating_sub(now) as f64 / now.max(1) as f64,
            });
        }
    }
    found.sort_by(|a, b| a.change.total_cmp(&b.change));
    Ok(found)
}

/// What comes closest to the limits of a problem that nothing fits: bounds, locks, whole doses and the number of foods
/// hold, limits are missed, each weighed by its row's scale. Of a problem that something fits, nothing is missing.
///
/// # Errors
/// As of [`super::cheapest`].
pub fn shortfall(problem: &Problem) -> Result<Shortfall, SolveError> {
    let mut elastic = Elastic::new(problem, problem.at_most_bought);
    let mut closest = elastic.solve()?;
    if closest.is_none() {
        // More foods are locked than may be bought: the number cannot hold.
        elastic = Elastic::new(problem, None);
        closest = elastic.solve()?;
    }
    let (mut amounts, total) = closest.unwrap_or_default();
    let missed = amounts.split_off(problem.columns.len().min(amounts.len()));
    // With what is missing allowed for, the cheapest.
    let mut allowed = Problem {
        at_most_bought: elastic.problem.at_most_bought,
        ..problem.clone()
    };
    for ((row, side), by) in elastic.missing.iter().zip(&missed) {
        match (allowed.rows.get_mut(*row), side) {
            (Some(row), Side::Lower) => row.lower -= by,
            (Some(row), Side::Upper) => row.upper += by,
            (None, _) => {}
        }
    }
    if let Some(cheaper) = found(&allowed, p::SOLVE_BRANCHES.value)? {
        amounts = cheaper.amounts.iter().map(|amount| amount.value).collect();
    }
    let sums: Vec<f64> = problem
        .rows
        .iter()
        .map(|row| row.terms.iter().zip(&amounts).map(|(t, x)| t * x).sum())
        .collect();
    let missing = elastic
        .missing
        .iter()
        .zip(&missed)
        .filter(|((row, _), by)| {
            let scale = problem.rows.get(*row).map_or(1.0, |row| row.scale);
            **by > *p::SOLVE_MISSING * scale
        })
        .map(|((row, side), by)| Missing {
            row: *row,
            side: *side,
            by: *by,
        })
        .collect();
    let parts = problem.columns.iter().zip(&amounts);
    Ok(Shortfall {
        cost: parts.map(|(column, amount)| column.cost * amount).sum(),
        amounts,
        sums,
        missing,
        total,
        mends: mends(problem)?,
    })
}
