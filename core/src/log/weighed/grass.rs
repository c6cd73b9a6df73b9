//! When grass began to fill the gut instead of hay, and when it ended.

use crate::animal::AnimalId;
use crate::log::at_grass::{AtGrass, OnDay};
use crate::log::entry::Entry;
use crate::log::holding::Holding;
use crate::log::published::GRASS_FILLS_FROM;
use crate::progress::{Change, DatedChange, GutFill};
use crate::round::Subject;
use crate::units::published::{DAYS_PER_WEEK, HOURS_PER_DAY};
use crate::units::{Instant, LocalDate, Span, Zone};
use std::collections::BTreeMap;

/// The changes from hay to grass and back: where the mean turnout of a week passes over three hours a day, and where it
/// falls under it. Two are a week apart at least.
///
/// Onto the grass it is dated with the first long day of that week, off it with the day after the last. Days on which
/// nobody logged anything count as without grass: where logging begins or ends, the level may jump as well, and no rate is
/// made of it. Only days that are over count.
pub(super) fn of_grass(
    animal: &AnimalId,
    entries: &[Entry<'_>],
    holding: &Holding<'_>,
    zone: &impl Zone,
) -> Vec<DatedChange> {
    let Some(now) = entries.last().map(|entry| entry.record.at) else {
        return Vec::new();
    };
    let today = zone.to_local(now).date;
    let times = times(animal, entries, holding, zone, now);
    let Some(first) = times.keys().next().copied() else {
        return Vec::new();
    };
    let time = |day: LocalDate| times.get(&day).copied().unwrap_or(Span::ZERO);
    let long = |day: &LocalDate| *GRASS_FILLS_FROM <= time(*day);
    let mut found = Vec::new();
    let mut at_grass = false;
    let mut passed: Option<LocalDate> = None;
    for day in first.iter_days().take_while(|day| *day < today) {
        let week: Vec<LocalDate> = (0..DAYS_PER_WEEK)
            .rev()
            .filter_map(|back| day.checked_sub_days(chrono::Days::new(back.unsigned_abs())))
            .collect();
        let sum = week.iter().fold(Span::ZERO, |sum, day| sum + time(*day));
        let over = GRASS_FILLS_FROM.to_ms().saturating_mul(DAYS_PER_WEEK) <= sum.to_ms();
        let near = passed.is_some_and(|passed| (day - passed).num_days() < DAYS_PER_WEEK);
        if over == at_grass || near {
            continue;
        }
        let (on, fill) = if over {
            (week.iter().copied().find(long), GutFill::HayToGrass)
        } else {
            let last = week.iter().copied().rfind(long);
            (last.and_then(|last| last.succ_opt()), GutFill::GrassToHay)
        };
        found.push(DatedChange {
            day: on.unwrap_or(day),
            change: Change::GutFill(fill),
        });
        at_grass = over;
        passed = Some(day);
    }
    found
}

/// How long it was at grass, day by day. One that nobody brought in is out until now.
fn times(
    animal: &AnimalId,
    entries: &[Entry<'_>],
    holding: &Holding<'_>,
    zone: &impl Zone,
    now: Instant,
) -> BTreeMap<LocalDate, Span> {
    let grass = AtGrass {
        entries,
        groups: holding.groups(),
        zone,
        now,
    };
    let today = zone.to_local(now).date;
    let mut times: BTreeMap<LocalDate, Span> = BTreeMap::new();
    for outing in grass.outings(&Subject::Animal(animal.clone())) {
        let whole = Span::hours(HOURS_PER_DAY);
        let days = zone.to_local(outing.out).date.iter_days();
        for day in days.take_while(|day| *day <= today) {
            let time = match outing.on(day, zone) {
                Some(OnDay::For(time)) => time,
                Some(OnDay::NotKnown) if outing.is_out => whole,
                Some(OnDay::NotKnown) | None => break,
            };
            let of_day = times.entry(day).or_insert(Span::ZERO);
            *of_day = (*of_day + time).min(whole);
        }
    }
    times
}
