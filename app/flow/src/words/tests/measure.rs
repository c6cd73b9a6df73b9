//! Everything that weighing and measuring can ask back or say is worded.

use super::{check, check_said, every, tongues};
use crate::forms::weight::Filled;
use crate::words::MeasureWords;
use tussock_core::animal::Kind;
use tussock_core::assess::{Change, Doubt, Jump, LengthKind, Measure, NeckLine, TapeTool};
use tussock_core::units::{BodyMass, Length};

fn cm(cm: f64) -> Length {
    Length::cm(cm)
}

#[test]
fn every_question_and_its_answers_are_worded() {
    let jump = |part| Jump { part, days: 7 };
    let measure = Measure::HeartGirth;
    for say in tongues() {
        for doubt in every![
            Doubt::Inches { .. } => Doubt::Inches { measure, read: cm(60.0), as_inches: Length::inches(60.0) },
            Doubt::Pounds { .. } => Doubt::Pounds { read: BodyMass::kg(660.0), as_pounds: BodyMass::lb(660.0) },
            Doubt::UnusualMeasure { .. } => Doubt::UnusualMeasure { measure: Measure::UmbilicalGirth, read: cm(108.0) },
            Doubt::UnusualWeight { .. } => Doubt::UnusualWeight { read: BodyMass::kg(31.0) },
            Doubt::OtherLength { .. } => Doubt::OtherLength { taken: LengthKind::Wrap, looks_like: LengthKind::ElbowToTuber, length_to_girth: 0.63 },
            Doubt::SmallHorse { .. } => Doubt::SmallHorse { height: cm(108.0) },
            Doubt::Apart(_) => Doubt::Apart(measure),
            Doubt::Odd { .. } => Doubt::Odd { measure: Measure::Height, which: 1, read: cm(160.0) },
            Doubt::Scattered(_) => Doubt::Scattered(measure),
            Doubt::ScaleApart => Doubt::ScaleApart,
            Doubt::FrameDiffers { .. } => Doubt::FrameDiffers { measure: Measure::Height, before: cm(134.0), now: cm(124.0) },
            Doubt::Fell(_) => Doubt::Fell(jump(-0.026)),
            Doubt::Rose(_) => Doubt::Rose(jump(0.05)),
        ] {
            check_said(&say.doubt(&doubt));
            let answers = Filled::offers(&doubt);
            assert!(1 < answers.len(), "{doubt:?}");
            for answer in answers {
                check(say.doubt_answer(&doubt, *answer));
            }
        }
        for kind in [Kind::Horse, Kind::Pony] {
            check_said(&say.fell(&jump(-0.031), kind));
        }
    }
}

#[test]
fn a_confirmed_fall_rings_the_vet_the_same_day_for_the_small_and_donkeys() {
    let [say, _] = tongues();
    let said = |kind| {
        say.fell(
            &Jump {
                part: -0.031,
                days: 7,
            },
            kind,
        )
        .sentence
    };
    for kind in [Kind::Pony, Kind::Miniature, Kind::Donkey, Kind::Mule] {
        assert!(said(kind).ends_with("ring the vet today"), "{kind:?}");
    }
    assert!(said(Kind::Horse).ends_with("ring the vet"));
}

#[test]
fn changes_necks_and_fields_are_worded() {
    let change = |by, noise| Change {
        measure: Measure::UmbilicalGirth,
        by: cm(by),
        noise: cm(noise),
        since: "2026-04-28".parse().unwrap(),
        same_tool: by < 0.0,
    };
    for say in tongues() {
        for by in [-5.0, 0.0, 1.5] {
            let change = change(by, 2.1);
            check(&say.changed(&change));
            check(&say.change_means(&change));
            check(&say.measures_of("Moss", Some(&change)));
        }
        for line in every![
            NeckLine::Pony { .. } => NeckLine::Pony { line: 0.71, over: true },
            NeckLine::NotConfirmed => NeckLine::NotConfirmed,
        ] {
            check_said(&say.neck_to_height(0.73, line));
        }
        let under = NeckLine::Pony {
            line: 0.71,
            over: false,
        };
        check_said(&say.neck_to_height(0.68, under));
        check_said(&say.measures_why());
        for measure in every![
            Measure::HeartGirth => Measure::HeartGirth, Measure::Length => Measure::Length,
            Measure::Height => Measure::Height, Measure::Neck => Measure::Neck,
            Measure::UmbilicalGirth => Measure::UmbilicalGirth,
        ] {
            for place in 0..3 {
                check(&say.take(Some(measure), place));
                check(&say.take(None, place));
            }
            check(say.once_more(Some(measure)));
            for kind in [
                LengthKind::Wrap,
                LengthKind::Straight,
                LengthKind::ElbowToTuber,
            ] {
                check(&say.how_to_take(measure, kind));
            }
        }
        for tool in every![TapeTool::Tape => TapeTool::Tape, TapeTool::StringAndRuler => TapeTool::StringAndRuler]
        {
            check(say.tool(tool));
        }
        assert_eq!(say.measure_heads().len(), 7);
    }
}
