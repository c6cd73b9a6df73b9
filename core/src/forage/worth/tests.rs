//! The three ways, their break-even, and what is refused.

use super::*;

fn euro(minor: i64) -> Money {
    Money {
        minor,
        currency: Currency::from_code("EUR").unwrap(),
    }
}

fn asked() -> WorthFor {
    let dry = DryFraction::percent(88.0).unwrap();
    WorthFor {
        batch: AsFed::kg(1200.0),
        a_day: AsFed::kg(6.0),
        dry,
        believed: Belief::percent(10.0, 3.0),
        limit: ShareOfDm::percent(10.0),
        test: euro(4_500),
        hay: Some(Price::Tonne(euro(18_000))),
        tested: Some(TestedPrice::Sold(Price::Tonne(euro(30_000)), dry)),
        instead: Otherwise::Saved,
        soak_minutes: 15.0,
        hour: Some(euro(1_200)),
        washed_out: Ends::new(0.03, 0.06, 0.09),
        soaking_is_enough: true,
    }
}

#[test]
fn two_hundred_days_of_soaking_cost_more_than_a_test() {
    let worth = worth_of_test(&asked()).unwrap();
    assert!((worth.days - 200.0).abs() < 1e-9);
    // 15 min at 12.00 an hour, and 6 % of 5.28 kg of dry matter made good at 0.2045 a kg.
    let a_day = 300.0 + 5.28 * (0.06 / 0.94) * (18_000.0 / 880.0);
    assert!((worth.soaking.minor - 200.0 * a_day).abs() < 1e-6);
    assert!((worth.soaking.hours - 50.0).abs() < 1e-9);
    // 120.00 a tonne more.
    assert!((worth.buying.unwrap().minor - 200.0 * 72.0).abs() < 1e-6);
    assert_eq!(worth.branches[2].does, Doing::BuyTested);
}

#[test]
fn at_the_break_even_the_test_costs_as_much_as_the_cheaper_way() {
    for tested in [asked().tested, None] {
        let mut of = asked();
        of.tested = tested;
        let from = worth_of_test(&of).unwrap().pays_from.unwrap();
        of.batch = from.hay;
        let at = worth_of_test(&of).unwrap();
        let other = at.buying.map_or(at.soaking.minor, |buying| {
            buying.minor.min(at.soaking.minor)
        });
        assert!((at.testing.minor - other).abs() < 1e-6);
        assert!(at.saves.abs() < 1e-6);
        assert!((at.days - from.days).abs() < 1e-9);
        of.batch = from.hay * 0.9;
        assert_ne!(worth_of_test(&of).unwrap().cheapest, Way::Test);
        of.batch = from.hay * 1.1;
        assert_eq!(worth_of_test(&of).unwrap().cheapest, Way::Test);
    }
}

#[test]
fn a_test_never_pays_where_it_would_ask_for_hay_that_costs_more_than_it_saves() {
    let mut of = asked();
    of.hour = None;
    of.soaking_is_enough = false;
    of.believed = Belief::percent(16.0, 2.0);
    let worth = worth_of_test(&of).unwrap();
    assert_eq!(worth.pays_from, None);
    assert_eq!(worth.cheapest, Way::Soak);
    assert!(worth.saves < 0.0);
}

#[test]
fn no_value_of_time_is_an_answer_and_the_hours_are_still_shown() {
    let mut of = asked();
    of.hour = None;
    let worth = worth_of_test(&of).unwrap();
    assert!(worth.soaking.minor < 200.0 * 10.0);
    assert!((worth.soaking.hours - 50.0).abs() < 1e-9);
    assert!(worth.notes.contains(&WorthNote::TimeHasNoPrice));
}

#[test]
fn hay_over_the_limit_is_replaced_where_soaking_is_not_enough() {
    let mut of = asked();
    of.hour = None;
    assert_eq!(worth_of_test(&of).unwrap().branches[2].does, Doing::Soak);
    of.soaking_is_enough = false;
    let strict = worth_of_test(&of).unwrap();
    assert_eq!(strict.branches[2].does, Doing::BuyTested);
    assert!(strict.notes.contains(&WorthNote::SoakingSettlesNothing));
    of.tested = None;
    let worth = worth_of_test(&of).unwrap();
    assert_eq!(worth.branches[2].does, Doing::Soak);
    assert!(worth.notes.contains(&WorthNote::OverIsSoaked));
    assert_eq!(worth.buying, None);
}

#[test]
fn prices_of_two_currencies_are_refused() {
    let mut of = asked();
    of.hour = Some(Money {
        minor: 1_000,
        currency: Currency::from_code("GBP").unwrap(),
    });
    assert!(matches!(
        worth_of_test(&of),
        Err(ForageError::Money(MoneyError::TwoCurrencies { .. }))
    ));
}

#[test]
fn what_cannot_be_is_refused_with_its_field() {
    for change in [
        |of: &mut WorthFor| of.batch = AsFed::ZERO,
        |of: &mut WorthFor| of.a_day = AsFed::ZERO,
        |of: &mut WorthFor| of.soak_minutes = -1.0,
        |of: &mut WorthFor| of.washed_out = Ends::exactly(1.0),
        |of: &mut WorthFor| of.test.minor = -1,
    ] {
        let mut of = asked();
        change(&mut of);
        assert!(matches!(
            worth_of_test(&of),
            Err(ForageError::OutOfRange(_))
        ));
    }
}
