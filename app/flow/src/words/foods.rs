//! The labels of foods.

use crate::forms::food::{Field, LineWrong, Wrong};
use crate::views::foods::FoodRow;
use tussock_core::log::bodies::LabelBasis;
use tussock_core::ration::{FoodClass, FromText, KnownNumber, TypicalFood};
use tussock_core::units::PricePerKg;
use tussock_core::units::printed::BasesSaid;

/// What the screens of foods say.
pub trait FoodsWords {
    /// The row of the desk, and the head of the screens.
    fn foods(&self) -> &'static str;
    /// How many of the yard's own there are.
    fn foods_count(&self, own: usize) -> String;
    /// The sentence of the list.
    fn foods_sentence(&self, own: usize) -> String;
    /// The list of the yard's own.
    fn own_foods(&self) -> &'static str;
    /// The catalogue.
    fn typical_foods(&self) -> &'static str;
    /// What the catalogue is, and is not.
    fn typical_foods_mean(&self) -> &'static str;
    /// The second line of a food of the yard: class and where its numbers come from.
    fn food_line(&self, row: &FoodRow) -> String;
    /// The price of a kilogram.
    fn per_kg(&self, price: PricePerKg) -> String;
    /// The action of the list.
    fn add_food(&self) -> &'static str;
    /// The sentence of a typical food.
    fn typical_sentence(&self, food: TypicalFood) -> String;
    /// A number of the catalogue with its unit.
    fn food_number(&self, number: &KnownNumber) -> String;
    /// Its work and place.
    fn food_number_from(&self, number: &KnownNumber) -> String;
    /// The list of numbers.
    fn what_is_in_it(&self) -> &'static str;
    /// Nobody says.
    fn not_known_of_it(&self) -> &'static str;
    /// For a screen reader, behind a number that knows its source.
    fn where_from(&self) -> &'static str;
    /// What typical numbers are worth.
    fn typical_caution(&self) -> &'static str;
    /// The action of a typical food.
    fn take_into_shed(&self) -> &'static str;
    /// The sentence of a new food.
    fn which_food(&self) -> &'static str;
    /// The food is not here.
    fn no_such_food(&self) -> &'static str;
    /// A field.
    fn food_field(&self, field: Field) -> &'static str;
    /// Its hint.
    fn food_field_hint(&self, field: Field) -> Option<&'static str>;
    /// Its unit, where it is fixed.
    fn food_field_unit(&self, field: Field) -> Option<&'static str>;
    /// A question.
    fn food_class_asked(&self) -> &'static str;
    /// What a class is, as a second line.
    fn food_class_means(&self, class: FoodClass) -> &'static str;
    /// The typical food that stands in.
    fn stands_in(&self, food: TypicalFood) -> String;
    /// The part of the label.
    fn label_head(&self) -> &'static str;
    /// What a label is worth.
    fn label_caution(&self) -> &'static str;
    /// A question.
    fn label_basis_asked(&self) -> &'static str;
    /// A basis.
    fn food_basis(&self, basis: LabelBasis) -> &'static str;
    /// What the pasted text says of its basis; `None` where it says nothing.
    fn bases_said(&self, said: BasesSaid) -> Option<&'static str>;
    /// A line, for screen readers: "Line 2".
    fn label_line(&self, line: usize) -> String;
    /// The choice of what a line is of.
    fn line_of_what(&self) -> &'static str;
    /// The number of a line.
    fn line_number(&self) -> &'static str;
    /// The choice of its unit.
    fn line_in_what(&self) -> &'static str;
    /// Nothing is chosen yet.
    fn line_choose(&self) -> &'static str;
    /// Adds a line.
    fn add_line(&self) -> &'static str;
    /// Takes a line off.
    fn remove_line(&self, line: usize) -> String;
    /// Opens the pasted text.
    fn paste_label(&self) -> &'static str;
    /// The field of the pasted text.
    fn pasted_text(&self) -> &'static str;
    /// Its hint.
    fn pasted_text_hint(&self) -> &'static str;
    /// The numbers found, and how many of them wait for a decision.
    fn pasted_found(&self, waiting: usize, found: usize) -> String;
    /// What a number was read as: "Copper, 400 mg/kg".
    fn pasted_read(&self, found: &FromText) -> String;
    /// What is not sure of it; empty for nothing.
    fn pasted_doubts(&self, found: &FromText) -> Vec<String>;
    /// The key that accepts it.
    fn accept_line(&self) -> &'static str;
    /// The key that does not.
    fn not_this_line(&self) -> &'static str;
    /// It was accepted.
    fn line_accepted(&self) -> &'static str;
    /// It was not.
    fn line_not_taken(&self) -> &'static str;
    /// Takes the decision back.
    fn decide_again(&self) -> &'static str;
    /// The lines with numbers of which nothing was read.
    fn pasted_not_read(&self) -> &'static str;
    /// Closes the pasted text.
    fn close_pasted(&self) -> &'static str;
    /// The part of pack, price and scoop.
    fn pack_head(&self) -> &'static str;
    /// The action of the form.
    fn save_food(&self) -> &'static str;
    /// Takes the food off.
    fn remove_food(&self) -> &'static str;
    /// What is wrong with a field or the whole.
    fn food_wrong(&self, wrong: &Wrong) -> String;
    /// What is wrong with a line.
    fn line_wrong(&self, wrong: &LineWrong) -> String;
}
