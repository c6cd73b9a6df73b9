//! Bounds on differences, in whole steps of the scale, and whether they can hold together.

/// Bounds on differences of what hangs before each visit.
pub(super) struct Bounds {
    /// `bound[to][from]`: what hangs before `to` is at most so much more than what hangs before `from`.
    bound: Vec<Vec<i64>>,
    steps: i64,
    repeats: bool,
}

/// More than any day's steps.
// numeric: far from the end of the integers, so that sums stay within them
const NO_BOUND: i64 = 1 << 40;

#[allow(
    clippy::indexing_slicing,
    reason = "every index is below the count of visits plus one, the size of the square"
)]
impl Bounds {
    pub(super) fn new(visits: usize, steps: i64, repeats: bool) -> Self {
        let mut bound = vec![vec![NO_BOUND; visits + 1]; visits + 1];
        for (index, row) in bound.iter_mut().enumerate() {
            row[index] = 0;
        }
        bound[visits][0] = steps;
        bound[0][visits] = -steps;
        Self {
            bound,
            steps,
            repeats,
        }
    }

    /// The ends of what hangs from one visit to another, and what the turn of the day adds.
    fn ends(&self, first: usize, last: usize) -> (usize, usize, i64) {
        let turn = if last < first && self.repeats {
            self.steps
        } else {
            0
        };
        (first, last + 1, turn)
    }

    pub(super) fn at_least(&mut self, first: usize, last: usize, steps: i64) {
        let (from, to, turn) = self.ends(first, last);
        let bound = &mut self.bound[from][to];
        *bound = (*bound).min(turn - steps);
    }

    pub(super) fn at_most(&mut self, first: usize, last: usize, steps: i64) {
        let (from, to, turn) = self.ends(first, last);
        let bound = &mut self.bound[to][from];
        *bound = (*bound).min(steps - turn);
    }

    /// Draws every conclusion; whether the bounds can hold together.
    fn close(&mut self) -> bool {
        let size = self.bound.len();
        for over in 0..size {
            for to in 0..size {
                for from in 0..size {
                    let by = self.bound[to][over] + self.bound[over][from];
                    if by < self.bound[to][from] {
                        self.bound[to][from] = by;
                    }
                }
            }
        }
        (0..size).all(|index| 0 <= self.bound[index][index])
    }

    pub(super) fn closed(mut self) -> bool {
        self.close()
    }

    /// What hangs at each visit, in the middle of what may; `None` when the bounds cannot hold together.
    pub(super) fn solve(mut self) -> Option<Vec<i64>> {
        if !self.close() {
            return None;
        }
        // The middle of the highest and the lowest answer, rounded down, is an answer too.
        let hung: Vec<i64> = (0..self.bound.len())
            .map(|index| (self.bound[index][0] - self.bound[0][index]).div_euclid(2))
            .collect();
        Some(
            hung.iter()
                .zip(hung.iter().skip(1))
                .map(|(before, after)| after - before)
                .collect(),
        )
    }
}

/// Whole steps from above; a billionth of a step is the arithmetic's.
#[allow(
    clippy::cast_possible_truncation,
    reason = "a day's hours over a step's: far below the end of the integers, and saturating"
)]
pub(super) fn up(steps: f64) -> i64 {
    // numeric: as said
    (steps - 1e-9).ceil() as i64
}

/// Whole steps from below.
#[allow(
    clippy::cast_possible_truncation,
    reason = "a day's hours over a step's: far below the end of the integers, and saturating"
)]
pub(super) fn down(steps: f64) -> i64 {
    // numeric: a billionth of a step is the arithmetic's
    (steps + 1e-9).floor() as i64
}
