//! Laws of a soak, over every time and air.

use super::*;
use crate::units::{AsFed, DryFraction, DryMatter, Instant, Span, Temperature};
use proptest::prelude::*;

fn air() -> impl Strategy<Value = Air> {
    prop::sample::select(vec![
        Air::HardFrost,
        Air::Under16,
        Air::Mild,
        Air::Over20,
        Air::Over25,
    ])
}

fn water() -> impl Strategy<Value = Water> {
    prop::sample::select(vec![Water::TapWinter, Water::TapSummer, Water::HandHot])
}

/// A recipe, the minutes at which it was lifted and fed, if it was.
fn soak() -> impl Strategy<Value = (Recipe, SoakTimes)> {
    prop_oneof![soak_of(5..=120), soak_of(121..=960)]
}

fn soak_of(minutes: std::ops::RangeInclusive<u32>) -> impl Strategy<Value = (Recipe, SoakTimes)> {
    let later = || prop::option::of(0_i64..1500);
    (water(), minutes, later(), later()).prop_map(|(water, minutes, lifted, fed)| {
        let recipe = Recipe::minutes(water, minutes).unwrap();
        let wetted = Instant::from_ms(1_780_000_000_000);
        let lifted_at = lifted.map(|after| wetted + Span::minutes(after));
        let times = SoakTimes {
            lifted: lifted_at,
            fed: fed.map(|after| lifted_at.unwrap_or(wetted) + Span::minutes(after)),
            ..SoakTimes::started(wetted)
        };
        (recipe, times)
    })
}

proptest! {
    #[test]
    fn a_short_soak_is_thrown_away_by_twelve_hours((recipe, times) in soak_of(5..=120), air in air()) {
        prop_assert!(!recipe.is_long());
        let line = timeline(recipe, &times, air);
        prop_assert!(line.throw_away <= times.wetted + Span::hours(12));
        prop_assert_eq!(line.shortened.is_some(), line.throw_away < times.wetted + Span::hours(12));
    }

    #[test]
    fn a_long_soak_is_thrown_away_by_six_hours_after_lifting((recipe, times) in soak_of(121..=960), air in air()) {
        prop_assert!(recipe.is_long());
        let line = timeline(recipe, &times, air);
        let lifted = times.lifted.unwrap_or(line.lift_out);
        prop_assert!(line.throw_away <= lifted + Span::hours(6));
    }

    #[test]
    fn warmer_air_never_keeps_it_longer((recipe, times) in soak(), a in air(), b in air()) {
        let (cool, warm) = (a.min(b), a.max(b));
        let keeps = |air| timeline(recipe, &times, air).throw_away;
        prop_assert!(keeps(warm) <= keeps(cool));
    }

    #[test]
    fn lifting_late_never_keeps_it_longer((recipe, times) in soak(), air in air(), late in 0_i64..900) {
        let planned = SoakTimes { lifted: None, ..times };
        let line = timeline(recipe, &planned, air);
        let lifted = SoakTimes { lifted: Some(line.lift_out + Span::minutes(late)), ..times };
        prop_assert!(timeline(recipe, &lifted, air).throw_away <= line.throw_away);
    }

    #[test]
    fn the_state_never_goes_back(soak in soak(), air in air(), first in -60_i64..2000, after in 0_i64..2000) {
        let wetted = soak.1.wetted;
        let step = |minutes| state(Some(soak), air, wetted + Span::minutes(minutes)).step();
        prop_assert!(step(first) <= step(first + after));
    }

    #[test]
    fn a_state_and_its_deadline_agree(soak in soak(), air in air(), now in 0_i64..2000) {
        let at = soak.1.wetted + Span::minutes(now);
        let line = timeline(soak.0, &soak.1, air);
        let gone = matches!(state(Some(soak), air, at), TubState::ThrowAway { .. });
        prop_assert_eq!(gone, at >= line.throw_away);
    }

    #[test]
    fn a_loss_stays_between_nothing_and_six_tenths(water in water(), minutes in 0_i64..=960, wsc in prop::option::of(1.0..35.0)) {
        let wsc = wsc.map(crate::units::ShareOfDm::percent);
        let loss = sugar_loss(water, Span::minutes(minutes), wsc);
        for band in [Some(loss.expected), loss.usual, Some(loss.between_hays)].into_iter().flatten() {
            prop_assert!(0.0 <= band.low && band.low <= band.high && band.high <= 0.6);
        }
        prop_assert!(loss.expected.high <= loss.between_hays.high);
        let dry = dry_loss(Span::minutes(minutes)).part;
        prop_assert!(dry.in_order() && 0.0 <= dry.least && dry.most <= 0.3 + 1e-12);
    }

    #[test]
    fn longer_and_warmer_takes_no_less(a in 0_i64..=960, b in 0_i64..=960, cold in 0.0..40.0, more in 0.0..20.0) {
        let (short, long) = (Span::minutes(a.min(b)), Span::minutes(a.max(b)));
        let at = Temperature::celsius;
        prop_assert!(model_sugar_loss(short, at(cold)) <= model_sugar_loss(long, at(cold)));
        prop_assert!(model_sugar_loss(long, at(cold)) <= model_sugar_loss(long, at(cold + more)));
        prop_assert!(model_dry_loss(short) <= model_dry_loss(long));
    }

    #[test]
    fn what_was_weighed_is_eaten(target in 0.5..12.0, dry in 80.0..95.0, lost in 0.0..0.3) {
        let dry = DryFraction::percent(dry).unwrap();
        let weighed: AsFed = weigh_before_soaking(DryMatter::kg(target), dry, lost).unwrap();
        prop_assert!((weighed.dry(dry).to_kg() * (1.0 - lost) - target).abs() < 1e-9);
    }
}
