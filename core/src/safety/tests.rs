//! Readings at rest, flags and what they ask for, as practice rules 14, 15 and 19 say it.

use super::*;
use crate::animal::{
    Animal, AnimalId, Birth, Goal, Health, Kind, Laminitis, Phase, Ppid, SaidOn, Seen, StageFacts,
    State, Temperament, VetFlag, VetPermit, VetWord, Workload,
};
use crate::plan::{AtRest, LookedOver, Taken};
use crate::units::{Instant, LocalDate, PartOfBody, Span};

fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

/// The fifth of May 2026, noon.
fn noon() -> Instant {
    Instant::from_ms(1_777_982_400_000)
}

fn today() -> LocalDate {
    day("2026-05-05")
}

fn moss(kind: Kind) -> Animal {
    Animal {
        id: AnimalId("moss".into()),
        name: "Moss".into(),
        kind,
        body_type: None,
        sex: None,
        born: Some(Birth::Year(2018)),
        height: None,
        state: State::Adult,
        stage: StageFacts::default(),
        work: Workload::Maintenance(Temperament::Average),
        health: Health::default(),
        goal: Goal::Hold,
        phase: Phase::Holding,
        target: None,
    }
}

fn taken(vital: Vital, reading: f64) -> AtRest {
    let seen = Seen {
        day: today(),
        at: Some(noon()),
    };
    vital.with(AtRest::default(), Taken { reading, seen })
}

fn stopped(animal: &Animal, at_rest: AtRest, words: &[VetWord]) -> Vec<(Refusal, VetUrgency)> {
    let look_over = LookedOver {
        at_rest,
        ..LookedOver::default()
    };
    stops(&StopsFor {
        animal,
        look_over: &look_over,
        said: SaidOn::default(),
        too_fast: None,
        words,
        day: today(),
        now: noon(),
    })
}

#[test]
fn a_fever_is_rung_about_now_and_what_is_only_over_is_told() {
    let fever = taken(Vital::Temperature, 39.4);
    let pony = moss(Kind::Pony);
    let far = Refusal::FarOverUsual {
        vital: Vital::Temperature,
        reading: 39.4,
    };
    assert_eq!(stopped(&pony, fever, &[]), [(far, VetUrgency::Now)]);
    assert_eq!(of_health(&pony, &fever, today()), []);
    let over = taken(Vital::Temperature, 38.8);
    assert_eq!(stopped(&pony, over, &[]), []);
    assert_eq!(
        of_health(&pony, &over, today()),
        [Caution::Unusual {
            vital: Vital::Temperature,
            reading: 38.8,
            standing: VitalStanding::Over
        }]
    );
    // Taken again and within what is usual, it is gone.
    let well = taken(Vital::Temperature, 38.0);
    assert_eq!(stopped(&pony, well, &[]), []);
    assert_eq!(of_health(&pony, &well, today()), []);
}

#[test]
fn a_foal_has_no_range_here_and_a_donkey_its_own() {
    let mut foal = moss(Kind::Horse);
    foal.born = Some(Birth::Day(day("2026-03-01")));
    assert_eq!(
        stopped(&foal, taken(Vital::Temperature, 39.4), &[]),
        [],
        "foals differ: ask the vet"
    );
    let pulse = taken(Vital::Pulse, 48.0);
    assert_eq!(of_health(&moss(Kind::Donkey), &pulse, today()), []);
    assert!(!of_health(&moss(Kind::Horse), &pulse, today()).is_empty());
}

#[test]
fn the_vets_word_after_a_fever_lifts_it_and_one_before_it_does_not() {
    let fever = taken(Vital::Temperature, 39.4);
    let word = |written: Instant| VetWord {
        animal: AnimalId("moss".into()),
        permit: VetPermit::LowestLevel(PartOfBody::percent(1.5)),
        vet: "A. Marsh".into(),
        practice: String::new(),
        given: today(),
        how: "by telephone".into(),
        expires: day("2026-06-01"),
        written: Some(written),
    };
    let pony = moss(Kind::Pony);
    assert_eq!(stopped(&pony, fever, &[word(noon() + Span::hours(1))]), []);
    assert_eq!(
        stopped(&pony, fever, &[word(noon() - Span::hours(1))]).len(),
        1
    );
}

#[test]
fn grain_or_lush_grass_is_rung_about_at_once_without_any_sign() {
    for flag in [
        VetFlag::GotAtGrain { at: noon() },
        VetFlag::EscapedOntoGrass { at: noon() },
    ] {
        let mut animal = moss(Kind::Horse);
        animal.health.flags = vec![flag];
        let found = stopped(&animal, AtRest::default(), &[]);
        assert!(matches!(found.as_slice(), [(_, VetUrgency::Now)]));
    }
}

#[test]
fn a_caution_goes_when_its_cause_goes_and_not_before() {
    let mut animal = moss(Kind::Pony);
    animal.health.flags = vec![
        VetFlag::PainRelief,
        VetFlag::TrimmedOrShod {
            on: day("2026-05-02"),
        },
        VetFlag::Corticosteroid {
            last: day("2026-04-05"),
        },
    ];
    let on = |animal: &Animal, day| of_health(animal, &AtRest::default(), day);
    assert_eq!(
        on(&animal, today()),
        [
            Caution::PainRelief,
            Caution::FreshlyTrimmed,
            Caution::Corticosteroid
        ]
    );
    // Three days after the trim and thirty after the steroid; pain relief stands until somebody says it has ended.
    assert_eq!(on(&animal, day("2026-05-06")), [Caution::PainRelief]);
    animal.health.flags.clear();
    assert_eq!(on(&animal, today()), []);
}

#[test]
fn ppid_is_asked_about_from_fifteen_and_after_laminitis_in_autumn() {
    let asks = |born: i32, laminitis: Laminitis, ppid: Ppid, on: &str| {
        let mut animal = moss(Kind::Pony);
        animal.born = Some(Birth::Year(born));
        animal.health.laminitis = laminitis;
        animal.health.ppid = ppid;
        of_health(&animal, &AtRest::default(), day(on)).contains(&Caution::AskAboutPpid)
    };
    let never = Laminitis::Never;
    assert!(asks(2010, never, Ppid::NotKnown, "2026-05-05"));
    assert!(!asks(2012, never, Ppid::NotKnown, "2026-05-05"));
    assert!(!asks(2000, never, Ppid::Clear, "2026-05-05"));
    let autumn = Laminitis::Ever {
        last: Some(day("2025-10-12")),
    };
    assert!(asks(2018, autumn, Ppid::NotKnown, "2026-05-05"));
    let spring = Laminitis::Ever {
        last: Some(day("2025-05-12")),
    };
    assert!(!asks(2018, spring, Ppid::NotKnown, "2026-05-05"));
    // It has it now, and it is autumn.
    assert!(asks(2018, Laminitis::Active, Ppid::NotKnown, "2026-10-05"));
    assert!(!asks(2018, Laminitis::Active, Ppid::NotKnown, "2026-05-05"));
}
