//! The day of the plan in use of an animal or a group: what it hangs when, how long it waits, and how the real day stands beside it.

use super::at_grass::AtGrass;
use super::bodies::base::JobKey;
use super::bodies::{Body, NetHungV1, NetShareV1, PlanV1};
use super::due::to_be_in;
use super::entry::read;
use super::envelope::Record;
use super::gather::{Gathered, Wish, gather};
use super::holding::{Holding, plan_in_use};
use super::kind::Kind;
use super::stamp::Stamp;
use super::together::gather_group;
use crate::assess::best;
use crate::day::{
    Away, DayNeeds, EatingRate, Eats, GapVerdict, Hanging, Happened, Layout, Mend, Out, RealDay,
    judged, mends, real_day,
};
use crate::plan::{Soaked, Soaking, eaten_within_h, straw_for_all, together};
use crate::round::{JobKind, Key, Slot, Subject};
use crate::sources::RecordId;
use crate::units::published::{HOURS_PER_DAY, MINUTES_PER_HOUR};
use crate::units::{AsFed, DryFraction, DryMatter, Instant, LocalDate, LocalTime, Span, Zone};
use chrono::Timelike;
use happened::{Entries, entries, happened};
use std::collections::BTreeMap;

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
    /// The stretch at grass that is still to come: from now until it is to be brought in, where nobody said when after the
    /// usual time. `None` when it is in, and when it should be.
    pub out_until: Option<Away>,
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

/// Who eats of a plan's hay today.
struct Eaters {
    day: LocalDate,
    members: Vec<Gathered>,
    most_at_once: Option<AsFed>,
}

impl Eaters {
    /// An animal, or the members of a group; `None` where nobody is there.
    fn of(records: &[&Record], of: &Subject, now: Instant, zone: &impl Zone) -> Option<Self> {
        let wish = Wish::default();
        let (members, most_at_once) = match of {
            Subject::Animal(animal) => {
                let gathered = gather(records, animal, now, zone, &wish)?;
                let most = gathered.net.most_at_once;
                (vec![gathered], most)
            }
            Subject::Group(id) => {
                let record = records.iter().find(|record| record.id.0 == id.0)?;
                let Ok(Body::Group(body)) = Body::read(record) else {
                    return None;
                };
                let group = body.group(&record.id);
                let gathered = gather_group(records, &group, now, zone, &wish);
                (gathered.members, gathered.most_at_once)
            }
            Subject::Yard(_) => return None,
        };
        Some(Self {
            day: zone.to_local(now).date,
            members: Some(members).filter(|members| !members.is_empty())?,
            most_at_once,
        })
    }

    /// How fast they eat when all eat at the same time; `None` while the weight of one is not known.
    fn rate(&self, soaked: Soaked) -> Option<EatingRate> {
        let rates: Option<Vec<EatingRate>> = self
            .members
            .iter()
            .map(|member| member.eating_rate(soaked))
            .collect();
        match rates?.as_slice() {
            [one] => Some(one.clone()),
            all => Some(together(all.iter().cloned())),
        }
    }

    /// The part that could be straw for all of them.
    fn straw_part(&self) -> Option<f64> {
        straw_for_all(
            self.members
                .iter()
                .map(|member| member.draft().ok().and_then(|draft| draft.could_be_straw)),
        )
    }
}

/// The day of the plan that an animal or a group has today; `None` without one of its own, without its nets, or without a
/// weight.
///
/// Animals that eat at one pile are told to wait when all of them have eaten fast: the nets are empty at the same time.
/// The waits of the plan are told without grass. The real day counts the turnouts of the last day: leaf that somebody saw
/// is forage until it came in or was to be in, and a paddock that is bare or that nobody looked at is none. Of a group's own turnouts only: who went out
/// alone left the others at their nets.
pub fn held_day(
    records: &[&Record],
    of: &Subject,
    now: Instant,
    zone: &impl Zone,
) -> Option<HeldDay> {
    let eaters = Eaters::of(records, of, now, zone)?;
    let first = eaters.members.first()?;
    let (record, body) = plan_in_use(records, of, now, eaters.day)?;
    let own: Vec<&&Record> = records
        .iter()
        .filter(|record| !record.gone && record.at <= now)
        .filter(|record| record.subject.id() == of.parts().1)
        .collect();
    let soaks = |net: &NetShareV1| net.soaked;
    let soaked = match (body.nets.iter().any(soaks), body.nets.iter().all(soaks)) {
        (false, _) => Soaked::None,
        (true, true) => Soaked::All,
        (true, false) => Soaked::Some,
    };
    let rate = eaters.rate(soaked)?;
    let entries = entries(&own, now);
    let nets = nets(&body, &entries, eaters.day, zone)?;
    let hangings: Vec<Hanging> = nets.iter().map(|net| net.hanging).collect();
    let forage: DryMatter = hangings.iter().map(|hanging| hanging.dry).sum();
    let as_fed: AsFed = hangings.iter().map(|hanging| hanging.as_fed).sum();
    let dry = DryFraction::percent(forage.to_kg() / as_fed.to_kg() * 100.0).ok()?;
    let needs = DayNeeds {
        visits: &body.visits,
        forage,
        dry,
        rate: &rate,
        most_at_once: eaters.most_at_once,
        eaten_within_h: soaked_within_h(&body, first),
        aways: &[],
        straw_part: None,
    };
    let layout = judged(hangings, &needs);
    let mends = if layout.verdict == GapVerdict::Planned {
        Vec::new()
    } else {
        // Straw is as far a way out as on the plan's own screen.
        mends(
            &DayNeeds {
                straw_part: eaters.straw_part(),
                ..needs.clone()
            },
            layout.longest_h,
        )
    };
    let (most_at_once, eaten_within_h) = (needs.most_at_once, needs.eaten_within_h);
    let accepted_h = body
        .gap_accepted_min
        .map(|minutes| minutes.get() as f64 / MINUTES_PER_HOUR as f64);
    let happened = happened(&entries, &body, records, dry);
    let anything_hung = happened
        .iter()
        .any(|event| matches!(event, Happened::Hung { .. } | Happened::HungUnknown { .. }));
    let (out, ahead) = out(records, of, now, zone);
    let real = anything_hung.then(|| real_day(&happened, &out, &rate, now, accepted_h));
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
        out_until: ahead,
        rate,
    })
}

