//! The rest of today laid out anew, beside the records: why, what hangs when, and what it leaves to wait.

use super::bodies::base::JobKey;
use super::bodies::{Body, DayRelaidV1, JobAnswer, NetHungV1};
use super::due::Due;
use super::envelope::Record;
use super::held_day::HeldDay;
use super::kind::Kind;
use crate::animal::LotId;
use crate::day::GapVerdict;
use crate::round::published::VISIT_LATE_AFTER;
use crate::round::{IssuedPlan, JobKind, Key, PlannedNet, Slot, Subject};
use crate::sources::RecordId;
use crate::units::{AsFed, DryMatter, Instant, LocalDate, LocalStamp, LocalTime, Span, Zone};

mod laid;
#[cfg(test)]
mod tests;

/// Why the rest of a day is laid out anew.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WhyAnew {
    /// A visit has passed, the next has come, and nobody wrote down that its net hangs; or somebody said that it does not.
    Missed {
        /// The visit.
        visit: LocalTime,
    },
    /// Its net was hung late.
    HungLate {
        /// The visit.
        visit: LocalTime,
        /// How late.
        by: Span,
    },
    /// Its net is late and not hung yet.
    Late {
        /// The visit.
        visit: LocalTime,
        /// How late.
        by: Span,
    },
}

/// What hangs at a visit that is left.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RestHanging {
    /// The visit of the plan.
    pub visit: LocalTime,
    /// It is late, and hangs now.
    pub now: bool,
    /// The hay, before soaking.
    pub as_fed: AsFed,
}

/// The rest of a day as it can be.
#[derive(Clone, Debug, PartialEq)]
pub struct RestLaid {
    /// What hangs when.
    pub hangings: Vec<RestHanging>,
    /// The longest wait from now to tomorrow's first visit, for a fast eater, in hours.
    pub longest_h: f64,
    /// What that means.
    pub verdict: GapVerdict,
    /// The dry matter of the day that finds no place any more.
    pub over: DryMatter,
    /// What is written down once the person hangs the rest so; `None` when this is as the day stands already.
    pub body: Option<DayRelaidV1>,
}

/// Whether the rest of a day can be laid out.
#[derive(Clone, Debug, PartialEq)]
pub enum RestVerdict {
    /// It can.
    Laid(RestLaid),
    /// No visit is left today.
    NoVisitLeft,
    /// A net hangs of which nobody knows the weight, so that nobody knows what is left of the day's amount.
    NotKnown,
}

/// The rest of today.
#[derive(Clone, Debug, PartialEq)]
pub struct RestOfToday {
    /// Why, in the order of the day.
    pub why: Vec<WhyAnew>,
    /// What can be done.
    pub verdict: RestVerdict,
}

/// A net of today.
struct NetToday<'a> {
    key: Key,
    at: Instant,
    planned: &'a PlannedNet,
    /// What hangs of it by what holds now: the plan, or what was said since.
    stands: AsFed,
    /// Dry matter that is eaten of a kilogram of it.
    part: f64,
    hung: Option<Hung>,
}

#[derive(Clone, Copy)]
struct Hung {
    at: Instant,
    dry: DryMatter,
}

/// The rest of today, when a visit was missed or a net is more than half an hour late; `None` on a day that goes as it
/// should, and where the day was laid out anew since.
///
/// What was hung counts with its hay, and what is left of the day's amount is shared over the visits that are left: never
/// more than the day's amount in all. A late net that is not hung yet hangs now.
pub fn rest_of_today(
    records: &[&Record],
    of: &Subject,
    held: &HeldDay,
    now: Instant,
    zone: &impl Zone,
) -> Option<RestOfToday> {
    let day = zone.to_local(now).date;
    let due = Due::of(records, now, zone);
    let plan = due
        .plans
        .iter()
        .filter(|plan| plan.subject == *of && plan.feeds_on(day) && !plan.part)
        .max_by_key(|plan| plan.issued)?;
    let own: Vec<&Record> = records
        .iter()
        .copied()
        .filter(|record| !record.gone && record.at <= now)
        .filter(|record| record.subject.id() == of.parts().1)
        .collect();
    let today = Today {
        held,
        plan,
        due: &due,
        records,
        own: &own,
        day,
        now,
        said: said_of_day(&own, &held.plan, day).map(|(at, _)| at),
    };
    let nets = today.nets(zone)?;
    let why = today.why(&nets);
    if why.is_empty() {
        return None;
    }
    Some(RestOfToday {
        verdict: today.verdict(&nets, zone),
        why,
    })
}

