//! What an animal did with a handful of dry hay, and what was measured beside it.

use super::base::{from_measure, whole_number};
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
