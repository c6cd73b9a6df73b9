//! The one error of this room: which record, which field, which value, and what is allowed.

use std::fmt;

/// Where in a log something stands.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Place {
    /// The id of the record, when it could be read.
    pub record: Option<String>,
    /// The row of the record in its bundle, counted from 0.
    pub row: Option<usize>,
    /// The field, as a path: `body.girth.mm`, `records`.
    pub field: String,
}

/// What kind of JSON value was expected or found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Shape {
    /// An object.
    Object,
    /// An array.
    Array,
    /// A text.
    Text,
    /// A whole number.
    Whole,
    /// True or false.
    Flag,
    /// Null.
    Null,
}

/// How a text must be built.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    /// An id: 1 to 64 of lower-case letters, digits and hyphens.
    Id,
    /// A device: eight lower-case letters or digits.
    Device,
    /// A stamp: `ms(13)-counter(4)-device(8)`.
    Stamp,
    /// A subject: `animal:` and an id.
    Subject,
    /// A kind of record: 1 to 40 of lower-case letters, digits and underscores.
    Kind,
    /// A local day, `YYYY-MM-DD`.
    Date,
    /// A local day, or a month or a year alone.
    DateMonthOrYear,
    /// A local time, `HH:MM`.
    Time,
    /// A decimal as reported: digits with one point, no exponent.
    Decimal,
    /// An ISO 4217 code.
    Currency,
    /// A key of a job.
    JobKey,
    /// A SHA-256 in lower-case hexadecimal digits.
    Sha256,
}

/// What a field allows.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Allowed {
    /// A whole number in a range, both ends included.
    Range {
        /// The smallest.
        min: i64,
        /// The largest.
        max: i64,
    },
    /// One of these words.
    OneOf(&'static [&'static str]),
    /// A text of at most this many characters that is not blank.
    Named(usize),
    /// A text of at most this many characters.
    UpTo(usize),
    /// A text of this form.
    Form(Form),
    /// Rising without a repeat, as the changes of a zone.
    Rising,
    /// Set exactly when the word beside it asks for it.
    AsItsWordAsks,
}

/// Why a record, a bundle or a case was refused. Nothing is applied in part.
#[derive(Clone, Debug, PartialEq)]
pub enum LogError {
    /// The text is not JSON.
    NotJson {
        /// The line, counted from 1.
        line: usize,
        /// The column, counted from 1.
        column: usize,
    },
    /// An object holds a key twice, so that it can be read two ways.
    RepeatedKey {
        /// Where.
        place: Place,
    },
    /// A number with a fraction or an exponent: canonical text holds none.
    Fraction {
        /// Where.
        place: Place,
    },
    /// A whole number that not every reader keeps exactly (beyond 2^53 - 1).
    Inexact {
        /// Where.
        place: Place,
    },
    /// Nested deeper than any record needs.
    TooDeep {
        /// Where.
        place: Place,
    },
    /// A field that must be there is not.
    Missing {
        /// Where.
        place: Place,
    },
    /// The wrong kind of value.
    WrongShape {
        /// Where.
        place: Place,
        /// What was expected.
        expected: Shape,
        /// What was found.
        found: Shape,
    },
    /// A value outside what the field allows.
    NotAllowed {
        /// Where.
        place: Place,
        /// The value, cut after 80 characters.
        value: String,
        /// What is allowed.
        allowed: Allowed,
    },
    /// A value that the room it belongs to refuses.
    OutOfRange {
        /// Where.
        place: Place,
        /// The field, the value and the range of that room.
        range: crate::units::OutOfRange,
    },
    /// The document is not a log of this program.
    NotALog,
    /// The document was written by a later release, in a format that this one cannot read without loss.
    NewerFormat {
        /// The version of the document.
        version: i64,
        /// The latest version that is read.
        known: i64,
    },
    /// The document holds another number of records than it says: a part is missing.
    Counts {
        /// What it says.
        said: i64,
        /// What it holds.
        held: i64,
    },
    /// The sum of the document does not fit its content: it was changed or damaged on its way.
    Seal,
    /// The bytes are no JPEG picture.
    NotAPicture,
    /// The clock stands at the end of what a stamp can say (the year 2286).
    ClockAtEnd,
    /// The record is of another kind than was asked for.
    OtherKind {
        /// Where.
        place: Place,
        /// The kind it is.
        kind: String,
    },
}

impl LogError {
    /// Where it happened, when it happened in one place.
    pub const fn place(&self) -> Option<&Place> {
        match self {
            Self::RepeatedKey { place }
            | Self::Fraction { place }
            | Self::Inexact { place }
            | Self::TooDeep { place }
            | Self::Missing { place }
            | Self::WrongShape { place, .. }
            | Self::NotAllowed { place, .. }
            | Self::OutOfRange { place, .. }
            | Self::OtherKind { place, .. } => Some(place),
            Self::NotJson { .. }
            | Self::NotALog
            | Self::NewerFormat { .. }
            | Self::Counts { .. }
            | Self::Seal
            | Self::NotAPicture
            | Self::ClockAtEnd => None,
        }
    }
}

/// For developers; the screens word it from the variants.
impl fmt::Display for LogError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{self:?}")
    }
}

impl std::error::Error for LogError {}

/// A path from a record or a document down to a value, built on the stack and turned to text only for an error.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Path<'a> {
    /// A document, or a value outside any record.
    Root,
    /// A record whose id was read.
    Record(&'a str),
    /// A key of an object.
    Key(&'a Path<'a>, &'a str),
    /// An element of an array.
    Index(&'a Path<'a>, usize),
}

impl<'a> Path<'a> {
    /// The path to a key of this object.
    pub(crate) const fn key(&'a self, key: &'a str) -> Path<'a> {
        Path::Key(self, key)
    }

    /// The path to an element of this array.
    pub(crate) const fn index(&'a self, index: usize) -> Path<'a> {
        Path::Index(self, index)
    }

    /// The path as the place of an error.
    pub(crate) fn place(&self) -> Place {
        let mut place = Place::default();
        self.walk(&mut place);
        place
    }

    fn walk(&self, place: &mut Place) {
        match self {
            Self::Root => {}
            Self::Record(id) => place.record = Some((*id).to_owned()),
            Self::Key(parent, key) => {
                parent.walk(place);
                if !place.field.is_empty() {
                    place.field.push('.');
                }
                place.field.push_str(key);
            }
            Self::Index(parent, index) => {
                parent.walk(place);
                place.field.push('[');
                place.field.push_str(&index.to_string());
                place.field.push(']');
            }
        }
    }

    /// The error of a value that is not allowed here.
    pub(crate) fn refuse(&self, value: &str, allowed: Allowed) -> LogError {
        LogError::NotAllowed {
            place: self.place(),
            value: shortened(value),
            allowed,
        }
    }

    /// The error of a value that is not there.
    pub(crate) fn missing(&self) -> LogError {
        LogError::Missing {
            place: self.place(),
        }
    }
}

/// The start of a value, so that an error stays short whatever was sent.
fn shortened(value: &str) -> String {
    // numeric: enough to recognise a value by
    value.chars().take(80).collect()
}
