//! Changing over from one ration to another: in steps over two to three weeks, so that the gut has time.
//!
//! Between two rations each amount goes in even steps. What both keep of the limits that are sums of amounts is kept on every
//! day between them, for every step lies between the two; a limit that only the first breaks is broken less from step to
//! step. Minerals, salt and single vitamins are no food for the gut: they come in at once, and go out when all else has
//! changed.

use super::class::FoodClass;
use super::published::{CHANGEOVER_BETTER, CHANGEOVER_LEAST, CHANGEOVER_STEPS};
use crate::units::AsFed;
use crate::units::show;

/// How fast something may change.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Pace {
    /// On the first day; what goes out, on the last, for what stands in for it comes in steps.
    AtOnce,
    /// In steps.
    InSteps,
}

impl Pace {
    /// The pace of a class of food; forage always goes in steps.
    pub const fn of(class: FoodClass) -> Self {
        match class {
            FoodClass::MineralMix | FoodClass::Source => Self::AtOnce,
            FoodClass::Legume
            | FoodClass::Fibre
            | FoodClass::Cereal
            | FoodClass::Protein
            | FoodClass::Fat
            | FoodClass::Balancer
            | FoodClass::Compound
            | FoodClass::Other => Self::InSteps,
        }
    }
}

/// One thing that is fed before, after or both.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Changing {
    /// How much a day before.
    pub from: AsFed,
    /// How much a day after.
    pub to: AsFed,
    /// How fast it may change.
    pub pace: Pace,
    /// The step in which it is weighed.
    pub step: AsFed,
}

impl Changing {
    fn changes(&self) -> bool {
        self.step <= self.to - self.from || self.step <= self.from - self.to
    }

    /// The amount when `done` of the change is made, from 0 to 1. It never goes past either end: more of a thing is rounded
    /// down to a step, less of it up.
    fn at(&self, done: f64) -> AsFed {
        if done >= 1.0 || (self.pace == Pace::AtOnce && self.from <= self.to) {
            return self.to;
        }
        // What brings minerals stays until what stands in for it is all there.
        if self.pace == Pace::AtOnce {
            return self.from;
        }
        let there = self.from + (self.to - self.from) * done;
        if self.from <= self.to {
            show::step_down(there, self.step).max(self.from)
        } else {
            show::step_up(there, self.step).min(self.from)
        }
    }
}

/// Some days on which the same is fed.
#[derive(Clone, Debug, PartialEq)]
pub struct Stage {
    /// The first of its days; the first day of the change is 1.
    pub first: u32,
    /// The last of its days; `None` from then on.
    pub last: Option<u32>,
    /// How much of each thing, in the order they were given.
    pub amounts: Vec<AsFed>,
}

/// How many days a change takes: `better` for the three weeks, else two.
pub const fn change_days(better: bool) -> u32 {
    if better {
        CHANGEOVER_BETTER.value
    } else {
        CHANGEOVER_LEAST.value
    }
}

/// The days of a change. One stage when nothing needs steps.
pub fn change_over(changing: &[Changing], days: u32) -> Vec<Stage> {
    let steps = CHANGEOVER_STEPS.value;
    let slow = changing
        .iter()
        .any(|one| one.pace == Pace::InSteps && one.changes());
    let at = |done: f64| changing.iter().map(|one| one.at(done)).collect();
    if !slow {
        return vec![Stage {
            first: 1,
            last: None,
            amounts: at(1.0),
        }];
    }
    // The days before the last step are shared over the others as evenly as whole days allow.
    let begins = |step: u32| days * step / steps + 1;
    let mut stages: Vec<Stage> = (0..steps)
        .map(|step| Stage {
            first: begins(step),
            last: Some(days * (step + 1) / steps),
            amounts: at(f64::from(step + 1) / f64::from(steps + 1)),
        })
        .collect();
    stages.push(Stage {
        first: days + 1,
        last: None,
        amounts: at(1.0),
    });
    stages
}

#[cfg(test)]
mod tests {
    use super::*;

    fn kg(from: f64, to: f64, pace: Pace) -> Changing {
        Changing {
            from: AsFed::kg(from),
            to: AsFed::kg(to),
            pace,
            step: AsFed::kg(0.05),
        }
    }

    #[test]
    fn new_hay_comes_in_quarter_by_quarter_and_salt_on_the_first_day() {
        let hay = kg(0.0, 4.0, Pace::InSteps);
        let salt = kg(0.0, 0.05, Pace::AtOnce);
        let stages = change_over(&[hay, salt], change_days(false));
        let days: Vec<(u32, Option<u32>)> = stages.iter().map(|s| (s.first, s.last)).collect();
        assert_eq!(
            days,
            [(1, Some(4)), (5, Some(9)), (10, Some(14)), (15, None)]
        );
        let fed: Vec<f64> = stages.iter().map(|s| s.amounts[0].to_kg()).collect();
        for (fed, wanted) in fed.iter().zip([1.0, 2.0, 3.0, 4.0]) {
            assert!((fed - wanted).abs() < 1e-9, "{fed}");
        }
        assert!(stages.iter().all(|s| s.amounts[1] == AsFed::kg(0.05)));
    }

    #[test]
    fn minerals_alone_need_no_weeks() {
        let stages = change_over(&[kg(0.0, 0.1, Pace::AtOnce)], change_days(true));
        assert_eq!(stages.len(), 1);
        assert_eq!(stages[0].last, None);
    }

    #[test]
    fn three_weeks_are_three_weeks() {
        let stages = change_over(&[kg(2.0, 1.0, Pace::InSteps)], change_days(true));
        assert_eq!(stages.last().unwrap().first, 22);
    }
}
