//! The walk-round: the score of last time, and the summary of now.

use crate::shelf::Shelf;
use tussock_core::animal::AnimalId;
use tussock_core::assess::{ConditionScale, ConditionScore, Site};
use tussock_core::log::bodies::Condition;
use tussock_core::log::{Body, Kind};
use tussock_core::units::{Instant, LocalDate, Zone};

/// The last score site by site.
#[derive(Clone, Debug, PartialEq)]
pub struct Before {
    /// The day.
    pub on: LocalDate,
    /// The score.
    pub score: ConditionScore,
}

impl Before {
    /// What a site had.
    pub fn site(&self, site: Site) -> Option<f64> {
        self.score
            .sites()
            .iter()
            .find(|(scored, _)| *scored == site)
            .map(|(_, value)| *value)
    }
}

/// The last score of an animal on the six sites.
pub fn before(shelf: &Shelf, animal: &AnimalId, now: Instant, zone: &impl Zone) -> Option<Before> {
    shelf
        .bodies(&Kind::Condition)
        .into_iter()
        .filter(|(record, _)| record.subject.id() == animal.as_str() && record.at <= now)
        .find_map(|(record, body)| {
            let Body::Condition(body) = body else {
                return None;
            };
            match body.condition() {
                Ok(Condition::Score(score, _))
                    if score.scale() == ConditionScale::NineStep && !score.sites().is_empty() =>
                {
                    Some(Before {
                        on: zone.to_local(record.at).date,
                        score,
                    })
                }
                _ => None,
            }
        })
}

/// Now against last time.
#[derive(Clone, Debug, PartialEq)]
pub struct Summary {
    /// The score.
    pub value: f64,
    /// The sites that changed and by how much, in walking order; `None` when there is nothing to compare with.
    pub changes: Option<Vec<(Site, f64)>>,
    /// Whether the whole differs by no more than two people, or one on two days, would.
    pub noise: bool,
}

/// The summary of a score.
pub fn summary(score: &ConditionScore, before: Option<&Before>) -> Summary {
    let changes = before.map(|before| {
        score
            .sites()
            .iter()
            .filter_map(|(site, value)| Some((*site, value - before.site(*site)?)))
            .filter(|(_, change)| change.abs() > 0.0)
            .collect()
    });
    Summary {
        value: score.value(),
        changes,
        noise: before
            .and_then(|before| score.since(&before.score).ok())
            .is_some_and(|change| change.noise),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::forms::condition::{SCALE, act, score};
    use crate::views::test_yard::{add, animal, at, shelf_of, written, zone};

    fn six(neck: f64) -> Vec<(Site, f64)> {
        SCALE
            .sites()
            .iter()
            .map(|site| (*site, if *site == Site::Neck { neck } else { 6.0 }))
            .collect()
    }

    #[test]
    fn the_summary_names_the_sites_that_changed() {
        let id = AnimalId("moss".into());
        let shelf = shelf_of(&[add("moss", &animal("moss"), 0)]);
        assert_eq!(before(&shelf, &id, at(1), &zone()), None);
        let shelf = written(&shelf, &act(&id, &six(6.0), "c1").unwrap(), at(0));
        let last = before(&shelf, &id, at(20), &zone()).unwrap();
        let (now, _) = score(&six(6.5)).unwrap();
        let summary = summary(&now, Some(&last));
        assert_eq!(summary.changes, Some(vec![(Site::Neck, 0.5)]));
        assert!(summary.noise);
    }
}
