//! Growing, in foal, in milk: what the published equations ask of such an animal.
//!
//! Such an animal is balanced and never restricted: the vet's list bars it, and no plan is made for it.

mod need;
mod on;
pub mod published;
#[cfg(test)]
mod tests;

pub(super) use need::{body, energy, rows};
pub use on::StageGap;

use super::error::{LimitsError, WEIGHT};
use crate::animal::State;
use crate::units::{BodyMass, Bounds};
use published::{
    GROWTH_AGE, GROWTH_GAIN, GROWTH_SHARE, MILK, MILK_MONTH_DAYS, MILK_MONTHS, PREGNANT_MONTHS,
};

/// What its body is busy with besides work, as far as the published equations ask.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Stage {
    /// Grown, neither in foal nor in milk.
    Adult,
    /// Growing.
    Growing {
        /// Its age in months, 4 to 24: younger foals live on milk, older ones are near their growth.
        months: u32,
        /// What it will weigh when it is grown.
        mature: BodyMass,
    },
    /// In foal.
    Pregnant {
        /// The month, 1 to 11.
        month: u32,
    },
    /// In milk.
    Lactating {
        /// The month of milk, 1 to 6.
        month: u32,
    },
    /// Growing, in foal or in milk, and its age or month is not known or not among those that are published.
    NotKnown(
        /// Which.
        State,
        /// What stands in the way.
        StageGap,
    ),
}

impl Stage {
    /// The stage of an animal of which only its state is known.
    pub const fn of(state: State) -> Self {
        match state {
            State::Adult => Self::Adult,
            State::Growing | State::Pregnant | State::Lactating => {
                Self::NotKnown(state, StageGap::NotSaid)
            }
        }
    }

    /// The state behind it.
    pub const fn state(self) -> State {
        match self {
            Self::Adult => State::Adult,
            Self::Growing { .. } => State::Growing,
            Self::Pregnant { .. } => State::Pregnant,
            Self::Lactating { .. } => State::Lactating,
            Self::NotKnown(state, _) => state,
        }
    }

    /// Refuses an age or a month for which nothing is published here.
    pub(super) fn check(self) -> Result<(), LimitsError> {
        match self {
            Self::Adult | Self::NotKnown(..) => {}
            Self::Growing { months, mature } => {
                between("growth_months", *GROWTH_AGE).check(f64::from(months))?;
                WEIGHT.check(mature.to_kg())?;
            }
            Self::Pregnant { month } => {
                between("pregnant_month", *PREGNANT_MONTHS).check(f64::from(month))?;
            }
            Self::Lactating { month } => {
                between("lactation_month", *MILK_MONTHS).check(f64::from(month))?;
            }
        }
        Ok(())
    }
}

const fn between(field: &'static str, [least, most]: [f64; 2]) -> Bounds {
    Bounds::new(field, least, most)
}

/// What an animal of an age weighs that will weigh so much when grown; NRC 2007, from memory:
/// `9.7 + 90.3 (1 - e^(-0.0772 t))` percent, t in months.
///
/// # Errors
/// An age outside 4 to 24 months, a weight that is not believed.
pub fn growing_weight(months: u32, mature: BodyMass) -> Result<BodyMass, LimitsError> {
    Stage::Growing { months, mature }.check()?;
    let [at_birth, to_come, rate] = *GROWTH_SHARE;
    let percent = at_birth + to_come * (1.0 - (-rate * f64::from(months)).exp());
    Ok(mature * (percent / 100.0))
}

/// What it gains a day at that age; NRC 2007, from memory: `mature x 6.97121 e^(-0.0772 t) / 3040`.
///
/// # Errors
/// An age outside 4 to 24 months, a weight that is not believed.
pub fn daily_gain(months: u32, mature: BodyMass) -> Result<BodyMass, LimitsError> {
    Stage::Growing { months, mature }.check()?;
    Ok(gain(months, mature))
}

/// The same, of an age that was checked.
pub(super) fn gain(months: u32, mature: BodyMass) -> BodyMass {
    let [scale, rate, days] = *GROWTH_GAIN;
    mature * (scale * (-rate * f64::from(months)).exp() / days)
}

/// The value of an age, from values each of which holds to a month.
pub(super) fn of_age(values: &[(u32, f64)], months: u32) -> Option<f64> {
    values
        .iter()
        .find(|(to, _)| months <= *to)
        .or_else(|| values.last())
        .map(|(_, value)| *value)
}

/// A mass of milk.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Milk(f64);

impl Milk {
    /// From kilograms.
    pub const fn kg(value: f64) -> Self {
        Self(value)
    }

    /// As kilograms.
    pub const fn to_kg(self) -> f64 {
        self.0
    }
}

/// Milk a day, the mean of a month; NRC 2007, from memory: `0.0274287 BW d^0.0953 e^(-0.0043 d)`, d in days.
///
/// # Errors
/// A month outside 1 to 6, a weight that is not believed.
pub fn milk(month: u32, body: BodyMass) -> Result<Milk, LimitsError> {
    Stage::Lactating { month }.check()?;
    WEIGHT.check(body.to_kg())?;
    Ok(milk_of(month, body))
}

/// The same, of a month that was checked.
pub(super) fn milk_of(month: u32, body: BodyMass) -> Milk {
    let [scale, power, fall] = *MILK;
    let days = *MILK_MONTH_DAYS;
    let first = days * (month - 1);
    let sum: f64 = (1..=days)
        .map(|day| f64::from(first + day))
        .map(|day| day.powf(power) * (-fall * day).exp())
        .sum();
    Milk(scale * body.to_kg() * sum / f64::from(days))
}
