//! The summary of a visit, and what its report is drafted from.

use super::since::{Change, Since, since};
use super::{Underway, underway};
use crate::shelf::Shelf;
use crate::views::beside::Stop;
use crate::views::plan::{HeldHay, hays};
use crate::words::Task;
use tussock_core::assess::{ConditionRange, Crest, DatedWeight, best};
use tussock_core::log::bodies::PlanV1;
use tussock_core::log::{Body, Kind, Record, Wish, gather};
use tussock_core::plan::Signs;
use tussock_core::units::{Instant, LocalDate, Zone};

/// The plan of an animal, as a report says it.
#[derive(Clone, Debug, PartialEq)]
pub struct InUse {
    /// The plan.
    pub plan: PlanV1,
    /// Its forages.
    pub hays: Vec<HeldHay>,
}

/// One animal of the report.
#[derive(Clone, Debug, PartialEq)]
pub struct OnAnimal {
    /// Its name.
    pub name: String,
    /// The weight that holds.
    pub weight: Option<DatedWeight>,
    /// Its condition.
    pub condition: Option<ConditionRange>,
    /// Its crest.
    pub crest: Option<Crest>,
    /// What the look-over of this visit saw; `None` when nobody looked in it.
    pub signs: Option<Signs>,
    /// What stops it now.
    pub stop: Option<Stop>,
    /// The plan that holds.
    pub plan: Option<InUse>,
    /// What changed since the last visit.
    pub changes: Vec<Change>,
    /// What was not done in this visit.
    pub open: Vec<Task>,
}

/// What a report is drafted from.
#[derive(Clone, Debug, PartialEq)]
pub struct Report {
    /// The local day of the visit.
    pub on: LocalDate,
    /// What changed since the last visit; `None` when it is the first.
    pub since: Option<Since>,
    /// The animals, in walking order.
    pub animals: Vec<OnAnimal>,
}

/// The report of the visit that is under way.
pub fn report(shelf: &Shelf, now: Instant, zone: &impl Zone) -> Option<(Underway, Report)> {
    let visit = underway(shelf, now, zone)?;
    let since = since(shelf, &visit.held, now, zone);
    let records: Vec<&Record> = shelf.records().collect();
    let animals = visit
        .animals
        .iter()
        .filter_map(|seen| {
            let animal = &seen.visit.animal;
            let gathered = gather(&records, &animal.id, now, zone, &Wish::default())?;
            let changes = since
                .as_ref()
                .and_then(|since| {
                    let mut animals = since.animals.iter();
                    animals.find(|(name, _)| *name == animal.name)
                })
                .map(|(_, changes)| changes.clone())
                .unwrap_or_default();
            Some(OnAnimal {
                name: animal.name.clone(),
                weight: best(&gathered.weights, gathered.day).cloned(),
                condition: gathered.condition.last().map(|scored| scored.condition),
                crest: gathered.crest,
                signs: seen
                    .done
                    .contains(&Task::LookOver)
                    .then_some(gathered.look_over.signs),
                stop: seen.visit.stop.clone(),
                plan: in_use(shelf, animal.id.as_str()),
                changes,
                open: seen.open.clone(),
            })
        })
        .collect();
    let on = zone.to_local(visit.held.began).date;
    Some((visit, Report { on, since, animals }))
}

fn in_use(shelf: &Shelf, animal: &str) -> Option<InUse> {
    let Ok(Body::Plan(plan)) = Body::read(shelf.newest(&Kind::Plan, animal)?) else {
        return None;
    };
    Some(InUse {
        hays: hays(shelf, &plan),
        plan,
    })
}
