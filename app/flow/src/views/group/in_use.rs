//! The plan that was issued last for a group: whether it holds, and whether it was made for those who eat of it.

use super::{Fed, Herd};
use crate::shelf::Shelf;
use crate::views::changeover::lots;
use std::collections::BTreeSet;
use tussock_core::animal::{AnimalId, Group, LotId};
use tussock_core::forage::instead;
use tussock_core::log::bodies::PlanV1;
use tussock_core::log::{Body, Kind, Record, eaters, plan_in_use};
use tussock_core::plan::PlanError;
use tussock_core::round::Subject;
use tussock_core::safety::GroupPlan;
use tussock_core::units::{AsFed, DryMatter, Instant, LocalDate, LocalTime};

/// A member that a later plan of its own feeds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Own {
    /// Who.
    pub animal: AnimalId,
    /// Since when.
    pub since: LocalDate,
}

/// The plan that was issued last for a group.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupInUse {
    /// What it says.
    pub body: PlanV1,
    /// Whether today's plan would hang or feed something else.
    pub would_differ: bool,
    /// Whether it may be fed until its review.
    pub holds: bool,
    /// Who eats of it and was not there when it was made.
    pub joined: Vec<AnimalId>,
    /// For whom it was made and who does not eat of it any more.
    pub left: Vec<AnimalId>,
}

impl GroupInUse {
    /// Its nets, visit by visit, each with the hay before soaking.
    pub fn day(&self) -> Vec<(LocalTime, Vec<AsFed>)> {
        let mut visits: Vec<(LocalTime, Vec<AsFed>)> = Vec::new();
        for net in &self.body.nets {
            let hay = net.as_fed_g.as_fed();
            match visits.iter_mut().find(|(visit, _)| *visit == net.visit) {
                Some((_, nets)) => nets.push(hay),
                None => visits.push((net.visit, vec![hay])),
            }
        }
        visits.sort_by_key(|(visit, _)| *visit);
        visits
    }

    /// The hay of a day, before soaking.
    pub fn hay(&self) -> AsFed {
        self.body.nets.iter().map(|net| net.as_fed_g.as_fed()).sum()
    }

    /// Whether any of it is soaked.
    pub fn soaks(&self) -> bool {
        self.body.nets.iter().any(|net| net.soaked)
    }
}

/// What a group's screen offers.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum GroupOffer {
    /// Use today's plan.
    Use,
    /// Use today's plan although the review of the one in use has not come.
    UseBeforeReview,
    /// Weigh the nets of the plan in use.
    WeighNets,
    /// See what stops a member.
    Member(AnimalId),
    /// Weigh a member.
    Weigh(AnimalId),
    /// Add a hay.
    AddHay,
    /// Open a hay that lacks something.
    OpenHay(LotId),
    /// Say when somebody comes.
    Visits,
}

impl Herd {
    /// The review of the plan in use has come; `false` without one.
    pub fn review_is_due(&self) -> bool {
        let mut in_use = self.in_use.iter();
        in_use.any(|held| held.body.review <= self.today)
    }

    /// The plan in use, where it is the one to follow although today's would differ.
    pub fn follows(&self) -> Option<&GroupInUse> {
        let followed = |held: &&GroupInUse| held.would_differ && held.holds;
        let held = self.in_use.as_ref().filter(followed);
        held.filter(|_| !self.review_is_due())
    }

    /// The action; `None` where nothing is to be done but to say who is in it.
    pub fn first(&self) -> Option<GroupOffer> {
        match &self.fed {
            Fed::Together(_) => Some(match &self.in_use {
                None => GroupOffer::Use,
                Some(_) if self.review_is_due() => GroupOffer::Use,
                Some(held) if !held.would_differ || held.holds => GroupOffer::WeighNets,
                Some(_) => GroupOffer::Use,
            }),
            Fed::Refused(refused) => refused
                .first()
                .map(|refused| GroupOffer::Member(refused.draft.animal.id.clone())),
            Fed::NoDraft(error, whose) => match error {
                PlanError::NoWeight => whose.clone().map(GroupOffer::Weigh),
                PlanError::NoForage | PlanError::PartsDoNotAddUp { .. } => Some(GroupOffer::AddHay),
                PlanError::DryMatterNotKnown { lot } => Some(GroupOffer::OpenHay(lot.clone())),
                PlanError::Day(_) => Some(GroupOffer::Visits),
                PlanError::EmptyGroup
                | PlanError::Assess(_)
                | PlanError::Limits(_)
                | PlanError::OutOfRange(_) => whose.clone().map(GroupOffer::Member),
            },
        }
    }

