//! How a figure is written. Only `units::show` of the core rounds.

use tussock_core::forage::published::{CHANCE_OVER, CHANCE_WITHIN};
use tussock_core::units::show::{beside, fixed};

/// A figure without the zeros that say nothing: "1.50" is "1.5", "7.0" is "7".
pub(super) fn trimmed(figure: String) -> String {
    if figure.contains('.') {
        figure
            .trim_end_matches('0')
            .trim_end_matches('.')
            .to_owned()
    } else {
        figure
    }
}

/// A figure with at most so many decimals.
pub(super) fn up_to(value: f64, decimals: usize) -> String {
    trimmed(fixed(value, decimals))
}

/// The same, with as many more as keep it on its side of a limit.
pub(super) fn up_to_beside(value: f64, limit: f64, decimals: usize) -> String {
    trimmed(beside(value, limit, decimals))
}

/// Decimals that suit a figure of this size: three digits are what a scale or a laboratory gives.
pub(super) fn decimals_of(value: f64) -> usize {
    match value.abs() {
        size if size < 1.0 => 2,
        size if size < 10.0 => 1,
        _ => 0,
    }
}

/// A figure with decimals that suit its size; what is above nothing never reads as nothing.
pub(super) fn sized(value: f64) -> String {
    up_to_beside(value, 0.0, decimals_of(value))
}

/// The figures of a least and a most, written once when they read the same.
pub(super) fn between(low: &str, high: &str, word: &str) -> String {
    if low == high {
        low.to_owned()
    } else {
        format!("{low} {word} {high}")
    }
}

/// Which side of the verdict on sugar a chance lies on.
#[derive(PartialEq)]
enum Side {
    Passes,
    Between,
    Fails,
}

fn side(chance: f64) -> Side {
    if chance >= *CHANCE_WITHIN {
        Side::Passes
    } else if chance <= *CHANCE_OVER {
        Side::Fails
    } else {
        Side::Between
    }
}

/// A chance that no verdict hangs on: tenths where they are not a certainty, else hundredths.
pub(super) fn odds(chance: f64) -> String {
    if !chance.is_finite() {
        return "not known".to_owned();
    }
    let sure = |count: &str, whole: &str| count == "0" || count == whole;
    let (tenths, hundredths) = (fixed(chance * 10.0, 0), fixed(chance * 100.0, 0));
    if !sure(&tenths, "10") {
        format!("{tenths} in 10")
    } else if !sure(&hundredths, "100") {
        format!("{hundredths} in 100")
    } else if chance > f64::midpoint(0.0, 1.0) {
        "more than 99 in 100".to_owned()
    } else {
        "under 1 in 100".to_owned()
    }
}

/// A chance in words, on its own side of the verdict and never a certainty that is not there.
pub(super) fn chance(chance: f64) -> String {
    if !chance.is_finite() {
        return "not known".to_owned();
    }
    if chance <= 0.0 {
        return "0 in 10".to_owned();
    }
    if chance >= 1.0 {
        return "10 in 10".to_owned();
    }
    for whole in [10_u32, 100, 1000] {
        let count = fixed(chance * f64::from(whole), 0);
        let read = count.parse::<f64>().unwrap_or_default() / f64::from(whole);
        let sure = read <= 0.0 || read >= 1.0;
        if !sure && side(read) == side(chance) {
            return format!("{count} in {whole}");
        }
    }
    match side(chance) {
        Side::Passes => "more than 999 in 1000".to_owned(),
        Side::Fails => "under 1 in 1000".to_owned(),
        Side::Between => {
            // So near a line that no count of a thousand tells which side: the figure itself does.
            let line = if chance > f64::midpoint(*CHANCE_OVER, *CHANCE_WITHIN) {
                *CHANCE_WITHIN
            } else {
                *CHANCE_OVER
            };
            format!("{} in 10", beside(chance * 10.0, line * 10.0, 1))
        }
    }
}

/// A part as a percentage that never reads as nothing.
pub(super) fn percent_above_nothing(part: f64) -> String {
    format!("{} %", up_to_beside(part * 100.0, 0.0, 0))
}

/// Kilograms that never read as nothing.
pub(super) fn kg_above_nothing(kg: f64) -> String {
    format!("{} kg", up_to_beside(kg, 0.0, 1))
}

/// The least that may be typed, to a tenth: never a figure that would itself be refused.
pub(super) fn not_under(least: f64) -> String {
    let shown = fixed(least, 1);
    if shown.parse::<f64>().is_ok_and(|read| read < least) {
        up_to(least + TENTH, 1)
    } else {
        trimmed(shown)
    }
}

/// The most that may be typed, to a tenth.
pub(super) fn not_over(most: f64) -> String {
    let shown = fixed(most, 1);
    if shown.parse::<f64>().is_ok_and(|read| read > most) {
        up_to(most - TENTH, 1)
    } else {
        trimmed(shown)
    }
}

/// A step of the last decimal that is shown of a range.
const TENTH: f64 = 0.1;
