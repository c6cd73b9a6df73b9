//! What is said where lots meet: one opened in place of another, two compared, a night without one.

use crate::forms::open_lot::Refused;
use crate::views::changeover::{Changeover, Other};
use crate::views::compare::{Compared, Pair};
use crate::views::tonight::{ForOne, Night};
use crate::words::Said;
use tussock_core::forage::{NotInPlace, Tonight};

/// What is said of lots beside each other.
pub trait LotsWords {
    /// Opens the list of the other lots.
    fn open_another_hay(&self) -> &'static str;
    /// Closes it.
    fn leave_this_hay(&self) -> &'static str;
    /// The head over the other lots.
    fn other_hays(&self) -> &'static str;
    /// There is no other lot.
    fn no_other_hay(&self) -> &'static str;
    /// The key that opens a lot: "Open Lane field".
    fn open_hay(&self, name: &str) -> String;
    /// Its second line: its sugar for those who would eat it, or why it cannot be opened.
    fn other_line(&self, other: &Other) -> String;
    /// Why a lot cannot stand in for another.
    fn not_in_place(&self, why: NotInPlace) -> String;
    /// Why a lot was not opened.
    fn not_opened(&self, why: &Refused) -> String;
    /// That it is changed over slowly, before it is opened.
    fn change_over_slowly(&self, days: [i64; 2]) -> String;
    /// A lot that stands in for the one that the plan names.
    fn in_place_of(&self, changeover: &Changeover) -> Said;
    /// Its sugar, where it must be said.
    fn sugar_in_place(&self, changeover: &Changeover) -> Option<String>;

    /// Leads to the comparison.
    fn compare_two(&self) -> &'static str;
    /// The sentence of the comparison before two are chosen.
    fn which_two(&self) -> &'static str;
    /// The two choices.
    fn one_hay(&self) -> &'static str;
    /// The second of them.
    fn other_hay(&self) -> &'static str;
    /// There are not two lots.
    fn not_two_hays(&self) -> &'static str;
    /// How two lots stand to each other, as the sentence of the screen.
    fn compared(&self, pair: &Pair) -> Said;
    /// What is known of the sugar of one of them.
    fn compared_sugar(&self, lot: &Compared) -> String;
    /// What is known of its cost.
    fn compared_cost(&self, lot: &Compared) -> String;
    /// What is known of its stock.
    fn compared_stock(&self, lot: &Compared) -> String;
    /// The names of those three.
    fn compared_heads(&self) -> [&'static str; 3];

    /// The sentence of the night: never one with nothing.
    fn night_sentence(&self, night: &Night) -> String;
    /// What the figures are of.
    fn night_figures(&self, night: &Night) -> &'static str;
    /// Nobody eats it.
    fn night_for_nobody(&self) -> &'static str;
    /// What is missing for an animal.
    fn missing_tonight(&self, ways: &Tonight) -> String;
    /// The figures cannot be worked out, and what is missing.
    fn night_not_known(&self) -> &'static str;
    /// The three ways out: name, figure, and what must be known.
    fn night_ways(&self, one: &ForOne, ways: &Tonight) -> Vec<(String, String, String)>;
    /// What holds for all of it.
    fn night_rules(&self) -> Vec<&'static str>;
    /// The action: back to the lot.
    fn to_the_hay(&self) -> &'static str;
}
