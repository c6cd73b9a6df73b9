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

    /// Since when an animal that is in it on a day has been in it; `None` when it is not.
    pub fn since(&self, animal: &AnimalId, day: LocalDate) -> Option<LocalDate> {
        let in_it = self
            .members
            .iter()
            .filter(|member| member.animal == *animal);
        in_it
            .filter(|member| member.from <= day && member.to.is_none_or(|last| day <= last))
            .map(|member| member.from)
            .max()
    }
}

/// The group that an animal eats with on a day: of several that name it the one it joined last, for it stands in one field.
pub fn group_of<'g>(groups: &'g [Group], animal: &AnimalId, day: LocalDate) -> Option<&'g Group> {
    groups
        .iter()
        .filter_map(|group| Some((group.since(animal, day)?, group)))
        .max_by(|(a, one), (b, other)| (a, &one.id).cmp(&(b, &other.id)))
        .map(|(_, group)| group)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> LocalDate {
        text.parse().unwrap()
    }

    fn group(id: &str, from: &str, to: Option<&str>) -> Group {
        Group {
            id: GroupId(id.to_owned()),
            name: id.to_owned(),
            members: vec![Member {
                animal: AnimalId("moss".to_owned()),
                from: day(from),
                to: to.map(day),
            }],
        }
    }

    #[test]
    fn an_animal_eats_with_the_group_it_joined_last() {
        let groups = [
            group("hill", "2026-05-01", None),
            group("lane", "2026-05-05", Some("2026-05-08")),
        ];
        let moss = AnimalId("moss".to_owned());
        let on = |text: &str| group_of(&groups, &moss, day(text)).map(|group| group.id.as_str());
        assert_eq!(on("2026-04-30"), None);
        assert_eq!(on("2026-05-04"), Some("hill"));
        assert_eq!(on("2026-05-05"), Some("lane"));
        assert_eq!(on("2026-05-09"), Some("hill"));
    }
}
