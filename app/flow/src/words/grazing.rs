//! The labels of how an animal or a group goes out to grass.

use super::Said;
use crate::forms::grazing::{Used, Wrong};
use crate::views::grazing::{Carried, Open};

/// What the form of turnout says.
pub trait GrazingWords {
    /// The sentence.
    fn how_it_goes_out(&self, name: &str) -> String;
    /// Neither an animal nor a group.
    fn nobody_to_go_out(&self) -> &'static str;
    /// By the last decision it stays in.
    fn stays_in_now(&self) -> &'static str;
    /// Which paddock.
    fn which_paddock(&self) -> &'static str;
    /// None.
    fn no_one_paddock(&self) -> &'static str;
    /// What that does to the reckoning.
    fn no_one_paddock_means(&self) -> &'static str;
    /// How long a day.
    fn how_long_out(&self) -> &'static str;
    /// A time, in minutes.
    fn so_long(&self, minutes: i64) -> String;
    /// The field for another time.
    fn another_time(&self) -> &'static str;
    /// How to type it.
    fn another_time_hint(&self) -> &'static str;
    /// With a muzzle or without.
    fn muzzle_asked(&self) -> &'static str;
    /// An answer.
    fn muzzle_on(&self, on: bool) -> &'static str;
    /// What must be known of a muzzle.
    fn muzzle_caution(&self) -> Said;
    /// Since when it is used to it.
    fn used_asked(&self) -> &'static str;
    /// Why that is asked.
    fn used_hint(&self) -> &'static str;
    /// An answer.
    fn used(&self, used: Used) -> &'static str;
    /// The field for the day.
    fn used_since(&self) -> &'static str;
    /// How to type it.
    fn used_since_hint(&self) -> &'static str;
    /// What is wrong with a field.
    fn grazing_wrong(&self, wrong: &Wrong) -> String;
    /// The head of what the plan can carry.
    fn carries_head(&self) -> &'static str;
    /// Nobody said how long.
    fn say_how_long_first(&self) -> &'static str;
    /// What the plan can carry: the answer, and why.
    fn carried(&self, carried: &Carried) -> Said;
    /// The same in rows: what it is, and how much.
    fn carried_rows(&self, open: &Open) -> Vec<(&'static str, String)>;
    /// What to do instead of grass; empty where there is some.
    fn instead_of_grass(&self, carried: &Carried) -> Vec<&'static str>;
    /// Its head.
    fn instead_head(&self) -> &'static str;
    /// What saving does and does not.
    fn never_more_than_carried(&self) -> &'static str;
    /// The action.
    fn save_turnout(&self) -> &'static str;
    /// It stays in from today on.
    fn does_not_go_out(&self) -> &'static str;
}
