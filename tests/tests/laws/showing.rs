//! Showing a number never contradicts what was judged, and a weighing target keeps to its side.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::units::AsFed;
use tussock_core::units::show::{beside, fixed, step_down, step_up};

/// Beyond this many decimals nothing is shown.
const FINEST: f64 = 1e-6;

/// Targets and steps as a scale has them: whole grams, steps of 10 to 500 g.
fn scale() -> impl Strategy<Value = (AsFed, AsFed)> {
    let step = prop::sample::select(vec![10_u32, 20, 50, 100, 200, 250, 500]);
    (0_u32..30_000, step).prop_map(|(grams, step)| {
        (
            AsFed::kg(f64::from(grams) / 1000.0),
            AsFed::kg(f64::from(step) / 1000.0),
        )
    })
}

fn is_whole(target: AsFed, step: AsFed) -> bool {
    let steps = target / step;
    (steps - steps.round()).abs() < 1e-6
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_number_has_as_many_decimals_as_asked_and_no_minus_at_zero(
        value in -1.0e6..1.0e6_f64, decimals in 0_usize..8
    ) {
        let shown = fixed(value, decimals);
        let after = shown.split_once('.').map_or(0, |(_, part)| part.len());
        prop_assert_eq!(after, decimals);
        let zero = shown.chars().all(|c| matches!(c, '0' | '.' | '-'));
        prop_assert!(!(zero && shown.starts_with('-')), "{shown}");
    }

    #[test]
    fn a_figure_stays_on_its_side_of_the_limit(
        limit in -1.0e4..1.0e4_f64, off in -1.0..1.0_f64, digits in 0_i32..6, decimals in 0_usize..4
    ) {
        // The limit as people write limits: with few decimals.
        let limit = (limit * 10.0).round() / 10.0;
        let value = limit + off * 10_f64.powi(-digits);
        let shown = beside(value, limit, decimals);
        let read: f64 = shown.parse().unwrap_or(f64::NAN);
        let same = read.partial_cmp(&limit) == value.partial_cmp(&limit);
        prop_assert!(same || (value - limit).abs() < FINEST, "{value} beside {limit}: {shown}");
        prop_assert!((read - value).abs() <= 0.5 * 10_f64.powi(-i32::try_from(decimals).unwrap_or(0)) + FINEST);
    }

    #[test]
    fn a_ceiling_is_never_passed_and_a_floor_never_missed((target, step) in scale()) {
        let (down, up) = (step_down(target, step), step_up(target, step));
        let slack = 1e-9;
        prop_assert!(down.to_kg() <= target.to_kg() + slack);
        prop_assert!(up.to_kg() >= target.to_kg() - slack);
        prop_assert!((target - down).to_kg() < step.to_kg() + slack);
        prop_assert!((up - target).to_kg() < step.to_kg() + slack);
        prop_assert!(is_whole(down, step) && is_whole(up, step));
    }

    #[test]
    fn a_target_on_a_step_stays_there((target, step) in scale()) {
        for stepped in [step_down(target, step), step_up(target, step)] {
            prop_assert!((step_down(stepped, step) - stepped).to_kg().abs() < 1e-9);
            prop_assert!((step_up(stepped, step) - stepped).to_kg().abs() < 1e-9);
        }
    }

    #[test]
    fn more_is_never_stepped_to_less((target, step) in scale(), more in 0_u32..5000) {
        let larger = target + AsFed::kg(f64::from(more) / 1000.0);
        let slack = AsFed::kg(1e-9);
        prop_assert!(step_down(target, step) <= step_down(larger, step) + slack);
        prop_assert!(step_up(target, step) <= step_up(larger, step) + slack);
    }
}
