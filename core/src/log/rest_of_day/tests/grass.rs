//! A day with turnout.

use super::*;
use crate::animal::{Answer, PaddockId};
use crate::day::Eats;
use crate::log::bodies::{LeafSeen, SwardV1, TurnoutV1};

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
            leaf: Some(LeafSeen::Ankle),
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
    yard.out(empty, Some(empty + Span::hours(4)), None);
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
fn the_rest_of_the_day_knows_that_it_is_out_until_it_is_to_be_brought_in() {
    let mut yard = Yard::issued();
    let now = yard.after(0, 60);
    yard.out(now, None, Some(now + Span::hours(3)));
    let out = yard.held(now).out_until.unwrap();
    assert_eq!(out.eats, Eats::Nothing);
    let at = |hours| yard.case.zone.to_local(now + Span::hours(hours)).time;
    assert_eq!((out.from, out.to), (at(0), at(3)));
    let bare = yard.laid(now).1.longest_h;
    yard.sees_leaf(now);
    assert_eq!(yard.held(now).out_until.unwrap().eats, Eats::Grass);
    let leaf = yard.laid(now).1.longest_h;
    assert!(3.0 <= bare + 1e-9 && leaf <= bare + 1e-9, "{leaf} {bare}");
    // Late out is still out, and nobody says until when.
    assert_eq!(yard.held(now + Span::hours(4)).out_until, None);
}
