//! What is asked back of the measures of a tape.

use super::{Doubt, Doubts, jump};
use crate::animal::{Animal, Kind};
use crate::assess::published as p;
use crate::assess::taken::{Before, Measured, TapeTaken};
use crate::assess::takes::Agreement;
use crate::assess::tape::{LengthKind, Measure};
use crate::assess::usual;
use crate::units::{Length, LocalDate};

pub(super) fn apart(measured: &Measured, asked: &mut Vec<Doubt>) {
    let Measured { measure, takes, .. } = measured;
    match takes.agreement(measure.apart()) {
        Agreement::Together => {}
        Agreement::Apart => asked.push(Doubt::Apart(*measure)),
        Agreement::Scattered => asked.push(Doubt::Scattered(*measure)),
        Agreement::Odd(which) => {
            if let Some(take) = takes.all().get(which) {
                asked.push(Doubt::Odd {
                    measure: *measure,
                    which,
                    read: take.value,
                });
            }
        }
    }
}

pub(super) fn ask(
    animal: &Animal,
    taken: &TapeTaken,
    before: &Before,
    day: LocalDate,
    found: &mut Doubts,
) {
    let girth = taken
        .of(Measure::HeartGirth)
        .and_then(|girth| unusual(animal, taken, before, girth));
    if let Some(doubt) = girth {
        // Everything else is held against the girth: one question at a time.
        found.asked.push(doubt);
        return;
    }
    for measured in &taken.measures {
        if measured.measure != Measure::HeartGirth
            && let Some(doubt) = unusual(animal, taken, before, measured)
        {
            found.asked.push(doubt);
        } else if let Some(doubt) = frame_differs(taken, before, measured) {
            found.asked.push(doubt);
        }
    }
    found.asked.extend(other_length(taken));
    found.asked.extend(small_horse(animal, taken));
    let Some(jumps) = jump::of_tape(animal, taken, before, day) else {
        return;
    };
    // Two heart girths that lie together are a second measuring.
    let sure = taken.of(Measure::HeartGirth).is_some_and(|girth| {
        1 < girth.takes.count()
            && girth.takes.agreement(Measure::HeartGirth.apart()) == Agreement::Together
    });
    jump::jumped(animal, jumps, 0.0, sure, found);
}

/// A measure that is not usual; usual in inches when it is so and no unit was typed.
fn unusual(
    animal: &Animal,
    taken: &TapeTaken,
    before: &Before,
    measured: &Measured,
) -> Option<Doubt> {
    let Measured {
        measure,
        takes,
        unit_said,
    } = measured;
    let read = takes.mean();
    let usual = |value| usual::length(animal, taken, before, *measure, value);
    if usual(read) {
        return None;
    }
    let as_inches = Length::inches(read.to_cm());
    Some(if !unit_said && usual(as_inches) {
        Doubt::Inches {
            measure: *measure,
            read,
            as_inches,
        }
    } else {
        Doubt::UnusualMeasure {
            measure: *measure,
            read,
        }
    })
}

fn frame_differs(taken: &TapeTaken, before: &Before, measured: &Measured) -> Option<Doubt> {
    let earlier = before.of(measured.measure)?;
    let is_frame = match measured.measure {
        Measure::Height => true,
        Measure::Length => earlier.kind == Some(taken.kind),
        Measure::HeartGirth | Measure::UmbilicalGirth | Measure::Neck => false,
    };
    let now = measured.takes.mean();
    let differs = (now / earlier.length - 1.0).abs();
    (is_frame && *p::FRAME_DIFFERS / 100.0 < differs).then_some(Doubt::FrameDiffers {
        measure: measured.measure,
        before: earlier.length,
        now,
    })
}

/// A length from the elbow given for one from the shoulder, or the other way round.
fn other_length(taken: &TapeTaken) -> Option<Doubt> {
    let length = taken.mean(Measure::Length)?;
    let length_to_girth = length / taken.mean(Measure::HeartGirth)?;
    let looks_like = match taken.kind {
        LengthKind::Wrap | LengthKind::Straight => {
            (length_to_girth < p::USUAL_PROPORTION.min).then_some(LengthKind::ElbowToTuber)
        }
        LengthKind::ElbowToTuber => {
            (p::USUAL_PROPORTION_DONKEY.max < length_to_girth).then_some(LengthKind::Wrap)
        }
    }?;
    Some(Doubt::OtherLength {
        taken: taken.kind,
        looks_like,
        length_to_girth,
    })
}

/// Under 112 cm the closer equations do not hold; of a pony that is nothing to ask.
fn small_horse(animal: &Animal, taken: &TapeTaken) -> Option<Doubt> {
    let height = taken.mean(Measure::Height)?;
    let small = height < Length::cm(p::FOUR_MEASURES_HEIGHT.min);
    (animal.kind == Kind::Horse && small).then_some(Doubt::SmallHorse { height })
}
