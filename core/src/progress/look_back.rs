//! After an episode: what changed in the days before it.
//!
//! It lists and accuses nobody: what stands here came before the episode, and nothing says that it is the cause. What
//! nobody logs is named, so that a short list is not taken for a quiet month.

use super::published::LOOK_BACK_DAYS;
use crate::animal::{GroupId, LotId};
use crate::assess::{ConditionRange, Crest};
use crate::soak::NotSoaked;
use crate::units::{BodyMass, LocalDate, PartOfBody, Span};
use chrono::Days;

/// The weather of a day that changes grass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum GrassWeather {
    /// A night at 5 degrees or under.
    ColdNight,
    /// Hard frost.
    HardFrost,
    /// A dry spell.
    DrySpell,
}

/// Something that changed.
#[derive(Clone, Debug, PartialEq)]
pub enum Changed {
    /// A lot was opened.
    LotOpened {
        /// Which.
        lot: LotId,
        /// Its name.
        name: String,
        /// Whether a laboratory tested it.
        tested: bool,
    },
    /// A food was written down for the first time.
    NewFood {
        /// Its name.
        name: String,
    },
    /// How it is fed was said anew.
    FeedingSaid,
    /// A plan was issued.
    PlanIssued {
        /// The level before; `None` for its first plan.
        before: Option<PartOfBody>,
        /// The level.
        level: PartOfBody,
    },
    /// Less or more was offered than planned.
    OffPlan {
        /// On how many days.
        days: u32,
        /// The largest difference, as a part of the plan; over 0 for more.
        most: f64,
    },
    /// Hay was to be soaked and was not.
    NotSoaked {
        /// How many nets.
        nets: u32,
        /// Why, the last time.
        why: NotSoaked,
    },
    /// It joined a group.
    JoinedGroup {
        /// Which.
        group: GroupId,
        /// Its name.
        name: String,
    },
    /// It left a group.
    LeftGroup {
        /// Which.
        group: GroupId,
        /// Its name.
        name: String,
    },
    /// Something else was decided about its grass.
    GrassDecided {
        /// How long a day from then on; nothing when it no longer goes out.
        time: Span,
        /// With a muzzle.
        muzzle: bool,
    },
    /// The first turnout after four weeks and more without one that was logged.
    FirstTurnout {
        /// The day of the one before; `None` when none is logged.
        last: Option<LocalDate>,
    },
    /// It was at grass for longer, a week beside the week before it.
    LongerAtGrass {
        /// The mean of a day in the week before.
        before: Span,
        /// The mean of a day in the week.
        after: Span,
    },
    /// It went out without the muzzle that was decided on.
    MuzzleLeftOff {
        /// How often.
        times: u32,
    },
    /// Weather that changes grass.
    Weather {
        /// Which.
        weather: GrassWeather,
        /// On how many days.
        days: u32,
    },
    /// Its weight changed by more than both readings are out.
    Weight {
        /// The first reading of the days.
        from: BodyMass,
        /// The last.
        to: BodyMass,
    },
    /// Its condition changed.
    Condition {
        /// The score before.
        from: ConditionRange,
        /// The score.
        to: ConditionRange,
    },
    /// Its crest grew.
    CrestUp {
        /// The score before.
        from: Crest,
        /// The score.
        to: Crest,
    },
    /// It worked.
    Worked {
        /// How often.
        sessions: u32,
    },
    /// It was trimmed or shod.
    TrimmedOrShod,
    /// A corticosteroid.
    Corticosteroid,
    /// Surgery or a long journey.
    SurgeryOrTransport,
    /// It got at grain.
    GotAtGrain,
    /// It escaped onto lush grass.
    EscapedOntoGrass,
    /// A look-over saw a warm hoof or that it lay down more.
    EarlySign,
    /// It left its forage.
    OffFeed,
    /// A vet's word ended.
    VetsWordEnded,
}

/// Something that changed, with its day.
#[derive(Clone, Debug, PartialEq)]
pub struct Happened {
    /// The day; of several the first.
    pub on: LocalDate,
    /// What.
    pub what: Changed,
}

/// What nobody logged.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum NotLogged {
    /// Grass: no turnout, and nothing was decided of it.
    Grass,
    /// Whether it went out, or for how long, on so many days.
    GrassOn {
        /// Days nobody answered for.
        days: u32,
    },
    /// Work.
    Work,
    /// The weather, on so many days.
    Weather {
        /// Days without a word.
        days: u32,
    },
    /// What was eaten, on so many days.
    Eaten {
        /// Days nobody answered for, in whole or in part.
        days: u32,
    },
    /// It was not weighed twice.
    Weight,
}

/// What changed before an episode.
#[derive(Clone, Debug, PartialEq)]
pub struct LookBack {
    /// The first day that is looked at.
    pub from: LocalDate,
    /// The day the episode began.
    pub to: LocalDate,
    /// What changed, the latest first.
    pub happened: Vec<Happened>,
    /// What nobody logged.
    pub not_logged: Vec<NotLogged>,
}

impl LookBack {
    /// The days before an episode that began on a day: that day and the 30 before it.
    pub fn days(began: LocalDate) -> (LocalDate, LocalDate) {
        let from = began
            .checked_sub_days(Days::new(*LOOK_BACK_DAYS))
            .unwrap_or(LocalDate::MIN);
        (from, began)
    }
}

/// Puts together what changed before an episode that began on a day: what lies outside the days is left out, the latest
/// comes first.
pub fn look_back(
    began: LocalDate,
    mut happened: Vec<Happened>,
    not_logged: Vec<NotLogged>,
) -> LookBack {
    let (from, to) = LookBack::days(began);
    happened.retain(|one| (from..=to).contains(&one.on));
    happened.sort_by_key(|one| std::cmp::Reverse(one.on));
    LookBack {
        from,
        to,
        happened,
        not_logged,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> LocalDate {
        text.parse().unwrap()
    }

    #[test]
    fn thirty_days_before_an_episode_are_looked_at_and_its_own_day() {
        let on = |text| Happened {
            on: day(text),
            what: Changed::TrimmedOrShod,
        };
        let found = look_back(
            day("2026-05-31"),
            vec![
                on("2026-04-30"),
                on("2026-05-01"),
                on("2026-05-31"),
                on("2026-06-01"),
            ],
            Vec::new(),
        );
        let days: Vec<LocalDate> = found.happened.iter().map(|one| one.on).collect();
        assert_eq!(days, [day("2026-05-31"), day("2026-05-01")]);
    }
}
