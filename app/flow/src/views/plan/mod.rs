//! The plan of one animal: what safety says of it today, and the plan that was accepted.

mod differs;
mod in_use;
mod offer;
mod sources;
mod tags;
#[cfg(test)]
mod tests;

pub use differs::Differs;
pub use in_use::{Accepted, HeldFood, HeldHay, HeldNet, hays};
pub use offer::Offer;
pub use sources::{SourceLine, constant_line, sources};
pub use tags::{Part, TagLine, Told, besides, decision, reasons, stands_in, tags};

use crate::acts::{Act, New};
use crate::forms::group::leave;
use crate::forms::start::Visits;
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::horses::{kind_of_limit, one_needs};
use tussock_core::animal::{Animal, AnimalId, Group};
use tussock_core::log::bodies::PlanV1;
use tussock_core::log::{
    Body, Kind, Known, LogError, Problem, Record, Stamp, Subject, Wish, fed_with, gather,
};
use tussock_core::plan::{Draft, PlanError};
use tussock_core::safety::{Plan, Refused, SafetyVerdict, judge};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate, PartOfBody, Zone};

/// What safety says today.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// Something is missing or cannot be used.
    Nothing(PlanError),
    /// There is no plan.
    Refused(Refused),
    /// It may be used.
    Allowed(Box<Plan>),
}

/// The plan of an animal today.
#[derive(Clone, Debug, PartialEq)]
pub struct PlanView {
    /// The animal.
    pub animal: Animal,
    /// The local day it is seen on.
    pub day: LocalDate,
    /// What safety says today.
    pub outcome: Outcome,
    /// The plan of its own that was accepted last; `None` when there is none, and while its group's feeds it.
    pub accepted: Option<Accepted>,
    /// The group whose plan gives it its hay.
    pub fed_with: Option<Group>,
    /// The level that is asked for, beside what the rules say.
    pub asked: Option<PartOfBody>,
    /// Nobody said when somebody comes, and two visits stand in.
    pub visits_stand_in: bool,
    /// What could not be read.
    pub problems: Vec<Problem>,
    /// The records it is made from.
    inputs: Vec<(RecordId, Stamp)>,
    /// The plan that was accepted last, as it is stored.
    held: Option<PlanV1>,
}

/// The most plans of a yard that are asked for.
const PLANS: u32 = 1000;

/// What the screen asks the disk for.
pub fn needs(animal: &AnimalId) -> Vec<Range> {
    let mut ranges = vec![Range::One(animal.0.clone())];
    ranges.extend(one_needs(animal));
    // What feeds it may be its group's.
    ranges.push(kind_of_limit(&Kind::Plan, PLANS));
    ranges
}

