//! The table of the next step. It is read from the top: the first row whose conditions all hold decides.

use super::condition::If;
use super::facts::HowSoon;
use crate::animal::{Goal, Phase};
use crate::sources::{Mark, Work};

/// What a row says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Then {
    /// Keep the amounts.
    Keep,
    /// One step up, at the review.
    FeedMore,
    /// A tenth of a percent more, at the review.
    Raise,
    /// One step down, at the review.
    StepDown,
    /// Test the hay.
    TestHay,
    /// Check what was really eaten.
    CheckEaten,
    /// It is at its target: hold it there.
    HoldAtTarget,
    /// Ring the vet, so soon.
    CallVet(HowSoon),
    /// Ring the vet as soon as what stops it asks.
    CallVetForStop,
    /// Up to the starting level now, and ring the vet: the same day for those whom not eating enough endangers.
    FeedStartAndCallVet,
    /// Measure or weigh it.
    Weigh,
    /// Make its first plan.
    Plan,
    /// First what stands in the way.
    ClearTheWay,
    /// Confirm the change of phase, or not.
    DecidePhase,
}

/// Where a row comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Origin {
    /// The work.
    pub work: Work,
    /// The place in it.
    pub place: &'static str,
    /// How far it can be trusted.
    pub mark: Mark,
}

/// A row of the table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Row {
    /// Its name, for who reads the table.
    pub name: &'static str,
    /// All of these hold.
    pub when: &'static [If],
    /// Then this is the next step.
    pub then: Then,
    /// Where it comes from.
    pub from: Origin,
}

const fn ours(place: &'static str) -> Origin {
    Origin {
        work: Work::Tussock,
        place,
        mark: Mark::Ours,
    }
}

const fn practice(place: &'static str) -> Origin {
    Origin {
        work: Work::CommonPractice,
        place,
        mark: Mark::CommonPractice,
    }
}

const MONTHLY: Origin = Origin {
    work: Work::Wooldridge2017,
    place: "no loss in a month: cut; never below 1 %",
    mark: Mark::Published,
};

const STEPS: Origin = Origin {
    work: Work::Eceim2019,
    place: "1.25 %, resistant: lower under a vet; 0.5 to 1 % a week",
    mark: Mark::FromMemory,
};

const NEW: If = If::In(&[Phase::New]);
const TO_LOSE: If = If::In(&[Phase::Losing, Phase::Plateau]);
const HOLDING: If = If::In(&[Phase::Holding]);
const NEEDS_WEIGHT: If = If::In(&[Phase::NeedsWeight]);
const NOT_THE_VETS: If = If::In(&[Phase::New, Phase::Losing, Phase::Plateau, Phase::Holding]);

const NOT_IN_EPISODE: If = If::In(&[
    Phase::New,
    Phase::Losing,
    Phase::Plateau,
    Phase::Holding,
    Phase::NeedsWeight,
    Phase::Recovering,
    Phase::OtherHands,
]);

