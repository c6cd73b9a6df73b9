//! The labels of the look-over.

use super::SheetLine;
use crate::forms::look_over::{Flag, SeenEating};
use crate::views::not_eating::NotEating;
use tussock_core::animal::Health;
use tussock_core::plan::Signs;
use tussock_core::units::LocalDate;

/// What the look-over says.
pub trait LookOverWords {
    /// The sentence.
    fn look_over(&self, name: &str) -> String;
    /// The key that says all was looked at and normal.
    fn all_normal(&self) -> &'static str;
    /// What that key means.
    fn all_normal_means(&self) -> &'static str;
    /// An answer.
    fn not_looked_at(&self) -> &'static str;
    /// The action.
    fn finish_look_over(&self) -> &'static str;
    /// What leaving lines does.
    fn lines_left(&self, count: usize) -> String;
    /// The head of what else there is.
    fn anything_else(&self) -> &'static str;
    /// The keys of what is rung about at once.
    fn at_once(&self) -> &'static str;
    /// That it is rung about before signs show.
    fn at_once_hint(&self) -> &'static str;
    /// The same as what the vet is told: signs, what else is said, the readings, and what stands behind.
    fn signs_sheet(
        &self,
        view: &NotEating,
        signs: &Signs,
        health: &Health,
        readings: [Option<f64>; 3],
    ) -> Vec<SheetLine>;
    /// The quiet link to where the vet's number is written down.
    fn write_the_number_down(&self) -> &'static str;
    /// A reading that cannot be stands in the way of saving.
    fn reading_wrong(&self) -> &'static str;
    /// The keys that stand on or off.
    fn flags(&self) -> &'static str;
    /// A key that is not held, or since today.
    fn flag(&self, flag: Flag) -> &'static str;
    /// A key that is held since another day.
    fn flag_held(&self, flag: Flag) -> &'static str;
    /// The key that says that it came again today.
    fn flag_again(&self, flag: Flag) -> String;
    /// The day of a flag that is held.
    fn flag_on(&self, day: LocalDate) -> String;
    /// Whether it eats.
    fn does_it_eat(&self) -> &'static str;
    /// An answer.
    fn eats(&self) -> &'static str;
    /// An answer.
    fn off_its_feed(&self) -> &'static str;
    /// When it was last seen eating.
    fn last_seen_eating(&self) -> &'static str;
    /// An answer.
    fn seen_eating(&self, seen: SeenEating) -> String;
    /// A handful of dry hay held out.
    fn a_handful(&self) -> &'static str;
    /// Whether it looks dull.
    fn is_it_dull(&self) -> &'static str;
}
