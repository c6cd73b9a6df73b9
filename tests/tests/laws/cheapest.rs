//! The cheapest ration, whatever the problem: nothing that fits is cheaper, units and order do not matter, a tighter limit
//! never makes it cheaper, the prices add up to the cost, the same problem has the same answer, and nothing panics.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::ration::solve::{Answer, Column, Problem, Row, cheapest, shortfall};

/// A problem around amounts that fit it, with decimals as labels have them, and those amounts.
#[derive(Clone, Debug)]
struct Made {
    problem: Problem,
    fits: Vec<f64>,
}

/// A decimal number of thousandths.
fn thousandths(range: std::ops::Range<i32>) -> impl Strategy<Value = f64> {
    range.prop_map(|n| f64::from(n) / 1000.0)
}

fn column() -> impl Strategy<Value = (Column, f64)> {
    let dose = prop_oneof![3 => Just(None), 1 => thousandths(5..500).prop_map(Some)];
    (
        thousandths(1..4000),
        0_i32..12,
        dose,
        any::<bool>(),
        thousandths(0..3000),
        any::<bool>(),
    )
        .prop_map(|(cost, times, dose, ends, room, bought)| {
            let step = dose.unwrap_or(0.173);
            let fits = f64::from(times) * step;
            let upper = if ends { fits + room } else { f64::INFINITY };
            let column = Column {
                dose,
                bought,
                ..Column::new("food", cost).between(0.0, upper)
            };
            (column, fits)
        })
}

fn made() -> impl Strategy<Value = Made> {
    made_with(0..7)
}

fn made_with(rows: std::ops::Range<usize>) -> impl Strategy<Value = Made> {
    (1_usize..8, rows).prop_flat_map(|(columns, rows)| {
        let size = prop_oneof![Just(0.001), Just(1.0), Just(100.0)];
        let row = (
            proptest::collection::vec(thousandths(-1000..9000), columns),
            size,
            thousandths(0..500),
            0_u8..3,
        );
        (
            proptest::collection::vec(column(), columns),
            proptest::collection::vec(row, rows),
        )
            .prop_map(|(columns, rows)| {
                let (columns, fits): (Vec<Column>, Vec<f64>) = columns.into_iter().unzip();
                let rows = rows
                    .into_iter()
                    .map(|(terms, size, room, shape)| {
                        let terms: Vec<f64> = terms.iter().map(|t| t * size).collect();
                        let sum: f64 = terms.iter().zip(&fits).map(|(t, x)| t * x).sum();
                        let room = room * sum.abs().max(size);
                        let lower = if shape == 1 {
                            f64::NEG_INFINITY
                        } else {
                            sum - room
                        };
                        let upper = if shape == 0 {
                            f64::INFINITY
                        } else {
                            sum + room
                        };
                        Row::new("limit", terms, lower, upper)
                    })
                    .collect();
                let used = columns.iter().zip(&fits);
                let most = used.filter(|(c, x)| c.bought && **x > 0.0).count();
                let problem = Problem::new(columns, rows, Some(most)).unwrap();
                Made { problem, fits }
            })
    })
}

