//! What forage and foods bring, against need and ceiling.

use super::food::Food;
use super::published::HAY_VITAMIN_E;
use crate::forage::{Analyte, Supply};
use crate::limits::{Amount, Need, Nutrient, UpperVerdict, judge_upper};
use crate::sources::Provenance;
use crate::units::{AsFed, DryMatter};

/// One part of a ration.
#[derive(Clone, Copy, Debug)]
pub enum Part<'a> {
    /// Forage: dry matter as eaten.
    Forage(DryMatter, &'a Supply),
    /// A food, as fed.
    Food(AsFed, &'a Food),
    /// Dry matter of which nobody knows what it holds, such as grass.
    NotKnown(DryMatter),
}

impl Part<'_> {
    /// Its dry matter.
    pub fn dry(&self) -> DryMatter {
        match self {
            Self::Forage(dry, _) | Self::NotKnown(dry) => *dry,
            Self::Food(fed, food) => fed.dry(food.dry),
        }
    }

    /// What it brings of a nutrient; `None` when nobody knows.
    pub fn brings(&self, nutrient: Nutrient) -> Option<Amount> {
        match self {
            Self::NotKnown(_) => None,
            Self::Food(fed, food) => food.brings(nutrient, *fed),
            Self::Forage(dry, supply) => match (Analyte::of_nutrient(nutrient), nutrient) {
                (Some(analyte), _) => {
                    Some(Amount::Mass(supply.content(analyte)?.value.in_dry(*dry)))
                }
                (None, Nutrient::VitaminE) => {
                    Some(nutrient.amount(HAY_VITAMIN_E.value * dry.to_kg()))
                }
                (None, _) => None,
            },
        }
    }
}

/// How a supply stands to its limits.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Standing {
    /// Need met, ceiling kept.
    Within,
    /// Under the need by so much.
    Short {
        /// What is missing.
        by: Amount,
    },
    /// Over the ceiling, or from the bound at which to warn.
    Over {
        /// The ceiling or that bound.
        most: Amount,
    },
    /// A part of the ration is unknown in it, and what is known does not meet the need.
    NotKnown,
}

/// One nutrient of a ration.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Which.
    pub nutrient: Nutrient,
    /// What the known parts bring.
    pub supplied: Option<Amount>,
    /// Whether some part is unknown in it.
    pub partly_unknown: bool,
    /// The need.
    pub need: Amount,
    /// How it stands.
    pub standing: Standing,
    /// Where it comes from.
    pub from: Provenance,
}

/// Holds a ration against the needs of an animal, a line a nutrient in the order of the needs.
///
/// A ceiling is judged on what is known, for more can only come on top; a shortage only where every part is known.
pub fn balance(parts: &[Part<'_>], needs: &[Need]) -> Vec<Line> {
    let dry = parts.iter().map(Part::dry).sum();
    let sources = parts
        .iter()
        .fold(Provenance::new(), |from, part| match part {
            Part::Forage(_, supply) => from.and(&supply.provenance),
            Part::Food(_, food) => from.and(&food.from),
            Part::NotKnown(_) => from,
        });
    needs
        .iter()
        .map(|need| {
            let amounts: Vec<Option<Amount>> = parts
                .iter()
                .map(|part| part.brings(need.nutrient))
                .collect();
            let partly_unknown = amounts.iter().any(Option::is_none);
            let supplied = amounts
                .into_iter()
                .flatten()
                .fold(None::<Amount>, |sum, amount| match sum {
                    None => Some(amount),
                    Some(sum) => sum.plus(amount),
                });
            Line {
                nutrient: need.nutrient,
                supplied,
                partly_unknown,
                need: need.amount,
                standing: standing(need, supplied, partly_unknown, dry),
                from: need.from.clone().and(&sources),
            }
        })
        .collect()
}

fn standing(
    need: &Need,
    supplied: Option<Amount>,
    partly_unknown: bool,
    dry: DryMatter,
) -> Standing {
    let Some(supplied) = supplied else {
        return Standing::NotKnown;
    };
    match judge_upper(need.nutrient, supplied, dry) {
        UpperVerdict::Over { most } => return Standing::Over { most },
        UpperVerdict::Warn { from } => return Standing::Over { most: from },
        UpperVerdict::Within | UpperVerdict::NotKnown => {}
    }
    match supplied.times(need.amount) {
        Some(met) if met >= 1.0 => Standing::Within,
        _ if partly_unknown => Standing::NotKnown,
        _ => match need.amount.plus(supplied.scaled(-1.0)) {
            Some(by) => Standing::Short { by },
            None => Standing::NotKnown,
        },
    }
}
