//! The best corner: the bounded simplex, from the side of the prices and from the side of the amounts.
//!
//! A start whose prices are right and whose sums are not is mended by the dual walk; where a price is not right either,
//! it is left out of the dual walk and the primal walk follows. After too many exchanges that change nothing, both walk by
//! the smallest index (R. G. Bland, New finite pivoting rules for the simplex method, Mathematics of Operations Research
//! 2, 1977, 103-107), which cannot go in a circle. Every end is held against the problem's own terms.
#![allow(
    clippy::needless_range_loop,
    reason = "places and variables are walked by number, as their algebra is written"
)]
#![allow(
    clippy::indexing_slicing,
    reason = "places of `stand` are under `columns`, those of `follow` under `rows`, and both hold indices under \
              `columns + rows`, which is how long `value`, `lower` and `upper` are: see `tableau`"
)]

use super::certify::{Proof, cost_floor, proves_nothing_fits};
use super::error::{Residual, SolveError};
use super::published as p;
use super::tableau::Tableau;

/// Where a walk ended.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum End {
    /// At the cheapest corner; no point costs less than this, scaled.
    Best { floor: f64 },
    /// Nothing fits, and it is proven.
    Nothing,
    /// The cost falls without end along this column.
    Endless { column: usize },
}

/// Counts exchanges, and those that changed nothing.
struct Pace {
    left: usize,
    still: usize,
    patience: usize,
    allowed: usize,
}

impl Pace {
    fn new(size: usize, patience: usize) -> Self {
        let allowed = p::SOLVE_EXCHANGES.value + p::SOLVE_EXCHANGES_EACH.value * size;
        Self {
            left: allowed,
            still: 0,
            patience,
            allowed,
        }
    }

    fn step(&mut self, moved: bool) -> Result<(), SolveError> {
        self.still = if moved { 0 } else { self.still + 1 };
        self.left = self.left.checked_sub(1).ok_or(SolveError::NotSettled {
            allowed: self.allowed,
        })?;
        Ok(())
    }

    /// Whether to walk by the smallest index.
    fn careful(&self) -> bool {
        self.still >= self.patience
    }
}

