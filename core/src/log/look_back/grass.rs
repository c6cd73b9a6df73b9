//! What changed in its grass in the days before an episode.

use super::{Before, count};
use crate::animal::AnimalId;
use crate::day::{DayOfLedger, HowKnown};
use crate::log::at_grass::{AtGrass, OnDay, Outing};
use crate::log::bodies::{Body, GrazingV1};
use crate::log::holding::Holding;
use crate::log::published::{LONGER_BY, WITHOUT_GRASS_DAYS};
use crate::progress::{Changed, Happened, NotLogged};
use crate::round::Subject;
use crate::units::published::{DAYS_PER_WEEK, HOURS_PER_DAY};
use crate::units::{Instant, LocalDate, Span, Zone};
use chrono::Days;
use std::collections::BTreeMap;

impl<Z: Zone> Before<'_, Z> {
    /// What was decided of its grass, the first turnout after a time without, longer turnout, and a muzzle that was left
    /// off.
    pub(super) fn grass(&self, animal: &AnimalId, now: Instant) -> Vec<Happened> {
        let holding = Holding::of(self.entries);
        let grass = AtGrass {
            entries: self.entries,
            groups: holding.groups(),
            zone: self.zone,
            now,
        };
        let of = Subject::Animal(animal.clone());
        let outings = grass.outings(&of);
        let mut found = self.decided(&grass, &of);
        found.extend(self.first_turnout(&outings));
        found.extend(self.longer(&outings));
        found.extend(self.muzzle_left_off(&grass, &of, &outings));
        found
    }

    fn decided(&self, grass: &AtGrass<'_, Z>, of: &Subject) -> Vec<Happened> {
        let mut found: Vec<Happened> = Vec::new();
        let mut before: Option<&GrazingV1> = self
            .days
            .0
            .pred_opt()
            .and_then(|before| grass.decided(of, before));
        for day in self
            .days
            .0
            .iter_days()
            .take_while(|day| *day <= self.days.1)
        {
            let holds = grass.decided(of, day);
            if holds == before {
                continue;
            }
            found.push(Happened {
                on: day,
                what: Changed::GrassDecided {
                    time: holds.map_or(Span::ZERO, |body| body.minutes.time()),
                    muzzle: holds.is_some_and(|body| body.muzzle),
                },
            });
            before = holds;
        }
        found
    }

    /// The first turnout after so many days without one that was logged.
    fn first_turnout(&self, outings: &[Outing<'_>]) -> Option<Happened> {
        let days: Vec<LocalDate> = outings.iter().map(|outing| self.out_on(outing)).collect();
        let before = std::iter::once(None).chain(days.iter().copied().map(Some));
        let (on, last) = days
            .iter()
            .zip(before)
            .filter(|(day, _)| self.within(**day))
            .find(|(day, last)| {
                last.is_none_or(|last| *WITHOUT_GRASS_DAYS < (**day - last).num_days())
            })?;
        Some(Happened {
            on: *on,
            what: Changed::FirstTurnout { last },
        })
    }

    fn out_on(&self, outing: &Outing<'_>) -> LocalDate {
        self.zone.to_local(outing.out).date
    }

    /// The week that brought the most more than the week before it, when that is longer turnout. A week after one without
    /// grass is a beginning, and told as one.
    fn longer(&self, outings: &[Outing<'_>]) -> Option<Happened> {
        let mut times: BTreeMap<LocalDate, Span> = BTreeMap::new();
        for outing in outings {
            let days = self.out_on(outing).iter_days();
            for day in days.take_while(|day| *day <= self.days.1) {
                let Some(OnDay::For(time)) = outing.on(day, self.zone) else {
                    break;
                };
                let of_day = times.entry(day).or_insert(Span::ZERO);
                *of_day = (*of_day + time).min(Span::hours(HOURS_PER_DAY));
            }
        }
        let mean = |to: LocalDate| {
            let from = to.checked_sub_days(Days::new(DAYS_PER_WEEK.unsigned_abs() - 1))?;
            let sum: i64 = times.range(from..=to).map(|(_, time)| time.to_ms()).sum();
            Some((from, Span::ms(sum / DAYS_PER_WEEK)))
        };
        let days = self.days.0.iter_days();
        let rises = days
            .take_while(|day| *day <= self.days.1)
            .filter_map(|day| {
                let (from, after) = mean(day)?;
                let (_, before) = mean(from.pred_opt()?)?;
                let by = after.to_ms() - before.to_ms();
                let longer = Span::ZERO < before && LONGER_BY.to_ms() <= by;
                longer.then_some((by, from, before, after))
            });
        // Of equal ones the first.
        let (_, on, before, after) =
            rises.fold(None, |most: Option<(i64, _, _, _)>, one| match most {
                Some(most) if one.0 <= most.0 => Some(most),
                _ => Some(one),
            })?;
        Some(Happened {
            on: on.max(self.days.0),
            what: Changed::LongerAtGrass { before, after },
        })
    }

    /// Turnouts without the muzzle that was decided on.
    fn muzzle_left_off(
        &self,
        grass: &AtGrass<'_, Z>,
        of: &Subject,
        outings: &[Outing<'_>],
    ) -> Option<Happened> {
        let days: Vec<LocalDate> = outings
            .iter()
            .filter(|outing| !outing.body.muzzle)
            .map(|outing| self.out_on(outing))
            .filter(|day| self.within(*day))
            .filter(|day| grass.decided(of, *day).is_some_and(|body| body.muzzle))
            .collect();
        Some(Happened {
            on: *days.first()?,
            what: Changed::MuzzleLeftOff {
                times: count(days.len()),
            },
        })
    }

    /// What nobody logged of its grass: nothing at all, or on the days on which it was to go out.
    pub(super) fn grass_not_logged(
        &self,
        animal: &AnimalId,
        days: &[DayOfLedger],
        now: Instant,
    ) -> Option<NotLogged> {
        let holding = Holding::of(self.entries);
        let grass = AtGrass {
            entries: self.entries,
            groups: holding.groups(),
            zone: self.zone,
            now,
        };
        let of = Subject::Animal(animal.clone());
        let of_grass = || {
            days.iter()
                .flat_map(|day| &day.servings)
                .filter(|serving| serving.is_grass())
        };
        // That it does not go out was said as well.
        let decided = self.entries.iter().any(|entry| match &entry.body {
            Body::Grazing(body) => {
                body.from <= self.days.1 && grass.is_about(entry, &of, self.days.1)
            }
            _ => false,
        });
        if of_grass().next().is_none() && !decided {
            return Some(NotLogged::Grass);
        }
        let mut not_known: Vec<LocalDate> = of_grass()
            .filter(|serving| serving.how_offered() == HowKnown::NotKnown)
            .map(|serving| serving.day)
            .collect();
        not_known.dedup();
        let days = count(not_known.len());
        (0 < days).then_some(NotLogged::GrassOn { days })
    }
}
