//! What goes to the disk and comes back: rows, the ranges that are asked for, one batch of writes, drafts.
//!
//! A row is the fields that are searched by plus the record's canonical text. The text is the truth.

use serde::{Deserialize, Serialize};
use std::collections::{BTreeMap, BTreeSet};

/// A record on the disk.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Row {
    /// The record's id.
    pub id: String,
    /// Its kind, as text: kinds of a newer version survive.
    pub kind: String,
    /// The yard it belongs to.
    pub yard: String,
    /// The subject it is about.
    pub subject: String,
    /// When it happened, milliseconds of UTC.
    pub at: i64,
    /// The stamp of this version.
    pub stamp: String,
    /// The canonical text.
    pub json: String,
}

/// A bounded question. There is no question for everything.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Range {
    /// The record with this id.
    One(String),
    /// The newest records of a kind, at most `limit`, newest first, not before `from`.
    Kind {
        /// The kind.
        kind: String,
        /// The earliest instant asked for, milliseconds of UTC.
        from: i64,
        /// At most this many.
        limit: u32,
    },
    /// The newest records about a subject, at most `limit`, newest first, not before `from`.
    Subject {
        /// The subject's id.
        subject: String,
        /// The earliest instant asked for, milliseconds of UTC.
        from: i64,
        /// At most this many.
        limit: u32,
    },
}

/// What a person typed and has not saved: the raw text of each field, under the address of its form.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize, Default)]
pub struct Draft {
    /// The address of the form.
    pub key: String,
    /// When it was last typed in, milliseconds of UTC.
    pub at: i64,
    /// Each field's raw text.
    pub fields: BTreeMap<String, String>,
    /// The fields nobody typed: the ids that are made so that saving twice saves one record.
    #[serde(default)]
    pub made: BTreeSet<String>,
}

impl Draft {
    /// Whether nothing is typed in it: every text a person gave is empty. Such a draft holds nothing to lose.
    pub fn is_blank(&self) -> bool {
        self.fields
            .iter()
            .all(|(name, text)| self.made.contains(name) || text.trim().is_empty())
    }
}

/// A picture on the disk, beside the records that name it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PictureRow {
    /// Its sum, by which it is found.
    pub sha256: String,
    /// The picture.
    pub bytes: Vec<u8>,
}

/// One batch: it is written as a whole or not at all.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Writes {
    /// New versions. The version each replaces moves to the past in the same transaction.
    pub rows: Vec<Row>,
    /// Pictures that new records name. The same picture twice is one.
    pub pictures: Vec<PictureRow>,
    /// Drafts that are cleared because what they held is saved here.
    pub clear_drafts: Vec<String>,
    /// Small values about this device, such as its last stamp.
    pub meta: BTreeMap<String, String>,
}

impl Writes {
    /// The subjects this batch touches, each once, for the queries that must run again.
    pub fn touched(&self) -> Vec<String> {
        let mut subjects: Vec<String> = self.rows.iter().map(|row| row.subject.clone()).collect();
        subjects.sort_unstable();
        subjects.dedup();
        subjects
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_draft_in_which_nothing_is_typed_is_blank() {
        let draft = |fields: &[(&str, &str)]| Draft {
            key: "#/weigh/moss".into(),
            at: 0,
            fields: fields
                .iter()
                .map(|(name, text)| ((*name).to_owned(), (*text).to_owned()))
                .collect(),
            made: BTreeSet::from(["id".to_owned()]),
        };
        assert!(draft(&[]).is_blank());
        assert!(draft(&[("reading", ""), ("own", " ")]).is_blank());
        assert!(draft(&[("reading", ""), ("id", "0192")]).is_blank());
        assert!(!draft(&[("reading", "3"), ("id", "0192")]).is_blank());
    }

    #[test]
    fn a_draft_of_an_earlier_version_is_read() {
        let held = r#"{"key":"k","at":1,"fields":{"girth":"150"}}"#;
        let draft: Draft = serde_json::from_str(held).unwrap();
        assert!(draft.made.is_empty() && !draft.is_blank());
    }
}
