//! How often weight alone rings the vet for nothing, and how soon it rings when it must.
//!
//! The owner does what the tool asks: tapes once a week, and again when it says to measure again.

use crate::herd::{Chance, animal, fit, tape};
use tussock_core::animal::Kind;
use tussock_core::progress::{Alarm, Trend, Weighing};

/// What a run of weekly checks came to.
struct Checks {
    /// The checks in which the vet was rung.
    rung: Vec<usize>,
    /// The checks in which it was measured again.
    again: usize,
    /// The checks in which feeding more was asked.
    more: usize,
}

/// Weekly checks of a pony that loses so many percent a week, after a baseline in week 0. `rings` decides on the alarms.
fn checks(
    seed: u64,
    percent: f64,
    weeks: usize,
    follow_baseline: bool,
    rings: &dyn Fn(&Trend, &[Alarm]) -> bool,
) -> Checks {
    let mut chance = Chance::new(seed);
    let pony = animal(Kind::Pony);
    let mut truth = 300.0;
    let mut weighings: Vec<Weighing> = Vec::new();
    let mut found = Checks {
        rung: Vec::new(),
        again: 0,
        more: 0,
    };
    for week in 0..=weeks {
        if week > 0 {
            truth *= 1.0 - percent / 100.0;
        }
        let on = i64::try_from(week).unwrap() * 7;
        for number in 0..4 {
            let read = truth * (1.0 + chance.normal(0.015));
            weighings.push(tape(on, read, "Ann", number));
            let trend = fit(&weighings, &[], on);
            let alarms = trend.alarms(&pony);
            if number == 0 && week > 0 {
                found.more +=
                    usize::from(alarms.iter().any(|a| matches!(a, Alarm::FeedMore { .. })));
            }
            if week > 0 && rings(&trend, &alarms) {
                found.rung.push(week);
                break;
            }
            let asks = alarms.iter().any(|a| matches!(a, Alarm::MeasureAgain(_)));
            if !asks || (week == 0 && !follow_baseline) {
                break;
            }
            found.again += usize::from(number == 0 && week > 0);
        }
    }
    found
}

fn rung(_: &Trend, alarms: &[Alarm]) -> bool {
    alarms.iter().any(|a| matches!(a, Alarm::RingVet { .. }))
}

/// False rings a week, and the part caught by the third check.
fn both(
    animals: u64,
    weeks: usize,
    baseline: bool,
    rings: &dyn Fn(&Trend, &[Alarm]) -> bool,
) -> (f64, f64, f64, f64) {
    let (mut rung, mut again, mut more, mut caught) = (0, 0, 0, 0);
    for seed in 0..animals {
        let steady = checks(seed, 0.75, weeks, baseline, rings);
        rung += steady.rung.len();
        again += steady.again;
        more += steady.more;
        let fast = checks(seed + 1_000_000, 2.3, 3, baseline, rings);
        caught += usize::from(!fast.rung.is_empty());
    }
    let all = animals as f64;
    let each = all * weeks as f64;
    (
        rung as f64 / each,
        caught as f64 / all,
        again as f64 / each,
        more as f64 / each,
    )
}

#[test]
fn a_steady_loss_rings_for_nothing_in_under_one_week_in_a_hundred_and_a_fast_one_is_caught_by_the_third()
 {
    let (falsely, caught, again, more) = both(400, 16, true, &rung);
    println!(
        "0.75 % a week, taped weekly, 16 weeks: rung {falsely:.4} of weeks, measured again {again:.3}, feed more {more:.4}"
    );
    println!("2.3 % a week: caught by the third weekly check {caught:.3}");
    assert!(falsely < 0.01, "rung in {falsely:.4} of weeks");
    assert!(caught >= 0.9, "caught {caught:.3}");
}

/// The first chance from 5 in 10 to 95 in 100 at which the vet would be rung, and what each costs.
#[test]
fn what_another_chance_or_a_baseline_of_one_reading_would_cost() {
    println!("chance  baseline  rung a week at 0.75 %  caught by the third at 2.3 %");
    let mut curve = Vec::new();
    for at in [0.5, 0.6, 0.7, 0.8, 0.9, 0.95] {
        for twice in [true, false] {
            let rings = |trend: &Trend, _: &[Alarm]| {
                trend
                    .chance_too_fast_today()
                    .is_some_and(|chance| chance >= at)
            };
            let (falsely, caught, _, _) = both(150, 16, twice, &rings);
            let baseline = if twice { "twice" } else { "once" };
            println!("{at:6.2}  {baseline:8}  {falsely:20.4}  {caught:10.3}");
            curve.push((twice, falsely, caught));
        }
    }
    // A higher chance rings less, for nothing and for something.
    for twice in [true, false] {
        let own: Vec<_> = curve.iter().filter(|row| row.0 == twice).collect();
        assert!(
            own.windows(2)
                .all(|pair| pair[1].1 <= pair[0].1 && pair[1].2 <= pair[0].2)
        );
    }
}
