//! A consultant's visit to a yard, from its start to what was handed over.
//!
//! What was done in it is not kept here: it is every record from its start to its end.

use crate::animal::AnimalId;
use crate::log::stored::{choice, twin};
use crate::units::Instant;

choice! {
    /// What a yard has in common, asked once a visit and not beside every animal.
    SharedFact {
        /// The hay in the shed.
        Hay = "hay",
        /// The times somebody comes.
        Visits = "visits",
        /// The nets.
        Nets = "nets",
        /// The weather of the day.
        Weather = "weather",
    }
}

impl SharedFact {
    /// All of them, in the order in which they are asked.
    pub const ALL: [Self; 4] = [Self::Hay, Self::Visits, Self::Nets, Self::Weather];
}

twin! {
    /// A visit to the yard that the record is about. It began at the record's own instant.
    YardVisitV1 {
        /// The animals that are seen, in walking order.
        animals: Vec<AnimalId>,
        /// What the animals share and is still as it was written down.
        as_before: Vec<SharedFact>,
        /// When it ended; `None` while it is under way.
        ended: Option<Instant>,
        /// The report as it was handed over.
        report: Option<String>,
    }
}
