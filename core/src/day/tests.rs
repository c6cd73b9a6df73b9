//! The day in the trade's words, and the optimiser against trying everything.

use super::*;
use crate::units::{AsFed, BodyMass, DryFraction, DryMatter, LocalTime};
use proptest::prelude::*;

fn at(hour: u32, minute: u32) -> LocalTime {
    LocalTime::from_hms_opt(hour, minute, 0).unwrap()
}

fn fixed_rate(kg_per_h: f64) -> EatingRate {
    EatingRate {
        slow: kg_per_h,
        likely: kg_per_h,
        fast: kg_per_h,
        from: crate::sources::Provenance::new(),
    }
}

fn needs<'a>(visits: &'a [LocalTime], kg: f64, rate: &'a EatingRate) -> DayNeeds<'a> {
    DayNeeds {
        visits,
        forage: DryMatter::kg(kg),
        dry: DryFraction::percent(88.0).unwrap(),
        rate,
        most_at_once: None,
        eaten_within_h: None,
        aways: &[],
        straw_part: None,
    }
}

#[test]
fn two_equal_meals_of_loose_hay_leave_nine_and_a_half_hours() {
    // forage.md F58: 7.5 kg dry matter, loose, two equal meals.
    let rate = fixed_rate(1.5);
    let visits = [at(7, 0), at(19, 0)];
    let day = lay_out(&needs(&visits, 7.5, &rate)).unwrap();
    assert!((day.longest_h - 9.5).abs() < 0.05, "{}", day.longest_h);
    assert_eq!(day.verdict, GapVerdict::OverTheLine);
}

#[test]
fn three_small_nets_come_under_the_line() {
    // forage.md F59: 7.5 kg dry matter, 3.2 cm net, three equal meals.
    let rate = fixed_rate(0.9);
    let visits = [at(6, 0), at(14, 0), at(22, 0)];
    let day = lay_out(&needs(&visits, 7.5, &rate)).unwrap();
    assert!((day.longest_h - 5.2).abs() < 0.1);
    assert_eq!(day.verdict, GapVerdict::Care);
}

#[test]
fn the_long_night_gets_the_big_net() {
    let rate = fixed_rate(0.5);
    let visits = [at(6, 15), at(12, 0), at(17, 30), at(21, 30)];
    let day = lay_out(&needs(&visits, 5.6, &rate)).unwrap();
    let heaviest = day
        .hangings
        .iter()
        .max_by(|a, b| a.dry.partial_cmp(&b.dry).unwrap())
        .unwrap();
    assert_eq!(heaviest.visit, at(21, 30));
    let spread = day
        .gaps
        .iter()
        .map(|gap| gap.hours)
        .fold(f64::INFINITY, f64::min);
    assert!(day.longest_h - spread < 0.2, "gaps are level");
    assert!(day.longest_at_night);
}

#[test]
fn the_nets_add_up_to_the_day_and_are_whole_steps() {
    let rate = rate(BodyMass::kg(372.0), NetKind::SmallHoles);
    let visits = [at(6, 15), at(12, 0), at(17, 30), at(21, 30)];
    let day = lay_out(&needs(&visits, 5.6, &rate)).unwrap();
    let total: AsFed = day.hangings.iter().map(|hanging| hanging.as_fed).sum();
    let wanted = 5.6 / 0.88;
    assert!(total.to_kg() <= wanted && wanted - total.to_kg() < 0.05);
    for hanging in &day.hangings {
        let steps = hanging.as_fed.to_kg() / 0.05;
        assert!((steps - steps.round()).abs() < 1e-6);
    }
}

#[test]
fn soaked_hay_is_shared_so_that_it_can_be_eaten_in_time() {
    let rate = fixed_rate(0.4);
    let visits = [at(7, 0), at(19, 0)];
    let mut day = needs(&visits, 6.0, &rate);
    day.eaten_within_h = Some(10.0);
    let laid = lay_out(&day).unwrap();
    assert!(
        laid.hangings
            .iter()
            .all(|hanging| hanging.dry.to_kg() <= 4.0 + 1e-9)
    );
    day.eaten_within_h = Some(5.0);
    assert!(matches!(lay_out(&day), Err(DayError::CannotHang { .. })));
}

#[test]
fn mends_come_cheapest_first_and_each_helps() {
    let rate = rate(BodyMass::kg(300.0), NetKind::SmallHoles);
    let visits = [at(7, 0), at(18, 0)];
    let needs = needs(&visits, 4.5, &rate);
    let day = lay_out(&needs).unwrap();
    let found = mends(&needs, day.longest_h);
    assert!(matches!(found.first(), Some(Mend::DoubleNet { .. })));
    assert!(found.iter().all(|mend| mend.longest_h() < day.longest_h));
    assert!(
        found
            .iter()
            .any(|mend| matches!(mend, Mend::OneMoreVisit { .. }))
    );
}

