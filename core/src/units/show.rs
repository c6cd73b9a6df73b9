//! Showing a number: the only place that rounds.
//!
//! Judging uses the unrounded value. A shown figure never contradicts its verdict: [`beside`] shows as many decimals
//! as it takes to stay on its side of a limit. Weighing targets round towards safety: [`step_down`] at a ceiling,
//! [`step_up`] at a floor.

use super::AsFed;

/// The most decimals a shown figure may need to stay on its side of a limit.
// numeric: beyond six decimals two values are the same reading on every instrument here
const MOST_DECIMALS: usize = 6;

/// A number with a fixed count of decimals, trailing zeros kept; never "-0".
pub fn fixed(value: f64, decimals: usize) -> String {
    let text = format!("{value:.decimals$}");
    match text.strip_prefix('-') {
        Some(rest) if rest.chars().all(|c| c == '0' || c == '.') => rest.to_owned(),
        _ => text,
    }
}

/// A value judged against a limit, with at least `decimals` decimals and as many more as keep it on its side.
pub fn beside(value: f64, limit: f64, decimals: usize) -> String {
    for places in decimals..=MOST_DECIMALS {
        let shown = fixed(value, places);
        let same_side = shown
            .parse::<f64>()
            .is_ok_and(|read| read.partial_cmp(&limit) == value.partial_cmp(&limit));
        if same_side {
            return shown;
        }
    }
    fixed(value, MOST_DECIMALS)
}

/// A weighing target at a ceiling: down to a whole step of the scale.
pub fn step_down(target: AsFed, step: AsFed) -> AsFed {
    step * whole_steps(target, step).floor()
}

/// A weighing target at a floor: up to a whole step of the scale.
pub fn step_up(target: AsFed, step: AsFed) -> AsFed {
    step * whole_steps(target, step).ceil()
}

/// How many steps a target is, forgiving the last bit of a binary fraction.
fn whole_steps(target: AsFed, step: AsFed) -> f64 {
    let steps = target / step;
    let nearest = steps.round();
    // numeric: a billionth of a step is the arithmetic's, not the scale's
    if (steps - nearest).abs() < 1e-9 {
        nearest
    } else {
        steps
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_figure_never_contradicts_its_verdict() {
        assert_eq!(beside(10.02, 10.0, 1), "10.02");
        assert_eq!(beside(9.96, 10.0, 1), "9.96");
        assert_eq!(beside(9.4, 10.0, 1), "9.4");
        assert_eq!(beside(10.0, 10.0, 1), "10.0");
        assert_eq!(fixed(-0.01, 1), "0.0");
    }

    #[test]
    fn a_target_rounds_down_at_a_ceiling_and_up_at_a_floor() {
        let step = AsFed::kg(0.05);
        assert!((step_down(AsFed::kg(3.64), step).to_kg() - 3.60).abs() < 1e-9);
        assert!((step_up(AsFed::kg(3.61), step).to_kg() - 3.65).abs() < 1e-9);
        assert!((step_down(AsFed::kg(3.60), step).to_kg() - 3.60).abs() < 1e-9);
        assert!((step_up(AsFed::kg(0.3), AsFed::kg(0.1)).to_kg() - 0.3).abs() < 1e-9);
    }
}
