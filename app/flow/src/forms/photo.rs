//! A photograph: how it is made small, when it was taken, and the act that keeps it.

#[cfg(test)]
mod tests;

use super::vet::read_day;
use crate::acts::{Act, New};
use crate::views::photo::Photo;
use tussock_core::animal::AnimalId;
use tussock_core::log::bodies::{Dated, PhotoV1, Pose};
use tussock_core::log::{Body, Known, LONGEST_SIDE, LogError, Picture, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::{Instant, LocalDate, LocalStamp, LocalTime, Span, Zone};

/// A size in which a picture is drawn, and the quality with which it is packed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Try {
    /// Pixels across.
    pub width: u32,
    /// Pixels down.
    pub height: u32,
    /// The quality of JPEG, up to 1.
    pub quality: f64,
}

/// The longest sides that are tried, the largest first.
const SIDES: [i64; 6] = [LONGEST_SIDE, 1120, 960, 800, 640, 480];
/// The qualities that are tried at each of them, the best first.
const QUALITIES: [f64; 3] = [0.8, 0.7, 0.6];

/// How a picture of this size is made small enough, the best way first: the quality goes down before the size does. It
/// is never made larger, and keeps its proportions. Nothing is tried for a picture without a size.
pub fn tries(width: u32, height: u32) -> Vec<Try> {
    let longest = i64::from(width.max(height));
    if width == 0 || height == 0 {
        return Vec::new();
    }
    let mut sides: Vec<i64> = SIDES.iter().map(|side| longest.min(*side)).collect();
    sides.dedup();
    let part = |of: u32, side: i64| {
        let scaled = (i64::from(of) * side + longest / 2) / longest;
        u32::try_from(scaled.max(1)).unwrap_or(1)
    };
    sides
        .into_iter()
        .flat_map(|side| {
            let (width, height) = (part(width, side), part(height, side));
            QUALITIES.map(|quality| Try {
                width,
                height,
                quality,
            })
        })
        .collect()
}

/// A file that is this new was made for this.
const JUST_TAKEN: Span = Span::minutes(10);
/// A file from before has lost its date: the year 1990 in milliseconds of UTC.
const NO_DATE: Instant = Instant::from_ms(631_152_000_000);

/// The time of a photograph of which only the day is known.
const NOON: LocalTime = match LocalTime::from_hms_opt(12, 0, 0) {
    Some(noon) => noon,
    None => LocalTime::MIN,
};

/// When a photograph was taken, by the date of its file; a picture of the live view has none.
pub fn taken(file: Option<Instant>, now: Instant) -> (Instant, Dated) {
    match file {
        Some(at) if NO_DATE <= at && JUST_TAKEN.to_ms() < now.since(at).to_ms() => {
            (at, Dated::File)
        }
        _ => (now, Dated::Taken),
    }
}

/// The act that keeps a photograph: the picture and the record that names it, in one batch.
///
/// # Errors
/// A size that cannot be stored.
pub fn act(
    animal: &AnimalId,
    pose: Pose,
    picture: Picture,
    (at, dated): (Instant, Dated),
    record: &str,
) -> Result<Act, LogError> {
    let body = PhotoV1::of(pose, &picture, dated)?;
    Ok(Act::All(vec![
        Act::Keep(picture),
        Act::Add(New {
            id: RecordId(record.to_owned()),
            subject: Subject::animal(animal),
            at: Some(at),
            known: Known::Seen,
            body: Body::Photo(body),
        }),
    ]))
}

/// The day that somebody typed; `None` when it cannot be read or is still to come.
pub fn said_day(text: &str, today: LocalDate) -> Option<LocalDate> {
    read_day(text).filter(|day| *day <= today)
}

/// The act that says on which day a photograph was taken: noon of it, and never later than now.
pub fn day_act(photo: &Photo, day: LocalDate, now: Instant, zone: &impl Zone) -> Act {
    let noon = LocalStamp {
        date: day,
        time: NOON,
    };
    Act::Change {
        id: photo.id.clone(),
        body: Body::Photo(PhotoV1 {
            dated: Dated::Said,
            ..photo.body.clone()
        }),
        at: Some(zone.to_instant(noon).planned().min(now)),
    }
}

/// The act that takes a photograph back. It stays on the disk and can be brought back.
pub fn take_back(photo: &Photo) -> Act {
    Act::Remove(photo.id.clone())
}
