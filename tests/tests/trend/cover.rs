//! Bands that claim four times in five hold four times in five.

use crate::herd::{Chance, fit, gut_fill, scale, tape};
use tussock_core::limits::Ends;
use tussock_core::progress::{DatedChange, Footing, GutFill, Weighing};

const ANIMALS: u64 = 2_000;
const AHEAD: i64 = 8;

#[derive(Default)]
struct Count {
    held: u32,
    all: u32,
}

impl Count {
    fn add(&mut self, band: Ends<f64>, truth: f64) {
        self.all += 1;
        self.held += u32::from(band.least <= truth && truth <= band.most);
    }

    #[track_caller]
    fn holds(&self, what: &str) {
        let percent = 100.0 * f64::from(self.held) / f64::from(self.all);
        println!("{what}: {percent:.1} % of {}", self.all);
        assert!((76.0..=84.0).contains(&percent), "{what}: {percent:.1} %");
    }
}

/// An animal, what its instruments said, and the truth of each day: level and slope.
struct Made {
    weighings: Vec<Weighing>,
    changes: Vec<DatedChange>,
    levels: Vec<(f64, f64)>,
    last: i64,
    jump: Option<i64>,
    tape_off: f64,
    people: [f64; 2],
}

fn made(seed: u64) -> Made {
    let mut chance = Chance::new(seed);
    let start = 180.0 + 420.0 * chance.part();
    let percent = start / 100.0;
    let weeks = 6 + i64::try_from(chance.below(12)).unwrap();
    // What the instruments stand off by: the tape on this animal, two people, the scale.
    let tape_off = chance.normal(0.05);
    let people = [chance.normal(0.015), chance.normal(0.015)];
    let scale_off = chance.normal(0.005);
    let scaled = chance.below(3) == 0;
    let jump = (chance.below(2) == 0).then(|| i64::try_from(chance.below(30)).unwrap());
    let mut truth = start;
    let mut slope = chance.normal(0.5) * percent / 7.0 - 0.4 * percent / 7.0;
    let fill = (-4.3 + chance.normal(1.1)) * percent;
    let mut levels = Vec::new();
    let mut weighings = Vec::new();
    let last = weeks * 7;
    let mut next = 0;
    for on in 0..=last + AHEAD * 7 {
        levels.push((truth, slope));
        if on <= last && on == next {
            next = on + 4 + i64::try_from(chance.below(7)).unwrap();
            let who = usize::from(chance.below(4) == 0);
            let times = 1 + usize::from(chance.below(4) == 0);
            for number in 0..times {
                let read = truth * (1.0 + tape_off + people[who] + chance.normal(0.015));
                weighings.push(tape(on, read, ["Ann", "Bea"][who], number));
            }
            if scaled && chance.below(6) == 0 {
                let read = truth * (1.0 + scale_off + chance.normal(0.005));
                weighings.push(scale(on, read, 9));
            }
        }
        truth += slope + chance.normal(0.16 * percent / 7.0_f64.sqrt());
        slope += chance.normal(0.05 * percent / 7.0 / 7.0_f64.sqrt());
        if jump.is_some_and(|jump| jump <= on && on < jump + 7) {
            truth += fill / 7.0;
        }
    }
    let changes: Vec<_> = jump
        .map(|on| gut_fill(on, GutFill::GrassToHay))
        .into_iter()
        .collect();
    Made {
        weighings,
        changes,
        levels,
        last,
        jump,
        tape_off,
        people,
    }
}

#[test]
fn of_two_thousand_animals_four_fifths_lie_within_each_band() {
    let (mut weight, mut level, mut rate, mut lately, mut ahead) = (
        Count::default(),
        Count::default(),
        Count::default(),
        Count::default(),
        Count::default(),
    );
    let mut by_scale = 0;
    for seed in 0..ANIMALS {
        let Made {
            weighings,
            changes,
            levels,
            last,
            jump,
            tape_off,
            people,
        } = made(seed);
        let trend = fit(&weighings, &changes, last);
        let (truth_now, slope) = levels[usize::try_from(last).unwrap()];
        // What the trend stands on: the truth, or what its tape says of it.
        let off = if trend.footing == Footing::Scale {
            by_scale += 1;
            0.0
        } else {
            let by = |name: &str| {
                weighings
                    .iter()
                    .filter(|w| w.by.as_ref().unwrap().0 == name)
                    .count()
            };
            tape_off
                + if by("Ann") >= by("Bea") {
                    people[0]
                } else {
                    people[1]
                }
        };
        let kg = |ends: Ends<tussock_core::units::BodyMass>| {
            ends.map(tussock_core::units::BodyMass::to_kg)
        };
        weight.add(kg(trend.weight), truth_now);
        if trend.footing == Footing::Scale || weighings.iter().all(|w| w.by == weighings[0].by) {
            level.add(kg(trend.level), truth_now * (1.0 + off));
        }
        if let Some(now) = trend.rate {
            rate.add(now.percent, slope * 7.0 / truth_now * 100.0);
        }
        if let Some(mean) = trend.lately {
            let days = (mean.chances.weeks * 7.0).round();
            #[allow(clippy::cast_possible_truncation, reason = "a few weeks in days")]
            let to = (trend.last_read().unwrap() - crate::herd::day(0)).num_days();
            #[allow(clippy::cast_possible_truncation, reason = "a few weeks in days")]
            let from = to - days as i64;
            let at = |on: i64| levels[usize::try_from(on).unwrap()].0;
            lately.add(
                mean.percent,
                (at(to) - at(from)) / days * 7.0 / truth_now * 100.0,
            );
        }
        // Forecast, where nothing more changes.
        let same_hands = weighings.iter().all(|w| w.by == weighings[0].by);
        if jump.is_none_or(|on| on + 7 <= last)
            && (trend.footing == Footing::Scale || same_hands)
            && let Some(later) = trend.ahead(u32::try_from(AHEAD).unwrap())
        {
            let then = levels[usize::try_from(last + AHEAD * 7).unwrap()].0;
            ahead.add(kg(later), then * (1.0 + off));
        }
    }
    println!("{by_scale} of {ANIMALS} were on a scale as well");
    weight.holds("what it truly weighs");
    level.holds("the level on its footing");
    rate.holds("the rate now");
    lately.holds("the rate lately");
    ahead.holds("the level in eight weeks");
}
