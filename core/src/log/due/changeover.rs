//! Nets of a plan that are weighed from a lot opened in place of the one it names.

use crate::day::published::SCALE_STEP;
use crate::forage::{Instead, Lot, instead};
use crate::round::{IssuedPlan, Subject};
use crate::units::show::step_up;
use crate::units::{AsFed, LocalDate};

/// Puts the opened lot into every net that names the old one, with as much dry matter: up to a whole step of the scale,
/// for the amount of a plan is a floor. Gives which lots stand in for which.
pub(super) fn weigh_from_opened(
    plans: &mut [IssuedPlan],
    lots: &[Lot],
    today: LocalDate,
) -> Vec<(Subject, Instead)> {
    let mut found: Vec<(Subject, Instead)> = Vec::new();
    for plan in plans.iter_mut().filter(|plan| !plan.rests_on(today)) {
        let (from, anew) = (plan.from, &mut plan.anew);
        let of_days = anew.iter_mut().flat_map(|day| &mut day.nets);
        for net in plan.nets.iter_mut().chain(of_days) {
            // A net of a day that was laid out anew and does not hang stays one.
            if net.hay <= AsFed::ZERO {
                continue;
            }
            let Some(instead) = instead(lots, &net.lot, from, today) else {
                continue;
            };
            let weigh = instead.weigh(net.hay);
            // As much as before stays the very same weight, whatever step it was planned in.
            if net.hay < weigh {
                net.hay = step_up(weigh, AsFed::kg(*SCALE_STEP));
            } else if weigh < net.hay {
                net.hay = step_up(weigh, AsFed::kg(*SCALE_STEP)).min(net.hay);
            }
            net.lot = instead.lot.clone();
            let here = (plan.subject.clone(), instead);
            if !found.contains(&here) {
                found.push(here);
            }
        }
    }
    found
}
