//! The jobs of open tubs: what comes next, and when what is left is thrown away.

use super::answers::Answers;
use super::daily::Planned;
use super::input::OpenSoak;
use super::job::Job;
use super::key::{JobKind, Key};
use super::state::Window;
use crate::soak::{SoakTimes, timeline};
use crate::units::Instant;

/// The jobs of the soaks that are not over. They stay until they are done, save that hay past its time is only thrown
/// away.
pub(super) fn jobs(
    now: Instant,
    soaks: &[&OpenSoak],
    planned: &[Planned],
    answers: &Answers<'_>,
) -> Vec<Job> {
    soaks
        .iter()
        .filter(|soak| soak.times.ended.is_none())
        .flat_map(|soak| of_soak(soak, now, planned, answers))
        .filter_map(|job| lifted_together(job, soaks, answers))
        .collect()
}

/// Hay of several that went into one tub at once is lifted out at once: that is one job, under the first of them, with
/// the names of all and what they weigh together.
fn lifted_together(mut job: Job, soaks: &[&OpenSoak], answers: &Answers<'_>) -> Option<Job> {
    if job.kind != JobKind::LiftOut {
        return Some(job);
    }
    let own = soaks
        .iter()
        .find(|soak| Some(&soak.id) == job.soak.as_ref())?;
    let lifted = |soak: &OpenSoak| {
        soak.times.lifted.is_some()
            || answers.has(&Key::Tub {
                kind: JobKind::LiftOut,
                soak: soak.id.clone(),
            })
    };
    let mut with: Vec<&OpenSoak> = soaks
        .iter()
        .copied()
        .filter(|soak| soak.is_beside(own) && soak.times.ended.is_none() && !lifted(soak))
        .collect();
    with.sort_by_key(|soak| &soak.id);
    if with.iter().any(|soak| soak.id < own.id) {
        return None;
    }
    for soak in with {
        if !job.name.split(", ").any(|name| name == soak.name) {
            job.name = format!("{}, {}", job.name, soak.name);
        }
        // What nobody knows of one is not known of all.
        job.amount = job.amount.zip(soak.hay).map(|(all, more)| all + more);
    }
    Some(job)
}

fn of_soak(soak: &OpenSoak, now: Instant, planned: &[Planned], answers: &Answers<'_>) -> Vec<Job> {
    let key = |kind| Key::Tub {
        kind,
        soak: soak.id.clone(),
    };
    let answered = |kind| answers.has(&key(kind));
    if answered(JobKind::ThrowAway) {
        return Vec::new();
    }
    let nets: Vec<&Planned> = planned
        .iter()
        .filter(|net| net.job.kind == JobKind::HangNet && net.job.soak.as_ref() == Some(&soak.id))
        .collect();
    let times = times(soak, &answered);
    let line = timeline(soak.recipe, &times, soak.air);
    let hung = !nets.is_empty() && nets.iter().all(|net| net.answered);
    let fed = times.fed.is_some() || answered(JobKind::DrainAndFeed) || hung;
    let next = if line.throw_away <= now || fed {
        None
    } else if times.lifted.is_none() {
        Some((JobKind::LiftOut, line.lift_out))
    } else if nets.iter().any(|net| net.is_open()) {
        // Hanging those nets is what feeds it.
        None
    } else {
        Some((JobKind::DrainAndFeed, line.drained))
    };
    next.into_iter()
        .chain([(JobKind::ThrowAway, line.throw_away)])
        .map(|(kind, due)| {
            let mut job = Job::new(kind, key(kind), &soak.subject, &soak.name, due);
            job.state = Window::of(kind, due).state(due, now);
            // How much is left of it nobody knows.
            job.amount = soak.hay.filter(|_| kind != JobKind::ThrowAway);
            job.visit = nets.first().and_then(|net| net.job.visit);
            job.lot = Some(soak.lot.clone());
            job.soaked = true;
            job.soak = Some(soak.id.clone());
            job.tub.clone_from(&soak.tub);
            job.tub_name.clone_from(&soak.tub_name);
            job
        })
        .collect()
}

/// The times of a soak; lifting that was answered without an entry of its own counts as done at its time.
fn times(soak: &OpenSoak, answered: &impl Fn(JobKind) -> bool) -> SoakTimes {
    let lift_out = timeline(soak.recipe, &soak.times, soak.air).lift_out;
    SoakTimes {
        lifted: soak
            .times
            .lifted
            .or_else(|| answered(JobKind::LiftOut).then_some(lift_out)),
        ..soak.times
    }
}
