//! What was really eaten.

use crate::views::ledger::{Day, Week};
use tussock_core::day::{LevelEaten, Shares, Sum};

/// What the screen of the ledger says.
pub trait LedgerWords {
    /// The link to it.
    fn what_was_eaten(&self) -> &'static str;
    /// The sentence of a week.
    fn eaten_in_a_week(&self, week: &Week) -> String;
    /// A sum: "at least 34.2 kg of dry matter", or a band.
    fn ledger_sum(&self, sum: &Sum) -> String;
    /// What the plan meant.
    fn ledger_plan(&self, week: &Week) -> String;
    /// The level that was really fed.
    fn level_eaten(&self, level: &LevelEaten) -> String;
    /// The shares by how they are known.
    fn ledger_shares(&self, shares: &Shares) -> String;
    /// How what was left is known.
    fn ledger_left_shares(&self, shares: &Shares) -> String;
    /// The days, as a list.
    fn ledger_days(&self) -> &'static str;
    /// A day at the right.
    fn ledger_day(&self, day: &Day) -> String;
    /// A day's second line.
    fn ledger_day_known(&self, day: &Day) -> String;
    /// What is known of its grass: how much by a model, or that nobody logged any.
    fn ledger_grass(&self, week: &Week) -> String;
    /// What "at least" means here.
    fn ledger_at_least_why(&self) -> &'static str;
    /// The table.
    fn ledger_table(&self) -> &'static str;
    /// Its columns: day, offered, left, eaten, plan.
    fn ledger_columns(&self) -> [&'static str; 5];
    /// A row of it.
    fn ledger_row(&self, day: &Day) -> Vec<String>;
    /// Its last row.
    fn ledger_week_row(&self, week: &Week) -> Vec<String>;
    /// The way on, from an animal to its plan.
    fn ledger_to_the_plan(&self) -> &'static str;
    /// From a group.
    fn ledger_to_the_group(&self) -> &'static str;
}
