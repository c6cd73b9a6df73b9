//! How an animal or a group goes out to grass, and how much of it its plan can carry. Safety has the last word.

mod carried;

pub use carried::{Carried, Open, carried};

use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::beside::group_needs;
use crate::views::horses::{kind_of_limit, one_needs};
use tussock_core::animal::{AnimalId, GroupId, PaddockId};
use tussock_core::log::bodies::GrazingV1;
use tussock_core::log::{Body, Kind, Subject};
use tussock_core::units::{Instant, LocalDate, Zone};

/// The most paddocks that are asked for.
const PADDOCKS: u32 = 1000;

/// Who goes out.
#[derive(Clone, Debug, PartialEq)]
pub enum Whose {
    /// An animal.
    Animal(AnimalId),
    /// A group.
    Group(GroupId),
}

impl Whose {
    /// What its records are about.
    pub fn subject(&self) -> Subject {
        match self {
            Self::Animal(id) => Subject::animal(id),
            Self::Group(id) => Subject::group(id),
        }
    }
}

/// How it goes out as far as somebody decided, and where it could.
#[derive(Clone, Debug, PartialEq)]
pub struct GoesOut {
    /// Who.
    pub whose: Whose,
    /// By what name.
    pub name: String,
    /// The local day.
    pub today: LocalDate,
    /// What was decided last; `None` when nobody did.
    pub before: Option<GrazingV1>,
    /// The paddocks of the yard, by name.
    pub paddocks: Vec<(PaddockId, String)>,
}

impl GoesOut {
    /// Whether it goes out now, as far as was decided.
    pub fn is_out_by_it(&self) -> bool {
        self.before
            .as_ref()
            .is_some_and(|before| before.holds(self.today))
    }
}

/// What the screen asks the disk for: an address does not say whether it is an animal's or a group's.
pub fn needs(id: &AnimalId) -> Vec<Range> {
    let mut ranges = vec![Range::One(id.0.clone())];
    ranges.extend(group_needs());
    ranges.extend(one_needs(id));
    ranges.push(kind_of_limit(&Kind::Paddock, PADDOCKS));
    ranges
}

/// How it goes out; `None` when neither an animal nor a group of this id is there.
pub fn goes_out(shelf: &Shelf, id: &AnimalId, now: Instant, zone: &impl Zone) -> Option<GoesOut> {
    let today = zone.to_local(now).date;
    let group = GroupId(id.0.clone());
    let (whose, name) = if let Some(animal) = shelf.animal(id) {
        (Whose::Animal(id.clone()), animal.name)
    } else {
        let name = shelf.group(&group)?.name;
        (Whose::Group(group), name)
    };
    let mut paddocks: Vec<(PaddockId, String)> = shelf
        .bodies(&Kind::Paddock)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::Paddock(paddock) => Some((
                PaddockId(record.id.0.clone()),
                paddock.name.as_str().to_owned(),
            )),
            _ => None,
        })
        .collect();
    paddocks.sort_by(|one, other| one.1.cmp(&other.1));
    Some(GoesOut {
        before: decided(shelf, id.as_str(), today),
        whose,
        name,
        today,
        paddocks,
    })
}

/// What was decided last for a subject, of what has begun.
fn decided(shelf: &Shelf, subject: &str, today: LocalDate) -> Option<GrazingV1> {
    shelf
        .bodies(&Kind::Grazing)
        .into_iter()
        .filter(|(record, _)| record.subject.id() == subject)
        .find_map(|(_, body)| match body {
            Body::Grazing(body) if body.from <= today => Some(body),
            _ => None,
        })
}

#[cfg(test)]
mod tests;
