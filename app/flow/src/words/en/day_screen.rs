//! The labels of the day's screen.

use super::English;
use crate::views::day::DayLine;
use crate::views::shed::Standing;
use crate::words::{DayScreenWords, UnitWords};
use tussock_core::day::published::GAP_ALARM;
use tussock_core::day::{GapVerdict, RealDay, RealVerdict};
use tussock_core::log::{RestHanging, RestLaid, RestVerdict, WhyAnew};
use tussock_core::units::{DryMatter, Instant, LocalTime, Zone};

/// An hour of the day as a time, to the minute before.
#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "minutes of a day, below 1440 by the remainder"
)]
fn at_hour(hour: f64) -> Option<LocalTime> {
    let minutes = (hour.rem_euclid(24.0) * 60.0 + 1e-6).floor() as u32 % 1440;
    LocalTime::from_hms_opt(minutes / 60, minutes % 60, 0)
}

impl DayScreenWords for English {
    fn day_word(&self) -> &'static str {
        "day"
    }

    fn the_day_in_order(&self) -> &'static str {
        "The day, visit by visit"
    }

    fn day_sentence(&self, nets: usize, longest_h: f64) -> String {
        let nets = if nets == 1 {
            "1 net".to_owned()
        } else {
            format!("{nets} nets")
        };
        if 0.0 < longest_h {
            format!("{nets}, longest wait {}", self.wait(longest_h))
        } else {
            format!("{nets}, forage at all hours")
        }
    }

    fn no_day(&self) -> &'static str {
        "No day yet: use a plan first"
    }

    fn line_time(&self, line: &DayLine) -> String {
        match line {
            DayLine::Net { visit, .. } | DayLine::Nothing { visit } => self.time(*visit),
            DayLine::Wait { gap, .. } => {
                at_hour(gap.from_hour).map_or_else(String::new, |time| self.time(time))
            }
        }
    }

    fn line_stands(&self, line: &DayLine) -> &'static str {
        match line {
            DayLine::Net { standing, .. } => match standing {
                Standing::Done => "hung",
                Standing::Late => "not hung",
                _ => "later",
            },
            DayLine::Nothing { .. } => "later",
            DayLine::Wait { verdict, .. } => match verdict {
                GapVerdict::Planned => "within",
                GapVerdict::Care => "long",
                GapVerdict::OverTheLine => "too long",
            },
        }
    }

    fn line_what(&self, line: &DayLine) -> String {
        match line {
            DayLine::Net { as_fed, .. } => format!("Hang {}", self.feed(*as_fed)),
            DayLine::Nothing { .. } => "Nothing to hang".to_owned(),
            DayLine::Wait { gap, .. } => format!("No forage for {}", self.wait(gap.hours)),
        }
    }

    fn line_second(&self, line: &DayLine, zone: &dyn Zone) -> String {
        match line {
            DayLine::Net { hung: Some(at), .. } => format!("hung at {}", self.time_at(*at, zone)),
            DayLine::Net { soaked: true, .. } => "weighed before soaking".to_owned(),
            DayLine::Net { .. } => "hay in the net".to_owned(),
            DayLine::Nothing { .. } => "what hangs already lasts, or is kept for later".to_owned(),
            DayLine::Wait { gap, .. } => at_hour(gap.from_hour + gap.hours)
                .map_or_else(String::new, |time| {
                    format!("until {}, for a fast eater", self.time(time))
                }),
        }
    }

    fn wait_accepted(&self, hours: f64) -> String {
        format!(
            "Accepted: a wait of up to {}. You are told when the real day is worse by more than {}.",
            self.wait(hours),
            self.hours_beside(*GAP_ALARM, *GAP_ALARM)
        )
    }

    fn accept_this(&self, longest_h: f64) -> String {
        format!("Accept a wait of {}", self.wait(longest_h))
    }

    fn accepting_means(&self) -> &'static str {
        "Mend it first if you can: long waits went with more stomach ulcers. Accepting is asked once for this wait, and again when a later plan waits longer."
    }

    fn has_forage(&self, real: &RealDay, now: Instant, zone: &dyn Zone) -> String {
        if let Some(from) = real.not_known_from {
            return format!(
                "A net that nobody weighed hangs since {}: what it has is not known from then on. Say what is left, or feed by eye.",
                self.time_at(from, zone)
            );
        }
        match real.forage_until {
            None => "Nobody wrote down what hangs.".to_owned(),
            Some(until) if now < until => {
                let fast = self.time_at(until, zone);
                match real.likely_until.map(|at| self.time_at(at, zone)) {
                    Some(likely) if likely != fast => {
                        format!("Forage until {fast} for a fast eater, likely until {likely}.")
                    }
                    _ => format!("Forage until {fast}."),
                }
            }
            Some(until) => format!(
                "A fast eater has been without forage since {}: {} now.",
                self.time_at(until, zone),
                self.wait(real.waits_h)
            ),
        }
    }

    fn real_is_worse(&self, name: &str, real: &RealDay) -> String {
        match real.beside {
            RealVerdict::FeedNow => format!("Feed {name} now"),
            RealVerdict::Worse { by_h } => format!(
                "{name} waited {} longer than accepted",
                self.hours_beside(by_h, *GAP_ALARM)
            ),
            RealVerdict::AsAccepted => format!("{name} is fed as accepted"),
        }
    }

    fn feed_what(&self) -> &'static str {
        "Hang the next net now, or a handful of hay until it is ready. If it does not eat when hay is offered, ring the vet."
    }

    fn see_the_day(&self, name: &str) -> String {
        format!("The day of {name}")
    }

    fn rest_of_today(&self, hangings: &[RestHanging]) -> String {
        if hangings.is_empty() {
            return "Rest of today: nothing more to hang".to_owned();
        }
        let each: Vec<String> = hangings
            .iter()
            .map(|hanging| {
                let when = if hanging.now {
                    "now".to_owned()
                } else {
                    format!("at {}", self.time(hanging.visit))
                };
                format!("{} {when}", self.feed(hanging.as_fed))
            })
            .collect();
        format!("Rest of today: hang {}", each.join(", "))
    }

    fn why_anew(&self, why: WhyAnew) -> String {
        let visit = self.time(why.visit());
        let late = |by| self.span(by);
        match why {
            WhyAnew::Missed { .. } => {
                format!("Nobody wrote down that the net of {visit} hangs.")
            }
            WhyAnew::HungLate { by, .. } => {
                format!("The net of {visit} was hung {} late.", late(by))
            }
            WhyAnew::Late { by, .. } => format!("The net of {visit} is {} late.", late(by)),
        }
    }

    fn rest_leaves(&self, laid: &RestLaid) -> Vec<String> {
        let mut said = vec![if 0.0 < laid.longest_h {
            format!(
                "Longest wait until tomorrow's first visit {}, for a fast eater.",
                self.wait(laid.longest_h)
            )
        } else {
            "Forage until tomorrow's first visit, for a fast eater too.".to_owned()
        }];
        if DryMatter::ZERO < laid.over {
            said.push(format!(
                "{} of dry matter finds no place today. It is not made up for tomorrow.",
                super::numbers::kg_above_nothing(laid.over.to_kg())
            ));
        }
        said
    }

    fn rest_cannot(&self, verdict: &RestVerdict) -> Option<&'static str> {
        match verdict {
            RestVerdict::Laid(_) => None,
            RestVerdict::NoVisitLeft => Some(
                "No visit is left today: hang what was missed now, or it waits until tomorrow.",
            ),
            RestVerdict::NotKnown => Some(
                "A net hangs that nobody weighed: what is left of today's amount is not known.",
            ),
        }
    }

    fn hang_rest_so(&self) -> &'static str {
        "Hang the rest so"
    }

    fn hanging_so_means(&self) -> &'static str {
        "For today only: tomorrow is the plan again. If the net did hang, write it down on the round instead."
    }

    fn day_anew(&self, left: usize) -> String {
        match left {
            0 => "Today laid out anew: all hangs".to_owned(),
            1 => "Today laid out anew: 1 visit left".to_owned(),
            left => format!("Today laid out anew: {left} visits left"),
        }
    }

    fn weigh_the_nets(&self) -> &'static str {
        "Weigh nets"
    }

    fn see_the_plan(&self) -> &'static str {
        "See the plan"
    }
}
