//! From records to what changed in the days before an episode.

use super::bodies::{Body, Chip, ConditionV1, PlanV1, WeatherV2};
use super::entry::{Entry, up_to};
use super::envelope::Record;
use super::gather::{Wish, gather};
use super::ledger::ledger_of;
use crate::animal::{AnimalId, Answer, VetFlag};
use crate::assess::ConditionRange;
use crate::log::bodies::Condition;
use crate::progress::{Changed, GrassWeather, Happened, LookBack, NotLogged, look_back};
use crate::round::Subject;
use crate::units::{Instant, LocalDate, Zone};
use eaten::{eaten_not_known, off_plan};
use std::collections::{BTreeMap, BTreeSet};

/// What changed in the 30 days before an episode of an animal that began on a day; `None` when the animal is not among the
/// records.
pub fn looked_back(
    records: &[&Record],
    animal: &AnimalId,
    began: LocalDate,
    now: Instant,
    zone: &impl Zone,
) -> Option<LookBack> {
    let gathered = gather(records, animal, now, zone, &Wish::default())?;
    let entries = up_to(records, now);
    let days = LookBack::days(began);
    let of = Before {
        entries: &entries,
        animal,
        days,
        zone,
    };
    let mut happened = of.entries();
    happened.extend(of.weather());
    happened.extend(of.not_soaked());
    happened.extend(of.scores());
    happened.extend(of.crest());
    happened.extend(
        gathered
            .animal
            .health
            .flags
            .iter()
            .filter_map(|flag| flagged(flag, zone)),
    );
    happened.extend(of.weight(&gathered));
    let ledger = ledger_of(records, &Subject::Animal(animal.clone()), days, now, zone);
    happened.extend(off_plan(&ledger.days));
    happened.extend(of.grass(animal, now));
    let mut not_logged = Vec::new();
    not_logged.extend(of.grass_not_logged(animal, &ledger.days, now));
    let worked = of.worked(&gathered);
    if worked.is_none() {
        not_logged.push(NotLogged::Work);
    }
    happened.extend(worked);
    not_logged.extend(of.weather_not_logged());
    not_logged.extend(eaten_not_known(&ledger.days));
    if !happened
        .iter()
        .any(|one| matches!(one.what, Changed::Weight { .. }))
        && of.readings(&gathered) < 2
    {
        not_logged.push(NotLogged::Weight);
    }
    Some(look_back(began, happened, not_logged))
}

mod eaten;
mod grass;

/// The records around the days that are looked at.
struct Before<'a, Z> {
    entries: &'a [Entry<'a>],
    animal: &'a AnimalId,
    days: (LocalDate, LocalDate),
    zone: &'a Z,
}

