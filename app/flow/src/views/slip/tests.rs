//! The slip from what an invented pony is given to something else.

use super::*;
use crate::views::balance::tests::{given, pony, typical};
use crate::words::{English, SlipWords};
use proptest::prelude::*;
use tussock_core::ration::{TypicalFood, typical_balancer};
use tussock_core::units::Currency;

fn priced(mut ration: DayRation, minor: f64) -> DayRation {
    for given in &mut ration.forages {
        given.price = Some(PricePerKg {
            minor,
            currency: Currency::from_code("GBP").unwrap(),
        });
    }
    ration
}

fn salt(kg: f64, price: Option<f64>) -> GivenFood {
    given(typical(TypicalFood::Salt), kg, price)
}

fn balancer(kg: f64, price: Option<f64>) -> GivenFood {
    given(typical_balancer(), kg, price)
}

fn hay_of(ration: &DayRation, times: f64) -> Vec<AsFed> {
    ration
        .forages
        .iter()
        .map(|given| given.as_fed * times)
        .collect()
}

fn found(slip: &Slip, food: TypicalFood) -> &Line {
    let is = |line: &&Line| matches!(&line.of, Of::Food(of) if of.profile == Some(food));
    slip.lines.iter().find(is).unwrap()
}

#[test]
fn out_in_less_and_same_stand_in_their_order_with_what_each_costs() {
    let pony = priced(pony(), 25.0);
    let bran = given(typical(TypicalFood::WheatBran), 0.2, Some(50.0));
    let now = pony.with(&hay_of(&pony, 1.0), vec![bran, salt(0.025, Some(40.0))]);
    let then = now.with(
        &hay_of(&now, 0.9),
        vec![salt(0.025, Some(40.0)), balancer(0.12, Some(200.0))],
    );
    let slip = slip(&now, &then);
    let changes: Vec<Change> = slip.lines.iter().map(|line| line.change).collect();
    assert_eq!(
        changes,
        [Change::Out, Change::In, Change::Less, Change::Same]
    );
    let words = English::default();
    let said = |food| {
        let line = found(&slip, food);
        [
            words.slip_of(&line.of),
            words.slip_amount(line),
            words.slip_cost(line),
        ]
    };
    assert_eq!(
        said(TypicalFood::WheatBran),
        ["Wheat bran", "200 g", "0.10 less"]
    );
    assert_eq!(
        said(TypicalFood::Balancer),
        ["Typical balancer", "120 g", "0.24 more"]
    );
    assert_eq!(said(TypicalFood::Salt), ["Salt", "25 g", "0.01"]);
    let less = &slip.lines[2];
    assert_eq!(words.slip_of(&less.of), "Grass hay, soaked");
    assert!(words.slip_amount(less).contains(" kg → "));
    assert!(words.slip_cost(less).ends_with(" less"));
    let sum = slip.a_day.unwrap();
    assert!((sum.now - now.cost().unwrap().minor).abs() < 1e-9);
    assert!((sum.in_a_month().then - 30.0 * sum.then).abs() < 1e-9);
    assert!(words.slip_sum(sum).ends_with(" GBP"));
    assert_eq!(words.slip_note(&slip), None);
}

#[test]
fn nothing_changes_between_a_ration_and_itself() {
    let pony = pony();
    let slip = slip(&pony, &pony);
    assert!(slip.is_same() && !slip.lines.is_empty());
    assert_eq!(
        English::default().slip_note(&slip).unwrap(),
        "Nothing changes."
    );
}

#[test]
fn a_missing_price_is_named_and_never_counted_as_nothing() {
    let pony = priced(pony(), 25.0);
    let now = pony.with(&hay_of(&pony, 1.0), Vec::new());
    let then = now.with(&hay_of(&now, 1.0), vec![salt(0.03, None)]);
    let slip = slip(&now, &then);
    assert_eq!(slip.a_day, None);
    let words = English::default();
    assert_eq!(words.slip_cost(found(&slip, TypicalFood::Salt)), "no price");
    assert_eq!(
        words.slip_note(&slip).unwrap(),
        "What it costs is not known: no price for Salt."
    );
}

#[test]
fn what_stands_twice_is_one_line() {
    let pony = pony();
    let now = pony.with(
        &hay_of(&pony, 1.0),
        vec![salt(0.02, None), salt(0.01, None)],
    );
    let then = now.with(&hay_of(&now, 1.0), vec![salt(0.03, None)]);
    let slip = slip(&now, &then);
    assert_eq!(found(&slip, TypicalFood::Salt).change, Change::Same);
}

proptest! {
    #[test]
    fn the_lines_add_up_to_the_sum_and_turn_round_with_the_slip(
        before in 0.0_f64..2.0,
        after in 0.0_f64..2.0,
        hay in 0.5_f64..1.5,
    ) {
        let pony = priced(pony(), 25.0);
        let now = pony.with(&hay_of(&pony, 1.0), vec![balancer(before, Some(150.0))]);
        let then = now.with(&hay_of(&now, hay), vec![balancer(after, Some(150.0))]);
        let there = slip(&now, &then);
        let sum = there.a_day.unwrap();
        let lines: f64 = there
            .lines
            .iter()
            .filter_map(|line| line.cost)
            .map(|[from, to]| to.minor - from.minor)
            .sum();
        // What is under a gram is no line.
        prop_assert!((lines - (sum.then - sum.now)).abs() < 0.5);
        let back = slip(&then, &now);
        prop_assert_eq!(back.lines.len(), there.lines.len());
        for line in &there.lines {
            let turned = match line.change {
                Change::Out => Change::In,
                Change::In => Change::Out,
                Change::More => Change::Less,
                Change::Less => Change::More,
                Change::Same => Change::Same,
            };
            prop_assert!(back.lines.iter().any(|other| other.of == line.of && other.change == turned));
        }
    }
}
