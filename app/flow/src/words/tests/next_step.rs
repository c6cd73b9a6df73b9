//! The next step: every step, reason, phase and change has its words, and the head of the screen is short.

use super::{check, check_head, check_said, every, tongues};
use crate::views::look_back::{ChangedOn, LookedBack};
use crate::views::next_step::{NextStep, Offer, PHASES, Stands, next_step};
use crate::views::plan::Differs;
use crate::views::test_yard::{add, animal, at, shelf_of, zone};
use crate::words::{English, LookBackWords, NextStepWords};
use tussock_core::animal::{AnimalId, Goal, Group, GroupId, LotId, Phase};
use tussock_core::assess::{ConditionRange, Crest};
use tussock_core::limits::{Ends, RestrictionBar, VetListReason};
use tussock_core::log::Difference;
use tussock_core::log::bodies::SugarSaid;
use tussock_core::log::bodies::base::BodyHundredths;
use tussock_core::progress::{
    Band, CHANGES, Changed, GrassWeather, HowSoon, NotLogged, Reason, Step, TABLE, When, WhyNot,
};
use tussock_core::soak::NotSoaked;
use tussock_core::units::{AsFed, BodyMass, Length, LocalDate, LocalTime, PartOfBody, Span};

fn part(percent: f64) -> PartOfBody {
    PartOfBody::percent(percent)
}

fn day(day: u32) -> LocalDate {
    LocalDate::from_ymd_opt(2026, 5, day).unwrap()
}

fn view() -> NextStep {
    let shelf = shelf_of(&[add("moss", &animal("Moss"), 0)]);
    next_step(&shelf, None, &AnimalId("moss".into()), at(3), &zone()).unwrap()
}

fn steps() -> Vec<Step> {
    let mut steps = every![
        Step::Keep => Step::Keep,
        Step::FeedMore { .. } => Step::FeedMore { to: part(1.35) },
        Step::StepDown { .. } => Step::StepDown { to: part(1.25) },
        Step::TestHay => Step::TestHay,
        Step::CheckEaten => Step::CheckEaten,
        Step::HoldAtTarget => Step::HoldAtTarget,
        Step::CallVet { .. } => Step::CallVet { ring: HowSoon::Today, feed: Some(part(1.35)) },
        Step::Weigh => Step::Weigh,
        Step::Plan => Step::Plan,
        Step::ClearTheWay => Step::ClearTheWay,
        Step::DecidePhase { .. } => Step::DecidePhase { to: Phase::Losing },
    ];
    steps.extend(PHASES.map(|to| Step::DecidePhase { to }));
    for ring in [
        HowSoon::First,
        HowSoon::ThisMorning,
        HowSoon::Today,
        HowSoon::Now,
    ] {
        steps.extend([None, Some(part(1.5))].map(|feed| Step::CallVet { ring, feed }));
    }
    steps
}

#[test]
fn every_step_has_a_head_that_fits_and_a_line_for_what_comes_after() {
    for say in tongues() {
        for step in steps() {
            for when in [When::Now, When::AtReview(day(19))] {
                for (phase, weighed) in PHASES.into_iter().zip([true, false].into_iter().cycle()) {
                    let mut view = view();
                    view.decision.step = step;
                    view.decision.when = when;
                    view.animal.phase = phase;
                    view.facts.weighed = weighed;
                    check_head(&say.step_head(&view));
                    check(&say.step_of(&view));
                    check(&say.step_tag(&view));
                    check(&say.phase_line(&view));
                }
            }
            check(&say.step_after(step));
        }
        let mut view = view();
        for review in [None, Some(day(4)), Some(day(30))] {
            view.facts.review = review;
            check_said(&say.step_when(&view));
        }
        view.decision.because = vec![Reason::LookAgain];
        view.decision.step = Step::Keep;
        check_head(&say.step_head(&view));
        for stands in [Stands::KeepOn, Stands::AtReview, Stands::Due, Stands::Vet] {
            check(say.step_stands(stands));
        }
        check_said(&say.only_proposes());
    }
}

