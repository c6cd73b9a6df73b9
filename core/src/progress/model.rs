//! From weighings and changes to the kernel: which states there are, what each reading reads, and how the days go by.

use super::error::ProgressError;
use super::filter::{Filter, LeftOut, Start};
use super::published::{
    AMOUNT_STEP, BORNE_OUT, DAYS_MOST, GUT_FILL_JUMP, LEVEL_DRIFT, ODD_AT_MOST, ODD_FROM,
    ODD_NEEDS, READINGS_USED, SETTLES_IN, SLOPE_DRIFT,
};
use super::weighing::{Change, DatedChange, Offset, Weighing};
use crate::assess::WeightMethod;
use crate::units::{BodyMass, LocalDate};
use std::collections::{BTreeMap, BTreeSet};

pub(super) const DAYS_OF_WEEK: f64 = {
    // numeric: days of a week
    7.0
};

/// The first state after level and slope.
const FIRST_OFFSET: usize = 2;

/// A reading as the kernel reads it.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Seen {
    pub(super) day: LocalDate,
    pub(super) kg: f64,
    pub(super) variance: f64,
    /// The states of its offsets.
    pub(super) offsets: Vec<usize>,
    /// What its offsets may be, together: a variance.
    loose: f64,
    /// Not odd.
    pub(super) believed: bool,
}

impl Seen {
    /// The sum of states that it reads.
    pub(super) fn sum(&self) -> Vec<(usize, f64)> {
        let offsets = self.offsets.iter().map(|state| (*state, 1.0));
        std::iter::once((0, 1.0)).chain(offsets).collect()
    }
}

/// Everything the kernel needs.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Model {
    /// About what the animal weighs: errors are parts of it.
    pub(super) size: BodyMass,
    first: LocalDate,
    pub(super) seen: Vec<Seen>,
    starts: Vec<Start>,
    pub(super) changes: Vec<DatedChange>,
}

/// The kernel at the end of a day, and the levels that were kept on the way.
pub(super) struct Run {
    pub(super) filter: Filter,
    pub(super) kept: BTreeMap<LocalDate, usize>,
}

impl Model {
    /// The model of weighings up to a day, and those weighings in their order; odd readings are marked in it.
    pub(super) fn of(
        weighings: &[Weighing],
        changes: &[DatedChange],
        today: LocalDate,
    ) -> Result<(Self, Vec<Weighing>), ProgressError> {
        let mut used: Vec<Weighing> = weighings
            .iter()
            .filter(|weighing| weighing.day <= today)
            .cloned()
            .collect();
        if let Some(ideal) = used
            .iter()
            .find(|w| matches!(w.weight.method, WeightMethod::Ideal(_)))
        {
            return Err(ProgressError::NotAWeighing(ideal.record.clone()));
        }
        used.sort_by(|a, b| (a.day, &a.record).cmp(&(b.day, &b.record)));
        used.drain(..used.len().saturating_sub(*READINGS_USED));
        let first = used.first().ok_or(ProgressError::NoWeighings)?.day;
        DAYS_MOST.check((today - first).num_days() as f64)?;
        let size = middle(used.iter().map(|w| w.weight.value.to_kg()).collect());
        let mut known: Vec<(Offset, BodyMass)> = Vec::new();
        let mut seen = Vec::new();
        for weighing in &used {
            let offsets = weighing.offsets(size);
            let loose = offsets.iter().map(|(_, spread)| square(*spread)).sum();
            let states = offsets.into_iter().map(|(offset, spread)| {
                let place = known.iter().position(|(other, _)| *other == offset);
                let place = place.unwrap_or_else(|| {
                    known.push((offset, spread));
                    known.len() - 1
                });
                FIRST_OFFSET + place
            });
            let offsets = states.collect();
            seen.push(Seen {
                day: weighing.day,
                kg: weighing.weight.value.to_kg(),
                variance: square(weighing.scatter(size)),
                offsets,
                loose,
                believed: true,
            });
        }
        let starts = known.iter().map(|(_, spread)| Start::Known {
            mean: 0.0,
            variance: square(*spread),
        });
        let mut changes: Vec<DatedChange> = changes
            .iter()
            .copied()
            .filter(|change| change.day <= today)
            .collect();
        changes.sort();
        changes.dedup();
        let mut model = Self {
            size,
            first,
            seen,
            starts: starts.collect(),
            changes,
        };
        model.mark_odd(today);
        Ok((model, used))
    }

