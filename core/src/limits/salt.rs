//! Salt for a sodium need.

use super::published::SODIUM_IN_SALT;
use crate::units::NutrientMass;

/// Salt (sodium chloride) that holds a mass of sodium: 25 g for the 10 g of 500 kg at rest.
pub fn salt_for(sodium: NutrientMass) -> NutrientMass {
    sodium / *SODIUM_IN_SALT
}

/// Sodium in a mass of salt.
pub fn salt_sodium(salt: NutrientMass) -> NutrientMass {
    salt * *SODIUM_IN_SALT
}
