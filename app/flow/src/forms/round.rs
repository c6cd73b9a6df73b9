//! What a tick on the round writes.

use crate::acts::{Act, New};
use crate::forms::soaks::{start, start_part};
use crate::forms::tub::{InTub, Wrong, free_tub, hung, lift_with, nets_of, step};
use crate::shelf::Shelf;
use crate::views::changeover::stands_for;
use crate::views::filled::{Filling, stock, take};
use crate::views::round::{Today, about, ticks};
use crate::views::shed::weather;
use crate::views::soaks::{LoadSeen, soaks};
use crate::views::tub::yard_tubs;
use tussock_core::log::bodies::base::JobKey;
use tussock_core::log::bodies::{JobAnswer, JobV1, SoakStep, TurnoutV1};
use tussock_core::log::{Body, Known, LogError, Subject};
use tussock_core::round::{DaysAway, Job, JobKind, Key, OpenSoak, Visit};
use tussock_core::sources::RecordId;
use tussock_core::units::AsFed;

/// What ticking needs beside the job.
#[derive(Clone, Copy)]
pub struct Ticking<'a> {
    /// The records.
    pub shelf: &'a Shelf,
    /// The day's work.
    pub today: &'a Today,
    /// The yard.
    pub yard: &'a Subject,
    /// What the nth tub is called.
    pub tub_name: &'a dyn Fn(usize) -> String,
}

/// Why a tick was not taken.
#[derive(Clone, Debug, PartialEq)]
pub enum Refused {
    /// It has to be done on its own screen.
    OwnScreen,
    /// The soak cannot be started so.
    Soak(Vec<Wrong>),
    /// It cannot be stored.
    Log(LogError),
}

impl From<LogError> for Refused {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

impl Ticking<'_> {
    /// The act of a tick: the entry that belongs to the job, with its key.
    ///
    /// # Errors
    /// A job of its own screen, a soak that the air does not allow, ids that are too long.
    pub fn tick(&self, job: &Job, id: &mut dyn FnMut() -> String) -> Result<Act, Refused> {
        if !ticks(job) {
            return Err(Refused::OwnScreen);
        }
        match job.kind {
            JobKind::HangNet => Ok(self.hang(job, Known::Seen, id)?),
            JobKind::StartSoak => self.start(job, id),
            JobKind::LiftOut | JobKind::DrainAndFeed | JobKind::ThrowAway => {
                self.of_soak(job, id).ok_or(Refused::OwnScreen)?
            }
            JobKind::BringIn => self.bring_in(job),
            JobKind::Stop | JobKind::LookAgain | JobKind::TurnOut | JobKind::VetWordExpires => {
                Err(Refused::OwnScreen)
            }
            JobKind::FeedBalancer
            | JobKind::LookOver
            | JobKind::Weigh
            | JobKind::Exercise
            | JobKind::ReviewPlan => Ok(answer(job, JobAnswer::Done, Known::Seen, &id())?),
        }
    }

    /// It came in now: that is a change of its turnout.
    fn bring_in(&self, job: &Job) -> Result<Act, Refused> {
        let Key::Out { turnout } = &job.key else {
            return Err(Refused::OwnScreen);
        };
        let record = self.shelf.get(&turnout.0).filter(|record| !record.gone);
        let Ok(Body::Turnout(body)) = Body::read(record.ok_or(Refused::OwnScreen)?) else {
            return Err(Refused::OwnScreen);
        };
        Ok(Act::Change {
            id: turnout.clone(),
            body: Body::Turnout(TurnoutV1 {
                came_in: Some(self.today.now),
                ..body
            }),
            at: None,
        })
    }

    fn soak(&self, job: &Job) -> Option<&OpenSoak> {
        let id = job.soak.as_ref()?;
        self.today.due.soaks.iter().find(|soak| soak.id == *id)
    }

    fn of_soak(&self, job: &Job, id: &mut dyn FnMut() -> String) -> Option<Result<Act, Refused>> {
        let open = self.soak(job)?;
        let soak = open.id.clone();
        let happened = match job.kind {
            JobKind::LiftOut => SoakStep::Lifted { soak },
            JobKind::DrainAndFeed => SoakStep::Fed { soak },
            JobKind::ThrowAway => SoakStep::ThrownAway { soak },
            _ => return None,
        };
        let own = step(open, happened, Some(job.kind), Known::Seen, &id());
        if job.kind != JobKind::LiftOut {
            return Some(own.map_err(Refused::Log));
        }
        Some(lift_with(open, self.today, own, id).map_err(Refused::Log))
    }

    /// A net that is hung takes the filling that was made for it, of its lot or of the one that its lot stands in for.
    /// The last net out of a soak is what feeds it.
    fn hang(
        &self,
        job: &Job,
        known: Known,
        id: &mut dyn FnMut() -> String,
    ) -> Result<Act, LogError> {
        self.hang_beside(job, known, &[], id)
    }

