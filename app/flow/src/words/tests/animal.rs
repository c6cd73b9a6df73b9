//! The animal and what is measured on it.

use super::{check, check_said, every, tongues};
use crate::words::{AnimalWords, AssessWords};
use tussock_core::animal::{
    AnimalId, Answer, Appetite, Birth, BodyType, Goal, Handful, Insulin, InsulinTest, Kind,
    Laminitis, Phase, Ppid, Risk, RiskFactor, RiskLevel, Sex, State, Teeth, Temperament, VetFlag,
    VetPermit, VetScope, VetWord, Workload,
};
use tussock_core::assess::{
    Aim, AssessError, ConditionScale, Crest, CrestFlag, Equation, Fallback, Finding, LengthKind,
    Measure, MeasuredType, Refused, Ribs, ScaleInstrument, ScaleReason, Site, WeightMethod,
};
use tussock_core::units::{BodyMass, Bounds, Instant, Length, LocalDate, OutOfRange, PartOfBody};

pub(super) fn day() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

pub(super) fn outside() -> OutOfRange {
    Bounds::new("heart_girth_cm", 40.0, 300.0)
        .check(1800.0)
        .unwrap_err()
}

pub(super) fn states() -> Vec<State> {
    every![
        State::Adult => State::Adult,
        State::Growing => State::Growing,
        State::Pregnant => State::Pregnant,
        State::Lactating => State::Lactating,
    ]
}

pub(super) fn goals() -> Vec<Goal> {
    every![Goal::Lose => Goal::Lose, Goal::Hold => Goal::Hold, Goal::Gain => Goal::Gain]
}

pub(super) fn answers() -> Vec<Answer> {
    every![Answer::Yes => Answer::Yes, Answer::No => Answer::No, Answer::NotKnown => Answer::NotKnown]
}

pub(super) fn appetites() -> Vec<Appetite> {
    every![
        Appetite::Eating => Appetite::Eating,
        Appetite::Off { .. } => Appetite::Off {
            last_seen_eating: None,
            handful: Handful::NotTried,
            dull: Answer::NotKnown,
        },
        Appetite::NotKnown => Appetite::NotKnown,
    ]
}

fn kinds() -> Vec<Kind> {
    every![
        Kind::Horse => Kind::Horse,
        Kind::Pony => Kind::Pony,
        Kind::Miniature => Kind::Miniature,
        Kind::Donkey => Kind::Donkey,
        Kind::Mule => Kind::Mule,
    ]
}

fn body_types() -> Vec<BodyType> {
    use BodyType::{
        Arabian, Donkey, Draft, Icelandic, Miniature, Pony, Saddle, Shetland, Stock, Thoroughbred,
        Warmblood,
    };
    every![
        Arabian => Arabian, Pony => Pony, Stock => Stock, Draft => Draft, Warmblood => Warmblood,
        Thoroughbred => Thoroughbred, Icelandic => Icelandic, Shetland => Shetland,
        Saddle => Saddle, Miniature => Miniature, Donkey => Donkey,
    ]
}

#[test]
fn every_word_for_an_animal_is_there() {
    for say in tongues() {
        for kind in kinds() {
            check(say.kind(kind));
            for sex in every![Sex::Female => Sex::Female, Sex::Gelding => Sex::Gelding, Sex::Entire => Sex::Entire]
            {
                check(say.sex(sex, kind));
            }
        }
        for body in body_types() {
            check(say.body_type(body));
        }
        for state in states() {
            check(say.state(state));
        }
        let temperaments = every![
            Temperament::Low => Temperament::Low,
            Temperament::Average => Temperament::Average,
            Temperament::Elevated => Temperament::Elevated,
        ];
        for temperament in temperaments {
            check(say.temperament(temperament));
            check(say.workload_means(Workload::Maintenance(temperament)));
        }
        for work in every![
            Workload::Maintenance(_) => Workload::Maintenance(Temperament::Low),
            Workload::Light => Workload::Light,
            Workload::Moderate => Workload::Moderate,
            Workload::Heavy => Workload::Heavy,
            Workload::VeryHeavy => Workload::VeryHeavy,
        ] {
            check(say.workload(work));
            check(say.workload_means(work));
        }
        for goal in goals() {
            check(say.goal(goal));
        }
        for phase in every![
            Phase::New => Phase::New, Phase::Losing => Phase::Losing, Phase::Plateau => Phase::Plateau,
            Phase::Holding => Phase::Holding, Phase::NeedsWeight => Phase::NeedsWeight,
            Phase::Episode => Phase::Episode, Phase::Recovering => Phase::Recovering,
            Phase::OtherHands => Phase::OtherHands,
        ] {
            check(say.phase(phase));
            check(say.phase_means(phase));
        }
        for answer in answers() {
            check(say.answer(answer));
        }
        for born in every![Birth::Day(_) => Birth::Day(day()), Birth::Month { .. } => Birth::Month { year: 2014, month: 5 }, Birth::Year(_) => Birth::Year(2014)]
        {
            check(&say.age(born, day()));
        }
    }
}

