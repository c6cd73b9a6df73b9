//! A group fed together.

use crate::animal::{Group, GroupId, Member};
use crate::log::LogError;
use crate::log::stored::{Name, fields, twin};
use crate::sources::RecordId;

fields!(Member { animal, from, to });

twin! {
    /// A group fed together.
    GroupV1 {
        /// Its name.
        name: Name,
        /// Who was in it and when.
        members: Vec<Member>,
    }
}

impl GroupV1 {
    /// The twin of a group.
    pub fn of(group: &Group) -> Result<Self, LogError> {
        Ok(Self {
            name: Name::new(&group.name)?,
            members: group.members.clone(),
        })
    }

    /// The group behind a record.
    pub fn group(&self, id: &RecordId) -> Group {
        Group {
            id: GroupId(id.0.clone()),
            name: self.name.as_str().to_owned(),
            members: self.members.clone(),
        }
    }
}
