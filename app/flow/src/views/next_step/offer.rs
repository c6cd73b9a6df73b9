//! What the screen of the next step offers: one action, and the changes of phase.

use super::NextStep;
use crate::acts::Act;
use tussock_core::animal::{GroupId, LotId, Phase};
use tussock_core::limits::RestrictionBar;
use tussock_core::log::Body;
use tussock_core::log::bodies::base::BodyHundredths;
use tussock_core::progress::{Reason, Step, When, goal_of, may_change};
use tussock_core::sources::RecordId;
use tussock_core::units::PartOfBody;

/// Something that may be done from the screen of the next step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Offer {
    /// Go on with the animal.
    GoOn,
    /// Look it over.
    LookOver,
    /// Weigh or tape it.
    Weigh,
    /// Score its condition.
    Score,
    /// See what it really ate.
    WhatWasEaten,
    /// See whether a test of this hay pays.
    TestHay(LotId),
    /// Make or renew its plan.
    Plan,
    /// Open the plan with this level asked for.
    PlanAt(BodyHundredths),
    /// See the group whose plan gives it its hay.
    SeeGroup(GroupId),
    /// Write down the vet's word.
    VetsWord,
    /// Open its details.
    Details,
    /// Say how it eats.
    NotEating,
    /// Put it into this phase.
    Take(Phase),
}

impl NextStep {
    /// The action.
    pub fn first(&self) -> Offer {
        if self.stop.is_some() {
            return Offer::LookOver;
        }
        match (self.decision.step, self.decision.when) {
            (_, When::AtReview(_)) => Offer::GoOn,
            (Step::DecidePhase { .. } | Step::HoldAtTarget, When::Now) => {
                let due = self.proposal.as_ref();
                due.map_or_else(|| self.plan(None), |due| Offer::Take(due.to))
            }
            (Step::FeedMore { to } | Step::StepDown { to }, When::Now) => self.plan(Some(to)),
            (Step::CallVet { feed: Some(to), .. }, When::Now) => self.plan(Some(to)),
            (Step::CallVet { .. }, When::Now) => Offer::VetsWord,
            (Step::TestHay, When::Now) => {
                let lot = self.untested.clone();
                lot.map_or(Offer::GoOn, Offer::TestHay)
            }
            (Step::CheckEaten, When::Now) => Offer::WhatWasEaten,
            (Step::Weigh, When::Now) => Offer::Weigh,
            (Step::Plan, When::Now) => self.plan(None),
            (Step::ClearTheWay, When::Now) => self.clears(),
            (Step::Keep, When::Now) if self.review_is_due() => self.plan(None),
            (Step::Keep, When::Now) => Offer::GoOn,
        }
    }

    /// The plan, with a level asked for; a group's is the group's.
    fn plan(&self, level: Option<PartOfBody>) -> Offer {
        match (&self.fed_with, level.map(BodyHundredths::of)) {
            (Some(group), _) => Offer::SeeGroup(group.id.clone()),
            (None, Some(Ok(level))) => Offer::PlanAt(level),
            (None, Some(Err(_)) | None) => Offer::Plan,
        }
    }

    /// What takes away the first thing that stands in the way of less.
    fn clears(&self) -> Offer {
        let bars = self
            .decision
            .because
            .iter()
            .find_map(|reason| match reason {
                Reason::StepBarred { bars, .. } => Some(bars),
                _ => None,
            });
        let mut bars = bars.into_iter().flatten();
        bars.find_map(|bar| match bar {
            RestrictionBar::ConditionNotSeenTwice { .. } => Some(Offer::Score),
            RestrictionBar::NotWeighed
            | RestrictionBar::TapeOnlyOnce
            | RestrictionBar::SmallPonyNeedsScale { .. } => Some(Offer::Weigh),
            RestrictionBar::LookOverNotClean { .. } => Some(Offer::LookOver),
            RestrictionBar::HeightNotKnown
            | RestrictionBar::AgeNotKnown
            | RestrictionBar::GoalIsNotToLose { .. } => Some(Offer::Details),
            RestrictionBar::NotEating { .. } => Some(Offer::NotEating),
            RestrictionBar::NotAdult { .. } | RestrictionBar::OnVetList(_) => Some(Offer::VetsWord),
            RestrictionBar::NeedsWeight
            | RestrictionBar::StillNew
            | RestrictionBar::NotLongEnoughAtStart { .. } => None,
        })
        .unwrap_or(Offer::GoOn)
    }

    /// The act that puts it into a phase, with what is wanted of its weight there; `None` where that may not be. The day
    /// and the phase before are noted as it is written.
    pub fn take(&self, to: Phase) -> Option<Act> {
        may_change(&self.facts, to).ok()?;
        let mut body = self.held.clone();
        body.phase = to;
        body.goal = goal_of(to).unwrap_or(body.goal);
        Some(Act::Change {
            id: RecordId(self.animal.id.0.clone()),
            body: Body::Animal(body),
            at: None,
        })
    }
}
