//! What is said of the stock of hay: what is left, how long it lasts, what it costs, what to watch in store.

use crate::forms::left_of_lot::{In, Wrong};
use crate::views::stock::{Eater, Stock, StockRow, StorageNote, Unknown};
use crate::words::Said;
use tussock_core::forage::{CostBand, Lasting};
use tussock_core::units::LocalDate;

/// What the shed and the screen of a lot say of its stock.
pub trait StockWords {
    /// What stands at the right of a row: "31 days".
    fn days_left(&self, stock: &Stock) -> Option<String>;
    /// The second line of a row: "670 kg, order by Sun 24 May, 0.21 a kg of dry matter, sugar not proven (3 in 10)".
    fn stock_line(&self, row: &StockRow) -> String;
    /// The head over what is left.
    fn stock_head(&self) -> &'static str;
    /// What is left, with its ends.
    fn left_line(&self, stock: &Stock) -> String;
    /// Why nobody knows what is left, and what to do.
    fn left_unknown(&self, why: Unknown) -> String;
    /// What there was and what went since.
    fn went_line(&self, stock: &Stock) -> String;
    /// Why what is left should be counted; nothing where it need not be.
    fn count_because(&self, stock: &Stock) -> Vec<String>;
    /// What a bale weighs, with its spread and error.
    fn bale_line(&self, stock: &Stock) -> String;
    /// What a slice weighs, with its spread.
    fn slice_line(&self, stock: &Stock) -> String;
    /// How long it lasts, with its ends and what goes in a day.
    fn lasts_line(&self, stock: &Stock) -> String;
    /// By when to order, and what that goes by.
    fn order_line(&self, lasting: &Lasting, today: LocalDate) -> String;
    /// What it costs as it is eaten, with its ends.
    fn cost_line(&self, cost: &CostBand) -> String;
    /// What the cost goes by.
    fn cost_by(&self) -> String;
    /// The cost is not known, and what is missing.
    fn cost_unknown(&self, priced: bool) -> &'static str;
    /// The head over those who eat it.
    fn who_eats_it(&self) -> &'static str;
    /// Nobody's plan feeds it.
    fn nobody_eats_it(&self) -> &'static str;
    /// The second line of one who eats it.
    fn eater_line(&self, eater: &Eater) -> String;
    /// What goes a day, at the right: "7.2 kg a day".
    fn eater_a_day(&self, eater: &Eater) -> String;
    /// Something to watch in store.
    fn storage_note(&self, note: &StorageNote) -> Said;
    /// Whether that is a caution rather than a line.
    fn storage_cautions(&self, note: &StorageNote) -> bool;
    /// Leads to the count.
    fn count_what_is_left(&self) -> &'static str;
    /// Leads to the comparison.
    fn compare_hays(&self) -> &'static str;
    /// Leads to the night without hay.
    fn hay_runs_out(&self) -> &'static str;
    /// The sentence of the count.
    fn how_much_is_left(&self, name: &str) -> String;
    /// A question: bales or a weight.
    fn counted_in(&self) -> &'static str;
    /// Bales, or a weight.
    fn amount_in(&self, of: In) -> &'static str;
    /// A field: so much is left.
    fn left_label(&self) -> &'static str;
    /// Its hint.
    fn left_hint(&self) -> &'static str;
    /// What a count does.
    fn count_starts_anew(&self) -> &'static str;
    /// The action.
    fn save_count(&self) -> &'static str;
    /// What is wrong with an amount.
    fn amount_wrong(&self, wrong: &Wrong) -> String;
}
