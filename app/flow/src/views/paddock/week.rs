//! The seven days from today.

use super::asked::{For, Grass};
use super::goes::Goes;
use crate::shelf::Shelf;
use chrono::Days;
use tussock_core::graze::window::{Closed, Window};
use tussock_core::log::Record;
use tussock_core::units::{Instant, LocalDate, Zone};

/// So many days are told.
const DAYS: u64 = 7;

/// A day of the week to come.
#[derive(Clone, Debug, PartialEq)]
pub struct WeekDay {
    /// The day.
    pub day: LocalDate,
    /// Whether it is today, of which the chips speak.
    pub today: bool,
    /// When grass is open on it.
    pub window: Window,
}

/// The windows of seven days for one animal or group. Of the days to come nobody knows the night.
pub fn week(shelf: &Shelf, goes: &Goes, now: Instant, zone: &impl Zone) -> Vec<WeekDay> {
    let records: Vec<&Record> = shelf.records().collect();
    let grass = Grass::of(shelf, &records, now, zone);
    let also: Vec<Closed> = goes
        .window
        .closed
        .iter()
        .copied()
        .filter(|closed| {
            matches!(
                closed,
                Closed::Stopped | Closed::HayLeavesNoRoom | Closed::NotInPlan
            )
        })
        .collect();
    let of = For {
        risk: goes.risk,
        paddock: goes.paddock.as_ref().map(|(id, _)| id),
        also: &also,
    };
    (0..DAYS)
        .filter_map(|ahead| grass.day.checked_add_days(Days::new(ahead)))
        .map(|day| WeekDay {
            day,
            today: day == grass.day,
            window: grass.window(day, &of),
        })
        .collect()
}
