//! The air, from the day's chip. It is never a temperature for each tub.

use super::published as p;
use crate::sources::Published;
use crate::units::Span;

/// How warm the air is, coolest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Air {
    /// Hard frost: tubs and nets freeze.
    HardFrost,
    /// Under 16 degrees.
    Under16,
    /// 16 to 20 degrees; also when nobody said.
    Mild,
    /// Over 20 degrees.
    Over20,
    /// Over 25 degrees.
    Over25,
}

impl Air {
    /// The warmest of several chips since the hay went in: cool evenings do not give back what a hot noon took.
    /// Without any, mild.
    pub fn warmest(chips: impl IntoIterator<Item = Self>) -> Self {
        chips.into_iter().max().unwrap_or(Self::Mild)
    }

    /// Whether soaks of more than two hours are allowed.
    pub const fn allows_long_soak(self) -> bool {
        matches!(self, Self::HardFrost | Self::Under16)
    }

    /// How long after it was first wet hay may be kept, and the rule that says so.
    pub const fn keeps(self) -> &'static Published<Span> {
        match self {
            Self::HardFrost | Self::Under16 | Self::Mild => &p::KEEPS,
            Self::Over20 => &p::KEEPS_OVER_20,
            Self::Over25 => &p::KEEPS_OVER_25,
        }
    }
}
