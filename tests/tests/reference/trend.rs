//! The kernel of the trend held against statsmodels and against generalised least squares; see
//! `tests/vectors/trend_statsmodels.py`.

use serde_json::Value;
use std::fs;
use tussock_core::progress::{Filter, Start};
use tussock_tests::reference::crate_root;

const LEVEL: &[(usize, f64)] = &[(0, 1.0)];
const SLOPE: &[(usize, f64)] = &[(1, 1.0)];

fn vector(name: &str) -> Value {
    let path = crate_root().join("vectors").join(name);
    let text = fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    serde_json::from_str(&text).unwrap_or_else(|e| panic!("{name}: {e}"))
}

fn number(value: &Value) -> f64 {
    value
        .as_f64()
        .unwrap_or_else(|| panic!("no number: {value}"))
}

fn numbers(value: &Value) -> Vec<f64> {
    let list = value
        .as_array()
        .unwrap_or_else(|| panic!("no list: {value}"));
    list.iter().map(number).collect()
}

fn whole(value: &Value) -> usize {
    let number = value
        .as_u64()
        .unwrap_or_else(|| panic!("no count: {value}"));
    usize::try_from(number).unwrap()
}

#[track_caller]
fn near(ours: f64, theirs: f64, what: &str) {
    let within = 1e-6 * theirs.abs().max(1.0);
    assert!(
        (ours - theirs).abs() <= within,
        "{what}: {ours}, and {theirs} by the other program"
    );
}

/// Level, slope and their covariance.
#[track_caller]
fn same_state(filter: &Filter, expected: &Value) {
    let (level, slope) = (filter.of(LEVEL).unwrap(), filter.of(SLOPE).unwrap());
    near(level.mean, number(&expected["state"][0]), "level");
    near(slope.mean, number(&expected["state"][1]), "slope");
    near(
        level.variance,
        number(&expected["cov"][0][0]),
        "variance of the level",
    );
    near(
        slope.variance,
        number(&expected["cov"][1][1]),
        "variance of the slope",
    );
    near(
        filter.together(LEVEL, SLOPE).unwrap(),
        number(&expected["cov"][0][1]),
        "covariance of level and slope",
    );
}

#[track_caller]
fn same_left_out(filter: &Filter, expected: &Value) {
    let theirs = numbers(&expected["left_out"]);
    let variances = numbers(&expected["left_out_var"]);
    let ours = filter.left_out();
    assert_eq!(ours.len(), theirs.len());
    for ((ours, off), variance) in ours.into_iter().zip(theirs).zip(variances) {
        let ours = ours.unwrap();
        near(ours.off, off, "what is left of a reading");
        near(ours.variance, variance, "the variance of what is left");
    }
}

#[test]
fn weekly_readings_with_a_week_missing_equal_statsmodels_and_least_squares() {
    let (given, more) = (vector("llt_weekly.json"), vector("llt_weekly_more.json"));
    let var = &given["var"];
    let (level, slope) = (number(&var["level"]), number(&var["slope"]));
    let mut filter = Filter::new(Start::Unknown, Start::Unknown, &[]);
    let mut kept = Vec::new();
    for (week, y) in given["y"].as_array().unwrap().iter().enumerate() {
        if week > 0 {
            filter.days(1, level, slope);
        }
        kept.push(filter.keep_level());
        if let Some(y) = y.as_f64() {
            filter.read(LEVEL, y, number(&var["obs"]));
        }
    }
    same_state(&filter, &given);
    same_state(&filter, &more);
    near(filter.log_likelihood(), number(&given["llf"]), "likelihood");
    near(filter.log_likelihood(), number(&more["llf"]), "likelihood");
    let smoothed = numbers(&more["smoothed_level"]);
    let variances = numbers(&more["smoothed_level_var"]);
    for ((state, level), variance) in kept.into_iter().zip(smoothed).zip(variances) {
        let ours = filter.of(&[(state, 1.0)]).unwrap();
        near(ours.mean, level, "smoothed level");
        near(ours.variance, variance, "its variance");
    }
    same_left_out(&filter, &more);
    let means = numbers(&given["forecast_mean"]);
    let spreads = numbers(&given["forecast_se_obs"]);
    for (mean, spread) in means.into_iter().zip(spreads) {
        filter.days(1, level, slope);
        let ahead = filter.of(LEVEL).unwrap();
        near(ahead.mean, mean, "forecast");
        near(
            (ahead.variance + number(&var["obs"])).sqrt(),
            spread,
            "its spread",
        );
    }
}

