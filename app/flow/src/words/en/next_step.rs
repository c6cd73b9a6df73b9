//! The next step and the phases, in English.

use super::English;
use super::fields::small;
use super::numbers::up_to;
use crate::views::next_step::{NextStep, Offer, Stands};
use crate::views::plan::Differs;
use crate::words::{
    AnimalWords, BesideWords, GroupWords, NextStepWords, PlanScreenWords, SafetyWords, Said,
    SourceWords, Task, UnitWords,
};
use tussock_core::animal::Phase;
use tussock_core::limits::published::{CONDITION_THIN, REVIEW_NEW};
use tussock_core::progress::published::{
    GIRTH_UP_CM, NEW_WEIGHINGS, RATE_READINGS, RATE_WEEKS, READINGS_OVER, SCORES_FILLED,
};
use tussock_core::progress::{HowSoon, Origin, Reason, Step, When, WhyNot};
use tussock_core::safety::VetUrgency;
use tussock_core::sources::{Mark, Work};
use tussock_core::units::{LocalDate, PartOfBody};

/// A level without what it is a part of: "1.25 %".
fn figure(level: PartOfBody) -> String {
    format!("{} %", up_to(level.to_percent(), 2))
}

impl English {
    fn keep_head(view: &NextStep) -> String {
        let looks_again = view.decision.because.contains(&Reason::LookAgain);
        match view.animal.phase {
            _ if looks_again => "No grass, no work. Look again",
            Phase::New => "Keep on as planned while it settles",
            Phase::Episode => "Keep on, the vet is in charge",
            Phase::Recovering => "Keep on until the vet says it is over",
            Phase::OtherHands => "Keep on, somebody else feeds it",
            Phase::Holding => "Keep on and hold its weight",
            Phase::Losing | Phase::Plateau | Phase::NeedsWeight => "Keep on, the amounts stay",
        }
        .to_owned()
    }

    fn decide_head(to: Phase) -> &'static str {
        match to {
            Phase::New => "Decide whether it begins anew",
            Phase::Losing => "Decide whether to let it lose weight",
            Phase::Plateau => "Decide whether its weight stands still",
            Phase::Holding => "Decide whether to hold its weight",
            Phase::NeedsWeight => "Decide whether it needs weight",
            Phase::Episode => "Laminitis now, the vet is in charge",
            Phase::Recovering => "Decide whether the episode is over",
            Phase::OtherHands => "Decide who feeds it",
        }
    }
}

