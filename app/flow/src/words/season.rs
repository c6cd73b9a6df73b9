//! The year of grass.

use super::Said;
use crate::views::season::{ByFlush, Leaner, Season};
use tussock_core::graze::season::Noted;
use tussock_core::graze::season::{Band, UntilFlush, Watch, YearPart};
use tussock_core::log::bodies::SeasonNoteV1;

/// What the season says.
pub trait SeasonWords {
    /// The screen.
    fn season(&self) -> &'static str;
    /// The sentence.
    fn season_sentence(&self, season: &Season) -> String;
    /// A part of the year.
    fn year_part(&self, part: YearPart) -> &'static str;
    /// What is looked at.
    fn watch(&self, watch: Watch) -> Said;
    /// The head over what is looked at now.
    fn watch_now(&self) -> &'static str;
    /// The head over what is looked at in the part that comes.
    fn watch_next(&self, part: YearPart) -> String;
    /// The picture, for screen readers.
    fn year_picture(&self, season: &Season) -> String;
    /// The words that open its table.
    fn year_numbers(&self) -> &'static str;
    /// The first letters of the months.
    fn months(&self) -> [&'static str; 12];
    /// The columns: part, from, to, by what.
    fn year_columns(&self) -> [&'static str; 4];
    /// A row.
    fn year_row(&self, band: &Band) -> Vec<String>;
    /// What the calendar is.
    fn year_why(&self) -> Said;
    /// How long until the flush.
    fn until_flush(&self, until: UntilFlush) -> String;
    /// The aim before the flush.
    fn leaner_aim(&self) -> Said;
    /// The head over the animals.
    fn leaner(&self) -> &'static str;
    /// The word of the state of one.
    fn leaner_word(&self, by_flush: ByFlush) -> &'static str;
    /// Its line.
    fn leaner_line(&self, leaner: &Leaner, until: UntilFlush) -> String;
    /// The head over the notes.
    fn season_notes(&self) -> &'static str;
    /// There is none.
    fn no_season_note(&self) -> &'static str;
    /// A note.
    fn season_note(&self, note: &SeasonNoteV1) -> String;
    /// What happened.
    fn season_event(&self, what: Noted) -> &'static str;
    /// What is asked of a new note.
    fn what_was_seen(&self) -> &'static str;
    /// The day of a note.
    fn note_day(&self) -> &'static str;
    /// How it is typed.
    fn note_day_hint(&self) -> &'static str;
    /// The remark.
    fn note_remark(&self) -> &'static str;
    /// Nothing was chosen.
    fn note_what_wanted(&self) -> &'static str;
    /// The action.
    fn save_note(&self) -> &'static str;
}
