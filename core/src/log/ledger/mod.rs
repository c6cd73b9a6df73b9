//! From records to the ledger: what an animal or a group was offered, left and ate, day by day.

use super::bodies::{Body, PlanV1};
use super::due::issued;
use super::envelope::Record;
use super::gather::{Entry, Wish, gather};
use crate::animal::{AnimalId, Group, GroupId};
use crate::day::{DayOfLedger, Ledger};
use crate::limits::Ends;
use crate::plan::published::{SHARE_LEAST, SHARE_MOST};
use crate::round::{IssuedPlan, Subject};
use crate::units::{BodyMass, Instant, LocalDate, Zone};
use chrono::Days;
use std::collections::BTreeMap;

mod dry;
mod lines;
#[cfg(test)]
mod tests;

/// The ledger of an animal or a group, from a day to another, both in it, at most to today.
///
/// `records` are the versions that hold, of any subject, in any order; what is deleted or later than now is left out. An
/// animal's ledger holds its share of what its group was offered while it was a member: by weight, times 0.7 to 1.4, and
/// not known while a member's weight is not.
pub fn ledger_of(
    records: &[&Record],
    of: &Subject,
    (from, to): (LocalDate, LocalDate),
    now: Instant,
    zone: &impl Zone,
) -> Ledger {
    let mut entries: Vec<Entry<'_>> = records
        .iter()
        .filter(|record| !record.gone && record.at <= now)
        .filter_map(|record| {
            let body = Body::read(record).ok()?;
            Some(Entry { record, body })
        })
        .collect();
    entries.sort_by_key(|entry| (entry.record.at, entry.record.stamp));
    let today = zone.to_local(now).date;
    let book = Book {
        entries: &entries,
        zone,
        now,
        today,
    };
    // What is left of a night's net is said on the day after: begin a day early, and let that day go.
    let first = from.checked_sub_days(Days::new(1)).unwrap_or(from);
    let days: Vec<LocalDate> = first
        .iter_days()
        .take_while(|day| *day <= to.min(today))
        .collect();
    let mut own = book.days(of, &days);
    if let Subject::Animal(animal) = of {
        let weights = Weights::of(records, &entries, now, zone);
        for group in book.groups() {
            let shared = book.days(&Subject::Group(group.id.clone()), &days);
            for (day, shared) in own.iter_mut().zip(shared) {
                let members = group.on(day.day);
                if !members.contains(&animal) {
                    continue;
                }
                let part = weights.part(animal, &members);
                day.has_plan |= shared.has_plan;
                if let Some(part) = part {
                    day.to_come = day.to_come + shared.to_come * part.likely;
                }
                day.servings.extend(
                    shared
                        .servings
                        .into_iter()
                        .map(|serving| serving.share(part)),
                );
            }
        }
    }
    own.retain(|day| from <= day.day);
    Ledger { days: own }
}

/// The weight of an animal that was taken last.
pub fn last_weight(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<BodyMass> {
    let gathered = gather(records, animal, now, zone, &Wish::default())?;
    gathered.weights.last().map(|dated| dated.weight.value)
}

/// The last weights of the animals that are in a group.
struct Weights(BTreeMap<AnimalId, BodyMass>);

impl Weights {
    fn of(records: &[&Record], entries: &[Entry<'_>], now: Instant, zone: &impl Zone) -> Self {
        let mut weights = BTreeMap::new();
        for entry in entries {
            let Body::Group(body) = &entry.body else {
                continue;
            };
            for member in body.group(&entry.record.id).members {
                if let Some(weight) = last_weight(records, &member.animal, now, zone) {
                    weights.insert(member.animal, weight);
                }
            }
        }
        Self(weights)
    }

    /// A member's part of what is offered to all. `None` while the weight of one is not known.
    fn part(&self, animal: &AnimalId, members: &[&AnimalId]) -> Option<Ends<f64>> {
        let weigh = |animal: &AnimalId| self.0.get(animal).map(|weight| weight.to_kg());
        let all: f64 = members
            .iter()
            .map(|member| weigh(member))
            .sum::<Option<f64>>()?;
        let likely = weigh(animal)? / all;
        if members.len() == 1 {
            return Some(Ends::exactly(1.0));
        }
        Some(Ends::new(
            likely * *SHARE_LEAST,
            likely,
            (likely * *SHARE_MOST).min(1.0),
        ))
    }
}

/// A plan with its record.
struct Held<'a> {
    body: &'a PlanV1,
    plan: IssuedPlan,
    /// From when on its subject has had a plan for the day.
    since: Instant,
}

/// The entries of a yard, oldest first.
struct Book<'a, Z> {
    entries: &'a [Entry<'a>],
    zone: &'a Z,
    now: Instant,
    today: LocalDate,
}

impl<'a, Z: Zone> Book<'a, Z> {
    fn groups(&self) -> Vec<Group> {
        self.entries
            .iter()
            .filter_map(|entry| match &entry.body {
                Body::Group(body) => Some(body.group(&entry.record.id)),
                _ => None,
            })
            .collect()
    }

    fn about<'e>(&'e self, of: &'e Subject) -> impl Iterator<Item = &'a Entry<'a>> + 'e {
        let (kind, id) = of.parts();
        self.entries.iter().filter(move |entry| {
            entry.record.subject.kind() == kind && entry.record.subject.id() == id
        })
    }

    /// The plan of a subject on a day: of those that had begun the one issued last.
    fn own_plan(&self, of: &Subject, day: LocalDate) -> Option<Held<'a>> {
        let mut since = None;
        let mut last = None;
        for entry in self.about(of) {
            if let Body::Plan(body) = &entry.body
                && body.from <= day
            {
                since.get_or_insert(entry.record.at);
                last = Some((body, entry.record.at));
            }
        }
        let (body, at) = last?;
        Some(Held {
            body,
            plan: issued(body, of.clone(), "", at),
            since: since.unwrap_or(at),
        })
    }

    /// The plan that feeds a subject on a day. An animal's own rests while its group has one that was issued later.
    fn plan(&self, of: &Subject, day: LocalDate) -> Option<Held<'a>> {
        let own = self.own_plan(of, day)?;
        if let Subject::Animal(animal) = of {
            for group in self.groups() {
                let id = GroupId(group.id.0.clone());
                if group.on(day).contains(&animal)
                    && self
                        .own_plan(&Subject::Group(id), day)
                        .is_some_and(|theirs| own.plan.issued < theirs.plan.issued)
                {
                    return None;
                }
            }
        }
        Some(own)
    }

    fn days(&self, of: &Subject, days: &[LocalDate]) -> Vec<DayOfLedger> {
        let mut lines = Vec::new();
        let mut found: Vec<DayOfLedger> = Vec::new();
        for day in days {
            let plan = self.plan(of, *day);
            let (of_day, to_come) = self.lines(of, *day, plan.as_ref());
            lines.extend(of_day);
            found.push(DayOfLedger {
                day: *day,
                has_plan: plan.is_some(),
                servings: Vec::new(),
                to_come,
                runs: *day == self.today,
            });
        }
        self.left_over(of, &mut lines);
        for line in lines {
            if let Some(day) = found.iter_mut().find(|day| day.day == line.serving.day) {
                day.servings.push(line.serving);
            }
        }
        found
    }
}
