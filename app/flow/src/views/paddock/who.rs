//! Who goes out: groups that are fed together, and the animals that are in none.

use crate::shelf::Shelf;
use tussock_core::animal::AnimalId;
use tussock_core::log::{Kind, Record, Subject, fed_with};
use tussock_core::units::{Instant, LocalDate};

/// An animal or a group that goes out.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Who {
    /// What records of it are about.
    pub about: Subject,
    /// Its name.
    pub name: String,
    /// The animals.
    pub members: Vec<AnimalId>,
    /// Whether it is a group.
    pub group: bool,
}

/// Groups whose members are fed together, or for which somebody wrote something of grass; then the animals that are in
/// none of them, and those of which something of grass was written for themselves.
pub(super) fn who(shelf: &Shelf, records: &[&Record], now: Instant, day: LocalDate) -> Vec<Who> {
    let written = |about: &Subject| {
        records.iter().any(|record| {
            matches!(record.kind, Kind::Grazing | Kind::Turnout) && record.subject == *about
        })
    };
    let mut found = Vec::new();
    let mut covered: Vec<AnimalId> = Vec::new();
    for group in shelf.groups() {
        let members: Vec<AnimalId> = group.on(day).into_iter().cloned().collect();
        let about = Subject::group(&group.id);
        let together = members.iter().any(|member| {
            fed_with(records, member, now, day).is_some_and(|other| other.id == group.id)
        });
        if members.is_empty() || !(together || written(&about)) {
            continue;
        }
        covered.extend(members.iter().cloned());
        found.push(Who {
            about,
            name: group.name,
            members,
            group: true,
        });
    }
    for animal in shelf.animals() {
        let about = Subject::animal(&animal.id);
        if !covered.contains(&animal.id) || written(&about) {
            found.push(Who {
                about,
                name: animal.name,
                members: vec![animal.id],
                group: false,
            });
        }
    }
    found
}
