//! The rule of the rate: when weight alone asks to measure again, to ring the vet, to feed more.
//!
//! One reading over 2 % down in a week is taken again at once. When the readings of that day make it likely (4 in 5) that
//! it fell so far, or that it loses over 1 % a week, the ration goes up to the starting level and the vet is rung, the same
//! day for a pony, a miniature, a donkey or a mule. Over 1 % a week over four weeks: feed more. One reading decides nothing.
//!
//! A sudden fall is weighed against a steady course: with a small chance beforehand ([`SUDDEN`]) any week brings a jump.
//! In the first weeks a tape says little of a rate; what animals on a ration lost ([`LOSS_BEFORE`]) then stands beside it.

use super::chances::likely;
use super::filter::{Belief, Filter};
use super::model::{DAYS_OF_WEEK, Seen};
use super::published::{
    AGAIN_AT_MOST, DOWN_AGAIN, GUT_FILL_MOST, LOSS_BEFORE, LOSS_BEFORE_SPREAD, RATE_FAST,
    RATE_WEEKS, SUDDEN, SUDDEN_SPREAD,
};
use super::trend::{Trend, weeks_between, whole_days};
use super::weighing::before;
use crate::animal::Animal;
use crate::limits::{donkey_loss_cap, starting_level};
use crate::units::{BodyMass, LocalDate, PartOfBody};
use std::collections::BTreeSet;

/// Why to measure again now.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Again {
    /// The baseline stands on one reading of a tape: what comes after is judged against it.
    Baseline,
    /// The reading is so many percent down since the last one.
    Down {
        /// So many.
        percent: f64,
    },
    /// With this reading it would lose so many percent a week.
    TooFast {
        /// So many.
        percent: f64,
    },
    /// It was measured again, and still nobody can tell.
    NotSure {
        /// The chance that it is too fast.
        chance: f64,
    },
}

/// How soon the vet is rung.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Ring {
    /// Ring.
    Soon,
    /// The same day.
    SameDay,
}

impl Ring {
    /// For an animal: the same day for those in whom fat floods the blood.
    fn of(animal: &Animal) -> Self {
        if animal.kind.fat_in_blood_risk() {
            Self::SameDay
        } else {
            Self::Soon
        }
    }
}

/// What weight alone asks for.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Alarm {
    /// Too fast, and measured again: up to the starting level, and ring the vet.
    RingVet {
        /// The chance.
        chance: f64,
        /// The level to feed.
        raise_to: PartOfBody,
        /// How soon.
        ring: Ring,
    },
    /// A donkey loses more in a month than it may: feed more, and ring the vet.
    DonkeyMonth {
        /// What it lost, as of a month.
        a_month: BodyMass,
        /// What it may lose.
        most: BodyMass,
        /// The chance that it is more.
        chance: f64,
    },
    /// Over 1 % a week over four weeks: feed more.
    FeedMore {
        /// What it lost, in percent a week.
        percent: f64,
        /// Over so many weeks.
        weeks: f64,
        /// The chance that it is over 1.
        chance: f64,
    },
    /// Measure again now.
    MeasureAgain(Again),
}

/// Its weight falls so fast that the vet is rung.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct TooFast {
    /// The day of the last readings.
    pub seen: LocalDate,
    /// The chance.
    pub chance: f64,
    /// The level to feed.
    pub raise_to: PartOfBody,
    /// How soon the vet is rung.
    pub ring: Ring,
}

/// The readings of the last day, against the day before it with readings.
struct LastDay<'a> {
    day: LocalDate,
    readings: Vec<&'a Seen>,
    /// How far down it may be before it is too far, in percent.
    bar: f64,
    /// The level of the day before, and the kernel before the last day's readings.
    then: usize,
    steady: Filter,
}

impl LastDay<'_> {
    /// How far down a reading is since the day before, in percent, on its own instrument.
    fn down(&self, reading: &Seen) -> Option<f64> {
        let then: Vec<(usize, f64)> = std::iter::once(self.then)
            .chain(reading.offsets.iter().copied())
            .map(|state| (state, 1.0))
            .collect();
        let then = self.steady.of(&then)?.mean;
        Some((then - reading.kg) / then * 100.0)
    }
}

