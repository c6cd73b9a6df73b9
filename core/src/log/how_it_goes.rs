//! From records to what phases and the next step are decided on.

use super::bodies::{Body, ReadingV1};
use super::envelope::Record;
use super::gather::{Gathered, Wish, gather};
use super::holding::plan_that_feeds;
use super::kind::Kind;
use super::ledger::ledger_of;
use crate::animal::{Animal, AnimalId, Laminitis, VetFlag};
use crate::assess::best;
use crate::day::{Ledger, Totals};
use crate::limits::published::{HOLDING_BAND, REVIEW_LOSING};
use crate::limits::{lowest_level_word, starting_level, step_down};
use crate::plan::{Draft, GrassLine};
use crate::progress::{
    Eaten, Facts, FastLoss, HayKnown, HowSoon, Pace, TargetStands, Trend, donkey_too_fast,
};
use crate::round::Subject;
use crate::safety::{Refusal, VetUrgency};
use crate::units::{BodyMass, Instant, Length, LocalDate, LocalTime, PartOfBody, Zone};
use chrono::Days;

/// What is known beside the records of one animal.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Beside {
    /// Days the hay it eats still lasts, when known.
    pub hay_lasts: Option<i64>,
    /// When somebody comes where the records do not say it.
    pub visits: Vec<LocalTime>,
}

/// How it goes with an animal.
#[derive(Clone, Debug, PartialEq)]
pub struct HowItGoes {
    /// What is decided on.
    pub facts: Facts,
    /// What the records say.
    pub gathered: Gathered,
    /// The target of its weight: what somebody set, else as reckoned; `None` where none can be.
    pub target: Option<BodyMass>,
}

/// How it goes with an animal at an instant, by the trend of its weight where there is one; `None` when it is not among the
/// records. Without a trend no rate is known, and nothing is decided on one.
pub fn how_it_goes(
    records: &[&Record],
    animal: &AnimalId,
    now: Instant,
    zone: &impl Zone,
    beside: &Beside,
    trend: Option<&Trend>,
) -> Option<HowItGoes> {
    let mut gathered = gather(records, animal, now, zone, &Wish::default())?;
    if gathered.visits.is_empty() {
        gathered.visits.clone_from(&beside.visits);
    }
    let day = gathered.day;
    // What its group's plan gives it counts as much as a plan of its own; one that rests does not.
    let plan = plan_that_feeds(records, animal, now, day);
    gathered.level_now = plan.as_ref().map(|plan| plan.level.part());
    let who = &gathered.animal;
    let start = *starting_level(who);
    let level = gathered.level_now;
    let at_level = asked(&gathered, level.unwrap_or(start));
    let next_down = step_down(level.unwrap_or(start));
    let below = next_down.and_then(|to| asked(&gathered, to));
    let weight = best(&gathered.weights, day).map(|dated| dated.weight.value);
    let ledger = ledger_of(
        records,
        &Subject::Animal(animal.clone()),
        month(day),
        now,
        zone,
    );
    let target = who.target.or_else(|| {
        let draft = at_level.as_ref()?;
        draft.target.as_ref().map(|target| target.value)
    });
    let word = lowest_level_word(&gathered.words, &who.id, day).map(|(_, lowest)| lowest);
    let since = gathered.phase_since;
    let facts = Facts {
        day,
        phase: who.phase,
        phase_before: gathered.phase_before,
        days_in_phase: Some((day - since).num_days()),
        goal: who.goal,
        fat_in_blood_risk: who.kind.fat_in_blood_risk(),
        donkey: who.kind.is_donkey(),
        // A loss that is too fast has a row of its own, with what to feed.
        stop: gathered
            .stops()
            .iter()
            .find(|(why, _)| !matches!(why, Refusal::LosesTooFast(_)))
            .map(|(_, vet)| ring(*vet)),
        look_again: gathered.look_over.again.is_open() || gathered.look_over.signs.look_again(),
        laminitis_now: who.health.laminitis == Laminitis::Active,
        sign_stands: gathered.look_over.signs.for_the_vet(),
        look_over_clean: gathered.look_over.signs.clean(),
        not_sound: not_sound(who),
        vet_spoke: gathered
            .words
            .iter()
            .any(|word| word.animal == who.id && word.holds_on(day) && since <= word.given),
        vets_level: word,
        condition: gathered.condition.last().map(|scored| scored.condition),
        scores: gathered
            .condition
            .iter()
            .rev()
            .map(|scored| scored.condition)
            .collect(),
        weighings: weighings(&gathered, since),
        weighed: weight.is_some(),
        pace: trend.and_then(Pace::of),
        fast_loss: trend.map_or(FastLoss::None, |trend| FastLoss::of(trend, who)),
        donkey_too_fast: trend.map_or(0.0, |trend| donkey_too_fast(trend, who)),
        target: target.map(|target| {
            let stands = stands(records, &gathered, target, zone);
            match trend {
                Some(trend) => stands.with_trend(trend, target),
                None => stands,
            }
        }),
        level,
        start,
        next_down,
        floor_reached: floor_reached(at_level.as_ref(), below.as_ref()),
        bars: below
            .as_ref()
            .map(|draft| draft.allowance.bars.clone())
            .unwrap_or_default(),
        days_at_start: i64::from(gathered.days_at_start),
        review: plan.map(|plan| plan.review),
        eaten: weight.and_then(|weight| eaten(&ledger, weight)),
        grass_not_counted: at_level
            .as_ref()
            .is_some_and(|draft| matches!(draft.grass, GrassLine::NotCounted)),
        hay: hay(&gathered, beside.hay_lasts),
    };
    Some(HowItGoes {
        facts,
        gathered,
        target,
    })
}

