//! The routine of the day, as a calendar holds it: a bell a visit and a bell a soak, for each animal or group.

use crate::shelf::Shelf;
use crate::views::round::Today;
use std::collections::BTreeSet;
use tussock_core::log::{Kind, Stamp};
use tussock_core::round::{DailyJob, IssuedPlan, JobKind, Routine, Subject, routines};
use tussock_core::units::{LocalDate, LocalTime};

/// Something that rings every day.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DailyBell {
    /// For whom.
    pub subject: Subject,
    /// The name of that animal or group.
    pub name: String,
    /// The visit, counted from 1.
    pub visit: u32,
    /// Whether it is the soak for that visit, and not the visit itself.
    pub soak: bool,
    /// When.
    pub time: LocalTime,
    /// When its hay is hung.
    pub hung: LocalTime,
    /// The first day.
    pub first: LocalDate,
    /// The last day.
    pub last: LocalDate,
    /// The day on which the plan is reviewed.
    pub review: LocalDate,
    /// How many nets are hung.
    pub nets: usize,
    /// How many feeds are given.
    pub feeds: usize,
}

/// What there is to be reminded of every day.
#[derive(Clone, Debug, PartialEq, Eq, Default)]
pub struct DayReminder {
    /// What rings, in the order of the day.
    pub bells: Vec<DailyBell>,
    /// What an earlier plan rang and no plan does now.
    pub gone: Vec<DailyBell>,
    /// The plans whose review is past, by name: nothing rings for them any more.
    pub past: Vec<(String, LocalDate)>,
    /// The newest version among the records behind it, taken back or not.
    pub revised: Option<Stamp>,
}

/// The routine of every animal and group that has a plan.
pub fn day_reminder(shelf: &Shelf, today: &Today) -> DayReminder {
    let awake: Vec<IssuedPlan> = today
        .due
        .plans
        .iter()
        .filter(|plan| !plan.rests_on(today.day))
        .cloned()
        .collect();
    let held = routines(&awake);
    let (over, holding): (Vec<Routine>, Vec<Routine>) = held
        .into_iter()
        .partition(|routine| routine.review < today.day);
    let mut bells: Vec<DailyBell> = holding.iter().flat_map(bells).collect();
    bells.sort_by(|a, b| (a.time, &a.name, a.visit).cmp(&(b.time, &b.name, b.visit)));
    let live: BTreeSet<_> = bells.iter().map(place).collect();
    let mut seen = BTreeSet::new();
    let gone = once_planned(today)
        .iter()
        .flat_map(|plan| routines(std::slice::from_ref(plan)))
        .flat_map(|routine| self::bells(&routine))
        // What has rung for the last time is left as it was.
        .filter(|bell| today.day <= bell.last)
        .filter(|bell| !live.contains(&place(bell)) && seen.insert(place(bell)))
        .collect();
    let behind = [Kind::Plan, Kind::Group, Kind::Animal, Kind::VetWord];
    DayReminder {
        bells,
        gone,
        past: over
            .into_iter()
            .map(|routine| (routine.name, routine.review))
            .collect(),
        revised: shelf
            .versions()
            .filter(|record| behind.contains(&record.kind))
            .map(|record| record.stamp)
            .max(),
    }
}

/// Every plan on the shelf, newest first: replaced ones, and those that rest.
fn once_planned(today: &Today) -> Vec<IssuedPlan> {
    let mut plans = today.due.plans.clone();
    plans.sort_by_key(|plan| std::cmp::Reverse(plan.issued));
    plans
}

/// What a calendar knows it by.
fn place(bell: &DailyBell) -> (Subject, u32, bool) {
    (bell.subject.clone(), bell.visit, bell.soak)
}

fn bells(of: &Routine) -> Vec<DailyBell> {
    let mut found: Vec<DailyBell> = Vec::new();
    for job in &of.jobs {
        let soak = job.kind == JobKind::StartSoak;
        let at = found
            .iter()
            .position(|bell| bell.visit == job.slot.visit && bell.soak == soak);
        let index = at.unwrap_or_else(|| {
            found.push(bell(of, job, soak));
            found.len().saturating_sub(1)
        });
        if let Some(bell) = found.get_mut(index) {
            bell.nets += usize::from(job.kind == JobKind::HangNet);
            bell.feeds += usize::from(job.kind == JobKind::FeedBalancer);
        }
    }
    found
}

fn bell(of: &Routine, job: &DailyJob, soak: bool) -> DailyBell {
    DailyBell {
        subject: of.subject.clone(),
        name: of.name.clone(),
        visit: job.slot.visit,
        soak,
        time: job.time,
        hung: job.visit,
        first: job.first,
        last: job.last,
        review: of.review,
        nets: 0,
        feeds: 0,
    }
}
