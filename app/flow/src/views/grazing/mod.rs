//! How an animal or a group goes out to grass, and how much of it its plan can carry. Safety has the last word.

mod carried;

pub use carried::{Carried, Open, carried};

use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::beside::group_needs;
use crate::views::fields::by_name;
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
    let paddocks = by_name(shelf).into_iter();
    let paddocks = paddocks.map(|(id, body)| (id, body.name.as_str().to_owned()));
    Some(GoesOut {
        before: decided(&decisions(shelf), id.as_str(), today).cloned(),
        whose,
        name,
        today,
        paddocks: paddocks.collect(),
    })
}

/// What was decided of grass, the newest first, each with what it is about.
pub(crate) fn decisions(shelf: &Shelf) -> Vec<(Subject, GrazingV1)> {
    let all = shelf.bodies(&Kind::Grazing).into_iter();
    all.filter_map(|(record, body)| match body {
        Body::Grazing(body) => Some((record.subject.clone(), body)),
        _ => None,
    })
    .collect()
}

/// What was decided last for a subject, of what has begun, whether it goes out by it or not.
pub(crate) fn decided<'a>(
    decisions: &'a [(Subject, GrazingV1)],
    subject: &str,
    day: LocalDate,
) -> Option<&'a GrazingV1> {
    decisions
        .iter()
        .find(|(about, body)| about.id() == subject && body.from <= day)
        .map(|(_, body)| body)
}

#[cfg(test)]
mod tests;
