//! Days as they went.

use super::*;
use crate::sources::Provenance;

fn rate() -> EatingRate {
    EatingRate {
        slow: 0.3,
        likely: 0.4,
        fast: 0.5,
        from: Provenance::new(),
    }
}

fn hour(hour: f64) -> Instant {
    Instant::from_ms(0) + whole_minutes(hour)
}

fn hung(at: f64, kg: f64) -> Happened {
    Happened::Hung {
        at: hour(at),
        dry: DryMatter::kg(kg),
    }
}

#[test]
fn forage_lasts_until_a_fast_eater_is_through() {
    let day = real_day(&[hung(7.0, 2.0)], &[], &rate(), hour(9.0), Some(7.0));
    assert_eq!(day.forage_until, Some(hour(11.0)));
    assert_eq!(day.likely_until, Some(hour(12.0)));
    assert_eq!((day.waits_h, day.longest_h), (0.0, 0.0));
    let later = real_day(&[hung(7.0, 2.0)], &[], &rate(), hour(14.0), Some(7.0));
    assert_eq!(later.forage_until, Some(hour(11.0)));
    assert!((later.waits_h - 3.0).abs() < 1e-9);
    assert_eq!(later.beside, RealVerdict::AsAccepted);
}

#[test]
fn it_alarms_only_when_worse_than_accepted_by_more_than_an_hour() {
    let at = |now: f64| real_day(&[hung(0.0, 2.0)], &[], &rate(), hour(now), Some(5.0)).beside;
    // Bare from 04:00; accepted are 5 h.
    assert_eq!(at(9.5), RealVerdict::AsAccepted);
    assert_eq!(at(10.0), RealVerdict::AsAccepted);
    assert!(matches!(at(10.02), RealVerdict::FeedNow));
    // A wait that is over is worse, and nothing to feed now.
    let over = [hung(0.0, 2.0), hung(10.5, 3.0)];
    let day = real_day(&over, &[], &rate(), hour(11.0), Some(5.0));
    assert!(matches!(day.beside, RealVerdict::Worse { by_h } if (by_h - 1.5).abs() < 1e-9));
    assert_eq!(day.verdict, GapVerdict::OverTheLine);
    // Eight hours that were accepted are no alarm, not even now.
    let accepted = real_day(&[hung(0.0, 2.0)], &[], &rate(), hour(11.9), Some(8.0));
    assert_eq!(accepted.beside, RealVerdict::AsAccepted);
    // Nobody accepted anything: the line.
    let none = real_day(&[hung(0.0, 2.0)], &[], &rate(), hour(10.1), None);
    assert_eq!(none.beside, RealVerdict::FeedNow);
}

#[test]
fn a_net_of_unknown_weight_is_unknown_until_somebody_looks() {
    let unknown = Happened::HungUnknown { at: hour(5.0) };
    // Bare from 04:00 to 05:00; then nobody knows, for however long.
    let day = real_day(
        &[hung(0.0, 2.0), unknown],
        &[],
        &rate(),
        hour(20.0),
        Some(3.0),
    );
    assert_eq!(day.not_known_from, Some(hour(5.0)));
    assert_eq!((day.forage_until, day.likely_until), (None, None));
    assert!((day.longest_h - 1.0).abs() < 1e-9 && day.waits_h.abs() < 1e-9);
    assert_eq!(day.beside, RealVerdict::AsAccepted);
    // Another net does not say what is left of the first.
    let more = [hung(0.0, 2.0), unknown, hung(8.0, 1.0)];
    let day = real_day(&more, &[], &rate(), hour(20.0), None);
    assert_eq!(day.not_known_from, Some(hour(5.0)));
    // Somebody saw that all is empty: it waits from then on.
    let left = Happened::Left {
        at: hour(12.0),
        dry: DryMatter::ZERO,
    };
    let seen = [hung(0.0, 2.0), unknown, left];
    let day = real_day(&seen, &[], &rate(), hour(18.5), None);
    assert_eq!(day.not_known_from, None);
    assert!((day.waits_h - 6.5).abs() < 1e-9);
    assert_eq!(day.beside, RealVerdict::FeedNow);
}

#[test]
fn what_was_seen_and_a_frozen_net_count() {
    let seen = [
        hung(0.0, 4.0),
        Happened::Left {
            at: hour(3.0),
            dry: DryMatter::ZERO,
        },
    ];
    let day = real_day(&seen, &[], &rate(), hour(5.0), None);
    assert!((day.waits_h - 2.0).abs() < 1e-9);
    let frozen = [hung(0.0, 4.0), Happened::Frozen { at: hour(1.0) }];
    let day = real_day(&frozen, &[], &rate(), hour(5.0), None);
    assert!((day.waits_h - 4.0).abs() < 1e-9);
    assert_eq!(
        real_day(&[], &[], &rate(), hour(5.0), None).forage_until,
        None
    );
}

fn out(from: f64, to: Option<f64>, eats: Eats) -> Out {
    Out {
        from: hour(from),
        to: to.map(hour),
        eats,
    }
}

#[test]
fn grass_with_leaf_is_forage_while_the_nets_wait_and_a_bare_paddock_is_a_wait() {
    // Nets for 4 h, out from 02:00 to 05:00: the nets last until 07:00.
    let day = |eats| {
        let out = [out(2.0, Some(5.0), eats)];
        real_day(&[hung(0.0, 2.0)], &out, &rate(), hour(9.0), None)
    };
    let leaf = day(Eats::Grass);
    assert_eq!(leaf.forage_until, Some(hour(7.0)));
    assert!((leaf.longest_h - 2.0).abs() < 1e-9 && (leaf.waits_h - 2.0).abs() < 1e-9);
    let bare = day(Eats::Nothing);
    assert_eq!(bare.forage_until, Some(hour(7.0)));
    assert!((bare.longest_h - 3.0).abs() < 1e-9, "{bare:?}");
}

#[test]
fn while_it_is_out_on_leaf_it_does_not_wait_and_on_a_bare_paddock_it_does() {
    let day = |eats, now: f64| {
        let out = [out(4.0, None, eats)];
        real_day(&[hung(0.0, 2.0)], &out, &rate(), hour(now), Some(2.0))
    };
    let leaf = day(Eats::Grass, 12.0);
    assert!(leaf.waits_h.abs() < 1e-9 && leaf.longest_h.abs() < 1e-9);
    assert_eq!(leaf.forage_until, Some(hour(12.0)));
    assert_eq!(leaf.beside, RealVerdict::AsAccepted);
    // A wait that is over before it went out is over.
    let later = [out(6.0, None, Eats::Grass)];
    let later = real_day(&[hung(0.0, 2.0)], &later, &rate(), hour(12.0), None);
    assert_eq!(later.forage_until, Some(hour(12.0)));
    assert!((later.longest_h - 2.0).abs() < 1e-9 && later.waits_h.abs() < 1e-9);
    let bare = day(Eats::Nothing, 12.0);
    assert!((bare.waits_h - 8.0).abs() < 1e-9);
    assert_eq!(bare.beside, RealVerdict::FeedNow);
}

#[test]
fn what_began_before_the_first_net_counts_from_it_on() {
    let grass = [out(-3.0, Some(1.0), Eats::Grass)];
    let nets = [hung(0.0, 2.0)];
    let day = real_day(&nets, &grass, &rate(), hour(23.0), None);
    assert_eq!(day.forage_until, Some(hour(5.0)));
    assert!((day.longest_h - 18.0).abs() < 1e-9, "{day:?}");
}
