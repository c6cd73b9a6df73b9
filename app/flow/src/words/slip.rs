//! The slip from one ration to another.

use crate::views::slip::{Change, Line, Of, Slip, Sum};

/// Words for the change slip.
pub trait SlipWords {
    /// The slip, for screen readers.
    fn slip_name(&self) -> &'static str;
    /// What is done: "out", "in", "more", "less", "same".
    fn change(&self, change: Change) -> &'static str;
    /// With what.
    fn slip_of(&self, of: &Of) -> String;
    /// From how much to how much.
    fn slip_amount(&self, line: &Line) -> String;
    /// What that changes of the cost a day: "0.40 less".
    fn slip_cost(&self, line: &Line) -> String;
    /// The sum of a day: "1.92 → 2.01 GBP".
    fn slip_sum(&self, sum: Sum) -> String;
    /// The words before the sum, and before that of a month.
    fn slip_sum_of(&self) -> [&'static str; 2];
    /// Nothing changes, or the cost is not known; `None` when there is nothing to say.
    fn slip_note(&self, slip: &Slip) -> Option<String>;
}
