//! Changing over to another ration.

use super::Said;
use crate::views::change_over::{Change, Days};
use tussock_core::limits::Nutrient;

/// What changing over says.
pub trait ChangeOverWords {
    /// What the screen is, at the right of its head.
    fn changing_over(&self) -> &'static str;
    /// The sentence: "Day 5 of 21: a quarter of the way".
    fn change_sentence(&self, change: Option<&Change>) -> String;
    /// What is asked: how long it takes.
    fn how_long(&self) -> &'static str;
    /// Two weeks, or three.
    fn weeks(&self, better: bool) -> &'static str;
    /// The days, as a cord.
    fn days_of_the_change(&self) -> &'static str;
    /// The lead of some days: "days 1 to 5".
    fn days_lead(&self, days: &Days) -> String;
    /// What is fed on them.
    fn fed_on(&self, days: &Days) -> String;
    /// The word beside them.
    fn days_word(&self, change: &Change, days: &Days) -> &'static str;
    /// A ceiling is broken on them.
    fn breaks_on(&self) -> &'static str;
    /// On the way it is short of what neither ration is short of.
    fn short_on_the_way(&self, short: &[Nutrient]) -> Said;
    /// No day breaks or lacks what neither ration does.
    fn keeps_every_day(&self) -> Said;
    /// Safety refuses a plan: the amounts stay as they are.
    fn no_change_while_refused(&self) -> Said;
    /// Nothing changes.
    fn nothing_to_change_over(&self) -> &'static str;
    /// What to watch while it changes.
    fn what_to_watch(&self) -> [Said; 2];
    /// The link to the plan that is to be made.
    fn to_the_plan(&self) -> &'static str;
}
