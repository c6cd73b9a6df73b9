//! A visit to one animal: what is done beside it in its order, what is due, and what stops it now.

mod after_look;
#[cfg(test)]
mod tests;

use super::condition::score_every;
use super::horses::{kind_of_limit, yard_needs};
use super::photo::{Photo, newest_first, of_list};
use crate::rows::Range;
use crate::shelf::Shelf;
use crate::words::Task;
use std::collections::BTreeMap;
use tussock_core::animal::{Animal, AnimalId, Answer, Group, SaidOn};
use tussock_core::assess::{ConditionRange, Crest, DatedWeight, best};
use tussock_core::limits::intervals;
use tussock_core::log::bodies::{PlanV1, Pose};
use tussock_core::log::{Body, Gathered, Kind, Problem, Record, Wish, gather};
use tussock_core::plan::{AtRest, LookedOver, Signs};
use tussock_core::round::published::WEIGH_EVERY;
use tussock_core::safety::{Refusal, StopsFor, VetUrgency, stops};
use tussock_core::units::{Instant, LocalDate, Zone};
use tussock_core::work::WorkLine;

/// The most readings of a kind that the list asks for: over all animals of a yard.
const OF_A_LIST: u32 = 1000;

/// What stops an animal now.
#[derive(Clone, Debug, PartialEq)]
pub enum Stop {
    /// For the vet, and how soon.
    Vet(Refusal, VetUrgency),
    /// No grass and no work until somebody looks again.
    LookAgain,
}

/// What is known of a step of the visit.
#[derive(Clone, Debug, PartialEq)]
pub enum Last {
    /// The weight that holds.
    Weight(DatedWeight),
    /// The condition, and whether it was scored site by site.
    Condition(ConditionRange, bool),
    /// The condition was scored and is to be scored again: nobody scores from a score, so its figure is not told.
    ConditionToScore {
        /// Whether it was scored site by site; else by one answer about the ribs.
        by_sites: bool,
    },
    /// The crest.
    Crest(Crest),
    /// The crest was scored and is to be scored again; its figure is not told.
    CrestToScore,
    /// The signs of the last look-over.
    LookOver(Signs),
    /// The sessions of this week, and how many are asked.
    Work {
        /// Done.
        done: u32,
        /// Asked.
        asked: u32,
    },
    /// It does not work now.
    NoWork(WorkLine),
    /// From where there is a photograph.
    Photographs(Vec<Pose>),
    /// The plan that holds.
    Plan(PlanV1),
}

/// How a step stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// Never done, or its interval has passed.
    Due,
    /// Done.
    Done,
    /// A sign was seen.
    Care,
    /// Done in part: lines were not looked at.
    NotComplete,
    /// Another step comes first.
    Waits,
    /// Nothing of it is due today.
    Later,
    /// It may not be done now.
    NoWork,
    /// It may be done, and nothing hangs on it.
    Open,
}

/// A step of the visit.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// What is done.
    pub task: Task,
    /// What is known; `None` when it was never done.
    pub last: Option<Last>,
    /// Days since then.
    pub days: Option<i64>,
    /// How it stands.
    pub standing: Standing,
}

/// One animal and the steps of a visit to it, in their order.
#[derive(Clone, Debug, PartialEq)]
pub struct Visit {
    /// The animal.
    pub animal: Animal,
    /// The local day.
    pub today: LocalDate,
    /// The weight that holds.
    pub weight: Option<DatedWeight>,
    /// Its condition as last scored.
    pub condition: Option<ConditionRange>,
    /// Its condition is to be scored: nobody scores from a score, so the last one is not told on the way.
    pub to_score: bool,
    /// The steps.
    pub steps: Vec<Step>,
    /// What stops it now.
    pub stop: Option<Stop>,
    /// The photograph that stands for it in the list.
    pub photo: Option<Photo>,
    /// What could not be read.
    pub problems: Vec<Problem>,
}

impl Visit {
    /// The first step that is due.
    pub fn first_due(&self) -> Option<Task> {
        self.steps
            .iter()
            .find(|step| matches!(step.standing, Standing::Due | Standing::Care))
            .map(|step| step.task)
    }

