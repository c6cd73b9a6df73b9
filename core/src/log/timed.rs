//! From timed nets to the animal's own eating rate.

use super::bodies::{Body, LotV1, NetTimedV1};
use super::entry::{Entry, read};
use super::envelope::Record;
use crate::animal::{AnimalId, LotId};
use crate::day::{DayError, NetKind, OwnRate, Timed, Timing, own_rate};
use crate::soak::{Recipe, dry_loss};
use crate::sources::RecordId;
use crate::units::{AsFed, DryMatter, Instant};

/// A net that was timed.
#[derive(Clone, Debug, PartialEq)]
pub struct TimedNet {
    /// The record.
    pub record: RecordId,
    /// When it was seen to be empty.
    pub at: Instant,
    /// What it was eaten from.
    pub kind: NetKind,
    /// It was soaked.
    pub soaked: bool,
    /// The hours.
    pub hours: f64,
    /// What it says; `None` when the dry matter of its hay is not known.
    pub says: Option<Result<Timed, DayError>>,
}

/// The nets that an animal was timed with, the oldest first. `recipe` is how hay is soaked here, for what is lost in the
/// water. What is deleted or cannot be read is left out.
pub fn timed_nets(records: &[&Record], animal: &AnimalId, recipe: &Recipe) -> Vec<TimedNet> {
    let (entries, _) = read(records, |_| true);
    of_animal(&entries, animal)
        .map(|(record, body)| TimedNet {
            record: record.id.clone(),
            at: body.to,
            kind: body.net_kind,
            soaked: body.soaked,
            hours: body.hours(),
            says: timing(&entries, body, recipe).map(|timing| timing.says()),
        })
        .collect()
}

/// The animal's own rate with one kind of net: with dry hay, with soaked hay.
pub fn own_rates(
    records: &[&Record],
    animal: &AnimalId,
    kind: NetKind,
    recipe: &Recipe,
) -> [OwnRate; 2] {
    own_rates_of(&read(records, |_| true).0, animal, kind, recipe)
}

/// The likely dry matter of a net of so much hay; `soaked` is how it was soaked, for what is lost in the water. `None` when
/// the lot or its dry matter is not known.
pub fn net_dry(
    records: &[&Record],
    lot: &LotId,
    hay: AsFed,
    soaked: Option<&Recipe>,
) -> Option<DryMatter> {
    let record = records.iter().find(|record| record.id.0 == lot.0)?;
    match Body::read(record) {
        Ok(Body::Lot(body)) => dry_of(&record.id, &body, hay, soaked),
        _ => None,
    }
}

pub(super) fn own_rates_of(
    entries: &[Entry<'_>],
    animal: &AnimalId,
    kind: NetKind,
    recipe: &Recipe,
) -> [OwnRate; 2] {
    [false, true].map(|soaked| {
        let timings: Vec<Timing> = of_animal(entries, animal)
            .filter(|(_, body)| body.net_kind == kind && body.soaked == soaked)
            .filter_map(|(_, body)| timing(entries, body, recipe))
            .collect();
        own_rate(&timings)
    })
}

fn of_animal<'e>(
    entries: &'e [Entry<'_>],
    animal: &'e AnimalId,
) -> impl Iterator<Item = (&'e Record, &'e NetTimedV1)> {
    entries.iter().filter_map(|entry| match &entry.body {
        Body::NetTimed(body) if entry.record.subject.id() == animal.as_str() => {
            Some((entry.record, body))
        }
        _ => None,
    })
}

fn timing(entries: &[Entry<'_>], body: &NetTimedV1, recipe: &Recipe) -> Option<Timing> {
    let lot = body.lot.as_ref()?;
    let dry = entries.iter().find_map(|entry| match &entry.body {
        Body::Lot(held) if entry.record.id.0 == lot.0 => {
            let soaked = body.soaked.then_some(recipe);
            dry_of(&entry.record.id, held, body.hay.g.as_fed(), soaked)
        }
        _ => None,
    })?;
    Some(body.timing(dry))
}

fn dry_of(id: &RecordId, lot: &LotV1, hay: AsFed, soaked: Option<&Recipe>) -> Option<DryMatter> {
    let (lot, _) = lot.lot(id).ok()?;
    let lost = soaked.map_or(0.0, |recipe| dry_loss(recipe.soak()).part.likely);
    Some(hay.dry(lot.dry_matter()?.value) * (1.0 - lost))
}
