//! The day as it really went: what was hung when, what was seen, and how long it waited.

use super::gaps::{Wait, walk};
use super::layout::{GapVerdict, gap_verdict};
use super::published::{GAP_ALARM, GAP_LINE};
use super::rate::EatingRate;
use super::reach::Reach;
use crate::units::published::MINUTES_PER_HOUR;
use crate::units::{DryMatter, Instant, Span};

/// What happened to its forage, at an instant.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Happened {
    /// So much was hung.
    Hung {
        /// When.
        at: Instant,
        /// The dry matter of it.
        dry: DryMatter,
    },
    /// A net was hung, and nobody knows how much is in it.
    HungUnknown {
        /// When.
        at: Instant,
    },
    /// So much was seen to be left in all that hangs; nothing, when the nets were empty.
    Left {
        /// When.
        at: Instant,
        /// The dry matter of it.
        dry: DryMatter,
    },
    /// What hangs is frozen: no forage until something is hung or seen again.
    Frozen {
        /// When it was seen.
        at: Instant,
    },
}

impl Happened {
    /// When.
    pub const fn at(self) -> Instant {
        match self {
            Self::Hung { at, .. }
            | Self::HungUnknown { at }
            | Self::Left { at, .. }
            | Self::Frozen { at } => at,
        }
    }
}

/// What the real day means beside the plan that was accepted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RealVerdict {
    /// Not longer than what was accepted and an hour.
    AsAccepted,
    /// It waited, or waits, longer than accepted by more than an hour.
    Worse {
        /// By how many hours.
        by_h: f64,
    },
    /// It has been without forage for longer than the line, now, and nobody accepted so long a wait: feed now.
    FeedNow,
}

/// The real day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct RealDay {
    /// From when nobody knows what hangs: a net was hung that was not weighed, and nothing was seen since. No wait is told
    /// from then on, and none is alarmed.
    pub not_known_from: Option<Instant>,
    /// Until when a fast eater has forage; past when it has none. `None` when nothing was ever hung, and while nobody
    /// knows what hangs.
    pub forage_until: Option<Instant>,
    /// The same at the likely rate.
    pub likely_until: Option<Instant>,
    /// How long it has been without forage now, in hours; 0 while it has.
    pub waits_h: f64,
    /// The longest wait since the first of what happened, the present one included, in hours.
    pub longest_h: f64,
    /// What the longest wait means by itself.
    pub verdict: GapVerdict,
    /// What it means beside the plan.
    pub beside: RealVerdict,
}

/// The day as it really went until now, for a fast eater: the end that leaves the animal longest without forage.
///
/// `happened` may come in any order; what is later than now is left out. `accepted_h` is the longest wait that the person
/// accepted; where nobody accepted one the line stands in for it. Hours at grass or away are not in here: they are no
/// records yet, and without them the wait is told longer, never shorter, than with grass.
pub fn real_day(
    happened: &[Happened],
    rate: &EatingRate,
    now: Instant,
    accepted_h: Option<f64>,
) -> RealDay {
    let mut past: Vec<Happened> = happened
        .iter()
        .copied()
        .filter(|event| event.at() <= now)
        .collect();
    past.sort_by_key(|event| event.at());
    let fast = walked(&past, rate.fast, now);
    let likely = walked(&past, rate.likely, now);
    let longest_h = fast
        .waits
        .iter()
        .map(|wait| wait.hours())
        .fold(0.0, f64::max);
    let waits_h = fast.now_h();
    let accepted = accepted_h.unwrap_or(*GAP_LINE);
    let worse = longest_h - accepted;
    let beside = if *GAP_LINE < waits_h && accepted < waits_h {
        RealVerdict::FeedNow
    } else if *GAP_ALARM < worse {
        RealVerdict::Worse { by_h: worse }
    } else {
        RealVerdict::AsAccepted
    };
    RealDay {
        not_known_from: fast.unknown,
        forage_until: fast.until,
        likely_until: likely.until,
        waits_h,
        longest_h,
        verdict: gap_verdict(longest_h),
        beside,
    }
}

