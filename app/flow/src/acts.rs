//! What a person does, as a value, and what it writes.
//!
//! [`apply`] is pure: the act, the records it touches, now and the device's clock in, one batch of writes out. The batch
//! carries the clock's new stamp, so that the next act is later, and clears the draft that it saves. Undo writes a new
//! version: nothing is ever taken off the disk.

#[cfg(test)]
mod tests;

use crate::rows::{PictureRow, Row, Writes};
use crate::shelf::Shelf;
use std::collections::BTreeMap;
use tussock_core::animal::{PersonId, YardId};
use tussock_core::log::{Body, DeviceId, Known, LogError, Origin, Picture, Record, Stamp, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, Zone};

/// The key under which a device keeps its last stamp.
pub const LAST_STAMP: &str = "stamp";
/// The key under which a device keeps its own id.
pub const DEVICE: &str = "device";
/// The key under which a device keeps who said something on it last.
pub const WHO: &str = "who";

/// A new record.
#[derive(Clone, Debug, PartialEq)]
pub struct New {
    /// Its id, made when the form opened: saving twice saves one record.
    pub id: RecordId,
    /// What it is about.
    pub subject: Subject,
    /// When it happened; `None` for now.
    pub at: Option<Instant>,
    /// How far it is known.
    pub known: Known,
    /// What it says.
    pub body: Body,
}

/// What a person does.
#[derive(Clone, Debug, PartialEq)]
pub enum Act {
    /// Writes a new record. When its id is on the shelf already, the same thing was saved twice and nothing is written.
    Add(New),
    /// Writes a new version of a record.
    Change {
        /// Which.
        id: RecordId,
        /// What it says now.
        body: Body,
        /// When it happened, when that is corrected.
        at: Option<Instant>,
    },
    /// Marks a record deleted; it can be brought back.
    Remove(RecordId),
    /// The same as said by a person, who is then the one at this device.
    By(PersonId, Box<Act>),
    /// Puts a picture beside the records, in the batch of the record that names it. No undo takes it off the disk.
    Keep(Picture),
    /// Several at once: all or none.
    All(Vec<Act>),
    /// Takes back what was saved, by writing what held before.
    Undo(Saved),
}

/// Who, when and where.
#[derive(Clone, Debug, PartialEq)]
pub struct Context {
    /// Now.
    pub now: Instant,
    /// The offset of the wall clock from UTC, in minutes east.
    pub offset_min: i32,
    /// The IANA name of the zone.
    pub zone: String,
    /// The yard.
    pub yard: YardId,
    /// Who says it.
    pub by: Option<PersonId>,
    /// This device.
    pub device: DeviceId,
    /// The last stamp of this device.
    pub last: Option<Stamp>,
}

impl Zone for Context {
    fn offset_min(&self, _: Instant) -> i32 {
        self.offset_min
    }
}

/// What an act wrote, for undo: each record with what held before.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Saved {
    /// The records that were written and the version that held before; `None` for a new one.
    pub records: Vec<(RecordId, Option<Record>)>,
}

impl Saved {
    /// Whether nothing was written.
    pub fn is_empty(&self) -> bool {
        self.records.is_empty()
    }
}

/// What comes of an act.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Outcome {
    /// The batch; empty when there is nothing to write.
    pub writes: Writes,
    /// What undo needs.
    pub saved: Saved,
}

/// Why an act cannot be done.
#[derive(Clone, Debug, PartialEq)]
pub enum Problem {
    /// The record is not on the shelf.
    NotThere(RecordId),
    /// A field, a value or the clock.
    Log(LogError),
}

impl From<LogError> for Problem {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

/// Does an act. `shelf` holds the records it changes; `draft` is the form whose draft is cleared in the same batch.
///
/// # Errors
/// A record that is not on the shelf, a body that cannot be stored, a clock at its end. Then nothing is written.
pub fn apply(
    act: &Act,
    shelf: &Shelf,
    context: &Context,
    draft: Option<&str>,
) -> Result<Outcome, Problem> {
    let mut writer = Writer {
        shelf,
        context,
        by: context.by.clone(),
        who: None,
        last: context.last,
        written: Vec::new(),
        pictures: Vec::new(),
        saved: Saved::default(),
    };
    writer.act(act)?;
    let mut rows = Vec::with_capacity(writer.written.len());
    for record in &writer.written {
        rows.push(row(record)?);
    }
    let mut meta = BTreeMap::new();
    if !rows.is_empty() {
        meta.extend(
            writer
                .last
                .map(|stamp| (LAST_STAMP.to_owned(), stamp.to_string())),
        );
        meta.extend(writer.who.take().map(|who| (WHO.to_owned(), who.0)));
    }
    Ok(Outcome {
        writes: Writes {
            rows,
            pictures: writer.pictures,
            clear_drafts: draft.map(str::to_owned).into_iter().collect(),
            meta,
        },
        saved: writer.saved,
    })
}

/// A record as a row.
///
/// # Errors
/// A body that has no canonical text.
pub fn row(record: &Record) -> Result<Row, LogError> {
    Ok(Row {
        id: record.id.0.clone(),
        kind: record.kind.word().to_owned(),
        yard: record.yard.as_str().to_owned(),
        subject: record.subject.id().to_owned(),
        at: record.at.to_ms(),
        stamp: record.stamp.to_string(),
        json: record.to_text()?,
    })
}

struct Writer<'a> {
    shelf: &'a Shelf,
    context: &'a Context,
    by: Option<PersonId>,
    who: Option<PersonId>,
    last: Option<Stamp>,
    written: Vec<Record>,
    pictures: Vec<PictureRow>,
    saved: Saved,
}

