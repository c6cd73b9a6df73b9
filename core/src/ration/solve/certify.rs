//! Holding what the walk says against the problem's own terms.
//!
//! Any prices prove a floor under the cost, right or wrong (weak duality): the least that each sum can cost at its price,
//! and each column at what it then costs. A proof that nothing fits is a sum of the rows that no amounts within their
//! bounds can come to (Farkas' lemma).
#![allow(
    clippy::needless_range_loop,
    reason = "rows and columns are walked by number, as their algebra is written"
)]
#![allow(
    clippy::indexing_slicing,
    reason = "`terms` of the problem is `rows` times `columns`; prices and proofs are `rows` long, bounds `columns + \
              rows`, amounts at least `columns`; every index is that of a loop over them, or of `tableau`"
)]

use super::answer::{Amount, Certificate, Solution, Stands, Sum};
use super::error::{Residual, SolveError};
use super::problem::Problem;
use super::published as p;
use super::scaled::Scaled;
use super::tableau::Tableau;

/// A sum of rows that proves that nothing fits: how many times each.
pub(super) struct Proof(Vec<f64>);

impl Proof {
    /// From the variable that follows at place `i` and cannot come to its bound: it less those that stand, as it takes
    /// them, is a sum of the rows.
    pub(super) fn of(tableau: &Tableau<'_>, i: usize, up: bool) -> Self {
        let n = tableau.columns();
        let sign = if up { 1.0 } else { -1.0 };
        let mut times = vec![0.0; tableau.rows()];
        if let Some(row) = tableau.follow[i].checked_sub(n) {
            times[row] = sign;
        }
        for q in 0..n {
            if let Some(row) = tableau.stand[q].checked_sub(n) {
                times[row] = -sign * tableau.term(i, q);
            }
        }
        Self(times)
    }
}

/// The least that `times` a variable between two bounds comes to. What is no more than rounding counts as nothing where
/// the bound has no end.
fn least(times: f64, rounding: f64, lower: f64, upper: f64) -> f64 {
    let bound = if times > 0.0 { lower } else { upper };
    if times.abs() <= 0.0 || (bound.is_infinite() && times.abs() <= rounding) {
        0.0
    } else {
        times * bound
    }
}

/// What a sum of rows takes of a column, and the size of what it is made up of.
fn taken(problem: &Scaled, times: &[f64], column: usize) -> (f64, f64) {
    let n = problem.columns;
    let (mut sum, mut size) = (0.0, 0.0);
    let terms = problem.terms.as_slice();
    for i in 0..times.len() {
        // Most rows hold nothing and have no price.
        if times[i].abs() > 0.0 {
            let term = times[i] * terms[i * n + column];
            sum += term;
            size += term.abs();
        }
    }
    (sum, size)
}

/// How many times each row, without those that are rounding. Any numbers of times make a proof, so that leaving some out
/// costs nothing; a little more counts as rounding where it asks for a limit that is not there.
fn tidy(tableau: &Tableau<'_>, times: &[f64]) -> Vec<f64> {
    let n = tableau.columns();
    let largest = times.iter().fold(0.0, |most: f64, t| most.max(t.abs()));
    times
        .iter()
        .enumerate()
        .map(|(i, times)| {
            let bound = if *times > 0.0 {
                tableau.lower[n + i]
            } else {
                tableau.upper[n + i]
            };
            let rounding = if bound.is_infinite() {
                *p::SOLVE_PIVOT
            } else {
                *p::SOLVE_FIT / 1000.0
            };
            if times.abs() <= rounding * largest {
                0.0
            } else {
                *times
            }
        })
        .collect()
}

