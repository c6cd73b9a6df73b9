//! The soaks that are going on, and what their starts answer.

use super::{Yard, subject};
use crate::animal::YardId;
use crate::log::bodies::base::JobKey;
use crate::log::bodies::{Body, SoakStart, SoakStep, soak_times};
use crate::log::entry::Entry;
use crate::log::error::{LogError, Path};
use crate::log::gather::Problem;
use crate::round::{Answered, DryVisit, JobKind, Key, OpenSoak, Subject};
use crate::soak::{Air, Ended, Recipe};
use crate::sources::RecordId;
use crate::units::{Instant, LocalDate, Zone};

impl<Z: Zone> Yard<'_, Z> {
    /// What was answered. A start whose soak ended unfed does no job any more: its nets are to be soaked again.
    pub(super) fn answers(&self) -> Vec<Answered> {
        let steps = self.steps();
        let unfed = |entry: &Entry<'_>| {
            matches!(&entry.body, Body::SoakStep(body) if matches!(body.happened, SoakStep::Started { .. }))
                && soak_times(&entry.record.id, steps.iter().copied()).is_some_and(|times| {
                    times.fed.is_none() && times.ended.is_some_and(ended_unfed)
                })
        };
        self.entries
            .iter()
            .filter(|entry| !unfed(entry))
            .filter_map(|entry| {
                Some(Answered {
                    at: entry.record.at,
                    key: entry.body.job().and_then(JobKey::key)?,
                })
            })
            .collect()
    }

    /// The visits of which somebody said that their hay is not soaked, and why.
    pub(super) fn dry(&self) -> Vec<DryVisit> {
        self.entries
            .iter()
            .filter_map(|entry| {
                let Body::Job(body) = &entry.body else {
                    return None;
                };
                Some(DryVisit {
                    record: entry.record.id.clone(),
                    start: body
                        .job
                        .key()
                        .filter(|key| key.kind() == Some(JobKind::StartSoak))?,
                    why: body.not_soaked?,
                })
            })
            .collect()
    }

    fn steps(&self) -> Vec<(&RecordId, Instant, &SoakStep)> {
        self.entries
            .iter()
            .filter_map(|entry| match &entry.body {
                Body::SoakStep(body) => Some((&entry.record.id, entry.record.at, &body.happened)),
                _ => None,
            })
            .collect()
    }

    pub(super) fn soaks(&self, problems: &mut Vec<Problem>) -> Vec<OpenSoak> {
        let steps = self.steps();
        let mut soaks = Vec::new();
        for entry in self.entries {
            let Body::SoakStep(body) = &entry.body else {
                continue;
            };
            let SoakStep::Started { start } = &body.happened else {
                continue;
            };
            let Some(times) = soak_times(&entry.record.id, steps.iter().copied()) else {
                continue;
            };
            if times.ended.is_some() {
                continue;
            }
            if let Err(range) = Recipe::MINUTES.check(start.recipe.minutes.get() as f64) {
                let root = Path::Record(entry.record.id.0.as_str());
                let place = root.key("body.happened.start.recipe.minutes").place();
                problems.push(Problem::Log(LogError::OutOfRange { place, range }));
            }
            // The hay is in the water all the same, and must be thrown away in time.
            let recipe = start.recipe.recipe();
            let recipe = recipe.unwrap_or_else(|_| Recipe::usual(start.recipe.water));
            soaks.push(OpenSoak {
                recipe,
                times,
                air: self.air_since(times.wetted),
                started_by: body.job.as_ref().and_then(JobKey::key),
                hangs: hangs(start),
                ..self.soak(entry, start)
            });
        }
        soaks
    }

    fn soak(&self, entry: &Entry<'_>, start: &SoakStart) -> OpenSoak {
        // Hay of a subject that is not known here is the yard's.
        let record = &entry.record;
        let yard = || Subject::Yard(YardId(record.yard.0.clone()));
        let subject = subject(&record.subject)
            .filter(|_| self.name(record.subject.id()).is_some())
            .unwrap_or_else(yard);
        let tub = start.tub.as_ref();
        OpenSoak {
            id: record.id.clone(),
            tub: tub.cloned(),
            tub_name: tub.and_then(|tub| {
                self.entries.iter().find_map(|entry| match &entry.body {
                    Body::Tub(body) if entry.record.id.0 == tub.0 => {
                        Some(body.name.as_str().to_owned())
                    }
                    _ => None,
                })
            }),
            name: self.name(subject.parts().1).unwrap_or_default().to_owned(),
            subject,
            lot: start.lot.clone(),
            recipe: Recipe::usual(start.recipe.water),
            times: crate::soak::SoakTimes::started(record.at),
            air: Air::Mild,
            hay: start.hay.as_ref().map(|hay| hay.g.as_fed()),
            started_by: None,
            hangs: Vec::new(),
        }
    }

    /// The warmest air that was said since an instant, with what held then: said that day, or carried over from the day
    /// before. What is said later of the same day does not take it back: the hay has been that warm.
    fn air_since(&self, wetted: Instant) -> Air {
        let first = self.zone.to_local(wetted).date;
        let said: Vec<(LocalDate, Instant, Air)> = self
            .entries
            .iter()
            .filter_map(|entry| match &entry.body {
                Body::Weather(body) if body.date <= self.today => {
                    Some((body.date, entry.record.at, body.air()?))
                }
                _ => None,
            })
            .collect();
        let held = said
            .iter()
            .filter(|(day, at, _)| *at <= wetted && (first - *day).num_days() <= 1)
            .max_by_key(|(day, at, _)| (*day, *at));
        let since = said
            .iter()
            .filter(|(day, at, _)| wetted < *at && first <= *day);
        Air::warmest(held.into_iter().chain(since).map(|(_, _, air)| *air))
    }
}

/// The jobs of hanging that a soak is for, where it says so.
fn hangs(start: &SoakStart) -> Vec<Key> {
    let named = start.hangs.iter().flatten();
    named.filter_map(JobKey::key).collect()
}

/// Whether a soak ended before its hay was eaten.
fn ended_unfed((_, how): (Instant, Ended)) -> bool {
    matches!(how, Ended::Stopped | Ended::ThrownAway)
}