    /// How needy it is, the neediest lowest: a stop by its urgency, then what is due in the order of a visit.
    fn need(&self) -> (u8, usize) {
        let due = self
            .steps
            .iter()
            .position(|step| matches!(step.standing, Standing::Due | Standing::Care))
            .unwrap_or(usize::MAX);
        let stop = match &self.stop {
            Some(Stop::Vet(_, VetUrgency::Now)) => 0,
            Some(Stop::Vet(_, VetUrgency::Today)) => 1,
            Some(Stop::Vet(_, VetUrgency::ThisMorning | VetUrgency::First)) => 2,
            Some(Stop::LookAgain) => 3,
            None => 4,
        };
        (stop, due)
    }
}

/// What the list asks the disk for: the animals and groups, and the newest readings of all of them.
pub fn list_needs() -> Vec<Range> {
    let mut ranges: Vec<Range> = [Kind::Animal, Kind::Group, Kind::VetWord]
        .iter()
        .map(|kind| kind_of_limit(kind, OF_A_LIST))
        .collect();
    ranges.extend(
        [
            Kind::Weight,
            Kind::Condition,
            Kind::Crest,
            Kind::LookOver,
            Kind::Vitals,
            Kind::Appetite,
            Kind::WorkSession,
            Kind::Photo,
            Kind::Plan,
        ]
        .iter()
        .map(|kind| kind_of_limit(kind, OF_A_LIST)),
    );
    ranges
}

/// What a group's screen asks for: what the list does, and what the yard has.
pub fn group_needs() -> Vec<Range> {
    let mut ranges = list_needs();
    ranges.extend(yard_needs());
    ranges
}

/// The animals, the needy first, then by name; and the groups.
pub fn list(shelf: &Shelf, now: Instant, zone: &impl Zone) -> (Vec<Visit>, Vec<Group>) {
    let mut of: BTreeMap<&str, Vec<&Record>> = BTreeMap::new();
    for record in shelf.records() {
        of.entry(record.subject.id()).or_default().push(record);
    }
    let mut visits: Vec<Visit> = shelf
        .animals()
        .iter()
        .filter_map(|animal| visit_of(of.get(animal.id.as_str())?, &animal.id, now, zone))
        .collect();
    visits.sort_by_key(Visit::need);
    (visits, shelf.groups())
}

