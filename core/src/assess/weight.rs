//! A weight with its band, and which of several weights holds.

use super::equation::{Equation, MeasuredType};
use super::error::AssessError;
use super::published as p;
use super::tape::{ScaleInstrument, ScaleWeight};
use crate::sources::{Provenance, Published};
use crate::units::{BodyMass, LocalDate};

/// How a weight was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WeightMethod {
    /// On a scale.
    Scale(ScaleInstrument),
    /// By an equation from a tape.
    Tape(Equation),
    /// The published ideal weight from length and height: what it should weigh, not what it does.
    Ideal(MeasuredType),
}

/// A weight with the band it lies in. It is no dose: drugs are dosed by the vet.
#[derive(Clone, Debug, PartialEq)]
pub struct WeightEstimate {
    /// The weight.
    pub value: BodyMass,
    /// The low end of the band.
    pub low: BodyMass,
    /// The high end of the band.
    pub high: BodyMass,
    /// How it was found.
    pub method: WeightMethod,
    /// The constants and defaults it came from.
    pub from: Provenance,
}

impl WeightEstimate {
    /// Whether it was weighed on a scale.
    pub const fn is_scale(&self) -> bool {
        matches!(self.method, WeightMethod::Scale(_))
    }

    /// How far it may be out either way.
    pub fn either_way(&self) -> BodyMass {
        (self.high - self.low) / 2.0
    }

    /// A weight with a band of so many percent either way. Refuses a weight that is not believed.
    pub(super) fn percent(
        value: BodyMass,
        band: &Published<f64>,
        method: WeightMethod,
        from: Provenance,
    ) -> Result<Self, AssessError> {
        let error = value * (band.value / 100.0);
        Self::within(value, error, method, from.constant(band))
    }

    /// A weight with a band of twice the equation's root mean square error either way (about 95 in 100).
    pub(super) fn twice(
        value: BodyMass,
        error: &Published<f64>,
        method: WeightMethod,
        from: Provenance,
    ) -> Result<Self, AssessError> {
        let error_kg = BodyMass::kg(2.0 * error.value);
        Self::within(value, error_kg, method, from.constant(error))
    }

    fn within(
        value: BodyMass,
        error: BodyMass,
        method: WeightMethod,
        from: Provenance,
    ) -> Result<Self, AssessError> {
        p::BODY_WEIGHT.check(value.to_kg())?;
        Ok(Self {
            value,
            low: (value - error).max(BodyMass::ZERO),
            high: value + error,
            method,
            from,
        })
    }
}

/// The weight a scale showed, with the scale's own error.
pub(super) fn on_scale(scale: &ScaleWeight) -> Result<WeightEstimate, AssessError> {
    let method = WeightMethod::Scale(scale.instrument);
    match scale.instrument {
        ScaleInstrument::AnimalScale => {
            WeightEstimate::percent(scale.mass, &p::BAND_SCALE, method, Provenance::new())
        }
        ScaleInstrument::VehicleWeighbridge => WeightEstimate::within(
            scale.mass,
            BodyMass::kg(p::BAND_VEHICLE_SCALE.value),
            method,
            Provenance::new().constant(&p::BAND_VEHICLE_SCALE),
        ),
    }
}

/// A weight and the day it was taken.
#[derive(Clone, Debug, PartialEq)]
pub struct DatedWeight {
    /// The day.
    pub day: LocalDate,
    /// The weight.
    pub weight: WeightEstimate,
}

/// The weight that holds on a day: the latest, but a scale weight overrides a tape taken within a fortnight after it
/// (ours). Of two on one day the scale, else the one given later. `None` when there is none up to that day.
pub fn best(weights: &[DatedWeight], now: LocalDate) -> Option<&DatedWeight> {
    let known = || weights.iter().filter(|dated| dated.day <= now);
    // The last of equals wins, so a later entry of the same day holds.
    let latest = known().max_by_key(|dated| (dated.day, dated.weight.is_scale()))?;
    let scale = known()
        .filter(|dated| dated.weight.is_scale())
        .max_by_key(|dated| dated.day);
    match scale {
        Some(scale) if (latest.day - scale.day).num_days() <= *p::FORTNIGHT => Some(scale),
        _ => Some(latest),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> LocalDate {
        text.parse().unwrap()
    }

    fn scale(date: &str, kg: f64) -> DatedWeight {
        let weight = on_scale(&ScaleWeight {
            mass: BodyMass::kg(kg),
            instrument: ScaleInstrument::AnimalScale,
        });
        DatedWeight {
            day: day(date),
            weight: weight.unwrap(),
        }
    }

    fn tape(date: &str, kg: f64) -> DatedWeight {
        let method = WeightMethod::Tape(Equation::GirthLength);
        let weight = WeightEstimate::percent(
            BodyMass::kg(kg),
            &p::BAND_GIRTH_LENGTH,
            method,
            Provenance::new(),
        );
        DatedWeight {
            day: day(date),
            weight: weight.unwrap(),
        }
    }

    #[test]
    fn the_weighbridge_holds_against_the_tape_of_the_same_fortnight() {
        let log = [scale("2026-04-01", 310.0), tape("2026-04-15", 330.0)];
        assert_eq!(best(&log, day("2026-04-20")), log.first());
        let log = [scale("2026-04-01", 310.0), tape("2026-04-16", 330.0)];
        assert_eq!(best(&log, day("2026-04-20")), log.last());
    }

    #[test]
    fn on_one_day_the_scale_holds_and_of_two_tapes_the_later() {
        let log = [
            tape("2026-03-01", 400.0),
            scale("2026-04-01", 310.0),
            tape("2026-04-01", 330.0),
        ];
        assert_eq!(best(&log, day("2026-04-01")), log.get(1));
        let log = [tape("2026-04-01", 330.0), tape("2026-04-01", 332.0)];
        assert_eq!(best(&log, day("2026-04-01")), log.last());
    }

    #[test]
    fn what_lies_ahead_or_was_never_taken_does_not_hold() {
        let log = [tape("2026-04-01", 330.0), scale("2026-05-01", 310.0)];
        assert_eq!(best(&log, day("2026-04-02")), log.first());
        assert_eq!(best(&log, day("2026-03-31")), None);
        assert_eq!(best(&[], day("2026-03-31")), None);
    }

    #[test]
    fn a_lorry_weighbridge_is_out_by_its_steps_and_a_slip_of_a_digit_is_refused() {
        let lorry = |kg| {
            on_scale(&ScaleWeight {
                mass: BodyMass::kg(kg),
                instrument: ScaleInstrument::VehicleWeighbridge,
            })
        };
        let weight = lorry(400.0).unwrap();
        assert_eq!(
            (weight.low, weight.high),
            (BodyMass::kg(380.0), BodyMass::kg(420.0))
        );
        assert!(matches!(
            lorry(4000.0),
            Err(AssessError::OutOfRange(error)) if error.bounds.field == "body_weight_kg"
        ));
        assert!(lorry(f64::NAN).is_err());
    }
}
