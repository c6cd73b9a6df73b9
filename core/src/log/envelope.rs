//! The envelope that every record has.

use super::bodies::Body;
use super::canonical::{write_text, write_value};
use super::error::{Allowed, LogError, Path, Shape};
use super::json::{parse, wrong};
use super::kind::Kind;
use super::stamp::{DeviceId, Stamp};
use super::stored::{INSTANTS, Stored, choice, text, whole};
use super::subject::Subject;
use crate::animal::{PersonId, YardId};
use crate::sources::RecordId;
use crate::units::Instant;
use serde_json::{Map, Value};

choice! {
    /// How far a record is known to be true.
    Known {
        /// Somebody saw, measured or did it.
        Seen = "seen",
        /// Taken as planned; nobody said otherwise.
        Assumed = "assumed",
        /// Nobody knows.
        NotKnown = "not_known",
    }
}

/// The largest offset of a wall clock from UTC, in minutes.
// numeric: eighteen hours, as in ISO 8601 libraries
const OFFSETS: (i64, i64) = (-1_080, 1_080);

/// What a record is about, where and when it happened, and how far it is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Origin {
    /// The yard it belongs to.
    pub yard: YardId,
    /// What it is about.
    pub subject: Subject,
    /// When it happened.
    pub at: Instant,
    /// The offset of the wall clock from UTC where it happened, in minutes east.
    pub offset_min: i32,
    /// The time zone where it happened, by its IANA name.
    pub zone: String,
    /// Who did it or said it, when somebody said who.
    pub by: Option<PersonId>,
    /// How far it is known.
    pub known: Known,
}

/// The fields of the envelope in the order of the canonical text.
const FIELDS: &[&str] = &[
    "after",
    "at",
    "body",
    "by",
    "device",
    "gone",
    "id",
    "kind",
    "known",
    "offset_min",
    "stamp",
    "subject",
    "v",
    "yard",
    "zone",
];

/// A record: one version of a document or an entry, as it lies on the disk.
#[derive(Clone, Debug, PartialEq)]
pub struct Record {
    /// Its id, the same in all its versions. A document's id is the id of its subject.
    pub id: RecordId,
    /// What it is.
    pub kind: Kind,
    /// The version of the shape of its body, from 1.
    pub v: i64,
    /// The yard it belongs to.
    pub yard: YardId,
    /// What it is about.
    pub subject: Subject,
    /// When it happened.
    pub at: Instant,
    /// The offset of the wall clock from UTC where it happened, in minutes east.
    pub offset_min: i32,
    /// The time zone where it happened, by its IANA name.
    pub zone: String,
    /// Who did it or said it, when somebody said who.
    pub by: Option<PersonId>,
    /// The device that wrote this version.
    pub device: DeviceId,
    /// When this version was written, by the log's clock.
    pub stamp: Stamp,
    /// The stamp of the version it was made from; `None` for the first.
    pub after: Option<Stamp>,
    /// Deleted. The record stays, and a later version may bring it back.
    pub gone: bool,
    /// How far it is known.
    pub known: Known,
    /// The body in the shape of `kind` and `v`. It is the truth: what a twin does not know stays in it.
    pub body: Value,
    /// Fields of a later release, kept as they are.
    pub extra: Map<String, Value>,
}

impl Record {
    /// The first version of a record.
    ///
    /// Error: the body is [`Body::Unread`].
    pub fn new(id: RecordId, origin: Origin, stamp: Stamp, body: &Body) -> Result<Self, LogError> {
        let root = Path::Record(id.0.as_str());
        let (Some(kind), Some(value)) = (body.kind(), body.to_value()) else {
            return Err(root.key("body").missing());
        };
        Ok(Self {
            v: kind.latest().unwrap_or(1),
            kind,
            yard: origin.yard,
            subject: origin.subject,
            at: origin.at,
            offset_min: origin.offset_min,
            zone: origin.zone,
            by: origin.by,
            device: stamp.device(),
            stamp,
            after: None,
            gone: false,
            known: origin.known,
            body: value,
            extra: Map::new(),
            id,
        })
    }

    /// From its text, canonical or not. Field and value stand in the error, and the id when it could be read.
    pub fn from_text(text: &str) -> Result<Self, LogError> {
        Self::from_value(parse(text)?)
    }

