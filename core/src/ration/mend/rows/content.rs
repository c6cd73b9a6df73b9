//! What a kilogram of hay or food brings, at the end that is believed.

use super::super::published::HAY_CARE;
use super::super::wanted::ForageChoice;
use crate::limits::{Amount, Nutrient, UpperContent};
use crate::ration::Food;
use crate::ration::published::HAY_VITAMIN_E;
use crate::units::{AsFed, DryMatter, ShareOfDm};

/// Which end of what is believed.
#[derive(Clone, Copy, PartialEq)]
pub(super) enum End {
    Low,
    Mean,
    High,
}

/// A number of an amount in the nutrient's own unit.
pub(super) fn number(nutrient: Nutrient, amount: Amount) -> f64 {
    amount.times(nutrient.amount(1.0)).unwrap_or_default()
}

/// What a kilogram of a forage as fed holds of a nutrient, in its unit.
pub(super) fn in_forage(forage: &ForageChoice<'_>, nutrient: Nutrient, end: End) -> Option<f64> {
    let dry = AsFed::kg(1.0).dry(forage.dry);
    if nutrient == Nutrient::VitaminE {
        return Some(HAY_VITAMIN_E.value * dry.to_kg());
    }
    let content = forage.supply.nutrient(nutrient)?;
    Some(number(
        nutrient,
        Amount::Mass(careful(content.value, content.spread, end).in_dry(dry)),
    ))
}

pub(super) fn careful(value: ShareOfDm, spread: Option<ShareOfDm>, end: End) -> ShareOfDm {
    let spread = spread.unwrap_or(ShareOfDm::ZERO) * *HAY_CARE;
    match end {
        End::Mean => value,
        End::Low => (value - spread).max(ShareOfDm::ZERO),
        End::High => value + spread,
    }
}

/// What a kilogram of a food as fed holds of a nutrient, in its unit.
pub(super) fn in_food(food: &Food, nutrient: Nutrient) -> Option<f64> {
    food.per_kg(nutrient).map(|amount| number(nutrient, amount))
}

/// One thing less so many times another. What rounding leaves of two that are equal is nothing.
pub(super) fn less(of: Option<f64>, to: Option<f64>, times: f64) -> f64 {
    let (of, to) = (of.unwrap_or(0.0), times * to.unwrap_or(0.0));
    let left = of - to;
    if left.abs() <= f64::EPSILON * 10.0 * (of.abs() + to.abs()) {
        0.0
    } else {
        left
    }
}

/// A content of dry matter as a number of the nutrient's unit in a kilogram of dry matter.
pub(super) fn in_dry(nutrient: Nutrient, content: UpperContent) -> f64 {
    number(nutrient, content.in_dry(DryMatter::kg(1.0)))
}