impl Tableau<'_> {
    /// How far a variable may be over a bound: a share of the bound, or of 1, as it was given or scaled, whichever is less;
    /// but no less than rounding.
    fn slack(&self, variable: usize, bound: f64) -> f64 {
        let one = self.problem.one.as_slice()[variable];
        let mut size = bound.abs();
        let rounding = if size > 1.0 { size } else { 1.0 } / 1000.0;
        let one = if self.is_loose || one > 1.0 { 1.0 } else { one };
        for least in [one, rounding] {
            if least > size {
                size = least;
            }
        }
        *p::SOLVE_FIT * size
    }

    /// By how much a variable is over a bound: below nothing under the lower one, above nothing over the upper one.
    fn off(&self, variable: usize) -> f64 {
        let (value, low, high) = (
            self.value.as_slice()[variable],
            self.lower.as_slice()[variable],
            self.upper.as_slice()[variable],
        );
        if value < low && value < low - self.slack(variable, low) {
            value - low
        } else if value > high && value > high + self.slack(variable, high) {
            value - high
        } else {
            0.0
        }
    }

    /// Whether a price asks its variable to move, and it can.
    fn is_offending(&self, q: usize) -> bool {
        let (price, variable) = (self.price(q), self.stand.as_slice()[q]);
        (price < -*p::SOLVE_PRICE && self.can_rise(variable))
            || (price > *p::SOLVE_PRICE && self.can_fall(variable))
    }

    /// The place among those that follow of the one that must stand, in the dual walk.
    fn misfit(&self, careful: bool) -> Option<usize> {
        let mut worst: Option<(usize, f64)> = None;
        let follow = self.follow.as_slice();
        for i in 0..follow.len() {
            let off = self.off(follow[i]).abs();
            let is_worse = match worst {
                None => true,
                Some((k, _)) if careful => follow[i] < follow[k],
                Some((_, than)) => off > than,
            };
            if off > 0.0 && is_worse {
                worst = Some((i, off));
            }
        }
        worst.map(|(i, _)| i)
    }

    /// The place among those that stand of the one that follows instead, so that no price turns wrong.
    fn dual_partner(&self, i: usize, up: bool, careful: bool) -> Option<usize> {
        let stand = self.stand.as_slice();
        let able = |q: usize| {
            let (term, variable) = (self.term(i, q), stand[q]);
            if term.abs() <= *p::SOLVE_PIVOT {
                return None;
            }
            let rises = (term > 0.0) == up;
            let can = if rises {
                self.can_rise(variable)
            } else {
                self.can_fall(variable)
            };
            can.then(|| (self.price(q).abs(), term.abs()))
        };
        let mut reach = f64::INFINITY;
        for q in 0..self.columns() {
            if let Some((price, size)) = able(q) {
                let leave = if careful { 0.0 } else { *p::SOLVE_PRICE };
                let far = (price + leave) / size;
                if far < reach {
                    reach = far;
                }
            }
        }
        let mut best: Option<(usize, f64)> = None;
        for q in 0..self.columns() {
            if let Some((price, size)) = able(q)
                && price / size <= reach
            {
                let is_better = match best {
                    None => true,
                    Some((k, _)) if careful => stand[q] < stand[k],
                    Some((_, than)) => size > than,
                };
                if is_better {
                    best = Some((q, size));
                }
            }
        }
        best.map(|(q, _)| q)
    }

    /// Until every sum fits. `Some` is the place of one that cannot be mended, and whether it is too low.
    fn walk_dual(&mut self, pace: &mut Pace) -> Result<Option<(usize, bool)>, SolveError> {
        while let Some(i) = self.misfit(pace.careful()) {
            let leaving = self.follow[i];
            let up = self.value[leaving] < self.lower[leaving];
            let Some(q) = self.dual_partner(i, up, pace.careful()) else {
                return Ok(Some((i, up)));
            };
            let to = if up {
                self.lower[leaving]
            } else {
                self.upper[leaving]
            };
            let by = (to - self.value[leaving]) / self.term(i, q);
            let moved = self.price(q).abs() > *p::SOLVE_PRICE;
            self.shift(q, by);
            self.value[leaving] = to;
            self.exchange(i, q);
            pace.step(moved)?;
        }
        Ok(None)
    }

    /// The place of the variable that pays to move, in the primal walk.
    fn bargain(&self, careful: bool) -> Option<usize> {
        let mut best: Option<(usize, f64)> = None;
        for q in (0..self.columns()).filter(|q| self.is_offending(*q)) {
            let price = self.price(q).abs();
            let is_better = match best {
                None => true,
                Some((k, _)) if careful => self.stand[q] < self.stand[k],
                Some((_, than)) => price > than,
            };
            if is_better {
                best = Some((q, price));
            }
        }
        best.map(|(q, _)| q)
    }

    /// How far the variable at place `q` can move up or down, and which one that follows stops it; none where it is its
    /// own other bound.
    fn primal_partner(&self, q: usize, up: bool, careful: bool) -> (f64, Option<usize>) {
        let (moving, follow) = (self.stand.as_slice()[q], self.follow.as_slice());
        let room = |i: usize| {
            let term = if up {
                self.term(i, q)
            } else {
                -self.term(i, q)
            };
            let variable = follow[i];
            let bound = if term > 0.0 {
                self.upper.as_slice()[variable]
            } else {
                self.lower.as_slice()[variable]
            };
            (term.abs() > *p::SOLVE_PIVOT && bound.is_finite()).then(|| {
                let far = (bound - self.value.as_slice()[variable]) / term;
                let far = if far > 0.0 { far } else { 0.0 };
                (far, self.slack(variable, bound) / term.abs(), term.abs())
            })
        };
        let mut reach = f64::INFINITY;
        for i in 0..self.rows() {
            if let Some((far, leave, _)) = room(i) {
                let far = far + if careful { 0.0 } else { leave };
                if far < reach {
                    reach = far;
                }
            }
        }
        let mut best: Option<(usize, f64, f64)> = None;
        for i in 0..self.rows() {
            if let Some((far, _, size)) = room(i)
                && far <= reach
            {
                let is_better = match best {
                    None => true,
                    Some((k, ..)) if careful => follow[i] < follow[k],
                    Some((.., than)) => size > than,
                };
                if is_better {
                    best = Some((i, far, size));
                }
            }
        }
        let own = self.upper[moving] - self.lower[moving];
        match best {
            Some((i, far, _)) if far < own => (far, Some(i)),
            _ => (own, None),
        }
    }

    /// Until no price asks for a move. `Some` is the variable along which the cost falls without end.
    fn walk_primal(&mut self, pace: &mut Pace) -> Result<Option<(usize, bool)>, SolveError> {
        while let Some(q) = self.bargain(pace.careful()) {
            let up = self.price(q) < 0.0;
            let (far, stops) = self.primal_partner(q, up, pace.careful());
            let by = if up { far } else { -far };
            match stops {
                None if far.is_infinite() => return Ok(Some((q, up))),
                None => {
                    let variable = self.stand[q];
                    self.shift(q, by);
                    self.value[variable] = if up {
                        self.upper[variable]
                    } else {
                        self.lower[variable]
                    };
                    pace.step(true)?;
                }
                Some(i) => {
                    let leaving = self.follow[i];
                    let rises = (self.term(i, q) > 0.0) == up;
                    self.shift(q, by);
                    self.value[leaving] = if rises {
                        self.upper[leaving]
                    } else {
                        self.lower[leaving]
                    };
                    self.exchange(i, q);
                    pace.step(far > 0.0)?;
                }
            }
        }
        Ok(None)
    }

    /// Whether every sum fits and no price asks for a move.
    pub(super) fn is_best(&self) -> bool {
        self.misfit(false).is_none() && self.bargain(false).is_none()
    }

    /// Both walks once; none when the end does not hold against the problem's own terms.
    fn attempt(&mut self, pace: &mut Pace) -> Result<Option<End>, SolveError> {
        self.put_all();
        if self.misfit(false).is_some() {
            let (n, m) = (self.columns(), self.rows());
            let mut left_out = false;
            for q in 0..n {
                if self.is_offending(q) {
                    self.terms[m * n + q] = 0.0;
                    left_out = true;
                }
            }
            if let Some((i, up)) = self.walk_dual(pace)? {
                let proof = Proof::of(self, i, up);
                return Ok(proves_nothing_fits(self, &proof).then_some(End::Nothing));
            }
            if left_out {
                self.reprice();
            }
        }
        if let Some((q, up)) = self.walk_primal(pace)? {
            return Ok(self
                .falls_without_end(q, up)
                .map(|column| End::Endless { column }));
        }
        let floor = cost_floor(self, &self.row_prices());
        let cost = self.cost();
        let close = *p::SOLVE_CERTIFIED * cost.abs().max(1.0);
        let holds = (cost - floor).abs() <= close && self.adds_up();
        Ok(holds.then_some(End::Best { floor }))
    }

    /// The cheapest corner within the bounds as they are.
    pub(super) fn walk(&mut self) -> Result<End, SolveError> {
        self.walk_patiently(p::SOLVE_PATIENCE.value)
    }

    /// The same, by the smallest index after so many exchanges that change nothing; by it alone after none.
    pub(super) fn walk_patiently(&mut self, patience: usize) -> Result<End, SolveError> {
        let mut pace = Pace::new(self.columns() + self.rows(), patience);
        for attempt in 0..p::SOLVE_ATTEMPTS.value {
            self.is_loose = attempt > 0;
            if let Some(end) = self.attempt(&mut pace)? {
                return Ok(end);
            }
            self.rebuild();
            pace.still = 0;
        }
        Err(SolveError::NotCertified {
            residual: Residual::Proof,
            value: f64::INFINITY,
            allowed: *p::SOLVE_CERTIFIED,
        })
    }
}