/// The table.
#[rustfmt::skip]
pub const TABLE: &[Row] = &[
    // What stops it, and what it lost, come before everything else.
    Row { name: "stopped", when: &[If::Stopped], then: Then::CallVetForStop, from: ours("practice rules 14, 15 and 19") },
    Row { name: "far down, measured again", when: &[If::FarDownTwice], then: Then::FeedStartAndCallVet, from: ours("practice rule 13") },
    Row { name: "donkey, too fast", when: &[If::DonkeyTooFast], then: Then::FeedStartAndCallVet, from: ours("practice rule 11") },
    Row { name: "far down once", when: &[If::FarDownOnce], then: Then::Weigh, from: ours("practice rule 13") },
    Row { name: "laminitis now", when: &[NOT_IN_EPISODE, If::LaminitisNow, If::ChangeProposed], then: Then::DecidePhase, from: ours("phases: episode") },
    Row { name: "look again", when: &[If::LookAgain], then: Then::Keep, from: ours("practice rule 15") },
    // In the vet's hands, or in somebody else's.
    Row { name: "episode, over", when: &[If::In(&[Phase::Episode]), If::ChangeProposed], then: Then::DecidePhase, from: ours("phases: recovering") },
    Row { name: "episode", when: &[If::In(&[Phase::Episode])], then: Then::Keep, from: ours("phases: the vet is in charge") },
    Row { name: "recovering, over", when: &[If::In(&[Phase::Recovering]), If::ChangeProposed], then: Then::DecidePhase, from: ours("phases: recovering") },
    Row { name: "recovering", when: &[If::In(&[Phase::Recovering])], then: Then::Keep, from: ours("phases: recovering") },
    Row { name: "other hands", when: &[If::In(&[Phase::OtherHands])], then: Then::Keep, from: ours("phases: in other hands") },
    // Nothing is decided without a weight and a plan.
    Row { name: "never weighed", when: &[If::NeverWeighed], then: Then::Weigh, from: ours("practice section 3") },
    Row { name: "very thin", when: &[If::VeryThin], then: Then::CallVet(HowSoon::First), from: ours("no target is reckoned under condition 3") },
    Row { name: "thin", when: &[NOT_THE_VETS, If::Thin], then: Then::DecidePhase, from: ours("phases: needs weight") },
    Row { name: "no plan", when: &[If::NoPlan], then: Then::Plan, from: ours("practice section 2") },
    // New: fourteen days at the starting level, two weighings, then decide.
    Row { name: "new, settling", when: &[NEW, If::Settling], then: Then::Keep, from: ours("phases: new") },
    Row { name: "new, weighed once", when: &[NEW, If::WeighedTooSeldom], then: Then::Weigh, from: ours("phases: new") },
    Row { name: "new donkey, vet first", when: &[NEW, If::Wants(Goal::Lose), If::DonkeyWithoutWord], then: Then::CallVet(HowSoon::First), from: ours("practice rule 11") },
    Row { name: "new, decide", when: &[NEW, If::ChangeProposed], then: Then::DecidePhase, from: ours("phases: new") },
    // Needs weight.
    Row { name: "filled out", when: &[NEEDS_WEIGHT, If::FilledOut], then: Then::HoldAtTarget, from: ours("phases: needs weight") },
    Row { name: "thin and losing", when: &[NEEDS_WEIGHT, If::LongEnough, If::Loses], then: Then::CallVet(HowSoon::First), from: practice("teeth, worms, illness") },
    Row { name: "no gain, eaten not known", when: &[NEEDS_WEIGHT, If::LongEnough, If::DoesNotGain, If::EatenNotKnown], then: Then::CheckEaten, from: ours("practice rule 13") },
    Row { name: "no gain", when: &[NEEDS_WEIGHT, If::LongEnough, If::DoesNotGain], then: Then::FeedMore, from: ours("phases: needs weight") },
    Row { name: "needs weight", when: &[NEEDS_WEIGHT], then: Then::Keep, from: ours("phases: needs weight") },
    // Holding: raised until its weight holds.
    Row { name: "regained", when: &[HOLDING, If::Regained], then: Then::DecidePhase, from: ours("phases: holding") },
    Row { name: "holding, weighed once", when: &[HOLDING, If::WeighedTooSeldom], then: Then::Weigh, from: ours("phases: holding") },
    Row { name: "holding, over the band", when: &[HOLDING, If::OverBand], then: Then::CheckEaten, from: ours("phases: holding") },
    Row { name: "holding, holds", when: &[HOLDING, If::Holds], then: Then::Keep, from: ours("phases: holding") },
    Row { name: "holding, raise", when: &[HOLDING], then: Then::Raise, from: ours("phases: every 3 weeks") },
    // Losing, and where that stands still.
    Row { name: "at target", when: &[TO_LOSE, If::TargetReached], then: Then::HoldAtTarget, from: ours("phases: holding") },
    Row { name: "too short", when: &[TO_LOSE, If::TooShort], then: Then::Keep, from: ours("practice rule 13") },
    Row { name: "too fast", when: &[TO_LOSE, If::TooFast], then: Then::FeedMore, from: STEPS },
    Row { name: "too few readings", when: &[TO_LOSE, If::TooFewReadings], then: Then::Weigh, from: ours("practice rule 13") },
    Row { name: "slow, eats more", when: &[TO_LOSE, If::LongEnough, If::Slow, If::EatsMore], then: Then::CheckEaten, from: ours("practice rule 13") },
    Row { name: "slow, eaten not known", when: &[TO_LOSE, If::LongEnough, If::Slow, If::EatenNotKnown], then: Then::CheckEaten, from: ours("practice rule 13") },
    Row { name: "slow, grass", when: &[TO_LOSE, If::LongEnough, If::Slow, If::GrassNotCounted], then: Then::CheckEaten, from: ours("practice rule 5") },
    Row { name: "slow, hay not tested", when: &[TO_LOSE, If::LongEnough, If::Slow, If::AtStart, If::HayNotTested], then: Then::TestHay, from: ours("practice section 3") },
    Row { name: "slow, nothing less", when: &[TO_LOSE, If::LongEnough, If::Slow, If::NoStepLeft], then: Then::CallVet(HowSoon::First), from: MONTHLY },
    Row { name: "slow, needs the vet", when: &[TO_LOSE, If::LongEnough, If::Slow, If::StepNeedsVet], then: Then::CallVet(HowSoon::First), from: STEPS },
    Row { name: "slow, barred", when: &[TO_LOSE, If::LongEnough, If::Slow, If::StepBarred], then: Then::ClearTheWay, from: ours("practice rule 2") },
    Row { name: "slow", when: &[TO_LOSE, If::LongEnough, If::Slow], then: Then::StepDown, from: MONTHLY },
    Row { name: "on course", when: &[TO_LOSE, If::OnCourse], then: Then::Keep, from: STEPS },
    Row { name: "steady", when: &[TO_LOSE, If::SteadySlow], then: Then::Keep, from: ours("practice rule 13") },
    Row { name: "loses", when: &[TO_LOSE, If::Loses], then: Then::Keep, from: ours("practice rule 13") },
    // Nothing is likely enough to act on.
    Row { name: "not sure yet", when: &[], then: Then::Keep, from: ours("practice rule 13, 4 in 5") },
];
