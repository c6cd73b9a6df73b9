//! Forage, soak, ration and day.

use crate::words::tests::animal::outside;
use crate::words::tests::numbers::East;
use crate::words::tests::{check, check_head, check_said, every, tongues};
use crate::words::{DayWords, ForageWords, LimitsWords, RationWords, SoakWords};
use tussock_core::day::{DayError, GapVerdict, Mend, NetKind};
use tussock_core::forage::{
    Analyte, AnalyteUnit, Basis, ContentOrigin, Doubt, DryOrigin, EnergyOrigin, Fault, Fed,
    ForageClass, ForageError, ForageKind, Hazard, ReportFinding, SugarMeasure, SugarNote,
    SugarOrigin, TestOutlook, Verdict, WayOut,
};
use tussock_core::limits::Nutrient;
use tussock_core::ration::{DecidedBy, Dose, RationError, Standing};
use tussock_core::soak::{
    Air, Ended, Liquor, LossBasis, NotSoaked, RecipeFinding, Shortened, SoakError, TubState,
    TubStep, Water, dry_loss, sugar_loss,
};
use tussock_core::sources::{Mark, Provenance};
use tussock_core::units::{
    AsFed, Bounds, DryFraction, Instant, LocalTime, MoneyError, ShareOfDm, Span,
};

pub(super) fn ways() -> Vec<WayOut> {
    every![
        WayOut::Soak => WayOut::Soak, WayOut::Test => WayOut::Test,
        WayOut::TestSoaked => WayOut::TestSoaked, WayOut::AnotherLot => WayOut::AnotherLot,
        WayOut::LessGrass => WayOut::LessGrass,
    ]
}

pub(super) fn verdicts() -> Vec<Verdict> {
    every![
        Verdict::Within { .. } => Verdict::Within { chance: 0.95 },
        Verdict::Over { .. } => Verdict::Over { chance: 0.04 },
        Verdict::NotProven { .. } => Verdict::NotProven { chance: Some(0.31) },
    ]
}

pub(super) fn faults() -> Vec<Fault> {
    every![
        Fault::Mould => Fault::Mould, Fault::Dust => Fault::Dust, Fault::Heated => Fault::Heated,
        Fault::DeadAnimal => Fault::DeadAnimal, Fault::PoisonousPlant => Fault::PoisonousPlant,
        Fault::TornWrap => Fault::TornWrap,
    ]
}

pub(super) fn hazards() -> Vec<Hazard> {
    every![
        Hazard::Discard(_) => Hazard::Discard(Fault::Mould),
        Hazard::Dusty => Hazard::Dusty,
        Hazard::LucerneOverShare { .. } => Hazard::LucerneOverShare { part: 0.301, most: 0.3 },
        Hazard::LucerneWatch => Hazard::LucerneWatch,
        Hazard::HaylageNotSoaked => Hazard::HaylageNotSoaked,
        Hazard::HaylageDryMatterUnknown => Hazard::HaylageDryMatterUnknown,
        Hazard::CerealHighUntilTested => Hazard::CerealHighUntilTested,
        Hazard::Damp { .. } => Hazard::Damp { dry: DryFraction::percent(79.0).unwrap() },
    ]
}

pub(super) fn origins() -> Vec<SugarOrigin> {
    every![
        SugarOrigin::Tested => SugarOrigin::Tested, SugarOrigin::Class => SugarOrigin::Class,
        SugarOrigin::SoakedUntested => SugarOrigin::SoakedUntested, SugarOrigin::Mixed => SugarOrigin::Mixed,
    ]
}

pub(super) const OUTLOOK: TestOutlook = TestOutlook {
    within: 0.62,
    over: 0.11,
    not_proven: 0.27,
    passes_at_most: ShareOfDm::percent(8.7),
};

