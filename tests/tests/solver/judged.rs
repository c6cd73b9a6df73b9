//! HiGHS has answered each ration once (`tests/vectors/rations_highs.py`, HiGHS 1.16, mip_rel_gap 0).

use crate::rations::{COUNT, Kind, kind, ration};
use std::collections::BTreeMap;
use tussock_core::ration::solve::{Answer, Problem, Solution, cheapest};

const JUDGED: &str = include_str!("../../vectors/rations_highs.csv");

/// By seed, the least cost; none where nothing fits.
fn judged() -> BTreeMap<u64, Option<f64>> {
    let lines = JUDGED.lines().skip(2);
    lines
        .map(|line| {
            let cells: Vec<&str> = line.split(',').collect();
            let seed = cells[0].parse().expect("a seed");
            let cost = match cells[1] {
                "optimal" => Some(cells[2].parse().expect("a cost")),
                "infeasible" => None,
                other => panic!("{other}"),
            };
            (seed, cost)
        })
        .collect()
}

/// What is wrong with a ration: a row, a bound, a dose, a number of foods.
pub(crate) fn faults(problem: &Problem, solution: &Solution) -> Vec<String> {
    let mut faults = Vec::new();
    let values: Vec<f64> = solution.amounts.iter().map(|a| a.value).collect();
    for (row, sum) in problem.rows().iter().zip(&solution.sums) {
        let parts = || row.terms.iter().zip(&values).map(|(t, x)| t * x);
        let (value, size): (f64, f64) = (parts().sum(), parts().map(f64::abs).sum());
        for (limit, off) in [
            (row.lower, row.lower - value),
            (row.upper, value - row.upper),
        ] {
            if limit.is_finite() && off > 1e-9 * 1.0_f64.max(limit.abs()).max(size) {
                faults.push(format!("{}: {value} over {limit}", row.name));
            }
        }
        if (value - sum.value).abs() > 1e-9 * size.max(1.0) {
            faults.push(format!("{}: said to be {}", row.name, sum.value));
        }
    }
    for (column, value) in problem.columns().iter().zip(&values) {
        if *value < column.lower || *value > column.upper {
            faults.push(format!("{}: {value} out of its bounds", column.name));
        }
        if let Some(dose) = column.dose.filter(|_| !column.is_locked())
            && (value / dose - (value / dose).round()).abs() > 0.0
        {
            faults.push(format!("{}: {value} is no whole dose", column.name));
        }
    }
    let bought = |j: &&usize| problem.columns()[**j].bought;
    let used = solution.used().iter().filter(bought).count();
    if problem.at_most_bought().is_some_and(|most| used > most) {
        faults.push(format!("{used} foods"));
    }
    let cost: f64 = problem
        .columns()
        .iter()
        .zip(&values)
        .map(|(column, x)| column.cost * x)
        .sum();
    if (cost - solution.cost).abs() > 1e-9 * cost.abs().max(1.0) {
        faults.push(format!("said to cost {}, costs {cost}", solution.cost));
    }
    faults
}

#[test]
fn every_ration_is_as_highs_says() {
    let judged = judged();
    let mut faults_found = Vec::new();
    let mut counts = BTreeMap::<(String, bool), usize>::new();
    let (mut branches, mut worst) = (0, 0.0_f64);
    for seed in 0..COUNT {
        let problem = ration(seed);
        let expected = judged[&seed];
        let key = (format!("{:?}", kind(seed)), expected.is_some());
        *counts.entry(key).or_default() += 1;
        let answer = cheapest(&problem);
        let fault = match (&answer, expected) {
            (Ok(Answer::Cheapest(solution)), Some(cost)) => {
                let off = (solution.cost - cost).abs() / cost.abs().max(1e-3);
                worst = worst.max(off);
                branches = branches.max(solution.certificate.branches);
                let mut found = faults(&problem, solution);
                if off > 1e-8 {
                    found.push(format!("costs {}, not {cost}", solution.cost));
                }
                found.join("; ")
            }
            (Ok(Answer::NothingFits), None) => String::new(),
            _ => format!("{expected:?} expected, got {answer:?}"),
        };
        if !fault.is_empty() {
            faults_found.push(format!("{seed} {:?}: {fault}", kind(seed)));
        }
    }
    println!("{counts:?}; most branches {branches}; worst cost off by {worst:e}");
    assert!(
        faults_found.is_empty(),
        "{} of {COUNT}:\n{}",
        faults_found.len(),
        faults_found.join("\n")
    );
    // The vectors hold enough of each kind.
    for made in [
        Kind::Feasible,
        Kind::Infeasible,
        Kind::Degenerate,
        Kind::Doses,
        Kind::Foods,
    ] {
        let fits = made != Kind::Infeasible;
        let count = counts.get(&(format!("{made:?}"), fits)).copied();
        assert!(count.is_some_and(|count| count >= 800), "{made:?}");
    }
}
