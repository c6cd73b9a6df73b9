//! The labels of the horses' screens.

use tussock_core::units::{Instant, LocalDate, Zone};

/// What the screens beside the animals say.
pub trait HorsesWords {
    /// The place.
    fn horses(&self) -> &'static str;
    /// No animal is there yet.
    fn no_horse_yet(&self) -> &'static str;
    /// So many animals.
    fn how_many(&self, count: usize) -> String;
    /// The action.
    fn add_an_animal(&self) -> &'static str;
    /// The sentence of a new animal.
    fn who_is_it(&self) -> &'static str;
    /// A field.
    fn name(&self) -> &'static str;
    /// A question.
    fn what_is_it(&self) -> &'static str;
    /// A field: height at the withers.
    fn height_label(&self) -> &'static str;
    /// What the height field understands.
    fn height_hint(&self) -> &'static str;
    /// A field: the year of birth.
    fn born(&self) -> &'static str;
    /// What the year field understands.
    fn born_hint(&self) -> &'static str;
    /// The action of a form.
    fn save(&self) -> &'static str;
    /// The action that goes on to the tape.
    fn save_and_weigh(&self) -> &'static str;
    /// The back key.
    fn back(&self) -> &'static str;
    /// What stands after a save.
    fn saved(&self) -> &'static str;
    /// Takes it back.
    fn undo(&self) -> &'static str;
    /// Nothing was saved, and why follows.
    fn not_saved(&self) -> &'static str;
    /// A name is wanted.
    fn name_wanted(&self) -> &'static str;
    /// A choice is wanted.
    fn choice_wanted(&self) -> &'static str;
    /// The sentence of the tape.
    fn tape_or_scale(&self, name: &str) -> String;
    /// By tape.
    fn by_tape(&self) -> &'static str;
    /// By scale.
    fn by_scale(&self) -> &'static str;
    /// How it is weighed.
    fn how_weighed(&self) -> &'static str;
    /// A field: heart girth.
    fn heart_girth(&self) -> &'static str;
    /// How the heart girth is taken.
    fn heart_girth_hint(&self) -> &'static str;
    /// A field: length.
    fn length_label(&self) -> &'static str;
    /// How the length is taken; donkeys have a length of their own.
    fn length_hint(&self, donkey: bool) -> &'static str;
    /// A field: what the scale showed.
    fn scale_weight(&self) -> &'static str;
    /// The action.
    fn save_weight(&self) -> &'static str;
    /// A weight with its band, as the sentence.
    fn weighs(&self, name: &str, kg: &str, either_way: &str) -> String;
    /// It was never weighed.
    fn never_weighed(&self, name: &str) -> String;
    /// Weighed on a day, by what.
    fn weighed(&self, how: &str, day: &str) -> String;
    /// A tag: weigh.
    fn weigh(&self) -> &'static str;
    /// A weight is no dose.
    fn no_dose(&self) -> &'static str;
    /// The draft that was found: the time of today, or the day it was left.
    fn draft_from(&self, at: Instant, today: LocalDate, zone: &dyn Zone) -> String;
    /// Throws the draft away.
    fn throw_draft_away(&self) -> &'static str;
    /// While the disk is read.
    fn opening(&self) -> &'static str;
    /// The records cannot be read.
    fn cannot_read(&self) -> &'static str;
    /// Nothing here is kept: a private window.
    fn vanishes(&self) -> &'static str;
    /// A newer version is there.
    fn newer_version(&self) -> &'static str;
    /// Takes the newer version.
    fn use_it(&self) -> &'static str;
    /// The place bar, for screen readers.
    fn places(&self) -> &'static str;
    /// Opens the way out when the disk does not open.
    fn save_a_copy(&self) -> &'static str;
    /// Tries again.
    fn try_again(&self) -> &'static str;
    /// Why the records cannot be read, and that nothing is deleted.
    fn cannot_read_why(&self) -> &'static str;
    /// The screens behind the first ones have not come.
    fn rest_not_here(&self) -> &'static str;
    /// Why, and what of it.
    fn rest_not_here_why(&self) -> &'static str;
    /// The animal is not there.
    fn not_here(&self) -> &'static str;
}
