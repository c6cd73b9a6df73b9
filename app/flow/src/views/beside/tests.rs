//! What is due and what stops an animal.

use super::*;
use crate::acts::Act;
use crate::views::test_yard::written;
use crate::views::test_yard::{add, after, animal, at, shelf_of, zone};
use tussock_core::animal::{Handful, Laminitis, Phase, VetFlag, VetPermit, VetWord};
use tussock_core::log::bodies::{AnimalV2, CrestV1, VetWordV1};
use tussock_core::units::{PartOfBody, Span};

#[test]
fn a_new_animal_is_weighed_first_and_its_plan_waits() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let visit = visit(&shelf, &AnimalId("moss".into()), at(0), &zone()).unwrap();
    assert_eq!(visit.first_due(), Some(Task::Weigh));
    let tasks: Vec<Task> = visit.steps.iter().map(|step| step.task).collect();
    assert_eq!(tasks, Task::ALL);
    assert_eq!(visit.steps.last().unwrap().standing, Standing::Waits);
    assert_eq!(visit.stop, None);
}

#[test]
fn a_score_has_its_age_and_falls_due_again() {
    let mut shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let crest = Body::Crest(CrestV1::of(Crest::new(3).unwrap()));
    shelf = after(&shelf, &[("c1", "moss", crest, 0)]);
    let on = |days| {
        visit(&shelf, &AnimalId("moss".into()), at(days), &zone())
            .unwrap()
            .steps
            .into_iter()
            .find(|step| step.task == Task::Crest)
            .unwrap()
    };
    assert_eq!((on(3).days, on(3).standing), (Some(3), Standing::Done));
    assert_eq!(on(14).standing, Standing::Due);
}

#[test]
fn a_sign_stands_until_somebody_says_it_is_gone() {
    let look = |answer: Answer| {
        Body::LookOver(crate::forms::look_over::body(&Signs {
            strong_pulse: answer,
            ..Signs::default()
        }))
    };
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let shelf = after(&shelf, &[("l1", "moss", look(Answer::Yes), 1)]);
    let left_out = after(&shelf, &[("l2", "moss", look(Answer::NotKnown), 2)]);
    let gone = after(&shelf, &[("l2", "moss", look(Answer::No), 2)]);
    let stop = |shelf| {
        visit(shelf, &AnimalId("moss".into()), at(3), &zone())
            .unwrap()
            .stop
    };
    assert!(matches!(
        stop(&left_out),
        Some(Stop::Vet(Refusal::LaminitisSign, VetUrgency::Today))
    ));
    assert_eq!(stop(&gone), None);
}

#[test]
fn the_needy_come_first() {
    let mut grain = animal("willow");
    grain.health.flags = vec![VetFlag::GotAtGrain { at: at(0) }];
    let mut sore = animal("fern");
    sore.health.laminitis = Laminitis::Active;
    let shelf = shelf_of(&[
        add("bramble", &animal("bramble"), 0),
        add("fern", &sore, 0),
        add("willow", &grain, 0),
    ]);
    let (visits, _) = list(&shelf, at(0), &zone());
    let names: Vec<&str> = visits.iter().map(|v| v.animal.name.as_str()).collect();
    assert_eq!(names, ["willow", "fern", "bramble"]);
}

/// The vet's word of a day of May, on the lowest level unless it is about something else.
fn word(permit: VetPermit, given: i64) -> Body {
    let day = zone().to_local(at(given)).date;
    Body::VetWord(
        VetWordV1::of(&VetWord {
            animal: AnimalId("moss".into()),
            permit,
            vet: "A. Marsh".into(),
            practice: String::new(),
            given: day,
            how: "by telephone".into(),
            expires: zone().to_local(at(given + 56)).date,
            written: None,
        })
        .unwrap(),
    )
}

fn lowest() -> VetPermit {
    VetPermit::LowestLevel(PartOfBody::percent(1.5))
}

fn pulse(answer: Answer) -> Body {
    Body::LookOver(crate::forms::look_over::body(&Signs {
        strong_pulse: answer,
        ..Signs::default()
    }))
}

fn stop_on(shelf: &Shelf, day: i64) -> Option<Stop> {
    let moss = AnimalId("moss".into());
    visit(shelf, &moss, at(day), &zone()).unwrap().stop
}

#[test]
fn a_vets_word_says_nothing_about_a_sign_that_is_seen_after_it() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let before = after(
        &shelf,
        &[
            ("w", "moss", word(lowest(), 1), 1),
            ("l", "moss", pulse(Answer::Yes), 9),
        ],
    );
    assert!(matches!(
        stop_on(&before, 9),
        Some(Stop::Vet(Refusal::LaminitisSign, VetUrgency::Today))
    ));
    // Given since, it holds, and a look that sees the same sign still does not undo it.
    let since = after(
        &shelf,
        &[
            ("l", "moss", pulse(Answer::Yes), 1),
            ("w", "moss", word(lowest(), 2), 2),
            ("m", "moss", pulse(Answer::Yes), 3),
        ],
    );
    assert_eq!(stop_on(&since, 3), None);
    // Gone and back again is a new sign.
    let again = after(
        &since,
        &[
            ("n", "moss", pulse(Answer::No), 4),
            ("o", "moss", pulse(Answer::Yes), 5),
        ],
    );
    assert!(stop_on(&again, 5).is_some());
    // Expired, it lifts nothing any more.
    assert!(stop_on(&since, 59).is_some());
}

