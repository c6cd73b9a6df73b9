//! What each member gets of what is offered to all, the floor that it sets, and who needs separating.

use super::{GroupHay, MemberShare, Separate, bought};
use crate::animal::{AnimalId, Goal, VetPermit};
use crate::forage::Fed;
use crate::limits::Ends;
use crate::plan::Draft;
use crate::plan::published::{SHARE_LEAST, SHARE_MOST};
use crate::units::{DryMatter, PartOfBody};

/// The hays of all of them, each once: what each would get alone of it, added up.
pub(super) fn pile(members: &[Draft]) -> Vec<GroupHay> {
    let mut pile: Vec<GroupHay> = Vec::new();
    for line in members.iter().flat_map(|member| &member.hays) {
        let soaked = line.fed == Fed::Soaked;
        let same = |held: &&mut GroupHay| held.lot == line.lot && held.soaked == soaked;
        match pile.iter_mut().find(same) {
            Some(held) => {
                held.eaten = held.eaten + line.eaten;
                held.weigh_out = held.weigh_out + line.weigh_out;
            }
            None => pile.push(GroupHay {
                lot: line.lot.clone(),
                name: line.name.clone(),
                soaked,
                eaten: line.eaten,
                weigh_out: line.weigh_out,
            }),
        }
    }
    pile
}

/// The part that each gets of what is offered to all, by weight, and the least and most of that part.
fn parts(members: &[Draft]) -> Vec<Ends<f64>> {
    let weigh = |member: &Draft| member.weight.value.to_kg();
    let all: f64 = members.iter().map(weigh).sum();
    members
        .iter()
        .map(|member| share_of(weigh(member) / all, members.len()))
        .collect()
}

/// The ends of a part by weight: nobody shares with one that stands alone.
pub(crate) fn share_of(likely: f64, animals: usize) -> Ends<f64> {
    if animals <= 1 {
        return Ends::exactly(1.0);
    }
    Ends::new(
        likely * *SHARE_LEAST,
        likely,
        (likely * *SHARE_MOST).min(1.0),
    )
}

pub(super) fn shares(members: Vec<Draft>, forage: DryMatter) -> Vec<MemberShare> {
    let parts = parts(&members);
    members
        .into_iter()
        .zip(parts)
        .map(|(alone, part)| {
            let bought = bought(&alone);
            let share = part.map(|part| forage * part + bought);
            MemberShare {
                level: share.map(|dry| dry.part_of(alone.weight.value)),
                share,
                alone,
            }
        })
        .collect()
}

/// What the neediest member asks for.
pub(super) struct Floor {
    /// Who.
    pub(super) animal: AnimalId,
    /// The forage for all.
    pub(super) forage: DryMatter,
}

/// The forage for all that the neediest member asks for: so much that the least it may get keeps its floor, and that it
/// likely gets what it must not be kept under. `None` without a member.
pub(super) fn floor(members: &[Draft]) -> Option<Floor> {
    members
        .iter()
        .zip(parts(members))
        .map(|(member, part)| {
            let bought = bought(member);
            let wanted = |dry: DryMatter, part: f64| (dry - bought) * (1.0 / part);
            let least = wanted(member.allowance.floor.of(member.weight.value), part.least);
            let likely = wanted(not_under(member), part.likely);
            Floor {
                animal: member.animal.id.clone(),
                forage: least.max(likely),
            }
        })
        .max_by(|a, b| a.forage.to_kg().total_cmp(&b.forage.to_kg()))
}

/// What a member must likely get: what it would get alone where that is not to be cut, else the lowest it may have
/// without a vet's word, or with one.
fn not_under(member: &Draft) -> DryMatter {
    let allowance = &member.allowance;
    let may_be_cut = member.vet_list.is_empty() && member.raised.is_empty();
    if !may_be_cut {
        return member.dry_matter;
    }
    let lowest = lowest_allowed(member).of(allowance.weight.likely);
    if lowest < member.dry_matter {
        lowest
    } else {
        member.dry_matter
    }
}

/// The lowest level that is allowed: a vet's where one gave a word, else the lowest without one.
pub(crate) fn lowest_allowed(draft: &Draft) -> PartOfBody {
    let allowance = &draft.allowance;
    let lower = |a: PartOfBody, b: PartOfBody| if b < a { b } else { a };
    let allowed = draft
        .words
        .iter()
        .filter_map(|word| match word.permit {
            VetPermit::LowestLevel(level) => Some(level),
            VetPermit::Work | VetPermit::ReturnToGrass => None,
        })
        .fold(allowance.without_vet_floor, lower);
    if allowed < allowance.floor {
        allowance.floor
    } else {
        allowed
    }
}

/// Who needs separating when `forage` is offered to all: the sum of what each would get alone.
pub(super) fn separate(members: &[Draft], forage: DryMatter) -> Vec<Separate> {
    let mut found = Vec::new();
    for (member, part) in members.iter().zip(parts(members)) {
        let floor = member.allowance.floor;
        let least = (forage * part.least + bought(member)).part_of(member.weight.value);
        if least < floor {
            found.push(Separate::UnderFloor {
                animal: member.animal.id.clone(),
                least,
                floor,
            });
        }
    }
    for first in members {
        for second in members {
            if first.animal.goal == Goal::Lose && second.animal.goal == Goal::Gain {
                found.push(Separate::GoalsApart {
                    loses: first.animal.id.clone(),
                    gains: second.animal.id.clone(),
                });
            }
            if first.allowance.is_restriction()
                && !second.vet_list.is_empty()
                && first.animal.id != second.animal.id
            {
                found.push(Separate::NotWithRestricted {
                    animal: second.animal.id.clone(),
                    restricted: first.animal.id.clone(),
                });
            }
        }
    }
    found
}
