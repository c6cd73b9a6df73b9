//! What gives and what bars a restriction.

use super::super::*;
use super::{bramble, close, day, fat_twice, in_order, percent, word};
use crate::animal::{AnimalId, Answer, Appetite, Goal, Handful, Kind, Phase};
use crate::units::{BodyMass, Length};

#[test]
fn with_everything_in_order_a_fat_horse_may_have_1_25_percent() {
    let (animal, scores) = (bramble(), fat_twice());
    let given = allowance(&in_order(&animal, &scores)).unwrap();
    assert!(given.bars.is_empty(), "{:?}", given.bars);
    assert!(close(given.level, 1.25) && given.is_restriction());
    assert!(given.why.contains(&AllowanceReason::Restricted));
    assert!((given.dry_matter().to_kg() - 6.25).abs() < 1e-9);
    assert!((given.floor_dry_matter().to_kg() - 5.0).abs() < 1e-9);
}

#[test]
fn one_tape_weight_gives_no_restriction_and_two_do() {
    let (animal, scores) = (bramble(), fat_twice());
    let mut of = in_order(&animal, &scores);
    for (tape, bar) in [
        (0, Some(RestrictionBar::NotWeighed)),
        (1, Some(RestrictionBar::TapeOnlyOnce)),
        (2, None),
    ] {
        of.weighings = Weighings {
            on_scale: 0,
            by_tape: tape,
        };
        let given = allowance(&of).unwrap();
        assert_eq!(given.bars.first().copied(), bar);
        assert_eq!(given.is_restriction(), bar.is_none());
    }
}

#[test]
fn a_small_pony_needs_a_scale_however_often_it_was_taped() {
    let scores = fat_twice();
    let mut pony = bramble();
    pony.kind = Kind::Pony;
    for (height, bar) in [
        (
            Some(Length::cm(111.9)),
            Some(RestrictionBar::SmallPonyNeedsScale {
                height: Some(Length::cm(111.9)),
            }),
        ),
        (Some(Length::cm(112.0)), None),
        (None, Some(RestrictionBar::HeightNotKnown)),
    ] {
        pony.height = height;
        let mut of = in_order(&pony, &scores);
        of.weighings = Weighings {
            on_scale: 0,
            by_tape: 9,
        };
        assert_eq!(allowance(&of).unwrap().bars.first().copied(), bar);
        of.weighings.on_scale = 1;
        assert!(allowance(&of).unwrap().bars.is_empty());
    }
}

#[test]
fn a_vets_word_holds_to_its_last_day_and_not_the_day_after() {
    let mut fern = bramble();
    fern.kind = Kind::Donkey;
    let scores = fat_twice();
    let words = [word(&fern, 1.15, "2026-03-20", "2026-05-05")];
    let mut of = in_order(&fern, &scores);
    of.asked = None;
    of.now = Some(percent(1.15));
    of.words = &words;
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.15), "{given:?}");
    of.day = day("2026-05-06");
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.3) && !given.is_restriction());
    assert!(given.why.contains(&AllowanceReason::VetsWordExpired {
        expired: day("2026-05-05")
    }));
    // Nor does a word that was given to another animal, or is still to come.
    let mut other = bramble();
    other.id = AnimalId("moss".into());
    let words = [
        word(&other, 1.0, "2026-03-20", "2026-12-31"),
        word(&fern, 1.0, "2026-05-07", "2026-12-31"),
    ];
    of.words = &words;
    assert!(close(allowance(&of).unwrap().level, 1.3));
}

#[test]
fn never_below_1_percent_even_with_a_vets_word() {
    let (animal, scores) = (bramble(), fat_twice());
    let words = [word(&animal, 0.8, "2026-05-01", "2026-06-01")];
    let mut of = in_order(&animal, &scores);
    of.words = &words;
    of.asked = Some(percent(0.7));
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.0));
    // On a tape the heaviest it may be still has its 1.0 %.
    of.weight = Ends::new(
        BodyMass::kg(450.0),
        BodyMass::kg(500.0),
        BodyMass::kg(550.0),
    );
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.1));
    assert!((given.dry_matter().to_kg() - given.floor_dry_matter().to_kg()).abs() < 1e-9);
}

