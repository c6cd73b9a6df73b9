//! What a plan asks of every day, by the clock on the wall: for a calendar, which knows no instants of a day to come.

use super::daily::{DayOf, Planned, Plans};
use super::input::IssuedPlan;
use super::key::{JobKind, Slot, Subject};
use crate::units::{Instant, LocalDate, LocalTime, Zone};

/// A clock on the wall that never changes: in it a local time and an instant are the same thing.
struct Wall;

impl Zone for Wall {
    fn offset_min(&self, _: Instant) -> i32 {
        0
    }
}

/// A job that comes back every day.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DailyJob {
    /// Its kind: one of a visit.
    pub kind: JobKind,
    /// Its place in the day of the plan.
    pub slot: Slot,
    /// The local time at which it falls due.
    pub time: LocalTime,
    /// The local time of its visit: for a soak the one its hay is hung at.
    pub visit: LocalTime,
    /// The first day it falls due on: the first day of the plan, or the evening before it for a long soak.
    pub first: LocalDate,
    /// The last day it falls due on: that of the review, or the evening before it.
    pub last: LocalDate,
}

/// What a plan asks of every day until its review.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Routine {
    /// For whom.
    pub subject: Subject,
    /// The name of that animal or group.
    pub name: String,
    /// The first day.
    pub from: LocalDate,
    /// The day of the review, the last one that the plan speaks of.
    pub review: LocalDate,
    /// The jobs, in the order of the day.
    pub jobs: Vec<DailyJob>,
}

/// The daily jobs of each subject's plan that was issued last, from its first day to its review, the day of it included.
///
/// The times are those of the round on a day without a change of the clock: nets and feeds at their visit, a soak so
/// long before it that the hay has lain in the water and drained.
pub fn routines(plans: &[IssuedPlan]) -> Vec<Routine> {
    Plans::of(plans).last().map(routine).collect()
}

fn routine(plan: &IssuedPlan) -> Routine {
    let on = |day: LocalDate| -> Vec<Planned> {
        DayOf {
            zone: &Wall,
            plan,
            day,
            horizon: Instant::from_ms(i64::MAX),
            now: Instant::from_ms(i64::MIN),
            waits: None,
        }
        .all(&[], &[])
    };
    // The last day has the same jobs in the same order.
    let mut jobs: Vec<DailyJob> = on(plan.from)
        .into_iter()
        .zip(on(plan.review))
        .filter_map(|(first, last)| {
            let due = Wall.to_local(first.job.due);
            Some(DailyJob {
                kind: first.job.kind,
                slot: first.job.slot()?,
                time: due.time,
                visit: first.job.visit?.time,
                first: due.date,
                last: Wall.to_local(last.job.due).date,
            })
        })
        .collect();
    jobs.sort_by_key(|job| (job.visit, job.kind, job.slot));
    Routine {
        subject: plan.subject.clone(),
        name: plan.name.clone(),
        from: plan.from,
        review: plan.review,
        jobs,
    }
}

#[cfg(test)]
mod tests {
    use super::super::tests::{net, plan, time};
    use super::*;
    use crate::soak::{Recipe, Water};

    #[test]
    fn nets_stand_at_their_visit_and_a_soak_before_it() {
        let mut plan = plan("moss", vec![net("06:30", true), net("17:30", false)]);
        plan.recipe = Some(Recipe::minutes(Water::TapWinter, 60).unwrap());
        let of = &routines(&[plan.clone()])[0];
        let found: Vec<_> = of.jobs.iter().map(|job| (job.kind, job.time)).collect();
        assert_eq!(
            found,
            [
                (JobKind::StartSoak, time("05:15")),
                (JobKind::HangNet, time("06:30")),
                (JobKind::HangNet, time("17:30")),
            ]
        );
        assert!(
            of.jobs
                .iter()
                .all(|job| job.first == plan.from && job.last == plan.review)
        );
    }

    #[test]
    fn a_long_soak_begins_the_evening_before() {
        let mut plan = plan("moss", vec![net("06:30", true)]);
        plan.recipe = Some(Recipe::minutes(Water::TapWinter, 600).unwrap());
        let of = &routines(&[plan.clone()])[0];
        let start = of
            .jobs
            .iter()
            .find(|job| job.kind == JobKind::StartSoak)
            .unwrap();
        assert_eq!(start.time, time("20:15"));
        assert_eq!(Some(start.first), plan.from.pred_opt());
        assert_eq!(Some(start.last), plan.review.pred_opt());
    }

    #[test]
    fn the_plan_that_was_issued_last_is_the_one() {
        let old = plan("moss", vec![net("06:30", false), net("17:30", false)]);
        let mut new = plan("moss", vec![net("07:00", false)]);
        new.issued = old.issued + crate::units::Span::minutes(1);
        let found = routines(&[new, old]);
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].jobs.len(), 1);
        assert_eq!(found[0].jobs[0].time, time("07:00"));
    }
}
