//! What may happen to a pony from one plan to the next.

use proptest::prelude::*;
use tussock_core::animal::{Goal, Laminitis, Phase};
use tussock_core::units::PartOfBody;

/// How it was weighed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Weighed {
    Not,
    Scale,
    Tape,
}

/// What a look-over found.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Look {
    Clean,
    /// One of the eight signs.
    Sign(usize),
    /// Nobody looked at this one.
    LeftOut(usize),
}

/// What is said of the animal itself.
#[derive(Clone, Debug)]
pub(super) struct Health {
    pub(super) laminitis: Laminitis,
    pub(super) phase: Phase,
    pub(super) goal: Goal,
    pub(super) eats: bool,
    pub(super) flags: Vec<Flagged>,
}

/// A flag, and for those with a day how long ago.
#[derive(Clone, Copy, Debug)]
pub(super) enum Flagged {
    Lame,
    PainRelief,
    BoxRest,
    Sglt2Inhibitor,
    Sick,
    Trimmed(i64),
    Corticosteroid(i64),
    Surgery(i64),
}

/// A vet's word: about the lowest level in hundredths, or about work.
#[derive(Clone, Copy, Debug)]
pub(super) struct Said {
    pub(super) level: Option<u32>,
    pub(super) given: i64,
    pub(super) days: i64,
}

/// What happens until the next plan.
#[derive(Clone, Debug)]
pub(super) struct Step {
    pub(super) days: i64,
    pub(super) change: f64,
    pub(super) weighed: Weighed,
    pub(super) score: Option<u32>,
    pub(super) look: Option<Look>,
    pub(super) health: Option<Health>,
    pub(super) word: Option<Said>,
    pub(super) feeding: Option<(bool, u32)>,
    pub(super) asked: Option<PartOfBody>,
}

/// A week in which all goes well.
pub(super) const fn a_clean_step() -> Step {
    Step {
        days: 7,
        change: 1.0,
        weighed: Weighed::Scale,
        score: Some(75),
        look: Some(Look::Clean),
        health: None,
        word: None,
        feeding: None,
        asked: None,
    }
}

fn flags() -> impl Strategy<Value = Vec<Flagged>> {
    let one = prop_oneof![
        Just(Flagged::Lame),
        Just(Flagged::PainRelief),
        Just(Flagged::BoxRest),
        Just(Flagged::Sglt2Inhibitor),
        Just(Flagged::Sick),
        (0_i64..10).prop_map(Flagged::Trimmed),
        (0_i64..60).prop_map(Flagged::Corticosteroid),
        (0_i64..50).prop_map(Flagged::Surgery),
    ];
    prop_oneof![4 => Just(Vec::new()), 3 => prop::collection::vec(one, 1..3)]
}

fn health() -> impl Strategy<Value = Health> {
    let laminitis = prop_oneof![
        4 => Just(Laminitis::Never),
        1 => Just(Laminitis::NotKnown),
        1 => Just(Laminitis::Active),
        2 => Just(Laminitis::Ever { last: "2025-10-12".parse().ok() }),
    ];
    let phase = prop_oneof![
        5 => Just(Phase::Losing),
        1 => prop::sample::select(vec![
            Phase::New,
            Phase::Plateau,
            Phase::Holding,
            Phase::NeedsWeight,
            Phase::Episode,
            Phase::Recovering,
        ]),
    ];
    let goal = prop_oneof![6 => Just(Goal::Lose), 1 => Just(Goal::Hold), 1 => Just(Goal::Gain)];
    (laminitis, phase, goal, prop::bool::weighted(0.9), flags()).prop_map(
        |(laminitis, phase, goal, eats, flags)| Health {
            laminitis,
            phase,
            goal,
            eats,
            flags,
        },
    )
}

fn word() -> impl Strategy<Value = Said> {
    let level = prop_oneof![3 => (90_u32..145).prop_map(Some), 1 => Just(None)];
    (level, -20_i64..3, 0_i64..60).prop_map(|(level, given, days)| Said { level, given, days })
}

/// Steps of which most go well, so that plans are taken and restrictions begin.
pub(super) fn steps() -> impl Strategy<Value = Step> {
    let weighed = prop_oneof![
        4 => Just(Weighed::Scale),
        3 => Just(Weighed::Tape),
        1 => Just(Weighed::Not),
    ];
    let score = prop_oneof![
        6 => (14_u32..18).prop_map(|half| Some(half * 5)),
        1 => (8_u32..14).prop_map(|half| Some(half * 5)),
        2 => Just(None),
    ];
    let look = prop_oneof![
        10 => Just(Some(Look::Clean)),
        1 => (0_usize..8).prop_map(|sign| Some(Look::Sign(sign))),
        1 => (0_usize..8).prop_map(|sign| Some(Look::LeftOut(sign))),
        1 => Just(None),
    ];
    let asked = prop_oneof![
        2 => Just(None),
        5 => (80_u32..160).prop_map(|level| Some(PartOfBody::percent(f64::from(level) / 100.0))),
    ];
    (
        5_i64..11,
        0.97_f64..1.03,
        weighed,
        score,
        look,
        prop::option::weighted(0.2, health()),
        prop::option::weighted(0.2, word()),
        prop::option::weighted(0.2, (any::<bool>(), 5_u32..720)),
        asked,
    )
        .prop_map(
            |(days, change, weighed, score, look, health, word, feeding, asked)| Step {
                days,
                change,
                weighed,
                score,
                look,
                health,
                word,
                feeding,
                asked,
            },
        )
}
