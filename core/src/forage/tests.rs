//! The sugar of a hay in the words of the trade.

use super::*;
use crate::animal::{LotId, RiskLevel};
use crate::limits::{SugarLimits, sugar_limits};
use crate::units::{DryMatter, ShareOfDm};

fn limits(risk: RiskLevel) -> SugarLimits {
    sugar_limits(risk).unwrap()
}

fn lot(class: ForageClass, values: &[(Analyte, f64)]) -> Lot {
    let mut lot = Lot::of_class(LotId("a".into()), "Lane field", class);
    if !values.is_empty() {
        let raw = RawReport {
            values: values.to_vec(),
            ..RawReport::empty(Basis::DryMatter)
        };
        lot.reports.push(LabReport::read(raw).unwrap().0);
    }
    lot
}

fn judged(class: ForageClass, values: &[(Analyte, f64)], risk: RiskLevel) -> Judgement {
    judge(&estimate(&lot(class, values), Fed::Dry), &limits(risk))
}

#[test]
fn an_untested_grass_hay_is_not_proven_with_one_chance_in_three() {
    let j = judged(ForageClass::Grass, &[], RiskLevel::Proven);
    assert!(
        matches!(j.verdict, Verdict::NotProven { chance: Some(c) } if (c - 0.328).abs() < 0.001)
    );
    assert_eq!(j.doubts, [Doubt::Untested]);
    assert_eq!(j.ways_out, [WayOut::Soak, WayOut::Test, WayOut::AnotherLot]);
    assert_eq!(j.measure, Some(SugarMeasure::WscStarch));
}

#[test]
fn tested_at_eight_point_seven_is_within_and_at_nine_point_five_is_not_proven() {
    let tested = |wsc| {
        judged(
            ForageClass::Grass,
            &[(Analyte::Wsc, wsc), (Analyte::Starch, 1.0)],
            RiskLevel::Proven,
        )
    };
    let within = tested(7.7);
    assert!(within.verdict.is_within() && within.ways_out.is_empty());
    let near = tested(8.5);
    assert!((near.verdict.chance().unwrap() - 0.69).abs() < 0.01);
    assert_eq!(near.doubts, [Doubt::NearLimit]);
    assert!(matches!(tested(10.3).verdict, Verdict::Over { .. }));
}

#[test]
fn two_conventions_disagree_and_the_animal_at_risk_waits() {
    let values = [
        (Analyte::Esc, 6.0),
        (Analyte::Wsc, 11.5),
        (Analyte::Starch, 1.5),
    ];
    let proven = judged(ForageClass::Grass, &values, RiskLevel::Proven);
    assert!(matches!(proven.verdict, Verdict::NotProven { chance: Some(c) } if c > 0.9));
    assert!(matches!(
        proven.doubts.as_slice(),
        [Doubt::ConventionsDisagree {
            reckoned: false,
            ..
        }]
    ));
    let other = judged(ForageClass::Grass, &values, RiskLevel::NotKnown);
    assert!(other.verdict.is_within());
    assert_eq!(other.doubts.len(), 1);
}

#[test]
fn esc_alone_is_held_against_the_wsc_it_stands_for() {
    let values = [(Analyte::Esc, 7.6), (Analyte::Starch, 1.0)];
    let j = judged(ForageClass::Grass, &values, RiskLevel::Proven);
    assert_eq!(j.measure, Some(SugarMeasure::EscStarch));
    assert!(matches!(j.verdict, Verdict::NotProven { .. }));
    assert!(matches!(
        j.doubts.as_slice(),
        [Doubt::ConventionsDisagree { reckoned: true, .. }]
    ));
    let low = [(Analyte::Esc, 5.0), (Analyte::Starch, 1.0)];
    let j = judged(ForageClass::Grass, &low, RiskLevel::Proven);
    assert!(j.verdict.is_within());
}

#[test]
fn haylage_is_never_within_by_its_sugar_for_an_animal_at_risk() {
    let values = [(Analyte::Wsc, 4.0), (Analyte::Starch, 0.5)];
    let at_risk = judged(ForageClass::Haylage, &values, RiskLevel::AtRisk);
    assert!(matches!(at_risk.verdict, Verdict::NotProven { .. }));
    assert_eq!(at_risk.doubts, [Doubt::Haylage]);
    assert_eq!(at_risk.ways_out, [WayOut::AnotherLot]);
    let fat_only = judged(ForageClass::Haylage, &values, RiskLevel::NotKnown);
    assert!(fat_only.verdict.is_within());
}

