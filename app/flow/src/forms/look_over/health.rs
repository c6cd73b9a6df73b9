//! What is said beside a look-over that changes what an animal may have.

use super::answer_of;
use tussock_core::animal::{Answer, Appetite, Handful, Health, VetFlag};
use tussock_core::safety::published::OFF_FEED_HOURS;
use tussock_core::units::{Instant, LocalDate, Span, Zone};

/// The field that says whether it eats.
pub const EATING: &str = "eating";
/// The field that holds how long ago it was last seen eating.
pub const LAST_EATING: &str = "last_eating";
/// The field that holds the instant from which that was counted.
pub const LAST_EATING_FROM: &str = "last_eating_from";
/// The field that says what it did with a handful.
pub const HANDFUL: &str = "handful";
/// The field that says whether it is dull.
pub const DULL: &str = "dull";

/// The text of a flag that is held since another day and came again today.
pub const AGAIN: &str = "again";

/// Something that changes what is allowed, as a key.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Flag {
    /// On pain relief.
    PainRelief,
    /// Got at grain.
    GotAtGrain,
    /// Escaped onto lush grass.
    EscapedOntoGrass,
    /// Sick, feverish or with colic.
    Sick,
    /// Lame.
    Lame,
    /// On box rest.
    BoxRest,
    /// Trimmed or shod.
    TrimmedOrShod,
    /// A corticosteroid was given.
    Corticosteroid,
    /// On an SGLT2 inhibitor.
    Sglt2Inhibitor,
}

impl Flag {
    /// All of them, the urgent first.
    pub const ALL: [Self; 9] = [
        Self::GotAtGrain,
        Self::EscapedOntoGrass,
        Self::Sick,
        Self::Lame,
        Self::PainRelief,
        Self::BoxRest,
        Self::TrimmedOrShod,
        Self::Corticosteroid,
        Self::Sglt2Inhibitor,
    ];

    /// Those that are rung about at once, before signs show.
    pub const AT_ONCE: [Self; 2] = [Self::GotAtGrain, Self::EscapedOntoGrass];

    /// Whether it is rung about at once.
    pub fn is_at_once(self) -> bool {
        Self::AT_ONCE.contains(&self)
    }

    /// Its field.
    pub const fn field(self) -> &'static str {
        match self {
            Self::PainRelief => "pain_relief",
            Self::GotAtGrain => "grain",
            Self::EscapedOntoGrass => "escaped",
            Self::Sick => "sick",
            Self::Lame => "lame",
            Self::BoxRest => "box_rest",
            Self::TrimmedOrShod => "trimmed",
            Self::Corticosteroid => "steroid",
            Self::Sglt2Inhibitor => "sglt2",
        }
    }

    /// The key of what a vet or keeper said; `None` where the look-over has none.
    const fn of(flag: &VetFlag) -> Option<Self> {
        match flag {
            VetFlag::PainRelief => Some(Self::PainRelief),
            VetFlag::GotAtGrain { .. } => Some(Self::GotAtGrain),
            VetFlag::EscapedOntoGrass { .. } => Some(Self::EscapedOntoGrass),
            VetFlag::Sick => Some(Self::Sick),
            VetFlag::Lame => Some(Self::Lame),
            VetFlag::BoxRest => Some(Self::BoxRest),
            VetFlag::TrimmedOrShod { .. } => Some(Self::TrimmedOrShod),
            VetFlag::Corticosteroid { .. } => Some(Self::Corticosteroid),
            VetFlag::Sglt2Inhibitor => Some(Self::Sglt2Inhibitor),
            VetFlag::InsulinDrug
            | VetFlag::FootsoreAfterTrims
            | VetFlag::SurgeryOrTransport { .. } => None,
        }
    }

    const fn said(self, now: Instant, today: LocalDate) -> VetFlag {
        match self {
            Self::PainRelief => VetFlag::PainRelief,
            Self::GotAtGrain => VetFlag::GotAtGrain { at: now },
            Self::EscapedOntoGrass => VetFlag::EscapedOntoGrass { at: now },
            Self::Sick => VetFlag::Sick,
            Self::Lame => VetFlag::Lame,
            Self::BoxRest => VetFlag::BoxRest,
            Self::TrimmedOrShod => VetFlag::TrimmedOrShod { on: today },
            Self::Corticosteroid => VetFlag::Corticosteroid { last: today },
            Self::Sglt2Inhibitor => VetFlag::Sglt2Inhibitor,
        }
    }

    /// The day a held flag speaks of, the latest; `None` where it is not held or has no day.
    pub fn day(self, health: &Health, zone: &impl Zone) -> Option<LocalDate> {
        health
            .flags
            .iter()
            .filter(|flag| Self::of(flag) == Some(self))
            .filter_map(|flag| match flag {
                VetFlag::GotAtGrain { at } | VetFlag::EscapedOntoGrass { at } => {
                    Some(zone.to_local(*at).date)
                }
                VetFlag::TrimmedOrShod { on } => Some(*on),
                VetFlag::Corticosteroid { last } => Some(*last),
                _ => None,
            })
            .max()
    }

    /// Whether an animal carries it.
    pub fn held(self, health: &Health) -> bool {
        health.flags.iter().any(|flag| Self::of(flag) == Some(self))
    }
}

