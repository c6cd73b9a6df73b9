//! What goes to the disk and comes back: rows, the ranges that are asked for, one batch of writes, drafts.
//!
//! A row is the fields that are searched by plus the record's canonical text. The text is the truth.

use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

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
}

/// One batch: it is written as a whole or not at all.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Writes {
    /// New versions. The version each replaces moves to the past in the same transaction.
    pub rows: Vec<Row>,
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
