//! How an animal or a group goes out to grass, in English.

use super::English;
use super::numbers::up_to;
use crate::forms::grazing::{Used, Wrong};
use crate::views::grazing::{Carried, Open};
use crate::words::{AnimalWords, GrazingWords, LogWords, PlanWords, SafetyWords, Said, UnitWords};
use tussock_core::graze::intake::Shortened;
use tussock_core::graze::intake::published::{MUZZLE_LEAST, MUZZLE_LONGEST, MUZZLE_MOST, SHORTEST};
use tussock_core::units::Span;

impl GrazingWords for English {
    fn how_it_goes_out(&self, name: &str) -> String {
        format!("How {name} goes out to grass")
    }
    fn nobody_to_go_out(&self) -> &'static str {
        "No such animal or group is here"
    }
    fn stays_in_now(&self) -> &'static str {
        "By the last decision it stays in."
    }
    fn which_paddock(&self) -> &'static str {
        "Onto which paddock"
    }
    fn no_one_paddock(&self) -> &'static str {
        "Not said"
    }
    fn no_one_paddock_means(&self) -> &'static str {
        "No hay comes off for grass where nobody looked at the leaf of the paddock in these days."
    }
    fn how_long_out(&self) -> &'static str {
        "How long a day"
    }
    fn so_long(&self, minutes: i64) -> String {
        self.span(Span::minutes(minutes))
    }
    fn another_time(&self) -> &'static str {
        "Or another time"
    }
    fn another_time_hint(&self) -> &'static str {
        "In minutes, or as 1 h 20."
    }
    fn muzzle_asked(&self) -> &'static str {
        "Muzzle"
    }
    fn muzzle_on(&self, on: bool) -> &'static str {
        if on { "With a muzzle" } else { "Without" }
    }
    fn muzzle_caution(&self) -> Said {
        Said::because(
            format!(
                "Check the muzzle every day, and never more than {} in a day",
                self.span(*MUZZLE_LONGEST)
            ),
            format!(
                "In trials muzzles held back from {} to {} % of the grass. No time here rests on a muzzle: it counts with \
                 the least. It must be able to drink through it.",
                up_to(*MUZZLE_LEAST * 100.0, 0),
                up_to(*MUZZLE_MOST * 100.0, 0)
            ),
        )
    }
    fn used_asked(&self) -> &'static str {
        "Used to such turnout"
    }
    fn used_hint(&self) -> &'static str {
        "Over six weeks of short turnout an animal learns to eat faster. Not said counts as from today."
    }
    fn used(&self, used: Used) -> &'static str {
        match used {
            Used::Today => "From today",
            Used::ThreeWeeks => "About three weeks",
            Used::SixWeeks => "Six weeks or more",
            Used::On => "Since a day",
        }
    }
    fn used_since(&self) -> &'static str {
        "Since which day"
    }
    fn used_since_hint(&self) -> &'static str {
        "For example 2026-05-05, or 5.5.2026."
    }
    fn grazing_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::NoTime => "Say how long a day".to_owned(),
            Wrong::NotATime(typed) => {
                format!("\"{typed}\" is not a time: type minutes, like 45, or 1 h 20")
            }
            Wrong::TimeOutside { minutes, most } => {
                format!("{minutes} min a day is not believed: type 1 to {most} min")
            }
            Wrong::Since => "Type a day that was, like 2026-05-05".to_owned(),
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn carries_head(&self) -> &'static str {
        "What the plan can carry"
    }
    fn say_how_long_first(&self) -> &'static str {
        "Say how long a day, and it stands here before anything is saved."
    }
    fn carried(&self, carried: &Carried) -> Said {
        match carried {
            Carried::NoPlan { error, of } => {
                let said = self.plan_error(error);
                let of = of.as_ref().map_or_else(String::new, |of| format!("{of}: "));
                let why = said.why.map_or_else(String::new, |why| format!(" {why}"));
                Said::because(
                    "No plan yet, so no time at grass can be told",
                    format!("{of}{}.{why}", said.sentence),
                )
            }
            Carried::Refused { of, why, vet } => {
                let why: Vec<String> = why
                    .iter()
                    .map(|refusal| format!("{}.", self.refusal(refusal).sentence))
                    .collect();
                let order = match vet {
                    Some(vet) => format!("No grass for {of}. {}", self.vet(*vet)),
                    None => format!("There is no plan for {of}, and no grass"),
                };
                if why.is_empty() {
                    Said::plain(order)
                } else {
                    Said::because(order, why.join(" "))
                }
            }
            Carried::Closed { of, why, .. } if why.is_empty() => Said::because(
                format!("No grass for {of}"),
                "A sign, lameness, an episode or a recovery closes it, and no vet's word about grass was given since.",
            ),
            Carried::Closed { of, why, .. } => {
                let facts: Vec<&str> = why.iter().map(|fact| self.risk_factor(*fact)).collect();
                Said::because(
                    format!("No grass for {of}"),
                    format!("What closes it: {}.", self.list(&facts)),
                )
            }
            Carried::NoRoom { of, asked, why } => {
                let why = if why.is_empty() {
                    format!("under {} is not worth the walk", self.span(*SHORTEST))
                } else {
                    self.why_shorter(why)
                };
                Said::because(
                    format!("No room for grass in the plan for {of}"),
                    format!("Asked for {}: {why}.", self.span(*asked)),
                )
            }
            Carried::OneStaysIn => Said::because(
                "Grass of this group is not counted",
                "One of them stays in by a decision of its own.",
            ),
            Carried::Open(open) => {
                let muzzled = if open.muzzle { ", muzzled" } else { "" };
                let sentence = format!("At most {} a day{muzzled}", self.span(open.time));
                if open.why.is_empty() {
                    Said::plain(sentence)
                } else {
                    let why = self.why_shorter(&open.why);
                    let less = match &open.set_by {
                        Some(name) => format!("It is less for {name}: {why}"),
                        None => format!("It is less: {why}"),
                    };
                    let asked = self.span(open.asked);
                    Said::because(sentence, format!("Asked for {asked}. {less}."))
                }
            }
        }
    }
    fn carried_rows(&self, open: &Open) -> Vec<(&'static str, String)> {
        vec![
            ("Asked for", self.span(open.asked)),
            ("The plan carries", self.span(open.time)),
            ("Grass eaten in it", self.dry_ends(open.grass)),
            ("Hay that hangs less", self.dry(open.hay_less)),
        ]
    }
    fn instead_of_grass(&self, carried: &Carried) -> Vec<&'static str> {
        let hay =
            "A dry lot or a yard, with tested hay in front of it: a bare paddock is not forage.";
        let walk = "A walk in hand, only if it is sound and no sign stands.";
        match carried {
            Carried::Open(_) | Carried::OneStaysIn | Carried::NoPlan { .. } => Vec::new(),
            Carried::NoRoom { why, .. } if why.contains(&Shortened::HayLeavesNoRoom) => vec![
                hay,
                walk,
                "Have the hay tested, or feed a lot that is proven within the limit: then there may be room.",
            ],
            Carried::NoRoom { .. } | Carried::Refused { vet: None, .. } => vec![hay, walk],
            Carried::Refused { .. } | Carried::Closed { .. } => vec![
                hay,
                walk,
                "Grass again only on the vet's word about grass: ask the vet, and write the word down.",
            ],
        }
    }
    fn instead_head(&self) -> &'static str {
        "Instead"
    }
    fn never_more_than_carried(&self) -> &'static str {
        "Saving keeps what you ask for. The plan never counts more than it can carry, and only on days on which grass is \
         open. Nothing here makes grass harmless: how long matters most."
    }
    fn save_turnout(&self) -> &'static str {
        "Save"
    }
    fn does_not_go_out(&self) -> &'static str {
        "Does not go out"
    }
}

impl English {
    /// Why a time is shorter than was asked for.
    fn why_shorter(&self, why: &[Shortened]) -> String {
        let why: Vec<&str> = why
            .iter()
            .map(|why| PlanWords::shortened(self, *why))
            .collect();
        self.list(&why)
    }
}
