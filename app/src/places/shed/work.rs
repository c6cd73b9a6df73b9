//! The day's work, as every screen of the shed and the round holds it.

use crate::device::clock::{self, DeviceZone};
use crate::keep::KeepError;
use crate::parts::{Caution, State};
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::log::Subject;
use tussock_core::units::Instant;
use tussock_flow::rows::Range;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::round::{self, Today};
use tussock_flow::views::shed::Standing;
use tussock_flow::views::stock;
use tussock_flow::words::{English, RoundWords};

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
        Self::asking(world, round::needs)
    }

    /// The same with what went of the lots since a harvest, for their stock.
    pub(crate) fn with_stock(world: World) -> Self {
        Self::asking(world, stock::needs)
    }

    fn asking(world: World, needs: fn(Instant) -> Vec<Range>) -> Self {
        let shelf = world.shelf(move || needs(clock::now()));
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

impl Work {
    /// A caution for each animal or group whose plan waits; of one subject where an id is given.
    pub(crate) fn waiting(self, of: Option<String>) -> impl IntoView {
        let words = English::default();
        move || {
            let waiting = self
                .now
                .with(|now| now.as_ref().map(|(_, today)| today.waiting()))
                .unwrap_or_default();
            waiting
                .into_iter()
                .filter(|(subject, _, _)| of.as_ref().is_none_or(|id| subject.parts().1 == id))
                .map(|(_, name, waits)| {
                    let said = words.waits_for(&name, waits);
                    view! { <Caution said=said /> }
                })
                .collect_view()
        }
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
