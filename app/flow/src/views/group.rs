//! A group: what is offered to all, each one's share, who needs separating, and the plan that was issued for them. Safety
//! has the last word.

mod cautions;
mod in_use;
mod who;

pub use cautions::cautions;
pub use in_use::{GroupInUse, GroupOffer, Own};
pub use who::{who, who_needs};

use crate::acts::{Act, New};
use crate::forms::start::Visits;
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::beside;
use crate::views::plan::{inputs, same_but_for_now};
use std::collections::BTreeMap;
use tussock_core::animal::{Animal, AnimalId, Group, GroupId};
use tussock_core::log::bodies::PlanV1;
use tussock_core::log::{
    Body, Gathered, Known, LogError, Problem, Record, Stamp, Subject, Wish, gather_group,
};
use tussock_core::plan::{GroupDraft, PlanError};
use tussock_core::safety::{GroupPlan, GroupVerdict, Refused, judge_group};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate, Zone};

/// What the screen asks the disk for.
pub fn needs() -> Vec<Range> {
    beside::group_needs()
}

/// How the group is fed.
#[derive(Clone, Debug, PartialEq)]
pub enum Fed {
    /// Every member may be fed so.
    Together(Box<GroupPlan>),
    /// These may not: there is no ration for all.
    Refused(Vec<Refused>),
    /// No ration could be made, and for whom.
    NoDraft(PlanError, Option<AnimalId>),
}

impl Fed {
    fn reads_as(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Together(one), Self::Together(two)) => {
                drafts_read_as(one.planned(), two.planned())
                    && one.members().len() == two.members().len()
                    && one
                        .members()
                        .iter()
                        .zip(two.members())
                        .all(|(one, two)| one.cautions() == two.cautions())
            }
            (Self::Refused(one), Self::Refused(two)) => {
                one.len() == two.len()
                    && one.iter().zip(two).all(|(one, two)| {
                        one.why == two.why && same_but_for_now(&one.draft, &two.draft)
                    })
            }
            (one, two) => one == two,
        }
    }
}

fn drafts_read_as(one: &GroupDraft, other: &GroupDraft) -> bool {
    let mut now = other.clone();
    for (held, share) in now.members.iter_mut().zip(&one.members) {
        held.alone.now = share.alone.now;
    }
    *one == now
}

/// A group on a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Herd {
    /// The group.
    pub group: Group,
    /// The local day.
    pub today: LocalDate,
    /// Who is in it today.
    pub members: Vec<Animal>,
    /// Everybody of the yard, by name.
    pub yard: Vec<Animal>,
    /// How it would be fed by a plan of today.
    pub fed: Fed,
    /// The plan that was issued last for it.
    pub in_use: Option<GroupInUse>,
    /// Members that a later plan of their own feeds, and since when.
    pub own: Vec<Own>,
    /// Those of the yard that are in another group today, with its name.
    pub elsewhere: Vec<(AnimalId, String)>,
    /// Nobody said when somebody comes, and two visits stand in.
    pub visits_stand_in: bool,
    /// What could not be read.
    pub problems: Vec<Problem>,
    /// The records that each member's plan is made from.
    inputs: BTreeMap<AnimalId, Vec<(RecordId, Stamp)>>,
}

impl Herd {
    /// Whether a screen would read the same: everything but the instant it was worked out at.
    pub fn reads_as(&self, other: &Self) -> bool {
        self.group == other.group
            && self.today == other.today
            && self.members == other.members
            && self.yard == other.yard
            && self.fed.reads_as(&other.fed)
            && self.in_use == other.in_use
            && self.own == other.own
            && self.elsewhere == other.elsewhere
            && self.visits_stand_in == other.visits_stand_in
            && self.problems == other.problems
            && self.inputs == other.inputs
    }

    /// The name of an animal; its id where it is not there.
    pub fn name(&self, id: &AnimalId) -> String {
        self.yard
            .iter()
            .find(|animal| animal.id == *id)
            .map_or_else(|| id.0.clone(), |animal| animal.name.clone())
    }
}

