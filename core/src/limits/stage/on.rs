//! The stage of an animal on a day, from what was said of it.

use super::Stage;
use super::published::{
    GESTATION, GESTATION_LATEST, GROWTH_AGE, MILK_MONTH_DAYS, MILK_MONTHS, PREGNANT_MONTHS,
};
use crate::animal::{Animal, State};
use crate::units::LocalDate;

/// Why its age or month stands among none that are published.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum StageGap {
    /// Nobody said it: the day she was covered or foaled, the month it was born, what it will weigh when grown.
    NotSaid,
    /// What was said lies after the day.
    NotYet,
    /// It is younger than the youngest that is published.
    Younger,
    /// It is older, or further on, than what is published.
    Past,
    /// The weight it is to grow to is not believed.
    Weight,
}

impl Stage {
    /// The stage of an animal on a day. The month in foal is counted from the day she was covered, in elevenths of the
    /// usual time; the month in milk from the day she foaled, 30 days each; the age from the birth.
    ///
    /// What was not said and what lies outside the published months is [`Stage::NotKnown`], never a guess.
    pub fn on(animal: &Animal, day: LocalDate) -> Self {
        let facts = animal.stage;
        let found = match animal.state {
            State::Adult => Ok(Self::Adult),
            State::Growing => growing(animal, day),
            State::Pregnant => in_foal(animal.kind.is_donkey(), facts.covered, day),
            State::Lactating => in_milk(facts.foaled, day),
        };
        match found {
            Ok(stage) if stage.check().is_ok() => stage,
            Ok(stage) => Self::NotKnown(stage.state(), StageGap::Weight),
            Err(gap) => Self::NotKnown(animal.state, gap),
        }
    }
}

fn growing(animal: &Animal, day: LocalDate) -> Result<Stage, StageGap> {
    let born = animal.born.ok_or(StageGap::NotSaid)?;
    if born.latest().is_some_and(|latest| day < latest) {
        return Err(StageGap::NotYet);
    }
    let months = born.months_on(day).ok_or(StageGap::NotSaid)?;
    let [youngest, oldest] = *GROWTH_AGE;
    if f64::from(months) < youngest {
        return Err(StageGap::Younger);
    }
    if oldest < f64::from(months) {
        return Err(StageGap::Past);
    }
    let mature = animal.stage.grown.ok_or(StageGap::NotSaid)?;
    Ok(Stage::Growing { months, mature })
}

fn in_foal(donkey: bool, covered: Option<LocalDate>, day: LocalDate) -> Result<Stage, StageGap> {
    let days = since(covered, day)?;
    let of_kind = |[mare, jenny]: [i64; 2]| if donkey { jenny } else { mare };
    if of_kind(*GESTATION_LATEST) < days {
        return Err(StageGap::Past);
    }
    let [_, months] = *PREGNANT_MONTHS;
    let passed = days as f64 * months / of_kind(*GESTATION) as f64;
    // She may go over her time: the last month holds until she foals.
    Ok(Stage::Pregnant {
        month: month_of(passed.min(months - 1.0)),
    })
}

fn in_milk(foaled: Option<LocalDate>, day: LocalDate) -> Result<Stage, StageGap> {
    let passed = since(foaled, day)? as f64 / f64::from(*MILK_MONTH_DAYS);
    let [_, months] = *MILK_MONTHS;
    if months <= passed {
        return Err(StageGap::Past);
    }
    Ok(Stage::Lactating {
        month: month_of(passed),
    })
}

/// Days since a day that was said, nought or more.
fn since(said: Option<LocalDate>, day: LocalDate) -> Result<i64, StageGap> {
    let days = (day - said.ok_or(StageGap::NotSaid)?).num_days();
    if days < 0 {
        Err(StageGap::NotYet)
    } else {
        Ok(days)
    }
}

/// The month that runs when so many have passed: the first at nought.
fn month_of(passed: f64) -> u32 {
    #[allow(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "not below nought, and few"
    )]
    let whole = passed.max(0.0).floor() as u32;
    whole + 1
}

#[cfg(test)]
mod tests {
    use super::super::super::tests::bramble;
    use super::*;
    use crate::animal::{Birth, Kind};
    use crate::units::BodyMass;
    use chrono::Days;
    use proptest::prelude::*;

    fn day() -> LocalDate {
        "2026-05-05".parse().unwrap()
    }

    fn ago(days: u64) -> Option<LocalDate> {
        day().checked_sub_days(Days::new(days))
    }

    fn in_state(state: State) -> Animal {
        Animal { state, ..bramble() }
    }

