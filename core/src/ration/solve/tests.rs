//! Small problems whose answers are seen by eye or by trying everything, and what is refused.

use super::scaled::Scaled;
use super::simplex::End;
use super::tableau::Tableau;
use super::*;

const NO: f64 = f64::INFINITY;

fn rows(given: &[(&[f64], f64, f64)]) -> Vec<Row> {
    given
        .iter()
        .map(|(terms, lower, upper)| Row::new("row", terms.to_vec(), *lower, *upper))
        .collect()
}

fn problem(columns: Vec<Column>, given: &[(&[f64], f64, f64)]) -> Problem {
    Problem::new(columns, rows(given), None).unwrap()
}

fn food(cost: f64) -> Column {
    Column::new("food", cost)
}

#[track_caller]
fn solved(problem: &Problem) -> Solution {
    match cheapest(problem).unwrap() {
        Answer::Cheapest(solution) => solution,
        other => panic!("{other:?}"),
    }
}

fn values(solution: &Solution) -> Vec<f64> {
    solution.amounts.iter().map(|amount| amount.value).collect()
}

#[track_caller]
fn near(a: f64, b: f64) {
    assert!((a - b).abs() <= 1e-9 * b.abs().max(1.0), "{a}, not {b}");
}

/// The walk by the smallest index alone, which cannot go in a circle, comes to the same corner: an example that goes in one
/// by the steepest price (E. M. L. Beale 1955, from memory; least cost -1/20), a start at which nothing fits, and many limits
/// that meet in one point.
#[test]
fn the_smallest_index_comes_to_the_same_corner() {
    let beale: &[(&[f64], f64, f64)] = &[
        (&[0.25, -60.0, -0.04, 9.0], -NO, 0.0),
        (&[0.5, -90.0, -0.02, 3.0], -NO, 0.0),
        (&[0.0, 0.0, 1.0, 0.0], -NO, 1.0),
    ];
    let both: &[(&[f64], f64, f64)] = &[
        (&[4.0, 1.0, 2.0, 0.0], 8.0, NO),
        (&[1.0, 3.0, 0.0, 1.0], 6.0, 9.0),
        (&[1.0, 1.0, -1.0, -2.0], 0.0, 0.0),
    ];
    let met: &[(&[f64], f64, f64)] = &[
        (&[1.0, 1.0, 1.0, 1.0], 4.0, 4.0),
        (&[1.0, 2.0, 3.0, 4.0], 10.0, 10.0),
        (&[2.0, 3.0, 4.0, 5.0], 14.0, NO),
        (&[4.0, 3.0, 2.0, 1.0], -NO, 10.0),
        (&[1.0, -1.0, -1.0, 1.0], 0.0, 0.0),
    ];
    for (costs, rows) in [
        ([-0.75, 150.0, -0.02, 6.0], beale),
        ([3.0, 2.0, 1.0, -1.0], both),
        ([1.0, 3.0, 2.0, 5.0], met),
    ] {
        let problem = problem(costs.into_iter().map(food).collect(), rows);
        let scaled = Scaled::new(&problem);
        let mut careful = Tableau::new(&scaled);
        let end = careful.walk_patiently(0).unwrap();
        assert!(matches!(end, End::Best { .. }), "{end:?}");
        near(careful.cost() / scaled.cost_factor, solved(&problem).cost);
    }
    near(
        solved(&problem(
            [-0.75, 150.0, -0.02, 6.0].map(food).to_vec(),
            beale,
        ))
        .cost,
        -0.05,
    );
}

/// 1 and 4 g a kilogram at 1 and 3, at least 8 g: 2 kg of the second, 0.75 a gram; the first is 0.25 a kilogram too dear.
#[test]
fn the_cheaper_gram_wins_and_has_its_price() {
    let found = solved(&problem(
        vec![food(1.0), food(3.0)],
        &[(&[1.0, 4.0], 8.0, NO)],
    ));
    near(found.cost, 6.0);
    near(found.amounts[1].value, 2.0);
    near(found.sums[0].price, 0.75);
    near(found.amounts[0].price, 0.25);
    assert_eq!(found.sums[0].stands, Stands::AtLower);
    assert_eq!(found.used(), [1]);
}

