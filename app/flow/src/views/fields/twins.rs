//! From what is stored of a paddock to what it stands for, and back.

use tussock_core::graze::plants::{PlantId, Region};
use tussock_core::graze::sward::{Leaf, SwardKind};
use tussock_core::log::Name;
use tussock_core::log::bodies::{self, LeafSeen, PaddockV2};

/// The leaf that a record says was seen.
pub const fn leaf_of(seen: LeafSeen) -> Leaf {
    match seen {
        LeafSeen::BelowAnkle => Leaf::BelowAnkle,
        LeafSeen::Ankle => Leaf::Ankle,
        LeafSeen::AboveAnkle => Leaf::AboveAnkle,
    }
}

/// The same as it is stored.
pub const fn leaf_word(leaf: Leaf) -> LeafSeen {
    match leaf {
        Leaf::BelowAnkle => LeafSeen::BelowAnkle,
        Leaf::Ankle => LeafSeen::Ankle,
        Leaf::AboveAnkle => LeafSeen::AboveAnkle,
    }
}

/// The kind of sward that a record says.
pub const fn kind_of(kind: bodies::SwardKind) -> SwardKind {
    match kind {
        bodies::SwardKind::MixedWithRyegrass => SwardKind::MixedWithRyegrass,
        bodies::SwardKind::Ryegrass => SwardKind::Ryegrass,
        bodies::SwardKind::Meadow => SwardKind::Meadow,
        bodies::SwardKind::Fescue => SwardKind::Fescue,
        bodies::SwardKind::WarmSeason => SwardKind::WarmSeason,
        bodies::SwardKind::CloverRich => SwardKind::CloverRich,
    }
}

/// The region that a record says.
pub const fn region_of(region: bodies::Region) -> Region {
    match region {
        bodies::Region::BritishIsles => Region::BritishIsles,
        bodies::Region::Europe => Region::Europe,
        bodies::Region::NorthAmerica => Region::NorthAmerica,
        bodies::Region::Australia => Region::Australia,
        bodies::Region::NewZealand => Region::NewZealand,
        bodies::Region::SouthernAfrica => Region::SouthernAfrica,
        bodies::Region::Tropics => Region::Tropics,
    }
}

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
