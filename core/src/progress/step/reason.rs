//! Why a row decides: what its conditions found.

use super::facts::HowSoon;
use crate::animal::{Goal, Phase};
use crate::assess::ConditionRange;
use crate::limits::{Ends, RestrictionBar};
use crate::units::{Length, PartOfBody};

/// Why: what a condition found.
#[derive(Clone, Debug, PartialEq)]
pub enum Reason {
    /// Something stops it.
    Stopped(HowSoon),
    /// A look again is still to be made, or its sign stands.
    LookAgain,
    /// One reading lies far under the others.
    FarDown {
        /// By what part of its weight.
        part: f64,
    },
    /// It was measured again, and whether it lost too much is known so far.
    MeasuredAgain {
        /// The chance.
        chance: f64,
    },
    /// A donkey loses faster than donkeys may.
    DonkeyTooFast {
        /// The chance.
        chance: f64,
    },
    /// It is in this phase.
    InPhase(Phase),
    /// This is wanted of its weight.
    Wants(Goal),
    /// It was never weighed.
    NeverWeighed,
    /// It has no plan.
    NoPlan,
    /// Its condition is under a bound.
    ConditionUnder {
        /// The last score.
        condition: ConditionRange,
        /// The bound.
        under: f64,
    },
    /// Its last scores are 5 or more.
    FilledOut {
        /// The last score.
        condition: ConditionRange,
    },
    /// It has laminitis now.
    LaminitisNow,
    /// Nobody says that it has laminitis now, and no sign stands.
    LaminitisOver,
    /// A vet's word was given since.
    VetSpoke,
    /// Its last look-over was clean.
    LookedOverClean,
    /// It is sound, as far as anybody said.
    Sound,
    /// A change of phase waits for a person.
    ChangeProposed(Phase),
    /// Days at the starting level so far.
    AtStartFor {
        /// Days.
        days: i64,
        /// Days asked for.
        of: i64,
    },
    /// Weighings in this phase so far.
    Weighed {
        /// Times.
        times: u32,
        /// Times asked for.
        of: u32,
    },
    /// A donkey's diet starts with the vet.
    DonkeyWithoutWord,
    /// It may be fed to lose.
    MayEatLess,
    /// Watched so long, with so many readings.
    Watched {
        /// Weeks.
        weeks: f64,
        /// Readings.
        readings: usize,
        /// Whether that is enough.
        enough: bool,
    },
    /// What it loses a week, as a part of its weight, and the chance of the band it lies in.
    Rate {
        /// Which band.
        band: Band,
        /// The rate with the ends of its 80 % band.
        part: Ends<f64>,
        /// The chance that the rate lies in the band.
        chance: f64,
    },
    /// The chance that it is at its target.
    TargetReached {
        /// The chance.
        chance: f64,
    },
    /// So many readings lie over the band in which a weight holds.
    ReadingsOver {
        /// How many.
        readings: u32,
    },
    /// Its girth grew.
    GirthUp {
        /// By how much.
        by: Length,
    },
    /// It is over the band in which a weight holds.
    OverBand {
        /// The chance.
        chance: f64,
    },
    /// Its weight holds.
    Holds {
        /// The chance.
        chance: f64,
    },
    /// It ate more than planned.
    EatsMore {
        /// At least so much.
        at_least: PartOfBody,
        /// The plan.
        planned: PartOfBody,
    },
    /// What it ate is not known well enough.
    EatenNotKnown {
        /// The part that was seen; `None` where nothing was logged.
        seen: Option<f64>,
    },
    /// Grass is not counted.
    GrassNotCounted,
    /// It is on this level, which is no restriction.
    AtStart {
        /// The level.
        level: PartOfBody,
    },
    /// Its hay is not tested.
    HayNotTested {
        /// Days it still lasts.
        lasts: i64,
    },
    /// Nothing less may be fed.
    NoStepLeft {
        /// The level that holds.
        level: Option<PartOfBody>,
    },
    /// The level below needs a vet's word.
    StepNeedsVet {
        /// That level.
        to: PartOfBody,
        /// What of it the vet's list says; empty where only the level does.
        bars: Vec<RestrictionBar>,
    },
    /// This stands in the way of the level below.
    StepBarred {
        /// That level.
        to: PartOfBody,
        /// What stands in the way.
        bars: Vec<RestrictionBar>,
    },
}

/// A band of the weekly rate.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Band {
    /// Under 0.25 %.
    UnderQuarter,
    /// 0.25 to 0.5 %.
    ToHalf,
    /// 0.5 to 1 %.
    ToOne,
    /// 0.25 % or more.
    QuarterOrMore,
    /// Over 1 %.
    OverOne,
    /// It does not gain.
    NoGain,
}
