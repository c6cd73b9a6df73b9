//! From the table to the next step.

use super::condition::If;
use super::facts::{Facts, HowSoon};
use super::reason::Reason;
use super::table::{Origin, Row, TABLE, Then};
use crate::animal::Phase;
use crate::limits::published::{NEEDS_WEIGHT, STEPS};
use crate::limits::step_up;
use crate::progress::phase::propose;
use crate::units::{LocalDate, PartOfBody};

/// The next step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Step {
    /// Keep the amounts.
    Keep,
    /// Feed more.
    FeedMore {
        /// Up to this level.
        to: PartOfBody,
    },
    /// One step down.
    StepDown {
        /// Down to this level.
        to: PartOfBody,
    },
    /// Test the hay.
    TestHay,
    /// Check what was really eaten.
    CheckEaten,
    /// It is at its target: hold it there.
    HoldAtTarget,
    /// Ring the vet.
    CallVet {
        /// How soon.
        ring: HowSoon,
        /// Until then feed up to this level.
        feed: Option<PartOfBody>,
    },
    /// Measure or weigh it.
    Weigh,
    /// Make its first plan.
    Plan,
    /// First what stands in the way of less.
    ClearTheWay,
    /// Confirm a change of phase, or not.
    DecidePhase {
        /// The phase that is proposed.
        to: Phase,
    },
}

impl Step {
    /// The level that it asks for, at a review or, with the vet, now.
    pub const fn level(self) -> Option<PartOfBody> {
        match self {
            Self::FeedMore { to } | Self::StepDown { to } => Some(to),
            Self::CallVet { feed, .. } => feed,
            Self::Keep
            | Self::TestHay
            | Self::CheckEaten
            | Self::HoldAtTarget
            | Self::Weigh
            | Self::Plan
            | Self::ClearTheWay
            | Self::DecidePhase { .. } => None,
        }
    }
}

/// When a step is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum When {
    /// Now.
    Now,
    /// At the review, on this day: amounts change only then.
    AtReview(LocalDate),
}

/// The next step with everything behind it.
#[derive(Clone, Debug, PartialEq)]
pub struct Decision {
    /// The step.
    pub step: Step,
    /// When it is taken.
    pub when: When,
    /// Why: what each condition of its row found.
    pub because: Vec<Reason>,
    /// The row that decided.
    pub row: &'static str,
    /// Where the row comes from.
    pub from: Origin,
    /// The constants its conditions go by.
    pub constants: Vec<&'static str>,
    /// The step after this one, where this one is to look before anything changes.
    pub then: Option<Step>,
}

/// The next step: the first row of the table that holds. The last row always does.
pub fn decide(of: &Facts) -> Decision {
    let mut rows = TABLE.iter();
    let mut decision = next(of, &mut rows).unwrap_or_else(|| keep(of));
    if matches!(decision.step, Step::CheckEaten | Step::TestHay) {
        let mut then = next(of, &mut rows);
        while then
            .as_ref()
            .is_some_and(|then| matches!(then.step, Step::CheckEaten | Step::TestHay))
        {
            then = next(of, &mut rows);
        }
        decision.then = then
            .map(|then| then.step)
            .filter(|step| !matches!(step, Step::Keep));
    }
    decision
}

/// The next row that holds.
fn next<'a>(of: &Facts, rows: &mut impl Iterator<Item = &'a Row>) -> Option<Decision> {
    rows.find_map(|row| {
        let because: Option<Vec<Reason>> = row.when.iter().map(|when| when.found(of)).collect();
        because.map(|because| told(of, row, because))
    })
}

fn told(of: &Facts, row: &Row, because: Vec<Reason>) -> Decision {
    let step = step(of, row.then);
    let mut constants: Vec<&'static str> = Vec::new();
    for id in row.when.iter().copied().flat_map(If::constants) {
        if !constants.contains(id) {
            constants.push(id);
        }
    }
    Decision {
        when: when(of, step),
        step,
        because,
        row: row.name,
        from: row.from,
        constants,
        then: None,
    }
}

/// What stands under the table: nothing is changed.
fn keep(of: &Facts) -> Decision {
    Decision {
        step: Step::Keep,
        when: When::Now,
        because: vec![Reason::InPhase(of.phase)],
        row: "keep",
        from: Origin {
            work: crate::sources::Work::Tussock,
            place: "practice section 2",
            mark: crate::sources::Mark::Ours,
        },
        constants: Vec::new(),
        then: None,
    }
}

/// Amounts change at a review; only what protects an animal that lost too much does not wait for it.
fn when(of: &Facts, step: Step) -> When {
    match (step, of.review) {
        (Step::FeedMore { .. } | Step::StepDown { .. }, Some(review)) if of.day < review => {
            When::AtReview(review)
        }
        _ => When::Now,
    }
}

fn step(of: &Facts, then: Then) -> Step {
    let level = of.level.unwrap_or(of.start);
    match then {
        Then::Keep => Step::Keep,
        Then::FeedMore => Step::FeedMore {
            to: one_up(level, of),
        },
        Then::Raise => Step::FeedMore { to: step_up(level) },
        // The rows before it see that there is one.
        Then::StepDown => of.next_down.map_or(Step::Keep, |to| Step::StepDown { to }),
        Then::TestHay => Step::TestHay,
        Then::CheckEaten => Step::CheckEaten,
        Then::HoldAtTarget => Step::HoldAtTarget,
        Then::CallVet(ring) => Step::CallVet { ring, feed: None },
        Then::CallVetForStop => Step::CallVet {
            ring: of.stop.unwrap_or(HowSoon::Today),
            feed: None,
        },
        Then::FeedStartAndCallVet => Step::CallVet {
            ring: if of.fat_in_blood_risk {
                HowSoon::Today
            } else {
                HowSoon::First
            },
            feed: (level < of.start).then_some(of.start),
        },
        Then::Weigh => Step::Weigh,
        Then::Plan => Step::Plan,
        Then::ClearTheWay => Step::ClearTheWay,
        Then::DecidePhase => {
            propose(of).map_or(Step::Keep, |proposal| Step::DecidePhase { to: proposal.to })
        }
    }
}

/// The level above: the next step of those below the starting level, then that level, then a tenth of a percent at a time;
/// for an animal that needs weight at least the level of those.
fn one_up(level: PartOfBody, of: &Facts) -> PartOfBody {
    if of.phase == Phase::NeedsWeight && level < *NEEDS_WEIGHT {
        return *NEEDS_WEIGHT;
    }
    STEPS
        .into_iter()
        .chain([of.start])
        .filter(|step| level < *step)
        .reduce(|least, step| if step < least { step } else { least })
        .unwrap_or_else(|| step_up(level))
}
