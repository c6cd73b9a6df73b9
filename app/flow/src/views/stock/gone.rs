//! What went of the lots: nets that were filled, and nets that were hung without anybody having filled them.

use super::known;
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::round;
use std::collections::{BTreeMap, BTreeSet};
use tussock_core::animal::LotId;
use tussock_core::forage::HowKnown;
use tussock_core::log::{Body, Kind};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Instant, LocalDate, Span, Zone};

/// How far back what went is asked for: a harvest and some weeks.
const BACK_DAYS: i64 = 400;
/// The most entries of a kind that are asked for.
const MOST: u32 = 12_000;
/// The most counts that are asked for.
const COUNTS: u32 = 2_000;

/// What the screens of the stock ask the disk for: the day's work, and what went of the lots since a harvest.
pub fn needs(now: Instant) -> Vec<Range> {
    let entries = [Kind::NetFilled, Kind::NetHung];
    let of = |kind: &Kind, from: Instant, limit| Range::Kind {
        kind: kind.word().to_owned(),
        from: from.to_ms(),
        limit,
    };
    let longer = |range: &Range| match range {
        Range::Kind { kind, .. } => entries.iter().any(|entry| entry.word() == kind),
        Range::One(_) | Range::Subject { .. } => false,
    };
    let mut ranges = round::needs(now);
    ranges.retain(|range| !longer(range));
    let from = now - Span::hours(24 * BACK_DAYS);
    ranges.extend(entries.iter().map(|kind| of(kind, from, MOST)));
    ranges.push(of(&Kind::LotCount, Instant::from_ms(0), COUNTS));
    ranges
}

/// An amount that went of a lot.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Went {
    pub at: Instant,
    pub day: LocalDate,
    lot: LotId,
    /// `None` when nobody knows it.
    pub amount: Option<AsFed>,
    pub known: HowKnown,
}

/// What went, and how far back it is known.
pub(super) struct Gone {
    went: Vec<Went>,
    from: Instant,
}

impl Gone {
    /// What went of a lot.
    pub(super) fn of(&self, lot: &LotId) -> impl Iterator<Item = &Went> {
        self.went.iter().filter(move |went| went.lot == *lot)
    }

    /// Whether everything since an instant is known.
    pub(super) fn reaches(&self, at: Instant) -> bool {
        self.from <= at
    }
}

/// An entry of a net, by subject.
struct Net {
    at: Instant,
    id: RecordId,
    lot: Option<LotId>,
    amount: Option<AsFed>,
    known: HowKnown,
    what: What,
}

/// What was done with a net.
#[derive(PartialEq)]
enum What {
    Filled,
    /// Hung, with the filling it names.
    Hung(Option<RecordId>),
}

/// What went of every lot. A net that is hung takes a filling of its lot that was made for its subject before; only one
/// for which nobody filled anything went from the stock when it was hung.
pub(super) fn gone(shelf: &Shelf, now: Instant, zone: &impl Zone) -> Gone {
    let mut nets: BTreeMap<String, Vec<Net>> = BTreeMap::new();
    let mut cut = Instant::from_ms((now - Span::hours(24 * BACK_DAYS)).to_ms());
    for kind in [Kind::NetFilled, Kind::NetHung] {
        let bodies = shelf.bodies(&kind);
        // As many as were asked for: there may be more before the oldest.
        if usize::try_from(MOST).is_ok_and(|most| most <= bodies.len())
            && let Some((oldest, _)) = bodies.last()
        {
            cut = cut.max(oldest.at);
        }
        for (record, body) in bodies {
            let (lot, amount, what) = match body {
                Body::NetFilled(body) => (Some(body.lot), Some(body.hay.g.as_fed()), What::Filled),
                Body::NetHung(body) => (
                    body.lot,
                    body.hay.map(|hay| hay.g.as_fed()),
                    What::Hung(body.filling),
                ),
                _ => continue,
            };
            let how = known(record.known);
            nets.entry(record.subject.id().to_owned())
                .or_default()
                .push(Net {
                    at: record.at,
                    id: record.id.clone(),
                    lot,
                    amount: amount.filter(|_| how.is_some()),
                    known: how.unwrap_or(HowKnown::Assumed),
                    what,
                });
        }
    }
    let mut went = Vec::new();
    for (_, mut of_subject) in nets {
        // A filling of the same instant comes before the hanging that takes it.
        of_subject.sort_by_key(|net| (net.at, net.what != What::Filled));
        took(of_subject, &mut went, zone);
    }
    Gone { went, from: cut }
}

fn took(nets: Vec<Net>, went: &mut Vec<Went>, zone: &impl Zone) {
    // What a hanging names is taken by no other.
    let named: BTreeSet<RecordId> = nets
        .iter()
        .filter_map(|net| match &net.what {
            What::Hung(named) => named.clone(),
            What::Filled => None,
        })
        .collect();
    // Fillings that do not hang yet, and which.
    let mut filled: Vec<(RecordId, LotId)> = Vec::new();
    for net in nets {
        let taken = match (&net.what, &net.lot) {
            (What::Filled, _) => None,
            (What::Hung(Some(it)), _) => {
                let there = filled.iter().position(|(id, _)| id == it);
                if there.is_none() {
                    // It names a filling that is not here: that one was counted, or lies beyond what was read.
                    continue;
                }
                there
            }
            (What::Hung(None), lot) => filled
                .iter()
                .position(|(id, of)| Some(of) == lot.as_ref() && !named.contains(id)),
        };
        if let Some(index) = taken {
            filled.remove(index);
            continue;
        }
        let Some(lot) = net.lot else { continue };
        if net.what == What::Filled {
            filled.push((net.id, lot.clone()));
        }
        went.push(Went {
            at: net.at,
            day: zone.to_local(net.at).date,
            lot,
            amount: net.amount,
            known: net.known,
        });
    }
}
