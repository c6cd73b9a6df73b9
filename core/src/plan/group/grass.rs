//! Grass of a group: all are out together, as long as the member that may be out least.

use super::MemberShare;
use crate::animal::{AnimalId, RiskFactor};
use crate::graze::intake::Shortened;
use crate::limits::Ends;
use crate::plan::{Draft, GrassLine, Grazing, PlanFor};
use crate::units::{DryMatter, Span};

/// A day with grass for all of a group.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupGrassDay {
    /// How long all are out; nothing when one of them has no room for it.
    pub time: Span,
    /// Whose plan allows that least; `None` where all may be out as long as was asked for.
    pub set_by: Option<AnimalId>,
    /// Why it is shorter than what was asked for, for that member.
    pub shortened: Vec<Shortened>,
    /// Dry matter of grass that all of them eat.
    pub grass: Ends<DryMatter>,
    /// The hay that may hang less on such a day.
    pub hay_less: DryMatter,
}

/// Grass in the plan of a group.
#[derive(Clone, Debug, PartialEq)]
pub enum GroupGrass {
    /// None, for a member may have none.
    None {
        /// Who.
        animal: AnimalId,
        /// The facts that close it.
        why: Vec<RiskFactor>,
    },
    /// Not counted: nobody decided on turnout.
    NotCounted,
    /// Counted.
    Counted(GroupGrassDay),
}

/// What each goes out for: all as long as the one that may be out least. `None` where that changes nothing.
pub(super) fn out_together(
    members: &[PlanFor<'_>],
    asked: &[Draft],
) -> Option<Vec<Option<Grazing>>> {
    let time = time_for_all(asked)?;
    let for_all = |grazing: &Grazing| Grazing {
        time,
        ..grazing.clone()
    };
    let shorter = |member: &PlanFor<'_>| member.grazing.is_some_and(|own| own.time != time);
    members.iter().any(shorter).then(|| {
        let all = members.iter();
        all.map(|member| member.grazing.map(for_all)).collect()
    })
}

/// The time that all can be out, where every member's grass is counted.
fn time_for_all(members: &[Draft]) -> Option<Span> {
    members
        .iter()
        .map(|member| match &member.grass {
            GrassLine::Counted(day) => Some(day.room.time),
            GrassLine::None { .. } | GrassLine::NotCounted => None,
        })
        .reduce(|all, one| Some(all?.min(one?)))
        .flatten()
}

/// The grass of a group, from its members as each would be for that time. `alone` are the same with the time asked for.
pub(super) fn of_all(members: &[MemberShare], alone: &[Draft]) -> GroupGrass {
    let closed = members.iter().find_map(|member| match &member.alone.grass {
        GrassLine::None { why } => Some((member.alone.animal.id.clone(), why.clone())),
        GrassLine::NotCounted | GrassLine::Counted(_) => None,
    });
    if let Some((animal, why)) = closed {
        return GroupGrass::None { animal, why };
    }
    // One that stays out of the reckoning keeps all of it out: what hangs is for all of them.
    let counted = |member: &MemberShare| matches!(member.alone.grass, GrassLine::Counted(_));
    if !members.iter().all(counted) {
        return GroupGrass::NotCounted;
    }
    let shortest = alone
        .iter()
        .filter_map(|member| match &member.grass {
            GrassLine::Counted(day) => Some((&member.animal.id, day)),
            GrassLine::None { .. } | GrassLine::NotCounted => None,
        })
        .min_by_key(|(_, day)| day.room.time);
    let Some((animal, shortest)) = shortest else {
        return GroupGrass::NotCounted;
    };
    let room = &shortest.room;
    let nothing = || Ends::exactly(DryMatter::ZERO);
    let (grass, hay_less) = members
        .iter()
        .filter_map(|member| match &member.alone.grass {
            GrassLine::Counted(day) => Some(&day.room),
            GrassLine::None { .. } | GrassLine::NotCounted => None,
        })
        .fold((nothing(), DryMatter::ZERO), |(grass, less), room| {
            (grass.with(room.grass, |a, b| a + b), less + room.hay_less)
        });
    GroupGrass::Counted(GroupGrassDay {
        time: room.time,
        set_by: (!room.shortened.is_empty()).then(|| animal.clone()),
        shortened: room.shortened.clone(),
        grass,
        hay_less,
    })
}
