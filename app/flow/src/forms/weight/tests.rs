//! What is typed beside the animal: several readings, units, questions and their answers.

mod weeks;

use super::*;
use crate::views::test_yard::animal;
use std::collections::BTreeMap;
use tussock_core::assess::{Answered, DoubtAnswer, DoubtKind, Earlier, Tape};
use tussock_core::log::bodies::base::Distance;
use tussock_core::log::bodies::{ScaleV1, TapeV1};

fn today() -> LocalDate {
    "2026-05-05".parse().unwrap()
}

/// A form with its texts.
struct Form {
    animal: Animal,
    before: Before,
    fields: BTreeMap<String, String>,
}

impl Form {
    fn of(kind: Kind, fields: &[(&str, &str)]) -> Self {
        let mut form = Self {
            animal: Animal {
                kind,
                ..animal("moss")
            },
            before: Before::default(),
            fields: BTreeMap::new(),
        };
        for (field, text) in fields {
            form.set(field, text);
        }
        form
    }

    fn set(&mut self, field: &str, text: &str) {
        self.fields.insert(field.to_owned(), text.to_owned());
    }

    fn with<T>(&self, ask: impl FnOnce(&Filled<'_>) -> T) -> T {
        let text = |field: &str| self.fields.get(field).cloned().unwrap_or_default();
        ask(&Filled {
            animal: &self.animal,
            before: &self.before,
            today: today(),
            text: &text,
        })
    }

    fn asked(&self) -> Vec<Doubt> {
        match self.with(|filled| filled.act("w")) {
            Err(NotYet::Asked(doubts)) => doubts,
            other => panic!("nothing is asked: {other:?}"),
        }
    }

    /// Answers the first question as the screen does.
    fn answer(&mut self, answer: DoubtAnswer) {
        let doubt = self.asked()[0];
        assert!(Filled::offers(&doubt).contains(&answer), "{doubt:?}");
        for (field, text) in self.with(|filled| filled.answer(&doubt, answer)) {
            self.set(&field, &text);
        }
    }

    fn saved(&self) -> WeightV1 {
        match self.with(|filled| filled.act("w")) {
            Ok(Act::Add(New {
                body: Body::Weight(body),
                ..
            })) => body,
            other => panic!("not saved: {other:?}"),
        }
    }

    fn tape(&self) -> TapeV1 {
        match self.saved().reading {
            ReadingV1::Tape { tape } => tape,
            ReadingV1::Scale { .. } => panic!("a tape"),
        }
    }

    fn scale(&self) -> ScaleV1 {
        match self.saved().reading {
            ReadingV1::Scale { scale } => scale,
            ReadingV1::Tape { .. } => panic!("a scale"),
        }
    }
}

fn mm(distance: Option<&Distance>) -> Option<i64> {
    distance.map(|distance| distance.mm.get())
}

#[test]
fn the_weekly_check_is_two_girths_and_keeps_what_was_typed() {
    let tape = Form::of(Kind::Pony, &[("girth", "152,5"), ("belly", "66 in")]).tape();
    assert_eq!(tape.heart_girth.mm.get(), 1_525);
    assert_eq!(tape.heart_girth.typed.as_deref(), Some("152,5"));
    assert_eq!(mm(tape.umbilical_girth.as_ref()), Some(1_676));
    assert_eq!(
        tape.umbilical_girth.unwrap().typed.as_deref(),
        Some("66 in")
    );
    assert_eq!(
        (tape.length, tape.length_kind, tape.tool, tape.takes),
        (None, None, None, None)
    );
}

#[test]
fn a_measure_taken_three_times_is_kept_as_its_mean_with_its_readings() {
    let form = Form::of(
        Kind::Pony,
        &[
            ("girth", "152"),
            ("girth2", "153"),
            ("girth3", "152.5"),
            ("neck", "90"),
            ("tool", "string"),
        ],
    );
    let tape = form.tape();
    assert_eq!(tape.heart_girth.mm.get(), 1_525);
    assert_eq!(tape.heart_girth.typed, None);
    assert_eq!(mm(tape.neck.as_ref()), Some(900));
    assert_eq!(tape.tool, Some(TapeTool::StringAndRuler));
    let takes: Vec<_> = tape
        .takes
        .unwrap()
        .into_iter()
        .map(|take| (take.measure, take.reading.typed.unwrap(), take.left_out))
        .collect();
    assert_eq!(
        takes,
        [
            (Measure::HeartGirth, "152".to_owned(), None),
            (Measure::HeartGirth, "153".to_owned(), None),
            (Measure::HeartGirth, "152.5".to_owned(), None),
        ]
    );
}

#[test]
fn an_odd_reading_is_asked_back_and_left_out_or_not() {
    let mut form = Form::of(
        Kind::Pony,
        &[("girth", "152"), ("girth2", "160"), ("girth3", "153")],
    );
    assert!(matches!(
        form.asked().as_slice(),
        [Doubt::Odd { which: 1, .. }]
    ));
    form.answer(DoubtAnswer::LeftOut);
    let tape = form.tape();
    assert_eq!(tape.heart_girth.mm.get(), 1_525);
    let left_out: Vec<_> = tape
        .takes
        .unwrap()
        .iter()
        .map(|take| take.left_out)
        .collect();
    assert_eq!(left_out, [None, Some(true), None]);
    assert_eq!(
        form.saved().answered.unwrap(),
        [Answered {
            doubt: DoubtKind::Odd,
            measure: Some(Measure::HeartGirth),
            answer: DoubtAnswer::LeftOut
        }]
    );
    // Another figure is another question.
    form.set("girth3", "154");
    assert!(matches!(
        form.asked().as_slice(),
        [Doubt::Odd { which: 1, .. }]
    ));
    form.answer(DoubtAnswer::Right);
    assert_eq!(form.tape().heart_girth.mm.get(), 1_553);
}

#[test]
fn two_that_lie_apart_want_a_third() {
    let mut form = Form::of(Kind::Pony, &[("girth", "152"), ("girth2", "158")]);
    assert_eq!(form.asked(), [Doubt::Apart(Measure::HeartGirth)]);
    form.answer(DoubtAnswer::Again);
    assert_eq!(form.fields["girth3"], "");
    form.set("girth3", "152");
    form.answer(DoubtAnswer::LeftOut);
    assert_eq!(form.tape().heart_girth.mm.get(), 1_520);
    let kept: Vec<_> = form.saved().answered.unwrap();
    assert_eq!(
        kept.iter().map(|a| (a.doubt, a.answer)).collect::<Vec<_>>(),
        [
            (DoubtKind::Apart, DoubtAnswer::Again),
            (DoubtKind::Odd, DoubtAnswer::LeftOut)
        ]
    );
}

#[test]
fn inches_for_centimetres_are_mended_in_all_fields_at_once() {
    let mut form = Form::of(
        Kind::Horse,
        &[
            ("girth", "75"),
            ("belly", "81"),
            ("length", "67"),
            ("height", "162 cm"),
        ],
    );
    assert!(matches!(
        form.asked().first(),
        Some(Doubt::Inches {
            measure: Measure::HeartGirth,
            ..
        })
    ));
    form.answer(DoubtAnswer::OtherUnit);
    let tape = form.tape();
    assert_eq!(tape.heart_girth.mm.get(), 1_905);
    assert_eq!(tape.heart_girth.typed.as_deref(), Some("75 in"));
    assert_eq!(mm(tape.length.as_ref()), Some(1_702));
    assert_eq!(mm(tape.height.as_ref()), Some(1_620));
    assert!(
        form.saved()
            .answered
            .unwrap()
            .iter()
            .any(|a| a.answer == DoubtAnswer::OtherUnit)
    );
}

#[test]
fn pounds_for_kilograms_are_mended_and_right_is_kept_when_it_is_right() {
    let mut form = Form::of(Kind::Pony, &[("how", "scale"), ("scale", "660")]);
    assert!(matches!(form.asked().as_slice(), [Doubt::Pounds { .. }]));
    form.answer(DoubtAnswer::OtherUnit);
    let scale = form.scale();
    assert_eq!(scale.weight.g.get(), 299_371);
    assert_eq!(scale.weight.typed.as_deref(), Some("660 lb"));
    let mut form = Form::of(Kind::Pony, &[("how", "scale"), ("scale", "660")]);
    form.answer(DoubtAnswer::Right);
    assert_eq!(form.scale().weight.g.get(), 660_000);
    assert_eq!(
        form.saved().answered.unwrap(),
        [Answered {
            doubt: DoubtKind::Pounds,
            measure: None,
            answer: DoubtAnswer::Right
        }]
    );
    // It was said of 660 and not of what is typed next.
    form.set("scale", "670");
    assert!(matches!(form.asked().as_slice(), [Doubt::Pounds { .. }]));
}

#[test]
fn a_donkeys_length_in_the_horse_formula_is_emptied_to_be_measured_again() {
    let mut form = Form::of(Kind::Pony, &[("girth", "152"), ("length", "96")]);
    assert!(matches!(
        form.asked().as_slice(),
        [Doubt::OtherLength { .. }]
    ));
    form.answer(DoubtAnswer::Again);
    assert_eq!(form.fields["length"], "");
    assert_eq!(form.fields[MORE], OPEN);
    form.set("length", "133");
    let tape = form.tape();
    assert_eq!(tape.length_kind, Some(LengthKind::Wrap));
    assert_eq!(form.saved().answered.map(|kept| kept.len()), Some(1));
}

#[test]
fn each_kind_has_its_own_length_and_a_mule_that_of_a_horse() {
    for (kind, wanted) in [
        (Kind::Donkey, LengthKind::ElbowToTuber),
        (Kind::Mule, LengthKind::Wrap),
        (Kind::Pony, LengthKind::Wrap),
    ] {
        let (girth, length) = match kind {
            Kind::Donkey => ("115", "90"),
            _ => ("152", "134"),
        };
        let form = Form::of(kind, &[("girth", girth), ("length", length)]);
        assert_eq!(form.tape().length_kind, Some(wanted), "{kind:?}");
    }
    let straight = Form::of(
        Kind::Horse,
        &[("girth", "190"), ("length", "165"), ("kind", "straight")],
    );
    assert!(matches!(
        straight.with(|filled| filled.act("w")),
        Err(NotYet::Wrong(wrong)) if wrong[0].field(How::Tape) == "length"
    ));
}

#[test]
fn what_cannot_be_read_or_believed_is_named_at_its_field_and_nothing_is_written() {
    let wrong = |fields: &[(&str, &str)]| {
        let form = Form::of(Kind::Pony, fields);
        match form.with(|filled| filled.act("w")) {
            Err(NotYet::Wrong(wrong)) => wrong
                .iter()
                .map(|wrong| wrong.field(form.with(|filled| filled.how())))
                .collect::<Vec<_>>(),
            other => panic!("{fields:?}: {other:?}"),
        }
    };
    assert_eq!(wrong(&[]), ["girth"]);
    assert_eq!(wrong(&[("girth", "152"), ("belly", "far")]), ["belly"]);
    assert_eq!(wrong(&[("girth", "1520")]), ["girth"]);
    assert_eq!(wrong(&[("girth", "152"), ("height", "14.2")]), ["height"]);
    assert_eq!(wrong(&[("how", "scale")]), ["scale"]);
    assert_eq!(
        wrong(&[("how", "scale"), ("scale", "300"), ("scale2", "x")]),
        ["scale2"]
    );
}

#[test]
fn a_second_reading_is_offered_when_the_first_can_be_read_and_no_fourth() {
    let once_more = |fields: &[(&str, &str)]| {
        Form::of(Kind::Pony, fields).with(|filled| filled.once_more(Some(Measure::HeartGirth)))
    };
    assert_eq!(once_more(&[]), None);
    assert_eq!(once_more(&[("girth", "x")]), None);
    assert_eq!(once_more(&[("girth", "152")]), Some("girth2"));
    assert_eq!(
        once_more(&[("girth", "152"), ("girth2", "152")]),
        Some("girth3")
    );
    assert_eq!(
        once_more(&[("girth", "152"), ("girth2", "152"), ("girth3", "153")]),
        None
    );
}
