//! A track around a field, from what is typed.

use tussock_core::graze::GrazeError;
use tussock_core::graze::strip::{Field, Track, track};
use tussock_core::units::Length;

/// A track, or why there is none; `None` while something is still to be typed.
pub type TrackSeen = Option<Result<Track, GrazeError>>;

/// The track of a field of these sides, this wide, for so many animals.
pub fn track_of(
    length: Option<Length>,
    width: Option<Length>,
    wide: Option<Length>,
    animals: Option<u32>,
) -> TrackSeen {
    let (length, width, wide, animals) = (length?, width?, wide?, animals?);
    // Whichever side was typed first: the longer one is the length.
    let field = Field {
        length: length.max(width),
        width: length.min(width),
    };
    Some(track(field, wide, animals))
}
