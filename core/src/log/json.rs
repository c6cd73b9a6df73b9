//! Reading JSON as a log needs it: a key twice, a fraction or an inexact number is an error with its path.

use super::canonical::{DEEPEST, LARGEST};
use super::error::{LogError, Path, Place};
use serde::de::{self, DeserializeSeed, Deserializer, MapAccess, SeqAccess, Visitor};
use serde_json::{Map, Value};
use std::fmt;

/// One step of the path from the top of the document.
enum Step {
    Key(String),
    Index(usize),
}

/// Where the reader is, and the first thing that it refused.
#[derive(Default)]
struct Reader {
    path: Vec<Step>,
    refused: Option<LogError>,
}

/// Reads one JSON value. A byte order mark before it and any white space around it are allowed.
///
/// Errors: [`LogError::NotJson`] with line and column, or what this format refuses, with the path from the top.
pub fn parse(text: &str) -> Result<Value, LogError> {
    let text = text.strip_prefix('\u{feff}').unwrap_or(text);
    let mut reader = Reader::default();
    let mut source = serde_json::Deserializer::from_str(text);
    let read = Seed(&mut reader)
        .deserialize(&mut source)
        .and_then(|value| source.end().map(|()| value));
    read.map_err(|error| {
        reader.refused.take().unwrap_or(LogError::NotJson {
            line: error.line(),
            column: error.column(),
        })
    })
}

impl Reader {
    fn place(&self) -> Place {
        let mut field = String::new();
        for step in &self.path {
            match step {
                Step::Key(key) => {
                    if !field.is_empty() {
                        field.push('.');
                    }
                    field.push_str(key);
                }
                Step::Index(index) => {
                    field.push('[');
                    field.push_str(&index.to_string());
                    field.push(']');
                }
            }
        }
        place_in_bundle(field)
    }

    /// Keeps the first refusal and stops the parser.
    fn refuse<E: de::Error>(&mut self, refused: impl FnOnce(Place) -> LogError) -> E {
        let place = self.place();
        self.refused.get_or_insert_with(|| refused(place));
        E::custom("refused")
    }
}

/// A path that begins with `records[17].` is the place of a field of row 17.
fn place_in_bundle(field: String) -> Place {
    let row = field
        .strip_prefix("records[")
        .and_then(|rest| rest.split_once(']'))
        .and_then(|(row, rest)| {
            Some(Place {
                record: None,
                row: Some(row.parse().ok()?),
                field: rest.strip_prefix('.').unwrap_or(rest).to_owned(),
            })
        });
    row.unwrap_or_else(|| Place {
        field,
        ..Place::default()
    })
}

/// Reads a value into the tree while the reader watches.
struct Seed<'a>(&'a mut Reader);

impl<'de> DeserializeSeed<'de> for Seed<'_> {
    type Value = Value;
    fn deserialize<D: Deserializer<'de>>(self, source: D) -> Result<Value, D::Error> {
        if self.0.path.len() > DEEPEST + 2 {
            return Err(self.0.refuse(|place| LogError::TooDeep { place }));
        }
        source.deserialize_any(self)
    }
}

impl<'de> Visitor<'de> for Seed<'_> {
    type Value = Value;

    fn expecting(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("a JSON value")
    }

    fn visit_unit<E: de::Error>(self) -> Result<Value, E> {
        Ok(Value::Null)
    }

    fn visit_bool<E: de::Error>(self, flag: bool) -> Result<Value, E> {
        Ok(Value::Bool(flag))
    }

    fn visit_i64<E: de::Error>(self, whole: i64) -> Result<Value, E> {
        if whole.unsigned_abs() > LARGEST.unsigned_abs() {
            return Err(self.0.refuse(|place| LogError::Inexact { place }));
        }
        Ok(Value::from(whole))
    }

    fn visit_u64<E: de::Error>(self, whole: u64) -> Result<Value, E> {
        match i64::try_from(whole) {
            Ok(whole) => self.visit_i64(whole),
            Err(_) => Err(self.0.refuse(|place| LogError::Inexact { place })),
        }
    }

    fn visit_f64<E: de::Error>(self, _: f64) -> Result<Value, E> {
        Err(self.0.refuse(|place| LogError::Fraction { place }))
    }

    fn visit_str<E: de::Error>(self, text: &str) -> Result<Value, E> {
        Ok(Value::from(text))
    }

    fn visit_string<E: de::Error>(self, text: String) -> Result<Value, E> {
        Ok(Value::String(text))
    }

    fn visit_seq<A: SeqAccess<'de>>(self, mut items: A) -> Result<Value, A::Error> {
        let mut array = Vec::new();
        loop {
            self.0.path.push(Step::Index(array.len()));
            let Some(item) = items.next_element_seed(Seed(&mut *self.0))? else {
                break;
            };
            self.0.path.pop();
            array.push(item);
        }
        self.0.path.pop();
        Ok(Value::Array(array))
    }

    fn visit_map<A: MapAccess<'de>>(self, mut entries: A) -> Result<Value, A::Error> {
        let mut map = Map::new();
        while let Some(key) = entries.next_key::<String>()? {
            self.0.path.push(Step::Key(key.clone()));
            if map.contains_key(&key) {
                return Err(self.0.refuse(|place| LogError::RepeatedKey { place }));
            }
            let item = entries.next_value_seed(Seed(&mut *self.0))?;
            self.0.path.pop();
            map.insert(key, item);
        }
        Ok(Value::Object(map))
    }
}

