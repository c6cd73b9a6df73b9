//! Who goes out to grass, and what their plans say of it.

use crate::shelf::Shelf;
use crate::views::grazing::{decided, decisions};
use crate::views::group::{Fed, herd};
use crate::views::plan::{Outcome, plan};
use std::collections::BTreeSet;
use tussock_core::animal::{Animal, AnimalId, GroupId, PaddockId};
use tussock_core::graze::strip::recent_case;
use tussock_core::limits::Ends;
use tussock_core::log::bodies::GrazingV1;
use tussock_core::plan::{GrassLine, GroupGrass};
use tussock_core::units::{DryMatter, Instant, Span, Zone};

/// What the plan of one that goes out says of grass.
#[derive(Clone, Debug, PartialEq)]
pub enum Eats {
    /// So much in a day, with both ends.
    Grass {
        /// Dry matter of grass in the time the plan has room for.
        grass: Ends<DryMatter>,
        /// The hay that hangs less for it.
        hay_less: DryMatter,
    },
    /// Its plan has no room for grass.
    NoRoom,
    /// Its plan says no grass.
    NoGrass,
    /// There is no plan that counts it.
    NoPlan,
}

/// One that goes out: an animal, or a group.
#[derive(Clone, Debug, PartialEq)]
pub struct Out {
    /// Its id, which is also what its record is about.
    pub id: String,
    /// Its name.
    pub name: String,
    /// Onto which paddock; `None` where paddocks are not told apart.
    pub paddock: Option<PaddockId>,
    /// How many animals.
    pub animals: usize,
    /// What its plan says.
    pub eats: Eats,
    /// Whether any of them is, or lately was, a case of laminitis.
    pub recent_case: bool,
}

impl Out {
    /// The most of grass its plan carries; `None` where no plan counts any.
    pub fn most(&self) -> Option<DryMatter> {
        match &self.eats {
            Eats::Grass { grass, .. } => Some(grass.most),
            Eats::NoRoom | Eats::NoGrass | Eats::NoPlan => None,
        }
    }
}

/// Everybody who goes out to grass today, by what somebody decided: groups first, then animals by themselves.
pub fn grazers(shelf: &Shelf, now: Instant, zone: &impl Zone) -> Vec<Out> {
    let day = zone.to_local(now).date;
    let animals = shelf.animals();
    let decisions = decisions(shelf);
    let own: Vec<(&Animal, &GrazingV1)> = animals
        .iter()
        .filter_map(|animal| Some((animal, decided(&decisions, animal.id.as_str(), day)?)))
        .collect();
    // Who has a decision of its own goes by that, in a group too.
    let apart: BTreeSet<&AnimalId> = own.iter().map(|(animal, _)| &animal.id).collect();
    let mut out = Vec::new();
    for group in shelf.groups() {
        let Some(decided) =
            decided(&decisions, &group.id.0, day).filter(|decided| decided.holds(day))
        else {
            continue;
        };
        let members = group.on(day);
        let here: Vec<&Animal> = animals
            .iter()
            .filter(|animal| members.contains(&&animal.id) && !apart.contains(&animal.id))
            .collect();
        if here.len() == members.len() && !here.is_empty() {
            out.push(Out {
                id: group.id.0.clone(),
                name: group.name.clone(),
                paddock: decided.paddock.clone(),
                animals: here.len(),
                eats: of_group(shelf, &group.id, now, zone),
                recent_case: here.iter().any(|animal| recent_case(animal, day)),
            });
        } else {
            out.extend(
                here.into_iter()
                    .map(|animal| of_animal(shelf, animal, decided, now, zone)),
            );
        }
    }
    out.extend(
        own.iter()
            .filter(|(_, decided)| decided.holds(day))
            .map(|(animal, decided)| of_animal(shelf, animal, decided, now, zone)),
    );
    out
}

fn of_animal(
    shelf: &Shelf,
    animal: &Animal,
    decided: &GrazingV1,
    now: Instant,
    zone: &impl Zone,
) -> Out {
    let eats = match plan(shelf, &animal.id, now, zone).map(|view| view.outcome) {
        Some(Outcome::Allowed(plan)) => match &plan.planned().grass {
            GrassLine::Counted(day) if Span::ZERO < day.room.time => Eats::Grass {
                grass: day.room.grass,
                hay_less: day.room.hay_less,
            },
            GrassLine::Counted(_) => Eats::NoRoom,
            GrassLine::None { .. } => Eats::NoGrass,
            GrassLine::NotCounted => Eats::NoPlan,
        },
        Some(Outcome::Refused(_)) => Eats::NoGrass,
        Some(Outcome::Nothing(_)) | None => Eats::NoPlan,
    };
    Out {
        id: animal.id.0.clone(),
        name: animal.name.clone(),
        paddock: decided.paddock.clone(),
        animals: 1,
        eats,
        recent_case: recent_case(animal, zone.to_local(now).date),
    }
}

fn of_group(shelf: &Shelf, group: &GroupId, now: Instant, zone: &impl Zone) -> Eats {
    match herd(shelf, group, now, zone).map(|herd| herd.fed) {
        Some(Fed::Together(plan)) => match &plan.planned().grass {
            GroupGrass::Counted(day) if Span::ZERO < day.time => Eats::Grass {
                grass: day.grass,
                hay_less: day.hay_less,
            },
            GroupGrass::Counted(_) => Eats::NoRoom,
            GroupGrass::None { .. } => Eats::NoGrass,
            GroupGrass::NotCounted => Eats::NoPlan,
        },
        Some(Fed::Refused(_)) => Eats::NoGrass,
        Some(Fed::NoDraft(..)) | None => Eats::NoPlan,
    }
}
