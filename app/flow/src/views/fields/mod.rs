//! The paddocks of a yard: what they are, what was seen of their grass, and what that makes of it.
//!
//! What stands on a paddock is a guess with wide ends, and nothing here makes it fit for an animal at risk: when grass is
//! open, and how long, is said elsewhere.

mod drawing;
mod grazers;
mod paddock;
mod plants;
mod seen;
mod strip;
#[cfg(test)]
mod tests;
mod track;
mod twins;

pub use drawing::StripDrawing;
pub use grazers::{Eats, Out, grazers};
pub use paddock::{Danger, OnField, Regrows, field};
pub use plants::{grass_rows, hazard_rows, matches_text};
pub use seen::{By, Look, Looked, look};
pub use strip::{Against, Asked, NoStrip, StripSeen, StripTold, left_standing, strip_of};
pub use track::{TrackSeen, track_of};
pub use twins::{kept, plants_of};

use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::horses::kind_of_limit;
use crate::views::round;
use tussock_core::animal::PaddockId;
use tussock_core::graze::plants::Region;
use tussock_core::graze::sward::Leaf;
use tussock_core::log::bodies::PaddockV2;
use tussock_core::log::bodies::base::SquareMetres;
use tussock_core::log::{Body, Kind};
use tussock_core::units::{Area, Instant, LocalDate, Zone};

/// The most of a kind that one screen asks for.
const MOST: u32 = 1_000;

fn all_of(kinds: &[Kind]) -> Vec<Range> {
    kinds.iter().map(|kind| kind_of_limit(kind, MOST)).collect()
}

/// What a paddock and its list ask the disk for: the paddocks, what was seen of them, the yard.
pub fn needs() -> Vec<Range> {
    all_of(&[Kind::Yard, Kind::Paddock, Kind::Sward])
}

/// The same with who grazes and what their plans say of it.
pub fn needs_with_grazers(now: Instant) -> Vec<Range> {
    let mut ranges = needs();
    ranges.extend(all_of(&[
        Kind::Grazing,
        Kind::SeasonNote,
        Kind::Ration,
        Kind::Visits,
    ]));
    ranges.extend(round::needs(now));
    ranges
}

/// A paddock as a row of a list.
#[derive(Clone, Debug, PartialEq)]
pub struct FieldRow {
    /// Which.
    pub id: PaddockId,
    /// Its name.
    pub name: String,
    /// The leaf that was seen against the boot last, and when; `None` where nobody looked.
    pub leaf: Option<(Leaf, LocalDate)>,
    /// The same as it was judged: by boot, by heights, or by a plate.
    pub looked: Option<Looked>,
    /// Since when it rests; `None` while it is grazed.
    pub resting: Option<LocalDate>,
    /// Its area, where somebody said.
    pub area: Option<Area>,
    /// What is stored.
    pub body: PaddockV2,
}

/// The paddocks of the yard, by name.
pub fn fields(shelf: &Shelf, zone: &impl Zone) -> Vec<FieldRow> {
    by_name(shelf)
        .into_iter()
        .map(|(id, body)| {
            let look = look(shelf, &id, zone);
            FieldRow {
                name: body.name.as_str().to_owned(),
                leaf: look.leaf,
                looked: look.judged,
                resting: body.rest_from,
                area: area_of(&body),
                body,
                id,
            }
        })
        .collect()
}

/// The paddocks of the yard as they are stored, by name.
pub(crate) fn by_name(shelf: &Shelf) -> Vec<(PaddockId, PaddockV2)> {
    let all = shelf.bodies(&Kind::Paddock).into_iter();
    let mut found: Vec<(PaddockId, PaddockV2)> = all
        .filter_map(|(record, body)| match body {
            Body::Paddock(body) => Some((PaddockId(record.id.0.clone()), body)),
            _ => None,
        })
        .collect();
    found.sort_by_key(|(id, body)| (body.name.as_str().to_lowercase(), id.clone()));
    found
}

/// A paddock as it is stored.
pub fn one(shelf: &Shelf, id: &PaddockId) -> Option<PaddockV2> {
    let record = shelf.get(id.as_str()).filter(|record| !record.gone)?;
    match Body::read(record) {
        Ok(Body::Paddock(body)) => Some(body),
        _ => None,
    }
}

/// Its area.
pub fn area_of(body: &PaddockV2) -> Option<Area> {
    body.area_m2.map(SquareMetres::area)
}

/// The regions that were ticked for the yard.
pub fn regions(shelf: &Shelf) -> Vec<Region> {
    shelf
        .bodies(&Kind::Yard)
        .into_iter()
        .find_map(|(_, body)| match body {
            Body::Yard(body) => Some(body.regions),
            _ => None,
        })
        .unwrap_or_default()
}
