//! Hay that hangs lighter on a day with grass.

use super::{Due, Yard, to_be_in};
use crate::animal::LotId;
use crate::graze::intake::OutFor;
use crate::log::bodies::{Body, PlanV1};
use crate::log::envelope::{Known, Record};
use crate::log::gather::{Gathered, Wish, gather};
use crate::log::grazing::{decided, leaf_seen};
use crate::log::together::gather_group;
use crate::plan::Draft;
use crate::round::{DayAnew, IssuedPlan, LighterFor, PlannedNet, Subject, lighter};
use crate::sources::RecordId;
use crate::units::{DryMatter, Instant, LocalStamp, LocalTime, Span, Zone};

/// A time at grass of today that is over, on a paddock where leaf was seen.
struct WasOut {
    out: Instant,
    came_in: Instant,
    /// How long it was for certain: no longer than it was to be out.
    time: Span,
    /// How long it may have eaten before, from before midnight on. The first hours are eaten fastest.
    before: Span,
    /// With a muzzle, this one or one before it.
    muzzle: bool,
}

impl<Z: Zone> Yard<'_, Z> {
    /// Makes the nets that are still to come lighter by the hay that grass really eaten today takes the place of (practice
    /// rule 5): the least of the lightest, and never more than half of the day's forage.
    ///
    /// Only where somebody decided on turnout, and a plan made today would count it. A day that the person laid out anew
    /// after it went out has it counted already, or its time was changed since: it is never taken off twice. A group's
    /// hay goes down by what all of its members ate, and by nothing where one of them may have none less.
    pub(super) fn lighten(
        &self,
        records: &[&Record],
        due: &mut Due,
        issued: &[(RecordId, &PlanV1)],
    ) {
        for (index, (record, body)) in issued.iter().enumerate() {
            let Some(plan) = due
                .plans
                .get(index)
                .filter(|plan| self.hangs_today(plan, due))
            else {
                continue;
            };
            let times = self.times_at_grass(&plan.subject);
            if times.is_empty() {
                continue;
            }
            let time = times.iter().fold(Span::ZERO, |sum, out| sum + out.time);
            let Some(drafts) = self.drafts(records, plan, time) else {
                continue;
            };
            let part = |lot: &LotId| dry_part(due, plan, body, lot);
            let forage: Option<f64> = plan
                .nets
                .iter()
                .map(|net| Some(net.hay.to_kg() * part(&net.lot)?))
                .sum();
            let Some(forage) = forage.map(DryMatter::kg) else {
                continue;
            };
            let said = self.said_anew(record);
            let mut anew: Vec<DayAnew> = Vec::new();
            let mut on_it = plan.clone();
            // The day as it was before it was laid out anew.
            let mut was = plan.clone();
            was.anew.retain(|anew| anew.day != self.today);
            let (mut all, mut taken) = (DryMatter::ZERO, DryMatter::ZERO);
            for out in &times {
                let more = given_way(&drafts, out).min(forage / 2.0 - all);
                if more <= DryMatter::ZERO {
                    continue;
                }
                all = all + more;
                let known = said.is_some_and(|said| out.came_in <= said);
                if !known && said.is_some_and(|said| out.out <= said) {
                    continue;
                }
                let hangs = if known { &mut was } else { &mut on_it };
                let of = LighterFor {
                    zone: self.zone,
                    plan: hangs,
                    day: self.today,
                    came_in: out.came_in,
                    dry: more,
                    soaks: &due.soaks,
                    answered: &due.answered,
                };
                if let Some(day) = lighter(&of, |_, lot| part(lot)) {
                    taken = taken + less(hangs.nets_on(self.today), &day.nets, part);
                    hangs.anew.push(day.clone());
                    if !known {
                        anew.push(day);
                    }
                }
            }
            let subject = plan.subject.clone();
            if let Some(plan) = due.plans.get_mut(index) {
                plan.anew.extend(anew);
            }
            if DryMatter::ZERO < taken {
                due.given_way.push((subject, taken));
            }
        }
    }

    /// Whether it is the plan whose nets hang for its subject today.
    fn hangs_today(&self, plan: &IssuedPlan, due: &Due) -> bool {
        let feeds = |plan: &IssuedPlan| !plan.part && plan.feeds_on(self.today);
        let last = due
            .plans
            .iter()
            .filter(|other| other.subject == plan.subject && feeds(other))
            .max_by_key(|other| other.issued);
        feeds(plan) && last.is_some_and(|last| std::ptr::eq(last, plan))
    }

    /// When the person laid out the rest of today anew.
    fn said_anew(&self, plan: &RecordId) -> Option<Instant> {
        self.entries
            .iter()
            .rfind(|entry| {
                matches!(&entry.body, Body::DayRelaid(body) if body.plan == *plan && body.day == self.today)
            })
            .map(|entry| entry.record.at)
    }

    /// The times at grass that are over today: of a group, of an animal of whose grass somebody decided, else of the group
    /// it is in. What overlaps counts once, what was eaten before midnight not at all. Of one that was ticked late nobody
    /// knows since when it is in: it counts until it was to be in.
    fn times_at_grass(&self, who: &Subject) -> Vec<WasOut> {
        let own = decided(self.entries, who.parts().1, self.today).is_some();
        let all = match who {
            Subject::Animal(id) if !own => {
                self.out_with(id).into_iter().map(Subject::Group).collect()
            }
            Subject::Animal(_) | Subject::Group(_) | Subject::Yard(_) => vec![who.clone()],
        };
        let mut times: Vec<(Instant, Instant, Instant, bool, bool)> = all
            .iter()
            .flat_map(|who| self.been_out(who))
            .filter_map(|(entry, body)| {
                let (out, came_in) = (entry.record.at, body.came_in?);
                let today = self.zone.to_local(came_in).date == self.today;
                let known = entry.record.known != Known::NotKnown;
                (today && known && came_in <= self.now).then(|| {
                    let day = self.zone.to_local(out).date;
                    let leaf = leaf_seen(self.entries, body.paddock.as_ref(), day, self.zone);
                    let sure = came_in.min(to_be_in(out, body));
                    (came_in, out, sure, body.muzzle, leaf)
                })
            })
            .collect();
        times.sort_unstable();
        let (date, time) = (self.today, LocalTime::MIN);
        let midnight = self.zone.to_instant(LocalStamp { date, time }).planned();
        let mut last = midnight;
        let (mut night, mut day, mut muzzled) = (Span::ZERO, Span::ZERO, false);
        let mut found = Vec::new();
        for (came_in, out, sure, muzzle, leaf) in times {
            let from = out.max(last);
            last = last.max(came_in);
            night = night.max(midnight.since(out));
            if leaf && from < sure {
                muzzled |= muzzle;
                found.push(WasOut {
                    out,
                    came_in,
                    time: sure.since(from),
                    before: night + day,
                    muzzle: muzzled,
                });
            }
            if from < came_in {
                day = day + came_in.since(from);
            }
        }
        found
    }

    /// The drafts of all who eat of a subject's hay, on a day with so much grass; `None` where one cannot be made.
    fn drafts(&self, records: &[&Record], plan: &IssuedPlan, time: Span) -> Option<Vec<Draft>> {
        let wish = Wish {
            visits: plan.visits.clone(),
            ..Wish::default()
        };
        let with_grass = |gathered: &mut Gathered| {
            if let Some(grazing) = &mut gathered.grazing {
                grazing.time = time;
            }
        };
        match &plan.subject {
            Subject::Animal(id) => {
                let mut gathered = gather(records, id, self.now, self.zone, &wish)?;
                with_grass(&mut gathered);
                Some(vec![gathered.draft().ok()?])
            }
            Subject::Group(id) => {
                let group = self.groups().find(|group| group.id == *id)?;
                let mut all = gather_group(records, group, self.now, self.zone, &wish);
                all.members.iter_mut().for_each(with_grass);
                let members = all.draft().ok()?.members;
                Some(members.into_iter().map(|member| member.alone).collect())
            }
            Subject::Yard(_) => None,
        }
    }
}

