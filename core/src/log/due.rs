//! From records to the jobs due.

use super::bodies::{Body, NetShareV1, PlanV1};
use super::entry::{Entry, read};
use super::envelope::Record;
use super::gather::Problem;
use super::holding::{Holding, is_group};
use super::kind::Kind;
use super::subject::Subject as About;
use crate::animal::{AnimalId, Group, GroupId, VetWord, YardId};
use crate::forage::{Instead, Lot};
use crate::round::published::MORNING;
use crate::round::{
    Answered, DayAnew, DryVisit, HeldWord, IssuedPlan, OpenSoak, OpenTurnout, PlannedFeed, Round,
    RoundFor, Stopped, Subject, TurnoutPlanned, Watched, round,
};
use crate::soak::Recipe;
use crate::sources::RecordId;
use crate::units::{DryMatter, Instant, LocalDate, LocalTime, Zone};

/// What a round is made from, as the records say it.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Due {
    /// The plans of the animals and groups that are among the records, also those that rest.
    pub plans: Vec<IssuedPlan>,
    /// The animals that a plan watches.
    pub watched: Vec<Watched>,
    /// The vets' words whose end matters.
    pub words: Vec<HeldWord>,
    /// The animals that something stops.
    pub stopped: Vec<Stopped>,
    /// The animals that had their hay with a group and have no plan that gives them any now, by name.
    pub without_hay: Vec<(AnimalId, String)>,
    /// The soaks that are not over.
    pub soaks: Vec<OpenSoak>,
    /// The visits whose hay is not soaked.
    pub dry: Vec<DryVisit>,
    /// Those that go out to grass.
    pub turnouts: Vec<TurnoutPlanned>,
    /// Those that are out at grass.
    pub out: Vec<OpenTurnout>,
    /// The dry matter that the nets of today gave way by for grass eaten today, by the subject of the plan. They are lighter
    /// for it already, but for a day that was laid out anew since.
    pub given_way: Vec<(Subject, DryMatter)>,
    /// The answers.
    pub answered: Vec<Answered>,
    /// The lots that stand in for those which plans name, a plan's subject and an opened lot each. The nets of the plans
    /// are weighed from them already; what was issued stays as it is.
    pub instead: Vec<(Subject, Instead)>,
    /// What could not be read.
    pub problems: Vec<Problem>,
}

/// The jobs due at an instant.
///
/// `records` are the versions that hold, of any subject, in any order; what is deleted is left out, and what is later
/// than now, but for soaks and their tubs, turnouts and their paddocks.
/// What cannot be read is left out too: [`Due::of`] names it.
pub fn round_of(records: &[&Record], now: Instant, zone: &impl Zone) -> Round {
    Due::of(records, now, zone).round(now, zone)
}

impl Due {
    /// Gathers what the records say.
    pub fn of(records: &[&Record], now: Instant, zone: &impl Zone) -> Self {
        let (entries, problems) = read(records, |record| record.at <= now || stays(record));
        let yard = Yard {
            holding: Holding::of(&entries),
            entries: &entries,
            zone,
            today: zone.to_local(now).date,
            now,
        };
        let mut due = Self {
            answered: yard.answers(),
            dry: yard.dry(),
            problems,
            ..Self::default()
        };
        due.answered.extend(yard.brought_in());
        due.soaks = yard.soaks(&mut due.problems);
        due.out = yard.out();
        let held: Vec<Held<'_>> = yard.plans();
        due.words = yard.words(&held);
        due.watched = yard.watched(&held);
        due.turnouts = yard.turnouts(&held);
        due.stopped = yard.stopped();
        due.without_hay = yard.without_hay();
        let issued: Vec<(RecordId, &PlanV1)> = held
            .iter()
            .map(|held| (held.record.clone(), held.body))
            .collect();
        due.plans = held
            .into_iter()
            .map(|held| yard.back(held, &due.words))
            .collect();
        due.instead = changeover::weigh_from_opened(&mut due.plans, &yard.lots(), yard.today);
        yard.lighten(records, &mut due, &issued);
        due
    }

