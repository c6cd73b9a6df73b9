//! The export: one JSON document with its counts and its sum, and the import that takes it whole or not at all.
//!
//! ```text
//! {"app":"0.1.0","counts":{"records":2,"versions":3},"format":"tussock-log","made_at":1777000000000,
//!  "records":[…],"sha256":"…","version":1}
//! ```
//!
//! - `records` holds every version of every record, by id and then by stamp. `counts.records` counts ids, and
//!   `counts.versions` the length of the list.
//! - `sha256` is over the canonical text of the document without the field `sha256`.
//! - Pictures are named by their sums in the records and travel beside the document, each as a file of its own;
//!   [`super::pictures`] says which.
//! - A later release may add fields at the top; they are kept. A change that this release could not read without loss
//!   raises `version`, and the document is refused.

use super::bodies::Body;
use super::canonical::{write_text, write_value};
use super::envelope::Record;
use super::error::{Allowed, Form, LogError, Path, Shape};
use super::json::{at_row, object, parse, wrong};
use super::merge::Log;
use super::stored::{INSTANTS, Stored, text, whole};
use super::sum::{is_sum, sum};
use crate::units::Instant;
use serde_json::{Map, Value};

/// What the field `format` says.
const FORMAT: &str = "tussock-log";
/// The latest version of the document that is read, and the one that is written.
const VERSION: i64 = 1;
/// The fields of this release.
const FIELDS: &[&str] = &[
    "app", "counts", "format", "made_at", "records", "sha256", "version",
];

/// A document of records.
#[derive(Clone, Debug, PartialEq)]
pub struct Bundle {
    /// The release that wrote it.
    pub app: String,
    /// When it was written.
    pub made_at: Instant,
    /// The records, with their history.
    pub log: Log,
    /// Further fields at the top, kept as they are.
    pub extra: Map<String, Value>,
}

impl Bundle {
    /// The canonical text, with counts and sum.
    ///
    /// Errors: those of [`super::canonical`], which only a field made outside this room can cause.
    pub fn to_text(&self) -> Result<String, LogError> {
        let mut header = self.extra.clone();
        header.retain(|key, _| !FIELDS.contains(&key.as_str()));
        header.insert("app".to_owned(), Value::from(self.app.as_str()));
        header.insert("made_at".to_owned(), Value::from(self.made_at.to_ms()));
        header.insert("format".to_owned(), Value::from(FORMAT));
        header.insert("version".to_owned(), Value::from(VERSION));
        let mut counts = Map::new();
        counts.insert("records".to_owned(), Value::from(self.log.len()));
        counts.insert("versions".to_owned(), Value::from(self.log.all().count()));
        header.insert("counts".to_owned(), Value::Object(counts));
        let texts: Vec<&str> = self.log.texts().collect();
        let (mut text, slot) = document(&header, &texts)?;
        let sum = sum(text.as_bytes());
        text.insert_str(slot, &format!("\"sha256\":\"{sum}\","));
        Ok(text)
    }

    /// Reads an export and proves it: every record in its shape, the counts, the sum.
    ///
    /// Nothing is taken in part: the first thing that is wrong is the answer, with the row, the id and the field of the
    /// record. Kinds, versions and fields of a later release are kept.
    pub fn read(text: &str) -> Result<Self, LogError> {
        Self::read_document(parse(text)?, true)
    }

    /// Reads a document that a person wrote by hand: counts and sum may be missing; if they are there, they must fit.
    pub fn read_unsealed(text: &str) -> Result<Self, LogError> {
        Self::read_document(parse(text)?, false)
    }

