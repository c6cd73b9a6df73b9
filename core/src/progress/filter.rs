//! The kernel: a Kalman filter of a local linear trend with constant offsets, readings one by one.
//!
//! State 0 is the level, state 1 its slope a day; the states after them are constant: offsets, and levels that were kept
//! as they were on a day. A state that is not known at the start is exactly diffuse: its variance has a part without
//! end, kept apart from the rest (Durbin and Koopman, Time Series Analysis by State Space Methods, 2nd edition 2012,
//! sections 5.2 and 6.4), so that no large number stands in for not known. Readings enter one at a time, so several on
//! a day and none on a day need nothing of their own.
#![allow(
    clippy::indexing_slicing,
    reason = "every matrix here is `n` times `n` and every vector `n` long, where `n` is `Filter::n`; every index is \
              under `n`: 0 and 1 (`new` gives at least two states), a loop's under `n`, or one that `dense` has let in"
)]

use crate::forage::normal_below;

/// What is known of a state before any reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Start {
    /// Nothing.
    Unknown,
    /// So much, with this variance.
    Known {
        /// The mean.
        mean: f64,
        /// The variance.
        variance: f64,
    },
}

/// A value that is known with a variance, normally distributed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Belief {
    /// The mean.
    pub mean: f64,
    /// The variance.
    pub variance: f64,
}

impl Belief {
    /// The standard deviation.
    pub fn spread(self) -> f64 {
        self.variance.max(0.0).sqrt()
    }

    /// The chance that it is at most a limit.
    pub fn chance_at_most(self, limit: f64) -> f64 {
        let spread = self.spread();
        if spread > 0.0 {
            normal_below((limit - self.mean) / spread)
        } else if self.mean <= limit {
            1.0
        } else {
            0.0
        }
    }

    /// Both the mean and the spread times a factor.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        Self {
            mean: self.mean * factor,
            variance: self.variance * factor * factor,
        }
    }

    /// This and an independent belief of the same value together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        let weight = other.variance / (self.variance + other.variance);
        if !weight.is_finite() {
            return self;
        }
        Self {
            mean: weight * self.mean + (1.0 - weight) * other.mean,
            variance: weight * self.variance,
        }
    }
}

/// A sum of states: which, and how many times.
pub type Sum<'a> = &'a [(usize, f64)];

/// What a step needs to be gone back over.
#[derive(Clone, Debug)]
enum Step {
    Days(f64),
    Kept,
    Read {
        of: Vec<f64>,
        gain: Vec<f64>,
        /// The surprise and its variance; none where the reading settled what was not known.
        surprise: Option<(f64, f64)>,
    },
}

/// What all other readings leave over of one.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LeftOut {
    /// The reading less what all others say it is.
    pub off: f64,
    /// The variance of that.
    pub variance: f64,
}

/// The filter.
#[derive(Clone, Debug)]
pub struct Filter {
    n: usize,
    mean: Vec<f64>,
    /// The variance, as far as it has an end.
    proper: Vec<f64>,
    /// The part of the variance without end.
    diffuse: Vec<f64>,
    is_diffuse: bool,
    log_likelihood: f64,
    steps: Vec<Step>,
}

/// A part without end under this share of its start is rounding.
// numeric: well above the rounding of doubles and far under a day of slope
const ROUNDING: f64 = 1e-9;

impl Filter {
    /// A filter with a level, a slope and constant states after them.
    pub fn new(level: Start, slope: Start, constants: &[Start]) -> Self {
        let starts: Vec<Start> = [level, slope]
            .into_iter()
            .chain(constants.iter().copied())
            .collect();
        let n = starts.len();
        let mut filter = Self {
            n,
            mean: vec![0.0; n],
            proper: vec![0.0; n * n],
            diffuse: vec![0.0; n * n],
            is_diffuse: false,
            log_likelihood: 0.0,
            steps: Vec::new(),
        };
        for (i, start) in starts.into_iter().enumerate() {
            match start {
                Start::Unknown => {
                    filter.diffuse[i * n + i] = 1.0;
                    filter.is_diffuse = true;
                }
                Start::Known { mean, variance } => {
                    filter.mean[i] = mean;
                    filter.proper[i * n + i] = variance;
                }
            }
        }
        filter
    }

