//! The published weight-loss trials as animals: the band of the forecast holds what they came to, and weight alone alarms
//! where it should and nowhere else.
//!
//! What a trial says is its mean; around it lie the tape's or the scale's own errors, by seed. Works and what was read of
//! them: `works.rs` and the comments at each. Where a trial gives no weight or no week of it, it makes no case here:
//! Bamford 2019 and Bruynsteen 2015 (kilograms not in the text that was read), Dosi 2020 and de Laat 2016 (no start weight).

use crate::herd::{Chance, animal, fit, gut_fill, scale, tape};
use tussock_core::animal::Kind;
use tussock_core::progress::{Alarm, DatedChange, GutFill, Trend, Weighing};

/// A trial's mean animal.
#[derive(Clone, Copy)]
struct Trial {
    name: &'static str,
    kind: Kind,
    /// At the start, in kilograms.
    start: f64,
    /// What the first week took off, in percent of the start.
    first_week: f64,
    /// What each later week took off, in percent of the weight at the end of the first.
    weekly: f64,
    weeks: i64,
    /// Which alarms there must be, and no others.
    must: Must,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Must {
    /// Nothing is asked beyond measuring again.
    Nothing,
    /// It is found to stand still.
    Plateau,
    /// It is fed more and the vet is rung.
    TooFast,
}

const TRIALS: [Trial; 7] = [
    // Dugdale 2010, abstract: 5 pony mares, 257 kg; 4.3 % in week 1, then 0.7 % of that week's weight weekly, 12 weeks.
    Trial {
        name: "Dugdale 2010",
        kind: Kind::Pony,
        start: 257.0,
        first_week: 4.3,
        weekly: 0.7,
        weeks: 12,
        must: Must::Nothing,
    },
    // Argo 2012, abstract: 489 kg, 16 weeks, 0.16 to 0.55 % of the weight of week 1 weekly: its slowest and its fastest. The
    // first week is not told apart.
    Trial {
        name: "Argo 2012, slowest",
        kind: Kind::Horse,
        start: 489.0,
        first_week: 0.0,
        weekly: 0.16,
        weeks: 16,
        must: Must::Plateau,
    },
    Trial {
        name: "Argo 2012, fastest",
        kind: Kind::Horse,
        start: 489.0,
        first_week: 0.0,
        weekly: 0.55,
        weeks: 16,
        must: Must::Nothing,
    },
    // Morgan 2016: a pony at home, 279 to 257 kg in 3 to 6 months: the two ends.
    Trial {
        name: "Morgan 2016, in 13 weeks",
        kind: Kind::Pony,
        start: 279.0,
        first_week: 0.0,
        weekly: 22.0 / 279.0 / 13.0 * 100.0,
        weeks: 13,
        must: Must::Nothing,
    },
    Trial {
        name: "Morgan 2016, in 26 weeks",
        kind: Kind::Pony,
        start: 279.0,
        first_week: 0.0,
        weekly: 22.0 / 279.0 / 26.0 * 100.0,
        weeks: 26,
        must: Must::Nothing,
    },
    // The trial of ten weeks, horses on a weight tape: restricted, 485 kg, 27 kg less; its control lost as much, so that a
    // tape alone does not tell a ration from a season. What it asks of the person is nothing either way.
    Trial {
        name: "ten weeks by tape",
        kind: Kind::Horse,
        start: 485.0,
        first_week: 0.0,
        weekly: 27.0 / 485.0 / 10.0 * 100.0,
        weeks: 10,
        must: Must::Nothing,
    },
    // The mare at Ghent: 510 kg, 70 kg less in 6 weeks, 2.3 % a week, in a clinic: too fast as an owner's plan.
    Trial {
        name: "the mare at Ghent",
        kind: Kind::Horse,
        start: 510.0,
        first_week: 70.0 / 510.0 / 6.0 * 100.0,
        weekly: 70.0 / 510.0 / 6.0 * 100.0,
        weeks: 6,
        must: Must::TooFast,
    },
];

impl Trial {
    fn truth(&self, week: i64) -> f64 {
        if week == 0 {
            return self.start;
        }
        let settled = self.start * (1.0 - self.first_week / 100.0);
        settled * (1.0 - self.weekly / 100.0 * (week - 1) as f64)
    }

    /// What was told of it: a first week that takes off more than the later ones is gut fill.
    fn changes(&self) -> Vec<DatedChange> {
        let told = self.first_week > self.weekly;
        told.then(|| gut_fill(0, GutFill::FirstPlan))
            .into_iter()
            .collect()
    }
}

/// With what it is weighed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum By {
    Tape,
    Scale,
}

/// A weighing of a week; the tape stands off by a part of the weight for good.
fn read(
    trial: &Trial,
    week: i64,
    number: usize,
    by: By,
    off: f64,
    chance: &mut Chance,
) -> Weighing {
    let truth = trial.truth(week);
    match by {
        By::Tape => {
            let kg = truth * (1.0 + off + chance.normal(0.015));
            tape(week * 7, kg, "Ann", number)
        }
        By::Scale => scale(week * 7, truth * (1.0 + chance.normal(0.005)), number),
    }
}

