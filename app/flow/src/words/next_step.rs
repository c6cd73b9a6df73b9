//! The next step and its reasons, the phases and their changes, and what would now differ.

use super::Said;
use crate::views::next_step::{NextStep, Offer, Stands};
use crate::views::plan::Differs;
use tussock_core::animal::Phase;
use tussock_core::progress::{HowSoon, Origin, Reason, Step, WhyNot};
use tussock_core::units::LocalDate;

/// What the screen of the next step says.
pub trait NextStepWords {
    /// What the screen is, and its tag beside one animal.
    fn the_next_step(&self) -> &'static str;
    /// The step as the sentence of its screen, short enough for the head.
    fn step_head(&self, view: &NextStep) -> String;
    /// The same with the name, for the screen beside one animal.
    fn step_of(&self, view: &NextStep) -> String;
    /// How it stands, as the word of its tag.
    fn step_stands(&self, stands: Stands) -> &'static str;
    /// Its phase and the day of it, as the second line of its tag.
    fn step_tag(&self, view: &NextStep) -> String;
    /// How soon the vet is rung, as an order.
    fn ring_now(&self, ring: HowSoon) -> &'static str;
    /// When it is taken, and when the next review is.
    fn step_when(&self, view: &NextStep) -> Said;
    /// A reason, with its chance where it has one.
    fn because(&self, reason: &Reason) -> Said;
    /// A head: why.
    fn because_head(&self) -> &'static str;
    /// What comes after a look at what was eaten, or a test.
    fn step_after(&self, then: Step) -> String;
    /// Where a row or a change comes from.
    fn step_from(&self, origin: Origin) -> String;
    /// It only proposes.
    fn only_proposes(&self) -> Said;
    /// A head: the phase.
    fn phase_head(&self) -> &'static str;
    /// The phase, its day and since when.
    fn phase_line(&self, view: &NextStep) -> String;
    /// What it came from; `None` where nobody knows.
    fn phase_before(&self, before: Option<Phase>) -> Option<String>;
    /// How an animal comes into a phase.
    fn phase_entry(&self, phase: Phase) -> String;
    /// How it comes out of it.
    fn phase_exit(&self, phase: Phase) -> String;
    /// The names of those two.
    fn entry_and_exit(&self) -> [&'static str; 2];
    /// A head: a change of phase is due.
    fn change_due(&self) -> &'static str;
    /// The key that puts it into a phase.
    fn put_into(&self, phase: Phase) -> &'static str;
    /// A head: the other phases.
    fn other_phases(&self) -> &'static str;
    /// A phase that may be chosen, or why it may not.
    fn may_be_chosen(&self, why_not: Option<WhyNot>) -> &'static str;
    /// The action.
    fn next_offer(&self, offer: &Offer, view: &NextStep) -> String;
    /// A head: what would now differ.
    fn differs_head(&self) -> &'static str;
    /// One thing of it: what it is about, and the plan in use beside today.
    fn differs(&self, differs: &Differs) -> [String; 2];
    /// Nothing of it changes before the review.
    fn differs_means(&self, review: LocalDate) -> String;
    /// The plan was opened with a level asked for.
    fn level_asked(&self, level: &str) -> String;
}
