//! The look-back on an episode, in English.

use super::English;
use super::fields::small;
use super::numbers::percent_above_nothing;
use crate::views::look_back::LookedBack;
use crate::words::{BesideWords, LookBackWords, SoakWords, UnitWords};
use tussock_core::progress::published::LOOK_BACK_DAYS;
use tussock_core::progress::{Changed, GrassWeather, NotLogged};
use tussock_core::units::Span;

impl LookBackWords for English {
    fn look_back(&self) -> &'static str {
        "Look back"
    }
    fn looked_back(&self, back: &LookedBack) -> String {
        let things = back.days.iter().map(|day| day.what.len()).sum();
        let things = self.count(things, "thing", "things");
        format!("{things} changed before {}", self.day(back.began))
    }
    fn looked_back_over(&self, back: &LookedBack) -> String {
        format!(
            "The {} days from {} to {}, when the episode began, the latest first.",
            *LOOK_BACK_DAYS,
            self.day(back.from),
            self.day(back.began)
        )
    }
    fn no_episode(&self) -> &'static str {
        "No episode is written down"
    }
    fn no_cause(&self) -> &'static str {
        "What came before an episode need not be its cause: go through it with the vet"
    }
    fn changed(&self, changed: &Changed) -> String {
        match changed {
            Changed::LotOpened { name, tested, .. } => {
                let tested = if *tested { "tested" } else { "not tested" };
                format!("{name} was opened, {tested}")
            }
            Changed::NewFood { name } => format!("{name} was written down for the first time"),
            Changed::FeedingSaid => "How it is fed was said anew".to_owned(),
            Changed::PlanIssued {
                before: None,
                level,
            } => format!("Its first plan, {}", self.level(*level)),
            Changed::PlanIssued {
                before: Some(before),
                level,
            } => format!(
                "A new plan: {}, before it {}",
                self.level(*level),
                self.level(*before)
            ),
            Changed::OffPlan { days, most } => {
                let which = if *most < 0.0 { "less" } else { "more" };
                format!(
                    "Offered other than planned on {}, at most {} {which}",
                    self.days(*days),
                    percent_above_nothing(most.abs())
                )
            }
            Changed::NotSoaked { nets, why } => format!(
                "{} not soaked: {}",
                self.count(*nets as usize, "net", "nets"),
                small(SoakWords::not_soaked(self, *why))
            ),
            Changed::JoinedGroup { name, .. } => format!("It joined {name}"),
            Changed::LeftGroup { name, .. } => format!("It left {name}"),
            Changed::GrassDecided { time, .. } if *time <= Span::ZERO => {
                "It was decided that it no longer goes out to grass".to_owned()
            }
            Changed::GrassDecided { time, muzzle } => {
                let muzzle = if *muzzle { ", with a muzzle" } else { "" };
                format!("Grass was decided anew: {} a day{muzzle}", self.span(*time))
            }
            Changed::FirstTurnout { last: Some(last) } => {
                format!("Out to grass for the first time since {}", self.day(*last))
            }
            Changed::FirstTurnout { last: None } => {
                "Out to grass: the first turnout that is logged".to_owned()
            }
            Changed::LongerAtGrass { before, after } => format!(
                "Longer at grass: {} a day in a week, {} in the week before it",
                self.span(*after),
                self.span(*before)
            ),
            Changed::MuzzleLeftOff { times } => format!(
                "Out to grass without its muzzle, {}",
                self.count(*times as usize, "time", "times")
            ),
            Changed::Weather { weather, days } => {
                let which = match weather {
                    GrassWeather::ColdNight => "A night at 5 degrees or under",
                    GrassWeather::HardFrost => "Hard frost",
                    GrassWeather::DrySpell => "A dry spell",
                };
                format!("{which}, on {}", self.days(*days))
            }
            Changed::Weight { from, to } => {
                format!("Weight from {} to {}", self.body(*from), self.body(*to))
            }
            Changed::Condition { from, to } => format!(
                "Condition from {} to {}",
                self.condition_figure(*from),
                self.condition_figure(*to)
            ),
            Changed::CrestUp { from, to } => {
                format!("Crest from {} to {}", from.score(), to.score())
            }
            Changed::Worked { sessions } => format!(
                "Worked from here on, {}",
                self.count(*sessions as usize, "session", "sessions")
            ),
            Changed::TrimmedOrShod => "Trimmed or shod".to_owned(),
            Changed::Corticosteroid => "A corticosteroid".to_owned(),
            Changed::SurgeryOrTransport => "Surgery or a long journey".to_owned(),
            Changed::GotAtGrain => "It got at grain".to_owned(),
            Changed::EscapedOntoGrass => "It escaped onto lush grass".to_owned(),
            Changed::EarlySign => "A warm hoof or lying down more was seen".to_owned(),
            Changed::OffFeed => "It left its forage".to_owned(),
            Changed::VetsWordEnded => "A vet's word ended".to_owned(),
        }
    }
    fn nothing_changed(&self) -> &'static str {
        "Nothing that was written down changed. That is not the same as a quiet month."
    }
    fn not_logged_head(&self) -> &'static str {
        "What nobody logged"
    }
    fn not_logged(&self, what: NotLogged) -> String {
        match what {
            NotLogged::Grass => "Grass: hours and area are not logged".to_owned(),
            NotLogged::GrassOn { days } => {
                format!(
                    "Whether it was at grass, or how long, on {}",
                    self.days(days)
                )
            }
            NotLogged::Work => "Work: no session is logged".to_owned(),
            NotLogged::Weather { days } => format!("The weather, on {}", self.days(days)),
            NotLogged::Eaten { days } => {
                format!("What it ate, in whole or in part, on {}", self.days(days))
            }
            NotLogged::Weight => "It was not weighed twice".to_owned(),
        }
    }
}

impl English {
    fn days(&self, days: u32) -> String {
        self.count(days as usize, "day", "days")
    }
}
