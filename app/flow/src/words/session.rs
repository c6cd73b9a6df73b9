//! The labels of a session of work, on the clock or written down.

use super::Said;
use crate::forms::work::Wrong;
use tussock_core::units::Zone;
use tussock_core::work::{Gait, GaitTimes, Timed};

/// What a session of work says while it goes on and after it.
pub trait SessionWords {
    /// The sentence on the clock: "Trot, 12 min in all".
    fn on_clock(&self, timed: &Timed, name: &str) -> String;
    /// What the keys of the gaits are.
    fn which_gait(&self) -> &'static str;
    /// The action that begins in a gait.
    fn begin_in(&self, gait: Gait) -> String;
    /// The action that ends the work.
    fn stop_work(&self) -> &'static str;
    /// When it began.
    fn began_at(&self, timed: &Timed, zone: &dyn Zone) -> String;
    /// It was left running.
    fn left_running(&self) -> &'static str;
    /// The clock goes on in a pocket.
    fn clock_goes_on(&self) -> &'static str;
    /// The sentence of the form.
    fn what_was_done(&self, name: &str) -> String;
    /// The label of the minutes of a gait.
    fn gait_minutes(&self, gait: Gait) -> &'static str;
    /// What the clock says of them.
    fn minutes_on_clock(&self, times: &GaitTimes, gait: Gait) -> String;
    /// When it ended.
    fn when_ended(&self) -> &'static str;
    /// How that is typed.
    fn when_ended_hint(&self) -> &'static str;
    /// How did it work?
    fn how_did_it_work(&self) -> &'static str;
    /// On what?
    fn on_what(&self) -> &'static str;
    /// The check after it.
    fn sound_question(&self) -> &'static str;
    /// How to look.
    fn sound_how(&self) -> &'static str;
    /// Did it settle?
    fn settled_question(&self) -> &'static str;
    /// The heart rate.
    fn heart_label(&self) -> &'static str;
    /// Where it comes from.
    fn heart_hint(&self) -> &'static str;
    /// Rider and tack.
    fn load_label(&self) -> &'static str;
    /// Remarks.
    fn work_note(&self) -> &'static str;
    /// What not sound leads to.
    fn not_sound(&self) -> Said;
    /// The action of the form.
    fn save_work(&self) -> &'static str;
    /// What is wrong with a field.
    fn work_wrong(&self, wrong: &Wrong) -> String;
}
