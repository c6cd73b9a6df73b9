//! What a plan can carry of a turnout that is not yet decided on.

use super::{Whose, decided, decisions};
use crate::forms::start::Visits;
use crate::shelf::Shelf;
use tussock_core::animal::{AnimalId, GroupId, RiskFactor};
use tussock_core::graze::intake::{GrassRoom, Shortened};
use tussock_core::limits::Ends;
use tussock_core::log::bodies::GrazingV1;
use tussock_core::log::{Gathered, Record, Wish, gather, gather_group, grazing_by};
use tussock_core::plan::{GrassLine, Grazing, GroupGrass, PlanError};
use tussock_core::safety::{
    GroupVerdict, Refusal, Refused, SafetyVerdict, VetUrgency, judge, judge_group,
};
use tussock_core::units::{DryMatter, Instant, Span, Zone};

/// What a plan can carry.
#[derive(Clone, Debug, PartialEq)]
pub enum Carried {
    /// Nothing can be reckoned.
    NoPlan {
        /// Why.
        error: PlanError,
        /// For which member of a group.
        of: Option<String>,
    },
    /// Safety refuses a plan, with grass or without.
    Refused {
        /// Whose.
        of: String,
        /// Why, the most urgent first.
        why: Vec<Refusal>,
        /// How soon the vet is rung, when it is for the vet.
        vet: Option<VetUrgency>,
    },
    /// Its plan has no grass: a sign, lameness, an episode or a recovery stops it, or the facts do.
    Closed {
        /// Whose.
        of: String,
        /// The animal of the vet's word that would open it.
        animal: AnimalId,
        /// The facts, where they close it.
        why: Vec<RiskFactor>,
    },
    /// The plan has no room for grass.
    NoRoom {
        /// Whose.
        of: String,
        /// What was asked for.
        asked: Span,
        /// Why; empty where what was asked for is too short.
        why: Vec<Shortened>,
    },
    /// One of the group stays in by a decision of its own, so that grass of the group is not counted.
    OneStaysIn,
    /// So much.
    Open(Box<Open>),
}

/// A time at grass that a plan can carry.
#[derive(Clone, Debug, PartialEq)]
pub struct Open {
    /// What was asked for.
    pub asked: Span,
    /// What the plan carries.
    pub time: Span,
    /// Why that is shorter.
    pub why: Vec<Shortened>,
    /// Whose plan allows that least, in a group.
    pub set_by: Option<String>,
    /// Dry matter of grass, with its ends; of all of a group.
    pub grass: Ends<DryMatter>,
    /// The hay that hangs less on such a day.
    pub hay_less: DryMatter,
    /// With a muzzle.
    pub muzzle: bool,
}

/// What the plan of an animal or a group can carry of a decision; `None` when it is not there.
pub fn carried(
    shelf: &Shelf,
    whose: &Whose,
    asked: &GrazingV1,
    now: Instant,
    zone: &impl Zone,
) -> Option<Carried> {
    let records: Vec<&Record> = shelf.records().collect();
    let grazing = grazing_by(&records, asked, now, zone);
    match whose {
        Whose::Animal(id) => {
            let gathered = gather(&records, id, now, zone, &Wish::default())?;
            Some(of_animal(gathered, grazing))
        }
        Whose::Group(id) => of_group(shelf, &records, id, &grazing, now, zone),
    }
}

/// As it would be on this turnout, with visits that stand in where nobody said when somebody comes.
fn on_turnout(gathered: Gathered, grazing: Grazing) -> Gathered {
    Gathered {
        visits: if gathered.visits.is_empty() {
            Visits::Two.times()
        } else {
            gathered.visits
        },
        grazing: Some(grazing),
        ..gathered
    }
}

fn of_animal(gathered: Gathered, grazing: Grazing) -> Carried {
    let muzzle = grazing.muzzle;
    let gathered = on_turnout(gathered, grazing);
    let of = gathered.animal.name.clone();
    let draft = match gathered.draft() {
        Ok(draft) => draft,
        Err(error) => return Carried::NoPlan { error, of: None },
    };
    match judge(draft) {
        SafetyVerdict::Refused(refused) => refused_of(refused),
        SafetyVerdict::Allowed(plan) => match &plan.planned().grass {
            GrassLine::None { why } => Carried::Closed {
                of,
                animal: gathered.animal.id,
                why: why.clone(),
            },
            GrassLine::NotCounted => Carried::OneStaysIn,
            GrassLine::Counted(day) => open(of, &day.room, muzzle),
        },
    }
}

fn open(of: String, room: &GrassRoom, muzzle: bool) -> Carried {
    if room.time <= Span::ZERO {
        return Carried::NoRoom {
            of,
            asked: room.asked,
            why: room.shortened.clone(),
        };
    }
    Carried::Open(Box::new(Open {
        asked: room.asked,
        time: room.time,
        why: room.shortened.clone(),
        set_by: None,
        grass: room.grass,
        hay_less: room.hay_less,
        muzzle,
    }))
}

fn refused_of(refused: Refused) -> Carried {
    Carried::Refused {
        of: refused.draft.animal.name.clone(),
        why: refused.why,
        vet: refused.vet,
    }
}

fn of_group(
    shelf: &Shelf,
    records: &[&Record],
    id: &GroupId,
    grazing: &Grazing,
    now: Instant,
    zone: &impl Zone,
) -> Option<Carried> {
    let group = shelf.group(id)?;
    let today = zone.to_local(now).date;
    let name = |animal: &AnimalId| {
        shelf
            .animal(animal)
            .map_or_else(|| animal.0.clone(), |animal| animal.name)
    };
    let mut gathered = gather_group(records, &group, now, zone, &Wish::default());
    let decisions = decisions(shelf);
    gathered.members = gathered
        .members
        .into_iter()
        .map(|member| {
            // A decision of its own holds in the group too.
            let own = decided(&decisions, member.animal.id.as_str(), today).is_some();
            let kept = member.grazing.clone();
            let member = on_turnout(member, grazing.clone());
            Gathered {
                grazing: if own { kept } else { member.grazing },
                ..member
            }
        })
        .collect();
    let draft = match gathered.draft() {
        Ok(draft) => draft,
        Err(no) => {
            return Some(Carried::NoPlan {
                error: no.error,
                of: no.animal.as_ref().map(name),
            });
        }
    };
    let plan = match judge_group(draft) {
        GroupVerdict::Refused(refused) => return refused.into_iter().next().map(refused_of),
        GroupVerdict::Allowed(plan) => plan,
    };
    Some(match &plan.planned().grass {
        GroupGrass::None { animal, why } => Carried::Closed {
            of: name(animal),
            animal: animal.clone(),
            why: why.clone(),
        },
        GroupGrass::NotCounted => Carried::OneStaysIn,
        GroupGrass::Counted(day) if day.time <= Span::ZERO => Carried::NoRoom {
            of: day.set_by.as_ref().map_or_else(|| group.name.clone(), name),
            asked: grazing.time,
            why: day.shortened.clone(),
        },
        GroupGrass::Counted(day) => Carried::Open(Box::new(Open {
            asked: grazing.time,
            time: day.time,
            why: day.shortened.clone(),
            set_by: day.set_by.as_ref().map(name),
            grass: day.grass,
            hay_less: day.hay_less,
            muzzle: grazing.muzzle,
        })),
    })
}
