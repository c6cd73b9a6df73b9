//! The animals on weighbridge day, in the order in which they were walked over the scale before.

use crate::shelf::Shelf;
use crate::views::{horses, measures};
use std::collections::BTreeMap;
use tussock_core::animal::{Animal, AnimalId};
use tussock_core::assess::{Before, ScaleInstrument};
use tussock_core::log::bodies::{ReadingV1, ScaleV1};
use tussock_core::log::{Body, Kind, Record, Stamp};
use tussock_core::units::{BodyMass, Instant, LocalDate, Zone};

/// One animal.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// The animal.
    pub animal: Animal,
    /// What was taken before; what was saved today counts.
    pub before: Before,
    /// The last weight from a scale before today, with its day.
    pub last: Option<(LocalDate, BodyMass)>,
    /// What was saved today.
    pub saved: Option<BodyMass>,
    /// The records that were saved today.
    pub records: Vec<String>,
}

/// Weighbridge day.
#[derive(Clone, Debug, PartialEq)]
pub struct Weighbridge {
    /// The local day.
    pub today: LocalDate,
    /// The animals: those that are saved in the order in which they were, then the others as they stood the last time,
    /// then by name.
    pub lines: Vec<Line>,
    /// The instrument of today's last weight; a scale for animals before the first.
    pub instrument: ScaleInstrument,
    /// The vehicle without an animal, as it was last typed today.
    pub without: String,
}

impl Weighbridge {
    /// How many are saved.
    pub fn saved(&self) -> usize {
        self.lines
            .iter()
            .filter(|line| line.saved.is_some())
            .count()
    }

    /// The order in which the lines stay on the screen: those that stood there before, as they stood, then the others.
    pub fn order(&self, before: &[AnimalId]) -> Vec<AnimalId> {
        let here = |id: &AnimalId| self.lines.iter().any(|line| line.animal.id == *id);
        let stay = before.iter().filter(|id| here(id));
        let come = self.lines.iter().map(|line| &line.animal.id);
        let come = come.filter(|id| !before.contains(id));
        stay.chain(come).cloned().collect()
    }
}

/// One weight from a scale.
struct Weighed<'a> {
    record: &'a Record,
    day: LocalDate,
    scale: ScaleV1,
}

/// Weighbridge day, from the records of the list.
pub fn weighbridge(shelf: &Shelf, now: Instant, zone: &impl Zone) -> Weighbridge {
    let today = zone.to_local(now).date;
    let mut of: BTreeMap<&str, Vec<Weighed<'_>>> = BTreeMap::new();
    for record in shelf.records() {
        if record.kind != Kind::Weight || now < record.at {
            continue;
        }
        if let Ok(Body::Weight(body)) = Body::read(record)
            && let ReadingV1::Scale { scale } = body.reading
        {
            of.entry(record.subject.id()).or_default().push(Weighed {
                record,
                day: zone.to_local(record.at).date,
                scale,
            });
        }
    }
    for weighed in of.values_mut() {
        weighed.sort_by_key(|weighed| (weighed.record.at, weighed.record.stamp));
    }
    let newest = of
        .values()
        .filter_map(|weighed| weighed.last())
        .filter(|weighed| weighed.day == today)
        .max_by_key(|weighed| (weighed.record.at, weighed.record.stamp));
    let typed = |scale: &ScaleV1| scale.without_animal.as_ref()?.typed.clone();
    let instrument = newest.map_or(ScaleInstrument::AnimalScale, |w| w.scale.instrument);
    let without = newest.and_then(|weighed| typed(&weighed.scale));
    let mut lines: Vec<(Turn, Line)> = shelf
        .animals()
        .into_iter()
        .filter_map(|animal| {
            let weighed = of.get(animal.id.as_str()).map_or(&[][..], Vec::as_slice);
            line(shelf, animal, weighed, today, now, zone)
        })
        .collect();
    // Sorting keeps the names' order among those that were never weighed.
    lines.sort_by_key(|(turn, _)| *turn);
    Weighbridge {
        today,
        lines: lines.into_iter().map(|(_, line)| line).collect(),
        instrument,
        without: without.unwrap_or_default(),
    }
}

/// Where an animal stands: saved today, else weighed before, else never; within each by when that was.
type Turn = (u8, Option<(Instant, Stamp)>);

fn line(
    shelf: &Shelf,
    animal: Animal,
    weighed: &[Weighed<'_>],
    today: LocalDate,
    now: Instant,
    zone: &impl Zone,
) -> Option<(Turn, Line)> {
    let own = shelf.about(animal.id.as_str());
    let beside = horses::beside(&own, &animal.id, now, zone)?;
    let weight = beside.weight.map(|dated| dated.weight.value);
    let at = |weighed: &Weighed<'_>| (weighed.record.at, weighed.record.stamp);
    let now_saved: Vec<&Weighed<'_>> = weighed.iter().filter(|w| w.day == today).collect();
    let earlier = weighed.iter().rev().find(|weighed| weighed.day < today);
    let turn = match (now_saved.first(), earlier) {
        (Some(first), _) => (0, Some(at(first))),
        (None, Some(earlier)) => (1, Some(at(earlier))),
        (None, None) => (2, None),
    };
    let line = Line {
        before: measures::before(&own, &animal, weight, now, zone),
        last: earlier.map(|weighed| (weighed.day, weighed.scale.weight.g.mass())),
        saved: now_saved
            .last()
            .map(|weighed| weighed.scale.weight.g.mass()),
        records: now_saved
            .iter()
            .map(|weighed| weighed.record.id.0.clone())
            .collect(),
        animal,
    };
    Some((turn, line))
}

#[cfg(test)]
mod tests;
