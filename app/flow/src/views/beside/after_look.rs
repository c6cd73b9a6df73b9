//! The steps of a visit after the look-over: work, photographs and the plan.

use super::{Last, Standing, Step, by_age, since};
use crate::views::condition::score_every;
use crate::views::photo::Photo;
use crate::words::Task;
use tussock_core::log::Gathered;
use tussock_core::log::bodies::{PlanV1, Pose};
use tussock_core::round::WatchedWork;
use tussock_core::units::LocalDate;

/// Its work. It is due only where the plan that holds asks for it; what stops it is no step to do.
pub(super) fn work(of: &Gathered, plan: Option<&PlanV1>) -> Step {
    let line = of.work().line;
    let days = since(of.sessions.last().map(|session| session.day), of.day);
    let planned = plan
        .and_then(|plan| plan.work_a_week)
        .and_then(|count| u32::try_from(count.get()).ok());
    let (last, standing) = match line.a_week() {
        None => (Last::NoWork(line), Standing::NoWork),
        Some(a_week) => {
            let asked = planned.unwrap_or(a_week);
            let week = WatchedWork::of(asked, &of.sessions, of.day);
            let standing = if week.today || asked <= week.done {
                Standing::Done
            } else if planned.is_some() && week.is_due(of.day) {
                Standing::Due
            } else {
                Standing::Later
            };
            let done = week.done;
            (Last::Work { done, asked }, standing)
        }
    };
    Step {
        task: Task::Work,
        last: Some(last),
        days,
        standing,
    }
}

/// Never due: no plan and no limit hangs on a photograph.
pub(super) fn photographed(of: &Gathered, photos: &[Photo]) -> Step {
    let days = since(photos.first().map(|photo| photo.day), of.day);
    let poses: Vec<Pose> = Pose::ALL
        .into_iter()
        .filter(|pose| photos.iter().any(|photo| photo.body.pose == *pose))
        .collect();
    Step {
        task: Task::Photograph,
        last: (!poses.is_empty()).then_some(Last::Photographs(poses)),
        days,
        standing: match by_age(days, Some(score_every(of.animal.phase))) {
            Standing::Due => Standing::Open,
            standing => standing,
        },
    }
}

pub(super) fn planned(plan: Option<PlanV1>, weighed: bool, today: LocalDate) -> Step {
    let standing = match &plan {
        None if !weighed => Standing::Waits,
        Some(plan) if today < plan.review => Standing::Done,
        None | Some(_) => Standing::Due,
    };
    Step {
        task: Task::Plan,
        days: since(plan.as_ref().map(|plan| plan.from), today),
        last: plan.map(Last::Plan),
        standing,
    }
}
