//! The day's work, as every screen of the shed and the round holds it.

use crate::device::clock::{self, DeviceZone};
use crate::keep::KeepError;
use crate::parts::State;
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::log::Subject;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::round::{self, Today};
use tussock_flow::views::shed::Standing;

/// The records and what they make of the day; `None` while the disk is read.
#[derive(Clone, Copy)]
pub(crate) struct Work {
    /// What the disk said.
    pub shelf: Reading<Result<Shelf, KeepError>>,
    /// The records with the day's work.
    pub now: Memo<Option<(Shelf, Today)>>,
}

impl Work {
    /// Asks the disk, and again with every write and every minute.
    pub(crate) fn of(world: World) -> Self {
        let shelf = world.shelf(|| round::needs(clock::now()));
        let minute = world.minute();
        let now = Memo::new(move |_| {
            let at = minute.get();
            match shelf.get() {
                Some(Ok(shelf)) => {
                    let today = round::today(&shelf, at, &DeviceZone);
                    Some((shelf, today))
                }
                _ => None,
            }
        });
        Self { shelf, now }
    }
}

/// What records of the whole yard are about.
pub(crate) fn yard(world: World) -> Subject {
    Subject::yard(&world.yard())
}

/// The shape of a standing.
pub(crate) const fn shape(standing: Standing) -> State {
    match standing {
        Standing::Done => State::Done,
        Standing::Later => State::Later,
        Standing::Due => State::Due,
        Standing::Late => State::Late,
        Standing::Care => State::Care,
        Standing::Stop => State::Stop,
        Standing::NotKnown => State::NotKnown,
    }
}
