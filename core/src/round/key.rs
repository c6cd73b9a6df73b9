//! What a job is called, from one look to the next and on every device.

use super::error::RoundError;
use crate::animal::{AnimalId, GroupId, YardId};
use crate::sources::RecordId;
use crate::units::LocalDate;
use std::fmt;

/// What a job is for.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Subject {
    /// An animal.
    Animal(AnimalId),
    /// A group fed together.
    Group(GroupId),
    /// A whole yard.
    Yard(YardId),
}

/// The kinds of job, in the order of a day's work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum JobKind {
    /// What stops the animal now: the vet is rung, grass and work stop. It is never ticked.
    Stop,
    /// Look again after a warm hoof or lying more.
    LookAgain,
    /// Throw away what is left of soaked hay.
    ThrowAway,
    /// Lift hay out of the water.
    LiftOut,
    /// Drain lifted hay and feed it.
    DrainAndFeed,
    /// Bring in from grass.
    BringIn,
    /// Turn out to grass.
    TurnOut,
    /// Put the hay of a visit into the water.
    StartSoak,
    /// Hang a net.
    HangNet,
    /// Feed a share of the balancer.
    FeedBalancer,
    /// Look the animal over for signs of laminitis.
    LookOver,
    /// Weigh or tape it.
    Weigh,
    /// Work it.
    Exercise,
    /// Review the plan.
    ReviewPlan,
    /// The last day of a vet's word.
    VetWordExpires,
}

/// The kinds with the word that stands in a key.
const WORDS: &[(JobKind, &str)] = &[
    (JobKind::Stop, "stop"),
    (JobKind::LookAgain, "look_again"),
    (JobKind::ThrowAway, "throw_away"),
    (JobKind::LiftOut, "lift_out"),
    (JobKind::DrainAndFeed, "drain_and_feed"),
    (JobKind::BringIn, "bring_in"),
    (JobKind::TurnOut, "turn_out"),
    (JobKind::StartSoak, "start_soak"),
    (JobKind::HangNet, "hang_net"),
    (JobKind::FeedBalancer, "feed_balancer"),
    (JobKind::LookOver, "look_over"),
    (JobKind::Weigh, "weigh"),
    (JobKind::Exercise, "exercise"),
    (JobKind::ReviewPlan, "review_plan"),
    (JobKind::VetWordExpires, "vet_word_expires"),
];

/// The word that stands for days away in a key.
const AWAY: &str = "away";

impl JobKind {
    /// Whether it is a step of a soak.
    pub const fn is_of_a_tub(self) -> bool {
        matches!(self, Self::ThrowAway | Self::LiftOut | Self::DrainAndFeed)
    }

    /// Whether its key names a day.
    const fn is_of_a_day(self) -> bool {
        !self.is_of_a_tub() && !matches!(self, Self::BringIn)
    }

    /// Whether it belongs to a visit of the daily plan.
    pub const fn is_of_a_visit(self) -> bool {
        matches!(self, Self::StartSoak | Self::HangNet | Self::FeedBalancer)
    }

    /// Whether an answer never ends it: it stands as long as what it is about does.
    pub const fn stands(self) -> bool {
        matches!(
            self,
            Self::Stop | Self::LookAgain | Self::BringIn | Self::VetWordExpires
        )
    }

    /// Whether "all as planned" may answer it. A soak may not be assumed, for its clock would be unknown; nor may
    /// anything that somebody has to look at.
    pub const fn may_be_as_planned(self) -> bool {
        matches!(self, Self::HangNet | Self::FeedBalancer)
    }

    fn word(self) -> &'static str {
        WORDS
            .iter()
            .find(|(kind, _)| *kind == self)
            .map_or("", |(_, word)| word)
    }
}

/// A place in the day of a plan: it stays when the times of the visits move.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct Slot {
    /// The visit, counted from 1 in the order of the day; 0 for a job of the whole day.
    pub visit: u32,
    /// Which of its kind at that visit, counted from 1; 0 for one of its kind.
    pub nth: u32,
}