#[test]
fn every_word_for_health_is_there() {
    for say in tongues() {
        for laminitis in every![
            Laminitis::Never => Laminitis::Never,
            Laminitis::Ever { .. } => Laminitis::Ever { last: Some(day()) },
            Laminitis::Active => Laminitis::Active,
            Laminitis::NotKnown => Laminitis::NotKnown,
        ] {
            check(&say.laminitis(laminitis));
        }
        check(&say.laminitis(Laminitis::Ever { last: None }));
        for (dysregulated, by) in [(true, "the practice"), (false, "")] {
            check(&say.insulin(&Insulin::Tested(InsulinTest {
                dysregulated,
                by: by.to_owned(),
                on: day(),
                test: String::new(),
            })));
        }
        check(&say.insulin(&Insulin::NotKnown));
        for ppid in every![Ppid::Treated => Ppid::Treated, Ppid::Untreated => Ppid::Untreated, Ppid::Clear => Ppid::Clear, Ppid::NotKnown => Ppid::NotKnown]
        {
            check(say.ppid(ppid));
        }
        for teeth in every![Teeth::Good => Teeth::Good, Teeth::Poor => Teeth::Poor, Teeth::NotKnown => Teeth::NotKnown]
        {
            check(say.teeth(teeth));
        }
        for handful in every![Handful::Eaten => Handful::Eaten, Handful::Refused => Handful::Refused, Handful::NotTried => Handful::NotTried]
        {
            check(say.handful(handful));
        }
        for appetite in appetites() {
            check(say.appetite(appetite));
        }
        let at = Instant::from_ms(0);
        for flag in every![
            VetFlag::PainRelief => VetFlag::PainRelief,
            VetFlag::Sglt2Inhibitor => VetFlag::Sglt2Inhibitor,
            VetFlag::InsulinDrug => VetFlag::InsulinDrug,
            VetFlag::Corticosteroid { .. } => VetFlag::Corticosteroid { last: day() },
            VetFlag::TrimmedOrShod { .. } => VetFlag::TrimmedOrShod { on: day() },
            VetFlag::FootsoreAfterTrims => VetFlag::FootsoreAfterTrims,
            VetFlag::BoxRest => VetFlag::BoxRest,
            VetFlag::GotAtGrain { .. } => VetFlag::GotAtGrain { at },
            VetFlag::EscapedOntoGrass { .. } => VetFlag::EscapedOntoGrass { at },
            VetFlag::Sick => VetFlag::Sick,
            VetFlag::SurgeryOrTransport { .. } => VetFlag::SurgeryOrTransport { on: day() },
            VetFlag::Lame => VetFlag::Lame,
        ] {
            check(&say.vet_flag(&flag));
        }
        for permit in every![
            VetPermit::LowestLevel(_) => VetPermit::LowestLevel(PartOfBody::percent(1.25)),
            VetPermit::Work => VetPermit::Work,
            VetPermit::ReturnToGrass => VetPermit::ReturnToGrass,
        ] {
            check(&say.vet_permit(permit));
            check(&say.vet_word(&VetWord {
                animal: AnimalId("a".into()),
                permit,
                vet: "A vet".into(),
                practice: "A practice".into(),
                given: day(),
                how: String::new(),
                expires: day(),
                written: None,
            }));
        }
        for scope in every![VetScope::LowestLevel => VetScope::LowestLevel, VetScope::Work => VetScope::Work, VetScope::ReturnToGrass => VetScope::ReturnToGrass]
        {
            check(say.vet_scope(scope));
        }
        let factors = every![
            RiskFactor::Laminitis => RiskFactor::Laminitis,
            RiskFactor::TestedDysregulated => RiskFactor::TestedDysregulated,
            RiskFactor::Type => RiskFactor::Type,
            RiskFactor::Crest => RiskFactor::Crest,
            RiskFactor::Condition => RiskFactor::Condition,
            RiskFactor::Footsore => RiskFactor::Footsore,
        ];
        for factor in &factors {
            check(say.risk_factor(*factor));
        }
        for level in every![RiskLevel::Proven => RiskLevel::Proven, RiskLevel::AtRisk => RiskLevel::AtRisk, RiskLevel::NotKnown => RiskLevel::NotKnown, RiskLevel::Clear => RiskLevel::Clear]
        {
            check(say.risk_level(level));
            check_said(&say.risk(&Risk {
                level,
                factors: factors.clone(),
            }));
        }
    }
}

