//! The rest of a day, laid out anew: when a visit is missed or a net is late.

use super::error::DayError;
use super::exact::{Shares, Visit};
use super::gaps::{Wait, day_hours, hour_of, walk};
use super::layout::{DayNeeds, Hanging, hangings, room_at, step_dry, whole};
use super::reach::Reach;
use crate::units::{DryMatter, LocalTime};

/// What is left of a day.
#[derive(Clone, Copy, Debug)]
pub struct Rest {
    /// The local time now.
    pub now: LocalTime,
    /// The dry matter that hangs now and is not eaten.
    pub hangs: DryMatter,
    /// The dry matter of the day that was not hung yet.
    pub to_hang: DryMatter,
    /// When somebody comes first tomorrow, and the next day begins.
    pub tomorrow: LocalTime,
}

/// The nets that are left of today, over the visits that are left.
#[derive(Clone, Debug, PartialEq)]
pub struct RestOfDay {
    /// What hangs at each visit that is left. The visits are those of the plan, so the jobs keep their names.
    pub hangings: Vec<Hanging>,
    /// The dry matter that finds no place today: more than can hang, or be eaten in time.
    pub over: DryMatter,
    /// The longest wait from now to tomorrow's first visit, for a fast eater, in hours.
    pub longest_h: f64,
}

/// Lays out what is left of a day so that the longest wait from now to tomorrow's first visit is as short as it can be.
///
/// `needs.visits` are the visits that are left, after now; the amount of `needs` is not read. A visit that was missed is
/// simply not among them, and its net is in `to_hang`.
///
/// # Errors
/// No visit is left: feed now, or the rest of the day hangs nothing.
pub fn lay_out_rest(needs: &DayNeeds<'_>, rest: &Rest) -> Result<RestOfDay, DayError> {
    let from = hour_of(rest.now);
    let ahead = |time: LocalTime| {
        let hour = hour_of(time);
        if hour < from {
            hour + day_hours()
        } else {
            hour
        }
    };
    let mut visits = needs.visits.to_vec();
    visits.sort_unstable();
    visits.dedup();
    visits.sort_by(|a, b| ahead(*a).total_cmp(&ahead(*b)));
    if visits.is_empty() {
        return Err(DayError::NoVisits);
    }
    let step = step_dry(needs);
    let hangs = whole(rest.hangs.to_kg() / step).max(0);
    let to_hang = whole(rest.to_hang.to_kg() / step).max(0);
    let day = DayNeeds {
        forage: rest.to_hang,
        ..needs.clone()
    };
    let mut room = vec![Visit {
        at: from,
        least: 0,
        most: hangs,
        fixed: Some(hangs),
    }];
    room.extend(
        visits
            .iter()
            .zip(room_at(&visits, &day, step))
            .map(|(visit, room)| Visit {
                at: ahead(*visit),
                ..room
            }),
    );
    let tomorrow = hour_of(rest.tomorrow);
    let last = room.last().map_or(from, |visit| visit.at);
    let end = if last < tomorrow {
        tomorrow
    } else {
        tomorrow + day_hours()
    };
    let reach = Reach::of(needs.aways);
    let mut of = Shares {
        visits: &room,
        end: Some(end),
        steps: hangs + to_hang,
        fast_h: step / needs.rate.fast,
        slow_h: step / needs.rate.slow,
        // What hangs already has its own time, which is not known here; it is not counted against the next.
        within_h: None,
        reach: &reach,
    };
    let alone = Shares {
        within_h: needs.eaten_within_h,
        visits: room.get(1..).unwrap_or_default(),
        steps: to_hang,
        ..of.clone()
    };
    let fits = alone.most_up_to(to_hang);
    of.steps = hangs + fits;
    of.within_h = needs.eaten_within_h.filter(|_| hangs == 0);
    // No wait is longer than the two days it lies in.
    let shares = of.best(2.0 * day_hours()).map_or_else(
        || first_takes(visits.len(), fits),
        |shares| shares.into_iter().skip(1).collect(),
    );
    let hung: Vec<(f64, f64)> = room
        .iter()
        .map(|visit| visit.at)
        .zip(std::iter::once(hangs).chain(shares.iter().copied()))
        .map(|(at, steps)| (at, steps as f64 * of.fast_h))
        .collect();
    let longest_h = walk(&hung, &reach, from, end, 0.0)
        .waits
        .into_iter()
        .map(Wait::hours)
        .fold(0.0, f64::max);
    Ok(RestOfDay {
        longest_h,
        hangings: hangings(&visits, &shares, needs),
        over: DryMatter::kg((to_hang - fits) as f64 * step),
    })
}

