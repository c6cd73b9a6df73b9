//! What a field with keys may hold, and the texts that are kept.

use tussock_core::animal::{
    Answer, BodyType, Goal, Kind, Laminitis, Ppid, Sex, State, Teeth, Temperament, Workload,
};

/// The key for what nobody knows.
pub const NOT_KNOWN: &str = "not_known";

/// The kinds and their keys.
pub const KINDS: [(Kind, &str); 5] = [
    (Kind::Horse, "horse"),
    (Kind::Pony, "pony"),
    (Kind::Miniature, "miniature"),
    (Kind::Donkey, "donkey"),
    (Kind::Mule, "mule"),
];
/// The body types and their keys.
pub const BODY_TYPES: [(BodyType, &str); 11] = [
    (BodyType::Pony, "pony"),
    (BodyType::Shetland, "shetland"),
    (BodyType::Miniature, "miniature"),
    (BodyType::Arabian, "arabian"),
    (BodyType::Thoroughbred, "thoroughbred"),
    (BodyType::Warmblood, "warmblood"),
    (BodyType::Stock, "stock"),
    (BodyType::Saddle, "saddle"),
    (BodyType::Draft, "draft"),
    (BodyType::Icelandic, "icelandic"),
    (BodyType::Donkey, "donkey"),
];
/// The sexes and their keys.
pub const SEXES: [(Sex, &str); 3] = [
    (Sex::Female, "female"),
    (Sex::Gelding, "gelding"),
    (Sex::Entire, "entire"),
];
/// The states and their keys.
pub const STATES: [(State, &str); 4] = [
    (State::Adult, "adult"),
    (State::Growing, "growing"),
    (State::Pregnant, "pregnant"),
    (State::Lactating, "lactating"),
];
/// The work classes and their keys.
pub const WORK: [(Workload, &str); 7] = [
    (Workload::Maintenance(Temperament::Low), "low"),
    (Workload::Maintenance(Temperament::Average), "average"),
    (Workload::Maintenance(Temperament::Elevated), "elevated"),
    (Workload::Light, "light"),
    (Workload::Moderate, "moderate"),
    (Workload::Heavy, "heavy"),
    (Workload::VeryHeavy, "very_heavy"),
];
/// The goals and their keys.
pub const GOALS: [(Goal, &str); 3] = [
    (Goal::Lose, "lose"),
    (Goal::Hold, "hold"),
    (Goal::Gain, "gain"),
];
/// Laminitis and its keys, without the day the last episode ended.
pub const LAMINITIS: [(Laminitis, &str); 4] = [
    (Laminitis::Never, "never"),
    (Laminitis::Ever { last: None }, "ever"),
    (Laminitis::Active, "active"),
    (Laminitis::NotKnown, NOT_KNOWN),
];
/// What an insulin test says, and the keys; `None` for not tested.
pub const INSULIN: [(Option<bool>, &str); 3] = [
    (Some(true), "dysregulated"),
    (Some(false), "in_order"),
    (None, NOT_KNOWN),
];
/// PPID and its keys.
pub const PPID: [(Ppid, &str); 4] = [
    (Ppid::Clear, "clear"),
    (Ppid::Treated, "treated"),
    (Ppid::Untreated, "untreated"),
    (Ppid::NotKnown, NOT_KNOWN),
];
/// Teeth and their keys.
pub const TEETH: [(Teeth, &str); 3] = [
    (Teeth::Good, "good"),
    (Teeth::Poor, "poor"),
    (Teeth::NotKnown, NOT_KNOWN),
];
/// Answers and their keys.
pub const ANSWERS: [(Answer, &str); 3] = [
    (Answer::Yes, "yes"),
    (Answer::No, "no"),
    (Answer::NotKnown, NOT_KNOWN),
];

/// The value of a key.
pub fn value_of<T: Copy>(table: &[(T, &'static str)], key: &str) -> Option<T> {
    table
        .iter()
        .find(|(_, known)| *known == key)
        .map(|(value, _)| *value)
}

pub(super) fn key_of<T: PartialEq>(table: &[(T, &'static str)], value: &T) -> &'static str {
    table
        .iter()
        .find(|(known, _)| known == value)
        .map_or(NOT_KNOWN, |(_, key)| key)
}

pub(super) fn optional_key<T: PartialEq>(
    table: &[(T, &'static str)],
    value: Option<T>,
) -> &'static str {
    value.map_or(NOT_KNOWN, |value| key_of(table, &value))
}