#[test]
fn every_verdict_and_doubt_on_a_hay_is_worded() {
    for say in tongues() {
        for verdict in verdicts() {
            check(&say.verdict(verdict));
        }
        for doubt in every![
            Doubt::Untested => Doubt::Untested,
            Doubt::NearLimit => Doubt::NearLimit,
            Doubt::ConventionsDisagree { .. } => Doubt::ConventionsDisagree { wsc_starch: ShareOfDm::percent(13.1), reckoned: true },
            Doubt::Haylage => Doubt::Haylage,
            Doubt::SoakedUntested => Doubt::SoakedUntested,
            Doubt::CerealUntested => Doubt::CerealUntested,
            Doubt::StarchAssumed => Doubt::StarchAssumed,
            Doubt::UnknownPart { .. } => Doubt::UnknownPart { part: 0.002 },
        ] {
            check(&say.doubt(doubt));
        }
        for way in ways() {
            check(say.way_out(way));
        }
        for measure in every![SugarMeasure::WscStarch => SugarMeasure::WscStarch, SugarMeasure::EscStarch => SugarMeasure::EscStarch]
        {
            check(say.sugar_measure(measure));
        }
        for origin in origins() {
            check(say.sugar_origin(origin));
        }
        for note in every![
            SugarNote::Untested => SugarNote::Untested,
            SugarNote::StarchAssumed => SugarNote::StarchAssumed, SugarNote::WscFromEsc => SugarNote::WscFromEsc,
            SugarNote::Haylage => SugarNote::Haylage, SugarNote::CerealUntested => SugarNote::CerealUntested,
            SugarNote::Grass => SugarNote::Grass,
        ] {
            check(say.sugar_note(note));
        }
        check_said(&say.test_outlook(&OUTLOOK));
        for hazard in hazards() {
            check_said(&say.hazard(hazard));
        }
        for fault in faults() {
            check(say.fault(fault));
        }
    }
}

#[test]
fn every_word_for_a_lot_and_its_report_is_there() {
    let percent = ShareOfDm::percent;
    for say in tongues() {
        for class in ForageClass::ALL {
            check(&say.forage_class(*class));
        }
        for kind in every![ForageKind::Hay => ForageKind::Hay, ForageKind::Haylage => ForageKind::Haylage, ForageKind::Straw => ForageKind::Straw]
        {
            check(say.forage_kind(kind));
        }
        for fed in every![Fed::Dry => Fed::Dry, Fed::Soaked => Fed::Soaked] {
            check(say.fed(fed));
        }
        for analyte in Analyte::ALL {
            check(say.analyte(*analyte));
        }
        for unit in every![AnalyteUnit::Percent => AnalyteUnit::Percent, AnalyteUnit::MgPerKg => AnalyteUnit::MgPerKg]
        {
            check(say.analyte_unit(unit));
        }
        for basis in every![Basis::AsFed => Basis::AsFed, Basis::DryMatter => Basis::DryMatter] {
            check(say.report_basis(basis));
        }
        for finding in every![
            ReportFinding::EscOverWsc { .. } => ReportFinding::EscOverWsc { esc: percent(9.04), wsc: percent(9.0) },
            ReportFinding::AdfOverNdf { .. } => ReportFinding::AdfOverNdf { adf: percent(60.0), ndf: percent(58.0) },
            ReportFinding::PartsOverWhole { .. } => ReportFinding::PartsOverWhole { sum: percent(118.0) },
            ReportFinding::PartsUnderWhole { .. } => ReportFinding::PartsUnderWhole { sum: percent(60.0) },
            ReportFinding::NscIsWscStarch => ReportFinding::NscIsWscStarch,
            ReportFinding::NscIsEscStarch => ReportFinding::NscIsEscStarch,
            ReportFinding::NscIsNeither { .. } => ReportFinding::NscIsNeither { stated: percent(14.0) },
            ReportFinding::NscUnexplained => ReportFinding::NscUnexplained,
            ReportFinding::ZeroTakenAsNotMeasured { .. } => ReportFinding::ZeroTakenAsNotMeasured { analyte: Analyte::Ndf },
            ReportFinding::GivenTwice { .. } => ReportFinding::GivenTwice { analyte: Analyte::Wsc },
        ] {
            check_said(&say.report_finding(finding));
        }
        for origin in every![DryOrigin::Report => DryOrigin::Report, DryOrigin::Measured => DryOrigin::Measured, DryOrigin::Default => DryOrigin::Default]
        {
            check(say.dry_origin(origin));
        }
        for origin in every![
            EnergyOrigin::Pagan => EnergyOrigin::Pagan, EnergyOrigin::ForageEquation => EnergyOrigin::ForageEquation,
            EnergyOrigin::Stated => EnergyOrigin::Stated, EnergyOrigin::Class => EnergyOrigin::Class,
        ] {
            check(say.energy_origin(origin));
        }
        for origin in every![
            ContentOrigin::Tested => ContentOrigin::Tested,
            ContentOrigin::TestedBeforeSoaking => ContentOrigin::TestedBeforeSoaking,
            ContentOrigin::Class(_) => ContentOrigin::Class(Mark::Published),
            ContentOrigin::ClassBeforeSoaking(_) => ContentOrigin::ClassBeforeSoaking(Mark::FromMemory),
        ] {
            check(&say.content_origin(origin));
        }
        for error in every![
            ForageError::OutOfRange(_) => ForageError::OutOfRange(outside()),
            ForageError::AsFedWithoutDryMatter => ForageError::AsFedWithoutDryMatter,
            ForageError::EmptyReport => ForageError::EmptyReport,
            ForageError::EnergyLacks { .. } => ForageError::EnergyLacks { analyte: Analyte::Adf },
            ForageError::OutsideEquation { .. } => ForageError::OutsideEquation { analyte: Analyte::Adf, value: 45.02, allowed: Bounds::new("adf_percent", 25.0, 45.0) },
            ForageError::Money(_) => ForageError::Money(MoneyError::TooLarge),
        ] {
            check(&say.forage_error(&error));
        }
    }
    let [british, australian] = tongues();
    assert_eq!(
        british.forage_class(ForageClass::Bermuda),
        "Bermuda grass hay"
    );
    assert_eq!(australian.forage_class(ForageClass::Bermuda), "Couch hay");
}

