//! The times at which somebody comes, in English.

use super::English;
use crate::forms::visits::Wrong;
use crate::words::VisitsWords;

impl VisitsWords for English {
    fn when_somebody_comes(&self) -> &'static str {
        "When somebody comes"
    }
    fn visit(&self, number: usize) -> String {
        format!("Visit {number}")
    }
    fn visit_hint(&self) -> &'static str {
        "By the clock, as 6:05. Leave empty what is no visit."
    }
    fn plans_follow_visits(&self) -> &'static str {
        "Nets are hung at these times. See the plan of each animal again when they change."
    }
    fn save_visits(&self) -> &'static str {
        "Save the times"
    }
    fn visits_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::NoTime { typed, .. } => {
                format!("\"{typed}\" is not a time: type it like 6:05")
            }
            Wrong::Twice { .. } => "This time is there already".to_owned(),
            Wrong::Nobody => "Type at least one time".to_owned(),
        }
    }
}
