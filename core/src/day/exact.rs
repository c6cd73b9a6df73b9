//! The shares of a day with the shortest longest wait, exactly: in whole steps of the scale.
//!
//! Write `P` for what hangs before a visit, in steps. All that a day must keep is a bound on a difference of two `P`:
//! what can hang at a visit, what must be eaten by its time, and that the forage hung from one visit on lasts to within
//! the longest wait of another. Such bounds hold together exactly when no circle of them adds up to less than nothing,
//! and then there is an answer in whole numbers. Where a wait may begin is tried visit by visit, for after a wait nothing
//! is carried over; so is at which visits nothing hangs. The longest wait is then halved in on.

use super::bounds::{Bounds, down, up};
use super::gaps::{day_hours, waits};
use super::reach::Reach;

/// A visit, with what may hang at it, in steps.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Visit {
    /// The hour, rising along the visits.
    pub(super) at: f64,
    /// The least that hangs, when anything does.
    pub(super) least: i64,
    /// The most.
    pub(super) most: i64,
    /// What hangs already and cannot be changed.
    pub(super) fixed: Option<i64>,
}

/// What is to be shared.
#[derive(Clone, Debug)]
pub(super) struct Shares<'a> {
    /// The visits.
    pub(super) visits: &'a [Visit],
    /// The hour of the next forage after the last of them; `None` for a day that repeats.
    pub(super) end: Option<f64>,
    /// Steps in all.
    pub(super) steps: i64,
    /// Hours that a fast eater takes over a step.
    pub(super) fast_h: f64,
    /// Hours that a slow eater takes over a step.
    pub(super) slow_h: f64,
    /// Hours in which what is hung must be eaten.
    pub(super) within_h: Option<f64>,
    /// Where it is.
    pub(super) reach: &'a Reach,
}

/// More visits than this are not tried visit by visit.
// numeric: three to the power of it is what is tried
pub(super) const TRIED: usize = 8;
/// Waits that differ by less are one.
// numeric: a thousandth of a second, in hours
const SAME: f64 = 3e-7;
/// Halvings of a day until waits are one.
// numeric: a day in two to the power of it
const HALVINGS: u32 = 28;

/// The longest waits that are looked for, by day and by night.
#[derive(Clone, Copy)]
struct Limits {
    day: f64,
    night: f64,
}

