//! The desk: the rations of the yard.

use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::foods;
use crate::views::horses::list_needs;
use tussock_core::animal::AnimalId;

/// The desk.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Desk {
    /// The animals whose rations can be looked at, by name.
    pub animals: Vec<(AnimalId, String)>,
    /// How many foods of the yard's own there are.
    pub foods: usize,
}

/// What the screen asks the disk for.
pub fn needs() -> Vec<Range> {
    let mut needs = list_needs();
    needs.extend(foods::needs());
    needs
}

/// The desk.
pub fn desk(shelf: &Shelf) -> Desk {
    Desk {
        animals: shelf
            .animals()
            .into_iter()
            .map(|animal| (animal.id, animal.name))
            .collect(),
        foods: foods::own(shelf).len(),
    }
}
