//! The deadlines of one tub.

use crate::shelf::Shelf;
use crate::views::round::Today;
use crate::views::tub::{TubSeen, seen, soak_of};
use tussock_core::animal::TubId;
use tussock_core::log::bodies::{SoakStep, soak_times};
use tussock_core::log::{Body, Kind, Record, Stamp};
use tussock_core::soak::{Air, Recipe, SoakTimes, timeline};
use tussock_core::sources::RecordId;
use tussock_core::units::Instant;

/// What a tub must be gone to for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Deadline {
    /// Lift the hay out.
    LiftOut,
    /// It is drained: feed it.
    Feed,
    /// Throw away what is left.
    ThrowAway,
}

/// A deadline of a tub.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TubDeadline {
    /// For what.
    pub what: Deadline,
    /// When.
    pub at: Instant,
    /// Whether it is still to be done.
    pub open: bool,
}

/// What there is to be reminded of at a tub.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TubReminder {
    /// The soak.
    pub soak: RecordId,
    /// What the tub is called.
    pub tub: Option<String>,
    /// For whom; empty for the whole yard.
    pub whose: String,
    /// Lift out, feed, throw away.
    pub deadlines: [TubDeadline; 3],
    /// The newest version among the records that its times stand on, taken back or not.
    pub revised: Option<Stamp>,
}

impl TubReminder {
    /// Whether the tub is over.
    pub fn is_over(&self) -> bool {
        self.deadlines.iter().all(|deadline| !deadline.open)
    }

    /// What is to be done next, or is late: throwing away comes before everything else once it is time.
    pub fn next(&self, now: Instant) -> Option<TubDeadline> {
        let open = || self.deadlines.iter().filter(|deadline| deadline.open);
        open()
            .find(|deadline| deadline.what == Deadline::ThrowAway && deadline.at <= now)
            .or_else(|| open().next())
            .copied()
    }
}

/// The deadlines of a soak, by its own id or by that of its tub; `None` when no soak stands there.
pub fn tub_reminder(shelf: &Shelf, today: &Today, id: &TubId) -> Option<TubReminder> {
    match seen(shelf, today, id) {
        TubSeen::Open(open) => {
            let soak = open.soak;
            Some(TubReminder {
                deadlines: deadlines(soak.recipe, &soak.times, soak.air),
                revised: revised(shelf, &soak.id),
                tub: soak.tub_name,
                whose: soak.name,
                soak: soak.id,
            })
        }
        TubSeen::Over(_) => over(shelf, RecordId(id.0.clone())),
        TubSeen::Empty(_) | TubSeen::Nothing => None,
    }
}

/// A soak that is over: nothing of it is to be done, but a calendar may still hold it.
fn over(shelf: &Shelf, soak: RecordId) -> Option<TubReminder> {
    let steps: Vec<(&Record, SoakStep)> = steps(shelf);
    let times = soak_times(
        &soak,
        steps
            .iter()
            .filter(|(record, _)| !record.gone)
            .map(|(record, step)| (&record.id, record.at, step)),
    )?;
    let start = steps.iter().find_map(|(record, step)| match step {
        SoakStep::Started { start } if record.id == soak => Some(start),
        _ => None,
    })?;
    let recipe = start.recipe.recipe();
    let recipe = recipe.unwrap_or_else(|_| Recipe::usual(start.recipe.water));
    let tub = start
        .tub
        .as_ref()
        .and_then(|tub| match shelf.get(tub.as_str()).map(Body::read) {
            Some(Ok(Body::Tub(body))) => Some(body.name.as_str().to_owned()),
            _ => None,
        });
    Some(TubReminder {
        // Whatever the air was: what is cancelled rings no more, and its time only names it.
        deadlines: deadlines(recipe, &times, Air::Mild),
        revised: revised(shelf, &soak),
        tub,
        whose: String::new(),
        soak,
    })
}

fn deadlines(recipe: Recipe, times: &SoakTimes, air: Air) -> [TubDeadline; 3] {
    let line = timeline(recipe, times, air);
    let going_on = times.ended.is_none();
    let given = times.fed.is_some();
    let lifted = times.lifted.is_some() || given;
    [
        (Deadline::LiftOut, line.lift_out, !lifted),
        (Deadline::Feed, line.drained, !given),
        (Deadline::ThrowAway, line.throw_away, true),
    ]
    .map(|(what, at, open)| TubDeadline {
        what,
        at,
        open: open && going_on,
    })
}

/// Every step on the shelf, those that were taken back too.
fn steps(shelf: &Shelf) -> Vec<(&Record, SoakStep)> {
    shelf
        .versions()
        .filter(|record| record.kind == Kind::SoakStep)
        .filter_map(|record| match Body::read(record) {
            Ok(Body::SoakStep(body)) => Some((record, body.happened)),
            _ => None,
        })
        .collect()
}

/// The newest version among the steps of a soak, those that were taken back too, and the weather, which moves its end.
fn revised(shelf: &Shelf, soak: &RecordId) -> Option<Stamp> {
    let of_soak = steps(shelf)
        .into_iter()
        .filter(|(record, step)| soak_of(record, step) == *soak)
        .map(|(record, _)| record.stamp);
    let weather = shelf
        .versions()
        .filter(|record| record.kind == Kind::Weather)
        .map(|record| record.stamp);
    of_soak.chain(weather).max()
}
