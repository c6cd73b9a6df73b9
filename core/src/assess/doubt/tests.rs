//! Misuse is asked back: inches for centimetres, pounds for kilograms, another length, a slip, a jump.

mod jumps;

use super::*;
use crate::animal::Birth;
use crate::assess::choose::tests::{animal, today};
use crate::assess::{
    Earlier, Measured, ScaleInstrument, ScaleTaken, ScaleWeight, Take, Takes, Tape, TapeTaken,
    TapeTool,
};

fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

fn takes(cm: &[f64]) -> Takes<Length> {
    Takes::new(cm.iter().map(|cm| Take::of(Length::cm(*cm))).collect()).unwrap()
}

fn tape(kind: LengthKind, measures: &[(Measure, &[f64])]) -> TapeTaken {
    TapeTaken {
        measures: measures
            .iter()
            .map(|(measure, cm)| Measured {
                measure: *measure,
                takes: takes(cm),
                unit_said: false,
            })
            .collect(),
        kind,
        tool: TapeTool::Tape,
    }
}

fn scale(kg: &[f64]) -> ScaleTaken {
    ScaleTaken {
        takes: Takes::new(kg.iter().map(|kg| Take::of(BodyMass::kg(*kg))).collect()).unwrap(),
        unit_said: false,
        instrument: ScaleInstrument::AnimalScale,
    }
}

fn of_tape(animal: &Animal, taken: TapeTaken, before: &Before) -> Doubts {
    doubts(animal, &Taken::Tape(taken), before, today())
}

fn of_scale(animal: &Animal, taken: ScaleTaken, before: &Before) -> Doubts {
    doubts(animal, &Taken::Scale(taken), before, today())
}

fn never() -> Before {
    Before::default()
}

/// A tape of a week ago.
fn taped(girth: f64) -> Before {
    let day = day("2026-04-28");
    Before {
        measures: vec![Earlier {
            measure: Measure::HeartGirth,
            length: Length::cm(girth),
            kind: None,
            tool: TapeTool::Tape,
            takes: 1,
            day,
        }],
        tape: Some((day, Tape::girth(Length::cm(girth)))),
        ..never()
    }
}

fn weighed(kg: f64, on: &str) -> Before {
    let mass = BodyMass::kg(kg);
    Before {
        scale: Some((
            day(on),
            ScaleWeight {
                mass,
                instrument: ScaleInstrument::AnimalScale,
            },
        )),
        weight: Some(mass),
        ..never()
    }
}

const WRAP: LengthKind = LengthKind::Wrap;
const ELBOW: LengthKind = LengthKind::ElbowToTuber;

#[test]
fn a_usual_tape_of_every_kind_asks_nothing() {
    for (kind, length, girth, long, belly, neck, height) in [
        (Kind::Horse, WRAP, 190.0, 170.0, 205.0, 105.0, 163.0),
        (Kind::Horse, WRAP, 230.0, 200.0, 255.0, 130.0, 180.0),
        (Kind::Pony, WRAP, 152.0, 134.0, 168.0, 90.0, 124.0),
        (Kind::Pony, WRAP, 130.0, 112.0, 150.0, 80.0, 102.0),
        (Kind::Miniature, WRAP, 100.0, 86.0, 115.0, 60.0, 84.0),
        (Kind::Donkey, ELBOW, 115.0, 90.0, 130.0, 60.0, 104.0),
        (Kind::Mule, WRAP, 160.0, 140.0, 175.0, 85.0, 140.0),
    ] {
        let of = animal(kind, None);
        let taken = tape(
            length,
            &[
                (Measure::HeartGirth, &[girth]),
                (Measure::Length, &[long]),
                (Measure::UmbilicalGirth, &[belly]),
                (Measure::Neck, &[neck]),
                (Measure::Height, &[height]),
            ],
        );
        assert_eq!(of_tape(&of, taken, &never()).asked, [], "{kind:?}");
    }
}

