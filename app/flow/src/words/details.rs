//! The labels of an animal's details.

use crate::forms::details::Field;

/// What the details say.
pub trait DetailsWords {
    /// The sentence.
    fn details_of(&self, name: &str) -> String;
    /// The label of a field.
    fn details_label(&self, field: Field) -> &'static str;
    /// A line under the label.
    fn details_hint(&self, field: Field) -> Option<&'static str>;
    /// "Not known".
    fn not_known(&self) -> &'static str;
    /// What an insulin test said.
    fn insulin_said(&self, dysregulated: Option<bool>) -> &'static str;
    /// What is wrong with a day.
    fn day_wanted(&self) -> &'static str;
    /// Something above is wrong.
    fn look_above(&self) -> &'static str;
    /// The action.
    fn save_details(&self) -> &'static str;
}
