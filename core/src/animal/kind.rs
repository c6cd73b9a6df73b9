//! The animal itself.

use super::health::Health;
use super::ids::AnimalId;
use super::phase::Phase;
use crate::units::{BodyMass, Length, LocalDate};
use chrono::{Datelike, Months};

/// What kind of equid.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Kind {
    /// A horse.
    Horse,
    /// A pony.
    Pony,
    /// A miniature horse or pony.
    Miniature,
    /// A donkey.
    Donkey,
    /// A mule or hinny.
    Mule,
}

impl Kind {
    /// Whether donkey rules hold. Mules are treated as donkeys: the cautious side.
    pub const fn is_donkey(self) -> bool {
        matches!(self, Self::Donkey | Self::Mule)
    }

    /// The kinds in which going off feed is an emergency (raised blood fats).
    pub const fn fat_in_blood_risk(self) -> bool {
        matches!(
            self,
            Self::Pony | Self::Miniature | Self::Donkey | Self::Mule
        )
    }
}

/// The body type that chooses a weight equation.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum BodyType {
    /// Arabian and Arabian cross.
    Arabian,
    /// Pony, cob, native.
    Pony,
    /// Stock type.
    Stock,
    /// Draught.
    Draft,
    /// Warmblood.
    Warmblood,
    /// Thoroughbred.
    Thoroughbred,
    /// Icelandic.
    Icelandic,
    /// Shetland.
    Shetland,
    /// Saddle type.
    Saddle,
    /// Miniature.
    Miniature,
    /// Donkey.
    Donkey,
}

/// Sex.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Sex {
    /// A mare, jenny or filly.
    Female,
    /// A gelding.
    Gelding,
    /// A stallion, jack or colt.
    Entire,
}

/// When it was born: the day if it is known, else the month, else the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Birth {
    /// The day.
    Day(LocalDate),
    /// The month of a year.
    Month {
        /// The year.
        year: i32,
        /// The month, 1 to 12.
        month: u32,
    },
    /// Only the year.
    Year(i32),
}

impl Birth {
    /// Whole years of age on a day. Of a month or a year alone, the age it has surely reached: the youngest it can be.
    pub fn age_on(self, day: LocalDate) -> i32 {
        match self {
            Self::Day(born) => {
                let before_birthday = (day.month(), day.day()) < (born.month(), born.day());
                day.year() - born.year() - i32::from(before_birthday)
            }
            // On the last day of the month at the latest.
            Self::Month { year, month } => day.year() - year - i32::from(day.month() <= month),
            Self::Year(year) => day.year() - year - 1,
        }
    }

    /// The oldest it can be on a day, in whole years: of a month or a year alone, as if born on its first day.
    pub fn oldest_on(self, day: LocalDate) -> i32 {
        match self {
            Self::Day(_) => self.age_on(day),
            Self::Month { year, month } => {
                let before = day.month() < month;
                day.year().saturating_sub(year) - i32::from(before)
            }
            Self::Year(year) => day.year().saturating_sub(year),
        }
    }

    /// The last day on which it can have been born; `None` of a year alone and of a month that is none.
    pub fn latest(self) -> Option<LocalDate> {
        match self {
            Self::Day(born) => Some(born),
            Self::Month { year, month } => {
                let first = LocalDate::from_ymd_opt(year, month, 1)?;
                first.checked_add_months(Months::new(1))?.pred_opt()
            }
            Self::Year(_) => None,
        }
    }

    /// Whole months of age on a day; of a month alone, the youngest it can be. `None` of a year alone, which gives no
    /// month, and before the birth.
    pub fn months_on(self, day: LocalDate) -> Option<u32> {
        let (year, month, before) = match self {
            Self::Day(born) => (born.year(), born.month(), day.day() < born.day()),
            Self::Month { year, month } => (year, month, true),
            Self::Year(_) => return None,
        };
        let years = i64::from(day.year()) - i64::from(year);
        let months = i64::from(day.month()) - i64::from(month);
        // numeric: months of a year
        u32::try_from(years * 12 + months - i64::from(before)).ok()
    }
}

