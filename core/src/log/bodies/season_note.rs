//! What somebody noted of a year of grass at a yard.

use crate::graze::season::{Note, Noted};
use crate::log::stored::{twin, words};
use crate::units::LocalDate;

words!(Noted {
    FlushBegan = "flush_began",
    FlushOver = "flush_over",
    AutumnRain = "autumn_rain",
    FirstFrost = "first_frost",
    HardFreeze = "hard_freeze",
    Drought = "drought",
    Other = "other",
});

twin! {
    /// A note of the year of grass at the yard that the record is about.
    SeasonNoteV1 {
        /// The day.
        date: LocalDate,
        /// What happened.
        what: Noted,
        /// Remarks.
        note: Option<String>,
    }
}

impl SeasonNoteV1 {
    /// What it says to the year of grass.
    pub const fn noted(&self) -> Note {
        Note {
            date: self.date,
            what: self.what,
        }
    }
}
