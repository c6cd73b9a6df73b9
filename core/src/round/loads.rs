//! Which nets lie in the water together: the soaks to start, tub by tub.

use super::input::OpenSoak;
use super::job::{Job, Round, Visit};
use super::key::{JobKind, Key, Subject};
use crate::animal::{LotId, NetId, TubId};
use crate::soak::{Recipe, timeline};
use crate::units::{AsFed, Instant, Span};
use std::collections::BTreeMap;

/// A tub of the yard.
#[derive(Clone, Debug, PartialEq)]
pub struct TubRoom {
    /// Which.
    pub id: TubId,
    /// How much hay goes into it; `None` when nobody said, and then it takes what comes.
    pub capacity: Option<AsFed>,
}

/// The hay of one animal or group, from one lot, in a load.
#[derive(Clone, Debug, PartialEq)]
pub struct LoadPart {
    /// The job of soaking the hay of its visit.
    pub start: Key,
    /// For whom.
    pub subject: Subject,
    /// The name of that animal or group.
    pub name: String,
    /// The lot.
    pub lot: Option<LotId>,
    /// The jobs of hanging its nets; none where those are too far off to be due.
    pub hangs: Vec<Key>,
    /// The nets, where the plan tells them apart.
    pub nets: Vec<NetId>,
    /// The hay, before soaking.
    pub hay: AsFed,
    /// Whether these are all nets that the job of soaking is still for.
    pub whole: bool,
}

/// What lies in one tub at once: it goes in together and is lifted out together.
#[derive(Clone, Debug, PartialEq)]
pub struct Load {
    /// The visit at which its nets are hung.
    pub visit: Visit,
    /// Water and time.
    pub recipe: Recipe,
    /// When it goes in, by the plan.
    pub goes_in: Instant,
    /// When it is lifted out, by the plan.
    pub lift_out: Instant,
    /// The tub; `None` for one that is not there yet.
    pub tub: Option<TubId>,
    /// Which filling of that tub for this visit, from 1.
    pub filling: u32,
    /// What lies in it.
    pub parts: Vec<LoadPart>,
    /// All of it, before soaking.
    pub hay: AsFed,
    /// One net alone is more than the tub is said to hold.
    pub over_full: bool,
}

/// A net to soak.
struct Net<'a> {
    start: &'a Job,
    hang: &'a Job,
    hay: AsFed,
}

/// The soaks to start, by the time they go in.
///
/// Nets that are hung at the same visit and soaked in the same water for as long go into one tub, as far as it holds
/// them: the nets of one animal stay together where they fit. What does not fit goes into the next tub that is free by
/// then; where none is, the tub is filled again, and the fillings before the last go in that much earlier, so that the
/// last is ready for the visit. A tub with hay in the water is free from the time that is lifted out.
pub fn loads(round: &Round, soaks: &[OpenSoak], tubs: &[TubRoom], now: Instant) -> Vec<Load> {
    let mut free: BTreeMap<&TubId, Instant> = BTreeMap::new();
    for soak in soaks {
        let in_water = soak.times.ended.is_none() && soak.times.lifted.is_none();
        if let Some(tub) = soak.tub.as_ref().filter(|_| in_water) {
            let out = timeline(soak.recipe, &soak.times, soak.air)
                .lift_out
                .max(now);
            let until = free.entry(tub).or_insert(out);
            *until = out.max(*until);
        }
    }
    let mut found = Vec::new();
    for together in groups(round) {
        let Some(first) = together.first() else {
            continue;
        };
        let (Some(recipe), Some(visit)) = (first.start.recipe, first.start.visit) else {
            continue;
        };
        let goes_in = first.start.due;
        let by_then = goes_in.max(now);
        let at_hand: Vec<&TubRoom> = tubs
            .iter()
            .filter(|tub| free.get(&tub.id).is_none_or(|from| *from <= by_then))
            .collect();
        let fillings = fill(&together, &at_hand);
        let most = |tub: Option<&TubId>| {
            let of_tub = fillings.iter().filter(|filling| filling.tub == tub);
            of_tub.map(|filling| filling.nth).max().unwrap_or(1)
        };
        for filling in &fillings {
            let later = i64::from(most(filling.tub).saturating_sub(filling.nth));
            let goes_in = goes_in - Span::minutes(recipe.soak().to_minutes() * later);
            if let Some(tub) = filling.tub {
                free.insert(tub, by_then.max(goes_in) + recipe.soak());
            }
            found.push(Load {
                visit,
                recipe,
                goes_in,
                lift_out: goes_in + recipe.soak(),
                tub: filling.tub.cloned(),
                filling: filling.nth,
                parts: parts(&filling.nets, &together),
                hay: filling.nets.iter().map(|net| net.hay).sum(),
                over_full: filling.over_full,
            });
        }
    }
    found.sort_by_key(|load| load.goes_in);
    found
}

