//! The conditions of the tables, and the reason each gives when it holds.

use super::facts::{Facts, FastLoss, HayKnown};
use super::reason::{Band, Reason};
use crate::animal::{Answer, Goal, Phase};
use crate::assess::ConditionRange;
use crate::limits::RestrictionBar;
use crate::limits::published::{CONDITION_THIN, FLOOR_WITHOUT_VET, REVIEW_NEW};
use crate::progress::chances::likely;
use crate::progress::published::{
    GIRTH_UP_CM, LEAST_SEEN, LIKELY, LONG_LOT_DAYS, MOST_NOT_KNOWN, NEW_WEIGHINGS, OFF_PLAN,
    RATE_FAST, RATE_READINGS, RATE_SLOW, RATE_WANTED, RATE_WEEKS, READINGS_OVER, SCORES_FILLED,
    VERY_THIN,
};

/// A condition of a row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum If {
    /// Something stops it now.
    Stopped,
    /// A warm hoof or lying more stands, or a look again is still to be made.
    LookAgain,
    /// It lost far too much, and it was measured again.
    FarDownTwice,
    /// One reading lies far under the others, or it was measured again and nobody can tell yet.
    FarDownOnce,
    /// A donkey likely loses faster than donkeys may.
    DonkeyTooFast,
    /// It is in one of these phases.
    In(&'static [Phase]),
    /// This is wanted of its weight.
    Wants(Goal),
    /// It was never weighed.
    NeverWeighed,
    /// It has no plan.
    NoPlan,
    /// Its condition is under 3.
    VeryThin,
    /// Its condition is under 5.
    Thin,
    /// Its last two scores are 5 or more.
    FilledOut,
    /// It has laminitis now.
    LaminitisNow,
    /// Nobody says that it has laminitis now, and no sign of it stands.
    LaminitisOver,
    /// A vet gave a word that holds since its episode or recovery began.
    VetSpoke,
    /// Its last look-over was clean.
    LookedOverClean,
    /// It is not lame, on pain relief, on box rest or sick.
    Sound,
    /// A change of phase is proposed.
    ChangeProposed,
    /// Under fourteen days at the starting level.
    Settling,
    /// Fourteen days at the starting level.
    Settled,
    /// Fewer than two weighings in this phase.
    WeighedTooSeldom,
    /// Two weighings in this phase.
    WeighedTwice,
    /// A donkey or mule without a vet's word that holds.
    DonkeyWithoutWord,
    /// No donkey or mule, or with a vet's word that holds.
    MayEatLess,
    /// Under four weeks, or no rate yet.
    TooShort,
    /// Four weeks, and fewer than five readings.
    TooFewReadings,
    /// Four weeks and five readings.
    LongEnough,
    /// It likely loses under 0.25 % a week.
    Slow,
    /// It likely loses 0.25 to 0.5 % a week.
    SteadySlow,
    /// It likely loses 0.5 to 1 % a week.
    OnCourse,
    /// It likely loses 0.25 % a week or more.
    Loses,
    /// It likely loses over 1 % a week.
    TooFast,
    /// It likely does not gain.
    DoesNotGain,
    /// It likely is at its target.
    TargetReached,
    /// Two readings lie over the band in which a weight holds, or its girth grew by 2 cm.
    Regained,
    /// It likely is over the band in which a weight holds.
    OverBand,
    /// Its weight likely holds, and it likely does not lose.
    Holds,
    /// It ate more than planned, even at the least.
    EatsMore,
    /// Too little of what it ate was seen.
    EatenNotKnown,
    /// Grass is not counted.
    GrassNotCounted,
    /// It is on its starting level or above.
    AtStart,
    /// Its hay is not tested, and lasts over six weeks.
    HayNotTested,
    /// There is no level below, or a floor holds already.
    NoStepLeft,
    /// The level below needs a vet's word, and none holds that reaches so far.
    StepNeedsVet,
    /// Something else stands in the way of the level below.
    StepBarred,
}

