//! The trend of an animal's weight: what it weighs now, and what it loses or gains in a week.

use super::chances::{Chances, likely};
use super::error::ProgressError;
use super::filter::{Belief, Filter};
use super::model::{DAYS_OF_WEEK, Model};
use super::published::{
    AMOUNT_STEP, BAND, GUT_FILL_JUMP, LEVEL_DRIFT, ODD_FROM, PERSON_OFFSET, RATE_READINGS,
    RATE_WEEKS, SCALE_OFFSET, SETTLES_IN, SLOPE_DRIFT, TAPE_SCATTER,
};
use super::weighing::{Change, DatedChange, Weighing, before};
use crate::limits::Ends;
use crate::sources::{Provenance, RecordId};
use crate::units::{BodyMass, LocalDate};
use std::collections::BTreeSet;

/// On whose word the weights of the trend stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Footing {
    /// A scale: what it weighs.
    Scale,
    /// A tape alone, in the hands that held it most: what that tape says. The change is sure, the weight itself is out by
    /// the band of the tape.
    Tape,
}

/// A weighing as the trend judges it.
#[derive(Clone, Debug, PartialEq)]
pub struct Judged {
    /// The record.
    pub record: RecordId,
    /// The day.
    pub day: LocalDate,
    /// What it said.
    pub read: BodyMass,
    /// The same on the footing of the trend: less what its instrument and person stand off by.
    pub on_footing: BodyMass,
    /// How far it can be out four times in five, either way, beside what stands off for good.
    pub error: BodyMass,
    /// A scale.
    pub is_scale: bool,
    /// All others contradict it: kept, shown, and not believed.
    pub odd: bool,
    /// Taken while the gut settled.
    pub settling: bool,
}

/// What changes in a week: less than nothing when it loses.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rate {
    /// In weight; four times in five between the ends.
    pub a_week: Ends<BodyMass>,
    /// In percent of what it weighs now.
    pub percent: Ends<f64>,
    /// How likely each pace is.
    pub chances: Chances,
}

/// The weight stands still on a ration that should move it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Plateau {
    /// Over how many weeks.
    pub weeks: f64,
    /// From how many readings.
    pub readings: usize,
    /// The chance that it loses under 0.25 % a week.
    pub chance: f64,
}

/// The trend up to a day.
#[derive(Clone, Debug)]
pub struct Trend {
    /// The day.
    pub day: LocalDate,
    /// On whose word the weights stand.
    pub footing: Footing,
    /// What it truly weighs, four times in five.
    pub weight: Ends<BodyMass>,
    /// What it weighs on the footing of the trend, four times in five: the cord that is drawn, and what a target stands to.
    pub level: Ends<BodyMass>,
    /// The rate as it is now; none while the readings do not say.
    pub rate: Option<Rate>,
    /// The mean rate over the last four weeks (fewer when the baseline is nearer, more when five readings took longer);
    /// none within a week of the baseline.
    pub lately: Option<Rate>,
    /// A plateau, when one is found.
    pub plateau: Option<Plateau>,
    /// The day the rate is counted from: the first reading, or the day the gut had settled after the last change.
    pub baseline: LocalDate,
    /// Until when the gut settles, while it does.
    pub settling_until: Option<LocalDate>,
    /// The weighings in their order.
    pub readings: Vec<Judged>,
    /// The constants and records it came from.
    pub from: Provenance,
    pub(super) model: Model,
    pub(super) filter: Filter,
    /// Which states stand for the level on the footing.
    pub(super) on: Vec<(usize, f64)>,
}

