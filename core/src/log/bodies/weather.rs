//! The weather of a day, as one row of chips.

use crate::log::stored::{choice, twin};
use crate::units::LocalDate;

choice! {
    /// A chip of the row.
    Chip {
        /// The night was at 5 degrees or under.
        NightFiveOrUnder = "night_5_or_under",
        /// Hard frost.
        HardFrost = "hard_frost",
        /// Mild.
        Mild = "mild",
        /// Over 20 degrees.
        OverTwenty = "over_20",
        /// Over 25 degrees.
        OverTwentyFive = "over_25",
        /// Dull.
        Dull = "dull",
        /// Sunny.
        Sunny = "sunny",
        /// A dry spell.
        DrySpell = "dry_spell",
    }
}
twin! {
    /// The weather of a day at a yard.
    WeatherV1 {
        /// The day.
        date: LocalDate,
        /// The chips that were set.
        chips: Vec<Chip>,
        /// Carried over from the day before: nobody set it today.
        carried: bool,
    }
}
