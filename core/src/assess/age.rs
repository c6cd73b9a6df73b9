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
        Birth::Month { .. } => match (years, born.latest()) {
            (2, _) => Ok(AgeClass::TwoYearOld),
            (1, _) => Ok(AgeClass::Yearling),
            // The equation of foals goes by the day.
            (_, Some(date)) if *p::WEANLING_DAYS <= (day - date).num_days() => {
                Ok(AgeClass::Weanling)
            }
            _ => Err(AssessError::BirthNeeded),
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
    p::AGE.check(f64::from(born.oldest_on(day)))?;
    Ok(born.age_on(day).max(0))
}

fn in_first_year(days: i64) -> Result<AgeClass, AssessError> {
    if *p::WEANLING_DAYS <= days {
        return Ok(AgeClass::Weanling);
    }
    p::FOAL_AGE.check(days as f64)?;
    Ok(AgeClass::Foal)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::animal::Kind;
    use crate::assess::choose::tests::{animal, by_tape, tape};
    use crate::assess::{LengthKind, Refused, Tape};
    use crate::units::Length;

    #[test]
    fn the_young_go_by_age() {
        let mut young = animal(Kind::Horse, None);
        let inches = |girth, length| Tape {
            length: Some((Length::inches(length), LengthKind::Wrap)),
            ..Tape::girth(Length::inches(girth))
        };
        young.born = Some(Birth::Year(2025));
        let (yearling, _) = by_tape(&young, inches(64.0, 58.0)).unwrap();
        assert!((yearling.value.to_lb() - 789.3).abs() < 0.5);
        young.born = Some(Birth::Day("2025-10-20".parse().unwrap()));
        let (weanling, _) = by_tape(&young, inches(50.0, 44.0)).unwrap();
        assert!((weanling.value.to_lb() - 392.9).abs() < 0.5);
        young.born = Some(Birth::Day("2026-04-10".parse().unwrap()));
        let (foal, _) = by_tape(&young, Tape::girth(Length::inches(36.0))).unwrap();
        assert!((foal.value.to_lb() - 155.7).abs() < 0.5);
        for girth in [26.0, 45.0] {
            assert!(by_tape(&young, Tape::girth(Length::inches(girth))).is_ok());
        }
        for girth in [25.9, 45.1] {
            assert!(matches!(
                by_tape(&young, Tape::girth(Length::inches(girth))),
                Err(AssessError::OutOfRange(error)) if error.bounds.field == "foal_heart_girth_in"
            ));
        }
    }

    #[test]
    fn an_age_without_an_equation_is_refused() {
        let field = |animal: &Animal| match by_tape(animal, tape(100.0, 90.0, LengthKind::Wrap)) {
            Err(AssessError::OutOfRange(error)) => error.bounds.field,
            other => panic!("{other:?}"),
        };
        let mut foal = animal(Kind::Horse, None);
        foal.born = Some(Birth::Day("2026-03-01".parse().unwrap()));
        assert_eq!(field(&foal), "foal_age_days");
        foal.born = Some(Birth::Day("2026-06-01".parse().unwrap()));
        assert_eq!(field(&foal), "age_years");
        foal.born = Some(Birth::Year(1926));
        assert_eq!(field(&foal), "age_years");
        let girth = Tape::girth(Length::cm(100.0));
        foal.born = Some(Birth::Year(2026));
        assert_eq!(by_tape(&foal, girth), Err(AssessError::BirthNeeded));
        foal.born = None;
        foal.state = State::Growing;
        assert_eq!(by_tape(&foal, girth), Err(AssessError::BirthNeeded));
        let mut mini = animal(Kind::Miniature, None);
        mini.born = Some(Birth::Year(2025));
        let young = AssessError::Refused(Refused::Young(Kind::Miniature));
        assert_eq!(by_tape(&mini, girth), Err(young));
    }
}
