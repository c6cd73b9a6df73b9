//! What a hazard is made of.

use super::{PlantId, hazards};
use crate::sources::Published;

/// A part of the world whose hazards a person ticks.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Region {
    /// Britain and Ireland.
    BritishIsles,
    /// The rest of Europe.
    Europe,
    /// North America.
    NorthAmerica,
    /// Australia.
    Australia,
    /// New Zealand.
    NewZealand,
    /// Southern Africa.
    SouthernAfrica,
    /// The tropics and subtropics of any continent.
    Tropics,
}

impl Region {
    /// All.
    pub const ALL: [Self; 7] = [
        Self::BritishIsles,
        Self::Europe,
        Self::NorthAmerica,
        Self::Australia,
        Self::NewZealand,
        Self::SouthernAfrica,
        Self::Tropics,
    ];
}

/// What a plant does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Harm {
    /// Oxalate binds calcium: bones lose it (big head). First sign: lameness that shifts, a stilted gait.
    BonesLoseCalcium,
    /// A fungus within ryegrass: staggers.
    RyegrassStaggers,
    /// A fungus within fescue or ryegrass: long gestation, no milk, thick afterbirth, lost foals.
    MaresFailAtFoaling,
    /// A mould on clover: slobbers.
    Slobbers,
    /// Prussic acid.
    Cyanide,
    /// Skin burnt by the sun where it is pale, and the liver harmed.
    SunburnAndLiver,
    /// Beetles in the hay: mouth, gut and bladder blistered; a few kill.
    BlisterBeetle,
    /// The bladder inflamed, the hindquarters weak and unsteady.
    BladderAndGait,
    /// The liver destroyed over weeks and months, without a sign until late.
    LiverOverTime,
    /// Mouth and gut blistered.
    MouthBlisters,
    /// Gut irritated by oils of the mustard kind.
    GutIrritated,
    /// Balls of fibre in the gut: colic.
    FibreBalls,
    /// Hind legs snatched up at each step.
    Stringhalt,
    /// The vitamin thiamine destroyed: weak, unsteady, trembling.
    ThiamineLost,
    /// Muscle destroyed within days: atypical myopathy. Mostly fatal.
    MuscleDeath,
    /// Red blood cells destroyed.
    BloodDestroyed,
    /// Gut and kidneys harmed.
    GutAndKidneys,
    /// The heart stops, often with no sign before.
    HeartStops,
    /// Staggers and sudden death of phalaris.
    PhalarisStaggers,
    /// Annual ryegrass toxicity: fits, and mostly death.
    AnnualRyegrassToxicity,
    /// Ergot on the seed heads of paspalum: staggers.
    ErgotStaggers,
}

/// What to do about a hazard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Act {
    /// Do not graze it at any time.
    NeverGraze,
    /// Take them off it.
    TakeOff,
    /// Fence it off, a crown's width and more.
    FenceOff,
    /// Pick up what fell: leaves, branches, seeds, acorns.
    ClearFallen,
    /// Pull it with the root and burn it; never leave it lying, wilted it is eaten.
    PullAndBurn,
    /// Mow before it sets seed, or top the seed heads and take them away.
    MowSeedHeads,
    /// Keep it out of hay: dry it is as bad.
    NotInHay,
    /// Look through every slice of such hay.
    LookThroughHay,
    /// Hay in front of them before they go out, and while they are out: a hungry animal eats it.
    HayBeforeTurnout,
    /// Feed other hay beside or instead.
    FeedOtherHay,
    /// Feed a legume or another hay beside it.
    FeedLegumeOrOtherHay,
    /// Reckon calcium against oxalate and give what is short, every day.
    BalanceCalcium,
    /// Keep clover under a part of the sward.
    LimitClover,
    /// Watch the gait.
    WatchGait,
    /// Have it tested for endophyte.
    TestForEndophyte,
    /// Mares in foal come off it before foaling.
    MaresOffBeforeFoaling,
    /// Ring the vet the same day.
    RingVet,
    /// Ring the vet at once.
    RingVetNow,
}

/// For whom it is a hazard.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Whom {
    /// All.
    All,
    /// Mares in foal, and those to be covered.
    Broodmares,
}

/// When it is worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum When {
    /// At any time.
    AllYear,
    /// While it grows.
    GrowingSeason,
    /// Spring and summer.
    SpringSummer,
    /// Late summer and autumn.
    SummerAutumn,
    /// Autumn (seeds, acorns) and spring (seedlings, young leaves).
    AutumnAndSpring,
    /// New growth after the autumn rain.
    AutumnBreak,
    /// Winter and spring.
    WinterSpring,
    /// Wet and warm weather.
    WetWarm,
    /// While seed heads stand.
    SeedHeads,
    /// When leaves wilt: storms, felled branches, autumn.
    WiltedLeaves,
}

/// A hazard: a plant and one thing it does.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hazard {
    /// The plant.
    pub plant: PlantId,
    /// What it does, with its source.
    pub harm: &'static Published<Harm>,
    /// What to do, in order.
    pub acts: &'static [Act],
    /// For whom.
    pub whom: Whom,
    /// When it is worst.
    pub when: When,
    /// Where it is known as a trouble; from memory.
    pub regions: &'static [Region],
}

/// The hazards of any of these regions, in the order of the catalogue; none ticked, none told.
pub fn hazards_in(regions: &[Region]) -> impl Iterator<Item = &'static Hazard> {
    hazards().filter(|hazard| hazard.regions.iter().any(|region| regions.contains(region)))
}

/// The hazards of plants that were seen on a paddock, whatever the region.
pub fn hazards_of(plants: &[PlantId]) -> impl Iterator<Item = &'static Hazard> {
    hazards().filter(|hazard| plants.contains(&hazard.plant))
}