#[test]
fn every_site_has_its_words_at_every_step_and_no_two_are_the_same() {
    let say = tongues()[0];
    let sites = every![
        Site::Neck => Site::Neck, Site::Withers => Site::Withers,
        Site::BehindShoulder => Site::BehindShoulder, Site::Ribs => Site::Ribs,
        Site::Loin => Site::Loin, Site::TailHead => Site::TailHead,
        Site::BackAndRibs => Site::BackAndRibs, Site::Pelvis => Site::Pelvis,
    ];
    let mut seen = std::collections::BTreeSet::new();
    for site in sites {
        check(say.site(site));
        check(say.lay_hand(site));
        for (scale, steps) in every![
            (ConditionScale::NineStep, _) => (ConditionScale::NineStep, 1..=9),
            (ConditionScale::FiveStep, _) => (ConditionScale::FiveStep, 0..=5),
        ] {
            check(say.condition_scale(scale));
            let scored = scale.sites().contains(&site);
            for step in 0..=10 {
                let words = say.step(site, scale, step);
                assert_eq!(
                    words.is_some(),
                    scored && steps.contains(&step),
                    "{site:?} {step}"
                );
                if let Some(words) = words {
                    check(words);
                    assert!(words.len() <= 62, "{words:?} is long for a glance");
                    assert!(seen.insert(words), "{words:?} twice");
                }
            }
        }
    }
    assert_eq!(seen.len(), 6 * 9 + 3 * 6);
    for score in 0..=5 {
        let crest = Crest::new(score).unwrap();
        check(say.crest(crest));
        assert!(seen.insert(say.crest(crest)));
        check_said(&say.crest_flag(crest.flag()));
    }
    for flag in every![CrestFlag::None => CrestFlag::None, CrestFlag::Flag => CrestFlag::Flag, CrestFlag::Strong => CrestFlag::Strong]
    {
        check_said(&say.crest_flag(flag));
    }
    for ribs in every![Ribs::Seen => Ribs::Seen, Ribs::FeltEasily => Ribs::FeltEasily, Ribs::FeltWithPressure => Ribs::FeltWithPressure, Ribs::NotFelt => Ribs::NotFelt]
    {
        check(say.ribs(ribs));
    }
}

#[test]
fn every_word_for_a_measure_is_there() {
    let measures = every![
        Measure::HeartGirth => Measure::HeartGirth, Measure::Length => Measure::Length,
        Measure::Height => Measure::Height, Measure::Neck => Measure::Neck,
        Measure::UmbilicalGirth => Measure::UmbilicalGirth,
    ];
    let lengths = every![LengthKind::Wrap => LengthKind::Wrap, LengthKind::Straight => LengthKind::Straight, LengthKind::ElbowToTuber => LengthKind::ElbowToTuber];
    let types = every![
        MeasuredType::Arabian => MeasuredType::Arabian, MeasuredType::Pony => MeasuredType::Pony,
        MeasuredType::Stock => MeasuredType::Stock, MeasuredType::Draft => MeasuredType::Draft,
        MeasuredType::Warmblood => MeasuredType::Warmblood,
    ];
    let equations = every![
        Equation::GirthLength => Equation::GirthLength,
        Equation::GirthLengthIcelandic => Equation::GirthLengthIcelandic,
        Equation::FourMeasures(_) => Equation::FourMeasures(MeasuredType::Pony),
        Equation::GirthAlone => Equation::GirthAlone, Equation::Foal => Equation::Foal,
        Equation::Weanling => Equation::Weanling, Equation::Yearling => Equation::Yearling,
        Equation::Donkey => Equation::Donkey, Equation::DonkeyGirth => Equation::DonkeyGirth,
        Equation::DonkeyYoung => Equation::DonkeyYoung, Equation::DonkeyFat => Equation::DonkeyFat,
    ];
    for say in tongues() {
        for measure in &measures {
            check(say.measure(*measure));
            check(say.where_to_tape(*measure));
        }
        for kind in &lengths {
            check(say.length_kind(*kind));
            check(say.where_to_lay(*kind));
        }
        for measured in &types {
            check(say.measured_type(*measured));
            check(&say.weight_method(WeightMethod::Ideal(*measured)));
        }
        for equation in &equations {
            check(say.equation(*equation));
            check(&say.weight_method(WeightMethod::Tape(*equation)));
        }
        for instrument in every![ScaleInstrument::AnimalScale => ScaleInstrument::AnimalScale, ScaleInstrument::VehicleWeighbridge => ScaleInstrument::VehicleWeighbridge]
        {
            check(say.scale_instrument(instrument));
            check(&say.weight_method(WeightMethod::Scale(instrument)));
        }
        for aim in every![Aim::ConditionFive => Aim::ConditionFive, Aim::ConditionSevenFirst => Aim::ConditionSevenFirst]
        {
            check(say.aim(aim));
        }
    }
}

