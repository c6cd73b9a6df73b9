//! Laws of reports, chances and mixes, over every value.

use super::*;
use crate::animal::{LotId, RiskLevel};
use crate::limits::sugar_limits;
use crate::units::{DryMatter, ShareOfDm};
use proptest::prelude::*;

fn risk() -> impl Strategy<Value = RiskLevel> {
    prop::sample::select(vec![
        RiskLevel::Proven,
        RiskLevel::AtRisk,
        RiskLevel::NotKnown,
    ])
}

fn class() -> impl Strategy<Value = ForageClass> {
    prop::sample::select(ForageClass::ALL)
}

fn tested(class: ForageClass, wsc: f64, esc: Option<f64>, starch: Option<f64>) -> SugarEstimate {
    let mut lot = Lot::of_class(LotId("a".into()), "a", class);
    let mut values = vec![(Analyte::Wsc, wsc)];
    values.extend(esc.map(|esc| (Analyte::Esc, esc)));
    values.extend(starch.map(|starch| (Analyte::Starch, starch)));
    let raw = RawReport {
        values,
        ..RawReport::empty(Basis::DryMatter)
    };
    lot.reports.push(LabReport::read(raw).unwrap().0);
    estimate(&lot, Fed::Dry)
}

/// Within is 2, not proven 1, over 0.
fn rank(judgement: &Judgement) -> u8 {
    match judgement.verdict {
        Verdict::Over { .. } => 0,
        Verdict::NotProven { .. } => 1,
        Verdict::Within { .. } => 2,
    }
}

proptest! {
    #[test]
    fn as_fed_and_dry_matter_are_the_same_report(dry in 20.0..100.0, wsc in 0.5..30.0, zinc in 5.0..90.0) {
        let read = |basis, part: f64| {
            LabReport::read(RawReport {
                dry_percent: Some(dry),
                values: vec![(Analyte::Wsc, wsc * part), (Analyte::Zinc, zinc * part)],
                ..RawReport::empty(basis)
            })
            .unwrap()
            .0
        };
        let fed = read(Basis::AsFed, dry / 100.0);
        let on_dry = read(Basis::DryMatter, 1.0);
        for analyte in [Analyte::Wsc, Analyte::Zinc] {
            let (a, b) = (fed.share(analyte).unwrap(), on_dry.share(analyte).unwrap());
            prop_assert!((a / b - 1.0).abs() < 1e-12);
        }
    }

    #[test]
    fn more_sugar_never_gives_a_better_verdict(
        class in class(), risk in risk(), wsc in 1.0..30.0, more in 0.0..15.0, starch in prop::option::of(0.0..5.0)
    ) {
        let limits = sugar_limits(risk).unwrap();
        let sweet = judge(&tested(class, wsc + more, None, starch), &limits);
        let plain = judge(&tested(class, wsc, None, starch), &limits);
        prop_assert!(rank(&sweet) <= rank(&plain));
        prop_assert!(sweet.verdict.chance() <= plain.verdict.chance());
    }

    #[test]
    fn a_stricter_risk_never_gives_a_better_verdict(
        class in class(), wsc in 1.0..30.0, esc in 0.2..0.95, starch in 0.0..5.0
    ) {
        let sugar = tested(class, wsc, Some(wsc * esc), Some(starch));
        let by = |risk| rank(&judge(&sugar, &sugar_limits(risk).unwrap()));
        prop_assert!(by(RiskLevel::Proven) <= by(RiskLevel::NotKnown));
    }

    #[test]
    fn not_within_always_shows_a_way_out(class in class(), risk in risk(), wsc in prop::option::of(1.0..30.0)) {
        let sugar = match wsc {
            Some(wsc) => tested(class, wsc, None, None),
            None => estimate(&Lot::of_class(LotId("a".into()), "a", class), Fed::Dry),
        };
        let judged = judge(&sugar, &sugar_limits(risk).unwrap());
        prop_assert_eq!(judged.verdict.is_within(), judged.ways_out.is_empty());
        prop_assert!(judged.verdict.is_within() || !judged.doubts.is_empty() || rank(&judged) == 0);
    }

    #[test]
    fn the_normal_distribution_rises_and_is_symmetric(z in -9.0..9.0, more in 0.0..3.0) {
        prop_assert!(normal_below(z) <= normal_below(z + more));
        prop_assert!((normal_below(z) + normal_below(-z) - 1.0).abs() < 1e-14);
    }

    #[test]
    fn a_mix_lies_between_its_parts(a in 1.0..25.0, b in 1.0..25.0, kg in 0.1..8.0, other in 0.1..8.0) {
        let part = |wsc, kg| MixPart {
            dry: DryMatter::kg(kg),
            sugar: Some(tested(ForageClass::Grass, wsc, None, Some(1.0))),
        };
        let day = mix(&[part(a, kg), part(b, other)]).unwrap().wsc_starch.unwrap();
        let mean = day.mean.to_percent() - 1.0;
        prop_assert!(a.min(b) - 1e-9 <= mean && mean <= a.max(b) + 1e-9);
        prop_assert!(day.spread <= ShareOfDm::percent(1.0 + 1e-9));
    }

    #[test]
    fn a_test_has_three_outcomes(mean in 2.0..30.0, spread in 0.1..8.0, limit in 5.0..15.0) {
        let outlook = test_outlook(Belief::percent(mean, spread), ShareOfDm::percent(limit));
        let sum = outlook.within + outlook.over + outlook.not_proven;
        prop_assert!((sum - 1.0).abs() < 1e-9);
        prop_assert!(outlook.within >= 0.0 && outlook.over >= 0.0);
    }
}
