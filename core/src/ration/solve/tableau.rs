//! The kernel: which variables stand at a bound, which follow from them, and the exchange of two.
//!
//! There is a variable for each column and one for each row, its sum. Of these `columns + rows` variables, as many as
//! there are columns stand where they are put, at a bound; the others follow: each is a sum of those that stand. At first
//! the columns stand and the rows follow, with the problem's own terms. An exchange lets one that follows stand instead
//! of one that stood (Chvatal, Linear Programming, 1983, chapters 2 and 8, calls this a dictionary).
//!
//! The inner loops walk slices by number: the app is built for size, where an iterator's step, an index into a vector and
//! `f64::max` are calls, and the walk took twice as long.
#![allow(
    clippy::needless_range_loop,
    reason = "places and variables are walked by number, as their algebra is written"
)]
#![allow(
    clippy::indexing_slicing,
    reason = "`terms` has `rows + 1` rows of `columns`; `stand` is `columns` long, `follow` `rows`; `value`, `lower` and \
              `upper` are `columns + rows` long, and `stand` and `follow` hold each index under that once; places are \
              those of loops over them"
)]

use super::published as p;
use super::scaled::Scaled;

/// One state of the walk.
#[derive(Clone, Debug)]
pub(super) struct Tableau<'a> {
    pub(super) problem: &'a Scaled,
    /// Row by row, what each variable that follows takes from each that stands; the row after them, how the cost changes.
    pub(super) terms: Vec<f64>,
    /// The variables that stand.
    pub(super) stand: Vec<usize>,
    /// The variables that follow.
    pub(super) follow: Vec<usize>,
    pub(super) value: Vec<f64>,
    pub(super) lower: Vec<f64>,
    pub(super) upper: Vec<f64>,
    /// Whether sums are held to their scaled limits only, because closer could not be settled.
    pub(super) is_loose: bool,
}

impl<'a> Tableau<'a> {
    /// The start: all columns stand, at the bound that is cheaper.
    pub(super) fn new(problem: &'a Scaled) -> Self {
        let (n, m) = (problem.columns, problem.rows);
        let mut start = Self {
            problem,
            terms: Vec::new(),
            stand: Vec::new(),
            follow: Vec::new(),
            value: vec![0.0; n + m],
            lower: problem.lower.clone(),
            upper: problem.upper.clone(),
            is_loose: false,
        };
        start.begin();
        start.put_all();
        start
    }

    fn begin(&mut self) {
        let (n, m) = (self.problem.columns, self.problem.rows);
        self.terms.clone_from(&self.problem.terms);
        self.terms.extend_from_slice(&self.problem.cost);
        self.stand = (0..n).collect();
        self.follow = (n..n + m).collect();
    }

    pub(super) fn columns(&self) -> usize {
        self.problem.columns
    }

    pub(super) fn rows(&self) -> usize {
        self.problem.rows
    }

    /// How much of the variable that stands at place `q` the one that follows at place `i` takes.
    pub(super) fn term(&self, i: usize, q: usize) -> f64 {
        self.terms.as_slice()[i * self.columns() + q]
    }

    /// How the cost changes with the variable that stands at place `q`.
    pub(super) fn price(&self, q: usize) -> f64 {
        self.terms.as_slice()[self.rows() * self.columns() + q]
    }

    pub(super) fn can_rise(&self, variable: usize) -> bool {
        self.value.as_slice()[variable] < self.upper.as_slice()[variable]
    }

    pub(super) fn can_fall(&self, variable: usize) -> bool {
        self.value.as_slice()[variable] > self.lower.as_slice()[variable]
    }

    /// The bound at which a variable with this price is to stand: the cheaper one, if it has an end; where neither is
    /// cheaper, the one where it is.
    fn place(&self, variable: usize, price: f64) -> f64 {
        let (low, high) = (self.lower[variable], self.upper[variable]);
        let is_high = self.value[variable] >= high;
        let wants_high = price < -*p::SOLVE_PRICE || (price <= *p::SOLVE_PRICE && is_high);
        match (low.is_finite(), high.is_finite()) {
            (true, true) if wants_high => high,
            (true, _) => low,
            (false, true) => high,
            (false, false) => 0.0,
        }
    }

    /// Puts every variable that stands at a bound, the one its price is for, and lets the others follow.
    pub(super) fn put_all(&mut self) {
        for q in 0..self.columns() {
            let variable = self.stand[q];
            self.value[variable] = self.place(variable, self.price(q));
        }
        self.follow_all();
    }

    /// Works out anew the values of all that follow.
    pub(super) fn follow_all(&mut self) {
        let (n, m) = (self.columns(), self.rows());
        let (stand, follow) = (self.stand.as_slice(), self.follow.as_slice());
        let (terms, value) = (self.terms.as_slice(), self.value.as_mut_slice());
        for i in 0..m {
            let mut sum = 0.0;
            for q in 0..n {
                sum += terms[i * n + q] * value[stand[q]];
            }
            value[follow[i]] = sum;
        }
    }

