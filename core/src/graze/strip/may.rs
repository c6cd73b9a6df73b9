//! What stands against a strip, and what its reckoning cannot do.

use super::published::RECENT_DAYS;
use crate::animal::{Animal, Answer, Laminitis, Phase};
use crate::graze::plants::{PlantId, SugarPotential};
use crate::graze::sward::SwardKind;
use crate::graze::sward::published::{LEAF_BARE, LEAFY_FROM};
use crate::limits::Ends;
use crate::units::{Length, LocalDate};

/// What stands against a strip now.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum StripAgainst {
    /// The spring flush: strips come after it.
    Flush,
    /// A case of laminitis now or lately: no grass, so no strip.
    RecentCase,
    /// Seed heads stand.
    Seeding,
    /// A sward high in sugar: ryegrass, timothy, green cereals.
    HighSugarSward,
    /// Too short to open: nothing is won, and the sward is lost.
    Short {
        /// The likely height.
        height: Length,
    },
    /// Bare, or may be: it is no forage.
    Bare {
        /// The least it may be.
        height: Length,
    },
}

/// What is known of a paddock that a strip is thought of on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StripWhere<'a> {
    /// Whether it is the spring flush.
    pub flush: bool,
    /// Whether any of the animals is, or lately was, a case of laminitis.
    pub recent_case: bool,
    /// Whether seed heads stand; not known stands against nothing.
    pub seeding: Answer,
    /// What kind of sward it is.
    pub kind: SwardKind,
    /// The plants that were seen in it.
    pub plants: &'a [PlantId],
    /// How high it is; `None` where nobody looked.
    pub height: Option<Ends<Length>>,
}

/// Whether an animal is, or lately was, a case of laminitis: active, in or after an episode, or its last one ended within
/// a year or on a day that nobody said.
pub fn recent_case(animal: &Animal, day: LocalDate) -> bool {
    let laminitis = match animal.health.laminitis {
        Laminitis::Active => true,
        Laminitis::Ever { last } => last.is_none_or(|last| (day - last).num_days() < *RECENT_DAYS),
        Laminitis::Never | Laminitis::NotKnown => false,
    };
    laminitis || matches!(animal.phase, Phase::Episode | Phase::Recovering)
}

/// What stands against a strip. Nothing is said of what nobody looked at.
pub fn may_strip(at: &StripWhere<'_>) -> Vec<StripAgainst> {
    let high = |plant: &PlantId| {
        plant
            .sugar()
            .is_some_and(|sugar| sugar.value == SugarPotential::Higher)
    };
    let sugar = at.kind == SwardKind::Ryegrass || at.plants.iter().any(high);
    let mut against: Vec<StripAgainst> = [
        (at.flush, StripAgainst::Flush),
        (at.recent_case, StripAgainst::RecentCase),
        (at.seeding == Answer::Yes, StripAgainst::Seeding),
        (sugar, StripAgainst::HighSugarSward),
    ]
    .into_iter()
    .filter_map(|(holds, reason)| holds.then_some(reason))
    .collect();
    if let Some(height) = at.height {
        if height.least < *LEAF_BARE {
            against.push(StripAgainst::Bare {
                height: height.least,
            });
        } else if height.likely < *LEAFY_FROM {
            against.push(StripAgainst::Short {
                height: height.likely,
            });
        }
    }
    against
}

/// What the reckoning of a strip cannot do, or what it asks of the person.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum StripLimit {
    /// The mass is a guess, out by a third.
    MassIsAGuess,
    /// It limits how much is eaten, and not what is in it: sugar is not lowered.
    SugarIsNotLowered,
    /// Look at what is left each day and reckon again.
    ReckonAgainFromWhatIsLeft,
    /// Weigh or tape them every week.
    WeighWeekly,
    /// A back fence gave no further effect on weight in the trial; it lets the grazed part grow.
    BackFenceIsForTheSward,
    /// Height alone restricts intake only at one or two centimetres.
    HeightDoesNotRestrict,
    /// In the trial twelve ponies, after the spring flush.
    OneTrial,
    /// It is never what an animal's safety rests on.
    NotForSafety,
}

/// All of them, in the order to be said.
pub const LIMITS: [StripLimit; 8] = [
    StripLimit::NotForSafety,
    StripLimit::MassIsAGuess,
    StripLimit::SugarIsNotLowered,
    StripLimit::ReckonAgainFromWhatIsLeft,
    StripLimit::WeighWeekly,
    StripLimit::BackFenceIsForTheSward,
    StripLimit::HeightDoesNotRestrict,
    StripLimit::OneTrial,
];
