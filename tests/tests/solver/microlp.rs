//! The same rations by the crate microlp 0.7, which runs here.

use crate::rations::{COUNT, ration};
use microlp::{ComparisonOp, Error, OptimizationDirection, Variable};
use tussock_core::ration::solve::{Answer, Problem, cheapest};

/// Every so many seeds; a number that shares no factor with the five kinds.
const EVERY: usize = 7;

/// A whole number of doses; as many as no ration here needs stand for any number of them.
fn doses(number: f64) -> i32 {
    (0..20_000)
        .find(|n| f64::from(*n) >= number)
        .unwrap_or(20_000)
}

/// Its least cost; none where nothing fits, an error where it gives up.
fn least_cost(problem: &Problem) -> Result<Option<f64>, Error> {
    let mut theirs = microlp::Problem::new(OptimizationDirection::Minimize);
    let columns: Vec<(Variable, f64)> = problem
        .columns()
        .iter()
        .map(|column| match column.dose.filter(|_| !column.is_locked()) {
            Some(dose) => {
                let (least, most) = (doses(column.lower / dose), doses(column.upper / dose));
                (
                    theirs.add_integer_var(column.cost * dose, (least, most)),
                    dose,
                )
            }
            None => (
                theirs.add_var(column.cost, (column.lower, column.upper)),
                1.0,
            ),
        })
        .collect();
    for row in problem.rows() {
        let terms: Vec<(Variable, f64)> = columns
            .iter()
            .zip(&row.terms)
            .filter(|(_, term)| term.abs() > 0.0)
            .map(|((variable, size), term)| (*variable, term * size))
            .collect();
        if row.lower.is_finite() {
            theirs.add_constraint(&terms, ComparisonOp::Ge, row.lower);
        }
        if row.upper.is_finite() {
            theirs.add_constraint(&terms, ComparisonOp::Le, row.upper);
        }
    }
    if let Some(most) = problem.at_most_bought() {
        let mut all = Vec::new();
        for ((variable, _), column) in columns.iter().zip(problem.columns()) {
            if column.bought {
                let used = theirs.add_binary_var(0.0);
                theirs.add_constraint(
                    [(*variable, 1.0), (used, -column.upper)],
                    ComparisonOp::Le,
                    0.0,
                );
                all.push((used, 1.0));
            }
        }
        theirs.add_constraint(&all, ComparisonOp::Le, most as f64);
    }
    match theirs.solve() {
        Ok(outcome) => Ok(outcome.into_solution().ok().map(|s| s.objective())),
        Err(Error::Infeasible) => Ok(None),
        Err(other) => Err(other),
    }
}

#[test]
fn microlp_agrees() {
    let (mut fits, mut does_not, mut gave_up) = (0, 0, 0);
    for seed in (0..COUNT).step_by(EVERY) {
        let problem = ration(seed);
        let ours = match cheapest(&problem) {
            Ok(Answer::Cheapest(solution)) => Some(solution.cost),
            Ok(Answer::NothingFits) => None,
            other => panic!("{seed}: {other:?}"),
        };
        match (least_cost(&problem), ours) {
            (Ok(Some(theirs)), Some(ours)) => {
                fits += 1;
                // It holds its sums and doses to 1e-6 and less.
                assert!(
                    (theirs - ours).abs() <= 1e-6 * ours.abs().max(1.0),
                    "{seed}: {ours}, not {theirs}"
                );
            }
            (Ok(None), None) => does_not += 1,
            (Err(_), _) => gave_up += 1,
            (theirs, ours) => panic!("{seed}: {ours:?}, not {theirs:?}"),
        }
    }
    println!("{fits} fit, {does_not} do not, microlp gave up on {gave_up}");
    assert!(fits >= 400 && does_not >= 100 && gave_up <= 10);
}