    /// So many days go by, on each of which the level moves by the slope and both wander with these variances.
    pub fn days(&mut self, days: u32, level_variance: f64, slope_variance: f64) {
        let (n, d) = (self.n, f64::from(days));
        if days == 0 {
            return;
        }
        self.mean[0] += d * self.mean[1];
        for matrix in [&mut self.proper, &mut self.diffuse] {
            for k in 0..n {
                matrix[k] += d * matrix[n + k];
            }
            for k in 0..n {
                matrix[k * n] += d * matrix[k * n + 1];
            }
        }
        // The slope of each day carries into the level of all later ones: sums of 0 to d-1, and of their squares.
        // numeric: the sum of squares
        let squares = (d - 1.0) * d * (2.0 * d - 1.0) / 6.0;
        let sum = d * (d - 1.0) / 2.0;
        self.proper[0] += d * level_variance + squares * slope_variance;
        self.proper[1] += sum * slope_variance;
        self.proper[n] += sum * slope_variance;
        self.proper[n + 1] += d * slope_variance;
        self.steps.push(Step::Days(d));
    }

    /// The slope may change here by so much.
    pub fn loosen_slope(&mut self, variance: f64) {
        self.proper[self.n + 1] += variance;
    }

    /// The level may jump here by so much.
    pub fn loosen_level(&mut self, variance: f64) {
        self.proper[0] += variance;
    }

    /// Keeps the level as it is now as a further state, which later readings still mend; gives its number.
    pub fn keep_level(&mut self) -> usize {
        let (n, wide) = (self.n, self.n + 1);
        for matrix in [&mut self.proper, &mut self.diffuse] {
            let mut larger = vec![0.0; wide * wide];
            for i in 0..wide {
                for k in 0..wide {
                    let from = |x: usize| if x == n { 0 } else { x };
                    larger[i * wide + k] = matrix[from(i) * n + from(k)];
                }
            }
            *matrix = larger;
        }
        self.mean.push(self.mean[0]);
        self.n = wide;
        self.steps.push(Step::Kept);
        n
    }

    /// Reads a sum of states as `value` with an error of this variance.
    pub fn read(&mut self, of: Sum<'_>, value: f64, variance: f64) {
        let z = self.dense(of);
        let with = |matrix: &[f64]| times(matrix, &z);
        let proper = with(&self.proper);
        let f = dot(&z, &proper) + variance;
        let v = value - dot(&z, &self.mean);
        let (without_end, f_without_end) = if self.is_diffuse {
            let without_end = with(&self.diffuse);
            let f = dot(&z, &without_end);
            (without_end, f)
        } else {
            (Vec::new(), 0.0)
        };
        let n = self.n;
        let (gain, surprise) = if f_without_end > ROUNDING {
            let gain: Vec<f64> = without_end.iter().map(|m| m / f_without_end).collect();
            for i in 0..n {
                for k in 0..n {
                    self.proper[i * n + k] +=
                        gain[i] * gain[k] * f - gain[i] * proper[k] - proper[i] * gain[k];
                    self.diffuse[i * n + k] -= gain[i] * without_end[k];
                }
            }
            self.is_diffuse = (0..n).any(|i| self.diffuse[i * n + i] > ROUNDING);
            self.log_likelihood -= f_without_end.ln() / 2.0;
            (gain, None)
        } else if f > 0.0 {
            let gain: Vec<f64> = proper.iter().map(|m| m / f).collect();
            for i in 0..n {
                for k in 0..n {
                    self.proper[i * n + k] -= gain[i] * proper[k];
                }
            }
            self.log_likelihood -= (std::f64::consts::TAU.ln() + f.ln() + v * v / f) / 2.0;
            (gain, Some((v, f)))
        } else {
            // Read without error what was known without error: it says nothing.
            (vec![0.0; n], Some((0.0, f64::INFINITY)))
        };
        for (state, gain) in self.mean.iter_mut().zip(&gain) {
            *state += gain * v;
        }
        self.steps.push(Step::Read {
            of: z,
            gain,
            surprise,
        });
    }

