//! What stands on a paddock: every finding and refusal of the sward, and the labels of the readings.

use crate::forms::readings::{Summed, Way, Wrong};
use crate::views::fields::{By, Regrows};
use crate::words::Said;
use tussock_core::graze::GrazeError;
use tussock_core::graze::sward::{GrowthSeason, Leaf, Stand, SwardFinding};
use tussock_core::limits::Ends;
use tussock_core::units::{DryMatter, SwardMass};

/// What is said of a sward.
pub trait SwardWords {
    /// The leaf against the boot: "below the ankle".
    fn leaf(&self, leaf: Leaf) -> &'static str;
    /// The same on its key.
    fn leaf_key(&self, leaf: Leaf) -> &'static str;
    /// How densely it stands.
    fn stand(&self, stand: Stand) -> &'static str;
    /// What a sward asks for, or what its number does not hold.
    fn sward_finding(&self, finding: &SwardFinding) -> Said;
    /// A season of growth.
    fn growth_season(&self, season: GrowthSeason) -> &'static str;
    /// When it is back and how long it rests in a season: two cells of a table.
    fn regrows(&self, regrows: &Regrows) -> [String; 2];
    /// The heads of that table.
    fn regrows_heads(&self) -> [&'static str; 3];
    /// What was seen: "leaf at the ankle", "11 cm by 30 readings".
    fn seen_by(&self, by: &By) -> String;
    /// What stands above what is left, for a hectare.
    fn stands(&self, available: Ends<SwardMass>) -> String;
    /// The same on the whole paddock.
    fn stands_on_all(&self, whole: Ends<DryMatter>) -> String;
    /// Why something of grass was refused.
    fn graze_error(&self, error: &GrazeError) -> String;
    /// The line over the slot of the readings.
    fn reading_line(&self, way: Way, nth: usize) -> String;
    /// The way of reading, as a question.
    fn way_asked(&self) -> &'static str;
    /// An answer.
    fn way(&self, way: Way) -> &'static str;
    /// The unit in the slot.
    fn way_unit(&self, way: Way) -> &'static str;
    /// What the readings come to.
    fn summed(&self, summed: &Summed) -> String;
    /// How many are still asked for; that there are enough where none is.
    fn readings_left(&self, left: usize) -> String;
    /// How to read.
    fn how_to_read(&self, way: Way) -> &'static str;
    /// Why a reading is not taken.
    fn reading_not_taken(&self, wrong: &Wrong) -> String;
    /// The key that takes a reading.
    fn next_reading(&self) -> &'static str;
    /// The link that takes the last one back.
    fn take_back_last(&self) -> &'static str;
    /// The action that saves them, with how many.
    fn save_readings(&self, count: usize) -> String;
    /// What the readings are for.
    fn readings_of(&self, name: &str) -> String;
}