    fn hang_beside(
        &self,
        job: &Job,
        known: Known,
        beside: &[&Job],
        id: &mut dyn FnMut() -> String,
    ) -> Result<Act, LogError> {
        let same = |other: &&&Job| other.subject == job.subject && other.kind == job.kind;
        let mut left = stock(self.shelf, &about(&job.subject)).left;
        let mut fill = |job: &Job| {
            let lot = job.lot.as_ref()?;
            // What was filled before the lot was opened is used up first.
            let before = stands_for(self.today, &job.subject, lot).map(|instead| &instead.of);
            before
                .chain([lot])
                .find_map(|lot| take(&mut left, lot, job.amount, job.soaked))
        };
        for other in beside.iter().filter(same) {
            // What those beside it took is theirs.
            let _ = fill(other);
        }
        let filling = fill(job).map(|filling| as_hung(filling, job));
        let filling: Option<(RecordId, AsFed)> = filling.map(|filling| (filling.id, filling.hay));
        let mut acts = vec![hung(job, filling, known, &id())?];
        if let Some(open) = self.soak(job) {
            let waits = nets_of(self.today, &open.id)
                .into_iter()
                .any(|net| net.key != job.key && !beside.iter().any(|done| done.key == net.key));
            if !waits && open.times.fed.is_none() {
                let soak = open.id.clone();
                let fed = SoakStep::Fed { soak };
                acts.push(step(open, fed, Some(JobKind::DrainAndFeed), known, &id())?);
            }
        }
        Ok(Act::All(acts))
    }

    /// Starts the soak of a job: what of its hay goes into one tub. What does not fit stays a job.
    fn start(&self, job: &Job, id: &mut dyn FnMut() -> String) -> Result<Act, Refused> {
        let air = weather(self.shelf, self.today.day).air();
        let refused = |wrong| Refused::Soak(vec![wrong]);
        let seen = soaks(self.shelf, self.today);
        let of_job = |seen: &&LoadSeen| seen.load.parts.iter().any(|part| part.start == job.key);
        let load = seen.loads.iter().find(of_job).ok_or(Refused::OwnScreen)?;
        let tub = self.tub_for(load, id);
        start_part(&load.load, job, self.today, air, self.yard, &tub, id).map_err(refused)
    }

    /// The tub of a load: its own, else the first that is free, else a new one.
    fn tub_for(&self, load: &LoadSeen, id: &mut dyn FnMut() -> String) -> InTub {
        match &load.load.tub {
            Some(tub) => InTub::There(tub.clone()),
            None => free_tub(&yard_tubs(self.shelf, self.today), self.tub_name, id()),
        }
    }

    /// Starts a tub with all that lies in it, by its place in the list of soaks.
    ///
    /// # Errors
    /// A soak that the air does not allow, hay without a lot.
    pub fn start_tub(
        &self,
        load: &LoadSeen,
        id: &mut dyn FnMut() -> String,
    ) -> Result<Act, Refused> {
        let air = weather(self.shelf, self.today.day).air();
        let tub = self.tub_for(load, id);
        start(&load.load, self.today, air, self.yard, &tub, id)
            .map_err(|wrong| Refused::Soak(vec![wrong]))
    }

    /// "All as planned" for a visit: its nets and feeds, taken as done though nobody said of each that it was seen. Nets
    /// that were neither soaked nor left out are not among them.
    ///
    /// # Errors
    /// Ids that are too long.
    pub fn as_planned(
        &self,
        visit: Visit,
        id: &mut dyn FnMut() -> String,
    ) -> Result<Act, LogError> {
        let jobs: Vec<&Job> = self.today.as_planned(visit);
        let mut acts = Vec::new();
        for (index, job) in jobs.iter().enumerate() {
            let before = jobs.get(..index).unwrap_or_default();
            acts.push(match job.kind {
                JobKind::HangNet => self.hang_beside(job, Known::Assumed, before, id)?,
                _ => answer(job, JobAnswer::AsPlanned, Known::Assumed, &id())?,
            });
        }
        Ok(Act::All(acts))
    }

    /// The answer to the card of days away.
    ///
    /// # Errors
    /// None in practice: the key is short.
    pub fn away(&self, days: &DaysAway, said: JobAnswer, id: &str) -> Result<Act, LogError> {
        let known = match said {
            JobAnswer::NotKnown => Known::NotKnown,
            JobAnswer::Done
            | JobAnswer::AsPlanned
            | JobAnswer::NotDone
            | JobAnswer::SomebodyElse => Known::Assumed,
        };
        Ok(Act::Add(New {
            id: RecordId(id.to_owned()),
            subject: self.yard.clone(),
            at: None,
            known,
            body: Body::Job(JobV1 {
                job: JobKey::of(&days.key)?,
                answer: said,
                note: None,
                not_soaked: None,
            }),
        }))
    }
}

/// A filling as it hangs: what was weighed to be soaked and is not hangs lighter, for the rest was taken out, as the job
/// says; what was weighed anew for that hangs as it was weighed.
fn as_hung(mut filling: Filling, job: &Job) -> Filling {
    if let (Some(_), Some(lighter)) = (job.not_soaked, job.amount)
        && !filling.is_for(lighter)
        && lighter < filling.hay
    {
        filling.hay = lighter;
    }
    filling
}

fn answer(job: &Job, said: JobAnswer, known: Known, id: &str) -> Result<Act, LogError> {
    Ok(Act::Add(New {
        id: RecordId(id.to_owned()),
        subject: about(&job.subject),
        at: None,
        known,
        body: Body::Job(JobV1 {
            job: JobKey::of(&job.key)?,
            answer: said,
            note: None,
            not_soaked: None,
        }),
    }))
}
