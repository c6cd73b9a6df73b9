//! The weight of an animal: what it loses or gains, how sure that is, when the target comes, and what it asks for.

pub mod chart;
#[cfg(test)]
mod tests;

use super::beside::{self, Stop};
use super::condition::score_every;
use super::horses;
use crate::rows::Range;
use crate::shelf::Shelf;
use chart::Chart;
use chrono::Days;
use tussock_core::animal::{Animal, AnimalId, Goal};
use tussock_core::limits::Ends;
use tussock_core::log::{Kind, Record, Wish, gather, trend_of};
use tussock_core::progress::{
    Again, Aim, Alarm, Footing, Forecast, Judged, Plateau, ProgressError, Rate, likely,
};
use tussock_core::units::{BodyMass, Instant, LocalDate, Zone};

/// The most plans of a yard that are looked through.
const OF_A_YARD: u32 = 200;
/// The most turnouts that are asked for: over a year of them.
pub(crate) const TURNOUTS: u32 = 3_000;

/// What the screen asks the disk for.
pub fn needs(animal: &AnimalId) -> Vec<Range> {
    let mut ranges = horses::one_needs(animal);
    // A group's plan says what its members ate.
    ranges.push(horses::kind_of_limit(&Kind::Plan, OF_A_YARD));
    // It went out with its group.
    ranges.push(horses::kind_of_limit(&Kind::Turnout, TURNOUTS));
    ranges
}

/// Which way it goes, four times in five.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Way {
    /// It loses.
    Losing,
    /// It gains.
    Gaining,
    /// Neither is likely enough to say.
    Level,
}

/// How the rate stands to what is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Pace {
    /// As wanted.
    OnCourse,
    /// Under 0.25 % a week.
    Slow,
    /// Over 1 % a week.
    TooFast,
    /// Not known well enough.
    NotSure,
    /// No loss is wanted.
    NotWanted,
}

/// What is asked of the person, the gravest first; what is for the vet stops the animal and is told as a stop.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Asks {
    /// Measure again now.
    MeasureAgain(Again),
    /// Feed more.
    FeedMore {
        /// Lost, in percent a week.
        percent: f64,
        /// Over so many weeks.
        weeks: f64,
        /// The chance that it is over the line.
        chance: f64,
    },
    /// It stands still.
    Plateau(Plateau),
}

/// The trend as it is shown.
#[derive(Clone, Debug, PartialEq)]
pub struct Trend {
    /// What it weighs on its footing.
    pub level: Ends<BodyMass>,
    /// What it truly weighs.
    pub weight: Ends<BodyMass>,
    /// A scale, or a tape alone.
    pub footing: Footing,
    /// The rate that is acted on, when there is one.
    pub rate: Option<Rate>,
    /// Which way.
    pub way: Way,
    /// How that stands to what is wanted.
    pub pace: Pace,
    /// Until when the gut settles.
    pub settling_until: Option<LocalDate>,
    /// The target, where there is one.
    pub aim: Option<Aim>,
    /// When it is reached; `None` without a target.
    pub forecast: Option<Forecast>,
    /// What is asked.
    pub asks: Vec<Asks>,
    /// The readings, the newest first.
    pub readings: Vec<Judged>,
    /// The picture.
    pub chart: Chart,
}

/// The weight of an animal.
#[derive(Clone, Debug, PartialEq)]
pub struct Weight {
    /// The animal.
    pub animal: Animal,
    /// The local day.
    pub today: LocalDate,
    /// What stops it.
    pub stop: Option<Stop>,
    /// The trend, or why there is none.
    pub trend: Result<Box<Trend>, ProgressError>,
    /// The day from which condition is scored again; `None` when nobody scored it.
    pub score_from: Option<LocalDate>,
}

/// The weight of an animal now; `None` when it is not there.
pub fn weight(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<Weight> {
    let records: Vec<&Record> = shelf.records().collect();
    let gathered = gather(&records, animal, now, zone, &Wish::default())?;
    let trend = trend_of(&records, animal, now, zone).map(|trend| {
        let aim = gathered.aim(&trend);
        let rate = trend.lately.or(trend.rate);
        let shown = Trend {
            level: trend.level,
            weight: trend.weight,
            footing: trend.footing,
            rate,
            way: rate.map_or(Way::Level, |rate| way(&rate)),
            pace: rate.map_or(Pace::NotSure, |rate| pace(&rate, gathered.animal.goal)),
            settling_until: trend.settling_until,
            aim,
            forecast: aim.map(|aim| trend.forecast(aim)),
            asks: asks(
                &trend.alarms(&gathered.animal),
                trend.plateau,
                gathered.animal.goal,
            ),
            readings: trend.readings.iter().rev().cloned().collect(),
            chart: Chart::of(&trend, aim),
        };
        Box::new(shown)
    });
    let score_from = gathered.condition.last().and_then(|scored| {
        let every = u64::try_from(score_every(gathered.animal.phase)).ok()?;
        scored.on.checked_add_days(Days::new(every))
    });
    Some(Weight {
        stop: beside::stop(&gathered),
        today: gathered.day,
        animal: gathered.animal,
        trend,
        score_from,
    })
}

fn way(rate: &Rate) -> Way {
    if likely(1.0 - rate.chances.gaining) {
        Way::Losing
    } else if likely(rate.chances.gaining) {
        Way::Gaining
    } else {
        Way::Level
    }
}

fn pace(rate: &Rate, goal: Goal) -> Pace {
    let chances = rate.chances;
    if likely(chances.over_one) {
        return Pace::TooFast;
    }
    match goal {
        Goal::Lose if likely(chances.under_quarter) => Pace::Slow,
        Goal::Lose if likely(chances.quarter_to_half + chances.half_to_one) => Pace::OnCourse,
        Goal::Lose => Pace::NotSure,
        Goal::Hold | Goal::Gain => Pace::NotWanted,
    }
}

fn asks(alarms: &[Alarm], plateau: Option<Plateau>, goal: Goal) -> Vec<Asks> {
    let mut found: Vec<Asks> = alarms
        .iter()
        .filter_map(|alarm| match alarm {
            Alarm::RingVet { .. } | Alarm::DonkeyMonth { .. } => None,
            Alarm::MeasureAgain(again) => Some(Asks::MeasureAgain(*again)),
            Alarm::FeedMore {
                percent,
                weeks,
                chance,
            } => Some(Asks::FeedMore {
                percent: *percent,
                weeks: *weeks,
                chance: *chance,
            }),
        })
        .collect();
    let still = plateau.filter(|_| goal == Goal::Lose);
    found.extend(still.map(Asks::Plateau));
    found
}
