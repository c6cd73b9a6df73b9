//! The units of printed numbers.

use super::tokens::Token;

/// What a number counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Counted {
    /// Percent.
    Percent,
    /// Grams.
    Gram,
    /// Milligrams.
    Milligram,
    /// Micrograms.
    Microgram,
    /// International units.
    InternationalUnit,
    /// Megajoules.
    Megajoule,
    /// Megacalories.
    Megacalorie,
}

/// In how much of what.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Per {
    /// In a kilogram; for percent, in the whole.
    Kilogram,
    /// In a serving.
    Serving,
    /// For 100 kg of body weight.
    HundredKgBody,
}

/// A unit that is understood.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct PrintedUnit {
    /// What is counted.
    pub counted: Counted,
    /// In how much.
    pub per: Per,
    /// Whether it says that it counts digestible energy.
    pub digestible: bool,
}

/// A unit where it was found.
#[derive(Clone, Copy, Debug)]
pub(super) struct Found<'a> {
    pub(super) said: &'a str,
    pub(super) unit: Option<PrintedUnit>,
    /// Where it begins, in bytes.
    pub(super) start: usize,
    /// Where it ends, in bytes.
    pub(super) end: usize,
    /// The token after it.
    pub(super) next: usize,
}

/// A word that begins a unit; those that no line of a label is read in are `None`.
fn counted(word: &str) -> Option<Option<Counted>> {
    Some(match word {
        "%" | "percent" | "pct" => Some(Counted::Percent),
        "g" | "gram" | "grams" => Some(Counted::Gram),
        "mg" | "ppm" | "milligram" | "milligrams" => Some(Counted::Milligram),
        "ug" | "µg" | "μg" | "mcg" | "microgram" | "micrograms" => Some(Counted::Microgram),
        "iu" => Some(Counted::InternationalUnit),
        "mj" => Some(Counted::Megajoule),
        "mcal" => Some(Counted::Megacalorie),
        "kcal" | "kj" | "ppb" | "‰" | "kg" | "cfu" => None,
        _ => return None,
    })
}

/// The tokens from one on, in lower case, one at a time.
struct Reader<'t, 'a> {
    tokens: &'t [Token<'a>],
    at: usize,
    end: usize,
}

impl Reader<'_, '_> {
    fn peek(&self, ahead: usize) -> String {
        self.tokens
            .get(self.at + ahead)
            .map(|token| token.text.to_lowercase())
            .unwrap_or_default()
    }

    fn take(&mut self, count: usize) {
        self.at += count;
        if let Some(token) = self.at.checked_sub(1).and_then(|at| self.tokens.get(at)) {
            self.end = token.end;
        }
    }

    fn eat(&mut self, words: &[&str]) -> bool {
        let there = words
            .iter()
            .enumerate()
            .all(|(ahead, word)| self.peek(ahead) == *word);
        if there {
            self.take(words.len());
        }
        there
    }

    fn any(&mut self, choices: &[&[&str]]) -> bool {
        choices.iter().any(|words| self.eat(words))
    }
}

/// What body weight is called.
const BODY: &[&[&str]] = &[
    &["of", "body", "weight"],
    &["body", "weight"],
    &["of", "bodyweight"],
    &["bodyweight"],
    &["bwt"],
    &["bw"],
    &["live", "weight"],
    &["liveweight"],
];

/// The unit that begins at a token.
fn read<'a>(line: &'a str, tokens: &[Token<'a>], from: usize) -> Option<Found<'a>> {
    let start = tokens.get(from)?.start;
    let mut reader = Reader {
        tokens,
        at: from,
        end: start,
    };
    let word = reader.peek(0);
    let counted = if reader.any(&[&["i", ".", "u", "."], &["i", ".", "u"]]) {
        Some(Counted::InternationalUnit)
    } else if reader.eat(&["per", "cent"]) {
        Some(Counted::Percent)
    } else {
        let counted = counted(&word)?;
        reader.take(1);
        counted
    };
    let mut digestible = reader.eat(&["de"]);
    let whole = matches!(
        word.as_str(),
        "%" | "ppm" | "percent" | "pct" | "per" | "‰" | "ppb"
    );
    // What is counted in the whole can be of a dose all the same: then it is not understood.
    let per = if reader.any(&[&["/"], &["per"], &["in", "a"], &["a"]]) {
        reader.eat(&["a"]);
        denominator(&mut reader, counted).filter(|_| !whole)
    } else {
        whole.then_some(Per::Kilogram)
    };
    let at = reader.at;
    if !digestible && reader.eat(&["de"]) {
        digestible = true;
    }
    if !digestible {
        reader.at = at;
    }
    let hundred_grams = per == Some(Per::Kilogram) && per_hundred_grams(tokens, from, at);
    let unit = counted.zip(per).map(|(counted, per)| PrintedUnit {
        counted: if hundred_grams {
            Counted::Percent
        } else {
            counted
        },
        per,
        digestible,
    });
    Some(Found {
        said: line.get(start..reader.end).unwrap_or_default(),
        unit,
        start,
        end: reader.end,
        next: reader.at,
    })
}

/// Whether the unit from one token to another is of 100 g.
fn per_hundred_grams(tokens: &[Token<'_>], from: usize, to: usize) -> bool {
    tokens
        .get(from..to)
        .unwrap_or_default()
        .iter()
        .any(|token| token.is_number)
}

/// What stands behind "per". Grams in 100 g are percent; everything else of 100 g is not understood.
fn denominator(reader: &mut Reader<'_, '_>, counted: Option<Counted>) -> Option<Per> {
    if reader.any(&[&["100", "kg"], &["100kg"]]) {
        let feed = reader.any(&[&["of", "feed"], &["feed"]]);
        reader.any(BODY);
        return (!feed).then_some(Per::HundredKgBody);
    }
    if reader.any(&[&["100", "g"], &["100g"]]) {
        return (counted == Some(Counted::Gram)).then_some(Per::Kilogram);
    }
    if reader.any(&[&["kg"], &["kilo"], &["kilogram"]]) {
        // So much a kilogram of body weight is no content.
        return (!reader.any(BODY)).then_some(Per::Kilogram);
    }
    if reader.any(&[&["serving"], &["dose"], &["portion"]]) {
        return Some(Per::Serving);
    }
    // A day, a tonne, 50 g: kept with the unit, so that it is not taken for something else.
    let next = reader.peek(0);
    if next.chars().next().is_some_and(char::is_numeric) {
        reader.take(2);
    } else if !next.is_empty() {
        reader.take(1);
    }
    None
}

/// The unit behind a number, whose next token this is.
pub(super) fn after<'a>(line: &'a str, tokens: &[Token<'a>], next: usize) -> Option<Found<'a>> {
    if let Some(found) = read(line, tokens, next) {
        return Some(found);
    }
    // "400 (mg/kg)"
    let bracket = tokens.get(next)?.text == "(";
    read(line, tokens, next + 1).filter(|_| bracket)
}

/// The unit among the words before a number, the last of them: "Copper, mg/kg". A bare "g" or "mg" there is no unit.
pub(super) fn before<'a>(line: &'a str, words: &[Token<'a>]) -> Option<Found<'a>> {
    (0..words.len())
        .rev()
        .find_map(|at| read(line, words, at).filter(|found| found.unit.is_some()))
}
