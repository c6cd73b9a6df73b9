//! What the look-back says of grass.

use super::*;
use crate::log::at_grass::tests::{grazing, turnout};
use crate::log::how_it_goes::tests::{Yard, bramble};
use crate::units::Span;

fn out(yard: &mut Yard, days: i64, minutes: i64) {
    let body = turnout(yard.later(days), Some(minutes));
    yard.add(days, &Body::Turnout(body));
}

/// What changed in the days before the fortieth, as days after the first.
fn back(yard: &Yard) -> (Vec<(i64, Changed)>, Vec<NotLogged>) {
    let records: Vec<&Record> = yard.records.iter().collect();
    let (began, now) = (yard.day(40), yard.later(40) + Span::hours(9));
    let back = looked_back(&records, &bramble(), began, now, &yard.case.zone).unwrap();
    let grass = |one: &Happened| {
        matches!(
            one.what,
            Changed::GrassDecided { .. }
                | Changed::FirstTurnout { .. }
                | Changed::LongerAtGrass { .. }
                | Changed::MuzzleLeftOff { .. }
        )
    };
    let happened = back.happened.into_iter().filter(grass);
    let of = |one: Happened| ((one.on - yard.day(0)).num_days(), one.what);
    (happened.map(of).collect(), back.not_logged)
}

#[test]
fn the_first_turnout_after_weeks_without_is_told_with_the_one_before_it() {
    let mut yard = Yard::new();
    assert_eq!(back(&yard).0, []);
    assert!(back(&yard).1.contains(&NotLogged::Grass));
    out(&mut yard, 30, 60);
    out(&mut yard, 31, 60);
    let first = |last| (30, Changed::FirstTurnout { last });
    assert_eq!(back(&yard).0, [first(None)]);
    assert!(!back(&yard).1.contains(&NotLogged::Grass));
    out(&mut yard, 1, 60);
    assert_eq!(back(&yard).0, [first(Some(yard.day(1)))]);
    out(&mut yard, 3, 60);
    assert_eq!(back(&yard).0, [], "not four weeks");
}

#[test]
fn longer_turnout_is_told_where_it_rose_most() {
    let mut yard = Yard::new();
    for days in 0..40 {
        out(&mut yard, days, if days < 25 { 60 } else { 180 });
    }
    let (happened, _) = back(&yard);
    let [(25, Changed::LongerAtGrass { before, after })] = happened[..] else {
        panic!("{happened:?}")
    };
    assert_eq!((before, after), (Span::hours(1), Span::hours(3)));
    // Half an hour more is none.
    let mut yard = Yard::new();
    for days in 0..40 {
        out(&mut yard, days, if days < 25 { 60 } else { 90 });
    }
    assert_eq!(back(&yard).0, []);
}

#[test]
fn what_was_decided_and_a_muzzle_left_off_are_told_and_silent_days_are_named() {
    let mut yard = Yard::new();
    let body = grazing(&yard, 20, 90, true);
    yard.add(20, &body);
    for days in 20..24 {
        let mut body = turnout(yard.later(days), Some(60));
        body.muzzle = days % 2 == 0;
        yard.add(days, &Body::Turnout(body));
    }
    let (happened, not_logged) = back(&yard);
    assert!(happened.contains(&(21, Changed::MuzzleLeftOff { times: 2 })));
    let decided = Changed::GrassDecided {
        time: Span::minutes(90),
        muzzle: true,
    };
    assert!(happened.contains(&(20, decided)), "{happened:?}");
    // Sixteen days on which it was to go out, and nobody said whether it did.
    assert!(
        not_logged.contains(&NotLogged::GrassOn { days: 16 }),
        "{not_logged:?}"
    );
    assert!(!not_logged.contains(&NotLogged::Grass));
}
