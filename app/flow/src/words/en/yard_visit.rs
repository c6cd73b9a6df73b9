//! A visit to the yard, in English.

use super::English;
use super::visit_report::draft;
use crate::views::remind::Sent;
use crate::views::yard_visit::report::Report;
use crate::views::yard_visit::since::{Change, YardChange};
use crate::views::yard_visit::{FactState, Next, Seen, Underway};
use crate::words::{AnimalWords, BesideWords, PlanWords, Task, UnitWords, YardVisitWords};
use tussock_core::log::bodies::SharedFact;
use tussock_core::units::{Instant, LocalDate, Zone};

/// A step as a word in a line.
const fn step(task: Task) -> &'static str {
    match task {
        Task::Weigh => "weight",
        Task::Condition => "condition",
        Task::Crest => "crest",
        Task::LookOver => "look-over",
        Task::Work => "work",
        Task::Photograph => "photograph",
        Task::Plan => "plan",
    }
}

/// Steps as a list of words.
pub(super) fn steps(words: English, tasks: &[Task]) -> String {
    let named: Vec<&str> = tasks.iter().map(|task| step(*task)).collect();
    words.list(&named)
}

impl YardVisitWords for English {
    fn start_a_visit(&self) -> &'static str {
        "Start a visit"
    }

    fn to_the_visit(&self) -> &'static str {
        "Back to the visit"
    }

    fn the_visit(&self) -> &'static str {
        "Visit"
    }

    fn whom_to_see(&self) -> &'static str {
        "Whom do you see today?"
    }

    fn whom_to_see_hint(&self) -> &'static str {
        "In the order of the list. What they share is asked once"
    }

    fn start_visit(&self) -> &'static str {
        "Start visit"
    }

    fn somebody_wanted(&self) -> &'static str {
        "Choose at least one animal"
    }

    fn last_visit(&self, ended: Instant, today: LocalDate, zone: &dyn Zone) -> String {
        format!("Last visit: {}.", self.moment(ended, today, zone))
    }

    fn visit_sentence(&self, visit: &Underway) -> String {
        match visit.seen_of() {
            (seen, all) if seen == all => {
                format!("{} seen", self.count(all, "animal", "animals"))
            }
            (seen, all) => format!("{seen} of {all} seen"),
        }
    }

    fn visit_began(&self, began: Instant, today: LocalDate, zone: &dyn Zone) -> String {
        format!("Begun {}", self.moment(began, today, zone))
    }

    fn changed_since(&self, ended: Instant, today: LocalDate, zone: &dyn Zone) -> String {
        format!("Since {}", self.moment(ended, today, zone))
    }

    fn first_visit(&self) -> &'static str {
        "The first visit: there is nothing to compare with yet."
    }

    fn nothing_changed(&self) -> &'static str {
        "nothing new"
    }

    fn change(&self, change: &Change) -> String {
        match change {
            Change::Weight { before, now } => {
                let now = self.body(now.weight.value);
                match before {
                    Some(before) => format!("{now}, was {}", self.body(before.weight.value)),
                    None => format!("{now}, weighed for the first time"),
                }
            }
            Change::Condition { before, now } => {
                let now = self.condition_figure(*now);
                match before {
                    Some(before) => {
                        format!("condition {now}, was {}", self.condition_figure(*before))
                    }
                    None => format!("condition {now}, scored for the first time"),
                }
            }
            Change::Crest { before, now } => match before {
                Some(before) => format!("crest {}, was {}", now.score(), before.score()),
                None => format!("crest {}, scored for the first time", now.score()),
            },
            Change::Signs(signs) => format!(
                "look-over: {}",
                super::fields::small(&self.signs(signs).sentence)
            ),
            Change::Plan { before, now, from } => {
                let level = self.level(*now);
                let from = self.day(*from);
                match before {
                    Some(before) if before != now => {
                        format!("plan of {from}: {level}, was {}", self.level(*before))
                    }
                    _ => format!("plan of {from}: {level}"),
                }
            }
            Change::VetWord(word) => format!("the vet's word: {}", self.vet_word(word)),
            Change::Refused(on) => format!("refused a handful of hay on {}", self.day(*on)),
        }
    }

    fn yard_change(&self, change: &YardChange) -> String {
        match change {
            YardChange::NewHay { name, on } => format!("New hay: {name}, {}", self.day(*on)),
            YardChange::Visits(on) => format!("Other feeding times since {}", self.day(*on)),
        }
    }

    fn for_all_of_them(&self) -> &'static str {
        "For all of them"
    }

    fn shared_fact(&self, fact: SharedFact) -> &'static str {
        match fact {
            SharedFact::Hay => "Hay",
            SharedFact::Visits => "Feeding times",
            SharedFact::Nets => "Nets and tubs",
            SharedFact::Weather => "Weather of today",
        }
    }

    fn fact_state(&self, state: FactState) -> &'static str {
        match state {
            FactState::Open => "not asked yet",
            FactState::AsBefore => "as before",
            FactState::Changed => "written down today",
        }
    }

    fn all_as_before(&self, open: &[SharedFact]) -> String {
        let names: Vec<String> = open
            .iter()
            .map(|fact| super::fields::small(self.shared_fact(*fact)))
            .collect();
        let names: Vec<&str> = names.iter().map(String::as_str).collect();
        format!("As before: {}", self.list(&names))
    }

    fn seen(&self, seen: &Seen) -> String {
        if seen.open.is_empty() {
            return "all of it done".to_owned();
        }
        format!("open: {}", steps(*self, &seen.open))
    }

    fn seen_word(&self, seen: &Seen) -> String {
        let all = seen.done.len() + seen.open.len();
        format!("{} of {all}", seen.done.len())
    }

    fn next_step(&self, next: &Next) -> String {
        match next {
            Next::Step(_, name, Task::Crest) => format!("Score the crest of {name}"),
            Next::Step(_, name, Task::Plan) => format!("Make the plan for {name}"),
            Next::Step(_, name, task) => self.do_task(*task, name),
            Next::Summary => "Read the summary".to_owned(),
        }
    }

    fn to_summary_now(&self) -> &'static str {
        "Summary and report"
    }

    fn summary_sentence(&self, visit: &Underway) -> String {
        match visit.seen_of() {
            (seen, all) if seen == all => {
                format!(
                    "{} seen: read the report",
                    self.count(all, "animal", "animals")
                )
            }
            (seen, all) => format!("{seen} of {all} seen: what is open is named"),
        }
    }

    fn report_label(&self) -> &'static str {
        "Report, as you will hand it over"
    }

    fn report_hint(&self) -> &'static str {
        "Drafted from what was written down. Change it as you like: you answer for it, not the draft"
    }

    fn draft_anew(&self) -> &'static str {
        "Draft it anew"
    }

    fn send_report(&self) -> &'static str {
        "Send or save it"
    }

    fn report_sent(&self, sent: Sent) -> &'static str {
        match sent {
            Sent::Shared => "Sent.",
            Sent::Saved => "Saved among the downloads.",
            Sent::Left => "Not sent. Nothing has changed.",
            Sent::Failed => "It did not go. The text is still here; try again.",
        }
    }

    fn report_file(&self, on: LocalDate) -> String {
        format!("visit-{on}.txt")
    }

    fn end_visit(&self) -> &'static str {
        "End visit"
    }

    fn no_visit(&self) -> &'static str {
        "No visit is under way"
    }

    fn draft_report(&self, report: &Report) -> String {
        draft(*self, report)
    }
}
