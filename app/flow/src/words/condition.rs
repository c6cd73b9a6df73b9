//! The labels of the walk-round and of the crest.

use crate::views::condition::Summary;
use tussock_core::assess::Site;
use tussock_core::units::LocalDate;

/// What the walk-round and the crest say.
pub trait ConditionWords {
    /// The place of a site in the walk: "1 of 6".
    fn site_of(&self, number: u8, sites: usize) -> String;
    /// The action that goes on to a site.
    fn next_site(&self, site: Site) -> String;
    /// The action that goes on to the summary.
    fn to_summary(&self) -> &'static str;
    /// The pad, for screen readers.
    fn score_keys(&self) -> &'static str;
    /// A key.
    fn half_less(&self) -> &'static str;
    /// A key.
    fn half_more(&self) -> &'static str;
    /// A key.
    fn skip(&self) -> &'static str;
    /// A drawing: the site sliced, without a step.
    fn drawing(&self, site: Site) -> String;
    /// Nothing is chosen yet.
    fn choose_a_step(&self) -> &'static str;
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
    fn picture_key(&self, compared: bool) -> &'static str;
    /// The sentence of the crest.
    fn how_is_the_crest(&self, name: &str) -> String;
    /// Where to lay the hand.
    fn crest_hand(&self) -> &'static str;
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