#[test]
fn inches_typed_for_centimetres_are_seen_of_every_measure() {
    for (kind, inches) in [
        (Kind::Horse, 75.0),
        (Kind::Pony, 60.0),
        (Kind::Miniature, 39.0),
        (Kind::Donkey, 45.5),
        (Kind::Mule, 63.0),
    ] {
        let asked = of_tape(
            &animal(kind, None),
            tape(WRAP, &[(Measure::HeartGirth, &[inches])]),
            &never(),
        )
        .asked;
        assert!(
            matches!(asked.as_slice(), [Doubt::Inches { measure: Measure::HeartGirth, as_inches, .. }]
                if (as_inches.to_inches() - inches).abs() < 1e-9),
            "{kind:?} {asked:?}"
        );
    }
    let cob = animal(Kind::Horse, None);
    for (measure, inches) in [
        (Measure::UmbilicalGirth, 80.0),
        (Measure::Neck, 41.0),
        (Measure::Length, 66.0),
        (Measure::Height, 63.0),
    ] {
        let taken = tape(
            WRAP,
            &[(Measure::HeartGirth, &[190.0]), (measure, &[inches])],
        );
        let asked = of_tape(&cob, taken, &never()).asked;
        assert!(
            asked.iter().any(
                |doubt| matches!(doubt, Doubt::Inches { measure: about, .. } if *about == measure)
            ),
            "{measure:?} {asked:?}"
        );
    }
}

#[test]
fn a_unit_that_was_typed_is_not_asked_for_again() {
    let pony = animal(Kind::Pony, None);
    let mut taken = tape(WRAP, &[(Measure::HeartGirth, &[60.0])]);
    for measured in &mut taken.measures {
        measured.unit_said = true;
    }
    assert!(matches!(
        of_tape(&pony, taken, &never()).asked.as_slice(),
        [Doubt::UnusualMeasure {
            measure: Measure::HeartGirth,
            ..
        }]
    ));
}

#[test]
fn pounds_typed_for_kilograms_are_seen_by_kind_height_or_last_time() {
    let pounds = |animal: &Animal, lb: f64, before: &Before| {
        let asked = of_scale(animal, scale(&[lb]), before).asked;
        assert!(
            matches!(asked.as_slice(), [Doubt::Pounds { as_pounds, .. }]
                if (as_pounds.to_lb() - lb).abs() < 1e-9),
            "{lb}: {asked:?}"
        );
    };
    pounds(&animal(Kind::Horse, None), 1_210.0, &never());
    pounds(&animal(Kind::Pony, None), 660.0, &never());
    pounds(&animal(Kind::Miniature, None), 210.0, &never());
    pounds(&animal(Kind::Donkey, None), 420.0, &never());
    // 480 kg would pass for a pony; not at 122 cm, and not when it was 218 kg last week.
    let mut small = animal(Kind::Pony, None);
    small.height = Some(Length::cm(122.0));
    pounds(&small, 480.0, &never());
    pounds(
        &animal(Kind::Pony, None),
        480.0,
        &weighed(218.0, "2026-04-28"),
    );
    assert_eq!(
        of_scale(&animal(Kind::Pony, None), scale(&[306.0]), &never()).asked,
        []
    );
}

#[test]
fn a_slip_that_no_unit_explains_is_asked_plainly() {
    let pony = animal(Kind::Pony, None);
    assert!(matches!(
        of_scale(&pony, scale(&[31.0]), &never()).asked.as_slice(),
        [Doubt::UnusualWeight { .. }]
    ));
    assert!(matches!(
        of_tape(
            &pony,
            tape(
                WRAP,
                &[
                    (Measure::HeartGirth, &[152.0]),
                    (Measure::UmbilicalGirth, &[108.0])
                ]
            ),
            &never()
        )
        .asked
        .as_slice(),
        [Doubt::UnusualMeasure {
            measure: Measure::UmbilicalGirth,
            ..
        }]
    ));
}