impl If {
    /// What it found when it holds; `None` when it does not.
    #[allow(clippy::too_many_lines, reason = "one condition a line")]
    pub fn found(self, of: &Facts) -> Option<Reason> {
        match self {
            Self::Stopped => of.stop.map(Reason::Stopped),
            Self::LookAgain => of.look_again.then_some(Reason::LookAgain),
            Self::FarDownTwice => match of.fast_loss {
                FastLoss::Confirmed { chance } => Some(Reason::MeasuredAgain { chance }),
                FastLoss::Once { .. } | FastLoss::NotSure { .. } | FastLoss::None => None,
            },
            Self::FarDownOnce => match of.fast_loss {
                FastLoss::Once { part } => Some(Reason::FarDown { part }),
                FastLoss::NotSure { chance } => Some(Reason::MeasuredAgain { chance }),
                FastLoss::Confirmed { .. } | FastLoss::None => None,
            },
            Self::DonkeyTooFast => {
                (of.donkey && likely(of.donkey_too_fast)).then_some(Reason::DonkeyTooFast {
                    chance: of.donkey_too_fast,
                })
            }
            Self::In(phases) => phases
                .contains(&of.phase)
                .then_some(Reason::InPhase(of.phase)),
            Self::Wants(goal) => (of.goal == goal).then_some(Reason::Wants(goal)),
            Self::NeverWeighed => (!of.weighed).then_some(Reason::NeverWeighed),
            Self::NoPlan => of.level.is_none().then_some(Reason::NoPlan),
            Self::VeryThin => under(of.condition, *VERY_THIN),
            Self::Thin => under(of.condition, *CONDITION_THIN),
            Self::FilledOut => filled_out(of),
            Self::LaminitisNow => of.laminitis_now.then_some(Reason::LaminitisNow),
            Self::LaminitisOver => {
                (!of.laminitis_now && !of.sign_stands).then_some(Reason::LaminitisOver)
            }
            Self::VetSpoke => of.vet_spoke.then_some(Reason::VetSpoke),
            Self::LookedOverClean => {
                (of.look_over_clean == Answer::Yes).then_some(Reason::LookedOverClean)
            }
            Self::Sound => (!of.not_sound).then_some(Reason::Sound),
            Self::ChangeProposed => {
                crate::progress::propose(of).map(|proposal| Reason::ChangeProposed(proposal.to))
            }
            Self::Settling => settled(of, false),
            Self::Settled => settled(of, true),
            Self::WeighedTooSeldom => weighed(of, false),
            Self::WeighedTwice => weighed(of, true),
            Self::DonkeyWithoutWord => {
                (of.donkey && of.vets_level.is_none()).then_some(Reason::DonkeyWithoutWord)
            }
            Self::MayEatLess => {
                (!of.donkey || of.vets_level.is_some()).then_some(Reason::MayEatLess)
            }
            Self::TooShort => too_short(of),
            Self::TooFewReadings => watched(of, |weeks, readings| {
                *RATE_WEEKS <= weeks && readings < *RATE_READINGS
            }),
            Self::LongEnough => watched(of, |weeks, readings| {
                *RATE_WEEKS <= weeks && *RATE_READINGS <= readings
            }),
            Self::Slow => rate(of, Band::UnderQuarter),
            Self::SteadySlow => rate(of, Band::ToHalf),
            Self::OnCourse => rate(of, Band::ToOne),
            Self::Loses => rate(of, Band::QuarterOrMore),
            Self::TooFast => rate(of, Band::OverOne),
            Self::DoesNotGain => rate(of, Band::NoGain),
            Self::TargetReached => {
                let chance = of.target?.reached;
                likely(chance).then_some(Reason::TargetReached { chance })
            }
            Self::Regained => regained(of),
            Self::OverBand => {
                let chance = of.target?.over_band;
                likely(chance).then_some(Reason::OverBand { chance })
            }
            Self::Holds => {
                let chance = of.target?.in_band;
                (likely(chance) && rate(of, Band::QuarterOrMore).is_none())
                    .then_some(Reason::Holds { chance })
            }
            Self::EatsMore => eats_more(of),
            Self::EatenNotKnown => eaten_not_known(of),
            Self::GrassNotCounted => of.grass_not_counted.then_some(Reason::GrassNotCounted),
            Self::AtStart => {
                let level = of.level?;
                (of.start <= level).then_some(Reason::AtStart { level })
            }
            Self::HayNotTested => match of.hay {
                HayKnown::NotTested { lasts: Some(lasts) } if *LONG_LOT_DAYS < lasts => {
                    Some(Reason::HayNotTested { lasts })
                }
                HayKnown::NotTested { .. } | HayKnown::Tested | HayKnown::None => None,
            },
            Self::NoStepLeft => (of.next_down.is_none() || of.floor_reached)
                .then_some(Reason::NoStepLeft { level: of.level }),
            Self::StepNeedsVet => needs_vet(of),
            Self::StepBarred => {
                let to = of.next_down?;
                let bars: Vec<RestrictionBar> = of
                    .bars
                    .iter()
                    .copied()
                    .filter(|bar| !for_the_vet(bar))
                    .collect();
                (!bars.is_empty()).then_some(Reason::StepBarred { to, bars })
            }
        }
    }

