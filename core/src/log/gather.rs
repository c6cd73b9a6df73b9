//! From records to what a plan is made from.
//!
//! The records of one animal (or of a group's members), the hays, foods, nets, visits and weather of its yard, as they
//! hold on a day. A reading that `assess` refuses is left out and named in [`Gathered::problems`]; nothing is lost.

use super::bodies::base::BodyHundredths;
use super::bodies::{AnimalV2, Body, Condition};
use super::entry::{Entry, read};
use super::envelope::Record;
use super::error::LogError;
use super::feeds::Feeds;
use super::grazing::grazing_of;
use super::holding::Holding;
use super::looks::looked_over;
use super::weighed::{AllWeighed, Course};
use super::worked::sessions;
use crate::animal::{Animal, AnimalId, PersonId, Phase, SaidOn, VetWord};
use crate::assess::{AssessError, ConditionRange, Crest, DatedWeight, Tape};
use crate::forage::Lot;
use crate::limits::{WaterWeather, starting_level};
use crate::plan::{
    Draft, Grazing, HayOffer, LookedOver, NetUse, PlanError, PlanFor, Scored, Soaking, draft,
};
use crate::progress::TooFast;
use crate::ration::Food;
use crate::safety::{Refusal, StopsFor, VetUrgency, stops};
use crate::sources::RecordId;
use crate::units::{AsFed, Instant, LocalDate, LocalTime, PartOfBody, Zone};
use crate::work::Session;

/// What cannot be read from a record.
#[derive(Clone, Debug, PartialEq)]
pub enum Problem {
    /// A field of it.
    Log(LogError),
    /// A reading or a score that the room `assess` refuses.
    Assess {
        /// The record.
        record: RecordId,
        /// Why.
        error: AssessError,
    },
}

/// What is asked of a plan beside the records.
#[derive(Clone, Debug, PartialEq, Default)]
pub struct Wish {
    /// The level that is asked for.
    pub asked: Option<PartOfBody>,
    /// Which forages, and each one's part; empty for the one bought last.
    pub hays: Vec<(String, f64)>,
    /// When somebody comes; empty for what the records say.
    pub visits: Vec<LocalTime>,
}

/// Everything that a yard's records say for the plan of one animal.
#[derive(Clone, Debug, PartialEq)]
pub struct Gathered {
    /// The animal.
    pub animal: Animal,
    /// Now.
    pub now: Instant,
    /// The local day.
    pub day: LocalDate,
    /// Its weights.
    pub weights: Vec<DatedWeight>,
    /// Its last tape.
    pub tape: Option<Tape>,
    /// Its condition scores.
    pub condition: Vec<Scored>,
    /// Its crest.
    pub crest: Option<Crest>,
    /// Its last look-over.
    pub look_over: LookedOver,
    /// Days since the plans that hold began to feed no more than the starting level.
    pub days_at_start: u32,
    /// Vets' words.
    pub words: Vec<VetWord>,
    /// Since when what is said of it stops it.
    pub said: SaidOn,
    /// Its weight falls so fast that the vet is rung.
    pub too_fast: Option<TooFast>,
    /// The day it came into its phase.
    pub phase_since: LocalDate,
    /// The phase it came from, when known.
    pub phase_before: Option<Phase>,
    /// The level of the plan that holds.
    pub level_now: Option<PartOfBody>,
    /// The level asked for.
    pub asked: Option<PartOfBody>,
    /// The forages and their parts.
    pub hays: Vec<(Lot, f64)>,
    /// The balancer.
    pub balancer: Option<Food>,
    /// The bought feeds that somebody decided on, with what is given of each a day.
    pub ration: Option<Vec<(AsFed, Food)>>,
    /// The visits.
    pub visits: Vec<LocalTime>,
    /// The nets.
    pub net: NetUse,
    /// How hay is soaked.
    pub soaking: Soaking,
    /// The weather for water.
    pub weather: WaterWeather,
    /// Turnout on grass that somebody decided on.
    pub grazing: Option<Grazing>,
    /// Its sessions of work, oldest first.
    pub sessions: Vec<Session>,
    /// What could not be read.
    pub problems: Vec<Problem>,
}

