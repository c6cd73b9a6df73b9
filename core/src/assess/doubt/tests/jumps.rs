//! Against the last time: a weight that jumps, bone that changes.

use super::*;
use crate::animal::State;

#[test]
fn two_percent_down_in_a_week_is_measured_again_and_then_no_question_any_more() {
    let pony = animal(Kind::Pony, None);
    let girths = |cm: &[f64]| {
        of_tape(
            &pony,
            tape(WRAP, &[(Measure::HeartGirth, cm)]),
            &taped(152.0),
        )
    };
    assert_eq!(girths(&[151.0]), Doubts::default());
    // 2 cm of 152 are 2.6 % of weight.
    let once = girths(&[150.0]);
    assert!(
        matches!(once.asked.as_slice(), [Doubt::Fell(jump)] if (jump.part + 0.0261).abs() < 1e-3 && jump.days == 7),
        "{once:?}"
    );
    assert_eq!(once.confirmed, None);
    let twice = girths(&[150.0, 150.0]);
    assert_eq!(twice.asked, []);
    assert!(twice.confirmed.is_some_and(|jump| jump.part < -0.02));
    // One that was wrong is an odd one, and its mean with a right one may be within the line.
    assert_eq!(girths(&[150.0, 152.0]), Doubts::default());
}

#[test]
fn the_line_grows_with_the_weeks_and_a_rise_has_its_own() {
    let pony = animal(Kind::Pony, None);
    let kg = |kg, on| of_scale(&pony, scale(&[kg]), &weighed(300.0, on)).asked;
    assert!(matches!(
        kg(293.0, "2026-04-28").as_slice(),
        [Doubt::Fell(_)]
    ));
    // Eight weeks on, 9 % is the line.
    assert_eq!(kg(293.0, "2026-03-10"), []);
    assert_eq!(kg(311.0, "2026-04-28"), []);
    assert!(matches!(
        kg(313.0, "2026-04-28").as_slice(),
        [Doubt::Rose(_)]
    ));
    let mut mare = animal(Kind::Pony, None);
    mare.state = State::Pregnant;
    let risen = of_scale(&mare, scale(&[330.0]), &weighed(300.0, "2026-04-28"));
    assert_eq!(risen.asked, []);
}

#[test]
fn another_instrument_and_the_steps_of_a_weighbridge_are_no_jump() {
    let pony = animal(Kind::Pony, None);
    let mut lorry = scale(&[275.0]);
    lorry.instrument = ScaleInstrument::VehicleWeighbridge;
    assert_eq!(
        of_scale(&pony, lorry.clone(), &weighed(300.0, "2026-04-28")).asked,
        []
    );
    let mut before = weighed(300.0, "2026-04-28");
    if let Some((_, last)) = &mut before.scale {
        last.instrument = ScaleInstrument::VehicleWeighbridge;
    }
    assert_eq!(of_scale(&pony, lorry, &before).asked, []);
}

#[test]
fn of_one_that_grows_only_readings_that_lie_apart_are_asked_back() {
    let mut foal = animal(Kind::Horse, None);
    foal.born = Some(Birth::Year(2025));
    assert_eq!(
        of_tape(
            &foal,
            tape(WRAP, &[(Measure::HeartGirth, &[90.0])]),
            &taped(80.0)
        ),
        Doubts::default()
    );
    assert_eq!(
        of_tape(
            &foal,
            tape(WRAP, &[(Measure::HeartGirth, &[90.0, 95.0])]),
            &never()
        )
        .asked,
        [Doubt::Apart(Measure::HeartGirth)]
    );
}

#[test]
fn bone_does_not_change() {
    let pony = animal(Kind::Pony, None);
    let mut before = taped(152.0);
    before.measures.push(Earlier {
        measure: Measure::Length,
        length: Length::cm(134.0),
        kind: Some(WRAP),
        tool: TapeTool::Tape,
        takes: 1,
        day: day("2026-04-28"),
    });
    let length = |cm| {
        of_tape(
            &pony,
            tape(
                WRAP,
                &[(Measure::HeartGirth, &[152.0]), (Measure::Length, &[cm])],
            ),
            &before,
        )
        .asked
    };
    assert_eq!(length(132.0), []);
    assert!(matches!(
        length(124.0).as_slice(),
        [Doubt::FrameDiffers {
            measure: Measure::Length,
            ..
        }]
    ));
}
