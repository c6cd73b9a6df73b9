//! The year of grass: its parts, what a person noted of it, and who is to come out of winter leaner.

use super::paddock::yard;
use crate::shelf::Shelf;
use chrono::Datelike;
use tussock_core::animal::{AnimalId, Goal};
use tussock_core::graze::season::{
    Band, Flush, Note, UntilFlush, YearPart, season_on, until_flush, year,
};
use tussock_core::graze::sun::Latitude;
use tussock_core::log::bodies::SeasonNoteV1;
use tussock_core::log::{Body, Kind, Record, Wish, gather, trend_of};
use tussock_core::progress::Forecast;
use tussock_core::sources::RecordId;
use tussock_core::units::{BodyMass, Instant, LocalDate, Zone};

/// Whether an animal comes to its target before the flush.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ByFlush {
    /// It is there.
    There,
    /// Four times in five it gets there before.
    Before,
    /// It may, and may not.
    Perhaps,
    /// It does not at this rate.
    NotBefore,
    /// Too little is known, of it or of the flush.
    NotKnown,
}

/// An animal that is to lose.
#[derive(Clone, Debug, PartialEq)]
pub struct Leaner {
    /// Which.
    pub animal: AnimalId,
    /// Its name.
    pub name: String,
    /// What is still to go to the upper end of its target; `None` without a trend or a target.
    pub to_go: Option<BodyMass>,
    /// When it gets there.
    pub forecast: Forecast,
    /// Whether that is before the flush.
    pub by_flush: ByFlush,
}

/// The year of grass at a yard.
#[derive(Clone, Debug, PartialEq)]
pub struct Season {
    /// The local day.
    pub today: LocalDate,
    /// Whether somebody said where the yard lies.
    pub placed: bool,
    /// The part of the year by the calendar and the notes; `None` where nobody said the place.
    pub part: Option<YearPart>,
    /// The part that comes next, and its usual first day.
    pub next: Option<(YearPart, LocalDate)>,
    /// Whether grass is in its flush.
    pub flush: Flush,
    /// How long until it is.
    pub until: UntilFlush,
    /// The parts of this year; empty where nobody said the place.
    pub bands: Vec<Band>,
    /// The notes of all years, the newest first.
    pub notes: Vec<(RecordId, SeasonNoteV1)>,
    /// The animals that are to lose, by name.
    pub leaner: Vec<Leaner>,
}

impl Season {
    /// How far through its year a day lies, from 0 to 100.
    pub fn along(day: LocalDate) -> f64 {
        // numeric: days of the longest year
        f64::from(day.ordinal0()) / 366.0 * 100.0
    }
}

/// The year of grass now.
pub fn season(shelf: &Shelf, now: Instant, zone: &impl Zone) -> Season {
    let records: Vec<&Record> = shelf.records().collect();
    let today = zone.to_local(now).date;
    let place = yard(shelf).and_then(|yard| yard.place?.place());
    let latitude: Option<Latitude> = place.map(|place| place.latitude);
    let mut notes: Vec<(RecordId, SeasonNoteV1)> = shelf
        .bodies(&Kind::SeasonNote)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::SeasonNote(note) => Some((record.id.clone(), note)),
            _ => None,
        })
        .collect();
    notes.sort_by_key(|(_, note)| std::cmp::Reverse(note.date));
    let said: Vec<Note> = notes.iter().map(|(_, note)| note.noted()).collect();
    let of_year = |of: i32| latitude.map_or_else(Vec::new, |at| year(at, of, &said));
    let bands = of_year(today.year());
    let here = bands
        .iter()
        .find(|band| band.from <= today && today <= band.to);
    let after = of_year(today.year().saturating_add(1));
    let next = bands
        .iter()
        .chain(&after)
        .find(|band| today < band.from && here.is_none_or(|here| here.part != band.part));
    let on = season_on(latitude, today, &said);
    let until = until_flush(latitude, today, &said);
    let leaner = shelf
        .animals()
        .into_iter()
        .filter(|animal| animal.goal == Goal::Lose)
        .filter_map(|animal| {
            let gathered = gather(&records, &animal.id, now, zone, &Wish::default())?;
            let trend = trend_of(&records, &animal.id, now, zone).ok();
            let aim = trend.as_ref().and_then(|trend| gathered.aim(trend));
            let (to_go, forecast) = match (&trend, aim) {
                (Some(trend), Some(aim)) => (
                    Some((trend.level.likely - aim.high).max(BodyMass::ZERO)),
                    trend.forecast(aim),
                ),
                _ => (None, Forecast::NotKnown),
            };
            Some(Leaner {
                by_flush: by_flush(&forecast, until),
                animal: animal.id,
                name: animal.name,
                to_go,
                forecast,
            })
        })
        .collect();
    Season {
        today,
        placed: place.is_some(),
        part: here.map(|band| band.part).or(on.part),
        next: next.map(|band| (band.part, band.from)),
        flush: on.flush,
        until,
        bands,
        notes,
        leaner,
    }
}

fn by_flush(forecast: &Forecast, until: UntilFlush) -> ByFlush {
    let UntilFlush::Begins { weeks, .. } = until else {
        return match forecast {
            Forecast::Reached { .. } => ByFlush::There,
            _ => ByFlush::NotKnown,
        };
    };
    match forecast {
        Forecast::Reached { .. } => ByFlush::There,
        Forecast::Within {
            to_week: Some(to), ..
        } if i64::from(*to) <= weeks => ByFlush::Before,
        Forecast::Within { from_week, .. } if weeks < i64::from(*from_week) => ByFlush::NotBefore,
        Forecast::Within { .. } => ByFlush::Perhaps,
        Forecast::NotWithin { weeks: within } if i64::from(*within) < weeks => ByFlush::Perhaps,
        Forecast::NotWithin { .. } | Forecast::NotOnCourse { .. } => ByFlush::NotBefore,
        Forecast::NotKnown => ByFlush::NotKnown,
    }
}

#[cfg(test)]
mod tests;
