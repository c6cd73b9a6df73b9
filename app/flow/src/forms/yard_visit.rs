//! Starting a visit to the yard, what is as before, and its end.

use crate::acts::{Act, New};
use crate::views::yard_visit::Held;
use tussock_core::animal::{AnimalId, YardId};
use tussock_core::log::bodies::{SharedFact, YardVisitV1};
use tussock_core::log::{Body, Known, Subject};
use tussock_core::sources::RecordId;
use tussock_core::units::Instant;

/// Nobody is to be seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NoAnimal;

/// The act that starts a visit to these animals.
///
/// # Errors
/// No animal.
pub fn start(yard: &YardId, animals: &[AnimalId], record: &str) -> Result<Act, NoAnimal> {
    if animals.is_empty() {
        return Err(NoAnimal);
    }
    Ok(Act::Add(New {
        id: RecordId(record.to_owned()),
        subject: Subject::yard(yard),
        at: None,
        known: Known::Seen,
        body: Body::YardVisit(YardVisitV1 {
            animals: animals.to_vec(),
            as_before: Vec::new(),
            ended: None,
            report: None,
        }),
    }))
}

/// The act that says of shared facts that they are as they were written down.
pub fn as_before(visit: &Held, facts: &[SharedFact]) -> Act {
    let mut body = visit.body.clone();
    for fact in facts {
        if !body.as_before.contains(fact) {
            body.as_before.push(*fact);
        }
    }
    change(visit, body)
}

/// The act that ends a visit, with the report as it was handed over; an empty one is none.
pub fn end(visit: &Held, report: &str, now: Instant) -> Act {
    let report = report.trim();
    change(
        visit,
        YardVisitV1 {
            ended: Some(now),
            report: (!report.is_empty()).then(|| report.to_owned()),
            ..visit.body.clone()
        },
    )
}

fn change(visit: &Held, body: YardVisitV1) -> Act {
    Act::Change {
        id: visit.record.clone(),
        body: Body::YardVisit(body),
        at: None,
    }
}