/// The nets to soak, those of one visit and one recipe together, earliest first.
fn groups(round: &Round) -> Vec<Vec<Net<'_>>> {
    let mut groups: Vec<Vec<Net<'_>>> = Vec::new();
    let mut starts: Vec<&Job> = round
        .jobs
        .iter()
        .filter(|job| job.kind == JobKind::StartSoak)
        .collect();
    starts.sort_by(|a, b| (a.due, &a.name, &a.key).cmp(&(b.due, &b.name, &b.key)));
    for start in starts {
        let mut nets: Vec<Net<'_>> = round
            .jobs
            .iter()
            .filter(|hang| {
                hang.kind == JobKind::HangNet
                    && hang.soaked
                    && hang.soak.is_none()
                    && hang.subject == start.subject
                    && hang.visit == start.visit
            })
            .filter_map(|hang| {
                let hay = hang.amount?;
                Some(Net { start, hang, hay })
            })
            .collect();
        // Nets that are hung so far off that the round does not show them yet are soaked as one amount.
        if let (true, Some(hay)) = (nets.is_empty(), start.amount) {
            let hang = start;
            nets.push(Net { start, hang, hay });
        }
        nets.sort_by(|a, b| (&a.hang.lot, &a.hang.key).cmp(&(&b.hang.lot, &b.hang.key)));
        let same = groups.iter_mut().find(|group| {
            group.first().is_some_and(|first| {
                first.start.visit == start.visit && first.start.recipe == start.recipe
            })
        });
        match same {
            Some(group) => group.append(&mut nets),
            None => groups.push(nets),
        }
    }
    groups
}

/// A filling of a tub.
struct Filling<'a, 'n> {
    tub: Option<&'a TubId>,
    nth: u32,
    room: Option<AsFed>,
    nets: Vec<&'n Net<'n>>,
    over_full: bool,
}

impl Filling<'_, '_> {
    fn takes(&self, hay: AsFed) -> bool {
        // numeric: a gram, beyond any hanging scale
        self.room.is_none_or(|room| hay <= room + AsFed::kg(1e-3))
    }
}

fn fill<'a, 'n>(nets: &'n [Net<'n>], tubs: &[&'a TubRoom]) -> Vec<Filling<'a, 'n>> {
    let empty = |tub: Option<&'a TubRoom>, nth| Filling {
        tub: tub.map(|tub| &tub.id),
        nth,
        room: tub.and_then(|tub| tub.capacity),
        nets: Vec::new(),
        over_full: false,
    };
    let mut fillings: Vec<Filling<'a, 'n>> = match tubs {
        [] => vec![empty(None, 1)],
        tubs => tubs.iter().map(|tub| empty(Some(tub), 1)).collect(),
    };
    for of_one in by_subject(nets) {
        let all: AsFed = of_one.iter().map(|net| net.hay).sum();
        let whole = fillings.iter().position(|filling| filling.takes(all));
        for net in of_one {
            let place = whole
                .or_else(|| fillings.iter().position(|filling| filling.takes(net.hay)))
                .unwrap_or_else(|| {
                    // Every tub is full: the roomiest is filled again, or takes a net that is more than any holds.
                    let roomiest = tubs.iter().copied().reduce(|best, tub| {
                        if best
                            .capacity
                            .is_some_and(|most| tub.capacity.is_none_or(|room| most < room))
                        {
                            tub
                        } else {
                            best
                        }
                    });
                    let again = fillings
                        .iter()
                        .filter(|filling| filling.tub == roomiest.map(|tub| &tub.id))
                        .map(|filling| filling.nth)
                        .max();
                    let unused = fillings.iter().position(|filling| {
                        filling.nets.is_empty() && filling.tub == roomiest.map(|tub| &tub.id)
                    });
                    unused.unwrap_or_else(|| {
                        fillings.push(empty(roomiest, again.unwrap_or(0).saturating_add(1)));
                        fillings.len().saturating_sub(1)
                    })
                });
            if let Some(filling) = fillings.get_mut(place) {
                filling.over_full |= !filling.takes(net.hay);
                filling.room = filling.room.map(|room| (room - net.hay).max(AsFed::ZERO));
                filling.nets.push(net);
            }
        }
    }
    fillings.retain(|filling| !filling.nets.is_empty());
    fillings
}

/// The nets, those of one subject together.
fn by_subject<'n>(nets: &'n [Net<'n>]) -> Vec<Vec<&'n Net<'n>>> {
    let mut found: Vec<Vec<&Net<'_>>> = Vec::new();
    for net in nets {
        let same = found.iter_mut().find(|of_one| {
            of_one
                .first()
                .is_some_and(|first| first.start.key == net.start.key)
        });
        match same {
            Some(of_one) => of_one.push(net),
            None => found.push(vec![net]),
        }
    }
    found
}

/// What lies in a filling, by subject and lot.
fn parts(nets: &[&Net<'_>], all: &[Net<'_>]) -> Vec<LoadPart> {
    let mut parts: Vec<LoadPart> = Vec::new();
    for net in nets {
        let (start, hang) = (net.start, net.hang);
        let same = parts
            .iter_mut()
            .find(|part| part.start == start.key && part.lot == hang.lot);
        match same {
            Some(part) => {
                part.hangs.extend(of_hanging(hang));
                part.nets.extend(hang.net.clone());
                part.hay = part.hay + net.hay;
            }
            None => parts.push(LoadPart {
                start: start.key.clone(),
                subject: start.subject.clone(),
                name: start.name.clone(),
                lot: hang.lot.clone(),
                hangs: of_hanging(hang).into_iter().collect(),
                nets: hang.net.iter().cloned().collect(),
                hay: net.hay,
                whole: false,
            }),
        }
    }
    for part in &mut parts {
        let of_start = all.iter().filter(|net| net.start.key == part.start);
        part.whole = part.hangs.is_empty() || part.hangs.len() == of_start.count();
    }
    parts
}

/// The key of a job of hanging.
fn of_hanging(job: &Job) -> Option<Key> {
    Some(job.key.clone()).filter(|_| job.kind == JobKind::HangNet)
}

#[cfg(test)]
mod tests;
