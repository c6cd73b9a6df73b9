//! A vehicle on a weighbridge.

use super::base::{from_measure, whole_number};
use crate::log::error::LogError;
use crate::log::stored::twin;
use crate::units::BodyMass;

whole_number! {
    /// A vehicle on a weighbridge, with or without an animal, in grams.
    // numeric: to 60 t
    VehicleGrams = (1_000, 60_000_000)
}
twin! {
    /// What a weighbridge showed of a vehicle, with what was typed.
    VehicleWeight {
        /// Grams.
        g: VehicleGrams,
        /// As typed.
        typed: Option<String>,
    }
}
impl VehicleGrams {
    /// To the nearest gram.
    pub fn of(mass: BodyMass) -> Result<Self, LogError> {
        from_measure(mass.to_kg() * 1000.0, Self::RANGE, Self::new)
    }

    /// As a weight.
    pub fn mass(self) -> BodyMass {
        BodyMass::kg(self.0 as f64 / 1000.0)
    }
}

impl VehicleWeight {
    /// To the nearest gram, beside what was typed.
    pub fn of(mass: BodyMass, typed: Option<String>) -> Result<Self, LogError> {
        Ok(Self {
            g: VehicleGrams::of(mass)?,
            typed,
        })
    }
}
