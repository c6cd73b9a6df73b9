//! Days on which nobody answered anything.

use super::answers::Answers;
use super::daily::{Plans, visits};
use super::input::RoundFor;
use super::job::DaysAway;
use super::key::Key;
use super::published::{AWAY_AFTER, AWAY_LOOK_BACK};
use super::state::{at, plus};
use crate::units::{Instant, LocalDate, Zone};

/// The days before today, back from yesterday, on which jobs of visits were due and nothing was answered on them or for
/// them, when by now nobody has answered for more than [`AWAY_AFTER`].
pub(super) fn days_away<Z: Zone>(
    of: &RoundFor<'_, Z>,
    plans: &Plans<'_>,
    answers: &Answers<'_>,
) -> Option<DaysAway> {
    let today = of.today();
    let to = plus(today, -1)?;
    let mut since = None;
    let mut day = to;
    for _ in 0..*AWAY_LOOK_BACK {
        if answers.speak_of(day) {
            break;
        }
        let Some(first) = first_due(of, plans, day) else {
            break;
        };
        since = Some((day, first));
        day = plus(day, -1)?;
    }
    let (from, first) = since?;
    let before = of
        .answered
        .iter()
        .map(|answer| answer.at)
        .filter(|at| *at < first)
        .max();
    let quiet = of.now.since(before.unwrap_or(first));
    (*AWAY_AFTER < quiet).then_some(DaysAway {
        from,
        to,
        key: Key::Away { from, to },
    })
}

/// When the first job of a visit was due on a day; `None` when none was.
fn first_due<Z: Zone>(of: &RoundFor<'_, Z>, plans: &Plans<'_>, day: LocalDate) -> Option<Instant> {
    plans
        .on(day)
        .filter(|(plan, _)| !plan.nets.is_empty() || !plan.feeds.is_empty())
        .flat_map(|(plan, issued)| {
            visits(plan)
                .into_iter()
                .map(|time| at(of.zone, day, time))
                .filter(move |at| issued <= *at)
        })
        .min()
}
