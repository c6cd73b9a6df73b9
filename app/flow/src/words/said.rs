//! The shape of what is said, and how the person wants it.

use tussock_core::units::parse::{LengthUnit, MassUnit};

/// One sentence, and why when a person asks.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Said {
    /// One plain sentence, with what to do where something is to be done. It carries no full stop.
    pub sentence: String,
    /// What stands behind it, as whole sentences; `None` when the sentence says it all.
    pub why: Option<String>,
}

impl Said {
    /// A sentence that needs no reason.
    pub fn plain(sentence: impl Into<String>) -> Self {
        Self {
            sentence: sentence.into(),
            why: None,
        }
    }

    /// A sentence with its reason.
    pub fn because(sentence: impl Into<String>, why: impl Into<String>) -> Self {
        Self {
            sentence: sentence.into(),
            why: Some(why.into()),
        }
    }
}

/// The unit energy is shown in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum EnergyUnit {
    /// Megacalories.
    #[default]
    Mcal,
    /// Megajoules.
    Mj,
}

/// The words that differ from region to region, as data.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Region {
    /// A stable key for the settings.
    pub key: &'static str,
    /// A layer of a bale.
    pub slice: &'static str,
    /// More than one of them.
    pub slices: &'static str,
    /// The legume *Medicago sativa*.
    pub lucerne: &'static str,
    /// The grass *Dactylis glomerata*.
    pub cocksfoot: &'static str,
    /// The grass *Cynodon dactylon*.
    pub bermuda: &'static str,
}

impl Region {
    /// Britain and Ireland.
    pub const BRITAIN: Self = Self {
        key: "britain",
        slice: "slice",
        slices: "slices",
        lucerne: "lucerne",
        cocksfoot: "cocksfoot",
        bermuda: "Bermuda grass",
    };
    /// North America.
    pub const AMERICA: Self = Self {
        key: "america",
        slice: "flake",
        slices: "flakes",
        lucerne: "alfalfa",
        cocksfoot: "orchard grass",
        bermuda: "Bermuda grass",
    };
    /// Australia and New Zealand.
    pub const AUSTRALIA: Self = Self {
        key: "australia",
        slice: "biscuit",
        slices: "biscuits",
        lucerne: "lucerne",
        cocksfoot: "cocksfoot",
        bermuda: "couch",
    };
    /// All of them, in the order in which a person is asked.
    pub const ALL: &'static [Self] = &[Self::BRITAIN, Self::AMERICA, Self::AUSTRALIA];

    /// The region of a key.
    pub fn of_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|region| region.key == key)
    }
}

/// How the person wants numbers and words shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Shown {
    /// Weights.
    pub mass: MassUnit,
    /// Lengths on the animal; with inches, heights are in hands.
    pub length: LengthUnit,
    /// Energy.
    pub energy: EnergyUnit,
    /// The words of the region.
    pub region: Region,
}

impl Default for Shown {
    /// Kilograms, centimetres, Mcal, Britain.
    fn default() -> Self {
        Self {
            mass: MassUnit::Kg,
            length: LengthUnit::Cm,
            energy: EnergyUnit::Mcal,
            region: Region::BRITAIN,
        }
    }
}
