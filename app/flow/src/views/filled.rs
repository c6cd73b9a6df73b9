//! What was filled and is not hung yet.
//!
//! Filling and hanging are two jobs, often on two days. What is filled and not hung is a stock. A net that is hung takes
//! the filling it names, else the one that comes nearest to its hay; a net of the day is filled by a filling that was made
//! for as much, and by no other: one that was filled by an older plan is weighed again.

use crate::shelf::Shelf;
use std::collections::BTreeMap;
use tussock_core::animal::LotId;
use tussock_core::day::published::SCALE_WITHIN;
use tussock_core::log::bodies::JobAnswer;
use tussock_core::log::bodies::base::JobKey;
use tussock_core::log::{Body, Kind, Subject as About};
use tussock_core::round::{JobKind, Key};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Instant};

/// A filled net.
#[derive(Clone, Debug, PartialEq)]
pub struct Filling {
    /// The record.
    pub id: RecordId,
    /// When.
    pub at: Instant,
    /// The lot.
    pub lot: LotId,
    /// The hay in it.
    pub hay: AsFed,
    /// What it was filled for: its target, else the hay in it.
    pub target: AsFed,
    /// It was filled to be soaked.
    pub to_soak: bool,
}

impl Filling {
    /// Whether it was made for as much as this.
    pub fn is_for(&self, hay: AsFed) -> bool {
        apart(self.target, hay) <= *SCALE_WITHIN
    }
}

/// What was filled for a subject: what hangs where, and what is in stock, oldest first.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Stock {
    /// The fillings that were hung, by the job of hanging.
    pub hung: BTreeMap<Key, Filling>,
    /// The fillings that were not.
    pub left: Vec<Filling>,
}

/// The fillings of a subject.
pub fn stock(shelf: &Shelf, about: &About) -> Stock {
    let mut left: Vec<Filling> = shelf
        .bodies(&Kind::NetFilled)
        .into_iter()
        .filter(|(record, _)| record.subject == *about)
        .filter_map(|(record, body)| match body {
            Body::NetFilled(body) => Some(Filling {
                id: record.id.clone(),
                at: record.at,
                lot: body.lot,
                hay: body.hay.g.as_fed(),
                target: body.target.unwrap_or(body.hay.g).as_fed(),
                to_soak: body.to_soak,
            }),
            _ => None,
        })
        .collect();
    left.sort_by(|a, b| (a.at, &a.id).cmp(&(b.at, &b.id)));
    let mut hung = BTreeMap::new();
    for hanging in hangings(shelf, about) {
        let named = hanging
            .filling
            .as_ref()
            .and_then(|id| left.iter().position(|filling| filling.id == *id));
        let may_hang = |filling: &Filling| {
            filling.at <= hanging.at && hanging.lot.as_ref().is_none_or(|lot| filling.lot == *lot)
        };
        let taken = named.or_else(|| nearest(&left, hanging.hay, may_hang));
        if let Some(index) = taken {
            let filling = left.remove(index);
            if let Some(key) = hanging.key {
                hung.insert(key, filling);
            }
        }
    }
    Stock { hung, left }
}

struct Hanging {
    at: Instant,
    key: Option<Key>,
    filling: Option<RecordId>,
    lot: Option<LotId>,
    hay: Option<AsFed>,
}

/// Nets that were hung, seen or as planned, oldest first.
fn hangings(shelf: &Shelf, about: &About) -> Vec<Hanging> {
    let mut found: Vec<Hanging> = Vec::new();
    for (record, body) in shelf
        .bodies(&Kind::NetHung)
        .into_iter()
        .chain(shelf.bodies(&Kind::Job))
    {
        if record.subject != *about {
            continue;
        }
        let key = body.job().and_then(JobKey::key);
        match body {
            Body::NetHung(body) => found.push(Hanging {
                at: record.at,
                key,
                filling: body.filling,
                lot: body.lot,
                hay: body.hay.map(|hay| hay.g.as_fed()),
            }),
            Body::Job(body)
                if matches!(body.answer, JobAnswer::Done | JobAnswer::AsPlanned)
                    && key.as_ref().and_then(Key::kind) == Some(JobKind::HangNet) =>
            {
                found.push(Hanging {
                    at: record.at,
                    key,
                    filling: None,
                    lot: None,
                    hay: None,
                });
            }
            _ => {}
        }
    }
    found.sort_by_key(|hanging| hanging.at);
    found
}

