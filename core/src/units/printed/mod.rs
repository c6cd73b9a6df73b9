//! Numbers as they stand in printed text: a label, a laboratory report.
//!
//! [`printed`] finds the numbers of each line, with the words before them and the unit beside them, and says how each can
//! be read. It knows no names: those are the rooms' own, matched with [`named`]. Nothing is guessed: a number with two
//! readings has both, a unit that is not understood stays as it was printed.

mod names;
#[cfg(test)]
mod tests;
mod tokens;
mod unit;

pub use names::{Named, named};
pub use unit::{Counted, Per, PrintedUnit};

use super::parse::{ParseError, number};
use tokens::{Token, tokens};

/// Whether a number is the least or the most that is warranted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Warranted {
    /// At least this.
    Least,
    /// At most this.
    Most,
}

/// A number in a line.
#[derive(Clone, Debug, PartialEq)]
pub struct PrintedNumber<'a> {
    /// What stands between the number before it and this one.
    pub before: &'a str,
    /// The number as it stands in the line.
    pub number: &'a str,
    /// How it can be read: one number, or two where a comma can part decimals or thousands.
    pub readings: Vec<f64>,
    /// Its unit as it stands in the line; empty where there is none.
    pub unit_said: &'a str,
    /// Its unit, when it is understood.
    pub unit: Option<PrintedUnit>,
    /// Whether it is warranted as the least or the most.
    pub warranted: Option<Warranted>,
    /// No word stands between the number before it and this one: it is of the same thing.
    pub goes_on: bool,
}

/// A line with its numbers; lines without one are left out.
#[derive(Clone, Debug, PartialEq)]
pub struct PrintedLine<'a> {
    /// The line as it stands.
    pub line: &'a str,
    /// Its numbers, from left to right.
    pub numbers: Vec<PrintedNumber<'a>>,
}

/// The lines of a text that hold numbers.
pub fn printed(text: &str) -> Vec<PrintedLine<'_>> {
    text.lines()
        .map(|line| PrintedLine {
            line: line.trim(),
            numbers: numbers(line.trim()),
        })
        .filter(|line| !line.numbers.is_empty())
        .collect()
}

/// What a text says of what its numbers are shares of: of the feed as fed, of dry matter, or both, as in two columns. It is
/// a hint, and the person is asked.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct BasesSaid {
    /// It speaks of the feed as fed.
    pub as_fed: bool,
    /// It speaks of shares of dry matter.
    pub dry_matter: bool,
}

/// Phrases for the feed as fed, in lower case.
const AS_FED: &[&str] = &[
    "as fed",
    "as sampled",
    "as received",
    "as is basis",
    "fresh weight",
];
/// Phrases for shares of dry matter. "Dry matter" alone is a line of the report.
const DRY_MATTER: &[&str] = &[
    "dry matter basis",
    "dry basis",
    "dm basis",
    "of dry matter",
    "in dry matter",
    "on dry matter",
    "kg dm",
    "kg dry matter",
    "% dm",
    "% in dm",
    "% of dm",
    "in the dm",
    "100% dry",
];

/// What a text says of its basis.
pub fn bases_said(text: &str) -> BasesSaid {
    let words: Vec<&str> = text.split_whitespace().collect();
    let text = words.join(" ").to_lowercase();
    let says = |phrases: &[&str]| phrases.iter().any(|phrase| text.contains(phrase));
    BasesSaid {
        as_fed: says(AS_FED),
        dry_matter: says(DRY_MATTER),
    }
}

/// Words that warrant a number, in lower case.
const LEAST: &[&str] = &["min", "minimum", "least", "≥", ">"];
/// The same for the most.
const MOST: &[&str] = &["max", "maximum", "most", "≤", "<"];
/// Words that name nothing between two numbers of one thing.
const EMPTY: &[&str] = &[
    "to", "and", "or", "typical", "approx", "not", "less", "more", "than", "at", "up",
];

fn warrants(token: Token<'_>) -> Option<Warranted> {
    let word = token.text.to_lowercase();
    if LEAST.contains(&word.as_str()) {
        Some(Warranted::Least)
    } else if MOST.contains(&word.as_str()) {
        Some(Warranted::Most)
    } else {
        None
    }
}

/// "Not less than" is the least, "not more than" and "up to" the most.
fn warranted(before: &[Token<'_>]) -> Option<Warranted> {
    let said = before
        .iter()
        .map(|token| token.text.to_lowercase())
        .collect::<Vec<_>>()
        .join(" ");
    if said.contains("not less than") {
        Some(Warranted::Least)
    } else if said.contains("not more than") || said.ends_with("up to") {
        Some(Warranted::Most)
    } else {
        before.iter().rev().find_map(|token| warrants(*token))
    }
}

fn numbers(line: &str) -> Vec<PrintedNumber<'_>> {
    let tokens = tokens(line);
    let mut found: Vec<PrintedNumber<'_>> = Vec::new();
    // Where the words before the next number begin, in tokens and in bytes.
    let (mut from, mut begin) = (0, 0);
    let mut column: Option<unit::Found<'_>> = None;
    let mut at = 0;
    while let Some(token) = tokens.get(at).copied() {
        at += 1;
        if !token.is_number || is_tolerance(&tokens, at) || is_ratio(&tokens, at) {
            continue;
        }
        let readings = readings(token.text);
        if readings.is_empty() {
            continue;
        }
        let before = tokens.get(from..at - 1).unwrap_or_default();
        let goes_on = !found.is_empty() && names_nothing(before);
        let own = unit::before(line, before);
        // A unit before the first of several columns holds for all of them.
        column = own.or(column.filter(|_| goes_on));
        // What stands between them names it, without a unit that is the last of it.
        let until = own
            .filter(|own| names_nothing(before.get(own.next..).unwrap_or_default()))
            .map_or(token.start, |own| own.start);
        let read = |next, number, readings| {
            let (unit_said, unit, next, end) = beside(line, &tokens, next, column, token.end);
            let tail = tail(&tokens, next);
            let next = tail.map_or(next, |(_, next)| next);
            let number = PrintedNumber {
                before: line.get(begin..until).unwrap_or_default(),
                number,
                readings,
                unit_said,
                unit,
                warranted: tail
                    .and_then(|(said, _)| said)
                    .or_else(|| warranted(before)),
                goes_on,
            };
            let last = next.checked_sub(1).and_then(|last| tokens.get(last));
            (number, next, last.map_or(end, |token| token.end))
        };
        let (number, next, end) = read(at, token.text, readings);
        // "2 500" can be two columns, and can be one number.
        let joined = joined(line, &tokens, at).map(|(text, value)| {
            let (number, _, _) = read(at + 1, text, vec![value]);
            number
        });
        found.extend(joined.into_iter().chain([number]));
        (from, begin) = (next, end);
        at = next;
    }
    found
}

