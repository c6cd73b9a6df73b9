//! The labels of the vet's word.

use crate::forms::vet::How;
use tussock_core::animal::VetWord;

/// What the form of the vet's word says.
pub trait VetWords {
    /// The sentence of the screen.
    fn what_the_vet_said(&self, name: &str) -> String;
    /// A question.
    fn about_what(&self) -> &'static str;
    /// A field: the lowest level.
    fn lowest_level_label(&self) -> &'static str;
    /// What it is a percentage of.
    fn lowest_level_hint(&self) -> &'static str;
    /// Its unit.
    fn percent_sign(&self) -> &'static str;
    /// A field: the vet.
    fn vet_label(&self) -> &'static str;
    /// A field: the practice.
    fn practice_label(&self) -> &'static str;
    /// May be left out.
    fn may_be_left_out(&self) -> &'static str;
    /// A question.
    fn how_given(&self) -> &'static str;
    /// "By telephone", as it is kept.
    fn given_by(&self, how: How) -> &'static str;
    /// A field: the day it was given.
    fn given_label(&self) -> &'static str;
    /// What stands when it is left out.
    fn given_hint(&self) -> &'static str;
    /// A field: its last day.
    fn expires_label(&self) -> &'static str;
    /// What stands when it is left out.
    fn expires_hint(&self) -> &'static str;
    /// The action.
    fn save_vets_word(&self) -> &'static str;
    /// No vet is named.
    fn vet_wanted(&self) -> &'static str;
    /// The day cannot be read, or is still to come.
    fn given_wrong(&self) -> &'static str;
    /// The last day cannot be read, or lies before the first.
    fn expires_wrong(&self) -> &'static str;
    /// That only what a vet really said is written down.
    fn only_what_was_said(&self) -> &'static str;
    /// The head of the words that were written down.
    fn words_written_down(&self) -> &'static str;
    /// A word in full, as it is printed and read: what, by whom, how and when, until when, and what then.
    fn word_in_full(&self, word: &VetWord, holds: bool) -> String;
    /// The vet no longer says so.
    fn taken_back(&self) -> &'static str;
}
