//! The cases of the repository, as the trade would judge them: each gets the right plan, refusal or caution.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    missing_docs,
    reason = "tests stop at the first thing that is wrong"
)]

use std::path::PathBuf;
use tussock_core::animal::State;
use tussock_core::day::GapVerdict;
use tussock_core::forage::Fed;
use tussock_core::limits::{AllowanceReason, RestrictionBar, VetListReason};
use tussock_core::log::{Answer, Case};
use tussock_core::plan::{Draft, GrassLine};
use tussock_core::ration::Standing;
use tussock_core::safety::{
    Caution, GroupPlan, GroupVerdict, Meanwhile, Plan, Refusal, Refused, SafetyVerdict, VetUrgency,
};
use tussock_core::work::WorkLine;

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../core/examples/cases")
}

fn answer(case: &str) -> Answer {
    let text = std::fs::read_to_string(folder().join(format!("{case}.json"))).expect(case);
    let mut answers = Case::read(&text).expect(case).answers();
    assert_eq!(answers.len(), 1, "{case} is about one subject");
    answers.remove(0).1
}

fn plan(case: &str) -> Plan {
    match answer(case) {
        Answer::Animal(SafetyVerdict::Allowed(plan)) => *plan,
        other => panic!("{case} should be a plan, is {other:?}"),
    }
}

fn refused(case: &str) -> Refused {
    match answer(case) {
        Answer::Animal(SafetyVerdict::Refused(refused)) => refused,
        other => panic!("{case} should be refused, is {other:?}"),
    }
}

fn group(case: &str) -> GroupPlan {
    match answer(case) {
        Answer::Group(GroupVerdict::Allowed(plan)) => *plan,
        other => panic!("{case} should be a group's plan, is {other:?}"),
    }
}

/// The nets of a day are whole steps of the scale, and with the balancer they are the day's dry matter.
fn adds_up(draft: &Draft) {
    let hung: f64 = draft
        .layout
        .hangings
        .iter()
        .map(|hanging| hanging.dry.to_kg())
        .sum();
    let hays: f64 = draft.hays.iter().map(|hay| hay.eaten.to_kg()).sum();
    assert!((hung - hays).abs() < 1e-9);
    assert!(draft.dry_matter.to_kg() >= hays);
    for hanging in &draft.layout.hangings {
        let steps = hanging.as_fed.to_kg() / 0.05;
        assert!((steps - steps.round()).abs() < 1e-6);
    }
}

#[test]
fn a_cob_that_had_laminitis_gets_soaked_hay_no_grass_and_the_vets_word_before_work() {
    let plan = plan("bramble");
    let draft = plan.planned();
    adds_up(draft);
    assert!((draft.allowance.level.to_percent() - 1.5).abs() < 1e-9);
    assert!(!draft.allowance.is_restriction());
    assert!(draft.hays.iter().all(|hay| hay.fed == Fed::Soaked));
    assert!(matches!(draft.grass, GrassLine::None { .. }));
    assert_eq!(draft.work, WorkLine::VetsWordFirst);
    assert!(plan.cautions().contains(&Caution::SoakingProvesNothing));
    assert!(
        plan.cautions()
            .iter()
            .any(|caution| matches!(caution, Caution::Sugar { .. }))
    );
    // A net before soaking weighs more than one that is not soaked: what is washed out must be made up for.
    assert!(
        draft
            .hays
            .iter()
            .all(|hay| hay.weigh_out_unsoaked < hay.weigh_out)
    );
}

#[test]
fn the_same_cob_on_hay_tested_within_the_limit_needs_no_soaking() {
    let plan = plan("bramble-tested-hay");
    let draft = plan.planned();
    adds_up(draft);
    assert!(draft.hays.iter().all(|hay| hay.fed == Fed::Dry));
    assert!(draft.sugar.as_ref().expect("judged").verdict.is_within());
    assert!(
        !plan
            .cautions()
            .iter()
            .any(|caution| matches!(caution, Caution::Sugar { .. }))
    );
    let balancer = draft.buckets.first().expect("hay alone is short");
    assert!(!balancer.typical);
    assert!(
        draft
            .hay_alone
            .iter()
            .any(|line| matches!(line.standing, Standing::Short { .. }))
    );
    assert!(
        draft
            .with_buckets
            .iter()
            .filter(|line| matches!(line.standing, Standing::Short { .. }))
            .count()
            < draft
                .hay_alone
                .iter()
                .filter(|line| matches!(line.standing, Standing::Short { .. }))
                .count()
    );
}

