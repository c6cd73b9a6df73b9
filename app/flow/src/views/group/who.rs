//! Which animal of a group it is.

use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::horses::kind_of_limit;
use crate::views::horses::list_needs;
use tussock_core::animal::{Animal, Group, GroupId};
use tussock_core::log::Kind;
use tussock_core::units::{Instant, Zone};

/// The most groups that are asked for.
const GROUPS: u32 = 200;

/// What the screen asks the disk for.
pub fn who_needs() -> Vec<Range> {
    let mut ranges = list_needs();
    ranges.push(kind_of_limit(&Kind::Group, GROUPS));
    ranges
}

/// A group with those that are in it today, by name; `None` when it is not there.
pub fn who(
    shelf: &Shelf,
    id: &GroupId,
    now: Instant,
    zone: &impl Zone,
) -> Option<(Group, Vec<Animal>)> {
    let group = shelf.group(id)?;
    let today = zone.to_local(now).date;
    let mut members = shelf.animals();
    members.retain(|animal| group.since(&animal.id, today).is_some());
    Some((group, members))
}