/// The stretches at grass of the last day, and the one that is still to come.
fn out(
    records: &[&Record],
    of: &Subject,
    now: Instant,
    zone: &impl Zone,
) -> (Vec<Out>, Option<Away>) {
    let kinds = |record: &Record| {
        let of_grass = matches!(record.kind, Kind::Turnout | Kind::Sward | Kind::Group);
        of_grass && record.at <= now
    };
    let (entries, _) = read(records, kinds);
    let holding = Holding::of(&entries);
    let grass = AtGrass {
        entries: &entries,
        groups: holding.groups(),
        zone,
        now,
    };
    let whole = Span::hours(HOURS_PER_DAY);
    let mut ahead = None;
    let mut found = Vec::new();
    for outing in grass.outings(of) {
        let paddock = outing.body.paddock.as_ref();
        // When it came in nobody can tell: it is told as if it had not been out.
        if !outing.is_out && outing.came_in.is_none() {
            continue;
        }
        // The day on which it went out is the one whose leaf it found; of days out on end, today's.
        let day = zone.to_local(outing.out.max(now - whole)).date;
        let eats = if grass.has_leaf(paddock, day) {
            Eats::Grass
        } else {
            Eats::Nothing
        };
        let by = to_be_in(outing.out, outing.body);
        // Whoever forgot to tick says nothing of the hours since: it may be at its nets, and eats of them.
        let to = match eats {
            Eats::Nothing => outing.came_in,
            Eats::Grass | Eats::GrassAndNets => {
                Some(outing.came_in.map_or(by, |came_in| came_in.min(by)))
            }
        };
        found.push(Out {
            from: outing.out,
            to,
            eats,
        });
        if outing.is_out && now + Span::minutes(1) < by {
            ahead = Some(Away {
                from: minute_of(zone.to_local(now).time),
                to: minute_of(zone.to_local(by.min(now + whole)).time),
                eats,
            });
        }
    }
    (found, ahead)
}

/// A time without its seconds.
fn minute_of(time: LocalTime) -> LocalTime {
    LocalTime::from_hms_opt(time.hour(), time.minute(), 0).unwrap_or(time)
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

/// The dry matter that is eaten of a net of the plan; `None` where its lot has no amount.
fn eaten(body: &PlanV1, net: &NetShareV1) -> Option<DryMatter> {
    let amount = body
        .amounts
        .iter()
        .find(|amount| amount.lot.as_ref() == Some(&net.lot))?;
    let part = amount.dry_matter_g.as_fed() / amount.as_fed_g.as_fed();
    part.is_finite()
        .then(|| DryMatter::kg(net.as_fed_g.as_fed().to_kg() * part))
}

/// The visits of a plan, rising.
fn visits(body: &PlanV1) -> Vec<LocalTime> {
    let mut visits = body.visits.clone();
    visits.extend(body.nets.iter().map(|net| net.visit));
    visits.sort_unstable();
    visits.dedup();
    visits
}

/// The nets of the plan, a visit each, with the dry matter that is eaten of them. A visit is hung when all its nets are.
fn nets(
    body: &PlanV1,
    entries: &[(Instant, Entries)],
    day: LocalDate,
    zone: &impl Zone,
) -> Option<Vec<DayHanging>> {
    let visits = visits(body);
    let mut found = Vec::with_capacity(visits.len());
    for (nth, visit) in (1_u32..).zip(&visits) {
        let here: Vec<&NetShareV1> = body.nets.iter().filter(|net| net.visit == *visit).collect();
        let mut dry = DryMatter::ZERO;
        for net in &here {
            dry = dry + eaten(body, net)?;
        }
        let hung: BTreeMap<u32, Instant> = entries
            .iter()
            .filter(|(at, _)| zone.to_local(*at).date == day)
            .filter_map(|(at, entry)| match entry {
                Entries::Hung(_, body) => {
                    let (of, slot) = hung_for(body)?;
                    (of == day && slot.visit == nth).then_some((slot.nth, *at))
                }
                Entries::Left(_) => None,
            })
            .collect();
        found.push(DayHanging {
            hanging: Hanging {
                visit: *visit,
                dry,
                as_fed: here.iter().map(|net| net.as_fed_g.as_fed()).sum(),
            },
            soaked: here.iter().any(|net| net.soaked),
            hung: hung
                .values()
                .max()
                .copied()
                .filter(|_| here.len() <= hung.len()),
        });
    }
    Some(found)
}

/// The day and the place in it that a net was hung for.
fn hung_for(body: &NetHungV1) -> Option<(LocalDate, Slot)> {
    match body.job.as_ref().and_then(JobKey::key)? {
        Key::Day {
            kind: JobKind::HangNet,
            day,
            slot,
            ..
        } => Some((day, slot)),
        _ => None,
    }
}

mod happened;
