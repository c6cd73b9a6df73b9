//! The animal itself.

use super::health::Health;
use super::ids::AnimalId;
use super::phase::Phase;
use crate::units::{BodyMass, Length, LocalDate};
use chrono::Datelike;

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

/// When it was born: the day if it is known, else the year.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Birth {
    /// The day.
    Day(LocalDate),
    /// Only the year.
    Year(i32),
}

impl Birth {
    /// Whole years of age on a day. Of a year alone, the age it has surely reached: the youngest it can be.
    pub fn age_on(self, day: LocalDate) -> i32 {
        match self {
            Self::Day(born) => {
                let before_birthday = (day.month(), day.day()) < (born.month(), born.day());
                day.year() - born.year() - i32::from(before_birthday)
            }
            Self::Year(year) => day.year() - year - 1,
        }
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
    }
}
