//! The calendar of a latitude.

use super::part::{Note, Noted, YearPart};
use super::published::{
    AUTUMN_MOVES, CALENDAR_STANDS_FOR, DAYS_A_DEGREE, FOLLOWS_RAIN, MOVES_AT_MOST, NORTH_BEGINS,
    NOTE_REACHES, SOUTH_BEGINS,
};
use crate::graze::sun::{Hemisphere, Latitude};
use crate::units::LocalDate;
use chrono::{Datelike, Duration};

/// A part of a year.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Band {
    /// Which part.
    pub part: YearPart,
    /// Its first day.
    pub from: LocalDate,
    /// Its last day.
    pub to: LocalDate,
    /// The note that moved its beginning; `None` where the latitude gives it.
    pub noted: Option<LocalDate>,
}

/// Where a part begins.
#[derive(Clone, Copy, Debug)]
pub(super) struct Begins {
    pub(super) part: YearPart,
    pub(super) on: LocalDate,
    noted: Option<LocalDate>,
}

/// Whether grass follows the rain here and not the calendar.
pub(super) fn follows_rain(latitude: Latitude) -> bool {
    latitude.to_degrees().abs() < *FOLLOWS_RAIN
}

/// The parts that begin in a year by the calendar of the latitude, in order; none where grass follows the rain.
///
/// Spring comes later towards the pole and autumn earlier, four days a degree (Hopkins, from memory) and at most four
/// weeks (ours), seen from the latitude that each calendar stands for. It only makes the flush longer: it begins earlier
/// nearer the equator and ends later nearer the pole, for inland springs are later than their latitude and a flush that is
/// left out does harm.
fn usual(latitude: Latitude, year: i32) -> Vec<Begins> {
    let [north, south] = *CALENDAR_STANDS_FOR;
    let parts: Vec<(YearPart, u32)> = match latitude.hemisphere() {
        Hemisphere::North => {
            let [early, flush, summer, autumn, frosts] = *NORTH_BEGINS;
            vec![
                (YearPart::EarlySpring, early),
                (YearPart::Flush, flush),
                (YearPart::Summer, summer),
                (YearPart::AutumnBreak, autumn),
                (YearPart::Frosts, frosts),
            ]
        }
        Hemisphere::South => {
            let [flush, summer, autumn, frosts] = *SOUTH_BEGINS;
            vec![
                (YearPart::AutumnBreak, autumn),
                (YearPart::Frosts, frosts),
                (YearPart::Flush, flush),
                (YearPart::Summer, summer),
            ]
        }
    };
    let stands_for = match latitude.hemisphere() {
        Hemisphere::North => north,
        Hemisphere::South => south,
    };
    let later = (latitude.to_degrees().abs() - stands_for) * *DAYS_A_DEGREE;
    let later = later.clamp(-*MOVES_AT_MOST, *MOVES_AT_MOST);
    parts
        .into_iter()
        .filter_map(|(part, month)| {
            let days = match part {
                YearPart::AutumnBreak | YearPart::Frosts => -later * *AUTUMN_MOVES,
                YearPart::Summer => later.max(0.0),
                _ => later.min(0.0),
            };
            #[allow(clippy::cast_possible_truncation, reason = "within four weeks")]
            let moved = Duration::days(days.round() as i64);
            let on = LocalDate::from_ymd_opt(year, month, 1)?.checked_add_signed(moved)?;
            let noted = None;
            Some(Begins { part, on, noted })
        })
        .collect()
}

/// The beginnings of the parts from the year before to the year after, in order, as the calendar has them.
pub(super) fn begins(latitude: Latitude, year: i32) -> Vec<Begins> {
    if follows_rain(latitude) {
        return Vec::new();
    }
    let years = year.saturating_sub(1)..=year.saturating_add(1);
    years.flat_map(|y| usual(latitude, y)).collect()
}

/// The part that a note moves the beginning of.
fn moves(what: Noted) -> Option<YearPart> {
    match what {
        Noted::FlushBegan => Some(YearPart::Flush),
        Noted::FlushOver => Some(YearPart::Summer),
        Noted::AutumnRain => Some(YearPart::AutumnBreak),
        Noted::FirstFrost => Some(YearPart::Frosts),
        Noted::HardFreeze | Noted::Drought | Noted::Other => None,
    }
}

/// Moves the nearest beginning to where a person saw it, when that is near enough and keeps the order of the parts.
fn moved(mut begins: Vec<Begins>, note: Note) -> Vec<Begins> {
    let Some(part) = moves(note.what) else {
        return begins;
    };
    let away = |b: &Begins| (b.on - note.date).num_days().abs();
    let nearest = begins
        .iter()
        .enumerate()
        .filter(|(_, b)| b.part == part && away(b) <= *NOTE_REACHES)
        .min_by_key(|(_, b)| away(b))
        .map(|(place, _)| place);
    let Some(place) = nearest else {
        return begins;
    };
    let before = place.checked_sub(1).and_then(|p| begins.get(p));
    let fits = before.is_none_or(|b| b.on < note.date)
        && begins
            .get(place.saturating_add(1))
            .is_none_or(|b| note.date < b.on);
    if let Some(found) = begins.get_mut(place).filter(|_| fits) {
        found.on = note.date;
        found.noted = Some(note.date);
    }
    begins
}

/// The calendar of a year at a latitude: every day of it stands in one band.
///
/// What a person noted moves the beginning of a part: the flush began or is over, rain in autumn, the first frost. Nearer
/// the equator than 30 degrees (ours) there is one band, for there grass follows the rain. A year that the calendar does
/// not have gives no bands.
pub fn year(latitude: Latitude, year: i32, notes: &[Note]) -> Vec<Band> {
    let end = year
        .checked_add(1)
        .and_then(|y| LocalDate::from_yo_opt(y, 1))
        .and_then(|d| d.pred_opt());
    let (Some(first), Some(last)) = (LocalDate::from_yo_opt(year, 1), end) else {
        return Vec::new();
    };
    if follows_rain(latitude) {
        return vec![Band {
            part: YearPart::AfterRains,
            from: first,
            to: last,
            noted: None,
        }];
    }
    let begins = notes
        .iter()
        .fold(begins(latitude, year), |all, note| moved(all, *note));
    let ends = begins.iter().skip(1).map(|next| next.on.pred_opt());
    begins
        .iter()
        .zip(ends.chain([None]))
        .filter_map(|(b, end)| {
            let to = end.unwrap_or(last).min(last);
            let from = b.on.max(first);
            (from <= to).then_some(Band {
                part: b.part,
                from,
                to,
                noted: b.noted,
            })
        })
        .collect()
}

/// The part of the calendar that a day lies in, notes left aside.
pub(super) fn usual_part(latitude: Latitude, day: LocalDate) -> Option<YearPart> {
    if follows_rain(latitude) {
        return Some(YearPart::AfterRains);
    }
    begins(latitude, day.year())
        .into_iter()
        .rev()
        .find(|b| b.on <= day)
        .map(|b| b.part)
}
