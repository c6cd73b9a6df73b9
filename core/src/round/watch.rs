//! The jobs of a whole day: look-over, weighing, work, review, the end of a vet's word.

use super::answers::Answers;
use super::daily::{Plans, first_visit};
use super::input::{HeldWord, RoundFor, Watched};
use super::job::{Job, JobState};
use super::key::{JobKind, Key, Slot, Subject};
use super::published::WEIGH_EVERY;
use super::state::{Window, at, plus};
use crate::animal::VetScope;
use crate::units::{LocalDate, LocalTime, Zone};

/// The jobs of a whole day that are open, to tomorrow.
pub(super) fn jobs<Z: Zone>(
    of: &RoundFor<'_, Z>,
    plans: &Plans<'_>,
    answers: &Answers<'_>,
) -> Vec<Job> {
    let today = of.today();
    let last = plus(today, 1).unwrap_or(today);
    let job = |what: Whole<'_>| {
        let key = what.key();
        let answered = !what.kind.stands() && answers.has(&key);
        if what.day > last || answered {
            return None;
        }
        let due = at(of.zone, what.day, what.at);
        let mut job = Job::new(what.kind, key, &what.subject, what.name, due);
        job.state = Window::of_day(of.zone, what.day).state(due, of.now);
        if what.again {
            job.state = JobState::Due;
        }
        job.again = what.again;
        job.scope = what.scope;
        Some(job)
    };
    let mut jobs = Vec::new();
    for animal in of.watched {
        jobs.extend(look_over(animal, answers).and_then(job));
        jobs.extend(weigh(animal, today, answers).and_then(job));
        jobs.extend(work(animal, today).and_then(job));
    }
    // A member's part is reviewed with its group's plan.
    let reviewed = plans.last_on(today).filter(|plan| !plan.part);
    jobs.extend(reviewed.filter_map(|plan| {
        job(Whole {
            kind: JobKind::ReviewPlan,
            subject: plan.subject.clone(),
            name: &plan.name,
            day: plan.review,
            at: first_visit(plan),
            scope: None,
            again: false,
        })
    }));
    jobs.extend(of.words.iter().filter_map(|word| job(expiry(word))));
    jobs
}

/// A job of a whole day.
struct Whole<'a> {
    kind: JobKind,
    subject: Subject,
    name: &'a str,
    day: LocalDate,
    at: LocalTime,
    scope: Option<VetScope>,
    /// It was done today, and is to be done again now.
    again: bool,
}

impl Whole<'_> {
    fn key(&self) -> Key {
        let nth = match self.scope {
            None => u32::from(self.again),
            Some(VetScope::LowestLevel) => 1,
            Some(VetScope::Work) => 2,
            // numeric: the third matter a vet's word can be about
            Some(VetScope::ReturnToGrass) => 3,
        };
        Key::Day {
            kind: self.kind,
            subject: self.subject.clone(),
            day: self.day,
            slot: Slot { visit: 0, nth },
        }
    }
}

fn of_animal(animal: &Watched, kind: JobKind, day: LocalDate) -> Whole<'_> {
    Whole {
        kind,
        subject: Subject::Animal(animal.animal.clone()),
        name: &animal.name,
        day,
        at: animal.at,
        scope: None,
        again: false,
    }
}

/// The look-over that is to be made. It stays until somebody looked or answered; then the next is counted from there.
fn look_over<'a>(animal: &'a Watched, answers: &Answers<'_>) -> Option<Whole<'a>> {
    let every = animal.look_over_days.max(1);
    let mut day = match animal.looked_over {
        Some(last) => plus(last, every)?,
        None => animal.from,
    };
    // Every turn of the loop uses up an answered key.
    loop {
        let job = of_animal(animal, JobKind::LookOver, day);
        if !answers.has(&job.key()) {
            return Some(job);
        }
        day = plus(day, every)?;
    }
}

/// The weighing of these days. It expires when the next one falls due. What came out today may ask for another now, which
/// goes when it was made, or with the day.
fn weigh<'a>(animal: &'a Watched, today: LocalDate, answers: &Answers<'_>) -> Option<Whole<'a>> {
    let first = match animal.weighed {
        Some(last) => plus(last, *WEIGH_EVERY)?,
        None => animal.from,
    };
    let missed = (today - first).num_days().max(0) / *WEIGH_EVERY;
    let day = plus(first, missed * *WEIGH_EVERY)?;
    let job = of_animal(animal, JobKind::Weigh, day);
    if animal.weigh_again {
        return Some(Whole {
            again: true,
            ..of_animal(animal, JobKind::Weigh, today)
        });
    }
    if answers.has(&job.key()) {
        return Some(of_animal(animal, JobKind::Weigh, plus(day, *WEIGH_EVERY)?));
    }
    Some(job)
}

/// Today's work.
fn work(animal: &Watched, today: LocalDate) -> Option<Whole<'_>> {
    let due = animal.work.is_some_and(|work| work.is_due(today));
    due.then(|| of_animal(animal, JobKind::Exercise, today))
}

fn expiry(word: &HeldWord) -> Whole<'_> {
    Whole {
        kind: JobKind::VetWordExpires,
        subject: Subject::Animal(word.animal.clone()),
        name: &word.name,
        day: word.expires,
        at: word.at,
        scope: Some(word.scope),
        again: false,
    }
}
