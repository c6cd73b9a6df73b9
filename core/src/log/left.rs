//! From what was seen to be left to the dry matter that it is.

use super::bodies::{Body, LeftOverV1, NetHungV1, SoakStep};
use super::envelope::{Known, Record};
use super::gather::Problem;
use super::subject::Subject;
use crate::animal::LotId;
use crate::day::{DayError, left_dry, left_part};
use crate::limits::Ends;
use crate::soak::{Recipe, Water, dry_loss};
use crate::sources::RecordId;
use crate::units::{DryMatter, Instant};
use std::collections::BTreeMap;

/// What was left of a net.
#[derive(Clone, Debug, PartialEq)]
pub struct LeftFound {
    /// The record that says it.
    pub record: RecordId,
    /// The hanging it is of; `None` when nobody logged one.
    pub hung: Option<RecordId>,
    /// The animal or group.
    pub subject: Subject,
    /// When it was seen.
    pub at: Instant,
    /// How far it is known: the weaker of what was seen to be left and of the hanging.
    pub known: Known,
    /// The part of the net, 0 to 1; `None` when it was weighed and nobody knows what hung.
    pub part: Option<Ends<f64>>,
    /// The dry matter that hung, after soaking; `None` when its weight or its hay is not known.
    pub offered: Option<Ends<DryMatter>>,
    /// The dry matter that was left; `None` when one of the two is not known: it is never taken for nothing.
    pub left: Option<Ends<DryMatter>>,
}

/// Why a record of what was left says nothing.
#[derive(Clone, Debug, PartialEq)]
pub enum LeftProblem {
    /// It cannot be read.
    Unread(Problem),
    /// It cannot be.
    Refused {
        /// The record.
        record: RecordId,
        /// Why.
        why: DayError,
    },
}

/// What was left of every net of which somebody said so, the oldest first, of any subject. Of one hanging the last word
/// counts. What is deleted is left out; what cannot be is named.
pub fn left_of(records: &[&Record]) -> (Vec<LeftFound>, Vec<LeftProblem>) {
    let mut problems = Vec::new();
    let mut held = BTreeMap::new();
    for record in records.iter().filter(|record| !record.gone) {
        match Body::read(record) {
            Ok(body) => {
                held.insert(&record.id, (*record, body));
            }
            Err(error) => problems.push(LeftProblem::Unread(Problem::Log(error))),
        }
    }
    let mut found: Vec<LeftFound> = Vec::new();
    let mut said: Vec<(&Record, &LeftOverV1)> = held
        .values()
        .filter_map(|(record, body)| match body {
            Body::LeftOver(body) => Some((*record, body)),
            _ => None,
        })
        .collect();
    said.sort_by_key(|(record, _)| (record.at, record.stamp));
    for (record, body) in said {
        let hanging = body.hung.as_ref().and_then(|id| held.get(id));
        let of = Hanging::of(hanging, body, &held);
        match left_part(body.left.left(), of.hay, of.soaked) {
            Ok(part) => {
                if body.hung.is_some() {
                    found.retain(|before| before.hung != body.hung);
                }
                found.push(LeftFound {
                    record: record.id.clone(),
                    hung: body.hung.clone(),
                    subject: record.subject.clone(),
                    at: record.at,
                    known: weaker(record.known, of.known),
                    part,
                    offered: of.dry,
                    left: part.zip(of.dry).map(|(part, dry)| left_dry(part, dry)),
                });
            }
            Err(why) => problems.push(LeftProblem::Refused {
                record: record.id.clone(),
                why,
            }),
        }
    }
    (found, problems)
}

type Held<'a> = BTreeMap<&'a RecordId, (&'a Record, Body)>;

/// What hung.
struct Hanging {
    hay: Option<crate::units::AsFed>,
    soaked: bool,
    known: Known,
    dry: Option<Ends<DryMatter>>,
}

impl Hanging {
    fn of(hanging: Option<&(&Record, Body)>, said: &LeftOverV1, held: &Held<'_>) -> Self {
        let Some((record, Body::NetHung(hung))) = hanging else {
            return Self {
                hay: None,
                soaked: false,
                known: Known::NotKnown,
                dry: None,
            };
        };
        let filling = hung.filling.as_ref().and_then(|id| match held.get(id) {
            Some((_, Body::NetFilled(filling))) => Some(filling),
            _ => None,
        });
        let hay = hung
            .hay
            .as_ref()
            .or_else(|| filling.map(|filling| &filling.hay));
        let hay = hay.map(|hay| hay.g.as_fed());
        let lot = hung
            .lot
            .as_ref()
            .or_else(|| filling.map(|filling| &filling.lot))
            .or(said.lot.as_ref());
        let to_soak = filling.is_some_and(|filling| filling.to_soak);
        let lost = lost_in_water(hung, to_soak, held);
        let dry = hay
            .zip(lot.and_then(|lot| fraction(lot, held)))
            .map(|(hay, dry)| {
                let reaches = lost.map_or(Ends::exactly(1.0), |lost| {
                    Ends::new(1.0 - lost.most, 1.0 - lost.likely, 1.0 - lost.least)
                });
                dry.with(reaches, |dry, reaches| {
                    DryMatter::kg(hay.to_kg() * dry * reaches)
                })
            });
        Self {
            hay,
            soaked: lost.is_some(),
            known: record.known,
            dry,
        }
    }
}

/// The part of the dry matter that went with the water; `None` for hay that was not soaked. Hay that was to be soaked and
/// of which nobody logged a soak may be wet or dry: from nothing to what a usual soak takes.
fn lost_in_water(hung: &NetHungV1, to_soak: bool, held: &Held<'_>) -> Option<Ends<f64>> {
    if hung.not_soaked.is_some() {
        return None;
    }
    let started = hung.soak.as_ref().map(|soak| match held.get(soak) {
        Some((_, Body::SoakStep(step))) => match &step.happened {
            SoakStep::Started { start } => Some(start),
            _ => None,
        },
        _ => None,
    });
    match started {
        Some(Some(start)) => {
            let usual = Recipe::usual(start.recipe.water);
            let recipe = start.recipe.recipe().unwrap_or(usual);
            Some(dry_loss(recipe.soak()).part)
        }
        None if !to_soak => None,
        Some(None) | None => {
            let part = dry_loss(Recipe::usual(Water::TapWinter).soak()).part;
            Some(Ends { least: 0.0, ..part })
        }
    }
}

fn fraction(lot: &LotId, held: &Held<'_>) -> Option<Ends<f64>> {
    let (record, Body::Lot(body)) = held.get(&RecordId(lot.0.clone()))? else {
        return None;
    };
    let (lot, _) = body.lot(&record.id).ok()?;
    let dry = lot.dry_matter()?;
    Some(Ends::new(
        dry.low.to_fraction(),
        dry.value.to_fraction(),
        dry.high.to_fraction(),
    ))
}

const fn weaker(one: Known, other: Known) -> Known {
    match (one, other) {
        (Known::NotKnown, _) | (_, Known::NotKnown) => Known::NotKnown,
        (Known::Assumed, _) | (_, Known::Assumed) => Known::Assumed,
        (Known::Seen, Known::Seen) => Known::Seen,
    }
}
