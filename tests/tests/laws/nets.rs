//! Nets: the scale, what was timed, what was left.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::day::{
    Left, NetKind, Timed, Timing, eating_time, hay_in, key_step, left_dry, left_part, nudged,
    own_rate, reading_for,
};
use tussock_core::limits::Ends;
use tussock_core::units::{AsFed, BodyMass, DryMatter};

fn kinds() -> impl Strategy<Value = NetKind> {
    prop::sample::select(vec![
        NetKind::Loose,
        NetKind::LargeHoles,
        NetKind::MediumHoles,
        NetKind::SmallHoles,
        NetKind::DoubleSmall,
    ])
}

fn left() -> impl Strategy<Value = Left> {
    prop_oneof![
        (0.0..=1.0).prop_map(|part| Left::ByEye { part }),
        (0.0..30.0).prop_map(|hay| Left::Dry {
            hay: AsFed::kg(hay)
        }),
        (0.0..60.0, 0.0..60.0).prop_map(|(left, hung)| Left::Wet {
            left: AsFed::kg(left),
            hung: AsFed::kg(hung),
        }),
    ]
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_reading_less_the_net_is_the_hay(hay in 0.0..40.0, own in 0.0..5.0) {
        let (hay, own) = (AsFed::kg(hay), AsFed::kg(own));
        let back = hay_in(reading_for(hay, own), own);
        prop_assert!((back.to_kg() - hay.to_kg()).abs() < 1e-9);
    }

    #[test]
    fn plus_and_minus_are_inverse(grams in 100u32..40_000, slice in 100u32..5_000, by_slice: bool) {
        let reading = AsFed::kg(f64::from(grams) / 1000.0);
        let step = if by_slice { AsFed::kg(f64::from(slice) / 1000.0) } else { key_step() };
        prop_assert_eq!(nudged(nudged(reading, step, 1), step, -1), reading);
        let less = nudged(reading, step, -1);
        prop_assert!(AsFed::ZERO <= less);
        if step <= reading {
            prop_assert_eq!(nudged(less, step, 1), reading);
        }
    }

    #[test]
    fn what_was_left_is_never_more_than_hung(
        left in left(),
        hay in proptest::option::of(0.0..30.0),
        soaked: bool,
        least in 0.0..10.0,
        more in 0.0..1.0,
        most in 0.0..1.0,
    ) {
        let hung = Ends::new(least, least + more, least + more + most).map(DryMatter::kg);
        if let Ok(Some(part)) = left_part(left, hay.map(AsFed::kg), soaked) {
            prop_assert!(0.0 <= part.least && part.least <= part.likely);
            prop_assert!(part.likely <= part.most && part.most <= 1.0);
            let dry = left_dry(part, hung);
            prop_assert!(dry.least <= hung.least && dry.likely <= hung.likely && dry.most <= hung.most);
            prop_assert!(DryMatter::ZERO <= dry.least && dry.least <= dry.likely && dry.likely <= dry.most);
        }
    }

    #[test]
    fn soaked_hay_is_never_taken_for_dry(hay in 0.0..30.0, hung in 0.0..30.0) {
        let left = Left::Dry { hay: AsFed::kg(hay) };
        prop_assert!(left_part(left, Some(AsFed::kg(hung)), true).is_err());
    }

    #[test]
    fn more_hay_lasts_longer_and_the_time_is_in_proportion(
        body in 60.0..900.0,
        kg in 0.1..20.0,
        net in kinds(),
    ) {
        let time = |kg| eating_time(BodyMass::kg(body), net, DryMatter::kg(kg)).hours;
        let (one, two) = (time(kg), time(2.0 * kg));
        prop_assert!(one.least <= one.likely && one.likely <= one.most);
        prop_assert!((two.likely / one.likely - 2.0).abs() < 1e-9);
    }

    #[test]
    fn the_own_rate_holds_every_timing_and_is_no_slower_than_any_bound(
        nets in prop::collection::vec((0.5..8.0, 0.5..14.0, any::<bool>()), 1..9),
    ) {
        let timings: Vec<Timing> = nets
            .into_iter()
            .map(|(kg, hours, found)| Timing { eaten: DryMatter::kg(kg), hours, found })
            .collect();
        let own = own_rate(&timings);
        if let Some(rate) = &own.rate {
            prop_assert!(rate.slow <= rate.likely && rate.likely <= rate.fast);
            if let Some(least) = own.at_least {
                prop_assert!(least <= rate.slow + 1e-12);
            }
            for timing in timings.iter().rev() {
                if let Ok(Timed::Rate { kg_per_h }) = timing.says() && timings.len() <= 5 {
                    prop_assert!(kg_per_h <= rate.fast + 1e-9);
                }
            }
        } else {
            prop_assert_eq!(own.timings, 0);
        }
    }
}
