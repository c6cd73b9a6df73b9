//! The animals and what is known of each.

use crate::rows::Range;
use crate::shelf::Shelf;
use tussock_core::animal::{Animal, AnimalId};
use tussock_core::assess::{DatedWeight, best};
use tussock_core::log::{Kind, Problem, Record, Wish, gather};
use tussock_core::units::{Instant, LocalDate, Zone};

/// The most animals, lots and other things of a yard that one screen asks for.
const OF_A_YARD: u32 = 200;
/// The most records about one animal that one screen asks for.
const OF_ONE: u32 = 1000;

/// What the list asks the disk for.
pub fn list_needs() -> Vec<Range> {
    vec![kind(&Kind::Animal)]
}

/// What the screens beside one animal ask the disk for: its own records and what the yard has.
pub fn one_needs(animal: &AnimalId) -> Vec<Range> {
    // The animal itself is the oldest record about it, and never drops out behind its readings.
    let mut ranges = vec![
        Range::One(animal.as_str().to_owned()),
        Range::Subject {
            subject: animal.as_str().to_owned(),
            from: 0,
            limit: OF_ONE,
        },
    ];
    ranges.extend(yard_needs());
    ranges
}

/// What a plan needs of the yard: hays, foods, nets, tubs, visits, weather, groups, how animals are fed, the rations that
/// were decided on, and how animals go out to grass with the leaf that was seen there.
pub fn yard_needs() -> Vec<Range> {
    [
        Kind::Yard,
        Kind::Group,
        Kind::Lot,
        Kind::Food,
        Kind::Net,
        Kind::Tub,
        Kind::Visits,
        Kind::Weather,
        Kind::Feeding,
        Kind::Ration,
        Kind::VetWord,
        Kind::Grazing,
        Kind::Sward,
        // Coming off the grass and going onto it moves its weight.
        Kind::Turnout,
    ]
    .iter()
    .map(kind)
    .collect()
}

fn kind(kind: &Kind) -> Range {
    kind_of_limit(kind, OF_A_YARD)
}

/// The newest records of a kind, at most so many.
pub(crate) fn kind_of_limit(kind: &Kind, limit: u32) -> Range {
    Range::Kind {
        kind: kind.word().to_owned(),
        from: 0,
        limit,
    }
}

/// An animal with its weight.
#[derive(Clone, Debug, PartialEq)]
pub struct Beside {
    /// The animal.
    pub animal: Animal,
    /// The weight that holds; `None` when it was never weighed.
    pub weight: Option<DatedWeight>,
    /// The local day it is seen on.
    pub today: LocalDate,
    /// What could not be read.
    pub problems: Vec<Problem>,
}

/// One animal; `None` when it is not there.
pub fn beside(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<Beside> {
    let records: Vec<&Record> = shelf.records().collect();
    let gathered = gather(&records, animal, now, zone, &Wish::default())?;
    let weight = best(&gathered.weights, gathered.day).cloned();
    Some(Beside {
        today: gathered.day,
        animal: gathered.animal,
        weight,
        problems: gathered.problems,
    })
}