impl Trend {
    /// The trend of weighings up to a day, in any order; those after it are not looked at.
    pub fn fit(
        weighings: &[Weighing],
        changes: &[DatedChange],
        day: LocalDate,
    ) -> Result<Self, ProgressError> {
        let (model, used) = Model::of(weighings, changes, day)?;
        let run = model.run(day, day, &BTreeSet::new());
        let offsets = footing_of(&used, &model);
        let footing = if offsets.is_empty() {
            Footing::Scale
        } else {
            Footing::Tape
        };
        let on: Vec<(usize, f64)> = std::iter::once(0)
            .chain(offsets.iter().copied())
            .map(|state| (state, 1.0))
            .collect();
        let filter = run.filter;
        let nowhere = Belief {
            mean: model.size.to_kg(),
            variance: f64::INFINITY,
        };
        let level = filter.of(&on).unwrap_or(nowhere);
        let weight = filter.of(&[(0, 1.0)]).unwrap_or(nowhere);
        let readings = judged(&used, &model, &filter, &on);
        let first = used.first().map_or(day, |weighing| weighing.day);
        let settled = changes
            .iter()
            .filter(|change| change.day <= day)
            .filter_map(DatedChange::settled)
            .max();
        let mut trend = Self {
            day,
            footing,
            weight: band(weight).map(BodyMass::kg),
            level: band(level).map(BodyMass::kg),
            rate: None,
            lately: None,
            plateau: None,
            baseline: settled.map_or(first, |settled| settled.max(first)),
            settling_until: settled.filter(|settled| day < *settled),
            readings,
            from: sources(&used),
            model,
            filter,
            on,
        };
        trend.rate = trend.rate_now();
        trend.lately = trend.rate_lately();
        trend.plateau = trend.lately.as_ref().and_then(plateau);
        Ok(trend)
    }

    /// What changed under the weight up to the day, the earliest first.
    pub fn changes(&self) -> &[DatedChange] {
        &self.model.changes
    }

    /// The chances to act on: of the last weeks where there are any, else of the rate now.
    pub fn chances(&self) -> Option<Chances> {
        self.lately.or(self.rate).map(|rate| rate.chances)
    }

    /// The last day with a reading.
    pub fn last_read(&self) -> Option<LocalDate> {
        self.readings.last().map(|reading| reading.day)
    }

    /// The levels of the past on the footing of the trend, one for each of some days, as all readings together say.
    pub fn levels(&self, days: &BTreeSet<LocalDate>) -> Vec<(LocalDate, Ends<BodyMass>)> {
        let run = self.model.run(self.day, self.day, days);
        let kept = run.kept.iter().filter_map(|(day, state)| {
            let level = run.filter.of(&self.on_state(*state))?;
            Some((*day, band(level).map(BodyMass::kg)))
        });
        kept.collect()
    }

    /// What it will weigh on the footing of the trend after so many weeks if it goes on like this; none while the rate is
    /// not known.
    pub fn ahead(&self, weeks: u32) -> Option<Ends<BodyMass>> {
        self.rate?;
        let mut filter = self.filter.clone();
        self.weeks_go_by(&mut filter, weeks);
        filter
            .of(&self.on)
            .map(|level| band(level).map(BodyMass::kg))
    }

    pub(super) fn weeks_go_by(&self, filter: &mut Filter, weeks: u32) {
        let (level, slope) = self.model.drift();
        // numeric: days of a week
        let days = weeks.saturating_mul(7);
        filter.days(days, level, slope);
    }

    /// The level on the footing, with a kept state in place of the level of today.
    pub(super) fn on_state(&self, state: usize) -> Vec<(usize, f64)> {
        let offsets = self.on.iter().filter(|(of, _)| *of != 0).copied();
        std::iter::once((state, 1.0)).chain(offsets).collect()
    }

    fn rate_now(&self) -> Option<Rate> {
        let slope = self.filter.of(&[(1, DAYS_OF_WEEK)])?;
        let last = self.last_read()?;
        let from = self.baseline.min(last);
        Some(self.rate_of(slope, from, last))
    }

    /// The first day that a rate may be counted from: the baseline, or the last change of amounts after it.
    fn counted_from(&self) -> LocalDate {
        let amounts = self.model.amounts().map(|day| day.max(self.baseline));
        amounts.max().unwrap_or(self.baseline)
    }

    fn rate_lately(&self) -> Option<Rate> {
        let last = self.last_read()?;
        let since = self.counted_from();
        let weeks_back = before(last, whole_days(*RATE_WEEKS));
        let believed: Vec<LocalDate> = self.believed().map(|reading| reading.day).collect();
        // Five readings may have taken longer.
        let fifth = believed.iter().rev().nth(RATE_READINGS.saturating_sub(1));
        let from = fifth
            .map_or(weeks_back, |day| weeks_back.min(*day))
            .max(since);
        if weeks_between(from, last) < 1.0 {
            return None;
        }
        let run = self
            .model
            .run(self.day, self.day, &BTreeSet::from([from, last]));
        let (then, now) = (run.kept.get(&from)?, run.kept.get(&last)?);
        let change = run.filter.of(&[(*now, 1.0), (*then, -1.0)])?;
        Some(self.rate_of(change.times(1.0 / weeks_between(from, last)), from, last))
    }

