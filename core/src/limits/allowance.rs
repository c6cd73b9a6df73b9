//! Dry matter it may have: the starting level, what lies below it, and what never does.
//!
//! Dry matter means all of it: hay, grass, straw, feed, balancer, treats, as eaten, after soaking. It is a part of current
//! body weight until target, of target weight from then on. The starting level (1.5 %, donkeys and mules 1.3 %) is no
//! restriction. Below it everything in [`RestrictionBar`] must be out of the way; not below 1.25 % without a vet's word;
//! never below 1.0 %, tested with the heaviest the animal may be.

use super::bar::{ConditionScore, RestrictionBar, bars};
use super::ends::Ends;
use super::error::{ASKED, CONDITION, LimitsError, WEIGHT};
use super::need::Basis;
use super::published::{
    CONDITION_APART, CONDITION_FAT, DAYS_AT_START, FLOOR, FLOOR_WITHOUT_VET, HOLDING_STEP,
    NEEDS_WEIGHT, START, START_DONKEY, STEPS,
};
use super::vet_list::{expired_word, lowest_level_word};
use crate::animal::{Animal, Answer, BodyType, Goal, Laminitis, Phase, State, VetWord};
use crate::sources::{Provenance, Published};
use crate::units::{BodyMass, DryMatter, LocalDate, PartOfBody};

/// How often it was weighed for the weight that counts now.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub struct Weighings {
    /// Times on a scale.
    pub on_scale: u32,
    /// Times by tape.
    pub by_tape: u32,
}

/// What an allowance is judged on.
#[derive(Clone, Copy, Debug)]
pub struct AllowanceFor<'a> {
    /// The animal.
    pub animal: &'a Animal,
    /// The day.
    pub day: LocalDate,
    /// Its current weight with its band.
    pub weight: Ends<BodyMass>,
    /// How often it was weighed.
    pub weighings: Weighings,
    /// Its target weight with its band, when known.
    pub target: Option<Ends<BodyMass>>,
    /// Its condition scores, from 1 to 9, in any order; those after the day do not count.
    pub condition: &'a [ConditionScore],
    /// Whether its last look-over was clean: [`Answer::NotKnown`] when nobody looked.
    pub look_over_clean: Answer,
    /// Days at the starting level that were really fed.
    pub days_at_start: u32,
    /// Vets' words, of any animal and any matter.
    pub words: &'a [VetWord],
    /// The level of the plan that holds now, when there is one.
    pub now: Option<PartOfBody>,
    /// The level asked for; without one the present level is looked at again.
    pub asked: Option<PartOfBody>,
}

impl AllowanceFor<'_> {
    /// The starting level and where it comes from.
    fn start(&self) -> Published<PartOfBody> {
        if self.needs_weight() {
            NEEDS_WEIGHT
        } else if self.in_episode() {
            START
        } else {
            starting_level(self.animal)
        }
    }

    fn needs_weight(&self) -> bool {
        self.animal.phase == Phase::NeedsWeight || self.animal.goal == Goal::Gain
    }

    fn in_episode(&self) -> bool {
        self.animal.phase == Phase::Episode || self.animal.health.laminitis == Laminitis::Active
    }

    /// Whether the plan that holds now is a restriction.
    pub(super) fn restricted_now(&self) -> bool {
        self.now.is_some_and(|level| level < *self.start())
    }

    /// Whether less is asked for than it has now, or a restriction begins.
    pub(super) fn is_step_down(&self) -> bool {
        match (self.now, self.asked) {
            _ if !self.restricted_now() => true,
            (Some(now), Some(asked)) => asked < now,
            _ => false,
        }
    }

    /// The last condition score up to the day; of two on one day the lower.
    pub(super) fn last_condition(&self) -> Option<f64> {
        self.condition
            .iter()
            .filter(|score| score.on <= self.day)
            .max_by(|a, b| a.on.cmp(&b.on).then(b.score.total_cmp(&a.score)))
            .map(|score| score.score)
    }

    /// The weight percent is taken of: current until target, target from then on. What is growing, in foal or in milk
    /// has no target to be fed to.
    fn basis(&self) -> (Basis, Ends<BodyMass>) {
        match self.target {
            Some(target)
                if self.animal.state == State::Adult
                    && (self.animal.phase == Phase::Holding
                        || self.weight.likely <= target.likely) =>
            {
                (Basis::TargetWeight, target)
            }
            _ => (Basis::CurrentWeight, self.weight),
        }
    }

    /// Refuses what is not believed.
    fn check(&self) -> Result<(), LimitsError> {
        check_weight("weight_kg", self.weight)?;
        if let Some(target) = self.target {
            check_weight("target_kg", target)?;
        }
        for score in self.condition {
            CONDITION.check(score.score)?;
        }
        for level in [self.now, self.asked].into_iter().flatten() {
            ASKED.check(level.to_percent())?;
        }
        Ok(())
    }
}

