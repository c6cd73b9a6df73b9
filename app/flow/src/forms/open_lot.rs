//! Opening a lot in place of another: one tap, from which a changeover begins.

use crate::acts::Act;
use crate::shelf::Shelf;
use crate::views::changeover::body;
use tussock_core::animal::LotId;
use tussock_core::forage::{NotInPlace, may_stand_in};
use tussock_core::log::bodies::LotV1;
use tussock_core::log::{Body, LogError};
use tussock_core::sources::RecordId;
use tussock_core::units::LocalDate;

/// Why a lot is not opened.
#[derive(Clone, Debug, PartialEq)]
pub enum Refused {
    /// One of the lots is not here.
    NotThere,
    /// A new plan is needed.
    NewPlan(NotInPlace),
    /// It cannot be read.
    Log(LogError),
}

impl From<LogError> for Refused {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

fn change(id: &LotId, body: LotV1) -> Act {
    Act::Change {
        id: RecordId(id.0.clone()),
        body: Body::Lot(body),
        at: None,
    }
}

/// The act that opens `new` today in place of `now`, the lot that is weighed out where the plan names `planned`. Going
/// back to one that `now` was opened in place of ends what stands in for it.
///
/// # Errors
/// A lot that is not here or cannot be read, or that needs a new plan.
pub fn open(
    shelf: &Shelf,
    planned: &LotId,
    now: &LotId,
    new: &LotId,
    today: LocalDate,
) -> Result<Act, Refused> {
    let there = |id: &LotId| body(shelf, id).ok_or(Refused::NotThere);
    let mut opened = there(new)?;
    opened.opened_on = Some(today);
    // From the lot that is weighed out back to what it stands in for, each once.
    let mut back: Vec<(LotId, LotV1)> = Vec::new();
    let mut here = now.clone();
    while let Some(held) = body(shelf, &here) {
        let Some(before) = held.in_place_of.clone() else {
            break;
        };
        if back.iter().any(|(id, _)| *id == here) {
            break;
        }
        back.push((here, held));
        if before == *new {
            let mut acts: Vec<Act> = back
                .into_iter()
                .map(|(id, mut held)| {
                    held.in_place_of = None;
                    change(&id, held)
                })
                .collect();
            acts.push(change(new, opened));
            return Ok(Act::All(acts));
        }
        here = before;
    }
    let old = there(planned)?.lot(&RecordId(planned.0.clone()))?.0;
    let lot = opened.lot(&RecordId(new.0.clone()))?.0;
    may_stand_in(&old, &lot).map_err(Refused::NewPlan)?;
    opened.in_place_of = Some(now.clone());
    Ok(change(new, opened))
}
