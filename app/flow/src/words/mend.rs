//! The mend of a ration.

use super::Said;
use crate::views::mend::{Candidate, MendView, Proposal, SetWrong};
use tussock_core::ration::mend::{
    Aim, Closest, Decides, Limit, MendedBy, Missed, NotOffered, Topping,
};
use tussock_core::ration::solve::SolveError;

/// What the mend of a ration says.
pub trait MendWords {
    /// What the screen is, at the right of its head.
    fn mend_word(&self) -> &'static str;
    /// The sentence: "3 foods cover it".
    fn mend_sentence(&self, view: &MendView, at: usize) -> String;
    /// Safety refuses a plan, so that no ration is proposed.
    fn no_mend_while_refused(&self) -> Said;
    /// What is asked: what is best.
    fn what_is_best(&self) -> &'static str;
    /// An aim, with a second line.
    fn aim(&self, aim: Aim) -> [&'static str; 2];
    /// What is asked: from where.
    fn where_from(&self) -> &'static str;
    /// The yard's foods alone, or typical ones too.
    fn typical_too(&self, too: bool) -> &'static str;
    /// What is asked: how many bought foods at most.
    fn how_many_foods(&self) -> &'static str;
    /// So many; `None` for any number.
    fn at_most(&self, foods: Option<usize>) -> String;
    /// What may be given on top of hay.
    fn topping(&self, topping: Topping) -> Said;
    /// Opens the amounts that are set by hand.
    fn set_by_hand(&self) -> &'static str;
    /// How an amount is set.
    fn set_hint(&self) -> &'static str;
    /// The label of a field: the food and what it is.
    fn set_label(&self, candidate: &Candidate) -> String;
    /// Why a food is not chosen by itself.
    fn not_offered(&self, why: NotOffered) -> &'static str;
    /// What is wrong with an amount.
    fn set_wrong(&self, wrong: &SetWrong) -> String;
    /// A food by name.
    fn candidate_name(&self, candidate: &Candidate) -> String;
    /// A head: other foods that would do.
    fn other_sets(&self) -> &'static str;
    /// A set of foods: their names, and what a day costs.
    fn set_of_foods(&self, view: &MendView, proposal: &Proposal) -> [String; 2];
    /// What is to be said beside a proposal: hay at its mean, zinc to copper, prices that are not known, not proven.
    fn beside_the_mend(&self, view: &MendView, proposal: &Proposal) -> Vec<Said>;
    /// Not known in the time that is allowed.
    fn mend_not_known(&self) -> &'static str;
    /// The action.
    fn use_this_ration(&self) -> &'static str;
    /// What using it does.
    fn using_it(&self) -> &'static str;
    /// The link to the way there.
    fn how_to_change_over(&self) -> &'static str;
    /// Options that trials are read for: DHA and live yeast.
    fn options_and_trials(&self) -> [Said; 2];
    /// A head of them.
    fn options_head(&self) -> &'static str;
}

/// What decides a mend, what it misses, and why it failed.
pub trait MendReasonWords {
    /// A head: what decides it.
    fn why_so(&self) -> &'static str;
    /// A limit that decides: name, and what more of it costs.
    fn decides(&self, view: &MendView, decides: &Decides) -> [String; 2];
    /// Nothing but the dry matter decides.
    fn nothing_decides(&self) -> &'static str;
    /// A limit.
    fn limit(&self, limit: Limit) -> String;
    /// A food that would pay under a price.
    fn would_pay(&self, view: &MendView, food: usize, under: f64) -> Option<[String; 2]>;
    /// A head: what is missed when nothing fits.
    fn what_is_missed(&self) -> &'static str;
    /// A limit that is missed: name, and by how much.
    fn missed(&self, missed: &Missed) -> [String; 2];
    /// A head: what alone would mend it.
    fn would_mend(&self) -> &'static str;
    /// A change that alone would mend it.
    fn mended_by(&self, view: &MendView, by: &MendedBy) -> String;
    /// No single change would.
    fn nothing_alone_mends(&self, closest: &Closest) -> &'static str;
    /// It could not be reckoned.
    fn solve_error(&self, error: &SolveError) -> String;
}
