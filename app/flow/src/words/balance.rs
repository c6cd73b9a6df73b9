//! A ration against what is needed.

use super::Said;
use crate::views::balance::{Balance, EnergyLine, Judged, Look, NutrientRow};
use tussock_core::limits::Nutrient;
use tussock_core::log::{DayRation, GivenBy, GivenFood, GivenForage};
use tussock_core::ration::Food;

/// Words for the balance.
pub trait BalanceWords {
    /// What the screen is, at the right of its head.
    fn a_day(&self) -> &'static str;
    /// The link to the balance.
    fn ration_against_needs(&self) -> &'static str;
    /// The sentence: "1 over, 2 short, 1 not known".
    fn balance_sentence(&self, balance: &Balance) -> String;
    /// The word of a state.
    fn look(&self, look: Look) -> &'static str;
    /// A head: what it is given.
    fn what_it_is_given(&self) -> &'static str;
    /// What says how much it is given.
    fn given_by(&self, by: GivenBy) -> String;
    /// A food by its name, or what stands in for one.
    fn food_name(&self, food: &Food) -> String;
    /// Beside a forage: soaked or not, tested or not.
    fn given_forage(&self, given: &GivenForage) -> String;
    /// Beside a food: its class, and that its numbers are typical.
    fn given_food(&self, given: &GivenFood) -> String;
    /// What the ration costs a day.
    fn ration_costs(&self, ration: &DayRation) -> String;
    /// In how many buckets the foods are shared; `None` without foods.
    fn in_buckets(&self, ration: &DayRation) -> Option<String>;
    /// What is not counted.
    fn only_what_is_written_down(&self) -> &'static str;
    /// Beside the name of a nutrient: "short by 62 mg".
    fn row_stands(&self, row: &NutrientRow) -> String;
    /// What it has: "58 mg", "at least 310 mg".
    fn row_has(&self, row: &NutrientRow) -> String;
    /// What it needs: "120 mg".
    fn row_needs(&self, row: &NutrientRow) -> String;
    /// Its ceiling: "600 mg", "none published".
    fn row_ceiling(&self, row: &NutrientRow) -> String;
    /// The cord as one sentence.
    fn row_cord(&self, row: &NutrientRow) -> String;
    /// Why there is no cord.
    fn no_cord(&self) -> &'static str;
    /// The name of the energy row.
    fn energy_name(&self) -> &'static str;
    /// How energy stands.
    fn energy_stands(&self, line: &EnergyLine) -> String;
    /// What it has of energy, with its ends.
    fn energy_has(&self, line: &EnergyLine) -> String;
    /// What it needs of energy.
    fn energy_needs(&self, line: &EnergyLine) -> String;
    /// Energy has no ceiling of its own.
    fn energy_ceiling(&self) -> &'static str;
    /// Its cord as one sentence.
    fn energy_cord(&self, line: &EnergyLine) -> String;
    /// The word over the first knot.
    fn need_word(&self) -> &'static str;
    /// The word over the second knot.
    fn ceiling_word(&self) -> &'static str;
    /// The heads of a row where there is room for one line: nutrient, how it stands, has, need, ceiling.
    fn row_heads(&self) -> [&'static str; 5];
    /// How the cords are to be read.
    fn knots_are_level(&self) -> &'static str;
    /// A head: what needs a look.
    fn what_needs_a_look(&self) -> &'static str;
    /// No nutrient needs a look.
    fn no_nutrient_to_look_at(&self) -> &'static str;
    /// Opens what nobody knows: "12 not known, show".
    fn unknown_show(&self, count: usize) -> String;
    /// Opens the rest: "19 within, show".
    fn within_show(&self, count: usize) -> String;
    /// A head: what else is judged.
    fn what_else(&self) -> &'static str;
    /// The name of what else is judged.
    fn judged_name(&self, judged: &Judged) -> &'static str;
    /// How it stands.
    fn judged_stands(&self, judged: &Judged) -> Said;
    /// Opens the table.
    fn all_numbers(&self) -> &'static str;
    /// The table.
    fn numbers_caption(&self) -> &'static str;
    /// Its heads: nutrient, has, need, ceiling, in the feed as fed, in its dry matter, not known, from.
    fn numbers_columns(&self) -> [&'static str; 8];
    /// A row of it.
    fn numbers_row(&self, row: &NutrientRow) -> Vec<String>;
    /// The row of energy.
    fn numbers_energy(&self, line: &EnergyLine) -> Vec<String>;
    /// Hays that nobody tested, and what of the ration is not known for it.
    fn hays_not_tested(&self, names: &[&str], not_known: &[Nutrient]) -> Said;
    /// A balance is no diagnosis.
    fn balance_is_no_diagnosis(&self) -> Said;
    /// Safety refuses a plan today, by what is held: the plan in use, or what today's would give.
    fn balance_while_refused(&self, by: GivenBy) -> Said;
    /// The sentence where no ration is shown because safety refuses one.
    fn no_ration_to_show(&self) -> &'static str;
    /// No needs are reckoned for it.
    fn needs_not_reckoned(&self) -> &'static str;
    /// The action.
    fn find_the_cheapest_mend(&self) -> &'static str;
    /// The link to the foods.
    fn to_the_foods(&self) -> &'static str;
}
