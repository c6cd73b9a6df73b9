//! The labels of reminders, and the plain truth about each.

use crate::views::remind::{DailyBell, Deadline, Has, Means, Ring, Sent, Stands};
use tussock_core::units::{Instant, LocalDate, Zone};

/// What the screens, the notifications and the calendar files of reminders say.
pub trait RemindWords {
    /// The link from a tub.
    fn remind_me(&self) -> &'static str;
    /// The link from the shed, and the place.
    fn reminders(&self) -> &'static str;
    /// The line over the clock time: "Lift out at".
    fn clock_of(&self, what: Deadline, late: bool) -> &'static str;
    /// Under it: set the phone's own timer.
    fn own_timer(&self, now: Instant, zone: &dyn Zone) -> String;
    /// The sentence of a tub that is over.
    fn tub_is_over(&self) -> &'static str;
    /// The sentence where there is no tub to be reminded of.
    fn no_tub_to_remind(&self) -> &'static str;
    /// A deadline as a row: "Lift out".
    fn deadline(&self, what: Deadline) -> &'static str;
    /// The list of deadlines.
    fn deadlines(&self) -> &'static str;
    /// What rings while this page is open, as a heading.
    fn while_open(&self) -> &'static str;
    /// What rings when it is closed, as a heading.
    fn when_closed(&self) -> &'static str;
    /// A means.
    fn means(&self, means: Means) -> &'static str;
    /// How it stands.
    fn means_stand(&self, stands: Stands) -> &'static str;
    /// What it does on this device, and what it does not.
    fn means_line(&self, means: Means, has: Has) -> &'static str;
    /// Whether the phone shakes with the sound.
    fn shakes(&self, has: Has) -> &'static str;
    /// What rings when the page is closed, and what does not.
    fn closed_truth(&self) -> &'static str;
    /// What to do with a calendar file, where it can be handed to another app, or is saved.
    fn file_truth(&self, share: Has) -> &'static str;
    /// The action of a tub.
    fn file_of_tub(&self) -> &'static str;
    /// The action of a tub that is over: takes its bells out.
    fn file_of_tub_over(&self) -> &'static str;
    /// The action of the day.
    fn file_of_day(&self) -> &'static str;
    /// What became of the file.
    fn sent(&self, sent: Sent) -> &'static str;
    /// The sentence of the day: "5 bells a day".
    fn bells_a_day(&self, count: usize) -> String;
    /// The sentence where no plan holds.
    fn no_bells(&self) -> &'static str;
    /// The list of them.
    fn bells(&self) -> &'static str;
    /// The second line of one: until when.
    fn bell_until(&self, bell: &DailyBell) -> String;
    /// A plan whose review is past.
    fn review_past(&self, name: &str, review: LocalDate) -> String;
    /// The action where a plan must come first.
    fn to_a_plan(&self) -> &'static str;
    /// What a bell of a tub says: "Lift out tub 2, Bramble".
    fn bell_of_tub(&self, what: Deadline, tub: Option<&str>, whose: &str) -> String;
    /// What stands behind it.
    fn bell_of_tub_why(&self, what: Deadline) -> &'static str;
    /// What a bell of the day says: "Bramble: hang 2 nets, feed the balancer".
    fn bell_of_day(&self, bell: &DailyBell) -> String;
    /// What stands behind it.
    fn bell_of_day_why(&self, review: LocalDate) -> String;
    /// The head of what rings: "Lift out tub 2", "Bring in Moss".
    fn ring_head(&self, ring: &Ring) -> String;
    /// Under the notification of a deadline: "at 07:05", and how late it is.
    fn ring_line(&self, ring: &Ring, now: Instant, zone: &dyn Zone) -> String;
}