/// All of it at the first visit: too little to share.
fn first_takes(visits: usize, steps: i64) -> Vec<i64> {
    let mut shares = vec![0; visits];
    if let Some(first) = shares.first_mut() {
        *first = steps;
    }
    shares
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::day::EatingRate;
    use crate::sources::Provenance;
    use crate::units::{AsFed, DryFraction};

    fn at(hour: u32) -> LocalTime {
        LocalTime::from_hms_opt(hour, 0, 0).unwrap()
    }

    fn laid(
        visits: &[LocalTime],
        now: u32,
        hangs: f64,
        to_hang: f64,
        most: Option<f64>,
    ) -> RestOfDay {
        let rate = EatingRate {
            slow: 0.4,
            likely: 0.5,
            fast: 0.5,
            from: Provenance::new(),
        };
        let needs = DayNeeds {
            visits,
            forage: DryMatter::kg(9.0),
            dry: DryFraction::percent(80.0).unwrap(),
            rate: &rate,
            most_at_once: most.map(AsFed::kg),
            eaten_within_h: None,
            aways: &[],
            straw_part: None,
        };
        let rest = Rest {
            now: at(now),
            hangs: DryMatter::kg(hangs),
            to_hang: DryMatter::kg(to_hang),
            tomorrow: at(7),
        };
        lay_out_rest(&needs, &rest).unwrap()
    }

    #[test]
    fn a_missed_net_goes_to_the_visits_that_are_left() {
        // Noon was missed. It is two; from five on somebody comes at five and at ten. The best is level from then on:
        // 5 h and 9 h of the clock, 5 kg are 10 h of eating, 4 h of waiting in two parts.
        let day = laid(&[at(17), at(22)], 14, 0.0, 5.0, None);
        let kg: Vec<f64> = day.hangings.iter().map(|h| h.dry.to_kg()).collect();
        assert!((kg.iter().sum::<f64>() - 5.0).abs() < 1e-9);
        assert_eq!(day.over, DryMatter::ZERO);
        let night = 9.0 - kg[1] / 0.5;
        let evening = 5.0 - kg[0] / 0.5;
        assert!(
            night <= 3.0 + 1e-6 && evening <= 3.0 + 1e-6,
            "{evening} {night}"
        );
        // Nothing hangs from two to five.
        assert!((day.longest_h - 3.0).abs() < 1e-6, "{}", day.longest_h);
    }

    #[test]
    fn who_stands_there_now_hangs_now() {
        // Ten in the morning, its net still to hang: 21 h until seven.
        let day = laid(&[at(10), at(20)], 10, 0.0, 8.0, None);
        let kg: Vec<f64> = day.hangings.iter().map(|h| h.dry.to_kg()).collect();
        assert!((kg.iter().sum::<f64>() - 8.0).abs() < 1e-9);
        // 16 h of eating in 21 h, in two parts of 10 and 11 h.
        assert!((day.longest_h - 2.5).abs() < 0.2, "{}", day.longest_h);
        assert!(0.0 < kg[0] && 0.0 < kg[1]);
    }

    #[test]
    fn what_cannot_hang_is_told_and_not_hung() {
        let day = laid(&[at(17)], 14, 1.0, 5.0, Some(2.5));
        assert!((day.hangings[0].as_fed.to_kg() - 2.5).abs() < 1e-9);
        assert!((day.over.to_kg() - 3.0).abs() < 1e-9);
        let little = laid(&[at(17), at(22)], 14, 0.0, 0.08, None);
        assert!((little.hangings[0].dry.to_kg() - 0.08).abs() < 1e-9);
    }
}