    /// The constants it goes by.
    pub fn constants(self) -> &'static [&'static str] {
        match self {
            Self::VeryThin => &[VERY_THIN.id],
            Self::Thin => &[CONDITION_THIN.id],
            Self::FilledOut => &[CONDITION_THIN.id, SCORES_FILLED.id],
            Self::Settling | Self::Settled => &[REVIEW_NEW.id],
            Self::WeighedTooSeldom | Self::WeighedTwice => &[NEW_WEIGHINGS.id],
            Self::TooShort | Self::TooFewReadings | Self::LongEnough => {
                &[RATE_WEEKS.id, RATE_READINGS.id]
            }
            Self::Slow | Self::Loses => &[LIKELY.id, RATE_SLOW.id],
            Self::SteadySlow => &[LIKELY.id, RATE_SLOW.id, RATE_WANTED.id],
            Self::OnCourse => &[LIKELY.id, RATE_WANTED.id, RATE_FAST.id],
            Self::TooFast => &[LIKELY.id, RATE_FAST.id],
            Self::DonkeyTooFast => &[
                LIKELY.id,
                crate::limits::published::DONKEY_LOSS_KG.id,
                crate::limits::published::DONKEY_LOSS_PART.id,
            ],
            Self::DoesNotGain | Self::TargetReached => &[LIKELY.id],
            Self::OverBand | Self::Holds => &[LIKELY.id, crate::limits::published::HOLDING_BAND.id],
            Self::Regained => &[
                READINGS_OVER.id,
                GIRTH_UP_CM.id,
                crate::limits::published::HOLDING_BAND.id,
            ],
            Self::EatsMore => &[OFF_PLAN.id],
            Self::EatenNotKnown => &[LEAST_SEEN.id, MOST_NOT_KNOWN.id],
            Self::HayNotTested => &[LONG_LOT_DAYS.id],
            Self::NoStepLeft => &[crate::limits::published::FLOOR.id],
            Self::StepNeedsVet => &[FLOOR_WITHOUT_VET.id],
            Self::StepBarred => &[
                crate::limits::published::DAYS_AT_START.id,
                crate::limits::published::CONDITION_FAT.id,
            ],
            Self::Stopped
            | Self::LookAgain
            | Self::FarDownTwice
            | Self::FarDownOnce
            | Self::In(_)
            | Self::Wants(_)
            | Self::NeverWeighed
            | Self::NoPlan
            | Self::LaminitisNow
            | Self::LaminitisOver
            | Self::VetSpoke
            | Self::LookedOverClean
            | Self::Sound
            | Self::ChangeProposed
            | Self::DonkeyWithoutWord
            | Self::MayEatLess
            | Self::GrassNotCounted
            | Self::AtStart => &[],
        }
    }
}

/// The middle of a score: it is the keeper's hand that says so, and a person confirms what follows from it.
fn under(condition: Option<ConditionRange>, bound: f64) -> Option<Reason> {
    condition
        .filter(|condition| condition.middle() < bound)
        .map(|condition| Reason::ConditionUnder {
            condition,
            under: bound,
        })
}

