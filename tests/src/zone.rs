//! A time zone from a table, for tests.

use tussock_core::units::{Instant, Zone};

/// A zone given by its offset at first and by the instants at which the offset changes, in order.
#[derive(Clone, Debug)]
pub struct TableZone {
    first: i32,
    changes: Vec<(Instant, i32)>,
}

impl TableZone {
    /// A zone that starts `first` minutes east of UTC and changes to each offset at its instant. The instants are
    /// put in order.
    pub fn new(first: i32, changes: &[(Instant, i32)]) -> Self {
        let mut changes = changes.to_vec();
        changes.sort();
        Self { first, changes }
    }

    /// The instants at which the clock changes, in order, each with the offset from then on.
    pub fn changes(&self) -> &[(Instant, i32)] {
        &self.changes
    }
}

impl Zone for TableZone {
    fn offset_min(&self, at: Instant) -> i32 {
        self.changes
            .iter()
            .rev()
            .find(|(from, _)| *from <= at)
            .map_or(self.first, |(_, offset)| *offset)
    }
}