    /// The jobs due.
    pub fn round(&self, now: Instant, zone: &impl Zone) -> Round {
        round(&RoundFor {
            now,
            zone,
            plans: &self.plans,
            watched: &self.watched,
            words: &self.words,
            stopped: &self.stopped,
            soaks: &self.soaks,
            dry: &self.dry,
            turnouts: &self.turnouts,
            out: &self.out,
            answered: &self.answered,
        })
    }
}

/// Whether a record counts even when it lies later than now. What is in the water is there, whatever the clock says that
/// was set back since, and it must be thrown away in time. So is one that a clock which runs ahead sent out: it must be
/// brought in, from the paddock it is on.
fn stays(record: &Record) -> bool {
    matches!(
        record.kind,
        Kind::SoakStep | Kind::Tub | Kind::Turnout | Kind::Paddock
    )
}

/// A plan with its record.
struct Held<'a> {
    record: RecordId,
    body: &'a PlanV1,
    plan: IssuedPlan,
}

/// The entries of a yard, oldest first.
struct Yard<'a, Z> {
    entries: &'a [Entry<'a>],
    holding: Holding<'a>,
    zone: &'a Z,
    today: LocalDate,
    now: Instant,
}

impl<'a, Z: Zone> Yard<'a, Z> {
    fn day_of(&self, entry: &Entry<'_>) -> LocalDate {
        self.zone.to_local(entry.record.at).date
    }

    /// The name of an animal or group; `None` when it is not among the records.
    fn name(&self, id: &str) -> Option<&'a str> {
        self.entries.iter().find_map(|entry| match &entry.body {
            Body::Animal(body) if entry.record.id.0 == id => Some(body.name.as_str()),
            Body::Group(body) if entry.record.id.0 == id => Some(body.name.as_str()),
            Body::Yard(body) if entry.record.id.0 == id => Some(body.name.as_str()),
            _ => None,
        })
    }

    /// Whether an animal is among the records.
    fn is_here(&self, animal: &AnimalId) -> bool {
        self.entries
            .iter()
            .any(|entry| matches!(entry.body, Body::Animal(_)) && entry.record.id.0 == animal.0)
    }

    /// The lots that can be read.
    fn lots(&self) -> Vec<Lot> {
        self.entries
            .iter()
            .filter_map(|entry| match &entry.body {
                Body::Lot(body) => Some(body.lot(&entry.record.id).ok()?.0),
                _ => None,
            })
            .collect()
    }

    fn groups(&self) -> impl Iterator<Item = &Group> {
        self.holding.groups().iter()
    }

    /// The plans of those that are here. On the days on which another plan feeds its subject a plan rests.
    fn plans(&self) -> Vec<Held<'a>> {
        self.entries
            .iter()
            .filter_map(|entry| {
                let Body::Plan(body) = &entry.body else {
                    return None;
                };
                let subject = subject(&entry.record.subject)?;
                let name = self.name(entry.record.subject.id())?;
                let mut plan = issued(body, subject, name, entry.record.at);
                plan.anew = self.anew(&entry.record.id);
                plan.rests = self.holding.rests(entry.record, body);
                plan.changed = self
                    .holding
                    .changed(entry.record, body, self.today, |animal| {
                        self.is_here(animal)
                    });
                Some(Held {
                    record: entry.record.id.clone(),
                    body,
                    plan,
                })
            })
            .collect()
    }

    /// The animals that had their hay with a group and have no plan that gives them any now.
    fn without_hay(&self) -> Vec<(AnimalId, String)> {
        self.entries
            .iter()
            .filter_map(|entry| match &entry.body {
                Body::Animal(body) => {
                    let animal = AnimalId(entry.record.id.0.clone());
                    let without = self.holding.left_without(&animal, self.today);
                    without.then(|| (animal, body.name.as_str().to_owned()))
                }
                _ => None,
            })
            .collect()
    }

    /// The days of a plan that were laid out anew, oldest first.
    fn anew(&self, plan: &RecordId) -> Vec<DayAnew> {
        self.entries
            .iter()
            .filter_map(|entry| match &entry.body {
                Body::DayRelaid(body) if body.plan == *plan => Some(DayAnew {
                    day: body.day,
                    nets: body.nets.iter().map(NetShareV1::planned).collect(),
                }),
                _ => None,
            })
            .collect()
    }

    /// The plan that an animal is watched by: its own, or that of the group that feeds it; of one that nothing feeds its
    /// own last one.
    fn plan_of<'h>(&self, animal: &AnimalId, held: &'h [Held<'a>]) -> Option<&'h Held<'a>> {
        let group = self.holding.fed_with(animal, self.today);
        let own = |held: &&Held<'a>| held.plan.subject == Subject::Animal(animal.clone());
        let holds = |held: &&Held<'a>| !held.plan.rests_on(self.today);
        held.iter()
            .rfind(|held| own(held) && holds(held))
            .or_else(|| {
                let of_group = |held: &&Held<'a>| {
                    group.is_some_and(|group| is_group(&held.plan.subject, group))
                };
                held.iter().rfind(|held| of_group(held) && holds(held))
            })
            .or_else(|| held.iter().rfind(own))
    }

    /// The words that neither a later word about the same matter nor a plan made after their end has replaced.
    fn words(&self, held: &[Held<'a>]) -> Vec<HeldWord> {
        let words: Vec<VetWord> = self
            .entries
            .iter()
            .filter_map(|entry| match &entry.body {
                Body::VetWord(body) => Some(body.word()),
                _ => None,
            })
            .collect();
        words
            .iter()
            .enumerate()
            .filter_map(|(index, word)| {
                let name = self.name(word.animal.as_str())?;
                let plan = self.plan_of(&word.animal, held).map(|held| &held.plan);
                let replaced = words.iter().enumerate().any(|(other, later)| {
                    later.animal == word.animal
                        && later.permit.scope() == word.permit.scope()
                        && (word.expires, index) < (later.expires, other)
                });
                let past = plan.is_some_and(|plan| word.expires < plan.from);
                (!replaced && !past).then(|| HeldWord {
                    animal: word.animal.clone(),
                    name: name.to_owned(),
                    scope: word.permit.scope(),
                    expires: word.expires,
                    at: plan.map_or(*MORNING, first_visit),
                })
            })
            .collect()
    }
}