#[test]
fn nobody_is_asked_to_get_up_for_one_more_visit() {
    let rate = rate(BodyMass::kg(300.0), NetKind::SmallHoles);
    let visits = [at(7, 0), at(18, 0)];
    let needs = needs(&visits, 4.5, &rate);
    let found = mends(&needs, lay_out(&needs).unwrap().longest_h);
    let visit = found.iter().find_map(|mend| match mend {
        Mend::OneMoreVisit { at, .. } => Some(*at),
        _ => None,
    });
    let feeder = found.iter().find_map(|mend| match mend {
        Mend::TimeRelease { at, .. } => Some(*at),
        _ => None,
    });
    assert_eq!(visit, Some(at(22, 0)));
    // A feeder opens in the middle of the night.
    assert_eq!(feeder, Some(at(0, 30)));
}

#[test]
fn a_day_without_visits_or_without_hay_is_refused() {
    let rate = fixed_rate(1.0);
    assert_eq!(lay_out(&needs(&[], 5.0, &rate)), Err(DayError::NoVisits));
    assert!(lay_out(&needs(&[at(7, 0)], f64::NAN, &rate)).is_err());
    assert!(lay_out(&needs(&[at(7, 0)], 0.0, &rate)).is_err());
}

/// The smallest longest gap over every way to share `units` equal parts over the visits.
fn by_trying_everything(
    visits: &[LocalTime],
    units: usize,
    unit: DryMatter,
    rate: f64,
    most: usize,
) -> f64 {
    fn go(
        visits: &[LocalTime],
        index: usize,
        left: usize,
        unit: DryMatter,
        rate: f64,
        most: usize,
        shares: &mut Vec<usize>,
    ) -> f64 {
        if index + 1 == visits.len() {
            if left > most {
                return f64::INFINITY;
            }
            shares.push(left);
            let hangings: Vec<Hanging> = visits
                .iter()
                .zip(shares.iter())
                .map(|(visit, count)| Hanging {
                    visit: *visit,
                    dry: unit * *count as f64,
                    as_fed: AsFed::ZERO,
                })
                .collect();
            let longest = gaps(&hangings, rate, &[])
                .iter()
                .map(|gap| gap.hours)
                .fold(0.0, f64::max);
            shares.pop();
            return longest;
        }
        (0..=left.min(most))
            .map(|count| {
                shares.push(count);
                let best = go(visits, index + 1, left - count, unit, rate, most, shares);
                shares.pop();
                best
            })
            .fold(f64::INFINITY, f64::min)
    }
    go(visits, 0, units, unit, rate, most, &mut Vec::new())
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(64))]

    /// No way of sharing whole parts beats the layout by more than the step of the scale is worth. A part is no smaller than
    /// the least net that is worth hanging, up to 1.76 kg an hour.
    #[test]
    fn trying_everything_finds_nothing_better(
        quarters in proptest::collection::btree_set(0u32..96, 1..5),
        units in 4usize..14,
        rate_dg in 3u32..18,
    ) {
        let visits: Vec<LocalTime> = quarters.iter().map(|q| at(q / 4, (q % 4) * 15)).collect();
        let rate = fixed_rate(f64::from(rate_dg) / 10.0);
        let unit = DryMatter::kg(0.44);
        let total = unit * units as f64;
        let day = lay_out(&needs(&visits, total.to_kg(), &rate)).unwrap();
        let brute = by_trying_everything(&visits, units, unit, rate.fast, units);
        // A step of 50 g at 88 % is 0.044 kg: at most that much time is lost by rounding, once a visit.
        let slack = 0.044 * visits.len() as f64 / rate.fast + 1e-9;
        prop_assert!(day.longest_h <= brute + slack, "{} > {}", day.longest_h, brute);
        let hung: f64 = day.hangings.iter().map(|hanging| hanging.dry.to_kg()).sum();
        prop_assert!(hung <= total.to_kg() + 1e-9 && total.to_kg() - hung < 0.044 + 1e-9);
    }

    /// One more visit never makes the day worse by more than a step.
    #[test]
    fn one_more_visit_never_hurts(
        quarters in proptest::collection::btree_set(0u32..96, 2..5),
        extra in 0u32..96,
        kg in 2.0f64..9.0,
    ) {
        let visits: Vec<LocalTime> = quarters.iter().map(|q| at(q / 4, (q % 4) * 15)).collect();
        let rate = fixed_rate(0.7);
        let before = lay_out(&needs(&visits, kg, &rate)).unwrap();
        let more: Vec<LocalTime> = visits.iter().copied().chain([at(extra / 4, (extra % 4) * 15)]).collect();
        let after = lay_out(&needs(&more, kg, &rate)).unwrap();
        let slack = 0.044 * more.len() as f64 / 0.7 + 1e-9;
        prop_assert!(after.longest_h <= before.longest_h + slack);
    }
}
