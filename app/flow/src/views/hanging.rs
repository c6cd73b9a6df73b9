//! The nets that hang in front of an animal or group, what is asked of them, and how fast it eats.

use crate::shelf::Shelf;
use crate::views::net_list::{over, whose};
use crate::views::nets::yard_nets;
use crate::views::round::{Today, ticks, waits_for_water};
use tussock_core::animal::{AnimalId, GroupId, LotId, NetId};
use tussock_core::assess::best;
use tussock_core::day::{EatingRate, EatingTime, NetKind, OwnRate, eating_time};
use tussock_core::log::{
    Body, Gathered, Kind, Known, Record, Subject as About, TimedNet, Wish, gather, net_dry,
    own_rates, timed_nets,
};
use tussock_core::round::{Job, JobKind, JobState};
use tussock_core::sources::RecordId;
use tussock_core::units::{AsFed, BodyMass, DryMatter, Instant, Span, Zone};

/// How long after hanging it is still asked what was left.
const ASKED_HOURS: i64 = 36;

/// A net that hangs, and of which nobody said yet what was left.
#[derive(Clone, Debug, PartialEq)]
pub struct HungNet {
    /// The record of its hanging.
    pub id: RecordId,
    /// When it was hung.
    pub at: Instant,
    /// Which net, where nets are told apart.
    pub net: Option<NetId>,
    /// What is on it.
    pub name: Option<String>,
    /// Its own weight, for weighing what was left.
    pub own: Option<AsFed>,
    /// What it is eaten from.
    pub kind: NetKind,
    /// The lot.
    pub lot: Option<LotId>,
    /// The hay in it as filled.
    pub hay: Option<AsFed>,
    /// Its dry matter, after soaking; `None` when that is not known.
    pub dry: Option<DryMatter>,
    /// It was soaked, or was to be and nobody said that it was not: what is left of it may be wet.
    pub soaked: bool,
    /// How far the hanging is known.
    pub known: Known,
}

impl HungNet {
    /// Whether its end can time it: somebody saw it hung, and what was in it is known.
    pub fn can_be_timed(&self) -> bool {
        self.known == Known::Seen && self.hay.is_some() && self.lot.is_some()
    }
}

/// How fast an animal eats, as far as it is known.
#[derive(Clone, Debug, PartialEq)]
pub struct Eats {
    /// With which kind of net.
    pub kind: NetKind,
    /// Its own rate with dry and with soaked hay.
    pub own: [OwnRate; 2],
    /// Its weight, for the published time.
    pub body: Option<BodyMass>,
    /// The nets it was timed with, the newest first.
    pub timed: Vec<TimedNet>,
}

impl Eats {
    /// The published time of a net of so much, for as long as its own rate is not known.
    pub fn published(&self, hay: DryMatter, kind: NetKind) -> Option<EatingTime> {
        Some(eating_time(self.body?, kind, hay))
    }

    /// Its own rate with dry or with soaked hay.
    pub fn own_rate(&self, soaked: bool) -> Option<&EatingRate> {
        let [dry, wet] = &self.own;
        if soaked { wet } else { dry }.rate.as_ref()
    }
}

/// What hangs in front of an animal or group.
#[derive(Clone, Debug, PartialEq)]
pub struct Hanging {
    /// In front of whom.
    pub about: About,
    /// Its name.
    pub name: String,
    /// The nets of which nobody said what was left, the one hung first at the head.
    pub nets: Vec<HungNet>,
    /// The next net to hang, when it is due.
    pub due: Option<Job>,
    /// How fast it eats; `None` for a group.
    pub eats: Option<Eats>,
}

impl Hanging {
    /// The animal; `None` for a group.
    pub fn animal(&self) -> Option<AnimalId> {
        self.eats.as_ref()?;
        Some(AnimalId(self.about.id().to_owned()))
    }

    /// The group; `None` for an animal.
    pub fn group(&self) -> Option<GroupId> {
        (self.about.kind() == "group").then(|| GroupId(self.about.id().to_owned()))
    }

    /// A net by its hanging, else the one that was hung first.
    pub fn net(&self, id: &str) -> Option<&HungNet> {
        self.nets
            .iter()
            .find(|net| net.id.0 == id)
            .or_else(|| self.nets.first())
    }
}

