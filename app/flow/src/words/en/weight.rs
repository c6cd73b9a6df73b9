//! The trend of a weight, in English.

use super::English;
use super::numbers::odds;
use crate::views::weight::{Asks, Pace, Trend, Way, Weight};
use crate::words::{Said, UnitWords, WeightWords};
use tussock_core::progress::{Again, Footing, Forecast, Judged, ProgressError};
use tussock_core::units::show::fixed;
use tussock_core::units::{BodyMass, LocalDate};

/// Kilograms with a tenth, without their sign.
fn tenths(mass: BodyMass) -> String {
    fixed(mass.to_kg().abs(), 1)
}

fn weeks(weeks: f64) -> String {
    format!("{} weeks", fixed(weeks, 0))
}

impl WeightWords for English {
    fn weight_so_far(&self) -> &'static str {
        "Weight over time"
    }
    fn weight_sentence(&self, weight: &Weight) -> String {
        let name = &weight.animal.name;
        let trend = match &weight.trend {
            Ok(trend) => trend,
            Err(ProgressError::NoWeighings) => return format!("{name} was never weighed"),
            Err(_) => return format!("{name}: its weighings make no trend"),
        };
        let Some(rate) = &trend.rate else {
            return format!("{name}: too few weighings to say where it goes");
        };
        let kg = tenths(rate.a_week.likely);
        match trend.way {
            Way::Losing => format!("{name}: losing {kg} kg a week"),
            Way::Gaining => format!("{name}: gaining {kg} kg a week"),
            Way::Level => format!("{name}: level, as far as can be told"),
        }
    }
    fn weight_pace(&self, trend: &Trend) -> Option<String> {
        let rate = trend.rate.as_ref()?;
        // A loss is told as such: the least lost first.
        let (from, to, what) = match trend.way {
            Way::Gaining => (rate.percent.least, rate.percent.most, "gained"),
            Way::Losing | Way::Level => (-rate.percent.most, -rate.percent.least, "lost"),
        };
        let likely = rate.percent.likely.abs();
        let band = match trend.way {
            Way::Level => format!(
                "Between {} % a week {what} and {} % gained, four times in five",
                fixed(to.max(0.0), 1),
                fixed((-from).max(0.0), 1)
            ),
            Way::Losing | Way::Gaining => format!(
                "{} % a week, between {} and {}",
                fixed(likely, 1),
                fixed(from, 1),
                fixed(to, 1)
            ),
        };
        let course = match trend.pace {
            Pace::OnCourse => ": on course",
            Pace::Slow => ": slower than 0.25",
            Pace::TooFast => ": too fast",
            Pace::NotSure => ": not clear yet whether that is on course",
            Pace::NotWanted => "",
        };
        Some(format!("{band}{course}"))
    }
    fn weighs_now(&self, trend: &Trend) -> String {
        let level = &trend.level;
        let by = match trend.footing {
            Footing::Scale => "It weighs",
            Footing::Tape => "By its tape it weighs",
        };
        let band = self.body_between(level.likely, level.least, level.most);
        match trend.footing {
            Footing::Scale => format!("{by} {band}."),
            Footing::Tape => format!(
                "{by} {band}. A tape tells change better than weight: in truth it may be {} to {}.",
                fixed(trend.weight.least.to_kg(), 0),
                self.body(trend.weight.most)
            ),
        }
    }
    fn gut_settles(&self, until: LocalDate) -> Said {
        Said::because(
            format!(
                "What fills its gut has changed: the trend counts from {}",
                self.day(until)
            ),
            "A new ration, straw, soaking, box rest or a journey moves weight by gut fill, which is no fat lost.",
        )
    }
    fn weight_asks(&self, asks: &Asks) -> Said {
        match asks {
            Asks::MeasureAgain(again) => match again {
                Again::Baseline => Said::because(
                    "Measure once more today",
                    "What comes after is held against this reading: two are better than one.",
                ),
                Again::Down { percent } => Said::because(
                    format!(
                        "Measure again now: {} % down since last time",
                        fixed(*percent, 1)
                    ),
                    "One reading is no trend. If a second one says the same, the vet is rung.",
                ),
                Again::TooFast { percent } => Said::because(
                    format!(
                        "Measure again now: this would be {} % a week",
                        fixed(*percent, 1)
                    ),
                    "One reading is no trend. If a second one says the same, the vet is rung.",
                ),
                Again::NotSure { chance } => Said::because(
                    format!(
                        "Measure once more: {} that it loses too fast",
                        odds(*chance)
                    ),
                    "Two readings have not settled it. A third one does.",
                ),
            },
            Asks::FeedMore {
                percent,
                weeks: over,
                chance,
            } => Said::because(
                format!(
                    "Feed more at the review: {} % a week over {}",
                    fixed(*percent, 1),
                    weeks(*over)
                ),
                format!("It loses more than 1 % a week, {}.", odds(*chance)),
            ),
            Asks::Plateau(plateau) => Said::because(
                format!(
                    "It stands still over {} and {} readings",
                    weeks(plateau.weeks),
                    plateau.readings
                ),
                format!(
                    "It loses under 0.25 % a week, {}. First check what was really eaten, then one step down at the review.",
                    odds(plateau.chance)
                ),
            ),
        }
    }
    fn weight_asks_word(&self, asks: &Asks) -> &'static str {
        match asks {
            Asks::MeasureAgain(_) => "due",
            Asks::FeedMore { .. } => "too fast",
            Asks::Plateau(_) => "level",
        }
    }
    fn target_word(&self, forecast: Option<&Forecast>) -> &'static str {
        match forecast {
            Some(Forecast::Reached { .. }) => "within",
            Some(Forecast::Within { .. } | Forecast::NotWithin { .. }) => "later",
            Some(Forecast::NotOnCourse { .. }) => "not nearer",
            Some(Forecast::NotKnown) | None => "not known",
        }
    }
    fn target_tag(&self, trend: &Trend) -> Option<String> {
        let aim = trend.aim?;
        Some(format!(
            "Target {} to {}",
            fixed(aim.low.to_kg(), 0),
            self.body(aim.high)
        ))
    }
    fn forecast(&self, forecast: &Forecast) -> String {
        match forecast {
            Forecast::Reached { chance } => format!("within it now, {}", odds(*chance)),
            Forecast::Within {
                from_week,
                to_week: Some(to_week),
            } if from_week == to_week => format!("reached in {to_week} weeks"),
            Forecast::Within {
                from_week,
                to_week: Some(to_week),
            } => format!("reached in {from_week} to {to_week} weeks, four times in five"),
            Forecast::Within {
                from_week,
                to_week: None,
            } => format!("reached in {from_week} weeks at the earliest; how late is not known"),
            Forecast::NotOnCourse { chance } => {
                format!("not coming nearer, {}", odds(*chance))
            }
            Forecast::NotWithin { weeks } => format!("not within {weeks} weeks at this rate"),
            Forecast::NotKnown => "too few weighings to say when".to_owned(),
        }
    }
    fn no_target(&self) -> Said {
        Said::because(
            "No target yet",
            "A target is reckoned from a condition score, or set in the details.",
        )
    }
    fn condition_lags(&self, weight: &Weight) -> Said {
        match weight.score_from {
            None => Said::because(
                "Score its condition",
                "Nobody has scored it. Condition says what the weight alone cannot.",
            ),
            Some(from) if from <= weight.today => Said::because(
                "Condition may lag: score it again now",
                "Fat that is lost shows weeks later under the hand.",
            ),
            Some(from) => Said::because(
                format!("Condition may lag: score it again from {}", self.day(from)),
                "Fat that is lost shows weeks later under the hand.",
            ),
        }
    }
    fn weight_picture(&self, weight: &Weight) -> String {
        let Ok(trend) = &weight.trend else {
            return self.weight_sentence(weight);
        };
        let chart = &trend.chart;
        let forecast = match (self.target_tag(trend), &trend.forecast) {
            (Some(target), Some(forecast)) => format!(" {target}, {}.", self.forecast(forecast)),
            _ => String::new(),
        };
        format!(
            "{}. {} readings from {} to {}.{forecast}",
            self.weight_sentence(weight),
            trend.readings.len(),
            self.day(chart.from),
            self.day(weight.today),
        )
    }
    fn weight_marks(&self) -> &'static str {
        "Strokes are readings, as long as each can be out: narrow by tape, wide by scale, dotted where all others contradict it. Dotted edges say where it may go. The scale does not begin at zero."
    }
    fn weight_table(&self) -> &'static str {
        "Every weighing"
    }
    fn weight_columns(&self) -> [&'static str; 5] {
        ["Day", "Read", "On the trend", "With", "Remarks"]
    }
    fn weight_row(&self, read: &Judged) -> Vec<String> {
        let remarks = match (read.odd, read.settling) {
            (true, _) => "odd: kept, not believed",
            (false, true) => "while the gut settled",
            (false, false) => "",
        };
        vec![
            self.day(read.day),
            self.body(read.read),
            self.body(read.on_footing),
            if read.is_scale { "scale" } else { "tape" }.to_owned(),
            remarks.to_owned(),
        ]
    }
    fn weight_why(&self) -> Said {
        Said::because(
            "One reading is no trend",
            "A centimetre of girth is 1 to 2 % of the weight. Tape, scale and every pair of hands stand off in their own way, which the trend takes out. It is no dose weight: the vet weighs for drugs.",
        )
    }
    fn add_a_weight(&self) -> &'static str {
        "Add a weight"
    }
}
