//! From records to the weighings of an animal, to what changed under them, and to the trend of its weight.

use super::bodies::{AnimalV2, Body, PlanV1, ReadingV1, WeightV1};
use super::entry::{Entry, up_to};
use super::envelope::Record;
use super::gather::{Gathered, Problem, conditions};
use super::holding::Holding;
use crate::animal::{Animal, AnimalId, LotId, VetFlag};
use crate::assess::{
    ConditionRange, DatedWeight, Measure, Reading, ScaleWeight, Tape, WeightEstimate, best,
    frame_holds, target, weigh_in_condition,
};
use crate::forage::ForageKind;
use crate::limits::published::HOLDING_BAND;
use crate::progress::{
    Aim, Alarm, Change, DatedChange, GutFill, ProgressError, TooFast, Trend, Weighing,
};
use crate::sources::{RecordId, Source};
use crate::units::{Instant, LocalDate, Zone};
use grass::of_grass;
use std::collections::BTreeSet;

/// A weighing of an animal as a record keeps it.
struct Weighed<'a> {
    record: &'a Record,
    body: &'a WeightV1,
    day: LocalDate,
    /// The means, with what an earlier tape stands in for.
    whole: Reading,
    weight: WeightEstimate,
}

/// The weighings of an animal, oldest first, and its last tape.
pub(super) struct AllWeighed<'a> {
    animal: &'a Animal,
    condition: Option<ConditionRange>,
    weighed: Vec<Weighed<'a>>,
    tape: Option<Tape>,
}

impl<'a> AllWeighed<'a> {
    /// Length, height and neck of the last tape with a length stand in for those that a later one leaves out, while they
    /// hold: a weekly girth is weighed by the same equation as the tape before it.
    pub(super) fn of(
        animal: &'a Animal,
        own: &[&'a Entry<'a>],
        condition: Option<ConditionRange>,
        zone: &impl Zone,
        problems: &mut Vec<Problem>,
    ) -> Self {
        let mut found = Self {
            animal,
            condition,
            weighed: Vec::new(),
            tape: None,
        };
        let mut frame: Option<(LocalDate, Tape, RecordId)> = None;
        for entry in own {
            let Body::Weight(body) = &entry.body else {
                continue;
            };
            let reading = match body.reading(&entry.record.id) {
                Ok(reading) => reading,
                Err(error) => {
                    problems.push(Problem::Log(error));
                    continue;
                }
            };
            let day = zone.to_local(entry.record.at).date;
            let held = frame
                .as_ref()
                .filter(|(taken_on, _, _)| frame_holds(animal, *taken_on, day));
            let whole = match (reading, held) {
                (Reading::Tape(read), Some((_, earlier, _))) => {
                    Reading::Tape(read.with_frame_of(earlier))
                }
                (reading, _) => reading,
            };
            match weigh_in_condition(animal, &whole, condition, day) {
                Ok((mut weight, _)) => {
                    let record = |id: &RecordId| Source::Record(id.clone());
                    weight.from = weight.from.with(record(&entry.record.id));
                    if let Some((_, _, earlier)) = held.filter(|_| whole != reading) {
                        weight.from = weight.from.with(record(earlier));
                    }
                    found.weighed.push(Weighed {
                        record: entry.record,
                        body,
                        day,
                        whole,
                        weight,
                    });
                }
                Err(error) => problems.push(Problem::Assess {
                    record: entry.record.id.clone(),
                    error,
                }),
            }
            if let Reading::Tape(read) = whole {
                found.tape = Some(read);
            }
            if let Reading::Tape(read) = reading
                && read.length.is_some()
            {
                frame = Some((day, read, entry.record.id.clone()));
            }
        }
        found
    }

    /// The weights, and the last tape.
    pub(super) fn weights(&self) -> (Vec<DatedWeight>, Option<Tape>) {
        let weights = self.weighed.iter().map(|weighed| DatedWeight {
            day: weighed.day,
            weight: weighed.weight.clone(),
        });
        (weights.collect(), self.tape)
    }

