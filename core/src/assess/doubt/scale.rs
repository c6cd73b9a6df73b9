//! What is asked back of a weight from a scale.

use super::{Doubt, Doubts, Jump, jump};
use crate::animal::Animal;
use crate::assess::published as p;
use crate::assess::taken::{Before, ScaleTaken};
use crate::assess::takes::Agreement;
use crate::assess::tape::ScaleInstrument;
use crate::assess::usual;
use crate::units::{BodyMass, LocalDate};

pub(super) fn ask(
    animal: &Animal,
    taken: &ScaleTaken,
    before: &Before,
    day: LocalDate,
    found: &mut Doubts,
) {
    let read = taken.takes.mean();
    if !usual::weight(animal, before, read) {
        let as_pounds = BodyMass::lb(read.to_kg());
        found.asked.push(
            if !taken.unit_said && usual::weight(animal, before, as_pounds) {
                Doubt::Pounds { read, as_pounds }
            } else {
                Doubt::UnusualWeight { read }
            },
        );
        return;
    }
    let Some((last_day, last)) = before.scale else {
        return;
    };
    // Two instruments are each out in their own way: no jump.
    if last.instrument != taken.instrument || last.mass <= BodyMass::ZERO {
        return;
    }
    let jumps = Jump {
        part: read / last.mass - 1.0,
        days: (day - last_day).num_days(),
    };
    // Two weighings with a vehicle differ by their steps alone.
    let steps = match taken.instrument {
        ScaleInstrument::AnimalScale => 0.0,
        ScaleInstrument::VehicleWeighbridge => {
            2.0_f64.sqrt() * *p::BAND_VEHICLE_SCALE / last.mass.to_kg()
        }
    };
    let sure = 1 < taken.takes.count()
        && taken.takes.agreement(&p::TAKES_APART_SCALE) == Agreement::Together;
    jump::jumped(animal, jumps, steps, sure, found);
}
