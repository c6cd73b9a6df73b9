//! What is said of a food.

use crate::limits::Nutrient;

/// One thing that a label or a table says of a food.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Content {
    /// Dry matter, in percent as fed.
    DryMatter,
    /// Digestible energy.
    Energy,
    /// Neutral detergent fibre.
    NeutralFibre,
    /// Sugar and starch together.
    SugarStarch,
    /// Starch alone.
    Starch,
    /// The omega-3 fatty acid DHA.
    Dha,
    /// A nutrient that has a need.
    Of(Nutrient),
}

impl Content {
    /// Those that are no nutrient with a need.
    const APART: [Self; 6] = [
        Self::DryMatter,
        Self::Energy,
        Self::NeutralFibre,
        Self::SugarStarch,
        Self::Starch,
        Self::Dha,
    ];

    /// All of them, in the order in which a person is asked.
    pub fn all() -> impl Iterator<Item = Self> {
        Self::APART
            .into_iter()
            .chain(Nutrient::ALL.into_iter().map(Self::Of))
    }

    /// A stable key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::DryMatter => "dry_matter",
            Self::Energy => "energy",
            Self::NeutralFibre => "neutral_fibre",
            Self::SugarStarch => "sugar_starch",
            Self::Starch => "starch",
            Self::Dha => "dha",
            Self::Of(nutrient) => nutrient.key(),
        }
    }

    /// The content of a key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::APART
            .into_iter()
            .find(|content| content.key() == key)
            .or_else(|| Nutrient::from_key(key).map(Self::Of))
    }
}
