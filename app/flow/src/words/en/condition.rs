//! The walk-round and the crest, in English.

use super::English;
use super::fields::small;
use super::numbers::up_to;
use crate::forms::condition::WhoWrong;
use crate::views::condition::{Early, Given, Person, Summary, Two};
use crate::words::{AssessWords, BesideWords, ConditionWords, LogWords, UnitWords};
use tussock_core::assess::published::CONDITION_EVERY;
use tussock_core::assess::{ConditionScale, Site};
use tussock_core::units::LocalDate;

/// A difference as it is said.
fn by(change: f64) -> String {
    match up_to(change.abs(), 1).as_str() {
        "0.5" => "half".to_owned(),
        figure => figure.to_owned(),
    }
}

impl ConditionWords for English {
    fn site_of(&self, number: u8, sites: usize) -> String {
        format!("{number} of {sites}")
    }
    fn next_site(&self, site: Site) -> String {
        format!("Next: {}", small(self.site(site)))
    }
    fn to_summary(&self, scale: ConditionScale) -> &'static str {
        match scale {
            ConditionScale::NineStep => "Next: all six",
            ConditionScale::FiveStep => "Next: all three",
        }
    }
    fn score_keys(&self, scale: ConditionScale) -> String {
        format!("Score from {}", self.condition_scale(scale))
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
    fn choose_a_step(&self, scale: ConditionScale) -> String {
        format!(
            "Feel first, then choose from {}",
            self.condition_scale(scale)
        )
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
        let value = match summary.scale {
            ConditionScale::NineStep => up_to(summary.value, 1),
            ConditionScale::FiveStep => format!("{} of 0 to 5", up_to(summary.value, 1)),
        };
        if summary.other.is_some() {
            return format!("{value}, the first on this scale");
        }
        let Some(changes) = &summary.changes else {
            return format!("{value}, the first score");
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
    fn picture_key(&self, scale: ConditionScale, compared: bool) -> String {
        let bounds = scale.bounds();
        let ends = format!(
            "From {} at the left to {}.",
            up_to(bounds.min, 0),
            up_to(bounds.max, 0)
        );
        if compared {
            format!("{ends} Filled: now. Stroke: last time.")
        } else {
            ends
        }
    }
    fn scored_by(&self, initials: Option<&str>, scale: ConditionScale) -> String {
        let scale = self.condition_scale(scale);
        match initials {
            Some(initials) => format!("{initials} scores, from {scale}."),
            None => format!("Scored from {scale}."),
        }
    }
    fn change_who_or_scale(&self) -> &'static str {
        "Who scores, which scale"
    }
    fn who_and_which_scale(&self, name: &str) -> String {
        format!("Who scores {name}, and on which scale?")
    }
    fn which_scale(&self) -> &'static str {
        "Scale"
    }
    fn scale_with_sites(&self, scale: ConditionScale) -> &'static str {
        match scale {
            ConditionScale::NineStep => "1 to 9, six sites",
            ConditionScale::FiveStep => "0 to 5, three sites",
        }
    }
    fn scale_from(&self, scale: ConditionScale, usual: bool) -> String {
        let source = match scale {
            ConditionScale::NineStep => "Henneke and others 1983",
            ConditionScale::FiveStep => "Carroll and Huntington 1988",
        };
        match (usual, scale) {
            (false, _) => source.to_owned(),
            (true, ConditionScale::NineStep) => format!("{source}. Usual here for this one."),
            (true, ConditionScale::FiveStep) => format!(
                "{source}. Usual here for donkeys and mules; that is our own judgement, the scale was made for horses."
            ),
        }
    }
    fn one_scale(&self) -> &'static str {
        "Stay on one scale: scores of two are never turned into each other and never compared."
    }
    fn who_scores(&self) -> &'static str {
        "Who scores"
    }
    fn scorer(&self, person: &Person) -> String {
        format!("{}, {}", person.initials, small(self.role(person.role)))
    }
    fn somebody_new(&self) -> &'static str {
        "Somebody new"
    }
    fn who_not_said(&self) -> &'static str {
        "Not said"
    }
    fn initials_label(&self) -> &'static str {
        "Initials"
    }
    fn initials_hint(&self) -> &'static str {
        "Typed once: they stand beside each score of this person."
    }
    fn role_here(&self) -> &'static str {
        "What this person is here"
    }
    fn who_wrong(&self, wrong: WhoWrong) -> &'static str {
        match wrong {
            WhoWrong::Initials => "Type the initials, so that it can be told whose score is whose.",
            WhoWrong::Role => "Choose what this person is here.",
        }
    }
    fn start_scoring(&self) -> &'static str {
        "Score the first site"
    }
    fn scored_early(&self, early: &Early) -> String {
        if early.again {
            return "You scored it today already. A new score stands in its place.".to_owned();
        }
        let enough = if early.enough == *CONDITION_EVERY {
            "Monthly is enough"
        } else {
            "Two weeks after the first is soon enough"
        };
        format!(
            "Scored {}. {enough}: condition lags behind weight by weeks, and girths show a change sooner.",
            self.ago(early.days)
        )
    }
    fn somebody_else_scored(&self) -> &'static str {
        "Somebody else scored it today. You see that score when yours is saved."
    }
    fn then_a_second_person(&self) -> &'static str {
        "Save, then a second person scores"
    }
    fn on_the_other_scale(&self, given: &Given) -> String {
        let value = up_to(given.score.value(), 1);
        let day = self.day(given.on);
        match given.on_nine() {
            Some(range) => format!(
                "The last score, on {day}, was {value} of 0 to 5. That stands for about {} of 1 to 9, and is not compared.",
                self.condition_figure(range)
            ),
            None => format!(
                "The last score, on {day}, was {value} of 1 to 9. It is not turned into one of 0 to 5, and not compared."
            ),
        }
    }
    fn two_scored(&self, two: &Two) -> String {
        let value = up_to(two.second.score.value(), 1);
        let Ok(apart) = &two.apart else {
            return format!("{value}, and the other on another scale");
        };
        match apart.as_slice() {
            [] => format!("{value}, you agree at every site"),
            [(site, apart)] => format!(
                "{value}, you differ by {} at the {}",
                by(*apart),
                small(self.site(*site))
            ),
            several => {
                let most = several.iter().map(|(_, apart)| *apart).fold(0.0, f64::max);
                format!(
                    "{value}, you differ at {}, by up to {}",
                    self.count(several.len(), "site", "sites"),
                    by(most)
                )
            }
        }
    }
    fn whose_is_whose(&self, two: &Two) -> String {
        if two.apart.is_err() {
            let of = |given: &Given| {
                let whose = given.initials.as_deref().unwrap_or("Not said who");
                let value = up_to(given.score.value(), 1);
                let scale = self.condition_scale(given.score.scale());
                format!("{whose}: {value} of {scale}.")
            };
            return format!(
                "{} {} Scores of two scales are not compared.",
                of(&two.second),
                of(&two.first)
            );
        }
        let of = |given: &Given| {
            let whose = given.initials.as_deref().unwrap_or("not said who");
            format!("{whose}, {}", up_to(given.score.value(), 1))
        };
        format!("Filled: {}. Outlined: {}.", of(&two.second), of(&two.first))
    }
    fn whose(&self, given: &Given) -> String {
        given
            .initials
            .clone()
            .unwrap_or_else(|| "Not said who".to_owned())
    }
    fn both_count(&self) -> &'static str {
        "Both stand. Until it is scored again, a plan reckons with the range that holds both: a floor with the lower, a ceiling with the higher."
    }
    fn on_with_it(&self) -> &'static str {
        "Go on beside it"
    }
    fn see_two(&self) -> &'static str {
        "What two people scored"
    }
    fn how_is_the_crest(&self, name: &str) -> String {
        format!("Score the crest of {name}")
    }
    fn crest_hand(&self) -> &'static str {
        "Cup a hand over the top of the neck halfway, with the head level, and bend it to each side"
    }
    fn crest_coat(&self) -> &'static str {
        "Part the coat and feel down to the fat: a winter coat raises the score. Scored apart from condition, which does not change what it says."
    }
    fn last_crest(&self, score: u8, on: LocalDate) -> String {
        format!("Last time {score}, {}", self.day(on))
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