    fn read_document(document: Value, sealed: bool) -> Result<Self, LogError> {
        let root = Path::Root;
        let Value::Object(mut header) = document else {
            return Err(LogError::NotALog);
        };
        if header.get("format").and_then(Value::as_str) != Some(FORMAT) {
            return Err(LogError::NotALog);
        }
        let version = whole(header.get("version"), (1, i64::MAX), &root.key("version"))?;
        if version > VERSION {
            return Err(LogError::NewerFormat {
                version,
                known: VERSION,
            });
        }
        let records = match header.remove("records") {
            Some(Value::Array(records)) => records,
            other => return Err(wrong(other.as_ref(), Shape::Array, &root.key("records"))),
        };
        let seal = header.remove("sha256");
        // Looked at after the records, so that what is wrong in one of them is named first.
        let seal = check_seal(seal.as_ref(), &header, &records, sealed);
        let held = records.len();
        let mut log = Log::new();
        for (row, value) in records.into_iter().enumerate() {
            let record = Record::from_value(value).map_err(|error| at_row(error, row))?;
            Body::read(&record).map_err(|error| at_row(error, row))?;
            log.add(record).map_err(|error| at_row(error, row))?;
        }
        check_counts(header.get("counts"), log.len(), held, sealed)?;
        seal?;
        let app = String::read(header.get("app"), &root.key("app"))?;
        let made_at = whole(header.get("made_at"), INSTANTS, &root.key("made_at"))?;
        header.retain(|key, _| !FIELDS.contains(&key.as_str()));
        Ok(Self {
            app,
            made_at: Instant::from_ms(made_at),
            log,
            extra: header,
        })
    }
}

/// The text of a document without its sum, and where the sum goes. `version` follows it always.
fn document(
    header: &Map<String, Value>,
    records: &[impl AsRef<str>],
) -> Result<(String, usize), LogError> {
    let mut keys: Vec<&str> = header.keys().map(String::as_str).collect();
    keys.push("records");
    keys.sort_unstable();
    let size = records.iter().map(|record| record.as_ref().len() + 1).sum();
    let mut out = String::with_capacity(size);
    let mut slot = None;
    for (index, key) in keys.iter().enumerate() {
        out.push(if index == 0 { '{' } else { ',' });
        if *key > "sha256" {
            slot.get_or_insert(out.len());
        }
        write_text(&mut out, key);
        out.push(':');
        if let Some(value) = header.get(*key) {
            write_value(&mut out, value, &Path::Root.key(key), 1)?;
        } else {
            for (row, record) in records.iter().enumerate() {
                out.push(if row == 0 { '[' } else { ',' });
                out.push_str(record.as_ref());
            }
            out.push_str(if records.is_empty() { "[]" } else { "]" });
        }
    }
    out.push('}');
    let slot = slot.unwrap_or(out.len());
    Ok((out, slot))
}

/// Whether the sum fits the document as it came.
fn check_seal(
    seal: Option<&Value>,
    header: &Map<String, Value>,
    records: &[Value],
    sealed: bool,
) -> Result<(), LogError> {
    let path = Path::Root.key("sha256");
    if seal.is_none() && !sealed {
        return Ok(());
    }
    let said = text(seal, &path)?;
    if !is_sum(said) {
        return Err(path.refuse(said, Allowed::Form(Form::Sha256)));
    }
    let texts = records
        .iter()
        .enumerate()
        .map(|(row, value)| super::canonical(value).map_err(|error| at_row(error, row)))
        .collect::<Result<Vec<_>, _>>()?;
    let (text, _) = document(header, &texts)?;
    if sum(text.as_bytes()) == said {
        Ok(())
    } else {
        Err(LogError::Seal)
    }
}

/// Whether the document holds as much as it says.
fn check_counts(
    counts: Option<&Value>,
    ids: usize,
    versions: usize,
    sealed: bool,
) -> Result<(), LogError> {
    if counts.is_none() && !sealed {
        return Ok(());
    }
    let path = Path::Root.key("counts");
    let map = object(counts, &path)?;
    for (key, held) in [("records", ids), ("versions", versions)] {
        let said = whole(map.get(key), (0, i64::MAX), &path.key(key))?;
        let held = i64::try_from(held).unwrap_or(i64::MAX);
        if said != held {
            return Err(LogError::Counts { said, held });
        }
    }
    Ok(())
}