#[test]
fn every_finding_and_error_of_assessing_is_worded() {
    let wrong = |wanted, given| (wanted, given);
    let (wanted, given) = wrong(LengthKind::Wrap, LengthKind::Straight);
    for say in tongues() {
        for reason in every![
            ScaleReason::Miniature => ScaleReason::Miniature,
            ScaleReason::Small { .. } => ScaleReason::Small { height: Length::cm(104.0) },
            ScaleReason::ShetlandWithoutHeight => ScaleReason::ShetlandWithoutHeight,
            ScaleReason::Mule => ScaleReason::Mule,
        ] {
            check(&say.scale_reason(reason));
            check_said(&say.assess_finding(&Finding::AskForScaleWeight(reason)));
        }
        for fallback in every![
            Fallback::BodyTypeNotKnown => Fallback::BodyTypeNotKnown,
            Fallback::BodyTypeHasNone(_) => Fallback::BodyTypeHasNone(BodyType::Saddle),
            Fallback::Missing { .. } => Fallback::Missing { wanted: Some(MeasuredType::Pony), measure: Measure::Neck },
            Fallback::WrongLength { .. } => Fallback::WrongLength { wanted, given },
            Fallback::UnderThree => Fallback::UnderThree,
            Fallback::InFoal => Fallback::InFoal,
        ] {
            check_said(&say.assess_finding(&Finding::FellBack(fallback)));
        }
        check(&say.fallback(Fallback::Missing {
            wanted: None,
            measure: Measure::Height,
        }));
        for finding in every![
            Finding::LengthNotTaken => Finding::LengthNotTaken,
            Finding::AskForScaleWeight(_) => Finding::AskForScaleWeight(ScaleReason::Mule),
            Finding::FellBack(_) => Finding::FellBack(Fallback::UnderThree),
            Finding::AgeNotKnown => Finding::AgeNotKnown,
            Finding::HeightNotKnown => Finding::HeightNotKnown,
            Finding::InFoal => Finding::InFoal,
            Finding::UnusualProportion { .. } => Finding::UnusualProportion { length_to_girth: 0.6 },
            Finding::SitesSkipped(_) => Finding::SitesSkipped(vec![Site::Ribs, Site::Loin]),
            Finding::FirstAimForSeven => Finding::FirstAimForSeven,
            Finding::IdealWeightDiffers { .. } => Finding::IdealWeightDiffers { by_condition: BodyMass::kg(280.0), by_measures: BodyMass::kg(301.0) },
        ] {
            check_said(&say.assess_finding(&finding));
        }
        for refused in every![
            Refused::Young(_) => Refused::Young(Kind::Mule),
            Refused::TargetInFoal => Refused::TargetInFoal,
            Refused::TargetGrowing => Refused::TargetGrowing,
            Refused::NoIdealWeight => Refused::NoIdealWeight,
        ] {
            check(&say.not_assessed(refused));
        }
        for error in every![
            AssessError::OutOfRange(_) => AssessError::OutOfRange(outside()),
            AssessError::Missing(_) => AssessError::Missing(Measure::HeartGirth),
            AssessError::WrongLength { .. } => AssessError::WrongLength { wanted, given },
            AssessError::BirthNeeded => AssessError::BirthNeeded,
            AssessError::Refused(_) => AssessError::Refused(Refused::NoIdealWeight),
            AssessError::NotHalfPoint { .. } => AssessError::NotHalfPoint { value: 6.3 },
            AssessError::SiteOfOtherScale { .. } => AssessError::SiteOfOtherScale { scale: ConditionScale::NineStep, site: Site::Pelvis },
            AssessError::SiteTwice(_) => AssessError::SiteTwice(Site::Ribs),
            AssessError::TooFewSites { .. } => AssessError::TooFewSites { scored: 3, needed: 4 },
            AssessError::BaseSiteSkipped(_) => AssessError::BaseSiteSkipped(Site::Pelvis),
            AssessError::TwoScales => AssessError::TwoScales,
        ] {
            check(&say.assess_error(&error));
        }
    }
}
