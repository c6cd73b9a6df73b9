//! The rest of a day that is laid out anew.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::day::{DayError, DayNeeds, EatingRate, Rest, lay_out, lay_out_rest};
use tussock_core::sources::Provenance;
use tussock_core::units::{AsFed, DryFraction, DryMatter, LocalTime};

/// Quarters of an hour in a day.
const DAY: usize = 96;
/// At 80 % dry a step of the scale is 0.04 kg.
const FAST: f64 = 0.32;
/// A slow eater takes twice as long.
const SLOW: f64 = 0.16;

fn at(quarter: usize) -> LocalTime {
    let quarter = u32::try_from(quarter).unwrap();
    LocalTime::from_hms_opt(quarter / 4, quarter % 4 * 15, 0).unwrap()
}

proptest! {
    #![proptest_config(config())]

    /// The rest of a day never hangs more than is left of the day's amount, hangs it at visits of the plan alone, and what
    /// finds no place is told: nothing is lost and nothing is made up.
    #[test]
    fn the_rest_of_a_day_never_exceeds_what_is_left_of_it(
        visits in proptest::collection::btree_set(0..DAY, 1..=5),
        now in 0..DAY,
        hangs in 0.0..4.0_f64,
        to_hang in 0.0..9.0_f64,
        most in proptest::option::of(0.3..5.0_f64),
        within in proptest::option::of(4.0..15.0_f64),
    ) {
        let visits: Vec<LocalTime> = visits.into_iter().map(at).collect();
        let left: Vec<LocalTime> = visits.iter().copied().filter(|visit| at(now) <= *visit).collect();
        let rate = EatingRate { slow: SLOW, likely: FAST, fast: FAST, from: Provenance::new() };
        let needs = DayNeeds {
            visits: &left,
            forage: DryMatter::kg(9.0),
            dry: DryFraction::percent(80.0).unwrap(),
            rate: &rate,
            most_at_once: most.map(AsFed::kg),
            eaten_within_h: within,
            aways: &[],
            straw_part: None,
        };
        let rest = Rest {
            now: at(now),
            hangs: DryMatter::kg(hangs),
            to_hang: DryMatter::kg(to_hang),
            tomorrow: visits[0],
        };
        let laid = lay_out_rest(&needs, &rest);
        if left.is_empty() {
            prop_assert_eq!(laid, Err(DayError::NoVisits));
            return Ok(());
        }
        let laid = laid.unwrap();
        let hung: f64 = laid.hangings.iter().map(|hanging| hanging.dry.to_kg()).sum();
        prop_assert!(hung <= to_hang + 1e-9, "{hung} of {to_hang}: {laid:?}");
        // A step of the scale is 0.04 kg of dry matter here.
        let told = hung + laid.over.to_kg();
        prop_assert!(to_hang - 0.04 - 1e-9 < told && told <= to_hang + 1e-9, "{told} of {to_hang}: {laid:?}");
        prop_assert!(laid.hangings.iter().all(|hanging| left.contains(&hanging.visit)));
        if let Some(most) = most {
            prop_assert!(laid.hangings.iter().all(|hanging| hanging.as_fed.to_kg() <= most + 1e-9));
        }
        prop_assert!((0.0..=48.0).contains(&laid.longest_h));
    }

    /// Laying out the rest of a day of which nothing was touched gives the plan: from its first visit on, with nothing
    /// hanging, no wait is longer than the plan's own, and all of it hangs.
    #[test]
    fn the_rest_of_an_untouched_day_is_the_plan(
        visits in proptest::collection::btree_set(0..DAY, 1..=5),
        steps in 10_u32..140,
    ) {
        let visits: Vec<LocalTime> = visits.into_iter().map(at).collect();
        let rate = EatingRate { slow: SLOW, likely: FAST, fast: FAST, from: Provenance::new() };
        let forage = DryMatter::kg(0.04 * f64::from(steps));
        let needs = DayNeeds {
            visits: &visits,
            forage,
            dry: DryFraction::percent(80.0).unwrap(),
            rate: &rate,
            most_at_once: None,
            eaten_within_h: None,
            aways: &[],
            straw_part: None,
        };
        let plan = lay_out(&needs).unwrap();
        let rest = Rest {
            now: visits[0],
            hangs: DryMatter::ZERO,
            to_hang: forage,
            tomorrow: visits[0],
        };
        let laid = lay_out_rest(&needs, &rest).unwrap();
        let hung: f64 = laid.hangings.iter().map(|hanging| hanging.dry.to_kg()).sum();
        prop_assert!((hung - forage.to_kg()).abs() < 1e-9, "{laid:?}");
        // Where the plan waits until its first visit, nothing is carried over that.
        let first = visits[0].signed_duration_since(LocalTime::MIN).num_minutes() as f64 / 60.0;
        let waits_for_it = plan.gaps.iter().any(|gap| {
            let off = (gap.from_hour + gap.hours - first).rem_euclid(24.0);
            off.min(24.0 - off) < 1e-6
        });
        if waits_for_it {
            prop_assert!(laid.longest_h <= plan.longest_h + 1e-5, "{} {laid:?}", plan.longest_h);
        }
    }
}