impl<Z: Zone> Before<'_, Z> {
    fn day(&self, entry: &Entry<'_>) -> LocalDate {
        self.zone.to_local(entry.record.at).date
    }

    fn within(&self, day: LocalDate) -> bool {
        (self.days.0..=self.days.1).contains(&day)
    }

    fn own(&self) -> impl Iterator<Item = &Entry<'_>> {
        self.entries
            .iter()
            .filter(|entry| entry.record.subject.id() == self.animal.as_str())
    }

    /// What an entry says by itself.
    fn entries(&self) -> Vec<Happened> {
        let mut found = Vec::new();
        let mut add = |on: LocalDate, what: Changed| found.push(Happened { on, what });
        let mut plan: Option<&PlanV1> = None;
        for entry in self.entries {
            let on = self.day(entry);
            let own = entry.record.subject.id() == self.animal.as_str();
            match &entry.body {
                Body::Lot(lot) => {
                    if let Some(opened) = lot.opened_on {
                        add(
                            opened,
                            Changed::LotOpened {
                                lot: crate::animal::LotId(entry.record.id.0.clone()),
                                name: lot.name.as_str().to_owned(),
                                tested: !lot.reports.is_empty(),
                            },
                        );
                    }
                }
                Body::Food(food) => add(
                    on,
                    Changed::NewFood {
                        name: food.name.as_str().to_owned(),
                    },
                ),
                Body::Feeding(_) if own => add(on, Changed::FeedingSaid),
                Body::Plan(body) if own => {
                    let before = plan.replace(body).map(|plan| plan.level);
                    if before != Some(body.level) {
                        add(
                            body.from,
                            Changed::PlanIssued {
                                before: before.map(crate::log::bodies::base::BodyHundredths::part),
                                level: body.level.part(),
                            },
                        );
                    }
                }
                Body::Group(group) => {
                    let group = group.group(&entry.record.id);
                    for member in group
                        .members
                        .iter()
                        .filter(|member| member.animal == *self.animal)
                    {
                        let (id, name) = (group.id.clone(), group.name.clone());
                        add(member.from, Changed::JoinedGroup { group: id, name });
                        if let Some(to) = member.to {
                            let (id, name) = (group.id.clone(), group.name.clone());
                            add(to, Changed::LeftGroup { group: id, name });
                        }
                    }
                }
                Body::LookOver(look)
                    if own && [look.warm_hoof, look.lying_more].contains(&Answer::Yes) =>
                {
                    add(on, Changed::EarlySign);
                }
                Body::Appetite(_) if own => add(on, Changed::OffFeed),
                Body::VetWord(word) if own && word.expires < self.days.1 => {
                    add(word.expires, Changed::VetsWordEnded);
                }
                _ => {}
            }
        }
        found
    }

    fn weathers(&self) -> BTreeMap<LocalDate, &WeatherV2> {
        self.entries
            .iter()
            .filter_map(|entry| match &entry.body {
                Body::Weather(body) if self.within(body.date) => Some((body.date, body)),
                _ => None,
            })
            .collect()
    }

    fn weather(&self) -> Vec<Happened> {
        let days = self.weathers();
        [
            (Chip::NightFiveOrUnder, GrassWeather::ColdNight),
            (Chip::HardFrost, GrassWeather::HardFrost),
            (Chip::DrySpell, GrassWeather::DrySpell),
        ]
        .into_iter()
        .filter_map(|(chip, weather)| {
            let on: Vec<LocalDate> = days
                .iter()
                .filter(|(_, body)| body.chips.contains(&chip))
                .map(|(day, _)| *day)
                .collect();
            Some(Happened {
                on: *on.first()?,
                what: Changed::Weather {
                    weather,
                    days: count(on.len()),
                },
            })
        })
        .collect()
    }

    fn weather_not_logged(&self) -> Option<NotLogged> {
        let said = self.weathers().len();
        let all = usize::try_from((self.days.1 - self.days.0).num_days() + 1).unwrap_or(0);
        let days = count(all.saturating_sub(said));
        (0 < days).then_some(NotLogged::Weather { days })
    }

    fn not_soaked(&self) -> Option<Happened> {
        let nets: Vec<_> = self
            .own()
            .filter_map(|entry| match &entry.body {
                Body::NetHung(body) if self.within(self.day(entry)) => {
                    Some((self.day(entry), body.not_soaked?))
                }
                _ => None,
            })
            .collect();
        let ((on, _), (_, why)) = (nets.first()?, nets.last()?);
        Some(Happened {
            on: *on,
            what: Changed::NotSoaked {
                nets: count(nets.len()),
                why: *why,
            },
        })
    }

    /// The last score of the days beside the one before it.
    fn scores(&self) -> Option<Happened> {
        let scores: Vec<(LocalDate, ConditionRange)> = self
            .own()
            .filter_map(|entry| match &entry.body {
                Body::Condition(body) if self.day(entry) <= self.days.1 => {
                    Some((self.day(entry), range(body)?))
                }
                _ => None,
            })
            .collect();
        let [.., (_, from), (on, to)] = scores.as_slice() else {
            return None;
        };
        let apart = to.high() < from.low() || from.high() < to.low();
        apart.then_some(Happened {
            on: *on,
            what: Changed::Condition {
                from: *from,
                to: *to,
            },
        })
    }

    fn crest(&self) -> Option<Happened> {
        let scores: Vec<_> = self
            .own()
            .filter_map(|entry| match &entry.body {
                Body::Crest(body) if self.day(entry) <= self.days.1 => {
                    Some((self.day(entry), body.crest().ok()?))
                }
                _ => None,
            })
            .collect();
        let [.., (_, from), (on, to)] = scores.as_slice() else {
            return None;
        };
        (from.score() < to.score()).then_some(Happened {
            on: *on,
            what: Changed::CrestUp {
                from: *from,
                to: *to,
            },
        })
    }

    fn worked(&self, of: &super::gather::Gathered) -> Option<Happened> {
        let days: Vec<LocalDate> = of
            .sessions
            .iter()
            .map(|session| session.day)
            .filter(|day| self.within(*day))
            .collect();
        Some(Happened {
            on: *days.first()?,
            what: Changed::Worked {
                sessions: count(days.len()),
            },
        })
    }

    fn readings(&self, of: &super::gather::Gathered) -> usize {
        let days: BTreeSet<LocalDate> = of
            .weights
            .iter()
            .map(|dated| dated.day)
            .filter(|day| self.within(*day))
            .collect();
        days.len()
    }

    /// The first and the last reading of the days, where they differ by more than both are out. Tape and scale each have
    /// their own offset, so that only readings of one kind are compared.
    fn weight(&self, of: &super::gather::Gathered) -> Option<Happened> {
        [true, false].into_iter().find_map(|scale| {
            let mut weights = of
                .weights
                .iter()
                .filter(|dated| self.within(dated.day) && dated.weight.is_scale() == scale);
            let first = weights.next()?;
            let last = weights.next_back()?;
            let apart = last.weight.high < first.weight.low || first.weight.high < last.weight.low;
            apart.then_some(Happened {
                on: last.day,
                what: Changed::Weight {
                    from: first.weight.value,
                    to: last.weight.value,
                },
            })
        })
    }
}

fn range(body: &ConditionV1) -> Option<ConditionRange> {
    match body.condition().ok()? {
        Condition::Score(score, _) => Some(score.on_nine()),
        Condition::Ribs(ribs) => Some(ribs.condition()),
    }
}

fn count(of: usize) -> u32 {
    u32::try_from(of).unwrap_or(u32::MAX)
}

/// A flag that says its own day.
fn flagged(flag: &VetFlag, zone: &impl Zone) -> Option<Happened> {
    let day = |at: Instant| zone.to_local(at).date;
    let (on, what) = match flag {
        VetFlag::TrimmedOrShod { on } => (*on, Changed::TrimmedOrShod),
        VetFlag::Corticosteroid { last } => (*last, Changed::Corticosteroid),
        VetFlag::SurgeryOrTransport { on } => (*on, Changed::SurgeryOrTransport),
        VetFlag::GotAtGrain { at } => (day(*at), Changed::GotAtGrain),
        VetFlag::EscapedOntoGrass { at } => (day(*at), Changed::EscapedOntoGrass),
        VetFlag::PainRelief
        | VetFlag::Sglt2Inhibitor
        | VetFlag::InsulinDrug
        | VetFlag::FootsoreAfterTrims
        | VetFlag::BoxRest
        | VetFlag::Sick
        | VetFlag::Lame => return None,
    };
    Some(Happened { on, what })
}

#[cfg(test)]
mod tests;
