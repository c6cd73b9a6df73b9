//! What a net weighs, dry and empty, and whose net it is.

use crate::shelf::Shelf;
use tussock_core::animal::NetId;
use tussock_core::day::usual_net;
use tussock_core::log::bodies::NetV1;
use tussock_core::log::{Body, Kind, Subject as About};
use tussock_core::units::AsFed;

/// Where a net's own weight comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum OwnFrom {
    /// This net was weighed.
    This,
    /// Another net was weighed, this one was not.
    Another,
    /// Nobody weighed a net: the default.
    Default,
}

/// The own weight of a net.
#[derive(Clone, Debug, PartialEq)]
pub struct Own {
    /// Dry and empty.
    pub weight: AsFed,
    /// Where it comes from.
    pub from: OwnFrom,
    /// The net, when it is told apart.
    pub net: Option<NetId>,
}

/// A net of the yard.
#[derive(Clone, Debug, PartialEq)]
pub struct YardNet {
    /// Its record.
    pub id: NetId,
    /// Whose it is: the animal or group it is hung for, or the yard.
    pub about: About,
    /// What it says.
    pub body: NetV1,
}

/// The nets of the yard, in the order of their names.
pub fn yard_nets(shelf: &Shelf) -> Vec<YardNet> {
    let mut nets: Vec<YardNet> = shelf
        .bodies(&Kind::Net)
        .into_iter()
        .filter_map(|(record, body)| match body {
            Body::Net(body) => Some(YardNet {
                id: NetId(record.id.0.clone()),
                about: record.subject.clone(),
                body,
            }),
            _ => None,
        })
        .collect();
    nets.sort_by(|a, b| {
        let key = |net: &YardNet| {
            let name = net.body.name.as_str();
            (name.len(), name.to_owned(), net.id.clone())
        };
        key(a).cmp(&key(b))
    });
    nets
}

impl YardNet {
    /// The number at the end of its name, as in "Bramble, net 3".
    fn number(&self) -> Option<usize> {
        let name = self.body.name.as_str();
        let head = name.trim_end_matches(|letter: char| letter.is_ascii_digit());
        name.strip_prefix(head)?.parse().ok()
    }
}

/// The own weight of a net: of the one that the plan names, else of the one that was weighed for this subject under this
/// number. What another net weighs stands in and is marked so; it is never taken for this net's.
pub(super) fn own(nets: &[YardNet], planned: Option<&NetId>, about: &About, number: usize) -> Own {
    let named = planned.and_then(|id| nets.iter().find(|net| net.id == *id));
    let net = named.or_else(|| {
        nets.iter()
            .find(|net| net.about == *about && net.number() == Some(number))
    });
    let id = net.map(|net| net.id.clone()).or_else(|| planned.cloned());
    let weight = |net: &YardNet| Some(net.body.own_weight.as_ref()?.g.as_fed());
    let (weight, from) = match (net.and_then(weight), nets.iter().rev().find_map(weight)) {
        (Some(own), _) => (own, OwnFrom::This),
        (None, Some(other)) => (other, OwnFrom::Another),
        (None, None) => (usual_net(), OwnFrom::Default),
    };
    Own {
        weight,
        from,
        net: id,
    }
}
