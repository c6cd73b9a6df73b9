//! What would now differ from the plan in use, in English.

use super::English;
use crate::views::plan::Differs;
use crate::words::{PlanScreenWords, UnitWords};
use tussock_core::log::Difference;
use tussock_core::log::bodies::SugarSaid;
use tussock_core::units::{AsFed, LocalTime};

/// The plan in use beside today.
fn beside(held: &str, now: &str) -> String {
    format!("{held} in use, {now} today")
}

pub(super) fn differs(say: &English, differs: &Differs) -> [String; 2] {
    let name = || {
        differs
            .name
            .clone()
            .unwrap_or_else(|| say.a_balancer().to_owned())
    };
    let (about, says) = match &differs.what {
        Difference::Rules { held, now } => ("The rules".to_owned(), beside(held, now)),
        Difference::Weight { held, now } => {
            let of = |weight: &Option<_>| {
                weight.map_or_else(|| "not known".to_owned(), |weight| say.body(weight))
            };
            ("Its weight".to_owned(), beside(&of(held), &of(now)))
        }
        Difference::Level { held, now } => (
            "Dry matter a day".to_owned(),
            beside(&say.level(*held), &say.level(*now)),
        ),
        Difference::Lowest { held, now } => (
            "The lowest level allowed".to_owned(),
            beside(&say.level(*held), &say.level(*now)),
        ),
        Difference::Hay { held, now, .. } => (name(), beside(&fed(say, *held), &fed(say, *now))),
        Difference::Feed { held, now, .. } => {
            let of = |mass: &Option<AsFed>| {
                mass.map_or_else(|| "none".to_owned(), |mass| say.bucket(mass))
            };
            (name(), beside(&of(held), &of(now)))
        }
        Difference::Soaked { now: true, .. } => (name(), beside("fed as it comes", "soaked")),
        Difference::Soaked { now: false, .. } => (name(), beside("soaked", "fed as it comes")),
        Difference::Sugar { held, now, .. } => (
            format!("Sugar of {}", name()),
            beside(sugar(*held), sugar(*now)),
        ),
        Difference::Visits { held, now } => (
            "When somebody comes".to_owned(),
            beside(&times(say, held), &times(say, now)),
        ),
        Difference::Nets => (
            "Nets".to_owned(),
            "as much hay, shared over them otherwise".to_owned(),
        ),
        Difference::Recipe => (
            "Soaking".to_owned(),
            "other water or another time".to_owned(),
        ),
        Difference::Work { held, now } => {
            let of = |sessions: Option<i64>| match sessions {
                None => "none".to_owned(),
                Some(1) => "1 session".to_owned(),
                Some(sessions) => format!("{sessions} sessions"),
            };
            ("Work a week".to_owned(), beside(&of(*held), &of(*now)))
        }
        Difference::LookOver { held, now } => (
            "Days between look-overs".to_owned(),
            beside(&held.to_string(), &now.to_string()),
        ),
    };
    [about, says]
}

fn fed(say: &English, mass: Option<AsFed>) -> String {
    mass.map_or_else(|| "none".to_owned(), |mass| say.feed(mass))
}

const fn sugar(said: Option<SugarSaid>) -> &'static str {
    match said {
        Some(SugarSaid::Within) => "within the limit",
        Some(SugarSaid::Over) => "over it",
        Some(SugarSaid::NotProven) => "not proven",
        None => "not asked",
    }
}

fn times(say: &English, times: &[LocalTime]) -> String {
    let times: Vec<String> = times.iter().map(|time| say.time(*time)).collect();
    let times: Vec<&str> = times.iter().map(String::as_str).collect();
    if times.is_empty() {
        "not known".to_owned()
    } else {
        say.list(&times)
    }
}
