//! What somebody saw of a paddock's grass on a day.

use super::base::{Count, Millimetres};
use crate::animal::Answer;
use crate::graze::sward::Leaf;
use crate::log::stored::{twin, words};

words!(Leaf {
    BelowAnkle = "below_ankle",
    Ankle = "ankle",
    AboveAnkle = "above_ankle",
});

twin! {
    /// The readings of a plate that is set down on the sward.
    PlateV1 {
        /// What the counter said, reading by reading, in whole clicks.
        clicks: Vec<Count>,
    }
}
twin! {
    /// The grass of the paddock that the record is about, as it was seen at the record's instant.
    SwardV1 {
        /// The leaf against a boot, when somebody looked.
        leaf: Option<Leaf>,
        /// The grass is in seed.
        seeding: Answer,
        /// The heights that were measured.
        heights_mm: Vec<Millimetres>,
        /// The readings of a plate, when one was used.
        plate: Option<PlateV1>,
        /// Remarks.
        note: Option<String>,
    }
}
