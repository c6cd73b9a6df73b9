//! How a stored twin is read and written.
//!
//! A twin is a plain struct in the shape that lies on the disk: whole numbers in a base unit, words, texts. It is not
//! derived but read by hand from the JSON tree, so that an error names record, field, value and what is allowed, and so
//! that the code stays small in the browser. The macros below only spare the repetition.

use super::error::{Allowed, Form, LogError, Path, Shape};
use super::json::wrong;
use super::subject::is_id;
use crate::animal::{AnimalId, FoodId, GroupId, LotId, NetId, PaddockId, PersonId, TubId, YardId};
use crate::sources::RecordId;
use crate::units::{Instant, LocalDate, LocalTime};
use serde_json::{Map, Value};

/// The longest free text, in characters.
// numeric: some pages of remarks
const LONGEST_TEXT: usize = 20_000;
/// The longest name, in characters.
// numeric: what a label or a line on a screen can carry
const LONGEST_NAME: usize = 200;

/// Something that is stored.
pub(crate) trait Stored: Sized {
    /// Reads it; `None` stands for a field that is not there.
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError>;
    /// Writes it; `None` leaves the field out.
    fn write(&self) -> Option<Value>;
}

/// Puts a field into an object unless it is left out.
pub(crate) fn put(map: &mut Map<String, Value>, key: &str, value: Option<Value>) {
    if let Some(value) = value {
        map.insert(key.to_owned(), value);
    }
}

/// A text.
pub(crate) fn text<'a>(value: Option<&'a Value>, path: &Path<'_>) -> Result<&'a str, LogError> {
    match value {
        Some(Value::String(text)) => Ok(text),
        other => Err(wrong(other, Shape::Text, path)),
    }
}

/// A whole number in a range.
pub(crate) fn whole(
    value: Option<&Value>,
    (min, max): (i64, i64),
    path: &Path<'_>,
) -> Result<i64, LogError> {
    match value {
        Some(Value::Number(number)) => match number.as_i64() {
            Some(whole) if (min..=max).contains(&whole) => Ok(whole),
            _ => Err(path.refuse(&number.to_string(), Allowed::Range { min, max })),
        },
        other => Err(wrong(other, Shape::Whole, path)),
    }
}

/// A field that may be left out. Null is read as left out.
impl<T: Stored> Stored for Option<T> {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        match value {
            None | Some(Value::Null) => Ok(None),
            some => T::read(some, path).map(Some),
        }
    }

    fn write(&self) -> Option<Value> {
        self.as_ref().and_then(Stored::write)
    }
}

/// What is too large to lie in every body of its kind.
impl<T: Stored> Stored for Box<T> {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        T::read(value, path).map(Self::new)
    }

    fn write(&self) -> Option<Value> {
        self.as_ref().write()
    }
}

/// A list; always written, and read as empty when it is left out.
impl<T: Stored> Stored for Vec<T> {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        match value {
            None => Ok(Self::new()),
            Some(Value::Array(items)) => items
                .iter()
                .enumerate()
                .map(|(index, item)| T::read(Some(item), &path.index(index)))
                .collect(),
            other => Err(wrong(other, Shape::Array, path)),
        }
    }

    fn write(&self) -> Option<Value> {
        Some(Value::Array(
            self.iter().filter_map(Stored::write).collect(),
        ))
    }
}

impl Stored for bool {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        match value {
            Some(Value::Bool(flag)) => Ok(*flag),
            other => Err(wrong(other, Shape::Flag, path)),
        }
    }

    fn write(&self) -> Option<Value> {
        Some(Value::Bool(*self))
    }
}

/// Free text; may be empty.
impl Stored for String {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        let text = text(value, path)?;
        if text.chars().count() > LONGEST_TEXT {
            return Err(path.refuse(text, Allowed::UpTo(LONGEST_TEXT)));
        }
        Ok(text.to_owned())
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.as_str()))
    }
}

/// A name: not blank, at most 200 characters.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Name(String);

impl Name {
    /// From a text.
    pub fn new(text: &str) -> Result<Self, LogError> {
        Self::checked(text, &Path::Root.key("name"))
    }

    fn checked(text: &str, path: &Path<'_>) -> Result<Self, LogError> {
        if text.trim().is_empty() || text.chars().count() > LONGEST_NAME {
            return Err(path.refuse(text, Allowed::Named(LONGEST_NAME)));
        }
        Ok(Self(text.to_owned()))
    }

    /// The text.
    pub fn as_str(&self) -> &str {
        &self.0
    }
}

impl Stored for Name {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        Self::checked(text(value, path)?, path)
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.as_str()))
    }
}

/// The first and last millisecond that is believed: from 1900 to the end of 9999.
// numeric: 1900-01-01 and 9999-12-31T23:59:59.999 in UTC
pub(crate) const INSTANTS: (i64, i64) = (-2_208_988_800_000, 253_402_300_799_999);

/// Milliseconds of UTC since 1970.
impl Stored for Instant {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        whole(value, INSTANTS, path).map(Self::from_ms)
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.to_ms()))
    }
}

/// `YYYY-MM-DD`.
impl Stored for LocalDate {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        let text = text(value, path)?;
        text.parse()
            .ok()
            .filter(|date: &Self| date.to_string() == text)
            .ok_or_else(|| path.refuse(text, Allowed::Form(Form::Date)))
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.to_string()))
    }
}

/// `HH:MM`.
impl Stored for LocalTime {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        let text = text(value, path)?;
        Self::parse_from_str(text, "%H:%M")
            .ok()
            .filter(|time| time.format("%H:%M").to_string() == text)
            .ok_or_else(|| path.refuse(text, Allowed::Form(Form::Time)))
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.format("%H:%M").to_string()))
    }
}

