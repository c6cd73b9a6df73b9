//! The labels of the list and of a visit to one animal.

use crate::views::beside::{Last, Standing, Stop};
use tussock_core::animal::Animal;
use tussock_core::assess::{ConditionRange, DatedWeight};

/// What is done beside an animal, in the order of a visit.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Task {
    /// Tape or scale.
    Weigh,
    /// Condition, site by site.
    Condition,
    /// The crest.
    Crest,
    /// The look-over.
    LookOver,
    /// Its work.
    Work,
    /// Photographs.
    Photograph,
    /// The plan.
    Plan,
}

impl Task {
    /// All of them, in the order of a visit.
    pub const ALL: [Self; 7] = [
        Self::Weigh,
        Self::Condition,
        Self::Crest,
        Self::LookOver,
        Self::Work,
        Self::Photograph,
        Self::Plan,
    ];
}

/// What the list and the screen beside one animal say.
pub trait BesideWords {
    /// What the cord is: the steps of a visit.
    fn visit(&self) -> &'static str;
    /// A step as the first line of its tag.
    fn task(&self, task: Task) -> &'static str;
    /// A step as an action.
    fn do_task(&self, task: Task, name: &str) -> String;
    /// The action when nothing is due.
    fn see_plan(&self) -> &'static str;
    /// "today", "3 days ago".
    fn ago(&self, days: i64) -> String;
    /// What a step found last.
    fn last(&self, last: &Last) -> String;
    /// A step was never done.
    fn never(&self) -> &'static str;
    /// The word of a standing.
    fn standing(&self, standing: Standing) -> &'static str;
    /// A condition as a figure: "7", "6 to 7".
    fn condition_figure(&self, condition: ConditionRange) -> String;
    /// The second line of an animal in the list: "305 kg, condition 7"; the figure is not told while it is to be scored.
    fn in_the_list(
        &self,
        weight: Option<&DatedWeight>,
        condition: Option<ConditionRange>,
        to_score: bool,
    ) -> String;
    /// The state word of an animal in the list: what is due.
    fn due_in_the_list(&self, due: Option<Task>) -> &'static str;
    /// The one thing due, as a sentence: "Weigh Bramble today".
    fn one_thing_due(&self, task: Task, name: &str) -> String;
    /// Nothing is due beside so many animals.
    fn nothing_due(&self, count: usize) -> String;
    /// What stops an animal, as an order.
    fn stop_order(&self, stop: &Stop) -> String;
    /// Why, and what to do meanwhile, as whole sentences.
    fn stop_why(&self, stop: &Stop) -> String;
    /// The same, short, for a tag of the list.
    fn stop_word(&self, stop: &Stop) -> &'static str;
    /// The action under a stop.
    fn look_again_now(&self) -> &'static str;
    /// Kind and age.
    fn who(&self, animal: &Animal) -> String;
    /// The quiet link to its details.
    fn details_of_it(&self) -> &'static str;
    /// The find field.
    fn find_animal(&self) -> &'static str;
    /// Nothing was found.
    fn none_found(&self) -> &'static str;
    /// The quiet link to a new group.
    fn add_a_group(&self) -> &'static str;
    /// The word of a group in the list.
    fn a_group(&self) -> &'static str;
    /// Records that cannot be read.
    fn some_not_read(&self, count: usize) -> String;
}