/// How long ago it was last seen eating. The longer end of each is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum SeenEating {
    /// Up to a quarter of the longest wait.
    Quarter,
    /// Up to half of it.
    Half,
    /// Up to three quarters.
    ThreeQuarters,
    /// The longest wait or more.
    Longest,
    /// Nobody knows.
    NotKnown,
}

impl SeenEating {
    /// All of them.
    pub const ALL: [Self; 5] = [
        Self::Quarter,
        Self::Half,
        Self::ThreeQuarters,
        Self::Longest,
        Self::NotKnown,
    ];

    /// Its text.
    pub const fn text(self) -> &'static str {
        match self {
            Self::Quarter => "quarter",
            Self::Half => "half",
            Self::ThreeQuarters => "three_quarters",
            Self::Longest => "longest",
            Self::NotKnown => "not_known",
        }
    }

    /// The hours that are counted; `None` where nobody knows.
    pub const fn hours(self) -> Option<i64> {
        let longest = OFF_FEED_HOURS.value;
        match self {
            Self::Quarter => Some(longest / 4),
            Self::Half => Some(longest / 2),
            Self::ThreeQuarters => Some(longest * 3 / 4),
            Self::Longest => Some(longest),
            Self::NotKnown => None,
        }
    }

    /// From its text.
    pub fn of(text: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|seen| seen.text() == text)
    }
}

/// What it did with a handful, by its text.
pub fn handful_of(text: &str) -> Option<Handful> {
    HANDFULS
        .iter()
        .find(|(_, key)| *key == text)
        .map(|(handful, _)| *handful)
}

/// What it may do with a handful, and the texts.
pub const HANDFULS: [(Handful, &str); 3] = [
    (Handful::Eaten, "eaten"),
    (Handful::Refused, "refused"),
    (Handful::NotTried, "not_tried"),
];

/// Health after what was said here; what nobody touched stays. `text` gives the text of a field. A flag that is held
/// keeps its day, unless it came again today.
pub fn health(
    held: &Health,
    text: impl Fn(&str) -> String,
    now: Instant,
    today: LocalDate,
) -> Health {
    let mut health = held.clone();
    for flag in Flag::ALL {
        let said = text(flag.field());
        if said == AGAIN {
            health.flags.retain(|held| Flag::of(held) != Some(flag));
            health.flags.push(flag.said(now, today));
            continue;
        }
        match answer_of(&said) {
            Some(Answer::Yes) if !flag.held(held) => health.flags.push(flag.said(now, today)),
            Some(Answer::No) => health.flags.retain(|said| Flag::of(said) != Some(flag)),
            _ => {}
        }
    }
    match answer_of(&text(EATING)) {
        Some(Answer::Yes) => health.appetite = Appetite::Eating,
        Some(Answer::No) => health.appetite = off_feed(held.appetite, &text, now),
        Some(Answer::NotKnown) | None => {}
    }
    health
}

fn off_feed(held: Appetite, text: &impl Fn(&str) -> String, now: Instant) -> Appetite {
    let (seen, tried, looked) = match held {
        Appetite::Off {
            last_seen_eating,
            handful,
            dull,
        } => (last_seen_eating, handful, dull),
        Appetite::Eating | Appetite::NotKnown => (None, Handful::NotTried, Answer::NotKnown),
    };
    let from = text(LAST_EATING_FROM).parse().map_or(now, Instant::from_ms);
    Appetite::Off {
        last_seen_eating: match SeenEating::of(&text(LAST_EATING)) {
            Some(said) => said.hours().map(|hours| from - Span::hours(hours)),
            None => seen,
        },
        handful: handful_of(&text(HANDFUL)).unwrap_or(tried),
        dull: answer_of(&text(DULL)).unwrap_or(looked),
    }
}
