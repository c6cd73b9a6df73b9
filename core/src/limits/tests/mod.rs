//! The rules of need and allowance, case by case.

mod feeding;
mod restriction;
mod special;

use super::*;
use crate::animal::{
    Animal, AnimalId, Answer, Appetite, Birth, Goal, Health, Kind, Phase, StageFacts, State,
    Temperament, VetPermit, VetWord, Workload,
};
use crate::units::{BodyMass, Length, LocalDate, PartOfBody};

pub(super) fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

pub(super) fn percent(value: f64) -> PartOfBody {
    PartOfBody::percent(value)
}

/// Bramble: a grown fat cob that eats, in its losing phase.
pub(super) fn bramble() -> Animal {
    Animal {
        id: AnimalId("bramble".into()),
        name: "Bramble".into(),
        kind: Kind::Horse,
        body_type: None,
        sex: None,
        born: Some(Birth::Day(day("2014-04-20"))),
        height: Some(Length::cm(148.0)),
        state: State::Adult,
        stage: StageFacts::default(),
        work: Workload::Maintenance(Temperament::Average),
        health: Health {
            appetite: Appetite::Eating,
            ..Health::default()
        },
        goal: Goal::Lose,
        phase: Phase::Losing,
        target: None,
    }
}

pub(super) fn fat_twice() -> [ConditionScore; 2] {
    [
        ConditionScore {
            on: day("2026-04-01"),
            score: 8.0,
        },
        ConditionScore {
            on: day("2026-04-15"),
            score: 7.5,
        },
    ]
}

/// Everything in order for a restriction of a 500 kg horse, asked for 1.25 %.
pub(super) fn in_order<'a>(
    animal: &'a Animal,
    condition: &'a [ConditionScore],
) -> AllowanceFor<'a> {
    AllowanceFor {
        animal,
        day: day("2026-05-05"),
        weight: Ends::exactly(BodyMass::kg(500.0)),
        weighings: Weighings {
            on_scale: 1,
            by_tape: 0,
        },
        target: None,
        condition,
        look_over_clean: Answer::Yes,
        days_at_start: 28,
        words: &[],
        now: None,
        asked: Some(percent(1.25)),
    }
}

pub(super) fn word(animal: &Animal, lowest: f64, given: &str, expires: &str) -> VetWord {
    VetWord {
        animal: animal.id.clone(),
        permit: VetPermit::LowestLevel(percent(lowest)),
        vet: "the vet".into(),
        practice: "the practice".into(),
        given: day(given),
        how: "at a visit".into(),
        expires: day(expires),
        written: None,
    }
}

pub(super) fn close(a: PartOfBody, b: f64) -> bool {
    (a.to_percent() - b).abs() < 1e-9
}
