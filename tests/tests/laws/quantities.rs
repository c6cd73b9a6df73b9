//! Quantities: inverse conversions, conservation, order.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::units::{
    AsFed, BodyMass, Bounds, DryFraction, DryMatter, Energy, EnergyDensity, Instant, Length,
    NutrientMass, PartOfBody, ShareOfDm, Span, Temperature,
};

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-12 * a.abs().max(b.abs()).max(1.0)
}

fn dry() -> impl Strategy<Value = DryFraction> {
    (5.0..=100.0_f64).prop_filter_map("allowed", |percent| DryFraction::percent(percent).ok())
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn each_conversion_has_its_inverse(value in -1.0e6..1.0e6_f64) {
        prop_assert!(near(BodyMass::lb(value).to_lb(), value));
        prop_assert!(near(Length::inches(value).to_inches(), value));
        prop_assert!(near(Energy::mj(value).to_mj(), value));
        prop_assert!(near(EnergyDensity::mj_per_kg(value).to_mj_per_kg(), value));
        prop_assert!(near(NutrientMass::mg(value).to_mg(), value));
        prop_assert!(near(PartOfBody::percent(value).to_percent(), value));
        prop_assert!(near(ShareOfDm::percent(value).to_percent(), value));
        prop_assert!(near(ShareOfDm::mg_per_kg(value).to_mg_per_kg(), value));
        prop_assert!(near(Temperature::fahrenheit(value).to_fahrenheit(), value));
    }

    #[test]
    fn a_conversion_keeps_the_order(a in -1.0e6..1.0e6_f64, b in -1.0e6..1.0e6_f64) {
        prop_assume!((a - b).abs() > 1e-6);
        prop_assert_eq!(BodyMass::lb(a) < BodyMass::lb(b), a < b);
        prop_assert_eq!(Energy::mj(a) < Energy::mj(b), a < b);
        prop_assert_eq!(Temperature::fahrenheit(a) < Temperature::fahrenheit(b), a < b);
    }

    #[test]
    fn dry_matter_lies_within_the_feed_and_comes_back(kg in 0.0..1.0e4_f64, dry in dry()) {
        let feed = AsFed::kg(kg);
        let matter = feed.dry(dry);
        prop_assert!(matter.to_kg() <= kg);
        prop_assert!(near(matter.as_fed(dry).to_kg(), kg));
    }

    #[test]
    fn a_nutrient_is_the_same_on_either_basis(
        kg in 0.0..100.0_f64, percent in 0.0..100.0_f64, dry in dry()
    ) {
        let (feed, share) = (AsFed::kg(kg), ShareOfDm::percent(percent));
        let by_dry = share.in_dry(feed.dry(dry)).to_g();
        let by_feed = share.as_fed(dry).to_fraction() * feed.to_kg() * 1000.0;
        prop_assert!(near(by_dry, by_feed), "{by_dry} {by_feed}");
        prop_assert!(near(share.as_fed(dry).of_dry(dry).to_percent(), percent));
    }

    #[test]
    fn a_part_of_the_body_comes_back(body in 30.0..1500.0_f64, kg in 0.0..40.0_f64) {
        let body = BodyMass::kg(body);
        prop_assert!(near(DryMatter::kg(kg).part_of(body).of(body).to_kg(), kg));
    }

    #[test]
    fn the_whole_is_the_sum_of_its_nets(kgs in prop::collection::vec(0.0..20.0_f64, 0..12), dry in dry()) {
        let nets: Vec<AsFed> = kgs.iter().copied().map(AsFed::kg).collect();
        let whole: AsFed = nets.iter().copied().sum();
        let matter: DryMatter = nets.iter().map(|net| net.dry(dry)).sum();
        prop_assert!(near(whole.dry(dry).to_kg(), matter.to_kg()));
    }

    #[test]
    fn a_fraction_outside_its_range_is_refused(percent in prop::num::f64::ANY) {
        let allowed = (5.0..=100.0).contains(&percent);
        prop_assert_eq!(DryFraction::percent(percent).is_ok(), allowed);
    }

    #[test]
    fn bounds_let_through_what_lies_between_them(
        value in prop::num::f64::ANY, a in -1.0e3..1.0e3_f64, b in -1.0e3..1.0e3_f64
    ) {
        let bounds = Bounds::new("x_kg", a.min(b), a.max(b));
        let inside = value >= bounds.min && value <= bounds.max;
        prop_assert_eq!(bounds.check(value).is_ok(), inside);
    }

    #[test]
    fn time_adds_up_and_never_overflows(at in any::<i64>(), minutes in any::<i64>()) {
        let (start, span) = (Instant::from_ms(at), Span::minutes(minutes));
        let _ = (start + span, start - span, span + span, Span::hours(minutes));
        if i128::from(at) + i128::from(minutes) * 60_000 == i128::from((start + span).to_ms())
            && (start + span).since(start) == span
        {
            prop_assert_eq!((start + span) - span, start);
            prop_assert_eq!(span.to_minutes(), minutes);
        }
    }

    #[test]
    fn a_countdown_in_minutes_never_runs_ahead(at in -1.0e12..1.0e12_f64) {
        #[allow(clippy::cast_possible_truncation, reason = "whole milliseconds")]
        let ms = at as i64;
        let left = Instant::from_ms(ms).since(Instant::from_ms(0));
        let shown = left.to_minutes() * 60_000;
        prop_assert!(shown <= ms && ms < shown + 60_000);
    }
}
