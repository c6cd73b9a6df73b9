//! What is said where an animal will not eat.

use super::Said;
use crate::forms::not_eating::Wrong;
use crate::views::not_eating::{NotEating, Vet};
use tussock_core::safety::{EatStep, LastAte, Normal, Offered, Vital, VitalStanding};
use tussock_core::units::{Instant, Zone};

/// A line of the call sheet: what it is about, and what there is to say, as a person reads it aloud.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct SheetLine {
    /// What it is about.
    pub about: String,
    /// What there is to say.
    pub says: String,
}

/// What the screen of an animal that will not eat says.
pub trait NotEatingWords {
    /// The quiet link to it.
    fn will_not_eat(&self) -> &'static str;
    /// The sentence before anybody held out a handful.
    fn hold_out_a_handful(&self, name: &str) -> String;
    /// The sentence when it leaves this hay alone.
    fn leaves_this_hay(&self, name: &str) -> String;
    /// A question.
    fn last_ate_question(&self) -> &'static str;
    /// From when that is counted.
    fn last_ate_hint(&self) -> &'static str;
    /// An answer to it.
    fn last_ate(&self, last: LastAte) -> &'static str;
    /// The head of the steps.
    fn what_to_do(&self) -> &'static str;
    /// A step.
    fn eat_step(&self, step: EatStep) -> Said;
    /// The head of the readings.
    fn vitals(&self) -> &'static str;
    /// A reading as a field.
    fn vital(&self, vital: Vital) -> &'static str;
    /// Its unit.
    fn vital_unit(&self, vital: Vital) -> &'static str;
    /// What is usual at rest, and how it is taken.
    fn vital_hint(&self, vital: Vital, normal: Option<&Normal>) -> String;
    /// How a reading stands beside it.
    fn vital_stands(&self, vital: Vital, reading: f64, normal: &Normal) -> String;
    /// The same, where it is known how it stands.
    fn vital_told(&self, vital: Vital, reading: f64, standing: VitalStanding) -> String;
    /// That they are no all-clear.
    fn vitals_are_no_diagnosis(&self) -> &'static str;
    /// The head of the call sheet.
    fn call_sheet(&self) -> &'static str;
    /// Its lines. `readings` are temperature, pulse and breathing, `None` where nobody took them.
    fn sheet(
        &self,
        view: &NotEating,
        offered: &Offered,
        readings: [Option<f64>; 3],
        zone: &dyn Zone,
    ) -> Vec<SheetLine>;
    /// The link that rings the vet.
    fn ring_the_vet(&self, vet: &Vet) -> String;
    /// The number is not written down.
    fn no_number(&self) -> &'static str;
    /// The field of the number.
    fn number_label(&self) -> &'static str;
    /// What a vet whose name nobody knows is called.
    fn the_vet(&self) -> &'static str;
    /// When the last handful was saved.
    fn as_saved(&self, at: Instant, view: &NotEating, zone: &dyn Zone) -> String;
    /// How a stop of this kind ends.
    fn ends_with_a_look_over(&self) -> &'static str;
    /// The action.
    fn save_what_it_did(&self) -> &'static str;
    /// What is wrong.
    fn not_eating_wrong(&self, wrong: &Wrong) -> String;
}
