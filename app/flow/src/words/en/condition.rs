//! The walk-round and the crest, in English.

use super::English;
use super::fields::small;
use super::numbers::up_to;
use crate::views::condition::Summary;
use crate::words::{AssessWords, ConditionWords, UnitWords};
use tussock_core::assess::Site;
use tussock_core::units::LocalDate;

impl ConditionWords for English {
    fn site_of(&self, number: u8, sites: usize) -> String {
        format!("{number} of {sites}")
    }
    fn next_site(&self, site: Site) -> String {
        format!("Next: {}", small(self.site(site)))
    }
    fn to_summary(&self) -> &'static str {
        "Next: all six"
    }
    fn score_keys(&self) -> &'static str {
        "Score from 1 to 9"
    }
    fn half_less(&self) -> &'static str {
        "\u{2212} half"
    }
    fn half_more(&self) -> &'static str {
        "+ half"
    }
    fn skip(&self) -> &'static str {
        "skip"
    }
    fn drawing(&self, site: Site) -> String {
        format!("{}, as if sliced there", self.site(site))
    }
    fn choose_a_step(&self) -> &'static str {
        "Feel first, then choose from 1 to 9"
    }
    fn left_out(&self) -> &'static str {
        "Left out"
    }
    fn step_figure(&self, value: f64) -> String {
        up_to(value, 1)
    }
    fn last_time(&self, value: f64, on: LocalDate) -> String {
        format!("Last time {}, {}", up_to(value, 1), self.day(on))
    }

    fn summary(&self, summary: &Summary) -> String {
        let value = up_to(summary.value, 1);
        let Some(changes) = &summary.changes else {
            return format!("{value}, the first score");
        };
        let by = |change: f64| match up_to(change.abs(), 1).as_str() {
            "0.5" => "half".to_owned(),
            figure => figure.to_owned(),
        };
        let way = |change: f64| if change > 0.0 { "up" } else { "down" };
        match changes.as_slice() {
            [] => format!("{value}, as before"),
            [(site, change)] => format!(
                "{value}, {} {} at the {}, the rest as before",
                way(*change),
                by(*change),
                small(self.site(*site))
            ),
            several => {
                let ups = several.iter().filter(|(_, change)| *change > 0.0).count();
                let downs = several.len() - ups;
                let said: Vec<String> = [(ups, "up"), (downs, "down")]
                    .into_iter()
                    .filter(|(count, _)| 0 < *count)
                    .map(|(count, way)| format!("{way} at {}", self.count(count, "site", "sites")))
                    .collect();
                format!("{value}, {}", said.join(", "))
            }
        }
    }

    fn not_scored_yet(&self) -> &'static str {
        "Not enough sites scored"
    }
    fn within_noise(&self) -> &'static str {
        "Two people, or one on two days, differ by as much. Girth and weight show a change sooner."
    }
    fn all_numbers(&self) -> &'static str {
        "All numbers"
    }
    fn site_by_site(&self) -> &'static str {
        "Condition, site by site"
    }
    fn site_column(&self) -> &'static str {
        "Site"
    }
    fn now_column(&self) -> &'static str {
        "Now"
    }
    fn last_column(&self) -> &'static str {
        "Last time"
    }
    fn save_condition(&self) -> &'static str {
        "Save condition"
    }
    fn picture_key(&self, compared: bool) -> &'static str {
        if compared {
            "From 1 at the left to 9. Tag: now. Stroke: last time."
        } else {
            "From 1 at the left to 9."
        }
    }
    fn how_is_the_crest(&self, name: &str) -> String {
        format!("Score the crest of {name}")
    }
    fn crest_hand(&self) -> &'static str {
        "Cup a hand over the top of the neck halfway, with the head level, and bend it to each side"
    }
    fn crest_steps(&self) -> &'static str {
        "What the hand finds"
    }
    fn crest_drawing(&self) -> &'static str {
        "The neck, as if sliced across"
    }
    fn save_crest(&self) -> &'static str {
        "Save crest"
    }
    fn choose_a_crest(&self) -> &'static str {
        "Choose from 0 to 5 first"
    }
    fn why(&self) -> &'static str {
        "Why"
    }
}
