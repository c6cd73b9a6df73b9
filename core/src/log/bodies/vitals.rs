//! Temperature, pulse and breathing, taken beside a look-over.

use super::appetite::{CelsiusTenths, PerMinute};
use super::base::from_measure;
use crate::log::LogError;
use crate::log::stored::twin;
use crate::safety::Vital;

twin! {
    /// What was measured of the animal that the record is about, at rest.
    VitalsV1 {
        /// Its temperature.
        temperature: Option<CelsiusTenths>,
        /// Its pulse.
        pulse: Option<PerMinute>,
        /// Its breathing.
        breaths: Option<PerMinute>,
        /// Remarks.
        note: Option<String>,
    }
}

impl VitalsV1 {
    /// Nothing measured yet.
    pub const NONE: Self = Self {
        temperature: None,
        pulse: None,
        breaths: None,
        note: None,
    };

    /// The same with a reading, in the unit of its vital.
    ///
    /// Errors: a reading outside what is believed, with its range.
    pub fn with(mut self, vital: Vital, reading: f64) -> Result<Self, LogError> {
        let a_minute = || from_measure(reading, PerMinute::RANGE, PerMinute::new);
        match vital {
            Vital::Temperature => {
                let tenths =
                    from_measure(reading * 10.0, CelsiusTenths::RANGE, CelsiusTenths::new)?;
                self.temperature = Some(tenths);
            }
            Vital::Pulse => self.pulse = Some(a_minute()?),
            Vital::Breaths => self.breaths = Some(a_minute()?),
        }
        Ok(self)
    }

    /// A reading in the unit of its vital; `None` when nobody took it.
    pub fn vital(&self, vital: Vital) -> Option<f64> {
        match vital {
            Vital::Temperature => self.temperature.map(|tenths| tenths.get() as f64 / 10.0),
            Vital::Pulse => self.pulse.map(|beats| beats.get() as f64),
            Vital::Breaths => self.breaths.map(|breaths| breaths.get() as f64),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn readings_come_back_in_the_unit_they_were_taken_in() {
        let body = VitalsV1::NONE
            .with(Vital::Temperature, 38.4)
            .and_then(|body| body.with(Vital::Breaths, 12.0))
            .unwrap();
        assert_eq!(body.vital(Vital::Temperature), Some(38.4));
        assert_eq!(body.vital(Vital::Breaths), Some(12.0));
        assert_eq!(body.vital(Vital::Pulse), None);
        assert!(body.with(Vital::Temperature, 384.0).is_err());
    }
}