/// No point within the bounds costs less than this, whatever the prices; scaled.
pub(super) fn cost_floor(tableau: &Tableau<'_>, prices: &[f64]) -> f64 {
    let problem = tableau.problem;
    let n = problem.columns;
    let prices = tidy(tableau, prices);
    let mut floor = 0.0;
    for (i, price) in prices.iter().enumerate() {
        floor += least(*price, 0.0, tableau.lower[n + i], tableau.upper[n + i]);
    }
    for j in 0..n {
        let (sum, size) = taken(problem, &prices, j);
        let rounding = *p::SOLVE_PRICE * (problem.cost[j].abs() + size).max(1.0);
        floor += least(
            problem.cost[j] - sum,
            rounding * 2.0,
            tableau.lower[j],
            tableau.upper[j],
        );
    }
    floor
}

/// Whether a sum of rows proves that nothing fits: the least it can come to is more than the columns can bring.
pub(super) fn proves_nothing_fits(tableau: &Tableau<'_>, proof: &Proof) -> bool {
    let problem = tableau.problem;
    let n = problem.columns;
    let times = tidy(tableau, &proof.0);
    // The least of the rows less the most of the columns, and the size of what that is made up of.
    let (mut margin, mut size) = (0.0, 0.0);
    for (i, times) in times.iter().enumerate() {
        let part = least(*times, 0.0, tableau.lower[n + i], tableau.upper[n + i]);
        margin += part;
        size += part.abs();
    }
    for j in 0..n {
        let (sum, made_of) = taken(problem, &times, j);
        let part = least(
            -sum,
            *p::SOLVE_PIVOT * made_of,
            tableau.lower[j],
            tableau.upper[j],
        );
        margin += part;
        size += part.abs();
    }
    margin > f64::EPSILON * 100.0 * size
}

impl Tableau<'_> {
    /// Whether every sum is what its columns bring.
    pub(super) fn adds_up(&self) -> bool {
        let (n, m) = (self.columns(), self.rows());
        let (terms, value) = (self.problem.terms.as_slice(), self.value.as_slice());
        (0..m).all(|i| {
            let (mut sum, mut size) = (0.0, 1.0);
            for j in 0..n {
                let part = terms[i * n + j] * value[j];
                sum += part;
                size += part.abs();
            }
            (sum - value[n + i]).abs() <= *p::SOLVE_FIT * size
        })
    }

    /// The column that gains most while the variable at place `q` moves, with those that follow it, and no bound is ever
    /// met; none when one is.
    pub(super) fn falls_without_end(&self, q: usize, up: bool) -> Option<usize> {
        let (n, m) = (self.columns(), self.rows());
        let mut ray = vec![0.0; n + m];
        let sign = if up { 1.0 } else { -1.0 };
        ray[self.stand[q]] = sign;
        for i in 0..m {
            let variable = self.follow[i];
            if variable < n {
                ray[variable] = sign * self.term(i, q);
            }
        }
        let mut sizes = vec![1.0; n];
        for i in 0..m {
            let mut size = 1.0;
            for j in 0..n {
                let part = self.problem.terms[i * n + j] * ray[j];
                ray[n + i] += part;
                size += part.abs();
            }
            sizes.push(size);
        }
        let cost: f64 = (0..n).map(|j| self.problem.cost[j] * ray[j]).sum();
        let free = ray.iter().zip(&sizes).enumerate().all(|(v, (by, size))| {
            let still = by.abs() <= *p::SOLVE_PIVOT * size;
            still
                || if *by > 0.0 {
                    self.upper[v].is_infinite()
                } else {
                    self.lower[v].is_infinite()
                }
        });
        if cost >= 0.0 || !free {
            return None;
        }
        let gain = |j: &usize| self.problem.cost[*j] * ray[*j];
        (0..n).min_by(|a, b| gain(a).total_cmp(&gain(b)))
    }
}

/// How many branches were looked at, and the least that any ration costs, in the problem's own unit.
pub(super) struct Searched {
    pub(super) branches: usize,
    pub(super) least: f64,
}

fn within(residual: Residual, value: f64) -> Result<f64, SolveError> {
    let allowed = *p::SOLVE_CERTIFIED;
    if value <= allowed {
        Ok(value)
    } else {
        Err(SolveError::NotCertified {
            residual,
            value,
            allowed,
        })
    }
}

