//! Plan and safety.

use super::fed::{OUTLOOK, faults, hazards, origins, verdicts, ways};
use super::limits::{bars, energies, level, vet_list};
use crate::words::tests::animal::{day, outside, states};
use crate::words::tests::{check, check_head, check_said, every, tongues};
use crate::words::{PlanWords, SafetyWords, Sign};
use tussock_core::animal::{AnimalId, Answer, Kind, LotId, RiskFactor, State};
use tussock_core::assess::AssessError;
use tussock_core::day::DayError;
use tussock_core::forage::{Fault, Hazard, SugarOrigin, Verdict, WayOut};
use tussock_core::graze::intake::{HayBeside, OutFor, RoomFor, Shortened, SugarBeside, room};
use tussock_core::limits::{Ends, LimitsError, Nutrient};
use tussock_core::plan::{GrassDay, GrassLine, Grazing, Lever, PlanError, Raised, Separate, Signs};
use tussock_core::progress::{Ring, TooFast};
use tussock_core::safety::{Caution, Meanwhile, Refusal, VetUrgency, Vital, VitalStanding};
use tussock_core::units::{
    BodyMass, DryMatter, EnergyDensity, Instant, PartOfBody, ShareOfDm, Span,
};
use tussock_core::work::WorkLine;

/// As many as a day of grass and untested hay can have.
fn every_way() -> Vec<WayOut> {
    let mut found = ways();
    found.retain(|way| *way != WayOut::TestSoaked);
    found
}

fn dry() -> Ends<DryMatter> {
    Ends::new(DryMatter::kg(4.1), DryMatter::kg(4.6), DryMatter::kg(5.0))
}

#[test]
fn a_look_over_says_what_to_do_and_never_no_signs_when_lines_are_left() {
    let [say, _] = tongues();
    for sign in every![
        Sign::Gait => Sign::Gait, Sign::Stance => Sign::Stance, Sign::Turning => Sign::Turning,
        Sign::ShiftingWeight => Sign::ShiftingWeight, Sign::StrongPulse => Sign::StrongPulse,
        Sign::FootPain => Sign::FootPain, Sign::WarmHoof => Sign::WarmHoof, Sign::LyingMore => Sign::LyingMore,
    ] {
        assert!(Sign::ALL.contains(&sign));
        check_head(say.sign_question(sign));
        assert!(say.sign_question(sign).ends_with('?'));
        check(say.sign_how(sign));
        check(say.sign(sign));
        let mut signs = Signs::default();
        sign.answer(&mut signs, Answer::Yes);
        assert_eq!(sign.of(&signs), Answer::Yes);
        let said = say.signs(&signs);
        check_said(&said);
        check_head(&said.sentence);
        assert_eq!(said.sentence.contains("Vet today"), signs.for_the_vet());
    }
    assert_eq!(say.signs(&Signs::default()).sentence, "Not complete");
    let mut clean = Signs::default();
    for sign in Sign::ALL {
        assert_ne!(say.signs(&clean).sentence, "No signs seen");
        sign.answer(&mut clean, Answer::No);
    }
    assert_eq!(say.signs(&clean).sentence, "No signs seen");
}

fn grass_day(none: bool) -> GrassDay {
    let room = room(&RoomFor {
        out: OutFor {
            kind: Kind::Pony,
            time: Span::hours(2),
            weeks: None,
            muzzle: true,
            leaf: true,
        },
        weight: Ends::exactly(BodyMass::kg(300.0)),
        hay: HayBeside {
            dry: dry(),
            forage: DryMatter::kg(4.0),
            energy: EnergyDensity::mcal_per_kg(1.9),
        },
        measured: true,
        sugar: none.then(|| SugarBeside {
            limit: ShareOfDm::percent(10.0),
            hay: None,
        }),
        at_risk: true,
    });
    GrassDay {
        grazing: Grazing {
            paddock: None,
            time: Span::hours(2),
            muzzle: true,
            weeks: None,
            leaf: true,
        },
        room,
    }
}

