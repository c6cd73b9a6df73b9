//! What the animals on a paddock are to eat of it.

use super::published::{ASKED, WEIGHT};
use crate::graze::GrazeError;
use crate::units::{BodyMass, DryMatter, PartOfBody};

/// An animal on a paddock, and what it is to eat there.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grazer {
    /// Its weight.
    pub weight: BodyMass,
    /// Dry matter of grass a day, of its weight: 0 to 6 %.
    pub asked: PartOfBody,
}

/// The dry matter of grass a day for all of them.
///
/// # Errors
/// Nobody, nothing asked, or a weight or part outside its range.
pub fn asked(grazers: &[Grazer]) -> Result<DryMatter, GrazeError> {
    let mut sum = DryMatter::ZERO;
    for grazer in grazers {
        WEIGHT.check(grazer.weight.to_kg())?;
        ASKED.check(grazer.asked.to_percent())?;
        sum = sum + grazer.asked.of(grazer.weight);
    }
    if sum > DryMatter::ZERO {
        Ok(sum)
    } else {
        Err(GrazeError::NothingAsked)
    }
}
