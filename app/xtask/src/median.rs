//! What Lighthouse found in several visits, as medians against the bars.

use std::fmt::Write as _;

use anyhow::{Context as _, Result};
use serde_json::Value;

/// Which side of its bar a value has to be on.
#[derive(Debug, Clone, Copy)]
enum Bar {
    AtLeast(f64),
    AtMost(f64),
    /// Only shown.
    None,
}

/// One value that is measured: its name in the answer, its name in the table, its bar.
const MEASURES: [(&str, &str, Bar); 9] = [
    ("performance", "performance (0 to 100)", Bar::AtLeast(97.0)),
    (
        "accessibility",
        "accessibility (0 to 100)",
        Bar::AtLeast(100.0),
    ),
    (
        "bestPractices",
        "best practices (0 to 100)",
        Bar::AtLeast(100.0),
    ),
    ("firstPaint", "first contentful paint (ms)", Bar::None),
    (
        "largestPaint",
        "largest contentful paint (ms)",
        Bar::AtMost(1_300.0),
    ),
    (
        "interactive",
        "time to interactive (ms)",
        Bar::AtMost(4_000.0),
    ),
    ("blocked", "total blocking time (ms)", Bar::None),
    ("shift", "cumulative layout shift (thousandths)", Bar::None),
    ("bytes", "bytes over the network", Bar::None),
];

/// The medians of some visits.
#[derive(Debug, PartialEq)]
pub(crate) struct Medians(Vec<f64>);

/// Reads the answers, one JSON object a visit, and takes the median of each value.
///
/// # Errors
/// When there is no answer, or a value is missing in one.
pub(crate) fn medians(answers: &[String]) -> Result<Medians> {
    let visits = answers
        .iter()
        .map(|answer| Ok(serde_json::from_str(answer)?))
        .collect::<Result<Vec<Value>>>()?;
    let medians = MEASURES.iter().map(|(key, ..)| {
        let values = visits.iter().map(|visit| {
            visit
                .get(key)
                .and_then(Value::as_f64)
                .with_context(|| format!("Lighthouse gave no `{key}`"))
        });
        median(values.collect::<Result<Vec<f64>>>()?).context("no visit was measured")
    });
    Ok(Medians(medians.collect::<Result<_>>()?))
}

fn median(mut values: Vec<f64>) -> Option<f64> {
    values.sort_by(f64::total_cmp);
    let upper = *values.get(values.len() / 2)?;
    if values.len() % 2 == 1 {
        return Some(upper);
    }
    Some(f64::midpoint(upper, *values.get(values.len() / 2 - 1)?))
}

impl Medians {
    /// Each median with its bar, and which of them missed it.
    pub(crate) fn table(&self) -> String {
        let mut text = format!("{:<38}  {:>9}  bar\n", "median", "");
        for ((_, name, bar), value) in MEASURES.iter().zip(&self.0) {
            let bar = match bar {
                Bar::AtLeast(least) => format!("at least {least}"),
                Bar::AtMost(most) => format!("at most {most}"),
                Bar::None => String::new(),
            };
            let _ = writeln!(text, "{name:<38}  {value:>9.0}  {bar}");
        }
        for name in self.missed() {
            let _ = writeln!(text, "MISSED: {name}");
        }
        text
    }

    /// The names of the values that are on the wrong side of their bar.
    pub(crate) fn missed(&self) -> Vec<&'static str> {
        let missed = MEASURES
            .iter()
            .zip(&self.0)
            .filter(|((_, _, bar), value)| match bar {
                Bar::AtLeast(least) => **value < *least,
                Bar::AtMost(most) => **value > *most,
                Bar::None => false,
            });
        missed.map(|((_, name, _), _)| *name).collect()
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn visit(performance: f64, largest: f64) -> String {
        serde_json::json!({
            "performance": performance, "accessibility": 100, "bestPractices": 100, "firstPaint": 800,
            "largestPaint": largest, "interactive": 4_000, "blocked": 0, "shift": 0, "bytes": 200_000,
        })
        .to_string()
    }

    #[test]
    fn one_slow_visit_does_not_decide() {
        let visits: Vec<String> = [(98.0, 1_200.0), (97.0, 1_300.0), (40.0, 9_000.0)]
            .map(|(score, paint)| visit(score, paint))
            .into();
        let medians = medians(&visits).unwrap();
        assert!(medians.missed().is_empty(), "{}", medians.table());
        assert!(medians.table().contains("at least 97"));
    }

    #[test]
    fn a_missed_bar_is_named() {
        let medians = medians(&[visit(96.9, 1_301.0)]).unwrap();
        assert_eq!(
            medians.missed(),
            ["performance (0 to 100)", "largest contentful paint (ms)"]
        );
        assert!(medians.table().contains("MISSED: performance"));
    }

    #[test]
    fn the_median_of_an_even_number_lies_between() {
        assert_eq!(median(vec![4.0, 1.0, 2.0, 3.0]), Some(2.5));
        assert_eq!(median(vec![3.0, 1.0, 2.0]), Some(2.0));
        assert_eq!(median(vec![]), None);
    }

    #[test]
    fn an_answer_with_a_hole_is_an_error() {
        assert!(medians(&[]).is_err());
        assert!(medians(&["{\"performance\": 99}".to_owned()]).is_err());
    }
}
