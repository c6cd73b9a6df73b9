//! The hazards of the catalogue: what a plant does, to whom, when and where, and what to do about it.
//!
//! Regions and seasons are from memory, for all of them: where a plant is known to be a trouble, not where it can grow. A
//! region that is not named says nothing.

mod grasses;
mod others;

use super::{Act, Harm, Hazard, PlantId, Region, When, Whom};
use crate::sources::Published;
use grasses::OF_GRASSES;
use others::OF_OTHERS;

/// Every hazard: first of grasses, then of legumes, herbs and trees.
pub fn hazards() -> impl Iterator<Item = &'static Hazard> {
    OF_GRASSES.iter().chain(OF_OTHERS)
}

const fn hazard(
    plant: PlantId,
    harm: &'static Published<Harm>,
    acts: &'static [Act],
    whom: Whom,
    when: When,
    regions: &'static [Region],
) -> Hazard {
    Hazard {
        plant,
        harm,
        acts,
        whom,
        when,
        regions,
    }
}