    /// The kernel at the end of `until`, with the readings that are believed up to `read_until`; a day of `keep` before the
    /// first reading is kept as the first.
    pub(super) fn run(
        &self,
        until: LocalDate,
        read_until: LocalDate,
        keep: &BTreeSet<LocalDate>,
    ) -> Run {
        let mut filter = Filter::new(Start::Unknown, Start::Unknown, &self.starts);
        let mut kept = BTreeMap::new();
        let settled = self.changes.iter().filter_map(DatedChange::settled);
        let mut stops: BTreeSet<LocalDate> = self.seen.iter().map(|seen| seen.day).collect();
        stops.extend(self.changes.iter().map(|change| change.day));
        stops.extend(settled);
        stops.extend(keep);
        stops.insert(until);
        let mut day = self.first;
        for stop in stops.into_iter().filter(|stop| *stop <= until) {
            if day < stop {
                self.go(&mut filter, day, stop);
                day = stop;
            }
            if keep.contains(&stop) {
                kept.insert(stop, filter.keep_level());
            }
            if stop < self.first {
                continue;
            }
            let of_day = self.seen.iter().filter(|seen| seen.day == stop);
            for seen in of_day.filter(|seen| seen.believed && seen.day <= read_until) {
                filter.read(&seen.sum(), seen.kg, seen.variance);
            }
        }
        Run { filter, kept }
    }

    /// The days from one to another go by; nothing changes in between.
    pub(super) fn go(&self, filter: &mut Filter, from: LocalDate, to: LocalDate) {
        let days = (to - from).num_days();
        let new_amounts = |c: &&DatedChange| c.change == Change::Amounts && c.day == from;
        if self.changes.iter().any(|change| new_amounts(&change)) {
            filter.loosen_slope(self.part(*AMOUNT_STEP / DAYS_OF_WEEK));
        }
        let (level, slope) = self.drift();
        filter.days(u32::try_from(days).unwrap_or_default(), level, slope);
        if self.settles(from, to) {
            let share = days as f64 / *SETTLES_IN as f64;
            filter.loosen_level(self.part(*GUT_FILL_JUMP) * share);
        }
    }

    /// The variances of a day: of the level, of the slope.
    pub(super) fn drift(&self) -> (f64, f64) {
        let slope = self.part(*SLOPE_DRIFT / DAYS_OF_WEEK);
        (self.part(*LEVEL_DRIFT) / DAYS_OF_WEEK, slope / DAYS_OF_WEEK)
    }

    /// Whether the gut settles on any of the days after `from` up to `to`.
    pub(super) fn settles(&self, from: LocalDate, to: LocalDate) -> bool {
        self.changes.iter().any(|change| {
            change
                .settled()
                .is_some_and(|settled| change.day < to && from < settled)
        })
    }

    /// Whether a reading of this day lies in a week in which the gut settles.
    pub(super) fn is_settling(&self, day: LocalDate) -> bool {
        self.changes.iter().any(|change| {
            change
                .settled()
                .is_some_and(|settled| change.day < day && day < settled)
        })
    }

    /// The variance of so many percent of the animal's weight.
    pub(super) fn part(&self, percent: f64) -> f64 {
        square(self.size * (percent / 100.0))
    }

    /// Marks as odd what all others contradict, the worst first, and looks again without it. Two readings of one day that
    /// bear each other out are never odd: what was measured again and came out the same is no slip.
    fn mark_odd(&mut self, today: LocalDate) {
        let count = self.seen.len();
        if count < *ODD_NEEDS {
            return;
        }
        for _ in 0..count / *ODD_AT_MOST {
            let run = self.run(today, today, &BTreeSet::new());
            let believed = (0..count).filter(|i| self.seen.get(*i).is_some_and(|s| s.believed));
            let worst = believed
                .zip(run.filter.left_out())
                .filter_map(|(i, left)| Some((i, times_its_error(left?))))
                .filter(|(i, times)| *times > *ODD_FROM && !self.is_borne_out(*i))
                .max_by(|a, b| a.1.total_cmp(&b.1));
            let Some(odd) = worst.and_then(|(i, _)| self.seen.get_mut(i)) else {
                return;
            };
            odd.believed = false;
        }
    }

    fn is_borne_out(&self, which: usize) -> bool {
        let Some(one) = self.seen.get(which) else {
            return false;
        };
        let others = self
            .seen
            .iter()
            .enumerate()
            .filter(|(i, other)| *i != which && other.day == one.day && other.believed);
        others.into_iter().any(|(_, other)| {
            let apart = if other.offsets == one.offsets {
                0.0
            } else {
                one.loose + other.loose
            };
            let scatter = (one.variance + other.variance + apart).sqrt();
            (one.kg - other.kg).abs() <= *BORNE_OUT * scatter
        })
    }
}

fn times_its_error(left: LeftOut) -> f64 {
    left.off.abs() / left.variance.sqrt()
}

fn square(mass: BodyMass) -> f64 {
    mass.to_kg() * mass.to_kg()
}

/// The middle one of some weights.
fn middle(mut kg: Vec<f64>) -> BodyMass {
    kg.sort_by(f64::total_cmp);
    BodyMass::kg(kg.get(kg.len() / 2).copied().unwrap_or_default())
}