/// The draft at a level, whatever is asked for in the records.
fn asked(gathered: &Gathered, level: PartOfBody) -> Option<Draft> {
    let of = Gathered {
        asked: Some(level),
        ..gathered.clone()
    };
    of.draft().ok()
}

/// A lower level takes nothing away where a floor raises it to what is fed already.
fn floor_reached(at_level: Option<&Draft>, below: Option<&Draft>) -> bool {
    let (Some(at_level), Some(below)) = (at_level, below) else {
        return false;
    };
    below.allowance.bars.is_empty()
        && !below.raised.is_empty()
        && at_level.dry_matter <= below.dry_matter
}

/// The four weeks up to a day.
fn month(day: LocalDate) -> (LocalDate, LocalDate) {
    let back = Days::new(REVIEW_LOSING.unsigned_abs());
    (day.checked_sub_days(back).unwrap_or(day), day)
}

const fn ring(vet: VetUrgency) -> HowSoon {
    match vet {
        VetUrgency::First => HowSoon::First,
        VetUrgency::ThisMorning => HowSoon::ThisMorning,
        VetUrgency::Today => HowSoon::Today,
        VetUrgency::Now => HowSoon::Now,
    }
}

fn not_sound(animal: &Animal) -> bool {
    animal.health.flags.iter().any(|flag| {
        matches!(
            flag,
            VetFlag::Lame | VetFlag::PainRelief | VetFlag::BoxRest | VetFlag::Sick
        )
    })
}

/// Days on which it was weighed since it came into its phase.
fn weighings(of: &Gathered, since: LocalDate) -> u32 {
    let mut days: Vec<LocalDate> = of
        .weights
        .iter()
        .map(|dated| dated.day)
        .filter(|day| (since..=of.day).contains(day))
        .collect();
    days.sort_unstable();
    days.dedup();
    u32::try_from(days.len()).unwrap_or(u32::MAX)
}

/// How its weight stands to its target.
fn stands(records: &[&Record], of: &Gathered, target: BodyMass, zone: &impl Zone) -> TargetStands {
    let over = target * (1.0 + *HOLDING_BAND);
    let readings_over = of
        .weights
        .iter()
        .rev()
        .filter(|dated| dated.day <= of.day)
        .take_while(|dated| of.phase_since <= dated.day && over < dated.weight.value)
        .count();
    TargetStands {
        readings_over: u32::try_from(readings_over).unwrap_or(u32::MAX),
        girth_up: girth_up(records, of, zone),
        ..TargetStands::default()
    }
}

/// By how much its girth grew from the first tape of its phase to the last.
fn girth_up(records: &[&Record], of: &Gathered, zone: &impl Zone) -> Option<Length> {
    let mut girths: Vec<(Instant, Length)> = records
        .iter()
        .filter(|record| {
            let day = zone.to_local(record.at).date;
            record.kind == Kind::Weight
                && !record.gone
                && record.subject.id() == of.animal.id.as_str()
                && (of.phase_since..=of.day).contains(&day)
                && record.at <= of.now
        })
        .filter_map(|record| match Body::read(record).ok()? {
            Body::Weight(body) => match body.reading {
                ReadingV1::Tape { tape } => Some((record.at, tape.heart_girth.mm.length())),
                ReadingV1::Scale { .. } => None,
            },
            _ => None,
        })
        .collect();
    girths.sort_by_key(|(at, _)| *at);
    let ((_, first), (_, last)) = (girths.first()?, girths.last()?);
    Some(*last - *first)
}

/// What was really eaten over the days that are over and had a plan or an entry.
fn eaten(ledger: &Ledger, weight: BodyMass) -> Option<Eaten> {
    let over = Ledger {
        days: ledger
            .days
            .iter()
            .filter(|day| !day.runs && !day.is_blank())
            .cloned()
            .collect(),
    };
    let level = over.level(weight)?;
    let totals: Totals = over.totals();
    let shares = totals.offered_known?;
    Some(Eaten {
        level: level.level,
        planned: totals
            .planned
            .map(|dry| (dry / f64::from(level.days)).part_of(weight)),
        seen: shares.seen,
        not_known: shares.not_known,
        days: level.days,
    })
}

fn hay(of: &Gathered, lasts: Option<i64>) -> HayKnown {
    if of.hays.is_empty() {
        HayKnown::None
    } else if of.hays.iter().all(|(lot, _)| !lot.reports.is_empty()) {
        HayKnown::Tested
    } else {
        HayKnown::NotTested { lasts }
    }
}

#[cfg(test)]
pub(super) mod tests;
