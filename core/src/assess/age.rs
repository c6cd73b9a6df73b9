//! Which equations an animal's age allows.

use super::error::AssessError;
use super::published as p;
use crate::animal::{Animal, Birth, State};
use crate::units::LocalDate;
use chrono::Datelike;

/// The ages at which the equations of horses change.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum AgeClass {
    /// 1 to 6 weeks.
    Foal,
    /// From four months to a year.
    Weanling,
    /// From one to two years.
    Yearling,
    /// From two to three years: taken as grown for girth and length, not for the equations of four measures.
    TwoYearOld,
    /// Three years and more.
    Grown,
    /// Nobody knows, and nobody said it still grows.
    NotKnown,
}

/// The age class on a day. Between six weeks and four months there is no equation.
///
/// Of a year alone the young are classed by the calendar, as the trade does, and a three-year-old by the calendar may
/// still be two.
pub(super) fn age_class(animal: &Animal, day: LocalDate) -> Result<AgeClass, AssessError> {
    let Some(born) = animal.born else {
        return match animal.state {
            State::Growing => Err(AssessError::BirthNeeded),
            State::Adult | State::Pregnant | State::Lactating => Ok(AgeClass::NotKnown),
        };
    };
    let years = believed_years(born, day)?;
    if *p::GROWN_YEARS <= years {
        return Ok(AgeClass::Grown);
    }
    match born {
        Birth::Day(date) => match years {
            2 => Ok(AgeClass::TwoYearOld),
            1 => Ok(AgeClass::Yearling),
            _ => in_first_year((day - date).num_days()),
        },
        Birth::Year(year) => match day.year() - year {
            0 => Err(AssessError::BirthNeeded),
            1 => Ok(AgeClass::Yearling),
            _ => Ok(AgeClass::TwoYearOld),
        },
    }
}

/// Whether it is under the age of the equations for grown animals; an unknown age counts as grown unless it grows.
pub(super) fn under_three(animal: &Animal, day: LocalDate) -> Result<bool, AssessError> {
    match animal.born {
        Some(born) => Ok(believed_years(born, day)? < *p::GROWN_YEARS),
        None => Ok(animal.state == State::Growing),
    }
}

/// Whole years, the youngest it can be, never negative; refuses a birth after the day and an age that is not believed.
fn believed_years(born: Birth, day: LocalDate) -> Result<i32, AssessError> {
    let years = match born {
        Birth::Day(_) => born.age_on(day),
        Birth::Year(year) => day.year().saturating_sub(year),
    };
    p::AGE.check(f64::from(years))?;
    Ok(born.age_on(day).max(0))
}

fn in_first_year(days: i64) -> Result<AgeClass, AssessError> {
    if *p::WEANLING_DAYS <= days {
        return Ok(AgeClass::Weanling);
    }
    p::FOAL_AGE.check(days as f64)?;
    Ok(AgeClass::Foal)
}
