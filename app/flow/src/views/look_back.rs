//! After an episode: what changed in the days before it, by day, and what nobody logged.

use super::next_step::episode;
use super::{ledger, plan};
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::horses::kind_of_limit;
use tussock_core::animal::{Animal, AnimalId};
use tussock_core::log::{Kind, Record, Wish, gather, looked_back};
use tussock_core::progress::{Changed, NotLogged};
use tussock_core::units::{Instant, LocalDate, Zone};

/// The most entries of a kind that are asked for: an episode may lie months back.
const ENTRIES: u32 = 6_000;

/// What the screen asks the disk for.
pub fn needs(animal: &AnimalId, now: Instant) -> Vec<Range> {
    let mut ranges = plan::needs(animal);
    ranges.extend(ledger::needs(now));
    ranges.extend(
        [
            Kind::NetFilled,
            Kind::NetHung,
            Kind::SoakStep,
            Kind::LeftOver,
            Kind::Job,
            Kind::Turnout,
            Kind::Sward,
            Kind::Grazing,
        ]
        .map(|kind| kind_of_limit(&kind, ENTRIES)),
    );
    ranges
}

/// What changed on one day.
#[derive(Clone, Debug, PartialEq)]
pub struct ChangedOn {
    /// The day.
    pub day: LocalDate,
    /// What.
    pub what: Vec<Changed>,
}

/// The look-back on an episode.
#[derive(Clone, Debug, PartialEq)]
pub struct LookedBack {
    /// The first day that is looked at.
    pub from: LocalDate,
    /// The day the episode began.
    pub began: LocalDate,
    /// What changed, the latest day first.
    pub days: Vec<ChangedOn>,
    /// What nobody logged.
    pub not_logged: Vec<NotLogged>,
}

/// An animal with the look-back on its last episode.
#[derive(Clone, Debug, PartialEq)]
pub struct View {
    /// The animal.
    pub animal: Animal,
    /// The look-back; `None` while no episode is written down.
    pub back: Option<LookedBack>,
}

/// The look-back on an animal's last episode; `None` when the animal is not there.
pub fn look_back(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<View> {
    let records: Vec<&Record> = shelf.records().collect();
    let gathered = gather(&records, animal, now, zone, &Wish::default())?;
    let back = episode(&gathered)
        .and_then(|began| looked_back(&records, animal, began, now, zone))
        .map(|back| {
            let mut days: Vec<ChangedOn> = Vec::new();
            for one in back.happened {
                match days.last_mut().filter(|last| last.day == one.on) {
                    Some(last) => last.what.push(one.what),
                    None => days.push(ChangedOn {
                        day: one.on,
                        what: vec![one.what],
                    }),
                }
            }
            LookedBack {
                from: back.from,
                began: back.to,
                days,
                not_logged: back.not_logged,
            }
        });
    Some(View {
        animal: gathered.animal,
        back,
    })
}
