//! Changing over: what is fed on which days, and whether it stays within the limits on each.

use super::balance::{self, wish};
use super::slip::{Slip, slip};
use crate::rows::Range;
use crate::shelf::Shelf;
use tussock_core::animal::{Animal, AnimalId};
use tussock_core::limits::MealVerdict;
use tussock_core::log::{ChangeOver, ChangeStage, Record, changing_over};
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
    /// Whether a ceiling or the limit of a bucket is broken on them, that the ration before did not break.
    pub breaks: bool,
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
    /// The change; `None` when nothing changes.
    pub change: Option<Change>,
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
    let found = changing_over(&records, animal, now, zone, &wish);
    Some(ChangeView {
        animal: shelf.animal(animal)?,
        change: found.map(|found| change(&found, better)),
    })
}

fn change(found: &ChangeOver, better: bool) -> Change {
    let day = found.day();
    let stages = found.stages(better);
    let before = broken(&found.from);
    let days: Vec<Days> = stages
        .into_iter()
        .map(|stage| Days {
            begins: found.began.and_then(|began| {
                began.checked_add_days(chrono::Days::new(u64::from(stage.first - 1)))
            }),
            today: day
                .is_some_and(|day| stage.first <= day && stage.last.is_none_or(|last| day <= last)),
            breaks: broken(&stage.ration) > before,
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

/// How many ceilings and buckets a ration breaks; nothing where it cannot be reckoned.
fn broken(ration: &tussock_core::log::DayRation) -> usize {
    let Ok(whole) = ration.whole() else {
        return 0;
    };
    let over = whole
        .rows
        .iter()
        .filter(|row| matches!(row.line.standing, Standing::Over { .. }));
    let buckets = whole
        .buckets
        .iter()
        .filter(|bucket| matches!(bucket, MealVerdict::Over { .. }));
    over.count() + buckets.count()
}
