//! Whether a laboratory test pays.

use crate::forms::worth::{Asked, NotAsked};
use tussock_core::forage::{Branch, Cost, Doing, Otherwise, Verdict, Way, Worth, WorthNote};

/// What the screen says.
pub trait WorthWords {
    /// The link to it, and what it asks.
    fn does_a_test_pay(&self) -> &'static str;
    /// The sentence while there is no answer yet.
    fn does_a_test_pay_of(&self, name: &str) -> String;
    /// Why it is not asked.
    fn test_not_asked(&self, why: NotAsked) -> &'static str;
    /// A field.
    fn worth_label(&self, asked: Asked) -> &'static str;
    /// Its hint.
    fn worth_hint(&self, asked: Asked) -> &'static str;
    /// The currency of all prices.
    fn worth_currency(&self) -> &'static str;
    /// What becomes of this hay when tested hay is bought.
    fn worth_instead(&self) -> &'static str;
    /// An answer to that.
    fn worth_instead_is(&self, instead: Otherwise) -> &'static str;
    /// The answer in one sentence.
    fn worth(&self, worth: &Worth) -> String;
    /// The list of the three ways.
    fn worth_ways(&self) -> &'static str;
    /// A way.
    fn worth_way(&self, way: Way) -> &'static str;
    /// What it costs.
    fn worth_cost(&self, cost: &Cost, worth: &Worth) -> String;
    /// The hours in it.
    fn worth_hours(&self, cost: &Cost) -> String;
    /// No price of tested hay.
    fn worth_not_known(&self) -> &'static str;
    /// A branch as one sentence.
    fn worth_branch(&self, verdict: Verdict, branch: &Branch, worth: &Worth) -> String;
    /// What is done in it.
    fn worth_doing(&self, doing: Doing) -> &'static str;
    /// Beside the answer.
    fn worth_note(&self, note: WorthNote) -> &'static str;
    /// The way back.
    fn back_to_the_hay(&self) -> &'static str;
}