#[test]
fn every_phase_has_its_entry_its_exit_and_its_key() {
    let words = English::default();
    for phase in PHASES {
        for text in [words.phase_entry(phase), words.phase_exit(phase)] {
            check(&text);
        }
        check_head(words.put_into(phase));
        check(&words.phase_before(Some(phase)).unwrap());
    }
    let keys: std::collections::BTreeSet<&str> = PHASES
        .into_iter()
        .map(|phase| words.put_into(phase))
        .collect();
    assert_eq!(keys.len(), PHASES.len(), "two keys that say the same");
    for why_not in [
        None,
        Some(WhyNot::Already),
        Some(WhyNot::InVetsHands),
        Some(WhyNot::NotYet),
    ] {
        check(words.may_be_chosen(why_not));
    }
}

#[test]
fn every_row_and_every_change_says_where_it_comes_from() {
    let words = English::default();
    let rows = TABLE.iter().map(|row| row.from);
    for origin in rows.chain(CHANGES.iter().map(|change| change.origin)) {
        let said = words.step_from(origin);
        check(&said);
        assert!(!said.contains("practice rule"), "{said}");
    }
}

fn reasons() -> Vec<Reason> {
    let condition = ConditionRange::new(7.0, 7.5).unwrap();
    let bars = vec![RestrictionBar::OnVetList(VetListReason::PainRelief)];
    let mut reasons = every![
        Reason::Stopped(_) => Reason::Stopped(HowSoon::Today),
        Reason::LookAgain => Reason::LookAgain,
        Reason::FarDown { .. } => Reason::FarDown { part: 0.034 },
        Reason::MeasuredAgain { .. } => Reason::MeasuredAgain { chance: 0.86 },
        Reason::DonkeyTooFast { .. } => Reason::DonkeyTooFast { chance: 0.9 },
        Reason::InPhase(_) => Reason::InPhase(Phase::Losing),
        Reason::Wants(_) => Reason::Wants(Goal::Lose),
        Reason::NeverWeighed => Reason::NeverWeighed,
        Reason::NoPlan => Reason::NoPlan,
        Reason::ConditionUnder { .. } => Reason::ConditionUnder { condition, under: 8.0 },
        Reason::FilledOut { .. } => Reason::FilledOut { condition },
        Reason::LaminitisNow => Reason::LaminitisNow,
        Reason::LaminitisOver => Reason::LaminitisOver,
        Reason::VetSpoke => Reason::VetSpoke,
        Reason::LookedOverClean => Reason::LookedOverClean,
        Reason::Sound => Reason::Sound,
        Reason::ChangeProposed(_) => Reason::ChangeProposed(Phase::Holding),
        Reason::AtStartFor { .. } => Reason::AtStartFor { days: 9, of: 14 },
        Reason::Weighed { .. } => Reason::Weighed { times: 1, of: 2 },
        Reason::DonkeyWithoutWord => Reason::DonkeyWithoutWord,
        Reason::MayEatLess => Reason::MayEatLess,
        Reason::Watched { .. } => Reason::Watched { weeks: 2.0, readings: 3, enough: false },
        Reason::Rate { .. } => Reason::Rate { band: Band::ToOne, part: Ends::new(0.004, 0.007, 0.009), chance: 0.88 },
        Reason::TargetReached { .. } => Reason::TargetReached { chance: 0.9 },
        Reason::ReadingsOver { .. } => Reason::ReadingsOver { readings: 2 },
        Reason::GirthUp { .. } => Reason::GirthUp { by: Length::cm(2.5) },
        Reason::OverBand { .. } => Reason::OverBand { chance: 0.83 },
        Reason::Holds { .. } => Reason::Holds { chance: 0.9 },
        Reason::EatsMore { .. } => Reason::EatsMore { at_least: part(1.8), planned: part(1.5) },
        Reason::EatenNotKnown { .. } => Reason::EatenNotKnown { seen: Some(0.3) },
        Reason::GrassNotCounted => Reason::GrassNotCounted,
        Reason::AtStart { .. } => Reason::AtStart { level: part(1.5) },
        Reason::HayNotTested { .. } => Reason::HayNotTested { lasts: 60 },
        Reason::NoStepLeft { .. } => Reason::NoStepLeft { level: Some(part(1.0)) },
        Reason::StepNeedsVet { .. } => Reason::StepNeedsVet { to: part(1.15), bars: bars.clone() },
        Reason::StepBarred { .. } => Reason::StepBarred { to: part(1.25), bars },
    ];
    reasons.extend([
        Reason::EatenNotKnown { seen: None },
        Reason::NoStepLeft { level: None },
        Reason::StepNeedsVet {
            to: part(1.15),
            bars: Vec::new(),
        },
        Reason::Watched {
            weeks: 0.0,
            readings: 0,
            enough: false,
        },
        Reason::Watched {
            weeks: 5.0,
            readings: 7,
            enough: true,
        },
    ]);
    for band in [
        Band::UnderQuarter,
        Band::ToHalf,
        Band::ToOne,
        Band::QuarterOrMore,
        Band::OverOne,
        Band::NoGain,
    ] {
        reasons.push(Reason::Rate {
            band,
            part: Ends::new(-0.004, -0.001, 0.002),
            chance: 0.88,
        });
    }
    reasons
}

