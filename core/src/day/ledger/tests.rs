//! Servings, sums and levels.

use super::*;

fn serving(day: u32, kg: Option<f64>, left: LeftOver) -> Serving {
    Serving {
        day: LocalDate::from_ymd_opt(2026, 5, day).unwrap(),
        from: Source::Forage(None),
        planned: Some(DryMatter::kg(2.0)),
        offered: kg.map(|kg| Ends::exactly(DryMatter::kg(kg))),
        known: HowKnown::Seen,
        left,
    }
}

fn kg(ends: Option<Ends<DryMatter>>) -> f64 {
    ends.unwrap().likely.to_kg()
}

#[test]
fn what_is_left_is_taken_off_once_and_never_more_than_hung() {
    assert!(
        (kg(serving(1, Some(2.0), LeftOver::Part(Ends::exactly(0.25))).eaten()) - 1.5).abs()
            < 1e-12
    );
    assert!(
        (kg(serving(1, Some(2.0), LeftOver::Dry(DryMatter::kg(0.5))).eaten()) - 1.5).abs() < 1e-12
    );
    assert!(kg(serving(1, Some(2.0), LeftOver::Dry(DryMatter::kg(3.0))).eaten()).abs() < 1e-12);
    assert!((kg(serving(1, Some(2.0), LeftOver::NotSaid).eaten()) - 2.0).abs() < 1e-12);
}

#[test]
fn wet_hay_without_the_wet_weight_of_its_net_says_nothing() {
    let serving = serving(1, Some(2.0), LeftOver::CannotTell);
    assert_eq!(serving.eaten(), None);
    assert_eq!(serving.how_left(), HowKnown::NotKnown);
    assert!(Sum::of([&serving], Serving::eaten).at_least);
}

#[test]
fn an_amount_that_nobody_knows_makes_the_sum_at_least() {
    let known = serving(1, Some(2.0), LeftOver::NotSaid);
    let unknown = serving(2, None, LeftOver::NotSaid);
    let sum = Sum::of([&known, &unknown], Serving::eaten);
    assert!(sum.at_least);
    assert!((sum.dry.likely.to_kg() - 2.0).abs() < 1e-12);
    let shares = Shares::of([&known, &unknown], Serving::how_offered).unwrap();
    assert!((shares.seen - 0.5).abs() < 1e-12);
    assert!((shares.not_known - 0.5).abs() < 1e-12);
}

#[test]
fn a_day_of_which_nobody_said_anything_is_no_fast() {
    let blank = |day| DayOfLedger {
        day: LocalDate::from_ymd_opt(2026, 5, day).unwrap(),
        has_plan: false,
        servings: Vec::new(),
        to_come: DryMatter::ZERO,
        runs: false,
    };
    let ledger = Ledger {
        days: vec![blank(1), blank(2)],
    };
    assert_eq!(ledger.level(BodyMass::kg(300.0)), None);
    assert!(ledger.totals().eaten.at_least);
    assert_eq!(ledger.totals().planned, None);
}

#[test]
fn a_share_of_a_group_is_a_band() {
    let part = Ends::new(0.35, 0.5, 0.7);
    let share = serving(1, Some(4.0), LeftOver::Part(Ends::exactly(0.5))).share(Some(part));
    let eaten = share.eaten().unwrap();
    assert!((eaten.least.to_kg() - 0.7).abs() < 1e-12);
    assert!((eaten.likely.to_kg() - 1.0).abs() < 1e-12);
    assert!((eaten.most.to_kg() - 1.4).abs() < 1e-12);
    assert_eq!(
        serving(1, Some(4.0), LeftOver::NotSaid).share(None).offered,
        None
    );
}
