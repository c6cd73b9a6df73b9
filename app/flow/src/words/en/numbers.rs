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
    let size = value.abs();
    if size < 1.0 {
        2
    } else if size < 10.0 {
        1
    } else {
        0
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
fn side(chance: f64) -> i8 {
    if chance >= *CHANCE_WITHIN {
        1
    } else if chance <= *CHANCE_OVER {
        -1
    } else {
        0
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
    if side(chance) > 0 {
        "more than 999 in 1000".to_owned()
    } else if side(chance) < 0 {
        "under 1 in 1000".to_owned()
    } else {
        // So near a line that no count of a thousand tells which side: the figure itself does.
        let line = if chance > f64::midpoint(*CHANCE_OVER, *CHANCE_WITHIN) {
            *CHANCE_WITHIN
        } else {
            *CHANCE_OVER
        };
        format!("{} in 10", beside(chance * 10.0, line * 10.0, 1))
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
