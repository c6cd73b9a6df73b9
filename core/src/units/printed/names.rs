//! Names in printed text.

/// What the words before a number name.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Named<T> {
    /// This.
    One(T),
    /// Something that is known and is none of what is looked for, a compound, or several things at once.
    Other,
    /// Nothing that is known.
    Nothing,
}

/// Words behind a mineral that make it a compound, of which it is a part only.
const COMPOUNDS: &[&str] = &[
    "oxide",
    "sulphate",
    "sulfate",
    "carbonate",
    "chloride",
    "phosphate",
    "iodide",
    "iodate",
    "selenite",
    "selenate",
    "chelate",
    "proteinate",
    "hydrochloride",
    "hcl",
    "acetate",
    "gluconate",
    "citrate",
    "hydroxychloride",
    "bicarbonate",
    "yeast",
];

/// What the words before a number name. `phrases` are in lower case and part words with one blank; the longest that fits
/// holds, and one that stands for `None` is known and is not looked for. `symbols` are matched as they are written, as the
/// last word only.
///
/// What stands in brackets, and what stands behind "as" or "from", says in which form it is: it names the thing only where
/// nothing before it does.
pub fn named<T: Copy + PartialEq>(
    before: &str,
    phrases: &[(&str, Option<T>)],
    symbols: &[(&str, T)],
) -> Named<T> {
    let (outside, inside) = brackets(before);
    let words: Vec<&str> = words(&outside).collect();
    let form = words
        .iter()
        .position(|word| matches!(word.to_lowercase().as_str(), "as" | "from"))
        .filter(|at| *at > 0)
        .unwrap_or(words.len());
    match among(words.get(..form).unwrap_or_default(), phrases, symbols) {
        Named::Nothing => {
            let words: Vec<&str> = self::words(&inside).collect();
            among(&words, phrases, symbols)
        }
        found => found,
    }
}

fn words(text: &str) -> impl Iterator<Item = &str> {
    text.split(|c: char| !c.is_alphanumeric())
        .filter(|word| !word.is_empty())
}

/// The text outside of brackets, and that inside; a bracket that closes before it opened belongs to the words before.
fn brackets(text: &str) -> (String, String) {
    let (mut outside, mut inside) = (String::new(), String::new());
    let mut depth = 0_usize;
    for c in text.chars() {
        match c {
            '(' | '[' => {
                depth += 1;
                outside.push(' ');
                inside.push(' ');
            }
            ')' | ']' => {
                depth = depth.saturating_sub(1);
                outside.push(' ');
                inside.push(' ');
            }
            _ if depth > 0 => inside.push(c),
            _ => outside.push(c),
        }
    }
    (outside, inside)
}

fn among<T: Copy + PartialEq>(
    words: &[&str],
    phrases: &[(&str, Option<T>)],
    symbols: &[(&str, T)],
) -> Named<T> {
    let lower: Vec<String> = words.iter().map(|word| word.to_lowercase()).collect();
    let mut found: Option<Option<T>> = None;
    let mut add = |named: Option<T>| {
        found = match found {
            Some(before) if before != named => Some(None),
            _ => Some(named),
        };
    };
    let mut at = 0;
    while at < lower.len() {
        let rest = lower.get(at..).unwrap_or_default();
        let longest = phrases
            .iter()
            .filter_map(|(phrase, named)| Some((fits(rest, phrase)?, *named)))
            .max_by_key(|(length, _)| *length);
        let Some((length, named)) = longest else {
            at += 1;
            continue;
        };
        at += length;
        let next = lower.get(at).map(String::as_str).unwrap_or_default();
        if COMPOUNDS.contains(&next) {
            add(None);
            at += 1;
        } else {
            add(named);
        }
    }
    let warrant = |word: &&&str| {
        !matches!(
            word.to_lowercase().as_str(),
            "min" | "max" | "minimum" | "maximum" | "total" | "typical"
        )
    };
    let last = words.iter().rev().find(warrant);
    if let Some((_, named)) = symbols.iter().find(|(symbol, _)| last == Some(&symbol)) {
        add(Some(*named));
    }
    match found {
        Some(Some(named)) => Named::One(named),
        Some(None) => Named::Other,
        None => Named::Nothing,
    }
}

/// How many words a phrase takes at the beginning of these.
fn fits(words: &[String], phrase: &str) -> Option<usize> {
    let mut length = 0;
    for word in phrase.split(' ') {
        if words.get(length).map(String::as_str) != Some(word) {
            return None;
        }
        length += 1;
    }
    Some(length)
}
