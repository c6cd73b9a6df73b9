//! The labels of the work of an animal.

use super::Said;
use crate::views::work::{Done, WorkView};
use tussock_core::animal::Answer;
use tussock_core::units::LocalDate;
use tussock_core::work::{
    Asked, DaysEnergy, Gait, GaitTimes, How, MovingFeeder, Surface, Week, WorkStop,
};

/// What the screens of work say.
pub trait WorkWords {
    /// The sentence of the screen: "2 of 5 sessions this week".
    fn work_head(&self, view: &WorkView) -> String;
    /// "2 of 5 this week".
    fn week_done(&self, done: u32, asked: u32) -> String;
    /// What stops all work: "on pain relief".
    fn work_stop(&self, stop: WorkStop) -> &'static str;
    /// Everything that stops it, and what opens work again.
    fn work_stops(&self, stops: &[WorkStop]) -> Said;
    /// What is asked of a session, and how it is built up.
    fn work_asked(&self, asked: &Asked) -> Said;
    /// How hard it is to be.
    fn how_hard(&self, asked: &Asked) -> Said;
    /// Until when the vet's word holds.
    fn work_word_until(&self, day: LocalDate) -> String;
    /// A gait: "Walk".
    fn gait(&self, gait: Gait) -> &'static str;
    /// "10 min walk, 15 min trot".
    fn gait_times(&self, times: &GaitTimes) -> String;
    /// How it worked: "Led in hand".
    fn how_worked(&self, how: How) -> &'static str;
    /// The ground: "Soft".
    fn surface(&self, surface: Surface) -> &'static str;
    /// What the ground is.
    fn surface_means(&self, surface: Surface) -> &'static str;
    /// Whether it went sound: "Sound".
    fn sound_after(&self, answer: Answer) -> &'static str;
    /// Whether it settled.
    fn settled_after(&self, answer: Answer) -> &'static str;
    /// The heading of what is asked.
    fn asked_head(&self) -> &'static str;
    /// The heading of what was done.
    fn done_head(&self) -> &'static str;
    /// The picture of a session asked and the last one done.
    fn beats_name(&self, asked: Option<&Asked>, last: Option<&Done>) -> String;
    /// The word above what is asked, and above what was done.
    fn beats_rows(&self) -> [&'static str; 2];
    /// The table of the picture: its name, and the heads of its columns.
    fn beats_table(&self) -> [&'static str; 3];
    /// "All numbers".
    fn all_numbers(&self) -> &'static str;
    /// A week: "This week" or "From Mon 4 May".
    fn week_name(&self, week: &Week, today: LocalDate) -> String;
    /// What was done in it.
    fn week_line(&self, week: &Week) -> String;
    /// A session: its day and minutes.
    fn session_name(&self, done: &Done) -> String;
    /// The rest of it.
    fn session_line(&self, done: &Done) -> String;
    /// The energy of this week's work.
    fn week_energy(&self, energy: &DaysEnergy) -> Said;
    /// The energy is not reckoned for a donkey.
    fn no_energy(&self) -> Said;
    /// Movement without riding: what to do, and what it did in a trial.
    fn moving(&self, moving: &MovingFeeder) -> Said;
    /// The heading of movement without riding.
    fn moving_head(&self) -> &'static str;
    /// The primary action.
    fn start_work(&self) -> &'static str;
    /// The primary action while a session is on the clock.
    fn go_on_with_work(&self) -> &'static str;
    /// The other way.
    fn write_down_work(&self) -> &'static str;
    /// To the details, where laminitis is said.
    fn say_in_details(&self) -> &'static str;
}
