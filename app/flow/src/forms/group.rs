//! A group: its name and who is in it from today.

use crate::acts::{Act, New};
use tussock_core::animal::{AnimalId, Group, GroupId, Member};
use tussock_core::log::bodies::GroupV1;
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::LocalDate;

/// What is wrong.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// No name, or one that is too long.
    Name(LogError),
    /// Nobody is in it.
    NoMember,
}

impl From<LogError> for Wrong {
    fn from(error: LogError) -> Self {
        Self::Name(error)
    }
}

/// The chosen animals, kept in one text.
pub fn chosen(text: &str) -> Vec<AnimalId> {
    text.split_whitespace()
        .map(|id| AnimalId(id.to_owned()))
        .collect()
}

/// The text after an animal was put in or taken out.
pub fn with(text: &str, animal: &AnimalId, within: bool) -> String {
    let mut ids = chosen(text);
    ids.retain(|id| id != animal);
    if within {
        ids.push(animal.clone());
    }
    let ids: Vec<&str> = ids.iter().map(AnimalId::as_str).collect();
    ids.join(" ")
}

/// The act that writes a new group, its members in it from today. Who was in another of `groups` leaves that: an animal
/// stands in one field.
///
/// # Errors
/// No name, or nobody in it.
pub fn act(
    id: &GroupId,
    name: &str,
    members: &[AnimalId],
    groups: &[Group],
    today: LocalDate,
) -> Result<Act, Wrong> {
    let group = Group {
        id: id.clone(),
        name: name.trim().to_owned(),
        members: members
            .iter()
            .map(|animal| from_today(animal, today))
            .collect(),
    };
    if members.is_empty() {
        return Err(Wrong::NoMember);
    }
    let new = Act::Add(New {
        id: RecordId(id.0.clone()),
        subject: Subject::group(id),
        at: None,
        known: Known::Seen,
        body: Body::Group(GroupV1::of(&group).map_err(Wrong::Name)?),
    });
    out_of_others(id, members, groups, today, new)
}

/// The act with those that take its members out of the other groups they are in today.
fn out_of_others(
    id: &GroupId,
    members: &[AnimalId],
    groups: &[Group],
    today: LocalDate,
    act: Act,
) -> Result<Act, Wrong> {
    let mut acts = Vec::new();
    for other in groups.iter().filter(|other| other.id != *id) {
        let goes = |animal: &&AnimalId| members.contains(animal);
        let leave: Vec<&AnimalId> = other.on(today).into_iter().filter(goes).collect();
        if !leave.is_empty() {
            acts.push(written(&without(other, &leave, today))?);
        }
    }
    acts.push(act);
    Ok(Act::All(acts))
}

/// The act that takes an animal out of a group from today, whoever is left in it.
///
/// # Errors
/// A name that cannot be stored.
pub fn leave(group: &Group, animal: &AnimalId, today: LocalDate) -> Result<Act, LogError> {
    written(&without(group, &[animal], today))
}

/// A group that some are not in from today. Who leaves was in it to yesterday; who came today leaves no trace.
fn without(group: &Group, leave: &[&AnimalId], today: LocalDate) -> Group {
    let mut next = group.clone();
    let yesterday = today.pred_opt().unwrap_or(today);
    for member in &mut next.members {
        let now = member.from <= today && member.to.is_none_or(|last| today <= last);
        if now && leave.contains(&&member.animal) {
            member.to = Some(yesterday);
        }
    }
    next.members
        .retain(|member| member.to.is_none_or(|last| member.from <= last));
    next
}

fn written(group: &Group) -> Result<Act, LogError> {
    Ok(Act::Change {
        id: RecordId(group.id.0.clone()),
        body: Body::Group(GroupV1::of(group)?),
        at: None,
    })
}