impl Gathered {
    /// The draft of the animal's plan.
    ///
    /// # Errors
    /// Those of [`draft`].
    pub fn draft(&self) -> Result<Draft, PlanError> {
        draft(&self.input(&self.offers()))
    }

    /// What stops the animal now by its health and its last look-over, the most urgent first.
    pub fn stops(&self) -> Vec<(Refusal, VetUrgency)> {
        stops(&StopsFor {
            animal: &self.animal,
            look_over: &self.look_over,
            said: self.said,
            too_fast: self.too_fast,
            words: &self.words,
            day: self.day,
            now: self.now,
        })
    }

    pub(super) fn offers(&self) -> Vec<HayOffer<'_>> {
        self.hays
            .iter()
            .map(|(lot, part)| HayOffer { lot, part: *part })
            .collect()
    }

    pub(super) fn input<'a>(&'a self, hays: &'a [HayOffer<'a>]) -> PlanFor<'a> {
        PlanFor {
            animal: &self.animal,
            now: self.now,
            day: self.day,
            weights: &self.weights,
            tape: self.tape.as_ref(),
            condition: &self.condition,
            crest: self.crest,
            look_over: self.look_over,
            days_at_start: self.days_at_start,
            words: &self.words,
            said: self.said,
            too_fast: self.too_fast,
            level_now: self.level_now,
            asked: self.asked,
            hays,
            balancer: self.balancer.as_ref(),
            ration: self.ration.as_deref(),
            visits: &self.visits,
            net: self.net.clone(),
            soaking: self.soaking,
            weather: self.weather,
            grazing: self.grazing.as_ref(),
            strictest: None,
        }
    }
}

/// Gathers what the records say of an animal at an instant. `None` when the animal is not among them.
///
/// `records` are the versions that hold, of any subject, in any order; what is deleted or later than now is left out.
pub fn gather(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
    wish: &Wish,
) -> Option<Gathered> {
    let day = zone.to_local(now).date;
    let (entries, mut problems) = read(records, |record| record.at <= now);
    let (who, said, of_it, written) = entries.iter().find_map(|entry| match &entry.body {
        Body::Animal(body) if entry.record.id.0 == animal.0 => Some((
            body.animal(&entry.record.id),
            said_on(entry, body, zone),
            body,
            entry.record.at,
        )),
        _ => None,
    })?;
    let own: Vec<&Entry<'_>> = entries
        .iter()
        .filter(|entry| entry.record.subject.id() == animal.0)
        .collect();
    let local = |entry: &Entry<'_>| zone.to_local(entry.record.at).date;
    let condition = conditions(&own, &local, &mut problems);
    let last = condition.last().map(|scored| scored.condition);
    let weighed = AllWeighed::of(&who, &own, last, zone, &mut problems);
    let course = Course::of(&weighed, of_it, &entries, &Holding::of(&entries), zone);
    let too_fast = course.too_fast(&who, day);
    let (weights, tape) = weighed.weights();
    let feeds = Feeds::of(&entries, animal, day, wish, &mut problems);
    let plan = own.iter().rev().find_map(|entry| match &entry.body {
        Body::Plan(plan) => Some(plan),
        _ => None,
    });
    Some(Gathered {
        now,
        day,
        weights,
        tape,
        condition,
        crest: own.iter().rev().find_map(|entry| match &entry.body {
            Body::Crest(body) => body.crest().ok(),
            _ => None,
        }),
        look_over: looked_over(own.iter().copied(), zone),
        sessions: sessions(&own, zone),
        said,
        phase_since: of_it
            .phase_since
            .unwrap_or_else(|| zone.to_local(written).date),
        phase_before: of_it.phase_before,
        too_fast,
        days_at_start: days_at_start(&own, starting_level(&who).value, day),
        words: words(&entries),
        level_now: plan.map(|plan| plan.level.part()),
        asked: wish.asked.or(feeds.asked),
        hays: feeds.hays,
        balancer: feeds.balancer,
        ration: feeds.ration,
        visits: feeds.visits,
        net: feeds.net,
        soaking: feeds.soaking,
        weather: feeds.weather,
        grazing: grazing_of(&entries, animal, day, zone),
        animal: who,
        problems,
    })
}