#[test]
fn a_donkey_is_put_on_no_diet_without_the_vet_and_keeps_its_forage() {
    let refused = refused("donkey");
    assert_eq!(refused.why, [Refusal::DonkeyDiet]);
    assert_eq!(refused.vet, Some(VetUrgency::First));
    assert!(refused.meanwhile.iter().any(
        |step| matches!(step, Meanwhile::HayAtLeast { level, .. } if (level.to_percent() - 1.3).abs() < 1e-9)
    ));
}

#[test]
fn a_mare_in_foal_is_never_restricted_and_not_planned_here() {
    let refused = refused("pregnant-mare");
    assert!(
        refused
            .why
            .contains(&Refusal::NotPlannedHere(State::Pregnant))
    );
    assert_eq!(refused.vet, Some(VetUrgency::First));
}

#[test]
fn a_pony_that_refuses_a_handful_is_for_the_vet_now() {
    let refused = refused("off-its-feed");
    assert!(matches!(refused.why.first(), Some(Refusal::OffFeed { .. })));
    assert_eq!(refused.vet, Some(VetUrgency::Now));
    assert!(refused.meanwhile.contains(&Meanwhile::FeedNow));
}

#[test]
fn on_pain_relief_there_is_no_restriction_and_no_work() {
    let plan = plan("pain-relief");
    let draft = plan.planned();
    assert!((draft.allowance.level.to_percent() - 1.5).abs() < 1e-9);
    assert!(plan.cautions().contains(&Caution::PainRelief));
    assert!(plan.cautions().iter().any(|caution| matches!(
        caution,
        Caution::RestrictionNotGiven { bars, .. }
            if bars.contains(&RestrictionBar::OnVetList(VetListReason::PainRelief))
    )));
    assert_eq!(draft.work, WorkLine::None);
}

#[test]
fn a_quarter_less_on_one_tape_weight_is_not_given() {
    let plan = plan("a-quarter-less-on-tape");
    let draft = plan.planned();
    assert!(!draft.allowance.is_restriction());
    assert!(
        draft
            .allowance
            .why
            .iter()
            .any(|why| matches!(why, AllowanceReason::NotGiven { .. }))
    );
    assert!(plan.cautions().iter().any(|caution| matches!(
        caution,
        Caution::RestrictionNotGiven { bars, .. } if bars.contains(&RestrictionBar::TapeOnlyOnce)
    )));
}

#[test]
fn a_shetland_that_foundered_gets_its_one_and_a_half_percent() {
    let plan = plan("foundered-shetland");
    let draft = plan.planned();
    adds_up(draft);
    assert!((draft.allowance.level.to_percent() - 1.5).abs() < 1e-9);
    assert!(!draft.allowance.is_restriction());
    assert!(
        draft
            .allowance
            .bars
            .contains(&RestrictionBar::OnVetList(VetListReason::Shetland))
    );
    // Two ends: what is fed is never under the level, and what least reaches it never under the floor.
    assert!(1.5 - 0.02 <= draft.level().to_percent());
    assert!(draft.allowance.floor_dry_matter() <= draft.least_dry_matter);
}

#[test]
fn two_cobs_and_a_shetland_are_one_group_under_the_strictest_rules() {
    let plan = group("two-cobs-and-a-shetland");
    let draft = plan.planned();
    assert_eq!(draft.places, 4);
    assert_eq!(draft.strictest.as_str(), "teasel");
    assert_eq!(plan.members().len(), 3);
    for member in plan.members() {
        assert!(
            member.planned().soaks(),
            "one must have it soaked, so all do"
        );
        assert!(matches!(member.planned().grass, GrassLine::None { .. }));
    }
    for member in &draft.members {
        assert!(
            member.share.least < member.share.likely && member.share.likely < member.share.most
        );
    }
}

#[test]
fn four_visits_keep_the_longest_gap_under_the_line() {
    for case in ["bramble", "bramble-tested-hay"] {
        let plan = plan(case);
        assert_ne!(
            plan.planned().layout.verdict,
            GapVerdict::OverTheLine,
            "{case}"
        );
    }
}

#[test]
fn every_case_of_the_folder_is_read_and_answered() {
    let mut count = 0;
    for entry in std::fs::read_dir(folder()).expect("cases") {
        let path = entry.expect("entry").path();
        let text = std::fs::read_to_string(&path).expect("readable");
        let case =
            Case::read(&text).unwrap_or_else(|error| panic!("{}: {error:?}", path.display()));
        for (subject, answer) in case.answers() {
            assert!(
                !matches!(answer, Answer::NotThere | Answer::NoDraft(_)),
                "{subject}: {answer:?}"
            );
        }
        count += 1;
    }
    assert!(9 <= count, "cases went missing");
}
