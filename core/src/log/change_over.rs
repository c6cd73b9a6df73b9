//! Changing over to the ration of the plan in use, or to one that was decided on and stands in no plan yet.

use super::bodies::{Body, PlanV1};
use super::day_ration::{DayRation, GivenBy, GivenFood, GivenForage, day_ration, draft_ration};
use super::entry::up_to;
use super::envelope::Record;
use super::gather::Wish;
use crate::animal::AnimalId;
use crate::day::published::SCALE_STEP;
use crate::ration::{Changing, Pace, change_days, change_over};
use crate::units::{AsFed, Instant, LocalDate, Zone};

/// Some days of a change, on which the same is fed.
#[derive(Clone, Debug, PartialEq)]
pub struct ChangeStage {
    /// Its first day; the first day of the change is 1.
    pub first: u32,
    /// Its last day; `None` from then on.
    pub last: Option<u32>,
    /// What is fed on each of them.
    pub ration: DayRation,
}

/// A change from one ration to another.
#[derive(Clone, Debug, PartialEq)]
pub struct ChangeOver {
    /// The day it began; `None` when it has not: the ration is decided and stands in no plan yet.
    pub began: Option<LocalDate>,
    /// The local day.
    pub today: LocalDate,
    /// What was fed before.
    pub from: DayRation,
    /// What is to be fed.
    pub to: DayRation,
}

impl ChangeOver {
    /// The day of the change that today is, from 1; `None` before it began.
    pub fn day(&self) -> Option<u32> {
        let days = (self.today - self.began?).num_days();
        u32::try_from(days).ok().map(|days| days + 1)
    }

    /// The days of the change, over two weeks, or better three.
    pub fn stages(&self, better: bool) -> Vec<ChangeStage> {
        let forages = forages(&self.from, &self.to);
        let foods = foods(&self.from, &self.to);
        let changing: Vec<Changing> = forages
            .iter()
            .map(|(given, from)| Changing {
                from: *from,
                to: given.as_fed,
                pace: Pace::InSteps,
                step: AsFed::kg(*SCALE_STEP),
            })
            .chain(foods.iter().map(|(given, from)| Changing {
                from: *from,
                to: given.a_day,
                pace: Pace::of(given.of.food.class),
                step: given.of.scoop.unwrap_or_else(|| given.of.food.step()),
            }))
            .collect();
        change_over(&changing, change_days(better))
            .into_iter()
            .map(|stage| ChangeStage {
                first: stage.first,
                last: stage.last,
                ration: fed(&self.to, &forages, &foods, &stage.amounts),
            })
            .collect()
    }
}

/// The forages of either, as they are after, each with what it was before.
fn forages(from: &DayRation, to: &DayRation) -> Vec<(GivenForage, AsFed)> {
    let same = |a: &GivenForage, b: &GivenForage| a.lot == b.lot && a.fed == b.fed;
    let was = |given: &GivenForage| {
        let before = from.forages.iter().find(|one| same(one, given));
        before.map_or(AsFed::ZERO, |one| one.as_fed)
    };
    let gone = from
        .forages
        .iter()
        .filter(|given| !to.forages.iter().any(|one| same(one, given)))
        .map(|given| {
            let none = GivenForage {
                as_fed: AsFed::ZERO,
                ..given.clone()
            };
            (none, given.as_fed)
        });
    to.forages
        .iter()
        .map(|given| (given.clone(), was(given)))
        .chain(gone)
        .collect()
}

fn foods(from: &DayRation, to: &DayRation) -> Vec<(GivenFood, AsFed)> {
    let same = |a: &GivenFood, b: &GivenFood| {
        a.of.food.id == b.of.food.id && a.of.food.profile == b.of.food.profile
    };
    let was = |given: &GivenFood| {
        let before = from.foods.iter().find(|one| same(one, given));
        before.map_or(AsFed::ZERO, |one| one.a_day)
    };
    let gone = from
        .foods
        .iter()
        .filter(|given| !to.foods.iter().any(|one| same(one, given)))
        .map(|given| {
            let none = GivenFood {
                a_day: AsFed::ZERO,
                ..given.clone()
            };
            (none, given.a_day)
        });
    to.foods
        .iter()
        .map(|given| (given.clone(), was(given)))
        .chain(gone)
        .collect()
}

