//! From records to what the weather of a day says of its grass.

use super::bodies::{Body, Chip, PlaceV2, SeasonNoteV1, SwardV1, WeatherV2};
use super::entry::read;
use super::envelope::Record;
use super::kind::Kind;
use super::published::WEATHER_LOOKED_BACK_DAYS;
use super::stamp::Stamp;
use crate::graze::season::Noted;
use crate::graze::sun::Place;
use crate::graze::sward::{Leaf, readings};
use crate::graze::window::{DayWeather, Night, Sky};
use crate::limits::Ends;
use crate::units::{Length, LocalDate};

impl PlaceV2 {
    /// Where it lies, for the sun; `None` for what lies on no globe.
    pub fn place(&self) -> Option<Place> {
        // numeric: millionths of a degree
        let degrees = |micro: i64| micro as f64 / 1e6;
        let (north, east) = (self.latitude.get(), self.longitude.get());
        Place::degrees(degrees(north), degrees(east)).ok()
    }
}

impl SwardV1 {
    /// The heights that were measured.
    pub fn heights(&self) -> Vec<Length> {
        let heights = self.heights_mm.iter();
        heights.map(|height| height.length()).collect()
    }

    /// How high the leaf may stand: what was measured, else what the boot said; of both the lower. `None` when nobody looked.
    pub fn leaf_height(&self) -> Option<Ends<Length>> {
        let boot = self.leaf.map(Leaf::height);
        let heights = self.heights();
        let measured = readings(&heights).ok().map(|(of, _)| of.height());
        match (boot, measured) {
            (Some(boot), Some(measured)) if boot.likely < measured.likely => Some(boot),
            (boot, measured) => measured.or(boot),
        }
    }
}

/// What the chips and the notes of the year say of a day and of the fortnight before it.
///
/// Night and sky are those that were set on the day itself, as they were set last. Frost that was said of a day stays
/// said, whatever the air was later. A dry spell holds until a row of chips is set without it; a note of drought holds
/// for as long as days are looked at.
pub fn day_weather_of(records: &[&Record], day: LocalDate) -> DayWeather {
    let (entries, _) = read(records, |record| {
        matches!(record.kind, Kind::Weather | Kind::SeasonNote)
    });
    let near = |date: LocalDate| (0..=*WEATHER_LOOKED_BACK_DAYS).contains(&(day - date).num_days());
    let mut rows: Vec<(LocalDate, Stamp, &WeatherV2)> = Vec::new();
    let mut notes: Vec<&SeasonNoteV1> = Vec::new();
    for entry in &entries {
        match &entry.body {
            Body::Weather(row) if !row.carried && near(row.date) => {
                rows.push((row.date, entry.record.stamp, row));
            }
            Body::SeasonNote(note) if near(note.date) => notes.push(note),
            _ => {}
        }
    }
    rows.sort_by_key(|(date, stamp, _)| (*date, *stamp));
    let last = rows.last().map(|(_, _, row)| *row);
    let today = last.filter(|row| row.date == day);
    let noted = |what: Noted| notes.iter().filter(move |note| note.what == what);
    let last_hard_freeze = rows
        .iter()
        .filter(|(_, _, row)| row.chips.contains(&Chip::HardFrost))
        .map(|(date, _, _)| *date)
        .chain(noted(Noted::HardFreeze).map(|note| note.date))
        .max();
    let frost = last_hard_freeze == Some(day);
    DayWeather {
        night: night(today, frost),
        frost,
        sky: sky(today),
        dry_spell: last.is_some_and(|row| row.chips.contains(&Chip::DrySpell))
            || noted(Noted::Drought).next().is_some(),
        last_hard_freeze,
    }
}

/// Of two that cannot both be the colder holds.
fn night(today: Option<&WeatherV2>, frost: bool) -> Night {
    let said = |chip| today.is_some_and(|row| row.chips.contains(&chip));
    if frost || said(Chip::NightFiveOrUnder) {
        Night::Cold
    } else if !said(Chip::NightOverFive) {
        Night::NotSaid
    } else if said(Chip::Mild) {
        Night::Mild
    } else {
        Night::Over5
    }
}

/// Of two that cannot both be the sunny one holds: it closes grass earlier.
fn sky(today: Option<&WeatherV2>) -> Sky {
    let said = |chip| today.is_some_and(|row| row.chips.contains(&chip));
    if said(Chip::Sunny) {
        Sky::Sunny
    } else if said(Chip::Dull) {
        Sky::Dull
    } else {
        Sky::NotSaid
    }
}

#[cfg(test)]
mod tests;
