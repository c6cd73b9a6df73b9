//! The labels of the times at which somebody comes.

use crate::forms::visits::Wrong;

/// What the screen of the visits says.
pub trait VisitsWords {
    /// The sentence, and the quiet link to it.
    fn when_somebody_comes(&self) -> &'static str;
    /// A field, by its number from 1.
    fn visit(&self, number: usize) -> String;
    /// What a field understands, and what an empty one means.
    fn visit_hint(&self) -> &'static str;
    /// What follows from them.
    fn plans_follow_visits(&self) -> &'static str;
    /// The action.
    fn save_visits(&self) -> &'static str;
    /// What is wrong.
    fn visits_wrong(&self, wrong: &Wrong) -> String;
}
