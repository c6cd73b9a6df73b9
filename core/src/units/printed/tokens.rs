//! A line, cut into words, numbers and marks.

/// A word, a number or a mark of a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Token<'a> {
    /// As it stands in the line.
    pub(super) text: &'a str,
    /// Where it begins, in bytes.
    pub(super) start: usize,
    /// Where it ends.
    pub(super) end: usize,
    /// Whether it is a number.
    pub(super) is_number: bool,
}

/// Blanks that are printed inside a number only.
const INSIDE: &[char] = &['\u{a0}', '\u{202f}', '\u{2009}'];

/// Letters that may follow a number without a blank: its unit. Anything else glued to a number makes it the code of an
/// additive or the number of a vitamin.
const UNITS: &[&str] = &[
    "g", "kg", "mg", "ug", "µg", "μg", "mcg", "iu", "ppm", "mj", "mcal", "kcal", "kj", "percent",
];

fn end_of(line: &str, from: usize, holds: impl Fn(char) -> bool) -> usize {
    let rest = line.get(from..).unwrap_or_default();
    from + rest.find(|c: char| !holds(c)).unwrap_or(rest.len())
}

/// Cuts a line.
pub(super) fn tokens(line: &str) -> Vec<Token<'_>> {
    let mut found: Vec<Token<'_>> = Vec::new();
    let mut at = 0;
    while let Some(first) = line.get(at..).and_then(|rest| rest.chars().next()) {
        if first.is_whitespace() {
            at += first.len_utf8();
            continue;
        }
        let (end, is_number) = if starts_number(line, at) && !is_glued(line, at, &found) {
            match number_end(line, at) {
                Some(end) => (end, true),
                // ".5abc": the mark stands alone.
                None => (word_end(line, at).max(at + first.len_utf8()), false),
            }
        } else if first.is_alphanumeric() {
            (word_end(line, at), false)
        } else {
            (at + first.len_utf8(), false)
        };
        found.push(Token {
            text: line.get(at..end).unwrap_or_default(),
            start: at,
            end,
            is_number,
        });
        at = end;
    }
    found
}

fn word_end(line: &str, from: usize) -> usize {
    end_of(line, from, char::is_alphanumeric)
}

/// A digit, or a mark for decimals with a digit behind it.
fn starts_number(line: &str, at: usize) -> bool {
    let mut chars = line.get(at..).unwrap_or_default().chars();
    match chars.next() {
        Some(c) if c.is_ascii_digit() => true,
        Some('.' | ',') => chars.next().is_some_and(|c| c.is_ascii_digit()),
        _ => false,
    }
}

/// Whether a hyphen ties it to a word before it: omega-3, B-12.
fn is_glued(line: &str, at: usize, found: &[Token<'_>]) -> bool {
    let mut before = found.iter().rev();
    let (Some(hyphen), Some(word)) = (before.next(), before.next()) else {
        return false;
    };
    hyphen.text == "-"
        && hyphen.end == at
        && word.end == hyphen.start
        && !word.is_number
        && line
            .get(word.start..word.end)
            .is_some_and(|text| text.chars().any(char::is_alphabetic))
}

/// Where a number ends; `None` when letters that are no unit are glued to it.
fn number_end(line: &str, from: usize) -> Option<usize> {
    let run = |from| end_of(line, from, |c| c.is_ascii_digit() || c == '.' || c == ',');
    let trimmed = |from: usize, end: usize| {
        let text = line.get(from..end).unwrap_or_default();
        from + text.trim_end_matches(['.', ',']).len()
    };
    let mut end = trimmed(from, run(from));
    // Thousands parted by a blank: one that is only printed so, or any before three noughts.
    while let Some(next) = line.get(end..).and_then(|rest| rest.chars().next()) {
        let group = end + next.len_utf8();
        let group_end = trimmed(group, run(group));
        let digits = line.get(group..group_end).unwrap_or_default();
        let parts = INSIDE.contains(&next) || next == ' ';
        let sure = INSIDE.contains(&next) || digits == "000";
        // numeric: digits in a group of thousands
        if !(parts && sure && digits.len() == 3 && digits.bytes().all(|d| d.is_ascii_digit())) {
            break;
        }
        end = group_end;
    }
    let after = line.get(end..).unwrap_or_default();
    let letters_end = end_of(after, 0, char::is_alphabetic);
    let letters = after.get(..letters_end).unwrap_or_default();
    let then = after.get(letters_end..).unwrap_or_default();
    if letters.is_empty() {
        // "3-nitro": a name.
        let hyphen = after.strip_prefix('-');
        return hyphen
            .is_none_or(|rest| !rest.starts_with(char::is_alphabetic))
            .then_some(end);
    }
    let unit = UNITS.contains(&letters.to_lowercase().as_str());
    (unit && !then.starts_with(|c: char| c.is_ascii_digit())).then_some(end)
}
