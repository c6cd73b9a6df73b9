//! Changing over: what is fed on which days, and whether it stays within the limits on each.

use super::balance::{self, wish};
use super::slip::{Slip, slip};
use crate::rows::Range;
use crate::shelf::Shelf;
use std::collections::BTreeSet;
use tussock_core::animal::{Animal, AnimalId};
use tussock_core::limits::{MealVerdict, Nutrient};
use tussock_core::log::{ChangeOver, ChangeStage, DayRation, Record, changing_over};
use tussock_core::ration::Standing;
use tussock_core::units::{Instant, LocalDate, Zone};

/// Days of the change on which the same is fed.
#[derive(Clone, Debug, PartialEq)]
pub struct Days {
    /// What is fed on them.
    pub stage: ChangeStage,
    /// The first of them on the calendar; `None` before the change began.
    pub begins: Option<LocalDate>,
    /// Whether today is one of them.
    pub today: bool,
    /// Whether a ceiling or the limit of a bucket is broken on them, that neither ration breaks.
    pub breaks: bool,
    /// What they are short of, and neither ration is.
    pub short: Vec<Nutrient>,
}

/// A change.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// The day of the change that today is; `None` before it began.
    pub day: Option<u32>,
    /// Whether it is over.
    pub over: bool,
    /// Its days.
    pub days: Vec<Days>,
    /// What changes in all.
    pub slip: Slip,
    /// Whether a plan is still to be made with it.
    pub to_plan: bool,
}

/// The change of an animal.
#[derive(Clone, Debug, PartialEq)]
pub struct ChangeView {
    /// The animal.
    pub animal: Animal,
    /// The change; `None` when nothing changes, and when safety refuses a plan today.
    pub change: Option<Change>,
    /// Safety refuses a plan today: no way to other amounts is shown.
    pub refused: bool,
}

/// What the screen asks the disk for.
pub fn needs(animal: &AnimalId) -> Vec<Range> {
    balance::needs(animal)
}

/// The change of an animal, over three weeks or two; `None` when the animal is not there.
pub fn change_of(
    shelf: &Shelf,
    animal: &AnimalId,
    better: bool,
    now: Instant,
    zone: &impl Zone,
) -> Option<ChangeView> {
    let records: Vec<&Record> = shelf.records().collect();
    let wish = wish(&records, animal, now, zone)?;
    let refused = match balance::ration(shelf, animal, now, zone)?.outcome {
        balance::Outcome::Refused(_) => true,
        balance::Outcome::Shown(shown) => shown.refused.is_some(),
        balance::Outcome::Nothing(_) | balance::Outcome::NotReckoned(_) => false,
    };
    let found = (!refused)
        .then(|| changing_over(&records, animal, now, zone, &wish))
        .flatten();
    Some(ChangeView {
        animal: shelf.animal(animal)?,
        change: found.map(|found| change(&found, better)),
        refused,
    })
}

fn change(found: &ChangeOver, better: bool) -> Change {
    let day = found.day();
    let stages = found.stages(better);
    let (from, to) = (Held::of(&found.from), Held::of(&found.to));
    let days: Vec<Days> = stages
        .into_iter()
        .map(|stage| Days {
            begins: found.began.and_then(|began| {
                began.checked_add_days(chrono::Days::new(u64::from(stage.first - 1)))
            }),
            today: day
                .is_some_and(|day| stage.first <= day && stage.last.is_none_or(|last| day <= last)),
            breaks: Held::of(&stage.ration).breaks_more(&from, &to),
            short: Held::of(&stage.ration).short_of(&from, &to),
            stage,
        })
        .collect();
    Change {
        over: days.last().is_some_and(|last| last.today) && days.len() > 1,
        slip: slip(&found.from, &found.to),
        to_plan: found.began.is_none(),
        day,
        days,
    }
}

/// What a ration breaks and lacks; nothing where it cannot be reckoned.
#[derive(Default)]
struct Held {
    over: BTreeSet<Nutrient>,
    short: BTreeSet<Nutrient>,
    buckets: bool,
}

impl Held {
    fn of(ration: &DayRation) -> Self {
        let Ok(whole) = ration.whole() else {
            return Self::default();
        };
        let standing = |wanted: fn(&Standing) -> bool| {
            let rows = whole.rows.iter().map(|row| &row.line);
            rows.filter(|line| wanted(&line.standing))
                .map(|line| line.nutrient)
                .collect()
        };
        let over = |bucket: &MealVerdict| matches!(bucket, MealVerdict::Over { .. });
        Self {
            over: standing(|standing| matches!(standing, Standing::Over { .. })),
            short: standing(|standing| matches!(standing, Standing::Short { .. })),
            buckets: whole.buckets.iter().any(over),
        }
    }

    /// Whether it breaks what neither of two others breaks.
    fn breaks_more(&self, from: &Self, to: &Self) -> bool {
        let new =
            |nutrient: &Nutrient| !from.over.contains(nutrient) && !to.over.contains(nutrient);
        self.over.iter().any(new) || (self.buckets && !from.buckets && !to.buckets)
    }

    /// What it lacks and neither of two others lacks.
    fn short_of(&self, from: &Self, to: &Self) -> Vec<Nutrient> {
        let new =
            |nutrient: &&Nutrient| !from.short.contains(nutrient) && !to.short.contains(nutrient);
        self.short.iter().filter(new).copied().collect()
    }
}
