//! The jobs of grass: turning out, and bringing in.

use super::answers::Answers;
use super::input::RoundFor;
use super::job::{Job, JobState, Waits};
use super::key::{JobKind, Key, Slot, Subject};
use super::state::{Window, at};
use crate::sources::RecordId;
use crate::units::{Instant, LocalDate, LocalTime, Zone};

/// An animal or group that goes out to grass every day, as somebody decided. Whether grass is open on a day is no matter of
/// the round.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TurnoutPlanned {
    /// Who goes out.
    pub subject: Subject,
    /// The name of that animal or group.
    pub name: String,
    /// From which day on.
    pub from: LocalDate,
    /// When on a day.
    pub at: LocalTime,
    /// The last day on which it went out.
    pub last_out: Option<LocalDate>,
}

/// An animal or group that is out at grass.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OpenTurnout {
    /// Its id: that of the record that says so.
    pub id: RecordId,
    /// Who is out.
    pub subject: Subject,
    /// The name of that animal or group.
    pub name: String,
    /// What the paddock is called; `None` when paddocks are not told apart.
    pub paddock_name: Option<String>,
    /// When it went out.
    pub out: Instant,
    /// When it is to be brought in.
    pub by: Instant,
    /// Whether it wears a muzzle.
    pub muzzle: bool,
}

/// The jobs of grass.
///
/// Bringing in stands until the record says that it came in; an answer alone does not end it. One that something stops is
/// not turned out, and is brought in at once.
pub(super) fn jobs<Z: Zone>(of: &RoundFor<'_, Z>, answers: &Answers<'_>) -> Vec<Job> {
    let out = of
        .turnouts
        .iter()
        .filter_map(|planned| turn_out(of, planned, answers));
    let back = of.out.iter().map(|open| bring_in(of, open));
    out.chain(back).collect()
}

/// Why it may not be at grass; of a group, why one that is in it may not.
fn stopped<Z>(of: &RoundFor<'_, Z>, subject: &Subject) -> Option<Waits> {
    of.stopped
        .iter()
        .filter(|animal| animal.goes_out_as(subject))
        .filter_map(super::input::Stopped::waits)
        .min()
}

fn turn_out<Z: Zone>(
    of: &RoundFor<'_, Z>,
    planned: &TurnoutPlanned,
    answers: &Answers<'_>,
) -> Option<Job> {
    let today = of.today();
    let subject = &planned.subject;
    let key = Key::Day {
        kind: JobKind::TurnOut,
        subject: subject.clone(),
        day: today,
        slot: Slot { visit: 0, nth: 0 },
    };
    let went = planned.last_out == Some(today) || answers.has(&key);
    let is_out = of.out.iter().any(|open| open.subject == *subject);
    if today < planned.from || went || is_out || stopped(of, subject).is_some() {
        return None;
    }
    let due = at(of.zone, today, planned.at);
    let mut job = Job::new(JobKind::TurnOut, key, subject, &planned.name, due);
    if due <= of.now {
        job.state = JobState::Due;
    }
    Some(job)
}

fn bring_in<Z: Zone>(of: &RoundFor<'_, Z>, open: &OpenTurnout) -> Job {
    let key = Key::Out {
        turnout: open.id.clone(),
    };
    let mut job = Job::new(
        JobKind::BringIn,
        key,
        &open.subject,
        &open.name,
        open.by.max(open.out),
    );
    job.state = Window::of_turnout(job.due).state(job.due, of.now);
    job.paddock_name.clone_from(&open.paddock_name);
    job.waits = stopped(of, &open.subject);
    if job.waits.is_some() && job.state == JobState::Later {
        // It should not be out at all: among what is due it stands first.
        job.state = JobState::Due;
        job.due = open.out;
    }
    job
}
