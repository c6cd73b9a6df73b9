//! Samples of weights.

use super::{body, cm, job};
use tussock_core::assess::{
    Answered, DoubtAnswer, DoubtKind, LengthKind, Measure, ScaleInstrument, TapeTool,
};
use tussock_core::log::bodies::base::{Distance, Millimetres};
use tussock_core::log::bodies::*;

pub(super) fn weights() -> Vec<WeightV1> {
    vec![
        WeightV1 {
            reading: ReadingV1::Tape {
                tape: TapeV1 {
                    heart_girth: cm(1_385, "138,5"),
                    length: Some(cm(1_102, "110.2")),
                    length_kind: Some(LengthKind::Wrap),
                    height: Some(cm(1_040, "104")),
                    neck: Some(cm(790, "79")),
                    umbilical_girth: Some(cm(1_520, "152")),
                    tool: None,
                    takes: None,
                },
            },
            job: Some(job("weigh/moss/2026-05-05")),
            answered: None,
        },
        WeightV1 {
            reading: ReadingV1::Scale {
                scale: ScaleV1 {
                    weight: body(217_724, "480 lb"),
                    instrument: ScaleInstrument::AnimalScale,
                    takes: None,
                    with_animal: None,
                    without_animal: None,
                },
            },
            job: Some(job("weigh/moss/2026-05-05")),
            answered: None,
        },
        string_taken_twice(),
        by_weighbridge(),
    ]
}

fn answered(doubt: DoubtKind, measure: Option<Measure>, answer: DoubtAnswer) -> Answered {
    Answered {
        doubt,
        measure,
        answer,
    }
}

fn string_taken_twice() -> WeightV1 {
    let take = |mm, typed, left_out| TakeV1 {
        measure: Measure::HeartGirth,
        reading: cm(mm, typed),
        left_out,
    };
    WeightV1 {
        reading: ReadingV1::Tape {
            tape: TapeV1 {
                heart_girth: Distance {
                    mm: Millimetres::new(1_385).unwrap(),
                    typed: None,
                },
                length: Some(cm(870, "87")),
                length_kind: Some(LengthKind::ElbowToTuber),
                height: None,
                neck: None,
                umbilical_girth: Some(cm(1_524, "60 in")),
                tool: Some(TapeTool::StringAndRuler),
                takes: Some(vec![
                    take(1_380, "138", None),
                    take(1_450, "145", Some(true)),
                    take(1_390, "139", None),
                ]),
            },
        },
        job: None,
        answered: Some(vec![
            answered(
                DoubtKind::Apart,
                Some(Measure::HeartGirth),
                DoubtAnswer::Again,
            ),
            answered(
                DoubtKind::Odd,
                Some(Measure::HeartGirth),
                DoubtAnswer::LeftOut,
            ),
            answered(
                DoubtKind::Inches,
                Some(Measure::UmbilicalGirth),
                DoubtAnswer::OtherUnit,
            ),
            answered(
                DoubtKind::OtherLength,
                Some(Measure::Length),
                DoubtAnswer::Right,
            ),
        ]),
    }
}

fn by_weighbridge() -> WeightV1 {
    let vehicle = |g, typed: &str| {
        Some(VehicleWeight {
            g: VehicleGrams::new(g).unwrap(),
            typed: Some(typed.to_owned()),
        })
    };
    let take = |g, typed| ScaleTakeV1 {
        reading: body(g, typed),
        left_out: None,
    };
    WeightV1 {
        reading: ReadingV1::Scale {
            scale: ScaleV1 {
                weight: body(480_000, "480"),
                instrument: ScaleInstrument::VehicleWeighbridge,
                takes: Some(vec![take(480_000, "480"), take(480_000, "480")]),
                with_animal: vehicle(2_940_000, "2940"),
                without_animal: vehicle(2_460_000, "2460"),
            },
        },
        job: None,
        answered: Some(vec![answered(DoubtKind::Fell, None, DoubtAnswer::Right)]),
    }
}
