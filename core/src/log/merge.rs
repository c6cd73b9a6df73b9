//! Merging: a log is a set of versions, and merging two logs is their union.
//!
//! - The version of a record that holds is the one with the latest stamp (of two with one stamp, the one whose text
//!   sorts last, so that damage cannot make two devices disagree).
//! - Everything else is its history and stays. A deleted record is a version like any other.
//! - The union is commutative, associative and idempotent, so that any order and any repetition of the same files ends
//!   in the same bytes.
//! - `after` tells two people's edits from one person's second: [`Versions::overwritten`].

use super::bodies::Body;
use super::envelope::Record;
use super::error::LogError;
use super::stamp::{Ahead, Stamp};
use crate::sources::RecordId;
use crate::units::Instant;
use std::collections::{BTreeMap, BTreeSet};

/// All known versions of one record; never empty.
#[derive(Clone, Debug, PartialEq)]
pub struct Versions {
    /// By stamp, then by canonical text.
    all: BTreeMap<(Stamp, String), Record>,
}

/// What became of a version that was added.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Added {
    /// The first version of a record that was not known.
    New,
    /// It now holds, and what held before is history.
    Changed,
    /// An older version; what holds is unchanged.
    History,
    /// It was known already.
    Same,
}

impl Versions {
    /// One version.
    ///
    /// Errors: those of [`Record::to_text`].
    pub fn of(record: Record) -> Result<Self, LogError> {
        let key = (record.stamp, record.to_text()?);
        Ok(Self {
            all: BTreeMap::from([(key, record)]),
        })
    }

    /// Adds a version of the same record.
    ///
    /// Errors: those of [`Record::to_text`].
    pub fn add(&mut self, record: Record) -> Result<Added, LogError> {
        let key = (record.stamp, record.to_text()?);
        Ok(self.put(key, record))
    }

    fn put(&mut self, key: (Stamp, String), record: Record) -> Added {
        let holds = self
            .all
            .last_key_value()
            .is_none_or(|(last, _)| *last < key);
        match self.all.insert(key, record) {
            Some(_) => Added::Same,
            None if holds => Added::Changed,
            None => Added::History,
        }
    }

    /// The version that holds.
    pub fn current(&self) -> Option<&Record> {
        self.all.last_key_value().map(|(_, record)| record)
    }

    /// The superseded versions, oldest first.
    pub fn past(&self) -> impl Iterator<Item = &Record> {
        let count = self.all.len().saturating_sub(1);
        self.all.values().take(count)
    }

    /// All versions, oldest first.
    pub fn all(&self) -> impl Iterator<Item = &Record> {
        self.all.values()
    }

    /// How many versions there are.
    pub fn len(&self) -> usize {
        self.all.len()
    }

    /// Whether there is none, which cannot be.
    pub fn is_empty(&self) -> bool {
        self.all.is_empty()
    }

    /// Edits that the version that holds was made without: two people changed the record, and one change lies in the
    /// history. Only the last version of each such line is given, oldest first.
    ///
    /// A line is named only when it is certain: when versions between are missing, nothing is said.
    pub fn overwritten(&self) -> Vec<&Record> {
        let mut chain = BTreeSet::new();
        let mut whole = false;
        let mut at = self.current();
        while let Some(version) = at {
            chain.insert(version.stamp);
            whole = version.after.is_none();
            at = version.after.and_then(|stamp| self.with(stamp));
        }
        let current = self.all.last_key_value().map(|(key, _)| key);
        self.all
            .iter()
            .filter(|(key, version)| {
                let twin = chain.contains(&key.0) && current.is_some_and(|c| c.0 == key.0);
                Some(*key) != current
                    && (twin || !chain.contains(&key.0))
                    && !self.all.values().any(|v| v.after == Some(key.0) && !twin)
                    && (twin || self.forks(version, &chain, whole))
            })
            .map(|(_, version)| version)
            .collect()
    }

    /// Whether the line of a version leaves the chain at a version that is known, or began beside it.
    fn forks(&self, version: &Record, chain: &BTreeSet<Stamp>, whole: bool) -> bool {
        let mut at = version;
        loop {
            let Some(after) = at.after else {
                return whole;
            };
            if chain.contains(&after) {
                return true;
            }
            // Every step goes to an earlier stamp, so this ends.
            match self.with(after) {
                Some(earlier) if earlier.stamp < at.stamp => at = earlier,
                _ => return false,
            }
        }
    }