#[test]
fn every_reason_is_said_with_its_chance() {
    for say in tongues() {
        for reason in reasons() {
            check_said(&say.because(&reason));
        }
    }
    let words = English::default();
    let rate = words.because(&Reason::Rate {
        band: Band::ToOne,
        part: Ends::new(0.004, 0.007, 0.009),
        chance: 0.83,
    });
    assert_eq!(rate.sentence, "It loses 0.5 to 1 % a week, 8 in 10");
    assert_eq!(
        rate.why.unwrap(),
        "Most likely a loss of 0.7 % of its weight a week, between a loss of 0.4 and of 0.9."
    );
}

#[test]
fn every_offer_is_an_action() {
    let words = English::default();
    let mut view = view();
    view.fed_with = Some(Group {
        id: GroupId("g".into()),
        name: "Top field".into(),
        members: Vec::new(),
    });
    let level = BodyHundredths::new(125).unwrap();
    for offer in every![
        Offer::GoOn => Offer::GoOn, Offer::LookOver => Offer::LookOver,
        Offer::Weigh => Offer::Weigh, Offer::Score => Offer::Score,
        Offer::WhatWasEaten => Offer::WhatWasEaten,
        Offer::TestHay(_) => Offer::TestHay(LotId("l".into())),
        Offer::Plan => Offer::Plan, Offer::PlanAt(_) => Offer::PlanAt(level),
        Offer::SeeGroup(_) => Offer::SeeGroup(GroupId("g".into())),
        Offer::VetsWord => Offer::VetsWord, Offer::Details => Offer::Details,
        Offer::NotEating => Offer::NotEating, Offer::Take(_) => Offer::Take(Phase::Losing),
    ] {
        check_head(&words.next_offer(&offer, &view));
    }
    assert_eq!(
        words.next_offer(&Offer::PlanAt(level), &view),
        "Plan it with 1.25 %"
    );
}

#[test]
fn everything_that_would_now_differ_is_said_with_what_holds_beside_it() {
    let (lot, kg) = (LotId("l".into()), AsFed::kg(4.0));
    let time = |hour| LocalTime::from_hms_opt(hour, 0, 0).unwrap();
    let all = every![
        Difference::Rules { .. } => Difference::Rules { held: "3".into(), now: "4".into() },
        Difference::Weight { .. } => Difference::Weight { held: None, now: Some(BodyMass::kg(300.0)) },
        Difference::Level { .. } => Difference::Level { held: part(1.5), now: part(1.25) },
        Difference::Lowest { .. } => Difference::Lowest { held: part(1.5), now: part(1.25) },
        Difference::Hay { .. } => Difference::Hay { lot: lot.clone(), held: Some(kg), now: None },
        Difference::Soaked { .. } => Difference::Soaked { lot: lot.clone(), now: true },
        Difference::Sugar { .. } => Difference::Sugar { lot, held: Some(SugarSaid::Within), now: None },
        Difference::Feed { .. } => Difference::Feed { food: None, held: None, now: Some(AsFed::kg(0.2)) },
        Difference::Visits { .. } => Difference::Visits { held: vec![time(7)], now: Vec::new() },
        Difference::Nets => Difference::Nets,
        Difference::Recipe => Difference::Recipe,
        Difference::Work { .. } => Difference::Work { held: Some(3), now: None },
        Difference::LookOver { .. } => Difference::LookOver { held: 7, now: 3 },
    ];
    for say in tongues() {
        for what in &all {
            for name in [None, Some("Grass hay".to_owned())] {
                let what = what.clone();
                for text in say.differs(&Differs { what, name }) {
                    check(&text);
                }
            }
        }
        check(&say.differs_means(day(19)));
    }
}