    fn foal(days: u64) -> Stage {
        let mut mare = in_state(State::Pregnant);
        mare.stage.covered = ago(days);
        Stage::on(&mare, day())
    }

    fn milk(days: u64) -> Stage {
        let mut mare = in_state(State::Lactating);
        mare.stage.foaled = ago(days);
        Stage::on(&mare, day())
    }

    #[test]
    fn the_month_in_foal_is_an_eleventh_of_her_time_and_the_last_holds_until_she_foals() {
        let month = |month| Stage::Pregnant { month };
        assert_eq!(foal(0), month(1));
        assert_eq!(foal(30), month(1));
        assert_eq!(foal(31), month(2));
        assert_eq!(foal(309), month(10));
        assert_eq!(foal(310), month(11));
        assert_eq!(foal(370), month(11));
        let past = Stage::NotKnown(State::Pregnant, StageGap::Past);
        assert_eq!(foal(371), past);
        let mut jenny = in_state(State::Pregnant);
        jenny.kind = Kind::Donkey;
        jenny.stage.covered = ago(371);
        assert_eq!(Stage::on(&jenny, day()), month(11));
        jenny.stage.covered = ago(310);
        assert_eq!(Stage::on(&jenny, day()), month(10));
    }

    #[test]
    fn the_month_in_milk_is_thirty_days_and_after_the_sixth_nothing_is_published() {
        let month = |month| Stage::Lactating { month };
        assert_eq!(milk(0), month(1));
        assert_eq!(milk(29), month(1));
        assert_eq!(milk(30), month(2));
        assert_eq!(milk(179), month(6));
        let past = Stage::NotKnown(State::Lactating, StageGap::Past);
        assert_eq!(milk(180), past);
    }

    #[test]
    fn growth_goes_by_a_month_of_birth_and_the_weight_it_grows_to() {
        let mut young = in_state(State::Growing);
        let stage = |young: &Animal| Stage::on(young, day());
        let gap = |gap| Stage::NotKnown(State::Growing, gap);
        young.born = Some(Birth::Month {
            year: 2025,
            month: 4,
        });
        assert_eq!(stage(&young), gap(StageGap::NotSaid));
        let mature = BodyMass::kg(500.0);
        young.stage.grown = Some(mature);
        assert_eq!(stage(&young), Stage::Growing { months: 12, mature });
        young.born = Some(Birth::Year(2025));
        assert_eq!(stage(&young), gap(StageGap::NotSaid));
        young.born = Some(Birth::Day("2026-02-01".parse().unwrap()));
        assert_eq!(stage(&young), gap(StageGap::Younger));
        young.born = Some(Birth::Day("2024-04-01".parse().unwrap()));
        assert_eq!(stage(&young), gap(StageGap::Past));
        young.born = Some(Birth::Day("2027-04-01".parse().unwrap()));
        assert_eq!(stage(&young), gap(StageGap::NotYet));
        young.born = Some(Birth::Day("2025-04-01".parse().unwrap()));
        young.stage.grown = Some(BodyMass::kg(0.5));
        assert_eq!(stage(&young), gap(StageGap::Weight));
    }

    #[test]
    fn nothing_is_taken_from_what_belongs_to_another_state() {
        for state in [State::Growing, State::Pregnant, State::Lactating] {
            let mut animal = in_state(state);
            animal.born = None;
            assert_eq!(
                Stage::on(&animal, day()),
                Stage::NotKnown(state, StageGap::NotSaid)
            );
        }
        let mut grown = in_state(State::Adult);
        grown.stage.covered = ago(40);
        assert_eq!(Stage::on(&grown, day()), Stage::Adult);
    }

    proptest! {
        /// Whatever was said, the stage is of her state, and its needs can be reckoned.
        #[test]
        fn a_stage_that_is_known_is_a_published_one(
            state in prop::sample::select(vec![State::Growing, State::Pregnant, State::Lactating]),
            days in -40..1200_i64,
            grown in 0.0..3000.0_f64,
            donkey: bool,
        ) {
            let mut animal = in_state(state);
            let said = day() - chrono::Duration::days(days);
            animal.kind = if donkey { Kind::Donkey } else { Kind::Horse };
            animal.born = Some(Birth::Day(said));
            animal.stage.covered = Some(said);
            animal.stage.foaled = Some(said);
            animal.stage.grown = Some(BodyMass::kg(grown));
            let stage = Stage::on(&animal, day());
            prop_assert_eq!(stage.state(), state);
            prop_assert!(stage.check().is_ok());
            if days < 0 {
                prop_assert_eq!(stage, Stage::NotKnown(state, StageGap::NotYet));
            }
        }
    }
}
