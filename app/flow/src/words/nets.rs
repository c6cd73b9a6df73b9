//! The labels of the scale.

use crate::forms::nets::Wrong;
use crate::views::nets::{DayNet, Own, OwnFrom};
use tussock_core::day::OnScale;
use tussock_core::units::AsFed;

/// What the weighing of nets says.
pub trait NetsWords {
    /// The head: "Bramble, net 2 of 4".
    fn net_of(&self, name: &str, nth: usize, of: usize) -> String;
    /// What the slot says before the first key.
    fn hang_until(&self) -> &'static str;
    /// What it says from the first key on.
    fn scale_reads(&self) -> &'static str;
    /// What the target is made of: "3.60 hay + 0.75 net".
    fn hay_and_net(&self, hay: AsFed, own: &Own) -> String;
    /// The same for a net of a day that was laid out anew, with what to take out or put in where it is filled already.
    fn anew_reading(&self, net: &DayNet) -> String;
    /// Where the net's own weight comes from, when it was not weighed.
    fn own_from(&self, from: OwnFrom) -> Option<&'static str>;
    /// How a reading stands to its target.
    fn on_scale(&self, stands: OnScale) -> String;
    /// The same, with what to take out or put in counted in slices where their weight is known.
    fn on_scale_in(&self, stands: OnScale, slice: Option<AsFed>) -> String;
    /// A plus or minus key, as it is shown and as it is called.
    fn step_key(&self, step: AsFed, more: bool) -> [String; 2];
    /// A key of a slice, in the same way.
    fn slice_key(&self, slice: AsFed, more: bool) -> [String; 2];
    /// The head of a pass over several: whose net, which day where it is another than today, and how many there are.
    fn pass_head(&self, name: &str, nth: usize, of: usize, day: Option<&str>) -> String;
    /// The head of a pass over all.
    fn all_nets(&self) -> &'static str;
    /// Every net of a pass is filled.
    fn pass_weighed(&self, days: usize) -> String;
    /// No net of a pass is left, and not all were weighed.
    fn pass_none_left(&self, days: usize) -> String;
    /// A pass without any plan with nets.
    fn pass_empty(&self) -> &'static str;
    /// So many days, today the first, in the line of the pass.
    fn for_days(&self, days: usize) -> String;
    /// Takes the next day into the pass.
    fn add_a_day(&self, day: &str) -> String;
    /// What is wrong with a reading.
    fn reading_wrong(&self, wrong: &Wrong) -> String;
    /// "1 of 4 weighed, 3.6 of 14.4 kg hay today".
    fn weighed_of(&self, weighed: usize, of: usize, hay: [AsFed; 2], when: &str) -> String;
    /// Today, in that line.
    fn for_today(&self) -> &'static str;
    /// Another day, in that line.
    fn for_day(&self, day: &str) -> String;
    /// The primary action.
    fn save_next_net(&self) -> &'static str;
    /// The primary action at the last net.
    fn save_last_net(&self) -> &'static str;
    /// All that are left are filled to target.
    fn filled_to_target(&self, left: usize) -> String;
    /// Asks for the empty net's weight.
    fn weigh_empty_net(&self) -> &'static str;
    /// What the slot says then.
    fn empty_net_weighs(&self) -> &'static str;
    /// The primary action then.
    fn save_empty_net(&self) -> &'static str;
    /// Leaves the empty net's weight as it is.
    fn leave_empty_net(&self) -> &'static str;
    /// What a net is called, ending in its number: "Bramble, net 2".
    fn net_name(&self, name: &str, nth: usize) -> String;
    /// No net is left to weigh, and not all were weighed.
    fn none_left(&self, name: &str, when: &str) -> String;
    /// Every net of the day is filled.
    fn all_weighed(&self, name: &str, when: &str) -> String;
    /// Goes on with tomorrow's.
    fn tomorrows_nets(&self) -> &'static str;
    /// There is no plan with nets.
    fn no_nets(&self, name: &str) -> String;
    /// The action then.
    fn see_plan(&self) -> &'static str;
    /// The day's nets, as a list.
    fn nets_of_day(&self) -> &'static str;
    /// A small tag: weighed.
    fn net_weighed(&self) -> &'static str;
    /// A small tag: to be weighed.
    fn net_to_weigh(&self) -> &'static str;
    /// A small tag: hung or past, not weighed.
    fn net_past(&self) -> &'static str;
    /// It is soaked after weighing.
    fn before_soaking(&self) -> &'static str;
    /// The picture of the scale, with target and, once there is one, the reading.
    fn scale_picture(&self, target: AsFed, reading: Option<AsFed>) -> String;
    /// The pad, for screen readers.
    fn pad(&self) -> &'static str;
    /// Its point.
    fn point(&self) -> &'static str;
    /// Its erase key.
    fn erase(&self) -> &'static str;
    /// Changes to the phone's keyboard.
    fn phone_keys(&self) -> &'static str;
    /// Changes back.
    fn these_keys(&self) -> &'static str;
}