fn tubs() -> Vec<TubState> {
    let at = |minutes| Instant::from_ms(0) + Span::minutes(minutes);
    every![
        TubState::Empty => TubState::Empty,
        TubState::InWater { .. } => TubState::InWater { lift_out: at(305), left: Span::minutes(42) },
        TubState::LiftOut { .. } => TubState::LiftOut { due: at(305), late: Span::minutes(12), throw_away: at(965) },
        TubState::Draining { .. } => TubState::Draining { enough: at(315), drained: at(320), left: Span::minutes(9), throw_away: at(965) },
        TubState::Feed { .. } => TubState::Feed { since: at(320), throw_away: at(965), left: Span::minutes(600) },
        TubState::Fed { .. } => TubState::Fed { at: at(330), throw_away: at(965), left: Span::minutes(600) },
        TubState::ThrowAway { .. } => TubState::ThrowAway { since: at(965), wet_for: Span::minutes(730) },
        TubState::Done { .. } => TubState::Done { at: at(965), how: Ended::ThrownAway },
    ]
}

#[test]
fn every_state_of_a_tub_says_what_to_do() {
    let [say, _] = tongues();
    for state in tubs() {
        check_head(say.tub_head(&state));
        let said = say.tub(&state, &East);
        check_said(&said);
        check_head(&said.sentence);
        check(say.tub_step(state.step()));
        let action = say.tub_action(state.step());
        assert_eq!(action.is_none(), state.step() == TubStep::Done);
        if let Some(action) = action {
            check(action);
            assert!(!["OK", "Submit", "Done"].contains(&action));
        }
    }
    let due = TubState::LiftOut {
        due: Instant::from_ms(0),
        late: Span::ZERO,
        throw_away: Instant::from_ms(0),
    };
    assert_eq!(say.tub(&due, &East).sentence, "Lift out now");
    assert_eq!(
        say.tub(&tubs()[1], &East).sentence,
        "Lift out at 07:05, in 42 min"
    );
    assert_eq!(say.drain_time(), "10 to 15 min");
}

#[test]
fn every_word_for_a_soak_is_there() {
    let [say, _] = tongues();
    for air in every![
        Air::HardFrost => Air::HardFrost, Air::Under16 => Air::Under16, Air::Mild => Air::Mild,
        Air::Over20 => Air::Over20, Air::Over25 => Air::Over25,
    ] {
        check(say.air(air));
        check(&say.soak_error(&SoakError::LongSoakInWarmAir { air }, &East));
    }
    for water in every![Water::TapWinter => Water::TapWinter, Water::TapSummer => Water::TapSummer, Water::HandHot => Water::HandHot]
    {
        check(say.water_chip(water));
        for minutes in [10, 60, 600] {
            let soak = Span::minutes(minutes);
            check_said(&say.sugar_loss(&sugar_loss(water, soak, None)));
            check_said(&say.dry_loss(&dry_loss(soak)));
        }
    }
    for finding in every![
        RecipeFinding::TooShort { .. } => RecipeFinding::TooShort { at_least: Span::minutes(60) },
        RecipeFinding::Long => RecipeFinding::Long,
        RecipeFinding::LongInHeat => RecipeFinding::LongInHeat,
        RecipeFinding::MayFreeze => RecipeFinding::MayFreeze,
    ] {
        check_said(&say.recipe_finding(finding));
    }
    for shortened in every![Shortened::Over20 => Shortened::Over20, Shortened::Over25 => Shortened::Over25, Shortened::LongSoak => Shortened::LongSoak]
    {
        check_said(&say.shortened(shortened));
    }
    for ended in every![Ended::Eaten => Ended::Eaten, Ended::ThrownAway => Ended::ThrownAway, Ended::Stopped => Ended::Stopped]
    {
        check(say.ended(ended));
    }
    for basis in every![LossBasis::ShortSoak => LossBasis::ShortSoak, LossBasis::ColdWater => LossBasis::ColdWater, LossBasis::TooShort => LossBasis::TooShort, LossBasis::Curve => LossBasis::Curve]
    {
        check(say.loss_basis(basis));
    }
    for why in every![NotSoaked::Frozen => NotSoaked::Frozen, NotSoaked::NoTime => NotSoaked::NoTime, NotSoaked::HoseBan => NotSoaked::HoseBan, NotSoaked::Refused => NotSoaked::Refused]
    {
        check(say.not_soaked(why));
        check_said(&say.not_soaked_means(why));
    }
    for liquor in Liquor::ALL {
        check_said(&say.liquor(*liquor));
    }
    for error in every![
        SoakError::OutOfRange(_) => SoakError::OutOfRange(outside()),
        SoakError::Haylage => SoakError::Haylage,
        SoakError::LongSoakInWarmAir { .. } => SoakError::LongSoakInWarmAir { air: Air::Mild },
        SoakError::OutOfOrder { .. } => SoakError::OutOfOrder { earlier: Instant::from_ms(60_000), later: Instant::from_ms(0) },
    ] {
        check(&say.soak_error(&error, &East));
    }
}