#[test]
fn on_one_day_a_word_counts_unless_it_was_written_down_before_the_sign() {
    let moss = || shelf_of(&[add("moss", &animal("moss"), 0)]);
    let sign_first = after(
        &moss(),
        &[
            ("l", "moss", pulse(Answer::Yes), 1),
            ("w", "moss", word(lowest(), 1), 1),
        ],
    );
    assert_eq!(stop_on(&sign_first, 1), None);
    let evening = at(1) + Span::hours(6);
    let said = after(&moss(), &[("w", "moss", word(lowest(), 1), 1)]);
    let look = Act::Add(crate::acts::New {
        id: tussock_core::sources::RecordId("l".into()),
        subject: tussock_core::log::Subject::animal(&AnimalId("moss".into())),
        at: None,
        known: tussock_core::log::Known::Seen,
        body: pulse(Answer::Yes),
    });
    assert!(stop_on(&written(&said, &look, evening), 2).is_some());
}

#[test]
fn a_word_lifts_only_its_own_matter() {
    let sore = shelf_of(&[
        add("moss", &animal("moss"), 0),
        ("l", "moss", pulse(Answer::Yes), 1),
    ]);
    for permit in [VetPermit::Work, VetPermit::ReturnToGrass] {
        let shelf = after(&sore, &[("w", "moss", word(permit, 2), 2)]);
        assert!(stop_on(&shelf, 2).is_some(), "{permit:?}");
    }
}

/// The shelf after the animal was changed.
fn changed(shelf: &Shelf, animal: &Animal, day: i64) -> Shelf {
    let act = Act::Change {
        id: tussock_core::sources::RecordId("moss".into()),
        body: Body::Animal(AnimalV2::of(animal).unwrap()),
        at: None,
    };
    written(shelf, &act, at(day))
}

#[test]
fn laminitis_now_is_lifted_by_a_word_since_and_comes_back_with_a_new_episode() {
    let mut moss = animal("moss");
    let mut shelf = shelf_of(&[add("moss", &moss, 0), ("w", "moss", word(lowest(), 0), 0)]);
    moss.health.laminitis = Laminitis::Active;
    moss.phase = Phase::Episode;
    shelf = changed(&shelf, &moss, 3);
    assert!(matches!(
        stop_on(&shelf, 3),
        Some(Stop::Vet(Refusal::LaminitisNow, _))
    ));
    shelf = after(&shelf, &[("v", "moss", word(lowest(), 4), 4)]);
    assert_eq!(stop_on(&shelf, 4), None);
    // Another change of the animal leaves the day of its laminitis as it is.
    moss.name = "Moss".into();
    shelf = changed(&shelf, &moss, 5);
    moss.health.laminitis = Laminitis::Ever { last: None };
    moss.phase = Phase::Recovering;
    shelf = changed(&shelf, &moss, 6);
    assert_eq!(stop_on(&shelf, 6), None);
    moss.health.laminitis = Laminitis::Active;
    moss.phase = Phase::Episode;
    shelf = changed(&shelf, &moss, 7);
    assert!(stop_on(&shelf, 7).is_some());
}

#[test]
fn no_word_lifts_grain_or_an_animal_off_its_feed() {
    let mut grain = animal("moss");
    grain.health.flags = vec![VetFlag::GotAtGrain { at: at(0) }];
    let mut off = animal("moss");
    off.health.appetite = tussock_core::animal::Appetite::Off {
        last_seen_eating: Some(at(0)),
        handful: Handful::Refused,
        dull: Answer::No,
    };
    for animal in [grain, off] {
        let shelf = shelf_of(&[add("moss", &animal, 0), ("w", "moss", word(lowest(), 1), 1)]);
        assert!(matches!(
            stop_on(&shelf, 1),
            Some(Stop::Vet(_, VetUrgency::Now))
        ));
    }
}

#[test]
fn left_its_hay_and_ate_the_handful_is_fed_now_and_rung_about_this_morning() {
    let mut moss = animal("moss");
    moss.health.appetite = tussock_core::animal::Appetite::Off {
        last_seen_eating: Some(at(0)),
        handful: Handful::Eaten,
        dull: Answer::No,
    };
    let shelf = shelf_of(&[add("moss", &moss, 1)]);
    assert_eq!(
        stop_on(&shelf, 1),
        Some(Stop::Vet(Refusal::AteWhenOffered, VetUrgency::ThisMorning))
    );
}

#[test]
fn a_warm_hoof_is_looked_at_again_and_no_word_stands_in_for_the_look() {
    let warm = |answer: Answer| {
        Body::LookOver(crate::forms::look_over::body(&Signs {
            warm_hoof: answer,
            lying_more: Answer::No,
            ..Signs::default()
        }))
    };
    let shelf = shelf_of(&[
        add("moss", &animal("moss"), 0),
        ("l", "moss", warm(Answer::Yes), 1),
        ("w", "moss", word(lowest(), 1), 1),
    ]);
    assert_eq!(stop_on(&shelf, 1), Some(Stop::LookAgain));
    // A look on the next day stands for both.
    let clear = after(&shelf, &[("m", "moss", warm(Answer::No), 2)]);
    assert_eq!(stop_on(&clear, 2), None);
}
