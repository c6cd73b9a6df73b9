//! The six answers, and what they write.

use super::*;
use crate::forms::start::{RIBS, Visits, hays, key, of_key};
use tussock_core::animal::Kind;
use tussock_core::log::bodies::ReadingV1;

fn today() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

fn ids() -> Ids {
    let record = |id: &str| RecordId(id.to_owned());
    Ids {
        yard: YardId("yard".into()),
        animal: AnimalId("bramble".into()),
        weight: record("weight"),
        condition: record("condition"),
        lot: record("lot"),
        visits: record("visits"),
    }
}

fn named() -> Named {
    Named {
        animal: "Pony".into(),
        lot: "Meadow hay".into(),
        yard: "Yard".into(),
        sort: "Pony under 112 cm".into(),
    }
}

fn answers() -> Answers {
    Answers {
        name: String::new(),
        sort: Some(Sort::SmallPony),
        age: "12".into(),
        girth: "130".into(),
        ribs: Some(Ribs::FeltWithPressure),
        ever: Some(Ever::No),
        hay: Some(ForageClass::Meadow),
        visits: Some(Visits::Two),
    }
}

fn added(answers: &Answers) -> Vec<New> {
    let Act::All(acts) = answers.act(&ids(), &named(), today()).unwrap() else {
        panic!("one batch")
    };
    acts.into_iter()
        .map(|act| match act {
            Act::Add(new) => new,
            other => panic!("{other:?}"),
        })
        .collect()
}

fn animal(answers: &Answers) -> AnimalV2 {
    added(answers)
        .into_iter()
        .find_map(|new| match new.body {
            Body::Animal(body) => Some(body),
            _ => None,
        })
        .unwrap()
}

#[test]
fn one_batch_writes_all_of_it() {
    let added = added(&answers());
    let subjects: Vec<String> = added.iter().map(|new| new.subject.to_string()).collect();
    assert_eq!(
        subjects,
        [
            "yard:yard",
            "animal:bramble",
            "animal:bramble",
            "animal:bramble",
            "lot:lot",
            "yard:yard"
        ]
    );
    assert!(added.iter().any(|new| matches!(
        &new.body,
        Body::Weight(WeightV1 { reading: ReadingV1::Tape { tape }, .. })
            if tape.heart_girth.mm.get() == 1300 && tape.height.is_none()
    )));
    assert!(added.iter().any(
        |new| matches!(&new.body, Body::Visits(visits) if visits.times == Visits::Two.times())
    ));
}

#[test]
fn a_rough_height_is_no_measured_one() {
    let body = animal(&answers());
    assert_eq!((body.kind, body.height), (Kind::Pony, None));
    assert_eq!(body.body_type, None);
    assert_eq!(body.note.as_deref(), Some("Pony under 112 cm"));
    let horse = animal(&Answers {
        sort: Some(Sort::Horse),
        girth: "180".into(),
        ..answers()
    });
    assert_eq!((horse.height, horse.note), (None, None));
}

#[test]
fn what_was_said_decides_goal_and_phase_and_the_rest_stays_not_known() {
    let body = animal(&answers());
    assert_eq!(body.name.as_str(), "Pony");
    assert_eq!(body.born, Some(Birth::Year(2014)));
    assert_eq!((body.goal, body.phase), (Goal::Lose, Phase::New));
    let expected = Health {
        laminitis: tussock_core::animal::Laminitis::Never,
        ..Health::default()
    };
    assert_eq!(body.health, expected);
    let now = animal(&Answers {
        name: " Moss ".into(),
        ever: Some(Ever::HasItNow),
        ..answers()
    });
    assert_eq!((now.name.as_str(), now.phase), ("Moss", Phase::Episode));
    let thin = animal(&Answers {
        ribs: Some(Ribs::Seen),
        ..answers()
    });
    assert_eq!((thin.goal, thin.phase), (Goal::Gain, Phase::NeedsWeight));
    let young = animal(&Answers {
        age: "2".into(),
        ..answers()
    });
    assert_eq!(young.state, State::Growing);
}

#[test]
fn everything_that_is_wrong_is_said_at_once() {
    let wrong = Answers {
        age: "4,5".into(),
        ..Answers::default()
    }
    .act(&ids(), &named(), today())
    .unwrap_err();
    assert_eq!(wrong.len(), 7);
    assert!(matches!(
        wrong.last(),
        Some(Wrong::Girth(ParseError::Empty))
    ));
}

#[test]
fn a_girth_that_gives_no_weight_is_asked_back() {
    let wrong = Answers {
        girth: "13".into(),
        ..answers()
    }
    .act(&ids(), &named(), today())
    .unwrap_err();
    assert!(matches!(wrong.as_slice(), [Wrong::Assess(_)]));
}

#[test]
fn every_sort_can_be_taped() {
    for (sort, girth) in [
        (Sort::SmallPony, "125"),
        (Sort::Pony, "155"),
        (Sort::Horse, "185"),
        (Sort::Miniature, "95"),
        (Sort::Donkey, "118"),
        (Sort::Mule, "150"),
    ] {
        let answers = Answers {
            sort: Some(sort),
            girth: girth.into(),
            ..answers()
        };
        assert_eq!(added(&answers).len(), 6, "{sort:?}");
    }
}

#[test]
fn an_answer_comes_back_from_its_draft() {
    let hays: Vec<ForageClass> = hays().collect();
    assert_eq!(hays.first(), Some(&ForageClass::Grass));
    for hay in &hays {
        assert_eq!(of_key(&hays, &key(&hays, hay)), Some(*hay));
    }
    for ribs in RIBS {
        assert_eq!(of_key(RIBS, &key(RIBS, ribs)), Some(*ribs));
    }
    for text in ["", "0", "99", "x"] {
        assert_eq!(of_key(Sort::ALL, text), None);
    }
}

#[test]
fn the_times_of_the_visits_rise() {
    for visits in Visits::ALL {
        let times = visits.times();
        assert_eq!(times.len(), visits.count());
        assert!(times.is_sorted_by(|a, b| a < b));
    }
}

#[test]
fn a_second_animal_eats_from_the_stack_that_is_there() {
    use crate::acts::{Context, apply};
    use tussock_core::log::DeviceId;
    let context = Context {
        now: tussock_core::units::Instant::from_ms(1_777_000_000_000),
        offset_min: 60,
        zone: "Europe/London".into(),
        yard: YardId("yard".into()),
        by: None,
        device: DeviceId::from_text("abcdefgh").unwrap(),
        last: None,
    };
    let first = answers().act(&ids(), &named(), today()).unwrap();
    let rows = apply(&first, &Shelf::default(), &context, None).unwrap();
    let shelf = Shelf::of(rows.writes.rows);
    let same = |hay, name| the_same_lot(&shelf, hay, name);
    assert_eq!(
        same(ForageClass::Meadow, "Meadow hay"),
        Some(RecordId("lot".into()))
    );
    assert_eq!(same(ForageClass::Teff, "Meadow hay"), None);
    assert_eq!(same(ForageClass::Meadow, "Back field"), None);
    assert_eq!(
        the_same_lot(&Shelf::default(), ForageClass::Meadow, "Meadow hay"),
        None
    );
}
