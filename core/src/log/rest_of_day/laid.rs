//! What is left of the day's amount, over the visits that are left, as hay of their nets.

use super::{NetToday, RestHanging, RestLaid, RestVerdict, Today};
use crate::day::published::SCALE_STEP;
use crate::day::{DayNeeds, Hanging, Rest, gap_verdict, in_nets, lay_out_rest};
use crate::log::bodies::base::FeedGrams;
use crate::log::bodies::{Body, DayRelaidV1, NetShareV1};
use crate::log::error::LogError;
use crate::units::{AsFed, DryMatter, LocalTime, Zone};

impl Today<'_> {
    pub(super) fn verdict(&self, nets: &[NetToday<'_>], zone: &impl Zone) -> RestVerdict {
        let real = self.held.real.as_ref();
        let loose = self.hung_beside(zone);
        if real.is_some_and(|real| real.not_known_from.is_some()) || loose.is_none() {
            return RestVerdict::NotKnown;
        }
        self.laid(nets, loose.unwrap_or(DryMatter::ZERO), zone)
            .map_or(RestVerdict::NoVisitLeft, RestVerdict::Laid)
    }

    /// What was hung today and answers no job of today's plan; `None` when nobody knows how much that is.
    fn hung_beside(&self, zone: &impl Zone) -> Option<DryMatter> {
        let mut sum = DryMatter::ZERO;
        for record in self.own {
            let Ok(Body::NetHung(body)) = Body::read(record) else {
                continue;
            };
            if body.job.is_none() && zone.to_local(record.at).date == self.day {
                sum = sum + self.hay(&body)?.dry(self.held.dry);
            }
        }
        Some(sum)
    }

    /// The dry matter by which the day's nets give way for grass eaten today: what the nets that hang are lighter already,
    /// and never more than half of those that are open, for the night hangs in them.
    fn grass(&self, nets: &[NetToday<'_>], open: &[LocalTime]) -> DryMatter {
        let mut given_way = self.due.given_way.iter();
        let all = given_way
            .find(|(subject, _)| *subject == self.plan.subject)
            .map_or(DryMatter::ZERO, |(_, dry)| *dry);
        let mut off = DryMatter::ZERO;
        let mut holds = DryMatter::ZERO;
        for (index, net) in nets.iter().enumerate().take(self.plan.nets.len()) {
            let planned = DryMatter::kg(weight(net));
            if let Some(hung) = net.hung {
                let stands = self.plan.nets_on(self.day).get(index);
                let less = stands.and_then(|net| net.less_for_grass);
                let most = DryMatter::kg(less.unwrap_or(AsFed::ZERO).to_kg() * net.part);
                off = off + (planned - hung.dry).max(DryMatter::ZERO).min(most);
            } else if open.contains(&net.planned.visit) {
                holds = holds + planned;
            }
        }
        let off = off.min(all);
        off + (all - off).min(holds / 2.0)
    }

    fn laid(&self, nets: &[NetToday<'_>], beside: DryMatter, zone: &impl Zone) -> Option<RestLaid> {
        let now = minute_of(zone.to_local(self.now).time)?;
        let soaks = nets.iter().any(|net| net.planned.soaked);
        let open: Vec<LocalTime> = nets
            .iter()
            .filter(|net| net.hung.is_none() && self.missed(net, nets).is_none())
            .map(|net| net.planned.visit)
            .collect();
        // At a visit without a net of the plan something hangs only where none has to be soaked for it.
        let left: Vec<LocalTime> = self
            .visits()
            .into_iter()
            .filter(|visit| {
                let of_plan = nets.iter().any(|net| net.planned.visit == *visit);
                open.contains(visit) || (!of_plan && !soaks && now < *visit)
            })
            .collect();
        let hangs_at = |visit: LocalTime| visit.max(now);
        let mut times: Vec<LocalTime> = left.iter().map(|visit| hangs_at(*visit)).collect();
        times.dedup();
        let day: DryMatter = nets
            .iter()
            .take(self.plan.nets.len())
            .map(|net| DryMatter::kg(net.planned.hay.to_kg() * net.part))
            .sum();
        let fed: DryMatter = nets.iter().filter_map(|net| Some(net.hung?.dry)).sum();
        // What grass took the place of is fed.
        let to_hang = (day - fed - beside - self.grass(nets, &open)).max(DryMatter::ZERO);
        let needs = DayNeeds {
            visits: &times,
            forage: to_hang,
            dry: self.held.dry,
            rate: &self.held.rate,
            most_at_once: self.held.most_at_once,
            eaten_within_h: self.held.eaten_within_h,
            // Until it is brought in it eats there, or nothing; tomorrow's grass is nobody's word yet.
            aways: self.held.out_until.as_slice(),
            straw_part: None,
        };
        let until = self.held.real.as_ref().and_then(|real| real.forage_until);
        let hours = until.map_or(0.0, |until| until.since(self.now).to_hours().max(0.0));
        let rest = lay_out_rest(
            &needs,
            &Rest {
                now,
                hangs: DryMatter::kg(hours * self.held.rate.fast),
                to_hang,
                tomorrow: self.visits().first().copied()?,
            },
        )
        .ok()?;
        let body = self.as_hay(nets, &open, &rest.hangings, now)?;
        let hangings = left_of(&body, nets, &left, now);
        let as_it_stands =
            self.plan
                .nets_on(self.day)
                .iter()
                .zip(&body.nets)
                .all(|(stands, said)| {
                    let apart = stands.hay.to_kg() - said.as_fed_g.as_fed().to_kg();
                    // numeric: the gram that is stored
                    apart.abs() < 1e-3
                })
                && self.plan.nets_on(self.day).len() == body.nets.len();
        Some(RestLaid {
            hangings,
            longest_h: rest.longest_h,
            verdict: gap_verdict(rest.longest_h),
            over: rest.over,
            body: (!as_it_stands).then_some(body),
        })
    }

    /// What hangs at each visit that is left as hay of its own nets, with the nets that hang already.
    fn as_hay(
        &self,
        nets: &[NetToday<'_>],
        open: &[LocalTime],
        hangings: &[Hanging],
        now: LocalTime,
    ) -> Option<DayRelaidV1> {
        let mut hay: Vec<AsFed> = nets
            .iter()
            .map(|net| {
                if net.hung.is_some() {
                    net.stands
                } else {
                    AsFed::ZERO
                }
            })
            .collect();
        let mut added: Vec<NetShareV1> = Vec::new();
        for hanging in hangings {
            let here: Vec<(usize, &NetToday<'_>)> = nets
                .iter()
                .enumerate()
                .filter(|(_, net)| open.contains(&net.planned.visit) && net.hung.is_none())
                .filter(|(_, net)| net.planned.visit.max(now) == hanging.visit)
                .collect();
            if here.is_empty() {
                added.extend(added_nets(hanging.visit, hanging.dry, nets));
                continue;
            }
            let all: f64 = here.iter().map(|(_, net)| weight(net)).sum();
            let parts: Vec<f64> = here.iter().map(|(_, net)| net.part).collect();
            let shares: Vec<f64> = here
                .iter()
                .map(|(_, net)| hanging.dry.to_kg() * weight(net) / all / net.part)
                .collect();
            for ((index, _), more) in here.iter().zip(in_steps(&shares, &parts, hanging.dry)) {
                if let Some(hay) = hay.get_mut(*index) {
                    *hay = more;
                }
            }
        }
        self.body(nets, &hay, &added).ok()
    }

    fn body(
        &self,
        nets: &[NetToday<'_>],
        hay: &[AsFed],
        added: &[NetShareV1],
    ) -> Result<DayRelaidV1, LogError> {
        let mut all = Vec::with_capacity(nets.len() + added.len());
        for (net, hay) in nets.iter().zip(hay) {
            all.push(NetShareV1 {
                visit: net.planned.visit,
                lot: net.planned.lot.clone(),
                as_fed_g: FeedGrams::of(*hay)?,
                soaked: net.planned.soaked,
                net: net.planned.net.clone(),
            });
        }
        for (nth, net) in added.iter().enumerate() {
            let before = added.iter().take(nth);
            let place = before.filter(|other| other.visit == net.visit).count();
            // One that was added before and is hung anew is the same net.
            let mut here = all.iter_mut().filter(|held| held.visit == net.visit);
            match here.nth(place) {
                Some(held) => held.as_fed_g = net.as_fed_g,
                None => all.push(net.clone()),
            }
        }
        Ok(DayRelaidV1 {
            plan: self.held.plan.clone(),
            day: self.day,
            nets: all,
        })
    }
}

/// The nets at a visit at which the plan hangs nothing: of the lot of the plan's first, and as many as hang at another
/// visit.
fn added_nets(visit: LocalTime, dry: DryMatter, nets: &[NetToday<'_>]) -> Vec<NetShareV1> {
    let Some(like) = nets.first() else {
        return Vec::new();
    };
    let at = |net: &NetToday<'_>| net.planned.visit == like.planned.visit;
    let places = nets.iter().filter(|net| at(net)).count();
    let hay = in_steps(&[dry.to_kg() / like.part], &[like.part], dry);
    let all: AsFed = hay.into_iter().sum();
    in_nets(all, None, places)
        .into_iter()
        .filter_map(|hay| {
            Some(NetShareV1 {
                visit,
                lot: like.planned.lot.clone(),
                as_fed_g: FeedGrams::of(hay).ok()?,
                soaked: false,
                net: None,
            })
        })
        .collect()
}

/// What hangs from now on of a day, visit by visit.
fn left_of(
    body: &DayRelaidV1,
    nets: &[NetToday<'_>],
    left: &[LocalTime],
    now: LocalTime,
) -> Vec<RestHanging> {
    let mut hangings: Vec<RestHanging> = Vec::new();
    for visit in left {
        let as_fed = body
            .nets
            .iter()
            .zip(
                nets.iter()
                    .map(|net| net.hung.is_some())
                    .chain(std::iter::repeat(false)),
            )
            .filter(|(net, hung)| net.visit == *visit && !hung)
            .map(|(net, _)| net.as_fed_g.as_fed())
            .sum();
        if AsFed::ZERO < as_fed {
            hangings.push(RestHanging {
                visit: *visit,
                now: *visit <= now,
                as_fed,
            });
        }
    }
    hangings
}

/// How the nets of a visit share: as the plan has them.
fn weight(net: &NetToday<'_>) -> f64 {
    net.planned.hay.to_kg() * net.part
}

/// Hay in whole steps of the scale, never more dry matter in all than `dry`; what rounding leaves goes to the first ones, a
/// step each, so that no net of several is the heavy one.
fn in_steps(shares: &[f64], parts: &[f64], dry: DryMatter) -> Vec<AsFed> {
    // numeric: a billionth of a step is the arithmetic's, not the scale's
    let slack = *SCALE_STEP * 1e-9;
    let down = |kg: f64| ((kg + slack) / *SCALE_STEP).floor() * *SCALE_STEP;
    let mut hay: Vec<f64> = shares.iter().map(|share| down(*share)).collect();
    let used: f64 = hay.iter().zip(parts).map(|(hay, part)| hay * part).sum();
    let mut left = dry.to_kg() - used;
    loop {
        let mut given = false;
        for (hay, part) in hay.iter_mut().zip(parts) {
            let step = *SCALE_STEP * part;
            if 0.0 < step && step <= left + slack {
                *hay += *SCALE_STEP;
                left -= step;
                given = true;
            }
        }
        if !given {
            break;
        }
    }
    hay.into_iter().map(AsFed::kg).collect()
}

/// A time without its seconds.
fn minute_of(time: LocalTime) -> Option<LocalTime> {
    use chrono::Timelike;
    LocalTime::from_hms_opt(time.hour(), time.minute(), 0)
}
