//! The animals on weighbridge day, in the order in which they were walked over the scale before.

use crate::shelf::Shelf;
use crate::views::{horses, measures};
use std::collections::BTreeMap;
use tussock_core::animal::Animal;
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
#[allow(
    clippy::redundant_closure_for_method_calls,
    reason = "a method of one lifetime is no answer for every form"
)]
mod tests {
    use super::*;
    use crate::acts::Act;
    use crate::forms::weighbridge::{Rows, of_row};
    use crate::views::test_yard::{add, animal, at, shelf_of, written, zone};
    use tussock_core::animal::AnimalId;
    use tussock_core::assess::{Doubt, DoubtAnswer};

    fn twenty() -> Shelf {
        let animals: Vec<Animal> = (1..=20).map(|n| animal(&format!("pony-{n:02}"))).collect();
        let entries: Vec<_> = animals
            .iter()
            .map(|animal| add(animal.id.as_str(), animal, -30))
            .collect();
        shelf_of(&entries)
    }

    /// The form of a day: fields over a yard.
    struct Day {
        shelf: Shelf,
        on: i64,
        fields: BTreeMap<String, String>,
    }

    impl Day {
        fn seen(&self) -> Weighbridge {
            weighbridge(&self.shelf, at(self.on), &zone())
        }

        fn with<T>(&self, ask: impl FnOnce(&Rows<'_>) -> T) -> T {
            let seen = self.seen();
            let text = |field: &str| self.fields.get(field).cloned().unwrap_or_default();
            ask(&Rows {
                lines: &seen.lines,
                today: seen.today,
                instrument: seen.instrument,
                without: &seen.without,
                text: &text,
            })
        }

        fn type_in(&mut self, name: &str, text: &str) {
            let id = AnimalId(name.into());
            for (field, text) in self.with(|rows| rows.type_in(&id, rows.field(), text.to_owned()))
            {
                self.fields.insert(field, text);
            }
        }

        /// Saves what can be saved and empties its rows; what is left is wrong or asked back.
        fn save(&mut self) -> crate::forms::weighbridge::Saving {
            let day = self.on;
            let saving = self.with(|rows| rows.save(|id| format!("{}-{day}", id.as_str())));
            let acts = saving.acts.iter().map(|(_, act)| act.clone()).collect();
            self.shelf = written(&self.shelf, &Act::All(acts), at(self.on));
            for (id, _) in &saving.acts {
                for field in Rows::emptied(id) {
                    self.fields.remove(&field);
                }
            }
            saving
        }
    }

    fn names(seen: &Weighbridge) -> Vec<&str> {
        seen.lines
            .iter()
            .map(|line| line.animal.id.as_str())
            .collect()
    }

    #[test]
    fn twenty_animals_are_typed_and_saved_at_once() {
        let mut day = Day {
            shelf: twenty(),
            on: 0,
            fields: BTreeMap::new(),
        };
        for n in 1..=20 {
            day.type_in(&format!("pony-{n:02}"), &(290 + n).to_string());
        }
        assert_eq!(day.with(|rows| rows.typed()), 20);
        let saving = day.save();
        assert_eq!(saving.acts.len(), 20);
        let seen = day.seen();
        assert_eq!((seen.saved(), seen.lines.len()), (20, 20));
        assert_eq!(
            seen.lines[4].saved.map(|kg| kg.to_kg().round()),
            Some(295.0)
        );
    }

    #[test]
    fn an_interrupted_day_goes_on_where_it_was_and_the_walked_order_comes_back() {
        let mut day = Day {
            shelf: twenty(),
            on: 0,
            fields: BTreeMap::new(),
        };
        day.type_in("pony-07", "301");
        day.type_in("pony-03", "302");
        assert_eq!(day.save().acts.len(), 2);
        // Those that are done stand first in the order they were walked, and the rest waits.
        assert_eq!(names(&day.seen())[..3], ["pony-07", "pony-03", "pony-01"]);
        day.type_in("pony-20", "303");
        assert_eq!(day.save().acts.len(), 1);
        assert_eq!(day.seen().saved(), 3);
        // A month later nothing is saved yet, and they stand as they were walked.
        day.on = 28;
        let seen = day.seen();
        assert_eq!(seen.saved(), 0);
        assert_eq!(
            names(&seen)[..4],
            ["pony-07", "pony-03", "pony-20", "pony-01"]
        );
        assert_eq!(
            seen.lines[0].last.map(|(_, kg)| kg.to_kg().round()),
            Some(301.0)
        );
    }

    #[test]
    fn one_row_that_is_asked_back_or_wrong_holds_no_other_up() {
        let mut day = Day {
            shelf: twenty(),
            on: 0,
            fields: BTreeMap::new(),
        };
        day.type_in("pony-01", "300");
        day.type_in("pony-02", "660");
        day.type_in("pony-03", "heavy");
        let saving = day.save();
        assert_eq!(saving.acts.len(), 1);
        assert_eq!(saving.wrong.len(), 1);
        let [(id, asked)] = saving.asked.as_slice() else {
            panic!("one is asked: {saving:?}");
        };
        assert_eq!(id.as_str(), "pony-02");
        let [doubt @ Doubt::Pounds { .. }] = asked.as_slice() else {
            panic!("pounds: {asked:?}");
        };
        let seen = day.seen();
        let line = seen
            .lines
            .iter()
            .find(|line| line.animal.id == *id)
            .unwrap();
        for (field, text) in day.with(|rows| rows.answer(line, doubt, DoubtAnswer::OtherUnit)) {
            day.fields.insert(field, text);
        }
        assert_eq!(day.fields[&of_row("scale", id)], "660 lb");
        // What was wrong is still typed there.
        assert_eq!(day.fields["scale-pony-03"], "heavy");
        assert_eq!(day.save().acts.len(), 1);
        assert_eq!(day.seen().saved(), 2);
    }

    #[test]
    fn a_vehicle_weighbridge_is_said_once_and_the_trailer_weighed_once() {
        let mut day = Day {
            shelf: twenty(),
            on: 0,
            fields: BTreeMap::new(),
        };
        day.fields.insert("instrument".into(), "vehicle".into());
        day.fields.insert("without".into(), "2460".into());
        day.type_in("pony-01", "2760");
        assert_eq!(day.save().acts.len(), 1);
        // A phone that was put away remembers both from what was saved.
        day.fields.clear();
        let seen = day.seen();
        assert_eq!(seen.instrument, ScaleInstrument::VehicleWeighbridge);
        assert_eq!(seen.without, "2460");
        day.type_in("pony-02", "2780");
        assert_eq!(day.save().acts.len(), 1);
        let seen = day.seen();
        let kg = |name: &str| {
            let line = seen
                .lines
                .iter()
                .find(|line| line.animal.id.as_str() == name);
            line.and_then(|line| line.saved).map(BodyMass::to_kg)
        };
        assert_eq!((kg("pony-01"), kg("pony-02")), (Some(300.0), Some(320.0)));
    }
}
