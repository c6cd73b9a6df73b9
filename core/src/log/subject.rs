//! What a record is about.

use super::error::{Allowed, Form, LogError, Path};
use std::fmt;

/// The kinds of subject, in the words that are stored.
const KINDS: &[&str] = &["animal", "group", "lot", "paddock", "yard"];

/// The longest id.
// numeric: a UUID has 36 characters
const LONGEST_ID: usize = 64;

/// What a record is about: an animal, a group, a lot, a paddock or a yard; its text is `animal:` and the id.
///
/// A kind of a later release is kept as it is.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Subject {
    kind: String,
    id: String,
}

impl Subject {
    /// An animal.
    pub fn animal(id: &crate::animal::AnimalId) -> Self {
        Self::of("animal", id.as_str())
    }

    /// A group.
    pub fn group(id: &crate::animal::GroupId) -> Self {
        Self::of("group", id.as_str())
    }

    /// A forage lot.
    pub fn lot(id: &crate::animal::LotId) -> Self {
        Self::of("lot", id.as_str())
    }

    /// A paddock.
    pub fn paddock(id: &crate::animal::PaddockId) -> Self {
        Self::of("paddock", id.as_str())
    }

    /// A yard.
    pub fn yard(id: &crate::animal::YardId) -> Self {
        Self::of("yard", id.as_str())
    }

    fn of(kind: &str, id: &str) -> Self {
        Self {
            kind: kind.to_owned(),
            id: id.to_owned(),
        }
    }

    /// The kind as stored: `animal`, `group`, `lot`, `paddock`, `yard`, or a word of a later release.
    pub fn kind(&self) -> &str {
        &self.kind
    }

    /// Whether this release knows the kind.
    pub fn is_known(&self) -> bool {
        KINDS.contains(&self.kind.as_str())
    }

    /// The id of the animal, group, lot, paddock or yard.
    pub fn id(&self) -> &str {
        &self.id
    }

    /// From its text.
    pub fn from_text(text: &str) -> Result<Self, LogError> {
        Self::read(text, &Path::Root.key("subject"))
    }

    pub(crate) fn read(text: &str, path: &Path<'_>) -> Result<Self, LogError> {
        match text.split_once(':') {
            Some((kind, id)) if is_word(kind) && is_id(id) => Ok(Self::of(kind, id)),
            _ => Err(path.refuse(text, Allowed::Form(Form::Subject))),
        }
    }
}

impl fmt::Display for Subject {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{}:{}", self.kind, self.id)
    }
}

/// Whether a text may be an id: 1 to 64 of lower-case letters, digits and hyphens.
pub(crate) fn is_id(text: &str) -> bool {
    (1..=LONGEST_ID).contains(&text.len())
        && text
            .bytes()
            .all(|l| l.is_ascii_lowercase() || l.is_ascii_digit() || l == b'-')
}

/// Whether a text may be the name of a kind: 1 to 40 of lower-case letters, digits and underscores.
pub(crate) fn is_word(text: &str) -> bool {
    // numeric: the longest name of a kind
    (1..=40).contains(&text.len())
        && text
            .bytes()
            .all(|l| l.is_ascii_lowercase() || l.is_ascii_digit() || l == b'_')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn text_and_subject_are_inverse() {
        for text in [
            "animal:moss",
            "yard:0190c0de-0000-7000-8000-000000000001",
            "herd:a1",
        ] {
            assert_eq!(Subject::from_text(text).unwrap().to_string(), text);
        }
        assert!(!Subject::from_text("herd:a1").unwrap().is_known());
        for text in [
            "",
            "animal",
            "animal:",
            ":moss",
            "animal:Moss",
            "animal:a:b",
        ] {
            assert!(Subject::from_text(text).is_err(), "{text:?}");
        }
    }
}
