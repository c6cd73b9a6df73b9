//! What was taken, as it is stored: means, readings, and the texts they were typed as.

use super::Typed;
use super::fields::Read;
use tussock_core::assess::{Measure, ScaleTaken, TapeTaken, TapeTool};
use tussock_core::log::LogError;
use tussock_core::log::bodies::base::{BodyWeight, Distance};
use tussock_core::log::bodies::{ScaleTakeV1, ScaleV1, TakeV1, TapeV1, VehicleWeight};
use tussock_core::units::{BodyMass, Length};

fn typed_as<T>(read: &Read<T>) -> String {
    read.typed.clone()
}

pub(super) fn tape(
    taken: &TapeTaken,
    measures: &[(Measure, Vec<Read<Length>>)],
) -> Result<TapeV1, LogError> {
    let mut takes = Vec::new();
    for (measure, reads) in measures {
        let counted = taken.of(*measure).map(|measured| measured.takes.all());
        if let (Some(counted), [_, _, ..]) = (counted, reads.as_slice()) {
            for (read, take) in reads.iter().zip(counted) {
                takes.push(TakeV1 {
                    measure: *measure,
                    reading: Distance::of(read.value, Some(typed_as(read)))?,
                    left_out: take.left_out.then_some(true),
                });
            }
        }
    }
    let distance = |measure: Measure| -> Result<Option<Distance>, LogError> {
        let Some(mean) = taken.mean(measure) else {
            return Ok(None);
        };
        let typed =
            measures
                .iter()
                .find(|(of, _)| *of == measure)
                .and_then(|(_, reads)| match reads.as_slice() {
                    [only] => Some(typed_as(only)),
                    _ => None,
                });
        Distance::of(mean, typed).map(Some)
    };
    let length = distance(Measure::Length)?;
    Ok(TapeV1 {
        // The form asks for it before anything is written.
        heart_girth: match distance(Measure::HeartGirth)? {
            Some(girth) => girth,
            None => Distance::of(Length::ZERO, None)?,
        },
        length_kind: length.as_ref().map(|_| taken.kind),
        length,
        height: distance(Measure::Height)?,
        neck: distance(Measure::Neck)?,
        umbilical_girth: distance(Measure::UmbilicalGirth)?,
        tool: (taken.tool != TapeTool::default()).then_some(taken.tool),
        takes: (!takes.is_empty()).then_some(takes),
    })
}

pub(super) fn scale(taken: &ScaleTaken, typed: &Typed) -> Result<ScaleV1, LogError> {
    let only = match typed.scale.as_slice() {
        [only] => Some(typed_as(only)),
        _ => None,
    };
    let mut takes = Vec::new();
    if let [_, _, ..] = typed.scale.as_slice() {
        for (read, take) in typed.scale.iter().zip(taken.takes.all()) {
            takes.push(ScaleTakeV1 {
                reading: BodyWeight::of(read.value, Some(typed_as(read)))?,
                left_out: take.left_out.then_some(true),
            });
        }
    }
    let vehicle = |read: &Read<BodyMass>| VehicleWeight::of(read.value, Some(typed_as(read)));
    Ok(ScaleV1 {
        weight: BodyWeight::of(taken.takes.mean(), only)?,
        instrument: taken.instrument,
        takes: (!takes.is_empty()).then_some(takes),
        with_animal: typed
            .vehicle
            .as_ref()
            .map(|(with, _)| vehicle(with))
            .transpose()?,
        without_animal: typed
            .vehicle
            .as_ref()
            .map(|(_, without)| vehicle(without))
            .transpose()?,
    })
}
