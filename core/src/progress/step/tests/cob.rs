//! The animal that the others differ from by what the row asks.

use crate::animal::{Answer, Goal, Phase};
use crate::assess::ConditionRange;
use crate::limits::Ends;
use crate::progress::step::*;
use crate::units::{BodyMass, LocalDate, PartOfBody};

pub(crate) fn day(text: &str) -> LocalDate {
    text.parse().unwrap()
}

pub(crate) fn part(percent: f64) -> PartOfBody {
    PartOfBody::percent(percent)
}

pub(super) fn scored(score: f64) -> ConditionRange {
    ConditionRange::new(score, score).unwrap()
}

/// A cob that is fat and sound, six weeks on the starting level, at its review; its hay is tested and what it ate is seen.
pub(crate) fn facts(phase: Phase) -> Facts {
    Facts {
        day: day("2026-05-05"),
        phase,
        phase_before: None,
        days_in_phase: Some(42),
        goal: Goal::Lose,
        fat_in_blood_risk: false,
        donkey: false,
        stop: None,
        look_again: false,
        laminitis_now: false,
        sign_stands: false,
        look_over_clean: Answer::Yes,
        not_sound: false,
        vet_spoke: false,
        vets_level: None,
        condition: Some(scored(7.5)),
        scores: vec![scored(7.5), scored(7.5)],
        weighings: 6,
        weighed: true,
        pace: None,
        fast_loss: FastLoss::None,
        donkey_too_fast: 0.0,
        target: Some(TargetStands::default()),
        level: Some(part(1.5)),
        start: part(1.5),
        next_down: Some(part(1.25)),
        floor_reached: false,
        bars: Vec::new(),
        days_at_start: 42,
        review: Some(day("2026-05-05")),
        eaten: Some(Eaten {
            level: Ends::exactly(part(1.48)),
            planned: Some(part(1.5)),
            seen: 0.9,
            not_known: 0.0,
            days: 28,
        }),
        grass_not_counted: false,
        hay: HayKnown::Tested,
    }
}

/// A rate of which the bands have these chances, watched for six weeks by seven readings.
pub(crate) fn pace(under_quarter: f64, to_half: f64, to_one: f64, over_one: f64) -> Pace {
    let likely = 0.001 * under_quarter + 0.004 * to_half + 0.007 * to_one + 0.013 * over_one;
    Pace {
        lost_a_week: Ends::new(
            BodyMass::kg(400.0 * (likely - 0.002)),
            BodyMass::kg(400.0 * likely),
            BodyMass::kg(400.0 * (likely + 0.002)),
        ),
        part_a_week: Ends::new(likely - 0.002, likely, likely + 0.002),
        bands: RateBands {
            under_quarter,
            to_half,
            to_one,
            over_one,
        },
        gaining: under_quarter / 2.0,
        weeks: 6.0,
        readings: 7,
    }
}

/// It stands still: nine in ten that it loses under a quarter of a percent a week.
pub(crate) fn still() -> Pace {
    pace(0.9, 0.1, 0.0, 0.0)
}