/// The trends of a trial week by week: weighed once, and again as long as it is asked for, at most three times.
fn weekly(trial: &Trial, by: By, seed: u64) -> (Vec<Trend>, f64) {
    let mut chance = Chance::new(seed);
    let off = if by == By::Tape {
        chance.normal(0.05)
    } else {
        0.0
    };
    let who = animal(trial.kind);
    let mut weighings = Vec::new();
    let mut trends = Vec::new();
    for week in 0..=trial.weeks {
        let mut trend = None;
        for number in 0..3 {
            weighings.push(read(trial, week, number, by, off, &mut chance));
            let now = fit(&weighings, &trial.changes(), week * 7);
            let asks = now.alarms(&who);
            trend = Some(now);
            if !asks.iter().any(|one| matches!(one, Alarm::MeasureAgain(_))) {
                break;
            }
        }
        trends.extend(trend);
    }
    (trends, off)
}

const SEEDS: u64 = 50;

#[test]
fn from_half_way_the_band_of_the_forecast_holds_what_the_trial_came_to() {
    for trial in TRIALS {
        for by in [By::Tape, By::Scale] {
            let (mut held, mut all) = (0_u32, 0_u32);
            for seed in 0..SEEDS {
                let (trends, off) = weekly(&trial, by, seed);
                let half = trial.weeks / 2 + 1;
                let trend = &trends[usize::try_from(half).unwrap()];
                let Some(ahead) = trend.ahead(u32::try_from(trial.weeks - half).unwrap()) else {
                    continue;
                };
                let came_to = trial.truth(trial.weeks) * (1.0 + off);
                all += 1;
                let (least, most) = (ahead.least.to_kg(), ahead.most.to_kg());
                held += u32::from(least <= came_to && came_to <= most);
            }
            let part = f64::from(held) / f64::from(all);
            println!("{} by {by:?}: the band held {held} of {all}", trial.name);
            assert_eq!(u64::from(all), SEEDS, "{}: no forecast", trial.name);
            // A band of 80 %, counted fifty times: under 65 would come once in a hundred.
            assert!(part >= 0.65, "{} by {by:?}: {part}", trial.name);
        }
    }
}

#[test]
fn weight_alone_alarms_for_the_mare_at_ghent_and_for_no_other_trial() {
    for trial in TRIALS {
        let who = animal(trial.kind);
        for by in [By::Tape, By::Scale] {
            let (mut rung, mut more, mut weeks) = (0_u32, 0_u32, 0_u32);
            let (mut caught, mut stood_still) = (0_u64, 0_u64);
            for seed in 0..SEEDS {
                let (trends, _) = weekly(&trial, by, seed);
                let alarms: Vec<Vec<Alarm>> =
                    trends.iter().map(|trend| trend.alarms(&who)).collect();
                let is_ring = |one: &Alarm| matches!(one, Alarm::RingVet { .. });
                let is_more = |one: &Alarm| matches!(one, Alarm::FeedMore { .. });
                for of_week in &alarms {
                    weeks += 1;
                    rung += u32::from(of_week.iter().any(is_ring));
                    more += u32::from(of_week.iter().any(is_more));
                }
                let loud =
                    |of_week: &Vec<Alarm>| of_week.iter().any(|one| is_ring(one) || is_more(one));
                caught += u64::from(alarms.iter().any(loud));
                stood_still +=
                    u64::from(trends.last().is_some_and(|trend| trend.plateau.is_some()));
            }
            let each = |count: u32| f64::from(count) / f64::from(weeks);
            println!(
                "{} by {by:?}: rung {:.4} and feed more {:.4} of weeks, caught {caught} of {SEEDS}, stood still {stood_still}",
                trial.name,
                each(rung),
                each(more),
            );
            match trial.must {
                Must::TooFast => {
                    assert!(caught * 10 >= SEEDS * 9, "{}: caught {caught}", trial.name);
                }
                Must::Nothing | Must::Plateau => {
                    assert!(
                        each(rung) < 0.01,
                        "{} by {by:?}: rung {}",
                        trial.name,
                        each(rung)
                    );
                    // Feeding more is decided at 4 in 5 and is the gentle side to be wrong on.
                    assert!(
                        each(more) < 0.03,
                        "{} by {by:?}: more {}",
                        trial.name,
                        each(more)
                    );
                }
            }
            if trial.must == Must::Plateau && by == By::Scale {
                // By a tape so slow a loss is not told from half a percent within sixteen weeks.
                assert!(
                    stood_still * 2 > SEEDS,
                    "{}: stood still {stood_still}",
                    trial.name
                );
            }
            if trial.must == Must::Nothing && by == By::Scale && trial.weekly > 0.5 {
                assert!(
                    stood_still * 10 < SEEDS,
                    "{}: stood still {stood_still}",
                    trial.name
                );
            }
        }
    }
}

#[test]
fn ponies_that_eat_what_they_like_gain_and_nothing_rings() {
    // Ad-lib ponies 2011, abstract: 219 to 246 kg, 0.8 kg a day in summer over 12 weeks.
    let trial = Trial {
        name: "ad-lib ponies 2011",
        kind: Kind::Pony,
        start: 232.0,
        first_week: -0.8 * 7.0 / 232.0 * 100.0,
        weekly: -0.8 * 7.0 / 232.0 * 100.0,
        weeks: 12,
        must: Must::Nothing,
    };
    let pony = animal(trial.kind);
    for seed in 0..SEEDS {
        let (trends, _) = weekly(&trial, By::Scale, seed);
        let last = trends.last().unwrap();
        assert!(last.lately.unwrap().chances.gaining > 0.99);
        for trend in &trends {
            let rings = trend.alarms(&pony);
            assert!(
                rings
                    .iter()
                    .all(|one| matches!(one, Alarm::MeasureAgain(_))),
                "seed {seed}: {rings:?}"
            );
        }
    }
}
