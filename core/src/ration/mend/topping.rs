//! What may be given on top of hay, by what is wanted of the animal and by its risk.

use super::published::{LOW_SUGAR_FOOD, SMALL_CLASSES};
use crate::animal::RiskLevel;
use crate::ration::{Food, FoodClass};

/// What may be given on top of hay.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Topping {
    /// It loses weight: only what the hay lacks.
    WhatHayLacks,
    /// Sugar is a danger to it: energy only from food low in sugar and starch.
    LowInSugar,
    /// Anything within the limits.
    Anything,
}

/// Why a food is not on offer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NotOffered {
    /// The animal loses weight, and it brings energy.
    BringsEnergy,
    /// Sugar is a danger to the animal, and it holds too much of it, or nobody knows how much.
    Sugar,
    /// It is an option for which trials are read beforehand, and never a need.
    OnlyByHand,
}

impl Topping {
    /// What may be given to an animal: `loses` when it is to lose weight.
    pub const fn of(loses: bool, risk: RiskLevel) -> Self {
        if loses {
            Self::WhatHayLacks
        } else if risk.restricts_sugar() {
            Self::LowInSugar
        } else {
            Self::Anything
        }
    }

    /// Whether a food may be chosen for it; a person may still set any amount by hand, and the balance judges it.
    ///
    /// # Errors
    /// Why not.
    pub fn offers(self, food: &Food) -> Result<(), NotOffered> {
        let small = SMALL_CLASSES.value.contains(&food.class);
        if food.class == FoodClass::Other || food.dha.is_some_and(|dha| dha.to_percent() > 0.0) {
            return Err(NotOffered::OnlyByHand);
        }
        match self {
            Self::Anything => Ok(()),
            _ if small => Ok(()),
            Self::WhatHayLacks => Err(NotOffered::BringsEnergy),
            Self::LowInSugar => {
                let low = food
                    .sugar_starch
                    .is_some_and(|share| share.of_dry(food.dry).to_percent() <= *LOW_SUGAR_FOOD);
                // Oil holds none, whether its label says so or not.
                if low || food.class == FoodClass::Fat {
                    Ok(())
                } else {
                    Err(NotOffered::Sugar)
                }
            }
        }
    }
}
