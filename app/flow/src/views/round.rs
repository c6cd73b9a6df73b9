//! What is due in the yard, and where each job is done.

use crate::routes::Route;
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::paddock::{Chosen, Stands, paddock};
use crate::views::shed::Standing;
use tussock_core::animal::{AnimalId, GroupId, TubId};
use tussock_core::log::{Due, Kind, Record, Subject as About};
use tussock_core::round::{Job, JobKind, JobState, Key, Round, Subject, Summary, Visit, Waits};
use tussock_core::safety::Refusal;
use tussock_core::units::{Instant, LocalDate, Span, Zone};

/// How far back entries of the day's work are asked for: as far as the card of days away reaches, and a day.
const BACK_HOURS: i64 = 24 * 32;
/// The most things of a yard that one screen asks for.
const OF_A_YARD: u32 = 200;
/// The most entries or readings of a kind that one screen asks for.
const OF_A_MONTH: u32 = 3_000;

/// What the screens of the day's work ask the disk for.
pub fn needs(now: Instant) -> Vec<Range> {
    let from = (now - Span::hours(BACK_HOURS)).to_ms();
    let kind = |kind: &Kind, from, limit| Range::Kind {
        kind: kind.word().to_owned(),
        from,
        limit,
    };
    let standing = [
        Kind::Yard,
        Kind::Animal,
        Kind::Group,
        Kind::Lot,
        Kind::Food,
        Kind::Net,
        Kind::Tub,
        Kind::Feeding,
        Kind::Plan,
        Kind::VetWord,
        Kind::Paddock,
        Kind::Grazing,
        Kind::Ration,
        Kind::Visits,
    ];
    // What stands until it is looked at, scored or weighed anew, however long ago that was.
    let readings = [
        Kind::LookOver,
        Kind::Vitals,
        Kind::Appetite,
        Kind::WorkSession,
        Kind::Weight,
        Kind::Condition,
        Kind::Crest,
        Kind::NetTimed,
        Kind::Turnout,
        // Grass goes by a fortnight of nights, and by the notes of the year.
        Kind::Weather,
        Kind::SeasonNote,
    ];
    let entries = [
        Kind::NetFilled,
        Kind::NetHung,
        Kind::LeftOver,
        Kind::SoakStep,
        Kind::Job,
        Kind::DayRelaid,
        Kind::Sward,
    ];
    let mut ranges: Vec<Range> = standing.iter().map(|of| kind(of, 0, OF_A_YARD)).collect();
    ranges.extend(readings.iter().map(|of| kind(of, 0, OF_A_MONTH)));
    ranges.extend(entries.iter().map(|of| kind(of, from, OF_A_MONTH)));
    ranges
}

/// The day's work as it stands at an instant.
#[derive(Clone, Debug, PartialEq)]
pub struct Today {
    /// The instant.
    pub now: Instant,
    /// The local day.
    pub day: LocalDate,
    /// What the records say.
    pub due: Due,
    /// The jobs.
    pub round: Round,
}

impl Today {
    /// Each animal or group whose plan waits, by name, and why; it is fed all the same.
    pub fn waiting(&self) -> Vec<(Subject, String, Waits)> {
        let mut found: Vec<(Subject, String, Waits)> = Vec::new();
        for job in &self.round.jobs {
            if let Some(waits) = job.waits
                && job.kind != JobKind::BringIn
                && !found.iter().any(|(subject, _, _)| *subject == job.subject)
            {
                found.push((job.subject.clone(), job.name.clone(), waits));
            }
        }
        found
    }
}

/// The day's work at an instant.
pub fn today(shelf: &Shelf, now: Instant, zone: &impl Zone) -> Today {
    let records: Vec<&Record> = shelf.records().collect();
    let due = Due::of(&records, now, zone);
    let mut round = due.round(now, zone);
    // Nobody is sent out onto grass that is closed.
    if round.jobs.iter().any(|job| job.kind == JobKind::TurnOut) {
        let grass = paddock(shelf, now, zone, &Chosen::default());
        let open = |job: &Job| {
            let goes = grass.of(Some(job.subject.parts().1));
            goes.is_some_and(|goes| matches!(goes.stands, Stands::Open(_) | Stands::Opens(_)))
        };
        round
            .jobs
            .retain(|job| job.kind != JobKind::TurnOut || open(job));
    }
    Today {
        now,
        day: zone.to_local(now).date,
        due,
        round,
    }
}

impl Today {
    /// The jobs that are called for today, and those that come after midnight, each in the order of the round.
    pub fn parted(&self, zone: &impl Zone) -> [Vec<Job>; 2] {
        let comes =
            |job: &Job| job.state == JobState::Later && self.day < zone.to_local(job.due).date;
        let (after, today) = self.round.jobs.iter().cloned().partition(comes);
        [today, after]
    }

    /// How many jobs there are today; what comes after midnight is not counted.
    pub fn summary(&self, zone: &impl Zone) -> Summary {
        let [_, after] = self.parted(zone);
        let all = self.round.summary();
        Summary {
            later: all.later.saturating_sub(after.len()),
            ..all
        }
    }

