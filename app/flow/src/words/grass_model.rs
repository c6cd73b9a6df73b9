//! The labels of what the reckoning of grass rests on.

use super::Said;
use crate::views::grass_model::{Base, TrialRow};
use tussock_core::graze::intake::{Trial, Tried};

/// What the model says of itself.
pub trait GrassModelWords {
    /// The sentence.
    fn grass_model_head(&self) -> &'static str;
    /// What it was tuned to, and what that is worth.
    fn tuned_to_these(&self) -> Said;
    /// The formula in words.
    fn model_in_words(&self) -> &'static str;
    /// The head of the trials, and of the columns.
    fn trials_head(&self) -> &'static str;
    /// The heads of the columns: trial, seen, reckoned, from the least to the most.
    fn trial_columns(&self) -> [&'static str; 4];
    /// A trial.
    fn trial(&self, trial: Trial) -> &'static str;
    /// What was seen.
    fn seen_in_trial(&self, tried: &Tried) -> String;
    /// What the model makes of it.
    fn reckoned_of_trial(&self, tried: &Tried) -> String;
    /// Its ends.
    fn ends_of_trial(&self, tried: &Tried) -> String;
    /// That more was seen than the model's most; `None` where it was not.
    fn beyond_the_most(&self, tried: &Tried) -> Option<String>;
    /// The mark of what was seen, and where it stands.
    fn trial_from(&self, row: &TrialRow) -> [String; 2];
    /// The head of the numbers of the model.
    fn model_numbers(&self) -> &'static str;
    /// Which end is used for what.
    fn ends_in_words(&self) -> &'static str;
    /// The head of the muzzle's.
    fn muzzle_numbers(&self) -> &'static str;
    /// What the muzzle trials are worth.
    fn muzzle_in_words(&self) -> &'static str;
    /// A number.
    fn base(&self, base: Base) -> &'static str;
    /// How much it is.
    fn base_value(&self, base: Base) -> String;
    /// Its mark, and where it stands.
    fn base_from(&self, base: Base) -> [String; 2];
    /// The action.
    fn back_to_the_paddock(&self) -> &'static str;
    /// What is asked of a number on a tap.
    fn number_from_where(&self) -> &'static str;
}
