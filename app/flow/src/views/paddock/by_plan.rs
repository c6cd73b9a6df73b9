//! What the plan of today says of grass.

use super::asked::Grass;
use super::who::Who;
use crate::forms::start::Visits;
use tussock_core::graze::intake::Shortened;
use tussock_core::log::bodies::GrazingV1;
use tussock_core::log::{Gathered, GatheredGroup, Wish, gather_group};
use tussock_core::plan::{GrassLine, GroupGrass};
use tussock_core::units::{Span, Zone};

/// What the plan of today says of grass.
#[derive(Clone, Debug, PartialEq)]
pub enum ByPlan {
    /// There is no plan to say anything.
    NoPlan,
    /// Nobody decided how it goes out, and it is at risk: its plan has no grass.
    NotDecided,
    /// Nobody decided how it goes out: what it eats there comes on top.
    NotCounted,
    /// A sign, lameness, an episode or a missing vet's word closes it.
    Stopped,
    /// It can be out so long a day.
    Carries {
        /// The time; nothing where there is no room.
        time: Span,
        /// What was asked for.
        asked: Span,
        /// Why it is shorter.
        shortened: Vec<Shortened>,
    },
}

impl ByPlan {
    /// The time a day, where the plan gives one.
    pub const fn time(&self) -> Option<Span> {
        match self {
            Self::Carries { time, .. } => Some(*time),
            Self::NoPlan | Self::NotDecided | Self::NotCounted | Self::Stopped => None,
        }
    }
}

fn by_plan(of: &Gathered) -> ByPlan {
    match of.draft().map(|draft| draft.grass) {
        Err(_) => ByPlan::NoPlan,
        Ok(GrassLine::None { why }) if why.is_empty() => ByPlan::Stopped,
        Ok(GrassLine::None { .. }) => ByPlan::NotDecided,
        Ok(GrassLine::NotCounted) => ByPlan::NotCounted,
        Ok(GrassLine::Counted(day)) => ByPlan::Carries {
            time: day.room.time,
            asked: day.room.asked,
            shortened: day.room.shortened,
        },
    }
}

fn by_group_plan(of: &GatheredGroup, decided: Option<&GrazingV1>) -> ByPlan {
    match of.draft().map(|draft| draft.grass) {
        Err(_) => ByPlan::NoPlan,
        Ok(GroupGrass::None { why, .. }) if why.is_empty() => ByPlan::Stopped,
        Ok(GroupGrass::None { .. }) => ByPlan::NotDecided,
        Ok(GroupGrass::NotCounted) => ByPlan::NotCounted,
        Ok(GroupGrass::Counted(day)) => ByPlan::Carries {
            time: day.time,
            asked: decided.map_or(day.time, |decided| decided.minutes.time()),
            shortened: day.shortened,
        },
    }
}

/// With the usual visits where nobody said when somebody comes.
pub(super) fn with_visits(mut of: Gathered) -> Gathered {
    if of.visits.is_empty() {
        // Of the usual habits the one with the longest wait, so that nothing is made to look better than it is.
        of.visits = Visits::Two.times();
    }
    of
}

/// As it goes out really: with a muzzle, or without one.
pub(super) fn muzzled(mut of: Gathered, muzzle: Option<bool>) -> Gathered {
    if let (Some(grazing), Some(muzzle)) = (&mut of.grazing, muzzle) {
        grazing.muzzle = muzzle;
    }
    of
}

/// What the plan of an animal or of a group says, with the muzzle that it really wears where that is known.
pub(super) fn plan_of(
    grass: &Grass<'_, impl Zone>,
    who: &Who,
    members: &[Gathered],
    (decided, muzzle): (Option<&GrazingV1>, Option<bool>),
) -> ByPlan {
    if let (false, Some(one)) = (who.group, members.first()) {
        return by_plan(one);
    }
    let groups = grass.shelf.groups();
    let found = groups
        .iter()
        .find(|group| group.id.as_str() == who.about.id());
    found.map_or(ByPlan::NoPlan, |group| {
        let wish = Wish::default();
        let mut of = gather_group(grass.records, group, grass.now, grass.zone, &wish);
        of.members = of
            .members
            .into_iter()
            .map(|one| muzzled(with_visits(one), muzzle))
            .collect();
        by_group_plan(&of, decided)
    })
}