/// The plan of an animal; `None` when the animal is not there.
pub fn plan(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<PlanView> {
    plan_at(shelf, animal, None, now, zone)
}

/// The plan of an animal with a level asked for. The rules and safety judge it as any other.
pub fn plan_at(
    shelf: &Shelf,
    animal: &AnimalId,
    asked: Option<PartOfBody>,
    now: Instant,
    zone: &impl Zone,
) -> Option<PlanView> {
    let records: Vec<&Record> = shelf.records().collect();
    let wish = Wish {
        asked,
        ..Wish::default()
    };
    let mut gathered = gather(&records, animal, now, zone, &wish)?;
    let visits_stand_in = gathered.visits.is_empty();
    if visits_stand_in {
        // Of the usual habits the one with the longest wait, so that nothing is made to look better than it is.
        gathered.visits = Visits::Two.times();
    }
    let (outcome, inputs) = match gathered.draft() {
        Err(error) => (Outcome::Nothing(error), Vec::new()),
        Ok(draft) => {
            let inputs = inputs(&records, &draft, now);
            let outcome = match judge(draft) {
                SafetyVerdict::Allowed(plan) => Outcome::Allowed(plan),
                SafetyVerdict::Refused(refused) => Outcome::Refused(refused),
            };
            (outcome, inputs)
        }
    };
    let words: Vec<(RecordId, Stamp)> = records
        .iter()
        .filter(|record| record.kind == Kind::VetWord && record.subject.id() == animal.as_str())
        .filter(|record| record.at <= now)
        .map(|record| (record.id.clone(), record.stamp))
        .collect();
    let fed_with = fed_with(&records, animal, now, gathered.day);
    let held = in_use::own(shelf, animal);
    let accepted = held
        .as_ref()
        .filter(|_| fed_with.is_none())
        .map(|held| in_use::accepted(shelf, animal, held, &outcome, &words, gathered.day));
    Some(PlanView {
        fed_with,
        held,
        asked,
        day: gathered.day,
        animal: gathered.animal,
        outcome,
        accepted,
        visits_stand_in,
        problems: gathered.problems,
        inputs,
    })
}

/// Whether two drafts say the same, whatever the instant they were made at.
pub(crate) fn same_but_for_now(one: &Draft, other: &Draft) -> bool {
    *one == Draft {
        now: one.now,
        ..other.clone()
    }
}

impl PlanView {
    /// Whether a screen would read the same: everything but the instant it was worked out at.
    pub fn reads_as(&self, other: &Self) -> bool {
        let outcome = match (&self.outcome, &other.outcome) {
            (Outcome::Allowed(one), Outcome::Allowed(other)) => {
                one.cautions() == other.cautions()
                    && same_but_for_now(one.planned(), other.planned())
            }
            (Outcome::Refused(one), Outcome::Refused(other)) => {
                one.why == other.why
                    && one.vet == other.vet
                    && one.meanwhile == other.meanwhile
                    && same_but_for_now(&one.draft, &other.draft)
            }
            (one, other) => one == other,
        };
        outcome
            && self.animal == other.animal
            && self.day == other.day
            && self.accepted == other.accepted
            && self.fed_with == other.fed_with
            && self.asked == other.asked
            && self.visits_stand_in == other.visits_stand_in
            && self.problems == other.problems
            && self.inputs == other.inputs
            && self.held == other.held
    }

    /// How many records today's plan is made from.
    pub const fn records(&self) -> usize {
        self.inputs.len()
    }

    /// The act that issues today's plan, and takes the animal out of the group that feeds it; `None` when there is none to
    /// issue.
    ///
    /// # Errors
    /// An amount, a weight or a level beyond what is stored.
    pub fn use_it(&self, record: &RecordId) -> Option<Result<Act, LogError>> {
        let Outcome::Allowed(plan) = &self.outcome else {
            return None;
        };
        let longest_h = plan.planned().layout.longest_h;
        let issued = PlanV1::of(plan, &self.inputs, None).map(|body| {
            let body = match &self.held {
                Some(before) => body.accepted_as(before, longest_h),
                None => body,
            };
            Act::Add(New {
                id: record.clone(),
                subject: Subject::animal(&self.animal.id),
                at: None,
                known: Known::Seen,
                body: Body::Plan(body),
            })
        });
        // One pile of hay and a plan of its own are not fed together: it leaves the group today.
        let Some(group) = &self.fed_with else {
            return Some(issued);
        };
        let left = leave(group, &self.animal.id, self.day);
        Some(issued.and_then(|issued| Ok(Act::All(vec![left?, issued]))))
    }
}

/// The records a draft was made from, in the versions they have: those about the animal, the lots it eats, and how the
/// yard feeds.
pub(crate) fn inputs(records: &[&Record], draft: &Draft, now: Instant) -> Vec<(RecordId, Stamp)> {
    let animal = draft.animal.id.as_str();
    let used = |record: &Record| match record.kind {
        Kind::Animal
        | Kind::Weight
        | Kind::Condition
        | Kind::Crest
        | Kind::LookOver
        | Kind::WorkSession
        | Kind::VetWord
        | Kind::NetTimed
        | Kind::Ration
        | Kind::Plan => record.subject.id() == animal,
        Kind::Lot => draft.hays.iter().any(|hay| hay.lot.0 == record.id.0),
        Kind::Group | Kind::Feeding | Kind::Food | Kind::Net | Kind::Visits | Kind::Weather => true,
        _ => false,
    };
    records
        .iter()
        .filter(|record| record.at <= now && used(record))
        .map(|record| (record.id.clone(), record.stamp))
        .collect()
}