/// The dry matter by which nets got lighter.
fn less(
    nets: &[PlannedNet],
    lighter: &[PlannedNet],
    part: impl Fn(&LotId) -> Option<f64>,
) -> DryMatter {
    let each = nets.iter().zip(lighter).filter_map(|(net, lighter)| {
        let off = (net.hay - lighter.hay).to_kg();
        part(&net.lot).map(|part| DryMatter::kg(off * part))
    });
    each.sum()
}

/// The hay that the least of a time at grass takes the place of, after what was eaten before it; nothing where one of them
/// may have none less.
fn given_way(drafts: &[Draft], out: &WasOut) -> DryMatter {
    let mut sum = DryMatter::ZERO;
    for draft in drafts {
        let by = |time| {
            draft.hay_given_way(&OutFor {
                kind: draft.animal.kind,
                time,
                weeks: None,
                muzzle: out.muzzle,
                leaf: true,
            })
        };
        let less = by(out.before + out.time) - by(out.before);
        if less <= DryMatter::ZERO {
            return DryMatter::ZERO;
        }
        sum = sum + less;
    }
    sum
}

/// The dry matter eaten of a kilogram of a lot, as the plan has it; of one that stands in for a lot of the plan, by what it
/// stands for.
fn dry_part(due: &Due, plan: &IssuedPlan, body: &PlanV1, lot: &LotId) -> Option<f64> {
    let of = |lot: &LotId| {
        let mut amounts = body.amounts.iter();
        let amount = amounts.find(|amount| amount.lot.as_ref() == Some(lot))?;
        let part = amount.dry_matter_g.as_fed() / amount.as_fed_g.as_fed();
        part.is_finite().then_some(part)
    };
    of(lot).or_else(|| {
        let (_, instead) = due
            .instead
            .iter()
            .find(|(subject, instead)| *subject == plan.subject && instead.lot == *lot)?;
        Some(of(&instead.of)? / instead.factor)
    })
}
