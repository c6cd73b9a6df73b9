//! Grasses to favour and to avoid, and what harms in the regions of a yard, by what is typed to find them.

use tussock_core::graze::plants::{Hazard, PlantId, Region, SugarPotential, grasses, hazards_in};

/// Whether a plant is meant by what is typed: a part of a name, common or scientific. Nothing typed means all.
pub fn matches_text(plant: PlantId, typed: &str) -> bool {
    let typed = typed.trim().to_lowercase();
    typed.is_empty()
        || plant.common().to_lowercase().contains(&typed)
        || plant.scientific().to_lowercase().contains(&typed)
}

/// The grasses of a potential that are meant.
pub fn grass_rows(of: SugarPotential, typed: &str) -> Vec<PlantId> {
    grasses(of)
        .filter(|plant| matches_text(*plant, typed))
        .collect()
}

/// The hazards of the regions that are meant, plant by plant.
pub fn hazard_rows(regions: &[Region], typed: &str) -> Vec<&'static Hazard> {
    hazards_in(regions)
        .filter(|hazard| matches_text(hazard.plant, typed))
        .collect()
}
