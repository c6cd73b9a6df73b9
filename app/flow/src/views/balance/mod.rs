//! A ration held against what the animal needs and may have: what is over, short, not known and within.

pub mod cord;
mod judged;
mod rows;
#[cfg(test)]
pub(crate) mod tests;

pub use cord::Cord;
pub use judged::Judged;
pub use rows::{EnergyLine, EnergyStands, NutrientRow, Side};

use crate::forms::start::Visits;
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::plan;
use tussock_core::animal::{Animal, AnimalId};
use tussock_core::limits::{Finding, Nutrient};
use tussock_core::log::{DayRation, GivenBy, Problem, Record, Wish, day_ration, gather};
use tussock_core::plan::PlanError;
use tussock_core::ration::{RationError, Whole};
use tussock_core::safety::{Refusal, SafetyVerdict, VetUrgency, judge};
use tussock_core::units::{Instant, Zone};

/// How something stands, worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Look {
    /// Over its ceiling.
    Over,
    /// Under its need.
    Short,
    /// Not known, not proven.
    NotKnown,
    /// Worth a remark, and counted nowhere.
    Remark,
    /// Within.
    Within,
    /// A plain fact, held against nothing.
    Told,
}

impl Look {
    /// Whether it needs a look.
    pub const fn needs_a_look(self) -> bool {
        matches!(self, Self::Over | Self::Short | Self::NotKnown)
    }
}

/// How many there are of each.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Counts {
    /// Over.
    pub over: usize,
    /// Short.
    pub short: usize,
    /// Not known.
    pub not_known: usize,
    /// Within.
    pub within: usize,
}

impl Counts {
    /// Of everything that is held against something.
    fn of(looks: impl Iterator<Item = Look>) -> Self {
        looks.fold(Self::default(), |mut counts, look| {
            match look {
                Look::Over => counts.over += 1,
                Look::Short => counts.short += 1,
                Look::NotKnown => counts.not_known += 1,
                Look::Within => counts.within += 1,
                Look::Remark | Look::Told => {}
            }
            counts
        })
    }

    /// Whether nothing is over, short or not known.
    pub const fn all_within(self) -> bool {
        self.over == 0 && self.short == 0 && self.not_known == 0
    }
}

/// A ration held against an animal; beside another, how that one stands was.
#[derive(Clone, Debug, PartialEq)]
pub struct Balance {
    /// Energy.
    pub energy: EnergyLine,
    /// The nutrients, worst first. Empty where no needs are reckoned for the animal.
    pub rows: Vec<NutrientRow>,
    /// What else is judged.
    pub judged: Vec<Judged>,
}

/// Holds a ration against its animal. With a proposed one, that is held, and each row says what the first one was.
///
/// # Errors
/// A weight or an amount that is not believed.
pub fn balance(now: &DayRation, proposed: Option<&DayRation>) -> Result<Balance, RationError> {
    let before = now.whole()?;
    let Some(proposed) = proposed else {
        return Ok(held(now, &before, None));
    };
    let after = proposed.whole()?;
    Ok(held(proposed, &after, Some(&before)))
}

fn held(ration: &DayRation, is: &Whole, was: Option<&Whole>) -> Balance {
    Balance {
        energy: EnergyLine::of(&ration.standard, &is.energy, was.map(|was| &was.energy)),
        rows: rows::nutrients(is, was),
        judged: judged::judged(ration, is),
    }
}

impl Balance {
    /// How many there are of each: nutrients, energy and what else is judged.
    pub fn counts(&self) -> Counts {
        let rows = self.rows.iter().map(|row| row.is.look());
        let judged = self.judged.iter().map(Judged::look);
        Counts::of(rows.chain([self.energy.stands.look()]).chain(judged))
    }

    /// The nutrients that need a look, now or before, and of which it is known.
    pub fn to_look_at(&self) -> impl Iterator<Item = &NutrientRow> {
        self.rows
            .iter()
            .filter(|row| row.needs_a_look() && !row.is_only_unknown())
    }

    /// The nutrients of which nobody knows whether they are enough.
    pub fn unknown(&self) -> impl Iterator<Item = &NutrientRow> {
        self.rows.iter().filter(|row| row.is_only_unknown())
    }

    /// The nutrients that are within.
    pub fn within(&self) -> impl Iterator<Item = &NutrientRow> {
        self.rows.iter().filter(|row| !row.needs_a_look())
    }