#[test]
fn every_line_of_a_plan_is_worded() {
    let name = |_: &AnimalId| "Moss".to_owned();
    let id = || AnimalId("m".into());
    for say in tongues() {
        for lever in every![
            Lever::TestTheHay { .. } => Lever::TestTheHay { outlook: OUTLOOK },
            Lever::WeighOnAScale { .. } => Lever::WeighOnAScale { dry_matter: dry() },
            Lever::MeasureTheLength { .. } => Lever::MeasureTheLength { dry_matter: dry() },
            Lever::ScoreTheSites => Lever::ScoreTheSites,
            Lever::TestInsulin => Lever::TestInsulin,
            Lever::ShortenTheGap { .. } => Lever::ShortenTheGap { now_h: 8.4, then_h: 4.01 },
            Lever::TypeTheLabel => Lever::TypeTheLabel,
            Lever::TimeANet => Lever::TimeANet,
        ] {
            check_said(&say.lever(&lever));
            check_head(&say.lever(&lever).sentence);
        }
        for grass in every![
            GrassLine::None { .. } => GrassLine::None { why: vec![RiskFactor::Laminitis] },
            GrassLine::NotCounted => GrassLine::NotCounted,
            GrassLine::Counted(_) => GrassLine::Counted(Box::new(grass_day(false))),
        ] {
            check_said(&say.grass(&grass));
        }
        check_said(&say.grass(&GrassLine::None { why: Vec::new() }));
        check_said(&say.grass(&GrassLine::Counted(Box::new(grass_day(true)))));
        for why in every![
            Shortened::DryMatter => Shortened::DryMatter, Shortened::Sugar => Shortened::Sugar,
            Shortened::HayLeavesNoRoom => Shortened::HayLeavesNoRoom,
            Shortened::AtRisk => Shortened::AtRisk, Shortened::Muzzle => Shortened::Muzzle,
        ] {
            check(say.shortened(why));
        }
        for work in every![
            WorkLine::None => WorkLine::None, WorkLine::VetsWordFirst => WorkLine::VetsWordFirst,
            WorkLine::AskFirst => WorkLine::AskFirst,
            WorkLine::NotPlannedHere(_) => WorkLine::NotPlannedHere(State::Pregnant),
            WorkLine::Donkey { .. } => WorkLine::Donkey { minutes: 30, a_week: 3 },
            WorkLine::Recovered { .. } => WorkLine::Recovered { minutes: 30, a_week: 3 },
            WorkLine::Sound { .. } => WorkLine::Sound { minutes: 30, a_week: 5, unfit_minutes: 15, build_up_weeks: 4 },
        ] {
            check_said(&say.work(&work));
        }
        for raised in every![
            Raised::ToDryMatterFloor { .. } => Raised::ToDryMatterFloor { factor: 1.001 },
            Raised::ToEnergyFloor { .. } => Raised::ToEnergyFloor { factor: 1.12 },
        ] {
            check_said(&say.raised(raised));
        }
        for why in every![
            Separate::UnderFloor { .. } => Separate::UnderFloor { animal: id(), least: PartOfBody::percent(0.999), floor: PartOfBody::percent(1.0) },
            Separate::GoalsApart { .. } => Separate::GoalsApart { loses: id(), gains: id() },
            Separate::NotWithRestricted { .. } => Separate::NotWithRestricted { animal: id(), restricted: id() },
        ] {
            check_said(&say.separate(&why, &name));
        }
        for error in every![
            PlanError::NoWeight => PlanError::NoWeight, PlanError::NoForage => PlanError::NoForage,
            PlanError::PartsDoNotAddUp { .. } => PlanError::PartsDoNotAddUp { sum: 0.9 },
            PlanError::DryMatterNotKnown { .. } => PlanError::DryMatterNotKnown { lot: LotId("l".into()) },
            PlanError::EmptyGroup => PlanError::EmptyGroup,
            PlanError::Assess(_) => PlanError::Assess(AssessError::BirthNeeded),
            PlanError::Limits(_) => PlanError::Limits(LimitsError::OutOfRange(outside())),
            PlanError::Day(_) => PlanError::Day(DayError::NoVisits),
            PlanError::OutOfRange(_) => PlanError::OutOfRange(outside()),
        ] {
            check_said(&say.plan_error(&error));
        }
    }
}

#[test]
fn every_caution_is_one_sentence_with_its_reason() {
    use Caution as C;
    let some = || vec![Nutrient::Copper, Nutrient::Selenium];
    for say in tongues() {
        for caution in every![
            C::OnVetList(_) => C::OnVetList(vet_list()),
            C::RestrictionNotGiven { .. } => C::RestrictionNotGiven { wanted: level(), bars: bars() },
            C::VetsWordExpired { .. } => C::VetsWordExpired { expired: day() },
            C::PainRelief => C::PainRelief, C::LookAgain => C::LookAgain, C::NotLookedOver => C::NotLookedOver,
            C::LeftItsHay => C::LeftItsHay, C::AppetiteNotKnown => C::AppetiteNotKnown,
            C::Sugar { .. } => C::Sugar { verdict: Verdict::NotProven { chance: Some(0.3) }, origin: SugarOrigin::Class, ways_out: every_way() },
            C::SoakingProvesNothing => C::SoakingProvesNothing, C::NoGrass => C::NoGrass, C::NoRoomForGrass => C::NoRoomForGrass,
            C::GrassByModel { .. } => C::GrassByModel { muzzle: true },
            C::GrassNotCounted => C::GrassNotCounted,
            C::LongGap { .. } => C::LongGap { hours: 6.02, over_the_line: true },
            C::StrawOverCap => C::StrawOverCap,
            C::HayHazard { .. } => C::HayHazard { lot: "Meadow barn".into(), hazard: Hazard::Dusty },
            C::TypicalBalancer => C::TypicalBalancer, C::BucketNotCleared => C::BucketNotCleared,
            C::StaysShort(_) => C::StaysShort(some()), C::OverCeiling(_) => C::OverCeiling(some()),
            C::NotKnown(_) => C::NotKnown(some()),
            C::WeightFromTape { .. } => C::WeightFromTape { either_way: 0.15 },
            C::Donkey => C::Donkey, C::AskAboutPpid => C::AskAboutPpid, C::FreshlyTrimmed => C::FreshlyTrimmed,
            C::Corticosteroid => C::Corticosteroid, C::RaisedToFloor => C::RaisedToFloor,
            C::Unusual { .. } => C::Unusual { vital: Vital::Pulse, reading: 48.0, standing: VitalStanding::Over },
        ] {
            let said = say.caution(&caution);
            check_said(&said);
            assert!(said.why.is_some(), "{caution:?} without why");
            assert!(
                !said.sentence.contains(". "),
                "two sentences: {}",
                said.sentence
            );
        }
        for hazard in hazards() {
            let lot = "Meadow barn".to_owned();
            check_said(&say.caution(&C::HayHazard { lot, hazard }));
        }
        for verdict in verdicts() {
            for origin in origins() {
                for ways_out in [Vec::new(), vec![WayOut::TestSoaked, WayOut::AnotherLot]] {
                    check_said(&say.caution(&C::Sugar {
                        verdict,
                        origin,
                        ways_out,
                    }));
                }
            }
        }
    }
    let [say, _] = tongues();
    let sugar = C::Sugar {
        verdict: Verdict::NotProven { chance: Some(0.3) },
        origin: SugarOrigin::Class,
        ways_out: vec![WayOut::Soak, WayOut::Test, WayOut::AnotherLot],
    };
    assert_eq!(
        say.caution(&sugar).sentence,
        "The sugar of the day is not proven (3 in 10): soak it, have it tested or feed another lot"
    );
}