impl Shares<'_> {
    /// Shares with a longest wait that is shorter than `better_than` hours; `None` when there are none.
    pub(super) fn best(&self, better_than: f64) -> Option<Vec<i64>> {
        let count = self.visits.len();
        if count == 0 || TRIED < count {
            return None;
        }
        let mut best: Option<(f64, Vec<i64>)> = None;
        let mut limit = better_than;
        let mut used: Vec<u32> = (1..1_u32 << count).collect();
        used.sort_by_key(|mask| std::cmp::Reverse(mask.count_ones()));
        for mask in used {
            let Some(part) = self.part(mask) else {
                continue;
            };
            for open in 0..1_u32 << part.visits.len() {
                if part.hopeless(open, limit) {
                    continue;
                }
                let Some((found, shares)) = part.shortest(open, limit) else {
                    continue;
                };
                limit = found;
                best = Some((found, self.spread(mask, &shares)));
            }
        }
        best.map(|(_, shares)| shares)
    }

    /// Whether shares pass what can hang or be eaten in time, whatever they leave to wait.
    pub(super) fn too_much(&self, shares: &[i64]) -> bool {
        let visits = self
            .visits
            .iter()
            .map(|visit| Visit { least: 0, ..*visit })
            .collect();
        let of = self.clone();
        !Part { visits, of }.in_time(shares)
    }

    /// The most steps that can hang and be eaten in time.
    pub(super) fn most_that_hangs(&self) -> i64 {
        self.most_up_to(self.steps - 1)
    }

    /// The most steps up to a number that can hang and be eaten in time.
    pub(super) fn most_up_to(&self, steps: i64) -> i64 {
        if self.can_hang(steps) {
            return steps;
        }
        let (mut fits, mut over) = (0, steps);
        while 1 < over - fits {
            let middle = fits + (over - fits) / 2;
            if self.can_hang(middle) {
                fits = middle;
            } else {
                over = middle;
            }
        }
        fits
    }

    /// Whether the bounds that have nothing to do with waiting can hold.
    fn can_hang(&self, steps: i64) -> bool {
        let visits = self
            .visits
            .iter()
            .map(|visit| Visit { least: 0, ..*visit })
            .collect();
        let of = Shares {
            steps,
            ..self.clone()
        };
        Part { visits, of }.bounds().closed()
    }

    /// The problem with nothing hung at the visits outside a mask; `None` when something hangs there already.
    fn part(&self, mask: u32) -> Option<Part<'_>> {
        let mut visits = Vec::new();
        for (index, visit) in self.visits.iter().enumerate() {
            if mask & (1 << index) != 0 {
                visits.push(*visit);
            } else if visit.fixed.is_some() {
                return None;
            }
        }
        Some(Part {
            visits,
            of: self.clone(),
        })
    }

    /// Shares over all visits from those over the ones in a mask.
    fn spread(&self, mask: u32, shares: &[i64]) -> Vec<i64> {
        let mut given = shares.iter();
        (0..self.visits.len())
            .map(|index| {
                if mask & (1 << index) == 0 {
                    0
                } else {
                    given.next().copied().unwrap_or(0)
                }
            })
            .collect()
    }

    /// The longest wait of shares for a fast eater of a day that repeats, and whether all is eaten in time by a slow one.
    pub(super) fn judge(&self, shares: &[i64]) -> (f64, bool) {
        let hung = |hours: f64| -> Vec<(f64, f64)> {
            self.visits
                .iter()
                .zip(shares)
                .map(|(visit, steps)| (visit.at, *steps as f64 * hours))
                .collect()
        };
        let longest = waits(&hung(self.fast_h), self.reach)
            .into_iter()
            .map(super::gaps::Wait::hours)
            .fold(0.0, f64::max);
        let part = Part {
            visits: self.visits.to_vec(),
            of: self.clone(),
        };
        (longest, part.in_time(shares))
    }
}

/// The visits at which something hangs.
struct Part<'a> {
    visits: Vec<Visit>,
    of: Shares<'a>,
}