/// Refuses a weight that is not believed or whose ends are turned round.
fn check_weight(field: &'static str, weight: Ends<BodyMass>) -> Result<(), LimitsError> {
    let kg = weight.map(BodyMass::to_kg);
    for value in [kg.least, kg.likely, kg.most] {
        WEIGHT.check(value)?;
    }
    if weight.in_order() {
        Ok(())
    } else {
        Err(LimitsError::NotInOrder {
            field,
            values: [kg.least, kg.likely, kg.most],
        })
    }
}

/// How forage is given.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Offer {
    /// The level is weighed out.
    Measured,
    /// The level is the least; forage may always be in front of it.
    AtLeast,
}

/// Why the level is what it is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AllowanceReason {
    /// It is the starting level, which is no restriction.
    StartingLevel,
    /// It is at or above the starting level, as asked or as it was.
    AboveStart,
    /// It is a restriction, and nothing stands in its way.
    Restricted,
    /// A restriction was asked for or held, and the bars stand in its way.
    NotGiven {
        /// What was asked for or held.
        wanted: PartOfBody,
    },
    /// Less than 1.25 % was wanted and no vet's word holds.
    HeldWithoutVet {
        /// What was wanted.
        wanted: PartOfBody,
    },
    /// A vet's word holds.
    VetsWord {
        /// The lowest level it allows.
        lowest: PartOfBody,
        /// Its last day.
        expires: LocalDate,
    },
    /// A vet's word has expired; the plan goes back.
    VetsWordExpired {
        /// Its last day.
        expired: LocalDate,
    },
    /// Raised to the lowest level the vet allows.
    RaisedToVetsWord {
        /// What was wanted.
        wanted: PartOfBody,
    },
    /// Raised so that the heaviest it may be still has 1.0 %.
    RaisedToFloor {
        /// What it would have been.
        from: PartOfBody,
    },
    /// It needs weight.
    NeedsWeight,
    /// An episode: hay stays in front of it, no sudden cut.
    Episode,
}

/// What dry matter an animal may have a day.
#[derive(Clone, Debug, PartialEq)]
pub struct Allowance {
    /// Never below this.
    pub floor: PartOfBody,
    /// Its starting level, which is no restriction.
    pub start: PartOfBody,
    /// Not below this without a vet's word: 1.25 %, and on the vet's list the starting level.
    pub without_vet_floor: PartOfBody,
    /// What was asked for.
    pub asked: Option<PartOfBody>,
    /// What holds today.
    pub level: PartOfBody,
    /// How forage is given.
    pub offer: Offer,
    /// Which weight percent is taken of.
    pub basis: Basis,
    /// That weight with its band.
    pub weight: Ends<BodyMass>,
    /// The weight the floor is tested with: the heaviest it may be.
    pub floor_weight: BodyMass,
    /// What stands in the way of a restriction; empty when nothing does. It is filled whether or not one was asked for.
    pub bars: Vec<RestrictionBar>,
    /// Why the level is what it is.
    pub why: Vec<AllowanceReason>,
    /// Where it comes from.
    pub from: Provenance,
}

impl Allowance {
    /// Dry matter a day at the level.
    pub fn dry_matter(&self) -> DryMatter {
        self.level.of(self.weight.likely)
    }

    /// Dry matter a day never to go under, to be compared with the least that reaches the animal.
    pub fn floor_dry_matter(&self) -> DryMatter {
        self.floor.of(self.floor_weight)
    }