    /// Every reading by itself: what was taken more than once is so many readings of its day.
    fn weighings(&self) -> Vec<Weighing> {
        let each = self.weighed.iter().flat_map(|weighed| {
            let takes = weighed.takes();
            let weighs = |reading: &Reading| {
                weigh_in_condition(self.animal, reading, self.condition, weighed.day).ok()
            };
            let mut weights: Vec<WeightEstimate> = takes
                .iter()
                .filter_map(|reading| Some(weighs(reading)?.0))
                .map(|weight| WeightEstimate {
                    from: weighed.weight.from.clone(),
                    ..weight
                })
                .collect();
            if weights.len() < 2 {
                weights = vec![weighed.weight.clone()];
            }
            weights.into_iter().map(|weight| Weighing {
                day: weighed.day,
                weight,
                by: weighed.record.by.clone(),
                record: weighed.record.id.clone(),
            })
        });
        each.collect()
    }
}

impl Weighed<'_> {
    /// The readings that count, when it was taken more than once.
    fn takes(&self) -> Vec<Reading> {
        match (&self.body.reading, self.whole) {
            (ReadingV1::Tape { tape }, Reading::Tape(whole)) => tape
                .takes
                .iter()
                .flatten()
                .filter(|take| take.measure == Measure::HeartGirth && take.left_out != Some(true))
                .map(|take| {
                    Reading::Tape(Tape {
                        heart_girth: take.reading.mm.length(),
                        ..whole
                    })
                })
                .collect(),
            (ReadingV1::Scale { scale }, Reading::Scale(_)) => scale
                .takes
                .iter()
                .flatten()
                .filter(|take| take.left_out != Some(true))
                .map(|take| {
                    Reading::Scale(ScaleWeight {
                        mass: take.reading.g.mass(),
                        instrument: scale.instrument,
                    })
                })
                .collect(),
            _ => Vec::new(),
        }
    }
}

/// The weighings of an animal and what changed under them.
pub(super) struct Course {
    weighings: Vec<Weighing>,
    changes: Vec<DatedChange>,
}