impl Trend {
    /// What weight alone asks for, the gravest first; nothing while there is nothing to compare.
    pub fn alarms(&self, animal: &Animal) -> Vec<Alarm> {
        let mut alarms = Vec::new();
        let last = self.last_day();
        let chance = last.as_ref().and_then(|last| self.chance_too_fast(last));
        if chance.is_some_and(likely) {
            alarms.push(Alarm::RingVet {
                chance: chance.unwrap_or_default(),
                raise_to: *starting_level(animal),
                ring: Ring::of(animal),
            });
        }
        alarms.extend(self.donkey_month(animal));
        alarms.extend(self.feed_more());
        if !chance.is_some_and(likely) {
            let again = last.as_ref().and_then(|last| self.again(last, chance));
            let again = again.or_else(|| self.baseline_again());
            alarms.extend(again.map(Alarm::MeasureAgain));
        }
        alarms
    }

    /// Whether weight alone rings the vet: what was measured again, or a donkey's month.
    pub fn too_fast(&self, animal: &Animal) -> Option<TooFast> {
        let seen = self.last_read()?;
        let chance = self
            .alarms(animal)
            .into_iter()
            .find_map(|alarm| match alarm {
                Alarm::RingVet { chance, .. } | Alarm::DonkeyMonth { chance, .. } => Some(chance),
                Alarm::FeedMore { .. } | Alarm::MeasureAgain(_) => None,
            })?;
        Some(TooFast {
            seen,
            chance,
            raise_to: *starting_level(animal),
            ring: Ring::of(animal),
        })
    }

    /// The chance that it fell too far or loses too fast, when the readings of the last day are enough to say: what
    /// [`Alarm::RingVet`] is decided on.
    pub fn chance_too_fast_today(&self) -> Option<f64> {
        self.chance_too_fast(&self.last_day()?)
    }

