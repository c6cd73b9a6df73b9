//! What a round is made from.

use super::grass::{OpenTurnout, TurnoutPlanned};
use super::job::Waits;
use super::key::{Key, Subject};
use crate::animal::{AnimalId, FoodId, GroupId, LotId, NetId, TubId, VetScope};
use crate::plan::LookAgain;
use crate::safety::{Refusal, VetUrgency};
use crate::soak::{Air, NotSoaked, Recipe, SoakTimes};
use crate::sources::RecordId;
use crate::units::{AsFed, Instant, LocalDate, LocalTime, Zone};
use crate::work::{Session, Week};
use chrono::Datelike;

/// A net of a plan's day.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedNet {
    /// The visit at which it is hung.
    pub visit: LocalTime,
    /// The lot in it.
    pub lot: LotId,
    /// The hay in it, before soaking and without the net.
    pub hay: AsFed,
    /// Whether it is soaked.
    pub soaked: bool,
    /// Which net, when the plan says it.
    pub net: Option<NetId>,
    /// What was taken off its hay on this day, for it was at grass; `hay` is without it.
    pub less_for_grass: Option<AsFed>,
}

/// Bought feed of a plan's day.
#[derive(Clone, Debug, PartialEq)]
pub struct PlannedFeed {
    /// Which; `None` for a typical balancer.
    pub food: Option<FoodId>,
    /// How much a day.
    pub a_day: AsFed,
    /// In how many feeds; `None` when nobody knows what its label does not say, and then it is one job.
    pub feeds: Option<u32>,
}

/// A plan as it was issued.
#[derive(Clone, Debug, PartialEq)]
pub struct IssuedPlan {
    /// For whom.
    pub subject: Subject,
    /// The name of that animal or group.
    pub name: String,
    /// When it was issued. Of plans of one instant the later in the list is the later one.
    pub issued: Instant,
    /// Its first day.
    pub from: LocalDate,
    /// The day of its review.
    pub review: LocalDate,
    /// When somebody comes, in any order.
    pub visits: Vec<LocalTime>,
    /// The nets of a day.
    pub nets: Vec<PlannedNet>,
    /// Water and time of its soaked nets; `None` when nothing is soaked or nobody said how, and then the usual soak of
    /// a winter tap stands in.
    pub recipe: Option<Recipe>,
    /// Bought feed of a day.
    pub feeds: Vec<PlannedFeed>,
    /// The vet's word it was made under has ended: its hay is back at what holds without it (practice rule 3).
    pub word_ended: bool,
    /// Days that were laid out anew, the one that was said last behind.
    pub anew: Vec<DayAnew>,
    /// It is a member's part of its group's plan: what it gets beside the hay, which is the group's.
    pub part: bool,
    /// Other animals eat of its hay now than those it was made for.
    pub changed: bool,
    /// The days on which it feeds nobody, for another plan does, or nobody is there to be fed.
    pub rests: Vec<Rests>,
}

/// Days on which a plan feeds nobody, both ends in them; without an end they go on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Rests {
    /// The first day.
    pub from: LocalDate,
    /// The last day.
    pub to: Option<LocalDate>,
}

/// A day of a plan that was laid out anew.
#[derive(Clone, Debug, PartialEq)]
pub struct DayAnew {
    /// The day.
    pub day: LocalDate,
    /// Its nets: those of the plan in its order, then those at visits at which the plan hangs nothing. One that does not
    /// hang has no hay.
    pub nets: Vec<PlannedNet>,
}

impl IssuedPlan {
    /// Whether it feeds nobody on a day.
    pub fn rests_on(&self, day: LocalDate) -> bool {
        self.rests
            .iter()
            .any(|rests| rests.from <= day && rests.to.is_none_or(|last| day <= last))
    }

    /// Whether it has begun on a day and feeds somebody on it.
    pub fn feeds_on(&self, day: LocalDate) -> bool {
        self.from <= day && !self.rests_on(day)
    }

    /// The nets of a day: the plan's, or those of that day where it was laid out anew.
    pub fn nets_on(&self, day: LocalDate) -> &[PlannedNet] {
        self.anew
            .iter()
            .rfind(|anew| anew.day == day)
            .map_or(&self.nets, |anew| &anew.nets)
    }
}

/// An animal that is looked over and weighed.
#[derive(Clone, Debug, PartialEq)]
pub struct Watched {
    /// The animal.
    pub animal: AnimalId,
    /// Its name.
    pub name: String,
    /// The first day of the plan that watches it.
    pub from: LocalDate,
    /// Days between look-overs, at least 1.
    pub look_over_days: i64,
    /// When it was last looked over whole.
    pub looked_over: Option<LocalDate>,
    /// When it was last weighed.
    pub weighed: Option<LocalDate>,
    /// It was weighed today, and what came out asks to measure again now.
    pub weigh_again: bool,
    /// When somebody first comes on a day.
    pub at: LocalTime,
    /// Its work; `None` when its plan asks for none, or it may not work now.
    pub work: Option<WatchedWork>,
}

/// The work of an animal in the present week.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct WatchedWork {
    /// Sessions that its plan asks of a week.
    pub a_week: u32,
    /// Sessions of this week, from Monday, today included.
    pub done: u32,
    /// Whether one of them was today.
    pub today: bool,
}

/// Days of a week.
// numeric: the calendar's
const WEEK: u32 = 7;

impl WatchedWork {
    /// The work of the week of a day, from the sessions.
    pub fn of(a_week: u32, sessions: &[Session], today: LocalDate) -> Self {
        Self {
            a_week,
            done: Week::of(sessions, today).sessions,
            today: sessions.iter().any(|session| session.day == today),
        }
    }

