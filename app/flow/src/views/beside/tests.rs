//! What is due and what stops an animal.

use super::*;
use crate::views::test_yard::{add, after, animal, at, shelf_of, zone};
use tussock_core::animal::{Laminitis, VetFlag};
use tussock_core::log::bodies::CrestV1;

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
