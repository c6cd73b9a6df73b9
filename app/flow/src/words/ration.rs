//! The ration and its balance.

use super::Said;
use tussock_core::limits::{Amount, Nutrient};
use tussock_core::ration::{
    Content, DayStarch, Dose, FoodClass, ForageVerdict, LabelField, LabelFinding, LabelUnit, Line,
    RationError, Standing, TypicalFood,
};

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
    /// A food of the catalogue: "Beet pulp without molasses".
    fn typical_food(&self, food: TypicalFood) -> &'static str;
    /// A class of foods: "Fibre".
    fn food_class(&self, class: FoodClass) -> &'static str;
    /// What is said of a food: "Sugar and starch".
    fn content(&self, content: Content) -> &'static str;
    /// The unit of a line of a label: "mg in a serving".
    fn label_unit(&self, unit: LabelUnit) -> &'static str;
    /// A field of a label that is not a line: "What a serving weighs".
    fn label_field(&self, field: LabelField) -> &'static str;
    /// What is wrong with a label, and what it may have been meant to say.
    fn label_finding(&self, finding: &LabelFinding) -> Said;
    /// How much forage there is, against its floor.
    fn forage_verdict(&self, verdict: ForageVerdict) -> Said;
    /// How the starch of all buckets stands to the limit of a day.
    fn day_starch(&self, verdict: DayStarch) -> String;
    /// Why a food or a ration was refused.
    fn ration_error(&self, error: &RationError) -> String;
}
