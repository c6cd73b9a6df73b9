//! Who is never restricted without a vet's word, and what a vet's word opens.

use super::published::{
    CONDITION_THIN, CORTICOSTEROID_DAYS, GROWN, SURGERY_DAYS, VERY_OLD, VET_WORD_DAYS,
};
use crate::animal::{
    Animal, AnimalId, Appetite, BodyType, Kind, Laminitis, Phase, Ppid, State, Teeth, VetFlag,
    VetPermit, VetWord,
};
use crate::units::{LocalDate, PartOfBody};
use chrono::Days;

/// Why an animal is on the vet's list.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum VetListReason {
    /// In foal.
    Pregnant,
    /// In milk.
    Lactating,
    /// Still growing, or under three years.
    Growing {
        /// Whole years, when known.
        age: Option<i32>,
    },
    /// Condition under 5.
    Thin {
        /// The last score.
        condition: f64,
    },
    /// Sick, feverish or with colic.
    Sick,
    /// Off its feed.
    OffFeed,
    /// It has laminitis now.
    LaminitisNow,
    /// An episode, or recovering and the vet has not said it is over.
    EpisodeNotOver,
    /// Surgery or a long journey a short while ago.
    SurgeryOrTransport {
        /// The day.
        on: LocalDate,
    },
    /// A donkey or mule.
    DonkeyOrMule,
    /// A miniature.
    Miniature,
    /// A Shetland.
    Shetland,
    /// Very old.
    VeryOld {
        /// Years it may have reached.
        age: i32,
    },
    /// Poor teeth.
    PoorTeeth,
    /// Pituitary disease that is not treated.
    PpidUntreated,
    /// On an SGLT2 inhibitor.
    Sglt2Inhibitor,
    /// On another drug that alters insulin.
    InsulinDrug,
    /// A corticosteroid a short while ago.
    Corticosteroid {
        /// The last day.
        last: LocalDate,
    },
    /// On pain relief: the look-over cannot be trusted.
    PainRelief,
    /// On box rest: never together with a cut.
    BoxRest,
    /// Lame.
    Lame,
    /// It got at grain.
    GotAtGrain,
    /// It escaped onto lush grass.
    EscapedOntoGrass,
}

/// Everything that puts an animal on the vet's list on a day; `condition` is its last score from 1 to 9. Empty when it is
/// not on the list. Freshly trimmed or footsore feet alone do not put it there: they change how signs are read.
pub fn vet_list(animal: &Animal, day: LocalDate, condition: Option<f64>) -> Vec<VetListReason> {
    let health = &animal.health;
    let mut reasons = Vec::new();
    match animal.state {
        State::Pregnant => reasons.push(VetListReason::Pregnant),
        State::Lactating => reasons.push(VetListReason::Lactating),
        State::Growing | State::Adult => {}
    }
    let age = animal.born.map(|born| born.age_on(day));
    if animal.state == State::Growing || age.is_some_and(|years| years < *GROWN) {
        reasons.push(VetListReason::Growing { age });
    }
    if let Some(condition) = condition.filter(|score| *score < *CONDITION_THIN) {
        reasons.push(VetListReason::Thin { condition });
    }
    if matches!(health.appetite, Appetite::Off { .. }) {
        reasons.push(VetListReason::OffFeed);
    }
    if health.laminitis == Laminitis::Active {
        reasons.push(VetListReason::LaminitisNow);
    }
    if matches!(animal.phase, Phase::Episode | Phase::Recovering) {
        reasons.push(VetListReason::EpisodeNotOver);
    }
    if animal.kind.is_donkey() || animal.body_type == Some(BodyType::Donkey) {
        reasons.push(VetListReason::DonkeyOrMule);
    }
    if animal.kind == Kind::Miniature || animal.body_type == Some(BodyType::Miniature) {
        reasons.push(VetListReason::Miniature);
    }
    if animal.body_type == Some(BodyType::Shetland) {
        reasons.push(VetListReason::Shetland);
    }
    if let Some(age) = animal
        .born
        .map(|born| born.oldest_on(day))
        .filter(|years| *VERY_OLD <= *years)
    {
        reasons.push(VetListReason::VeryOld { age });
    }
    if health.teeth == Teeth::Poor {
        reasons.push(VetListReason::PoorTeeth);
    }
    if health.ppid == Ppid::Untreated {
        reasons.push(VetListReason::PpidUntreated);
    }
    reasons.extend(health.flags.iter().filter_map(|flag| by_flag(flag, day)));
    reasons
}

/// Whether a flag puts an animal on the list on a day.
fn by_flag(flag: &VetFlag, day: LocalDate) -> Option<VetListReason> {
    match *flag {
        VetFlag::PainRelief => Some(VetListReason::PainRelief),
        VetFlag::Sglt2Inhibitor => Some(VetListReason::Sglt2Inhibitor),
        VetFlag::InsulinDrug => Some(VetListReason::InsulinDrug),
        VetFlag::Corticosteroid { last } => (days_since(last, day) <= *CORTICOSTEROID_DAYS)
            .then_some(VetListReason::Corticosteroid { last }),
        VetFlag::BoxRest => Some(VetListReason::BoxRest),
        VetFlag::GotAtGrain { .. } => Some(VetListReason::GotAtGrain),
        VetFlag::EscapedOntoGrass { .. } => Some(VetListReason::EscapedOntoGrass),
        VetFlag::Sick => Some(VetListReason::Sick),
        VetFlag::SurgeryOrTransport { on } => (days_since(on, day) <= *SURGERY_DAYS)
            .then_some(VetListReason::SurgeryOrTransport { on }),
        VetFlag::Lame => Some(VetListReason::Lame),
        VetFlag::TrimmedOrShod { .. } | VetFlag::FootsoreAfterTrims => None,
    }
}

/// Days from one day to a later one; negative when it is still to come.
pub(super) fn days_since(earlier: LocalDate, day: LocalDate) -> i64 {
    day.signed_duration_since(earlier).num_days()
}

/// The vet's word on the lowest level that holds for an animal on a day: the one given last. Of two given on one day, the
/// one that leaves the animal more.
pub fn lowest_level_word<'a>(
    words: &'a [VetWord],
    animal: &AnimalId,
    day: LocalDate,
) -> Option<(&'a VetWord, PartOfBody)> {
    words
        .iter()
        .filter(|word| word.animal == *animal && word.holds_on(day))
        .filter_map(|word| match word.permit {
            VetPermit::LowestLevel(level) if level.is_finite() => Some((word, level)),
            _ => None,
        })
        .reduce(|best, next| {
            let later = next.0.given > best.0.given;
            let same_day_more = next.0.given == best.0.given && next.1 > best.1;
            if later || same_day_more { next } else { best }
        })
}

/// The last vet's word on the lowest level of an animal that has expired before a day.
pub(super) fn expired_word<'a>(
    words: &'a [VetWord],
    animal: &AnimalId,
    day: LocalDate,
) -> Option<&'a VetWord> {
    words
        .iter()
        .filter(|word| word.animal == *animal && word.expires < day)
        .filter(|word| matches!(word.permit, VetPermit::LowestLevel(_)))
        .max_by_key(|word| word.expires)
}

/// The last day of a vet's word given without one: eight weeks (ours).
pub fn default_expiry(given: LocalDate) -> LocalDate {
    given
        .checked_add_days(Days::new(VET_WORD_DAYS.unsigned_abs()))
        .unwrap_or(LocalDate::MAX)
}