    /// A rate from a change in kilograms a week.
    fn rate_of(&self, change: Belief, from: LocalDate, to: LocalDate) -> Rate {
        let percent = change.times(100.0 / self.level.likely.to_kg());
        let between = |reading: &&Judged| from <= reading.day && reading.day <= to;
        let readings = self.believed().filter(between).count();
        Rate {
            a_week: band(change).map(BodyMass::kg),
            percent: band(percent),
            chances: Chances::of(percent, weeks_between(from, to), readings),
        }
    }

    pub(super) fn believed(&self) -> impl DoubleEndedIterator<Item = &Judged> {
        self.readings.iter().filter(|reading| !reading.odd)
    }
}

/// Four fifths of what may be.
pub(super) fn band(of: Belief) -> Ends<f64> {
    let either_way = *BAND * of.spread();
    Ends::new(of.mean - either_way, of.mean, of.mean + either_way)
}

pub(super) fn weeks_between(from: LocalDate, to: LocalDate) -> f64 {
    (to - from).num_days() as f64 / DAYS_OF_WEEK
}

#[allow(
    clippy::cast_possible_truncation,
    reason = "a few weeks in days, far within the range"
)]
pub(super) fn whole_days(weeks: f64) -> i64 {
    (weeks * DAYS_OF_WEEK).round() as i64
}

fn plateau(rate: &Rate) -> Option<Plateau> {
    let chances = rate.chances;
    let enough = chances.weeks >= *RATE_WEEKS && chances.readings >= *RATE_READINGS;
    (enough && likely(chances.under_quarter)).then_some(Plateau {
        weeks: chances.weeks,
        readings: chances.readings,
        chance: chances.under_quarter,
    })
}

/// The offsets of the tape and the hands that were used most, the later of equals; none when a scale was used at all.
fn footing_of(used: &[Weighing], model: &Model) -> Vec<usize> {
    if used.iter().any(|weighing| weighing.weight.is_scale()) {
        return Vec::new();
    }
    let offsets = || model.seen.iter().map(|seen| &seen.offsets);
    offsets()
        .max_by_key(|of| offsets().filter(|other| other == of).count())
        .cloned()
        .unwrap_or_default()
}

fn judged(used: &[Weighing], model: &Model, filter: &Filter, on: &[(usize, f64)]) -> Vec<Judged> {
    let one = |(weighing, seen): (&Weighing, &super::model::Seen)| {
        // What it stands off by, against what the footing stands off by.
        let own = seen.offsets.iter().map(|state| (*state, -1.0));
        let footing = on.iter().filter(|(state, _)| *state != 0).copied();
        let moved: Vec<(usize, f64)> = own.chain(footing).collect();
        let moved = filter.of(&moved).map_or(0.0, |belief| belief.mean);
        Judged {
            record: weighing.record.clone(),
            day: weighing.day,
            read: weighing.weight.value,
            on_footing: BodyMass::kg(seen.kg + moved),
            error: BodyMass::kg(*BAND * seen.variance.sqrt()),
            is_scale: weighing.weight.is_scale(),
            odd: !seen.believed,
            settling: model.is_settling(weighing.day),
        }
    };
    used.iter().zip(&model.seen).map(one).collect()
}

fn sources(used: &[Weighing]) -> Provenance {
    let constants = Provenance::new()
        .constant(&TAPE_SCATTER)
        .constant(&PERSON_OFFSET)
        .constant(&SCALE_OFFSET)
        .constant(&LEVEL_DRIFT)
        .constant(&SLOPE_DRIFT)
        .constant(&AMOUNT_STEP)
        .constant(&GUT_FILL_JUMP)
        .constant(&SETTLES_IN)
        .constant(&ODD_FROM);
    used.iter()
        .fold(constants, |from, weighing| from.and(&weighing.weight.from))
}

impl Model {
    /// The days on which the amounts of the plan changed.
    fn amounts(&self) -> impl Iterator<Item = LocalDate> {
        self.changes
            .iter()
            .filter(|change| change.change == Change::Amounts)
            .map(|change| change.day)
    }
}
