//! The labels of the round.

use tussock_core::log::bodies::JobAnswer;
use tussock_core::round::{Job, JobKind, Summary, Waits};
use tussock_core::safety::Refusal;
use tussock_core::units::{AsFed, LocalDate, Zone};

/// What the round says.
pub trait RoundWords {
    /// The place.
    fn round(&self) -> &'static str;
    /// The sentence: "1 late, 2 due, 6 later".
    fn how_it_stands(&self, summary: Summary) -> String;
    /// The cord.
    fn jobs(&self) -> &'static str;
    /// A job: "Lift out tub 2".
    fn job(&self, job: &Job) -> String;
    /// The kind of a job that was answered.
    fn job_kind(&self, kind: JobKind) -> &'static str;
    /// The order of a stop, as a tag: "Stop grazing and work".
    fn stop_job(&self, why: &Refusal) -> &'static str;
    /// Why the plan of a net or feed waits, while it is fed all the same.
    fn plan_waits(&self, waits: Waits) -> &'static str;
    /// The same with whose plan it is.
    fn waits_for(&self, name: &str, waits: Waits) -> String;
    /// The word under its time: "12 min late"; empty for later.
    fn job_stands(&self, job: &Job) -> String;
    /// Its second line: whose and how much.
    fn job_of(&self, job: &Job) -> String;
    /// What hangs less on a day with grass: "0.4 kg less: it was at grass".
    fn less_for_grass(&self, less: AsFed) -> String;
    /// Why one that is out may not be at grass.
    fn no_grass(&self, waits: Waits) -> &'static str;
    /// The second line of turning out and bringing in: "from Top field".
    fn grass_job_of(&self, job: &Job) -> String;
    /// Its time, with the day where that is not today.
    fn job_time(&self, job: &Job, today: LocalDate, zone: &dyn Zone) -> String;
    /// The name of its tick.
    fn tick(&self, job: &Job) -> String;
    /// The primary action that does it: "Lift out tub 2 now".
    fn do_now(&self, job: &Job) -> String;
    /// The primary action that opens the next one.
    fn open_next(&self, job: &Job) -> String;
    /// The primary action when nothing is planned.
    fn to_the_horses(&self) -> &'static str;
    /// What comes after midnight: "12 tomorrow, from Wed 05:45".
    fn after_midnight(&self, count: usize, first: &str) -> String;
    /// "4 done today".
    fn done_today(&self, count: usize) -> String;
    /// Everything of this visit as planned.
    fn all_as_planned(&self, time: &str) -> String;
    /// So many nets are left out of that, and why.
    fn left_out(&self, nets: usize) -> String;
    /// A net that waits to be soaked, or for somebody to say that it is not: its second line says so.
    fn not_soaked_yet(&self) -> &'static str;
    /// Days away: "Friday to Sunday not logged".
    fn days_away(&self, from: LocalDate, to: LocalDate) -> String;
    /// An answer to it.
    fn away_answer(&self, answer: JobAnswer) -> &'static str;
    /// A tick that was not taken.
    fn tick_refused(&self) -> &'static str;
}
