//! An animal's details: what holds, and the keys of each field.

use crate::forms::details::{
    ANSWERS, BODY_TYPES, Field, GOALS, INSULIN, KINDS, LAMINITIS, NOT_KNOWN, PPID, SEXES, STATES,
    TEETH, WORK, value_of,
};
use crate::shelf::Shelf;
use crate::words::{AnimalWords, DetailsWords};
use tussock_core::animal::{AnimalId, Kind, State, Workload};
use tussock_core::log::Body;
use tussock_core::log::bodies::AnimalV2;

/// The record of an animal as it holds.
pub fn held(shelf: &Shelf, animal: &AnimalId) -> Option<AnimalV2> {
    match Body::read(shelf.get(animal.as_str())?) {
        Ok(Body::Animal(body)) => Some(body),
        _ => None,
    }
}

/// A key of a field: what is kept, its word, a second line.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Key {
    /// What is kept.
    pub key: &'static str,
    /// Its word.
    pub word: String,
    /// A second line; empty for none.
    pub second: String,
}

/// The keys of a field, `None` for a field that is typed. Where nobody may know, not known is one of them.
pub fn keys(
    field: Field,
    kind: Kind,
    words: &(impl AnimalWords + DetailsWords),
) -> Option<Vec<Key>> {
    let unknown = || plain(NOT_KNOWN, words.not_known());
    Some(match field {
        Field::Kind => each(&KINDS, |kind| words.kind(*kind)),
        Field::BodyType => with(each(&BODY_TYPES, |body| words.body_type(*body)), unknown()),
        Field::Sex => with(each(&SEXES, |sex| words.sex(*sex, kind)), unknown()),
        Field::State => each(&STATES, |state| words.state(*state)),
        Field::Work => WORK
            .iter()
            .map(|(work, key)| Key {
                key,
                word: words.workload(*work).to_owned(),
                second: match work {
                    Workload::Maintenance(temperament) => words.temperament(*temperament),
                    Workload::Light
                    | Workload::Moderate
                    | Workload::Heavy
                    | Workload::VeryHeavy => words.workload_means(*work),
                }
                .to_owned(),
            })
            .collect(),
        Field::Goal => each(&GOALS, |goal| words.goal(*goal)),
        Field::Laminitis => LAMINITIS
            .iter()
            .map(|(laminitis, key)| plain(key, words.laminitis(*laminitis)))
            .collect(),
        Field::Insulin => each(&INSULIN, |said| words.insulin_said(*said)),
        Field::Ppid => each(&PPID, |ppid| words.ppid(*ppid)),
        Field::Teeth => each(&TEETH, |teeth| words.teeth(*teeth)),
        Field::NativeOrCob => each(&ANSWERS, |answer| words.answer(*answer)),
        Field::Name
        | Field::Born
        | Field::Height
        | Field::Covered
        | Field::Foaled
        | Field::Grown
        | Field::LaminitisEnded
        | Field::InsulinOn
        | Field::InsulinBy
        | Field::InsulinTest => return None,
    })
}

/// Whether a field is asked, by what is chosen in the others.
pub fn asked(field: Field, state: &str, laminitis: &str, insulin: &str) -> bool {
    let state = value_of(&STATES, state);
    match field {
        Field::Covered => state == Some(State::Pregnant),
        Field::Foaled => state == Some(State::Lactating),
        Field::Grown => state == Some(State::Growing),
        Field::LaminitisEnded => laminitis == "ever",
        Field::InsulinOn | Field::InsulinBy | Field::InsulinTest => insulin != NOT_KNOWN,
        _ => true,
    }
}

fn plain(key: &'static str, word: impl Into<String>) -> Key {
    Key {
        key,
        word: word.into(),
        second: String::new(),
    }
}

fn each<T>(table: &[(T, &'static str)], word: impl Fn(&T) -> &'static str) -> Vec<Key> {
    table
        .iter()
        .map(|(value, key)| plain(key, word(value)))
        .collect()
}

fn with(mut keys: Vec<Key>, last: Key) -> Vec<Key> {
    keys.push(last);
    keys
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::words::English;

    #[test]
    fn not_known_is_a_choice_wherever_nobody_may_know() {
        let words = English::default();
        for field in [
            Field::BodyType,
            Field::Sex,
            Field::Laminitis,
            Field::Insulin,
            Field::Ppid,
            Field::Teeth,
            Field::NativeOrCob,
        ] {
            let keys = keys(field, Kind::Pony, &words).unwrap();
            assert!(keys.iter().any(|key| key.key == NOT_KNOWN), "{field:?}");
        }
    }

    #[test]
    fn every_key_of_a_field_has_its_own_word() {
        let words = English::default();
        for field in Field::ALL {
            let Some(keys) = keys(field, Kind::Donkey, &words) else {
                continue;
            };
            let mut faces: Vec<(&str, &str)> = keys
                .iter()
                .map(|key| (key.word.as_str(), key.second.as_str()))
                .collect();
            faces.sort_unstable();
            faces.dedup();
            assert_eq!(faces.len(), keys.len(), "{field:?}");
        }
    }

    #[test]
    fn the_day_of_a_test_is_asked_only_of_a_test() {
        assert!(!asked(Field::InsulinOn, "adult", "never", NOT_KNOWN));
        assert!(asked(Field::InsulinOn, "adult", "never", "in_order"));
        assert!(asked(Field::LaminitisEnded, "adult", "ever", NOT_KNOWN));
    }

    #[test]
    fn since_when_is_asked_of_the_state_it_belongs_to() {
        for (_, state) in STATES {
            let found: Vec<Field> = [Field::Covered, Field::Foaled, Field::Grown]
                .into_iter()
                .filter(|field| asked(*field, state, "never", NOT_KNOWN))
                .collect();
            let wanted: &[Field] = match state {
                "pregnant" => &[Field::Covered],
                "lactating" => &[Field::Foaled],
                "growing" => &[Field::Grown],
                _ => &[],
            };
            assert_eq!(found, wanted, "{state}");
        }
    }
}