/// Reads an id.
pub(crate) fn id(value: Option<&Value>, path: &Path<'_>) -> Result<String, LogError> {
    let text = text(value, path)?;
    if is_id(text) {
        Ok(text.to_owned())
    } else {
        Err(path.refuse(text, Allowed::Form(Form::Id)))
    }
}

macro_rules! stored_ids {
    ($($name:ident),*) => {$(
        impl Stored for $name {
            fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
                id(value, path).map(Self)
            }

            fn write(&self) -> Option<Value> {
                Some(Value::from(self.0.as_str()))
            }
        }
    )*};
}
stored_ids!(
    AnimalId, GroupId, LotId, FoodId, NetId, TubId, PaddockId, YardId, PersonId, RecordId
);

/// Defines a twin: `twin! { /// docs Name { /// docs field: Type, } }`.
macro_rules! twin {
    ($(#[$doc:meta])* $name:ident { $($(#[$field_doc:meta])* $field:ident: $type:ty),* $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Debug, PartialEq)]
        pub struct $name {
            $($(#[$field_doc])* pub $field: $type,)*
        }

        impl $crate::log::stored::Stored for $name {
            fn read(
                value: Option<&serde_json::Value>,
                path: &$crate::log::error::Path<'_>,
            ) -> Result<Self, $crate::log::LogError> {
                let map = $crate::log::json::object(value, path)?;
                Ok(Self {
                    $($field: $crate::log::stored::Stored::read(
                        map.get(stringify!($field)),
                        &path.key(stringify!($field)),
                    )?,)*
                })
            }

            fn write(&self) -> Option<serde_json::Value> {
                let mut map = serde_json::Map::new();
                $($crate::log::stored::put(
                    &mut map,
                    stringify!($field),
                    $crate::log::stored::Stored::write(&self.$field),
                );)*
                Some(serde_json::Value::Object(map))
            }
        }
    };
}
pub(crate) use twin;

/// Gives an enum of plain choices its stored words: `words! { Kind { Horse = "horse", } }`. Missing variants do not
/// compile.
macro_rules! words {
    ($type:ty { $($variant:ident = $word:literal),* $(,)? }) => {
        impl $crate::log::stored::Stored for $type {
            fn read(
                value: Option<&serde_json::Value>,
                path: &$crate::log::error::Path<'_>,
            ) -> Result<Self, $crate::log::LogError> {
                let text = $crate::log::stored::text(value, path)?;
                match text {
                    $($word => Ok(Self::$variant),)*
                    _ => Err(path.refuse(text, $crate::log::Allowed::OneOf(&[$($word),*]))),
                }
            }

            fn write(&self) -> Option<serde_json::Value> {
                Some(serde_json::Value::from(match self {
                    $(Self::$variant => $word,)*
                }))
            }
        }
    };
}
pub(crate) use words;

/// Defines a choice of this room with its stored words: `choice! { /// docs Name { /// docs Variant = "word", } }`.
macro_rules! choice {
    ($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident = $word:literal),* $(,)? }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum $name {
            $($(#[$variant_doc])* $variant,)*
        }

        $crate::log::stored::words!($name { $($variant = $word),* });
    };
}
pub(crate) use choice;

/// Stores a plain struct of another room field by field: `fields! { Type { a, b } }`. A new field does not compile
/// until it has its place here.
macro_rules! fields {
    ($type:ty { $($field:ident),* $(,)? }) => {
        impl $crate::log::stored::Stored for $type {
            fn read(
                value: Option<&serde_json::Value>,
                path: &$crate::log::error::Path<'_>,
            ) -> Result<Self, $crate::log::LogError> {
                let map = $crate::log::json::object(value, path)?;
                Ok(Self {
                    $($field: $crate::log::stored::Stored::read(
                        map.get(stringify!($field)),
                        &path.key(stringify!($field)),
                    )?,)*
                })
            }

            fn write(&self) -> Option<serde_json::Value> {
                let mut map = serde_json::Map::new();
                $($crate::log::stored::put(
                    &mut map,
                    stringify!($field),
                    $crate::log::stored::Stored::write(&self.$field),
                );)*
                Some(serde_json::Value::Object(map))
            }
        }
    };
}
pub(crate) use fields;

/// Stores an enum with values as an object with a word: `tagged! { Type by "state" { Variant = "word" { member: key } } }`.
/// A member of a tuple variant is its number.
macro_rules! tagged {
    ($type:ty, by $tag:literal { $($variant:ident = $word:literal { $($member:tt: $key:ident),* }),* $(,)? }) => {
        impl $crate::log::stored::Stored for $type {
            fn read(
                value: Option<&serde_json::Value>,
                path: &$crate::log::error::Path<'_>,
            ) -> Result<Self, $crate::log::LogError> {
                let map = $crate::log::json::object(value, path)?;
                let tag = path.key($tag);
                let word = $crate::log::stored::text(map.get($tag), &tag)?;
                match word {
                    $($word => Ok(Self::$variant {
                        $($member: $crate::log::stored::Stored::read(
                            map.get(stringify!($key)),
                            &path.key(stringify!($key)),
                        )?,)*
                    }),)*
                    _ => Err(tag.refuse(word, $crate::log::Allowed::OneOf(&[$($word),*]))),
                }
            }

            fn write(&self) -> Option<serde_json::Value> {
                let mut map = serde_json::Map::new();
                let word = match self {
                    $(Self::$variant { $($member: $key),* } => {
                        $($crate::log::stored::put(
                            &mut map,
                            stringify!($key),
                            $crate::log::stored::Stored::write($key),
                        );)*
                        $word
                    })*
                };
                map.insert($tag.to_owned(), serde_json::Value::from(word));
                Some(serde_json::Value::Object(map))
            }
        }
    };
}
pub(crate) use tagged;
