//! A session of work, in English.

use super::English;
use super::fields::small;
use crate::forms::work::Wrong;
use crate::words::{LogWords, Said, SessionWords, UnitWords, WorkWords};
use tussock_core::units::Zone;
use tussock_core::work::{Gait, GaitTimes, Timed};

impl SessionWords for English {
    fn on_clock(&self, timed: &Timed, name: &str) -> String {
        let all = self.span(timed.times.total());
        match (timed.gait, timed.stopped) {
            (Some(gait), _) => format!("{}, {all} in all", self.gait(gait)),
            (None, Some(_)) => format!("{name} worked for {all}"),
            (None, None) => format!("Start in walk with {name}"),
        }
    }
    fn which_gait(&self) -> &'static str {
        "It goes in"
    }
    fn begin_in(&self, gait: Gait) -> String {
        format!("Start in {}", small(self.gait(gait)))
    }
    fn stop_work(&self) -> &'static str {
        "Stop work"
    }
    fn began_at(&self, timed: &Timed, zone: &dyn Zone) -> String {
        match (timed.started, timed.stopped) {
            (Some(start), Some(stop)) => format!(
                "From {} to {}",
                self.time_at(start, zone),
                self.time_at(stop, zone)
            ),
            (Some(start), None) => format!("Since {}", self.time_at(start, zone)),
            (None, _) => String::new(),
        }
    }
    fn left_running(&self) -> &'static str {
        "The clock was left running: type the minutes"
    }
    fn clock_goes_on(&self) -> &'static str {
        "The clock goes on with the phone in a pocket, closed or empty"
    }
    fn what_was_done(&self, name: &str) -> String {
        format!("What work did {name} do?")
    }
    fn gait_minutes(&self, gait: Gait) -> &'static str {
        match gait {
            Gait::Walk => "Minutes of walk",
            Gait::Trot => "Minutes of trot",
            Gait::Canter => "Minutes of canter",
        }
    }
    fn minutes_on_clock(&self, times: &GaitTimes, gait: Gait) -> String {
        format!("On the clock: {}", self.minutes_of(times.of(gait)))
    }
    fn when_ended(&self) -> &'static str {
        "When it ended"
    }
    fn when_ended_hint(&self) -> &'static str {
        "A time like 17:30; empty for now"
    }
    fn how_did_it_work(&self) -> &'static str {
        "How did it work?"
    }
    fn on_what(&self) -> &'static str {
        "On what ground?"
    }
    fn sound_question(&self) -> &'static str {
        "Does it go sound after it?"
    }
    fn sound_how(&self) -> &'static str {
        "Walk and trot it on firm ground, and turn it both ways"
    }
    fn settled_question(&self) -> &'static str {
        "Did it blow, and settle in 10 min?"
    }
    fn heart_label(&self) -> &'static str {
        "Heart rate in the faster part"
    }
    fn heart_hint(&self) -> &'static str {
        "Beats a minute, only with a monitor"
    }
    fn load_label(&self) -> &'static str {
        "Rider and tack, if weighed"
    }
    fn work_note(&self) -> &'static str {
        "Remarks"
    }
    fn not_sound(&self) -> Said {
        Said::because(
            "Stop grazing and work. Soft bed. Vet today",
            "Saving this ends its work until a look-over finds it as usual, or the vet allows it.",
        )
    }
    fn save_work(&self) -> &'static str {
        "Save work"
    }
    fn work_wrong(&self, wrong: &Wrong) -> String {
        match wrong {
            Wrong::Parse(_, error) => self.parse_error(error),
            Wrong::Ended(typed) => format!("\"{typed}\" is no time: type it like 17:30"),
            Wrong::NoMinutes => "Type the minutes of one gait at least".to_owned(),
            Wrong::LeftRunning => self.left_running().to_owned(),
            Wrong::NoHow => "Say how it worked".to_owned(),
            Wrong::NoSound => "Say whether it goes sound, or that nobody looked".to_owned(),
            Wrong::Log(error) => self.log_error(error),
        }
    }
}
