//! Records taken from the disk for one screen or one act: rows read, bodies found by kind.
//!
//! A row that this version cannot read is named in [`Shelf::unread`] and left as it is on the disk.

use crate::rows::Row;
use tussock_core::animal::{Animal, AnimalId, Group, GroupId, LotId};
use tussock_core::log::{Body, Kind, LogError, Record};

/// Records that hold, newest first within a kind.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Shelf {
    records: Vec<Record>,
    /// Rows whose text could not be read: id and why.
    pub unread: Vec<(String, LogError)>,
}

impl Shelf {
    /// Reads rows. A record that is on the shelf already is kept once, in its later version.
    pub fn of(rows: impl IntoIterator<Item = Row>) -> Self {
        let mut shelf = Self::default();
        for row in rows {
            match Record::from_text(&row.json) {
                Ok(record) => shelf.put(record),
                Err(error) => shelf.unread.push((row.id, error)),
            }
        }
        shelf
    }

    /// Puts a record on the shelf.
    pub fn put(&mut self, record: Record) {
        match self.records.iter_mut().find(|held| held.id == record.id) {
            Some(held) if held.stamp < record.stamp => *held = record,
            Some(_) => {}
            None => self.records.push(record),
        }
    }

    /// Every record that holds and is not deleted.
    pub fn records(&self) -> impl Iterator<Item = &Record> {
        self.records.iter().filter(|record| !record.gone)
    }

    /// Every record in the version that holds, deleted or not.
    pub fn versions(&self) -> impl Iterator<Item = &Record> {
        self.records.iter()
    }

    /// The records about one subject.
    #[must_use]
    pub fn about(&self, subject: &str) -> Self {
        Self {
            records: self
                .records
                .iter()
                .filter(|record| record.subject.id() == subject)
                .cloned()
                .collect(),
            unread: Vec::new(),
        }
    }

    /// A record by id, deleted or not.
    pub fn get(&self, id: &str) -> Option<&Record> {
        self.records.iter().find(|record| record.id.0 == id)
    }

    /// Records of a kind, newest first.
    pub fn of_kind(&self, kind: &Kind) -> Vec<&Record> {
        let mut found: Vec<&Record> = self
            .records()
            .filter(|record| record.kind == *kind)
            .collect();
        found.sort_by_key(|record| std::cmp::Reverse((record.at, record.stamp)));
        found
    }

    /// The newest record of a kind about a subject.
    pub fn newest(&self, kind: &Kind, subject: &str) -> Option<&Record> {
        self.of_kind(kind)
            .into_iter()
            .find(|record| record.subject.id() == subject)
    }

    /// Bodies of a kind with their records, newest first; what cannot be read is left out.
    pub fn bodies(&self, kind: &Kind) -> Vec<(&Record, Body)> {
        self.of_kind(kind)
            .into_iter()
            .filter_map(|record| Some((record, Body::read(record).ok()?)))
            .collect()
    }

    /// The animals, by name.
    pub fn animals(&self) -> Vec<Animal> {
        let mut animals: Vec<Animal> = self
            .bodies(&Kind::Animal)
            .into_iter()
            .filter_map(|(record, body)| match body {
                Body::Animal(body) => Some(body.animal(&record.id)),
                _ => None,
            })
            .collect();
        animals.sort_by(|a, b| (a.name.to_lowercase(), &a.id).cmp(&(b.name.to_lowercase(), &b.id)));
        animals
    }

    /// An animal.
    pub fn animal(&self, id: &AnimalId) -> Option<Animal> {
        self.animals().into_iter().find(|animal| animal.id == *id)
    }

    /// The groups, by name.
    pub fn groups(&self) -> Vec<Group> {
        let mut groups: Vec<Group> = self
            .bodies(&Kind::Group)
            .into_iter()
            .filter_map(|(record, body)| match body {
                Body::Group(body) => Some(body.group(&record.id)),
                _ => None,
            })
            .collect();
        groups.sort_by(|a, b| (&a.name, &a.id).cmp(&(&b.name, &b.id)));
        groups
    }

    /// A group.
    pub fn group(&self, id: &GroupId) -> Option<Group> {
        self.groups().into_iter().find(|group| group.id == *id)
    }

    /// The name of a lot.
    pub fn lot_name(&self, id: &LotId) -> Option<String> {
        match Body::read(self.get(id.as_str())?) {
            Ok(Body::Lot(body)) => Some(body.name.as_str().to_owned()),
            _ => None,
        }
    }
}
