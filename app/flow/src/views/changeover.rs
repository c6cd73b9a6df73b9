//! A lot opened in place of another: what the plan and the net say of it, and the other lots that could be opened.

use crate::shelf::Shelf;
use crate::views::hay::strictest_of;
use crate::views::round::Today;
use crate::views::stock::eaters;
use tussock_core::animal::{AnimalId, LotId, RiskLevel};
use tussock_core::forage::{
    Fed, Instead, Lot, NotInPlace, Verdict, estimate, instead, judge, may_stand_in,
};
use tussock_core::limits::published::{STRAW_CHANGEOVER_BETTER, STRAW_CHANGEOVER_LEAST};
use tussock_core::limits::sugar_limits;
use tussock_core::log::bodies::{LotV1, PlanV1};
use tussock_core::log::{Body, Kind};
use tussock_core::round::Subject;
use tussock_core::sources::RecordId;
use tussock_core::units::LocalDate;

/// What the sugar of a lot is, for those who eat it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ForThem {
    /// The strictest risk among them.
    pub risk: RiskLevel,
    /// The verdict; `None` where no rule asks for one.
    pub verdict: Option<Verdict>,
    /// A laboratory reported on it as it comes.
    pub tested: bool,
}

impl ForThem {
    /// Whether it must be said where the decision is taken: sugar is a danger to one of them, and the lot is not within
    /// its limit.
    pub fn warns(&self) -> bool {
        self.risk.restricts_sugar() && self.verdict.is_some_and(|verdict| !verdict.is_within())
    }
}

/// A lot that stands in for one that a plan names.
#[derive(Clone, Debug, PartialEq)]
pub struct Changeover {
    /// The lot that is weighed out.
    pub lot: LotId,
    /// Its name.
    pub name: String,
    /// The name of the lot that the plan names.
    pub in_place_of: String,
    /// Since when.
    pub since: LocalDate,
    /// Over how many days feed is changed, at least and better.
    pub days: [i64; 2],
    /// Its sugar, for those who eat it.
    pub sugar: ForThem,
}

/// What stands in for the lots that the plan of a subject names.
pub fn changeovers(shelf: &Shelf, today: &Today, id: &str) -> Vec<Changeover> {
    today
        .due
        .instead
        .iter()
        .filter(|(subject, _)| subject.parts().1 == id)
        .filter_map(|(_, instead)| {
            let risk = risk_of_eaters(shelf, today, &instead.lot);
            changeover(shelf, instead, risk)
        })
        .collect()
}

/// The same for a plan as it was issued, for one animal.
pub fn of_plan(shelf: &Shelf, animal: &AnimalId, held: &PlanV1, day: LocalDate) -> Vec<Changeover> {
    let lots = lots(shelf);
    let risk = strictest_of(shelf, |id| id == animal);
    let mut named: Vec<&LotId> = held
        .amounts
        .iter()
        .filter_map(|amount| amount.lot.as_ref())
        .collect();
    named.dedup();
    named
        .into_iter()
        .filter_map(|lot| changeover(shelf, &instead(&lots, lot, held.from, day)?, risk))
        .collect()
}

fn changeover(shelf: &Shelf, instead: &Instead, risk: RiskLevel) -> Option<Changeover> {
    let (lot, _) = body(shelf, &instead.lot)?.lot(&record(&instead.lot)).ok()?;
    Some(Changeover {
        name: lot.name.clone(),
        in_place_of: shelf
            .lot_name(&instead.of)
            .unwrap_or_else(|| instead.of.0.clone()),
        since: instead.since,
        days: [*STRAW_CHANGEOVER_LEAST, *STRAW_CHANGEOVER_BETTER],
        sugar: for_risk(&lot, risk),
        lot: instead.lot.clone(),
    })
}

/// The lots that can be read.
pub fn lots(shelf: &Shelf) -> Vec<Lot> {
    shelf
        .bodies(&Kind::Lot)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::Lot(body) => Some(body.lot(&record.id).ok()?.0),
            _ => None,
        })
        .collect()
}

