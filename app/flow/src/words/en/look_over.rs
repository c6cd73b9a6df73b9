//! The look-over in English.

use super::English;
use super::fields::capital;
use super::not_eating::line;
use crate::forms::look_over::{Flag, SeenEating};
use crate::views::not_eating::NotEating;
use crate::words::{AnimalWords, LookOverWords, PlanWords, SheetLine, Sign, UnitWords};
use tussock_core::animal::{Answer, Health, Laminitis};
use tussock_core::plan::Signs;
use tussock_core::units::LocalDate;

impl LookOverWords for English {
    fn look_over(&self, name: &str) -> String {
        format!("Look {name} over")
    }
    fn all_normal(&self) -> &'static str {
        "Looked at all of it: all normal"
    }
    fn all_normal_means(&self) -> &'static str {
        "Saves No on every line at once."
    }
    fn not_looked_at(&self) -> &'static str {
        "Not looked at"
    }
    fn finish_look_over(&self) -> &'static str {
        "Finish look-over"
    }
    fn lines_left(&self, count: usize) -> String {
        format!(
            "{} not looked at: it will read \u{201c}not complete\u{201d}",
            self.count(count, "line", "lines")
        )
    }
    fn anything_else(&self) -> &'static str {
        "Anything else that changes what it may have"
    }
    fn at_once(&self) -> &'static str {
        "Got at grain, or out on lush grass?"
    }
    fn at_once_hint(&self) -> &'static str {
        "Then ring the vet at once. Do not wait for signs."
    }
    fn signs_sheet(
        &self,
        view: &NotEating,
        signs: &Signs,
        health: &Health,
        readings: [Option<f64>; 3],
    ) -> Vec<SheetLine> {
        let of = |answer: Answer| -> Vec<&str> {
            Sign::ALL
                .iter()
                .filter(|sign| sign.of(signs) == answer)
                .map(|sign| self.sign(*sign))
                .collect()
        };
        let said = |signs: &[&str], none: &str| match signs {
            [] => none.to_owned(),
            some => capital(&self.list(some)),
        };
        let flags: Vec<String> = health
            .flags
            .iter()
            .map(|flag| self.vet_flag(flag))
            .collect();
        let before = match health.laminitis {
            Laminitis::NotKnown => "Not known whether it had laminitis before".to_owned(),
            laminitis => self.laminitis(laminitis),
        };
        let mut lines = vec![
            line("Who", self.who_is_it_about(view)),
            line("Seen", said(&of(Answer::Yes), "No sign on the lines")),
            line("Not looked at", said(&of(Answer::NotKnown), "Nothing")),
            line("Before", before),
            line("Eats", self.appetite(health.appetite).to_owned()),
        ];
        if !flags.is_empty() {
            lines.push(line("Said of it", flags.join("; ")));
        }
        lines.extend(self.rest_of_the_sheet(view, readings));
        lines
    }
    fn write_the_number_down(&self) -> &'static str {
        "Write the number down"
    }
    fn reading_wrong(&self) -> &'static str {
        "A reading cannot be: mend it or take it out"
    }
    fn flags(&self) -> &'static str {
        "What is true of it now"
    }
    fn flag(&self, flag: Flag) -> &'static str {
        match flag {
            Flag::PainRelief => "On pain relief",
            Flag::GotAtGrain => "Got at grain",
            Flag::EscapedOntoGrass => "Escaped onto lush grass",
            Flag::Sick => "Sick, feverish or colic",
            Flag::Lame => "Lame",
            Flag::BoxRest => "On box rest",
            Flag::TrimmedOrShod => "Trimmed or shod today",
            Flag::Corticosteroid => "Corticosteroid today",
            Flag::Sglt2Inhibitor => "On an SGLT2 inhibitor",
        }
    }
    fn flag_held(&self, flag: Flag) -> &'static str {
        match flag {
            Flag::TrimmedOrShod => "Trimmed or shod",
            Flag::Corticosteroid => "Corticosteroid",
            flag => self.flag(flag),
        }
    }
    fn flag_again(&self, flag: Flag) -> String {
        format!("{} again today", self.flag_held(flag))
    }
    fn flag_on(&self, day: LocalDate) -> String {
        format!("on {}", self.day(day))
    }
    fn does_it_eat(&self) -> &'static str {
        "Does it eat?"
    }
    fn eats(&self) -> &'static str {
        "As usual"
    }
    fn off_its_feed(&self) -> &'static str {
        "Off its feed"
    }
    fn last_seen_eating(&self) -> &'static str {
        "When was it last seen eating?"
    }
    fn seen_eating(&self, seen: SeenEating) -> String {
        match (seen, seen.hours()) {
            (SeenEating::Longest, Some(hours)) => format!("{hours} h ago or more"),
            (_, Some(hours)) => format!("Within {hours} h"),
            (_, None) => "Nobody knows".to_owned(),
        }
    }
    fn a_handful(&self) -> &'static str {
        "Hold out a handful of dry hay"
    }
    fn is_it_dull(&self) -> &'static str {
        "Does it look dull?"
    }
}
