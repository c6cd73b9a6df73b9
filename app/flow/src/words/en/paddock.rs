//! The paddock in English.

use super::English;
use crate::forms::turnout::Wrong;
use crate::views::paddock::picture::{DayCord, Label};
use crate::views::paddock::{ByPlan, Goes, Out, Outing, Stands, WeekDay, WhyBy};
use crate::words::{GrassWords, LogWords, PaddockWords, PlanWords, Said, UnitWords};
use tussock_core::graze::sun::SunDay;
use tussock_core::graze::window::{Begins, Care, Stretch, Window};
use tussock_core::log::bodies::Chip;
use tussock_core::units::{LocalDate, Span, Zone};

/// What is left of a plan's time, when it is shorter than what is open.
fn of_it(goes: &Goes, stretch: &Stretch) -> Option<Span> {
    let open = stretch.to.since(stretch.from);
    goes.left().filter(|left| *left < open)
}

impl PaddockWords for English {
    fn paddock(&self) -> &'static str {
        "Paddock"
    }
    fn grass_sentence(&self, goes: &Goes, zone: &dyn Zone) -> String {
        match &goes.stands {
            Stands::Out => match &goes.out {
                Some(out) => {
                    let who = out.with.as_ref().unwrap_or(&goes.name);
                    format!("Bring in {who} by {}", self.time_at(out.by, zone))
                }
                None => self.bring_in(&goes.name),
            },
            Stands::Late => {
                let with = goes.out.as_ref().and_then(|out| out.with.as_ref());
                format!("Bring in {} now", with.unwrap_or(&goes.name))
            }
            Stands::Closed => self.no_grass_today().to_owned(),
            Stands::HadIt => format!("{}: no more grass today", goes.name),
            Stands::Open(stretch) => {
                let to = self.time_at(stretch.to, zone);
                match of_it(goes, stretch) {
                    Some(left) => format!("Open until {to}, {} of it", self.span(left)),
                    None => format!("Grass is open until {to}"),
                }
            }
            Stands::Opens(stretch) => {
                let open = self.stretch(stretch, zone);
                match of_it(goes, stretch) {
                    Some(left) => format!("Open from {open}, {} of it", self.span(left)),
                    None => format!("Open from {open}"),
                }
            }
            Stands::Over(Some(at)) => format!("Grass closed at {}", self.time_at(*at, zone)),
            Stands::Over(None) => "Grass is not open today".to_owned(),
        }
    }
    fn grass_stands(&self, stands: &Stands) -> &'static str {
        match stands {
            Stands::Out => "out",
            Stands::Late => "late",
            Stands::Closed => "closed",
            Stands::HadIt => "had its time",
            Stands::Open(_) => "open",
            Stands::Opens(_) => "opens later",
            Stands::Over(_) => "over for today",
        }
    }
    fn grass_line(&self, goes: &Goes, zone: &dyn Zone) -> String {
        match &goes.stands {
            Stands::Closed => match goes.window.closed.first() {
                Some(closed) => self.closed(closed).sentence,
                None => self.no_grass_today().to_owned(),
            },
            Stands::Out
            | Stands::Late
            | Stands::HadIt
            | Stands::Open(_)
            | Stands::Opens(_)
            | Stands::Over(_) => self.grass_sentence(goes, zone),
        }
    }
    fn no_grass_today(&self) -> &'static str {
        "No grass today"
    }
    fn out_since(&self, out: &Out, zone: &dyn Zone) -> String {
        format!(
            "Out since {}. In by {}: {}.",
            self.time_at(out.since, zone),
            self.time_at(out.by, zone),
            self.why_by(out.why)
        )
    }
    fn why_by(&self, why: WhyBy) -> &'static str {
        match why {
            WhyBy::Closes => "grass closes",
            WhyBy::Closed => "grass is closed for it",
            WhyBy::Plan => "its plan carries no more",
            WhyBy::Muzzle => "a muzzle stays on at most 10 h",
            WhyBy::Said => "as was said when it went out",
        }
    }
    fn by_plan(&self, goes: &Goes) -> Option<Said> {
        let name = &goes.name;
        match &goes.plan {
            ByPlan::NoPlan => Some(Said::because(
                format!("{name} has no plan to hold grass against"),
                "Without a plan nobody knows how much of a day grass may be.",
            )),
            ByPlan::NotDecided => Some(Said::because(
                format!("Nobody decided how {name} goes out: its plan has no grass"),
                "It is at risk. Say how long, where and with what, and the plan says how much of it there is room for.",
            )),
            ByPlan::NotCounted => Some(Said::because(
                "What it eats at grass comes on top of its plan",
                "Say how it goes out, and the plan counts it.",
            )),
            ByPlan::Stopped => None,
            ByPlan::Carries {
                time,
                asked,
                shortened,
            } => {
                let line = format!(
                    "Its plan carries {} a day of {} asked for",
                    self.span(*time),
                    self.span(*asked)
                );
                let why: Vec<&str> = shortened.iter().map(|why| self.shortened(*why)).collect();
                Some(if why.is_empty() {
                    Said::plain(line)
                } else {
                    Said::because(line, format!("Shorter, because {}.", self.list(&why)))
                })
            }
        }
    }
    fn set_by(&self, name: &str) -> String {
        format!("{name} sets it for all of them: the most at risk.")
    }
    fn no_small_risk(&self) -> &'static str {
        "Nothing here makes grass a small risk."
    }
    fn clock_of_yard(&self) -> Said {
        Said::because(
            "This phone's clock is not that of the yard",
            "All times here are those of the yard's own clock.",
        )
    }
    fn last_night_and_sky(&self) -> &'static str {
        "Last night and the sky"
    }
    fn weather_line(&self, chips: &[Chip]) -> Option<String> {
        let night = [Chip::NightFiveOrUnder, Chip::NightOverFive, Chip::HardFrost];
        let has = |chip: Chip| chips.contains(&chip);
        night.iter().any(|chip| has(*chip)).then(|| {
            let said: Vec<&str> = chips.iter().map(|chip| self.chip(*chip)).collect();
            format!("{}.", said.join(", "))
        })
    }
    fn change_weather(&self) -> &'static str {
        "Change the weather"
    }
    fn turn_out(&self, name: &str) -> String {
        format!("Turn out {name}")
    }
    fn bring_in(&self, name: &str) -> String {
        format!("Bring in {name}")
    }
    fn out_already(&self) -> &'static str {
        "It is out already: write it down"
    }
    fn say_how_out(&self, name: &str) -> String {
        format!("Say how {name} goes out")
    }
    fn which_paddock(&self) -> &'static str {
        "Onto which paddock"
    }
    fn muzzle_asked(&self) -> &'static str {
        "Muzzle"
    }
    fn muzzled(&self, on: bool) -> &'static str {
        if on { "With a muzzle" } else { "Without" }
    }
    fn day_picture(&self, window: &Window, zone: &dyn Zone) -> String {
        let open: Vec<String> = window
            .opens
            .iter()
            .map(|stretch| self.stretch(stretch, zone))
            .collect();
        let open: Vec<&str> = open.iter().map(String::as_str).collect();
        let grass = if open.is_empty() {
            "grass is closed".to_owned()
        } else {
            format!("grass is open {}", self.list(&open))
        };
        let sun = |at: Option<_>, what: &str| {
            at.map_or_else(String::new, |at| {
                format!(", {what} {}", self.time_at(at, zone))
            })
        };
        format!(
            "The day from 04:00 to 22:00: {grass}{}{}",
            sun(window.sun.and_then(SunDay::sunrise), "sunrise"),
            sun(window.sun.and_then(SunDay::sunset), "sunset"),
        )
    }
    fn day_label(&self, label: &Label) -> String {
        match label {
            Label::Sunrise => "sunrise".to_owned(),
            Label::Opens => "opens".to_owned(),
            Label::OpenFor(span) => format!("open {}", self.span(*span)),
            Label::Closes => "closes".to_owned(),
            Label::Now => "now".to_owned(),
            Label::Sunset => "sunset".to_owned(),
        }
    }
    fn day_sugar(&self) -> &'static str {
        "Thin line: sugar through an average day, 2 to 3 points over the day. Frost, season and species are worth 10 or more."
    }
    fn day_table(&self) -> &'static str {
        "The day, by the clock of the yard"
    }
    fn day_columns(&self) -> [&'static str; 2] {
        ["What", "When"]
    }
    fn day_rows(&self, window: &Window, cord: &DayCord, zone: &dyn Zone) -> Vec<Vec<String>> {
        let mut rows: Vec<Vec<String>> = cord
            .labels
            .iter()
            .filter(|label| !matches!(label.what, Label::OpenFor(_)))
            .filter_map(|label| {
                let word = self.day_label(&label.what);
                Some(vec![word, self.time_at(label.at?, zone)])
            })
            .collect();
        rows.extend(window.opens.iter().map(|stretch| {
            let long = self.span(stretch.to.since(stretch.from));
            vec![format!("open {long}"), self.stretch(stretch, zone)]
        }));
        rows.push(vec![
            "the latest on any day without cloud or shade".to_owned(),
            self.time_at(window.latest, zone),
        ]);
        rows
    }
    fn day_numbers(&self) -> &'static str {
        "All numbers"
    }
    fn others_out(&self) -> &'static str {
        "The others"
    }
    fn last_turnouts(&self) -> &'static str {
        "Turnouts of the last two weeks"
    }
    fn no_turnout_yet(&self) -> &'static str {
        "None written down yet"
    }
    fn outing(&self, outing: &Outing, today: LocalDate, zone: &dyn Zone) -> String {
        let out = self.moment(outing.out, today, zone);
        match outing.body.came_in {
            Some(at) => format!("{out} to {}", self.time_at(at, zone)),
            None => format!("{out}, still out"),
        }
    }
    fn outing_time(&self, time: Option<Span>) -> String {
        time.map_or_else(|| "out".to_owned(), |time| self.span(time))
    }
    fn outing_second(&self, outing: &Outing) -> String {
        let mut parts: Vec<String> = outing.paddock.iter().cloned().collect();
        parts.extend(outing.with.as_ref().map(|group| format!("with {group}")));
        if outing.body.muzzle {
            parts.push("muzzled".to_owned());
        }
        match outing.dry {
            Some(dry) => parts.push(format!("by a model {}", self.dry_ends(dry))),
            None if outing.time.is_some() => parts.push("what it ate is not known".to_owned()),
            None => {}
        }
        parts.join(", ")
    }
    fn was_not_out(&self) -> &'static str {
        "It was not out"
    }
    fn correct_out_times(&self) -> &'static str {
        "Correct a time"
    }
    fn out_at(&self) -> &'static str {
        "Went out at"
    }
    fn in_at(&self) -> &'static str {
        "Came in at; empty while it is out"
    }
    fn turnout_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Time(typed) if typed.is_empty() => "Type a time, as 6:05.".to_owned(),
            Wrong::Time(typed) => format!("{typed:?} is no time. Type it as 6:05."),
            Wrong::Day(typed) => format!("{typed:?} is no day. Type it as 2026-04-12."),
            Wrong::ToCome => "That is still to come.".to_owned(),
            Wrong::BeforeOut => "That is still to come, or before it went out.".to_owned(),
            Wrong::NoRemark => "Say in the remark what it was.".to_owned(),
        }
    }
    fn the_paddocks(&self) -> &'static str {
        "Paddocks"
    }
    fn no_paddock_yet(&self) -> &'static str {
        "No paddock written down yet"
    }
    fn add_a_paddock(&self) -> &'static str {
        "Add a paddock"
    }
    fn grass_week(&self) -> &'static str {
        "Week"
    }
    fn grass_season(&self) -> &'static str {
        "Season"
    }
    fn grass_plants(&self) -> &'static str {
        "Grasses and plants"
    }
    fn how_it_goes_out(&self) -> &'static str {
        "How it goes out"
    }
    fn grass_rests_on(&self) -> &'static str {
        "What the reckoning rests on"
    }
    fn where_yard_lies(&self) -> &'static str {
        "Where the yard lies"
    }
    fn say_where_yard_lies(&self) -> &'static str {
        "Say where the yard lies"
    }
    fn week_sentence(&self, name: &str) -> String {
        format!("{name}: grass this week")
    }
    fn week_word(&self, day: &WeekDay) -> &'static str {
        match (day.window.closed.is_empty(), day.today) {
            (false, _) => "closed",
            (true, true) => "open",
            (true, false) => "may be open",
        }
    }
    fn week_day(&self, day: &WeekDay, zone: &dyn Zone) -> String {
        let date = self.day(day.day);
        if let Some(closed) = day.window.closed.first() {
            let why = super::fields::small(&self.closed(closed).sentence);
            return format!("{date}: closed, {why}");
        }
        let open: Vec<String> = day
            .window
            .opens
            .iter()
            .map(|stretch| match stretch.begins {
                Begins::Clock if day.window.sun.is_none() => {
                    format!("until {}", self.time_at(stretch.to, zone))
                }
                Begins::Sunrise | Begins::Clock | Begins::LateEvening => {
                    self.stretch(stretch, zone)
                }
            })
            .collect();
        let open: Vec<&str> = open.iter().map(String::as_str).collect();
        format!("{date}: {}", self.list(&open))
    }
    fn week_second(&self, day: &WeekDay) -> String {
        if !day.window.closed.is_empty() {
            let more = day.window.closed.iter().skip(1);
            let more: Vec<String> = more
                .map(|closed| super::fields::small(&self.closed(closed).sentence))
                .collect();
            let more: Vec<&str> = more.iter().map(String::as_str).collect();
            return if more.is_empty() {
                String::new()
            } else {
                format!("Also: {}.", self.list(&more))
            };
        }
        if day.window.care.contains(&Care::IfNightOver5) {
            "If the night stays over 5 °C.".to_owned()
        } else {
            self.why_to(day.window.why_to).to_owned()
        }
    }
    fn week_why(&self) -> Said {
        Said::because(
            "No forecast is asked for: days to come hold if the night stays over 5 °C",
            "Each morning last night's chip decides. Nothing here makes grass a small risk.",
        )
    }
}