impl Course {
    pub(super) fn of(
        weighed: &AllWeighed<'_>,
        body: &AnimalV2,
        entries: &[Entry<'_>],
        holding: &Holding<'_>,
        zone: &impl Zone,
    ) -> Self {
        let animal = &weighed.animal.id;
        let mut changes = of_plans(animal, entries, holding);
        changes.extend(of_grass(animal, entries, holding, zone));
        changes.extend(of_health(body));
        Self {
            weighings: weighed.weighings(),
            changes,
        }
    }

    /// The trend up to a day.
    pub(super) fn trend(&self, day: LocalDate) -> Result<Trend, ProgressError> {
        Trend::fit(&self.weighings, &self.changes, day)
    }

    /// Whether its weight falls so fast that the vet is rung. One reading of a day decides nothing, so that a trend is
    /// fitted only where there are two, and for a donkey, which a month decides on.
    pub(super) fn too_fast(&self, animal: &Animal, day: LocalDate) -> Option<TooFast> {
        let last = self.weighings.iter().map(|weighing| weighing.day).max()?;
        let of_it = self.weighings.iter().filter(|one| one.day == last);
        if of_it.count() < 2 && !animal.kind.is_donkey() {
            return None;
        }
        self.trend(day).ok()?.too_fast(animal)
    }

    /// Whether what was weighed on a day is to be measured again on it.
    pub(super) fn again(&self, animal: &Animal, day: LocalDate) -> bool {
        let weighed = self.weighings.iter().any(|weighing| weighing.day == day);
        let asks = |trend: Trend| {
            let alarms = trend.alarms(animal);
            alarms
                .iter()
                .any(|one| matches!(one, Alarm::MeasureAgain(_)))
        };
        weighed && self.trend(day).is_ok_and(asks)
    }
}

/// What fills the gut of a plan's animals: whether any of it is soaked, whether there is straw in it.
fn fill(plan: &PlanV1, is_straw: &impl Fn(&LotId) -> bool) -> (bool, bool) {
    let forages = || plan.amounts.iter().filter(|amount| amount.lot.is_some());
    let straw = |lot: &Option<LotId>| lot.as_ref().is_some_and(is_straw);
    (
        forages().any(|amount| amount.soaked),
        forages().any(|amount| straw(&amount.lot)),
    )
}

/// What the plans that gave it its hay changed, from one to the next.
fn of_plans(animal: &AnimalId, entries: &[Entry<'_>], holding: &Holding<'_>) -> Vec<DatedChange> {
    let straws: BTreeSet<&str> = entries
        .iter()
        .filter(|entry| match &entry.body {
            Body::Lot(lot) => lot.class.kind() == ForageKind::Straw,
            _ => false,
        })
        .map(|entry| entry.record.id.0.as_str())
        .collect();
    let is_straw = |lot: &LotId| straws.contains(lot.as_str());
    let mut found = Vec::new();
    let mut before: Option<&PlanV1> = None;
    for day in holding.days_of_change(animal) {
        let Some(plan) = holding.hay_of(animal, day) else {
            continue;
        };
        let mut add = |change| found.push(DatedChange { day, change });
        match before {
            None => add(Change::GutFill(GutFill::FirstPlan)),
            Some(before) => {
                let (was, is) = (fill(before, &is_straw), fill(plan, &is_straw));
                if was.0 != is.0 {
                    add(Change::GutFill(GutFill::Soaking));
                }
                if was.1 != is.1 {
                    add(Change::GutFill(GutFill::Straw));
                }
                if before.level != plan.level {
                    add(Change::Amounts);
                }
            }
        }
        before = Some(plan);
    }
    found
}

/// What its health says: box rest and transport.
fn of_health(body: &AnimalV2) -> impl Iterator<Item = DatedChange> {
    let dated = |fill: GutFill| {
        move |day: LocalDate| DatedChange {
            day,
            change: Change::GutFill(fill),
        }
    };
    let rest = [body.box_rest_from, body.box_rest_to].into_iter().flatten();
    let travelled = body.health.flags.iter().filter_map(|flag| match flag {
        VetFlag::SurgeryOrTransport { on } => Some(*on),
        _ => None,
    });
    rest.map(dated(GutFill::BoxRest))
        .chain(travelled.map(dated(GutFill::Transport)))
}

/// The trend of an animal's weight at an instant.
///
/// `records` are those of [`super::gather()`].
///
/// # Errors
/// [`ProgressError::NoWeighings`] when it is not among the records or was never weighed; those of [`Trend::fit`].
pub fn trend_of(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Result<Trend, ProgressError> {
    let entries = up_to(records, now);
    let day = zone.to_local(now).date;
    let of = |course: Course, _: &Animal| course.trend(day);
    course_of(&entries, animal, &Holding::of(&entries), zone, of)
        .unwrap_or(Err(ProgressError::NoWeighings))
}

impl Gathered {
    /// The range that its weight is to come to, on the footing of its trend: what somebody set, with the band in which a
    /// weight holds round it, else as reckoned from what it weighed on the day of its last condition score. That the weight
    /// falls afterwards moves no target; another score does.
    pub fn aim(&self, trend: &Trend) -> Option<Aim> {
        if let Some(set) = self.animal.target {
            let within = set * *HOLDING_BAND;
            return Some(Aim {
                low: set - within,
                high: set + within,
            });
        }
        let scored = self.condition.last()?;
        let on = scored.on.min(trend.day);
        let levels = trend.levels(&BTreeSet::from([on]));
        let (_, level) = levels.first()?;
        let held = best(&self.weights, on).or_else(|| self.weights.first())?;
        let weighed = WeightEstimate {
            value: level.likely,
            low: level.least,
            high: level.most,
            ..held.weight.clone()
        };
        let tape = self.tape.as_ref();
        let (target, _) = target(&self.animal, &weighed, scored.condition, tape, on).ok()?;
        Some(Aim {
            low: target.low,
            high: target.high,
        })
    }
}

/// What somebody asks of the course of an animal that is among the entries.
pub(super) fn course_of<T>(
    entries: &[Entry<'_>],
    animal: &AnimalId,
    holding: &Holding<'_>,
    zone: &impl Zone,
    ask: impl FnOnce(Course, &Animal) -> T,
) -> Option<T> {
    let (who, body) = entries.iter().find_map(|entry| match &entry.body {
        Body::Animal(body) if entry.record.id.0 == animal.0 => {
            Some((body.animal(&entry.record.id), body))
        }
        _ => None,
    })?;
    let own: Vec<&Entry<'_>> = entries
        .iter()
        .filter(|entry| entry.record.subject.id() == animal.0)
        .collect();
    let mut problems = Vec::new();
    let local = |entry: &Entry<'_>| zone.to_local(entry.record.at).date;
    let scored = conditions(&own, &local, &mut problems);
    let condition = scored.last().map(|scored| scored.condition);
    let weighed = AllWeighed::of(&who, &own, condition, zone, &mut problems);
    Some(ask(
        Course::of(&weighed, body, entries, holding, zone),
        &who,
    ))
}

mod grass;
#[cfg(test)]
mod tests;