/// Irregular days, two and three readings on some, an error each, offsets of three instruments.
fn irregular(name: &str) {
    let given = vector(name);
    let var = &given["var"];
    let (level, slope) = (number(&var["level"]), number(&var["slope"]));
    let offsets: Vec<Start> = numbers(&given["offsets"])
        .into_iter()
        .map(|variance| Start::Known {
            mean: 0.0,
            variance,
        })
        .collect();
    let mut filter = Filter::new(Start::Unknown, Start::Unknown, &offsets);
    let mut day = 0;
    let mut go_to = |filter: &mut Filter, to: usize| {
        filter.days(u32::try_from(to - day).unwrap(), level, slope);
        day = to;
    };
    let mut kept = Vec::new();
    for reading in given["readings"].as_array().unwrap() {
        let at = whole(&reading["day"]);
        go_to(&mut filter, at);
        kept.push((at, filter.keep_level()));
        let source = 2 + whole(&reading["source"]);
        filter.read(
            &[(0, 1.0), (source, 1.0)],
            number(&reading["y"]),
            number(&reading["var"]),
        );
    }
    go_to(&mut filter, whole(&given["day"]));
    same_state(&filter, &given);
    near(filter.log_likelihood(), number(&given["llf"]), "likelihood");
    for (k, mean) in numbers(&given["offset_states"]).into_iter().enumerate() {
        let ours = filter.of(&[(2 + k, 1.0)]).unwrap();
        near(ours.mean, mean, "offset");
        near(
            ours.variance,
            number(&given["offset_cov"][k][k]),
            "its variance",
        );
    }
    let smoothed = numbers(&given["smoothed_level"]);
    let variances = numbers(&given["smoothed_level_var"]);
    for (at, state) in kept {
        let ours = filter.of(&[(state, 1.0)]).unwrap();
        near(ours.mean, smoothed[at], "smoothed level");
        near(ours.variance, variances[at], "its variance");
    }
    same_left_out(&filter, &given);
}

#[test]
fn irregular_days_with_doubled_readings_equal_statsmodels_and_least_squares() {
    irregular("llt_irregular.json");
    irregular("llt_dense.json");
}

#[test]
fn the_nile_is_met() {
    let given = vector("nile.json");
    let var = &given["var"];
    let still = Start::Known {
        mean: 0.0,
        variance: 0.0,
    };
    let mut filter = Filter::new(Start::Unknown, still, &[]);
    let mut kept = Vec::new();
    for (year, flow) in numbers(&given["flow"]).into_iter().enumerate() {
        if year > 0 {
            filter.days(1, number(&var["level"]), 0.0);
        }
        kept.push(filter.keep_level());
        filter.read(LEVEL, flow, number(&var["obs"]));
    }
    let last = filter.of(LEVEL).unwrap();
    // As printed in the notes, to their last digit.
    assert!((filter.log_likelihood() - -632.545_63).abs() < 5e-6);
    assert!((last.mean - 798.370_29).abs() < 5e-6);
    near(filter.log_likelihood(), number(&given["llf"]), "likelihood");
    near(last.variance, number(&given["last_var"]), "variance");
    for (state, level) in kept.into_iter().zip(numbers(&given["smoothed_level"])) {
        near(
            filter.of(&[(state, 1.0)]).unwrap().mean,
            level,
            "smoothed level",
        );
    }
}
