//! A soak: water and time.

use super::air::Air;
use super::error::SoakError;
use super::published as p;
use crate::forage::ForageKind;
use crate::units::{Bounds, Span, Temperature};

/// The water, from a chip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Water {
    /// The tap in winter, about 8 degrees.
    TapWinter,
    /// The tap in summer, about 15 degrees.
    TapSummer,
    /// Hand-hot, 40 to 45 degrees.
    HandHot,
}

impl Water {
    /// The temperature that is reckoned with.
    pub fn temperature(self) -> Temperature {
        match self {
            Self::TapWinter => *p::TAP_WINTER,
            Self::TapSummer => *p::TAP_SUMMER,
            Self::HandHot => *p::HAND_HOT,
        }
    }

    /// How long hay must lie in it at least.
    pub fn at_least(self) -> Span {
        match self {
            Self::TapWinter | Self::TapSummer => *p::COLD_AT_LEAST,
            Self::HandHot => *p::HOT_AT_LEAST,
        }
    }
}

/// Water and time.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Recipe {
    water: Water,
    soak: Span,
}

/// Something a person should know before the hay goes in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RecipeFinding {
    /// Shorter than it takes: little sugar will have gone.
    TooShort {
        /// The least for this water.
        at_least: Span,
    },
    /// More than two hours: feed it at once, throw it away six hours after lifting out.
    Long,
    /// More than an hour in air over 20 degrees.
    LongInHeat,
    /// The tub may freeze.
    MayFreeze,
}

impl Recipe {
    /// Minutes that are believed: to the longest of the trials.
    pub const MINUTES: Bounds = p::SOAK_MINUTES.value;

    /// The usual soak in this water: its least time.
    pub fn usual(water: Water) -> Self {
        Self {
            water,
            soak: water.at_least(),
        }
    }

    /// A soak of some minutes.
    pub fn minutes(water: Water, minutes: u32) -> Result<Self, SoakError> {
        Self::MINUTES.check(f64::from(minutes))?;
        Ok(Self {
            water,
            soak: Span::minutes(i64::from(minutes)),
        })
    }

    /// The water.
    pub const fn water(self) -> Water {
        self.water
    }

    /// How long it lies in the water.
    pub const fn soak(self) -> Span {
        self.soak
    }

    /// Whether it is a long soak, of more than two hours.
    pub fn is_long(self) -> bool {
        is_long(self.soak)
    }

    /// Whether this may be started for this forage in this air, and what to know before.
    pub fn check(self, kind: ForageKind, air: Air) -> Result<Vec<RecipeFinding>, SoakError> {
        if kind == ForageKind::Haylage {
            return Err(SoakError::Haylage);
        }
        if self.is_long() && !air.allows_long_soak() {
            return Err(SoakError::LongSoakInWarmAir { air });
        }
        let mut findings = Vec::new();
        let at_least = self.water.at_least();
        if self.soak < at_least {
            findings.push(RecipeFinding::TooShort { at_least });
        }
        if self.is_long() {
            findings.push(RecipeFinding::Long);
        }
        if self.soak > *p::HEAT_SOAK_MOST && matches!(air, Air::Over20 | Air::Over25) {
            findings.push(RecipeFinding::LongInHeat);
        }
        if air == Air::HardFrost {
            findings.push(RecipeFinding::MayFreeze);
        }
        Ok(findings)
    }
}

/// Whether a time in the water is that of a long soak.
pub(super) fn is_long(soaked: Span) -> bool {
    soaked > *p::SHORT_SOAK_MOST
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn half_an_hour_hand_hot_or_an_hour_cold() {
        assert_eq!(Recipe::usual(Water::HandHot).soak(), Span::minutes(30));
        assert_eq!(Recipe::usual(Water::TapWinter).soak(), Span::minutes(60));
        let short = Recipe::minutes(Water::TapSummer, 20).unwrap();
        let findings = short.check(ForageKind::Hay, Air::Mild).unwrap();
        let at_least = Span::minutes(60);
        assert_eq!(findings, [RecipeFinding::TooShort { at_least }]);
    }

    #[test]
    fn haylage_is_never_soaked_and_overnight_only_in_the_cool() {
        let hour = Recipe::usual(Water::TapSummer);
        assert_eq!(
            hour.check(ForageKind::Haylage, Air::Mild),
            Err(SoakError::Haylage)
        );
        let overnight = Recipe::minutes(Water::TapWinter, 12 * 60).unwrap();
        assert_eq!(
            overnight.check(ForageKind::Hay, Air::Under16),
            Ok(vec![RecipeFinding::Long])
        );
        assert!(overnight.check(ForageKind::Hay, Air::Mild).is_err());
    }

    #[test]
    fn an_hour_is_the_most_in_heat() {
        let ninety = Recipe::minutes(Water::TapSummer, 90).unwrap();
        assert_eq!(
            ninety.check(ForageKind::Hay, Air::Over20),
            Ok(vec![RecipeFinding::LongInHeat])
        );
        assert_eq!(ninety.check(ForageKind::Hay, Air::Mild), Ok(vec![]));
    }

    #[test]
    fn a_soak_of_a_week_is_not_believed() {
        assert!(Recipe::minutes(Water::TapWinter, 7 * 24 * 60).is_err());
        assert!(Recipe::minutes(Water::TapWinter, 0).is_err());
    }
}