fn too_fast(ring: Ring) -> TooFast {
    TooFast {
        seen: "2026-05-05".parse().unwrap(),
        chance: 0.86,
        raise_to: tussock_core::units::PartOfBody::percent(1.5),
        ring,
    }
}

#[test]
fn every_refusal_says_why_and_what_to_do() {
    use Refusal as R;
    for say in tongues() {
        let refusals = every![
            R::OffFeed { .. } => R::OffFeed { last_seen_eating: Some(Instant::from_ms(0)), past_the_latest: true },
            R::AteWhenOffered => R::AteWhenOffered,
            R::LaminitisNow => R::LaminitisNow, R::LaminitisSign => R::LaminitisSign,
            R::WarmHoofAfterLaminitis => R::WarmHoofAfterLaminitis,
            R::EpisodeWithoutWord => R::EpisodeWithoutWord, R::GotAtGrain => R::GotAtGrain,
            R::EscapedOntoGrass => R::EscapedOntoGrass, R::Sick => R::Sick,
            R::FarOverUsual { .. } => R::FarOverUsual { vital: Vital::Temperature, reading: 39.4 }, R::Lame => R::Lame,
            R::LosesTooFast(_) => R::LosesTooFast(too_fast(Ring::SameDay)),
            R::NotPlannedHere(_) => R::NotPlannedHere(State::Pregnant), R::DonkeyDiet => R::DonkeyDiet,
            R::Energy(_) => R::Energy(energies()[1]),
            R::UnderDryMatterFloor { .. } => R::UnderDryMatterFloor { least: DryMatter::kg(2.999), floor: DryMatter::kg(3.0) },
            R::DoNotFeed { .. } => R::DoNotFeed { lot: "Meadow barn".into(), fault: Fault::Mould },
        ];
        for refusal in &refusals {
            check_head(say.refusal_head(refusal));
            check_head(crate::words::RoundWords::stop_job(&say, refusal));
            let said = say.refusal(refusal);
            check_said(&said);
            assert!(said.why.is_some(), "{refusal:?} without why");
        }
        check_said(&say.refusal(&R::LosesTooFast(too_fast(Ring::Soon))));
        let fresh = R::OffFeed {
            last_seen_eating: None,
            past_the_latest: false,
        };
        check_said(&say.refusal(&fresh));
        for state in states() {
            check_said(&say.refusal(&R::NotPlannedHere(state)));
        }
        for fault in faults() {
            check_said(&say.refusal(&R::DoNotFeed {
                lot: "Fen".into(),
                fault,
            }));
        }
        for meanwhile in every![
            Meanwhile::HayAtLeast { .. } => Meanwhile::HayAtLeast { level: level(), dry: DryMatter::kg(4.6) },
            Meanwhile::FeedNow => Meanwhile::FeedNow, Meanwhile::OfferAHandful => Meanwhile::OfferAHandful,
            Meanwhile::StopGrassAndWork => Meanwhile::StopGrassAndWork,
            Meanwhile::WriteDownVetsWord => Meanwhile::WriteDownVetsWord, Meanwhile::AnotherHay => Meanwhile::AnotherHay,
        ] {
            check_said(&say.meanwhile(&meanwhile));
            check_head(&say.meanwhile(&meanwhile).sentence);
        }
        for urgency in every![VetUrgency::First => VetUrgency::First, VetUrgency::ThisMorning => VetUrgency::ThisMorning, VetUrgency::Today => VetUrgency::Today, VetUrgency::Now => VetUrgency::Now]
        {
            check_head(say.vet(urgency));
        }
        assert_eq!(say.vet(VetUrgency::Now), "Ring the vet now");
    }
}
