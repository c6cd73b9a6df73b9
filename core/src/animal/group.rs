//! Animals fed together.

use super::ids::{AnimalId, GroupId};
use crate::units::LocalDate;

/// A member of a group for some days.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Member {
    /// The animal.
    pub animal: AnimalId,
    /// Its first day.
    pub from: LocalDate,
    /// Its last day; `None` while it is still a member.
    pub to: Option<LocalDate>,
}

/// A group: a subject like an animal.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Group {
    /// Its id.
    pub id: GroupId,
    /// Its name.
    pub name: String,
    /// Who was in it and when.
    pub members: Vec<Member>,
}

impl Group {
    /// Who is in it on a day, in the order they were added.
    pub fn on(&self, day: LocalDate) -> Vec<&AnimalId> {
        self.members
            .iter()
            .filter(|member| member.from <= day && member.to.is_none_or(|last| day <= last))
            .map(|member| &member.animal)
            .collect()
    }
}
