//! The day of the plan in use: what it hangs when, how long it waits, and how the real day stands beside it.

use super::bodies::base::JobKey;
use super::bodies::{Body, LeftAmount, LeftOverV1, NetHungV1, NetShareV1, PlanV1};
use super::envelope::Record;
use super::gather::Wish;
use super::gather::{Gathered, gather};
use super::kind::Kind;
use super::stamp::Stamp;
use crate::animal::AnimalId;
use crate::assess::best;
use crate::day::{
    DayNeeds, EatingRate, GapVerdict, Hanging, Happened, Layout, Mend, RealDay, judged, mends,
    real_day,
};
use crate::plan::{Soaked, Soaking, eaten_within_h};
use crate::round::{JobKind, Key};
use crate::sources::RecordId;
use crate::units::published::{HOURS_PER_DAY, MINUTES_PER_HOUR};
use crate::units::{AsFed, DryFraction, DryMatter, Instant, Span, Zone};

/// A net of the day as the plan has it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct DayHanging {
    /// What hangs when.
    pub hanging: Hanging,
    /// Whether any of it is soaked.
    pub soaked: bool,
    /// When it was hung today; `None` when nobody wrote it down.
    pub hung: Option<Instant>,
}

/// The day of the plan in use.
#[derive(Clone, Debug, PartialEq)]
pub struct HeldDay {
    /// The plan's record.
    pub plan: RecordId,
    /// In which version.
    pub stamp: Stamp,
    /// What it says.
    pub body: PlanV1,
    /// The nets, in the order of the day.
    pub nets: Vec<DayHanging>,
    /// The waits of the plan.
    pub layout: Layout,
    /// What mends them, cheapest first.
    pub mends: Vec<Mend>,
    /// The longest wait that the person accepted, in hours.
    pub accepted_h: Option<f64>,
    /// The real day; `None` when nobody wrote down a net in the last day.
    pub real: Option<RealDay>,
    /// How fast it eats.
    pub rate: EatingRate,
    /// The dry part of its forage as weighed out.
    pub dry: DryFraction,
    /// The most that can hang at one visit.
    pub most_at_once: Option<AsFed>,
    /// Hours in which soaked hay must be eaten; `None` where none is soaked.
    pub eaten_within_h: Option<f64>,
}

impl HeldDay {
    /// Whether the wait is over the line and longer than what was accepted: mended, or accepted once.
    pub fn asks(&self) -> bool {
        self.layout.verdict == GapVerdict::OverTheLine
            && self
                .accepted_h
                .is_none_or(|accepted| accepted < self.layout.longest_h)
    }
}

impl Gathered {
    /// How fast it eats a day of which so much is soaked: as for a plan; `None` without a weight.
    pub fn eating_rate(&self, soaked: Soaked) -> Option<EatingRate> {
        let weighed = best(&self.weights, self.day)?;
        Some(self.net.rate(weighed.weight.value, soaked))
    }
}

