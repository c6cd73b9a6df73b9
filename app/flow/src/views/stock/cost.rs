//! What a lot costs as it is eaten.

use super::Eater;
use crate::views::nets::plan_on;
use crate::views::round::Today;
use tussock_core::forage::{BaleWeight, CostBand, Fed, Lot, Soaked, cost_band, supply};
use tussock_core::limits::Ends;
use tussock_core::soak::dry_loss;
use tussock_core::units::AsFed;

/// The cost with what those who eat it soak; `None` without a price, a bale's weight or a dry matter.
pub(super) fn cost(
    today: &Today,
    lot: &Lot,
    bale: Option<&BaleWeight>,
    eaters: &[Eater],
) -> Option<CostBand> {
    let energy = supply(lot, Fed::Dry).energy;
    cost_band(
        lot.price?,
        bale,
        &lot.dry_matter()?,
        &energy,
        soaked(today, eaters),
    )
    .ok()
}

/// How much of it is soaked, and what the longest of the soaks takes.
fn soaked(today: &Today, eaters: &[Eater]) -> Soaked {
    let all: AsFed = eaters.iter().map(|eater| eater.a_day).sum();
    let wet: AsFed = eaters.iter().map(|eater| eater.soaked).sum();
    if AsFed::ZERO >= wet {
        return Soaked::NONE;
    }
    let lost: Option<Ends<f64>> = eaters
        .iter()
        .filter(|eater| AsFed::ZERO < eater.soaked)
        .filter_map(|eater| plan_on(today, eater.subject.parts().1, today.day)?.recipe)
        .map(|recipe| dry_loss(recipe.soak()).part)
        .max_by(|a, b| a.likely.total_cmp(&b.likely));
    lost.map_or(Soaked::NONE, |lost| Soaked {
        part: wet / all,
        lost,
    })
}
