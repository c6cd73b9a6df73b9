//! The trials that the model was tuned to, beside what it makes of them.

use super::eaten::{OutFor, part_eaten};
use super::published as p;
use crate::animal::Kind;
use crate::limits::Ends;
use crate::units::published::HOURS_PER_DAY;
use crate::units::{PartOfBody, Span};

/// A trial that the model was tuned to. It was tested on no others.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Trial {
    /// Ponies in the first week of short turnout.
    FirstWeek,
    /// The same ponies in the sixth week.
    SixthWeek,
    /// Horses over a working day.
    EightHours,
    /// Horses in the first half of it.
    FirstFourHours,
    /// Ponies out day and night all year.
    DayAndNight,
}

/// A trial: what was seen, and what the model makes of it.
#[derive(Clone, Debug, PartialEq)]
pub struct Tried {
    /// Which.
    pub trial: Trial,
    /// How the animals were out.
    pub out: OutFor,
    /// What was seen, the least and the most of the means that were told.
    pub seen: (PartOfBody, PartOfBody),
    /// Where that stands: the ids of its constants.
    pub seen_from: Vec<&'static str>,
    /// What the model makes of it: what is likely, with the ends that floors and ceilings are judged with.
    pub reckoned: Ends<PartOfBody>,
}

impl Tried {
    /// Whether more was seen than the most that ceilings are judged with.
    pub fn beyond(&self) -> bool {
        self.reckoned.most < self.seen.1
    }
}

impl Trial {
    /// All of them.
    pub const ALL: [Self; 5] = [
        Self::FirstWeek,
        Self::SixthWeek,
        Self::EightHours,
        Self::FirstFourHours,
        Self::DayAndNight,
    ];

    /// What was seen in it, and what the model makes of it.
    pub fn tried(self) -> Tried {
        let all_day = Span::hours(HOURS_PER_DAY);
        let used = Some(*p::ADAPTED_WEEKS);
        let new = Some(0.0);
        let (kind, time, weeks) = match self {
            Self::FirstWeek => (Kind::Pony, *p::TRIAL_SHORT, new),
            Self::SixthWeek => (Kind::Pony, *p::TRIAL_SHORT, used),
            Self::EightHours => (Kind::Horse, *p::TRIAL_DAY, new),
            Self::FirstFourHours => (Kind::Horse, *p::TRIAL_FIRST_PART, new),
            Self::DayAndNight => (Kind::Pony, all_day, used),
        };
        let (least, most) = match self {
            Self::FirstWeek => (p::SEEN_FIRST_WEEK, p::SEEN_FIRST_WEEK),
            Self::SixthWeek => (p::SEEN_SIXTH_WEEK, p::SEEN_SIXTH_WEEK),
            Self::EightHours => (p::SEEN_EIGHT_HOURS, p::SEEN_EIGHT_HOURS),
            Self::FirstFourHours => (p::SEEN_FIRST_FOUR, p::SEEN_FIRST_FOUR),
            Self::DayAndNight => (p::SEEN_ALL_DAY_LEAST, p::SEEN_ALL_DAY_MOST),
        };
        let out = OutFor {
            kind,
            time,
            weeks,
            muzzle: false,
            leaf: true,
        };
        let mut seen_from = vec![least.id];
        if most.id != least.id {
            seen_from.push(most.id);
        }
        Tried {
            trial: self,
            reckoned: part_eaten(&out),
            out,
            seen: (*least, *most),
            seen_from,
        }
    }
}