#[test]
fn without_a_vet_the_level_is_held_at_1_25_and_with_one_at_what_the_vet_allows() {
    let (animal, scores) = (bramble(), fat_twice());
    let mut of = in_order(&animal, &scores);
    of.asked = Some(percent(1.0));
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.25));
    assert!(given.why.contains(&AllowanceReason::HeldWithoutVet {
        wanted: percent(1.0)
    }));
    let words = [
        word(&animal, 1.0, "2026-04-01", "2026-06-01"),
        word(&animal, 1.15, "2026-05-01", "2026-06-01"),
    ];
    of.words = &words;
    assert!(close(allowance(&of).unwrap().level, 1.15));
    // A vet who wants more than the starting level is heard as well.
    let words = [word(&animal, 1.8, "2026-05-01", "2026-06-01")];
    of.words = &words;
    of.asked = None;
    assert!(close(allowance(&of).unwrap().level, 1.8));
}

#[test]
fn a_vets_word_opens_the_list_and_not_the_scale_the_look_over_or_the_appetite() {
    let scores = fat_twice();
    let mut fern = bramble();
    fern.kind = Kind::Miniature;
    fern.height = Some(Length::cm(90.0));
    fern.health.appetite = Appetite::Off {
        last_seen_eating: None,
        handful: Handful::Refused,
        dull: Answer::Yes,
    };
    let words = [word(&fern, 1.0, "2026-05-01", "2026-06-01")];
    let mut of = in_order(&fern, &scores);
    of.words = &words;
    of.weighings = Weighings {
        on_scale: 0,
        by_tape: 4,
    };
    of.look_over_clean = Answer::No;
    of.days_at_start = 27;
    let given = allowance(&of).unwrap();
    assert!(close(given.level, 1.5));
    assert!(matches!(
        given.bars.as_slice(),
        [
            RestrictionBar::SmallPonyNeedsScale { .. },
            RestrictionBar::NotEating { .. },
            RestrictionBar::LookOverNotClean { clean: Answer::No },
            RestrictionBar::NotLongEnoughAtStart {
                days: 27,
                needed: 28
            },
        ]
    ));
}

#[test]
fn condition_7_must_be_seen_twice_two_weeks_apart_and_up_to_now() {
    let animal = bramble();
    let score = |on: &str, score| ConditionScore { on: day(on), score };
    let bars_for = |scores: &[ConditionScore], now: Option<f64>| {
        let mut of = in_order(&animal, scores);
        of.now = now.map(percent);
        allowance(&of).unwrap().bars.len()
    };
    assert_eq!(bars_for(&[], None), 1);
    assert_eq!(bars_for(&[score("2026-05-01", 9.0)], None), 1);
    let close_together = [score("2026-04-20", 8.0), score("2026-05-03", 8.0)];
    assert_eq!(bars_for(&close_together, None), 1);
    let apart = [score("2026-05-04", 7.0), score("2026-04-20", 8.0)];
    assert_eq!(bars_for(&apart, None), 0);
    // A score still to come does not count.
    let to_come = [score("2026-04-25", 8.0), score("2026-05-09", 8.0)];
    assert_eq!(bars_for(&to_come, None), 1);
    // Years ago, and lean since: no restriction begins; but one that works goes on while the score falls.
    let falling = [
        score("2026-01-01", 8.0),
        score("2026-01-15", 7.0),
        score("2026-04-15", 6.0),
    ];
    assert_eq!(bars_for(&falling, None), 1);
    assert_eq!(bars_for(&falling, Some(1.25)), 0);
}

#[test]
fn at_target_percent_is_of_target_and_the_floor_is_still_of_the_heaviest_it_may_be() {
    let scores = fat_twice();
    let mut animal = bramble();
    animal.phase = Phase::Holding;
    animal.goal = Goal::Hold;
    let mut of = in_order(&animal, &scores);
    of.weight = Ends::new(
        BodyMass::kg(470.0),
        BodyMass::kg(480.0),
        BodyMass::kg(490.0),
    );
    of.target = Some(Ends::new(
        BodyMass::kg(440.0),
        BodyMass::kg(450.0),
        BodyMass::kg(460.0),
    ));
    of.now = Some(percent(1.25));
    of.asked = Some(step_up(percent(1.25)));
    let given = allowance(&of).unwrap();
    assert_eq!(given.basis, Basis::TargetWeight);
    assert!(close(given.level, 1.35));
    assert!((given.dry_matter().to_kg() - 6.075).abs() < 1e-9);
    assert!((given.floor_dry_matter().to_kg() - 4.9).abs() < 1e-9);
    // Holding is no time to begin or deepen a restriction.
    of.now = Some(percent(1.5));
    assert!(!allowance(&of).unwrap().is_restriction());
    of.now = Some(percent(1.4));
    assert!(!allowance(&of).unwrap().is_restriction());
}
