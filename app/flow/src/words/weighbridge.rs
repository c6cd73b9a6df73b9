//! The labels of weighbridge day.

use tussock_core::units::{BodyMass, LocalDate};

/// What weighing all animals one after another says.
pub trait WeighbridgeWords {
    /// Leads there.
    fn weighbridge_day(&self) -> &'static str;
    /// The sentence: how many are weighed.
    fn weighed_of(&self, saved: usize, all: usize) -> String;
    /// How it is done, once.
    fn line_by_line(&self) -> &'static str;
    /// The table.
    fn all_on_the_scale(&self) -> &'static str;
    /// The heads of the table: what is typed, the last time, today.
    fn weighbridge_heads(&self) -> [&'static str; 3];
    /// The last weight from a scale before today.
    fn last_on_scale(&self, last: Option<(LocalDate, BodyMass)>) -> String;
    /// What is saved today.
    fn saved_today(&self, saved: Option<BodyMass>) -> String;
    /// Saves what is typed and not saved yet, and goes back to the list.
    fn finish_weighing(&self) -> &'static str;
    /// A line holds what is not saved.
    fn some_lines_open(&self) -> &'static str;
}