/// A group; `None` when it is not there.
pub fn herd(shelf: &Shelf, id: &GroupId, now: Instant, zone: &impl Zone) -> Option<Herd> {
    let group = shelf.group(id)?;
    let today = zone.to_local(now).date;
    let records: Vec<&Record> = shelf.records().collect();
    let mut gathered = gather_group(&records, &group, now, zone, &Wish::default());
    let visits_stand_in = gathered
        .members
        .iter()
        .any(|member| member.visits.is_empty());
    if visits_stand_in {
        for member in &mut gathered.members {
            member.visits = Visits::Two.times();
        }
    }
    let fed = match gathered.draft().map(judge_group) {
        Err(no) => Fed::NoDraft(no.error, no.animal),
        Ok(GroupVerdict::Refused(refused)) => Fed::Refused(refused),
        Ok(GroupVerdict::Allowed(plan)) => Fed::Together(plan),
    };
    let inputs = match &fed {
        Fed::Together(plan) => plan
            .members()
            .iter()
            .map(|member| {
                let draft = member.planned();
                (draft.animal.id.clone(), inputs(&records, draft, now))
            })
            .collect(),
        Fed::Refused(_) | Fed::NoDraft(..) => BTreeMap::new(),
    };
    let mut problems: Vec<Problem> = Vec::new();
    for problem in gathered.members.iter().flat_map(|member| &member.problems) {
        if !problems.contains(problem) {
            problems.push(problem.clone());
        }
    }
    Some(Herd {
        in_use: in_use::in_use(shelf, &group, &fed, now, today),
        own: in_use::own(&records, &group, now, today),
        elsewhere: elsewhere(shelf, &group, today),
        members: gathered
            .members
            .into_iter()
            .map(|member: Gathered| member.animal)
            .collect(),
        fed,
        yard: shelf.animals(),
        group,
        today,
        visits_stand_in,
        problems,
        inputs,
    })
}

/// Those that are in another group today: who is put into this one leaves that.
pub fn elsewhere(shelf: &Shelf, group: &Group, today: LocalDate) -> Vec<(AnimalId, String)> {
    shelf
        .groups()
        .iter()
        .filter(|other| other.id != group.id)
        .flat_map(|other| {
            let members = other.on(today).into_iter();
            members.map(|animal| (animal.clone(), other.name.clone()))
        })
        .collect()
}

impl Herd {
    /// The act that issues today's plan: the group's, which is its hay, and each member's part of it. `id` gives a record's
    /// id by the name of what it is for, the same for the same name. `None` when there is none to issue.
    ///
    /// # Errors
    /// An amount, a weight or a level beyond what is stored.
    pub fn use_it(&self, mut id: impl FnMut(&str) -> String) -> Option<Result<Act, LogError>> {
        let Fed::Together(plan) = &self.fed else {
            return None;
        };
        self.issued(plan, &mut id).transpose()
    }

    fn issued(
        &self,
        plan: &GroupPlan,
        id: &mut dyn FnMut(&str) -> String,
    ) -> Result<Option<Act>, LogError> {
        let mut all: Vec<(RecordId, Stamp)> = self.inputs.values().flatten().cloned().collect();
        all.sort();
        all.dedup();
        let Some(body) = PlanV1::of_group(plan, &all, None)? else {
            return Ok(None);
        };
        let body = match &self.in_use {
            Some(before) => body.accepted_as(&before.body, plan.planned().layout.longest_h),
            None => body,
        };
        let add = |id: String, subject: Subject, body: PlanV1| {
            Act::Add(New {
                id: RecordId(id),
                subject,
                at: None,
                known: Known::Seen,
                body: Body::Plan(body),
            })
        };
        let mut acts = vec![add(id("plan"), Subject::group(&self.group.id), body)];
        for member in &plan.planned().members {
            let animal = &member.alone.animal.id;
            let inputs = self.inputs.get(animal).cloned().unwrap_or_default();
            let part = PlanV1::part_of(plan, member, &inputs, None)?;
            acts.push(add(id(animal.as_str()), Subject::animal(animal), part));
        }
        Ok(Some(Act::All(acts)))
    }
}

#[cfg(test)]
mod tests;
