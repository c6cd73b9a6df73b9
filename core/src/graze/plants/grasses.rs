//! Grasses by what sugar they may hold. Season, frost and drought are worth more than the kind.

use super::published as p;
use super::{Growth, PlantId};
use crate::graze::sward::SwardKind;
use crate::sources::Published;

/// What sugar a grass may hold, beside other grasses. It is no verdict on a field: none of them is safe.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum SugarPotential {
    /// Lower: the safer ones.
    Lower,
    /// In the middle.
    Middle,
    /// Higher: not to be sown for an animal at risk.
    Higher,
}

impl PlantId {
    /// What sugar it may hold, with its source; `None` where it is no grass, or not known.
    pub fn sugar(self) -> Option<&'static Published<SugarPotential>> {
        Some(match self {
            Self::PerennialRyegrass => &p::SUGAR_PERENNIAL_RYEGRASS,
            Self::ItalianRyegrass => &p::SUGAR_ITALIAN_RYEGRASS,
            Self::Festulolium => &p::SUGAR_FESTULOLIUM,
            Self::Timothy => &p::SUGAR_TIMOTHY,
            Self::Oats => &p::SUGAR_OATS,
            Self::Barley => &p::SUGAR_BARLEY,
            Self::Wheat => &p::SUGAR_WHEAT,
            Self::AnnualRyegrass => &p::SUGAR_ANNUAL_RYEGRASS,
            Self::TallFescue => &p::SUGAR_TALL_FESCUE,
            Self::SmoothMeadowgrass => &p::SUGAR_SMOOTH_MEADOWGRASS,
            Self::SmoothBrome => &p::SUGAR_SMOOTH_BROME,
            Self::Phalaris => &p::SUGAR_PHALARIS,
            Self::Cocksfoot => &p::SUGAR_COCKSFOOT,
            Self::MeadowBrome => &p::SUGAR_MEADOW_BROME,
            Self::Bent => &p::SUGAR_BENT,
            Self::RedFescue => &p::SUGAR_RED_FESCUE,
            Self::Bermudagrass
            | Self::Teff
            | Self::RhodesGrass
            | Self::Paspalum
            | Self::Crabgrass
            | Self::Pangola
            | Self::KangarooGrass
            | Self::Buffel
            | Self::Kikuyu
            | Self::Setaria
            | Self::GuineaGrass
            | Self::ParaGrass
            | Self::SignalGrass
            | Self::KoroniviaGrass => &p::SUGAR_WARM_GRASS,
            Self::Sorghum
            | Self::JohnsonGrass
            | Self::WhiteClover
            | Self::RedClover
            | Self::AlsikeClover
            | Self::Lucerne
            | Self::Ragwort
            | Self::Buttercup
            | Self::WildRadish
            | Self::OnionGrass
            | Self::Flatweed
            | Self::Horsetail
            | Self::Bracken
            | Self::Sycamore
            | Self::BoxElder
            | Self::RedMaple
            | Self::Cherry
            | Self::Oak
            | Self::Yew => return None,
        })
    }

    /// Whether it is grazed for itself, and so stands in the list of grasses.
    pub const fn is_grass(self) -> bool {
        matches!(
            self.growth(),
            Growth::CoolGrass | Growth::WarmGrass | Growth::Cereal
        )
    }
}

/// The grasses of a potential, in the order of the catalogue.
pub fn grasses(of: SugarPotential) -> impl Iterator<Item = PlantId> {
    PlantId::ALL
        .iter()
        .copied()
        .filter(move |plant| plant.sugar().is_some_and(|sugar| sugar.value == of))
}

/// The part of a sward that may be clover, with its source.
pub const fn clover_most() -> &'static Published<f64> {
    &p::CLOVER_MOST
}

/// The plants of the catalogue that a kind of sward is known for, though nobody saw them; none for an old meadow, of which
/// nothing is known before somebody looks.
pub const fn known_in(kind: SwardKind) -> &'static [PlantId] {
    match kind {
        SwardKind::MixedWithRyegrass | SwardKind::Ryegrass => &[PlantId::PerennialRyegrass],
        SwardKind::Meadow => &[],
        SwardKind::Fescue => &[PlantId::TallFescue],
        SwardKind::WarmSeason => &[
            PlantId::Kikuyu,
            PlantId::Setaria,
            PlantId::Buffel,
            PlantId::Paspalum,
            PlantId::Sorghum,
            PlantId::JohnsonGrass,
        ],
        SwardKind::CloverRich => &[
            PlantId::WhiteClover,
            PlantId::RedClover,
            PlantId::AlsikeClover,
        ],
    }
}