    /// Whether the level is a restriction.
    pub fn is_restriction(&self) -> bool {
        self.level < self.start
    }
}

/// The starting level of an animal: 1.5 %, donkeys and mules 1.3 %.
pub fn starting_level(animal: &Animal) -> Published<PartOfBody> {
    if animal.kind.is_donkey() || animal.body_type == Some(BodyType::Donkey) {
        START_DONKEY
    } else {
        START
    }
}

/// The next level below one, to be asked for at a review; `None` at the bottom. Whether it is given is for [`allowance`].
pub fn step_down(level: PartOfBody) -> Option<PartOfBody> {
    STEPS.into_iter().find(|step| *step < level)
}

/// The next level of a holding animal, to be asked for at a review until its weight holds.
pub fn step_up(level: PartOfBody) -> PartOfBody {
    level + *HOLDING_STEP
}

/// Judges what dry matter an animal may have on a day.
///
/// # Errors
/// A weight, score or level that is not believed, or a band whose ends are turned round.
pub fn allowance(of: &AllowanceFor<'_>) -> Result<Allowance, LimitsError> {
    of.check()?;
    let word = lowest_level_word(of.words, &of.animal.id, of.day);
    if let Some((_, lowest)) = word {
        ASKED.check(lowest.to_percent())?;
    }
    let start = of.start();
    let bars = bars(of, word.is_some());
    let on_vet_list = !super::vet_list(of.animal, of.day, of.last_condition()).is_empty();
    let without_vet_floor = if on_vet_list {
        *start
    } else {
        *FLOOR_WITHOUT_VET
    };
    let (basis, weight) = of.basis();
    let floor_weight = weight.most.max(of.weight.most);
    let mut why = Vec::new();
    let mut from = Provenance::new().constant(&start).constant(&FLOOR);
    if of.needs_weight() {
        why.push(AllowanceReason::NeedsWeight);
    }
    if of.in_episode() {
        why.push(AllowanceReason::Episode);
    }
    let wanted = of.asked.or(of.now).unwrap_or(*start);
    let mut level = wanted;
    if wanted < *start {
        from = from
            .constant(&DAYS_AT_START)
            .constant(&CONDITION_FAT)
            .constant(&CONDITION_APART)
            .constant(&FLOOR_WITHOUT_VET);
        if bars.is_empty() {
            if word.is_none() && wanted < *FLOOR_WITHOUT_VET {
                why.push(AllowanceReason::HeldWithoutVet { wanted });
                level = *FLOOR_WITHOUT_VET;
            }
        } else {
            why.push(AllowanceReason::NotGiven { wanted });
            level = *start;
        }
        if let (None, Some(expired)) = (word, expired_word(of.words, &of.animal.id, of.day)) {
            why.push(AllowanceReason::VetsWordExpired {
                expired: expired.expires,
            });
        }
    }
    if let Some((record, lowest)) = word {
        why.push(AllowanceReason::VetsWord {
            lowest,
            expires: record.expires,
        });
        if level < lowest {
            why.push(AllowanceReason::RaisedToVetsWord { wanted: level });
            level = lowest;
        }
    }
    // As a part of the weight that percent is taken of, so that in kilograms it is the floor of the heaviest it may be.
    let lowest_ever = FLOOR.max(*FLOOR * (floor_weight / weight.likely));
    if level < lowest_ever {
        why.push(AllowanceReason::RaisedToFloor { from: level });
        level = lowest_ever;
    }
    why.push(match level.partial_cmp(&*start) {
        Some(std::cmp::Ordering::Less) => AllowanceReason::Restricted,
        Some(std::cmp::Ordering::Equal) => AllowanceReason::StartingLevel,
        _ => AllowanceReason::AboveStart,
    });
    let offer = if of.needs_weight() || of.in_episode() {
        Offer::AtLeast
    } else {
        Offer::Measured
    };
    Ok(Allowance {
        floor: *FLOOR,
        start: *start,
        without_vet_floor,
        asked: of.asked,
        level,
        offer,
        basis,
        weight,
        floor_weight,
        bars,
        why,
        from,
    })
}