struct Real {
    waits: Vec<Wait>,
    until: Option<Instant>,
    now: f64,
    /// Since when nobody knows what hangs.
    unknown: Option<Instant>,
}

impl Real {
    /// How long the wait that lasts until now has lasted.
    fn now_h(&self) -> f64 {
        self.waits
            .last()
            // numeric: the arithmetic's, not the day's
            .filter(|wait| self.now - wait.to < 1e-9)
            .map_or(0.0, |wait| wait.hours())
    }
}

/// Walks from what happened first to now, on a line of hours that begins with it.
fn walked(past: &[Happened], rate: f64, now: Instant) -> Real {
    let Some(first) = past.first().map(|event| event.at()) else {
        return Real {
            waits: Vec::new(),
            until: None,
            now: 0.0,
            unknown: None,
        };
    };
    let reach = Reach::of(&[]);
    let hours = |at: Instant| at.since(first).to_hours();
    let mut waits: Vec<Wait> = Vec::new();
    let mut stock = 0.0;
    let mut frozen = false;
    let mut unknown = None;
    let ends = past
        .iter()
        .skip(1)
        .map(|event| event.at())
        .chain(std::iter::once(now));
    for (event, end) in past.iter().zip(ends) {
        match event {
            Happened::Hung { dry, .. } => {
                // What is hung beside frozen hay is forage, and the frozen hay is not counted.
                stock = if frozen { 0.0 } else { stock } + dry.to_kg() / rate;
                frozen = false;
            }
            Happened::Left { dry, .. } => {
                stock = dry.to_kg() / rate;
                frozen = false;
                unknown = None;
            }
            Happened::Frozen { .. } => {
                stock = 0.0;
                frozen = true;
                unknown = None;
            }
            Happened::HungUnknown { at } => {
                frozen = false;
                unknown = unknown.or(Some(*at));
            }
        }
        let (from, to) = (hours(event.at()), hours(end));
        if to <= from || unknown.is_some() {
            continue;
        }
        let part = walk(&[], &reach, from, to, stock);
        stock = part.left;
        for wait in part.waits {
            match waits.last_mut() {
                // numeric: nothing lies between equal hours
                Some(last) if wait.from - last.to < 1e-9 => last.to = wait.to,
                _ => waits.push(wait),
            }
        }
    }
    let now_h = hours(now);
    let until = if unknown.is_some() {
        None
    } else if 0.0 < stock {
        Some(now + whole_minutes(stock))
    } else {
        waits
            .last()
            .map(|wait| first + whole_minutes(wait.from))
            .or(Some(now))
    };
    Real {
        waits,
        until,
        now: now_h,
        unknown,
    }
}

