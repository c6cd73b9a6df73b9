//! The next step of one animal: what to do and why, the phase it is in, and what a person may change of that.
//!
//! It only proposes. Amounts change on the plan's screen, at a review; a phase changes when a person says so.

mod offer;
#[cfg(test)]
mod tests;

pub use offer::Offer;

use super::beside::{self, Stop};
use super::not_eating::{self, Vet};
use super::{details, ledger, plan, round, stock};
use crate::forms::start::Visits;
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::horses::kind_of_limit;
use crate::views::plan::{SourceLine, constant_line};
use crate::views::weight::TURNOUTS;
use crate::words::{PlanScreenWords, Words};
use tussock_core::animal::{Animal, AnimalId, Group, LotId, Phase};
use tussock_core::log::bodies::AnimalV2;
use tussock_core::log::{
    Beside, Gathered, HowItGoes, Kind, Problem, Record, Wish, fed_with, gather, how_it_goes,
    trend_of,
};
use tussock_core::progress::{
    Band, Decision, Facts, HowSoon, Proposal, Reason, Step, When, WhyNot, decide, may_change,
    propose,
};
use tussock_core::units::{Instant, LocalDate, Zone};

/// The most persons that are asked for.
const PERSONS: u32 = 200;

/// Every phase, in the order of the loop.
pub const PHASES: [Phase; 8] = [
    Phase::New,
    Phase::Losing,
    Phase::Plateau,
    Phase::Holding,
    Phase::NeedsWeight,
    Phase::Episode,
    Phase::Recovering,
    Phase::OtherHands,
];

/// What the screen asks the disk for: what the plan does, what was eaten, and whom to ring.
pub fn needs(animal: &AnimalId, now: Instant) -> Vec<Range> {
    let mut ranges = plan::needs(animal);
    ranges.extend(ledger::needs(now));
    ranges.push(kind_of_limit(&Kind::Person, PERSONS));
    // What fills its gut goes by all its turnouts, as the weight's own screen has it.
    ranges.push(kind_of_limit(&Kind::Turnout, TURNOUTS));
    ranges
}

/// What is asked for beside it where the step hangs on how long the hay lasts.
pub fn stock_needs(now: Instant) -> Vec<Range> {
    stock::needs(now)
}

/// How a step stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stands {
    /// Nothing is to be changed.
    KeepOn,
    /// It waits for the review.
    AtReview,
    /// Now.
    Due,
    /// The vet comes first.
    Vet,
}

/// The next step of an animal and its phase.
#[derive(Clone, Debug, PartialEq)]
pub struct NextStep {
    /// The animal.
    pub animal: Animal,
    /// The local day.
    pub today: LocalDate,
    /// What is decided on.
    pub facts: Facts,
    /// The step.
    pub decision: Decision,
    /// Since when it is in its phase.
    pub since: LocalDate,
    /// The day of its phase: its first is 1.
    pub phase_day: i64,
    /// The change of phase that is due.
    pub proposal: Option<Proposal>,
    /// The other phases, and why one may not be chosen.
    pub others: Vec<(Phase, Option<WhyNot>)>,
    /// What stops it now.
    pub stop: Option<Stop>,
    /// Who is rung.
    pub vet: Vet,
    /// The first of its hays that nobody tested.
    pub untested: Option<LotId>,
    /// The group whose plan gives it its hay.
    pub fed_with: Option<Group>,
    /// Since when its last episode, where one is written down.
    pub episode: Option<LocalDate>,
    /// What could not be read.
    pub problems: Vec<Problem>,
    held: AnimalV2,
}

