//! The problem with its numbers brought to one size, by powers of two, so that no bit is lost. Every solve begins here.
#![allow(
    clippy::needless_range_loop,
    reason = "rows and columns are walked by number, as their algebra is written"
)]
#![allow(
    clippy::indexing_slicing,
    reason = "`terms`, `by_row` and `by_column` are `rows` times `columns`, the vectors of a column are `columns` long, \
              those of a row `rows`, the two lists of `evening` are of one row or of one column, and every index is that of a loop over them; `Problem::new` has let in no row of another length"
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

/// What brings the products of two lists around 1: the geometric mean of the smallest and largest, turned over. What rounding
/// left of a difference is no size.
fn evening(sizes: &[f64], factors: &[f64]) -> f64 {
    let (mut most, mut least) = (0.0, f64::INFINITY);
    for k in 0..sizes.len() {
        let size = sizes[k] * factors[k];
        if size > most {
            most = size;
        }
        if size > 0.0 && size < least {
            least = size;
        }
    }
    let rounding = most * *p::SOLVE_PIVOT;
    if least <= rounding {
        least = most;
        for k in 0..sizes.len() {
            let size = sizes[k] * factors[k];
            if size > rounding && size < least {
                least = size;
            }
        }
    }
    if most > 0.0 {
        1.0 / (least.sqrt() * most.sqrt())
    } else {
        1.0
    }
}

impl Scaled {
    pub(super) fn new(problem: &Problem) -> Self {
        let (n, m) = (problem.columns.len(), problem.rows.len());
        // The terms without their signs, row by row and column by column.
        let (mut by_row, mut by_column) = (vec![0.0; n * m], vec![0.0; n * m]);
        for (i, row) in problem.rows.iter().enumerate() {
            let (terms, by_row, by_column) = (
                row.terms.as_slice(),
                by_row.as_mut_slice(),
                by_column.as_mut_slice(),
            );
            for j in 0..n {
                by_row[i * n + j] = terms[j].abs();
                by_column[j * m + i] = terms[j].abs();
            }
        }
        let mut unit = vec![1.0; n];
        let mut row_factor = vec![1.0; m];
        for _ in 0..ROUNDS {
            for i in 0..m {
                row_factor[i] = evening(&by_row[i * n..(i + 1) * n], &unit);
            }
            for j in 0..n {
                unit[j] = evening(&by_column[j * m..(j + 1) * m], &row_factor);
            }
        }
        for factor in unit.iter_mut().chain(row_factor.iter_mut()) {
            *factor = power(*factor);
        }
        let mut terms = vec![0.0; n * m];
        for (i, row) in problem.rows.iter().enumerate() {
            let (scaled, given) = (&mut terms[i * n..(i + 1) * n], row.terms.as_slice());
            let (factor, unit) = (row_factor[i], unit.as_slice());
            for j in 0..n {
                scaled[j] = given[j] * factor * unit[j];
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
            let mut most = 1.0;
            for term in &by_column[j * m..(j + 1) * m] {
                if *term > most {
                    most = *term;
                }
            }
            most
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
