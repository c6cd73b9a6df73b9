//! A weight that jumped against the last one by the same means.

use super::{Doubt, Doubts, Jump};
use crate::animal::{Animal, State};
use crate::assess::choose::weigh;
use crate::assess::equation::Equation;
use crate::assess::published as p;
use crate::assess::taken::{Before, TapeTaken};
use crate::assess::tape::{Reading, Tape};
use crate::assess::weight::WeightMethod;
use crate::units::{BodyMass, LocalDate};

/// A jump over the line: 2 % down or 4 % up for the first week, and 1 % for each week after it; never less than the
/// instrument differs by itself, as a part of the weight.
pub(super) fn jumped(animal: &Animal, jump: Jump, noise: f64, sure: bool, found: &mut Doubts) {
    let weeks = (jump.days - WEEK).max(0) as f64 / WEEK as f64;
    let line = |first: f64| ((first + *p::A_WEEK_MORE * weeks) / 100.0).max(noise);
    if jump.part < -line(*p::FELL_BY) {
        if sure {
            found.confirmed = Some(jump);
        } else {
            found.asked.push(Doubt::Fell(jump));
        }
    } else if line(*p::ROSE_BY) < jump.part && animal.state != State::Pregnant && !sure {
        found.asked.push(Doubt::Rose(jump));
    }
}

// numeric: days of a week
const WEEK: i64 = 7;

/// Whether an equation knows the animal's frame: with a girth alone its length would seem to shrink with it.
const fn has_frame(equation: Equation) -> bool {
    !matches!(equation, Equation::GirthAlone | Equation::DonkeyGirth)
}

/// The weights of two tapes by one equation, both with the same frame; else by the squares of the girths.
pub(super) fn of_tape(
    animal: &Animal,
    taken: &TapeTaken,
    before: &Before,
    day: LocalDate,
) -> Option<Jump> {
    let (last_day, last) = before.tape?;
    let now = taken.tape()?;
    let days = (day - last_day).num_days();
    let weight = |tape: Tape, day| {
        let (weight, _) = weigh(animal, &Reading::Tape(tape), day).ok()?;
        match weight.method {
            WeightMethod::Tape(equation) => Some((weight.value, equation)),
            WeightMethod::Scale(_) | WeightMethod::Ideal(_) => None,
        }
    };
    // The frame is the last one on both sides: another length is asked back by itself.
    let framed = Tape {
        length: last.length.or(now.length),
        height: last.height.or(now.height),
        neck: now.neck.or(last.neck),
        ..now
    };
    let last = last.with_frame_of(&now);
    let by_weight: Option<(BodyMass, BodyMass)> =
        match (weight(framed, day), weight(last, last_day)) {
            (Some((now, a)), Some((last, b))) if a == b && has_frame(a) => Some((now, last)),
            _ => None,
        };
    let part = match by_weight {
        Some((now, last)) => now / last - 1.0,
        None => (now.heart_girth / last.heart_girth).powi(2) - 1.0,
    };
    part.is_finite().then_some(Jump { part, days })
}
