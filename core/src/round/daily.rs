//! The jobs of the visits of a plan's day.

use super::answers::Answers;
use super::input::{DryVisit, IssuedPlan, OpenSoak, PlannedNet, RoundFor};
use super::job::{Job, Visit, Waits};
use super::key::{JobKind, Key, Slot, Subject};
use super::published::MORNING;
use super::slots::slots;
use super::state::{Window, at, plus};
use super::stopped::waits;
use crate::day::unsoaked;
use crate::soak::published::DRAIN_TO;
use crate::soak::{Recipe, Water, timeline};
use crate::units::{AsFed, Instant, LocalDate, LocalTime, Zone};
use std::collections::BTreeMap;

/// The plans of each subject, in the order they were issued.
pub(super) struct Plans<'a>(BTreeMap<&'a Subject, Vec<&'a IssuedPlan>>);

impl<'a> Plans<'a> {
    pub(super) fn of(plans: &'a [IssuedPlan]) -> Self {
        let mut by_subject: BTreeMap<&Subject, Vec<&IssuedPlan>> = BTreeMap::new();
        for plan in plans {
            by_subject.entry(&plan.subject).or_default().push(plan);
        }
        for plans in by_subject.values_mut() {
            plans.sort_by_key(|plan| plan.issued);
        }
        Self(by_subject)
    }

    /// The plan of each subject that was issued last.
    pub(super) fn last(&self) -> impl Iterator<Item = &'a IssuedPlan> {
        self.0.values().filter_map(|plans| plans.last().copied())
    }

    /// The same of those that do not rest on a day.
    pub(super) fn last_on(&self, day: LocalDate) -> impl Iterator<Item = &'a IssuedPlan> {
        self.0.values().filter_map(move |plans| {
            let awake = |plan: &&&IssuedPlan| !plan.rests_on(day);
            plans.iter().rfind(awake).copied()
        })
    }

    /// The plans that hold on a day, each with the instant from which its subject has had a plan for that day.
    pub(super) fn on(&self, day: LocalDate) -> impl Iterator<Item = (&'a IssuedPlan, Instant)> {
        self.0.values().filter_map(move |plans| {
            let mut holding = plans.iter().copied().filter(|plan| plan.feeds_on(day));
            let first = holding.next()?;
            Some((holding.next_back().unwrap_or(first), first.issued))
        })
    }
}

/// The visits of a plan, rising: the number of a visit is its place among them, from 1.
pub(super) fn visits(plan: &IssuedPlan) -> Vec<LocalTime> {
    let mut visits = plan.visits.clone();
    visits.extend(plan.nets.iter().map(|net| net.visit));
    visits.sort_unstable();
    visits.dedup();
    if visits.is_empty() {
        visits.push(*MORNING);
    }
    visits
}

/// When somebody first comes on a day of a plan.
pub(super) fn first_visit(plan: &IssuedPlan) -> LocalTime {
    visits(plan).first().copied().unwrap_or(*MORNING)
}

/// A job of a visit, before it is known whether it shows.
pub(super) struct Planned {
    pub job: Job,
    /// When it falls due by the plan.
    pub falls_due: Instant,
    /// When its hay is hung, or its feed is given.
    pub visit_at: Instant,
    /// The end of what is shown of its subject.
    horizon: Instant,
    pub answered: bool,
    pub expired: bool,
    /// Its hay is past the time at which it is thrown away.
    pub spoilt: bool,
}

impl Planned {
    /// Whether it shows. A net whose soak is open does, however far off its visit is.
    pub(super) fn is_open(&self) -> bool {
        let in_sight = self.falls_due <= self.horizon || self.job.soak.is_some();
        !self.answered && !self.expired && !self.spoilt && in_sight
    }
}

/// The jobs of the visits from yesterday to the day after tomorrow.
pub(super) fn planned<Z: Zone>(
    of: &RoundFor<'_, Z>,
    plans: &Plans<'_>,
    soaks: &[&OpenSoak],
    answers: &Answers<'_>,
) -> Vec<Planned> {
    let today = of.today();
    let mut found = Vec::new();
    for offset in -1..=2 {
        let Some(day) = plus(today, offset) else {
            continue;
        };
        for (plan, since) in plans.on(day) {
            let horizon = horizon(of.zone, plans, &plan.subject, today);
            let jobs = DayOf {
                zone: of.zone,
                plan,
                day,
                horizon,
                now: of.now,
                waits: waits(of, plan),
            };
            let kept = jobs.all(soaks, of.dry);
            found.extend(kept.into_iter().filter(|job| since <= job.visit_at));
        }
    }
    for job in &mut found {
        job.answered = answers.has(&job.job.key);
    }
    settle_soaks(&mut found, soaks);
    expire(&mut found, of.now);
    for planned in &mut found {
        let job = &mut planned.job;
        job.state = Window::of(job.kind, job.due).state(job.due, of.now);
    }
    found
}

