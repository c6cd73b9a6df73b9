//! The rest of a day, laid out anew because a visit was missed or a net was late.

use super::plan::NetShareV1;
use crate::log::stored::twin;
use crate::round::PlannedNet;
use crate::sources::RecordId;
use crate::units::LocalDate;

twin! {
    /// What hangs on one day in place of the plan's nets, for the animal or group that the record is about. The plan stays
    /// as it was issued, and holds again on the next day.
    DayRelaidV1 {
        /// The plan whose day it is.
        plan: RecordId,
        /// The day.
        day: LocalDate,
        /// Every net of the day: those of the plan in its order, so that their jobs keep their names, then those at visits
        /// at which the plan hangs nothing. One that does not hang has no hay.
        nets: Vec<NetShareV1>,
    }
}

impl NetShareV1 {
    /// The net as the round takes it.
    pub fn planned(&self) -> PlannedNet {
        PlannedNet {
            visit: self.visit,
            lot: self.lot.clone(),
            hay: self.as_fed_g.as_fed(),
            soaked: self.soaked,
            net: self.net.clone(),
            less_for_grass: None,
        }
    }
}