    /// What is offered quietly beside it: a change before the review.
    pub fn beside(&self) -> Option<GroupOffer> {
        self.follows().map(|_| GroupOffer::UseBeforeReview)
    }
}

/// The plan that was issued last for a group, beside what safety says today.
pub(super) fn in_use(
    shelf: &Shelf,
    group: &Group,
    fed: &Fed,
    now: Instant,
    today: LocalDate,
) -> Option<GroupInUse> {
    let record = shelf.newest(&Kind::Plan, group.id.as_str())?;
    let Ok(Body::Plan(body)) = Body::read(record) else {
        return None;
    };
    let records: Vec<&Record> = shelf.records().collect();
    let eat: BTreeSet<AnimalId> = eaters(&records, group, now, today)
        .into_iter()
        .filter(|animal| shelf.animal(animal).is_some())
        .collect();
    // Whoever joined and left on one day is no member any more, and was reckoned with all the same.
    let made_for: BTreeSet<AnimalId> = body
        .inputs
        .iter()
        .map(|input| AnimalId(input.record.0.clone()))
        .filter(|animal| shelf.animal(animal).is_some())
        .collect();
    let (would_differ, holds) = match fed {
        Fed::Together(plan) => (
            differs(plan, &body),
            made_for == eat && holds(shelf, plan, &body),
        ),
        Fed::Refused(_) | Fed::NoDraft(..) => (true, false),
    };
    Some(GroupInUse {
        would_differ,
        holds,
        joined: eat.difference(&made_for).cloned().collect(),
        left: made_for.difference(&eat).cloned().collect(),
        body,
    })
}

/// Members that a later plan of their own feeds.
pub(super) fn own(records: &[&Record], group: &Group, now: Instant, today: LocalDate) -> Vec<Own> {
    let eat = eaters(records, group, now, today);
    let members = group.on(today).into_iter();
    members
        .filter(|animal| !eat.contains(animal))
        .filter_map(|animal| {
            let subject = Subject::Animal(animal.clone());
            let (_, body) = plan_in_use(records, &subject, now, today)?;
            Some(Own {
                animal: animal.clone(),
                since: body.from,
            })
        })
        .collect()
}

fn differs(plan: &GroupPlan, held: &PlanV1) -> bool {
    PlanV1::of_group(plan, &[], None).map_or(true, |today| {
        today.is_none_or(|today| {
            today.amounts != held.amounts
                || today.nets != held.nets
                || today.visits != held.visits
                || today.soaking != held.soaking
        })
    })
}

/// Whether the plan in use may go on beside a plan that safety allows today: it gives what the floor asks for today, its
/// hays and visits are still there, nothing stops a member, and no vet's word came since it was made.
fn holds(shelf: &Shelf, plan: &GroupPlan, held: &PlanV1) -> bool {
    let draft = plan.planned();
    let Some(day) = draft.members.first().map(|member| member.alone.day) else {
        return false;
    };
    let lots = lots(shelf);
    let planned = |lot: &LotId| draft.hays.iter().any(|hay| hay.lot == *lot);
    let there = |lot: &LotId| {
        let opened = || instead(&lots, lot, held.from, day);
        planned(lot) || opened().is_some_and(|new| planned(&new.lot))
    };
    let comes = |time: LocalTime| {
        let mut hangings = draft.layout.hangings.iter();
        hangings.any(|hanging| hanging.visit == time)
    };
    let stopped = draft.members.iter().any(|member| {
        let alone = &member.alone;
        alone.words.is_empty() && alone.look_over.signs.look_again()
    });
    let theirs = |record: &&Record| {
        record.kind == Kind::VetWord
            && draft
                .members
                .iter()
                .any(|member| member.alone.animal.id.as_str() == record.subject.id())
    };
    let known = |record: &Record| {
        let mut inputs = held.inputs.iter();
        inputs.any(|input| input.record == record.id && input.stamp == record.stamp)
    };
    let forage: DryMatter = held
        .amounts
        .iter()
        .filter(|amount| amount.lot.is_some())
        .map(|amount| amount.dry_matter_g.dry())
        .sum();
    // As it is stored, in whole grams.
    let floor = (draft.floor.to_kg() * 1000.0).floor() / 1000.0;
    !stopped
        && floor <= forage.to_kg()
        && held
            .amounts
            .iter()
            .filter_map(|amount| amount.lot.as_ref())
            .all(there)
        && held.nets.iter().all(|net| comes(net.visit))
        && shelf.records().filter(theirs).all(known)
}
