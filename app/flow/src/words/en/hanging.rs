//! What hangs, in English.

use super::English;
use super::numbers::up_to;
use crate::forms::hanging::Wrong;
use crate::views::hanging::{Eats, HungNet};
use crate::words::{DayWords, HangingWords, LogWords, UnitWords};
use tussock_core::day::Timed;
use tussock_core::limits::Ends;
use tussock_core::log::TimedNet;
use tussock_core::log::bodies::Quarters;
use tussock_core::round::Job;
use tussock_core::units::{Instant, LocalDate, Zone};

impl HangingWords for English {
    fn what_was_left(&self) -> &'static str {
        "What was left"
    }
    fn nets_hang(&self, name: &str, count: usize) -> String {
        match count {
            1 => format!("{name}: what was left of the net"),
            _ => format!("{name}: what was left of {count} nets"),
        }
    }
    fn hangs(&self) -> &'static str {
        "hangs"
    }
    fn hangs_since(&self, at: Instant, today: LocalDate, zone: &dyn Zone) -> String {
        format!("since {}", self.moment(at, today, zone))
    }
    fn how_much_left(&self, net: &HungNet, today: LocalDate, zone: &dyn Zone) -> String {
        format!(
            "What is left of the net of {}?",
            self.moment(net.at, today, zone)
        )
    }
    fn nothing_hangs(&self, name: &str) -> String {
        format!("No net of {name}'s is open")
    }
    fn which_net(&self) -> &'static str {
        "Which net"
    }
    fn hung_net(&self, net: &HungNet, today: LocalDate, zone: &dyn Zone) -> String {
        let at = self.moment(net.at, today, zone);
        match &net.name {
            Some(name) => format!("{name}, hung {at}"),
            None => format!("Hung {at}"),
        }
    }
    fn left_by_eye(&self) -> &'static str {
        "What is left, by eye"
    }
    fn quarters(&self, quarters: Quarters) -> &'static str {
        match quarters {
            Quarters::None => "Nothing",
            Quarters::One => "A quarter",
            Quarters::Two => "Half",
            Quarters::Three => "Three quarters",
            Quarters::All => "All of it",
        }
    }
    fn eaten_up_now(&self) -> &'static str {
        "Eaten up now"
    }
    fn eaten_up_means(&self) -> &'static str {
        "You saw it eat the last of it: this times the net."
    }
    fn found_empty(&self) -> &'static str {
        "Found it empty"
    }
    fn found_empty_means(&self) -> &'static str {
        "Nobody saw the end: the time is the most it can have taken, and no rate."
    }
    fn weigh_back(&self) -> &'static str {
        "Weigh back"
    }
    fn by_eye_again(&self) -> &'static str {
        "By eye instead"
    }
    fn rest_weighs(&self) -> &'static str {
        "The net with the rest weighs"
    }
    fn rest_hint(&self, soaked: bool) -> &'static str {
        if soaked {
            "Net and all, wet as it is. It is set against the wet weight of the same net, never taken as dry."
        } else {
            "Net and all, as on the scale."
        }
    }
    fn wet_weighed(&self) -> &'static str {
        "The same net weighed, wet, when it was hung"
    }
    fn wet_hint(&self) -> &'static str {
        "Net and all. Not weighed then? Judge it by eye."
    }
    fn save_left(&self) -> &'static str {
        "Save what was left"
    }
    fn left_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Left(error) | Wrong::Hung(error) => self.parse_error(error),
            Wrong::Day(error) => self.day_error(error),
            Wrong::NotKnown => "Nobody knows how much hay hung in it: judge it by eye".to_owned(),
            Wrong::Log(error) => self.log_error(error),
        }
    }
    fn hardly_touched(&self, name: &str) -> [String; 2] {
        let name = if name.is_empty() { "it" } else { name };
        [
            format!("Hardly touched: offer {name} a handful of dry hay now"),
            "Eats it: feed other hay now, and ring the vet this morning if the net hung overnight. Refuses it or is dull: \
             ring the vet now."
                .to_owned(),
        ]
    }
    fn hung_now(&self, job: &Job) -> String {
        match job.amount {
            Some(hay) => format!("Hung now, {}", self.feed(hay)),
            None => "Hung now".to_owned(),
        }
    }
    fn soak_first(&self) -> &'static str {
        "Start the soak first"
    }
    fn eats_head(&self, name: &str) -> String {
        format!("How fast {name} eats")
    }
    fn eats(&self, eats: &Eats, soaked: bool) -> Option<String> {
        let [dry, wet] = &eats.own;
        let own = if soaked { wet } else { dry };
        let of = if soaked { "Soaked hay" } else { "Dry hay" };
        let least = own
            .at_least
            .map(|least| format!("at least {} kg of dry matter an hour", up_to(least, 2)));
        Some(match (&own.rate, least) {
            (Some(rate), _) => format!(
                "{of}: {} kg of dry matter an hour, from {} to {}, by {} timed",
                up_to(rate.likely, 2),
                up_to(rate.slow, 2),
                up_to(rate.fast, 2),
                self.count(own.timings, "net", "nets"),
            ),
            (None, Some(least)) => format!("{of}: {least}, by nets that were found empty"),
            (None, None) if soaked => return None,
            (None, None) => format!("{of}: not timed yet, the published rate stands in"),
        })
    }
    fn lasts(&self, eats: &Eats, net: &HungNet) -> Option<String> {
        let hay = net.dry?;
        let band = |hours: Ends<f64>| {
            format!(
                "about {} h, {} to {}",
                up_to(hours.likely, 1),
                up_to(hours.least, 1),
                up_to(hours.most, 1)
            )
        };
        if let Some(rate) = eats.own_rate(net.soaked).filter(|_| eats.kind == net.kind) {
            let own = band(rate.hours_for(hay));
            return Some(format!("This net lasts {own} at its own rate"));
        }
        Some(match eats.published(hay, net.kind) {
            Some(time) if 1.05 < time.slowing => format!(
                "This net lasts {} by the published rate. Its mean rate alone would say {} h: it slows down as it empties",
                band(time.hours),
                up_to(time.at_mean_rate, 1)
            ),
            Some(time) => format!("This net lasts {} by the published rate", band(time.hours)),
            None => "How long it lasts is not known before the animal is weighed".to_owned(),
        })
    }
    fn timed_line(&self, timed: &TimedNet, today: LocalDate, zone: &dyn Zone) -> String {
        let soaked = if timed.soaked { ", soaked" } else { "" };
        let hours = up_to(timed.hours, 1);
        let when = self.moment(timed.at, today, zone);
        match &timed.says {
            Some(Ok(Timed::Rate { kg_per_h })) => format!(
                "{when}{soaked}: {hours} h, {} kg of dry matter an hour",
                up_to(*kg_per_h, 2)
            ),
            Some(Ok(Timed::AtLeast { kg_per_h })) => format!(
                "{when}{soaked}: at most {hours} h, so at least {} kg an hour. No rate: nobody saw the end",
                up_to(*kg_per_h, 2)
            ),
            Some(Err(error)) => format!("{when}{soaked}: left out. {}", self.day_error(error)),
            None => format!("{when}{soaked}: {hours} h, of hay whose dry matter is not known"),
        }
    }
}
