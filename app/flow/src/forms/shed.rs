//! The chips of the day.

use crate::acts::{Act, New};
use crate::views::shed::Weather;
use tussock_core::log::bodies::{Chip, WeatherV1};
use tussock_core::log::{Body, Known, Subject};
use tussock_core::sources::RecordId;

/// The chips of the row, in their order.
pub const CHIPS: [Chip; 9] = [
    Chip::NightFiveOrUnder,
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
/// The chips of the sky.
const SKY: [Chip; 2] = [Chip::Dull, Chip::Sunny];

/// The chips of the air among some.
fn air(chips: &[Chip]) -> Vec<Chip> {
    let of_air = chips.iter().filter(|chip| AIR.contains(chip));
    of_air.copied().collect()
}

/// The act of putting a chip on or off. Of the air and of the sky one holds at a time. What was carried over is set for
/// today by it.
pub fn chip(yard: &Subject, weather: &Weather, chip: Chip, on: bool, id: &str) -> Act {
    let rival = |other: &Chip| {
        let both = |row: &[Chip]| row.contains(&chip) && row.contains(other);
        on && (both(&AIR) || both(&SKY))
    };
    let mut chips: Vec<Chip> = weather
        .chips
        .iter()
        .copied()
        .filter(|other| *other != chip && !rival(other))
        .collect();
    if on {
        chips.push(chip);
    }
    let order = |chip: &Chip| CHIPS.iter().position(|other| other == chip);
    chips.sort_by_key(order);
    // The air that was said before stays said: hay that lies in the water has been that warm.
    let another_air = air(&chips) != air(&weather.chips);
    let body = Body::Weather(WeatherV1 {
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
