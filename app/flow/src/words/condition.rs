//! The labels of the walk-round and of the crest.

use crate::forms::condition::WhoWrong;
use crate::views::condition::{Early, Given, Person, Summary, Two};
use tussock_core::assess::{ConditionScale, Site};
use tussock_core::units::LocalDate;

/// What the walk-round and the crest say.
pub trait ConditionWords {
    /// The place of a site in the walk: "1 of 6".
    fn site_of(&self, number: u8, sites: usize) -> String;
    /// The action that goes on to a site.
    fn next_site(&self, site: Site) -> String;
    /// The action that goes on to the summary.
    fn to_summary(&self, scale: ConditionScale) -> &'static str;
    /// The pad, for screen readers.
    fn score_keys(&self, scale: ConditionScale) -> String;
    /// A key.
    fn half_less(&self) -> &'static str;
    /// A key.
    fn half_more(&self) -> &'static str;
    /// A key.
    fn skip(&self) -> &'static str;
    /// A drawing: the site sliced, without a step.
    fn drawing(&self, site: Site) -> String;
    /// Nothing is chosen yet.
    fn choose_a_step(&self, scale: ConditionScale) -> String;
    /// A site that was left out.
    fn left_out(&self) -> &'static str;
    /// What is chosen: "6.5".
    fn step_figure(&self, value: f64) -> String;
    /// What the site had last time.
    fn last_time(&self, value: f64, on: LocalDate) -> String;
    /// The summary: "6.5, up half at the neck, the rest as before".
    fn summary(&self, summary: &Summary) -> String;
    /// The sentence while too few sites are scored.
    fn not_scored_yet(&self) -> &'static str;
    /// A small difference says nothing.
    fn within_noise(&self) -> &'static str;
    /// The table under the picture.
    fn all_numbers(&self) -> &'static str;
    /// The table's caption.
    fn site_by_site(&self) -> &'static str;
    /// A column.
    fn site_column(&self) -> &'static str;
    /// A column.
    fn now_column(&self) -> &'static str;
    /// A column.
    fn last_column(&self) -> &'static str;
    /// The action.
    fn save_condition(&self) -> &'static str;
    /// The key under the picture: the tag is now, the stroke last time.
    fn picture_key(&self, scale: ConditionScale, compared: bool) -> String;
    /// Who scores and on which scale, before the first site.
    fn scored_by(&self, initials: Option<&str>, scale: ConditionScale) -> String;
    /// The quiet link that changes either.
    fn change_who_or_scale(&self) -> &'static str;
    /// The sentence over that change.
    fn who_and_which_scale(&self, name: &str) -> String;
    /// The choice of the scale.
    fn which_scale(&self) -> &'static str;
    /// A scale with its sites: "1 to 9, six sites".
    fn scale_with_sites(&self, scale: ConditionScale) -> &'static str;
    /// Where a scale comes from, and whether it is the one that is usual here.
    fn scale_from(&self, scale: ConditionScale, usual: bool) -> String;
    /// That a score stays on its scale.
    fn one_scale(&self) -> &'static str;
    /// The choice of who scores.
    fn who_scores(&self) -> &'static str;
    /// Somebody who may score, on a key.
    fn scorer(&self, person: &Person) -> String;
    /// Somebody who is new here.
    fn somebody_new(&self) -> &'static str;
    /// Nobody says who it is.
    fn who_not_said(&self) -> &'static str;
    /// A field.
    fn initials_label(&self) -> &'static str;
    /// What they are for.
    fn initials_hint(&self) -> &'static str;
    /// What a new person is here.
    fn role_here(&self) -> &'static str;
    /// What is missing of a new person.
    fn who_wrong(&self, wrong: WhoWrong) -> &'static str;
    /// The action of that change.
    fn start_scoring(&self) -> &'static str;
    /// It was scored a short while ago: monthly is enough, and condition lags.
    fn scored_early(&self, early: &Early) -> String;
    /// Somebody else scored it today: it is shown when both are saved.
    fn somebody_else_scored(&self) -> &'static str;
    /// Saves, and hands over to a second person.
    fn then_a_second_person(&self) -> &'static str;
    /// The last score is on the other scale, as a range where one stands for it.
    fn on_the_other_scale(&self, given: &Given) -> String;
    /// Two scores of one day: "6.5, you differ by 1 at the ribs".
    fn two_scored(&self, two: &Two) -> String;
    /// Whose tag is which.
    fn whose_is_whose(&self, two: &Two) -> String;
    /// Whose score it is: the initials, else where nobody said.
    fn whose(&self, given: &Given) -> String;
    /// What the plan reckons with when two scored.
    fn both_count(&self) -> &'static str;
    /// The action after it.
    fn on_with_it(&self) -> &'static str;
    /// The quiet link to what two scored.
    fn see_two(&self) -> &'static str;
    /// The sentence of the crest.
    fn how_is_the_crest(&self, name: &str) -> String;
    /// Where to lay the hand.
    fn crest_hand(&self) -> &'static str;
    /// What a coat does to the score.
    fn crest_coat(&self) -> &'static str;
    /// The crest of last time, told when this one is chosen.
    fn last_crest(&self, score: u8, on: LocalDate) -> String;
    /// The crest as a question.
    fn crest_steps(&self) -> &'static str;
    /// The crest sliced.
    fn crest_drawing(&self) -> &'static str;
    /// The action.
    fn save_crest(&self) -> &'static str;
    /// A choice is wanted.
    fn choose_a_crest(&self) -> &'static str;
    /// What opens a reason.
    fn why(&self) -> &'static str;
}