    /// Moves the variable that stands at place `q`, and with it all that follow.
    pub(super) fn shift(&mut self, q: usize, by: f64) {
        let (n, m) = (self.columns(), self.rows());
        let (terms, follow) = (self.terms.as_slice(), self.follow.as_slice());
        let value = self.value.as_mut_slice();
        for i in 0..m {
            value[follow[i]] += terms[i * n + q] * by;
        }
        value[self.stand.as_slice()[q]] += by;
    }

    /// The variable that follows at place `i` stands from now on, and the one that stands at place `q` follows. Values
    /// stay.
    pub(super) fn exchange(&mut self, i: usize, q: usize) {
        let (n, m) = (self.columns(), self.rows());
        let terms = self.terms.as_mut_slice();
        let mut entries = terms[i * n..(i + 1) * n].to_vec();
        let row = entries.as_mut_slice();
        let over = 1.0 / row[q];
        for r in 0..n {
            row[r] = -row[r] * over;
        }
        row[q] = over;
        for k in 0..=m {
            let other = &mut terms[k * n..(k + 1) * n];
            if k == i {
                other.copy_from_slice(row);
                continue;
            }
            let times = other[q];
            if times.abs() > 0.0 {
                other[q] = 0.0;
                for r in 0..n {
                    other[r] += times * row[r];
                }
            }
        }
        std::mem::swap(&mut self.follow[i], &mut self.stand[q]);
    }

    /// Works everything out anew from the problem's own terms for the same variables that stand, the largest term first.
    /// A variable that cannot follow, because nothing is left to exchange it with, stands instead.
    pub(super) fn rebuild(&mut self) {
        let (n, m) = (self.columns(), self.rows());
        let mut stands = vec![false; n + m];
        for variable in &self.stand {
            stands[*variable] = true;
        }
        self.begin();
        loop {
            let (mut best, mut at) = (*p::SOLVE_PIVOT, None);
            let (terms, stands) = (self.terms.as_slice(), stands.as_slice());
            let (stand, follow) = (self.stand.as_slice(), self.follow.as_slice());
            for i in 0..m {
                if !stands[follow[i]] {
                    continue;
                }
                for q in 0..n {
                    let size = terms[i * n + q].abs();
                    if size > best && !stands[stand[q]] {
                        (best, at) = (size, Some((i, q)));
                    }
                }
            }
            match at {
                Some((i, q)) => self.exchange(i, q),
                None => break,
            }
        }
    }

    /// Works out anew how the cost changes with each variable that stands.
    pub(super) fn reprice(&mut self) {
        let (n, m) = (self.columns(), self.rows());
        let cost = |variable: usize| self.problem.cost.get(variable).copied().unwrap_or(0.0);
        let mut prices: Vec<f64> = self.stand.iter().map(|v| cost(*v)).collect();
        for i in 0..m {
            let times = cost(self.follow[i]);
            if times.abs() > 0.0 {
                for q in 0..n {
                    prices[q] += times * self.terms[i * n + q];
                }
            }
        }
        self.terms[m * n..].copy_from_slice(&prices);
    }

    /// Sharpens the values once: by what the sums of the columns miss of where their rows stand.
    pub(super) fn refine(&mut self) {
        let (n, m) = (self.columns(), self.rows());
        let missed: Vec<f64> = (0..m)
            .map(|i| {
                let row = &self.problem.terms[i * n..(i + 1) * n];
                let value = self.value.as_slice();
                let mut left = value[n + i];
                for j in 0..n {
                    left -= row[j] * value[j];
                }
                left
            })
            .collect();
        // Where a row follows, what it misses is its own; where it stands, those that follow make it up.
        for i in 0..m {
            let variable = self.follow[i];
            let mut by = 0.0;
            for q in 0..n {
                if let Some(row) = self.stand[q].checked_sub(n) {
                    by += self.terms[i * n + q] * missed[row];
                }
            }
            if variable < n {
                self.value[variable] += by;
            }
        }
        for i in 0..m {
            let variable = self.follow[i];
            if let Some(row) = variable.checked_sub(n) {
                let terms = &self.problem.terms[row * n..(row + 1) * n];
                let value = self.value.as_mut_slice();
                let mut sum = 0.0;
                for j in 0..n {
                    sum += terms[j] * value[j];
                }
                value[variable] = sum;
            }
        }
    }

    /// What the variables cost.
    pub(super) fn cost(&self) -> f64 {
        self.problem
            .cost
            .iter()
            .zip(&self.value)
            .map(|(cost, value)| cost * value)
            .sum()
    }

    /// The shadow price of each row, scaled.
    pub(super) fn row_prices(&self) -> Vec<f64> {
        let n = self.columns();
        let mut prices = vec![0.0; self.rows()];
        for q in 0..n {
            if let Some(row) = self.stand[q].checked_sub(n) {
                prices[row] = self.price(q);
            }
        }
        prices
    }

    /// Gives a variable other bounds. It stands at one of them, if it stands.
    pub(super) fn bound(&mut self, variable: usize, lower: f64, upper: f64) {
        self.lower[variable] = lower;
        self.upper[variable] = upper;
        if let Some(q) = self.stand.iter().position(|v| *v == variable) {
            let to = self.place(variable, self.price(q));
            self.shift(q, to - self.value[variable]);
            self.value[variable] = to;
        }
    }
}
