//! Classes of food, as a ration is judged by them.

/// What a food is, as far as a ration is judged by it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum FoodClass {
    /// A legume as chaff or pellets: it counts as forage and within the lucerne cap.
    Legume,
    /// Fibre in a bucket: beet pulp, soya hulls, fibre cubes. It eases hunger and is not forage.
    Fibre,
    /// Cereals and what milling leaves of them.
    Cereal,
    /// Seeds and meals rich in protein.
    Protein,
    /// Oil and fat.
    Fat,
    /// A balancer: little of it, with what a hay lacks.
    Balancer,
    /// A mix of minerals or vitamins, or a lick.
    MineralMix,
    /// A single substance that brings a mineral, a vitamin or a fatty acid.
    Source,
    /// A compound feed.
    Compound,
    /// Anything else, or not said.
    Other,
}

impl FoodClass {
    /// All of them.
    pub const ALL: &'static [Self] = &[
        Self::Legume,
        Self::Fibre,
        Self::Cereal,
        Self::Protein,
        Self::Fat,
        Self::Balancer,
        Self::MineralMix,
        Self::Source,
        Self::Compound,
        Self::Other,
    ];

    /// Whether it counts as forage.
    pub const fn is_forage(self) -> bool {
        matches!(self, Self::Legume)
    }

    /// Whether minerals and vitamins are put into it by hand, so that they are added and not its own.
    pub const fn is_fortified(self) -> bool {
        matches!(
            self,
            Self::Balancer | Self::MineralMix | Self::Source | Self::Compound
        )
    }
}
