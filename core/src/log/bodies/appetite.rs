//! What an animal did with a handful of dry hay, and what was measured beside it.

use super::base::whole_number;
use super::vitals::VitalsV1;
use crate::animal::{Answer, Handful};
use crate::log::LogError;
use crate::log::stored::twin;
use crate::safety::Vital;
use crate::units::Instant;

whole_number! {
    /// A temperature, in tenths of a degree Celsius.
    // numeric: 30 to 45 degrees, wider than any living equid
    CelsiusTenths = (300, 450)
}
whole_number! {
    /// Beats or breaths a minute.
    // numeric: wider than any living equid
    PerMinute = (4, 250)
}
twin! {
    /// A handful of dry hay held out to an animal that left its forage.
    AppetiteV1 {
        /// When it was last seen eating before that.
        last_seen_eating: Option<Instant>,
        /// What it did with the handful.
        handful: Handful,
        /// Whether it looked dull.
        dull: Answer,
        /// Its temperature at rest.
        temperature: Option<CelsiusTenths>,
        /// Its pulse at rest.
        pulse: Option<PerMinute>,
        /// Its breathing at rest.
        breaths: Option<PerMinute>,
        /// Remarks.
        note: Option<String>,
    }
}

impl AppetiteV1 {
    /// The same with a reading, in the unit of its vital.
    ///
    /// Errors: a reading outside what is believed, with its range.
    pub fn with(self, vital: Vital, reading: f64) -> Result<Self, LogError> {
        let read = self.vitals().with(vital, reading)?;
        Ok(Self {
            temperature: read.temperature,
            pulse: read.pulse,
            breaths: read.breaths,
            ..self
        })
    }

    /// A reading in the unit of its vital; `None` when nobody took it.
    pub fn vital(&self, vital: Vital) -> Option<f64> {
        self.vitals().vital(vital)
    }

    /// What was measured, as a look-over keeps it.
    const fn vitals(&self) -> VitalsV1 {
        VitalsV1 {
            temperature: self.temperature,
            pulse: self.pulse,
            breaths: self.breaths,
            note: None,
        }
    }
}
