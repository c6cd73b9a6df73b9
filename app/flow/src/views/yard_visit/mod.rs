//! A consultant's visit to the yard: what the animals share, each animal in turn, and what is next.
//!
//! Only the start and the end are kept. What was done is every record since the start, so that a visit that is left and
//! come back to goes on where it was, and a reading taken outside of it counts as well.

pub mod report;
pub mod since;
#[cfg(test)]
mod tests;

use super::beside::{self, Last, Standing, Step, Visit};
use super::horses::{kind_of_limit, yard_needs};
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::words::Task;
use tussock_core::animal::AnimalId;
use tussock_core::log::bodies::{SharedFact, YardVisitV1};
use tussock_core::log::{Body, Kind, Record};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, Zone};

/// The most visits that a screen asks for: the one under way and the ones before it.
const OF_VISITS: u32 = 20;

/// What the screens of a visit ask the disk for.
pub fn needs() -> Vec<Range> {
    let mut ranges = beside::list_needs();
    ranges.extend(yard_needs());
    ranges.extend(
        [
            (Kind::YardVisit, OF_VISITS),
            (Kind::Appetite, OF_VISITS),
            (Kind::LotCount, OF_VISITS),
        ]
        .map(|(kind, limit)| kind_of_limit(&kind, limit)),
    );
    ranges
}

/// What the screen beside an animal asks for, to know whether a visit is under way.
pub fn under_way_needs() -> Range {
    kind_of_limit(&Kind::YardVisit, OF_VISITS)
}

/// A visit on the shelf.
#[derive(Clone, Debug, PartialEq)]
pub struct Held {
    /// Its record.
    pub record: RecordId,
    /// When it began.
    pub began: Instant,
    /// What it says.
    pub body: YardVisitV1,
}

fn held(shelf: &Shelf, now: Instant) -> impl Iterator<Item = Held> {
    shelf
        .bodies(&Kind::YardVisit)
        .into_iter()
        .filter(move |(record, _)| record.at <= now)
        .filter_map(|(record, body)| match body {
            Body::YardVisit(body) => Some(Held {
                record: record.id.clone(),
                began: record.at,
                body,
            }),
            _ => None,
        })
}

/// The visit that is under way: the newest that has not ended.
pub fn under_way(shelf: &Shelf, now: Instant) -> Option<Held> {
    held(shelf, now).find(|visit| visit.body.ended.is_none())
}

/// The last visit that ended before an instant.
pub fn before(shelf: &Shelf, now: Instant) -> Option<Held> {
    held(shelf, now).find(|visit| visit.body.ended.is_some())
}

/// How a shared fact stands in this visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FactState {
    /// Nobody looked at it yet.
    Open,
    /// It is as it was written down.
    AsBefore,
    /// It was written down anew in this visit.
    Changed,
}

/// An animal in the visit.
#[derive(Clone, Debug, PartialEq)]
pub struct Seen {
    /// The animal and its steps.
    pub visit: Visit,
    /// What was done in this visit, in its order.
    pub done: Vec<Task>,
    /// What is still open, in its order.
    pub open: Vec<Task>,
}

impl Seen {
    /// A step as it is in this visit. What is open in it tells no score of last time: nobody scores from a score.
    #[must_use]
    pub fn in_visit(&self, step: Step) -> Step {
        let standing = self.standing(step.task, step.standing);
        let open = self.open.contains(&step.task);
        let last = match step.last {
            Some(Last::Condition(_, by_sites)) if open => Some(Last::ConditionToScore { by_sites }),
            Some(Last::Crest(_)) if open => Some(Last::CrestToScore),
            last => last,
        };
        Step {
            last,
            standing,
            ..step
        }
    }

    /// How a step stands in this visit: done in it, open in it, or as it stands without one.
    fn standing(&self, task: Task, without: Standing) -> Standing {
        match without {
            // A sign that was seen, and a step that waits for another, stay what they are.
            Standing::Care | Standing::Waits | Standing::NotComplete | Standing::NoWork => without,
            Standing::Due | Standing::Done | Standing::Later | Standing::Open
                if self.open.contains(&task) =>
            {
                Standing::Due
            }
            Standing::Due | Standing::Done | Standing::Later | Standing::Open
                if self.done.contains(&task) =>
            {
                Standing::Done
            }
            Standing::Due | Standing::Done | Standing::Later | Standing::Open => without,
        }
    }
}

