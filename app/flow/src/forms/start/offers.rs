//! What may be answered.

use tussock_core::animal::{Kind, Laminitis};
use tussock_core::assess::Ribs;
use tussock_core::forage::{ForageClass, ForageKind};
use tussock_core::units::LocalTime;

/// Kind and rough height in one answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sort {
    /// A pony under 112 cm.
    SmallPony,
    /// A pony from 112 to 148 cm.
    Pony,
    /// A horse.
    Horse,
    /// A miniature.
    Miniature,
    /// A donkey.
    Donkey,
    /// A mule or hinny.
    Mule,
}

impl Sort {
    /// All of them, in the order in which a person is asked.
    pub const ALL: &'static [Self] = &[
        Self::SmallPony,
        Self::Pony,
        Self::Horse,
        Self::Miniature,
        Self::Donkey,
        Self::Mule,
    ];

    /// The kind.
    pub const fn kind(self) -> Kind {
        match self {
            Self::SmallPony | Self::Pony => Kind::Pony,
            Self::Horse => Kind::Horse,
            Self::Miniature => Kind::Miniature,
            Self::Donkey => Kind::Donkey,
            Self::Mule => Kind::Mule,
        }
    }

    /// Whether the answer says more of the height than the kind does.
    pub const fn says_height(self) -> bool {
        matches!(self, Self::SmallPony | Self::Pony)
    }
}

/// Whether it was ever footsore or had laminitis.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Ever {
    /// No, as far as the person knows.
    No,
    /// Once, and sound now.
    SoundNow,
    /// It has it now.
    HasItNow,
    /// The person does not know.
    NotKnown,
}

impl Ever {
    /// All of them, in the order in which a person is asked.
    pub const ALL: &'static [Self] = &[Self::No, Self::SoundNow, Self::HasItNow, Self::NotKnown];

    pub(super) const fn laminitis(self) -> Laminitis {
        match self {
            Self::No => Laminitis::Never,
            Self::SoundNow => Laminitis::Ever { last: None },
            Self::HasItNow => Laminitis::Active,
            Self::NotKnown => Laminitis::NotKnown,
        }
    }
}

/// The answers about the ribs, thinnest first.
pub const RIBS: &[Ribs] = &[
    Ribs::Seen,
    Ribs::FeltEasily,
    Ribs::FeltWithPressure,
    Ribs::NotFelt,
];

/// How often somebody comes a day, with the times that stand for it until they are corrected.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Visits {
    /// Once.
    One,
    /// Twice.
    Two,
    /// Three times.
    Three,
    /// Four times.
    Four,
}

impl Visits {
    /// All of them, in the order in which a person is asked.
    pub const ALL: &'static [Self] = &[Self::One, Self::Two, Self::Three, Self::Four];

    /// How many.
    pub const fn count(self) -> usize {
        match self {
            Self::One => 1,
            Self::Two => 2,
            Self::Three => 3,
            Self::Four => 4,
        }
    }

    /// The times, rising.
    pub fn times(self) -> Vec<LocalTime> {
        let clock: &[(u32, u32)] = match self {
            Self::One => &[(7, 0)],
            Self::Two => &[(7, 0), (18, 0)],
            Self::Three => &[(7, 0), (13, 0), (20, 0)],
            Self::Four => &[(6, 30), (12, 0), (17, 0), (22, 0)],
        };
        clock
            .iter()
            .filter_map(|(hour, minute)| LocalTime::from_hms_opt(*hour, *minute, 0))
            .collect()
    }
}

/// What hay may be said to be; the first stands for "do not know". Straw is never the whole of a ration.
pub fn hays() -> impl Iterator<Item = ForageClass> {
    ForageClass::ALL
        .iter()
        .copied()
        .filter(|class| class.kind() != ForageKind::Straw)
}

/// One of several answers as it stands in a draft: its place in the list of offers, from 1.
pub fn key<T: PartialEq>(offers: &[T], chosen: &T) -> String {
    offers
        .iter()
        .position(|offer| offer == chosen)
        .map(|place| (place + 1).to_string())
        .unwrap_or_default()
}

/// The answer that stands in a draft.
pub fn of_key<T: Copy>(offers: &[T], text: &str) -> Option<T> {
    let place: usize = text.parse().ok()?;
    offers.get(place.checked_sub(1)?).copied()
}
