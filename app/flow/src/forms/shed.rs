//! The chips of the day.

use crate::acts::{Act, New};
use crate::views::shed::Weather;
use tussock_core::log::bodies::{Chip, WeatherV2};
use tussock_core::log::{Body, Known, Subject};
use tussock_core::sources::RecordId;

/// The chips of the row, in their order.
pub const CHIPS: [Chip; 10] = [
    Chip::NightFiveOrUnder,
    Chip::NightOverFive,
    Chip::HardFrost,
    Chip::UnderSixteen,
    Chip::Mild,
    Chip::OverTwenty,
    Chip::OverTwentyFive,
    Chip::Dull,
    Chip::Sunny,
    Chip::DrySpell,
];

/// The chips of the air, of which one holds at a time.
const AIR: [Chip; 5] = [
    Chip::HardFrost,
    Chip::UnderSixteen,
    Chip::Mild,
    Chip::OverTwenty,
    Chip::OverTwentyFive,
];
/// The chips of the night.
const NIGHT: [Chip; 2] = [Chip::NightFiveOrUnder, Chip::NightOverFive];
/// The chips of the sky.
const SKY: [Chip; 2] = [Chip::Dull, Chip::Sunny];

/// The chips of the air among some.
fn air(chips: &[Chip]) -> Vec<Chip> {
    let of_air = chips.iter().filter(|chip| AIR.contains(chip));
    of_air.copied().collect()
}

/// Whether a chip speaks of one night or one day alone: what was said of the day before does not speak of today.
pub const fn of_one_day(chip: Chip) -> bool {
    match chip {
        Chip::NightFiveOrUnder
        | Chip::NightOverFive
        | Chip::HardFrost
        | Chip::Mild
        | Chip::Dull
        | Chip::Sunny => true,
        Chip::UnderSixteen | Chip::OverTwenty | Chip::OverTwentyFive | Chip::DrySpell => false,
    }
}

/// The act of putting a chip on or off. Of the night, of the air and of the sky one holds at a time. What was carried over is set for
/// today by it, but for what speaks of the day before alone: nobody said that of today.
pub fn chip(yard: &Subject, weather: &Weather, chip: Chip, on: bool, id: &str) -> Act {
    let rival = |other: &Chip| {
        let both = |row: &[Chip]| row.contains(&chip) && row.contains(other);
        on && (both(&NIGHT) || both(&AIR) || both(&SKY))
    };
    let mut chips: Vec<Chip> = weather
        .chips
        .iter()
        .copied()
        .filter(|other| *other != chip && !rival(other))
        .filter(|other| !(weather.carried && of_one_day(*other)))
        .collect();
    if on {
        chips.push(chip);
    }
    let order = |chip: &Chip| CHIPS.iter().position(|other| other == chip);
    chips.sort_by_key(order);
    // The air that was said before stays said: hay that lies in the water has been that warm.
    let another_air = air(&chips) != air(&weather.chips);
    let body = Body::Weather(WeatherV2 {
        date: weather.day,
        chips,
        carried: false,
    });
    match weather.record.as_ref().filter(|_| !another_air) {
        Some(record) => Act::Change {
            id: record.clone(),
            body,
            at: None,
        },
        None => Act::Add(New {
            id: RecordId(id.to_owned()),
            subject: yard.clone(),
            at: None,
            known: Known::Seen,
            body,
        }),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_core::animal::YardId;

    fn set(chips: &[Chip], put: Chip) -> Vec<Chip> {
        written(chips, put, false)
    }

    fn written(chips: &[Chip], put: Chip, carried: bool) -> Vec<Chip> {
        let weather = Weather {
            record: (!carried).then(|| RecordId("row".to_owned())),
            day: "2026-05-05".parse().unwrap(),
            chips: chips.to_vec(),
            carried,
        };
        let yard = Subject::yard(&YardId("yard".to_owned()));
        let of = |body| match body {
            Body::Weather(row) => row.chips,
            other => panic!("{other:?}"),
        };
        match chip(&yard, &weather, put, true, "new") {
            Act::Change { body, .. } => of(body),
            Act::Add(new) => of(new.body),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn of_the_night_one_holds_at_a_time_and_the_day_stays() {
        let day = [Chip::NightFiveOrUnder, Chip::Mild, Chip::Dull];
        assert_eq!(
            set(&day, Chip::NightOverFive),
            [Chip::NightOverFive, Chip::Mild, Chip::Dull]
        );
        assert_eq!(
            set(
                &[Chip::NightOverFive, Chip::DrySpell],
                Chip::NightFiveOrUnder
            ),
            [Chip::NightFiveOrUnder, Chip::DrySpell]
        );
    }

    #[test]
    fn what_was_said_of_the_day_before_is_not_written_as_todays() {
        let before = [Chip::NightOverFive, Chip::Mild, Chip::Dull, Chip::DrySpell];
        assert_eq!(
            written(&before, Chip::Sunny, true),
            [Chip::Sunny, Chip::DrySpell]
        );
        let frost = [Chip::NightFiveOrUnder, Chip::HardFrost, Chip::Sunny];
        assert_eq!(
            written(&frost, Chip::NightOverFive, true),
            [Chip::NightOverFive]
        );
        // The air that shortens a soak stays until somebody says otherwise.
        let warm = [Chip::NightOverFive, Chip::OverTwentyFive];
        assert_eq!(
            written(&warm, Chip::Sunny, true),
            [Chip::OverTwentyFive, Chip::Sunny]
        );
    }
}