/// What was said of the rest of a day last, and when; `None` where nobody laid it out anew.
pub fn said_of_day(
    records: &[&Record],
    plan: &RecordId,
    day: LocalDate,
) -> Option<(Instant, DayRelaidV1)> {
    records
        .iter()
        .filter(|record| !record.gone && record.kind == Kind::DayRelaid)
        .filter_map(|record| match Body::read(record) {
            Ok(Body::DayRelaid(body)) if body.plan == *plan && body.day == day => {
                Some((record.at, record.stamp, body))
            }
            _ => None,
        })
        .max_by_key(|(at, stamp, _)| (*at, *stamp))
        .map(|(at, _, body)| (at, body))
}

struct Today<'a> {
    held: &'a HeldDay,
    plan: &'a IssuedPlan,
    due: &'a Due,
    records: &'a [&'a Record],
    own: &'a [&'a Record],
    day: LocalDate,
    now: Instant,
    said: Option<Instant>,
}

impl<'a> Today<'a> {
    /// The nets of today in the order of the plan; `None` when the dry part of one is not known.
    fn nets(&self, zone: &impl Zone) -> Option<Vec<NetToday<'a>>> {
        let visits = self.visits();
        let stands = self.plan.nets_on(self.day);
        let mut found: Vec<NetToday<'a>> = Vec::new();
        let planned = self.plan.nets.iter();
        // What hangs at a visit at which the plan hangs nothing was said since.
        let added = stands.iter().skip(self.plan.nets.len());
        for (index, net) in planned.chain(added).enumerate() {
            let visit = visits.iter().position(|time| *time == net.visit)?;
            let nth = found
                .iter()
                .filter(|other| other.planned.visit == net.visit)
                .count();
            let key = Key::Day {
                kind: JobKind::HangNet,
                subject: self.plan.subject.clone(),
                day: self.day,
                slot: Slot {
                    visit: u32::try_from(visit).ok()?.saturating_add(1),
                    nth: u32::try_from(nth).ok()?.saturating_add(1),
                },
            };
            let part = self.part(&net.lot, index)?;
            let less = stands.get(index).and_then(|net| net.less_for_grass);
            let to_hang = net.hay - less.unwrap_or(AsFed::ZERO);
            let date = self.day;
            let time = net.visit;
            let at = zone.to_instant(LocalStamp { date, time }).planned();
            // What was to hang before there was a plan is no visit of it, and its part of the day is gone.
            let before = || {
                (at < self.since()).then(|| Hung {
                    at,
                    dry: DryMatter::kg(net.hay.to_kg() * part),
                })
            };
            found.push(NetToday {
                hung: self
                    .hung(&key, net.visit, to_hang, part, zone)
                    .or_else(before),
                at,
                planned: net,
                stands: stands.get(index).map_or(net.hay, |net| net.hay),
                part,
                key,
            });
        }
        Some(found)
    }

    /// Since when it has had a plan for today.
    fn since(&self) -> Instant {
        let plans = self.due.plans.iter();
        plans
            .filter(|plan| plan.subject == self.plan.subject && plan.feeds_on(self.day))
            .map(|plan| plan.issued)
            .min()
            .unwrap_or(self.plan.issued)
    }

    fn visits(&self) -> Vec<LocalTime> {
        let mut visits = self.plan.visits.clone();
        visits.extend(self.plan.nets.iter().map(|net| net.visit));
        visits.sort_unstable();
        visits.dedup();
        visits
    }

    /// The dry matter eaten of a kilogram of a lot, as the plan has it; of a lot that stands in for one of the plan's, by
    /// what it stands for.
    fn part(&self, lot: &LotId, index: usize) -> Option<f64> {
        let of = |lot: &LotId| {
            let mut amounts = self.held.body.amounts.iter();
            let amount = amounts.find(|amount| amount.lot.as_ref() == Some(lot))?;
            let part = amount.dry_matter_g.as_fed() / amount.as_fed_g.as_fed();
            part.is_finite().then_some(part)
        };
        let named = self.held.body.nets.get(index).map(|net| &net.lot);
        of(lot).or_else(|| {
            let instead = self.due.instead.iter().find(|(subject, instead)| {
                *subject == self.plan.subject
                    && instead.lot == *lot
                    && named.is_none_or(|named| instead.of == *named)
            });
            let (_, instead) = instead?;
            let one = AsFed::kg(1.0);
            Some(of(&instead.of)? * (instead.was(one) / one))
        })
    }

    /// When a net was hung, and the dry matter in it. Of one whose hay nobody wrote down the plan's is taken.
    fn hung(
        &self,
        key: &Key,
        visit: LocalTime,
        to_hang: AsFed,
        part: f64,
        zone: &impl Zone,
    ) -> Option<Hung> {
        let dry = |hay: AsFed| DryMatter::kg(hay.to_kg() * part);
        self.own.iter().find_map(|record| match Body::read(record) {
            Ok(Body::NetHung(body))
                if body.job.as_ref().and_then(JobKey::key).as_ref() == Some(key) =>
            {
                Some(Hung {
                    at: record.at,
                    dry: dry(self.hay(&body).unwrap_or(to_hang)),
                })
            }
            // Somebody fed it, or nobody knows: it is counted as hung in its time, so that it is never fed twice.
            Ok(Body::Job(body))
                if body.job.key().as_ref() == Some(key) && body.answer != JobAnswer::NotDone =>
            {
                Some(Hung {
                    at: zone
                        .to_instant(LocalStamp {
                            date: self.day,
                            time: visit,
                        })
                        .planned(),
                    dry: dry(to_hang),
                })
            }
            _ => None,
        })
    }

    fn hay(&self, body: &NetHungV1) -> Option<AsFed> {
        let own = body.hay.as_ref().map(|hay| hay.g.as_fed());
        own.or_else(|| {
            let id = body.filling.as_ref()?;
            let filling = self.records.iter().find(|record| record.id == *id)?;
            match Body::read(filling) {
                Ok(Body::NetFilled(body)) => Some(body.hay.g.as_fed()),
                _ => None,
            }
        })
    }

    /// Somebody said that a net does not hang.
    fn not_done(&self, key: &Key) -> Option<Instant> {
        self.own.iter().find_map(|record| match Body::read(record) {
            Ok(Body::Job(body))
                if body.job.key().as_ref() == Some(key) && body.answer == JobAnswer::NotDone =>
            {
                Some(record.at)
            }
            _ => None,
        })
    }

    /// When a net is missed: as soon as somebody says so, or the next net falls due. `None` while it can still be hung.
    fn missed(&self, net: &NetToday<'_>, nets: &[NetToday<'_>]) -> Option<Instant> {
        let next = nets
            .iter()
            .filter(|other| AsFed::ZERO < other.stands && net.at < other.at)
            .map(|other| other.at)
            .min();
        let said = self.not_done(&net.key);
        let gone = [said, next].into_iter().flatten().min()?;
        (net.hung.is_none() && gone <= self.now).then_some(gone)
    }

    /// What went otherwise than planned, a visit once, and after the rest was said last.
    fn why(&self, nets: &[NetToday<'_>]) -> Vec<WhyAnew> {
        let mut found: Vec<WhyAnew> = Vec::new();
        let since = |at: Instant| self.said.is_none_or(|said| said < at);
        for net in nets.iter().filter(|net| AsFed::ZERO < net.stands) {
            let visit = net.planned.visit;
            // A net that was late when the rest was said is not late anew for half an hour.
            let wanted = self.said.map_or(net.at, |said| said.max(net.at));
            let by = |at: Instant| at.since(net.at);
            let why = match (net.hung, self.missed(net, nets)) {
                (Some(hung), _) if since(hung.at) && wanted + *VISIT_LATE_AFTER < hung.at => {
                    WhyAnew::HungLate {
                        visit,
                        by: by(hung.at),
                    }
                }
                (None, Some(gone)) if since(gone) => WhyAnew::Missed { visit },
                (None, None) if wanted + *VISIT_LATE_AFTER < self.now => WhyAnew::Late {
                    visit,
                    by: by(self.now),
                },
                _ => continue,
            };
            if !found.iter().any(|other| other.visit() == visit) {
                found.push(why);
            }
        }
        found.sort_by_key(|why| why.visit());
        found
    }
}

impl WhyAnew {
    /// The visit.
    pub const fn visit(self) -> LocalTime {
        match self {
            Self::Missed { visit } | Self::HungLate { visit, .. } | Self::Late { visit, .. } => {
                visit
            }
        }
    }
}
