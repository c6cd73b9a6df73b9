//! Sharing the day's forage over the visits so that the longest gap is as short as it can be.

use super::error::DayError;
use super::exact::{Shares, Visit};
use super::gaps::{Gap, day_hours, gaps, hour_of, intervals};
use super::published::{
    DAY_DRY_MATTER, GAP_LINE, GAP_PLANNED, LEAST_NET_H, NIGHT_FROM, NIGHT_TO, SCALE_STEP,
};
use super::rate::EatingRate;
use super::reach::{Away, Reach};
use crate::sources::Provenance;
use crate::units::{AsFed, DryFraction, DryMatter, LocalTime};

/// What a day is laid out from.
#[derive(Clone, Debug)]
pub struct DayNeeds<'a> {
    /// When somebody comes, in any order; doubles count once.
    pub visits: &'a [LocalTime],
    /// The dry matter of forage for the day.
    pub forage: DryMatter,
    /// The dry fraction of that forage as it is weighed.
    pub dry: DryFraction,
    /// How fast it is eaten.
    pub rate: &'a EatingRate,
    /// The most that can hang at one visit, as fed; `None` when nets enough are there.
    pub most_at_once: Option<AsFed>,
    /// Hours within which a net must be eaten, for soaked hay that is hung as soon as it is drained; `None` for dry hay.
    pub eaten_within_h: Option<f64>,
    /// When it is at grass, at work or away.
    pub aways: &'a [Away],
    /// The part of the forage, by dry matter, that could be straw on top of what is: within its cap, and where neither
    /// the energy nor anything else forbids it. `None` where straw is no way out.
    pub straw_part: Option<f64>,
}

/// What hangs at one visit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Hanging {
    /// The visit.
    pub visit: LocalTime,
    /// The dry matter that hangs.
    pub dry: DryMatter,
    /// The same as fed: whole steps of the scale.
    pub as_fed: AsFed,
}

/// What the longest gap means.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GapVerdict {
    /// Within what is planned for.
    Planned,
    /// Longer than planned for, not over the line.
    Care,
    /// Over the line: these visits cannot do better, and the person is asked to accept it or mend it.
    OverTheLine,
}

/// A laid-out day.
#[derive(Clone, Debug, PartialEq)]
pub struct Layout {
    /// What hangs when, in the order of the day.
    pub hangings: Vec<Hanging>,
    /// The waits for a fast eater.
    pub gaps: Vec<Gap>,
    /// The longest gap for a fast eater, in hours: the one that is judged.
    pub longest_h: f64,
    /// The longest gap at the likely rate, in hours.
    pub likely_h: f64,
    /// What the longest gap means.
    pub verdict: GapVerdict,
    /// Whether the longest gap lies at night.
    pub longest_at_night: bool,
    /// What it came from.
    pub from: Provenance,
}

/// Lays out a day.
///
/// The longest gap G is smallest when every interval between visits is filled down to G, as water fills a vessel: a
/// visit gets `rate x (interval - G)`, at least nothing, at most what can hang or must be eaten by its time. The sum
/// falls as G rises, so G is found exactly at or between the points where a visit begins or ceases to change. What
/// the scale's steps leave over goes to the longest gap by day first, so that the longest gap is left at night.
///
/// Where something hangs on past the next visit, what can hang is little, or the animal is away, water does not find
/// the best: [`super::exact`] tries every way in whole steps of the scale, up to eight visits, and what it finds counts
/// where it is better.
///
/// # Errors
/// No visit, a day's dry matter outside its range, or more than can hang or be eaten in time.
pub fn lay_out(needs: &DayNeeds<'_>) -> Result<Layout, DayError> {
    DAY_DRY_MATTER.check(needs.forage.to_kg())?;
    lay_out_all(needs)
}

