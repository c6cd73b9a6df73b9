//! Calcium against oxalate, for grasses of warm seasons.

use super::PlantId;
use super::published::{
    CALCIUM, CALCIUM_IN_LIME, CALCIUM_MOLE, CALCIUM_TO_OXALATE, OXALATE, OXALATE_BUFFEL,
    OXALATE_GUINEA, OXALATE_KIKUYU, OXALATE_MOLE, OXALATE_PANGOLA, OXALATE_SETARIA,
};
use crate::graze::GrazeError;
use crate::sources::Published;
use crate::units::{DryMatter, NutrientMass, ShareOfDm};

/// How calcium stands to oxalate.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum CalciumToOxalate {
    /// No oxalate in it.
    NoOxalate,
    /// Enough: the ratio is 0.5 or more.
    Enough {
        /// The ratio.
        ratio: f64,
    },
    /// Too little: bones lose calcium.
    Unsafe {
        /// The ratio.
        ratio: f64,
    },
}

/// How calcium stands to oxalate, both of dry matter (Blaney 1981: unsafe under 0.5).
///
/// # Errors
/// Calcium outside 0 to 4 %, oxalate outside 0 to 12 %.
pub fn calcium_to_oxalate(
    calcium: ShareOfDm,
    oxalate: ShareOfDm,
) -> Result<CalciumToOxalate, GrazeError> {
    CALCIUM.check(calcium.to_percent())?;
    OXALATE.check(oxalate.to_percent())?;
    if oxalate <= ShareOfDm::ZERO {
        return Ok(CalciumToOxalate::NoOxalate);
    }
    let ratio = calcium / oxalate;
    // Judged as a product, so that a share that is just half is not lost to rounding of the ratio.
    Ok(if calcium < oxalate * *CALCIUM_TO_OXALATE {
        CalciumToOxalate::Unsafe { ratio }
    } else {
        CalciumToOxalate::Enough { ratio }
    })
}

/// The calcium that an amount of oxalate ties: one mole a mole.
pub fn bound_by(oxalate: NutrientMass) -> NutrientMass {
    oxalate * (*CALCIUM_MOLE / *OXALATE_MOLE)
}

/// The calcium that is short a day for a ratio of 0.5: 0.5 × oxalate − calcium; none where it is enough.
///
/// # Errors
/// Calcium or oxalate outside its range, or no dry matter.
pub fn calcium_shortfall(
    dry: DryMatter,
    calcium: ShareOfDm,
    oxalate: ShareOfDm,
) -> Result<NutrientMass, GrazeError> {
    CALCIUM.check(calcium.to_percent())?;
    OXALATE.check(oxalate.to_percent())?;
    if !dry.is_finite() || dry <= DryMatter::ZERO {
        return Err(GrazeError::NothingAsked);
    }
    let wanted = oxalate.in_dry(dry) * *CALCIUM_TO_OXALATE;
    Ok((wanted - calcium.in_dry(dry)).max(NutrientMass::ZERO))
}

/// The ground limestone that holds an amount of calcium, about 38 % of it.
pub fn limestone_for(calcium: NutrientMass) -> NutrientMass {
    calcium / *CALCIUM_IN_LIME
}

/// What oxalate a grass typically holds, low and high, percent of dry matter; from memory. `None` where nothing is known.
pub const fn typical_oxalate(plant: PlantId) -> Option<&'static Published<[f64; 2]>> {
    match plant {
        PlantId::Setaria => Some(&OXALATE_SETARIA),
        PlantId::Buffel => Some(&OXALATE_BUFFEL),
        PlantId::Kikuyu => Some(&OXALATE_KIKUYU),
        PlantId::GuineaGrass => Some(&OXALATE_GUINEA),
        PlantId::Pangola => Some(&OXALATE_PANGOLA),
        _ => None,
    }
}
