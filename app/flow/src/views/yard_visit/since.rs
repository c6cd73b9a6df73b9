//! What changed since the last visit: the animal as its records had it then, beside how they have it now.

use super::{Held, before};
use crate::shelf::Shelf;
use tussock_core::animal::{AnimalId, Handful, VetWord};
use tussock_core::assess::{ConditionRange, Crest, DatedWeight, best};
use tussock_core::log::{Body, Gathered, Kind, Record, Wish, gather};
use tussock_core::plan::Signs;
use tussock_core::units::{Instant, LocalDate, PartOfBody, Zone};

/// Something about an animal that is not as it was.
#[derive(Clone, Debug, PartialEq)]
pub enum Change {
    /// It weighs otherwise, or was weighed at all.
    Weight {
        /// What held then.
        before: Option<DatedWeight>,
        /// What holds now.
        now: DatedWeight,
    },
    /// Its condition.
    Condition {
        /// What held then.
        before: Option<ConditionRange>,
        /// What holds now.
        now: ConditionRange,
    },
    /// Its crest.
    Crest {
        /// What held then.
        before: Option<Crest>,
        /// What holds now.
        now: Crest,
    },
    /// The signs that stand are others.
    Signs(Signs),
    /// A plan was issued.
    Plan {
        /// The level before it.
        before: Option<PartOfBody>,
        /// Its level.
        now: PartOfBody,
        /// Its first day.
        from: LocalDate,
    },
    /// The vet gave a word.
    VetWord(VetWord),
    /// It refused a handful of hay.
    Refused(LocalDate),
}

/// Something about the yard that is not as it was.
#[derive(Clone, Debug, PartialEq)]
pub enum YardChange {
    /// Hay that was not there.
    NewHay {
        /// Its name.
        name: String,
        /// When it was written down.
        on: LocalDate,
    },
    /// Somebody comes at other times.
    Visits(LocalDate),
}

/// What changed since the last visit.
#[derive(Clone, Debug, PartialEq)]
pub struct Since {
    /// When that visit ended.
    pub ended: Instant,
    /// About the yard.
    pub yard: Vec<YardChange>,
    /// About each animal, in walking order; an animal with no change has an empty list.
    pub animals: Vec<(String, Vec<Change>)>,
}

/// What changed since the last visit, as far as the records go; `None` when it is the first.
pub fn since(shelf: &Shelf, visit: &Held, now: Instant, zone: &impl Zone) -> Option<Since> {
    let ended = before(shelf, now)?.body.ended?;
    let records: Vec<&Record> = shelf.records().collect();
    let animals = visit
        .body
        .animals
        .iter()
        .filter_map(|animal| {
            let at = |when| gather(&records, animal, when, zone, &Wish::default());
            let today = at(now)?;
            // An animal that came since has nothing to be compared with.
            let then = at(ended);
            let name = today.animal.name.clone();
            let mut changes = of_state(then.as_ref(), &today);
            changes.extend(events(shelf, animal, then.as_ref(), ended, now, zone));
            Some((name, changes))
        })
        .collect();
    Some(Since {
        ended,
        yard: of_yard(shelf, ended, now, zone),
        animals,
    })
}

/// What is otherwise now than it was then.
fn of_state(then: Option<&Gathered>, now: &Gathered) -> Vec<Change> {
    let weight = |of: &Gathered| best(&of.weights, of.day).cloned();
    let condition = |of: &Gathered| of.condition.last().map(|scored| scored.condition);
    let weights = (then.and_then(weight), weight(now));
    let conditions = (then.and_then(condition), condition(now));
    let crests = (then.and_then(|then| then.crest), now.crest);
    let signs = then.map(|then| then.look_over.signs).unwrap_or_default();
    let mut changes = Vec::new();
    if let (before, Some(now)) = weights
        && before.as_ref() != Some(&now)
    {
        changes.push(Change::Weight { before, now });
    }
    if let (before, Some(now)) = conditions
        && before != Some(now)
    {
        changes.push(Change::Condition { before, now });
    }
    if let (before, Some(now)) = crests
        && before != Some(now)
    {
        changes.push(Change::Crest { before, now });
    }
    if now.look_over.on.is_some() && signs != now.look_over.signs {
        changes.push(Change::Signs(now.look_over.signs));
    }
    changes
}

/// What happened to it in between.
fn events(
    shelf: &Shelf,
    animal: &AnimalId,
    then: Option<&Gathered>,
    ended: Instant,
    now: Instant,
    zone: &impl Zone,
) -> Vec<Change> {
    let between = |record: &Record| ended < record.at && record.at <= now;
    let of_kind = |kind: Kind| {
        let mut found: Vec<(&Record, Body)> = shelf
            .bodies(&kind)
            .into_iter()
            .filter(|(record, _)| record.subject.id() == animal.as_str() && between(record))
            .collect();
        found.reverse();
        found
    };
    let mut changes = Vec::new();
    let mut level = then.and_then(|then| then.level_now);
    for (_, body) in of_kind(Kind::Plan) {
        if let Body::Plan(plan) = body {
            let now = plan.level.part();
            changes.push(Change::Plan {
                before: level,
                now,
                from: plan.from,
            });
            level = Some(now);
        }
    }
    for (_, body) in shelf.bodies(&Kind::VetWord) {
        if let Body::VetWord(word) = body {
            let word = word.word();
            // A word has its own day, and its own animal.
            if word.animal == *animal && zone.to_local(ended).date < word.given {
                changes.push(Change::VetWord(word));
            }
        }
    }
    for (record, body) in of_kind(Kind::Appetite) {
        if let Body::Appetite(appetite) = body
            && appetite.handful == Handful::Refused
        {
            changes.push(Change::Refused(zone.to_local(record.at).date));
        }
    }
    changes
}

fn of_yard(shelf: &Shelf, ended: Instant, now: Instant, zone: &impl Zone) -> Vec<YardChange> {
    let between = |record: &Record| ended < record.at && record.at <= now;
    let mut changes: Vec<YardChange> = shelf
        .bodies(&Kind::Lot)
        .into_iter()
        .filter(|(record, _)| between(record))
        .filter_map(|(record, body)| match body {
            Body::Lot(lot) => Some(YardChange::NewHay {
                name: lot.name.as_str().to_owned(),
                on: zone.to_local(record.at).date,
            }),
            _ => None,
        })
        .collect();
    let visits = shelf.of_kind(&Kind::Visits);
    if let Some(record) = visits.first().filter(|record| between(record)) {
        changes.push(YardChange::Visits(zone.to_local(record.at).date));
    }
    changes
}