    fn last_day(&self) -> Option<LastDay<'_>> {
        let day = self.last_read()?;
        let earlier = self.believed().rev().find(|reading| reading.day < day)?.day;
        let eve = day.pred_opt()?;
        let run = self.model.run(day, eve, &BTreeSet::from([earlier]));
        let weeks = weeks_between(earlier, day).max(1.0);
        let gut = if self.model.settles(earlier, day) {
            *GUT_FILL_MOST
        } else {
            0.0
        };
        Some(LastDay {
            day,
            readings: self.model.seen.iter().filter(|s| s.day == day).collect(),
            bar: *DOWN_AGAIN * weeks + gut,
            then: *run.kept.get(&earlier)?,
            steady: run.filter,
        })
    }

    /// The chance that it fell too far since the day before or loses over 1 % a week, when it was measured again that day.
    fn chance_too_fast(&self, last: &LastDay<'_>) -> Option<f64> {
        let believed = last.readings.iter().filter(|reading| reading.believed);
        if believed.clone().count() <= 1 {
            return None;
        }
        // A jump, against a steady course: how well each foretells the readings of the day.
        let mut steady = last.steady.clone();
        let mut sudden = last.steady.clone();
        sudden.loosen_level(self.model.part(*SUDDEN_SPREAD));
        for reading in believed {
            for filter in [&mut steady, &mut sudden] {
                filter.read(&reading.sum(), reading.kg, reading.variance);
            }
        }
        let bar = self.model.size.to_kg() * last.bar / 100.0;
        let fell = |filter: &Filter| {
            let change = filter.of(&[(0, 1.0), (last.then, -1.0)]);
            change.map_or(0.0, |change| change.chance_at_most(-bar))
        };
        let odds = (sudden.log_likelihood() - steady.log_likelihood()).exp() * *SUDDEN;
        let jumped = odds / (odds + 1.0 - *SUDDEN);
        let jumped = if jumped.is_finite() { jumped } else { 1.0 };
        let fell_too_far = jumped * fell(&sudden) + (1.0 - jumped) * fell(&steady);
        let asked = self.asked_again(last).is_some();
        let paced = if asked {
            self.pace()
                .map_or(0.0, |pace| pace.chance_at_most(-*RATE_FAST))
        } else {
            0.0
        };
        Some(fell_too_far.max(paced))
    }

    /// The rate in percent a week, with what animals on a ration lost beside it.
    fn pace(&self) -> Option<Belief> {
        let slope = self.filter.of(&[(1, DAYS_OF_WEEK)])?;
        let percent = slope.times(100.0 / self.level.likely.to_kg());
        Some(percent.and(Belief {
            mean: -*LOSS_BEFORE,
            variance: *LOSS_BEFORE_SPREAD * *LOSS_BEFORE_SPREAD,
        }))
    }

    /// What of the last day's readings asks to measure again, whether it was done or not.
    fn asked_again(&self, last: &LastDay<'_>) -> Option<Again> {
        let downs = last.readings.iter().filter_map(|r| last.down(r));
        let down = downs.fold(f64::MIN, f64::max);
        if down > last.bar {
            return Some(Again::Down { percent: down });
        }
        let percent = -self.rate?.percent.likely;
        // Until the rule of four weeks can speak, the pace asks too.
        let young = weeks_between(self.baseline, last.day) < *RATE_WEEKS;
        let fast = self.pace()?.chance_at_most(-*RATE_FAST);
        let several_days = self.believed().filter(|r| r.day >= self.baseline);
        let several_days: BTreeSet<LocalDate> = several_days.map(|r| r.day).collect();
        let beyond = percent > *DOWN_AGAIN && several_days.len() > 2;
        (beyond || young && likely(fast)).then_some(Again::TooFast { percent })
    }

    fn again(&self, last: &LastDay<'_>, chance: Option<f64>) -> Option<Again> {
        let because = self.asked_again(last)?;
        let taken = last.readings.len();
        if taken <= 1 {
            return Some(because);
        }
        let chance = chance.unwrap_or_default();
        // numeric: as likely as not
        let open = chance >= 0.5;
        let believed = last.readings.iter().filter(|r| r.believed);
        let downs: Vec<f64> = believed.filter_map(|r| last.down(r)).collect();
        let mean = downs.iter().sum::<f64>() / downs.len().max(1) as f64;
        (taken < *AGAIN_AT_MOST && (open || mean > last.bar || downs.len() <= 1))
            .then_some(Again::NotSure { chance })
    }

    /// The baseline was read today, once, by a tape.
    fn baseline_again(&self) -> Option<Again> {
        let settled = self.readings.iter().filter(|r| r.day >= self.baseline);
        let mut settled = settled.peekable();
        let first = settled.peek()?;
        let alone = !first.is_scale && settled.count() == 1;
        alone.then_some(Again::Baseline)
    }

    fn feed_more(&self) -> Option<Alarm> {
        let lately = self.lately?;
        let chances = lately.chances;
        (chances.weeks >= *RATE_WEEKS && likely(chances.over_one)).then_some(Alarm::FeedMore {
            percent: -lately.percent.likely,
            weeks: chances.weeks,
            chance: chances.over_one,
        })
    }

    fn donkey_month(&self, animal: &Animal) -> Option<Alarm> {
        if !animal.kind.is_donkey() {
            return None;
        }
        let last = self.last_read()?;
        let month = crate::limits::published::DONKEY_LOSS_DAYS.value / DAYS_OF_WEEK;
        let from = before(last, whole_days(month)).max(self.baseline);
        let weeks = weeks_between(from, last);
        if weeks < *RATE_WEEKS {
            return None;
        }
        let run = self
            .model
            .run(self.day, self.day, &BTreeSet::from([from, last]));
        let (then, now) = (run.kept.get(&from)?, run.kept.get(&last)?);
        let change = run.filter.of(&[(*now, 1.0), (*then, -1.0)])?;
        let a_month = change.times(month / weeks);
        let most = donkey_loss_cap(self.level.likely).ok()?;
        let chance = a_month.chance_at_most(-most.to_kg());
        likely(chance).then_some(Alarm::DonkeyMonth {
            a_month: BodyMass::kg(-a_month.mean),
            most,
            chance,
        })
    }
}
