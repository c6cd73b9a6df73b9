//! Practice rule 14: an answer that is worse never makes the vet less urgent, and those on its list are never less urgent
//! than others.

use crate::seed::config;
use proptest::prelude::*;
use tussock_core::animal::{
    Animal, AnimalId, Answer, Appetite, Goal, Handful, Health, Kind, Phase, Ppid, StageFacts,
    State, Temperament, VetFlag, Workload,
};
use tussock_core::safety::{LastAte, Offered, VetUrgency, will_not_eat};
use tussock_core::units::{Instant, Span, Zone};

/// The urgencies, the calmest first: written again here, not taken from the order under test.
fn rank(vet: Option<VetUrgency>) -> u8 {
    match vet {
        None => 0,
        Some(VetUrgency::First) => 1,
        Some(VetUrgency::ThisMorning) => 2,
        Some(VetUrgency::Today) => 3,
        Some(VetUrgency::Now) => 4,
    }
}

fn horse() -> Animal {
    Animal {
        id: AnimalId("moss".into()),
        name: "Moss".into(),
        kind: Kind::Horse,
        body_type: None,
        sex: None,
        born: None,
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

/// A horse, and whatever puts it on the list of rule 14.
fn listed() -> impl Strategy<Value = Animal> {
    (0_usize..9).prop_map(|which| {
        let mut animal = horse();
        match which {
            0 => animal.kind = Kind::Pony,
            1 => animal.kind = Kind::Miniature,
            2 => animal.kind = Kind::Donkey,
            3 => animal.kind = Kind::Mule,
            4 => animal.state = State::Pregnant,
            5 => animal.state = State::Lactating,
            6 => animal.health.ppid = Ppid::Treated,
            7 => animal.health.ppid = Ppid::Untreated,
            _ => animal.health.flags.push(VetFlag::Sglt2Inhibitor),
        }
        animal
    })
}

fn anyone() -> impl Strategy<Value = Animal> {
    (prop_oneof![Just(horse()), listed()], any::<bool>()).prop_map(|(mut animal, off)| {
        if off {
            animal.health.appetite = Appetite::Off {
                last_seen_eating: None,
                handful: Handful::NotTried,
                dull: Answer::NotKnown,
            };
        }
        animal
    })
}

/// Answers as ladders, the best first; a step of 0 stays, 1 and more are worse.
const HANDFULS: [Handful; 2] = [Handful::Eaten, Handful::Refused];
const DULL: [Answer; 3] = [Answer::No, Answer::NotKnown, Answer::Yes];

fn offered(hours: Option<u32>, handful: usize, dull: usize, now: Instant) -> Offered {
    Offered {
        last_seen_eating: hours.map(|hours| now - Span::hours(i64::from(hours))),
        handful: Some(HANDFULS[handful]),
        dull: DULL[dull],
    }
}

struct Clock(i32);

impl Zone for Clock {
    fn offset_min(&self, _: Instant) -> i32 {
        self.0
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn a_worse_answer_never_makes_the_vet_less_urgent(
        animal in anyone(),
        ms in 0_i64..4_000_000_000_000,
        hours in 0_u32..40,
        longer in prop::option::of(0_u32..40),
        (handful, worse_handful) in (0_usize..2, 0_usize..2),
        (dull, worse_dull) in (0_usize..3, 0_usize..3),
    ) {
        let now = Instant::from_ms(ms);
        let better = offered(Some(hours), handful.min(worse_handful), dull.min(worse_dull), now);
        // Nobody knows is the worst there is.
        let worse_hours = longer.map(|longer| hours + longer);
        let worse = offered(worse_hours, handful.max(worse_handful), dull.max(worse_dull), now);
        let of = |offered: &Offered| rank(will_not_eat(&animal, offered, now).vet());
        prop_assert!(of(&better) <= of(&worse), "{better:?} and {worse:?}");
    }

    #[test]
    fn those_on_the_list_are_never_less_urgent_than_a_horse(
        animal in listed(),
        ms in 0_i64..4_000_000_000_000,
        hours in prop::option::of(0_u32..40),
        (handful, dull) in (0_usize..2, 0_usize..3),
    ) {
        let now = Instant::from_ms(ms);
        let said = offered(hours, handful, dull, now);
        let listed = will_not_eat(&animal, &said, now).vet();
        prop_assert!(rank(will_not_eat(&horse(), &said, now).vet()) <= rank(listed));
        // And refusing or dull it is now, however short.
        if HANDFULS[handful] == Handful::Refused || DULL[dull] == Answer::Yes {
            prop_assert_eq!(listed, Some(VetUrgency::Now));
        }
    }

    #[test]
    fn what_people_say_of_the_hour_is_counted_ever_further_back(
        ms in 0_i64..4_000_000_000_000,
        offset in -720_i32..=840,
    ) {
        let now = Instant::from_ms(ms);
        let zone = Clock(offset);
        let said: Vec<Instant> = LastAte::ALL
            .into_iter()
            .filter_map(|said| said.at(now, &zone))
            .collect();
        prop_assert_eq!(said.len(), LastAte::ALL.len() - 1);
        prop_assert!(said.windows(2).all(|pair| pair[1] <= pair[0]), "{:?}", said);
        prop_assert!(said.iter().all(|at| *at <= now));
    }
}
