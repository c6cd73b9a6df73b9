//! Which plan feeds whom on which day.
//!
//! No animal is fed by its own plan and by its group's on one day: of the two the one that was issued later holds. A
//! member's part of its group's plan, which is what it gets beside the hay, holds as long as the group's plan feeds it.
//! Who is in a group goes by whole days.

use super::bodies::{Body, PlanV1};
use super::entry::{self, Entry};
use super::envelope::Record;
use super::kind::Kind;
use super::stamp::Stamp;
use crate::animal::{AnimalId, Group, GroupId, Member, group_of};
use crate::round::{Rests, Subject};
use crate::units::{Instant, LocalDate};
use std::collections::BTreeSet;

/// An issued plan.
struct Issued<'a> {
    record: &'a Record,
    body: &'a PlanV1,
}

impl Issued<'_> {
    /// Of two plans the later one is the one that somebody decided last.
    fn order(&self) -> (Instant, Stamp) {
        (self.record.at, self.record.stamp)
    }

    fn is_of(&self, kind: &str, id: &str) -> bool {
        let about = &self.record.subject;
        about.kind() == kind && about.id() == id
    }
}

/// The groups and plans of a yard.
pub(super) struct Holding<'a> {
    groups: Vec<Group>,
    plans: Vec<Issued<'a>>,
}