    /// From its JSON tree. The body is not looked into; see [`super::Body::read`].
    pub fn from_value(value: Value) -> Result<Self, LogError> {
        let name = value.get("id").and_then(Value::as_str).unwrap_or_default();
        let name = name.to_owned();
        let root = if name.is_empty() {
            Path::Root
        } else {
            Path::Record(&name)
        };
        let mut map = match value {
            Value::Object(map) => map,
            other => return Err(wrong(Some(&other), Shape::Object, &root)),
        };
        let body = match map.remove("body") {
            Some(Value::Object(body)) => Value::Object(body),
            other => return Err(wrong(other.as_ref(), Shape::Object, &root.key("body"))),
        };
        let get = |key: &str| map.get(key);
        let device_path = root.key("device");
        let stamp_path = root.key("stamp");
        let after_path = root.key("after");
        let kind_path = root.key("kind");
        let subject_path = root.key("subject");
        let offset = whole(get("offset_min"), OFFSETS, &root.key("offset_min"))?;
        let mut record = Self {
            id: Stored::read(get("id"), &root.key("id"))?,
            kind: Kind::read(text(get("kind"), &kind_path)?, &kind_path)?,
            v: whole(get("v"), (1, i64::from(u16::MAX)), &root.key("v"))?,
            yard: Stored::read(get("yard"), &root.key("yard"))?,
            subject: Subject::read(text(get("subject"), &subject_path)?, &subject_path)?,
            at: Instant::from_ms(whole(get("at"), INSTANTS, &root.key("at"))?),
            offset_min: i32::try_from(offset).unwrap_or_default(),
            zone: zone(get("zone"), &root.key("zone"))?,
            by: Stored::read(get("by"), &root.key("by"))?,
            device: DeviceId::read(text(get("device"), &device_path)?, &device_path)?,
            stamp: Stamp::read(text(get("stamp"), &stamp_path)?, &stamp_path)?,
            after: match get("after") {
                None | Some(Value::Null) => None,
                some => Some(Stamp::read(text(some, &after_path)?, &after_path)?),
            },
            gone: Option::<bool>::read(get("gone"), &root.key("gone"))?.unwrap_or(false),
            known: Stored::read(get("known"), &root.key("known"))?,
            body,
            extra: Map::new(),
        };
        if record.after.is_some_and(|after| after >= record.stamp) {
            return Err(after_path.refuse(&record.stamp.to_string(), Allowed::Rising));
        }
        map.retain(|key, _| !FIELDS.contains(&key.as_str()));
        record.extra = map;
        Ok(record)
    }

    /// The canonical text: the record as it lies on the disk and in an export.
    ///
    /// Errors: those of [`super::canonical`], which only a body made outside this room can cause.
    pub fn to_text(&self) -> Result<String, LogError> {
        let mut out = String::new();
        self.write(&mut out)?;
        Ok(out)
    }

    /// Writes the canonical text after what is in `out`.
    pub(crate) fn write(&self, out: &mut String) -> Result<(), LogError> {
        let root = Path::Record(self.id.0.as_str());
        let mut fields: Vec<(&str, Part<'_>)> = self
            .extra
            .iter()
            .filter(|(key, _)| !FIELDS.contains(&key.as_str()))
            .map(|(key, value)| (key.as_str(), Part::Tree(value)))
            .collect();
        fields.extend(
            self.after
                .map(|after| ("after", Part::Text(after.to_string()))),
        );
        fields.extend(self.by.as_ref().map(|by| ("by", Part::Text(by.0.clone()))));
        let known = self.known.write();
        fields.extend(known.as_ref().map(|known| ("known", Part::Tree(known))));
        fields.extend([
            ("at", Part::Whole(self.at.to_ms())),
            ("body", Part::Tree(&self.body)),
            ("device", Part::Text(self.device.to_string())),
            ("gone", Part::Flag(self.gone)),
            ("id", Part::Text(self.id.0.clone())),
            ("kind", Part::Text(self.kind.word().to_owned())),
            ("offset_min", Part::Whole(i64::from(self.offset_min))),
            ("stamp", Part::Text(self.stamp.to_string())),
            ("subject", Part::Text(self.subject.to_string())),
            ("v", Part::Whole(self.v)),
            ("yard", Part::Text(self.yard.0.clone())),
            ("zone", Part::Text(self.zone.clone())),
        ]);
        fields.sort_unstable_by_key(|(key, _)| *key);
        for (index, (key, part)) in fields.iter().enumerate() {
            out.push(if index == 0 { '{' } else { ',' });
            write_text(out, key);
            out.push(':');
            match part {
                Part::Text(text) => write_text(out, text),
                Part::Whole(whole) => out.push_str(&whole.to_string()),
                Part::Flag(flag) => out.push_str(if *flag { "true" } else { "false" }),
                Part::Tree(value) => write_value(out, value, &root.key(key), 1)?,
            }
        }
        out.push('}');
        Ok(())
    }

    /// The next version of this record: the same id, kind, yard, subject and time, made from this version.
    ///
    /// `body` is laid over the present body: what this release does not know of it stays.
    ///
    /// Errors: the body is of another kind, or the record was written by a later release and cannot be edited here
    /// without loss; and those of [`Body::read`].
    pub fn next(&self, stamp: Stamp, by: Option<PersonId>, body: &Body) -> Result<Self, LogError> {
        let body = body.over(self)?;
        Ok(Self {
            v: self.kind.latest().unwrap_or(self.v),
            body,
            ..self.again(stamp, by)
        })
    }

    /// The next version, deleted (or, with `false`, brought back).
    #[must_use]
    pub fn marked_gone(&self, stamp: Stamp, by: Option<PersonId>, gone: bool) -> Self {
        Self {
            gone,
            ..self.again(stamp, by)
        }
    }

    /// The same content as a new version.
    fn again(&self, stamp: Stamp, by: Option<PersonId>) -> Self {
        Self {
            by,
            device: stamp.device(),
            stamp,
            after: Some(self.stamp),
            ..self.clone()
        }
    }
}

/// A field on its way into the text.
enum Part<'a> {
    Text(String),
    Whole(i64),
    Flag(bool),
    Tree(&'a Value),
}

/// The IANA name of a zone.
fn zone(value: Option<&Value>, path: &Path<'_>) -> Result<String, LogError> {
    let name = text(value, path)?;
    // numeric: twice the longest name in use
    let longest = 64;
    let fits = (1..=longest).contains(&name.len())
        && name
            .bytes()
            .all(|l| l.is_ascii_alphanumeric() || b"/_+-".contains(&l));
    if fits {
        Ok(name.to_owned())
    } else {
        Err(path.refuse(name, Allowed::Named(longest)))
    }
}
