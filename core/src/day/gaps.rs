//! The waits without forage of a day that repeats.

use super::layout::Hanging;
use super::reach::{Away, Eats, Reach, Where};
use crate::units::LocalTime;
use crate::units::published::{HOURS_PER_DAY, MINUTES_PER_HOUR};
use chrono::Timelike;

/// A wait without forage.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Gap {
    /// The visit with forage after which it begins, in the order of the hangings.
    pub after: usize,
    /// The hour of the day at which it begins, 0 to 24.
    pub from_hour: f64,
    /// How long it lasts, in hours.
    pub hours: f64,
}

/// A wait on a line of hours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Wait {
    pub(super) from: f64,
    pub(super) to: f64,
}

impl Wait {
    pub(super) fn hours(self) -> f64 {
        self.to - self.from
    }
}

/// Hours in a day.
pub(super) fn day_hours() -> f64 {
    HOURS_PER_DAY as f64
}

/// A local time as an hour of the day with its fraction.
pub(super) fn hour_of(time: LocalTime) -> f64 {
    f64::from(time.hour()) + f64::from(time.minute()) / MINUTES_PER_HOUR as f64
}

/// Hours from each visit to the next, around the day. One visit comes round after a whole day.
pub(super) fn intervals(times: &[LocalTime]) -> Vec<f64> {
    times
        .iter()
        .zip(times.iter().cycle().skip(1))
        .map(|(here, next)| {
            let hours = (hour_of(*next) - hour_of(*here)).rem_euclid(day_hours());
            if hours > 0.0 { hours } else { day_hours() }
        })
        .collect()
}

/// The waits of a day that repeats, when forage is eaten at `rate` kg of dry matter an hour.
///
/// What is left at the next visit is eaten on, over midnight too, so a long net covers the time of the next one. A visit
/// at which nothing hangs ends no wait. While it is away the nets wait, and so does it, unless there is grass.
pub fn gaps(hangings: &[Hanging], rate: f64, aways: &[Away]) -> Vec<Gap> {
    let hung: Vec<(f64, f64)> = hangings
        .iter()
        .map(|hanging| (hour_of(hanging.visit), hanging.dry.to_kg() / rate))
        .collect();
    waits(&hung, &Reach::of(aways))
        .into_iter()
        .map(|wait| Gap {
            after: last_hung(&hung, wait.from),
            from_hour: wait.from.rem_euclid(day_hours()),
            hours: wait.hours(),
        })
        .collect()
}

/// The hanging with forage that came last before an hour.
fn last_hung(hung: &[(f64, f64)], hour: f64) -> usize {
    hung.iter()
        .enumerate()
        .filter(|(_, (_, hours))| 0.0 < *hours)
        .min_by(|(_, a), (_, b)| {
            let ago = |at: f64| (hour - at).rem_euclid(day_hours());
            ago(a.0).total_cmp(&ago(b.0))
        })
        .map_or(0, |(index, _)| index)
}

/// The waits that begin within one day of a day that repeats. `hung` is the hour of each visit and the hours that its
/// forage lasts.
pub(super) fn waits(hung: &[(f64, f64)], reach: &Reach) -> Vec<Wait> {
    let total: f64 = hung.iter().map(|(_, hours)| hours).sum();
    // What can never be eaten up lies there from the start. Anything less is gone at some hour of the first day, and
    // from that hour on every day is as the one before.
    let start = if reach.day() <= total {
        f64::INFINITY
    } else {
        0.0
    };
    let day = day_hours();
    // numeric: a day to settle, the day that is read, and one for waits that run into the next
    let days = 3;
    let unrolled: Vec<(f64, f64)> = (0..days)
        .flat_map(|index| {
            let shift = f64::from(index) * day;
            hung.iter().map(move |(at, hours)| (at + shift, *hours))
        })
        .collect();
    let mut found = walk(&unrolled, reach, 0.0, day * f64::from(days), start).waits;
    // numeric: the arithmetic's, not the day's
    found.retain(|wait| day <= wait.from && wait.from < day * 2.0 && 1e-9 < wait.hours());
    if found.is_empty() && total <= 0.0 {
        found.push(Wait {
            from: day,
            to: day * 2.0,
        });
    }
    found
}

/// A walk along hours.
pub(super) struct Walked {
    /// The waits, in order.
    pub(super) waits: Vec<Wait>,
    /// Hours of forage that are left at the end.
    pub(super) left: f64,
}

/// Walks from one hour to another with `start` hours of forage hanging at the first, and waits along the way.
pub(super) fn walk(hung: &[(f64, f64)], reach: &Reach, from: f64, to: f64, start: f64) -> Walked {
    let base = (from / day_hours()).floor() * day_hours();
    let mut edges: Vec<f64> = reach
        // numeric: three days and a part are the longest walk
        .days(4)
        .map(|piece| piece.from + base)
        .chain(hung.iter().map(|(at, _)| *at))
        .chain([from, to])
        .filter(|edge| from <= *edge && *edge <= to)
        .collect();
    edges.sort_unstable_by(f64::total_cmp);
    edges.dedup();
    let mut stock = start;
    let mut waits: Vec<Wait> = Vec::new();
    let mut wait = |start: f64, end: f64| match waits.last_mut() {
        // numeric: nothing lies between equal hours
        Some(last) if start - last.to < 1e-9 => last.to = end,
        _ => waits.push(Wait {
            from: start,
            to: end,
        }),
    };
    for (here, next) in edges.iter().zip(edges.iter().skip(1)) {
        stock += hung
            .iter()
            .filter(|(at, _)| at.total_cmp(here).is_eq())
            .map(|(_, hours)| hours)
            .sum::<f64>();
        let place = reach.at(*here);
        let eaten = if place.has_nets() {
            stock.min(next - here)
        } else {
            0.0
        };
        match place {
            Where::Nets if here + eaten < *next => wait(here + eaten, *next),
            Where::Out(Eats::Nothing) => wait(*here, *next),
            _ => {}
        }
        if stock.is_finite() {
            stock -= eaten;
        }
    }
    stock += hung
        .iter()
        .filter(|(at, _)| at.total_cmp(&to).is_eq())
        .map(|(_, hours)| hours)
        .sum::<f64>();
    Walked { waits, left: stock }
}