/// Tomorrow's first visit of a subject, or the end of today where no plan holds tomorrow.
fn horizon(zone: &impl Zone, plans: &Plans<'_>, subject: &Subject, today: LocalDate) -> Instant {
    let tomorrow = plus(today, 1).unwrap_or(today);
    let first = plans
        .on(tomorrow)
        .find(|(plan, _)| plan.subject == *subject)
        .map_or(LocalTime::MIN, |(plan, _)| first_visit(plan));
    at(zone, tomorrow, first)
}

/// A day of a plan.
pub(super) struct DayOf<'a, Z> {
    pub zone: &'a Z,
    pub plan: &'a IssuedPlan,
    pub day: LocalDate,
    pub horizon: Instant,
    pub now: Instant,
    pub waits: Option<Waits>,
}

impl<Z: Zone> DayOf<'_, Z> {
    pub(super) fn all(&self, soaks: &[&OpenSoak], dry: &[DryVisit]) -> Vec<Planned> {
        let visits = visits(self.plan);
        let mut jobs = Vec::new();
        for (number, time) in (1..).zip(&visits) {
            let nets = self.plan.nets_on(self.day).iter();
            let nets = nets.filter(|net| net.visit == *time);
            let hangs = |net: &&PlannedNet| AsFed::ZERO < net.hay;
            let soaked: Vec<&PlannedNet> = nets
                .clone()
                .filter(hangs)
                .filter(|net| net.soaked)
                .collect();
            let start = (!soaked.is_empty()).then(|| self.start(number, *time, &soaked));
            let dry = start.as_ref().and_then(|start| {
                let of_visit = |said: &&DryVisit| said.start == start.job.key;
                dry.iter().rfind(of_visit)
            });
            for (nth, net) in (1..).zip(nets).filter(|(_, net)| hangs(net)) {
                let mut hang = self.hang(Slot { visit: number, nth }, net);
                if let Some(start) = start.as_ref().filter(|_| net.soaked) {
                    let open = soaks.iter().copied().find(|soak| {
                        soak.times.ended.is_none() && soak.holds(&start.job.key, &hang.job.key)
                    });
                    match (open, dry) {
                        // Hay that is in the water is soaked, whatever was said before.
                        (Some(soak), _) => self.out_of(&mut hang, soak),
                        (None, Some(dry)) => self.hung_dry(&mut hang, dry),
                        (None, None) => {}
                    }
                }
                jobs.push(hang);
            }
            jobs.extend(start);
        }
        self.feeds(&mut jobs);
        jobs
    }

    fn job(&self, kind: JobKind, slot: Slot, time: LocalTime) -> Planned {
        let visit_at = at(self.zone, self.day, time);
        let key = Key::Day {
            kind,
            subject: self.plan.subject.clone(),
            day: self.day,
            slot,
        };
        let mut job = Job::new(kind, key, &self.plan.subject, &self.plan.name, visit_at);
        job.visit = Some(Visit {
            day: self.day,
            time,
        });
        job.waits = self.waits;
        Planned {
            job,
            falls_due: visit_at,
            visit_at,
            horizon: self.horizon,
            answered: false,
            expired: false,
            spoilt: false,
        }
    }

    /// Hanging a net.
    fn hang(&self, slot: Slot, net: &PlannedNet) -> Planned {
        let mut planned = self.job(JobKind::HangNet, slot, net.visit);
        let job = &mut planned.job;
        job.amount = Some(net.hay);
        job.less_for_grass = net.less_for_grass;
        job.lot = Some(net.lot.clone());
        job.soaked = net.soaked;
        job.net.clone_from(&net.net);
        planned
    }

    /// A net that comes out of an open soak is due when that is drained, if that is later.
    fn out_of(&self, planned: &mut Planned, soak: &OpenSoak) {
        let line = timeline(soak.recipe, &soak.times, soak.air);
        let job = &mut planned.job;
        job.due = job.due.max(line.drained);
        job.soak = Some(soak.id.clone());
        job.tub.clone_from(&soak.tub);
        job.tub_name.clone_from(&soak.tub_name);
        planned.spoilt = line.throw_away <= self.now;
    }

    /// A net that is not soaked today hangs dry, and lighter.
    fn hung_dry(&self, planned: &mut Planned, dry: &DryVisit) {
        let job = &mut planned.job;
        let lighter = job.amount.map(|hay| unsoaked(hay, self.recipe()));
        if let Some(Ok(lighter)) = lighter {
            job.before_soaking = job.amount;
            job.amount = Some(lighter.hay);
        }
        job.soaked = false;
        job.not_soaked = Some(dry.why);
    }

    /// Water and time of the plan; the usual soak of a winter tap where it does not say.
    fn recipe(&self) -> Recipe {
        self.plan.recipe.unwrap_or(Recipe::usual(Water::TapWinter))
    }

    /// Soaking the hay of a visit: so long before it that it has lain in the water and drained when it is hung.
    fn start(&self, visit: u32, time: LocalTime, nets: &[&PlannedNet]) -> Planned {
        let mut planned = self.job(JobKind::StartSoak, Slot { visit, nth: 0 }, time);
        planned.falls_due = planned.visit_at - (self.recipe().soak() + *DRAIN_TO);
        let job = &mut planned.job;
        job.due = planned.falls_due;
        job.amount = Some(nets.iter().map(|net| net.hay).sum());
        let less: AsFed = nets.iter().filter_map(|net| net.less_for_grass).sum();
        job.less_for_grass = (AsFed::ZERO < less).then_some(less);
        job.soaked = true;
        job.recipe = Some(self.recipe());
        let lot = nets.first().map(|net| &net.lot);
        job.lot = lot
            .filter(|lot| nets.iter().all(|net| net.lot == **lot))
            .cloned();
        planned
    }

    /// The feeds of bought feed.
    fn feeds(&self, jobs: &mut Vec<Planned>) {
        for place in slots(self.plan) {
            if place.kind == JobKind::FeedBalancer {
                let mut planned = self.job(place.kind, place.slot, place.time);
                planned.job.amount = Some(place.amount);
                planned.job.food = place.food;
                jobs.push(planned);
            }
        }
    }
}

