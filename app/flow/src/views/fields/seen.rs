//! What was seen of a paddock's grass.

use crate::shelf::Shelf;
use tussock_core::animal::{Answer, PaddockId};
use tussock_core::graze::sward::{Leaf, Measured, mean_clicks};
use tussock_core::log::bodies::SwardV1;
use tussock_core::log::{Body, Kind};
use tussock_core::sources::RecordId;
use tussock_core::units::{Length, LocalDate, Zone};

/// How its height was seen.
#[derive(Clone, Debug, PartialEq)]
pub enum By {
    /// Against the boot.
    Boot(Leaf),
    /// By heights.
    Heights(Vec<Length>),
    /// By a plate.
    Plate {
        /// The mean of its clicks.
        clicks: f64,
        /// How many times it was set down.
        count: usize,
    },
}

impl By {
    /// As the core takes it.
    pub fn measured(&self) -> Measured<'_> {
        match self {
            Self::Boot(leaf) => Measured::Boot(*leaf),
            Self::Heights(heights) => Measured::Heights(heights),
            Self::Plate { clicks, .. } => Measured::Plate { clicks: *clicks },
        }
    }
}

/// The last look that said how high it stands.
#[derive(Clone, Debug, PartialEq)]
pub struct Looked {
    /// How.
    pub by: By,
    /// On which day.
    pub on: LocalDate,
}

/// All that was seen of a paddock last.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Look {
    /// What its height is judged by: the newest record that says one.
    pub judged: Option<Looked>,
    /// The leaf against the boot.
    pub leaf: Option<(Leaf, LocalDate)>,
    /// Whether it is in seed; `None` where nobody ever said.
    pub seeding: Option<(bool, LocalDate)>,
    /// The newest record of chips, which a tap of the same day changes.
    pub chips: Option<(RecordId, LocalDate, SwardV1)>,
}

impl Look {
    /// Whether seed heads stand, for what is judged by it; one of another day is not known.
    pub fn seeding_on(&self, day: LocalDate) -> Answer {
        match self.seeding {
            Some((true, on)) if on == day => Answer::Yes,
            Some((false, on)) if on == day => Answer::No,
            _ => Answer::NotKnown,
        }
    }
}

/// What was seen of a paddock last, whenever that was.
pub fn look(shelf: &Shelf, paddock: &PaddockId, zone: &impl Zone) -> Look {
    let mut found = Look::default();
    for (record, body) in shelf.bodies(&Kind::Sward) {
        let Body::Sward(body) = body else { continue };
        if record.subject.id() != paddock.as_str() {
            continue;
        }
        let on = zone.to_local(record.at).date;
        if found.judged.is_none() {
            found.judged = by(&body).map(|by| Looked { by, on });
        }
        if found.leaf.is_none() {
            found.leaf = body.leaf.map(|leaf| (leaf, on));
        }
        if found.seeding.is_none() {
            found.seeding = match body.seeding {
                Answer::Yes => Some((true, on)),
                Answer::No => Some((false, on)),
                Answer::NotKnown => None,
            };
        }
        if found.chips.is_none() && body.heights_mm.is_empty() && body.plate.is_none() {
            found.chips = Some((record.id.clone(), on, body));
        }
    }
    found
}

fn by(body: &SwardV1) -> Option<By> {
    if !body.heights_mm.is_empty() {
        return Some(By::Heights(body.heights()));
    }
    let clicks = body.plate.iter().flat_map(|plate| &plate.clicks);
    let clicks: Vec<i64> = clicks.map(|clicks| clicks.get()).collect();
    if let Some(mean) = mean_clicks(&clicks) {
        return Some(By::Plate {
            clicks: mean,
            count: clicks.len(),
        });
    }
    body.leaf.map(By::Boot)
}
