//! What a tub is now: a function of the stored instants and now, never counted.

use super::air::Air;
use super::recipe::Recipe;
use super::timeline::{Ended, SoakTimes, timeline};
use crate::units::{Instant, Span};

/// What a tub, or the net that came out of it, is now.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TubState {
    /// Nothing was put in.
    Empty,
    /// In the water.
    InWater {
        /// When to lift it out.
        lift_out: Instant,
        /// The time left until then.
        left: Span,
    },
    /// To be lifted out now.
    LiftOut {
        /// When it was due.
        due: Instant,
        /// How late it is; zero when it is due this moment.
        late: Span,
        /// When it must be thrown away.
        throw_away: Instant,
    },
    /// Lifted out and draining.
    Draining {
        /// From when it is drained enough.
        enough: Instant,
        /// When it is drained.
        drained: Instant,
        /// The time left until then.
        left: Span,
        /// When it must be thrown away.
        throw_away: Instant,
    },
    /// Drained: feed it now.
    Feed {
        /// Since when.
        since: Instant,
        /// When it must be thrown away.
        throw_away: Instant,
        /// The time left until then.
        left: Span,
    },
    /// Given; what is left is thrown away in time.
    Fed {
        /// When it was given.
        at: Instant,
        /// When what is left must be thrown away.
        throw_away: Instant,
        /// The time left until then.
        left: Span,
    },
    /// Throw away what is left, now.
    ThrowAway {
        /// Since when.
        since: Instant,
        /// How long ago it was first wet.
        wet_for: Span,
    },
    /// Over.
    Done {
        /// When.
        at: Instant,
        /// How.
        how: Ended,
    },
}

/// The steps in their order.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TubStep {
    /// Nothing was put in.
    Empty,
    /// In the water.
    InWater,
    /// To be lifted out.
    LiftOut,
    /// Draining.
    Draining,
    /// To be fed.
    Feed,
    /// Given.
    Fed,
    /// To be thrown away.
    ThrowAway,
    /// Over.
    Done,
}

impl TubState {
    /// Its step in the course of a soak: it never goes back as time passes.
    pub const fn step(&self) -> TubStep {
        match self {
            Self::Empty => TubStep::Empty,
            Self::InWater { .. } => TubStep::InWater,
            Self::LiftOut { .. } => TubStep::LiftOut,
            Self::Draining { .. } => TubStep::Draining,
            Self::Feed { .. } => TubStep::Feed,
            Self::Fed { .. } => TubStep::Fed,
            Self::ThrowAway { .. } => TubStep::ThrowAway,
            Self::Done { .. } => TubStep::Done,
        }
    }

    /// Whether somebody must do something now.
    pub const fn is_due(&self) -> bool {
        matches!(
            self,
            Self::LiftOut { .. } | Self::Feed { .. } | Self::ThrowAway { .. }
        )
    }
}

