//! Two lots beside each other: sugar first, then what a kilogram of dry matter costs as it is eaten.

use crate::shelf::Shelf;
use crate::views::hay::{Read, hay};
use crate::views::round::Today;
use crate::views::stock::{Stock, stock};
use tussock_core::animal::LotId;
use tussock_core::forage::{Comparison, ForageError, Offer, Verdict, compare};
use tussock_core::units::Zone;

/// A lot as it is compared.
#[derive(Clone, Debug, PartialEq)]
pub struct Compared {
    /// Which.
    pub id: LotId,
    /// Its name.
    pub name: String,
    /// What was read of it.
    pub read: Read,
    /// Its stock and cost.
    pub stock: Stock,
}

impl Compared {
    /// The verdict on its sugar; `None` where no rule asks for one.
    pub fn verdict(&self) -> Option<Verdict> {
        self.read
            .judgement
            .as_ref()
            .map(|judgement| judgement.verdict)
    }

    fn offer(&self) -> Offer {
        Offer {
            verdict: self.verdict(),
            cost: self.stock.cost.clone(),
        }
    }
}

/// Two lots and how they stand to each other.
#[derive(Clone, Debug, PartialEq)]
pub struct Pair {
    /// The two.
    pub lots: [Compared; 2],
    /// How they stand, or why that cannot be said.
    pub outcome: Result<Comparison, ForageError>,
}

/// The lots that may be compared: id and name, by name.
pub fn offered(shelf: &Shelf) -> Vec<(LotId, String)> {
    crate::views::hay::rows(shelf)
        .into_iter()
        .map(|row| (row.id, row.name))
        .collect()
}

/// Compares two lots; `None` when one is not there or cannot be read, or both are the same.
pub fn pair(
    shelf: &Shelf,
    today: &Today,
    first: &LotId,
    second: &LotId,
    zone: &impl Zone,
) -> Option<Pair> {
    if first == second {
        return None;
    }
    let of = |id: &LotId| {
        let seen = hay(shelf, id)?;
        Some(Compared {
            id: id.clone(),
            name: seen.body.name.as_str().to_owned(),
            read: seen.read.ok()?,
            stock: stock(shelf, today, id, zone)?,
        })
    };
    let lots = [of(first)?, of(second)?];
    let [one, other] = &lots;
    Some(Pair {
        outcome: compare(&one.offer(), &other.offer()),
        lots,
    })
}
