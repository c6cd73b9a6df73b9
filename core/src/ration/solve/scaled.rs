//! The problem with its numbers brought to one size, by powers of two, so that no bit is lost.
#![allow(
    clippy::needless_range_loop,
    reason = "rows and columns are walked by number, as their algebra is written"
)]
#![allow(
    clippy::indexing_slicing,
    reason = "`terms` is `rows` times `columns`, the vectors of a column are `columns` long, those of a row `rows`, and \
              every index is that of a loop over them; `Problem::new` has let in no row of another length"
)]

use super::problem::{Problem, doses};
use super::published as p;

/// A column or row may count in whole steps.
#[derive(Clone, Debug)]
pub(super) struct Scaled {
    pub(super) columns: usize,
    pub(super) rows: usize,
    /// Row by row.
    pub(super) terms: Vec<f64>,
    pub(super) cost: Vec<f64>,
    /// Bounds of the columns, then of the rows.
    pub(super) lower: Vec<f64>,
    /// Bounds of the columns, then of the rows.
    pub(super) upper: Vec<f64>,
    /// One dose, where only whole doses are given.
    pub(super) dose: Vec<Option<f64>>,
    pub(super) bought: Vec<bool>,
    /// Of each column, what moves no row by more than one of its given units; of each row, that unit; in scaled units.
    pub(super) one: Vec<f64>,
    /// A unit of the scaled column in units of the given one.
    pub(super) unit: Vec<f64>,
    /// A unit of the given row in units of the scaled one.
    pub(super) row_factor: Vec<f64>,
    /// A unit of the given cost in units of the scaled one.
    pub(super) cost_factor: f64,
}

/// How often rows and columns are evened out in turn.
// numeric: each round halves what is left, in the exponent
const ROUNDS: usize = 4;

/// The power of two next to a positive number; 1 where there is none.
fn power(value: f64) -> f64 {
    if value > 0.0 && value.is_finite() {
        #[allow(
            clippy::cast_possible_truncation,
            reason = "an exponent of a double is small"
        )]
        let exponent = value.log2().round() as i32;
        2.0_f64.powi(exponent)
    } else {
        1.0
    }
}

/// What brings a set of sizes around 1: the geometric mean of the smallest and largest, turned over. What rounding left of a
/// difference is no size.
fn evening(sizes: impl Iterator<Item = f64> + Clone) -> f64 {
    let most = sizes.clone().fold(0.0, f64::max);
    let least = sizes
        .filter(|size| *size > most * *p::SOLVE_PIVOT)
        .fold(most, f64::min);
    if most > 0.0 {
        1.0 / (least.sqrt() * most.sqrt())
    } else {
        1.0
    }
}

impl Scaled {
    pub(super) fn new(problem: &Problem) -> Self {
        let (n, m) = (problem.columns.len(), problem.rows.len());
        let mut unit = vec![1.0; n];
        let mut row_factor = vec![1.0; m];
        for _ in 0..ROUNDS {
            for i in 0..m {
                let terms = &problem.rows[i].terms;
                row_factor[i] = evening((0..n).map(|j| terms[j].abs() * unit[j]));
            }
            for j in 0..n {
                unit[j] = evening((0..m).map(|i| problem.rows[i].terms[j].abs() * row_factor[i]));
            }
        }
        for factor in unit.iter_mut().chain(row_factor.iter_mut()) {
            *factor = power(*factor);
        }
        let mut terms = vec![0.0; n * m];
        for i in 0..m {
            for j in 0..n {
                terms[i * n + j] = problem.rows[i].terms[j] * row_factor[i] * unit[j];
            }
        }
        let cost: Vec<f64> = (0..n).map(|j| problem.columns[j].cost * unit[j]).collect();
        let dearest = cost
            .iter()
            .fold(0.0, |most: f64, cost| most.max(cost.abs()));
        let cost_factor = 1.0 / power(dearest);
        let mut lower = Vec::with_capacity(n + m);
        let mut upper = Vec::with_capacity(n + m);
        let mut dose = Vec::with_capacity(n);
        for (column, unit) in problem.columns.iter().zip(&unit) {
            let one = column.dose.filter(|_| !column.is_locked());
            let (low, high) = match one {
                Some(one) => {
                    let (least, most) = doses(column.lower, column.upper, one);
                    (least * one, most * one)
                }
                None => (column.lower, column.upper),
            };
            lower.push(low / unit);
            upper.push(high / unit);
            dose.push(one.map(|one| one / unit));
        }
        for (row, factor) in problem.rows.iter().zip(&row_factor) {
            lower.push(row.lower * factor);
            upper.push(row.upper * factor);
        }
        let largest = |j: usize| {
            let terms = problem.rows.iter().map(|row| row.terms[j].abs());
            terms.fold(1.0, f64::max)
        };
        let one = (0..n)
            .map(|j| 1.0 / (unit[j] * largest(j)))
            .chain(row_factor.iter().copied())
            .collect();
        Self {
            columns: n,
            rows: m,
            terms,
            cost: cost.iter().map(|cost| cost * cost_factor).collect(),
            lower,
            upper,
            dose,
            bought: problem.columns.iter().map(|column| column.bought).collect(),
            one,
            unit,
            row_factor,
            cost_factor,
        }
    }
}