fn stands(value: f64, price: f64, lower: f64, upper: f64) -> Stands {
    if lower >= upper {
        Stands::Locked
    } else if price > 0.0 || value <= lower {
        Stands::AtLower
    } else if price < 0.0 || value >= upper {
        Stands::AtUpper
    } else {
        Stands::Between
    }
}

/// Over which bound a value is, as a share of the larger of 1, the bound and a size.
fn over(value: f64, size: f64, lower: f64, upper: f64) -> f64 {
    let share = |by: f64, bound: f64| by / 1.0_f64.max(bound.abs()).max(size);
    if value < lower {
        share(lower - value, lower)
    } else if value > upper {
        share(value - upper, upper)
    } else {
        0.0
    }
}

/// The corner of a walk, in the problem's own units and held against the problem as it was given. `tableau` was rebuilt,
/// and its whole doses and unused foods are locked.
pub(super) fn certified(
    problem: &Problem,
    tableau: &Tableau<'_>,
    searched: &Searched,
) -> Result<Solution, SolveError> {
    let scaled = tableau.problem;
    let (n, m) = (scaled.columns, scaled.rows);
    let values: Vec<f64> = (0..n)
        .map(|j| {
            let value = tableau.value[j];
            // What is left of nothing by rounding is nothing.
            let value = if value.abs() <= *p::SOLVE_FIT / 100.0 {
                0.0
            } else {
                value
            };
            value.max(tableau.lower[j]).min(tableau.upper[j]) * scaled.unit[j]
        })
        .collect();
    let prices: Vec<f64> = tidy(tableau, &tableau.row_prices())
        .iter()
        .zip(&scaled.row_factor)
        .map(|(price, factor)| price * factor / scaled.cost_factor)
        .collect();
    let mut rows: f64 = 0.0;
    let mut sums = Vec::with_capacity(m);
    for (row, price) in problem.rows.iter().zip(&prices) {
        let (mut value, mut size) = (0.0, 0.0);
        for (term, amount) in row.terms.iter().zip(&values) {
            value += term * amount;
            size += (term * amount).abs();
        }
        rows = rows.max(over(value, size, row.lower, row.upper));
        sums.push(Sum {
            value,
            stands: stands(value, *price, row.lower, row.upper),
            price: *price,
        });
    }
    let (mut cost, mut floor, mut size) = (0.0, 0.0, 0.0);
    for (row, price) in problem.rows.iter().zip(&prices) {
        let part = least(*price, 0.0, row.lower, row.upper);
        floor += part;
        size += part.abs();
    }
    let mut worst: f64 = 0.0;
    let mut amounts = Vec::with_capacity(n);
    for (j, column) in problem.columns.iter().enumerate() {
        let (mut price, mut made_of) = (column.cost, column.cost.abs());
        for (row, times) in problem.rows.iter().zip(&prices) {
            price -= row.terms[j] * times;
            made_of += (row.terms[j] * times).abs();
        }
        let value = values[j];
        cost += column.cost * value;
        size += (column.cost * value).abs();
        let (low, high) = (
            tableau.lower[j] * scaled.unit[j],
            tableau.upper[j] * scaled.unit[j],
        );
        // A price asks for a bound at which the amount is; what asks in vain is a fault of the price.
        let in_vain = (price > 0.0 && value > low) || (price < 0.0 && value < high);
        if in_vain && low < high {
            worst =
                worst.max(price.abs() / made_of.max(1.0 / (scaled.cost_factor * scaled.unit[j])));
            price = 0.0;
        }
        floor += price * value;
        amounts.push(Amount {
            value,
            stands: stands(value, 0.0, column.lower, column.upper),
            price,
        });
    }
    let gap = (cost - floor).abs() / size.max(1.0 / scaled.cost_factor);
    Ok(Solution {
        cost,
        amounts,
        sums,
        certificate: Certificate {
            rows: within(Residual::Rows, rows)?,
            prices: within(Residual::Prices, worst)?,
            gap: within(Residual::Gap, gap)?,
            least: searched.least.min(cost),
            branches: searched.branches,
        },
    })
}