impl NextStepWords for English {
    fn the_next_step(&self) -> &'static str {
        "Next step"
    }
    fn step_head(&self, view: &NextStep) -> String {
        let later = matches!(view.decision.when, When::AtReview(_));
        match view.decision.step {
            Step::Keep => Self::keep_head(view),
            Step::FeedMore { to } if later => {
                format!("Feed more at the review, to {}", figure(to))
            }
            Step::FeedMore { to } => format!("Feed more, to {}", self.level(to)),
            Step::StepDown { to } if later => {
                format!("One step down at the review, to {}", figure(to))
            }
            Step::StepDown { to } => format!("One step down, to {}", self.level(to)),
            Step::TestHay => "Have its hay tested".to_owned(),
            Step::CheckEaten => "Check what it really eats".to_owned(),
            Step::HoldAtTarget => "At its target, hold it there".to_owned(),
            Step::CallVet {
                ring,
                feed: Some(to),
            } => format!("{}, feed {}", self.ring_now(ring), figure(to)),
            Step::CallVet { ring, feed: None } => self.ring_now(ring).to_owned(),
            Step::Weigh if view.facts.weighed => "Weigh it again".to_owned(),
            Step::Weigh => "Weigh it first".to_owned(),
            Step::Plan => "Make its plan".to_owned(),
            Step::ClearTheWay => "First what stands in the way of less".to_owned(),
            Step::DecidePhase { to } => Self::decide_head(to).to_owned(),
        }
    }
    fn step_of(&self, view: &NextStep) -> String {
        format!("{}: {}", view.animal.name, small(&self.step_head(view)))
    }
    fn step_stands(&self, stands: Stands) -> &'static str {
        match stands {
            Stands::KeepOn => "settled",
            Stands::AtReview => "at the review",
            Stands::Due => "due",
            Stands::Vet => "vet first",
        }
    }
    fn step_tag(&self, view: &NextStep) -> String {
        format!("{}, day {}", self.phase(view.animal.phase), view.phase_day)
    }
    fn ring_now(&self, ring: HowSoon) -> &'static str {
        self.vet(match ring {
            HowSoon::First => VetUrgency::First,
            HowSoon::ThisMorning => VetUrgency::ThisMorning,
            HowSoon::Today => VetUrgency::Today,
            HowSoon::Now => VetUrgency::Now,
        })
    }
    fn step_when(&self, view: &NextStep) -> Said {
        let Some(review) = view.facts.review else {
            return Said::plain("No plan holds, so there is no review yet");
        };
        let day = self.day(review);
        if view.review_is_due() {
            Said::because(
                format!("The review has been due since {day}"),
                "Using the plan sets the next one.",
            )
        } else {
            Said::because(
                format!("Next review on {day}"),
                "Amounts change only then, never because a weight came in.",
            )
        }
    }
    fn because(&self, reason: &Reason) -> Said {
        super::because::because(self, reason)
    }
    fn because_head(&self) -> &'static str {
        "Why"
    }
    fn step_after(&self, then: Step) -> String {
        let after = match then {
            Step::Keep => "the amounts stay".to_owned(),
            Step::FeedMore { to } => format!("more, {}", self.level(to)),
            Step::StepDown { to } => format!("one step down, {}", self.level(to)),
            Step::TestHay => "a test of the hay".to_owned(),
            Step::CheckEaten => "a look at what it really eats".to_owned(),
            Step::HoldAtTarget => "hold it at its target".to_owned(),
            Step::CallVet { ring, .. } => small(self.ring_now(ring)),
            Step::Weigh => "weigh it".to_owned(),
            Step::Plan => "a plan".to_owned(),
            Step::ClearTheWay => "what stands in the way of less".to_owned(),
            Step::DecidePhase { to } => small(Self::decide_head(to)),
        };
        format!("After that, if nothing is found: {after}")
    }
    fn step_from(&self, origin: Origin) -> String {
        let mark = self.mark(origin.mark);
        if origin.mark == Mark::CommonPractice || origin.work == Work::Tussock {
            return mark.to_owned();
        }
        let citation = self.citation(origin.work);
        format!("{citation}, {} ({mark})", origin.place)
    }
    fn only_proposes(&self) -> Said {
        Said::because(
            "This proposes. What is fed changes only when you use a plan",
            "It goes by what was written down here, and by nothing else. The vet's word goes before it.",
        )
    }
    fn phase_head(&self) -> &'static str {
        "Its phase"
    }
    fn phase_line(&self, view: &NextStep) -> String {
        format!(
            "{}, day {}, since {}",
            self.phase(view.animal.phase),
            view.phase_day,
            self.day(view.since)
        )
    }
    fn phase_before(&self, before: Option<Phase>) -> Option<String> {
        before.map(|before| format!("Before that: {}", small(self.phase(before))))
    }
    fn phase_entry(&self, phase: Phase) -> String {
        match phase {
            Phase::New => "A new animal, or one that begins anew".to_owned(),
            Phase::Losing => "It is settled, and it is to lose weight".to_owned(),
            Phase::Plateau => format!(
                "Its weight likely stood still, over {} weeks and {} readings",
                up_to(*RATE_WEEKS, 0),
                *RATE_READINGS
            ),
            Phase::Holding => "It is at its target, or it is to stay as it is".to_owned(),
            Phase::NeedsWeight => format!(
                "Its condition is under {}, or it is to gain",
                up_to(*CONDITION_THIN, 1)
            ),
            Phase::Episode => "It has laminitis. Anybody may say so at any time".to_owned(),
            Phase::Recovering => "The episode is over, and the vet spoke".to_owned(),
            Phase::OtherHands => "Somebody else feeds it for a while".to_owned(),
        }
    }
    fn phase_exit(&self, phase: Phase) -> String {
        match phase {
            Phase::New => format!(
                "After {} days at the starting level and {} weighings it is decided",
                *REVIEW_NEW, *NEW_WEIGHINGS
            ),
            Phase::Losing => "It is at its target, or its weight stands still".to_owned(),
            Phase::Plateau => "It loses again, or it is at its target".to_owned(),
            Phase::Holding => format!(
                "{} readings over its band, or {} cm more girth: it loses again",
                *READINGS_OVER,
                up_to(*GIRTH_UP_CM, 0)
            ),
            Phase::NeedsWeight => format!(
                "Its last {} scores are {} or more",
                *SCORES_FILLED,
                up_to(*CONDITION_THIN, 1)
            ),
            Phase::Episode => "No sign any more, and the vet's word since".to_owned(),
            Phase::Recovering => {
                "A clean look-over, sound, and the vet's word since: it begins anew".to_owned()
            }
            Phase::OtherHands => "It comes back, to the phase it came from".to_owned(),
        }
    }
    fn entry_and_exit(&self) -> [&'static str; 2] {
        ["How it comes into it", "How it comes out of it"]
    }
    fn change_due(&self) -> &'static str {
        "A change of phase is due"
    }
    fn put_into(&self, phase: Phase) -> &'static str {
        match phase {
            Phase::New => "Let it begin anew",
            Phase::Losing => "Let it lose weight",
            Phase::Plateau => "Say that its weight stands still",
            Phase::Holding => "Hold its weight",
            Phase::NeedsWeight => "Say that it needs weight",
            Phase::Episode => "Say that it has an episode",
            Phase::Recovering => "Say that it recovers",
            Phase::OtherHands => "Give it into other hands",
        }
    }
    fn other_phases(&self) -> &'static str {
        "The other phases"
    }
    fn may_be_chosen(&self, why_not: Option<WhyNot>) -> &'static str {
        match why_not {
            None => "may be chosen at any time",
            Some(WhyNot::Already) => "it is in it",
            Some(WhyNot::InVetsHands) => "not now: it is in the vet's hands",
            Some(WhyNot::NotYet) => "not yet: the records do not say so",
        }
    }
    fn next_offer(&self, offer: &Offer, view: &NextStep) -> String {
        let name = &view.animal.name;
        match offer {
            Offer::GoOn => self.go_on_with(name),
            Offer::LookOver => self.look_again_now().to_owned(),
            Offer::Weigh => self.do_task(Task::Weigh, name),
            Offer::Score => self.do_task(Task::Condition, name),
            Offer::WhatWasEaten => "See what it really ate".to_owned(),
            Offer::TestHay(_) => "See whether a test pays".to_owned(),
            Offer::Plan => self.do_task(Task::Plan, name),
            Offer::PlanAt(level) => format!("Plan it with {}", figure(level.part())),
            Offer::SeeGroup(_) => {
                let group = view.fed_with.as_ref();
                self.see_the_group(group.map_or("", |group| group.name.as_str()))
            }
            Offer::VetsWord => self.write_down_vets_word().to_owned(),
            Offer::Details => self.details_of_it().to_owned(),
            Offer::NotEating => "Say how it eats".to_owned(),
            Offer::Take(phase) => self.put_into(*phase).to_owned(),
        }
    }
    fn differs_head(&self) -> &'static str {
        "What would now differ"
    }
    fn differs(&self, differs: &Differs) -> [String; 2] {
        super::differs::differs(self, differs)
    }
    fn differs_means(&self, review: LocalDate) -> String {
        format!(
            "Said, and nothing more: the plan in use stays as it is until its review on {}.",
            self.day(review)
        )
    }
    fn level_asked(&self, level: &str) -> String {
        format!("Asked for by the next step: {level}")
    }
}