/// The filling that a net of this hay and this much may take.
pub(super) fn fitting(left: &[Filling], lot: &LotId, hay: AsFed) -> Option<usize> {
    nearest(left, Some(hay), |filling| {
        filling.lot == *lot && filling.is_for(hay)
    })
}

/// Takes the filling that a net to hang takes out of stock: of its lot, one that was filled to be soaked or not as it is
/// to be, and of those the one that was filled for as much; the oldest of several.
pub fn take(
    left: &mut Vec<Filling>,
    lot: &LotId,
    hay: Option<AsFed>,
    soaked: bool,
) -> Option<Filling> {
    let alike = nearest(left, hay, |filling| {
        filling.lot == *lot && filling.to_soak == soaked
    });
    let index = alike.or_else(|| nearest(left, hay, |filling| filling.lot == *lot))?;
    Some(left.remove(index))
}

/// Of those that may be, the one whose target comes nearest; the oldest of several, and where nobody says how much.
fn nearest(left: &[Filling], hay: Option<AsFed>, may: impl Fn(&Filling) -> bool) -> Option<usize> {
    left.iter()
        .enumerate()
        .filter(|(_, filling)| may(filling))
        .min_by(|(_, a), (_, b)| {
            let far = |filling: &Filling| hay.map_or(0.0, |hay| apart(filling.target, hay));
            far(a).total_cmp(&far(b))
        })
        .map(|(index, _)| index)
}

/// The difference of two weights of feed, in kilograms.
fn apart(a: AsFed, b: AsFed) -> f64 {
    (a.to_kg() - b.to_kg()).abs()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn filling(id: &str, target: f64, hay: f64) -> Filling {
        Filling {
            id: RecordId(id.to_owned()),
            at: Instant::from_ms(0),
            lot: LotId("meadow".to_owned()),
            hay: AsFed::kg(hay),
            target: AsFed::kg(target),
            to_soak: false,
        }
    }

    #[test]
    fn nets_filled_in_one_go_keep_their_own_amounts() {
        let left = [filling("b", 4.3, 4.3), filling("a", 2.25, 2.25)];
        let meadow = LotId("meadow".to_owned());
        assert_eq!(fitting(&left, &meadow, AsFed::kg(2.25)), Some(1));
        assert_eq!(fitting(&left, &meadow, AsFed::kg(4.3)), Some(0));
        assert_eq!(
            fitting(&left, &LotId("other".to_owned()), AsFed::kg(4.3)),
            None
        );
    }

    #[test]
    fn a_net_to_hang_takes_what_was_filled_for_it() {
        let dry = filling("b", 2.25, 2.25);
        let wet = Filling {
            to_soak: true,
            ..filling("a", 4.3, 4.3)
        };
        let meadow = LotId("meadow".to_owned());
        let taken = |hay, soaked| {
            let mut left = vec![wet.clone(), dry.clone(), filling("c", 4.3, 4.3)];
            let taken = take(&mut left, &meadow, Some(AsFed::kg(hay)), soaked).unwrap();
            assert_eq!(left.len(), 2);
            taken.id.0
        };
        assert_eq!(taken(2.25, false), "b");
        assert_eq!(taken(4.3, false), "c");
        assert_eq!(taken(4.3, true), "a");
        // Better another filling than none.
        assert_eq!(taken(2.25, true), "a");
    }

    #[test]
    fn a_net_that_came_out_heavier_is_still_the_one_that_was_filled_for_it() {
        let left = [filling("a", 2.25, 2.67)];
        let meadow = LotId("meadow".to_owned());
        assert_eq!(fitting(&left, &meadow, AsFed::kg(2.25)), Some(0));
    }

    #[test]
    fn a_net_filled_by_an_older_plan_is_weighed_again() {
        let left = [filling("a", 4.0, 4.0)];
        let meadow = LotId("meadow".to_owned());
        assert_eq!(fitting(&left, &meadow, AsFed::kg(3.6)), None);
    }
}
