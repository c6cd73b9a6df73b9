//! A food of the first version, brought to the second.

use serde_json::Value;

/// What a food was for, by its first version, and the class it is: fibre whose kind nobody said is not taken for lucerne.
const CLASSES: &[(&str, &str)] = &[
    ("mineral", "mineral_mix"),
    ("salt", "source"),
    ("oil", "fat"),
];

/// `food_use` becomes `class`. Words that are the same in both, and those nobody knows, stay as they are; everything else
/// stays where it stands, and what the first version could not say stays unsaid.
pub(crate) fn food_with_class(mut body: Value) -> Value {
    if let Value::Object(map) = &mut body
        && let Some(word) = map.remove("food_use")
    {
        let class = word
            .as_str()
            .and_then(|word| CLASSES.iter().find(|(old, _)| *old == word))
            .map(|(_, class)| Value::from(*class));
        map.insert("class".to_owned(), class.unwrap_or(word));
    }
    body
}
