//! The next step of an animal from the disk.

use crate::device::clock::DeviceZone;
use crate::keep::KeepError;
use crate::world::{Reading, World};
use leptos::prelude::*;
use tussock_core::animal::AnimalId;
use tussock_core::units::Instant;
use tussock_flow::rows::Range;
use tussock_flow::shelf::Shelf;
use tussock_flow::views::next_step::{NextStep, next_step, stock_needs};

/// The next step of an animal by the records of a screen. How long its hay lasts takes a year of records: it is asked for
/// only where the step hangs on it.
pub(super) fn next_of(
    world: World,
    animal: StoredValue<AnimalId>,
    shelf: Reading<Result<Shelf, KeepError>>,
    minute: Signal<Instant>,
) -> Memo<Option<NextStep>> {
    let since = minute.get_untracked();
    let step = move |stock: Option<&Shelf>| match (shelf.get(), minute.get()) {
        (Some(Ok(shelf)), now) => next_step(&shelf, stock, &animal.get_value(), now, &DeviceZone),
        _ => None,
    };
    let first = Memo::new(move |_| step(None));
    let asks =
        Memo::new(move |_| first.with(|first| first.as_ref().is_some_and(NextStep::asks_how_long)));
    let stock = world.shelf(move || {
        if asks.get() {
            stock_needs(since)
        } else {
            Vec::<Range>::new()
        }
    });
    Memo::new(move |_| match stock.get() {
        Some(Ok(stock)) if asks.get() => step(Some(&stock)),
        _ => first.get(),
    })
}