/// The unit of a number: as printed, as understood, the token after it, and where it ends. Two units that differ, one
/// before and one behind the number, say that nothing is sure.
fn beside<'a>(
    line: &'a str,
    tokens: &[Token<'a>],
    next: usize,
    before: Option<unit::Found<'a>>,
    end: usize,
) -> (&'a str, Option<PrintedUnit>, usize, usize) {
    match (unit::after(line, tokens, next), before) {
        (Some(after), before) => {
            let sure = before.is_none_or(|before| before.unit == after.unit);
            let unit = after.unit.filter(|_| sure);
            (after.said, unit, after.next, after.end)
        }
        (None, Some(before)) => (before.said, before.unit, next, end),
        (None, None) => ("", None, next, end),
    }
}

/// The number that a number and the one after it are together, when a blank may part thousands.
fn joined<'a>(line: &'a str, tokens: &[Token<'a>], next: usize) -> Option<(&'a str, f64)> {
    let (first, second) = (tokens.get(next.checked_sub(1)?)?, tokens.get(next)?);
    let digits = |text: &str| text.bytes().all(|digit| digit.is_ascii_digit());
    // numeric: digits in a group of thousands
    let group = 3;
    let parts = second.is_number
        && second.start == first.end + 1
        && second.text.len() == group
        && first.text.len() <= group
        && digits(first.text)
        && digits(second.text);
    let text = line.get(first.start..second.end).filter(|_| parts)?;
    Some((text, number(text).ok()?))
}

/// Whether a number is one of a ratio: "2:1".
fn is_ratio(tokens: &[Token<'_>], after: usize) -> bool {
    let is_number = |at: Option<usize>| {
        at.and_then(|at| tokens.get(at))
            .is_some_and(|token| token.is_number)
    };
    let is_colon = |at: Option<usize>| {
        at.and_then(|at| tokens.get(at))
            .is_some_and(|token| token.text == ":")
    };
    (is_colon(Some(after)) && is_number(Some(after + 1)))
        || (is_colon(after.checked_sub(2)) && is_number(after.checked_sub(1 + 2)))
}

/// Whether a number says how far another is out: "± 0.5".
fn is_tolerance(tokens: &[Token<'_>], after: usize) -> bool {
    after
        .checked_sub(2)
        .and_then(|before| tokens.get(before))
        .is_some_and(|token| token.text == "±")
}

/// What stands behind a number and its unit and is of it, with the token after it: a word that warrants it, and the
/// basis. What stands directly before another number is that number's.
fn tail(tokens: &[Token<'_>], from: usize) -> Option<(Option<Warranted>, usize)> {
    let mut at = from;
    let mut said = None;
    let mut end = None;
    while let Some(token) = tokens.get(at) {
        let word = token.text.to_lowercase();
        let basis = [
            "dm", "de", "of", "in", "as", "fed", "dry", "matter", "basis",
        ];
        let warrant = warrants(*token);
        if warrant.is_none()
            && !basis.contains(&word.as_str())
            && !["(", ")", "."].contains(&token.text)
        {
            break;
        }
        said = said.or(warrant);
        at += 1;
        if warrant.is_some() || ["dm", "de", "fed", "matter", "basis"].contains(&word.as_str()) {
            end = Some(at);
        }
    }
    let end = end?;
    // A closing bracket belongs to what it closes.
    let end = if tokens.get(end).is_some_and(|token| token.text == ")") {
        end + 1
    } else {
        end
    };
    let next_is_number = tokens
        .iter()
        .skip(end)
        .find(|token| token.text != ":" && token.text != ".")
        .is_some_and(|token| token.is_number);
    (!next_is_number).then_some((said, end))
}

fn names_nothing(before: &[Token<'_>]) -> bool {
    before.iter().all(|token| {
        let word = token.text.to_lowercase();
        !token.text.chars().any(char::is_alphabetic)
            || EMPTY.contains(&word.as_str())
            || warrants(*token).is_some()
    })
}

/// How a number can be read. A blank that parts thousands is read as one; none for what is no number, as a date.
fn readings(text: &str) -> Vec<f64> {
    match number(text) {
        Ok(value) => vec![value],
        Err(ParseError::TwoReadings {
            as_decimals,
            as_thousands,
            ..
        }) => vec![as_decimals, as_thousands],
        Err(_) => Vec::new(),
    }
}