/// The day of the plan that an animal has today; `None` without one, without its nets, or without a weight.
///
/// Grass and hours away are in no record yet, so a wait is told as if there were none.
pub fn held_day(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<HeldDay> {
    let gathered = gather(records, animal, now, zone, &Wish::default())?;
    let own: Vec<&&Record> = records
        .iter()
        .filter(|record| !record.gone && record.at <= now)
        .filter(|record| record.subject.id() == animal.as_str())
        .collect();
    let (record, body) = own
        .iter()
        .filter(|record| record.kind == Kind::Plan)
        .filter_map(|record| match Body::read(record) {
            Ok(Body::Plan(body)) if body.from <= gathered.day => Some((**record, body)),
            _ => None,
        })
        .max_by_key(|(record, _)| (record.at, record.stamp))?;
    let soaks = |net: &NetShareV1| net.soaked;
    let soaked = match (body.nets.iter().any(soaks), body.nets.iter().all(soaks)) {
        (false, _) => Soaked::None,
        (true, true) => Soaked::All,
        (true, false) => Soaked::Some,
    };
    let rate = gathered.eating_rate(soaked)?;
    let hung = hung(&own, now);
    let nets = nets(&body, &hung, &gathered, zone)?;
    let hangings: Vec<Hanging> = nets.iter().map(|net| net.hanging).collect();
    let forage: DryMatter = hangings.iter().map(|hanging| hanging.dry).sum();
    let as_fed: AsFed = hangings.iter().map(|hanging| hanging.as_fed).sum();
    let dry = DryFraction::percent(forage.to_kg() / as_fed.to_kg() * 100.0).ok()?;
    let needs = DayNeeds {
        visits: &body.visits,
        forage,
        dry,
        rate: &rate,
        most_at_once: gathered.net.most_at_once,
        eaten_within_h: soaked_within_h(&body, &gathered),
        aways: &[],
        straw_part: None,
    };
    let layout = judged(hangings, &needs);
    let mends = if layout.verdict == GapVerdict::Planned {
        Vec::new()
    } else {
        // Straw is as far a way out as on the plan's own screen.
        let straw_part = gathered.draft().ok().and_then(|draft| draft.could_be_straw);
        mends(
            &DayNeeds {
                straw_part,
                ..needs.clone()
            },
            layout.longest_h,
        )
    };
    let (most_at_once, eaten_within_h) = (needs.most_at_once, needs.eaten_within_h);
    let accepted_h = body
        .gap_accepted_min
        .map(|minutes| minutes.get() as f64 / MINUTES_PER_HOUR as f64);
    let happened = happened(&hung, &nets, records, dry);
    let anything_hung = happened
        .iter()
        .any(|event| matches!(event, Happened::Hung { .. } | Happened::HungUnknown { .. }));
    let real = anything_hung.then(|| real_day(&happened, &rate, now, accepted_h));
    Some(HeldDay {
        plan: record.id.clone(),
        stamp: record.stamp,
        nets,
        layout,
        mends,
        accepted_h,
        real,
        body,
        dry,
        most_at_once,
        eaten_within_h,
        rate,
    })
}

/// Hours in which the soaked hay of a plan must be eaten, in today's air; `None` where nothing is soaked.
fn soaked_within_h(body: &PlanV1, gathered: &Gathered) -> Option<f64> {
    if !body.nets.iter().any(|net| net.soaked) {
        return None;
    }
    let said = body.soaking.as_ref().and_then(|said| said.recipe().ok());
    Some(eaten_within_h(&Soaking {
        recipe: said.unwrap_or(gathered.soaking.recipe),
        ..gathered.soaking
    }))
}

/// What was written down of its forage in the last day.
enum Entry {
    Hung(NetHungV1),
    Left(LeftOverV1),
}

fn hung(own: &[&&Record], now: Instant) -> Vec<(Instant, Entry)> {
    let since = now - Span::hours(HOURS_PER_DAY);
    let mut found: Vec<(Instant, Entry)> = own
        .iter()
        .filter(|record| since <= record.at)
        .filter_map(|record| match Body::read(record) {
            Ok(Body::NetHung(body)) => Some((record.at, Entry::Hung(body))),
            Ok(Body::LeftOver(body)) => Some((record.at, Entry::Left(body))),
            _ => None,
        })
        .collect();
    found.sort_by_key(|(at, _)| *at);
    found
}

/// The nets of the plan, a visit each, with the dry matter that is eaten of them.
fn nets(
    body: &PlanV1,
    entries: &[(Instant, Entry)],
    gathered: &Gathered,
    zone: &impl Zone,
) -> Option<Vec<DayHanging>> {
    let mut visits = body.visits.clone();
    visits.extend(body.nets.iter().map(|net| net.visit));
    visits.sort_unstable();
    visits.dedup();
    let eaten = |net: &NetShareV1| {
        let amount = body
            .amounts
            .iter()
            .find(|amount| amount.lot.as_ref() == Some(&net.lot))?;
        let part = amount.dry_matter_g.as_fed() / amount.as_fed_g.as_fed();
        part.is_finite()
            .then(|| DryMatter::kg(net.as_fed_g.as_fed().to_kg() * part))
    };
    let of = |key: &Key| match key {
        Key::Day {
            kind, day, slot, ..
        } if *kind == JobKind::HangNet && *day == gathered.day => Some(slot.visit),
        _ => None,
    };
    let mut found = Vec::with_capacity(visits.len());
    for (nth, visit) in (1_u32..).zip(&visits) {
        let here: Vec<&NetShareV1> = body.nets.iter().filter(|net| net.visit == *visit).collect();
        let mut dry = DryMatter::ZERO;
        for net in &here {
            dry = dry + eaten(net)?;
        }
        let hung = entries.iter().find_map(|(at, entry)| match entry {
            Entry::Hung(body) => {
                let slot = body.job.as_ref().and_then(JobKey::key);
                let today = zone.to_local(*at).date == gathered.day;
                (today && slot.as_ref().and_then(of) == Some(nth)).then_some(*at)
            }
            Entry::Left(_) => None,
        });
        found.push(DayHanging {
            hanging: Hanging {
                visit: *visit,
                dry,
                as_fed: here.iter().map(|net| net.as_fed_g.as_fed()).sum(),
            },
            soaked: here.iter().any(|net| net.soaked),
            hung,
        });
    }
    Some(found)
}

/// What happened to its forage. Of a net whose hay nobody wrote down the plan's is taken; what was left over is taken by
/// eye of the net that was hung last.
fn happened(
    entries: &[(Instant, Entry)],
    nets: &[DayHanging],
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
    let planned = |body: &NetHungV1| {
        let key = body.job.as_ref().and_then(JobKey::key)?;
        let Key::Day { slot, .. } = key else {
            return None;
        };
        let index = usize::try_from(slot.visit).ok()?.checked_sub(1)?;
        nets.get(index).map(|net| net.hanging.dry)
    };
    let mut last = None;
    let mut found = Vec::with_capacity(entries.len());
    for (at, entry) in entries {
        match entry {
            Entry::Hung(body) => {
                let hay = body
                    .hay
                    .as_ref()
                    .map(|hay| hay.g.as_fed())
                    .or_else(|| body.filling.as_ref().and_then(filled));
                let hung = hay.map(|hay| hay.dry(dry)).or_else(|| planned(body));
                last = hung;
                // Of a net that nobody weighed and no plan names, nothing is known.
                found.push(match hung {
                    Some(dry) => Happened::Hung { at: *at, dry },
                    None => Happened::HungUnknown { at: *at },
                });
            }
            Entry::Left(body) => {
                let part = |part: f64| match last {
                    Some(last) => Some(last * part),
                    // Nothing of what nobody weighed is nothing.
                    None => (part <= 0.0).then_some(DryMatter::ZERO),
                };
                let left = match &body.left {
                    LeftAmount::ByEye { quarters } => part(quarters.part()),
                    LeftAmount::Dry { hay } => Some(hay.g.as_fed().dry(dry)),
                    LeftAmount::Wet { left, hung } => part(left.g.as_fed() / hung.g.as_fed()),
                };
                found.push(match left {
                    Some(dry) => Happened::Left { at: *at, dry },
                    None => Happened::HungUnknown { at: *at },
                });
            }
        }
    }
    found
}
