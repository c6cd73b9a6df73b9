//! Where each number of a plan comes from.

use crate::words::{PlanScreenWords, Words};
use tussock_core::plan::Draft;
use tussock_core::sources::{Constant, Source};
use tussock_core::units::show::fixed;

/// A number and its source.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SourceLine {
    /// What it is.
    pub name: String,
    /// The value with its unit; `None` for a whole table, which has no one value.
    pub value: Option<String>,
    /// Work, place and mark.
    pub from: String,
}

/// The constants and defaults a draft came from, in the order they were used, then how many records of the yard it was
/// made from.
pub fn sources(
    draft: &Draft,
    records: usize,
    words: &(impl Words + PlanScreenWords),
) -> Vec<SourceLine> {
    let from = draft.from.clone().and(&draft.energy.from);
    let mut lines = Vec::new();
    for source in from.sources() {
        match source {
            Source::Record(_) => {}
            Source::Constant(id) => lines.extend(constant_line(id, words)),
            Source::Default(_) => {
                lines.extend(words.source(source).map(|from| SourceLine {
                    name: words.a_default().to_owned(),
                    value: None,
                    from,
                }));
            }
        }
    }
    if 0 < records {
        lines.push(SourceLine {
            name: words.your_records().to_owned(),
            value: Some(records.to_string()),
            from: words.your_records_mean().to_owned(),
        });
    }
    lines
}

/// A constant of the core by its id; `None` when there is none of that id.
pub fn constant_line(id: &str, words: &(impl Words + PlanScreenWords)) -> Option<SourceLine> {
    tussock_core::constants()
        .iter()
        .find(|constant| constant.id == id)
        .map(|constant| SourceLine {
            name: words.constant_name(constant.id),
            value: value(constant),
            from: words.constant(constant),
        })
}

/// A number with its unit. A type says its unit itself; a range or a table of several has no one value.
fn value(constant: &Constant) -> Option<String> {
    let text = constant.value.as_str();
    let (figure, typed) = text.split_once(' ').unwrap_or((text, ""));
    let number = short(figure.parse().ok()?);
    let unit = if typed.is_empty() {
        constant.unit
    } else {
        typed
    };
    Some(if unit.is_empty() {
        number
    } else {
        format!("{number} {unit}")
    })
}

/// A figure without what the arithmetic of the machine adds to it.
fn short(figure: f64) -> String {
    let text = fixed(figure, DECIMALS);
    if text.contains('.') {
        text.trim_end_matches('0').trim_end_matches('.').to_owned()
    } else {
        text
    }
}

/// As many as the finest constant has.
const DECIMALS: usize = 6;
