//! What is usual of a grown animal (ours): beyond it another unit, another length or a slip is thought of.

use super::published as p;
use super::taken::{Before, TapeTaken};
use super::tape::Measure;
use crate::animal::{Animal, Kind};
use crate::units::{BodyMass, Length};

fn within(value: f64, (low, high): (f64, f64)) -> bool {
    low <= value && value <= high
}

fn girth_of(kind: Kind) -> (f64, f64) {
    match kind {
        Kind::Horse => p::USUAL_GIRTH_HORSE.value,
        Kind::Pony => p::USUAL_GIRTH_PONY.value,
        Kind::Miniature => p::USUAL_GIRTH_MINIATURE.value,
        Kind::Donkey => p::USUAL_GIRTH_DONKEY.value,
        Kind::Mule => p::USUAL_GIRTH_MULE.value,
    }
}

fn weight_of(kind: Kind) -> (f64, f64) {
    match kind {
        Kind::Horse => p::USUAL_WEIGHT_HORSE.value,
        Kind::Pony => p::USUAL_WEIGHT_PONY.value,
        Kind::Miniature => p::USUAL_WEIGHT_MINIATURE.value,
        Kind::Donkey => p::USUAL_WEIGHT_DONKEY.value,
        Kind::Mule => p::USUAL_WEIGHT_MULE.value,
    }
}

/// A length of the tape against the animal's kind, its height, the other measures and the last time.
pub(super) fn length(
    animal: &Animal,
    taken: &TapeTaken,
    before: &Before,
    measure: Measure,
    value: Length,
) -> bool {
    let last = before
        .of(measure)
        .filter(|earlier| measure != Measure::Length || earlier.kind == Some(taken.kind))
        .is_none_or(|earlier| within(value / earlier.length, p::USUAL_TO_LAST.value));
    let girth = taken.mean(Measure::HeartGirth);
    let to_girth = |usual| girth.is_none_or(|girth| within(value / girth, usual));
    let of_itself = match measure {
        Measure::HeartGirth => {
            within(value.to_cm(), girth_of(animal.kind))
                && animal
                    .height
                    .is_none_or(|height| within(value / height, p::USUAL_GIRTH_TO_HEIGHT.value))
        }
        Measure::UmbilicalGirth => to_girth(p::USUAL_BELLY_TO_GIRTH.value),
        Measure::Neck => to_girth(p::USUAL_NECK_TO_GIRTH.value),
        Measure::Height => {
            girth.is_none_or(|girth| within(girth / value, p::USUAL_GIRTH_TO_HEIGHT.value))
        }
        // Both lengths: which of them was taken is another question.
        Measure::Length => to_girth((p::USUAL_PROPORTION_DONKEY.min, p::USUAL_PROPORTION.max)),
    };
    last && of_itself
}

/// A weight from a scale against the animal's kind, its height and the last time.
pub(super) fn weight(animal: &Animal, before: &Before, value: BodyMass) -> bool {
    let build = |height: Length| {
        let metres = height.to_cm() / 100.0;
        // numeric: a cube
        within(value.to_kg() / metres.powi(3), p::USUAL_BUILD.value)
    };
    within(value.to_kg(), weight_of(animal.kind))
        && animal.height.is_none_or(build)
        && before
            .weight
            .is_none_or(|last| within(value / last, p::USUAL_TO_LAST.value))
}
