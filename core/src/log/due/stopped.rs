//! What stops an animal, and the plan whose vet's word has ended.

use super::{Held, Yard};
use crate::animal::{Animal, AnimalId, VetScope};
use crate::limits::starting_level;
use crate::log::bodies::Body;
use crate::log::entry::Entry;
use crate::log::gather::{said_on, words};
use crate::log::looks::looked_over;
use crate::log::weighed::Course;
use crate::round::{HeldWord, IssuedPlan, Stopped, Subject};
use crate::safety::{StopsFor, stops};
use crate::units::{PartOfBody, Zone};

impl<Z: Zone> Yard<'_, Z> {
    /// The animals that something stops, with or without a plan.
    pub(super) fn stopped(&self) -> Vec<Stopped> {
        let words = words(self.entries);
        self.entries
            .iter()
            .filter_map(|entry| {
                let Body::Animal(body) = &entry.body else {
                    return None;
                };
                let animal = body.animal(&entry.record.id);
                let own = |other: &&Entry<'_>| other.record.subject.id() == animal.id.as_str();
                let look_over = looked_over(self.entries.iter().filter(own), self.zone);
                let falls = |course: Course, who: &Animal| course.too_fast(who, self.today);
                let stops = stops(&StopsFor {
                    animal: &animal,
                    look_over: &look_over,
                    said: said_on(entry, body, self.zone),
                    too_fast: self.course(&animal.id, falls).flatten(),
                    words: &words,
                    day: self.today,
                    now: self.now,
                });
                let sign = look_over.signs.look_again();
                let stopped = !stops.is_empty() || sign || look_over.again.is_open();
                stopped.then(|| Stopped {
                    groups: self
                        .groups()
                        .filter(|group| self.holding.eats_with(&group.id, &animal.id, self.today))
                        .map(|group| group.id.clone())
                        .collect(),
                    out_with: self.out_with(&animal.id),
                    animal: animal.id,
                    name: animal.name,
                    stops,
                    again: look_over.again,
                    sign,
                })
            })
            .collect()
    }

    /// A plan as it is fed. One that was made under a vet's word which has ended gives the hay that holds without it.
    pub(super) fn back(&self, held: Held<'_>, words: &[HeldWord]) -> IssuedPlan {
        let mut plan = held.plan;
        let feeds = |word: &&HeldWord| match &plan.subject {
            Subject::Animal(id) => *id == word.animal,
            Subject::Group(id) => self.holding.eats_with(id, &word.animal, self.today),
            Subject::Yard(_) => false,
        };
        let level = held.body.level.part();
        let without = words
            .iter()
            .filter(|word| word.scope == VetScope::LowestLevel && word.expires < self.today)
            .filter(feeds)
            .filter_map(|word| self.start(&word.animal))
            .reduce(|one, other| if other > one { other } else { one });
        if let Some(without) = without.filter(|without| level < *without) {
            for net in &mut plan.nets {
                net.hay = net.hay * (without.to_percent() / level.to_percent());
            }
            plan.word_ended = true;
        }
        plan
    }

    /// The level that an animal starts at without a vet's word.
    fn start(&self, animal: &AnimalId) -> Option<PartOfBody> {
        self.entries.iter().find_map(|entry| match &entry.body {
            Body::Animal(body) if entry.record.id.0 == animal.0 => {
                Some(*starting_level(&body.animal(&entry.record.id)))
            }
            _ => None,
        })
    }
}
