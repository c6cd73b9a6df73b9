//! Who goes out: groups that are fed together, and the animals that are in none.

use super::asked::Grass;
use tussock_core::animal::AnimalId;
use tussock_core::log::{Kind, Subject, fed_with};
use tussock_core::units::Zone;

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
    /// The groups that an animal is in: what goes out with them is out.
    pub with: Vec<(Subject, String)>,
}

impl Who {
    /// Whether a turnout of a subject takes it out.
    pub(super) fn is_out_by(&self, subject: &Subject) -> bool {
        self.about == *subject || self.with.iter().any(|(group, _)| group == subject)
    }

    /// The name of the group whose turnout it is, where it is not its own.
    pub(super) fn with_whom(&self, subject: &Subject) -> Option<String> {
        let mut with = self.with.iter();
        let found = with.find(|(group, _)| group == subject);
        found.map(|(_, name)| name.clone())
    }
}

/// Groups whose members are fed together, or for which somebody wrote something of grass; then the animals that are in
/// none of them, and those of which something of grass was written for themselves.
pub(super) fn who(grass: &Grass<'_, impl Zone>) -> Vec<Who> {
    let (shelf, records, now, day) = (grass.shelf, grass.records, grass.now, grass.day);
    let written = |about: &Subject| {
        records.iter().any(|record| {
            matches!(record.kind, Kind::Grazing | Kind::Turnout) && record.subject == *about
        })
    };
    let mut found = Vec::new();
    let mut covered: Vec<AnimalId> = Vec::new();
    let groups = shelf.groups();
    for group in &groups {
        let mut members: Vec<AnimalId> = group.on(day).into_iter().cloned().collect();
        let about = Subject::group(&group.id);
        if members.is_empty() {
            // Whom it left since it went out is out all the same.
            let going = grass.turnouts.iter();
            let mut going = going.filter(|(record, _)| record.subject == about);
            let out = going.find(|(_, body)| body.came_in.is_none());
            let on = out.map(|(record, _)| grass.zone.to_local(record.at).date);
            members = on.map_or_else(Vec::new, |on| group.on(on).into_iter().cloned().collect());
        }
        let together = members.iter().any(|member| {
            fed_with(records, member, now, day).is_some_and(|other| other.id == group.id)
        });
        if members.is_empty() || !(together || written(&about)) {
            continue;
        }
        covered.extend(members.iter().cloned());
        found.push(Who {
            about,
            name: group.name.clone(),
            members,
            group: true,
            with: Vec::new(),
        });
    }
    for animal in shelf.animals() {
        let about = Subject::animal(&animal.id);
        if !covered.contains(&animal.id) || written(&about) {
            let with = groups
                .iter()
                .filter(|group| group.on(day).contains(&&animal.id));
            found.push(Who {
                about,
                name: animal.name,
                with: with
                    .map(|group| (Subject::group(&group.id), group.name.clone()))
                    .collect(),
                members: vec![animal.id],
                group: false,
            });
        }
    }
    found
}
