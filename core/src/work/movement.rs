//! Movement without riding: several feeding places, or one that moves.

use super::published::{MOVING_CONDITION, MOVING_CREST, MOVING_TIMES};
use super::standing::WorkStop;
use crate::sources::Provenance;

/// What a trial with a feeder that moves found in eight ponies over three months (de Laat 2016).
#[derive(Clone, Debug, PartialEq)]
pub struct MovingFeeder {
    /// How much farther they went.
    pub times: f64,
    /// Their condition before and after.
    pub condition: [f64; 2],
    /// Their crest before and after.
    pub crest: [f64; 2],
    /// Where it comes from.
    pub from: Provenance,
}

/// What is known of movement without riding, where it may be offered: an animal with anything that stops its work is not
/// made to walk to its hay.
pub fn moving_feeder(stops: &[WorkStop]) -> Option<MovingFeeder> {
    stops.is_empty().then(|| MovingFeeder {
        times: *MOVING_TIMES,
        condition: *MOVING_CONDITION,
        crest: *MOVING_CREST,
        from: Provenance::new()
            .constant(&MOVING_TIMES)
            .constant(&MOVING_CONDITION)
            .constant(&MOVING_CREST),
    })
}
