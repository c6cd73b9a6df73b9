//! The list and a visit to one animal, in English.

use super::English;
use super::numbers::{between, up_to};
use crate::views::beside::{Last, Standing, Stop};
use crate::words::{
    AnimalWords, BesideWords, HorsesWords, PhotoWords, PlanWords, SafetyWords, Said, Task,
    UnitWords, WorkWords,
};
use tussock_core::animal::Animal;
use tussock_core::assess::{ConditionRange, DatedWeight, WeightMethod};
use tussock_core::safety::{Refusal, VetUrgency};

impl BesideWords for English {
    fn visit(&self) -> &'static str {
        "A visit, in its order"
    }

    fn task(&self, task: Task) -> &'static str {
        match task {
            Task::Weigh => "Weigh",
            Task::Condition => "Condition",
            Task::Crest => "Crest",
            Task::LookOver => "Look-over",
            Task::Work => "Work",
            Task::Photograph => "Photograph",
            Task::Plan => "Plan",
        }
    }

    fn do_task(&self, task: Task, name: &str) -> String {
        match task {
            Task::Weigh => format!("Weigh {name}"),
            Task::Condition => format!("Score {name}"),
            Task::Crest => "Score the crest".to_owned(),
            Task::LookOver => format!("Look {name} over"),
            Task::Work => format!("Work {name}"),
            Task::Photograph => format!("Photograph {name}"),
            Task::Plan => "Make the plan".to_owned(),
        }
    }

    fn see_plan(&self) -> &'static str {
        "See the plan"
    }

    fn ago(&self, days: i64) -> String {
        match days {
            ..=0 => "today".to_owned(),
            1 => "yesterday".to_owned(),
            days => format!("{days} days ago"),
        }
    }

    fn last(&self, last: &Last) -> String {
        match last {
            Last::Weight(dated) => {
                let how = if matches!(dated.weight.method, WeightMethod::Scale(_)) {
                    self.by_scale()
                } else {
                    self.by_tape()
                };
                format!(
                    "{}, {}",
                    self.body(dated.weight.value),
                    super::fields::small(how)
                )
            }
            Last::Condition(range, true) => self.condition_figure(*range),
            Last::Condition(range, false) => {
                format!("{} by the ribs alone", self.condition_figure(*range))
            }
            Last::ConditionToScore { by_sites: true } | Last::CrestToScore => "scored".to_owned(),
            Last::ConditionToScore { by_sites: false } => "by the ribs alone".to_owned(),
            Last::Crest(crest) => crest.score().to_string(),
            Last::LookOver(signs) => self.signs(signs).sentence,
            Last::Work { done, asked } => self.week_done(*done, *asked),
            Last::NoWork(line) => self.work(line).sentence,
            Last::Photographs(poses) => {
                let poses: Vec<String> = poses
                    .iter()
                    .map(|pose| super::fields::small(self.pose(*pose)))
                    .collect();
                let poses: Vec<&str> = poses.iter().map(String::as_str).collect();
                self.list(&poses)
            }
            Last::Plan(plan) => format!(
                "{}, review {}",
                self.level(plan.level.part()),
                self.day(plan.review)
            ),
        }
    }

    fn never(&self) -> &'static str {
        "not yet"
    }

    fn standing(&self, standing: Standing) -> &'static str {
        match standing {
            Standing::Due => "due",
            Standing::Done => "done",
            Standing::Care => "a sign seen",
            Standing::NotComplete => "not complete",
            Standing::Waits => "weigh first",
            Standing::Later => "later",
            Standing::NoWork => "not now",
            Standing::Open => "if you like",
        }
    }

    fn condition_figure(&self, condition: ConditionRange) -> String {
        between(
            &up_to(condition.low(), 1),
            &up_to(condition.high(), 1),
            "to",
        )
    }

    fn in_the_list(
        &self,
        weight: Option<&DatedWeight>,
        condition: Option<ConditionRange>,
        to_score: bool,
    ) -> String {
        let weight = weight.map_or_else(
            || "weight not known".to_owned(),
            |dated| self.body(dated.weight.value),
        );
        let condition = match condition {
            _ if to_score => "condition to score".to_owned(),
            None => "condition not known".to_owned(),
            Some(range) => format!("condition {}", self.condition_figure(range)),
        };
        format!("{weight}, {condition}")
    }

    fn due_in_the_list(&self, due: Option<Task>) -> &'static str {
        match due {
            Some(Task::Weigh) => "weigh today",
            Some(Task::Condition) => "score today",
            Some(Task::Crest) => "score the crest today",
            Some(Task::LookOver) => "look over today",
            Some(Task::Work) => "work today",
            Some(Task::Photograph) => "photograph today",
            Some(Task::Plan) => "plan today",
            None => "nothing due",
        }
    }

    fn one_thing_due(&self, task: Task, name: &str) -> String {
        match task {
            Task::Weigh => format!("Weigh {name} today"),
            Task::Condition => format!("Score {name} today"),
            Task::Crest => format!("Score the crest of {name} today"),
            Task::LookOver => format!("Look {name} over today"),
            Task::Work => format!("Work {name} today"),
            Task::Photograph => format!("Photograph {name} today"),
            Task::Plan => format!("Make a plan for {name} today"),
        }
    }

    fn nothing_due(&self, count: usize) -> String {
        format!("{}, nothing due", self.how_many(count))
    }

    fn stop_order(&self, stop: &Stop) -> String {
        match stop {
            Stop::Vet(Refusal::LaminitisSign, _) => {
                "Stop grazing and work. Soft bed. Vet today".to_owned()
            }
            Stop::Vet(Refusal::WarmHoofAfterLaminitis, _) => {
                "No grass, no work. Soft bed. Vet today".to_owned()
            }
            Stop::Vet(Refusal::AteWhenOffered, _) => {
                "Feed it now. Ring the vet this morning".to_owned()
            }
            Stop::Vet(_, vet) => self.vet(*vet).to_owned(),
            Stop::LookAgain => "No grass, no work. Look again in 2 h and tonight".to_owned(),
        }
    }

    fn stop_why(&self, stop: &Stop) -> String {
        match stop {
            // The order says the rest already, and the block has little room.
            Stop::Vet(Refusal::LaminitisSign, _) => {
                let Said { why, .. } = self.refusal(&Refusal::LaminitisSign);
                format!("A sign of laminitis. {}", why.unwrap_or_default())
            }
            Stop::Vet(refusal, _) => {
                let Said { sentence, why } = self.refusal(refusal);
                format!("{sentence}. {}", why.unwrap_or_default())
            }
            Stop::LookAgain => "A warm hoof, or lying down more. Soft bed, hay in front of it. If any other sign comes, ring the vet today.".to_owned(),
        }
    }

    fn stop_word(&self, stop: &Stop) -> &'static str {
        match stop {
            Stop::Vet(_, VetUrgency::Now) => "Vet now",
            Stop::Vet(_, VetUrgency::Today) => "Vet today",
            Stop::Vet(_, VetUrgency::ThisMorning) => "Vet this morning",
            Stop::Vet(_, VetUrgency::First) => "Vet first",
            Stop::LookAgain => "No grass, look again",
        }
    }

    fn look_again_now(&self) -> &'static str {
        "Look it over again"
    }

    fn who(&self, animal: &Animal) -> String {
        match animal.body_type {
            Some(body) => self.body_type(body).to_owned(),
            None => self.kind(animal.kind).to_owned(),
        }
    }

    fn details_of_it(&self) -> &'static str {
        "Details"
    }

    fn find_animal(&self) -> &'static str {
        "Find an animal"
    }

    fn none_found(&self) -> &'static str {
        "No animal of that name"
    }

    fn add_a_group(&self) -> &'static str {
        "New group"
    }

    fn a_group(&self) -> &'static str {
        "Group"
    }

    fn some_not_read(&self, count: usize) -> String {
        let which = self.count(count, "record about it", "records about it");
        format!(
            "{which} cannot be used here: nothing is deleted, but do not rely on what is missing"
        )
    }
}
