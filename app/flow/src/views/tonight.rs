//! A night without a lot: what is missing for each animal that eats it, and what stands in for it.

use crate::shelf::Shelf;
use crate::views::changeover::{animals, body};
use crate::views::hay::strictest_of;
use crate::views::nets::{NetState, nets_day, plan_on};
use crate::views::round::Today;
use crate::views::stock::{Eater, eaters};
use tussock_core::animal::{Animal, AnimalId, Kind, LotId, RiskLevel};
use tussock_core::assess::best;
use tussock_core::forage::{ForageKind, Hungry, Tonight, tonight};
use tussock_core::log::{Record, Wish, gather};
use tussock_core::round::{IssuedPlan, PlannedNet};
use tussock_core::soak::{Recipe, Water, dry_loss, feeds_like};
use tussock_core::sources::RecordId;
use tussock_core::units::{BodyMass, DryMatter, Zone};

/// What stands in for an animal's hay.
#[derive(Clone, Debug, PartialEq)]
pub struct ForOne {
    /// Which animal.
    pub animal: AnimalId,
    /// Its name.
    pub name: String,
    /// Its kind: donkeys have straw rules of their own.
    pub kind: Kind,
    /// Its risk.
    pub risk: RiskLevel,
    /// The ways out; `None` while its weight or the dry matter of its hay is not known.
    pub ways: Option<Tonight>,
}

/// A night without a lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Night {
    /// The name of the lot.
    pub lot: String,
    /// Nets of today are still to be filled from it; else the figures are those of a usual night.
    pub missing_now: bool,
    /// Everybody who eats it, by name.
    pub animals: Vec<ForOne>,
}

/// What to do tonight without a lot; `None` when it is not there.
pub fn night(shelf: &Shelf, today: &Today, lot: &LotId, zone: &impl Zone) -> Option<Night> {
    let name = body(shelf, lot)?.name.as_str().to_owned();
    let eaters = eaters(today, lot);
    let unfilled = |eater: &Eater| -> Vec<PlannedNet> {
        let id = eater.subject.parts().1;
        let day = nets_day(shelf, today, id, today.day);
        let nets = day.map(|day| day.nets).unwrap_or_default();
        nets.into_iter()
            .filter(|net| net.state == NetState::ToWeigh && net.lot == *lot)
            .map(|net| PlannedNet {
                visit: net.visit,
                lot: net.lot,
                hay: net.hay,
                soaked: net.soaked,
                net: None,
                less_for_grass: None,
            })
            .collect()
    };
    let missing_now = eaters.iter().any(|eater| !unfilled(eater).is_empty());
    let mut found = Vec::new();
    for eater in &eaters {
        let Some(plan) = plan_on(today, eater.subject.parts().1, today.day) else {
            continue;
        };
        let missing = if missing_now {
            unfilled(eater)
        } else {
            last_visit(plan, lot)
        };
        found.extend(of_eater(shelf, today, plan, eater, &missing, zone));
    }
    found.sort_by(|a, b| a.name.cmp(&b.name));
    Some(Night {
        lot: name,
        missing_now,
        animals: found,
    })
}

/// The nets of a lot at the last visit at which one is hung: those of a usual night.
fn last_visit(plan: &IssuedPlan, lot: &LotId) -> Vec<PlannedNet> {
    let of_lot = || plan.nets.iter().filter(|net| net.lot == *lot);
    let last = of_lot().map(|net| net.visit).max();
    of_lot()
        .filter(|net| Some(net.visit) == last)
        .cloned()
        .collect()
}

/// The dry matter that nets bring as it is eaten; `None` where that of a lot is not known.
fn eaten<'a>(
    shelf: &Shelf,
    plan: &IssuedPlan,
    nets: impl Iterator<Item = &'a PlannedNet>,
) -> Option<DryMatter> {
    let recipe = plan.recipe.unwrap_or(Recipe::usual(Water::TapWinter));
    let lost = dry_loss(recipe.soak()).part.likely;
    let mut sum = DryMatter::ZERO;
    for net in nets {
        let (lot, _) = body(shelf, &net.lot)?
            .lot(&RecordId(net.lot.0.clone()))
            .ok()?;
        let lost = if net.soaked { lost } else { 0.0 };
        sum = sum + feeds_like(net.hay, lost).ok()?.dry(lot.dry_matter()?.value);
    }
    Some(sum)
}

fn of_eater(
    shelf: &Shelf,
    today: &Today,
    plan: &IssuedPlan,
    eater: &Eater,
    missing: &[PlannedNet],
    zone: &impl Zone,
) -> Vec<ForOne> {
    let members: Vec<Animal> = animals(shelf, &eater.subject, today.day)
        .iter()
        .filter_map(|id| shelf.animal(id))
        .collect();
    let records: Vec<&Record> = shelf.records().collect();
    // The lowest likely weight, and the likely one.
    let weights: Vec<Option<(BodyMass, BodyMass)>> = members
        .iter()
        .map(|animal| {
            let gathered = gather(&records, &animal.id, today.now, zone, &Wish::default())?;
            let weight = &best(&gathered.weights, gathered.day)?.weight;
            Some((weight.low, weight.value))
        })
        .collect();
    let whole: Option<BodyMass> = weights
        .iter()
        .map(|weight| weight.map(|(_, likely)| likely))
        .sum();
    let straw = |net: &&PlannedNet| {
        let lot = body(shelf, &net.lot);
        lot.is_some_and(|lot| lot.class.kind() == ForageKind::Straw)
    };
    let all = || plan.nets.iter();
    let amounts = eaten(shelf, plan, missing.iter())
        .zip(eaten(shelf, plan, all()))
        .zip(eaten(shelf, plan, all().filter(straw)));
    members
        .iter()
        .zip(&weights)
        .map(|(animal, weight)| {
            let risk = strictest_of(shelf, |id| *id == animal.id);
            let ways = weight.zip(whole).zip(amounts).and_then(
                |(((low, likely), whole), ((missing, day), straw))| {
                    let fed = Hungry {
                        kind: animal.kind,
                        teeth: animal.health.teeth,
                        risk,
                        weight: low,
                        missing,
                        day,
                        straw,
                    };
                    tonight(&fed.of_group(likely, whole)).ok()
                },
            );
            ForOne {
                animal: animal.id.clone(),
                name: animal.name.clone(),
                kind: animal.kind,
                risk,
                ways,
            }
        })
        .collect()
}