/// A lock is kept and what it brings is counted: 1 kg of the dear one brings 4 of 8 g, the rest comes from the first.
#[test]
fn a_lock_is_kept() {
    let columns = vec![food(0.5), food(3.0).between(1.0, 1.0)];
    let found = solved(&problem(columns, &[(&[1.0, 4.0], 8.0, NO)]));
    assert_eq!(values(&found), [4.0, 1.0]);
    assert_eq!(found.amounts[1].stands, Stands::Locked);
    // One more kilogram of it saves 4 kg of the first, and costs 3.
    near(found.amounts[1].price, 1.0);
}

/// An upper limit has a price under nothing: a gain of 2 a kilogram stops at 5 kg.
#[test]
fn a_ceiling_has_a_price_too() {
    let found = solved(&problem(vec![food(-2.0)], &[(&[1.0], -NO, 5.0)]));
    near(found.cost, -10.0);
    near(found.sums[0].price, -2.0);
    assert_eq!(found.sums[0].stands, Stands::AtUpper);
}

/// A column without bounds may fall under nothing: x + y = 3, y at most 10, x costs 1.
#[test]
fn a_column_without_bounds_falls_under_nothing() {
    let columns = vec![food(1.0).between(-NO, NO), food(0.0).between(0.0, 10.0)];
    let found = solved(&problem(columns, &[(&[1.0, 1.0], 3.0, 3.0)]));
    assert_eq!(values(&found), [-7.0, 10.0]);
    assert_eq!(found.sums[0].stands, Stands::Locked);
    near(found.sums[0].price, 1.0);
}

#[test]
fn without_rows_each_stands_at_its_cheaper_bound() {
    let columns = vec![food(1.0).between(2.0, 3.0), food(-1.0).between(2.0, 3.0)];
    assert_eq!(values(&solved(&problem(columns, &[]))), [2.0, 3.0]);
}

#[test]
fn nothing_fits_and_no_end_are_told_apart() {
    let apart = problem(vec![food(1.0)], &[(&[1.0], 5.0, NO), (&[1.0], -NO, 4.0)]);
    assert_eq!(cheapest(&apart), Ok(Answer::NothingFits));
    let endless = problem(vec![food(1.0), food(-1.0)], &[(&[1.0, -1.0], -NO, 4.0)]);
    assert_eq!(cheapest(&endless), Ok(Answer::WithoutEnd { column: 1 }));
}

/// 0.3 kg scoops at 1, a powder at 9 a kilogram, at least 1 kg of both: four scoops cost 1.2, three and 0.1 kg cost 1.8.
#[test]
fn scoops_are_whole() {
    let columns = vec![food(1.0).in_doses(0.3), food(9.0)];
    let found = solved(&problem(columns, &[(&[1.0, 1.0], 1.0, NO)]));
    near(found.cost, 1.2);
    near(found.amounts[0].value, 1.2);
    // With 1.1 kg at most, four scoops are too many.
    let columns = vec![food(1.0).in_doses(0.3), food(9.0)];
    let found = solved(&problem(columns, &[(&[1.0, 1.0], 1.0, 1.1)]));
    near(found.cost, 1.8);
}

/// Two nutrients, a food for each at 1 and one for both at 3: two foods are cheaper, one food is the dear one.
fn two_or_one(most: Option<usize>) -> Problem {
    let columns = vec![food(1.0).bought(), food(1.0).bought(), food(3.0).bought()];
    let rows = rows(&[(&[1.0, 0.0, 1.0], 1.0, NO), (&[0.0, 1.0, 1.0], 1.0, NO)]);
    Problem::new(columns, rows, most).unwrap()
}

#[test]
fn so_many_foods_are_bought_at_most() {
    assert_eq!(values(&solved(&two_or_one(None))), [1.0, 1.0, 0.0]);
    assert_eq!(values(&solved(&two_or_one(Some(2)))), [1.0, 1.0, 0.0]);
    assert_eq!(values(&solved(&two_or_one(Some(1)))), [0.0, 0.0, 1.0]);
    assert_eq!(cheapest(&two_or_one(Some(0))), Ok(Answer::NothingFits));
    let Answer::Cheapest(one) = fewest(&two_or_one(None)).unwrap() else {
        panic!("one food fits");
    };
    assert_eq!(values(&one), [0.0, 0.0, 1.0]);
}

