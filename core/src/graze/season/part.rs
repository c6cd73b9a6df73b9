//! The parts of the year, what to watch in each, and what a person notes.

use crate::units::LocalDate;

/// A part of the year of grass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum YearPart {
    /// The last weeks before grass grows.
    EarlySpring,
    /// Grass grows fastest: most laminitis.
    Flush,
    /// After the flush.
    Summer,
    /// The autumn break: rain makes grass grow again.
    AutumnBreak,
    /// Cold nights and frosts.
    Frosts,
    /// Near the equator: grass grows after rain, at any time of the year.
    AfterRains,
}

/// What to look at in a part of the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Watch {
    /// Leaf that stands inches higher within days: the flush has begun.
    LeafGrowsFast,
    /// Sunny days after cold nights: grass makes sugar and does not grow.
    SunnyAfterCold,
    /// Seed heads.
    SeedHeads,
    /// A dry spell, and the rain that ends it.
    DryThenRain,
    /// Frost on grass in the morning, and the week after a hard one.
    FrostOnGrass,
    /// Crest, ribs and girth: this is when weight comes on.
    WeightComesOn,
    /// Ribs: winter is when weight comes off.
    WeightComesOff,
    /// A shorter stride, most of all on turns and stones.
    ShortStride,
}

impl YearPart {
    /// What to look at, the most pressing first.
    pub const fn watch(self) -> &'static [Watch] {
        match self {
            Self::EarlySpring => &[
                Watch::LeafGrowsFast,
                Watch::SunnyAfterCold,
                Watch::WeightComesOff,
            ],
            Self::Flush => &[
                Watch::ShortStride,
                Watch::WeightComesOn,
                Watch::SunnyAfterCold,
                Watch::SeedHeads,
            ],
            Self::Summer => &[Watch::SeedHeads, Watch::DryThenRain, Watch::WeightComesOn],
            Self::AutumnBreak => &[
                Watch::DryThenRain,
                Watch::ShortStride,
                Watch::SunnyAfterCold,
                Watch::WeightComesOn,
            ],
            Self::Frosts => &[
                Watch::FrostOnGrass,
                Watch::SunnyAfterCold,
                Watch::WeightComesOff,
            ],
            Self::AfterRains => &[
                Watch::LeafGrowsFast,
                Watch::ShortStride,
                Watch::SeedHeads,
                Watch::WeightComesOn,
            ],
        }
    }
}

/// What a person saw of the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Noted {
    /// The flush began.
    FlushBegan,
    /// The flush is over.
    FlushOver,
    /// Rain came after a dry time.
    AutumnRain,
    /// The first frost.
    FirstFrost,
    /// A hard freeze.
    HardFreeze,
    /// A drought.
    Drought,
    /// Anything else.
    Other,
}

impl Noted {
    /// All of them, in the order in which they are asked.
    pub const ALL: [Self; 7] = [
        Self::FlushBegan,
        Self::FlushOver,
        Self::AutumnRain,
        Self::FirstFrost,
        Self::HardFreeze,
        Self::Drought,
        Self::Other,
    ];
}

/// What a person noted, and the day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Note {
    /// The day.
    pub date: LocalDate,
    /// What it was.
    pub what: Noted,
}
