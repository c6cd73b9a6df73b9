//! A day on the scale: lines are saved one by one, and a phone that was put away goes on where it was.

#![allow(
    clippy::redundant_closure_for_method_calls,
    reason = "a method of one lifetime is no answer for every form"
)]

use super::*;
use crate::acts::Act;
use crate::forms::weighbridge::{Head, Row};
use crate::forms::weight::NotYet;
use crate::views::test_yard::{add, animal, at, shelf_of, written, zone};
use tussock_core::assess::{Doubt, DoubtAnswer};

fn twenty() -> Shelf {
    let animals: Vec<Animal> = (1..=20).map(|n| animal(&format!("pony-{n:02}"))).collect();
    let entries: Vec<_> = animals
        .iter()
        .map(|animal| add(animal.id.as_str(), animal, -30))
        .collect();
    shelf_of(&entries)
}

type Fields = BTreeMap<String, String>;

/// A day: a form a row, and the one over them.
struct Day {
    shelf: Shelf,
    on: i64,
    head: Fields,
    rows: BTreeMap<String, Fields>,
    saves: usize,
}

impl Day {
    fn new() -> Self {
        Self {
            shelf: twenty(),
            on: 0,
            head: Fields::new(),
            rows: BTreeMap::new(),
            saves: 0,
        }
    }

    fn seen(&self) -> Weighbridge {
        weighbridge(&self.shelf, at(self.on), &zone())
    }

    fn row<T>(&self, name: &str, ask: impl FnOnce(&Row<'_>) -> T) -> T {
        let seen = self.seen();
        let head = Head::of(&seen, |field| {
            self.head.get(field).cloned().unwrap_or_default()
        });
        let text = |field: &str| {
            let row = self.rows.get(name);
            row.and_then(|row| row.get(field))
                .cloned()
                .unwrap_or_default()
        };
        ask(&Row {
            line: line(&seen, name),
            head: &head,
            text: &text,
        })
    }

    fn type_in(&mut self, name: &str, text: &str) {
        let field = self.row(name, |row| row.head.fields()[0]);
        let row = self.rows.entry(name.to_owned()).or_default();
        row.insert(field.to_owned(), text.to_owned());
    }

    /// Leaves a line: it is saved and its form emptied, or stays as it is.
    fn leave(&mut self, name: &str) -> Result<(), NotYet> {
        let record = format!("{name}-{}-{}", self.on, self.saves);
        let act = self.row(name, |row| row.act(&record))?;
        assert!(matches!(act, Act::Add(_)), "an act for each: {act:?}");
        self.shelf = written(&self.shelf, &act, at(self.on));
        self.rows.remove(name);
        self.saves += 1;
        Ok(())
    }

    fn weigh(&mut self, name: &str, text: &str) {
        self.type_in(name, text);
        let left = self.leave(name);
        assert_eq!(left, Ok(()), "{name}");
    }

    fn answer(&mut self, name: &str, doubt: &Doubt, answer: DoubtAnswer) {
        let sets = self.row(name, |row| row.answer(doubt, answer));
        self.head.extend(sets.head);
        self.rows
            .entry(name.to_owned())
            .or_default()
            .extend(sets.row);
    }
}

fn line<'a>(seen: &'a Weighbridge, name: &str) -> &'a Line {
    let id = AnimalId(name.into());
    seen.lines.iter().find(|line| line.animal.id == id).unwrap()
}

fn names(seen: &Weighbridge) -> Vec<&str> {
    seen.lines
        .iter()
        .map(|line| line.animal.id.as_str())
        .collect()
}

#[test]
fn twenty_animals_are_saved_line_by_line() {
    let mut day = Day::new();
    for n in 1..=20 {
        day.weigh(&format!("pony-{n:02}"), &(290 + n).to_string());
        assert_eq!(day.seen().saved(), n);
    }
    let seen = day.seen();
    assert_eq!((seen.saved(), seen.lines.len()), (20, 20));
    assert_eq!(
        seen.lines[4].saved.map(|kg| kg.to_kg().round()),
        Some(295.0)
    );
}

#[test]
fn an_interrupted_day_goes_on_where_it_was_and_the_walked_order_comes_back() {
    let mut day = Day::new();
    day.weigh("pony-07", "301");
    let stands = day.seen().order(&[]);
    day.weigh("pony-03", "302");
    // Nothing moves on the screen while it is typed in.
    assert_eq!(day.seen().order(&stands), stands);
    // Those that are done stand first in the order they were walked, and the rest waits.
    assert_eq!(names(&day.seen())[..3], ["pony-07", "pony-03", "pony-01"]);
    day.weigh("pony-20", "303");
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
fn one_line_that_is_asked_back_or_wrong_holds_no_other_up() {
    let mut day = Day::new();
    day.type_in("pony-02", "660");
    day.type_in("pony-03", "heavy");
    assert!(matches!(day.leave("pony-03"), Err(NotYet::Wrong(_))));
    assert!(matches!(day.leave("pony-02"), Err(NotYet::Asked(_))));
    day.weigh("pony-01", "300");
    let open = day.row("pony-02", |row| row.open());
    let [doubt @ Doubt::Pounds { .. }] = open.as_slice() else {
        panic!("pounds: {open:?}");
    };
    day.answer("pony-02", doubt, DoubtAnswer::OtherUnit);
    assert_eq!(day.rows["pony-02"]["scale"], "660 lb");
    // What was wrong is still typed there.
    assert_eq!(day.rows["pony-03"]["scale"], "heavy");
    assert_eq!(day.leave("pony-02"), Ok(()));
    assert_eq!(day.seen().saved(), 2);
}

#[test]
fn a_vehicle_weighbridge_is_said_once_and_the_trailer_weighed_once() {
    let mut day = Day::new();
    day.head.insert("instrument".into(), "vehicle".into());
    day.head.insert("without".into(), "2460".into());
    day.type_in("pony-01", "2760");
    let weight = day.row("pony-01", |row| row.weight());
    assert_eq!(weight.map(|kg| kg.to_kg().round()), Some(300.0));
    assert_eq!(day.leave("pony-01"), Ok(()));
    // A phone that was put away remembers both from what was saved.
    day.head.clear();
    let seen = day.seen();
    assert_eq!(seen.instrument, ScaleInstrument::VehicleWeighbridge);
    assert_eq!(seen.without, "2460");
    day.weigh("pony-02", "2780");
    let seen = day.seen();
    let kg = |name: &str| line(&seen, name).saved.map(BodyMass::to_kg);
    assert_eq!((kg("pony-01"), kg("pony-02")), (Some(300.0), Some(320.0)));
}

#[test]
fn an_answer_about_a_vehicle_holds_for_its_figures_only() {
    let mut day = Day::new();
    day.head.insert("instrument".into(), "vehicle".into());
    day.head.insert("without".into(), "2460".into());
    day.type_in("pony-01", "3460");
    assert!(matches!(day.leave("pony-01"), Err(NotYet::Asked(_))));
    let doubt = day.row("pony-01", |row| row.open())[0];
    day.answer("pony-01", &doubt, DoubtAnswer::Right);
    assert_eq!(day.row("pony-01", |row| row.open()), []);
    // Another figure is another question.
    day.type_in("pony-01", "3480");
    assert_eq!(day.row("pony-01", |row| row.open().len()), 1);
    // To weigh again empties the row; the trailer stands.
    let doubt = day.row("pony-01", |row| row.open())[0];
    day.answer("pony-01", &doubt, DoubtAnswer::Again);
    assert!(!day.row("pony-01", |row| row.is_typed()));
    assert_eq!(day.head["without"], "2460");
}