/// The next step of an animal; `None` when it is not there. `stock` holds the records of [`stock_needs`], where the step
/// hangs on how long its hay lasts.
pub fn next_step(
    shelf: &Shelf,
    stock: Option<&Shelf>,
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<NextStep> {
    let held = details::held(shelf, animal)?;
    let records: Vec<&Record> = shelf.records().collect();
    let beside = Beside {
        hay_lasts: stock.and_then(|stock| hay_lasts(shelf, stock, animal, now, zone)),
        visits: Visits::Two.times(),
    };
    let trend = trend_of(&records, animal, now, zone).ok();
    let HowItGoes {
        facts, gathered, ..
    } = how_it_goes(&records, animal, now, zone, &beside, trend.as_ref())?;
    let proposal = propose(&facts);
    let due = proposal.as_ref().map(|proposal| proposal.to);
    let others = PHASES
        .into_iter()
        .filter(|phase| *phase != facts.phase && Some(*phase) != due)
        .map(|phase| (phase, may_change(&facts, phase).err()))
        .collect();
    Some(NextStep {
        today: gathered.day,
        decision: decide(&facts),
        since: gathered.phase_since,
        phase_day: (gathered.day - gathered.phase_since).num_days() + 1,
        proposal,
        others,
        stop: beside::stop(&gathered),
        vet: not_eating::vet(shelf, animal),
        untested: untested(&gathered),
        fed_with: fed_with(&records, animal, now, gathered.day),
        episode: episode(&gathered),
        facts,
        problems: gathered.problems,
        animal: gathered.animal,
        held,
    })
}

/// The hay it eats that nobody tested; of several the first.
fn untested(of: &Gathered) -> Option<LotId> {
    let (lot, _) = of.hays.iter().find(|(lot, _)| lot.reports.is_empty())?;
    Some(lot.id.clone())
}

/// Days that this hay still lasts, by the least that may be left.
fn hay_lasts(
    shelf: &Shelf,
    stock: &Shelf,
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<i64> {
    let records: Vec<&Record> = shelf.records().collect();
    let lot = untested(&gather(&records, animal, now, zone, &Wish::default())?)?;
    let today = round::today(stock, now, zone);
    let lasting = stock::stock(stock, &today, &lot, zone)?.lasting?;
    Some((lasting.runs_out - today.day).num_days())
}

/// The day its last episode began, where one is written down.
pub(super) fn episode(of: &Gathered) -> Option<LocalDate> {
    let in_vets_hands = matches!(of.animal.phase, Phase::Episode | Phase::Recovering);
    let said = of.said.laminitis.max(of.said.phase);
    said.or(in_vets_hands.then_some(of.phase_since))
}

impl NextStep {
    /// Whether the step is the change of phase itself, so that what made it due is why.
    pub fn is_the_change(&self) -> bool {
        self.proposal.is_some()
            && matches!(
                self.decision.step,
                Step::DecidePhase { .. } | Step::HoldAtTarget
            )
    }

    /// Why, as it is told: what made the phase change where that is the step, and no phase twice.
    pub fn because(&self) -> Vec<&Reason> {
        let told = match &self.proposal {
            Some(proposal) if self.is_the_change() => &proposal.because,
            _ => &self.decision.because,
        };
        let names_the_phase =
            |reason: &&Reason| matches!(reason, Reason::InPhase(_) | Reason::ChangeProposed(_));
        told.iter()
            .filter(|reason| !names_the_phase(reason))
            .collect()
    }

    /// How the step stands.
    pub fn stands(&self) -> Stands {
        match (self.decision.step, self.decision.when) {
            _ if matches!(self.stop, Some(Stop::Vet(..))) => Stands::Vet,
            (Step::CallVet { .. }, _) => Stands::Vet,
            (_, When::AtReview(_)) => Stands::AtReview,
            (Step::Keep, When::Now) if self.stop.is_none() && !self.review_is_due() => {
                Stands::KeepOn
            }
            _ => Stands::Due,
        }
    }

    /// How soon the vet is rung where weight alone says so: nothing else stops it, and it cannot wait.
    pub fn rings_by_weight(&self) -> Option<HowSoon> {
        match self.decision.step {
            Step::CallVet { ring, .. } if self.stop.is_none() && ring != HowSoon::First => {
                Some(ring)
            }
            _ => None,
        }
    }

    /// Whether the vet's number belongs on the screen.
    pub fn needs_the_vet(&self) -> bool {
        self.stands() == Stands::Vet || matches!(self.animal.phase, Phase::Episode)
    }

    /// The day of the review of the plan that holds has come; never without a plan.
    pub fn review_is_due(&self) -> bool {
        let mut review = self.facts.review.iter();
        review.any(|review| *review <= self.today)
    }

    /// Whether the step hangs on how long its hay lasts: it loses too slowly on a hay that nobody tested.
    pub fn asks_how_long(&self) -> bool {
        let slow = |reason: &Reason| {
            matches!(
                reason,
                Reason::Rate {
                    band: Band::UnderQuarter,
                    ..
                }
            )
        };
        self.untested.is_some() && self.decision.because.iter().any(slow)
    }

    /// Where an episode is looked back on: in it, and after it.
    pub fn looks_back(&self) -> bool {
        self.episode.is_some() && matches!(self.animal.phase, Phase::Episode | Phase::Recovering)
    }

    /// The constants that the step goes by, each with its value and where it comes from.
    pub fn sources(&self, words: &(impl Words + PlanScreenWords)) -> Vec<SourceLine> {
        self.decision
            .constants
            .iter()
            .filter_map(|id| constant_line(id, words))
            .collect()
    }

    /// Whether a screen would read the same: everything but the instant it was worked out at.
    pub fn reads_as(&self, other: &Self) -> bool {
        self == other
    }
}
