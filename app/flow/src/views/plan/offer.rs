//! What the plan's screen offers: one action, and quiet links beside it.

use super::{Accepted, Outcome, PlanView};
use tussock_core::animal::{GroupId, LotId};
use tussock_core::limits::EnergyVerdict;
use tussock_core::plan::PlanError;
use tussock_core::safety::{Refusal, Refused};

/// Something that may be done from the plan's screen.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Offer {
    /// Use today's plan.
    Use,
    /// Use today's plan although the review of the one in use has not come.
    UseBeforeReview,
    /// Go on with the animal.
    GoOn,
    /// Write down the vet's word.
    VetsWord,
    /// Look it over: what stops it is put on and taken off there.
    LookOver,
    /// Open its details: what it is stands there.
    Details,
    /// Add a hay.
    AddHay,
    /// Open a hay that lacks something.
    OpenHay(LotId),
    /// Weigh it.
    Weigh,
    /// Say when somebody comes.
    Visits,
    /// See the group whose plan gives it its hay.
    SeeGroup(GroupId),
    /// Feed it apart by today's plan: it leaves the group that feeds it.
    FeedApart,
}

impl PlanView {
    /// The review of the plan in use has come; `false` without one.
    pub fn review_is_due(&self) -> bool {
        let mut accepted = self.accepted.iter();
        accepted.any(|accepted| accepted.review <= self.day)
    }

    /// The plan in use, where it is the one to follow although today's would differ: amounts change at a review, never
    /// because a weight came in (practice section 2). More than it has does not wait where it is asked for.
    pub fn follows(&self) -> Option<&Accepted> {
        let followed = |accepted: &&Accepted| accepted.would_differ && accepted.holds;
        self.accepted
            .as_ref()
            .filter(followed)
            .filter(|_| !self.review_is_due())
            .filter(|_| !self.raises())
    }

    /// Whether more is asked for than the plan in use has.
    pub fn raises(&self) -> bool {
        let level = self.accepted.as_ref().map(|accepted| accepted.level);
        level
            .zip(self.asked)
            .is_some_and(|(level, asked)| level < asked)
    }

    fn group(&self) -> Option<GroupId> {
        self.fed_with.as_ref().map(|group| group.id.clone())
    }

    /// The action.
    pub fn first(&self) -> Offer {
        match &self.outcome {
            Outcome::Allowed(_) if self.group().is_some() => {
                self.group().map_or(Offer::GoOn, Offer::SeeGroup)
            }
            Outcome::Allowed(_) => match &self.accepted {
                None => Offer::Use,
                // At its review even a plan that stays the same is used anew, so that it has a next review.
                Some(_) if self.review_is_due() || self.raises() => Offer::Use,
                Some(accepted) if !accepted.would_differ || accepted.holds => Offer::GoOn,
                Some(_) => Offer::Use,
            },
            Outcome::Refused(refused) => for_refused(refused),
            Outcome::Nothing(PlanError::NoForage | PlanError::PartsDoNotAddUp { .. }) => {
                Offer::AddHay
            }
            Outcome::Nothing(PlanError::DryMatterNotKnown { lot }) => Offer::OpenHay(lot.clone()),
            Outcome::Nothing(PlanError::NoWeight) => Offer::Weigh,
            // The nets cannot be hung at the visits there are.
            Outcome::Nothing(PlanError::Day(_)) => Offer::Visits,
            Outcome::Nothing(_) => Offer::GoOn,
        }
    }

    /// What is offered quietly beside it: a change before the review, everywhere the vet's word, and the visits where
    /// others stand in for them.
    pub fn beside(&self) -> Vec<Offer> {
        let mut beside = Vec::new();
        if self.follows().is_some() {
            beside.push(Offer::UseBeforeReview);
        }
        match (&self.outcome, self.group()) {
            (Outcome::Allowed(_), Some(_)) => beside.push(Offer::FeedApart),
            (_, Some(group)) => beside.push(Offer::SeeGroup(group)),
            (_, None) => {}
        }
        if self.first() != Offer::VetsWord {
            beside.push(Offer::VetsWord);
        }
        if self.visits_stand_in && self.first() != Offer::Visits {
            beside.push(Offer::Visits);
        }
        beside
    }
}

/// Under a refusal: what could lift its most urgent reason.
fn for_refused(refused: &Refused) -> Offer {
    match refused.why.first() {
        Some(
            Refusal::AteWhenOffered
            | Refusal::OffFeed { .. }
            | Refusal::GotAtGrain
            | Refusal::EscapedOntoGrass
            | Refusal::Sick
            | Refusal::FarOverUsual { .. },
        ) => Offer::LookOver,
        Some(Refusal::NotPlannedHere(_)) => Offer::Details,
        Some(
            Refusal::LaminitisNow
            | Refusal::LaminitisSign
            | Refusal::WarmHoofAfterLaminitis
            | Refusal::EpisodeWithoutWord
            | Refusal::LosesTooFast(_)
            | Refusal::Lame
            | Refusal::DonkeyDiet
            | Refusal::Energy(EnergyVerdict::NeedsVetsWord { .. }),
        ) => Offer::VetsWord,
        Some(
            Refusal::Energy(_) | Refusal::UnderDryMatterFloor { .. } | Refusal::DoNotFeed { .. },
        )
        | None => Offer::AddHay,
    }
}
