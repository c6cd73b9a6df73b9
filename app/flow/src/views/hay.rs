//! Hay: its sugar for the strictest animal of the yard, its hazards, its reports.

use crate::rows::Range;
use crate::shelf::Shelf;
use crate::views::shed::LotRow;
use tussock_core::animal::{AnimalId, LotId, RiskLevel, risk};
use tussock_core::forage::{
    DryEstimate, Fed, Hazard, Judgement, Lot, ReportFinding, TestOutlook, WayOut, estimate,
    hazards, judge, test_outlook,
};
use tussock_core::limits::{SugarLimits, sugar_limits};
use tussock_core::log::bodies::{Condition, LotV1};
use tussock_core::log::{Body, Kind, LogError};
use tussock_core::sources::RecordId;
use tussock_core::units::DryMatter;

/// The most things of a yard that one screen asks for.
const OF_A_YARD: u32 = 200;

/// What a screen of one lot asks the disk for: the lot, and the animals with their scores, for whom it is judged.
pub fn needs(lot: &LotId) -> Vec<Range> {
    let mut ranges = vec![Range::One(lot.0.clone())];
    ranges.extend(
        [Kind::Animal, Kind::Condition, Kind::Crest]
            .iter()
            .map(|kind| Range::Kind {
                kind: kind.word().to_owned(),
                from: 0,
                limit: OF_A_YARD,
            }),
    );
    ranges
}

/// The strictest risk among the animals; [`RiskLevel::NotKnown`] while there is none.
pub fn strictest(shelf: &Shelf) -> RiskLevel {
    strictest_of(shelf, |_| true)
}

/// The strictest risk among some of the animals; [`RiskLevel::NotKnown`] while there is none of them.
pub fn strictest_of(shelf: &Shelf, among: impl Fn(&AnimalId) -> bool) -> RiskLevel {
    let place = |level| match level {
        RiskLevel::Proven => 0,
        RiskLevel::AtRisk => 1,
        RiskLevel::NotKnown => 2,
        RiskLevel::Clear => 3,
    };
    shelf
        .animals()
        .iter()
        .filter(|animal| among(&animal.id))
        .map(|animal| {
            let id = animal.id.as_str();
            let condition = shelf
                .newest(&Kind::Condition, id)
                .and_then(|record| match Body::read(record) {
                    Ok(Body::Condition(body)) => match body.condition().ok()? {
                        Condition::Score(score, _) => Some(score.on_nine().high()),
                        Condition::Ribs(ribs) => Some(ribs.condition().high()),
                    },
                    _ => None,
                });
            let crest =
                shelf
                    .newest(&Kind::Crest, id)
                    .and_then(|record| match Body::read(record) {
                        Ok(Body::Crest(body)) => Some(f64::from(body.crest().ok()?.score())),
                        _ => None,
                    });
            risk(animal, condition, crest).level
        })
        .min_by_key(|level| place(*level))
        .unwrap_or(RiskLevel::NotKnown)
}

fn limits(shelf: &Shelf) -> Option<SugarLimits> {
    sugar_limits(strictest(shelf))
}

/// The lots as rows, by name.
pub fn rows(shelf: &Shelf) -> Vec<LotRow> {
    let limits = limits(shelf);
    let mut rows: Vec<LotRow> = shelf
        .bodies(&Kind::Lot)
        .into_iter()
        .filter_map(|(record, body)| {
            let Body::Lot(body) = body else {
                return None;
            };
            let (verdict, tested) = match body.lot(&record.id) {
                Ok((lot, _)) => (
                    limits
                        .as_ref()
                        .map(|limits| judge(&estimate(&lot, Fed::Dry), limits).verdict),
                    !lot.reports.is_empty(),
                ),
                Err(_) => (None, false),
            };
            Some(LotRow {
                id: LotId(record.id.0.clone()),
                name: body.name.as_str().to_owned(),
                class: body.class,
                tested,
                verdict,
            })
        })
        .collect();
    rows.sort_by(|a, b| (a.name.to_lowercase(), &a.id).cmp(&(b.name.to_lowercase(), &b.id)));
    rows
}

/// A lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Hay {
    /// Its record.
    pub record: RecordId,
    /// What is stored.
    pub body: LotV1,
    /// What was read of it, or why it could not be.
    pub read: Result<Read, LogError>,
}

/// What was read of a lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Read {
    /// The lot.
    pub lot: Lot,
    /// Its dry matter; `None` for haylage that nobody tested.
    pub dry: Option<DryEstimate>,
    /// The judgement on its sugar; `None` when every animal here is clear.
    pub judgement: Option<Judgement>,
    /// What else to look at.
    pub hazards: Vec<Hazard>,
    /// What to look at again in its reports.
    pub findings: Vec<ReportFinding>,
    /// What a test would likely say, where one is a way out.
    pub outlook: Option<TestOutlook>,
}

/// A lot; `None` when it is not there.
pub fn hay(shelf: &Shelf, id: &LotId) -> Option<Hay> {
    let record = shelf.get(id.as_str()).filter(|record| !record.gone)?;
    let Ok(Body::Lot(body)) = Body::read(record) else {
        return None;
    };
    let read = body.lot(&record.id).map(|(lot, findings)| {
        let judgement = limits(shelf).map(|limits| judge(&estimate(&lot, Fed::Dry), &limits));
        let outlook = judgement.as_ref().and_then(|judgement| {
            let belief = judgement
                .belief
                .filter(|_| judgement.ways_out.contains(&WayOut::Test))?;
            Some(test_outlook(belief, judgement.limit))
        });
        Read {
            dry: lot.dry_matter(),
            hazards: hazards(&lot, Fed::Dry, DryMatter::ZERO, DryMatter::ZERO),
            judgement,
            findings,
            outlook,
            lot,
        }
    });
    Some(Hay {
        record: record.id.clone(),
        body,
        read,
    })
}
