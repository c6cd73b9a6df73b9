//! A track around a field, with hay and water apart.

use super::published::{
    ANIMALS, BODY_LENGTH, BODY_LENGTHS_APART, HAY_OVER, PLACES_MORE, SIDE, TRACK_WIDTH, WALKED,
};
use crate::graze::GrazeError;
use crate::units::{Area, Length};

/// A field of four sides.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Field {
    /// Its longer side, 5 to 3000 m.
    pub length: Length,
    /// Its shorter side, 5 to 3000 m.
    pub width: Length,
}

/// A track along the fence of a field.
#[derive(Clone, Debug, PartialEq)]
pub struct Track {
    /// How long it is along its middle.
    pub length: Length,
    /// The ground it takes.
    pub area: Area,
    /// What is left inside.
    pub inside: Area,
    /// How far each hay place is from water, along the track in one direction; one more place than animals.
    pub hay: Vec<Length>,
    /// How far apart hay places are.
    pub apart: Length,
    /// How far the nearest hay is from water, by either way.
    pub water_to_hay: Length,
    /// What is to be known of it.
    pub findings: Vec<TrackFinding>,
}

/// What is to be known of a track.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TrackFinding {
    /// It is too short for that many hay places two body lengths apart.
    TooShort {
        /// How many hay places are asked for.
        asked: u32,
        /// How many it holds, with water kept as far.
        holds: u32,
    },
    /// Animals walked farther on a track than grazing strips, by this part.
    WalksFarther {
        /// The part.
        part: f64,
    },
    /// No effect on weight is proven.
    WeightNotProven,
    /// What grows on the track is grass, and counts as grass.
    GrassOnItCounts,
}

/// How much farther ponies walked on a track than grazing strips, as a part (Kirton 2024).
pub fn farther_on_a_track() -> f64 {
    let [track, strip] = *WALKED;
    track / strip - 1.0
}

/// Lays a track along the fence of a field: hay on the half away from water, one place more than animals.
///
/// Places are at least two body lengths apart; where the half is too short for that they go on towards water, and where
/// the whole is too short it is said.
///
/// # Errors
/// A side, width or number outside its range; a track that leaves no inside.
pub fn track(field: Field, width: Length, animals: u32) -> Result<Track, GrazeError> {
    SIDE.check(field.length.to_m())?;
    SIDE.check(field.width.to_m())?;
    TRACK_WIDTH.check(width.to_m())?;
    ANIMALS.check(f64::from(animals))?;
    let under = field.length.min(field.width) / 2.0;
    if width >= under {
        return Err(GrazeError::TrackTooWide { width, under });
    }
    let middle = [field.length - width, field.width - width];
    let length = middle.into_iter().sum::<Length>() * 2.0;
    let inside = Area::of(field.length - width * 2.0, field.width - width * 2.0);
    let places = animals.saturating_add(*PLACES_MORE);
    let least_apart = Length::m(*BODY_LENGTH * *BODY_LENGTHS_APART);
    let gaps = f64::from(animals);
    // Water is kept as far from the nearest hay as hay places are from each other.
    let room = (length - least_apart * 2.0).max(Length::ZERO);
    let over = (length * *HAY_OVER).max(least_apart * gaps).min(room);
    let apart = over / gaps;
    let water_to_hay = (length - over) / 2.0;
    let mut findings = Vec::new();
    if apart < least_apart {
        findings.push(TrackFinding::TooShort {
            asked: places,
            holds: whole(room / least_apart).saturating_add(1),
        });
    }
    findings.extend([
        TrackFinding::WalksFarther {
            part: farther_on_a_track(),
        },
        TrackFinding::WeightNotProven,
        TrackFinding::GrassOnItCounts,
    ]);
    Ok(Track {
        length,
        area: Area::of(field.length, field.width) - inside,
        inside,
        hay: (0..places)
            .map(|place| water_to_hay + apart * f64::from(place))
            .collect(),
        apart,
        water_to_hay,
        findings,
    })
}

#[allow(
    clippy::cast_possible_truncation,
    clippy::cast_sign_loss,
    reason = "a small number that is not negative"
)]
fn whole(number: f64) -> u32 {
    number.max(0.0).floor() as u32
}
