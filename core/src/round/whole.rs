//! The whole round.

use super::answers::Answers;
use super::away::days_away;
use super::daily::{Plans, planned};
use super::input::{Answered, OpenSoak, RoundFor};
use super::job::{Job, JobState, Round};
use super::key::JobKind;
use super::{grass, stopped, tubs, watch};
use crate::safety::VetUrgency;
use crate::units::{Instant, Zone};
use std::cmp::Reverse;
use std::collections::BTreeSet;

/// The jobs due: a function of what was planned, what was answered and now.
///
/// How many there are is bounded by the plans' days and the open soaks; none is left out to make it shorter.
pub fn round<Z: Zone>(of: &RoundFor<'_, Z>) -> Round {
    let answers = Answers::of(of.answered, of.zone);
    let plans = Plans::of(of.plans);
    let away = days_away(of, &plans, &answers);
    let soaks = soaks(of.soaks);
    let planned = planned(of, &plans, &soaks, &answers);
    let mut jobs = tubs::jobs(of.now, &soaks, &planned, &answers);
    jobs.extend(watch::jobs(of, &plans, &answers));
    jobs.extend(stopped::jobs(of));
    jobs.extend(grass::jobs(of, &answers));
    jobs.extend(
        planned
            .into_iter()
            .filter(|planned| {
                let with_away = away.as_ref().is_some_and(|away| {
                    let day = planned.job.visit.map(|visit| visit.day);
                    day.is_some_and(|day| (away.from..=away.to).contains(&day))
                });
                planned.is_open() && !with_away
            })
            .map(|planned| planned.job),
    );
    jobs.sort_by(|a, b| order(a).cmp(&order(b)));
    let mut seen = BTreeSet::new();
    jobs.retain(|job| seen.insert(job.key.clone()));
    Round {
        jobs,
        away,
        done: done(of),
    }
}

/// The soaks; one that is listed twice counts as it is listed first.
fn soaks(listed: &[OpenSoak]) -> Vec<&OpenSoak> {
    let mut seen = BTreeSet::new();
    listed.iter().filter(|soak| seen.insert(&soak.id)).collect()
}

/// What stops an animal first, the most urgent first; then hay past its time, then late, then by time.
fn order(
    job: &Job,
) -> (
    Reverse<Option<VetUrgency>>,
    bool,
    bool,
    Instant,
    &super::Key,
) {
    let urgency = job.stops.first().map(|(_, urgency)| *urgency);
    let spoilt = job.kind == JobKind::ThrowAway && job.state != JobState::Later;
    let late = matches!(job.state, JobState::Late { .. });
    (Reverse(urgency), !spoilt, !late, job.due, &job.key)
}

/// What was answered today, each key once.
fn done<Z: Zone>(of: &RoundFor<'_, Z>) -> Vec<Answered> {
    let today = of.today();
    let mut done: Vec<Answered> = of
        .answered
        .iter()
        .filter(|answer| of.zone.to_local(answer.at).date == today)
        .cloned()
        .collect();
    done.sort();
    let mut seen = BTreeSet::new();
    done.retain(|answer| seen.insert(answer.key.clone()));
    done
}
