//! The round in English.

use super::English;
use crate::words::{RoundWords, SafetyWords, UnitWords};
use tussock_core::log::bodies::JobAnswer;
use tussock_core::round::{Job, JobKind, JobState, Summary, Waits};
use tussock_core::safety::Refusal;
use tussock_core::units::{AsFed, LocalDate, Zone};

impl RoundWords for English {
    fn round(&self) -> &'static str {
        "Round"
    }
    fn how_it_stands(&self, summary: Summary) -> String {
        let parts: Vec<String> = [
            (summary.late, "late"),
            (summary.due, "due"),
            (summary.later, "later"),
        ]
        .into_iter()
        .filter(|(count, _)| 0 < *count)
        .map(|(count, word)| format!("{count} {word}"))
        .collect();
        if parts.is_empty() {
            "Nothing due".to_owned()
        } else {
            parts.join(", ")
        }
    }
    fn jobs(&self) -> &'static str {
        "Jobs"
    }
    fn job(&self, job: &Job) -> String {
        let tub = || match &job.tub_name {
            Some(name) => super::fields::small(name),
            None => "the soaked hay".to_owned(),
        };
        match job.kind {
            JobKind::ThrowAway => format!("Throw away what is left of {}", tub()),
            JobKind::LiftOut => format!("Lift out {}", tub()),
            JobKind::DrainAndFeed => format!("Feed {}, drained", tub()),
            JobKind::StartSoak => match job.visit {
                Some(visit) => format!("Soak the hay for {}", self.time(visit.time)),
                None => "Soak the hay".to_owned(),
            },
            JobKind::HangNet => match job.slot() {
                Some(slot) if 0 < slot.nth => format!("Hang net {}", slot.nth),
                Some(_) | None => "Hang a net".to_owned(),
            },
            JobKind::Stop => match job.stops.first() {
                Some((why, _)) => self.stop_job(why).to_owned(),
                None => self.job_kind(job.kind).to_owned(),
            },
            JobKind::BringIn => format!("Bring in {}", job.name),
            JobKind::TurnOut => format!("Turn out {}", job.name),
            JobKind::Weigh if job.again => "Measure it again now".to_owned(),
            JobKind::Weigh
            | JobKind::LookAgain
            | JobKind::FeedBalancer
            | JobKind::LookOver
            | JobKind::Exercise
            | JobKind::ReviewPlan
            | JobKind::VetWordExpires => self.job_kind(job.kind).to_owned(),
        }
    }
    fn job_kind(&self, kind: JobKind) -> &'static str {
        match kind {
            JobKind::Stop => "Ring the vet",
            JobKind::LookAgain => "Look again: warm hoof or lying more",
            JobKind::ThrowAway => "Throw away soaked hay",
            JobKind::LiftOut => "Lift out of the water",
            JobKind::DrainAndFeed => "Feed soaked hay",
            JobKind::BringIn => "Bring in from grass",
            JobKind::TurnOut => "Turn out to grass",
            JobKind::StartSoak => "Soak hay",
            JobKind::HangNet => "Hang a net",
            JobKind::FeedBalancer => "Feed the balancer",
            JobKind::LookOver => "Look it over",
            JobKind::Weigh => "Weigh it",
            JobKind::Exercise => "Work it",
            JobKind::ReviewPlan => "Review the plan",
            JobKind::VetWordExpires => "The vet's word ends",
        }
    }
    fn stop_job(&self, why: &Refusal) -> &'static str {
        match why {
            Refusal::LaminitisNow
            | Refusal::LaminitisSign
            | Refusal::WarmHoofAfterLaminitis
            | Refusal::EscapedOntoGrass
            | Refusal::Lame => "Stop grazing and work",
            Refusal::AteWhenOffered => "Feed it now",
            Refusal::OffFeed { .. } => "Off its feed: hold out a handful",
            Refusal::GotAtGrain => "It got at grain",
            Refusal::Sick => "It is sick",
            Refusal::LosesTooFast(_) => "Losing too fast: feed more",
            Refusal::FarOverUsual { .. } => "Far over what is usual at rest",
            Refusal::EpisodeWithoutWord => "No plan without the vet's word",
            Refusal::NotPlannedHere(_)
            | Refusal::DonkeyDiet
            | Refusal::Energy(_)
            | Refusal::UnderDryMatterFloor { .. }
            | Refusal::DoNotFeed { .. } => "Ring the vet",
        }
    }
    fn plan_waits(&self, waits: Waits) -> &'static str {
        match waits {
            Waits::Vet => "Hay goes on. The plan waits for the vet",
            Waits::Look => "Hay goes on. No grass, no work until you have looked again",
            Waits::Word => "The vet's word has ended: hay back at its starting level",
            Waits::Members => {
                "Who eats there has changed since its plan. See the group, and use a new one"
            }
        }
    }
    fn waits_for(&self, name: &str, waits: Waits) -> String {
        format!("{name}: {}", super::fields::small(self.plan_waits(waits)))
    }
    fn job_stands(&self, job: &Job) -> String {
        match (job.kind, job.state) {
            (_, JobState::Later) => String::new(),
            (JobKind::Stop, _) => match job.stops.first() {
                Some((_, urgency)) => SafetyWords::vet(self, *urgency).to_owned(),
                None => "now".to_owned(),
            },
            (JobKind::ThrowAway, _) => "now".to_owned(),
            (_, JobState::Due) => "due".to_owned(),
            (_, JobState::Late { by }) => format!("{} late", self.span(by)),
        }
    }
    fn job_of(&self, job: &Job) -> String {
        if matches!(job.kind, JobKind::BringIn | JobKind::TurnOut) {
            return self.grass_job_of(job);
        }
        let mut parts = vec![job.name.clone()];
        if let Some(amount) = job.amount {
            parts.push(if job.kind == JobKind::FeedBalancer {
                self.bucket(amount)
            } else {
                self.feed(amount)
            });
        }
        if let Some(less) = job.less_for_grass {
            parts.push(self.less_for_grass(less));
        }
        if job.soaked && matches!(job.kind, JobKind::HangNet) {
            let waits = crate::views::round::waits_for_water(job);
            parts.push(
                if waits {
                    self.not_soaked_yet()
                } else {
                    "soaked"
                }
                .to_owned(),
            );
        }
        if job.not_soaked.is_some() {
            parts.push("not soaked".to_owned());
            if let Some(before) = job.before_soaking {
                parts.push(format!("{} to soak it", self.feed(before)));
            }
        }
        parts.retain(|part| !part.is_empty());
        parts.join(", ")
    }
    fn less_for_grass(&self, less: AsFed) -> String {
        format!("{} less: it was at grass", self.feed(less))
    }
    fn no_grass(&self, waits: Waits) -> &'static str {
        match waits {
            Waits::Look => "no grass until you have looked again",
            Waits::Vet | Waits::Word | Waits::Members => "no grass: something stops it",
        }
    }
    fn grass_job_of(&self, job: &Job) -> String {
        let from = job.paddock_name.as_ref().map(|name| format!("from {name}"));
        let waits = job.waits.filter(|_| job.kind == JobKind::BringIn);
        let why = waits.map(|waits| self.no_grass(waits).to_owned());
        let parts: Vec<String> = from.into_iter().chain(why).collect();
        parts.join(", ")
    }
    fn job_time(&self, job: &Job, today: LocalDate, zone: &dyn Zone) -> String {
        // What something stops should not be out at all.
        if job.kind == JobKind::Stop || (job.kind == JobKind::BringIn && job.waits.is_some()) {
            return "now".to_owned();
        }
        let local = zone.to_local(job.due);
        self.due(local.date, local.time, today)
    }
    fn tick(&self, job: &Job) -> String {
        let what = super::fields::small(&self.job(job));
        match self.job_of(job).as_str() {
            "" => format!("Done: {what}"),
            of => format!("Done: {what}, {of}"),
        }
    }
    fn do_now(&self, job: &Job) -> String {
        let whose = |what: String| {
            if job.name.is_empty() {
                what
            } else {
                format!("{what}, {}", job.name)
            }
        };
        match job.kind {
            JobKind::ThrowAway => "Thrown away".to_owned(),
            JobKind::LiftOut | JobKind::DrainAndFeed => format!("{} now", self.job(job)),
            JobKind::StartSoak => whose("Start the soak".to_owned()),
            JobKind::BringIn | JobKind::TurnOut => self.job(job),
            JobKind::LookOver => format!("Look over {}", job.name),
            JobKind::LookAgain => format!("Look at {} again", job.name),
            JobKind::Weigh if job.again => format!("Measure {} again", job.name),
            JobKind::Weigh => format!("Weigh {}", job.name),
            JobKind::Exercise => format!("Work {}", job.name),
            JobKind::Stop
            | JobKind::HangNet
            | JobKind::FeedBalancer
            | JobKind::ReviewPlan
            | JobKind::VetWordExpires => whose(self.job(job)),
        }
    }
    fn open_next(&self, job: &Job) -> String {
        format!("Next: {}", super::fields::small(&self.do_now(job)))
    }
    fn to_the_horses(&self) -> &'static str {
        "See the horses"
    }
    fn after_midnight(&self, count: usize, first: &str) -> String {
        format!("{count} tomorrow, from {first}")
    }
    fn done_today(&self, count: usize) -> String {
        format!("{count} done today")
    }
    fn all_as_planned(&self, time: &str) -> String {
        format!("All as planned for {time}")
    }
    fn left_out(&self, nets: usize) -> String {
        let (nets, are) = match nets {
            1 => ("1 net".to_owned(), "is"),
            nets => (format!("{nets} nets"), "are"),
        };
        format!("Without {nets} that {are} not soaked yet: start the soak, or say why not")
    }
    fn not_soaked_yet(&self) -> &'static str {
        "to be soaked first"
    }
    fn days_away(&self, from: LocalDate, to: LocalDate) -> String {
        if from == to {
            format!("{} not logged", self.day(from))
        } else {
            format!("{} to {} not logged", self.day(from), self.day(to))
        }
    }
    fn away_answer(&self, answer: JobAnswer) -> &'static str {
        match answer {
            JobAnswer::Done => "Done",
            JobAnswer::AsPlanned => "As planned",
            JobAnswer::NotDone => "Not done",
            JobAnswer::SomebodyElse => "Somebody else did it",
            JobAnswer::NotKnown => "Do not know",
        }
    }
    fn tick_refused(&self) -> &'static str {
        "This soak cannot be started so: open it and see why."
    }
}
