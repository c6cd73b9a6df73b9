//! Every row of the table, as the trade would say it.

use super::*;
use crate::animal::Phase;
use crate::limits::{RestrictionBar, VetListReason};
use crate::progress::may_change;
use crate::units::Length;
use std::collections::BTreeSet;

mod animals;
mod cob;

use animals::animals;
use cob::{day, part};
pub(crate) use cob::{facts, pace, still};

#[test]
fn every_row_decides_for_an_animal_and_no_other_animal_was_forgotten() {
    let mut reached = BTreeSet::new();
    for (said, row, facts) in animals() {
        let decision = decide(&facts);
        assert_eq!(decision.row, row, "{said}: {decision:?}");
        let held = TABLE.iter().find(|held| held.name == row).unwrap();
        assert_eq!(decision.because.len(), held.when.len(), "{said}");
        reached.insert(row);
    }
    let rows: Vec<&str> = TABLE.iter().map(|row| row.name).collect();
    let names: BTreeSet<&str> = rows.iter().copied().collect();
    assert_eq!(names.len(), rows.len(), "two rows of one name");
    assert_eq!(names, reached, "a row that no animal reaches");
}

fn step_of(row: &str) -> Decision {
    let (_, _, facts) = animals()
        .into_iter()
        .find(|(_, name, _)| *name == row)
        .unwrap();
    decide(&facts)
}

#[test]
fn each_outcome_of_the_trade_is_given() {
    let to = part;
    for (row, step) in [
        ("on course", Step::Keep),
        ("steady", Step::Keep),
        ("not sure yet", Step::Keep),
        ("too fast", Step::FeedMore { to: to(1.6) }),
        ("holding, raise", Step::FeedMore { to: to(1.35) }),
        ("no gain", Step::FeedMore { to: to(2.0) }),
        ("slow", Step::StepDown { to: to(1.25) }),
        ("slow, hay not tested", Step::TestHay),
        ("slow, eaten not known", Step::CheckEaten),
        ("at target", Step::HoldAtTarget),
        ("far down once", Step::Weigh),
        ("slow, barred", Step::ClearTheWay),
        ("new, decide", Step::DecidePhase { to: Phase::Losing }),
        ("regained", Step::DecidePhase { to: Phase::Losing }),
        (
            "thin",
            Step::DecidePhase {
                to: Phase::NeedsWeight,
            },
        ),
        (
            "slow, needs the vet",
            Step::CallVet {
                ring: HowSoon::First,
                feed: None,
            },
        ),
        (
            "far down, measured again",
            Step::CallVet {
                ring: HowSoon::First,
                feed: Some(to(1.5)),
            },
        ),
    ] {
        let told = step_of(row).step;
        let same = match (told.level(), step.level()) {
            (Some(a), Some(b)) => (a.to_percent() - b.to_percent()).abs() < 1e-9,
            (a, b) => a == b && told == step,
        };
        assert!(same, "{row}: {told:?}");
    }
}

#[test]
fn a_pony_that_lost_too_fast_is_for_the_vet_the_same_day() {
    let mut pony = facts(Phase::Losing);
    pony.fast_loss = FastLoss::Confirmed { chance: 0.9 };
    pony.fat_in_blood_risk = true;
    let step = decide(&pony).step;
    assert_eq!(
        step,
        Step::CallVet {
            ring: HowSoon::Today,
            feed: None
        }
    );
}

#[test]
fn amounts_wait_for_the_review_and_the_vet_does_not() {
    let later = day("2026-05-20");
    for (_, row, mut facts) in animals() {
        facts.review = Some(later);
        let decision = decide(&facts);
        let waits = matches!(decision.step, Step::FeedMore { .. } | Step::StepDown { .. });
        let when = if waits {
            When::AtReview(later)
        } else {
            When::Now
        };
        assert_eq!(decision.when, when, "{row}");
    }
}

#[test]
fn a_look_at_what_was_eaten_or_a_test_comes_before_one_step_down_and_says_so() {
    for row in [
        "slow, eats more",
        "slow, eaten not known",
        "slow, grass",
        "slow, hay not tested",
    ] {
        let then = step_of(row).then;
        assert_eq!(then, Some(Step::StepDown { to: part(1.25) }), "{row}");
    }
}

