//! The jobs of animals that something stops, and the mark on what feeds them.

use super::input::{IssuedPlan, RoundFor, Stopped};
use super::job::{Job, JobState, Waits};
use super::key::{JobKind, Key, Slot, Subject};
use super::state::{Window, at};
use crate::units::{Instant, LocalTime, Zone};

/// The stops, and the looks again that are still to be made. Nothing but what they are about ends them.
pub(super) fn jobs<Z: Zone>(of: &RoundFor<'_, Z>) -> Vec<Job> {
    of.stopped
        .iter()
        .flat_map(|animal| {
            let looks = [(animal.again.soon, 1), (animal.again.tonight, 2)];
            let looks = looks
                .into_iter()
                .filter_map(|(due, nth)| Some(look_again(of, animal, due?, nth)));
            stop(of, animal).into_iter().chain(looks)
        })
        .collect()
}

fn new(
    animal: &Stopped,
    kind: JobKind,
    day: crate::units::LocalDate,
    nth: u32,
    due: Instant,
) -> Job {
    let subject = Subject::Animal(animal.animal.clone());
    let key = Key::Day {
        kind,
        subject: subject.clone(),
        day,
        slot: Slot { visit: 0, nth },
    };
    Job::new(kind, key, &subject, &animal.name, due)
}

fn stop<Z: Zone>(of: &RoundFor<'_, Z>, animal: &Stopped) -> Option<Job> {
    if animal.stops.is_empty() {
        return None;
    }
    let today = of.today();
    let midnight = at(of.zone, today, LocalTime::MIN);
    let mut job = new(animal, JobKind::Stop, today, 0, midnight);
    job.state = JobState::Due;
    job.stops.clone_from(&animal.stops);
    Some(job)
}

fn look_again<Z: Zone>(of: &RoundFor<'_, Z>, animal: &Stopped, due: Instant, nth: u32) -> Job {
    let day = of.zone.to_local(due).date;
    let mut job = new(animal, JobKind::LookAgain, day, nth, due);
    job.state = Window::of(JobKind::LookAgain, due).state(due, of.now);
    job
}

/// Why what a plan feeds waits; it is fed all the same, for the animal must eat.
pub(super) fn waits<Z: Zone>(of: &RoundFor<'_, Z>, plan: &IssuedPlan) -> Option<Waits> {
    of.stopped
        .iter()
        .filter(|animal| animal.is_fed_as(&plan.subject))
        .filter_map(Stopped::waits)
        .min()
        .or(plan.word_ended.then_some(Waits::Word))
        .or(plan.changed.then_some(Waits::Members))
}