#[test]
fn missing_starch_is_one_percent_in_grass_hay_and_never_zero() {
    let grass = estimate(&lot(ForageClass::Grass, &[(Analyte::Wsc, 8.0)]), Fed::Dry);
    assert!(grass.has(SugarNote::StarchAssumed));
    assert!((grass.wsc_starch.unwrap().mean.to_percent() - 9.0).abs() < 1e-9);
    let wheat = estimate(&lot(ForageClass::Wheat, &[(Analyte::Wsc, 8.0)]), Fed::Dry);
    assert!((wheat.wsc_starch.unwrap().mean.to_percent() - 20.2).abs() < 1e-9);
    assert!(wheat.wsc_starch.unwrap().spread > grass.wsc_starch.unwrap().spread);
}

#[test]
fn cereal_hay_is_high_until_tested() {
    let j = judged(ForageClass::Oat, &[], RiskLevel::Proven);
    assert!(matches!(j.verdict, Verdict::Over { .. }));
    assert_eq!(j.doubts, [Doubt::CerealUntested, Doubt::Untested]);
}

#[test]
fn an_as_fed_pass_is_a_fail_on_dry_matter() {
    let raw = RawReport {
        dry_percent: Some(88.0),
        values: vec![(Analyte::Nsc, 9.2)],
        ..RawReport::empty(Basis::AsFed)
    };
    let (report, findings) = LabReport::read(raw).unwrap();
    assert!((report.share(Analyte::Nsc).unwrap().to_percent() - 10.4545).abs() < 1e-3);
    assert_eq!(findings, [ReportFinding::NscUnexplained]);
    let without_dry = RawReport {
        values: vec![(Analyte::Nsc, 9.2)],
        ..RawReport::empty(Basis::AsFed)
    };
    assert_eq!(
        LabReport::read(without_dry),
        Err(ForageError::AsFedWithoutDryMatter)
    );
}

#[test]
fn what_cannot_be_is_said_and_the_report_is_kept() {
    let findings = |values: &[(Analyte, f64)]| {
        LabReport::read(RawReport {
            values: values.to_vec(),
            ..RawReport::empty(Basis::DryMatter)
        })
        .unwrap()
        .1
    };
    assert!(matches!(
        findings(&[(Analyte::Esc, 12.0), (Analyte::Wsc, 7.0)]).as_slice(),
        [ReportFinding::EscOverWsc { .. }]
    ));
    assert!(matches!(
        findings(&[(Analyte::Adf, 60.0), (Analyte::Ndf, 36.0)]).as_slice(),
        [ReportFinding::AdfOverNdf { .. }]
    ));
    assert_eq!(
        findings(&[(Analyte::Calcium, 0.0), (Analyte::Starch, 0.0)]),
        [ReportFinding::ZeroTakenAsNotMeasured {
            analyte: Analyte::Calcium
        }]
    );
    assert_eq!(
        findings(&[
            (Analyte::Nsc, 8.1),
            (Analyte::Esc, 6.0),
            (Analyte::Wsc, 9.9),
            (Analyte::Starch, 2.0)
        ]),
        [ReportFinding::NscIsEscStarch]
    );
    let out_of_range = RawReport {
        values: vec![(Analyte::Wsc, 110.0)],
        ..RawReport::empty(Basis::DryMatter)
    };
    assert!(matches!(
        LabReport::read(out_of_range),
        Err(ForageError::OutOfRange(_))
    ));
}

/// A cool-season hay on dry matter, and the same numbers as the laboratory would print them as fed.
const HAY: [(Analyte, f64); 6] = [
    (Analyte::CrudeProtein, 13.3),
    (Analyte::Ndf, 58.0),
    (Analyte::Fat, 3.2),
    (Analyte::Ash, 8.6),
    (Analyte::Wsc, 12.0),
    (Analyte::Starch, 1.2),
];

#[test]
fn exchanged_bases_show_in_the_sum_of_the_parts() {
    let read = |basis, dry, scale: f64| {
        LabReport::read(RawReport {
            dry_percent: Some(dry),
            values: HAY.iter().map(|(a, v)| (*a, v * scale)).collect(),
            ..RawReport::empty(basis)
        })
        .unwrap()
        .1
    };
    assert!(read(Basis::DryMatter, 88.0, 1.0).is_empty());
    assert!(read(Basis::AsFed, 88.0, 0.88).is_empty());
    assert!(matches!(
        read(Basis::AsFed, 88.0, 1.0).as_slice(),
        [ReportFinding::PartsOverWhole { .. }]
    ));
    assert!(matches!(
        read(Basis::DryMatter, 60.0, 0.6).as_slice(),
        [ReportFinding::PartsUnderWhole { .. }]
    ));
}

