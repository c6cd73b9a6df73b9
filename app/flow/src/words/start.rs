//! The labels of the six answers.

use crate::forms::start::{Ever, Sort, Visits};
use tussock_core::forage::ForageClass;

/// What the form of six answers says.
pub trait StartWords {
    /// The sentence of the screen.
    fn six_answers(&self) -> &'static str;
    /// What the head says.
    fn first_plan(&self) -> &'static str;
    /// A question.
    fn which_sort(&self) -> &'static str;
    /// "Pony under 112 cm".
    fn sort(&self, sort: Sort) -> &'static str;
    /// That a rough height is kept as one.
    fn rough_height_hint(&self) -> &'static str;
    /// A field: the age.
    fn age_label(&self) -> &'static str;
    /// The unit of the age.
    fn years(&self) -> &'static str;
    /// A question.
    fn ribs_question(&self) -> &'static str;
    /// How the ribs are felt.
    fn ribs_hint(&self) -> &'static str;
    /// A question.
    fn ever_question(&self) -> &'static str;
    /// "Once, sound now".
    fn ever(&self, ever: Ever) -> &'static str;
    /// A question.
    fn hay_question(&self) -> &'static str;
    /// An offer: the first stands for what nobody knows.
    fn hay_offer(&self, class: ForageClass) -> String;
    /// What an untested hay means.
    fn hay_hint(&self) -> &'static str;
    /// A question.
    fn visits_question(&self) -> &'static str;
    /// So many visits.
    fn visit_count(&self, visits: Visits) -> String;
    /// That the times can be corrected.
    fn visits_hint(&self) -> &'static str;
    /// What may be left out.
    fn name_may_wait(&self) -> &'static str;
    /// The name of a yard that nobody named.
    fn yard_name(&self) -> &'static str;
    /// The action.
    fn make_first_plan(&self) -> &'static str;
    /// Something is still open or wrong, above the action.
    fn still_open(&self) -> &'static str;
    /// A question has no answer yet.
    fn answer_wanted(&self) -> &'static str;
}
