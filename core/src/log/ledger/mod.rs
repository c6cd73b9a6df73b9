//! From records to the ledger: what an animal or a group was offered, left and ate, day by day.

use super::bodies::{Body, PlanV1};
use super::due::issued;
use super::entry::{Entry, up_to};
use super::envelope::Record;
use super::gather::{Wish, gather};
use super::holding::Holding;
use crate::animal::{AnimalId, Kind};
use crate::day::{DayOfLedger, Ledger};
use crate::limits::Ends;
use crate::plan::share_of;
use crate::round::{IssuedPlan, Subject};
use crate::units::{BodyMass, Instant, LocalDate, Zone};
use chrono::Days;
use std::collections::BTreeMap;

mod dry;
mod grass;
mod lines;
#[cfg(test)]
mod tests;

/// The ledger of an animal or a group, from a day to another, both in it, at most to today.
///
/// `records` are the versions that hold, of any subject, in any order; what is deleted or later than now is left out. An
/// animal's ledger holds its share of what its group was offered while it was a member: by weight, times 0.7 to 1.4, and
/// not known while a member's weight is not. Of the turnouts of its group each eats by its own weight; the group's ledger
/// holds the sum.
pub fn ledger_of(
    records: &[&Record],
    of: &Subject,
    (from, to): (LocalDate, LocalDate),
    now: Instant,
    zone: &impl Zone,
) -> Ledger {
    let entries = up_to(records, now);
    let today = zone.to_local(now).date;
    let book = Book {
        holding: Holding::of(&entries),
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
    let grazes = book.grazes(of, &days);
    let mut weights = Weights(BTreeMap::new());
    if grazes || matches!(of, Subject::Animal(_)) {
        weights = Weights::of(records, &entries, now, zone);
    }
    if let Subject::Animal(animal) = of {
        for group in book.holding.groups() {
            let shared = book.days(&Subject::Group(group.id.clone()), &days);
            for (day, shared) in own.iter_mut().zip(shared) {
                let members = book.holding.eaters(group, day.day);
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
    if grazes {
        if let Subject::Animal(animal) = of {
            weights.add(records, animal, now, zone);
        }
        for day in &mut own {
            day.servings.extend(book.grass(of, day.day, &weights));
        }
    }
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

/// What an animal is, and what it weighed last.
#[derive(Clone, Copy)]
struct Weighed {
    kind: Kind,
    weight: Ends<BodyMass>,
}

/// The last weights of the animals that are in a group, and of others that were asked for.
struct Weights(BTreeMap<AnimalId, Weighed>);

impl Weights {
    fn of(records: &[&Record], entries: &[Entry<'_>], now: Instant, zone: &impl Zone) -> Self {
        let mut weights = Self(BTreeMap::new());
        for entry in entries {
            let Body::Group(body) = &entry.body else {
                continue;
            };
            for member in body.group(&entry.record.id).members {
                weights.add(records, &member.animal, now, zone);
            }
        }
        weights
    }

    /// Adds an animal that was weighed.
    fn add(&mut self, records: &[&Record], animal: &AnimalId, now: Instant, zone: &impl Zone) {
        if self.0.contains_key(animal) {
            return;
        }
        let gathered = gather(records, animal, now, zone, &Wish::default());
        let weighed = gathered.and_then(|gathered| {
            let last = &gathered.weights.last()?.weight;
            Some(Weighed {
                kind: gathered.animal.kind,
                weight: Ends::new(last.low, last.value, last.high),
            })
        });
        if let Some(weighed) = weighed {
            self.0.insert(animal.clone(), weighed);
        }
    }

    fn of_one(&self, animal: &AnimalId) -> Option<Weighed> {
        self.0.get(animal).copied()
    }

    /// A member's part of what is offered to all. `None` while the weight of one is not known.
    fn part(&self, animal: &AnimalId, members: &[&AnimalId]) -> Option<Ends<f64>> {
        let weigh = |animal: &AnimalId| Some(self.of_one(animal)?.weight.likely.to_kg());
        let all: f64 = members
            .iter()
            .map(|member| weigh(member))
            .sum::<Option<f64>>()?;
        Some(share_of(weigh(animal)? / all, members.len()))
    }
}

/// A plan with its record.
struct Held<'a> {
    body: &'a PlanV1,
    plan: IssuedPlan,
    /// From when on its subject has had a plan for the day.
    since: Instant,
    /// Until when, where another took its place on the day.
    until: Option<Instant>,
}

/// The entries of a yard, oldest first.
struct Book<'a, Z> {
    entries: &'a [Entry<'a>],
    holding: Holding<'a>,
    zone: &'a Z,
    now: Instant,
    today: LocalDate,
}

impl<'a, Z: Zone> Book<'a, Z> {
    fn about<'e>(&'e self, of: &'e Subject) -> impl Iterator<Item = &'a Entry<'a>> + 'e {
        let (kind, id) = of.parts();
        self.entries.iter().filter(move |entry| {
            entry.record.subject.kind() == kind && entry.record.subject.id() == id
        })
    }

    /// The plans that feed a subject on a day: of those that had begun and do not rest the one issued last, and before it
    /// the one that its group's took the place of on that very day.
    fn plans(&self, of: &Subject, day: LocalDate) -> Vec<Held<'a>> {
        let mut since = None;
        let (mut last, mut before) = (None, None);
        for entry in self.about(of) {
            let Body::Plan(body) = &entry.body else {
                continue;
            };
            if day < body.from {
                continue;
            }
            let at = entry.record.at;
            let held = |since, until| Held {
                body,
                plan: issued(body, of.clone(), "", at),
                since,
                until,
            };
            if !self.holding.rests_on(entry.record, body, day) {
                since.get_or_insert(at);
                last = Some(held(since.unwrap_or(at), None));
            } else if let Some(until) = self.holding.until(entry.record, body, day) {
                before = Some(held(at, Some(until)));
            }
        }
        before.into_iter().chain(last).collect()
    }

    fn days(&self, of: &Subject, days: &[LocalDate]) -> Vec<DayOfLedger> {
        let mut lines = Vec::new();
        let mut found: Vec<DayOfLedger> = Vec::new();
        for day in days {
            let plans = self.plans(of, *day);
            let (of_day, to_come) = self.lines(of, *day, &plans);
            lines.extend(of_day);
            found.push(DayOfLedger {
                day: *day,
                has_plan: plans.iter().any(|held| !held.plan.part),
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
