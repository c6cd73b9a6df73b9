//! What would shorten the longest gap, cheapest first.

use super::gaps::{day_hours, hour_of, intervals};
use super::layout::{DayNeeds, lay_out};
use super::published::DOUBLE_NET;
use super::rate::EatingRate;
use crate::units::LocalTime;
use crate::units::published::MINUTES_PER_HOUR;

/// Something that shortens the longest gap, with the gap it leaves for a fast eater, in hours.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Mend {
    /// Each net doubled, or a second one hung apart.
    DoubleNet {
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
pub fn mends(needs: &DayNeeds<'_>, now_h: f64) -> Vec<Mend> {
    let mut found = Vec::new();
    let slower = EatingRate {
        slow: needs.rate.slow / *DOUBLE_NET,
        likely: needs.rate.likely / *DOUBLE_NET,
        fast: needs.rate.fast / *DOUBLE_NET,
        from: needs.rate.from.clone().constant(&DOUBLE_NET),
    };
    let doubled = DayNeeds {
        rate: &slower,
        ..needs.clone()
    };
    found.extend(lay_out(&doubled).ok().map(|day| Mend::DoubleNet {
        longest_h: day.longest_h,
    }));
    if let Some(at) = middle_of_the_longest(needs.visits) {
        let visits: Vec<LocalTime> = needs.visits.iter().copied().chain([at]).collect();
        let more = DayNeeds {
            visits: &visits,
            ..needs.clone()
        };
        if let Ok(day) = lay_out(&more) {
            found.push(Mend::OneMoreVisit {
                at,
                longest_h: day.longest_h,
            });
            found.push(Mend::TimeRelease {
                at,
                longest_h: day.longest_h,
            });
        }
    }
    found.retain(|mend| mend.longest_h() < now_h);
    found
}

impl Mend {
    /// The longest gap it leaves, in hours.
    pub const fn longest_h(self) -> f64 {
        match self {
            Self::DoubleNet { longest_h }
            | Self::OneMoreVisit { longest_h, .. }
            | Self::TimeRelease { longest_h, .. } => longest_h,
        }
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
