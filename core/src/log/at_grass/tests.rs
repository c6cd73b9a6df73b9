//! When it was at grass, from records.

use super::*;
use crate::animal::{Answer, GroupId, Member};
use crate::graze::sward::Leaf;
use crate::log::bodies::SwardV1;
use crate::log::bodies::base::Millimetres;
use crate::log::bodies::{GrazingMinutes, GroupV1};
use crate::log::entry::up_to;
use crate::log::how_it_goes::tests::{Yard, bramble};
use crate::log::{Record, Subject as About};

pub(in crate::log) fn turnout(at: Instant, minutes: Option<i64>) -> TurnoutV1 {
    TurnoutV1 {
        paddock: Some(PaddockId("top".to_owned())),
        muzzle: false,
        bring_in_by: None,
        came_in: minutes.map(|minutes| at + Span::minutes(minutes)),
        job: None,
    }
}

pub(in crate::log) fn grazing(yard: &Yard, from: i64, minutes: i64, muzzle: bool) -> Body {
    Body::Grazing(GrazingV1 {
        paddock: Some(PaddockId("top".to_owned())),
        from: yard.day(from),
        minutes: GrazingMinutes::new(minutes).unwrap(),
        muzzle,
        adapted_since: None,
        out: None,
        stopped: false,
    })
}

fn sward(leaf: Option<Leaf>, mm: &[i64]) -> Body {
    Body::Sward(SwardV1 {
        leaf,
        seeding: Answer::No,
        heights_mm: mm.iter().map(|mm| Millimetres::new(*mm).unwrap()).collect(),
        plate: None,
        note: None,
    })
}

/// Out at six of a day (by the clock of the case), for so many minutes.
fn out(yard: &mut Yard, days: i64, minutes: Option<i64>) {
    let body = turnout(yard.later(days), minutes);
    yard.add(days, &Body::Turnout(body));
}

