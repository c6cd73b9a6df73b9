//! What somebody noted of a year of grass at a yard.

use crate::log::stored::{choice, twin};
use crate::units::LocalDate;

choice! {
    /// What happened in the year of grass.
    SeasonEvent {
        /// The flush of spring began.
        FlushBegan = "flush_began",
        /// The flush is over.
        FlushOver = "flush_over",
        /// Rain after the summer, and grass grows again.
        AutumnRain = "autumn_rain",
        /// The first frost.
        FirstFrost = "first_frost",
        /// A hard freeze.
        HardFreeze = "hard_freeze",
        /// Drought.
        Drought = "drought",
        /// Something else, said in the remark.
        Other = "other",
    }
}

impl SeasonEvent {
    /// All of them, in the order in which they are asked.
    pub const ALL: [Self; 7] = [
        Self::FlushBegan,
        Self::FlushOver,
        Self::AutumnRain,
        Self::FirstFrost,
        Self::HardFreeze,
        Self::Drought,
        Self::Other,
    ];
}

twin! {
    /// A note of the year of grass at the yard that the record is about.
    SeasonNoteV1 {
        /// The day.
        date: LocalDate,
        /// What happened.
        what: SeasonEvent,
        /// Remarks.
        note: Option<String>,
    }
}
