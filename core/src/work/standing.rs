//! Whether it works at all, and what stops it (practice rules 15 and 17).

use super::published::{
    BUILD_UP_WEEKS, DONKEY_A_WEEK, RECOVERED_A_WEEK, UNFIT_MINUTES, WORK_A_WEEK, WORK_MINUTES,
};
use crate::animal::{
    Animal, Appetite, Laminitis, Phase, SaidOn, State, VetFlag, VetScope, VetWord,
};
use crate::units::LocalDate;

/// What work it may have.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WorkLine {
    /// None while something stops it.
    None,
    /// Growing, in foal or in milk: nothing is planned here, the vet says what it may do.
    NotPlannedHere(State),
    /// It had laminitis: the vet's word first.
    VetsWordFirst,
    /// Nobody knows whether it had laminitis: ask before more than walking.
    AskFirst,
    /// Recovered and with the vet's word: soft ground, trot to canter.
    Recovered {
        /// Minutes a session.
        minutes: u32,
        /// Sessions a week.
        a_week: u32,
    },
    /// A donkey or mule: nothing is published, it is walked.
    Donkey {
        /// Minutes a session.
        minutes: u32,
        /// Sessions a week.
        a_week: u32,
    },
    /// Sound and never laminitic: low to moderate, canter to fast canter, built up over weeks when unfit.
    Sound {
        /// Minutes a session.
        minutes: u32,
        /// Sessions a week.
        a_week: u32,
        /// Minutes to begin with when unfit.
        unfit_minutes: u32,
        /// Weeks over which to build up.
        build_up_weeks: u32,
    },
}

impl WorkLine {
    /// Sessions a week; `None` where no work is planned.
    pub const fn a_week(self) -> Option<u32> {
        match self {
            Self::None | Self::NotPlannedHere(_) | Self::VetsWordFirst | Self::AskFirst => None,
            Self::Recovered { a_week, .. }
            | Self::Donkey { a_week, .. }
            | Self::Sound { a_week, .. } => Some(a_week),
        }
    }
}

/// What stops all work now.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum WorkStop {
    /// A sign was seen that no vet's word has lifted, or somebody is still to look again.
    Sign,
    /// Laminitis now.
    Laminitis,
    /// An episode: the vet is in charge.
    Episode,
    /// Lame.
    Lame,
    /// On pain relief: it may walk sound and not be.
    PainRelief,
    /// On box rest.
    BoxRest,
    /// Sick, feverish or with colic.
    Sick,
    /// It got at grain.
    GotAtGrain,
    /// It escaped onto lush grass.
    EscapedOntoGrass,
    /// It leaves its forage.
    OffFeed,
}

/// What is known of an animal that decides about work.
#[derive(Clone, Copy, Debug)]
pub struct WorkFor<'a> {
    /// The animal.
    pub animal: &'a Animal,
    /// The local day.
    pub day: LocalDate,
    /// Vets' words, of any animal and any day.
    pub words: &'a [VetWord],
    /// Since when what is said of it stops it.
    pub said: SaidOn,
    /// A sign stands that stops work, or a look again is still to be made.
    pub sign: bool,
}

/// What work it may have, and what stops it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Standing {
    /// What work it may have.
    pub line: WorkLine,
    /// Everything that stops all work now; empty when nothing does.
    pub stops: Vec<WorkStop>,
    /// The last day on which the vet's word that opens it holds; `None` when none is needed or none holds.
    pub word_until: Option<LocalDate>,
    /// The day the word was given.
    pub word_given: Option<LocalDate>,
}

/// Judges whether an animal may work. Nothing but the end of what stops it opens work again; after laminitis the vet's
/// word, given since, does.
pub fn standing(of: &WorkFor<'_>) -> Standing {
    let stops = stops(of);
    let word = word(of);
    let ever = matches!(of.animal.health.laminitis, Laminitis::Ever { .. });
    let word = word.filter(|_| ever && stops.is_empty());
    let line = if stops.is_empty() {
        open(of, word.is_some())
    } else {
        WorkLine::None
    };
    Standing {
        line,
        stops,
        word_until: word.map(|word| word.expires),
        word_given: word.map(|word| word.given),
    }
}

fn stops(of: &WorkFor<'_>) -> Vec<WorkStop> {
    let health = &of.animal.health;
    let mut found = Vec::new();
    if of.sign {
        found.push(WorkStop::Sign);
    }
    if health.laminitis == Laminitis::Active {
        found.push(WorkStop::Laminitis);
    }
    if of.animal.phase == Phase::Episode {
        found.push(WorkStop::Episode);
    }
    if matches!(health.appetite, Appetite::Off { .. }) {
        found.push(WorkStop::OffFeed);
    }
    found.extend(health.flags.iter().filter_map(|flag| match flag {
        VetFlag::Lame => Some(WorkStop::Lame),
        VetFlag::PainRelief => Some(WorkStop::PainRelief),
        VetFlag::BoxRest => Some(WorkStop::BoxRest),
        VetFlag::Sick => Some(WorkStop::Sick),
        VetFlag::GotAtGrain { .. } => Some(WorkStop::GotAtGrain),
        VetFlag::EscapedOntoGrass { .. } => Some(WorkStop::EscapedOntoGrass),
        VetFlag::Sglt2Inhibitor
        | VetFlag::InsulinDrug
        | VetFlag::Corticosteroid { .. }
        | VetFlag::TrimmedOrShod { .. }
        | VetFlag::FootsoreAfterTrims
        | VetFlag::SurgeryOrTransport { .. } => None,
    }));
    found.sort_unstable();
    found.dedup();
    found
}

/// The vet's word about work that holds today. A word that was given before the last episode says nothing about what
/// comes after it.
fn word<'a>(of: &WorkFor<'a>) -> Option<&'a VetWord> {
    let since = match of.animal.health.laminitis {
        Laminitis::Ever { last } => last.max(of.said.laminitis),
        Laminitis::Active | Laminitis::Never | Laminitis::NotKnown => of.said.laminitis,
    };
    of.words
        .iter()
        .filter(|word| {
            word.animal == of.animal.id
                && word.holds_on(of.day)
                && word.permit.scope() == VetScope::Work
                && since.is_none_or(|since| since <= word.given)
        })
        .max_by_key(|word| word.expires)
}

fn open(of: &WorkFor<'_>, allowed: bool) -> WorkLine {
    let donkey = of.animal.kind.is_donkey();
    match (of.animal.health.laminitis, of.animal.state) {
        (Laminitis::Active, _) => WorkLine::None,
        (Laminitis::Ever { .. }, _) if !allowed => WorkLine::VetsWordFirst,
        (Laminitis::NotKnown, _) => WorkLine::AskFirst,
        (
            Laminitis::Ever { .. } | Laminitis::Never,
            state @ (State::Growing | State::Pregnant | State::Lactating),
        ) => WorkLine::NotPlannedHere(state),
        (Laminitis::Ever { .. } | Laminitis::Never, State::Adult) if donkey => WorkLine::Donkey {
            minutes: *WORK_MINUTES,
            a_week: *DONKEY_A_WEEK,
        },
        (Laminitis::Ever { .. }, State::Adult) => WorkLine::Recovered {
            minutes: *WORK_MINUTES,
            a_week: *RECOVERED_A_WEEK,
        },
        (Laminitis::Never, State::Adult) => WorkLine::Sound {
            minutes: *WORK_MINUTES,
            a_week: *WORK_A_WEEK,
            unfit_minutes: *UNFIT_MINUTES,
            build_up_weeks: *BUILD_UP_WEEKS,
        },
    }
}
