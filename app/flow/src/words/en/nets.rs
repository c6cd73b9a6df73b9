//! The scale in English.

use super::English;
use crate::forms::nets::Wrong;
use crate::views::nets::{DayNet, Mending, Own, OwnFrom};
use crate::words::{LogWords, NetsWords, RoundWords, UnitWords};
use tussock_core::day::{OnScale, slices_in};
use tussock_core::units::AsFed;

impl NetsWords for English {
    fn net_of(&self, name: &str, nth: usize, of: usize) -> String {
        format!("{name}, net {nth} of {of}")
    }
    fn hang_until(&self) -> &'static str {
        "Hang until the scale reads"
    }
    fn scale_reads(&self) -> &'static str {
        "The scale reads"
    }
    fn hay_and_net(&self, hay: AsFed, own: &Own) -> String {
        let from = self
            .own_from(own.from)
            .map(|from| format!(", {from}"))
            .unwrap_or_default();
        format!(
            "{} hay + {} net{from}",
            self.feed_number(hay),
            self.feed_number(own.weight)
        )
    }
    fn anew_reading(&self, net: &DayNet) -> String {
        let made = self.hay_and_net(net.hay, &net.own);
        let soaked = if net.soaked {
            format!(", {}", self.before_soaking())
        } else {
            String::new()
        };
        let grass = net.anew.as_ref().and_then(|anew| anew.less_for_grass);
        let why = grass.map(|less| self.less_for_grass(less));
        let made = match &why {
            Some(why) => format!("{made}{soaked}. {why}"),
            None => format!("{made}{soaked}"),
        };
        match net.mending() {
            Some(Mending::TakeOut(out)) => {
                format!("{made}. Filled already: take out {}", self.feed(out))
            }
            Some(Mending::PutIn(more)) => {
                format!("{made}. Filled already: put in {}", self.feed(more))
            }
            None if why.is_some() => made,
            None => format!("{made}. Today is laid out anew"),
        }
    }
    fn own_from(&self, from: OwnFrom) -> Option<&'static str> {
        match from {
            OwnFrom::This => None,
            OwnFrom::Another => Some("as another net"),
            OwnFrom::Default => Some("a default"),
        }
    }
    fn on_scale(&self, stands: OnScale) -> String {
        match stands {
            OnScale::Within => "Within 50 g".to_owned(),
            OnScale::Over { by } => format!("{} over. Take out {}", self.feed(by), some(by)),
            OnScale::Short { by } => format!("{} short. Put in {}", self.feed(by), some(by)),
            OnScale::Half { by } => format!(
                "{} short, about half. Read it again, or save it as it is",
                self.feed(by)
            ),
            OnScale::Double { by } => format!(
                "{} over, about double. Read it again, or save it as it is",
                self.feed(by)
            ),
            OnScale::NoHay => "The empty net weighs as much".to_owned(),
        }
    }
    fn on_scale_in(&self, stands: OnScale, slice: Option<AsFed>) -> String {
        let counted = |by: AsFed| slice.and_then(|slice| slices_in(by, slice));
        match stands {
            OnScale::Over { by } if counted(by).is_some() => {
                let some = counted(by).map(|count| self.slices(count));
                format!(
                    "{} over. Take out {}",
                    self.feed(by),
                    some.unwrap_or_default()
                )
            }
            OnScale::Short { by } if counted(by).is_some() => {
                let some = counted(by).map(|count| self.slices(count));
                format!(
                    "{} short. Put in {}",
                    self.feed(by),
                    some.unwrap_or_default()
                )
            }
            stands => self.on_scale(stands),
        }
    }
    fn step_key(&self, step: AsFed, more: bool) -> [String; 2] {
        let [sign, word] = more_or_less(more);
        let step = self.feed_tenths(step);
        let unit = self.mass_unit(self.shown.mass);
        [format!("{sign}{step}"), format!("{step} {unit} {word}")]
    }
    fn slice_key(&self, slice: AsFed, more: bool) -> [String; 2] {
        let [sign, word] = more_or_less(more);
        let one = self.shown.region.slice;
        let shown = format!("{sign}1 {one}");
        [shown, format!("1 {one} {word}, {}", self.feed(slice))]
    }
    fn pass_head(&self, name: &str, nth: usize, of: usize, day: Option<&str>) -> String {
        let head = self.net_of(name, nth, of);
        match day {
            Some(day) => format!("{head}, {day}"),
            None => head,
        }
    }
    fn all_nets(&self) -> &'static str {
        "All nets"
    }
    fn pass_weighed(&self, days: usize) -> String {
        format!("All nets are filled {}", self.for_days(days))
    }
    fn pass_none_left(&self, days: usize) -> String {
        format!("Nothing left to weigh {}", self.for_days(days))
    }
    fn pass_empty(&self) -> &'static str {
        "No plan with nets here yet"
    }
    fn for_days(&self, days: usize) -> String {
        match days {
            0 | 1 => self.for_today().to_owned(),
            2 => "for today and tomorrow".to_owned(),
            _ => format!("for {days} days"),
        }
    }
    fn add_a_day(&self, day: &str) -> String {
        format!("{day}'s nets as well")
    }
    fn reading_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Parse(error) => self.parse_error(error),
            Wrong::NoHay => {
                "The empty net weighs as much: read the scale again, or weigh the empty net"
                    .to_owned()
            }
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn weighed_of(&self, weighed: usize, of: usize, hay: [AsFed; 2], when: &str) -> String {
        let [done, all] = hay.map(|hay| self.feed_tenths(hay));
        let unit = self.mass_unit(self.shown.mass);
        format!("{weighed} of {of} weighed, {done} of {all} {unit} hay {when}")
    }
    fn for_today(&self) -> &'static str {
        "today"
    }
    fn for_day(&self, day: &str) -> String {
        format!("for {day}")
    }
    fn save_next_net(&self) -> &'static str {
        "Save, next net"
    }
    fn save_last_net(&self) -> &'static str {
        "Save the last net"
    }
    fn filled_to_target(&self, left: usize) -> String {
        match left {
            1 => "Filled to target".to_owned(),
            2 => "Both filled to target".to_owned(),
            _ => format!("All {left} filled to target"),
        }
    }
    fn weigh_empty_net(&self) -> &'static str {
        "Weigh the empty net"
    }
    fn empty_net_weighs(&self) -> &'static str {
        "The empty net weighs"
    }
    fn save_empty_net(&self) -> &'static str {
        "Save the empty net"
    }
    fn leave_empty_net(&self) -> &'static str {
        "Back to the hay"
    }
    fn net_name(&self, name: &str, nth: usize) -> String {
        format!("{name}, net {nth}")
    }
    fn none_left(&self, name: &str, when: &str) -> String {
        format!("Nothing is left to weigh for {name} {when}")
    }
    fn all_weighed(&self, name: &str, when: &str) -> String {
        format!("{name}'s nets are filled {when}")
    }
    fn tomorrows_nets(&self) -> &'static str {
        "Weigh tomorrow's nets"
    }
    fn no_nets(&self, name: &str) -> String {
        if name.is_empty() {
            "No plan with nets here yet".to_owned()
        } else {
            format!("{name} has no plan with nets yet")
        }
    }
    fn see_plan(&self) -> &'static str {
        "See the plan"
    }
    fn nets_of_day(&self) -> &'static str {
        "Nets of the day"
    }
    fn net_weighed(&self) -> &'static str {
        "weighed"
    }
    fn net_to_weigh(&self) -> &'static str {
        "to weigh"
    }
    fn net_past(&self) -> &'static str {
        "not weighed"
    }
    fn before_soaking(&self) -> &'static str {
        "before soaking"
    }
    fn scale_picture(&self, target: AsFed, reading: Option<AsFed>) -> String {
        let target = self.feed(target);
        match reading {
            None => format!("The target is {target}, within 50 g either way"),
            Some(reading) => format!(
                "The scale reads {}, the target is {target}",
                self.feed(reading)
            ),
        }
    }
    fn pad(&self) -> &'static str {
        "Keys for the reading"
    }
    fn point(&self) -> &'static str {
        "point"
    }
    fn erase(&self) -> &'static str {
        "erase"
    }
    fn phone_keys(&self) -> &'static str {
        "Phone's keyboard"
    }
    fn these_keys(&self) -> &'static str {
        "Keys on the screen"
    }
}

/// A sign and a word.
const fn more_or_less(more: bool) -> [&'static str; 2] {
    if more {
        ["+", "more"]
    } else {
        ["\u{2212}", "less"]
    }
}

impl English {
    /// "2 slices", "half a slice", in the region's word.
    fn slices(&self, count: f64) -> String {
        let (one, more) = (self.shown.region.slice, self.shown.region.slices);
        if count < 1.0 {
            format!("half a {one}")
        } else if count.to_bits() == 1.0_f64.to_bits() {
            format!("1 {one}")
        } else {
            format!("{count} {more}")
        }
    }
}

/// How a person takes that much out or puts it in.
fn some(by: AsFed) -> &'static str {
    let kg = by.to_kg();
    if kg < 0.3 {
        "a handful"
    } else if kg < 1.0 {
        "an armful"
    } else {
        "some"
    }
}
