//! The kinds of record, and the ladder from an old shape to the present one.

use super::bodies::{
    animal_with_stage, food_with_class, paddock_with_sward, weather_with_night, yard_with_regions,
};
use super::error::{Allowed, Form, LogError, Path};
use super::subject::is_word;
use serde_json::Value;

macro_rules! kinds {
    ($($(#[$doc:meta])* $variant:ident = $word:literal, $latest:literal;)*) => {
        /// What a record is. A kind of a later release is kept as it is.
        #[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
        pub enum Kind {
            $($(#[$doc])* $variant,)*
            /// A kind that this release does not know.
            Other(String),
        }

        impl Kind {
            /// Every kind that this release knows.
            pub const KNOWN: &'static [Self] = &[$(Self::$variant),*];

            /// The word that is stored.
            pub fn word(&self) -> &str {
                match self {
                    $(Self::$variant => $word,)*
                    Self::Other(word) => word,
                }
            }

            /// The kind of a stored word.
            pub fn of(word: &str) -> Self {
                match word {
                    $($word => Self::$variant,)*
                    other => Self::Other(other.to_owned()),
                }
            }

            /// The latest version of its body that this release reads and writes; `None` for a kind it does not know.
            pub const fn latest(&self) -> Option<i64> {
                match self {
                    $(Self::$variant => Some($latest),)*
                    Self::Other(_) => None,
                }
            }
        }
    };
}

kinds! {
    /// A yard.
    Yard = "yard", 2;
    /// A person who does or decides something.
    Person = "person", 1;
    /// An animal.
    Animal = "animal", 2;
    /// A group fed together.
    Group = "group", 1;
    /// A forage lot with its lab reports.
    Lot = "lot", 1;
    /// What is left of a lot, counted.
    LotCount = "lot_count", 1;
    /// A paddock.
    Paddock = "paddock", 2;
    /// A food other than forage, with its label.
    Food = "food", 2;
    /// A net.
    Net = "net", 1;
    /// A soak tub.
    Tub = "tub", 1;
    /// The times somebody comes.
    Visits = "visits", 1;
    /// How an animal or group is fed.
    Feeding = "feeding", 1;
    /// A weight, from a tape or a scale.
    Weight = "weight", 1;
    /// A condition score.
    Condition = "condition", 1;
    /// A crest score.
    Crest = "crest", 1;
    /// A photograph of an animal.
    Photo = "photo", 1;
    /// A look over for signs of laminitis.
    LookOver = "look_over", 1;
    /// A session of work.
    WorkSession = "work_session", 1;
    /// A handful held out to an animal that left its forage.
    Appetite = "appetite", 1;
    /// Temperature, pulse and breathing at rest.
    Vitals = "vitals", 1;
    /// The vet's word.
    VetWord = "vet_word", 1;
    /// Nets filled.
    NetFilled = "net_filled", 1;
    /// A net hung.
    NetHung = "net_hung", 1;
    /// A net timed until it was empty.
    NetTimed = "net_timed", 1;
    /// A step of a soak.
    SoakStep = "soak_step", 1;
    /// What an animal left.
    LeftOver = "left_over", 1;
    /// The answer to a job that leaves no other entry.
    Job = "job", 1;
    /// The weather of a day.
    Weather = "weather", 2;
    /// An issued plan.
    Plan = "plan", 1;
    /// The bought feeds that were decided on.
    Ration = "ration", 1;
    /// The rest of a plan's day, laid out anew.
    DayRelaid = "day_relaid", 1;
    /// A consultant's visit to a yard.
    YardVisit = "yard_visit", 1;
    /// What was seen of a paddock's grass.
    Sward = "sward", 1;
    /// How an animal or group goes out to grass.
    Grazing = "grazing", 1;
    /// An animal or group at grass.
    Turnout = "turnout", 1;
    /// A note of the year of grass.
    SeasonNote = "season_note", 1;
}

impl Kind {
    pub(crate) fn read(word: &str, path: &Path<'_>) -> Result<Self, LogError> {
        if is_word(word) {
            Ok(Self::of(word))
        } else {
            Err(path.refuse(word, Allowed::Form(Form::Kind)))
        }
    }
}

/// A step of the ladder: a body of one version becomes a body of the next.
pub(crate) struct Rung {
    /// Of which kind.
    pub(crate) kind: Kind,
    /// From which version to the one after it.
    pub(crate) from: i64,
    /// The change of shape. It invents nothing: what the old shape did not say stays unsaid.
    pub(crate) up: fn(Value) -> Value,
}

/// Every change of shape so far.
pub(crate) const LADDER: &[Rung] = &[
    Rung {
        kind: Kind::Food,
        from: 1,
        up: food_with_class,
    },
    Rung {
        kind: Kind::Animal,
        from: 1,
        up: animal_with_stage,
    },
    Rung {
        kind: Kind::Yard,
        from: 1,
        up: yard_with_regions,
    },
    Rung {
        kind: Kind::Paddock,
        from: 1,
        up: paddock_with_sward,
    },
    Rung {
        kind: Kind::Weather,
        from: 1,
        up: weather_with_night,
    },
];

/// Brings a body up from the version it was written in as far as the ladder goes; gives the version it reached.
pub(crate) fn climb(ladder: &[Rung], kind: &Kind, version: i64, body: Value) -> (i64, Value) {
    let mut version = version;
    let mut body = body;
    while let Some(rung) = ladder
        .iter()
        .find(|rung| rung.kind == *kind && rung.from == version)
    {
        body = (rung.up)(body);
        version += 1;
    }
    (version, body)
}

#[cfg(test)]
mod tests {
    use super::*;
    use serde_json::json;

    #[test]
    fn word_and_kind_are_inverse_and_others_survive() {
        for kind in Kind::KNOWN {
            assert_eq!(Kind::of(kind.word()), *kind);
            assert!(is_word(kind.word()));
        }
        assert_eq!(Kind::of("hoof_photo"), Kind::Other("hoof_photo".into()));
        assert_eq!(Kind::of("hoof_photo").word(), "hoof_photo");
    }

    #[test]
    fn an_old_body_climbs_rung_by_rung_and_stops_where_the_ladder_ends() {
        fn rename(mut body: Value) -> Value {
            let old = body["girth"].take();
            json!({ "girth_mm": old })
        }
        fn wrap(body: Value) -> Value {
            Value::Object(serde_json::Map::from_iter([("tape".to_owned(), body)]))
        }
        let ladder = [
            Rung {
                kind: Kind::Weight,
                from: 2,
                up: wrap,
            },
            Rung {
                kind: Kind::Weight,
                from: 1,
                up: rename,
            },
            Rung {
                kind: Kind::Crest,
                from: 1,
                up: wrap,
            },
        ];
        let (version, body) = climb(&ladder, &Kind::Weight, 1, json!({"girth": 1800}));
        assert_eq!((version, body), (3, json!({"tape": {"girth_mm": 1800}})));
        let (version, body) = climb(LADDER, &Kind::Weight, 1, json!({"girth": 1800}));
        assert_eq!((version, body), (1, json!({"girth": 1800})));
    }

    #[test]
    fn the_ladder_reaches_the_latest_version_from_every_earlier_one() {
        for kind in Kind::KNOWN {
            let latest = kind.latest().unwrap();
            for from in 1..latest {
                assert!(LADDER.iter().any(|r| r.kind == *kind && r.from == from));
            }
        }
    }
}