fn ask<T>(yard: &Yard, days: i64, ask: impl FnOnce(&AtGrass<'_, crate::log::ZoneTable>) -> T) -> T {
    let now = yard.later(days);
    let records: Vec<&Record> = yard.records.iter().collect();
    let entries = up_to(&records, now);
    let groups: Vec<Group> = entries
        .iter()
        .filter_map(|entry| match &entry.body {
            Body::Group(body) => Some(body.group(&entry.record.id)),
            _ => None,
        })
        .collect();
    ask(&AtGrass {
        entries: &entries,
        groups: &groups,
        zone: &yard.case.zone,
        now,
    })
}

fn of() -> Subject {
    Subject::Animal(bramble())
}

/// What the turnouts say of days.
fn on(yard: &Yard, now: i64, days: &[i64]) -> Vec<Vec<OnDay>> {
    ask(yard, now, |grass| {
        let outings = grass.outings(&of());
        days.iter()
            .map(|day| {
                let on = |outing: &Outing<'_>| outing.on(yard.day(*day), &yard.case.zone);
                outings.iter().filter_map(on).collect()
            })
            .collect()
    })
}

#[test]
fn a_turnout_over_midnight_belongs_to_its_day_and_a_longer_one_to_each_of_its_days() {
    let mut yard = Yard::new();
    let hours = |hours| OnDay::For(Span::hours(hours));
    out(&mut yard, 1, Some(20 * 60));
    assert_eq!(on(&yard, 9, &[0, 1, 2]), [vec![], vec![hours(20)], vec![]]);
    out(&mut yard, 3, Some(54 * 60));
    assert_eq!(
        on(&yard, 9, &[3, 4, 5, 6]),
        [vec![hours(24)], vec![hours(24)], vec![hours(6)], vec![]]
    );
}

#[test]
fn one_that_nobody_ended_is_not_known_on_every_day_since() {
    let mut yard = Yard::new();
    out(&mut yard, 1, None);
    let open = vec![OnDay::NotKnown];
    assert_eq!(
        on(&yard, 3, &[1, 2, 3]),
        [open.clone(), open.clone(), open.clone()]
    );
    // What is said to end later has not ended yet.
    let mut yard = Yard::new();
    out(&mut yard, 1, Some(60 * 60));
    assert_eq!(on(&yard, 2, &[1])[0], open);
    // It cannot come in before it went out: nobody knows, and it is not out for ever.
    let mut yard = Yard::new();
    out(&mut yard, 1, Some(-60));
    assert_eq!(on(&yard, 3, &[1, 2]), [open, vec![]]);
}

#[test]
fn an_hour_that_the_animal_and_its_group_both_log_counts_once() {
    let mut yard = Yard::new();
    let id = GroupId("both".to_owned());
    let member = |from: i64| Member {
        animal: bramble(),
        from: yard.day(from),
        to: None,
    };
    let group = Group {
        id: id.clone(),
        name: "Both".to_owned(),
        members: vec![member(2)],
    };
    let about = About::group(&id);
    yard.add_about(&about, 0, &Body::Group(GroupV1::of(&group).unwrap()));
    yard.records.last_mut().unwrap().id = crate::sources::RecordId("both".to_owned());
    for days in [1, 2] {
        let body = turnout(yard.later(days), Some(120));
        yard.add_about(&about, days, &Body::Turnout(body));
    }
    // Before it joined, its group's turnouts are not its own.
    let two = OnDay::For(Span::hours(2));
    assert_eq!(on(&yard, 9, &[1, 2]), [vec![], vec![two]]);
    out(&mut yard, 2, Some(180));
    let one = OnDay::For(Span::hours(1));
    assert_eq!(on(&yard, 9, &[2]), [vec![two, one]]);
}

#[test]
fn leaf_that_was_seen_holds_for_three_days_and_where_boot_and_ruler_differ_there_is_none() {
    let top = PaddockId("top".to_owned());
    let about = About::paddock(&top);
    let mut yard = Yard::new();
    let leaf =
        |yard: &Yard, days: i64| ask(yard, 20, |grass| grass.has_leaf(Some(&top), yard.day(days)));
    assert!(!leaf(&yard, 5), "nobody looked");
    yard.add_about(&about, 5, &sward(Some(Leaf::Ankle), &[]));
    assert!(!leaf(&yard, 4) && leaf(&yard, 5) && leaf(&yard, 8) && !leaf(&yard, 9));
    yard.add_about(&about, 7, &sward(Some(Leaf::AboveAnkle), &[30, 60]));
    assert!(leaf(&yard, 6) && !leaf(&yard, 8), "4.5 cm in the mean");
    yard.add_about(&about, 8, &sward(Some(Leaf::BelowAnkle), &[50]));
    assert!(!leaf(&yard, 8), "the boot says no");
    yard.add_about(&about, 9, &sward(None, &[50]));
    assert!(leaf(&yard, 9));
    // Nobody knows what stands where paddocks are not told apart.
    assert!(!ask(&yard, 20, |grass| grass.has_leaf(None, yard.day(8))));
}

#[test]
fn weeks_of_turnout_count_from_what_was_said_or_from_the_first_of_six_weeks() {
    let mut yard = Yard::new();
    let weeks = |yard: &Yard, days: i64| {
        ask(yard, 99, |grass| {
            grass.used_to_it(&bramble(), yard.day(days))
        })
    };
    assert_eq!(weeks(&yard, 5), None);
    out(&mut yard, 1, Some(60));
    out(&mut yard, 30, Some(60));
    assert_eq!(weeks(&yard, 1), Some(0.0));
    assert_eq!(weeks(&yard, 36), Some(5.0));
    // The first is more than six weeks back: the next counts.
    assert_eq!(weeks(&yard, 44), Some(2.0));
    let Body::Grazing(mut body) = grazing(&yard, 40, 60, false) else {
        panic!("grass")
    };
    body.adapted_since = Some(yard.day(-40));
    yard.add(40, &Body::Grazing(body));
    assert_eq!(weeks(&yard, 44), Some(12.0));
}