/// A visit to one animal; `None` when it is not there.
pub fn visit(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<Visit> {
    let records: Vec<&Record> = shelf
        .records()
        .filter(|record| record.subject.id() == animal.as_str())
        .collect();
    visit_of(&records, animal, now, zone)
}

/// A visit, from the animal's own records.
fn visit_of(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
) -> Option<Visit> {
    let gathered = gather(records, animal, now, zone, &Wish::default())?;
    let today = gathered.day;
    let weight = best(&gathered.weights, today).cloned();
    let newest = |kind: &Kind| {
        records
            .iter()
            .filter(|record| record.kind == *kind && record.at <= now)
            .max_by_key(|record| (record.at, record.stamp))
            .copied()
    };
    let crest_on = newest(&Kind::Crest).map(|record| zone.to_local(record.at).date);
    let plan = newest(&Kind::Plan).and_then(|record| match Body::read(record) {
        Ok(Body::Plan(plan)) => Some(plan),
        _ => None,
    });
    let photos = newest_first(
        records.iter().copied().filter(|record| record.at <= now),
        zone,
    );
    let steps = vec![
        weigh(&gathered, weight.as_ref()),
        condition(&gathered),
        crest(&gathered, crest_on),
        look_over(&gathered),
        after_look::work(&gathered, plan.as_ref()),
        after_look::photographed(&gathered, &photos),
        after_look::planned(plan, weight.is_some(), today),
    ];
    Some(Visit {
        stop: stop(&gathered),
        photo: of_list(&photos).cloned(),
        today,
        weight,
        condition: gathered.condition.last().map(|scored| scored.condition),
        to_score: steps
            .iter()
            .any(|step| step.task == Task::Condition && step.standing == Standing::Due),
        steps,
        animal: gathered.animal,
        problems: gathered.problems,
    })
}

/// What stops an animal now: what is for the vet first.
pub(crate) fn stop(of: &Gathered) -> Option<Stop> {
    of.stops()
        .into_iter()
        .next()
        .map(|(why, vet)| Stop::Vet(why, vet))
        .or_else(|| look_again(&of.look_over).then_some(Stop::LookAgain))
}

/// What stops an animal with these signs and readings, seen just now on a local day: no vet's word was given since.
pub(crate) fn stop_by(
    animal: &Animal,
    signs: Signs,
    at_rest: AtRest,
    day: LocalDate,
    now: Instant,
) -> Option<Stop> {
    let look_over = LookedOver {
        signs,
        at_rest,
        ..LookedOver::default()
    };
    stops(&StopsFor {
        animal,
        look_over: &look_over,
        said: SaidOn::default(),
        too_fast: None,
        words: &[],
        day,
        now,
    })
    .into_iter()
    .next()
    .map(|(why, vet)| Stop::Vet(why, vet))
    .or_else(|| look_again(&look_over).then_some(Stop::LookAgain))
}

/// A warm hoof or lying more stands, or somebody is still to look again: only a look takes that away.
fn look_again(of: &LookedOver) -> bool {
    of.again.is_open() || of.signs.look_again()
}

fn since(day: Option<LocalDate>, today: LocalDate) -> Option<i64> {
    day.map(|day| (today - day).num_days())
}

/// Due when it was never done or when its interval has passed; a step without an interval is due once.
fn by_age(days: Option<i64>, every: Option<i64>) -> Standing {
    match (days, every) {
        (None, _) => Standing::Due,
        (Some(days), Some(every)) if every <= days => Standing::Due,
        (Some(_), _) => Standing::Done,
    }
}

fn weigh(of: &Gathered, weight: Option<&DatedWeight>) -> Step {
    // The weight that holds may be an older scale; how long ago anybody weighed is another matter.
    let on = of
        .weights
        .iter()
        .map(|dated| dated.day)
        .filter(|day| *day <= of.day)
        .max();
    let days = since(on, of.day);
    Step {
        task: Task::Weigh,
        last: weight.cloned().map(Last::Weight),
        days,
        standing: by_age(days, Some(*WEIGH_EVERY)),
    }
}

fn condition(of: &Gathered) -> Step {
    let last = of.condition.last();
    let days = since(last.map(|scored| scored.on), of.day);
    let by_sites = last.is_some_and(|scored| scored.by_sites);
    // One answer about the ribs is a wide range: the sites are still to be scored.
    let standing = if by_sites {
        by_age(days, Some(score_every(of.animal.phase)))
    } else {
        Standing::Due
    };
    Step {
        task: Task::Condition,
        last: last.map(|scored| match standing {
            Standing::Due => Last::ConditionToScore { by_sites },
            _ => Last::Condition(scored.condition, by_sites),
        }),
        days,
        standing,
    }
}

fn crest(of: &Gathered, on: Option<LocalDate>) -> Step {
    let days = of.crest.and_then(|_| since(on, of.day));
    let standing = by_age(days, Some(score_every(of.animal.phase)));
    Step {
        task: Task::Crest,
        last: of.crest.map(|crest| match standing {
            Standing::Due => Last::CrestToScore,
            _ => Last::Crest(crest),
        }),
        days,
        standing,
    }
}

fn look_over(of: &Gathered) -> Step {
    let signs = of.look_over.signs;
    let days = since(of.look_over.on, of.day);
    let every = intervals(of.animal.phase).look_over_days;
    let standing = match (by_age(days, Some(every)), signs.clean()) {
        _ if signs.for_the_vet() || look_again(&of.look_over) => Standing::Care,
        (Standing::Due, _) => Standing::Due,
        (_, Answer::NotKnown) => Standing::NotComplete,
        (standing, _) => standing,
    };
    Step {
        task: Task::LookOver,
        last: of.look_over.on.map(|_| Last::LookOver(signs)),
        days,
        standing,
    }
}