/// What hangs in front of an animal or group that is among the records of [`super::round::needs`].
pub fn hanging(shelf: &Shelf, today: &Today, id: &str, zone: &impl Zone) -> Option<Hanging> {
    let record = shelf.get(id)?;
    if !matches!(record.kind, Kind::Animal | Kind::Group) {
        return None;
    }
    let about = record.subject.clone();
    let records: Vec<&Record> = shelf.records().collect();
    let animal = (record.kind == Kind::Animal).then(|| AnimalId(id.to_owned()));
    let gathered = animal
        .as_ref()
        .and_then(|animal| gather(&records, animal, today.now, zone, &Wish::default()));
    let mut nets = hung(
        shelf,
        today,
        &about,
        gathered.as_ref().map(|of| of.net.kind),
    );
    if let Some(gathered) = &gathered {
        for net in &mut nets {
            let soaked = net.soaked.then_some(&gathered.soaking.recipe);
            net.dry = net
                .lot
                .as_ref()
                .zip(net.hay)
                .and_then(|(lot, hay)| net_dry(&records, lot, hay, soaked));
        }
    }
    Some(Hanging {
        nets,
        due: due(today, id),
        eats: gathered.map(|gathered| eats(&records, &gathered)),
        name: whose(shelf, &about),
        about,
    })
}

/// The nets that hang somewhere and of which nobody said what was left, by whom they hang in front of.
pub fn all(shelf: &Shelf, today: &Today) -> Vec<(About, String, Instant, usize)> {
    let over = over(shelf);
    let mut found: Vec<(About, String, Instant, usize)> = Vec::new();
    for (record, _) in shelf.bodies(&Kind::NetHung).into_iter().rev() {
        let asked = today.now - Span::hours(ASKED_HOURS) <= record.at && record.at <= today.now;
        if !asked || over.contains(&record.id) {
            continue;
        }
        match found
            .iter_mut()
            .find(|(about, _, _, _)| *about == record.subject)
        {
            Some((_, _, _, count)) => *count += 1,
            None => found.push((
                record.subject.clone(),
                whose(shelf, &record.subject),
                record.at,
                1,
            )),
        }
    }
    found.sort_by(|a, b| (a.2, &a.1).cmp(&(b.2, &b.1)));
    found
}

/// The first net that is due to be hung; it may have to be soaked first.
fn due(today: &Today, id: &str) -> Option<Job> {
    today
        .round
        .jobs
        .iter()
        .find(|job| {
            job.kind == JobKind::HangNet
                && job.subject.parts().1 == id
                && job.state != JobState::Later
                && (ticks(job) || waits_for_water(job))
        })
        .cloned()
}

fn eats(records: &[&Record], gathered: &Gathered) -> Eats {
    let (animal, kind) = (&gathered.animal.id, gathered.net.kind);
    let recipe = &gathered.soaking.recipe;
    let mut timed = timed_nets(records, animal, recipe);
    timed.reverse();
    Eats {
        kind,
        own: own_rates(records, animal, kind, recipe),
        body: best(&gathered.weights, gathered.day).map(|weighed| weighed.weight.value),
        timed,
    }
}

fn hung(shelf: &Shelf, today: &Today, about: &About, kind: Option<NetKind>) -> Vec<HungNet> {
    let yard = yard_nets(shelf);
    let over = over(shelf);
    let mut nets: Vec<HungNet> = shelf
        .bodies(&Kind::NetHung)
        .into_iter()
        .filter(|(record, _)| {
            record.subject == *about
                && today.now - Span::hours(ASKED_HOURS) <= record.at
                && record.at <= today.now
                && !over.contains(&record.id)
        })
        .filter_map(|(record, body)| {
            let Body::NetHung(body) = body else {
                return None;
            };
            let filling =
                body.filling
                    .as_ref()
                    .and_then(|id| match Body::read(shelf.get(&id.0)?).ok()? {
                        Body::NetFilled(filling) => Some(filling),
                        _ => None,
                    });
            let filled = filling.as_ref();
            let net = body.net.clone().or_else(|| filled?.net.clone());
            let there = yard.iter().find(|there| Some(&there.id) == net.as_ref());
            Some(HungNet {
                id: record.id.clone(),
                at: record.at,
                name: there.map(|there| there.body.name.as_str().to_owned()),
                own: there.and_then(|there| Some(there.body.own_weight.as_ref()?.g.as_fed())),
                kind: there
                    .filter(|there| there.body.net_kind.is_some() || there.body.hole.is_some())
                    .map(|there| there.body.eaten_from())
                    .or(kind)
                    .unwrap_or(NetKind::of_hole(None)),
                net,
                lot: body.lot.clone().or_else(|| Some(filled?.lot.clone())),
                hay: body
                    .hay
                    .as_ref()
                    .or_else(|| Some(&filled?.hay))
                    .map(|hay| hay.g.as_fed()),
                dry: None,
                soaked: body.not_soaked.is_none()
                    && (body.soak.is_some() || filled.is_some_and(|filled| filled.to_soak)),
                known: record.known,
            })
        })
        .collect();
    nets.sort_by(|a, b| (a.at, &a.id).cmp(&(b.at, &b.id)));
    nets
}
