//! Gaits and how long each was gone.

use super::published::{CANTER_SPEEDS, TROT_SPEEDS, WALK_SPEEDS};
use crate::limits::Ends;
use crate::sources::Published;
use crate::units::{Span, Speed};

/// A gait.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Gait {
    /// Four beats.
    Walk,
    /// Two beats.
    Trot,
    /// Three beats.
    Canter,
}

impl Gait {
    /// All of them, slow first.
    pub const ALL: [Self; 3] = [Self::Walk, Self::Trot, Self::Canter];

    /// The beats of a stride.
    pub const fn beats(self) -> u32 {
        match self {
            // numeric: a walk has four beats
            Self::Walk => 4,
            Self::Trot => 2,
            // numeric: a canter has three beats
            Self::Canter => 3,
        }
    }

    /// Its slow and its fast speed as they were measured.
    pub const fn speeds(self) -> Published<[f64; 2]> {
        match self {
            Self::Walk => WALK_SPEEDS,
            Self::Trot => TROT_SPEEDS,
            Self::Canter => CANTER_SPEEDS,
        }
    }

    /// Its speed with its ends: likely is the middle.
    pub fn speed(self) -> Ends<Speed> {
        let [slow, fast] = *self.speeds();
        Ends::new(slow, f64::midpoint(slow, fast), fast).map(Speed::m_per_min)
    }
}

/// How long each gait was gone, or is to be.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct GaitTimes {
    /// Walk.
    pub walk: Span,
    /// Trot.
    pub trot: Span,
    /// Canter.
    pub canter: Span,
}

impl GaitTimes {
    /// From whole minutes.
    pub const fn minutes(walk: u32, trot: u32, canter: u32) -> Self {
        Self {
            walk: Span::minutes(walk as i64),
            trot: Span::minutes(trot as i64),
            canter: Span::minutes(canter as i64),
        }
    }

    /// The time in one gait.
    pub const fn of(&self, gait: Gait) -> Span {
        match gait {
            Gait::Walk => self.walk,
            Gait::Trot => self.trot,
            Gait::Canter => self.canter,
        }
    }

    /// With so much more in one gait; less than nothing adds nothing.
    #[must_use]
    pub fn with(mut self, gait: Gait, more: Span) -> Self {
        let more = more.max(Span::ZERO);
        match gait {
            Gait::Walk => self.walk = self.walk + more,
            Gait::Trot => self.trot = self.trot + more,
            Gait::Canter => self.canter = self.canter + more,
        }
        self
    }

    /// Both together.
    #[must_use]
    pub fn and(self, other: Self) -> Self {
        Gait::ALL
            .into_iter()
            .fold(self, |sum, gait| sum.with(gait, other.of(gait)))
    }

    /// All of it.
    pub fn total(&self) -> Span {
        self.walk + self.trot + self.canter
    }
}
