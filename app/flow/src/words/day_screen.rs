//! The labels of the day's screen.

use crate::views::day::DayLine;
use tussock_core::day::RealDay;
use tussock_core::log::{RestHanging, RestLaid, RestVerdict, WhyAnew};
use tussock_core::units::{Instant, Zone};

/// What the screen of a day says beside the layout itself.
pub trait DayScreenWords {
    /// What the screen is.
    fn day_word(&self) -> &'static str;
    /// The list, for screen readers.
    fn the_day_in_order(&self) -> &'static str;
    /// The sentence: so many nets and the longest wait.
    fn day_sentence(&self, nets: usize, longest_h: f64) -> String;
    /// There is no plan in use, or nothing hangs.
    fn no_day(&self) -> &'static str;
    /// The lead of a line: its time.
    fn line_time(&self, line: &DayLine) -> String;
    /// The word of its state.
    fn line_stands(&self, line: &DayLine) -> &'static str;
    /// What it is.
    fn line_what(&self, line: &DayLine) -> String;
    /// Its second line.
    fn line_second(&self, line: &DayLine, zone: &dyn Zone) -> String;
    /// The wait was accepted, up to so many hours.
    fn wait_accepted(&self, hours: f64) -> String;
    /// The action that accepts the wait.
    fn accept_this(&self, longest_h: f64) -> String;
    /// What accepting means.
    fn accepting_means(&self) -> &'static str;
    /// Until when it has forage, or since when it has none.
    fn has_forage(&self, real: &RealDay, now: Instant, zone: &dyn Zone) -> String;
    /// The order of a day that is worse than accepted: "Feed now", or that it waited longer.
    fn real_is_worse(&self, name: &str, real: &RealDay) -> String;
    /// What stands under the order.
    fn feed_what(&self) -> &'static str;
    /// A link to the day of an animal.
    fn see_the_day(&self, name: &str) -> String;
    /// "Rest of today: hang 2.6 kg at 13:00, 4.3 kg at 20:00".
    fn rest_of_today(&self, hangings: &[RestHanging]) -> String;
    /// Why the rest is laid out anew.
    fn why_anew(&self, why: WhyAnew) -> String;
    /// The wait it leaves, and what finds no place.
    fn rest_leaves(&self, laid: &RestLaid) -> Vec<String>;
    /// Why the rest cannot be laid out; `None` where it can.
    fn rest_cannot(&self, verdict: &RestVerdict) -> Option<&'static str>;
    /// The action that hangs the rest so.
    fn hang_rest_so(&self) -> &'static str;
    /// What that means.
    fn hanging_so_means(&self) -> &'static str;
    /// The sentence of a day that was laid out anew.
    fn day_anew(&self, left: usize) -> String;
    /// The first action when nothing has to be accepted.
    fn weigh_the_nets(&self) -> &'static str;
    /// A link to the plan.
    fn see_the_plan(&self) -> &'static str;
}