#[test]
fn a_mix_is_weighed_by_dry_matter() {
    let hay = estimate(&lot(ForageClass::Grass, &[]), Fed::Dry);
    let lucerne = estimate(&lot(ForageClass::Lucerne, &[]), Fed::Dry);
    let parts = [
        MixPart {
            dry: DryMatter::kg(7.0),
            sugar: Some(hay.clone()),
        },
        MixPart {
            dry: DryMatter::kg(3.0),
            sugar: Some(lucerne),
        },
        MixPart {
            dry: DryMatter::ZERO,
            sugar: None,
        },
    ];
    let day = mix(&parts).unwrap();
    assert!((day.wsc_starch.unwrap().mean.to_percent() - 11.7).abs() < 1e-9);
    assert!(day.wsc_starch.unwrap().spread < hay.wsc_starch.unwrap().spread);
    assert_eq!(day.origin, SugarOrigin::Mixed);
    assert_eq!(mix(&[]), None);
}

#[test]
fn a_part_nobody_knows_leaves_the_day_not_proven() {
    let straw = estimate(&lot(ForageClass::WheatStraw, &[]), Fed::Dry);
    let parts = [
        MixPart {
            dry: DryMatter::kg(6.0),
            sugar: Some(straw),
        },
        MixPart {
            dry: DryMatter::kg(2.0),
            sugar: None,
        },
    ];
    let day = mix(&parts).unwrap();
    let j = judge(&day, &limits(RiskLevel::NotKnown));
    assert_eq!(j.verdict, Verdict::NotProven { chance: None });
    let parts_unknown = Doubt::UnknownPart { part: 0.25 };
    assert_eq!(j.doubts, [parts_unknown, Doubt::Untested]);
    assert_eq!(j.belief, None);
}

#[test]
fn the_two_measures_are_never_added_into_one() {
    let both = [
        (Analyte::Esc, 5.0),
        (Analyte::Wsc, 8.0),
        (Analyte::Starch, 1.0),
    ];
    let hay = estimate(&lot(ForageClass::Grass, &both), Fed::Dry);
    let other = estimate(&lot(ForageClass::Meadow, &[]), Fed::Dry);
    let part = |sugar| MixPart {
        dry: DryMatter::kg(4.0),
        sugar: Some(sugar),
    };
    let day = mix(&[part(hay), part(other)]).unwrap();
    assert_eq!(day.esc_starch, None);
    assert!((day.wsc_starch.unwrap().mean.to_percent() - 11.5).abs() < 1e-9);
}

#[test]
fn the_day_says_less_grass_first() {
    let mut grass = estimate(&lot(ForageClass::Ryegrass, &[]), Fed::Dry);
    grass.notes.insert(SugarNote::Grass);
    let j = judge(&grass, &limits(RiskLevel::AtRisk));
    assert_eq!(j.ways_out.first(), Some(&WayOut::LessGrass));
    assert_eq!(j.limit, ShareOfDm::percent(10.0));
}

#[test]
fn the_laboratory_report_of_the_worked_example() {
    let (report, findings) = LabReport::read(RawReport {
        values: vec![
            (Analyte::CrudeProtein, 6.4),
            (Analyte::Adf, 45.3),
            (Analyte::Ndf, 71.9),
            (Analyte::Fat, 1.9),
            (Analyte::Ash, 3.43),
            (Analyte::Starch, 1.8),
            (Analyte::Wsc, 9.9),
            (Analyte::Calcium, 0.44),
            (Analyte::Phosphorus, 0.08),
        ],
        ..RawReport::empty(Basis::DryMatter)
    })
    .unwrap();
    assert!(findings.is_empty(), "{findings:?}");
    assert!((report.calcium_to_phosphorus().unwrap() - 5.5).abs() < 1e-9);
    assert!(report.fructan().is_none());
}

#[test]
fn a_day_of_tested_hays_is_not_sent_to_be_tested_again() {
    let tested = |wsc| MixPart {
        dry: DryMatter::kg(4.0),
        sugar: Some(estimate(
            &lot(
                ForageClass::Grass,
                &[(Analyte::Wsc, wsc), (Analyte::Starch, 1.0)],
            ),
            Fed::Dry,
        )),
    };
    let day = mix(&[tested(8.0), tested(9.5)]).unwrap();
    let j = judge(&day, &limits(RiskLevel::Proven));
    assert!(matches!(j.verdict, Verdict::NotProven { .. }));
    assert_eq!(j.doubts, [Doubt::NearLimit]);
    assert_eq!(j.ways_out, [WayOut::Soak, WayOut::AnotherLot]);
}
