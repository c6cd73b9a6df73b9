//! The plan's screen in English.

use super::English;
use super::fields::capital;
use crate::views::plan::{Part, Told};
use crate::words::{PlanScreenWords, UnitWords};

impl English {
    fn in_a_row(&self, times: &[String]) -> String {
        let times: Vec<&str> = times.iter().map(String::as_str).collect();
        self.list(&times)
    }
}

impl PlanScreenWords for English {
    fn plan_word(&self) -> &'static str {
        "Plan"
    }
    fn decision(&self, hay: &str, soaked: bool, less: bool, no_grass: bool) -> String {
        let head = match (less, soaked) {
            (true, true) => format!("Less hay: {hay}, soaked"),
            (true, false) => format!("Less hay: {hay} a day"),
            (false, true) => format!("Soak {hay} of hay a day"),
            (false, false) => format!("{hay} of hay a day"),
        };
        let grass = if no_grass { "no grass" } else { "little grass" };
        format!("{head}, {grass}")
    }
    fn part(&self, part: Part) -> &'static str {
        match part {
            Part::Limits => "Limits",
            Part::Hay => "Hay",
            Part::Ration => "Ration",
            Part::Day => "Day",
            Part::Grass => "Grass",
            Part::Work => "Work",
            Part::Watch => "Watch",
        }
    }
    fn told(&self, told: Told) -> &'static str {
        match told {
            Told::Done => "settled",
            Told::Care => "take care",
            Told::Stop => "stop",
            Told::NotKnown => "not known",
        }
    }
    fn the_plan_in_order(&self) -> &'static str {
        "The plan, in order"
    }
    fn allowed_a_day(&self, level: &str, dry: &str, raised: bool) -> String {
        if raised {
            format!("{level}, raised to {dry}")
        } else {
            format!("{level}: {dry}")
        }
    }
    fn hay_alone_covers(&self) -> &'static str {
        "Hay alone: nothing known is short"
    }
    fn nets_at(&self, times: &[String]) -> String {
        format!(
            "{} at {}",
            self.count(times.len(), "net", "nets"),
            self.in_a_row(times)
        )
    }
    fn watch(&self, look_over_days: i64, review: &str) -> String {
        let every = match look_over_days {
            1 => "every day".to_owned(),
            7 => "every week".to_owned(),
            days => format!("every {days} days"),
        };
        format!(
            "Look it over {every}. Review: {}",
            super::fields::small(review)
        )
    }
    fn nets_of_the_day(&self) -> &'static str {
        "Nets of the day"
    }
    fn before_soaking(&self) -> &'static str {
        "hay, weighed before soaking"
    }
    fn hay_in_the_net(&self) -> &'static str {
        "hay, the net's own weight not counted"
    }
    fn mends_head(&self) -> &'static str {
        "What shortens the wait, cheapest first"
    }
    fn stands_in_head(&self) -> &'static str {
        "Taken for what nobody measured"
    }
    fn dry_stands_in(&self, lot: &str, dry: &str) -> String {
        format!("{lot}: {dry} dry matter, a default for hay and straw")
    }
    fn hay_stands_in(&self, lot: &str, class: &str) -> String {
        format!(
            "{lot}: not tested. What {} usually holds stands in",
            super::fields::small(class)
        )
    }
    fn balancer_stands_in(&self) -> &'static str {
        "A typical balancer, from memory"
    }
    fn rate_stands_in(&self) -> &'static str {
        "How fast it eats: typical for its weight and net; small holes slow down as they empty"
    }
    fn visits_stand_in(&self, times: &[String]) -> String {
        format!("Visits at {}: nobody has said when", self.in_a_row(times))
    }
    fn levers_head(&self) -> &'static str {
        "What would change it most"
    }
    fn why_link(&self) -> &'static str {
        "Why, and where each number comes from"
    }
    fn why_head(&self) -> &'static str {
        "Why"
    }
    fn why(&self) -> &'static str {
        "Why"
    }
    fn sources_head(&self) -> &'static str {
        "Where each number comes from"
    }
    fn constant_name(&self, id: &str) -> String {
        let bare = id.split_once('.').map_or(id, |(_, name)| name);
        capital(&bare.replace('_', " "))
    }
    fn a_default(&self) -> &'static str {
        "A default"
    }
    fn your_records(&self) -> &'static str {
        "Records of this yard"
    }
    fn your_records_mean(&self) -> &'static str {
        "What was taped, scored and written down here"
    }
    fn use_this_plan(&self) -> &'static str {
        "Use this plan"
    }
    fn go_on_with(&self, name: &str) -> String {
        format!("Go on with {name}")
    }
    fn in_use(&self, from: &str, review: &str) -> String {
        format!("In use since {from}, review on {review}")
    }
    fn review_is_due(&self) -> &'static str {
        "The review is due: using the plan sets the next one"
    }
    fn follows(&self, hay: &str, soaked: bool) -> String {
        if soaked {
            format!("Go on: soak {hay} of hay a day")
        } else {
            format!("Go on: {hay} of hay a day")
        }
    }
    fn differs_until(&self, review: &str) -> String {
        format!("It would now differ. Amounts change at the review, on {review}")
    }
    fn plan_in_use(&self) -> &'static str {
        "The plan in use"
    }
    fn held_hay(&self, soaked: bool) -> &'static str {
        if soaked {
            "a day, weighed before soaking"
        } else {
            "a day"
        }
    }
    fn a_balancer(&self) -> &'static str {
        "Balancer"
    }
    fn in_feeds(&self, feeds: i64) -> String {
        match feeds {
            1 => "a day, in 1 feed".to_owned(),
            feeds => format!("a day, in {feeds} feeds"),
        }
    }
    fn as_of_today(&self) -> &'static str {
        "How it would come out today"
    }
    fn change_before_review(&self) -> &'static str {
        "Use today's plan before the review"
    }
    fn would_differ(&self) -> &'static str {
        "The plan in use would now differ: this is how it would come out today"
    }
    fn does_not_hold(&self) -> &'static str {
        "The plan in use does not hold now"
    }
    fn no_plan(&self) -> &'static str {
        "No plan"
    }
    fn meanwhile_head(&self) -> &'static str {
        "Until then"
    }
    fn write_down_vets_word(&self) -> &'static str {
        "Write down the vet's word"
    }
    fn add_a_hay(&self) -> &'static str {
        "Add a hay"
    }
    fn open_the_hay(&self) -> &'static str {
        "Open the hay"
    }
    fn no_diagnosis(&self) -> &'static str {
        "No diagnosis and no treatment. The vet's word goes before this plan."
    }
}