    /// A sum of states; none while any of it is not known.
    pub fn of(&self, sum: Sum<'_>) -> Option<Belief> {
        let z = self.dense(sum);
        if self.is_diffuse && dot(&z, &times(&self.diffuse, &z)) > ROUNDING {
            return None;
        }
        Some(Belief {
            mean: dot(&z, &self.mean),
            variance: dot(&z, &times(&self.proper, &z)).max(0.0),
        })
    }

    /// How two sums of states vary together; none while any of them is not known.
    pub fn together(&self, a: Sum<'_>, b: Sum<'_>) -> Option<f64> {
        self.of(a)?;
        self.of(b)?;
        Some(dot(&self.dense(a), &times(&self.proper, &self.dense(b))))
    }

    /// The natural logarithm of the diffuse likelihood of all readings: one that settles what was not known at the start
    /// adds half the logarithm of its part without end and no more.
    pub fn log_likelihood(&self) -> f64 {
        self.log_likelihood
    }

    /// For each reading in order, what is left of it when all others are believed; none where the others do not say what
    /// it should be.
    pub fn left_out(&self) -> Vec<Option<LeftOut>> {
        let mut n = self.n;
        let mut r = vec![0.0; n];
        let mut spread = vec![0.0; n * n];
        let mut found = Vec::new();
        for step in self.steps.iter().rev() {
            match step {
                Step::Days(days) => {
                    r[1] += days * r[0];
                    for k in 0..n {
                        spread[n + k] += days * spread[k];
                    }
                    for k in 0..n {
                        spread[k * n + 1] += days * spread[k * n];
                    }
                }
                Step::Kept => {
                    let slim = n - 1;
                    r[0] += r[slim];
                    r.truncate(slim);
                    let mut smaller = vec![0.0; slim * slim];
                    for i in 0..n {
                        for k in 0..n {
                            let to = |x: usize| if x == slim { 0 } else { x };
                            smaller[to(i) * slim + to(k)] += spread[i * n + k];
                        }
                    }
                    spread = smaller;
                    n = slim;
                }
                Step::Read {
                    of: z,
                    gain,
                    surprise,
                } => {
                    let back = times(&spread, gain);
                    let (v_over_f, one_over_f) =
                        surprise.map_or((0.0, 0.0), |(v, f)| (v / f, 1.0 / f));
                    let u = v_over_f - dot(gain, &r);
                    let d = one_over_f + dot(gain, &back);
                    for i in 0..n {
                        r[i] += z[i] * u;
                        for k in 0..n {
                            spread[i * n + k] += z[i] * z[k] * d - z[i] * back[k] - back[i] * z[k];
                        }
                    }
                    found.push((d > 0.0 && u.is_finite()).then(|| LeftOut {
                        off: u / d,
                        variance: 1.0 / d,
                    }));
                }
            }
        }
        found.reverse();
        found
    }

    /// A sum as one factor a state; a state that is not there is left out.
    fn dense(&self, sum: Sum<'_>) -> Vec<f64> {
        let mut z = vec![0.0; self.n];
        for (state, factor) in sum {
            if let Some(entry) = z.get_mut(*state) {
                *entry += factor;
            }
        }
        z
    }
}

fn dot(a: &[f64], b: &[f64]) -> f64 {
    a.iter().zip(b).map(|(a, b)| a * b).sum()
}

fn times(matrix: &[f64], z: &[f64]) -> Vec<f64> {
    matrix
        .chunks(z.len().max(1))
        .map(|row| dot(row, z))
        .collect()
}
