//! From the trend to what the tables ask of it.

use super::facts::{FastLoss, Pace, RateBands, TargetStands};
use crate::animal::Animal;
use crate::limits::Ends;
use crate::limits::published::HOLDING_BAND;
use crate::progress::alarm::{Again, Alarm};
use crate::progress::trend::Trend;
use crate::units::BodyMass;

impl Pace {
    /// The mean rate of the last weeks; `None` while the readings do not say one.
    pub fn of(trend: &Trend) -> Option<Self> {
        let rate = trend.lately.as_ref()?;
        let chances = rate.chances;
        let lost = |kg: BodyMass| BodyMass::ZERO - kg;
        let part = |percent: f64| -percent / 100.0;
        Some(Self {
            lost_a_week: Ends::new(
                lost(rate.a_week.most),
                lost(rate.a_week.likely),
                lost(rate.a_week.least),
            ),
            part_a_week: Ends::new(
                part(rate.percent.most),
                part(rate.percent.likely),
                part(rate.percent.least),
            ),
            bands: RateBands {
                under_quarter: chances.under_quarter,
                to_half: chances.quarter_to_half,
                to_one: chances.half_to_one,
                over_one: chances.over_one,
            },
            gaining: chances.gaining,
            weeks: chances.weeks,
            readings: chances.readings,
        })
    }
}

impl FastLoss {
    /// What weight alone says of an animal that lost too much at once or loses too fast, the gravest of it.
    pub fn of(trend: &Trend, animal: &Animal) -> Self {
        let found = trend
            .alarms(animal)
            .into_iter()
            .find_map(|alarm| match alarm {
                Alarm::RingVet { chance, .. } => Some(Self::Confirmed { chance }),
                Alarm::MeasureAgain(Again::Down { percent } | Again::TooFast { percent }) => {
                    Some(Self::Once {
                        part: percent / 100.0,
                    })
                }
                Alarm::MeasureAgain(Again::NotSure { chance }) => Some(Self::NotSure { chance }),
                Alarm::MeasureAgain(Again::Baseline)
                | Alarm::DonkeyMonth { .. }
                | Alarm::FeedMore { .. } => None,
            });
        found.unwrap_or_default()
    }
}

/// The chance that a donkey loses more in a month than it may; none while the trend does not say so.
pub fn donkey_too_fast(trend: &Trend, animal: &Animal) -> f64 {
    trend
        .alarms(animal)
        .into_iter()
        .find_map(|alarm| match alarm {
            Alarm::DonkeyMonth { chance, .. } => Some(chance),
            Alarm::RingVet { .. } | Alarm::FeedMore { .. } | Alarm::MeasureAgain(_) => None,
        })
        .unwrap_or_default()
}

impl TargetStands {
    /// The chances of its level on the footing of the trend against a target.
    #[must_use]
    pub fn with_trend(self, trend: &Trend, target: BodyMass) -> Self {
        let Some(level) = trend.filter.of(&trend.on) else {
            return self;
        };
        let at_most = |mass: BodyMass| level.chance_at_most(mass.to_kg());
        let (low, high) = (
            target * (1.0 - *HOLDING_BAND),
            target * (1.0 + *HOLDING_BAND),
        );
        Self {
            reached: at_most(target),
            in_band: at_most(high) - at_most(low),
            over_band: 1.0 - at_most(high),
            ..self
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::animal::{
        AnimalId, Goal, Health, Kind, Phase, StageFacts, State, Temperament, Workload,
    };
    use crate::assess::{Reading, ScaleInstrument, ScaleWeight, weigh};
    use crate::progress::Weighing;
    use crate::sources::RecordId;
    use crate::units::LocalDate;
    use chrono::Days;

    fn cob() -> Animal {
        Animal {
            id: AnimalId("moss".into()),
            name: "Moss".into(),
            kind: Kind::Horse,
            body_type: None,
            sex: None,
            born: None,
            height: None,
            state: State::Adult,
            stage: StageFacts::default(),
            work: Workload::Maintenance(Temperament::Average),
            health: Health::default(),
            goal: Goal::Lose,
            phase: Phase::Losing,
            target: None,
        }
    }

    /// On a scale once a week, losing so many kilograms between.
    fn weekly(weeks: u64, kg: f64) -> Trend {
        let first: LocalDate = "2026-03-02".parse().unwrap();
        let weighings: Vec<Weighing> = (0..=weeks)
            .map(|week| {
                let day = first + Days::new(7 * week);
                let reading = Reading::Scale(ScaleWeight {
                    mass: BodyMass::kg(450.0 - kg * week as f64),
                    instrument: ScaleInstrument::AnimalScale,
                });
                Weighing {
                    day,
                    weight: weigh(&cob(), &reading, day).unwrap().0,
                    by: None,
                    record: RecordId(format!("w{week}")),
                }
            })
            .collect();
        Trend::fit(&weighings, &[], first + Days::new(7 * weeks)).unwrap()
    }

    #[test]
    fn a_loss_counts_up_and_its_chances_make_one() {
        let pace = Pace::of(&weekly(8, 3.0)).unwrap();
        assert!(pace.lost_a_week.in_order() && pace.part_a_week.in_order());
        assert!(
            (pace.lost_a_week.likely.to_kg() - 3.0).abs() < 0.3,
            "{pace:?}"
        );
        let bands = pace.bands;
        let all = bands.under_quarter + bands.to_half + bands.to_one + bands.over_one;
        assert!((all - 1.0).abs() < 1e-9);
        assert!(4.0 <= pace.weeks && 5 <= pace.readings);
    }

    #[test]
    fn a_cob_that_loses_on_the_scale_has_reached_a_target_above_it_and_none_far_below() {
        let trend = weekly(8, 3.0);
        let at = |kg| TargetStands::default().with_trend(&trend, BodyMass::kg(kg));
        assert!(0.95 < at(440.0).reached && at(400.0).reached < 0.05);
        assert!(0.9 < at(426.0).in_band && 0.9 < at(400.0).over_band);
        assert_eq!(FastLoss::of(&trend, &cob()), FastLoss::None);
        assert!(donkey_too_fast(&trend, &cob()).abs() < 1e-12);
    }
}