/// Another lot, as it is offered to be opened.
#[derive(Clone, Debug, PartialEq)]
pub struct Other {
    /// Which.
    pub id: LotId,
    /// Its name.
    pub name: String,
    /// Whether it can be opened without a new plan.
    pub may: Result<(), NotInPlace>,
    /// Its sugar, for those who would eat it.
    pub sugar: ForThem,
}

/// The lot that the plan of a subject names where another is weighed out now.
pub fn planned<'a>(today: &'a Today, id: &str, now: &'a LotId) -> &'a LotId {
    let mut instead = today.due.instead.iter();
    instead
        .find(|(subject, instead)| subject.parts().1 == id && instead.lot == *now)
        .map_or(now, |(_, instead)| &instead.of)
}

/// The lots that one stands in for in the plan of a subject: a net that was filled from them before is filled.
pub fn stands_for<'a>(
    today: &'a Today,
    subject: &'a Subject,
    lot: &'a LotId,
) -> impl Iterator<Item = &'a Instead> {
    let all = today.due.instead.iter();
    all.filter(move |(of, instead)| of == subject && instead.lot == *lot)
        .map(|(_, instead)| instead)
}

/// The other lots, by name: what one tap would open in place of the one that is weighed out now.
pub fn others(shelf: &Shelf, today: &Today, id: &str, now: &LotId) -> Vec<Other> {
    let named = planned(today, id, now);
    let Some((old, _)) = body(shelf, named).and_then(|old| old.lot(&record(named)).ok()) else {
        return Vec::new();
    };
    let risk = risk_of_eaters(shelf, today, now);
    let mut found: Vec<Other> = lots(shelf)
        .into_iter()
        .filter(|lot| lot.id != *now)
        .map(|lot| Other {
            // Back to the lot that the plan names is always open.
            may: if lot.id == old.id {
                Ok(())
            } else {
                may_stand_in(&old, &lot).map(|_| ())
            },
            sugar: for_risk(&lot, risk),
            id: lot.id,
            name: lot.name,
        })
        .collect();
    found.sort_by(|a, b| (a.name.to_lowercase(), &a.id).cmp(&(b.name.to_lowercase(), &b.id)));
    found
}

/// The strictest risk of all whose plans feed a lot: opening another changes the hay of all of them.
fn risk_of_eaters(shelf: &Shelf, today: &Today, lot: &LotId) -> RiskLevel {
    let them: Vec<AnimalId> = eaters(today, lot)
        .iter()
        .flat_map(|eater| animals(shelf, &eater.subject, today.day))
        .collect();
    strictest_of(shelf, |animal| them.contains(animal))
}

fn for_risk(lot: &Lot, risk: RiskLevel) -> ForThem {
    let verdict = sugar_limits(risk).map(|limits| judge(&estimate(lot, Fed::Dry), &limits).verdict);
    ForThem {
        risk,
        verdict,
        tested: lot.report(Fed::Dry).is_some(),
    }
}

/// The animals that a plan feeds.
pub fn animals(shelf: &Shelf, subject: &Subject, day: LocalDate) -> Vec<AnimalId> {
    match subject {
        Subject::Animal(id) => vec![id.clone()],
        Subject::Group(id) => shelf
            .group(id)
            .map(|group| group.on(day).into_iter().cloned().collect())
            .unwrap_or_default(),
        Subject::Yard(_) => Vec::new(),
    }
}

fn record(lot: &LotId) -> RecordId {
    RecordId(lot.0.clone())
}

/// What is stored of a lot; `None` when it is not there.
pub fn body(shelf: &Shelf, lot: &LotId) -> Option<LotV1> {
    let record = shelf.get(lot.as_str()).filter(|record| !record.gone)?;
    match Body::read(record) {
        Ok(Body::Lot(body)) => Some(body),
        _ => None,
    }
}
