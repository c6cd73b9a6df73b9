//! A plan before safety has spoken.

use super::input::{Grazing, LookedOver, Soaking};
use super::levers::Lever;
use crate::animal::{Animal, FoodId, LotId, Risk, RiskFactor, SaidOn, VetWord};
use crate::assess::{self, ConditionRange, Target, WeightEstimate};
use crate::day::{Layout, Mend};
use crate::forage::{DryEstimate, Fed, ForageClass, ForageEnergy, Hazard, Judgement};
use crate::graze::intake::GrassRoom;
use crate::limits::{
    self, Allowance, CapVerdict, Ends, EnergyVerdict, Intervals, MealLimit, Needs, VetListReason,
    WaterNeed,
};
use crate::progress::TooFast;
use crate::ration::{Dose, FoodClass, Line};
use crate::sources::Provenance;
use crate::units::{AsFed, DryMatter, Energy, Instant, LocalDate, PartOfBody, Span};
use crate::work::WorkLine;

/// One forage of the day.
#[derive(Clone, Debug, PartialEq)]
pub struct HayLine {
    /// The lot.
    pub lot: LotId,
    /// Its name.
    pub name: String,
    /// What it is said to be.
    pub class: ForageClass,
    /// Whether it is soaked.
    pub fed: Fed,
    /// Its part of the forage dry matter.
    pub part: f64,
    /// Dry matter eaten a day, likely, after soaking.
    pub eaten: DryMatter,
    /// What is weighed out a day, before soaking.
    pub weigh_out: AsFed,
    /// What is weighed out on a day it is not soaked: lighter, for nothing is washed out.
    pub weigh_out_unsoaked: AsFed,
    /// Its dry matter with its ends.
    pub dry: DryEstimate,
    /// The part of its dry matter that soaking washes out; `None` when it is not soaked.
    pub washed_out: Option<Ends<f64>>,
    /// Its sugar against the limit, as it comes; `None` for an animal whose hay has no sugar limit.
    pub as_it_comes: Option<Judgement>,
    /// Its sugar as it is fed.
    pub as_fed: Option<Judgement>,
    /// Its energy.
    pub energy: ForageEnergy,
    /// Its hazards.
    pub hazards: Vec<Hazard>,
}

/// Energy of the day.
#[derive(Clone, Debug, PartialEq)]
pub struct EnergyLine {
    /// What forage brings, with its ends.
    pub supplied: Ends<Energy>,
    /// The need of an average animal of this weight and work; `None` where none is published.
    pub need: Option<Energy>,
    /// How the least of it stands to the floor.
    pub verdict: EnergyVerdict,
    /// Where it comes from.
    pub from: Provenance,
}

/// A bought feed of the day.
#[derive(Clone, Debug, PartialEq)]
pub struct BucketLine {
    /// Its name; empty for the typical balancer.
    pub name: String,
    /// What it is.
    pub class: FoodClass,
    /// Whether its numbers are typical and no label was typed.
    pub typical: bool,
    /// Its id; `None` for the typical balancer.
    pub food: Option<FoodId>,
    /// Its dry matter.
    pub dry: DryMatter,
    /// How much, in how many feeds.
    pub dose: Dose,
}

impl BucketLine {
    /// Whether it is a mix of which every maker makes another, and nobody typed the label of this one.
    pub fn wants_label(&self) -> bool {
        let mixed = matches!(
            self.class,
            FoodClass::Balancer | FoodClass::MineralMix | FoodClass::Compound
        );
        self.typical && mixed
    }
}

/// A day with grass in this plan. Its nets are those of a day without, less [`GrassRoom::hay_less`].
#[derive(Clone, Debug, PartialEq)]
pub struct GrassDay {
    /// What somebody decided on.
    pub grazing: Grazing,
    /// How much of it the plan can carry, and what it changes.
    pub room: GrassRoom,
}

/// Grass in this plan.
#[derive(Clone, Debug, PartialEq)]
pub enum GrassLine {
    /// None, and the facts that close it; no facts when only a sign or lameness does.
    None {
        /// The facts.
        why: Vec<RiskFactor>,
    },
    /// Not counted: nobody decided how long it is at grass, and what is eaten there comes on top.
    NotCounted,
    /// Counted, on the days on which grass is open: with both ends, and as long as the plan can carry.
    Counted(Box<GrassDay>),
}