/// The visit as it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Underway {
    /// Its record, its start and what it says.
    pub held: Held,
    /// What the animals share.
    pub facts: Vec<(SharedFact, FactState)>,
    /// The animals, in walking order.
    pub animals: Vec<Seen>,
}

/// What comes next in a visit.
#[derive(Clone, Debug, PartialEq)]
pub enum Next {
    /// A step beside an animal.
    Step(AnimalId, String, Task),
    /// Nothing is open: the summary.
    Summary,
}

impl Underway {
    /// What comes next: the first open step of the first animal that has one.
    pub fn next(&self) -> Next {
        self.animals
            .iter()
            .find_map(|seen| {
                let task = *seen.open.first()?;
                let animal = &seen.visit.animal;
                Some(Next::Step(animal.id.clone(), animal.name.clone(), task))
            })
            .unwrap_or(Next::Summary)
    }

    /// One of its animals.
    pub fn animal(&self, animal: &AnimalId) -> Option<&Seen> {
        let mut animals = self.animals.iter();
        animals.find(|seen| seen.visit.animal.id == *animal)
    }

    /// The shared facts that nobody looked at yet.
    pub fn open_facts(&self) -> Vec<SharedFact> {
        self.facts
            .iter()
            .filter(|(_, state)| *state == FactState::Open)
            .map(|(fact, _)| *fact)
            .collect()
    }

    /// The animals with nothing open, and all of them.
    pub fn seen_of(&self) -> (usize, usize) {
        let seen = self.animals.iter().filter(|seen| seen.open.is_empty());
        (seen.count(), self.animals.len())
    }
}

/// The kind of record that a step writes.
pub const fn kind_of(task: Task) -> Kind {
    match task {
        Task::Weigh => Kind::Weight,
        Task::Condition => Kind::Condition,
        Task::Crest => Kind::Crest,
        Task::LookOver => Kind::LookOver,
        Task::Work => Kind::WorkSession,
        Task::Photograph => Kind::Photo,
        Task::Plan => Kind::Plan,
    }
}

/// Whether a step was done since an instant.
fn done_since(records: &[&Record], task: Task, began: Instant, now: Instant) -> bool {
    let kind = kind_of(task);
    records
        .iter()
        .any(|record| record.kind == kind && began <= record.at && record.at <= now)
}

/// Whether a visit asks for a step: the plan only when it is due, work and a photograph never.
fn asked(visit: &Visit, task: Task) -> bool {
    match task {
        Task::Weigh | Task::Condition | Task::Crest | Task::LookOver => true,
        Task::Work | Task::Photograph => false,
        Task::Plan => visit
            .steps
            .iter()
            .any(|step| step.task == task && step.standing == Standing::Due),
    }
}

/// The visit that is under way, with every animal of it; `None` when there is none.
pub fn underway(shelf: &Shelf, now: Instant, zone: &impl Zone) -> Option<Underway> {
    let held = under_way(shelf, now)?;
    let animals = held
        .body
        .animals
        .iter()
        .filter_map(|animal| {
            let visit = beside::visit(shelf, animal, now, zone)?;
            let records: Vec<&Record> = shelf
                .records()
                .filter(|record| record.subject.id() == animal.as_str())
                .collect();
            let (done, rest): (Vec<Task>, Vec<Task>) = Task::ALL
                .iter()
                .partition(|task| done_since(&records, **task, held.began, now));
            let open = rest
                .into_iter()
                .filter(|task| asked(&visit, *task))
                .collect();
            Some(Seen { visit, done, open })
        })
        .collect();
    let facts = SharedFact::ALL
        .iter()
        .map(|fact| (*fact, fact_state(shelf, &held, *fact, now)))
        .collect();
    Some(Underway {
        held,
        facts,
        animals,
    })
}

/// How a shared fact stands.
fn fact_state(shelf: &Shelf, held: &Held, fact: SharedFact, now: Instant) -> FactState {
    let kinds: &[Kind] = match fact {
        SharedFact::Hay => &[Kind::Lot, Kind::LotCount],
        SharedFact::Visits => &[Kind::Visits],
        SharedFact::Nets => &[Kind::Net, Kind::Tub],
        SharedFact::Weather => &[Kind::Weather],
    };
    // A form may date what it writes otherwise than now: it counts when it was written down.
    let changed = shelf.records().any(|record| {
        let written = record.stamp.instant();
        kinds.contains(&record.kind) && held.began <= written && written <= now
    });
    if changed {
        FactState::Changed
    } else if held.body.as_before.contains(&fact) {
        FactState::AsBefore
    } else {
        FactState::Open
    }
}
