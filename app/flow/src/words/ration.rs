//! The ration and its balance.

use super::Said;
use tussock_core::limits::{Amount, Nutrient};
use tussock_core::ration::{Dose, Line, RationError, Standing};

/// Words for a ration.
pub trait RationWords {
    /// The state word: "within", "short", "over", "not known".
    fn standing_word(&self, standing: &Standing) -> &'static str;
    /// How a nutrient stands, with its figure: "short by 62 mg".
    fn standing(&self, line: &Line) -> String;
    /// How an amount that is short or over reads: "short by 62 mg".
    fn short_by(&self, nutrient: Nutrient, by: Amount) -> String;
    /// A dose: "450 g a day in 2 feeds".
    fn dose(&self, dose: &Dose) -> Said;
    /// Why a food or a ration was refused.
    fn ration_error(&self, error: &RationError) -> String;
}
