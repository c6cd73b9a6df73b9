//! The day of the plan in use: accepted once, told when worse.

use super::*;
use crate::views::day::{DayLine, DayOffer, alarms, day as day_of};
use crate::words::DayScreenWords;
use tussock_core::day::{GapVerdict, RealVerdict};
use tussock_core::log::bodies::NetHungV1;
use tussock_core::log::bodies::base::{FeedGrams, FeedWeight};
use tussock_core::units::{AsFed, Span};

fn in_use() -> Shelf {
    let shelf = small_pony();
    let act = seen(&shelf, NOW)
        .use_it(&RecordId("plan".into()))
        .unwrap()
        .unwrap();
    does(&shelf, &act, NOW)
}

/// Hours as whole minutes.
#[allow(
    clippy::cast_possible_truncation,
    reason = "hours of a few days in minutes"
)]
fn span(hours: f64) -> Span {
    Span::minutes((hours * 60.0) as i64)
}

/// 2026-05-05 at an hour.
fn at(hours: f64) -> Instant {
    NOW + span(hours - 8.0)
}

fn hung(shelf: &Shelf, id: &str, when: Instant, kg: f64) -> Shelf {
    let body = NetHungV1 {
        net: None,
        filling: None,
        lot: None,
        hay: Some(FeedWeight {
            g: FeedGrams::of(AsFed::kg(kg)).unwrap(),
            typed: None,
        }),
        soak: None,
        not_soaked: None,
        job: None,
    };
    let act = Act::Add(New {
        id: RecordId(id.into()),
        subject: Subject::animal(&super::id()),
        at: Some(when),
        known: Known::Seen,
        body: Body::NetHung(body),
    });
    does(shelf, &act, when)
}

#[test]
fn two_visits_are_over_the_line_and_accepted_once() {
    let shelf = in_use();
    let view = day_of(&shelf, &id(), NOW, &Utc).unwrap();
    let held = view.held.clone().unwrap();
    assert_eq!(held.layout.verdict, GapVerdict::OverTheLine);
    assert_eq!((held.accepted_h, view.first()), (None, DayOffer::Accept));
    assert!(!view.mends().is_empty());
    let accepted = does(&shelf, &view.accept().unwrap().unwrap(), NOW);
    let after = day_of(&accepted, &id(), NOW, &Utc).unwrap();
    assert_eq!(after.first(), DayOffer::WeighNets);
    let hours = after.held.unwrap().accepted_h.unwrap();
    assert!(held.layout.longest_h <= hours && hours < held.layout.longest_h + 0.02);
    // The next plan with the same wait does not ask again.
    let next = seen(&accepted, later(14))
        .use_it(&RecordId("next".into()))
        .unwrap()
        .unwrap();
    let next = does(&accepted, &next, later(14));
    let view = day_of(&next, &id(), later(14), &Utc).unwrap();
    assert_ne!(view.first(), DayOffer::Accept);
}

#[test]
fn the_lines_run_from_four_in_the_morning_with_every_wait_between() {
    let view = day_of(&in_use(), &id(), NOW, &Utc).unwrap();
    let nets = view
        .lines
        .iter()
        .filter(|line| matches!(line, DayLine::Net { .. }))
        .count();
    let waits = view.lines.len() - nets;
    assert_eq!((nets, waits), (2, 2));
    assert!(matches!(view.lines[0], DayLine::Net { .. }));
    let words = English::default();
    for line in &view.lines {
        assert!(!words.line_time(line).is_empty() && !words.line_what(line).is_empty());
        assert!(!words.line_stands(line).is_empty());
        assert!(!words.line_second(line, &Utc).is_empty());
    }
}

#[test]
fn it_is_told_only_when_worse_than_accepted_by_more_than_an_hour() {
    let shelf = in_use();
    let view = day_of(&shelf, &id(), NOW, &Utc).unwrap();
    assert!(
        view.alarm().is_none(),
        "nobody wrote down a net, and nothing is alarmed"
    );
    let accepted = does(&shelf, &view.accept().unwrap().unwrap(), NOW);
    let accepted_h = day_of(&accepted, &id(), NOW, &Utc)
        .unwrap()
        .held
        .unwrap()
        .accepted_h
        .unwrap();
    let fed = hung(&accepted, "hung", at(8.0), 0.5);
    let until = day_of(&fed, &id(), at(8.0), &Utc)
        .unwrap()
        .held
        .unwrap()
        .real
        .unwrap()
        .forage_until
        .unwrap();
    assert!(at(8.0) < until);
    let after = |hours: f64| {
        let now = until + span(hours);
        alarms(&fed, now, &Utc)
    };
    assert!(after(accepted_h).is_empty());
    let told = after(accepted_h + 1.1);
    assert_eq!(told.len(), 1);
    assert_eq!(told[0].2.beside, RealVerdict::FeedNow);
    let now = until + span(accepted_h + 1.1);
    let over = hung(&fed, "again", now, 1.0);
    let told = alarms(&over, now + Span::minutes(5), &Utc);
    assert!(matches!(told[0].2.beside, RealVerdict::Worse { by_h } if 1.0 < by_h));
}