/// Hours in whole minutes, rounded down: forage is not told to last longer than it does.
#[allow(
    clippy::cast_possible_truncation,
    reason = "hours of forage: far below the end of the integers, and saturating"
)]
fn whole_minutes(hours: f64) -> Span {
    // numeric: a billionth of a minute is the arithmetic's
    Span::minutes((hours * MINUTES_PER_HOUR as f64 + 1e-9).floor() as i64)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sources::Provenance;

    fn rate() -> EatingRate {
        EatingRate {
            slow: 0.3,
            likely: 0.4,
            fast: 0.5,
            from: Provenance::new(),
        }
    }

    fn hour(hour: f64) -> Instant {
        Instant::from_ms(0) + whole_minutes(hour)
    }

    fn hung(at: f64, kg: f64) -> Happened {
        Happened::Hung {
            at: hour(at),
            dry: DryMatter::kg(kg),
        }
    }

    #[test]
    fn forage_lasts_until_a_fast_eater_is_through() {
        let day = real_day(&[hung(7.0, 2.0)], &rate(), hour(9.0), Some(7.0));
        assert_eq!(day.forage_until, Some(hour(11.0)));
        assert_eq!(day.likely_until, Some(hour(12.0)));
        assert_eq!((day.waits_h, day.longest_h), (0.0, 0.0));
        let later = real_day(&[hung(7.0, 2.0)], &rate(), hour(14.0), Some(7.0));
        assert_eq!(later.forage_until, Some(hour(11.0)));
        assert!((later.waits_h - 3.0).abs() < 1e-9);
        assert_eq!(later.beside, RealVerdict::AsAccepted);
    }

    #[test]
    fn it_alarms_only_when_worse_than_accepted_by_more_than_an_hour() {
        let at = |now: f64| real_day(&[hung(0.0, 2.0)], &rate(), hour(now), Some(5.0)).beside;
        // Bare from 04:00; accepted are 5 h.
        assert_eq!(at(9.5), RealVerdict::AsAccepted);
        assert_eq!(at(10.0), RealVerdict::AsAccepted);
        assert!(matches!(at(10.02), RealVerdict::FeedNow));
        // A wait that is over is worse, and nothing to feed now.
        let over = [hung(0.0, 2.0), hung(10.5, 3.0)];
        let day = real_day(&over, &rate(), hour(11.0), Some(5.0));
        assert!(matches!(day.beside, RealVerdict::Worse { by_h } if (by_h - 1.5).abs() < 1e-9));
        assert_eq!(day.verdict, GapVerdict::OverTheLine);
        // Eight hours that were accepted are no alarm, not even now.
        let accepted = real_day(&[hung(0.0, 2.0)], &rate(), hour(11.9), Some(8.0));
        assert_eq!(accepted.beside, RealVerdict::AsAccepted);
        // Nobody accepted anything: the line.
        let none = real_day(&[hung(0.0, 2.0)], &rate(), hour(10.1), None);
        assert_eq!(none.beside, RealVerdict::FeedNow);
    }

    #[test]
    fn a_net_of_unknown_weight_is_unknown_until_somebody_looks() {
        let unknown = Happened::HungUnknown { at: hour(5.0) };
        // Bare from 04:00 to 05:00; then nobody knows, for however long.
        let day = real_day(&[hung(0.0, 2.0), unknown], &rate(), hour(20.0), Some(3.0));
        assert_eq!(day.not_known_from, Some(hour(5.0)));
        assert_eq!((day.forage_until, day.likely_until), (None, None));
        assert!((day.longest_h - 1.0).abs() < 1e-9 && day.waits_h.abs() < 1e-9);
        assert_eq!(day.beside, RealVerdict::AsAccepted);
        // Another net does not say what is left of the first.
        let more = [hung(0.0, 2.0), unknown, hung(8.0, 1.0)];
        let day = real_day(&more, &rate(), hour(20.0), None);
        assert_eq!(day.not_known_from, Some(hour(5.0)));
        // Somebody saw that all is empty: it waits from then on.
        let left = Happened::Left {
            at: hour(12.0),
            dry: DryMatter::ZERO,
        };
        let seen = [hung(0.0, 2.0), unknown, left];
        let day = real_day(&seen, &rate(), hour(18.5), None);
        assert_eq!(day.not_known_from, None);
        assert!((day.waits_h - 6.5).abs() < 1e-9);
        assert_eq!(day.beside, RealVerdict::FeedNow);
    }

    #[test]
    fn what_was_seen_and_a_frozen_net_count() {
        let seen = [
            hung(0.0, 4.0),
            Happened::Left {
                at: hour(3.0),
                dry: DryMatter::ZERO,
            },
        ];
        let day = real_day(&seen, &rate(), hour(5.0), None);
        assert!((day.waits_h - 2.0).abs() < 1e-9);
        let frozen = [hung(0.0, 4.0), Happened::Frozen { at: hour(1.0) }];
        let day = real_day(&frozen, &rate(), hour(5.0), None);
        assert!((day.waits_h - 4.0).abs() < 1e-9);
        assert_eq!(real_day(&[], &rate(), hour(5.0), None).forage_until, None);
    }
}
