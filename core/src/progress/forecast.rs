//! When a target is reached, as a band of weeks, from the animal's own rate.

use super::chances::likely;
use super::filter::Belief;
use super::published::{FORECAST_WEEKS, LIKELY};
use super::trend::Trend;
use crate::units::BodyMass;

/// A target weight as a range, on the footing of the trend.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Aim {
    /// The low end.
    pub low: BodyMass,
    /// The high end; reached from above, it is reached here.
    pub high: BodyMass,
}

/// When the target is reached.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Forecast {
    /// What is likeliest lies within it now.
    Reached {
        /// The chance that it does.
        chance: f64,
    },
    /// After so many weeks, four times in five.
    Within {
        /// The earlier end.
        from_week: u32,
        /// The later end; none when it may lie further off than is looked ahead.
        to_week: Option<u32>,
    },
    /// It does not come nearer: with this chance it holds, or goes the other way.
    NotOnCourse {
        /// The chance.
        chance: f64,
    },
    /// Not within the weeks that are looked ahead.
    NotWithin {
        /// So many weeks.
        weeks: u32,
    },
    /// Too few readings say how fast it goes.
    NotKnown,
}

/// Which way the target lies.
#[derive(Clone, Copy)]
enum Way {
    Down(f64),
    Up(f64),
}

impl Way {
    /// The chance that a level has reached the target.
    fn reached(self, level: Belief) -> f64 {
        match self {
            Self::Down(high) => level.chance_at_most(high),
            Self::Up(low) => 1.0 - level.chance_at_most(low),
        }
    }
}

impl Trend {
    /// When the target is reached if it goes on as it does. It is refitted on every reading, and never reckoned from
    /// energy: what a kilogram costs differs too much between animals.
    pub fn forecast(&self, aim: Aim) -> Forecast {
        let Some(level) = self.filter.of(&self.on) else {
            return Forecast::NotKnown;
        };
        let (low, high) = (aim.low.to_kg(), aim.high.to_kg());
        let within = level.chance_at_most(high) - level.chance_at_most(low);
        let way = if level.mean > high {
            Way::Down(high)
        } else if level.mean < low {
            Way::Up(low)
        } else {
            return Forecast::Reached { chance: within };
        };
        let (Some(slope), Some(_)) = (self.filter.of(&[(1, 1.0)]), self.rate) else {
            return Forecast::NotKnown;
        };
        let away = match way {
            Way::Down(_) => 1.0 - slope.chance_at_most(0.0),
            Way::Up(_) => slope.chance_at_most(0.0),
        };
        // As often away from it as towards it is no course.
        if away >= 1.0 / 2.0 {
            return Forecast::NotOnCourse { chance: away };
        }
        self.first_weeks(way)
    }

    fn first_weeks(&self, way: Way) -> Forecast {
        let either_end = (1.0 - *LIKELY) / 2.0;
        let mut filter = self.filter.clone();
        let mut from_week = None;
        for week in 1..=*FORECAST_WEEKS {
            self.weeks_go_by(&mut filter, 1);
            let Some(level) = filter.of(&self.on) else {
                return Forecast::NotKnown;
            };
            let chance = way.reached(level);
            if from_week.is_none() && chance >= either_end {
                // The band holds the day itself: it may come at any time within the week before.
                from_week = Some(week - 1);
            }
            if let (Some(from_week), true) = (from_week, chance >= 1.0 - either_end) {
                return Forecast::Within {
                    from_week,
                    to_week: Some(week),
                };
            }
        }
        match from_week {
            Some(from_week) => Forecast::Within {
                from_week,
                to_week: None,
            },
            None => Forecast::NotWithin {
                weeks: *FORECAST_WEEKS,
            },
        }
    }

    /// Whether it stands within the target with a chance of 4 in 5.
    pub fn is_within(&self, aim: Aim) -> bool {
        self.filter.of(&self.on).is_some_and(|level| {
            let (low, high) = (aim.low.to_kg(), aim.high.to_kg());
            likely(level.chance_at_most(high) - level.chance_at_most(low))
        })
    }
}
