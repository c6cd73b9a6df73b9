//! The trend of a weight.

use super::Said;
use crate::views::weight::{Asks, Trend, Weight};
use tussock_core::progress::{Forecast, Judged};
use tussock_core::units::LocalDate;

/// What the screen of a weight says.
pub trait WeightWords {
    /// The link to it.
    fn weight_so_far(&self) -> &'static str;
    /// The sentence: "Losing 2.0 kg a week".
    fn weight_sentence(&self, weight: &Weight) -> String;
    /// How sure that is and how it stands to what is wanted; `None` while there is no rate.
    fn weight_pace(&self, trend: &Trend) -> Option<String>;
    /// What it weighs.
    fn weighs_now(&self, trend: &Trend) -> String;
    /// Until when nothing is said, for the gut settles.
    fn gut_settles(&self, until: LocalDate) -> Said;
    /// What is asked: the first line and its reason.
    fn weight_asks(&self, asks: &Asks) -> Said;
    /// The word of the state of what is asked.
    fn weight_asks_word(&self, asks: &Asks) -> &'static str;
    /// The word of the state of the target; without a forecast there is none.
    fn target_word(&self, forecast: Option<&Forecast>) -> &'static str;
    /// The first line of the tag of the target: "Target 290 to 305 kg".
    fn target_tag(&self, trend: &Trend) -> Option<String>;
    /// When it is reached.
    fn forecast(&self, forecast: &Forecast) -> String;
    /// There is no target, and why.
    fn no_target(&self) -> Said;
    /// Condition lags behind weight, and the day from which it is scored again.
    fn condition_lags(&self, weight: &Weight) -> Said;
    /// The picture, for screen readers.
    fn weight_picture(&self, weight: &Weight) -> String;
    /// The lines under the picture: what its marks are.
    fn weight_marks(&self) -> &'static str;
    /// The table.
    fn weight_table(&self) -> &'static str;
    /// Its columns: day, read, on the trend, with what, remarks.
    fn weight_columns(&self) -> [&'static str; 5];
    /// A row of it.
    fn weight_row(&self, read: &Judged) -> Vec<String>;
    /// What a trend is worth.
    fn weight_why(&self) -> Said;
    /// The primary action.
    fn add_a_weight(&self) -> &'static str;
}
