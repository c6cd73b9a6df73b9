//! How much dry matter reaches the animal of what was weighed out.

use super::{Book, Held};
use crate::animal::{FoodId, LotId};
use crate::forage::Lot;
use crate::limits::Ends;
use crate::log::bodies::{Body, SoakStep, soak_times};
use crate::soak::{Recipe, Water, dry_loss};
use crate::sources::RecordId;
use crate::units::{AsFed, DryMatter, Span, Zone};

/// How a net was soaked.
#[derive(Clone, Copy)]
pub(super) enum Soaked {
    /// Not at all.
    No,
    /// As the plan says.
    AsPlanned,
    /// So long.
    For(Span),
}

impl<Z: Zone> Book<'_, Z> {
    fn lot(&self, id: &LotId) -> Option<Lot> {
        self.entries.iter().find_map(|entry| match &entry.body {
            Body::Lot(body) if entry.record.id.0 == id.0 => {
                body.lot(&entry.record.id).ok().map(|(lot, _)| lot)
            }
            _ => None,
        })
    }

    /// How long a soak was in the water; as planned while nobody said when it was lifted out.
    pub(super) fn soaked(&self, soak: &RecordId) -> Soaked {
        let steps = self.entries.iter().filter_map(|entry| match &entry.body {
            Body::SoakStep(body) => Some((&entry.record.id, entry.record.at, &body.happened)),
            _ => None,
        });
        let planned = self.entries.iter().find_map(|entry| match &entry.body {
            Body::SoakStep(body) if entry.record.id == *soak => match &body.happened {
                SoakStep::Started { start } => start.recipe.recipe().ok(),
                _ => None,
            },
            _ => None,
        });
        let times = soak_times(soak, steps);
        match times.and_then(|times| Some((times.wetted, times.lifted?))) {
            Some((wetted, lifted)) if wetted <= lifted => Soaked::For(lifted.since(wetted)),
            _ => planned.map_or(Soaked::AsPlanned, |recipe| Soaked::For(recipe.soak())),
        }
    }

    /// Dry matter eaten of a kilogram weighed out, with its ends; `None` when nobody knows the dry matter of the lot.
    ///
    /// Where the plan of the day feeds the same lot in the same way, its own figure is the likely one, so that a day as
    /// planned is the plan; the ends are those of the lot and of the soak.
    pub(super) fn reaches(
        &self,
        lot: Option<&LotId>,
        soaked: Soaked,
        plan: Option<&Held<'_>>,
    ) -> Option<Ends<f64>> {
        let lot = lot?;
        let recipe = plan
            .and_then(|held| held.plan.recipe)
            .unwrap_or(Recipe::usual(Water::TapWinter))
            .soak();
        let time = match soaked {
            Soaked::No => None,
            Soaked::AsPlanned => Some(recipe),
            Soaked::For(time) => Some(time),
        };
        let of_lot = self.lot(lot).and_then(|lot| lot.dry_matter()).map(|dry| {
            let left = match time {
                None => Ends::exactly(1.0),
                Some(time) => {
                    let lost = dry_loss(time).part;
                    Ends::new(1.0 - lost.most, 1.0 - lost.likely, 1.0 - lost.least)
                }
            };
            Ends::new(
                dry.low.to_fraction(),
                dry.value.to_fraction(),
                dry.high.to_fraction(),
            )
            .with(left, |dry, left| dry * left)
        });
        let as_planned = plan
            .filter(|_| time.is_none_or(|time| time == recipe))
            .and_then(|held| planned_part(held, Some(lot), None, time.is_some()));
        match (of_lot, as_planned) {
            (Some(band), Some(part)) => Some(band.map(|end| part * (end / band.likely))),
            (Some(band), None) => Some(band),
            (None, Some(part)) => Some(Ends::exactly(part)),
            (None, None) => None,
        }
    }
}

/// The dry matter of an amount of a food, as its plan has it.
pub(super) fn feed(amount: AsFed, food: Option<&FoodId>, plan: &Held<'_>) -> Option<DryMatter> {
    let part = planned_part(plan, None, food, false)?;
    Some(DryMatter::kg(amount.to_kg() * part))
}

/// Dry matter eaten of a kilogram weighed out, as the plan has it for this lot or food.
fn planned_part(
    held: &Held<'_>,
    lot: Option<&LotId>,
    food: Option<&FoodId>,
    soaked: bool,
) -> Option<f64> {
    held.body
        .amounts
        .iter()
        .find(|amount| {
            amount.lot.as_ref() == lot && amount.food.as_ref() == food && amount.soaked == soaked
        })
        .map(|amount| (amount.dry_matter_g.dry(), amount.as_fed_g.as_fed()))
        .filter(|(_, as_fed)| AsFed::ZERO < *as_fed)
        .map(|(dry, as_fed)| dry.to_kg() / as_fed.to_kg())
}
