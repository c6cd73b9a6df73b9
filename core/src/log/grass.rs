//! From records to what the weather of a day says of its grass.

use super::bodies::{Body, Chip, LeafSeen, PlaceV2, SeasonEvent, SeasonNoteV1, SwardV1, WeatherV2};
use super::entry::read;
use super::envelope::Record;
use super::kind::Kind;
use super::published::WEATHER_LOOKED_BACK_DAYS;
use super::stamp::Stamp;
use crate::graze::season::{Note, Noted};
use crate::graze::sun::Place;
use crate::graze::sward::{Leaf, readings};
use crate::graze::window::{DayWeather, Night, Sky};
use crate::limits::Ends;
use crate::units::{Length, LocalDate};

/// What was said of a night.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NightSaid {
    /// At 5 degrees or under.
    Cold,
    /// Over 5 degrees.
    OverFive,
    /// Over 5 degrees, and the day is mild.
    Mild,
    /// Nobody said it on its day: what was said of the night before does not speak of this one.
    NotSaid,
}

/// What was said of the sky.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SkySaid {
    /// Sunny.
    Sunny,
    /// Dull.
    Dull,
    /// Nobody said it on its day.
    NotSaid,
}

/// What is known of a day's weather, as far as it matters to grass.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SaidWeather {
    /// The night that ended on the day.
    pub night: NightSaid,
    /// Hard frost on the day.
    pub frost: bool,
    /// The sky of the day.
    pub sky: SkySaid,
    /// A dry spell, by the last row of chips or a note of drought.
    pub dry_spell: bool,
    /// The last day with hard frost among those that are looked at, the day itself with them.
    pub last_hard_freeze: Option<LocalDate>,
}

impl From<SaidWeather> for DayWeather {
    fn from(said: SaidWeather) -> Self {
        Self {
            night: match said.night {
                NightSaid::Cold => Night::Cold,
                NightSaid::OverFive => Night::Over5,
                NightSaid::Mild => Night::Mild,
                NightSaid::NotSaid => Night::NotSaid,
            },
            frost: said.frost,
            sky: match said.sky {
                SkySaid::Sunny => Sky::Sunny,
                SkySaid::Dull => Sky::Dull,
                SkySaid::NotSaid => Sky::NotSaid,
            },
            dry_spell: said.dry_spell,
            last_hard_freeze: said.last_hard_freeze,
        }
    }
}

impl SeasonNoteV1 {
    /// What it says to the year of grass.
    pub const fn noted(&self) -> Note {
        Note {
            date: self.date,
            what: match self.what {
                SeasonEvent::FlushBegan => Noted::FlushBegan,
                SeasonEvent::FlushOver => Noted::FlushOver,
                SeasonEvent::AutumnRain => Noted::AutumnRain,
                SeasonEvent::FirstFrost => Noted::FirstFrost,
                SeasonEvent::HardFreeze => Noted::HardFreeze,
                SeasonEvent::Drought => Noted::Drought,
                SeasonEvent::Other => Noted::Other,
            },
        }
    }
}

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
    /// How high the leaf may stand: what was measured, else what the boot said; of both the lower. `None` when nobody looked.
    pub fn leaf_height(&self) -> Option<Ends<Length>> {
        let boot = self.leaf.map(|leaf| match leaf {
            LeafSeen::BelowAnkle => Leaf::BelowAnkle.height(),
            LeafSeen::Ankle => Leaf::Ankle.height(),
            LeafSeen::AboveAnkle => Leaf::AboveAnkle.height(),
        });
        // Millimetres to centimetres.
        let heights: Vec<Length> = self
            .heights_mm
            .iter()
            .map(|height| Length::cm(height.get() as f64 / 10.0))
            .collect();
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
pub fn day_weather_of(records: &[&Record], day: LocalDate) -> SaidWeather {
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
    let noted = |what: SeasonEvent| notes.iter().filter(move |note| note.what == what);
    let last_hard_freeze = rows
        .iter()
        .filter(|(_, _, row)| row.chips.contains(&Chip::HardFrost))
        .map(|(date, _, _)| *date)
        .chain(noted(SeasonEvent::HardFreeze).map(|note| note.date))
        .max();
    let frost = last_hard_freeze == Some(day);
    SaidWeather {
        night: night(today, frost),
        frost,
        sky: sky(today),
        dry_spell: last.is_some_and(|row| row.chips.contains(&Chip::DrySpell))
            || noted(SeasonEvent::Drought).next().is_some(),
        last_hard_freeze,
    }
}

/// Of two that cannot both be the colder holds.
fn night(today: Option<&WeatherV2>, frost: bool) -> NightSaid {
    let said = |chip| today.is_some_and(|row| row.chips.contains(&chip));
    if frost || said(Chip::NightFiveOrUnder) {
        NightSaid::Cold
    } else if !said(Chip::NightOverFive) {
        NightSaid::NotSaid
    } else if said(Chip::Mild) {
        NightSaid::Mild
    } else {
        NightSaid::OverFive
    }
}

/// Of two that cannot both be the sunny one holds: it closes grass earlier.
fn sky(today: Option<&WeatherV2>) -> SkySaid {
    let said = |chip| today.is_some_and(|row| row.chips.contains(&chip));
    if said(Chip::Sunny) {
        SkySaid::Sunny
    } else if said(Chip::Dull) {
        SkySaid::Dull
    } else {
        SkySaid::NotSaid
    }
}

#[cfg(test)]
mod tests;