impl Part<'_> {
    fn at(&self, index: usize) -> f64 {
        self.visits.get(index).map_or(0.0, |visit| visit.at)
    }

    /// The hour of the next visit, on the same line of hours.
    fn next(&self, index: usize) -> f64 {
        match (self.visits.get(index + 1), self.of.end) {
            (Some(next), _) => next.at,
            (None, Some(end)) => end,
            (None, None) => self.at(0) + day_hours(),
        }
    }

    fn repeats(&self) -> bool {
        self.of.end.is_none()
    }

    /// Hours of forage that a fast eater makes of all.
    fn lasts(&self) -> f64 {
        self.of.steps as f64 * self.of.fast_h
    }

    /// Whether waits at these visits cannot be as short as that: those that begin after a visit share what the forage
    /// leaves of the day.
    fn hopeless(&self, open: u32, limit: f64) -> bool {
        if !self.repeats() {
            // The last of a day that ends is always open.
            return open & (1 << (self.visits.len() - 1)) == 0;
        }
        let bare = self.of.reach.day() - self.lasts();
        if open == 0 {
            return SAME < bare;
        }
        // One share of waiting each, when no grass cuts a wait in two.
        self.of.reach.day() >= day_hours() - SAME && limit * f64::from(open.count_ones()) < bare
    }

    /// The shortest longest wait under `limit` with waits after the visits of a mask only, and the shares.
    fn shortest(&self, open: u32, limit: f64) -> Option<(f64, Vec<i64>)> {
        let level = |hours: f64| Limits {
            day: hours,
            night: hours,
        };
        let (mut lower, mut upper) = (0.0, limit - SAME);
        let mut shares = self.shares(open, level(upper))?;
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(lower, upper);
            if let Some(better) = self.shares(open, level(middle)) {
                shares = better;
                upper = middle;
            } else {
                lower = middle;
            }
        }
        // What the steps leave over shortens the waits by day: the longest goes at night.
        let night = upper;
        let (mut lower, mut day) = (0.0, night);
        for _ in 0..HALVINGS {
            let middle = f64::midpoint(lower, day);
            if let Some(better) = self.shares(open, Limits { day: middle, night }) {
                shares = better;
                day = middle;
            } else {
                lower = middle;
            }
        }
        Some((night, shares))
    }

    /// Shares that keep all bounds, with waits after the visits of a mask only.
    fn shares(&self, open: u32, limits: Limits) -> Option<Vec<i64>> {
        if !self.of.reach.bare_at_most(limits.day, limits.night) {
            return None;
        }
        let mut bounds = self.bounds();
        let count = self.visits.len();
        for last in 0..count {
            if self.repeats() && open == 0 {
                break;
            }
            // Back to the visit after the last wait: from there on nothing is carried.
            let mut first = last;
            let mut length = 1;
            while length < count {
                let Some(before) = self.before(first) else {
                    break;
                };
                if open & (1 << before) != 0 {
                    break;
                }
                first = before;
                length += 1;
            }
            let from = if last < first {
                self.at(first) - day_hours()
            } else {
                self.at(first)
            };
            let until = if open & (1 << last) == 0 {
                self.next(last)
            } else {
                self.must_last(last, limits)
            };
            let hours = self.of.reach.at_nets(until) - self.of.reach.at_nets(from);
            bounds.at_least(first, last, up(hours / self.of.fast_h));
        }
        bounds.solve()
    }

    fn before(&self, index: usize) -> Option<usize> {
        match index.checked_sub(1) {
            Some(before) => Some(before),
            None if self.repeats() => Some(self.visits.len() - 1),
            None => None,
        }
    }

    /// The hour until which forage must last after a visit so that no wait until the next is longer than the limits.
    fn must_last(&self, index: usize, limits: Limits) -> f64 {
        let (here, next) = (self.at(index), self.next(index));
        let Limits { day, night } = limits;
        let reach = self.of.reach;
        reach.must_last(here, next, self.of.fast_h, [day, night])
    }

    /// The bounds that have nothing to do with waiting.
    fn bounds(&self) -> Bounds {
        let count = self.visits.len();
        let mut bounds = Bounds::new(count, self.of.steps, self.repeats());
        for (index, visit) in self.visits.iter().enumerate() {
            let (least, most) = visit
                .fixed
                .map_or((visit.least, visit.most), |fixed| (fixed, fixed));
            bounds.at_least(index, index, least);
            bounds.at_most(index, index, most);
        }
        if let Some(within) = self.of.within_h {
            let slow = self.of.steps as f64 * self.of.slow_h;
            if self.repeats() && self.of.reach.day() + SAME < slow {
                // More is carried over every day, and in the end nothing is eaten in time.
                bounds.at_most(0, count - 1, self.of.steps - 1);
            }
            for last in 0..count {
                let mut first = last;
                for _ in 0..count {
                    let from = if last < first {
                        self.at(first) - day_hours()
                    } else {
                        self.at(first)
                    };
                    let until = self.at(last) + within;
                    let hours = self.of.reach.at_nets(until) - self.of.reach.at_nets(from);
                    bounds.at_most(first, last, down(hours / self.of.slow_h));
                    let Some(before) = self.before(first) else {
                        break;
                    };
                    first = before;
                }
            }
        }
        bounds
    }

    /// Whether shares keep the bounds that have nothing to do with waiting; nothing may hang at a visit.
    fn in_time(&self, shares: &[i64]) -> bool {
        let fixed = Part {
            visits: self
                .visits
                .iter()
                .zip(shares)
                .map(|(visit, steps)| Visit {
                    least: *steps,
                    most: *steps,
                    fixed: None,
                    ..*visit
                })
                .collect(),
            of: Shares {
                steps: shares.iter().sum(),
                ..self.of.clone()
            },
        };
        let within_most =
            self.visits.iter().zip(shares).all(|(visit, steps)| {
                *steps <= visit.most && (*steps == 0 || visit.least <= *steps)
            });
        within_most && fixed.bounds().closed()
    }
}
