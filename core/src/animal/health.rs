//! Health as far as it decides feeding. It is no diagnosis: it is what a person, a test or a vet said.

use super::ids::AnimalId;
use crate::units::{Instant, LocalDate, PartOfBody};

/// Yes, no, or nobody looked.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub enum Answer {
    /// Yes.
    Yes,
    /// No.
    No,
    /// Nobody looked or nobody knows.
    #[default]
    NotKnown,
}

/// Laminitis, as far as anybody knows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Laminitis {
    /// Never, as far as its keeper knows.
    Never,
    /// It had it before and is sound now.
    Ever {
        /// The day the last episode ended, when known.
        last: Option<LocalDate>,
    },
    /// It has it now, or the vet has not yet said it is over.
    Active,
    /// Nobody knows.
    #[default]
    NotKnown,
}

/// What an insulin test said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct InsulinTest {
    /// Whether the tester called it insulin-dysregulated.
    pub dysregulated: bool,
    /// Who tested.
    pub by: String,
    /// When.
    pub on: LocalDate,
    /// Which test.
    pub test: String,
}

/// Insulin dysregulation.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub enum Insulin {
    /// Tested.
    Tested(InsulinTest),
    /// Not tested.
    #[default]
    NotKnown,
}

/// Pituitary disease (PPID).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Ppid {
    /// Diagnosed and treated.
    Treated,
    /// Diagnosed and not treated.
    Untreated,
    /// A vet tested and it has none.
    Clear,
    /// Not tested.
    #[default]
    NotKnown,
}

/// Its teeth.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Teeth {
    /// Looked at in the last year and good.
    Good,
    /// It quids, or teeth are missing.
    Poor,
    /// Not looked at in the last year.
    #[default]
    NotKnown,
}

/// A handful of dry hay held out to it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Handful {
    /// It ate.
    Eaten,
    /// It refused.
    Refused,
    /// Not tried yet.
    NotTried,
}

/// Whether it eats.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Appetite {
    /// It eats as usual.
    Eating,
    /// It left its forage.
    Off {
        /// When it was last seen eating.
        last_seen_eating: Option<Instant>,
        /// What it did with a handful of dry hay.
        handful: Handful,
        /// Whether it looks dull.
        dull: Answer,
    },
    /// Nobody said.
    #[default]
    NotKnown,
}

/// Something the vet or the keeper said that changes what is allowed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum VetFlag {
    /// On pain relief: it may walk sound and not be.
    PainRelief,
    /// On an SGLT2 inhibitor.
    Sglt2Inhibitor,
    /// On another drug that alters insulin.
    InsulinDrug,
    /// A corticosteroid was given.
    Corticosteroid {
        /// The last day.
        last: LocalDate,
    },
    /// Trimmed or shod.
    TrimmedOrShod {
        /// The day.
        on: LocalDate,
    },
    /// Footsore after trims.
    FootsoreAfterTrims,
    /// On box rest.
    BoxRest,
    /// Got at grain.
    GotAtGrain {
        /// When, as near as anybody knows.
        at: Instant,
    },
    /// Escaped onto lush grass.
    EscapedOntoGrass {
        /// When, as near as anybody knows.
        at: Instant,
    },
    /// Sick, feverish or with colic.
    Sick,
    /// Surgery or a long journey.
    SurgeryOrTransport {
        /// The day.
        on: LocalDate,
    },
    /// Lame.
    Lame,
}

/// What is known of an animal's health.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct Health {
    /// Laminitis.
    pub laminitis: Laminitis,
    /// Insulin dysregulation.
    pub insulin: Insulin,
    /// Pituitary disease.
    pub ppid: Ppid,
    /// Teeth.
    pub teeth: Teeth,
    /// Whether it eats.
    pub appetite: Appetite,
    /// A native or cob type, by its keeper's word.
    pub native_or_cob: Answer,
    /// What the vet or the keeper said.
    pub flags: Vec<VetFlag>,
}

/// What a vet allowed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum VetPermit {
    /// Dry matter down to this part of body weight a day.
    LowestLevel(PartOfBody),
    /// Work.
    Work,
    /// Return to grass.
    ReturnToGrass,
}

/// Which matter a vet's word is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum VetScope {
    /// The lowest level of dry matter.
    LowestLevel,
    /// Work.
    Work,
    /// Grass.
    ReturnToGrass,
}

impl VetPermit {
    /// Which matter it is about.
    pub const fn scope(self) -> VetScope {
        match self {
            Self::LowestLevel(_) => VetScope::LowestLevel,
            Self::Work => VetScope::Work,
            Self::ReturnToGrass => VetScope::ReturnToGrass,
        }
    }
}

/// The vet's word: a record with an expiry.
#[derive(Clone, Debug, PartialEq)]
pub struct VetWord {
    /// For which animal.
    pub animal: AnimalId,
    /// What is allowed.
    pub permit: VetPermit,
    /// The vet.
    pub vet: String,
    /// The practice.
    pub practice: String,
    /// The day it was given.
    pub given: LocalDate,
    /// How: by telephone, at a visit, in writing.
    pub how: String,
    /// The last day on which it holds.
    pub expires: LocalDate,
    /// When it was written down, when known: it was not given after that.
    pub written: Option<Instant>,
}

/// When something that stops an animal was first seen or said.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Seen {
    /// The local day.
    pub day: LocalDate,
    /// The instant, when it is known.
    pub at: Option<Instant>,
}

impl Seen {
    /// On a day, at an hour that nobody knows.
    pub const fn on(day: LocalDate) -> Self {
        Self { day, at: None }
    }
}

/// Since when what is said of an animal stops it. `None` where it is not said, or nobody knows the day.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Default)]
pub struct SaidOn {
    /// The day its last laminitis was said to have begun.
    pub laminitis: Option<LocalDate>,
    /// The day it was said to be lame.
    pub lame: Option<LocalDate>,
    /// The day its episode, or a recovery without one, was said to have begun.
    pub phase: Option<LocalDate>,
}

impl VetWord {
    /// Whether it holds on a day: from the day it was given to its last day.
    pub fn holds_on(&self, day: LocalDate) -> bool {
        self.given <= day && day <= self.expires
    }

    /// Whether it holds for an animal on a day, in its own matter, for what was seen: it lifts only what was there when it
    /// was given. On the same day it counts unless it was written down before the thing was seen.
    pub fn lifts(&self, animal: &AnimalId, scope: VetScope, day: LocalDate, seen: Seen) -> bool {
        let written_before = self
            .written
            .zip(seen.at)
            .is_some_and(|(written, at)| written < at);
        self.animal == *animal
            && self.permit.scope() == scope
            && self.holds_on(day)
            && seen.day <= self.given
            && !written_before
    }
}
