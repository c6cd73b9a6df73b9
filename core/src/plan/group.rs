//! Animals on one hay.
//!
//! The group's ration is what is offered to all; a member's share is a band: by weight, times 0.7 to 1.4 (ours). The most
//! at-risk member sets hay, grass and soaking; the thinnest or shyest the floor; there is one more feeding place than
//! animals.

use super::build::draft;
use super::draft::Draft;
use super::error::PlanError;
use super::input::PlanFor;
use super::published::{SHARE_LEAST, SHARE_MOST};
use crate::animal::{AnimalId, Goal, GroupId, RiskLevel};
use crate::day::{in_nets, places};
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{AsFed, DryMatter, LocalTime, PartOfBody};
use std::collections::BTreeMap;

/// A group and its members, each as for a plan of its own on the same hays, visits and nets.
#[derive(Clone, Debug)]
pub struct GroupFor<'a> {
    /// The group.
    pub group: GroupId,
    /// Its name.
    pub name: String,
    /// Its members on the day.
    pub members: Vec<PlanFor<'a>>,
}

/// What a member likely gets of what is offered.
#[derive(Clone, Debug, PartialEq)]
pub struct MemberShare {
    /// Its draft as if it were fed alone, under the group's sugar rules.
    pub alone: Draft,
    /// Dry matter it likely gets, with the ends of what it may get.
    pub share: Ends<DryMatter>,
    /// The same as a part of its weight.
    pub level: Ends<PartOfBody>,
}

/// Why two animals need separating at hay time.
#[derive(Clone, Debug, PartialEq)]
pub enum Separate {
    /// The first may push the second off: at the least it would get under its floor.
    UnderFloor {
        /// Who would get too little.
        animal: AnimalId,
        /// The least it may get.
        least: PartOfBody,
        /// Its floor.
        floor: PartOfBody,
    },
    /// One must lose and another gain: one hay pile cannot do both.
    GoalsApart {
        /// Who must lose.
        loses: AnimalId,
        /// Who must gain.
        gains: AnimalId,
    },
    /// An animal that must not be restricted stands with one that is.
    NotWithRestricted {
        /// Who must not be restricted.
        animal: AnimalId,
        /// Who is.
        restricted: AnimalId,
    },
}

/// A group's plan that safety has not judged.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupDraft {
    /// The group.
    pub group: GroupId,
    /// Its name.
    pub name: String,
    /// Its members, in their order.
    pub members: Vec<MemberShare>,
    /// Forage offered to all a day, likely dry matter.
    pub forage: DryMatter,
    /// Feeding places: one more than animals.
    pub places: usize,
    /// How sugar is treated for all: as for the most at-risk member.
    pub risk: RiskLevel,
    /// Who sets that.
    pub strictest: AnimalId,
    /// Who needs separating at hay time, and why.
    pub separate: Vec<Separate>,
    /// Where it comes from.
    pub from: Provenance,
}

/// The nets that hang for a group at a visit.
#[derive(Clone, Debug, PartialEq)]
pub struct GroupVisit {
    /// The visit.
    pub visit: LocalTime,
    /// The hay of each net, before soaking: one at every feeding place, none where nothing hangs.
    pub nets: Vec<AsFed>,
}

impl GroupDraft {
    /// The group's day: what would hang for each animal alone hangs together, shared over as many nets as there are
    /// feeding places.
    pub fn day(&self) -> Vec<GroupVisit> {
        let mut visits: BTreeMap<LocalTime, AsFed> = BTreeMap::new();
        for hanging in self
            .members
            .iter()
            .flat_map(|member| &member.alone.layout.hangings)
        {
            let all = visits.entry(hanging.visit).or_insert(AsFed::ZERO);
            *all = *all + hanging.as_fed;
        }
        visits
            .into_iter()
            .map(|(visit, all)| GroupVisit {
                visit,
                nets: in_nets(all, None, self.places),
            })
            .collect()
    }
}

/// How strict a level is.
const fn strictness(level: RiskLevel) -> u8 {
    match level {
        RiskLevel::Clear => 0,
        RiskLevel::NotKnown => 1,
        RiskLevel::AtRisk => 2,
        // numeric: ranks of an order
        RiskLevel::Proven => 3,
    }
}

/// Makes a draft for a group.
///
/// Every member is drafted with the health of the most at-risk member deciding sugar: where one must have its hay soaked,
/// all get it soaked. What is offered is the sum of what each would get alone, raised where the least that a member may
/// get would be under its floor even so; if that happens, the two also need separating.
///
/// # Errors
/// No member, or a member's own error.
pub fn group(of: &GroupFor<'_>) -> Result<GroupDraft, PlanError> {
    let alone: Vec<Draft> = of.members.iter().map(draft).collect::<Result<_, _>>()?;
    let strictest = alone
        .iter()
        .max_by_key(|member| strictness(member.risk.level))
        .ok_or(PlanError::EmptyGroup)?;
    let members: Vec<Draft> = of
        .members
        .iter()
        .map(|member| {
            draft(&PlanFor {
                strictest: Some(&strictest.risk),
                ..member.clone()
            })
        })
        .collect::<Result<_, _>>()?;
    let forage: DryMatter = members.iter().map(forage_of).sum();
    let bodies: f64 = members
        .iter()
        .map(|member| member.weight.value.to_kg())
        .sum();
    let shares: Vec<MemberShare> = members
        .into_iter()
        .map(|alone| {
            let likely = forage * (alone.weight.value.to_kg() / bodies);
            let bought = alone.dry_matter - forage_of(&alone);
            let share = Ends::new(likely * *SHARE_LEAST, likely, likely * *SHARE_MOST)
                .map(|dry| dry + bought);
            let level = share.map(|dry| dry.part_of(alone.weight.value));
            MemberShare {
                alone,
                share,
                level,
            }
        })
        .collect();
    Ok(GroupDraft {
        group: of.group.clone(),
        name: of.name.clone(),
        places: places(shares.len()),
        risk: strictest.risk.level,
        strictest: strictest.animal.id.clone(),
        separate: separate(&shares),
        members: shares,
        forage,
        from: Provenance::new()
            .constant(&SHARE_LEAST)
            .constant(&SHARE_MOST),
    })
}

fn forage_of(member: &Draft) -> DryMatter {
    member.hays.iter().map(|hay| hay.eaten).sum()
}

fn separate(members: &[MemberShare]) -> Vec<Separate> {
    let mut found = Vec::new();
    for member in members {
        let floor = member.alone.allowance.floor;
        if member.level.least < floor {
            found.push(Separate::UnderFloor {
                animal: member.alone.animal.id.clone(),
                least: member.level.least,
                floor,
            });
        }
    }
    for one in members {
        for other in members {
            let (first, second) = (&one.alone, &other.alone);
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
