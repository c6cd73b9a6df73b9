//! The steps of a soak: one entry each, at the instant it happened. Nothing is counted down; state is worked out from
//! the instants and now.

use super::base::{FeedWeight, JobKey, whole_number};
use crate::animal::{LotId, NetId, TubId};
use crate::log::stored::{tagged, twin, words};
use crate::soak::{Ended, Recipe, SoakError, SoakTimes, Water};
use crate::sources::RecordId;
use crate::units::Instant;

words!(Water {
    TapWinter = "tap_winter",
    TapSummer = "tap_summer",
    HandHot = "hand_hot",
});

whole_number! {
    /// How long hay is to lie in the water, in minutes.
    // numeric: a day
    SoakMinutes = (1, 1_440)
}
twin! {
    /// Water and time.
    RecipeV1 {
        /// The water.
        water: Water,
        /// The time.
        minutes: SoakMinutes,
    }
}

impl RecipeV1 {
    /// The recipe.
    ///
    /// Errors: those of [`Recipe::minutes`].
    pub fn recipe(&self) -> Result<Recipe, SoakError> {
        let minutes = u32::try_from(self.minutes.get()).unwrap_or(u32::MAX);
        Recipe::minutes(self.water, minutes)
    }
}

twin! {
    /// What went into the water.
    SoakStart {
        /// The tub; `None` when tubs are not told apart.
        tub: Option<TubId>,
        /// The lot.
        lot: LotId,
        /// The hay, dry.
        hay: Option<FeedWeight>,
        /// The nets in it.
        nets: Vec<NetId>,
        /// Water and time, as planned.
        recipe: RecipeV1,
        /// The jobs of hanging that this hay is for, where it is not for all nets of its visit.
        hangs: Option<Vec<JobKey>>,
    }
}

/// A step of a soak. The instant is the `at` of the record.
#[derive(Clone, Debug, PartialEq)]
pub enum SoakStep {
    /// First wet: the clock of throwing away starts. The id of this record is the id of the soak.
    Started {
        /// What went in.
        start: SoakStart,
    },
    /// Lifted out.
    Lifted {
        /// Of which soak.
        soak: RecordId,
    },
    /// Drained.
    Drained {
        /// Of which soak.
        soak: RecordId,
    },
    /// Hung or given.
    Fed {
        /// Of which soak.
        soak: RecordId,
    },
    /// Eaten up.
    Eaten {
        /// Of which soak.
        soak: RecordId,
    },
    /// What was left is thrown away.
    ThrownAway {
        /// Of which soak.
        soak: RecordId,
    },
    /// Broken off: it did not happen as begun.
    Stopped {
        /// Of which soak.
        soak: RecordId,
    },
}

tagged!(SoakStep, by "step" {
    Started = "started" { start: start },
    Lifted = "lifted" { soak: soak },
    Drained = "drained" { soak: soak },
    Fed = "fed" { soak: soak },
    Eaten = "eaten" { soak: soak },
    ThrownAway = "thrown_away" { soak: soak },
    Stopped = "stopped" { soak: soak },
});

twin! {
    /// A step of a soak.
    SoakStepV1 {
        /// Which step.
        happened: SoakStep,
        /// The job that this does.
        job: Option<JobKey>,
    }
}

/// The stored instants of one soak, from the steps that were logged: record, instant and step, in any order. `None`
/// when it was never started. Of a step that was logged twice the earlier counts.
pub fn soak_times<'a>(
    soak: &RecordId,
    steps: impl IntoIterator<Item = (&'a RecordId, Instant, &'a SoakStep)>,
) -> Option<SoakTimes> {
    let mut wetted = None;
    let mut lifted = None;
    let mut fed = None;
    let mut ended = None;
    for (record, at, step) in steps {
        match step {
            SoakStep::Started { .. } if record == soak => earlier(&mut wetted, at),
            SoakStep::Lifted { soak: of } if of == soak => earlier(&mut lifted, at),
            SoakStep::Fed { soak: of } if of == soak => earlier(&mut fed, at),
            SoakStep::Eaten { soak: of } if of == soak => first(&mut ended, at, Ended::Eaten),
            SoakStep::ThrownAway { soak: of } if of == soak => {
                first(&mut ended, at, Ended::ThrownAway);
            }
            SoakStep::Stopped { soak: of } if of == soak => first(&mut ended, at, Ended::Stopped),
            // Draining sets no deadline; a step of another soak says nothing here.
            _ => {}
        }
    }
    Some(SoakTimes {
        wetted: wetted?,
        lifted,
        fed,
        ended,
    })
}

/// Keeps the earlier instant.
fn earlier(kept: &mut Option<Instant>, at: Instant) {
    *kept = Some(kept.map_or(at, |kept| kept.min(at)));
}

/// Keeps the earlier end.
fn first(kept: &mut Option<(Instant, Ended)>, at: Instant, how: Ended) {
    if kept.is_none_or(|(before, _)| at < before) {
        *kept = Some((at, how));
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_times_of_a_soak_are_put_together_from_its_steps() {
        let id = |text: &str| RecordId(text.to_owned());
        let at = Instant::from_ms;
        let start = SoakStep::Started {
            start: SoakStart {
                tub: None,
                lot: LotId("lot".to_owned()),
                hay: None,
                nets: Vec::new(),
                recipe: RecipeV1 {
                    water: Water::TapWinter,
                    minutes: SoakMinutes::new(60).unwrap(),
                },
                hangs: None,
            },
        };
        let lifted = |soak: &str| SoakStep::Lifted { soak: id(soak) };
        let gone = SoakStep::ThrownAway { soak: id("a") };
        let (a, b, c, d) = (id("a"), id("b"), id("c"), id("d"));
        let steps = [
            (&d, at(90), &gone),
            (&c, at(70), &lifted("a")),
            (&b, at(60), &lifted("a")),
            (&a, at(5), &start),
            (&d, at(1), &lifted("b")),
        ];
        let times = soak_times(&a, steps).unwrap();
        assert_eq!(times.wetted, at(5));
        assert_eq!(times.lifted, Some(at(60)));
        assert_eq!(times.ended, Some((at(90), Ended::ThrownAway)));
        assert!(times.check().is_ok());
        assert_eq!(soak_times(&b, steps), None);
    }
}