/// The same for the forage of several animals, of which each one's was looked at.
///
/// # Errors
/// No visit, or more than can hang or be eaten in time.
pub fn lay_out_all(needs: &DayNeeds<'_>) -> Result<Layout, DayError> {
    let mut visits = needs.visits.to_vec();
    visits.sort_unstable();
    visits.dedup();
    if visits.is_empty() {
        return Err(DayError::NoVisits);
    }
    let rate = needs.rate.fast;
    let intervals = intervals(&visits);
    let most: Vec<f64> = intervals.iter().map(|_| most_at_a_visit(needs)).collect();
    let room: f64 = most.iter().sum();
    let step_dry = step_dry(needs);
    // numeric: a billionth of a step is the arithmetic's, not a net's
    if room + step_dry * 1e-9 < needs.forage.to_kg() {
        return Err(DayError::CannotHang {
            left_kg: needs.forage.to_kg() - room,
        });
    }
    let water = fill(&intervals, &most, rate, needs.forage.to_kg());
    let water = in_steps(&visits, &intervals, &water, &most, needs);
    let reach = Reach::of(needs.aways);
    let room = room_at(&visits, needs, step_dry);
    let wanted = whole(needs.forage.to_kg() / step_dry);
    // What a visit may get is cut to whole steps, so that not all may have found its place.
    let placed: i64 = water.iter().sum();
    let of = Shares {
        visits: &room,
        end: None,
        steps: wanted,
        fast_h: step_dry / rate,
        slow_h: step_dry / needs.rate.slow,
        within_h: needs.eaten_within_h,
        reach: &reach,
    };
    let (longest, holds) = of.judge(&water);
    let holds = holds && placed == wanted;
    // No wait is longer than a day.
    let better_than = if holds { longest } else { day_hours() + 1.0 };
    let shares = match of.best(better_than) {
        Some(shares) => shares,
        None if holds || (placed == wanted && !of.too_much(&water)) => water,
        None => {
            let left = (wanted - of.most_that_hangs()).max(wanted - placed);
            return Err(DayError::CannotHang {
                left_kg: left as f64 * step_dry,
            });
        }
    };
    Ok(judged(hangings(&visits, &shares, needs), needs))
}

/// The dry matter of a step of the scale, in kilograms.
pub(super) fn step_dry(needs: &DayNeeds<'_>) -> f64 {
    AsFed::kg(*SCALE_STEP).dry(needs.dry).to_kg()
}

/// The visits with what may hang at them, in steps.
pub(super) fn room_at(visits: &[LocalTime], needs: &DayNeeds<'_>, step_dry: f64) -> Vec<Visit> {
    let least = -whole(-*LEAST_NET_H * needs.rate.fast / step_dry);
    let all = whole(needs.forage.to_kg() / step_dry) + 1;
    let most = needs
        .most_at_once
        .map_or(all, |most| whole(most.dry(needs.dry).to_kg() / step_dry));
    visits
        .iter()
        .map(|visit| Visit {
            at: hour_of(*visit),
            least,
            most,
            fixed: None,
        })
        .collect()
}

/// Whole steps, rounded down.
#[allow(
    clippy::cast_possible_truncation,
    reason = "a day's dry matter over a step's: far below the end of the integers, and saturating"
)]
pub(super) fn whole(steps: f64) -> i64 {
    let nearest = steps.round();
    // numeric: a billionth of a step is the arithmetic's, not the scale's
    if (steps - nearest).abs() < 1e-9 {
        nearest as i64
    } else {
        steps.floor() as i64
    }
}

/// What hangs, from steps.
pub(super) fn hangings(visits: &[LocalTime], shares: &[i64], needs: &DayNeeds<'_>) -> Vec<Hanging> {
    visits
        .iter()
        .zip(shares)
        .map(|(visit, steps)| {
            let as_fed = AsFed::kg(*SCALE_STEP) * *steps as f64;
            Hanging {
                visit: *visit,
                dry: as_fed.dry(needs.dry),
                as_fed,
            }
        })
        .collect()
}

/// The most dry matter a visit may get: what can hang, and what is eaten within its time even by a slow eater.
fn most_at_a_visit(needs: &DayNeeds<'_>) -> f64 {
    let hang = needs
        .most_at_once
        .map_or(f64::INFINITY, |most| most.dry(needs.dry).to_kg());
    let eat = needs
        .eaten_within_h
        .map_or(f64::INFINITY, |hours| needs.rate.slow * hours);
    hang.min(eat)
}

/// Shares of `total` that make the longest gap smallest.
fn fill(intervals: &[f64], most: &[f64], rate: f64, total: f64) -> Vec<f64> {
    let share = |gap: f64| -> Vec<f64> {
        intervals
            .iter()
            .zip(most)
            .map(|(interval, most)| (rate * (interval - gap)).clamp(0.0, *most))
            .collect()
    };
    let sum = |gap: f64| share(gap).iter().sum::<f64>();
    // The sum is linear between these points.
    let mut points: Vec<f64> = intervals
        .iter()
        .zip(most)
        .flat_map(|(interval, most)| [*interval, interval - most / rate])
        .filter(|gap| gap.is_finite() && 0.0 <= *gap)
        .chain([0.0])
        .collect();
    points.sort_unstable_by(|a, b| b.total_cmp(a));
    let mut upper = points.first().copied().unwrap_or(0.0);
    for lower in points {
        let (at_upper, at_lower) = (sum(upper), sum(lower));
        if total <= at_lower {
            let part = if at_lower > at_upper {
                (total - at_upper) / (at_lower - at_upper)
            } else {
                0.0
            };
            return share(upper - part * (upper - lower));
        }
        upper = lower;
    }
    // More than is eaten before the next visit: no gap is left. The rest is shared by the room that is left, so that
    // every net lasts.
    let full = share(0.0);
    let rest = total - full.iter().sum::<f64>();
    spread(&full, most, intervals, rest)
}