    /// The first job that is late or due.
    pub fn first(&self) -> Option<&Job> {
        self.round
            .jobs
            .iter()
            .find(|job| job.state != JobState::Later)
    }

    /// The visit that "all as planned" answers: that of the first due job it may answer, when there are more than one.
    pub fn visit(&self) -> Option<Visit> {
        self.round
            .jobs
            .iter()
            .filter(|job| job.state != JobState::Later && job.kind.may_be_as_planned())
            .filter(|job| !waits_for_water(job))
            .find_map(|job| job.visit)
            .filter(|visit| 1 < self.as_planned(*visit).len())
    }

    /// The jobs that "all as planned" answers for a visit: all but the nets that were neither soaked nor left out.
    pub fn as_planned(&self, visit: Visit) -> Vec<&Job> {
        self.of_visit(visit)
            .filter(|job| !waits_for_water(job))
            .collect()
    }

    /// How many nets of a visit it leaves out for that.
    pub fn left_out(&self, visit: Visit) -> usize {
        self.of_visit(visit)
            .filter(|job| waits_for_water(job))
            .count()
    }

    fn of_visit(&self, visit: Visit) -> impl Iterator<Item = &Job> {
        let keys = self.round.as_planned(visit);
        keys.into_iter().filter_map(|key| self.job(key))
    }

    /// A job by its key.
    pub fn job(&self, key: &Key) -> Option<&Job> {
        self.round.jobs.iter().find(|job| job.key == *key)
    }
}

/// How a job's tag stands. Hay past its time is a stop.
pub fn standing(job: &Job) -> Standing {
    match (job.kind, job.state) {
        (_, JobState::Later) => Standing::Later,
        (JobKind::ThrowAway | JobKind::Stop | JobKind::LookAgain, _) => Standing::Stop,
        (_, JobState::Due) => Standing::Due,
        (_, JobState::Late { .. }) => Standing::Late,
    }
}

/// What a record of this subject is about.
pub fn about(subject: &Subject) -> About {
    match subject {
        Subject::Animal(id) => About::animal(id),
        Subject::Group(id) => About::group(id),
        Subject::Yard(id) => About::yard(id),
    }
}

/// Whether a net is to be soaked, lies in no soak, and nobody said that it is not soaked today. A soak is never taken for
/// granted: the sugar it was to take out is still there.
pub fn waits_for_water(job: &Job) -> bool {
    job.kind == JobKind::HangNet && job.soaked && job.soak.is_none()
}

/// Whether one tap can do a job: nothing has to be read or looked at, and what is to be written is known.
pub fn ticks(job: &Job) -> bool {
    match job.kind {
        JobKind::ThrowAway
        | JobKind::LiftOut
        | JobKind::DrainAndFeed
        | JobKind::FeedBalancer
        | JobKind::BringIn => true,
        JobKind::HangNet => job.lot.is_some() && !waits_for_water(job),
        JobKind::StartSoak => job.lot.is_some() && job.amount.is_some(),
        JobKind::Stop
        | JobKind::LookAgain
        | JobKind::LookOver
        | JobKind::Weigh
        | JobKind::Exercise
        | JobKind::TurnOut
        | JobKind::ReviewPlan
        | JobKind::VetWordExpires => false,
    }
}

/// Where a job is done, or seen.
pub fn route(job: &Job) -> Route {
    let animal = || AnimalId(job.subject.parts().1.to_owned());
    let whose = || match &job.subject {
        Subject::Animal(id) => Route::Horse(id.clone()),
        Subject::Group(id) => Route::Group(GroupId(id.0.clone())),
        Subject::Yard(_) => Route::Horses,
    };
    match job.kind {
        JobKind::ThrowAway | JobKind::LiftOut | JobKind::DrainAndFeed => job
            .soak
            .as_ref()
            .map_or(Route::Shed, |soak| Route::Tub(TubId(soak.0.clone()))),
        JobKind::TurnOut | JobKind::BringIn => Route::PaddockOf(animal()),
        JobKind::StartSoak => Route::Soaks,
        JobKind::HangNet if waits_for_water(job) => Route::Soaks,
        JobKind::HangNet => Route::Nets(animal()),
        JobKind::FeedBalancer | JobKind::ReviewPlan => match &job.subject {
            Subject::Animal(id) => Route::Plan(id.clone()),
            Subject::Group(_) | Subject::Yard(_) => whose(),
        },
        JobKind::Stop => match job.stops.first() {
            Some((Refusal::EpisodeWithoutWord | Refusal::LaminitisNow, _)) | None => whose(),
            Some(_) => Route::LookOver(animal()),
        },
        JobKind::LookOver | JobKind::LookAgain => Route::LookOver(animal()),
        JobKind::Weigh => Route::Weigh(animal()),
        JobKind::Exercise => Route::Work(animal()),
        JobKind::VetWordExpires => Route::VetWord(animal()),
    }
}