    /// Whether a session is due on a day of that week. The sessions are spread over it: one is due as long as what is left
    /// of them is no less than their share of the days that are left, so that a missed day is made up for and a rest
    /// follows where there is room.
    pub fn is_due(self, today: LocalDate) -> bool {
        let left = self.a_week.saturating_sub(self.done);
        let days = WEEK.saturating_sub(today.weekday().num_days_from_monday());
        let behind = self.a_week.saturating_mul(days) <= left.saturating_mul(WEEK);
        !self.today && 0 < left && behind
    }
}

/// A vet's word whose end matters: no later word and no later plan has taken its place.
#[derive(Clone, Debug, PartialEq)]
pub struct HeldWord {
    /// For which animal.
    pub animal: AnimalId,
    /// Its name.
    pub name: String,
    /// About which matter.
    pub scope: VetScope,
    /// The last day on which it holds.
    pub expires: LocalDate,
    /// When somebody first comes on a day.
    pub at: LocalTime,
}

/// An animal that something stops, whether a plan feeds it or not.
#[derive(Clone, Debug, PartialEq)]
pub struct Stopped {
    /// The animal.
    pub animal: AnimalId,
    /// Its name.
    pub name: String,
    /// The groups it is in today: what feeds them feeds it.
    pub groups: Vec<GroupId>,
    /// The groups it is in today, fed with them or not: it goes out with them.
    pub out_with: Vec<GroupId>,
    /// What stops it and how soon the vet is rung, the most urgent first.
    pub stops: Vec<(Refusal, VetUrgency)>,
    /// The looks again that are still to be made.
    pub again: LookAgain,
    /// Whether a warm hoof or lying more still stands.
    pub sign: bool,
}

impl Stopped {
    /// Whether a subject's plan feeds it.
    pub(super) fn is_fed_as(&self, subject: &Subject) -> bool {
        match subject {
            Subject::Animal(id) => *id == self.animal,
            Subject::Group(id) => self.groups.contains(id),
            Subject::Yard(_) => false,
        }
    }

    /// Whether it goes out to grass as a subject does.
    pub(super) fn goes_out_as(&self, subject: &Subject) -> bool {
        match subject {
            Subject::Animal(id) => *id == self.animal,
            Subject::Group(id) => self.out_with.contains(id),
            Subject::Yard(_) => false,
        }
    }

    /// Why the plan that feeds it waits.
    pub(super) fn waits(&self) -> Option<Waits> {
        if self.stops.is_empty() {
            (self.sign || self.again.is_open()).then_some(Waits::Look)
        } else {
            Some(Waits::Vet)
        }
    }
}

/// A soak that was started.
#[derive(Clone, Debug, PartialEq)]
pub struct OpenSoak {
    /// Its id: that of the record that started it.
    pub id: RecordId,
    /// The tub, when tubs are told apart.
    pub tub: Option<TubId>,
    /// What the tub is called.
    pub tub_name: Option<String>,
    /// For whom it is.
    pub subject: Subject,
    /// The name of that animal, group or yard.
    pub name: String,
    /// The lot in it.
    pub lot: LotId,
    /// Water and time.
    pub recipe: Recipe,
    /// What was stored of it.
    pub times: SoakTimes,
    /// The warmest air since it was first wet.
    pub air: Air,
    /// The hay in it, dry; `None` when nobody knows.
    pub hay: Option<AsFed>,
    /// The job that its start did: which nets of which visit it is for.
    pub started_by: Option<Key>,
    /// The jobs of hanging it is for; empty for all nets of that visit.
    pub hangs: Vec<Key>,
}

impl OpenSoak {
    /// Whether another soak went into the same tub at the same moment, in the same water for as long.
    pub fn is_beside(&self, other: &Self) -> bool {
        self.id != other.id
            && self.tub.is_some()
            && self.tub == other.tub
            && self.times.wetted == other.times.wetted
            && self.recipe == other.recipe
    }

    /// Whether the net of a job of hanging lies in it; `start` is the job of soaking the hay of its visit.
    pub(super) fn holds(&self, start: &Key, hang: &Key) -> bool {
        if self.hangs.is_empty() {
            self.started_by.as_ref() == Some(start)
        } else {
            self.hangs.contains(hang)
        }
    }
}

/// The hay of a visit that is not soaked: somebody said so, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DryVisit {
    /// The record that says so.
    pub record: RecordId,
    /// The job of soaking the hay of that visit.
    pub start: Key,
    /// Why.
    pub why: NotSoaked,
}

/// An answer to a job: an entry that carries its key.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Answered {
    /// When.
    pub at: Instant,
    /// Which job.
    pub key: Key,
}

/// Everything a round is made from.
#[derive(Clone, Copy, Debug)]
pub struct RoundFor<'a, Z> {
    /// Now.
    pub now: Instant,
    /// The zone of the yard.
    pub zone: &'a Z,
    /// The plans, of every subject, that hold or held in the last days.
    pub plans: &'a [IssuedPlan],
    /// The animals that are looked over and weighed.
    pub watched: &'a [Watched],
    /// Vets' words whose end matters.
    pub words: &'a [HeldWord],
    /// The animals that something stops.
    pub stopped: &'a [Stopped],
    /// The soaks; those that are over may be among them.
    pub soaks: &'a [OpenSoak],
    /// The visits whose hay is not soaked, the one that was said last behind.
    pub dry: &'a [DryVisit],
    /// Those that go out to grass.
    pub turnouts: &'a [TurnoutPlanned],
    /// Those that are out.
    pub out: &'a [OpenTurnout],
    /// The answers, in any order.
    pub answered: &'a [Answered],
}

impl<Z: Zone> RoundFor<'_, Z> {
    /// The local day.
    pub fn today(&self) -> LocalDate {
        self.zone.to_local(self.now).date
    }
}