/// What its body is busy with besides work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum State {
    /// Grown, neither in foal nor in milk.
    Adult,
    /// Still growing.
    Growing,
    /// In foal.
    Pregnant,
    /// In milk.
    Lactating,
}

/// What its state began with, as far as anybody said.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct StageFacts {
    /// The day a mare in foal was covered.
    pub covered: Option<LocalDate>,
    /// The day a mare in milk foaled.
    pub foaled: Option<LocalDate>,
    /// What a growing animal will about weigh when it is grown.
    pub grown: Option<BodyMass>,
}

/// The three levels of maintenance of the published requirements.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Temperament {
    /// Good doer, moves little.
    Low,
    /// Average.
    Average,
    /// Moves a lot, poor doer.
    Elevated,
}

/// Work, in the classes of the published requirements.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Workload {
    /// None.
    Maintenance(Temperament),
    /// 1 to 3 hours a week, mostly walk and trot.
    Light,
    /// 3 to 5 hours a week.
    Moderate,
    /// 4 to 5 hours a week with gallop and jumping.
    Heavy,
    /// Speed work, or 6 to 12 hours a week.
    VeryHeavy,
}

/// What is wanted of its weight.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Goal {
    /// Lose weight.
    Lose,
    /// Hold weight.
    Hold,
    /// Gain weight.
    Gain,
}

/// An animal as a person describes it.
#[derive(Clone, Debug, PartialEq)]
pub struct Animal {
    /// Its id.
    pub id: AnimalId,
    /// Its name.
    pub name: String,
    /// What kind of equid.
    pub kind: Kind,
    /// The body type that chooses a weight equation, when known.
    pub body_type: Option<BodyType>,
    /// Sex, when known.
    pub sex: Option<Sex>,
    /// When it was born, when known.
    pub born: Option<Birth>,
    /// Height at the withers, without shoes.
    pub height: Option<Length>,
    /// Adult, growing, in foal, in milk.
    pub state: State,
    /// Since when, and to what weight it grows.
    pub stage: StageFacts,
    /// Its work.
    pub work: Workload,
    /// What is known of its health.
    pub health: Health,
    /// What is wanted of its weight.
    pub goal: Goal,
    /// Where it stands in the loop.
    pub phase: Phase,
    /// The weight a vet or consultant set as its target, when somebody did.
    pub target: Option<BodyMass>,
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn of_a_year_alone_the_age_is_the_youngest_it_can_be() {
        let day: LocalDate = "2026-05-05".parse().unwrap();
        assert_eq!(Birth::Year(2023).age_on(day), 2);
        assert_eq!(Birth::Day("2023-05-05".parse().unwrap()).age_on(day), 3);
        assert_eq!(Birth::Day("2023-05-06".parse().unwrap()).age_on(day), 2);
        let month = |month| Birth::Month { year: 2023, month };
        assert_eq!(month(4).age_on(day), 3);
        assert_eq!(month(5).age_on(day), 2);
        assert_eq!((month(5).oldest_on(day), month(6).oldest_on(day)), (3, 2));
    }

    #[test]
    fn months_are_counted_from_the_day_or_the_month_and_never_from_a_year() {
        let day: LocalDate = "2026-05-05".parse().unwrap();
        let born = |text: &str| Birth::Day(text.parse().unwrap()).months_on(day);
        assert_eq!(born("2025-11-05"), Some(6));
        assert_eq!(born("2025-11-06"), Some(5));
        assert_eq!(born("2026-05-06"), None);
        let month = |year, month| Birth::Month { year, month }.months_on(day);
        assert_eq!(month(2025, 11), Some(5));
        assert_eq!(month(2026, 5), None);
        assert_eq!(Birth::Year(2025).months_on(day), None);
    }
}
