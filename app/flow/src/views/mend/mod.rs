//! The mend of a ration: what is given now, what is proposed, what decides it, what comes next, and what would mend it when
//! nothing fits.

pub mod asks;
#[cfg(test)]
mod tests;
mod used;

pub use asks::{Asks, SetWrong};
pub use used::{Made, use_it};

use super::balance::{Balance, balance, wish};
use super::slip::{Slip, slip};
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::balance;
use tussock_core::animal::{Animal, AnimalId, FoodId};
use tussock_core::log::{DayRation, GivenFood, Problem, Record, YardFood, day_ration};
use tussock_core::plan::PlanError;
use tussock_core::ration::mend::{
    Aim, Closest, FoodChoice, Mended, Mends, NotOffered, Wanted, mend, next_mends,
};
use tussock_core::ration::solve::SolveError;
use tussock_core::ration::{FoodClass, TypicalFood};
use tussock_core::units::{AsFed, Instant, Zone};

/// How many further sets of foods are looked for.
const NEXT: usize = 3;

/// A food that may be given.
#[derive(Clone, Debug, PartialEq)]
pub struct Candidate {
    /// The food.
    pub of: YardFood,
    /// The typical food that it is, where it does not stand in the yard yet.
    pub to_buy: Option<TypicalFood>,
    /// Why it is not chosen by itself; a person may still set it.
    pub not_offered: Option<NotOffered>,
}

impl Candidate {
    /// What it is known by on the screen: its id, or the key of the typical food.
    pub fn key(&self) -> String {
        match (&self.of.food.id, self.to_buy) {
            (_, Some(typical)) => format!("typical-{}", typical.key()),
            (Some(FoodId(id)), None) => id.clone(),
            (None, None) => String::new(),
        }
    }
}

/// A ration that is proposed.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// The ration.
    pub ration: DayRation,
    /// What is known of it.
    pub mended: Mended,
    /// How it stands, beside what is given now.
    pub balance: Balance,
    /// What changes.
    pub slip: Slip,
    /// Its foods by their place among the candidates.
    pub foods: Vec<(usize, AsFed)>,
}

/// What comes of the mend.
#[derive(Clone, Debug, PartialEq)]
pub enum Found {
    /// Rations that keep every limit, the one that was asked for first; each of other foods.
    Rations {
        /// The rations; one at least.
        proposals: Vec<Proposal>,
        /// Whether it is proven that no other set of foods is better than the first.
        proven: bool,
    },
    /// Nothing fits.
    Nothing(Closest),
    /// Not known in the time that is allowed.
    NotKnown,
    /// It could not be reckoned.
    Failed(SolveError),
}

/// The mend of a ration.
#[derive(Clone, Debug, PartialEq)]
pub struct MendView {
    /// The animal.
    pub animal: Animal,
    /// What it is given now.
    pub now: DayRation,
    /// What may be given: the foods of the yard, then typical ones.
    pub candidates: Vec<Candidate>,
    /// How it was asked.
    pub aim: Aim,
    /// What comes of it.
    pub found: Found,
    /// What could not be read.
    pub problems: Vec<Problem>,
}

/// What there is to show.
#[derive(Clone, Debug, PartialEq)]
pub enum Outcome {
    /// Something is missing or cannot be used.
    Nothing(PlanError),
    /// Safety refuses a plan: no ration is proposed.
    Refused,
    /// The mend.
    Shown(Box<MendView>),
}

/// What the screen asks the disk for.
pub fn needs(animal: &AnimalId) -> Vec<Range> {
    balance::needs(animal)
}

/// The mend of an animal's ration as it is asked for; `None` when the animal is not there.
pub fn mend_of(
    shelf: &Shelf,
    animal: &AnimalId,
    asks: &Asks,
    now: Instant,
    zone: &impl Zone,
) -> Option<Outcome> {
    let ration = match balance::ration(shelf, animal, now, zone)?.outcome {
        balance::Outcome::Refused(_) => return Some(Outcome::Refused),
        balance::Outcome::Shown(shown) if shown.refused.is_some() => return Some(Outcome::Refused),
        balance::Outcome::Shown(shown) => shown.ration,
        balance::Outcome::Nothing(error) => return Some(Outcome::Nothing(error)),
        // What it is given cannot be held against it; what it could be given may.
        balance::Outcome::NotReckoned(_) => given(shelf, animal, now, zone)?.ok()?,
    };
    let candidates = candidates(&ration, asks.typical_too);
    let aim = asks.aim.unwrap_or_else(|| usual_aim(&candidates));
    let found = found(&ration, &candidates, asks, aim);
    Some(Outcome::Shown(Box::new(MendView {
        animal: ration.animal.clone(),
        problems: ration.problems.clone(),
        now: ration,
        candidates,
        aim,
        found,
    })))
}

