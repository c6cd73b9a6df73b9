//! What the screens of a visit to the yard say, and the draft of its report.

use crate::views::remind::Sent;
use crate::views::yard_visit::report::Report;
use crate::views::yard_visit::since::{Change, YardChange};
use crate::views::yard_visit::{FactState, Next, Seen, Underway};
use tussock_core::log::bodies::SharedFact;
use tussock_core::units::{Instant, LocalDate, Zone};

/// What the screens of a visit to the yard say.
pub trait YardVisitWords {
    /// The quiet link to start a visit.
    fn start_a_visit(&self) -> &'static str;
    /// The link back to a visit that is under way.
    fn to_the_visit(&self) -> &'static str;
    /// The head of the screens of a visit.
    fn the_visit(&self) -> &'static str;
    /// The sentence before a visit.
    fn whom_to_see(&self) -> &'static str;
    /// The line under the animals that are chosen.
    fn whom_to_see_hint(&self) -> &'static str;
    /// The action that starts it.
    fn start_visit(&self) -> &'static str;
    /// No animal is chosen.
    fn somebody_wanted(&self) -> &'static str;
    /// What the last visit was, before a new one.
    fn last_visit(&self, ended: Instant, today: LocalDate, zone: &dyn Zone) -> String;
    /// The sentence of a visit under way.
    fn visit_sentence(&self, visit: &Underway) -> String;
    /// When it began.
    fn visit_began(&self, began: Instant, today: LocalDate, zone: &dyn Zone) -> String;
    /// The head of what changed.
    fn changed_since(&self, ended: Instant, today: LocalDate, zone: &dyn Zone) -> String;
    /// It is the first visit: there is nothing to compare with.
    fn first_visit(&self) -> &'static str;
    /// Nothing changed.
    fn nothing_changed(&self) -> &'static str;
    /// One change of an animal.
    fn change(&self, change: &Change) -> String;
    /// One change of the yard.
    fn yard_change(&self, change: &YardChange) -> String;
    /// The head of what the animals share.
    fn for_all_of_them(&self) -> &'static str;
    /// A shared fact.
    fn shared_fact(&self, fact: SharedFact) -> &'static str;
    /// How a shared fact stands.
    fn fact_state(&self, state: FactState) -> &'static str;
    /// The key that says of all open facts that they are as before.
    fn all_as_before(&self, open: &[SharedFact]) -> String;
    /// The second line of an animal: what was done and what is open.
    fn seen(&self, seen: &Seen) -> String;
    /// The word of an animal: "3 of 4".
    fn seen_word(&self, seen: &Seen) -> String;
    /// The action.
    fn next_step(&self, next: &Next) -> String;
    /// The quiet link to the summary before everything is done.
    fn to_summary_now(&self) -> &'static str;
    /// The sentence of the summary.
    fn summary_sentence(&self, visit: &Underway) -> String;
    /// The head of the draft.
    fn report_label(&self) -> &'static str;
    /// What the draft is and who answers for it.
    fn report_hint(&self) -> &'static str;
    /// The key that puts the draft back as it is made from the records.
    fn draft_anew(&self) -> &'static str;
    /// The key that hands it over.
    fn send_report(&self) -> &'static str;
    /// What became of it.
    fn report_sent(&self, sent: Sent) -> &'static str;
    /// The name of the file.
    fn report_file(&self, on: LocalDate) -> String;
    /// The action that ends the visit.
    fn end_visit(&self) -> &'static str;
    /// There is no visit under way.
    fn no_visit(&self) -> &'static str;
    /// The draft of the report, in the client's words.
    fn draft_report(&self, report: &Report) -> String;
}