impl Writer<'_> {
    fn act(&mut self, act: &Act) -> Result<(), Problem> {
        match act {
            Act::Add(new) => self.add(new),
            Act::Change { id, body, at } => {
                let stamp = self.stamp(id)?;
                let held = self.held(id)?;
                let body = self.dated(body, Some(&held));
                let mut next = held.next(stamp, self.by.clone(), &body)?;
                if let Some(at) = at {
                    next.at = *at;
                }
                self.write(next, Some(held));
                Ok(())
            }
            Act::Remove(id) => self.mark(id, true),
            Act::By(person, act) => {
                let before = self.by.replace(person.clone());
                self.who = Some(person.clone());
                let done = self.act(act);
                self.by = before;
                done
            }
            Act::Keep(picture) => {
                self.pictures.push(PictureRow {
                    sha256: picture.sum().as_str().to_owned(),
                    bytes: picture.bytes().to_vec(),
                });
                Ok(())
            }
            Act::All(acts) => acts.iter().try_for_each(|act| self.act(act)),
            Act::Undo(saved) => {
                saved
                    .records
                    .iter()
                    .rev()
                    .try_for_each(|(id, before)| match before {
                        None => self.mark(id, true),
                        Some(before) => {
                            let stamp = self.stamp(id)?;
                            let held = self.held(id)?;
                            let mut back = before.clone();
                            back.after = Some(held.stamp);
                            back.stamp = stamp;
                            back.device = stamp.device();
                            self.write(back, Some(held));
                            Ok(())
                        }
                    })
            }
        }
    }

    fn add(&mut self, new: &New) -> Result<(), Problem> {
        if self.held(&new.id).is_ok() {
            return Ok(());
        }
        let stamp = self.stamp(&new.id)?;
        let context = self.context;
        let origin = Origin {
            yard: context.yard.clone(),
            subject: new.subject.clone(),
            at: new.at.unwrap_or(context.now),
            offset_min: context.offset_min,
            zone: context.zone.clone(),
            by: self.by.clone(),
            known: new.known,
        };
        let body = self.dated(&new.body, None);
        self.write(Record::new(new.id.clone(), origin, stamp, &body)?, None);
        Ok(())
    }

    /// The body of an animal with the days on which what stops it was said; any other as it is.
    fn dated(&self, body: &Body, before: Option<&Record>) -> Body {
        let Body::Animal(animal) = body else {
            return body.clone();
        };
        let before = before.and_then(|record| match Body::read(record) {
            Ok(Body::Animal(before)) => Some(before),
            _ => None,
        });
        let today = self.context.to_local(self.context.now).date;
        Body::Animal(animal.clone().dated(before.as_ref(), today))
    }

    fn mark(&mut self, id: &RecordId, gone: bool) -> Result<(), Problem> {
        let stamp = self.stamp(id)?;
        let held = self.held(id)?;
        let marked = held.marked_gone(stamp, self.by.clone(), gone);
        self.write(marked, Some(held));
        Ok(())
    }

    /// The version that holds, this batch included.
    fn held(&self, id: &RecordId) -> Result<Record, Problem> {
        self.written
            .iter()
            .rev()
            .find(|record| record.id == *id)
            .or_else(|| self.shelf.get(&id.0))
            .cloned()
            .ok_or_else(|| Problem::NotThere(id.clone()))
    }

    /// The next stamp, later than the last of this device and than the version it replaces.
    fn stamp(&mut self, id: &RecordId) -> Result<Stamp, Problem> {
        let over = self.held(id).ok().map(|record| record.stamp);
        let now = self.context.now;
        let stamp = Stamp::tick(self.last.as_ref(), over.as_ref(), now, self.context.device)?;
        self.last = Some(Stamp::clock(self.last.as_ref(), &stamp, now).0);
        Ok(stamp)
    }

    fn write(&mut self, record: Record, before: Option<Record>) {
        self.saved.records.push((record.id.clone(), before));
        self.written.push(record);
    }
}
