//! The labels of what hangs.

use crate::forms::hanging::Wrong;
use crate::views::hanging::{Eats, HungNet};
use tussock_core::log::TimedNet;
use tussock_core::log::bodies::Quarters;
use tussock_core::round::Job;
use tussock_core::units::{Instant, LocalDate, Zone};

/// What the screen of hanging nets says.
pub trait HangingWords {
    /// The link to it.
    fn what_was_left(&self) -> &'static str;
    /// A tag of the shed: so many nets hang for somebody.
    fn nets_hang(&self, name: &str, count: usize) -> String;
    /// Its word.
    fn hangs(&self) -> &'static str;
    /// Its second line: since when.
    fn hangs_since(&self, at: Instant, today: LocalDate, zone: &dyn Zone) -> String;
    /// The sentence: how much of a net is left.
    fn how_much_left(&self, net: &HungNet, today: LocalDate, zone: &dyn Zone) -> String;
    /// The sentence when nothing is asked.
    fn nothing_hangs(&self, name: &str) -> String;
    /// Which of several nets, as a question.
    fn which_net(&self) -> &'static str;
    /// A net of them.
    fn hung_net(&self, net: &HungNet, today: LocalDate, zone: &dyn Zone) -> String;
    /// The keys of quarters, as a group.
    fn left_by_eye(&self) -> &'static str;
    /// A key.
    fn quarters(&self, quarters: Quarters) -> &'static str;
    /// Somebody sees that it is eaten up.
    fn eaten_up_now(&self) -> &'static str;
    /// What that does.
    fn eaten_up_means(&self) -> &'static str;
    /// It was found empty.
    fn found_empty(&self) -> &'static str;
    /// What that does.
    fn found_empty_means(&self) -> &'static str;
    /// Opens the fields of weighing back.
    fn weigh_back(&self) -> &'static str;
    /// Closes them.
    fn by_eye_again(&self) -> &'static str;
    /// What the net with the rest weighs.
    fn rest_weighs(&self) -> &'static str;
    /// How to read it.
    fn rest_hint(&self, soaked: bool) -> &'static str;
    /// What the wet net weighed when it was hung.
    fn wet_weighed(&self) -> &'static str;
    /// How to read that.
    fn wet_hint(&self) -> &'static str;
    /// Saves what was weighed.
    fn save_left(&self) -> &'static str;
    /// What is wrong.
    fn left_wrong(&self, wrong: &Wrong) -> String;
    /// A net was hardly touched: what to do now, and why.
    fn hardly_touched(&self, name: &str) -> [String; 2];
    /// The action: hangs the next net.
    fn hung_now(&self, job: &Job) -> String;
    /// The same, of a net that was neither soaked nor left out: it leads to the soaks.
    fn soak_first(&self) -> &'static str;
    /// A head: how fast it eats.
    fn eats_head(&self, name: &str) -> String;
    /// How fast it eats with dry or soaked hay; `None` for soaked hay that was never timed.
    fn eats(&self, eats: &Eats, soaked: bool) -> Option<String>;
    /// How long this net lasts it; `None` where the dry matter in it is not known.
    fn lasts(&self, eats: &Eats, net: &HungNet) -> Option<String>;
    /// A net that was timed.
    fn timed_line(&self, timed: &TimedNet, today: LocalDate, zone: &dyn Zone) -> String;
}