/// Puts the row of a bundle, and the id when it is known, into an error about a record.
pub(crate) fn at_row(error: LogError, row: usize) -> LogError {
    let mut error = error;
    if let LogError::RepeatedKey { place }
    | LogError::Fraction { place }
    | LogError::Inexact { place }
    | LogError::TooDeep { place }
    | LogError::Missing { place }
    | LogError::WrongShape { place, .. }
    | LogError::NotAllowed { place, .. }
    | LogError::OutOfRange { place, .. }
    | LogError::OtherKind { place, .. } = &mut error
    {
        place.row = Some(row);
    }
    error
}

/// The object behind a value.
pub(crate) fn object<'a>(
    value: Option<&'a Value>,
    path: &Path<'_>,
) -> Result<&'a Map<String, Value>, LogError> {
    match value {
        Some(Value::Object(map)) => Ok(map),
        other => Err(wrong(other, super::error::Shape::Object, path)),
    }
}

/// The error of a value that is missing or of another shape.
pub(crate) fn wrong(
    value: Option<&Value>,
    expected: super::error::Shape,
    path: &Path<'_>,
) -> LogError {
    use super::error::Shape;
    let found = match value {
        None => return path.missing(),
        Some(Value::Null) => Shape::Null,
        Some(Value::Bool(_)) => Shape::Flag,
        Some(Value::Number(_)) => Shape::Whole,
        Some(Value::String(_)) => Shape::Text,
        Some(Value::Array(_)) => Shape::Array,
        Some(Value::Object(_)) => Shape::Object,
    };
    LogError::WrongShape {
        place: path.place(),
        expected,
        found,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn refused(text: &str) -> (LogError, String) {
        let error = parse(text).unwrap_err();
        let field = error.place().map(|p| p.field.clone()).unwrap_or_default();
        (error, field)
    }

    #[test]
    fn what_can_be_read_two_ways_or_loses_digits_is_refused_with_its_path() {
        let (error, field) = refused(r#"{"a":[{"b":1,"b":2}]}"#);
        assert!(matches!(error, LogError::RepeatedKey { .. }));
        assert_eq!(field, "a[0].b");
        let (error, field) = refused(r#"{"records":[0,{"body":{"g":[1,2.0]}}]}"#);
        assert!(matches!(&error, LogError::Fraction { place } if place.row == Some(1)));
        assert_eq!(field, "body.g[1]");
        assert!(matches!(
            refused(r#"{"a":9007199254740993}"#).0,
            LogError::Inexact { .. }
        ));
        assert!(matches!(
            refused("[18446744073709551615]").0,
            LogError::Inexact { .. }
        ));
    }

    #[test]
    fn what_is_no_json_is_named_by_line_and_column() {
        assert_eq!(
            refused("{\r\n \"a\": NaN}").0,
            LogError::NotJson { line: 2, column: 7 }
        );
        for text in [
            "",
            "{",
            "[1,]",
            "{\"a\":1}x",
            "\u{feff}\u{feff}1",
            "1e999",
            "\"\\ud800\"",
        ] {
            assert!(parse(text).is_err(), "{text:?}");
        }
        assert_eq!(
            parse("\u{feff}\r\n[ 1 ]\r\n").unwrap(),
            serde_json::json!([1])
        );
    }

    #[test]
    fn nesting_without_end_is_an_error_and_no_crash() {
        for depth in [80, 127, 129, 100_000] {
            assert!(parse(&"[".repeat(depth)).is_err());
            let closed = "[".repeat(depth) + &"]".repeat(depth);
            assert!(parse(&closed).is_err(), "{depth}");
        }
        assert!(parse(&("[".repeat(60) + &"]".repeat(60))).is_ok());
    }
}
