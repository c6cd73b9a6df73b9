//! A label as it is stored, read as a food.

use super::base::Reported;
use super::food::{FoodUse, FoodV1};
use crate::animal::FoodId;
use crate::limits::{Nutrient, NutrientUnit};
use crate::ration::{Food, FoodLabel};
use crate::sources::RecordId;

impl FoodV1 {
    /// The food behind a record: a balancer whose label was typed. `None` for any other use, for an empty label, and
    /// for a label that cannot be: then a typical profile stands in, marked as such.
    ///
    /// A line is read by its name as the keys of [`Nutrient`] are written (`crude_protein`, `Crude protein`), and
    /// `sugar_starch` and `starch`; other lines stay on the label and are not reckoned with.
    pub fn food(&self, id: &RecordId) -> Option<Food> {
        if self.food_use != FoodUse::Balancer || self.label.is_empty() {
            return None;
        }
        let mut label = FoodLabel {
            id: Some(FoodId(id.0.clone())),
            name: self.name.as_str().to_owned(),
            dry_percent: self.dry_matter.as_ref().map(|dry| dry.value.number()),
            per_kg: Vec::new(),
            sugar_starch_percent: None,
            starch_percent: None,
            rate_g_per_kg: None,
            record: Some(id.clone()),
        };
        for line in &self.label {
            let key = line
                .name
                .as_str()
                .trim()
                .to_lowercase()
                .replace([' ', '-'], "_");
            match key.as_str() {
                "sugar_starch" => label.sugar_starch_percent = percent(&line.reported),
                "starch" => label.starch_percent = percent(&line.reported),
                _ => {
                    let value = Nutrient::from_key(&key)
                        .and_then(|nutrient| Some((nutrient, per_kg(nutrient, &line.reported)?)));
                    label.per_kg.extend(value);
                }
            }
        }
        Food::read(label).ok()
    }
}

/// A share in percent.
fn percent(reported: &Reported) -> Option<f64> {
    match reported.unit.as_str() {
        "%" => Some(reported.value.number()),
        "g/kg" => Some(reported.value.number() / 10.0),
        _ => None,
    }
}

/// A content in the nutrient's own unit in a kilogram; `None` for a unit that does not belong to it.
fn per_kg(nutrient: Nutrient, reported: &Reported) -> Option<f64> {
    let value = reported.value.number();
    match (nutrient.unit(), reported.unit.as_str()) {
        (NutrientUnit::Gram, "%") => Some(value * 10.0),
        (NutrientUnit::Gram, "g/kg")
        | (NutrientUnit::Milligram, "mg/kg")
        | (NutrientUnit::InternationalUnit, "IU/kg") => Some(value),
        (NutrientUnit::Gram, "mg/kg") => Some(value / 1000.0),
        (NutrientUnit::Milligram, "g/kg") => Some(value * 1000.0),
        _ => None,
    }
}
