//! What would shorten the longest gap, cheapest first.

use super::gaps::{day_hours, hour_of, intervals};
use super::layout::{DayNeeds, lay_out_all};
use super::published::{DOUBLE_NET, STRAW_LONGER, VISIT_HOURS};
use super::rate::EatingRate;
use crate::sources::Published;
use crate::units::LocalTime;
use crate::units::published::MINUTES_PER_HOUR;

/// Something that shortens the longest gap, with the gap it leaves for a fast eater, in hours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mend {
    /// A second net hung apart at each visit, so that twice as much can hang.
    SecondNet {
        /// The longest gap that is left.
        longest_h: f64,
    },
    /// Each net doubled.
    DoubleNet {
        /// The longest gap that is left.
        longest_h: f64,
    },
    /// Part of the forage as straw: it is chewed longer.
    Straw {
        /// The part of the forage, by dry matter: within the straw's cap.
        part: f64,
        /// The longest gap that is left.
        longest_h: f64,
    },
    /// One more visit.
    OneMoreVisit {
        /// When it helps most.
        at: LocalTime,
        /// The longest gap that is left.
        longest_h: f64,
    },
    /// A feeder that opens by a clock in the longest gap: like one more visit nobody has to make.
    TimeRelease {
        /// When it should open.
        at: LocalTime,
        /// The longest gap that is left.
        longest_h: f64,
    },
}

/// What mends the day, cheapest first; only what really shortens the gap. `now_h` is the longest gap as laid out.
///
/// Straw counts with the time it is chewed longer and with nothing else; how much of it may be is `needs.straw_part`.
pub fn mends(needs: &DayNeeds<'_>, now_h: f64) -> Vec<Mend> {
    let mut found = Vec::new();
    let laid = |needs: &DayNeeds<'_>| lay_out_all(needs).ok().map(|day| day.longest_h);
    if let Some(most) = needs.most_at_once {
        let apart = DayNeeds {
            most_at_once: Some(most + most),
            ..needs.clone()
        };
        found.extend(laid(&apart).map(|longest_h| Mend::SecondNet { longest_h }));
    }
    let doubled = slower(needs.rate, &DOUBLE_NET, *DOUBLE_NET);
    let doubled = DayNeeds {
        rate: &doubled,
        ..needs.clone()
    };
    found.extend(laid(&doubled).map(|longest_h| Mend::DoubleNet { longest_h }));
    if let Some(part) = needs.straw_part.filter(|part| 0.0 < *part) {
        let mixed = slower(
            needs.rate,
            &STRAW_LONGER,
            1.0 + part * (*STRAW_LONGER - 1.0),
        );
        let mixed = DayNeeds {
            rate: &mixed,
            ..needs.clone()
        };
        found.extend(laid(&mixed).map(|longest_h| Mend::Straw { part, longest_h }));
    }
    if let Some(middle) = middle_of_the_longest(needs.visits) {
        let with = |at: LocalTime| {
            let visits: Vec<LocalTime> = needs.visits.iter().copied().chain([at]).collect();
            let more = DayNeeds {
                visits: &visits,
                ..needs.clone()
            };
            laid(&more).map(|longest_h| (at, longest_h))
        };
        // Nobody is asked to get up for it: a visit that would help most at night is made at the better end of the night.
        let [first, last] = *VISIT_HOURS;
        let awake = if (first..=last).contains(&middle) {
            with(middle)
        } else {
            let shorter = |a: &(LocalTime, f64), b: &(LocalTime, f64)| a.1.total_cmp(&b.1);
            [last, first].into_iter().filter_map(with).min_by(shorter)
        };
        found.extend(awake.map(|(at, longest_h)| Mend::OneMoreVisit { at, longest_h }));
        found.extend(with(middle).map(|(at, longest_h)| Mend::TimeRelease { at, longest_h }));
    }
    // numeric: a second of a wait helps nobody
    found.retain(|mend| mend.longest_h() < now_h - 3e-4);
    found
}

impl Mend {
    /// The longest gap it leaves, in hours.
    pub const fn longest_h(self) -> f64 {
        match self {
            Self::SecondNet { longest_h }
            | Self::DoubleNet { longest_h }
            | Self::Straw { longest_h, .. }
            | Self::OneMoreVisit { longest_h, .. }
            | Self::TimeRelease { longest_h, .. } => longest_h,
        }
    }
}

/// A rate so many times as slow, at every end.
fn slower(rate: &EatingRate, by: &'static Published<f64>, times: f64) -> EatingRate {
    EatingRate {
        slow: rate.slow / times,
        likely: rate.likely / times,
        fast: rate.fast / times,
        from: rate.from.clone().constant(by),
    }
}

/// The whole minute in the middle of the longest interval between visits.
fn middle_of_the_longest(visits: &[LocalTime]) -> Option<LocalTime> {
    let mut sorted = visits.to_vec();
    sorted.sort_unstable();
    sorted.dedup();
    let longest = intervals(&sorted)
        .into_iter()
        .zip(&sorted)
        .max_by(|a, b| a.0.total_cmp(&b.0))
        .map(|(hours, visit)| (hour_of(*visit) + hours / 2.0).rem_euclid(day_hours()))?;
    let hour = longest.floor();
    let minute = ((longest - hour) * MINUTES_PER_HOUR as f64).floor();
    // Both are below 60 by construction, so the casts lose nothing
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "hours below 24, minutes below 60"
    )]
    LocalTime::from_hms_opt(hour as u32, minute as u32, 0)
}
