//! The weather of a day, as one row of chips.

use crate::limits::WaterWeather;
use crate::log::stored::{choice, twin};
use crate::soak::Air;
use crate::units::LocalDate;
use serde_json::Value;

choice! {
    /// A chip of the row.
    Chip {
        /// The night was at 5 degrees or under.
        NightFiveOrUnder = "night_5_or_under",
        /// The night was over 5 degrees.
        NightOverFive = "night_over_5",
        /// Hard frost.
        HardFrost = "hard_frost",
        /// Under 16 degrees: the air that allows a long soak.
        UnderSixteen = "under_16",
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
    WeatherV2 {
        /// The day.
        date: LocalDate,
        /// The chips that were set.
        chips: Vec<Chip>,
        /// Carried over from the day before: nobody set it today.
        carried: bool,
    }
}

impl WeatherV2 {
    /// The air for soaking and throwing away: the warmest chip of the day. `None` when no chip speaks of it.
    pub fn air(&self) -> Option<Air> {
        self.chips.iter().filter_map(|chip| chip.air()).max()
    }

    /// The weather for drinking. `None` when no chip speaks of it.
    pub fn water(&self) -> Option<WaterWeather> {
        self.air().map(|air| match air {
            Air::HardFrost => WaterWeather::NearFreezing,
            Air::Under16 => WaterWeather::Cool,
            Air::Mild | Air::Over20 => WaterWeather::Mild,
            Air::Over25 => WaterWeather::Hot,
        })
    }
}

/// A day of the first version never says that its night was over 5 degrees, and nothing is invented.
pub(crate) const fn weather_with_night(body: Value) -> Value {
    body
}

impl Chip {
    /// What it says of the air.
    const fn air(self) -> Option<Air> {
        match self {
            Self::HardFrost => Some(Air::HardFrost),
            Self::UnderSixteen => Some(Air::Under16),
            Self::Mild => Some(Air::Mild),
            Self::OverTwenty => Some(Air::Over20),
            Self::OverTwentyFive => Some(Air::Over25),
            Self::NightFiveOrUnder
            | Self::NightOverFive
            | Self::Dull
            | Self::Sunny
            | Self::DrySpell => None,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_warmest_chip_rules_and_silence_says_nothing() {
        let day = |chips: &[Chip]| WeatherV2 {
            date: "2026-05-05".parse().unwrap(),
            chips: chips.to_vec(),
            carried: false,
        };
        let warm = day(&[Chip::NightFiveOrUnder, Chip::Mild, Chip::OverTwentyFive]);
        assert_eq!(warm.air(), Some(Air::Over25));
        assert_eq!(warm.water(), Some(WaterWeather::Hot));
        assert_eq!(
            day(&[Chip::HardFrost]).water(),
            Some(WaterWeather::NearFreezing)
        );
        assert_eq!(day(&[Chip::Sunny]).air(), None);
    }
}