/// Since when what a record of an animal says stops it.
pub(super) fn said_on(entry: &Entry<'_>, body: &AnimalV2, zone: &impl Zone) -> SaidOn {
    body.said_by(zone.to_local(entry.record.stamp.instant()).date)
}

/// The vets' words, each with the instant it was written down.
pub(super) fn words(entries: &[Entry<'_>]) -> Vec<VetWord> {
    entries
        .iter()
        .filter_map(|entry| match &entry.body {
            Body::VetWord(body) => Some(VetWord {
                written: Some(entry.record.at),
                ..body.word()
            }),
            _ => None,
        })
        .collect()
}

/// Days since the first of the last plans, one after another, that feed no more than the starting level: a review that
/// goes on with it begins no new count, and a plan above it ends one. They count as fed when nothing says otherwise.
fn days_at_start(own: &[&Entry<'_>], start: PartOfBody, day: LocalDate) -> u32 {
    let Ok(start) = BodyHundredths::of(start) else {
        return 0;
    };
    own.iter()
        .rev()
        .filter_map(|entry| match &entry.body {
            Body::Plan(plan) => Some(plan),
            _ => None,
        })
        .take_while(|plan| plan.level <= start)
        .map(|plan| plan.from)
        .min()
        .map_or(0, |from| {
            u32::try_from((day - from).num_days()).unwrap_or(0)
        })
}

/// The scores, oldest first. What two people scored on one day is one score: the range that holds both, for nobody knows
/// whose hand is right. What one person scored anew that day stands for what the same person scored before.
pub(super) fn conditions(
    own: &[&Entry<'_>],
    local: &impl Fn(&Entry<'_>) -> LocalDate,
    problems: &mut Vec<Problem>,
) -> Vec<Scored> {
    let mut by_whom: Vec<(Option<&PersonId>, Scored)> = Vec::new();
    for (by, scored) in each_condition(own, local, problems) {
        let same = |other: &(Option<&PersonId>, Scored)| {
            other.0 == by && other.1.on == scored.on && other.1.by_sites && scored.by_sites
        };
        by_whom.retain(|other| !same(other));
        by_whom.push((by, scored));
    }
    let mut joined: Vec<Scored> = Vec::new();
    for (_, scored) in by_whom {
        match joined.last_mut() {
            Some(last) if last.on == scored.on && last.by_sites && scored.by_sites => {
                last.condition = last.condition.and(scored.condition);
            }
            _ => joined.push(scored),
        }
    }
    joined
}

fn each_condition<'a>(
    own: &[&'a Entry<'_>],
    local: &impl Fn(&Entry<'_>) -> LocalDate,
    problems: &mut Vec<Problem>,
) -> Vec<(Option<&'a PersonId>, Scored)> {
    own.iter()
        .filter_map(|entry| {
            let Body::Condition(body) = &entry.body else {
                return None;
            };
            let (condition, by_sites): (ConditionRange, bool) = match body.condition() {
                Ok(Condition::Score(score, _)) => (score.on_nine(), true),
                Ok(Condition::Ribs(ribs)) => (ribs.condition(), false),
                Err(error) => {
                    problems.push(Problem::Assess {
                        record: entry.record.id.clone(),
                        error,
                    });
                    return None;
                }
            };
            let scored = Scored {
                on: local(entry),
                condition,
                by_sites,
            };
            Some((entry.record.by.as_ref(), scored))
        })
        .collect()
}
