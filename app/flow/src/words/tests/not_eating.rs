//! The words of an animal that will not eat.

use super::{check, check_head, every, tongues};
use crate::forms::not_eating::Wrong;
use crate::views::not_eating::{NotEating, Vet, not_eating};
use crate::views::test_yard::{add, animal, at, shelf_of, zone};
use crate::words::NotEatingWords;
use tussock_core::animal::{Animal, AnimalId, Answer, Handful, Kind, State, VetFlag};
use tussock_core::log::LogError;
use tussock_core::safety::{EatStep, LastAte, Offered, Vital};
use tussock_core::units::parse::ParseError;

fn steps() -> Vec<EatStep> {
    every![
        EatStep::OtherForage => EatStep::OtherForage, EatStep::Rinse => EatStep::Rinse,
        EatStep::ShorterSoak => EatStep::ShorterSoak, EatStep::MixWithOld => EatStep::MixWithOld,
        EatStep::LookNextVisit => EatStep::LookNextVisit, EatStep::FeedNow => EatStep::FeedNow,
        EatStep::LeaveForage => EatStep::LeaveForage, EatStep::TakeVitals => EatStep::TakeVitals,
        EatStep::RingAtOnceIfWorse => EatStep::RingAtOnceIfWorse,
    ]
}

fn wrongs() -> Vec<Wrong> {
    every![
        Wrong::Vital(..) => Wrong::Vital(
            Vital::Temperature,
            ParseError::OutOfRange(Vital::Temperature.bounds().check(3.8).unwrap_err())
        ),
        Wrong::Telephone => Wrong::Telephone,
        Wrong::Handful => Wrong::Handful,
        Wrong::Log(_) => Wrong::Log(LogError::NotJson { line: 1, column: 1 }),
    ]
}

#[test]
fn every_step_answer_and_reading_is_worded() {
    let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
    let view = not_eating(&shelf, &AnimalId("moss".into()), at(1), &zone()).unwrap();
    for say in tongues() {
        for step in steps() {
            let said = say.eat_step(step);
            check(&said.sentence);
            assert!(!said.sentence.ends_with('.'));
            if let Some(why) = said.why {
                check(&why);
            }
        }
        for wrong in wrongs() {
            check(&say.not_eating_wrong(&wrong));
        }
        for last in LastAte::ALL {
            check(say.last_ate(last));
        }
        check_head(&say.hold_out_a_handful("Bramble"));
        check_head(&say.leaves_this_hay("Bramble"));
        for vital in Vital::ALL {
            let normal = view.normal(vital).unwrap();
            check(&say.vital_hint(vital, Some(&normal)));
            check(&say.vital_hint(vital, None));
            let line = normal.ring_above.unwrap_or(normal.high);
            for reading in [normal.low - 1.0, normal.low, normal.high + 0.2, line + 1.0] {
                check(&say.vital_stands(vital, reading, &normal));
            }
        }
        for text in [
            say.will_not_eat(),
            say.last_ate_question(),
            say.last_ate_hint(),
            say.what_to_do(),
            say.vitals(),
            say.vitals_are_no_diagnosis(),
            say.call_sheet(),
            say.no_number(),
            say.number_label(),
            say.the_vet(),
            say.ends_with_a_look_over(),
            say.save_what_it_did(),
        ] {
            check(text);
        }
        check(&say.ring_the_vet(&Vet::default()));
        check(&say.as_saved(at(1), &view, &zone()));
    }
}

#[test]
fn a_range_says_whose_it_is_and_how_far_it_is_known() {
    let [say, _] = tongues();
    let mut moss = animal("moss");
    let hint = |moss: &Animal, vital: Vital| {
        let day = "2026-05-05".parse().unwrap();
        say.vital_hint(vital, vital.normal(moss, day).as_ref())
    };
    assert_eq!(
        hint(&moss, Vital::Temperature),
        "May be left out. A grown horse or pony at rest: 37.2 to 38.6 °C (common practice, no source). Above 38.9 °C, ring the vet."
    );
    moss.kind = Kind::Mule;
    assert_eq!(
        hint(&moss, Vital::Pulse),
        "May be left out. A grown donkey at rest: 36 to 52 a minute (from memory)."
    );
    moss.state = State::Growing;
    assert_eq!(
        hint(&moss, Vital::Breaths),
        "May be left out. Foals differ: ask the vet what is usual."
    );
}

#[test]
fn the_sheet_says_what_is_known_and_what_is_not() {
    let mut moss = animal("moss");
    moss.state = State::Pregnant;
    moss.health.flags = vec![VetFlag::PainRelief];
    let id = AnimalId("moss".into());
    let of = |moss: &Animal| {
        not_eating(&shelf_of(&[add("moss", moss, 0)]), &id, at(1), &zone()).unwrap()
    };
    let offered = Offered {
        last_seen_eating: None,
        handful: Some(Handful::Refused),
        dull: Answer::Yes,
    };
    let [say, _] = tongues();
    let lines = |view: &NotEating, readings| {
        say.sheet(view, &offered, readings, &zone())
            .into_iter()
            .map(|line| {
                check(&line.about);
                check(&line.says);
                format!("{}: {}", line.about, line.says)
            })
            .collect::<Vec<_>>()
    };
    let said = lines(&of(&moss), [Some(39.4), Some(44.0), None]);
    assert_eq!(
        said,
        [
            "Who: moss, pony, in foal",
            "Last seen eating: Nobody knows",
            "A handful of dry hay: Refused it",
            "Dull: Yes",
            "Temperature: 39.4 °C, far over what is usual: ring the vet now, whatever it eats",
            "Pulse: 44 a minute, within what is usual",
            "Breathing: Not taken",
            "Last seven days: moss: nothing is planned or logged yet",
            "Weight: Never weighed",
            "Drugs: On pain relief",
            "What changed: No other hay was opened, as far as it is written down",
        ]
    );
    moss.health.flags.clear();
    let said = lines(&of(&moss), [None; 3]);
    assert!(said.contains(&"Drugs: None is written down. Say what it is on".to_owned()));
}
