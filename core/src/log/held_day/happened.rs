//! What was written down of an animal's or a group's forage, as what happened to it.

use super::{eaten, hung_for, visits};
use crate::day::Happened;
use crate::log::bodies::{Body, LeftAmount, LeftOverV1, NetHungV1, PlanV1};
use crate::log::envelope::Record;
use crate::round::Slot;
use crate::sources::RecordId;
use crate::units::published::HOURS_PER_DAY;
use crate::units::{AsFed, DryFraction, DryMatter, Instant, LocalDate, Span};

/// What was written down of its forage in the last day.
pub(super) enum Entries {
    Hung(RecordId, NetHungV1),
    Left(LeftOverV1),
}

pub(super) fn entries(own: &[&&Record], now: Instant) -> Vec<(Instant, Entries)> {
    let since = now - Span::hours(HOURS_PER_DAY);
    let mut found: Vec<(Instant, Entries)> = own
        .iter()
        .filter(|record| since <= record.at)
        .filter_map(|record| match Body::read(record) {
            Ok(Body::NetHung(body)) => Some((record.at, Entries::Hung(record.id.clone(), body))),
            Ok(Body::LeftOver(body)) => Some((record.at, Entries::Left(body))),
            _ => None,
        })
        .collect();
    found.sort_by_key(|(at, _)| *at);
    found
}

/// A net that hangs beside others of its visit.
struct Beside {
    id: RecordId,
    /// What hung in it; `None` where nobody knows.
    dry: Option<DryMatter>,
    /// What was seen of it since.
    seen: Option<Seen>,
}

/// What was seen to be left.
#[derive(Clone, Copy)]
enum Seen {
    /// So much.
    Left(DryMatter),
    /// Something, of what nobody weighed.
    CannotTell,
}

/// The nets that were hung last: all of one visit.
#[derive(Default)]
struct Batch {
    visit: Option<(LocalDate, u32)>,
    nets: Vec<Beside>,
}

impl Batch {
    fn hang(&mut self, place: Option<(LocalDate, Slot)>, net: Beside) {
        let visit = place.map(|(day, slot)| (day, slot.visit));
        if visit.is_none() || visit != self.visit {
            self.nets.clear();
        }
        self.visit = visit;
        self.nets.push(net);
    }

    /// What is left in all that hangs once the last of the nets was looked at: what is left of one net says nothing of the
    /// others, for several eat of them. `None` until then.
    fn seen(&mut self, body: &LeftOverV1, dry: DryFraction) -> Option<Seen> {
        let alone = self.nets.len() == 1;
        let named = |net: &Beside| body.hung.as_ref().is_none_or(|hung| *hung == net.id);
        // Of a net that hangs alone whatever was seen is seen of it.
        let net = self.nets.iter_mut().rfind(|net| alone || named(net));
        let Some(net) = net else {
            return self.nets.is_empty().then(|| left(body, None, dry));
        };
        net.seen = Some(left(body, net.dry, dry));
        let all: Option<Vec<Seen>> = self.nets.iter().map(|net| net.seen).collect();
        let sum = all?
            .into_iter()
            .try_fold(DryMatter::ZERO, |sum, seen| match seen {
                Seen::Left(dry) => Some(sum + dry),
                Seen::CannotTell => None,
            });
        Some(sum.map_or(Seen::CannotTell, Seen::Left))
    }
}

/// What is left of a net.
fn left(body: &LeftOverV1, hung: Option<DryMatter>, dry: DryFraction) -> Seen {
    let part = |part: f64| match hung {
        Some(hung) => Some(hung * part),
        // Nothing of what nobody weighed is nothing.
        None => (part <= 0.0).then_some(DryMatter::ZERO),
    };
    let left = match &body.left {
        LeftAmount::ByEye { quarters } => part(quarters.part()),
        LeftAmount::Dry { hay } => Some(hay.g.as_fed().dry(dry)),
        LeftAmount::Wet { left, hung } => part(left.g.as_fed() / hung.g.as_fed()),
    };
    left.map_or(Seen::CannotTell, Seen::Left)
}

/// What happened to its forage. Of a net whose hay nobody wrote down the plan's is taken.
pub(super) fn happened(
    entries: &[(Instant, Entries)],
    plan: &PlanV1,
    records: &[&Record],
    dry: DryFraction,
) -> Vec<Happened> {
    let filled = |id: &RecordId| {
        let record = records.iter().find(|record| record.id == *id)?;
        match Body::read(record) {
            Ok(Body::NetFilled(body)) => Some(body.hay.g.as_fed()),
            _ => None,
        }
    };
    let mut batch = Batch::default();
    let mut found = Vec::with_capacity(entries.len());
    for (at, entry) in entries {
        match entry {
            Entries::Hung(id, body) => {
                let hay: Option<AsFed> = body
                    .hay
                    .as_ref()
                    .map(|hay| hay.g.as_fed())
                    .or_else(|| body.filling.as_ref().and_then(filled));
                let place = hung_for(body);
                let hung = hay
                    .map(|hay| hay.dry(dry))
                    .or_else(|| planned(plan, place?.1));
                batch.hang(
                    place,
                    Beside {
                        id: id.clone(),
                        dry: hung,
                        seen: None,
                    },
                );
                // Of a net that nobody weighed and no plan names, nothing is known.
                found.push(match hung {
                    Some(dry) => Happened::Hung { at: *at, dry },
                    None => Happened::HungUnknown { at: *at },
                });
            }
            Entries::Left(body) => {
                found.extend(batch.seen(body, dry).map(|left| match left {
                    Seen::Left(dry) => Happened::Left { at: *at, dry },
                    Seen::CannotTell => Happened::HungUnknown { at: *at },
                }));
            }
        }
    }
    found
}

/// The dry matter of a net by its place in the day of the plan.
fn planned(plan: &PlanV1, slot: Slot) -> Option<DryMatter> {
    let index = |nth: u32| usize::try_from(nth).ok()?.checked_sub(1);
    let visit = visits(plan).get(index(slot.visit)?).copied()?;
    let mut here = plan.nets.iter().filter(|net| net.visit == visit);
    eaten(plan, here.nth(index(slot.nth)?)?)
}
