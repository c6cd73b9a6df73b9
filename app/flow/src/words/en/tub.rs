//! A soak tub in English.

use super::English;
use super::numbers::{between, up_to};
use crate::forms::tub::Wrong;
use crate::words::{LogWords, SoakWords, TubWords, UnitWords};
use tussock_core::soak::{LossBand, SugarLoss, TubState};
use tussock_core::units::{AsFed, Instant, Zone};

/// Minutes in an hour, as figures are split.
const HOUR: i64 = 60;

impl TubWords for English {
    fn tub_name(&self, nth: usize) -> String {
        format!("Tub {nth}")
    }
    fn the_tub(&self) -> &'static str {
        "The tub"
    }
    fn slot_head(&self, state: &TubState) -> &'static str {
        match state {
            TubState::LiftOut { late, .. } if late.to_minutes() < 1 => "Lift out now",
            TubState::Fed { .. } => "Fed. Throw away what is left in",
            other => self.tub_head(other),
        }
    }
    fn slot_note(&self, state: &TubState, now: Instant, zone: &dyn Zone) -> String {
        let time = |at| self.time_at(at, zone);
        let it_is = time(now);
        match state {
            TubState::InWater { lift_out, .. } => format!("at {}. It is {it_is}.", time(*lift_out)),
            TubState::LiftOut { due, .. } => format!("due at {}. It is {it_is}.", time(*due)),
            TubState::Draining { drained, .. } => format!("at {}. It is {it_is}.", time(*drained)),
            TubState::Feed { throw_away, .. } | TubState::Fed { throw_away, .. } => {
                format!("at {}. It is {it_is}.", time(*throw_away))
            }
            TubState::ThrowAway { since, .. } => {
                format!("due at {}. It is {it_is}.", time(*since))
            }
            TubState::Empty => String::new(),
            TubState::Done { at, .. } => format!("at {}", time(*at)),
        }
    }
    fn figures(&self, minutes: i64) -> Vec<(String, &'static str)> {
        let minutes = minutes.max(0);
        let (hours, rest) = (minutes / HOUR, minutes % HOUR);
        if hours == 0 {
            vec![(rest.to_string(), "min")]
        } else {
            vec![(hours.to_string(), "h"), (rest.to_string(), "min")]
        }
    }
    fn throw_away(&self) -> &'static str {
        "Throw away"
    }
    fn since_it_went_in(&self) -> &'static str {
        "since it went in"
    }
    fn feeds_like(&self, hay: AsFed, like: Option<AsFed>) -> String {
        let unit = self.mass_unit(self.shown.mass);
        let hay = self.feed_tenths(hay);
        match like {
            Some(like) => format!(
                "{hay} {unit} before soaking, feeds like about {}",
                self.feed_tenths(like)
            ),
            None => format!("{hay} {unit} before soaking"),
        }
    }
    fn expect_less_sugar(&self, loss: &SugarLoss) -> String {
        let band = |band: LossBand| {
            between(
                &up_to(band.low * 100.0, 0),
                &up_to(band.high * 100.0, 0),
                "to",
            )
        };
        format!(
            "Expect {} % less sugar; between hays it was {} %.",
            band(loss.expected),
            band(loss.between_hays)
        )
    }
    fn not_proven_until(&self) -> &'static str {
        "Not proven until soaked hay is tested."
    }
    fn correct_a_time(&self) -> &'static str {
        "Correct a time"
    }
    fn save_times(&self) -> &'static str {
        "Save the times"
    }
    fn leave_times(&self) -> &'static str {
        "Leave them"
    }
    fn went_in_at(&self) -> &'static str {
        "In the water at"
    }
    fn lifted_at(&self) -> &'static str {
        "Lifted out at"
    }
    fn fed_at(&self) -> &'static str {
        "Fed at"
    }
    fn time_hint(&self) -> &'static str {
        "By the clock, as 6:05."
    }
    fn stop_this_tub(&self) -> &'static str {
        "Stop this tub"
    }
    fn step_done(&self) -> &'static str {
        "done"
    }
    fn step_due(&self) -> &'static str {
        "due"
    }
    fn step_late(&self) -> &'static str {
        "late"
    }
    fn step_now(&self) -> &'static str {
        "now"
    }
    fn why_asked(&self) -> &'static str {
        "Why"
    }
    fn tub_next(&self, state: &TubState) -> &'static str {
        match state {
            TubState::InWater { .. } | TubState::LiftOut { .. } => "lift out",
            TubState::Draining { .. } => "drained",
            TubState::Feed { .. } => "feed it",
            TubState::Fed { .. } => "throw away the rest",
            TubState::ThrowAway { .. } => "throw away",
            TubState::Empty => "empty",
            TubState::Done { .. } => "over",
        }
    }
    fn tub_stands(&self, state: &TubState) -> String {
        match state {
            TubState::LiftOut { late, .. } if 0 < late.to_minutes() => {
                format!("{} late", self.span(*late))
            }
            TubState::LiftOut { .. } | TubState::Feed { .. } => self.step_due().to_owned(),
            TubState::ThrowAway { .. } => self.step_now().to_owned(),
            _ => String::new(),
        }
    }
    fn tub_wants(&self, tub: &str, state: &TubState) -> String {
        let stands = self.tub_stands(state);
        let next = self.tub_next(state);
        if stands.is_empty() {
            format!("{tub}: {next}")
        } else {
            format!("{tub}: {next}, {stands}")
        }
    }
    fn open_tub(&self, tub: &str) -> String {
        format!("Go to {}", super::fields::small(tub))
    }
    fn cord_of_tub(&self) -> &'static str {
        "This soak, step by step"
    }
    fn nothing_in(&self, tub: &str) -> String {
        format!("{tub}: nothing in the water")
    }
    fn no_such_tub(&self) -> &'static str {
        "This soak is not here"
    }
    fn to_the_shed(&self) -> &'static str {
        "To the shed"
    }
    fn soak_what(&self) -> &'static str {
        "What goes into the water?"
    }
    fn soak_for(&self) -> &'static str {
        "For whom"
    }
    fn for_the_yard(&self) -> &'static str {
        "The whole yard"
    }
    fn soak_lot(&self) -> &'static str {
        "From which hay"
    }
    fn no_lot_yet(&self) -> &'static str {
        "Add the hay first: a soak must say which hay it is"
    }
    fn soak_hay(&self) -> &'static str {
        "Hay, dry"
    }
    fn soak_hay_hint(&self) -> &'static str {
        "As weighed before soaking. May be left out."
    }
    fn soak_hay_planned(&self, amount: &str) -> String {
        format!("As weighed before soaking. Left out: {amount}, as planned.")
    }
    fn tub_in_use(&self) -> &'static str {
        "hay in it"
    }
    fn soak_water_asked(&self) -> &'static str {
        "Water"
    }
    fn soak_minutes(&self) -> &'static str {
        "Minutes in the water"
    }
    fn soak_minutes_hint(&self, minutes: i64) -> String {
        format!("Left out: {minutes} minutes.")
    }
    fn soak_tub(&self) -> &'static str {
        "In which tub"
    }
    fn start_the_soak(&self) -> &'static str {
        "Start the soak"
    }
    fn lot_wanted(&self) -> &'static str {
        "Choose the hay: its sugar and its rules go by it."
    }
    fn tub_wrong(&self, wrong: &Wrong, zone: &dyn Zone) -> String {
        match wrong {
            Wrong::NoLot => self.lot_wanted().to_owned(),
            Wrong::Parse(_, error) => self.parse_error(error),
            Wrong::Time(typed) => format!("\"{typed}\" is not a time: type it like 6:05"),
            Wrong::ToCome => "That is still to come: type when it happened".to_owned(),
            Wrong::Soak(error) => self.soak_error(error, zone),
            Wrong::Log(error) => self.log_error(error),
        }
    }
}
