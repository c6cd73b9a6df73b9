//! What stands in the way of a restriction.

use super::allowance::AllowanceFor;
use super::published::{
    CONDITION_APART, CONDITION_FAT, DAYS_AT_START, GROWN, SMALL_PONY_CM, TAPE_READINGS,
};
use super::vet_list::{VetListReason, days_since, vet_list};
use crate::animal::{Answer, Appetite, BodyType, Goal, Kind, Phase, State};
use crate::units::{Length, LocalDate};

/// A condition score on a day.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ConditionScore {
    /// The day.
    pub on: LocalDate,
    /// The score, from 1 to 9.
    pub score: f64,
}

/// One thing that stands in the way of a restriction. The level then stays at the starting level.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RestrictionBar {
    /// Nobody wants it to lose weight.
    GoalIsNotToLose {
        /// What is wanted.
        goal: Goal,
    },
    /// It needs weight.
    NeedsWeight,
    /// It is new: first its time at the starting level.
    StillNew,
    /// It is not grown.
    NotAdult {
        /// What its body is busy with.
        state: State,
        /// Whole years, when known.
        age: Option<i32>,
    },
    /// Its age is not known.
    AgeNotKnown,
    /// Condition of 7 or more was not scored twice, two weeks apart.
    ConditionNotSeenTwice {
        /// The last score.
        last: Option<ConditionScore>,
        /// Days between the first and the last of the scores that count; `None` when none counts.
        days_apart: Option<i64>,
    },
    /// It was never weighed.
    NotWeighed,
    /// Taped once, and not on a scale.
    TapeOnlyOnce,
    /// Too small for a tape: a scale weight is needed.
    SmallPonyNeedsScale {
        /// Its height, when known.
        height: Option<Length>,
    },
    /// A pony whose height nobody measured and that was not on a scale.
    HeightNotKnown,
    /// It is not eating, or nobody said.
    NotEating {
        /// What is known.
        appetite: Appetite,
    },
    /// The look-over found something, or nobody looked.
    LookOverNotClean {
        /// Whether it was clean.
        clean: Answer,
    },
    /// It is on the vet's list and no vet's word holds.
    OnVetList(VetListReason),
    /// Not long enough at the starting level, really fed.
    NotLongEnoughAtStart {
        /// Days really fed.
        days: i64,
        /// Days needed.
        needed: i64,
    },
}

/// Everything that stands in the way of a restriction on a day; `vets_word` is whether a vet's word on the lowest level
/// holds. It opens the vet's list; it does not stand in for weighing, scoring, looking over or eating.
pub(super) fn bars(of: &AllowanceFor<'_>, vets_word: bool) -> Vec<RestrictionBar> {
    let animal = of.animal;
    let mut bars = Vec::new();
    if animal.phase == Phase::NeedsWeight || animal.goal == Goal::Gain {
        bars.push(RestrictionBar::NeedsWeight);
    } else if animal.goal == Goal::Hold && of.is_step_down() {
        bars.push(RestrictionBar::GoalIsNotToLose { goal: animal.goal });
    }
    if animal.phase == Phase::New {
        bars.push(RestrictionBar::StillNew);
    }
    let age = animal.born.map(|born| born.age_on(of.day));
    match age {
        _ if animal.state == State::Growing && !vets_word => bars.push(RestrictionBar::NotAdult {
            state: animal.state,
            age,
        }),
        Some(years) if years < *GROWN && !vets_word => bars.push(RestrictionBar::NotAdult {
            state: animal.state,
            age,
        }),
        None => bars.push(RestrictionBar::AgeNotKnown),
        Some(_) => {}
    }
    if let Some(bar) = condition_bar(of) {
        bars.push(bar);
    }
    if let Some(bar) = weighing_bar(of) {
        bars.push(bar);
    }
    if animal.health.appetite != Appetite::Eating {
        bars.push(RestrictionBar::NotEating {
            appetite: animal.health.appetite,
        });
    }
    if of.look_over_clean != Answer::Yes {
        bars.push(RestrictionBar::LookOverNotClean {
            clean: of.look_over_clean,
        });
    }
    if !vets_word {
        bars.extend(
            vet_list(animal, of.day, of.last_condition())
                .into_iter()
                .map(RestrictionBar::OnVetList),
        );
    }
    let days = i64::from(of.days_at_start);
    if days < *DAYS_AT_START {
        bars.push(RestrictionBar::NotLongEnoughAtStart {
            days,
            needed: *DAYS_AT_START,
        });
    }
    bars
}

/// Condition 7 or more, twice, two weeks apart. To begin a restriction the run of such scores must reach to the last one;
/// to go on with one, such a run at any time is enough, for the aim is that the score falls.
fn condition_bar(of: &AllowanceFor<'_>) -> Option<RestrictionBar> {
    let mut scores: Vec<ConditionScore> = of
        .condition
        .iter()
        .copied()
        .filter(|score| score.on <= of.day)
        .collect();
    scores.sort_by_key(|score| score.on);
    let last = scores.last().copied();
    let mut apart: Option<i64> = None;
    let mut run_from: Option<LocalDate> = None;
    for score in scores {
        if score.score >= *CONDITION_FAT {
            let from = *run_from.get_or_insert(score.on);
            let days = days_since(from, score.on);
            apart = Some(apart.map_or(days, |longest| longest.max(days)));
        } else {
            run_from = None;
            if !of.restricted_now() {
                apart = None;
            }
        }
    }
    match apart {
        Some(days) if *CONDITION_APART <= days => None,
        days_apart => Some(RestrictionBar::ConditionNotSeenTwice { last, days_apart }),
    }
}

/// Weighed on a scale, or taped twice; small ponies on a scale.
fn weighing_bar(of: &AllowanceFor<'_>) -> Option<RestrictionBar> {
    let weighed = of.weighings;
    if weighed.on_scale > 0 {
        return None;
    }
    let animal = of.animal;
    let pony = matches!(animal.kind, Kind::Pony | Kind::Miniature);
    let always_small = animal.kind == Kind::Miniature
        || matches!(
            animal.body_type,
            Some(BodyType::Shetland | BodyType::Miniature)
        );
    match animal.height {
        // A height that is not a number counts as small.
        Some(height) if pony && (height.to_cm() < *SMALL_PONY_CM || !height.is_finite()) => {
            return Some(RestrictionBar::SmallPonyNeedsScale {
                height: animal.height,
            });
        }
        None if always_small => {
            return Some(RestrictionBar::SmallPonyNeedsScale { height: None });
        }
        None if pony => return Some(RestrictionBar::HeightNotKnown),
        _ => {}
    }
    if weighed.by_tape == 0 {
        Some(RestrictionBar::NotWeighed)
    } else if weighed.by_tape < *TAPE_READINGS {
        Some(RestrictionBar::TapeOnlyOnce)
    } else {
        None
    }
}