    /// The nutrients of which some part of the ration is not known, in the order they are shown.
    pub fn not_known(&self) -> Vec<Nutrient> {
        let unknown = |nutrient: &Nutrient| {
            self.rows
                .iter()
                .any(|row| row.nutrient == *nutrient && row.is.unknown > 0.0)
        };
        Nutrient::ALL.into_iter().filter(unknown).collect()
    }
}

/// What safety says against any plan today.
#[derive(Clone, Debug, PartialEq)]
pub struct Stop {
    /// Why, the most urgent first.
    pub why: Vec<Refusal>,
    /// How soon the vet is rung; `None` when it is not for the vet.
    pub vet: Option<VetUrgency>,
}

impl Stop {
    /// Whether nothing stands against a plan but that it grows, is in foal or in milk.
    pub fn by_state_alone(&self) -> bool {
        let by_state = |why: &Refusal| matches!(why, Refusal::NotPlannedHere(_));
        !self.why.is_empty() && self.why.iter().all(by_state)
    }
}

/// The ration of an animal and how it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Shown {
    /// What it is given.
    pub ration: DayRation,
    /// How that stands.
    pub balance: Balance,
    /// What safety says against any plan today: where a plan in use feeds it all the same, or where it grows, is in foal
    /// or in milk and no more stands against one.
    pub refused: Option<Stop>,
}

impl Shown {
    /// Whether its needs are not reckoned for want of its age or month.
    pub fn lacks_its_stage(&self) -> bool {
        let lacks = |finding: &Finding| matches!(finding, Finding::StageNotKnown(..));
        self.ration.standard.needed.iter().any(lacks)
    }

    /// The names of the hays that nobody tested.
    pub fn untested(&self) -> Vec<&str> {
        self.ration
            .forages
            .iter()
            .filter(|given| !given.tested)
            .map(|given| given.name.as_str())
            .collect()
    }
}

/// What there is to show.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// Something is missing or cannot be used.
    Nothing(PlanError),
    /// No plan is in use, and safety refuses today's.
    Refused(Stop),
    /// An amount or a weight is not believed.
    NotReckoned(RationError),
    /// A ration.
    Shown(Box<Shown>),
}

/// The ration of one animal.
#[derive(Clone, Debug, PartialEq)]
pub struct RationView {
    /// The animal.
    pub animal: Animal,
    /// What there is to show.
    pub outcome: Outcome,
    /// What could not be read.
    pub problems: Vec<Problem>,
}

/// What the screen asks the disk for.
pub fn needs(animal: &AnimalId) -> Vec<Range> {
    plan::needs(animal)
}

/// What is asked beside the records: the usual two visits where nobody said when somebody comes. `None` when the animal
/// is not there.
pub fn wish(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<Wish> {
    let gathered = gather(records, animal, now, zone, &Wish::default())?;
    Some(Wish {
        visits: if gathered.visits.is_empty() {
            Visits::Two.times()
        } else {
            Vec::new()
        },
        ..Wish::default()
    })
}

/// The ration of an animal; `None` when the animal is not there.
pub fn ration(
    shelf: &Shelf,
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<RationView> {
    let records: Vec<&Record> = shelf.records().collect();
    let wish = wish(&records, animal, now, zone)?;
    let gathered = gather(&records, animal, now, zone, &wish)?;
    let refused = match gathered.draft().map(judge) {
        Ok(SafetyVerdict::Refused(refused)) => Some(Stop {
            why: refused.why,
            vet: refused.vet,
        }),
        Ok(SafetyVerdict::Allowed(_)) | Err(_) => None,
    };
    let mut problems = gathered.problems;
    let outcome = match (day_ration(&records, animal, now, zone, &wish)?, refused) {
        (Err(error), _) => Outcome::Nothing(error),
        // Nothing that safety refuses is shown as what it could be given. One that grows, is in foal or in milk is
        // balanced all the same, with the word that no plan is made for it.
        (Ok(ration), Some(refused)) if ration.by == GivenBy::Draft && !refused.by_state_alone() => {
            problems = ration.problems;
            Outcome::Refused(refused)
        }
        (Ok(ration), refused) => {
            problems.clone_from(&ration.problems);
            match balance(&ration, None) {
                Err(error) => Outcome::NotReckoned(error),
                Ok(balance) => Outcome::Shown(Box::new(Shown {
                    ration,
                    balance,
                    refused,
                })),
            }
        }
    };
    Some(RationView {
        animal: gathered.animal,
        outcome,
        problems,
    })
}
