//! The nets of the yard and where each of them is.

use crate::shelf::Shelf;
use crate::views::nets::{YardNet, yard_nets};
use tussock_core::animal::NetId;
use tussock_core::day::NetKind;
use tussock_core::log::bodies::{NetFilledV1, NetHungV1};
use tussock_core::log::{Body, Kind, Record, Subject as About};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, Instant};

/// Where a net is.
#[derive(Clone, Debug, PartialEq)]
pub enum NetPlace {
    /// Filled, and not hung yet.
    Filled {
        /// With so much hay.
        hay: AsFed,
        /// For whom.
        whose: String,
    },
    /// It hangs.
    Hangs {
        /// For whom.
        whose: String,
        /// Since when.
        since: Instant,
    },
    /// It was eaten up or taken down.
    Empty,
    /// Nobody filled or hung it by its name.
    NotKnown,
}

/// A net as a row.
#[derive(Clone, Debug, PartialEq)]
pub struct NetRow {
    /// Which.
    pub id: NetId,
    /// Its name.
    pub name: String,
    /// What it is eaten from.
    pub kind: NetKind,
    /// Its own weight; `None` when nobody weighed it.
    pub own: Option<AsFed>,
    /// How much goes into it; `None` when nobody said.
    pub capacity: Option<AsFed>,
    /// Where it is.
    pub place: NetPlace,
}

/// The nets of the yard, by name.
pub fn rows(shelf: &Shelf) -> Vec<NetRow> {
    let done = Done::of(shelf);
    yard_nets(shelf)
        .into_iter()
        .map(|net| NetRow {
            place: place(shelf, &done, &net),
            kind: net.body.eaten_from(),
            own: net.body.own_weight.as_ref().map(|own| own.g.as_fed()),
            capacity: net.body.capacity.as_ref().map(|most| most.g.as_fed()),
            name: net.body.name.as_str().to_owned(),
            id: net.id,
        })
        .collect()
}

/// A net by its id.
pub fn net(shelf: &Shelf, id: &NetId) -> Option<YardNet> {
    yard_nets(shelf).into_iter().find(|net| net.id == *id)
}

/// The name of the animal or group that a record is about; empty for the yard.
pub(super) fn whose(shelf: &Shelf, about: &About) -> String {
    let record = shelf.get(about.id());
    match record.and_then(|record| Body::read(record).ok()) {
        Some(Body::Animal(body)) => body.name.as_str().to_owned(),
        Some(Body::Group(body)) => body.name.as_str().to_owned(),
        _ => String::new(),
    }
}

/// What was filled, hung and taken down, the newest first.
struct Done<'a> {
    filled: Vec<(&'a Record, NetFilledV1)>,
    hung: Vec<(&'a Record, NetHungV1)>,
    over: Vec<RecordId>,
}

impl<'a> Done<'a> {
    fn of(shelf: &'a Shelf) -> Self {
        let bodies = |kind| shelf.bodies(kind).into_iter();
        Self {
            filled: bodies(&Kind::NetFilled)
                .filter_map(|(record, body)| match body {
                    Body::NetFilled(body) => Some((record, body)),
                    _ => None,
                })
                .collect(),
            hung: bodies(&Kind::NetHung)
                .filter_map(|(record, body)| match body {
                    Body::NetHung(body) => Some((record, body)),
                    _ => None,
                })
                .collect(),
            over: over(shelf),
        }
    }
}

/// By what was last done with it under its name.
fn place(shelf: &Shelf, done: &Done<'_>, net: &YardNet) -> NetPlace {
    let is = |id: &Option<NetId>| id.as_ref() == Some(&net.id);
    let fillings: Vec<_> = done
        .filled
        .iter()
        .filter(|(_, body)| is(&body.net))
        .collect();
    // A hanging names the net, or the filling that says which net it was.
    let of_filling = |id: &RecordId| fillings.iter().any(|(record, _)| record.id == *id);
    let hung = done
        .hung
        .iter()
        .find(|(_, body)| is(&body.net) || body.filling.as_ref().is_some_and(of_filling))
        .map(|(record, _)| record);
    match (fillings.first(), hung) {
        (Some((filled, body)), hung) if hung.is_none_or(|hung| hung.at < filled.at) => {
            NetPlace::Filled {
                hay: body.hay.g.as_fed(),
                whose: whose(shelf, &filled.subject),
            }
        }
        (_, Some(hung)) if done.over.contains(&hung.id) => NetPlace::Empty,
        (_, Some(hung)) => NetPlace::Hangs {
            whose: whose(shelf, &hung.subject),
            since: hung.at,
        },
        _ => NetPlace::NotKnown,
    }
}

/// The hangings of which somebody said what was left, or that they were eaten up.
pub(super) fn over(shelf: &Shelf) -> Vec<RecordId> {
    let said = |kind| shelf.bodies(kind).into_iter();
    said(&Kind::LeftOver)
        .chain(said(&Kind::NetTimed))
        .filter_map(|(_, body)| match body {
            Body::LeftOver(body) => body.hung,
            Body::NetTimed(body) => body.hung,
            _ => None,
        })
        .collect()
}
