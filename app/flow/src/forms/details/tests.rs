//! What becomes of the details.

use super::*;
use crate::views::test_yard::animal;
use tussock_core::animal::BodyType;

fn today() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

fn held() -> AnimalV1 {
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
    let mut held = AnimalV1::of(&moss).unwrap();
    held.note = Some("kicks at flies".into());
    held
}

fn changed(details: &Details) -> Result<AnimalV1, Vec<Wrong>> {
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