#[test]
fn everything_that_changed_before_an_episode_is_said_and_what_nobody_logged() {
    let condition = |score| ConditionRange::new(score, score).unwrap();
    let (lot, group) = (LotId("l".into()), GroupId("g".into()));
    let name = "Lane field".to_owned();
    let mut all = every![
        Changed::LotOpened { .. } => Changed::LotOpened { lot, name: name.clone(), tested: false },
        Changed::NewFood { .. } => Changed::NewFood { name: name.clone() },
        Changed::FeedingSaid => Changed::FeedingSaid,
        Changed::PlanIssued { .. } => Changed::PlanIssued { before: None, level: part(1.5) },
        Changed::OffPlan { .. } => Changed::OffPlan { days: 3, most: -0.2 },
        Changed::NotSoaked { .. } => Changed::NotSoaked { nets: 2, why: NotSoaked::Frozen },
        Changed::JoinedGroup { .. } => Changed::JoinedGroup { group: group.clone(), name: name.clone() },
        Changed::LeftGroup { .. } => Changed::LeftGroup { group, name },
        Changed::GrassDecided { .. } => Changed::GrassDecided { time: Span::minutes(90), muzzle: true },
        Changed::FirstTurnout { .. } => Changed::FirstTurnout { last: Some(day(2)) },
        Changed::LongerAtGrass { .. } => Changed::LongerAtGrass { before: Span::minutes(40), after: Span::hours(2) },
        Changed::MuzzleLeftOff { .. } => Changed::MuzzleLeftOff { times: 2 },
        Changed::Weather { .. } => Changed::Weather { weather: GrassWeather::ColdNight, days: 4 },
        Changed::Weight { .. } => Changed::Weight { from: BodyMass::kg(300.0), to: BodyMass::kg(320.0) },
        Changed::Condition { .. } => Changed::Condition { from: condition(6.0), to: condition(7.0) },
        Changed::CrestUp { .. } => Changed::CrestUp { from: Crest::new(2).unwrap(), to: Crest::new(3).unwrap() },
        Changed::Worked { .. } => Changed::Worked { sessions: 4 },
        Changed::TrimmedOrShod => Changed::TrimmedOrShod,
        Changed::Corticosteroid => Changed::Corticosteroid,
        Changed::SurgeryOrTransport => Changed::SurgeryOrTransport,
        Changed::GotAtGrain => Changed::GotAtGrain,
        Changed::EscapedOntoGrass => Changed::EscapedOntoGrass,
        Changed::EarlySign => Changed::EarlySign,
        Changed::OffFeed => Changed::OffFeed,
        Changed::VetsWordEnded => Changed::VetsWordEnded,
    ];
    all.extend([
        Changed::PlanIssued {
            before: Some(part(1.5)),
            level: part(1.25),
        },
        Changed::OffPlan { days: 1, most: 0.3 },
        Changed::GrassDecided {
            time: Span::ZERO,
            muzzle: false,
        },
        Changed::FirstTurnout { last: None },
    ]);
    all.extend(
        [GrassWeather::HardFrost, GrassWeather::DrySpell]
            .map(|weather| Changed::Weather { weather, days: 1 }),
    );
    let not_logged = every![
        NotLogged::Grass => NotLogged::Grass,
        NotLogged::GrassOn { .. } => NotLogged::GrassOn { days: 4 },
        NotLogged::Work => NotLogged::Work,
        NotLogged::Weather { .. } => NotLogged::Weather { days: 29 },
        NotLogged::Eaten { .. } => NotLogged::Eaten { days: 1 },
        NotLogged::Weight => NotLogged::Weight,
    ];
    for say in tongues() {
        for changed in &all {
            check(&say.changed(changed));
        }
        for what in &not_logged {
            check(&say.not_logged(*what));
        }
        let back = LookedBack {
            from: day(1),
            began: day(31),
            days: vec![ChangedOn {
                day: day(20),
                what: all.clone(),
            }],
            not_logged: not_logged.clone(),
        };
        check_head(&say.looked_back(&back));
        check(&say.looked_back_over(&back));
        for text in [say.no_episode(), say.no_cause(), say.nothing_changed()] {
            check(text);
        }
    }
}
