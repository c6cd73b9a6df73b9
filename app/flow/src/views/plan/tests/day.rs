//! The day of the plan in use: accepted once, told when worse.

use super::*;
use crate::views::day::{DayLine, DayOffer, DayView, alarms, day as day_of};
use crate::words::DayScreenWords;
use tussock_core::day::{GapVerdict, RealVerdict};
use tussock_core::log::bodies::NetHungV1;
use tussock_core::log::bodies::base::{FeedGrams, FeedWeight};
use tussock_core::units::{AsFed, Span};

fn own() -> tussock_core::round::Subject {
    tussock_core::round::Subject::Animal(id())
}

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
    let view = day_of(&shelf, &own(), NOW, &Utc).unwrap();
    let held = view.held.clone().unwrap();
    assert_eq!(held.layout.verdict, GapVerdict::OverTheLine);
    assert_eq!((held.accepted_h, view.first()), (None, DayOffer::Accept));
    assert!(!view.mends().is_empty());
    let accepted = does(&shelf, &view.accept().unwrap().unwrap(), NOW);
    let after = day_of(&accepted, &own(), NOW, &Utc).unwrap();
    assert_eq!(after.first(), DayOffer::WeighNets);
    let hours = after.held.unwrap().accepted_h.unwrap();
    assert!(held.layout.longest_h <= hours && hours < held.layout.longest_h + 0.02);
    // The next plan with the same wait does not ask again.
    let next = seen(&accepted, later(14))
        .use_it(&RecordId("next".into()))
        .unwrap()
        .unwrap();
    let next = does(&accepted, &next, later(14));
    let view = day_of(&next, &own(), later(14), &Utc).unwrap();
    assert_ne!(view.first(), DayOffer::Accept);
}

