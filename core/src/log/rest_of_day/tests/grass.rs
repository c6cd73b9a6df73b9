//! A day with turnout.

use super::*;
use crate::animal::{Answer, PaddockId};
use crate::day::Eats;
use crate::graze::sward::Leaf;
use crate::log::bodies::{SwardV1, TurnoutV1};

fn top() -> PaddockId {
    PaddockId("top".to_owned())
}

impl Yard {
    fn out(&mut self, at: Instant, came_in: Option<Instant>, by: Option<Instant>) {
        let body = TurnoutV1 {
            paddock: Some(top()),
            muzzle: false,
            bring_in_by: by,
            came_in,
            job: None,
        };
        self.add(at, &Body::Turnout(body));
    }

    fn sees_leaf(&mut self, at: Instant) {
        let body = Body::Sward(SwardV1 {
            leaf: Some(Leaf::Ankle),
            seeding: Answer::No,
            heights_mm: Vec::new(),
            plate: None,
            note: None,
        });
        self.add(at, &body);
        let last = self.records.last_mut().unwrap();
        last.subject = About::paddock(&top());
    }
}

#[test]
fn leaf_that_was_seen_is_forage_on_the_real_day_and_an_unseen_paddock_is_not() {
    let mut yard = Yard::issued();
    yard.hang(0, 0, None);
    let now = yard.after(0, 20 * 60);
    let without = yard.held(now).real.unwrap();
    // It went out a minute after its nets were empty, for four hours.
    let empty = without.forage_until.unwrap() + Span::minutes(1);
    let later = |hours| Some(empty + Span::hours(hours));
    yard.out(empty, later(4), later(4));
    let unseen = yard.held(now).real.unwrap();
    assert!((unseen.longest_h - without.longest_h).abs() < 1e-6);
    yard.sees_leaf(empty);
    let held = yard.held(now);
    let seen = held.real.unwrap();
    assert!(
        (without.longest_h - seen.longest_h - 4.0).abs() < 0.02,
        "{seen:?}"
    );
    assert!((without.waits_h - seen.waits_h - 4.0).abs() < 0.05);
    // The waits of the plan are the plan's.
    assert_eq!(held.out_until, None);
}

#[test]
fn leaf_is_forage_no_longer_than_it_was_to_be_out() {
    let mut yard = Yard::issued();
    yard.hang(0, 0, None);
    let now = yard.after(0, 20 * 60);
    let without = yard.held(now).real.unwrap();
    let empty = without.forage_until.unwrap() + Span::minutes(1);
    yard.sees_leaf(empty);
    let place = yard.records.len();
    let later = |hours| Some(empty + Span::hours(hours));
    // Ticked late, or not yet; where nobody said until when the usual hour counts. In before, it counts until then.
    for (came_in, by, hours) in [
        (later(4), later(2), 2.0),
        (None, later(2), 2.0),
        (later(4), None, 1.0),
        (None, None, 1.0),
        (later(1), later(2), 1.0),
    ] {
        yard.records.truncate(place);
        yard.out(empty, came_in, by);
        let seen = yard.held(now).real.unwrap();
        let less = without.waits_h - seen.waits_h;
        assert!((less - hours).abs() < 0.05, "{less} {hours}");
    }
}

#[test]
fn the_rest_of_the_day_knows_that_it_is_out_until_it_is_to_be_brought_in() {
    let mut yard = Yard::issued();
    let now = yard.after(0, 60);
    yard.out(now, None, Some(now + Span::hours(3)));
    let out = yard.held(now).out_until.unwrap();
    assert_eq!(out.eats, Eats::Nothing);
    let zone = yard.case.zone.clone();
    let at = |hours| zone.to_local(now + Span::hours(hours)).time;
    assert_eq!((out.from, out.to), (at(0), at(3)));
    let bare = yard.laid(now).1.longest_h;
    yard.sees_leaf(now);
    assert_eq!(yard.held(now).out_until.unwrap().eats, Eats::Grass);
    let leaf = yard.laid(now).1.longest_h;
    assert!(3.0 <= bare + 1e-9 && leaf <= bare + 1e-9, "{leaf} {bare}");
    // Late out is still out, and nobody says until when.
    assert_eq!(yard.held(now + Span::hours(4)).out_until, None);
    // One entry more, of a time that is over, does not bring it in.
    let later = |minutes| now + Span::minutes(minutes);
    yard.out(later(5), Some(later(10)), Some(later(10)));
    assert_eq!(yard.held(later(15)).out_until.unwrap().to, at(3));
}

#[test]
fn one_that_nobody_said_a_time_for_is_out_for_the_usual_hour() {
    let mut yard = Yard::issued();
    let now = yard.after(0, 60);
    yard.out(now, None, None);
    let out = yard.held(now).out_until.unwrap();
    let to = yard.case.zone.to_local(now + Span::hours(1)).time;
    assert_eq!(out.to, to);
}
