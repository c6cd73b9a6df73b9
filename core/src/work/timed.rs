//! A session on the clock: every figure follows from the instants of the taps and now.

use super::gait::{Gait, GaitTimes};
use super::published::LEFT_RUNNING_HOURS;
use crate::units::{Instant, Span};

/// What was tapped.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Tap {
    /// From here on it goes in this gait.
    Gait(Gait),
    /// The work is over.
    Stop,
}

/// A session on the clock as it stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Timed {
    /// How long each gait was gone so far.
    pub times: GaitTimes,
    /// When it began; `None` before the first gait.
    pub started: Option<Instant>,
    /// When it was over; `None` while it goes on.
    pub stopped: Option<Instant>,
    /// The gait it goes in; `None` before the first and after the stop.
    pub gait: Option<Gait>,
}

impl Timed {
    /// Whether it was left running: nobody works so long, and its minutes are written down by hand.
    pub fn left_running(&self) -> bool {
        Span::hours(*LEFT_RUNNING_HOURS) < self.times.total()
    }
}

/// What the taps add up to at an instant. A clock that was set back adds nothing; what comes after the stop is left out.
pub fn timed(taps: &[(Instant, Tap)], now: Instant) -> Timed {
    let mut found = Timed::default();
    let mut from = None;
    for (at, tap) in taps {
        if let (Some(gait), Some(from)) = (found.gait, from) {
            found.times = found.times.with(gait, at.since(from));
        }
        match tap {
            Tap::Gait(gait) => {
                found.started = found.started.or(Some(*at));
                found.gait = Some(*gait);
                from = Some(*at);
            }
            Tap::Stop => {
                if found.started.is_none() {
                    continue;
                }
                found.stopped = Some(*at);
                found.gait = None;
                return found;
            }
        }
    }
    if let (Some(gait), Some(from)) = (found.gait, from) {
        found.times = found.times.with(gait, now.since(from));
    }
    found
}