/// Adds `rest` to shares, by length of interval, never over what a visit may get.
fn spread(shares: &[f64], most: &[f64], intervals: &[f64], rest: f64) -> Vec<f64> {
    let mut shares = shares.to_vec();
    let mut rest = rest;
    // Each pass fills a visit to its most or places everything.
    for _ in 0..=most.len() {
        let open: f64 = shares
            .iter()
            .zip(most)
            .zip(intervals)
            .filter(|((share, most), _)| share < most)
            .map(|(_, interval)| interval)
            .sum();
        if rest <= 0.0 || open <= 0.0 {
            break;
        }
        let mut placed = 0.0;
        for ((share, most), interval) in shares.iter_mut().zip(most).zip(intervals) {
            if *share < *most {
                let more = (rest * interval / open).min(*most - *share);
                *share += more;
                placed += more;
            }
        }
        rest -= placed;
    }
    shares
}

/// Rounds shares to whole steps of the scale that add up to the day's amount rounded down.
fn in_steps(
    visits: &[LocalTime],
    intervals: &[f64],
    shares: &[f64],
    most: &[f64],
    needs: &DayNeeds<'_>,
) -> Vec<i64> {
    let step_dry = step_dry(needs);
    let mut steps: Vec<i64> = shares
        .iter()
        .map(|share| whole(*share / step_dry))
        .collect();
    let mut left = whole(needs.forage.to_kg() / step_dry) - steps.iter().sum::<i64>();
    while 0 < left {
        let neediest = (0..steps.len())
            .filter_map(|index| {
                let (count, interval, most) =
                    (steps.get(index)?, intervals.get(index)?, most.get(index)?);
                let fits = (*count + 1) as f64 * step_dry <= *most;
                let gap = interval - *count as f64 * step_dry / needs.rate.fast;
                let by_day = visits
                    .get(index)
                    .is_some_and(|visit| !is_night(hour_of(*visit)));
                fits.then_some((index, by_day, gap))
            })
            .max_by(|a, b| {
                (a.1, a.2)
                    .partial_cmp(&(b.1, b.2))
                    .unwrap_or(std::cmp::Ordering::Equal)
            });
        let Some((index, ..)) = neediest else { break };
        if let Some(count) = steps.get_mut(index) {
            *count += 1;
        }
        left -= 1;
    }
    steps
}

/// Whether an hour lies in the night of the longest gap.
pub(super) fn is_night(hour: f64) -> bool {
    hour < f64::from(*NIGHT_TO) || f64::from(*NIGHT_FROM) <= hour
}

/// What a wait means.
pub fn gap_verdict(hours: f64) -> GapVerdict {
    if hours <= *GAP_PLANNED {
        GapVerdict::Planned
    } else if hours <= *GAP_LINE {
        GapVerdict::Care
    } else {
        GapVerdict::OverTheLine
    }
}

/// A layout of what is hung already or was decided before: its waits and what they mean.
pub fn judged(hangings: Vec<Hanging>, needs: &DayNeeds<'_>) -> Layout {
    let rate = needs.rate;
    let longest = |rate: f64| {
        gaps(&hangings, rate, needs.aways)
            .iter()
            .map(|gap| gap.hours)
            .fold(0.0, f64::max)
    };
    let found = gaps(&hangings, rate.fast, needs.aways);
    let longest_h = longest(rate.fast);
    let likely_h = longest(rate.likely);
    // Gaps that differ by less than what a step of the scale is eaten in are the same gap.
    let step_h = *SCALE_STEP / rate.fast;
    let longest_at_night = found
        .iter()
        .filter(|gap| longest_h - step_h <= gap.hours)
        .any(|gap| is_night((gap.from_hour + gap.hours / 2.0).rem_euclid(day_hours())));
    Layout {
        longest_at_night,
        hangings,
        gaps: found,
        longest_h,
        likely_h,
        verdict: gap_verdict(longest_h),
        from: rate
            .from
            .clone()
            .constant(&GAP_PLANNED)
            .constant(&GAP_LINE)
            .constant(&SCALE_STEP),
    }
}