#[test]
fn every_word_for_a_ration_is_there() {
    let copper = Nutrient::Copper;
    for say in tongues() {
        for standing in every![
            Standing::Within => Standing::Within,
            Standing::Short { .. } => Standing::Short { by: copper.amount(62.0) },
            Standing::Over { .. } => Standing::Over { most: copper.amount(120.0) },
            Standing::NotKnown => Standing::NotKnown,
        ] {
            check(say.standing_word(&standing));
        }
        assert_eq!(say.short_by(copper, copper.amount(62.0)), "short by 62 mg");
        assert_eq!(
            say.short_by(copper, copper.amount(0.0004)),
            "short by 0.0004 mg"
        );
        for (feeds, decided_by) in [Some(1), Some(2), None].into_iter().zip(every![
            DecidedBy::Need(_) => DecidedBy::Need(Nutrient::VitaminE),
            DecidedBy::Rate => DecidedBy::Rate,
            DecidedBy::Ration => DecidedBy::Ration,
        ]) {
            check_said(&say.dose(&Dose {
                a_day: AsFed::kg(0.45),
                feeds,
                decided_by,
                stays_short: vec![Nutrient::Sodium],
                from: Provenance::new(),
            }));
        }
        for error in every![
            RationError::OutOfRange(_) => RationError::OutOfRange(outside()),
            RationError::Content { .. } => RationError::Content { nutrient: copper, value: -3.0 },
        ] {
            check(&say.ration_error(&error));
        }
        check(&say.ration_error(&RationError::Content {
            nutrient: copper,
            value: f64::NAN,
        }));
        assert_eq!(
            say.nutrients(&[copper, Nutrient::VitaminE]),
            "copper and vitamin E"
        );
    }
}

#[test]
fn every_word_for_a_day_is_there() {
    let at = LocalTime::from_hms_opt(22, 30, 0).unwrap();
    for say in tongues() {
        for mend in every![
            Mend::SecondNet { .. } => Mend::SecondNet { longest_h: 6.2 },
            Mend::DoubleNet { .. } => Mend::DoubleNet { longest_h: 6.03 },
            Mend::Straw { .. } => Mend::Straw { part: 0.3, longest_h: 5.1 },
            Mend::OneMoreVisit { .. } => Mend::OneMoreVisit { at, longest_h: 4.5 },
            Mend::TimeRelease { .. } => Mend::TimeRelease { at, longest_h: 4.0 },
        ] {
            check(&say.mend(mend));
        }
        for verdict in every![GapVerdict::Planned => GapVerdict::Planned, GapVerdict::Care => GapVerdict::Care, GapVerdict::OverTheLine => GapVerdict::OverTheLine]
        {
            check_said(&say.gap_verdict(verdict));
        }
        for kind in every![
            NetKind::Loose => NetKind::Loose, NetKind::LargeHoles => NetKind::LargeHoles,
            NetKind::MediumHoles => NetKind::MediumHoles, NetKind::SmallHoles => NetKind::SmallHoles,
            NetKind::DoubleSmall => NetKind::DoubleSmall,
        ] {
            check(say.net_kind(kind));
        }
        for error in every![
            DayError::NoVisits => DayError::NoVisits,
            DayError::OutOfRange(_) => DayError::OutOfRange(outside()),
            DayError::CannotHang { .. } => DayError::CannotHang { left_kg: 0.02 },
            DayError::MoreLeftThanHung => DayError::MoreLeftThanHung,
            DayError::WetAsDry => DayError::WetAsDry,
        ] {
            check(&say.day_error(&error));
        }
    }
}
