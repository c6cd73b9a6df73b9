//! The leaf by the boot, and what its height asks for.

use super::published::{
    ABOVE_ANKLE, ANKLE, BELOW_ANKLE, LEAF_BARE, LEAFY_FROM, LEAFY_TO, RESIDUAL,
};
use crate::limits::Ends;
use crate::units::Length;

/// Leaf by the boot.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Leaf {
    /// Below the ankle.
    BelowAnkle,
    /// At the ankle.
    Ankle,
    /// Above the ankle.
    AboveAnkle,
}

impl Leaf {
    /// All, from short to tall.
    pub const ALL: [Self; 3] = [Self::BelowAnkle, Self::Ankle, Self::AboveAnkle];

    /// How high it may be.
    pub fn height(self) -> Ends<Length> {
        let [least, likely, most] = match self {
            Self::BelowAnkle => *BELOW_ANKLE,
            Self::Ankle => *ANKLE,
            Self::AboveAnkle => *ABOVE_ANKLE,
        };
        Ends::new(least, likely, most).map(Length::cm)
    }
}

/// What a sward asks for, or what its number does not hold.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SwardFinding {
    /// Under 5 cm, or may be: no forage. An animal that stands on it has nothing in front of it.
    Bare {
        /// The height that was judged, the least it may be.
        height: Length,
    },
    /// Under what is to be left standing: take them off.
    TakeOff {
        /// The height that was judged, the likely one.
        height: Length,
        /// What is left standing.
        residual: Length,
    },
    /// Not under the residual, and not yet worth opening.
    Short {
        /// The likely height.
        height: Length,
    },
    /// Taller than leafy regrowth: look for stem and seed heads. Tall is not safe.
    Rank {
        /// The likely height.
        height: Length,
    },
    /// Fewer readings than are asked for.
    FewReadings {
        /// How many were taken.
        taken: usize,
        /// How many are asked for.
        asked: usize,
    },
    /// The formulas of a rising plate are for their own species and season.
    PlateOfItsOwn,
    /// Nothing known of the density of this kind of sward: the band is that of all stands.
    DensityNotKnown,
}

/// What a height asks for. No forage is judged with the least it may be (the end that leaves an animal least), all else
/// with what is likely.
pub fn look(height: Ends<Length>, residual: Length) -> Vec<SwardFinding> {
    let mut found = Vec::new();
    if height.least < *LEAF_BARE {
        found.push(SwardFinding::Bare {
            height: height.least,
        });
    }
    let likely = height.likely;
    if likely < residual.max(*RESIDUAL) {
        found.push(SwardFinding::TakeOff {
            height: likely,
            residual: residual.max(*RESIDUAL),
        });
    } else if likely < *LEAFY_FROM {
        found.push(SwardFinding::Short { height: likely });
    } else if likely > *LEAFY_TO {
        found.push(SwardFinding::Rank { height: likely });
    }
    found
}