fn filled_out(of: &Facts) -> Option<Reason> {
    let full = of
        .scores
        .iter()
        .take(*SCORES_FILLED)
        .filter(|score| *CONDITION_THIN <= score.low())
        .count();
    let condition = of.condition?;
    (full == *SCORES_FILLED).then_some(Reason::FilledOut { condition })
}

fn settled(of: &Facts, wanted: bool) -> Option<Reason> {
    let (days, needed) = (of.days_at_start, *REVIEW_NEW);
    ((needed <= days) == wanted).then_some(Reason::AtStartFor { days, of: needed })
}

fn weighed(of: &Facts, wanted: bool) -> Option<Reason> {
    let (times, needed) = (of.weighings, *NEW_WEIGHINGS);
    ((needed <= times) == wanted).then_some(Reason::Weighed { times, of: needed })
}

fn too_short(of: &Facts) -> Option<Reason> {
    let (weeks, readings) = of
        .pace
        .as_ref()
        .map_or((0.0, 0), |pace| (pace.weeks, pace.readings));
    (weeks < *RATE_WEEKS).then_some(Reason::Watched {
        weeks,
        readings,
        enough: false,
    })
}

fn watched(of: &Facts, when: fn(f64, usize) -> bool) -> Option<Reason> {
    let pace = of.pace.as_ref()?;
    when(pace.weeks, pace.readings).then_some(Reason::Watched {
        weeks: pace.weeks,
        readings: pace.readings,
        enough: *RATE_READINGS <= pace.readings,
    })
}

fn rate(of: &Facts, band: Band) -> Option<Reason> {
    let pace = of.pace.as_ref()?;
    let bands = &pace.bands;
    let chance = match band {
        Band::UnderQuarter => bands.under_quarter,
        Band::ToHalf => bands.to_half,
        Band::ToOne => bands.to_one,
        Band::QuarterOrMore => bands.to_half + bands.to_one + bands.over_one,
        Band::OverOne => bands.over_one,
        Band::NoGain => 1.0 - pace.gaining,
    };
    likely(chance).then_some(Reason::Rate {
        band,
        part: pace.part_a_week,
        chance,
    })
}

fn regained(of: &Facts) -> Option<Reason> {
    let stands = of.target?;
    if *READINGS_OVER <= stands.readings_over {
        return Some(Reason::ReadingsOver {
            readings: stands.readings_over,
        });
    }
    stands
        .girth_up
        .filter(|by| *GIRTH_UP_CM <= by.to_cm())
        .map(|by| Reason::GirthUp { by })
}

fn eats_more(of: &Facts) -> Option<Reason> {
    let eaten = of.eaten?;
    let planned = eaten.planned?;
    (planned * (1.0 + *OFF_PLAN) < eaten.level.least).then_some(Reason::EatsMore {
        at_least: eaten.level.least,
        planned,
    })
}

fn eaten_not_known(of: &Facts) -> Option<Reason> {
    let Some(eaten) = of.eaten else {
        return Some(Reason::EatenNotKnown { seen: None });
    };
    // Written so that what is no number is not known.
    let known = *LEAST_SEEN <= eaten.seen && eaten.not_known <= *MOST_NOT_KNOWN;
    (!known).then_some(Reason::EatenNotKnown {
        seen: Some(eaten.seen),
    })
}

/// What only a vet's word opens.
const fn for_the_vet(bar: &RestrictionBar) -> bool {
    matches!(
        bar,
        RestrictionBar::OnVetList(_) | RestrictionBar::NotAdult { .. }
    )
}

fn needs_vet(of: &Facts) -> Option<Reason> {
    let to = of.next_down?;
    let bars: Vec<RestrictionBar> = of.bars.iter().copied().filter(for_the_vet).collect();
    let too_low = match of.vets_level {
        Some(lowest) => to < lowest,
        None => to < *FLOOR_WITHOUT_VET,
    };
    (too_low || !bars.is_empty()).then_some(Reason::StepNeedsVet { to, bars })
}
