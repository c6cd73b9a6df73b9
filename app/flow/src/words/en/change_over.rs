//! Changing over in English.

use super::English;
use super::fields::small;
use crate::views::change_over::{Change, Days};
use crate::words::{BalanceWords, ChangeOverWords, LimitsWords, Said, UnitWords};
use tussock_core::forage::Fed;
use tussock_core::limits::Nutrient;

impl ChangeOverWords for English {
    fn changing_over(&self) -> &'static str {
        "Changing over"
    }

    fn change_sentence(&self, change: Option<&Change>) -> String {
        let Some(change) = change else {
            return "Nothing to change over".to_owned();
        };
        let last = change.days.last().map_or(1, |days| days.stage.first);
        match change.day {
            _ if change.days.len() == 1 => "It changes at once".to_owned(),
            None => format!("{} days to change over", last.saturating_sub(1)),
            Some(_) if change.over => "Changed over".to_owned(),
            Some(day) => format!("Day {day} of {}", last.saturating_sub(1)),
        }
    }

    fn how_long(&self) -> &'static str {
        "How long"
    }

    fn weeks(&self, better: bool) -> &'static str {
        if better {
            "Three weeks, better"
        } else {
            "Two weeks, at least"
        }
    }

    fn days_of_the_change(&self) -> &'static str {
        "Day by day"
    }

    fn days_lead(&self, days: &Days) -> String {
        let numbers = match days.stage.last {
            Some(last) if last == days.stage.first => format!("day {last}"),
            Some(last) => format!("days {} to {last}", days.stage.first),
            None => format!("from day {}", days.stage.first),
        };
        days.begins.map_or_else(
            || numbers.clone(),
            |begins| format!("{numbers}, from {}", self.day(begins)),
        )
    }

    fn fed_on(&self, days: &Days) -> String {
        let ration = &days.stage.ration;
        let hays = ration.forages.iter().map(|given| match given.fed {
            Fed::Dry => format!("{} {}", given.name, self.feed(given.as_fed)),
            Fed::Soaked => format!("{}, soaked, {} before", given.name, self.feed(given.as_fed)),
        });
        let foods = ration.foods.iter().map(|given| {
            format!(
                "{} {}",
                small(&self.food_name(&given.of.food)),
                self.bucket(given.a_day)
            )
        });
        let lines: Vec<String> = hays.chain(foods).collect();
        let lines: Vec<&str> = lines.iter().map(String::as_str).collect();
        self.list(&lines)
    }

    fn days_word(&self, change: &Change, days: &Days) -> &'static str {
        match change.day {
            _ if days.today => "today",
            Some(day) if days.stage.last.is_some_and(|last| last < day) => "done",
            _ => "later",
        }
    }

    fn breaks_on(&self) -> &'static str {
        "A ceiling is broken on these days: go slower, or leave one thing as it is"
    }

    fn short_on_the_way(&self, short: &[Nutrient]) -> Said {
        Said::because(
            format!("Short on the way: {}", self.nutrients(short)),
            "Neither ration is short of it, and some of these days are. Days do no harm; keep the way as short as the gut \
             allows.",
        )
    }

    fn no_change_while_refused(&self) -> Said {
        Said::because(
            "No change while a plan is refused",
            "Feed as the plan's screen says, and keep hay in front of it. Look there first: it says why, and what to do.",
        )
    }

    fn keeps_every_day(&self) -> Said {
        Said::because(
            "No day breaks or lacks what neither ration does",
            "Each amount goes from the one to the other a quarter at a time. Minerals and salt that come in need no time; those \
             that go out stay until the last step. Two to three weeks are common practice.",
        )
    }

    fn nothing_to_change_over(&self) -> &'static str {
        "What it gets is what it got before, or no plan is in use. When a plan feeds other hay or other food, the way there \
         stands here."
    }

    fn what_to_watch(&self) -> [Said; 2] {
        [
            Said::because(
                "Watch droppings, appetite and feet while it changes",
                "Loose droppings or hay left: stay on the step a few days longer. Colic, off its feed, or a sign at the feet: \
                 ring the vet.",
            ),
            Said::because(
                "When the change cannot be slow, such as out on spring grass",
                "Start with short hours and hay before turning out; an animal at risk stays off the flush. Live yeast is given \
                 for such days: from memory, trials show small and mixed effects on the hindgut, and none that it prevents \
                 laminitis. It makes no sudden change safe.",
            ),
        ]
    }

    fn to_the_plan(&self) -> &'static str {
        "Make the plan with it"
    }
}
