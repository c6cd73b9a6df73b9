//! The plants of a paddock, by the keys that are stored.

use tussock_core::graze::plants::PlantId;
use tussock_core::log::Name;
use tussock_core::log::bodies::PaddockV2;

/// The plants that were seen on a paddock and stand in this catalogue.
pub fn plants_of(body: &PaddockV2) -> Vec<PlantId> {
    body.plants
        .iter()
        .filter_map(|key| PlantId::from_key(key.as_str()))
        .collect()
}

/// The keys of plants that only a later release knows.
pub fn kept(body: &PaddockV2) -> Vec<Name> {
    body.plants
        .iter()
        .filter(|key| PlantId::from_key(key.as_str()).is_none())
        .cloned()
        .collect()
}
