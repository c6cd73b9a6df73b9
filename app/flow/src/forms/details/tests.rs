//! What becomes of the details.

use super::*;
use crate::views::test_yard::animal;
use tussock_core::animal::{Birth, BodyType};

fn today() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

fn held() -> AnimalV2 {
    let mut moss = animal("moss");
    moss.body_type = Some(BodyType::Shetland);
    moss.health.laminitis = Laminitis::Ever {
        last: Some("2025-10-01".parse().unwrap()),
    };
    moss.health.insulin = Insulin::Tested(InsulinTest {
        dysregulated: true,
        by: "Dr Reed".into(),
        on: "2026-01-10".parse().unwrap(),
        test: "oral sugar".into(),
    });
    moss.born = Some(Birth::Day("2014-05-01".parse().unwrap()));
    moss.height = Some(tussock_core::units::Length::cm(104.0));
    let mut held = AnimalV2::of(&moss).unwrap();
    held.note = Some("kicks at flies".into());
    held
}

fn changed(details: &Details) -> Result<AnimalV2, Vec<Wrong>> {
    match details.act(&held(), &RecordId("moss".into()), today())? {
        Act::Change {
            body: Body::Animal(body),
            ..
        } => Ok(body),
        _ => panic!("changes an animal"),
    }
}

#[test]
fn what_nobody_touched_reads_back_as_it_was() {
    assert_eq!(changed(&Details::of(&held())), Ok(held()));
}

#[test]
fn not_known_can_be_chosen_again_and_the_note_stays() {
    let next = changed(
        &Details::of(&held())
            .with(Field::Laminitis, NOT_KNOWN)
            .with(Field::BodyType, NOT_KNOWN)
            .with(Field::Insulin, NOT_KNOWN)
            .with(Field::Born, ""),
    )
    .unwrap();
    assert_eq!(next.health.laminitis, Laminitis::NotKnown);
    assert_eq!(next.health.insulin, Insulin::NotKnown);
    assert_eq!((next.body_type, next.born), (None, None));
    assert_eq!(next.note, held().note);
}

#[test]
fn laminitis_now_is_an_episode() {
    let next = changed(&Details::of(&held()).with(Field::Laminitis, "active")).unwrap();
    assert_eq!(next.phase, Phase::Episode);
    let ever = Laminitis::Ever { last: None };
    assert_eq!(
        phase(Phase::Episode, Laminitis::Active, ever),
        Phase::Recovering
    );
    assert_eq!(phase(Phase::Losing, ever, ever), Phase::Losing);
}

#[test]
fn every_field_says_what_is_wrong_with_it() {
    let wrong = changed(
        &Details::of(&held())
            .with(Field::Name, " ")
            .with(Field::Born, "twelve")
            .with(Field::Height, "14.7 hh")
            .with(Field::LaminitisEnded, "2031-01-01")
            .with(Field::InsulinOn, ""),
    )
    .unwrap_err();
    let fields: Vec<Field> = wrong.iter().map(Wrong::field).collect();
    assert_eq!(
        fields,
        [
            Field::Name,
            Field::Born,
            Field::Height,
            Field::LaminitisEnded,
            Field::InsulinOn
        ]
    );
}

#[test]
fn since_when_belongs_to_the_state_that_is_chosen() {
    let mare = Details::of(&held()).with(Field::State, "pregnant");
    let covered: Option<LocalDate> = "2025-08-12".parse().ok();
    let mare = mare.with(Field::Covered, "12.8.2025");
    let next = changed(&mare).unwrap();
    assert_eq!((next.state, next.covered), (State::Pregnant, covered));
    // It reads back as it was typed into.
    assert_eq!(Details::of(&next).text(Field::Covered), "2025-08-12");
    // She foaled: that day holds now, and the other no longer.
    let mare = mare
        .with(Field::State, "lactating")
        .with(Field::Foaled, "20/4/2026");
    let next = changed(&mare).unwrap();
    let foaled: Option<LocalDate> = "2026-04-20".parse().ok();
    assert_eq!((next.covered, next.foaled), (None, foaled));
    let grown = changed(&mare.with(Field::State, "adult")).unwrap();
    assert_eq!(
        (grown.covered, grown.foaled, grown.grown),
        (None, None, None)
    );
}

#[test]
fn a_growing_animal_says_its_month_and_what_it_will_weigh() {
    let young = Details::of(&held())
        .with(Field::State, "growing")
        .with(Field::Born, "5.2025")
        .with(Field::Grown, "1100 lb");
    let next = changed(&young).unwrap();
    let born = Birth::Month {
        year: 2025,
        month: 5,
    };
    assert_eq!(next.born, Some(born));
    let grown = next.grown.clone().unwrap();
    assert_eq!(grown.typed.as_deref(), Some("1100 lb"));
    assert!((grown.g.mass().to_kg() - 498.95).abs() < 0.01);
    let again = Details::of(&next);
    assert_eq!(again.text(Field::Born), "2025-05");
    assert_eq!(again.text(Field::Grown), "1100 lb");
}

#[test]
fn what_is_wrong_with_since_when_stands_at_its_field_and_only_where_it_is_asked() {
    let details = Details::of(&held())
        .with(Field::Covered, "2031-01-01")
        .with(Field::Foaled, "yesterday")
        .with(Field::Grown, "5 kg");
    for (state, field) in [
        ("pregnant", Field::Covered),
        ("lactating", Field::Foaled),
        ("growing", Field::Grown),
    ] {
        let wrong = changed(&details.clone().with(Field::State, state)).unwrap_err();
        let fields: Vec<Field> = wrong.iter().map(Wrong::field).collect();
        assert_eq!(fields, [field], "{state}");
    }
    assert!(changed(&details).is_ok());
    // A month that has not come is no birth.
    let wrong = changed(&Details::of(&held()).with(Field::Born, "6.2026")).unwrap_err();
    assert_eq!(wrong, [Wrong::Date(Field::Born)]);
}

#[test]
fn months_are_read_as_people_write_them() {
    let may = Birth::Month {
        year: 2025,
        month: 5,
    };
    for text in ["2025-05", "5.2025", "05/2025", "5 2025"] {
        assert_eq!(read_birth(text, today()), Ok(Some(may)), "{text}");
    }
    for text in ["13.2025", "2025-0", "5.25"] {
        assert!(
            !matches!(read_birth(text, today()), Ok(Some(Birth::Month { .. }))),
            "{text}"
        );
    }
}

#[test]
fn days_are_read_as_people_write_them() {
    let day = "2026-05-01".parse().ok();
    for text in ["2026-05-01", "1.5.2026", "01/05/2026"] {
        assert_eq!(read_day(text), day, "{text}");
    }
    for text in ["31/02/2026", "2014", "1.5.26", ""] {
        assert_eq!(read_day(text), None, "{text}");
    }
}

#[test]
fn every_key_reads_back() {
    for (value, key) in WORK {
        assert_eq!(value_of(&WORK, key), Some(value));
    }
    assert_eq!(value_of(&SEXES, NOT_KNOWN), None);
}