impl<'a> Holding<'a> {
    /// From the entries, oldest first.
    pub(super) fn of(entries: &'a [Entry<'a>]) -> Self {
        let mut found = Self {
            groups: Vec::new(),
            plans: Vec::new(),
        };
        for entry in entries {
            match &entry.body {
                Body::Group(body) => found.groups.push(body.group(&entry.record.id)),
                Body::Plan(body) => found.plans.push(Issued {
                    record: entry.record,
                    body,
                }),
                _ => {}
            }
        }
        found
    }

    pub(super) fn groups(&self) -> &[Group] {
        &self.groups
    }

    /// The plan of a subject that was issued last of those that have begun on a day; `hay` leaves out members' parts.
    fn last(&self, kind: &str, id: &str, day: LocalDate, hay: bool) -> Option<&Issued<'a>> {
        self.plans.iter().rfind(|plan| {
            plan.is_of(kind, id) && plan.body.from <= day && !(hay && plan.body.is_part())
        })
    }

    /// The plan of the group that an animal is in on a day.
    fn of_its_group(&self, animal: &AnimalId, day: LocalDate) -> Option<(&Group, &Issued<'a>)> {
        let group = group_of(&self.groups, animal, day)?;
        Some((group, self.last("group", group.id.as_str(), day, true)?))
    }

    /// The plan that gives an animal its hay on a day: its own, or its group's.
    pub(super) fn hay_of(&self, animal: &AnimalId, day: LocalDate) -> Option<&'a PlanV1> {
        let own = self.last("animal", animal.as_str(), day, true);
        let theirs = self.of_its_group(animal, day).map(|(_, theirs)| theirs);
        let plan = match (own, theirs) {
            (Some(own), Some(theirs)) if own.order() < theirs.order() => theirs,
            (Some(own), _) => own,
            (None, theirs) => theirs?,
        };
        Some(plan.body)
    }

    /// The days on which another plan may begin to give an animal its hay.
    pub(super) fn days_of_change(&self, animal: &AnimalId) -> BTreeSet<LocalDate> {
        let mut subjects: BTreeSet<&str> = BTreeSet::from([animal.as_str()]);
        let mut days = BTreeSet::new();
        for group in &self.groups {
            for member in group.members.iter().filter(|one| one.animal == *animal) {
                subjects.insert(group.id.as_str());
                days.insert(member.from);
                days.extend(member.to.and_then(|last| last.succ_opt()));
            }
        }
        let of_it = |plan: &&Issued<'_>| subjects.contains(plan.record.subject.id());
        days.extend(self.plans.iter().filter(of_it).map(|plan| plan.body.from));
        days
    }

    /// The group whose plan gives an animal its hay on a day.
    pub(super) fn fed_with(&self, animal: &AnimalId, day: LocalDate) -> Option<&Group> {
        let (group, theirs) = self.of_its_group(animal, day)?;
        let own = self.last("animal", animal.as_str(), day, true);
        own.is_none_or(|own| own.order() < theirs.order())
            .then_some(group)
    }

    /// Whether an animal eats of what is offered to a group on a day: it is in it, and no plan of its own was issued since
    /// the group's.
    pub(super) fn eats_with(&self, group: &GroupId, animal: &AnimalId, day: LocalDate) -> bool {
        let is_in = group_of(&self.groups, animal, day).is_some_and(|own| own.id == *group);
        let planned = self.last("group", group.as_str(), day, true).is_some();
        is_in && (!planned || self.fed_with(animal, day).is_some())
    }

    /// Who eats of what is offered to a group on a day.
    pub(super) fn eaters<'g>(&self, group: &'g Group, day: LocalDate) -> Vec<&'g AnimalId> {
        let members = group.on(day).into_iter();
        members
            .filter(|animal| self.eats_with(&group.id, animal, day))
            .collect()
    }

    /// Whether a plan feeds nobody on a day on which it has begun.
    pub(super) fn rests_on(&self, record: &Record, body: &PlanV1, day: LocalDate) -> bool {
        let id = record.subject.id();
        match record.subject.kind() {
            "animal" if body.is_part() => self.fed_with(&AnimalId(id.to_owned()), day).is_none(),
            "animal" => self
                .of_its_group(&AnimalId(id.to_owned()), day)
                .is_some_and(|(_, theirs)| (record.at, record.stamp) < theirs.order()),
            "group" => self
                .groups
                .iter()
                .find(|group| group.id.as_str() == id)
                .is_none_or(|group| self.eaters(group, day).is_empty()),
            _ => false,
        }
    }

    /// The days on which a plan feeds nobody, from its first day on.
    pub(super) fn rests(&self, record: &Record, body: &PlanV1) -> Vec<Rests> {
        let id = record.subject.id();
        let about: Vec<&Group> = self
            .groups
            .iter()
            .filter(|group| {
                let is_member = |member: &Member| member.animal.as_str() == id;
                group.id.as_str() == id || group.members.iter().any(is_member)
            })
            .collect();
        // Between two of these days nothing begins or ends.
        let mut changes: BTreeSet<LocalDate> = BTreeSet::from([body.from]);
        let mut subjects: BTreeSet<&str> = BTreeSet::from([id]);
        for group in &about {
            subjects.insert(group.id.as_str());
            for member in &group.members {
                subjects.insert(member.animal.as_str());
                changes.insert(member.from);
                changes.extend(member.to.and_then(|last| last.succ_opt()));
            }
        }
        let theirs = |plan: &&Issued<'_>| subjects.contains(plan.record.subject.id());
        changes.extend(self.plans.iter().filter(theirs).map(|plan| plan.body.from));
        let days: Vec<LocalDate> = changes.range(body.from..).copied().collect();
        let mut found: Vec<Rests> = Vec::new();
        for (index, day) in days.iter().enumerate() {
            if !self.rests_on(record, body, *day) {
                continue;
            }
            let to = days.get(index + 1).and_then(chrono::NaiveDate::pred_opt);
            match found.last_mut() {
                Some(last) if last.to.and_then(|last| last.succ_opt()) == Some(*day) => {
                    last.to = to;
                }
                _ => found.push(Rests { from: *day, to }),
            }
        }
        found
    }

    /// Until when a plan of an animal's own feeds it on the day on which its group's takes over; `None` on any other day.
    pub(super) fn until(&self, record: &Record, body: &PlanV1, day: LocalDate) -> Option<Instant> {
        let before = day.pred_opt()?;
        let (group, _) = self.of_its_group(&AnimalId(record.subject.id().to_owned()), day)?;
        let went_on = day == body.from || !self.rests_on(record, body, before);
        if body.is_part() || !went_on || !self.rests_on(record, body, day) {
            return None;
        }
        self.plans
            .iter()
            .filter(|plan| plan.is_of("group", group.id.as_str()) && plan.body.from == day)
            .map(|plan| plan.record.at)
            .find(|at| record.at < *at)
    }

    /// Whether other animals eat of a group's hay today than those that its plan was made for, who joined and left on one
    /// day among them; `there` are the animals that are among the records.
    pub(super) fn changed(
        &self,
        record: &Record,
        body: &PlanV1,
        day: LocalDate,
        there: impl Fn(&AnimalId) -> bool,
    ) -> bool {
        let id = record.subject.id();
        let Some(group) = self.groups.iter().find(|group| group.id.as_str() == id) else {
            return false;
        };
        let made_for: BTreeSet<AnimalId> = body
            .inputs
            .iter()
            .map(|input| AnimalId(input.record.0.clone()))
            .filter(|animal| there(animal))
            .collect();
        let eaters: BTreeSet<AnimalId> = self
            .eaters(group, day)
            .into_iter()
            .filter(|animal| there(animal))
            .cloned()
            .collect();
        !made_for.is_empty() && made_for != eaters
    }

    /// Whether an animal had its hay with a group once and has no plan that gives it any now.
    pub(super) fn left_without(&self, animal: &AnimalId, day: LocalDate) -> bool {
        let own = |part: bool| {
            self.plans.iter().any(|plan| {
                plan.is_of("animal", animal.as_str())
                    && plan.body.from <= day
                    && plan.body.is_part() == part
                    && (part || !self.rests_on(plan.record, plan.body, day))
            })
        };
        own(true) && !own(false) && self.fed_with(animal, day).is_none()
    }
}