impl GrassLine {
    /// Whether it is at grass at all by this plan, counted or not.
    pub fn is_open(&self) -> bool {
        match self {
            Self::None { .. } => false,
            Self::NotCounted => true,
            Self::Counted(day) => Span::ZERO < day.room.time,
        }
    }
}

/// Why the forage differs from the level times the weight.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Raised {
    /// So that the least that reaches the animal keeps the floor of 1.0 %.
    ToDryMatterFloor {
        /// By this factor.
        factor: f64,
    },
    /// So that the least energy that reaches the animal keeps its floor.
    ToEnergyFloor {
        /// By this factor.
        factor: f64,
    },
}

/// A plan that safety has not judged: it is not shown, kept or exported.
#[derive(Clone, Debug, PartialEq)]
pub struct Draft {
    /// The version of the rules.
    pub rules: u32,
    /// Now.
    pub now: Instant,
    /// The local day.
    pub day: LocalDate,
    /// The animal as it was described.
    pub animal: Animal,
    /// The weight it is made for.
    pub weight: WeightEstimate,
    /// The target, where there is one.
    pub target: Option<Target>,
    /// The condition as last known.
    pub condition: Option<ConditionRange>,
    /// How sugar is to be treated for this animal.
    pub risk: Risk,
    /// How sugar of hay and grass is treated: as for this animal, or as for the most at-risk of its group.
    pub hay_risk: Risk,
    /// Its last look-over.
    pub look_over: LookedOver,
    /// Why it is on the vet's list; empty when it is not.
    pub vet_list: Vec<VetListReason>,
    /// The vets' words that hold today.
    pub words: Vec<VetWord>,
    /// Since when what is said of it stops it.
    pub said: SaidOn,
    /// Its weight falls so fast that the vet is rung.
    pub too_fast: Option<TooFast>,
    /// What it may have.
    pub allowance: Allowance,
    /// Why the forage is more than the level gives, if it is.
    pub raised: Vec<Raised>,
    /// The forages.
    pub hays: Vec<HayLine>,
    /// How the soaked ones are soaked; `None` when none is.
    pub soaking: Option<Soaking>,
    /// Dry matter a day, all of it, likely.
    pub dry_matter: DryMatter,
    /// The least dry matter that reaches the animal: driest reading of the hay, greatest loss.
    pub least_dry_matter: DryMatter,
    /// The sugar of the whole day's forage; `None` for an animal without a limit.
    pub sugar: Option<Judgement>,
    /// Straw against its cap.
    pub straw: CapVerdict,
    /// The part of the forage, by dry matter, that could be straw on top of what is; `None` where straw is no way out.
    pub could_be_straw: Option<f64>,
    /// Energy.
    pub energy: EnergyLine,
    /// The ration of hay alone against the needs.
    pub hay_alone: Vec<Line>,
    /// The bought feeds: those of the ration that was decided, else what covers the shortages of the hay; empty when
    /// nothing is short that a balancer holds.
    pub buckets: Vec<BucketLine>,
    /// The ration with them against the needs.
    pub with_buckets: Vec<Line>,
    /// What a bucket meal may hold.
    pub meal: MealLimit,
    /// Water.
    pub water: WaterNeed,
    /// Salt that meets the need of sodium.
    pub salt_g: f64,
    /// The nets of the day.
    pub layout: Layout,
    /// What would shorten the longest gap, cheapest first.
    pub mends: Vec<Mend>,
    /// Grass.
    pub grass: GrassLine,
    /// Work.
    pub work: WorkLine,
    /// Look-over and review.
    pub watch: Intervals,
    /// What would change the plan most, first things first.
    pub levers: Vec<Lever>,
    /// Findings of the assessment.
    pub assessed: Vec<assess::Finding>,
    /// What it needs.
    pub needs: Needs,
    /// Findings of the needs.
    pub needed: Vec<limits::Finding>,
    /// Where it comes from.
    pub from: Provenance,
}

impl Draft {
    /// Dry matter a day as a part of the weight that percent is taken of.
    pub fn level(&self) -> PartOfBody {
        self.dry_matter.part_of(self.allowance.weight.likely)
    }

    /// Whether any forage is soaked.
    pub fn soaks(&self) -> bool {
        self.hays.iter().any(|hay| hay.fed == Fed::Soaked)
    }
}
