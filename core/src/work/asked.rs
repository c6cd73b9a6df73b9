//! The sessions of a week.

use super::energy::HeartRate;
use super::gait::GaitTimes;
use super::published::{
    BUILD_UP_WEEKS, CANTER_MINUTES, HEART_RECOVERED, HEART_SOUND, UNFIT_MINUTES, WALK_MINUTES,
};
use super::standing::WorkLine;
use crate::sources::Provenance;

/// What is asked of a week.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// Sessions.
    pub a_week: u32,
    /// How long each gait is gone in one.
    pub times: GaitTimes,
    /// On soft ground and without a rider.
    pub soft_and_unridden: bool,
    /// The heart rate in the faster part, where one is published.
    pub heart: Option<[f64; 2]>,
    /// Which week of building up it is, from 1.
    pub week: u32,
    /// Weeks of building up.
    pub weeks: u32,
    /// Where it comes from.
    pub from: Provenance,
}

/// How a heart rate stands to what is asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum HeartStanding {
    /// Slower.
    Under,
    /// Within.
    Within,
    /// Faster.
    Over,
}

impl Asked {
    /// How a heart rate stands to what is asked; `None` where nothing is published.
    pub fn heart_standing(&self, heart: HeartRate) -> Option<HeartStanding> {
        let [least, most] = self.heart?;
        Some(if heart.to_beats() < least {
            HeartStanding::Under
        } else if most < heart.to_beats() {
            HeartStanding::Over
        } else {
            HeartStanding::Within
        })
    }
}

/// What is asked of a week after so many weeks of building up; `None` where no work is planned.
///
/// Fifteen minutes at first, thirty in the fourth week, in even steps. Walk before and after, the rest trot, and in the
/// whole session some canter; a donkey is walked.
pub fn asked(line: WorkLine, built: u32) -> Option<Asked> {
    let (minutes, a_week, heart) = match line {
        WorkLine::None
        | WorkLine::NotPlannedHere(_)
        | WorkLine::VetsWordFirst
        | WorkLine::AskFirst => return None,
        WorkLine::Recovered { minutes, a_week } => (minutes, a_week, Some(HEART_RECOVERED)),
        WorkLine::Donkey { minutes, a_week } => (minutes, a_week, None),
        WorkLine::Sound {
            minutes, a_week, ..
        } => (minutes, a_week, Some(HEART_SOUND)),
    };
    let last = BUILD_UP_WEEKS.saturating_sub(1).max(1);
    let step = built.min(last);
    let more = minutes.saturating_sub(*UNFIT_MINUTES).saturating_mul(step) / last;
    let total = (*UNFIT_MINUTES).saturating_add(more).min(minutes);
    let [before, after] = *WALK_MINUTES;
    let walk = before.saturating_add(after).min(total);
    let fast = total.saturating_sub(walk);
    let canter = if step == last {
        (*CANTER_MINUTES).min(fast)
    } else {
        0
    };
    let walks_only = matches!(line, WorkLine::Donkey { .. });
    let from = Provenance::new()
        .constant(&UNFIT_MINUTES)
        .constant(&BUILD_UP_WEEKS)
        .constant(&WALK_MINUTES)
        .constant(&CANTER_MINUTES);
    Some(Asked {
        a_week,
        times: if walks_only {
            GaitTimes::minutes(total, 0, 0)
        } else {
            GaitTimes::minutes(walk, fast.saturating_sub(canter), canter)
        },
        soft_and_unridden: matches!(line, WorkLine::Recovered { .. }),
        heart: heart.map(|heart| *heart),
        week: step.saturating_add(1),
        weeks: *BUILD_UP_WEEKS,
        from: match heart {
            Some(heart) => from.constant(&heart),
            None => from,
        },
    })
}