/// Whether a subject is the group's.
pub(super) fn is_group(subject: &Subject, group: &Group) -> bool {
    matches!(subject, Subject::Group(id) if *id == group.id)
}

/// The groups and plans among records, oldest first.
fn read<'r>(records: &[&'r Record], now: Instant) -> Vec<Entry<'r>> {
    let picks =
        |record: &Record| record.at <= now && matches!(record.kind, Kind::Plan | Kind::Group);
    entry::read(records, picks).0
}

/// The group whose plan gives an animal its hay on a day; `None` where its own does, or none.
pub fn fed_with(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    day: LocalDate,
) -> Option<Group> {
    let entries = read(records, now);
    Holding::of(&entries).fed_with(animal, day).cloned()
}

/// Who eats of what is offered to a group on a day: of its members those that no later plan of their own feeds.
pub fn eaters(records: &[&Record], group: &Group, now: Instant, day: LocalDate) -> Vec<AnimalId> {
    let entries = read(records, now);
    let holding = Holding::of(&entries);
    holding.eaters(group, day).into_iter().cloned().collect()
}

/// The plan that gives an animal or a group its hay on a day, with its record; `None` where that is another's, or nobody's.
pub fn plan_in_use<'r>(
    records: &[&'r Record],
    of: &Subject,
    now: Instant,
    day: LocalDate,
) -> Option<(&'r Record, PlanV1)> {
    let entries = read(records, now);
    let holding = Holding::of(&entries);
    let (kind, id) = of.parts();
    entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Plan(body)
            if entry.record.subject.kind() == kind
                && entry.record.subject.id() == id
                && body.from <= day
                && !body.is_part()
                && !holding.rests_on(entry.record, body, day) =>
        {
            Some((entry.record, body.clone()))
        }
        _ => None,
    })
}

/// The plan that says what an animal gets on a day: its own, its part of its group's, or else the group's.
pub fn plan_that_feeds(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    day: LocalDate,
) -> Option<PlanV1> {
    let entries = read(records, now);
    let holding = Holding::of(&entries);
    let feeds = |plan: &&Issued<'_>| {
        plan.is_of("animal", animal.as_str())
            && plan.body.from <= day
            && !holding.rests_on(plan.record, plan.body, day)
    };
    let own = holding.plans.iter().rfind(feeds);
    let theirs = || holding.of_its_group(animal, day).map(|(_, theirs)| theirs);
    own.or_else(theirs).map(|plan| plan.body.clone())
}

#[cfg(test)]
mod tests;
