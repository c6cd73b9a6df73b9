//! Shadow prices against what the cost does when a limit is moved.
//!
//! The least cost bends upwards as a limit moves (Dantzig, Linear Programming and Extensions, 1963), so the price is never
//! under the change a unit on the lower side, and never over that on the upper side, however far the limit is moved; where
//! both sides agree it is both.

use crate::rations::{Kind, kind, ration};
use tussock_core::ration::solve::{Answer, Problem, Stands, cheapest};

/// The least cost with one limit of a row moved by `by`; none where nothing fits.
fn moved(problem: &Problem, row: usize, at_lower: bool, by: f64) -> Option<f64> {
    let mut rows = problem.rows().to_vec();
    let limit = &mut rows[row];
    if at_lower {
        limit.lower += by;
        // A row with one limit only moves whole.
        limit.upper = limit.upper.max(limit.lower);
    } else {
        limit.upper += by;
        limit.lower = limit.lower.min(limit.upper);
    }
    let problem =
        Problem::new(problem.columns().to_vec(), rows, None).expect("it was let in before");
    match cheapest(&problem) {
        Ok(Answer::Cheapest(solution)) => Some(solution.cost),
        Ok(Answer::NothingFits) => None,
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_price_lies_between_what_either_side_costs() {
    let (mut agreed, mut apart, mut one_sided) = (0, 0, 0);
    for seed in (0..1000).filter(|seed| matches!(kind(*seed), Kind::Feasible | Kind::Degenerate)) {
        let problem = ration(seed);
        let Ok(Answer::Cheapest(found)) = cheapest(&problem) else {
            panic!("{seed} has an answer");
        };
        for (i, sum) in found.sums.iter().enumerate() {
            if sum.stands == Stands::Between || sum.stands == Stands::Locked {
                assert!(
                    sum.stands == Stands::Locked || sum.price.abs() <= 0.0,
                    "{seed} row {i}: nothing holds it, and it has a price"
                );
                continue;
            }
            let at_lower = sum.stands == Stands::AtLower;
            assert!(
                if at_lower {
                    sum.price >= 0.0
                } else {
                    sum.price <= 0.0
                },
                "{seed} row {i}: a price on the wrong side"
            );
            let limit = if at_lower {
                problem.rows()[i].lower
            } else {
                problem.rows()[i].upper
            };
            let step = limit.abs().max(1.0) / 1024.0 / 1024.0;
            let up = moved(&problem, i, at_lower, step).map(|cost| (cost - found.cost) / step);
            let down = moved(&problem, i, at_lower, -step).map(|cost| (found.cost - cost) / step);
            // Two costs, each known to 1e-9 or better of itself, over one step.
            let rounding = 1e-11 * found.cost.abs().max(1.0) / step + 1e-7 * sum.price.abs();
            if let Some(up) = up {
                assert!(
                    sum.price <= up + rounding,
                    "{seed} row {i}: {} over {up}",
                    sum.price
                );
            }
            if let Some(down) = down {
                assert!(
                    sum.price >= down - rounding,
                    "{seed} row {i}: {} under {down}",
                    sum.price
                );
            }
            match (up, down) {
                (Some(up), Some(down)) if (up - down).abs() <= rounding => {
                    agreed += 1;
                    assert!((sum.price - up).abs() <= 2.0 * rounding, "{seed} row {i}");
                }
                (Some(_), Some(_)) => apart += 1,
                _ => one_sided += 1,
            }
        }
    }
    println!(
        "both sides agree at {agreed} limits, not at {apart}, one side alone fits at {one_sided}"
    );
    assert!(agreed > 500 && apart > 50 && one_sided > 50);
}
