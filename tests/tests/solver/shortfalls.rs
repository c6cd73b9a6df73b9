//! What comes closest when nothing fits, judged by microlp, and what would mend it, tried.

use crate::rations::{COUNT, Kind, kind, ration};
use microlp::{ComparisonOp, OptimizationDirection};
use tussock_core::ration::solve::{
    Answer, Column, Mend, Mended, Problem, Row, Side, cheapest, shortfall,
};

/// The least that limits are missed by in all, in their scales, by microlp.
fn least_missing(problem: &Problem) -> f64 {
    let mut theirs = microlp::Problem::new(OptimizationDirection::Minimize);
    let columns: Vec<_> = problem
        .columns()
        .iter()
        .map(|c| theirs.add_var(0.0, (c.lower, c.upper)))
        .collect();
    for row in problem.rows() {
        let terms = || columns.iter().copied().zip(row.terms.iter().copied());
        for (limit, sign, side) in [
            (row.lower, 1.0, ComparisonOp::Ge),
            (row.upper, -1.0, ComparisonOp::Le),
        ] {
            if limit.is_finite() {
                let missing = theirs.add_var(1.0 / row.scale, (0.0, f64::INFINITY));
                let all: Vec<_> = terms().chain([(missing, sign)]).collect();
                theirs.add_constraint(&all, side, limit);
            }
        }
    }
    let outcome = theirs.solve().expect("bounds can be kept");
    outcome.into_solution().expect("an end").objective()
}

/// The problem with one change.
fn changed(problem: &Problem, mend: Mend, to: f64) -> Problem {
    let (mut columns, mut rows): (Vec<Column>, Vec<Row>) =
        (problem.columns().to_vec(), problem.rows().to_vec());
    let mut most = problem.at_most_bought();
    match mend {
        Mend::Column {
            column,
            side: Side::Lower,
        } => columns[column].lower = to,
        Mend::Column {
            column,
            side: Side::Upper,
        } => columns[column].upper = to,
        Mend::Row {
            row,
            side: Side::Lower,
        } => rows[row].lower = to,
        Mend::Row {
            row,
            side: Side::Upper,
        } => rows[row].upper = to,
        Mend::Bought => most = (0_u8..100).find(|n| f64::from(*n) >= to).map(usize::from),
    }
    Problem::new(columns, rows, most).expect("a looser bound is let in")
}

fn fits(problem: &Problem) -> bool {
    match cheapest(problem) {
        Ok(Answer::Cheapest(_)) => true,
        Ok(Answer::NothingFits) => false,
        other => panic!("{other:?}"),
    }
}

/// What a change starts from.
fn now(problem: &Problem, mend: Mend) -> f64 {
    match mend {
        Mend::Column {
            column,
            side: Side::Lower,
        } => problem.columns()[column].lower,
        Mend::Column {
            column,
            side: Side::Upper,
        } => problem.columns()[column].upper,
        Mend::Row {
            row,
            side: Side::Lower,
        } => problem.rows()[row].lower,
        Mend::Row {
            row,
            side: Side::Upper,
        } => problem.rows()[row].upper,
        Mend::Bought => problem.at_most_bought().map_or(0.0, |most| most as f64),
    }
}

/// A change is enough, and a thousandth less of it is not.
fn hold(seed: u64, problem: &Problem, mended: &Mended) {
    let Mended { mend, to, .. } = *mended;
    let now = now(problem, mend);
    let way = to - now;
    // A hair more than what is just enough, for what is lost in the last bits.
    assert!(
        fits(&changed(problem, mend, to + 1e-9 * way)),
        "{seed}: {mended:?} does not mend it"
    );
    if mend == Mend::Bought {
        assert!(
            !fits(&changed(problem, mend, to - 1.0)),
            "{seed}: {mended:?} is too many"
        );
    } else {
        let less = changed(problem, mend, now + 0.999 * way);
        assert!(!fits(&less), "{seed}: {mended:?} is more than is needed");
    }
}

#[test]
fn what_is_missing_is_the_least_and_what_mends_it_does() {
    let (mut judged, mut tried) = (0, 0);
    for seed in (1..COUNT).step_by(5).step_by(7) {
        assert_eq!(kind(seed), Kind::Infeasible);
        let problem = ration(seed);
        let found = shortfall(&problem).unwrap();
        let theirs = least_missing(&problem);
        judged += 1;
        assert!(
            (found.total - theirs).abs() <= 1e-6 * theirs.max(1e-3),
            "{seed}: {} missing, {theirs} by microlp",
            found.total
        );
        let missing = found.missing.iter();
        let total: f64 = missing.map(|m| m.by / problem.rows()[m.row].scale).sum();
        assert!(
            (total - found.total).abs() <= 1e-6 * total,
            "{seed}: {total} in all"
        );
        for miss in &found.missing {
            let row = &problem.rows()[miss.row];
            let off = match miss.side {
                Side::Lower => row.lower - found.sums[miss.row],
                Side::Upper => found.sums[miss.row] - row.upper,
            };
            assert!(
                (off - miss.by).abs() <= 1e-8 * row.scale,
                "{seed}: {miss:?}"
            );
        }
        for pair in found.mends.windows(2) {
            assert!(pair[0].change <= pair[1].change, "{seed}");
        }
        for mended in found.mends.iter().take(4) {
            tried += 1;
            hold(seed, &problem, mended);
        }
    }
    // With a number of foods, one more may be what mends it.
    let mut foods = 0;
    for seed in (4..COUNT).step_by(5) {
        let problem = ration(seed);
        if !fits(&problem) {
            let found = shortfall(&problem).unwrap();
            let more = found.mends.iter().find(|m| m.mend == Mend::Bought);
            let more = more.expect("these fit with more foods");
            hold(seed, &problem, more);
            foods += 1;
        }
    }
    println!("{judged} judged, {tried} changes tried, {foods} with more foods");
    assert!(judged >= 100 && tried >= 150 && foods >= 30);
}