#[test]
fn the_lines_run_from_four_in_the_morning_with_every_wait_between() {
    let view = day_of(&in_use(), &own(), NOW, &Utc).unwrap();
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
    let view = day_of(&shelf, &own(), NOW, &Utc).unwrap();
    assert!(
        view.alarm().is_none(),
        "nobody wrote down a net, and nothing is alarmed"
    );
    let accepted = does(&shelf, &view.accept().unwrap().unwrap(), NOW);
    let accepted_h = day_of(&accepted, &own(), NOW, &Utc)
        .unwrap()
        .held
        .unwrap()
        .accepted_h
        .unwrap();
    let fed = hung(&accepted, "hung", at(8.0), 0.5);
    let until = day_of(&fed, &own(), at(8.0), &Utc)
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

/// Midnight of the first whole day of the plan.
fn midnight() -> Instant {
    at(24.0)
}

/// So long after the nth visit of that day, from 0.
fn past(view: &DayView, nth: usize, minutes: i64) -> Instant {
    let held = view.held.as_ref().unwrap();
    let visit = held.nets[nth].hanging.visit;
    let of_day = visit.signed_duration_since(LocalTime::MIN).num_minutes();
    midnight() + Span::minutes(of_day + minutes)
}

#[test]
fn a_missed_visit_lays_the_rest_of_today_out_anew_and_one_tap_hangs_it_so() {
    let words = English::default();
    let shelf = in_use();
    let before = day_of(&shelf, &own(), midnight(), &Utc).unwrap();
    assert_eq!((before.rest.clone(), before.said.clone()), (None, None));
    let now = past(&before, 0, 90);
    let view = day_of(&shelf, &own(), now, &Utc).unwrap();
    assert_eq!(view.first(), DayOffer::HangRest);
    let rest = view.rest.clone().unwrap();
    assert!(
        words.why_anew(rest.why[0]).contains("1 h 30 min late"),
        "{}",
        words.why_anew(rest.why[0])
    );
    let laid = view.laid().unwrap().clone();
    let said = words.rest_of_today(&laid.hangings);
    assert!(
        said.starts_with("Rest of today: hang ") && said.contains(" kg now, "),
        "{said}"
    );
    let leaves = words.rest_leaves(&laid);
    assert!(
        leaves[0].starts_with("Longest wait until tomorrow's first visit"),
        "{leaves:?}"
    );
    let plan = |shelf: &Shelf| shelf.newest(&Kind::Plan, id().as_str()).unwrap().clone();
    let after = does(&shelf, &view.hang_rest(&own(), "rest").unwrap(), now);
    assert_eq!(plan(&after), plan(&shelf), "the issued plan is frozen");
    let view = day_of(&after, &own(), now + Span::minutes(1), &Utc).unwrap();
    assert_eq!(
        (view.rest.clone(), view.first() == DayOffer::HangRest),
        (None, false)
    );
    assert_eq!(view.said.as_ref().unwrap().len(), laid.hangings.len());
    assert!(
        !view
            .lines
            .iter()
            .any(|line| matches!(line, DayLine::Wait { .. }))
    );
    // The round hangs these amounts today, and the plan's tomorrow.
    let hay = |shelf: &Shelf, nets: usize| {
        let today = crate::views::round::today(shelf, now, &Utc);
        let day = today
            .day
            .checked_add_days(chrono::Days::new(nets as u64))
            .unwrap();
        let of = crate::views::nets::nets_day(shelf, &today, id().as_str(), day).unwrap();
        of.nets
            .iter()
            .map(|net| net.hay.to_kg())
            .collect::<Vec<f64>>()
    };
    let kg: Vec<f64> = laid.hangings.iter().map(|of| of.as_fed.to_kg()).collect();
    assert_eq!(hay(&after, 0), kg);
    assert_eq!(hay(&after, 1), hay(&shelf, 1));
    let jobs = crate::views::round::today(&after, now, &Utc);
    let first = jobs
        .round
        .jobs
        .iter()
        .find(|job| job.kind == tussock_core::round::JobKind::HangNet);
    assert!((first.unwrap().amount.unwrap().to_kg() - kg[0]).abs() < 1e-9);
    // Tomorrow the plan holds again.
    let next = day_of(&after, &own(), midnight() + Span::hours(24), &Utc).unwrap();
    assert_eq!(next.said, None);
}

#[test]
fn a_net_of_unknown_weight_is_said_and_never_alarmed() {
    let words = English::default();
    let shelf = in_use();
    let body = NetHungV1 {
        net: None,
        filling: None,
        lot: None,
        hay: None,
        soak: None,
        not_soaked: None,
        job: None,
    };
    let act = Act::Add(New {
        id: RecordId("unknown".into()),
        subject: Subject::animal(&id()),
        at: Some(at(8.0)),
        known: Known::Seen,
        body: Body::NetHung(body),
    });
    let fed = does(&shelf, &act, at(8.0));
    let now = at(30.0);
    assert!(alarms(&fed, now, &Utc).is_empty());
    let view = day_of(&fed, &own(), now, &Utc).unwrap();
    let real = view.held.unwrap().real.unwrap();
    let said = words.has_forage(&real, now, &Utc);
    assert!(said.contains("not known from then on"), "{said}");
}

#[test]
fn the_days_mends_are_those_of_the_plans_own_screen() {
    // One that is soaked for, and one that may eat straw: each as on the screen of its plan.
    let mut yards = vec![small_pony()];
    for sort in [Sort::SmallPony, Sort::Pony, Sort::Horse] {
        for ribs in RIBS {
            let girth = if sort == Sort::Horse { "185" } else { "140" };
            yards.push(started(sort, girth, *ribs, Ever::No));
        }
    }
    let mut straw = false;
    for shelf in yards {
        let view = seen(&shelf, NOW);
        let Some(Ok(act)) = view.use_it(&RecordId("plan".into())) else {
            continue;
        };
        let draft = allowed(&view).planned().clone();
        let day = day_of(&does(&shelf, &act, NOW), &own(), NOW, &Utc).unwrap();
        let kinds = |mends: &[tussock_core::day::Mend]| {
            mends.iter().map(std::mem::discriminant).collect::<Vec<_>>()
        };
        assert_eq!(kinds(day.mends()), kinds(&draft.mends));
        straw |= day
            .mends()
            .iter()
            .any(|mend| matches!(mend, tussock_core::day::Mend::Straw { .. }));
    }
    assert!(straw);
}