fn cost(problem: &Problem) -> f64 {
    match cheapest(problem) {
        Ok(Answer::Cheapest(solution)) => solution.cost,
        other => panic!("{other:?}"),
    }
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-8 * a.abs().max(b.abs()).max(1e-3)
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn nothing_that_fits_is_cheaper(made in made()) {
        let known: f64 = made.problem.columns().iter().zip(&made.fits).map(|(c, x)| c.cost * x).sum();
        let Ok(Answer::Cheapest(found)) = cheapest(&made.problem) else {
            panic!("amounts that fit are known");
        };
        prop_assert!(found.cost <= known + 1e-9 * known.max(1.0));
        prop_assert!(found.certificate.least <= found.cost);
        prop_assert!(near(found.certificate.least, found.cost));
        // What a price says, each limit and bound that holds it says: together they are the cost.
        let sums = found.sums.iter().map(|sum| sum.price * sum.value);
        let amounts = found.amounts.iter().map(|amount| amount.price * amount.value);
        prop_assert!(near(sums.chain(amounts).sum(), found.cost));
        prop_assert_eq!(cheapest(&made.problem), Ok(Answer::Cheapest(found)), "the same again");
    }

    #[test]
    fn units_do_not_matter(made in made(), kg in 1_u32..2000, g in 1_u32..2000, coins in 1_u32..2000) {
        let (kg, g, coins) = (f64::from(kg) / 64.0, f64::from(g) / 64.0, f64::from(coins) / 64.0);
        let columns = made.problem.columns().iter().map(|c| Column {
            lower: c.lower * kg,
            upper: c.upper * kg,
            cost: c.cost * coins / kg,
            dose: c.dose.map(|dose| dose * kg),
            ..c.clone()
        });
        let rows = made.problem.rows().iter().map(|r| Row {
            terms: r.terms.iter().map(|t| t * g / kg).collect(),
            lower: r.lower * g,
            upper: r.upper * g,
            ..r.clone()
        });
        let other = Problem::new(columns.collect(), rows.collect(), made.problem.at_most_bought()).unwrap();
        let (one, other) = (cost(&made.problem) * coins, cost(&other));
        prop_assert!(near(one, other), "{one} and {other}");
    }

    #[test]
    fn order_does_not_matter(made in made()) {
        let columns = made.problem.columns().iter().rev().cloned();
        let rows = made.problem.rows().iter().rev().map(|r| Row {
            terms: r.terms.iter().rev().copied().collect(),
            ..r.clone()
        });
        let turned = Problem::new(columns.collect(), rows.collect(), made.problem.at_most_bought()).unwrap();
        let (one, other) = (cost(&made.problem), cost(&turned));
        prop_assert!(near(one, other), "{one} and {other}");
    }

    #[test]
    fn a_tighter_limit_never_makes_it_cheaper(made in made_with(1..7), at in any::<prop::sample::Index>(), by in 0.0_f64..0.3) {
        let mut rows = made.problem.rows().to_vec();
        let row = at.get_mut(&mut rows);
        let tighter = row.lower + by * row.scale;
        if row.lower.is_finite() && tighter <= row.upper {
            row.lower = tighter;
        } else {
            row.upper = row.lower.max(row.upper - by * row.scale);
        }
        let most = made.problem.at_most_bought();
        let tighter = Problem::new(made.problem.columns().to_vec(), rows, most).unwrap();
        match cheapest(&tighter).unwrap() {
            Answer::Cheapest(found) => {
                let before = cost(&made.problem);
                prop_assert!(found.cost >= before - 1e-9 * before.max(1.0));
                prop_assert!(shortfall(&tighter).unwrap().total <= 1e-9);
            }
            Answer::NothingFits => prop_assert!(shortfall(&tighter).unwrap().total > 0.0),
            other => prop_assert!(false, "{:?}", other),
        }
    }

    #[test]
    fn any_numbers_are_refused_or_answered(
        numbers in proptest::collection::vec(any::<f64>(), 12),
        small in proptest::collection::vec(-3_i8..4, 24),
    ) {
        // Any doubles at all at the door, and small whole numbers, full of ties, behind it.
        let column = |k: usize| Column::new("x", numbers[k]).between(numbers[k + 1], numbers[k + 2]);
        let row = Row::new("r", vec![numbers[9], numbers[10]], numbers[11], numbers[8]);
        if let Ok(problem) = Problem::new(vec![column(0), column(4)], vec![row], None) {
            drop(cheapest(&problem));
        }
        let whole = |k: usize| f64::from(small[k]);
        let columns = (0..4).map(|k| Column::new("x", whole(k)).between(0.0, if k == 0 { f64::INFINITY } else { 2.0 }));
        let rows = (1..5).map(|k| {
            let terms = (0..4).map(|j| whole(4 * k + j)).collect();
            Row::new("r", terms, whole(20 + k % 4).min(whole(20)), whole(20 + k % 4).max(whole(20)))
        });
        let problem = Problem::new(columns.collect(), rows.collect(), None).unwrap();
        let answer = cheapest(&problem);
        prop_assert!(answer.is_ok(), "{:?}", answer);
    }
}
