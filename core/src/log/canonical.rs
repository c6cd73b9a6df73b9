//! Canonical text: one text for one value, byte for byte, on every device.
//!
//! - JSON in UTF-8 without insignificant white space.
//! - Keys sorted by their Unicode code points.
//! - Whole numbers only, at most 2^53 - 1 in size, so that every reader keeps them exactly. A number with a fraction is
//!   an error that names its path; decimals as reported are texts.
//! - In texts `"` and `\` and the characters below U+0020 are escaped (`\b \t \n \f \r`, else `\u00xx` in lower case),
//!   and nothing else.

use super::error::{LogError, Path};
use serde_json::{Map, Value};

/// The largest whole number that JavaScript keeps exactly.
// numeric: 2^53 - 1
pub(crate) const LARGEST: i64 = 9_007_199_254_740_991;

/// How deep a record may nest. The parser stops at 128; a bundle adds two levels.
// numeric: far over what any kind of record uses
pub(crate) const DEEPEST: usize = 64;

/// The canonical text of a value.
///
/// Errors: [`LogError::Fraction`], [`LogError::Inexact`] and [`LogError::TooDeep`], each with the path of the value.
pub fn canonical(value: &Value) -> Result<String, LogError> {
    let mut out = String::new();
    write_value(&mut out, value, &Path::Root, 0)?;
    Ok(out)
}

/// Writes a value after what is in `out`.
pub(crate) fn write_value(
    out: &mut String,
    value: &Value,
    path: &Path<'_>,
    depth: usize,
) -> Result<(), LogError> {
    if depth > DEEPEST {
        return Err(LogError::TooDeep {
            place: path.place(),
        });
    }
    match value {
        Value::Null => out.push_str("null"),
        Value::Bool(true) => out.push_str("true"),
        Value::Bool(false) => out.push_str("false"),
        Value::Number(number) => match number.as_i64() {
            Some(whole) if whole.unsigned_abs() <= LARGEST.unsigned_abs() => {
                out.push_str(&whole.to_string());
            }
            Some(_) => {
                return Err(LogError::Inexact {
                    place: path.place(),
                });
            }
            None if number.is_u64() => {
                return Err(LogError::Inexact {
                    place: path.place(),
                });
            }
            None => {
                return Err(LogError::Fraction {
                    place: path.place(),
                });
            }
        },
        Value::String(text) => write_text(out, text),
        Value::Array(items) => {
            out.push('[');
            for (index, item) in items.iter().enumerate() {
                if index > 0 {
                    out.push(',');
                }
                write_value(out, item, &path.index(index), depth + 1)?;
            }
            out.push(']');
        }
        Value::Object(map) => write_object(out, map, path, depth)?,
    }
    Ok(())
}

/// Writes an object with its keys sorted, whatever order the map keeps.
fn write_object(
    out: &mut String,
    map: &Map<String, Value>,
    path: &Path<'_>,
    depth: usize,
) -> Result<(), LogError> {
    let mut entries: Vec<(&String, &Value)> = map.iter().collect();
    entries.sort_unstable_by_key(|(key, _)| *key);
    out.push('{');
    for (index, (key, item)) in entries.into_iter().enumerate() {
        if index > 0 {
            out.push(',');
        }
        write_text(out, key);
        out.push(':');
        write_value(out, item, &path.key(key), depth + 1)?;
    }
    out.push('}');
    Ok(())
}

/// Writes a text in quotes.
pub(crate) fn write_text(out: &mut String, text: &str) {
    out.push('"');
    for letter in text.chars() {
        match letter {
            '"' => out.push_str("\\\""),
            '\\' => out.push_str("\\\\"),
            '\u{8}' => out.push_str("\\b"),
            '\t' => out.push_str("\\t"),
            '\n' => out.push_str("\\n"),
            '\u{c}' => out.push_str("\\f"),
            '\r' => out.push_str("\\r"),
            low if low < ' ' => {
                out.push_str("\\u00");
                out.push(hex(u32::from(low) >> NIBBLE));
                out.push(hex(u32::from(low)));
            }
            other => out.push(other),
        }
    }
    out.push('"');
}

// numeric: bits in a hexadecimal digit
pub(crate) const NIBBLE: u32 = 4;
// numeric: how many hexadecimal digits there are
const SIXTEEN: u32 = 16;

/// The lower-case hexadecimal digit of the low four bits.
pub(crate) fn hex(bits: u32) -> char {
    char::from_digit(bits % SIXTEEN, SIXTEEN).unwrap_or('0')
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn keys_are_sorted_and_nothing_is_between() {
        let value = json!({"b": [1, -2, null, true], "a": {"z": "é\n\u{1}\"", "A": 0}});
        assert_eq!(
            canonical(&value).unwrap(),
            r#"{"a":{"A":0,"z":"é\n\u0001\""},"b":[1,-2,null,true]}"#
        );
    }

    #[test]
    fn a_fraction_is_refused_with_its_path() {
        let error = canonical(&json!({"a": [0, {"b": 1.5}]})).unwrap_err();
        assert!(matches!(error, LogError::Fraction { .. }));
        assert_eq!(error.place().unwrap().field, "a[1].b");
        assert!(matches!(
            canonical(&json!(9_007_199_254_740_992_i64)),
            Err(LogError::Inexact { .. })
        ));
        assert!(matches!(
            canonical(&json!(u64::MAX)),
            Err(LogError::Inexact { .. })
        ));
    }

    #[test]
    fn what_nests_without_end_is_refused() {
        let mut value = json!(0);
        for _ in 0..=DEEPEST {
            value = json!([value]);
        }
        assert!(matches!(canonical(&value), Err(LogError::TooDeep { .. })));
    }
}