/// The act that changes who is in a group from today. Who leaves was in it to yesterday; who comes leaves the other of
/// `groups` that it was in.
///
/// # Errors
/// Nobody in it, or a name that cannot be stored.
pub fn change(
    group: &Group,
    members: &[AnimalId],
    groups: &[Group],
    today: LocalDate,
) -> Result<Act, Wrong> {
    if members.is_empty() {
        return Err(Wrong::NoMember);
    }
    let in_it = group.on(today);
    let leave: Vec<&AnimalId> = in_it
        .iter()
        .copied()
        .filter(|animal| !members.contains(animal))
        .collect();
    let mut next = without(group, &leave, today);
    next.members.extend(
        members
            .iter()
            .filter(|animal| !in_it.contains(animal))
            .map(|animal| from_today(animal, today)),
    );
    out_of_others(&group.id, members, groups, today, written(&next)?)
}

fn from_today(animal: &AnimalId, today: LocalDate) -> Member {
    Member {
        animal: animal.clone(),
        from: today,
        to: None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> LocalDate {
        text.parse().unwrap()
    }

    fn id(text: &str) -> AnimalId {
        AnimalId(text.into())
    }

    fn group_of(act: Act) -> Group {
        match act {
            Act::All(mut acts) => group_of(acts.pop().unwrap()),
            Act::Add(New {
                body: Body::Group(body),
                id,
                ..
            })
            | Act::Change {
                body: Body::Group(body),
                id,
                ..
            } => body.group(&id),
            _ => panic!("writes a group"),
        }
    }

    #[test]
    fn a_group_needs_a_name_and_somebody() {
        let group = GroupId("g".into());
        let today = day("2026-05-05");
        assert_eq!(
            act(&group, "Top field", &[], &[], today),
            Err(Wrong::NoMember)
        );
        assert!(matches!(
            act(&group, " ", &[id("moss")], &[], today),
            Err(Wrong::Name(_))
        ));
        let made = group_of(act(&group, " Top field ", &[id("moss")], &[], today).unwrap());
        assert_eq!(made.name, "Top field");
        assert_eq!(made.on(today), [&id("moss")]);
    }

    #[test]
    fn who_leaves_was_in_it_to_yesterday() {
        let (monday, friday) = (day("2026-05-04"), day("2026-05-08"));
        let both = [id("moss"), id("fern")];
        let group = group_of(act(&GroupId("g".into()), "Top field", &both, &[], monday).unwrap());
        let next = group_of(change(&group, &[id("fern"), id("bramble")], &[], friday).unwrap());
        assert_eq!(next.on(friday), [&id("fern"), &id("bramble")]);
        assert_eq!(next.on(day("2026-05-07")), [&id("moss"), &id("fern")]);
        let back = group_of(change(&next, &[id("fern")], &[], friday).unwrap());
        assert_eq!(back.members.len(), 2);
        assert_eq!(change(&group, &[], &[], friday), Err(Wrong::NoMember));
    }

    #[test]
    fn who_joins_a_group_leaves_the_other_and_one_may_leave_an_empty_field() {
        let (monday, friday) = (day("2026-05-04"), day("2026-05-08"));
        let both = [id("moss"), id("fern")];
        let top = group_of(act(&GroupId("g".into()), "Top field", &both, &[], monday).unwrap());
        let made = act(
            &GroupId("h".into()),
            "Lane",
            &[id("moss")],
            std::slice::from_ref(&top),
            friday,
        );
        let Act::All(acts) = made.unwrap() else {
            panic!("one act for both groups")
        };
        assert_eq!(acts.len(), 2);
        let left = group_of(acts[0].clone());
        assert_eq!(left.on(friday), [&id("fern")]);
        let nobody = group_of(leave(&left, &id("fern"), friday).unwrap());
        assert!(nobody.on(friday).is_empty());
        assert_eq!(nobody.on(day("2026-05-07")), [&id("moss"), &id("fern")]);
    }

    #[test]
    fn the_chosen_are_kept_in_one_text() {
        let text = with(&with("", &id("moss"), true), &id("fern"), true);
        assert_eq!(chosen(&text), [id("moss"), id("fern")]);
        assert_eq!(with(&text, &id("moss"), false), "fern");
    }
}
