//! Work in a plan: what the room `work` says of the animal as the plan knows it.

use super::input::PlanFor;
use crate::animal::VetScope;
use crate::work::{Standing, WorkFor, standing};

/// What work it may have, and what stops it.
pub(super) fn work(of: &PlanFor<'_>) -> Standing {
    standing(&WorkFor {
        animal: of.animal,
        day: of.day,
        words: of.words,
        said: of.said,
        sign: of.stopped_by_signs(VetScope::Work),
    })
}
