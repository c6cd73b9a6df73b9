//! Grass in what was eaten.

use super::*;
use crate::log::at_grass::tests::{grazing, turnout};

#[test]
fn grass_that_was_logged_widens_what_was_eaten_and_is_never_seen() {
    let mut yard = Yard::new();
    yard.issue(0, 1.5);
    let eaten = |yard: &Yard| yard.goes(10).facts.eaten.unwrap();
    for days in 1..10 {
        let body = turnout(yard.later(days), Some(180));
        yard.add(days, &Body::Turnout(body));
    }
    let logged = eaten(&yard);
    // No net was answered for: what is known is the grass, of which nothing is certain where nobody saw leaf.
    assert!(logged.level.least.to_percent().abs() < 1e-9);
    assert!(logged.level.least < logged.level.likely && logged.level.likely < logged.level.most);
    assert!(logged.seen.abs() < 1e-9 && 0.0 < logged.not_known);
    // It was to go out, and on one day more nobody said whether it did.
    let body = grazing(&yard, 0, 180, false);
    yard.add(0, &body);
    let before = logged.not_known;
    let silent = yard
        .records
        .iter()
        .position(|record| record.kind == Kind::Turnout);
    yard.records.remove(silent.unwrap());
    let after = eaten(&yard);
    assert!(before < after.not_known, "{before} {}", after.not_known);
    assert_eq!(after.planned.is_some(), logged.planned.is_some());
}
