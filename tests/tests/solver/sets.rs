//! Further sets of foods, and the fewest foods, against trying every choice of foods that are left out.

use crate::judged::faults;
use crate::rations::ration;
use std::collections::BTreeSet;
use tussock_core::ration::solve::{Answer, Column, Problem, Solution, cheapest, fewest, next_sets};

/// The problem without some columns, and any number of foods.
fn without(problem: &Problem, columns: &BTreeSet<usize>, most: Option<usize>) -> Problem {
    let kept = problem
        .columns()
        .iter()
        .enumerate()
        .map(|(j, column)| Column {
            upper: if columns.contains(&j) {
                0.0
            } else {
                column.upper
            },
            ..column.clone()
        });
    Problem::new(kept.collect(), problem.rows().to_vec(), most).expect("it was let in before")
}

fn answer(problem: &Problem) -> Option<Solution> {
    match cheapest(problem) {
        Ok(Answer::Cheapest(solution)) => Some(solution),
        Ok(Answer::NothingFits) => None,
        other => panic!("{other:?}"),
    }
}

/// The used columns that could be left out.
fn optional(problem: &Problem, solution: &Solution) -> BTreeSet<usize> {
    let used = solution.used().into_iter();
    used.filter(|j| problem.columns()[*j].lower <= 0.0)
        .collect()
}

/// One column out of every set, in every way.
fn choices(sets: &[BTreeSet<usize>]) -> BTreeSet<BTreeSet<usize>> {
    let mut all = BTreeSet::from([BTreeSet::new()]);
    for set in sets {
        all = all
            .iter()
            .flat_map(|chosen| {
                set.iter().map(move |column| {
                    let mut more = chosen.clone();
                    more.insert(*column);
                    more
                })
            })
            .collect();
    }
    all
}

#[test]
fn the_next_sets_are_the_next_cheapest() {
    let mut found_in_all = 0;
    // Seeds with whole doses and with a number of foods, and small ones of the others.
    for seed in (3..400).filter(|seed| matches!(seed % 5, 3 | 4)) {
        let problem = ration(seed);
        let Some(first) = answer(&problem) else {
            continue;
        };
        let next = next_sets(&problem, &first, 3).unwrap();
        let mut sets = vec![optional(&problem, &first)];
        for index in 0..3 {
            // A set that leaves something out of each before it: the cheapest of all ways to leave out one of each.
            let best = choices(&sets)
                .iter()
                .filter_map(|columns| answer(&without(&problem, columns, problem.at_most_bought())))
                .map(|solution| solution.cost)
                .min_by(f64::total_cmp);
            match (best, next.get(index)) {
                (None, None) => break,
                (Some(cost), Some(found)) => {
                    found_in_all += 1;
                    assert_eq!(faults(&problem, found), Vec::<String>::new(), "{seed}");
                    assert!(
                        (found.cost - cost).abs() <= 1e-8 * cost.abs().max(1e-3),
                        "{seed}: set {index} costs {}, not {cost}",
                        found.cost
                    );
                    let used = optional(&problem, found);
                    assert!(
                        !sets.iter().any(|set| set.is_subset(&used)),
                        "{seed}: {used:?}"
                    );
                    sets.push(used);
                }
                (best, found) => panic!("{seed} {index}: {best:?}, not {found:?}"),
            }
        }
    }
    println!("{found_in_all} further sets");
    assert!(found_in_all > 200);
}

#[test]
fn the_fewest_foods_are_the_fewest() {
    let mut compared = 0;
    for seed in (4..500).step_by(5) {
        let problem = ration(seed);
        let bought: Vec<usize> = (0..problem.columns().len())
            .filter(|j| problem.columns()[*j].bought && problem.columns()[*j].lower <= 0.0)
            .collect();
        if bought.len() > 6 {
            continue;
        }
        let any = without(&problem, &BTreeSet::new(), None);
        // Every choice of foods: how many are used at most, and the least cost.
        let best = (0_u32..1 << bought.len())
            .filter_map(|choice| {
                let out = bought.iter().enumerate();
                let out = out.filter(|(k, _)| choice >> k & 1 == 0).map(|(_, j)| *j);
                answer(&without(&any, &out.collect(), None)).map(|s| (choice.count_ones(), s.cost))
            })
            .min_by(|a, b| a.0.cmp(&b.0).then(a.1.total_cmp(&b.1)));
        let found = match fewest(&any).unwrap() {
            Answer::Cheapest(solution) => Some(solution),
            Answer::NothingFits => None,
            other => panic!("{other:?}"),
        };
        match (best, found) {
            (None, None) => {}
            (Some((count, cost)), Some(found)) => {
                compared += 1;
                let used = found.used().iter().filter(|j| bought.contains(j)).count();
                assert_eq!(u32::try_from(used), Ok(count), "{seed}");
                assert!(
                    (found.cost - cost).abs() <= 1e-8 * cost.abs().max(1e-3),
                    "{seed}"
                );
            }
            other => panic!("{seed}: {other:?}"),
        }
    }
    println!("{compared} compared");
    assert!(compared > 30);
}
