//! The plan that was accepted last: what it feeds until its review, and whether it still holds.

use super::Outcome;
use super::differs::{Differs, differing};
use crate::shelf::Shelf;
use crate::views::changeover::{Changeover, lots, of_plan};
use tussock_core::animal::{AnimalId, LotId};
use tussock_core::forage::instead;
use tussock_core::log::bodies::PlanV1;
use tussock_core::log::bodies::base::{BodyHundredths, Count};
use tussock_core::log::{Body, Kind, Stamp};
use tussock_core::safety::Plan;
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, LocalDate, LocalTime, PartOfBody};

/// A forage of the plan in use.
#[derive(Clone, Debug, PartialEq)]
pub struct HeldHay {
    /// Its name.
    pub name: String,
    /// What is weighed out a day, before soaking.
    pub as_fed: AsFed,
    /// Whether it is soaked.
    pub soaked: bool,
}

/// A bought feed of the plan in use.
#[derive(Clone, Debug, PartialEq)]
pub struct HeldFood {
    /// Its name; `None` for a typical balancer.
    pub name: Option<String>,
    /// How much a day.
    pub as_fed: AsFed,
    /// In how many feeds; `None` when nobody knows.
    pub feeds: Option<i64>,
}

/// A net of the plan in use.
#[derive(Clone, Debug, PartialEq)]
pub struct HeldNet {
    /// When it is hung.
    pub visit: LocalTime,
    /// The hay in it, before soaking.
    pub as_fed: AsFed,
    /// Whether it is soaked.
    pub soaked: bool,
}

/// The plan that was accepted last.
#[derive(Clone, Debug, PartialEq)]
pub struct Accepted {
    /// Its first day.
    pub from: LocalDate,
    /// The day of its review.
    pub review: LocalDate,
    /// Whether today's plan would hang or feed something else.
    pub would_differ: bool,
    /// What would now differ, in the order of the loop; it says so and changes nothing.
    pub differs: Vec<Differs>,
    /// Its level.
    pub level: PartOfBody,
    /// Whether it may be fed until its review: nothing is refused and nothing stops the animal today, its level is not
    /// under today's floor, its hays and visits are still there, and no vet's word came since it was made.
    pub holds: bool,
    /// Its forages.
    pub hays: Vec<HeldHay>,
    /// Its bought feeds.
    pub foods: Vec<HeldFood>,
    /// Its nets, in the order of the day.
    pub nets: Vec<HeldNet>,
    /// The lots that are weighed out in place of those it names.
    pub changeovers: Vec<Changeover>,
}

impl Accepted {
    /// The hay of a day, before soaking.
    pub fn hay(&self) -> AsFed {
        self.hays.iter().map(|hay| hay.as_fed).sum()
    }

    /// Whether any of it is soaked.
    pub fn soaks(&self) -> bool {
        self.hays.iter().any(|hay| hay.soaked)
    }
}

/// The forages of an issued plan, by name.
pub fn hays(shelf: &Shelf, plan: &PlanV1) -> Vec<HeldHay> {
    plan.amounts
        .iter()
        .filter_map(|amount| {
            let lot = amount.lot.as_ref()?;
            Some(HeldHay {
                name: shelf.lot_name(lot).unwrap_or_else(|| lot.0.clone()),
                as_fed: amount.as_fed_g.as_fed(),
                soaked: amount.soaked,
            })
        })
        .collect()
}

/// The plan of its own that was accepted last; a part of its group's is none.
pub(super) fn own(shelf: &Shelf, animal: &AnimalId) -> Option<PlanV1> {
    shelf
        .of_kind(&Kind::Plan)
        .into_iter()
        .filter(|record| record.subject.id() == animal.as_str())
        .find_map(|record| match Body::read(record) {
            Ok(Body::Plan(held)) if !held.is_part() => Some(held),
            _ => None,
        })
}

/// The plan that was accepted last, beside what safety says today. `words` are the records of the vet's words for the
/// animal, in the versions they have.
pub(super) fn accepted(
    shelf: &Shelf,
    animal: &AnimalId,
    held: &PlanV1,
    outcome: &Outcome,
    words: &[(RecordId, Stamp)],
    day: LocalDate,
) -> Accepted {
    let (would_differ, holds) = match outcome {
        Outcome::Allowed(plan) => (differs(plan, held), holds(shelf, plan, held, words)),
        Outcome::Nothing(_) | Outcome::Refused(_) => (true, false),
    };
    let hays = hays(shelf, held);
    let foods = held
        .amounts
        .iter()
        .filter(|amount| amount.lot.is_none())
        .map(|amount| HeldFood {
            name: amount.food.as_ref().and_then(|food| {
                match Body::read(shelf.get(food.as_str())?) {
                    Ok(Body::Food(food)) => Some(food.name.as_str().to_owned()),
                    _ => None,
                }
            }),
            as_fed: amount.as_fed_g.as_fed(),
            feeds: amount.feeds.map(Count::get),
        })
        .collect();
    let mut nets: Vec<HeldNet> = held
        .nets
        .iter()
        .map(|net| HeldNet {
            visit: net.visit,
            as_fed: net.as_fed_g.as_fed(),
            soaked: net.soaked,
        })
        .collect();
    nets.sort_by_key(|net| net.visit);
    Accepted {
        from: held.from,
        review: held.review,
        would_differ,
        differs: differing(shelf, held, outcome),
        level: held.level.part(),
        holds,
        hays,
        foods,
        nets,
        changeovers: of_plan(shelf, animal, held, day),
    }
}

fn differs(plan: &Plan, held: &PlanV1) -> bool {
    PlanV1::of(plan, &[], None).map_or(true, |today| {
        today.amounts != held.amounts
            || today.nets != held.nets
            || today.visits != held.visits
            || today.soaking != held.soaking
    })
}

/// Whether the plan in use may go on beside a plan that safety allows today. A weight that came in is no reason: amounts
/// change at a review (practice section 2).
fn holds(shelf: &Shelf, plan: &Plan, held: &PlanV1, words: &[(RecordId, Stamp)]) -> bool {
    let draft = plan.planned();
    let planned = |lot: &LotId| draft.hays.iter().any(|hay| hay.lot == *lot);
    // A lot that was opened in place of the one it names is weighed out with as much dry matter: the plan goes on.
    let lots = lots(shelf);
    let there = |lot: &LotId| {
        let opened = || instead(&lots, lot, held.from, draft.day);
        planned(lot) || opened().is_some_and(|new| planned(&new.lot))
    };
    let comes = |time: LocalTime| {
        let mut hangings = draft.layout.hangings.iter();
        hangings.any(|hanging| hanging.visit == time)
    };
    let known = |(record, stamp): &(RecordId, Stamp)| {
        let mut inputs = held.inputs.iter();
        inputs.any(|input| input.record == *record && input.stamp == *stamp)
    };
    // A floor is compared as it is stored, in whole hundredths.
    let floor = BodyHundredths::of(draft.allowance.floor);
    let stopped = draft.words.is_empty() && draft.look_over.signs.look_again();
    !stopped
        && floor.is_ok_and(|floor| floor <= held.level)
        && held
            .amounts
            .iter()
            .filter_map(|amount| amount.lot.as_ref())
            .all(there)
        && held.nets.iter().all(|net| comes(net.visit))
        && words.iter().all(known)
}