/// Whether a job is hanging a soaked net of the visit that a start is for.
fn is_net_of(job: &Job, start: &Job) -> bool {
    job.kind == JobKind::HangNet
        && job.soaked
        && job.subject == start.subject
        && job.visit == start.visit
}

/// A start is answered with the soak that it began, or when all its nets were hung or otherwise answered. Where a soak
/// took only some of its nets, it stays for the others, with their hay: that is another tub, or a second filling.
fn settle_soaks(jobs: &mut [Planned], soaks: &[&OpenSoak]) {
    let mut settled: Vec<(usize, bool, Option<AsFed>)> = Vec::new();
    for (index, start) in jobs.iter().enumerate() {
        if start.job.kind != JobKind::StartSoak {
            continue;
        }
        let begun: Vec<&OpenSoak> = soaks
            .iter()
            .copied()
            .filter(|soak| soak.started_by.as_ref() == Some(&start.job.key))
            .collect();
        let open = |net: &&Planned| {
            let holds = |soak: &&OpenSoak| soak.holds(&start.job.key, &net.job.key);
            is_net_of(&net.job, &start.job) && !net.answered && !begun.iter().any(holds)
        };
        let left: Vec<&Planned> = jobs.iter().filter(open).collect();
        if left.is_empty() {
            settled.push((index, true, None));
        } else if !begun.is_empty() {
            let hay = left.iter().filter_map(|net| net.job.amount).sum();
            settled.push((index, false, Some(hay)));
        }
    }
    for (index, answered, left) in settled {
        if let Some(start) = jobs.get_mut(index) {
            start.answered = answered;
            start.job.amount = left.or(start.job.amount);
        }
    }
}

/// A job expires when the next of its kind falls due for its subject; a start also with its nets.
fn expire(jobs: &mut [Planned], now: Instant) {
    let mut fallen: BTreeMap<(Subject, JobKind), Instant> = BTreeMap::new();
    for job in jobs.iter().filter(|job| job.falls_due <= now) {
        let last = fallen
            .entry((job.job.subject.clone(), job.job.kind))
            .or_insert(job.falls_due);
        *last = job.falls_due.max(*last);
    }
    for job in jobs {
        let last = |kind| fallen.get(&(job.job.subject.clone(), kind)).copied();
        let followed = last(job.job.kind).is_some_and(|last| job.falls_due < last);
        let nets_gone = job.job.kind == JobKind::StartSoak
            && last(JobKind::HangNet).is_some_and(|last| job.visit_at < last);
        job.expired = followed || nets_gone;
    }
}