/// What an animal is given now.
fn given(
    shelf: &Shelf,
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<Result<DayRation, PlanError>> {
    let records: Vec<&Record> = shelf.records().collect();
    let wish = wish(&records, animal, now, zone)?;
    day_ration(&records, animal, now, zone, &wish)
}

/// The keys of all foods that may be given, so that what is set of them can be read.
pub fn keys(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Vec<String> {
    match given(shelf, animal, now, zone) {
        Some(Ok(ration)) => candidates(&ration, true)
            .iter()
            .map(Candidate::key)
            .collect(),
        Some(Err(_)) | None => Vec::new(),
    }
}

/// The foods of the yard and of the typical ones those that do not stand in the yard under their own numbers. A typical
/// balancer stands in only where the yard has no balancer.
fn candidates(ration: &DayRation, typical_too: bool) -> Vec<Candidate> {
    let topping = ration.standard.topping;
    let candidate = |of: YardFood, to_buy| Candidate {
        not_offered: topping.offers(&of.food).err(),
        of,
        to_buy,
    };
    let mut found: Vec<Candidate> = ration
        .yard
        .iter()
        .map(|food| candidate(food.clone(), None))
        .collect();
    let here = |typical: TypicalFood| {
        ration.yard.iter().any(|one| {
            one.food.profile == Some(typical)
                || (typical == TypicalFood::Balancer && one.food.class == FoodClass::Balancer)
        })
    };
    if typical_too {
        for typical in TypicalFood::ALL.iter().copied().filter(|one| !here(*one)) {
            let of = YardFood {
                food: typical.food(),
                price: None,
                scoop: None,
            };
            found.push(candidate(of, Some(typical)));
        }
    }
    found
}

/// Where a food of the yard that is on offer has a price, the cheapest; else the fewest foods.
fn usual_aim(candidates: &[Candidate]) -> Aim {
    let priced = candidates
        .iter()
        .any(|one| one.not_offered.is_none() && one.of.price.is_some());
    if priced {
        Aim::Cheapest
    } else {
        Aim::FewestFoods
    }
}

fn found(ration: &DayRation, candidates: &[Candidate], asks: &Asks, aim: Aim) -> Found {
    let wanted: Wanted<'_> = ration.standard.wanted(aim, asks.at_most);
    let currency = ration.currency();
    let forages = ration.forage_choices();
    let choices: Vec<FoodChoice<'_>> = candidates
        .iter()
        .map(|candidate| {
            let set = asks
                .set
                .iter()
                .find(|(key, _)| *key == candidate.key())
                .map(|(_, a_day)| *a_day);
            match set {
                Some(a_day) => candidate.of.locked(&ration.standard, currency, a_day),
                None => candidate.of.choice(&ration.standard, currency),
            }
        })
        .collect();
    let first = match mend(&wanted, &forages, &choices) {
        Ok(first) => first,
        Err(error) => return Found::Failed(error),
    };
    let (first, proven) = match first {
        Mends::Found(first) => (first, true),
        Mends::NotProven(first) => (first, false),
        Mends::NothingFits(closest) => return Found::Nothing(closest),
        Mends::NotKnown => return Found::NotKnown,
    };
    let next = next_mends(&wanted, &forages, &choices, NEXT).unwrap_or_default();
    let proposals = std::iter::once(first)
        .chain(next)
        .filter_map(|mended| proposal(ration, candidates, mended))
        .collect::<Vec<_>>();
    if proposals.is_empty() {
        return Found::NotKnown;
    }
    Found::Rations { proposals, proven }
}

/// `None` for amounts that are not believed.
fn proposal(ration: &DayRation, candidates: &[Candidate], mended: Mended) -> Option<Proposal> {
    let foods: Vec<(usize, AsFed)> = mended
        .foods
        .iter()
        .copied()
        .enumerate()
        .filter(|(_, a_day)| AsFed::ZERO < *a_day)
        .collect();
    let given = foods
        .iter()
        .filter_map(|(at, a_day)| {
            Some(GivenFood {
                of: candidates.get(*at)?.of.clone(),
                a_day: *a_day,
            })
        })
        .collect();
    let proposed = ration.with(&mended.forages, given);
    Some(Proposal {
        balance: balance(ration, Some(&proposed)).ok()?,
        slip: slip(ration, &proposed),
        ration: proposed,
        foods,
        mended,
    })
}

impl MendView {
    /// The food at a place among the candidates.
    pub fn candidate(&self, at: usize) -> Option<&Candidate> {
        self.candidates.get(at)
    }

    /// A proposal by its place; the first where there are fewer.
    pub fn proposal(&self, at: usize) -> Option<&Proposal> {
        match &self.found {
            Found::Rations { proposals, .. } => proposals.get(at).or_else(|| proposals.first()),
            Found::Nothing(_) | Found::NotKnown | Found::Failed(_) => None,
        }
    }
}