fn subject(about: &About) -> Option<Subject> {
    let id = about.id().to_owned();
    match about.kind() {
        "animal" => Some(Subject::Animal(AnimalId(id))),
        "group" => Some(Subject::Group(GroupId(id))),
        "yard" => Some(Subject::Yard(YardId(id))),
        _ => None,
    }
}

fn first_visit(plan: &IssuedPlan) -> LocalTime {
    plan.visits.iter().min().copied().unwrap_or(*MORNING)
}

/// A stored plan as the round takes it. A soak that cannot be read has the usual one in its place.
pub(super) fn issued(body: &PlanV1, subject: Subject, name: &str, at: Instant) -> IssuedPlan {
    IssuedPlan {
        subject,
        name: name.to_owned(),
        issued: at,
        from: body.from,
        review: body.review,
        visits: body.visits.clone(),
        nets: body.nets.iter().map(NetShareV1::planned).collect(),
        recipe: body.soaking.as_ref().map(|soaking| {
            soaking
                .recipe()
                .unwrap_or_else(|_| Recipe::usual(soaking.water))
        }),
        feeds: body
            .amounts
            .iter()
            .filter(|amount| amount.lot.is_none())
            .map(|amount| PlannedFeed {
                food: amount.food.clone(),
                a_day: amount.as_fed_g.as_fed(),
                feeds: amount
                    .feeds
                    .and_then(|feeds| u32::try_from(feeds.get()).ok()),
            })
            .collect(),
        word_ended: false,
        anew: Vec::new(),
        part: body.is_part(),
        changed: false,
        rests: Vec::new(),
    }
}

pub(super) use at_grass::to_be_in;

mod at_grass;
mod changeover;
mod lighter;
mod soaks;
mod stopped;
#[cfg(test)]
mod tests;
mod watched;