/// What a tub is now. `air` is the warmest since the hay was first wet. A step that is stored counts from the moment it
/// is stored, so that a clock that was set back does not undo it.
pub fn state(soak: Option<(Recipe, SoakTimes)>, air: Air, now: Instant) -> TubState {
    let Some((recipe, times)) = soak else {
        return TubState::Empty;
    };
    if let Some((at, how)) = times.ended {
        return TubState::Done { at, how };
    }
    let line = timeline(recipe, &times, air);
    let throw_away = line.throw_away;
    if now >= throw_away {
        return TubState::ThrowAway {
            since: throw_away,
            wet_for: now.since(times.wetted),
        };
    }
    let left = throw_away.since(now);
    if let Some(at) = times.fed {
        return TubState::Fed {
            at,
            throw_away,
            left,
        };
    }
    match times.lifted {
        Some(_) if now < line.drained => TubState::Draining {
            enough: line.drained_from,
            drained: line.drained,
            left: line.drained.since(now),
            throw_away,
        },
        Some(_) => TubState::Feed {
            since: line.drained,
            throw_away,
            left,
        },
        None if now < line.lift_out => TubState::InWater {
            lift_out: line.lift_out,
            left: line.lift_out.since(now),
        },
        None => TubState::LiftOut {
            due: line.lift_out,
            late: now.since(line.lift_out),
            throw_away,
        },
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::soak::Water;

    /// Minutes after six in the morning.
    fn at(minutes: i64) -> Instant {
        Instant::from_ms(1_780_000_000_000) + Span::minutes(minutes)
    }

    fn cold_hour() -> (Recipe, SoakTimes) {
        (Recipe::usual(Water::TapSummer), SoakTimes::started(at(0)))
    }

    #[test]
    fn a_morning_tub_from_the_water_to_the_muck_heap() {
        let (recipe, mut times) = cold_hour();
        let now_is = |times, minutes| state(Some((recipe, times)), Air::Mild, at(minutes));
        assert_eq!(
            now_is(times, 18),
            TubState::InWater {
                lift_out: at(60),
                left: Span::minutes(42)
            }
        );
        assert!(matches!(now_is(times, 60), TubState::LiftOut { late, .. } if late == Span::ZERO));
        assert!(
            matches!(now_is(times, 75), TubState::LiftOut { late, .. } if late == Span::minutes(15))
        );
        times.lifted = Some(at(61));
        assert!(
            matches!(now_is(times, 65), TubState::Draining { enough, drained, .. }
            if enough == at(71) && drained == at(76))
        );
        assert!(
            matches!(now_is(times, 76), TubState::Feed { left, .. } if left == Span::minutes(644))
        );
        times.fed = Some(at(80));
        assert!(
            matches!(now_is(times, 719), TubState::Fed { left, .. } if left == Span::minutes(1))
        );
        assert_eq!(
            now_is(times, 730),
            TubState::ThrowAway {
                since: at(720),
                wet_for: Span::minutes(730)
            }
        );
        times.ended = Some((at(735), Ended::ThrownAway));
        assert!(matches!(
            now_is(times, 740),
            TubState::Done {
                how: Ended::ThrownAway,
                ..
            }
        ));
    }

    #[test]
    fn a_tub_nobody_touched_is_thrown_away_at_twelve_hours() {
        let soak = Some(cold_hour());
        assert!(matches!(
            state(soak, Air::Mild, at(719)),
            TubState::LiftOut { .. }
        ));
        assert!(matches!(
            state(soak, Air::Mild, at(720)),
            TubState::ThrowAway { .. }
        ));
    }

    #[test]
    fn heat_brings_it_forward_and_a_cool_evening_gives_nothing_back() {
        let soak = Some(cold_hour());
        let since = |air| match state(soak, air, at(720)) {
            TubState::ThrowAway { since, .. } => since,
            other => panic!("{other:?}"),
        };
        assert_eq!(since(Air::Over20), at(6 * 60));
        assert_eq!(since(Air::Over25), at(4 * 60));
        let day = Air::warmest([Air::Mild, Air::Over25, Air::Under16]);
        assert_eq!(since(day), at(4 * 60));
    }

    #[test]
    fn an_overnight_soak_is_kept_six_hours_after_lifting() {
        let recipe = Recipe::minutes(Water::TapWinter, 10 * 60).unwrap();
        let mut times = SoakTimes::started(at(0));
        times.lifted = Some(at(10 * 60));
        let line = timeline(recipe, &times, Air::Under16);
        assert_eq!(line.throw_away, at(16 * 60));
        assert_eq!(line.shortened, Some(super::super::Shortened::LongSoak));
        assert_eq!(line.hang_by(Span::hours(4)), at(12 * 60));
        // It turned warm after all.
        assert_eq!(timeline(recipe, &times, Air::Mild).throw_away, at(12 * 60));
        assert_eq!(timeline(recipe, &times, Air::Over25).throw_away, at(4 * 60));
    }

    #[test]
    fn a_corrected_time_moves_everything_with_it() {
        let (recipe, mut times) = cold_hour();
        times.wetted = at(-30);
        assert!(matches!(
            state(Some((recipe, times)), Air::Mild, at(35)),
            TubState::LiftOut { late, .. } if late == Span::minutes(5)
        ));
        times.lifted = Some(at(-40));
        assert!(times.check().is_err());
    }

    #[test]
    fn a_tub_without_hay_is_empty() {
        assert_eq!(state(None, Air::Over25, at(0)), TubState::Empty);
    }
}