#[test]
fn one_reading_moves_nothing_whatever_it_says() {
    let mut cob = facts(Phase::Losing);
    for part in [0.021, 0.05, 0.2] {
        cob.fast_loss = FastLoss::Once { part };
        assert_eq!(decide(&cob).step.level(), None);
        assert_eq!(decide(&cob).step, Step::Weigh);
    }
    cob.fast_loss = FastLoss::None;
    // However slow or fast it seems, under four weeks nothing changes.
    for pace in [still(), pace(0.0, 0.0, 0.0, 1.0)] {
        cob.pace = Some(Pace {
            weeks: 27.0 / 7.0,
            readings: 1,
            ..pace
        });
        assert_eq!(decide(&cob).step, Step::Keep);
    }
}

#[test]
fn four_in_five_decides_and_less_does_not() {
    let mut cob = facts(Phase::Losing);
    cob.pace = Some(pace(0.8, 0.2, 0.0, 0.0));
    assert_eq!(decide(&cob).row, "slow");
    cob.pace = Some(pace(0.79, 0.21, 0.0, 0.0));
    assert_eq!(decide(&cob).row, "not sure yet");
    cob.pace = Some(pace(f64::NAN, f64::NAN, f64::NAN, f64::NAN));
    assert_eq!(decide(&cob).step, Step::Keep);
}

#[test]
fn a_step_under_a_quarter_less_or_off_the_vets_list_needs_the_vets_word() {
    let mut cob = facts(Phase::Plateau);
    cob.pace = Some(still());
    cob.bars = vec![RestrictionBar::OnVetList(VetListReason::PainRelief)];
    assert_eq!(decide(&cob).row, "slow, needs the vet");
    cob.bars.clear();
    cob.level = Some(part(1.25));
    cob.next_down = Some(part(1.15));
    cob.vets_level = Some(part(1.15));
    assert_eq!(decide(&cob).step, Step::StepDown { to: part(1.15) });
    cob.vets_level = Some(part(1.2));
    assert_eq!(decide(&cob).row, "slow, needs the vet");
}

#[test]
fn what_protects_it_may_always_be_chosen_and_the_vets_hands_hold_it() {
    let all = [
        Phase::New,
        Phase::Losing,
        Phase::Plateau,
        Phase::Holding,
        Phase::NeedsWeight,
        Phase::Episode,
        Phase::Recovering,
        Phase::OtherHands,
    ];
    for from in all {
        let mut of = facts(from);
        of.days_at_start = 3;
        of.scores.clear();
        let open: Vec<Phase> = all
            .into_iter()
            .filter(|to| may_change(&of, *to).is_ok())
            .collect();
        let expected: Vec<Phase> = all
            .into_iter()
            .filter(|to| *to != from)
            .filter(|to| match from {
                Phase::Episode | Phase::Recovering => *to == Phase::Episode,
                _ => matches!(
                    to,
                    Phase::New | Phase::NeedsWeight | Phase::Episode | Phase::OtherHands
                ),
            })
            .collect();
        assert_eq!(open, expected, "{from:?}");
    }
    let mut back = facts(Phase::OtherHands);
    back.phase_before = Some(Phase::Plateau);
    assert!(may_change(&back, Phase::Plateau).is_ok());
    assert!(may_change(&back, Phase::Losing).is_err());
}

#[test]
fn a_holding_animal_whose_girth_grew_by_two_centimetres_is_losing_again() {
    let mut cob = facts(Phase::Holding);
    let grown = |cm| {
        Some(TargetStands {
            girth_up: Some(Length::cm(cm)),
            ..TargetStands::default()
        })
    };
    cob.target = grown(1.9);
    assert_eq!(crate::progress::propose(&cob), None);
    cob.target = grown(2.0);
    let to = crate::progress::propose(&cob).map(|proposal| proposal.to);
    assert_eq!(to, Some(Phase::Losing));
}
