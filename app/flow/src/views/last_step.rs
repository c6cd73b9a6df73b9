//! The last step of a soak, which can be taken back at any time: it did not happen.

use crate::acts::Act;
use crate::shelf::Shelf;
use crate::views::round::Today;
use crate::views::tub::steps_of;
use tussock_core::animal::TubId;
use tussock_core::log::bodies::SoakStep;
use tussock_core::log::{Body, Kind};
use tussock_core::sources::RecordId;
use tussock_core::units::Instant;

/// A step that can be taken back, in the order of a soak.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Step {
    /// Lifted out.
    Lifted,
    /// Hung or given.
    Fed,
    /// Eaten up.
    Eaten,
    /// Thrown away.
    ThrownAway,
    /// Stopped.
    Stopped,
}

/// The last step of a soak with everything that was written for it.
#[derive(Clone, Debug, PartialEq)]
pub struct LastStep {
    /// Which.
    pub step: Step,
    /// When.
    pub at: Instant,
    /// The records of it: the step, however often it was logged, and what was logged with it.
    pub records: Vec<RecordId>,
}

impl LastStep {
    /// The act that takes it back.
    pub fn back(&self) -> Act {
        Act::All(self.records.iter().cloned().map(Act::Remove).collect())
    }
}

fn of(step: &SoakStep) -> Option<Step> {
    match step {
        SoakStep::Started { .. } | SoakStep::Drained { .. } => None,
        SoakStep::Lifted { .. } => Some(Step::Lifted),
        SoakStep::Fed { .. } => Some(Step::Fed),
        SoakStep::Eaten { .. } => Some(Step::Eaten),
        SoakStep::ThrownAway { .. } => Some(Step::ThrownAway),
        SoakStep::Stopped { .. } => Some(Step::Stopped),
    }
}

/// The last step of a soak, by its own id or that of its tub; `None` while it is only in the water.
///
/// With lifting out goes that of the hay that lay beside it and was lifted at the same moment; with feeding go the nets
/// that were hung out of it.
pub fn last_step(shelf: &Shelf, today: &Today, id: &TubId) -> Option<LastStep> {
    let soaks = &today.due.soaks;
    let open = soaks.iter().find(|soak| soak.id.0 == id.0).or_else(|| {
        let in_tub = soaks.iter().filter(|soak| soak.tub.as_ref() == Some(id));
        in_tub.max_by_key(|soak| soak.times.wetted)
    });
    let soak = open.map_or_else(|| RecordId(id.0.clone()), |open| open.id.clone());
    let steps = steps_of(shelf, &soak);
    let (step, at) = steps
        .iter()
        .filter_map(|logged| Some((of(&logged.body.happened)?, logged.at)))
        .max()?;
    let of_kind = |soak: &RecordId, at: Option<Instant>| -> Vec<RecordId> {
        steps_of(shelf, soak)
            .into_iter()
            .filter(|logged| of(&logged.body.happened) == Some(step))
            .filter(|logged| at.is_none_or(|at| logged.at == at))
            .map(|logged| logged.id)
            .collect()
    };
    let mut records = of_kind(&soak, None);
    match step {
        Step::Lifted => {
            let beside = soaks
                .iter()
                .filter(|other| open.is_some_and(|open| other.is_beside(open)));
            for other in beside {
                records.extend(of_kind(&other.id, Some(at)));
            }
        }
        Step::Fed => {
            let hung = shelf.bodies(&Kind::NetHung).into_iter();
            records.extend(hung.filter_map(|(record, body)| match body {
                Body::NetHung(body) if body.soak.as_ref() == Some(&soak) => Some(record.id.clone()),
                _ => None,
            }));
        }
        Step::Eaten | Step::ThrownAway | Step::Stopped => {}
    }
    Some(LastStep { step, at, records })
}