/// The key of a job.
///
/// Its text is `hang_net/animal:moss/2026-05-05/1.2`, `lift_out/<soak>`, `bring_in/<turnout>` or `away/2026-05-01/2026-05-03`.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Key {
    /// A job of a day.
    Day {
        /// Which kind; none of a tub's, and not bringing in.
        kind: JobKind,
        /// For whom.
        subject: Subject,
        /// The local day it was planned for.
        day: LocalDate,
        /// Where in that day.
        slot: Slot,
    },
    /// A step of a soak.
    Tub {
        /// Which step; one of a tub's.
        kind: JobKind,
        /// The soak.
        soak: RecordId,
    },
    /// Bringing in from grass.
    Out {
        /// The turnout: the record that says that it went out.
        turnout: RecordId,
    },
    /// Days away, both ends included.
    Away {
        /// The first day.
        from: LocalDate,
        /// The last day.
        to: LocalDate,
    },
}

impl Key {
    /// Its kind; `None` for days away.
    pub const fn kind(&self) -> Option<JobKind> {
        match self {
            Self::Day { kind, .. } | Self::Tub { kind, .. } => Some(*kind),
            Self::Out { .. } => Some(JobKind::BringIn),
            Self::Away { .. } => None,
        }
    }

    /// From its text.
    ///
    /// # Errors
    /// The text is no key.
    pub fn from_text(text: &str) -> Result<Self, RoundError> {
        Self::parsed(text)
            .filter(|key| key.to_string() == text)
            .ok_or_else(|| RoundError::NotAKey {
                text: text.to_owned(),
            })
    }

    fn parsed(text: &str) -> Option<Self> {
        let parts: Vec<&str> = text.split('/').collect();
        let kind = |word: &str| {
            let found = WORDS.iter().find(|(_, other)| *other == word)?;
            Some(found.0)
        };
        match parts.as_slice() {
            [word, subject, day, slot] => {
                let (visit, nth) = slot.split_once('.')?;
                Some(Self::Day {
                    kind: kind(word).filter(|kind| kind.is_of_a_day())?,
                    subject: Subject::parsed(subject)?,
                    day: day.parse().ok()?,
                    slot: Slot {
                        visit: visit.parse().ok()?,
                        nth: nth.parse().ok()?,
                    },
                })
            }
            [word, from, to] if *word == AWAY => Some(Self::Away {
                from: from.parse().ok()?,
                to: to.parse().ok()?,
            }),
            [word, turnout] if kind(word) == Some(JobKind::BringIn) && !turnout.is_empty() => {
                Some(Self::Out {
                    turnout: RecordId((*turnout).to_owned()),
                })
            }
            [word, soak] if !soak.is_empty() => Some(Self::Tub {
                kind: kind(word).filter(|kind| kind.is_of_a_tub())?,
                soak: RecordId((*soak).to_owned()),
            }),
            _ => None,
        }
    }
}

impl fmt::Display for Key {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Day {
                kind,
                subject,
                day,
                slot,
            } => write!(
                f,
                "{}/{subject}/{day}/{}.{}",
                kind.word(),
                slot.visit,
                slot.nth
            ),
            Self::Tub { kind, soak } => write!(f, "{}/{}", kind.word(), soak.0),
            Self::Out { turnout } => write!(f, "{}/{}", JobKind::BringIn.word(), turnout.0),
            Self::Away { from, to } => write!(f, "{AWAY}/{from}/{to}"),
        }
    }
}

impl Subject {
    /// The kind and the id, as a log names them.
    pub fn parts(&self) -> (&'static str, &str) {
        match self {
            Self::Animal(id) => ("animal", id.as_str()),
            Self::Group(id) => ("group", id.as_str()),
            Self::Yard(id) => ("yard", id.as_str()),
        }
    }

    fn parsed(text: &str) -> Option<Self> {
        let (kind, id) = text.split_once(':')?;
        let id = id.to_owned();
        match kind {
            _ if id.is_empty() => None,
            "animal" => Some(Self::Animal(AnimalId(id))),
            "group" => Some(Self::Group(GroupId(id))),
            "yard" => Some(Self::Yard(YardId(id))),
            _ => None,
        }
    }
}

impl fmt::Display for Subject {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (kind, id) = self.parts();
        write!(f, "{kind}:{id}")
    }
}