#[test]
fn a_donkeys_length_in_the_horse_formula_is_asked_back_and_a_horses_for_a_donkey() {
    // The elbow length of a pony that is 134 cm around the buttock is about 96 cm.
    let asked = of_tape(
        &animal(Kind::Pony, None),
        tape(
            WRAP,
            &[(Measure::HeartGirth, &[152.0]), (Measure::Length, &[96.0])],
        ),
        &never(),
    )
    .asked;
    assert!(
        matches!(
            asked.as_slice(),
            [Doubt::OtherLength {
                taken: WRAP,
                looks_like: ELBOW,
                ..
            }]
        ),
        "{asked:?}"
    );
    let asked = of_tape(
        &animal(Kind::Donkey, None),
        tape(
            ELBOW,
            &[(Measure::HeartGirth, &[115.0]), (Measure::Length, &[122.0])],
        ),
        &never(),
    )
    .asked;
    assert!(
        matches!(
            asked.as_slice(),
            [Doubt::OtherLength {
                taken: ELBOW,
                looks_like: WRAP,
                ..
            }]
        ),
        "{asked:?}"
    );
}

#[test]
fn a_horse_under_112_cm_is_asked_back_and_a_pony_is_not() {
    let taken = || {
        tape(
            WRAP,
            &[(Measure::HeartGirth, &[140.0]), (Measure::Height, &[108.0])],
        )
    };
    assert!(
        matches!(of_tape(&animal(Kind::Horse, None), taken(), &never()).asked.as_slice(),
            [Doubt::SmallHorse { height }] if *height == Length::cm(108.0))
    );
    assert_eq!(
        of_tape(&animal(Kind::Pony, None), taken(), &never()).asked,
        []
    );
}

#[test]
fn a_third_reading_is_asked_for_and_the_odd_one_named() {
    let pony = animal(Kind::Pony, None);
    let girths =
        |cm: &[f64]| of_tape(&pony, tape(WRAP, &[(Measure::HeartGirth, cm)]), &never()).asked;
    assert_eq!(girths(&[152.0, 153.0]), []);
    assert_eq!(girths(&[152.0, 158.0]), [Doubt::Apart(Measure::HeartGirth)]);
    assert_eq!(
        girths(&[152.0, 158.0, 153.0]),
        [Doubt::Odd {
            measure: Measure::HeartGirth,
            which: 1,
            read: Length::cm(158.0)
        }]
    );
    assert_eq!(
        girths(&[146.0, 152.0, 158.0]),
        [Doubt::Scattered(Measure::HeartGirth)]
    );
    assert_eq!(
        of_scale(&pony, scale(&[300.0, 306.0]), &never()).asked,
        [Doubt::ScaleApart]
    );
}

#[test]
fn the_frame_of_an_earlier_tape_makes_two_weeks_comparable() {
    let pony = animal(Kind::Pony, None);
    let whole = Tape {
        length: Some((Length::cm(120.0), WRAP)),
        ..Tape::girth(Length::cm(152.0))
    };
    let before = Before {
        tape: Some((day("2026-04-28"), whole)),
        ..taped(152.0)
    };
    // By the girth alone it would weigh 5 % more than last week; it weighs the same.
    assert_eq!(
        of_tape(
            &pony,
            tape(WRAP, &[(Measure::HeartGirth, &[152.0])]),
            &before
        ),
        Doubts::default()
    );
    assert!(frame_holds(&pony, day("2025-06-01"), today()));
    assert!(!frame_holds(&pony, day("2025-05-01"), today()));
    assert!(!frame_holds(&pony, day("2026-05-06"), today()));
    let mut yearling = animal(Kind::Pony, None);
    yearling.born = Some(Birth::Year(2025));
    assert!(!frame_holds(&yearling, day("2026-04-01"), today()));
}
