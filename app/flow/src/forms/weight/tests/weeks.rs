//! From week to week, and on a weighbridge.

use super::*;

#[test]
fn a_weighbridge_weighs_the_trailer_with_and_without() {
    let form = Form::of(
        Kind::Horse,
        &[
            ("how", "scale"),
            ("instrument", "vehicle"),
            ("with", "2940"),
            ("without", "2460"),
        ],
    );
    let scale = form.scale();
    assert_eq!(scale.weight.g.get(), 480_000);
    assert_eq!(scale.instrument, ScaleInstrument::VehicleWeighbridge);
    assert_eq!(scale.with_animal.map(|with| with.g.get()), Some(2_940_000));
    let turned = Form::of(
        Kind::Horse,
        &[
            ("how", "scale"),
            ("instrument", "vehicle"),
            ("with", "2460"),
            ("without", "2940"),
        ],
    );
    assert_eq!(
        turned.with(|filled| filled.act("w")),
        Err(NotYet::Wrong(vec![Wrong::NoDifference]))
    );
    let half = Form::of(
        Kind::Horse,
        &[
            ("how", "scale"),
            ("instrument", "vehicle"),
            ("with", "2460"),
        ],
    );
    assert_eq!(
        half.with(|filled| filled.act("w")),
        Err(NotYet::Wrong(vec![Wrong::Parse(
            WITHOUT,
            ParseError::Empty
        )]))
    );
}

#[test]
fn two_percent_down_opens_a_second_reading_and_that_settles_it() {
    let mut form = Form::of(Kind::Pony, &[("girth", "149")]);
    let day = "2026-04-28".parse().unwrap();
    form.before = Before {
        tape: Some((day, Tape::girth(Length::cm(152.0)))),
        measures: vec![Earlier {
            measure: Measure::HeartGirth,
            length: Length::cm(152.0),
            kind: None,
            tool: TapeTool::Tape,
            takes: 1,
            day,
        }],
        ..Before::default()
    };
    assert!(matches!(form.asked().as_slice(), [Doubt::Fell(_)]));
    form.answer(DoubtAnswer::Again);
    assert_eq!(form.fields["girth2"], "");
    form.set("girth2", "149.5");
    let seen = form.with(|filled| filled.seen()).unwrap();
    assert!(seen.doubts.asked.is_empty() && seen.doubts.confirmed.is_some());
    assert!(seen.changes[0].is_more_than_noise());
    assert_eq!(form.saved().answered.map(|kept| kept.len()), Some(1));
}

#[test]
fn the_frame_of_the_last_tape_weighs_a_weekly_girth_by_the_same_equation() {
    let mut form = Form::of(Kind::Pony, &[("girth", "151.5"), ("belly", "168")]);
    let alone = form.with(|filled| filled.seen()).unwrap().weight.unwrap();
    assert!(alone.1.contains(&Finding::LengthNotTaken));
    form.before.tape = Some((
        "2026-04-28".parse().unwrap(),
        Tape {
            length: Some((Length::cm(134.0), LengthKind::Wrap)),
            ..Tape::girth(Length::cm(152.0))
        },
    ));
    let framed = form.with(|filled| filled.seen()).unwrap().weight.unwrap();
    assert!(!framed.1.contains(&Finding::LengthNotTaken));
    assert!((framed.0.value.to_kg() - 151.5_f64.powi(2) * 134.0 / 11_900.0).abs() < 1e-9);
    // What was not taken is not written as taken.
    assert_eq!(form.tape().length, None);
}

#[test]
fn the_same_weight_in_pounds_stones_and_kilograms() {
    let grams = |typed: &str| {
        Form::of(Kind::Pony, &[("how", "scale"), ("scale", typed)])
            .scale()
            .weight
            .g
            .get()
    };
    assert_eq!(grams("300"), 300_000);
    assert_eq!(grams("300 kg"), 300_000);
    assert_eq!(grams("661.4 lb"), 300_006);
    assert_eq!(grams("47 st 3 lb"), 299_825);
}
