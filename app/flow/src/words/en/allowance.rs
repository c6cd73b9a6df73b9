//! How much dry matter, what stands in the way of less, and the vet's list.

use super::English;
use super::fields::small;
use super::numbers::up_to;
use crate::words::{AnimalWords, Said, UnitWords};
use tussock_core::animal::Answer;
use tussock_core::limits::published::FLOOR;
use tussock_core::limits::{AllowanceReason, RestrictionBar, VetListReason};

pub(super) fn reason(say: &English, reason: AllowanceReason) -> Said {
    match reason {
        AllowanceReason::StartingLevel => {
            Said::plain("It is on the starting level, which is no restriction")
        }
        AllowanceReason::AboveStart => Said::plain("It has more than the starting level"),
        AllowanceReason::Restricted => Said::because(
            "It is on a restriction, and nothing known stands in its way",
            "Weighed, scored twice, looked over, eating and long enough at the starting level.",
        ),
        AllowanceReason::NotGiven { wanted } => Said::because(
            format!(
                "{} is not given yet: it stays on the starting level",
                say.level(wanted)
            ),
            "What stands in the way is listed.",
        ),
        AllowanceReason::HeldWithoutVet { wanted } => Said::because(
            format!(
                "{} needs the vet's word: write it down first",
                say.level(wanted)
            ),
            "Below this level only a vet decides.",
        ),
        AllowanceReason::VetsWord { lowest, expires } => Said::plain(format!(
            "The vet allows down to {} until {}",
            say.level(lowest),
            say.date(expires)
        )),
        AllowanceReason::VetsWordExpired { expired } => Said::plain(format!(
            "The vet's word ended on {}: ask the vet again, the plan has gone back",
            say.date(expired)
        )),
        AllowanceReason::RaisedToVetsWord { wanted } => Said::plain(format!(
            "{} is less than the vet allows: raised to the vet's level",
            say.level(wanted)
        )),
        AllowanceReason::RaisedToFloor { from } => Said::because(
            format!("Raised from {}", say.level(from)),
            format!(
                "At the heaviest it may be it must still have {}.",
                say.level(*FLOOR)
            ),
        ),
        AllowanceReason::NeedsWeight => {
            Said::plain("It needs weight: forage always in front of it")
        }
        AllowanceReason::Episode => {
            Said::plain("Laminitis: keep hay in front of it, no sudden cut")
        }
    }
}

pub(super) fn bar(say: &English, bar: &RestrictionBar) -> Said {
    match bar {
        RestrictionBar::GoalIsNotToLose { goal } => Said::plain(format!(
            "What is wanted of its weight is: {}. Change that first",
            small(say.goal(*goal))
        )),
        RestrictionBar::NeedsWeight => Said::plain("It needs weight, so it gets no less"),
        RestrictionBar::StillNew => {
            Said::plain("It is new: two weeks at the starting level come first")
        }
        RestrictionBar::NotAdult { state, age } => Said::plain(match age {
            Some(age) => format!("It is not grown ({}, aged {age})", small(say.state(*state))),
            None => format!("It is not grown ({})", small(say.state(*state))),
        }),
        RestrictionBar::AgeNotKnown => Said::plain("Give its age: nobody has yet"),
        RestrictionBar::ConditionNotSeenTwice { last, days_apart } => Said::because(
            "Score its condition again: it takes 7 or more twice, two weeks apart",
            match (last, days_apart) {
                (None, _) => "Nobody scored it yet.".to_owned(),
                (Some(last), None) => format!(
                    "Last score {} on {}.",
                    up_to(last.score, 2),
                    say.date(last.on)
                ),
                (Some(last), Some(days)) => format!(
                    "Last score {} on {}; the scores that count lie {} apart.",
                    up_to(last.score, 2),
                    say.date(last.on),
                    days_words(*days)
                ),
            },
        ),
        RestrictionBar::NotWeighed => Said::plain("Weigh or tape it first"),
        RestrictionBar::TapeOnlyOnce => {
            Said::plain("Tape it once more, or weigh it on a scale: one tape is not enough")
        }
        RestrictionBar::SmallPonyNeedsScale { height } => Said::because(
            "Weigh it on a scale: it is too small for a tape",
            height.map_or_else(
                || "Nobody measured its height.".to_owned(),
                |height| format!("It stands {}.", say.height(height)),
            ),
        ),
        RestrictionBar::HeightNotKnown => Said::plain("Measure its height, or weigh it on a scale"),
        RestrictionBar::NotEating { appetite } => Said::because(
            "Say first whether it eats: one that does not is never cut",
            format!("{}.", say.appetite(*appetite)),
        ),
        RestrictionBar::LookOverNotClean { clean } => Said::plain(match clean {
            Answer::No => "Its last look-over found something",
            // A clean look-over is no bar; should it ever stand here, nobody is told that it was not looked over.
            Answer::NotKnown => "Look it over first: nobody has finished a look-over",
            Answer::Yes => "Look it over again",
        }),
        RestrictionBar::OnVetList(reason) => Said::because(
            "Only with the vet's word: write it down first",
            format!("{}.", super::fields::capital(&vet_list(say, *reason))),
        ),
        RestrictionBar::NotLongEnoughAtStart { days, needed } => Said::plain(format!(
            "Feed the starting level first: {days} of {needed} days really fed so far"
        )),
    }
}

fn days_words(days: i64) -> String {
    if days == 1 {
        "1 day".to_owned()
    } else {
        format!("{days} days")
    }
}

pub(super) fn vet_list(say: &English, reason: VetListReason) -> String {
    match reason {
        VetListReason::Pregnant => "in foal".to_owned(),
        VetListReason::Lactating => "in milk".to_owned(),
        VetListReason::Growing { age: Some(age) } => format!("still growing, aged {age}"),
        VetListReason::Growing { age: None } => "still growing".to_owned(),
        VetListReason::Thin { condition } => {
            format!(
                "condition {}, under 5",
                super::numbers::up_to_beside(condition, 5.0, 1)
            )
        }
        VetListReason::Sick => "sick, feverish or with colic".to_owned(),
        VetListReason::OffFeed => "off its feed".to_owned(),
        VetListReason::LaminitisNow => "laminitis now".to_owned(),
        VetListReason::EpisodeNotOver => "the vet has not said that laminitis is over".to_owned(),
        VetListReason::SurgeryOrTransport { on } => {
            format!("surgery or a long journey on {}", say.date(on))
        }
        VetListReason::DonkeyOrMule => "a donkey or mule".to_owned(),
        VetListReason::Miniature => "a miniature".to_owned(),
        VetListReason::Shetland => "a Shetland".to_owned(),
        VetListReason::VeryOld { age } => format!("very old, aged {age}"),
        VetListReason::PoorTeeth => "poor teeth".to_owned(),
        VetListReason::PpidUntreated => "PPID that is not treated".to_owned(),
        VetListReason::Sglt2Inhibitor => "on an SGLT2 inhibitor".to_owned(),
        VetListReason::InsulinDrug => "on a drug that alters insulin".to_owned(),
        VetListReason::Corticosteroid { last } => {
            format!("a corticosteroid, last on {}", say.date(last))
        }
        VetListReason::PainRelief => "on pain relief".to_owned(),
        VetListReason::BoxRest => "on box rest".to_owned(),
        VetListReason::Lame => "lame".to_owned(),
        VetListReason::GotAtGrain => "got at grain".to_owned(),
        VetListReason::EscapedOntoGrass => "escaped onto lush grass".to_owned(),
    }
}
