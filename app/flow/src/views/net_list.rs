//! The nets of the yard and where each of them is.

use crate::shelf::Shelf;
use crate::views::nets::{YardNet, yard_nets};
use tussock_core::animal::NetId;
use tussock_core::day::NetKind;
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
    yard_nets(shelf)
        .into_iter()
        .map(|net| NetRow {
            place: place(shelf, &net),
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

/// By what was last done with it under its name.
fn place(shelf: &Shelf, net: &YardNet) -> NetPlace {
    let is = |id: &Option<NetId>| id.as_ref() == Some(&net.id);
    let last = |kind: &Kind, of: &dyn Fn(&Body) -> bool| -> Option<(Record, Body)> {
        shelf
            .bodies(kind)
            .into_iter()
            .find(|(_, body)| of(body))
            .map(|(record, body)| (record.clone(), body))
    };
    let filled = last(
        &Kind::NetFilled,
        &|body| matches!(body, Body::NetFilled(body) if is(&body.net)),
    );
    // A hanging names the net, or the filling that says which net it was.
    let fillings: Vec<RecordId> = shelf
        .bodies(&Kind::NetFilled)
        .into_iter()
        .filter(|(_, body)| matches!(body, Body::NetFilled(body) if is(&body.net)))
        .map(|(record, _)| record.id.clone())
        .collect();
    let hung = last(&Kind::NetHung, &|body| {
        matches!(body, Body::NetHung(body) if is(&body.net)
            || body.filling.as_ref().is_some_and(|filling| fillings.contains(filling)))
    });
    match (filled, hung) {
        (Some((filled, Body::NetFilled(body))), hung)
            if hung.as_ref().is_none_or(|(hung, _)| hung.at < filled.at) =>
        {
            NetPlace::Filled {
                hay: body.hay.g.as_fed(),
                whose: whose(shelf, &filled.subject),
            }
        }
        (_, Some((hung, _))) if done_with(shelf, &hung.id) => NetPlace::Empty,
        (_, Some((hung, _))) => NetPlace::Hangs {
            whose: whose(shelf, &hung.subject),
            since: hung.at,
        },
        _ => NetPlace::NotKnown,
    }
}

/// Whether somebody said what was left of a hanging, or that it was eaten up.
pub(super) fn done_with(shelf: &Shelf, hanging: &RecordId) -> bool {
    let of = |kind: &Kind| {
        shelf.bodies(kind).into_iter().any(|(_, body)| match body {
            Body::LeftOver(body) => body.hung.as_ref() == Some(hanging),
            Body::NetTimed(body) => body.hung.as_ref() == Some(hanging),
            _ => false,
        })
    };
    of(&Kind::LeftOver) || of(&Kind::NetTimed)
}