    fn with(&self, stamp: Stamp) -> Option<&Record> {
        self.all
            .range((stamp, String::new())..)
            .next()
            .filter(|((found, _), _)| *found == stamp)
            .map(|(_, record)| record)
    }
}

/// A log in memory: every version of every record, by id.
///
/// The app never holds a whole store; it merges record by record with [`Versions`]. This is for bundles, cases and
/// tests.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Log {
    records: BTreeMap<RecordId, Versions>,
}

/// What an import did, to be shown.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Report {
    /// Records that were not known.
    pub new: Vec<RecordId>,
    /// Records that now hold something else.
    pub changed: Vec<RecordId>,
    /// Versions that were known already.
    pub same: usize,
    /// Older versions that were added to the history.
    pub history: usize,
    /// Records that two people changed without seeing each other's change, found by this import.
    pub overwritten: Vec<RecordId>,
    /// Records from a device whose clock runs ahead, and by how much.
    pub ahead: Vec<(RecordId, Ahead)>,
    /// Records of a kind or version of a later release: kept, not read.
    pub unread: Vec<RecordId>,
}

impl Log {
    /// An empty log.
    pub const fn new() -> Self {
        Self {
            records: BTreeMap::new(),
        }
    }

    /// Adds a version.
    ///
    /// Errors: those of [`Record::to_text`].
    pub fn add(&mut self, record: Record) -> Result<Added, LogError> {
        if let Some(versions) = self.records.get_mut(&record.id) {
            return versions.add(record);
        }
        self.records
            .insert(record.id.clone(), Versions::of(record)?);
        Ok(Added::New)
    }

    /// The union with another log.
    #[must_use]
    pub fn merged(mut self, other: Self) -> Self {
        for (id, versions) in other.records {
            match self.records.get_mut(&id) {
                Some(mine) => {
                    for (key, record) in versions.all {
                        mine.put(key, record);
                    }
                }
                None => {
                    self.records.insert(id, versions);
                }
            }
        }
        self
    }

    /// The union with what was received, and what it changed. The log itself is left as it was.
    ///
    /// Errors: those of [`Body::read`]; then nothing is taken.
    pub fn receive(&self, incoming: &Self, now: Instant) -> Result<(Self, Report), LogError> {
        let mut report = Report::default();
        for (id, versions) in &incoming.records {
            let mine = self.records.get(id);
            let mut theirs = mine.cloned();
            let mut changed = false;
            for (key, record) in &versions.all {
                if let (_, Some(ahead)) = Stamp::clock(None, &record.stamp, now) {
                    report.ahead.push((id.clone(), ahead));
                }
                match &mut theirs {
                    None => theirs = Some(Versions::of(record.clone())?),
                    Some(known) => match known.put(key.clone(), record.clone()) {
                        Added::Same => report.same += 1,
                        Added::History => report.history += 1,
                        Added::New | Added::Changed => changed = true,
                    },
                }
            }
            if mine.is_none() {
                report.new.push(id.clone());
            } else if changed {
                report.changed.push(id.clone());
            }
            if let Some(union) = &theirs {
                let before = mine.map_or(0, |known| known.overwritten().len());
                if union.overwritten().len() > before {
                    report.overwritten.push(id.clone());
                }
                if let Some(current) = union.current()
                    && matches!(Body::read(current)?, Body::Unread)
                {
                    report.unread.push(id.clone());
                }
            }
        }
        report.ahead.dedup();
        Ok((self.clone().merged(incoming.clone()), report))
    }

    /// The versions of a record.
    pub fn get(&self, id: &RecordId) -> Option<&Versions> {
        self.records.get(id)
    }

    /// The version of each record that holds, deleted ones included, in the order of the ids.
    pub fn current(&self) -> impl Iterator<Item = &Record> {
        self.records.values().filter_map(Versions::current)
    }

    /// Every version of every record: by id, then by stamp.
    pub fn all(&self) -> impl Iterator<Item = &Record> {
        self.records.values().flat_map(Versions::all)
    }

    /// The canonical text of every version, in the order of [`Log::all`].
    pub fn texts(&self) -> impl Iterator<Item = &str> {
        self.records
            .values()
            .flat_map(|versions| versions.all.keys().map(|(_, text)| text.as_str()))
    }

    /// How many records there are, deleted ones included.
    pub fn len(&self) -> usize {
        self.records.len()
    }

    /// Whether there is none.
    pub fn is_empty(&self) -> bool {
        self.records.is_empty()
    }
}
