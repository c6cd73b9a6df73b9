//! Why a label that is stored cannot be a food.

use super::FoodV2;
use super::words::{ENERGY_WORDS, IU_WORDS, MASS_WORDS};
use crate::limits::NutrientUnit;
use crate::log::error::{Allowed, LogError, Path};
use crate::ration::{Content, LabelField, LabelFinding, LabelUnit, RationError};
use crate::units::{Bounds, DryFraction, OutOfRange};

/// A food that was refused, at its place.
pub(super) fn refused(error: RationError, body: &Path<'_>) -> LogError {
    LogError::OutOfRange {
        place: body.place(),
        range: match error {
            RationError::OutOfRange(range) => range,
            RationError::Content { nutrient, value } => OutOfRange {
                bounds: Bounds::new(nutrient.key(), 0.0, f64::MAX),
                value,
            },
        },
    }
}

/// Refuses what leaves a line or a field out of the food; what is only unlikely passes.
pub(super) fn check(food: &FoodV2, finding: LabelFinding, body: &Path<'_>) -> Result<(), LogError> {
    let out_of_range = |field, [least, most]: [f64; 2], value| {
        Err(LogError::OutOfRange {
            place: body.place(),
            range: OutOfRange {
                bounds: Bounds::new(field, least, most),
                value,
            },
        })
    };
    match finding {
        LabelFinding::Impossible {
            content,
            value,
            allowed,
            ..
        } => out_of_range(content.key(), allowed, value),
        LabelFinding::Field {
            field,
            value,
            allowed,
        } => out_of_range(
            match field {
                LabelField::DryMatter => DryFraction::BOUNDS.field,
                LabelField::Serving => "serving_g",
                LabelField::Rate => "rate_g_per_kg_body",
            },
            allowed,
            value,
        ),
        LabelFinding::Needs { field, .. } => Err(body
            .key(match field {
                LabelField::DryMatter => "dry_matter",
                LabelField::Serving => "serving",
                LabelField::Rate => "rate",
            })
            .missing()),
        LabelFinding::UnitOfOtherSort { content, unit } => {
            let index = food
                .label
                .iter()
                .position(|line| {
                    line.content == Some(content)
                        && LabelUnit::from_word(line.reported.unit.as_str()) == Some(unit)
                })
                .unwrap_or_default();
            let allowed = match content {
                Content::Of(nutrient) if nutrient.unit() == NutrientUnit::InternationalUnit => {
                    IU_WORDS
                }
                Content::Energy => ENERGY_WORDS,
                _ => MASS_WORDS,
            };
            Err(body
                .key("label")
                .index(index)
                .key("reported")
                .key("unit")
                .refuse(unit.word(), Allowed::OneOf(allowed)))
        }
        LabelFinding::Unlikely { .. }
        | LabelFinding::GivenTwice { .. }
        | LabelFinding::PartOverWhole { .. }
        | LabelFinding::PartsOverWhole { .. } => Ok(()),
    }
}
