//! What would now differ: the plan in use beside the one that would be issued today. It says so and changes nothing.

use super::Outcome;
use crate::shelf::Shelf;
use tussock_core::log::bodies::PlanV1;
use tussock_core::log::{Body, Difference, differences};

/// One thing that would now differ, with the name of the hay or feed it is about.
#[derive(Clone, Debug, PartialEq)]
pub struct Differs {
    /// What.
    pub what: Difference,
    /// Its name; `None` where it is about no hay or feed, or nobody knows its name.
    pub name: Option<String>,
}

/// What would now differ, in the order of the loop; nothing while there is no plan to compare with.
pub(super) fn differing(shelf: &Shelf, held: &PlanV1, outcome: &Outcome) -> Vec<Differs> {
    let Outcome::Allowed(plan) = outcome else {
        return Vec::new();
    };
    let Ok(today) = PlanV1::of(plan, &[], None) else {
        return Vec::new();
    };
    differences(held, &today)
        .into_iter()
        .map(|what| Differs {
            name: name(shelf, &what),
            what,
        })
        .collect()
}

fn name(shelf: &Shelf, what: &Difference) -> Option<String> {
    match what {
        Difference::Hay { lot, .. }
        | Difference::Soaked { lot, .. }
        | Difference::Sugar { lot, .. } => shelf.lot_name(lot),
        Difference::Feed {
            food: Some(food), ..
        } => match Body::read(shelf.get(food.as_str())?) {
            Ok(Body::Food(food)) => Some(food.name.as_str().to_owned()),
            _ => None,
        },
        Difference::Feed { food: None, .. }
        | Difference::Rules { .. }
        | Difference::Weight { .. }
        | Difference::Level { .. }
        | Difference::Lowest { .. }
        | Difference::Visits { .. }
        | Difference::Nets
        | Difference::Recipe
        | Difference::Work { .. }
        | Difference::LookOver { .. } => None,
    }
}