#[test]
fn the_next_sets_leave_something_out() {
    let problem = two_or_one(None);
    let next = next_sets(&problem, &solved(&problem), 3).unwrap();
    // Without the first, the third brings both nutrients; the same without the second; no set is left without all.
    assert_eq!(
        next.iter().map(values).collect::<Vec<_>>(),
        [[0.0, 0.0, 1.0]]
    );
}

/// At least 10 g, at most 2 kg of a food of 4 g: 2 g are missing, and any of three changes would mend it.
#[test]
fn the_smallest_shortfall_and_what_mends_it() {
    let mut columns = vec![food(1.0).between(0.0, 2.0), food(5.0).between(0.0, 0.0)];
    columns[1].scale = 4.0;
    let problem = problem(columns, &[(&[4.0, 2.0], 10.0, NO), (&[1.0, 0.0], -NO, 3.0)]);
    assert_eq!(cheapest(&problem), Ok(Answer::NothingFits));
    let short = shortfall(&problem).unwrap();
    assert_eq!(short.amounts, [2.0, 0.0]);
    near(short.cost, 2.0);
    near(short.total, 0.2);
    let [missing] = short.missing[..] else {
        panic!("{short:?}");
    };
    assert_eq!((missing.row, missing.side), (0, Side::Lower));
    near(missing.by, 2.0);
    let mends: Vec<(Mend, f64)> = short.mends.iter().map(|m| (m.mend, m.to)).collect();
    let (column, upper) = (
        |column| Mend::Column {
            column,
            side: Side::Upper,
        },
        Side::Lower,
    );
    assert_eq!(
        mends,
        [
            (
                Mend::Row {
                    row: 0,
                    side: upper
                },
                8.0
            ),
            (column(1), 1.0),
            (column(0), 2.5),
        ]
    );
}

#[test]
fn more_foods_may_be_what_mends_it() {
    let short = shortfall(&two_or_one(Some(0))).unwrap();
    near(short.total, 2.0);
    let more = short.mends.iter().find(|m| m.mend == Mend::Bought);
    assert_eq!(more.map(|m| m.to), Some(1.0));
}

#[test]
fn what_cannot_be_is_refused_by_name() {
    let error =
        |columns: Vec<Column>, rows: Vec<Row>| Problem::new(columns, rows, None).unwrap_err();
    let one = || vec![food(1.0)];
    assert!(
        matches!(error(vec![], vec![]), SolveError::OutOfRange { name: None, error } if error.bounds.field == "columns")
    );
    for (column, field) in [
        (food(f64::NAN), "cost"),
        (food(1e10), "cost"),
        (food(1.0).between(f64::NAN, 1.0), "lower"),
        (food(1.0).between(NO, NO), "lower"),
        (food(1.0).between(-NO, -NO), "upper"),
        (food(1.0).in_doses(0.0), "dose"),
        (
            Column {
                scale: -1.0,
                ..food(1.0)
            },
            "scale",
        ),
    ] {
        match error(vec![column], vec![]) {
            SolveError::OutOfRange { name, error } => {
                assert_eq!((name.as_deref(), error.bounds.field), (Some("food"), field));
            }
            other => panic!("{field}: {other:?}"),
        }
    }
    assert!(matches!(
        error(vec![food(1.0).between(2.0, 1.0)], vec![]),
        SolveError::Crossed { .. }
    ));
    assert!(matches!(
        error(vec![food(1.0).between(0.1, 0.2).in_doses(0.3)], vec![]),
        SolveError::NoWholeDose { .. }
    ));
    assert!(matches!(
        error(one(), rows(&[(&[1.0, 1.0], 0.0, 1.0)])),
        SolveError::Shape {
            given: 2,
            columns: 1,
            ..
        }
    ));
    assert!(matches!(
        error(one(), rows(&[(&[f64::INFINITY], 0.0, 1.0)])),
        SolveError::OutOfRange { .. }
    ));
    assert!(matches!(
        error(one(), rows(&[(&[1.0], 2.0, 1.0)])),
        SolveError::Crossed { .. }
    ));
}
