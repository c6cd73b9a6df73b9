//! From records to the turnout that somebody decided on, and the leaf that somebody saw.

use super::bodies::{Body, GrazingV1, SwardV1};
use super::entry::{Entry, up_to};
use super::envelope::Record;
use super::gather::Gathered;
use super::published::LEAF_SEEN_DAYS;
use crate::animal::{AnimalId, PaddockId};
use crate::assess::best;
use crate::graze::intake::{OutFor, eaten};
use crate::graze::sward::published::LEAF_BARE;
use crate::graze::sward::{Leaf, readings};
use crate::limits::Ends;
use crate::plan::Grazing;
use crate::units::{DryMatter, Instant, LocalDate, Zone};

/// The turnout that holds for an animal on a day: its own last decision, else that of the group it is in.
pub(super) fn grazing_of(
    entries: &[Entry<'_>],
    animal: &AnimalId,
    day: LocalDate,
    zone: &impl Zone,
) -> Option<Grazing> {
    let decided = decided(entries, animal.as_str(), day).or_else(|| {
        let group = entries.iter().rev().find_map(|entry| match &entry.body {
            Body::Group(group) => {
                let group = group.group(&entry.record.id);
                group.on(day).contains(&animal).then_some(group.id.0)
            }
            _ => None,
        });
        decided(entries, group.as_deref()?, day)
    });
    let decided = decided.filter(|decided| decided.holds(day))?;
    Some(as_asked(entries, decided, day, zone))
}

/// The turnout that a decision asks for at an instant, as a plan would take it: also one that is not written down yet.
///
/// `records` are those of [`gather`](super::gather()).
pub fn grazing_by(
    records: &[&Record],
    decided: &GrazingV1,
    now: Instant,
    zone: &impl Zone,
) -> Grazing {
    let day = zone.to_local(now).date;
    as_asked(&up_to(records, now), decided, day, zone)
}

fn as_asked(
    entries: &[Entry<'_>],
    decided: &GrazingV1,
    day: LocalDate,
    zone: &impl Zone,
) -> Grazing {
    Grazing {
        paddock: decided.paddock.clone(),
        time: decided.minutes.time(),
        muzzle: decided.muzzle,
        weeks: Some(decided.weeks(day)),
        leaf: leaf_seen(entries, decided.paddock.as_ref(), day, zone),
    }
}

/// The last decision about a subject's grass that has begun on a day, whether it goes out by it or not.
pub(super) fn decided<'a>(
    entries: &'a [Entry<'_>],
    subject: &str,
    day: LocalDate,
) -> Option<&'a GrazingV1> {
    entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Grazing(body) if entry.record.subject.id() == subject && body.from <= day => {
            Some(body)
        }
        _ => None,
    })
}

/// Whether somebody saw leaf enough to eat on a paddock, on a day or shortly before it. What nobody looked at has none: a
/// floor is judged with the end that leaves least.
pub(super) fn leaf_seen(
    entries: &[Entry<'_>],
    paddock: Option<&PaddockId>,
    day: LocalDate,
    zone: &impl Zone,
) -> bool {
    let Some(paddock) = paddock else { return false };
    let seen = entries.iter().rev().find_map(|entry| match &entry.body {
        Body::Sward(body) if entry.record.subject.id() == paddock.as_str() => {
            let on = zone.to_local(entry.record.at).date;
            (0..=*LEAF_SEEN_DAYS)
                .contains(&(day - on).num_days())
                // Who says only that it is in seed says nothing of its height.
                .then_some(body)
                .filter(|body| body.leaf.is_some() || !body.heights_mm.is_empty())
        }
        _ => None,
    });
    seen.is_some_and(SwardV1::has_leaf)
}

impl Gathered {
    /// What it eats of grass at its weight, with both ends; `None` while nobody weighed it.
    pub fn eats_at_grass(&self, out: &OutFor) -> Option<Ends<DryMatter>> {
        let weight = &best(&self.weights, self.day)?.weight;
        let body = Ends::new(weight.low, weight.value, weight.high);
        Some(eaten(out, body))
    }
}

impl SwardV1 {
    /// Whether the leaf is high enough to be forage: at the ankle or above, or 5 cm and more by what was measured. Where both
    /// were said, both must be.
    pub fn has_leaf(&self) -> bool {
        let boot = self.leaf.map(|leaf| leaf != Leaf::BelowAnkle);
        let measured = readings(&self.heights())
            .ok()
            .map(|(of, _)| *LEAF_BARE <= of.mean);
        match (boot, measured) {
            (Some(boot), Some(measured)) => boot && measured,
            (one, other) => one.or(other).unwrap_or(false),
        }
    }
}

#[cfg(test)]
mod tests;
