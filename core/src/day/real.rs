//! The day as it really went: what was hung when, what was seen, and how long it waited.

use super::gaps::{Wait, walk};
use super::layout::{GapVerdict, gap_verdict};
use super::published::{GAP_ALARM, GAP_LINE};
use super::rate::EatingRate;
use super::reach::{Eats, Reach, Stretch};
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

/// A stretch at grass.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Out {
    /// When it went out.
    pub from: Instant,
    /// Until when it counts: when it came in, of leaf no longer than it was to be out; `None` while it is out.
    pub to: Option<Instant>,
    /// What there is to eat.
    pub eats: Eats,
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
    /// Until when a fast eater has forage; past when it has none. While it is at grass with leaf, what hangs lasts from now
    /// on. `None` when nothing was ever hung, and while nobody knows what hangs.
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
/// `happened` may come in any order and reaches back a day at most; what is later than now is left out. `out` are the
/// stretches at grass: leaf is forage and the nets wait, a bare paddock is a wait. `accepted_h` is the longest wait that
/// the person accepted; where nobody accepted one the line stands in for it.
pub fn real_day(
    happened: &[Happened],
    out: &[Out],
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
    let fast = walked(&past, out, rate.fast, now);
    let likely = walked(&past, out, rate.likely, now);
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
fn walked(past: &[Happened], out: &[Out], rate: f64, now: Instant) -> Real {
    let Some(first) = past.first().map(|event| event.at()) else {
        return Real {
            waits: Vec::new(),
            until: None,
            now: 0.0,
            unknown: None,
        };
    };
    let hours = |at: Instant| at.since(first).to_hours();
    let reach = Reach::of_hours(&stretches(out, first, now));
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
    } else if 0.0 < stock || grazes(out, now) {
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

/// Whether it is at grass with leaf at an instant.
fn grazes(out: &[Out], at: Instant) -> bool {
    let here = |out: &&Out| out.from <= at && out.to.is_none_or(|to| at < to);
    let mut here = out.iter().filter(here).peekable();
    here.peek().is_some() && here.all(|out| out.eats != Eats::Nothing)
}

/// The stretches between two instants no more than a day apart, on a line of hours that begins with the first.
fn stretches(out: &[Out], first: Instant, now: Instant) -> Vec<Stretch> {
    out.iter()
        .map(|out| {
            (
                out.from.max(first),
                out.to.map_or(now, |to| to.min(now)),
                out,
            )
        })
        .filter(|(from, to, _)| from < to)
        .map(|(from, to, out)| Stretch {
            from: from.since(first).to_hours(),
            to: to.since(first).to_hours(),
            eats: out.eats,
        })
        .collect()
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
mod tests;