fn fed(
    to: &DayRation,
    forages: &[(GivenForage, AsFed)],
    foods: &[(GivenFood, AsFed)],
    amounts: &[AsFed],
) -> DayRation {
    let mut amounts = amounts.iter().copied();
    let forages = forages
        .iter()
        .zip(&mut amounts)
        .map(|((given, _), as_fed)| GivenForage {
            as_fed,
            ..given.clone()
        })
        .filter(|given| AsFed::ZERO < given.as_fed)
        .collect();
    let foods = foods
        .iter()
        .zip(&mut amounts)
        .map(|((given, _), a_day)| GivenFood {
            a_day,
            ..given.clone()
        })
        .filter(|given| AsFed::ZERO < given.a_day)
        .collect();
    DayRation {
        forages,
        foods,
        ..to.clone()
    }
}

/// The change that an animal is in, or that is decided for it. `None` when nothing changes.
///
/// A ration that was decided after the plan that feeds it is to be changed over to; else the plan that feeds it is changed
/// over to from the one before it, for the three weeks after it began.
pub fn changing_over(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
    wish: &Wish,
) -> Option<ChangeOver> {
    let fed = day_ration(records, animal, now, zone, wish)?.ok()?;
    let GivenBy::Plan { from: began } = fed.by else {
        return None;
    };
    let today = fed.day;
    if decided_after_plan(records, animal, now) {
        let to = draft_ration(records, animal, now, zone, wish)?.ok()?;
        return (!same(&to, &fed)).then_some(ChangeOver {
            began: None,
            today,
            from: fed,
            to,
        });
    }
    // A plan that was made anew with the same amounts began no change: what was fed before the first of them counts.
    let mut began = began;
    for _ in 0..PLANS_BACK {
        let days = (today - began).num_days();
        if !(0..=i64::from(change_days(true))).contains(&days) {
            return None;
        }
        let issued = issued_at(records, animal, began)?;
        let before = day_ration(records, animal, just_before(issued), zone, wish)?.ok()?;
        let GivenBy::Plan { from: earlier } = before.by else {
            return None;
        };
        if !same(&before, &fed) {
            return Some(ChangeOver {
                began: Some(began),
                today,
                from: before,
                to: fed,
            });
        }
        if earlier >= began {
            return None;
        }
        began = earlier;
    }
    None
}

/// How many plans of three weeks are looked through.
// numeric: more than anybody issues in that time
const PLANS_BACK: usize = 30;

/// Whether two rations feed the same: the same hay and foods, in amounts that nobody tells apart on a scale.
fn same(one: &DayRation, other: &DayRation) -> bool {
    let step = AsFed::kg(*SCALE_STEP);
    let hay = forages(one, other);
    let food = foods(one, other);
    let near = |a: AsFed, b: AsFed, step: AsFed| a - b < step && b - a < step;
    hay.iter()
        .all(|(given, was)| near(given.as_fed, *was, step))
        && food
            .iter()
            .all(|(given, was)| near(given.a_day, *was, given.of.food.step()))
}

fn just_before(instant: Instant) -> Instant {
    Instant::from_ms(instant.to_ms() - 1)
}

/// Whether a ration was decided since the plan of its own was issued.
fn decided_after_plan(records: &[&Record], animal: &AnimalId, now: Instant) -> bool {
    let entries = up_to(records, now);
    let own = |kind: fn(&Body) -> bool| {
        entries
            .iter()
            .rev()
            .find(|entry| entry.record.subject.id() == animal.as_str() && kind(&entry.body))
            .map(|entry| entry.record.at)
    };
    // Nothing decided is before everything.
    own(|body| matches!(body, Body::Plan(_))) < own(|body| matches!(body, Body::Ration(_)))
}

/// When the plan that began on a day was issued: the animal's own, or its part of its group's.
fn issued_at(records: &[&Record], animal: &AnimalId, began: LocalDate) -> Option<Instant> {
    records
        .iter()
        .filter(|record| record.subject.id() == animal.as_str() && !record.gone)
        .filter_map(|record| match Body::read(record) {
            Ok(Body::Plan(PlanV1 { from, .. })) if from == began => Some(record.at),
            _ => None,
        })
        .max()
}
