//! Upper limits of the whole diet, and ratios between minerals. Potassium is not alarmed on: most hay is above the
//! printed bound.

use super::error::{LimitsError, WEIGHT};
use super::nutrient::{Amount, Nutrient};
use super::published::{
    CALCIUM_TO_PHOSPHORUS_LEAST, CALCIUM_TO_PHOSPHORUS_MOST, CALCIUM_TO_PHOSPHORUS_USUAL,
    CALCIUM_TO_PHOSPHORUS_YOUNG, IRON_TO_COPPER_REMARK, MOST_ADDED_SELENIUM, MOST_CALCIUM,
    MOST_COBALT, MOST_COPPER, MOST_IODINE, MOST_IRON, MOST_MAGNESIUM, MOST_MANGANESE,
    MOST_PHOSPHORUS, MOST_SALT, MOST_SELENIUM, MOST_SULPHUR, MOST_VITAMIN_A, MOST_VITAMIN_D,
    MOST_VITAMIN_E, MOST_VITAMIN_E_PER_KG, MOST_ZINC, WARN_SELENIUM, ZINC_TO_COPPER_LEAST,
    ZINC_TO_COPPER_MOST,
};
use crate::animal::State;
use crate::sources::{Provenance, Published};
use crate::units::{BodyMass, DryMatter, Iu, NutrientMass, ShareOfDm};

/// A content of the diet's dry matter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum UpperContent {
    /// A share of dry matter.
    Share(ShareOfDm),
    /// International units in a kilogram of dry matter.
    IuPerKg(f64),
}

impl UpperContent {
    /// How much of it lies in a mass of dry matter.
    pub fn in_dry(self, dry: DryMatter) -> Amount {
        match self {
            Self::Share(share) => Amount::Mass(share.in_dry(dry)),
            Self::IuPerKg(units) => Amount::Iu(Iu::iu(units * dry.to_kg())),
        }
    }
}

/// The upper limit of a nutrient.
#[derive(Clone, Debug, PartialEq)]
pub struct UpperLimit {
    /// Of which nutrient.
    pub nutrient: Nutrient,
    /// From here on to warn; only selenium has such a bound below its limit.
    pub warn: Option<UpperContent>,
    /// The most, of the whole diet's dry matter.
    pub most: UpperContent,
    /// Where it comes from.
    pub from: Provenance,
}

/// The upper limit of a nutrient; `None` where none is published here.
pub fn upper_limit(nutrient: Nutrient) -> Option<UpperLimit> {
    let most: Published<UpperContent> = match nutrient {
        Nutrient::Calcium => MOST_CALCIUM,
        Nutrient::Phosphorus => MOST_PHOSPHORUS,
        Nutrient::Magnesium => MOST_MAGNESIUM,
        Nutrient::Sulphur => MOST_SULPHUR,
        Nutrient::Copper => MOST_COPPER,
        Nutrient::Zinc => MOST_ZINC,
        Nutrient::Manganese => MOST_MANGANESE,
        Nutrient::Iron => MOST_IRON,
        Nutrient::Iodine => MOST_IODINE,
        Nutrient::Selenium => MOST_SELENIUM,
        Nutrient::Cobalt => MOST_COBALT,
        Nutrient::VitaminA => MOST_VITAMIN_A,
        Nutrient::VitaminD => MOST_VITAMIN_D,
        Nutrient::VitaminE => MOST_VITAMIN_E,
        Nutrient::CrudeProtein
        | Nutrient::Lysine
        | Nutrient::Potassium
        | Nutrient::Sodium
        | Nutrient::Chloride
        | Nutrient::Thiamin
        | Nutrient::Riboflavin => return None,
    };
    let from = Provenance::new().constant(&most);
    let (warn, from) = if nutrient == Nutrient::Selenium {
        (Some(*WARN_SELENIUM), from.constant(&WARN_SELENIUM))
    } else {
        (None, from)
    };
    Some(UpperLimit {
        nutrient,
        warn,
        most: *most,
        from,
    })
}

/// How an amount stands to its upper limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum UpperVerdict {
    /// Below it.
    Within,
    /// From the bound at which to warn up to the limit.
    Warn {
        /// The bound, in this much dry matter.
        from: Amount,
    },
    /// Above the limit.
    Over {
        /// The limit, in this much dry matter.
        most: Amount,
    },
    /// Nothing is published here, or the amount is of the other sort or no number.
    NotKnown,
}

/// Judges an amount in a day's dry matter, at the end that gives most, against the upper limit of its nutrient.
pub fn judge_upper(nutrient: Nutrient, amount: Amount, dry: DryMatter) -> UpperVerdict {
    let Some(limit) = upper_limit(nutrient) else {
        return UpperVerdict::NotKnown;
    };
    let most = limit.most.in_dry(dry);
    let Some(share) = amount.times(most).filter(|share| share.is_finite()) else {
        return UpperVerdict::NotKnown;
    };
    if share > 1.0 {
        return UpperVerdict::Over { most };
    }
    match limit.warn.map(|warn| warn.in_dry(dry)) {
        Some(from) if amount.times(from).is_some_and(|share| share >= 1.0) => {
            UpperVerdict::Warn { from }
        }
        _ => UpperVerdict::Within,
    }
}

/// Whether selenium that a plan **adds**, beside what its feeds hold by themselves, stays within the feed rule.
pub fn judge_added_selenium(added: NutrientMass, dry: DryMatter) -> UpperVerdict {
    judge_mass(added, MOST_ADDED_SELENIUM, dry)
}

/// Whether salt (sodium chloride) in a day's dry matter stays within its limit.
pub fn judge_salt(salt: NutrientMass, dry: DryMatter) -> UpperVerdict {
    judge_mass(salt, MOST_SALT, dry)
}

fn judge_mass(mass: NutrientMass, limit: Published<ShareOfDm>, dry: DryMatter) -> UpperVerdict {
    let most = limit.in_dry(dry);
    match mass.partial_cmp(&most) {
        None => UpperVerdict::NotKnown,
        Some(std::cmp::Ordering::Greater) => UpperVerdict::Over {
            most: Amount::Mass(most),
        },
        Some(_) => UpperVerdict::Within,
    }
}

/// The most vitamin E a day by weight: 20 IU a kilogram.
///
/// # Errors
/// A weight that is not believed.
pub fn vitamin_e_most(weight: BodyMass) -> Result<Iu, LimitsError> {
    WEIGHT.check(weight.to_kg())?;
    Ok(Iu::iu(*MOST_VITAMIN_E_PER_KG * weight.to_kg()))
}

/// How a ratio of two minerals stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum RatioVerdict {
    /// As usual.
    Usual {
        /// The ratio.
        ratio: f64,
    },
    /// Wide, and borne by a grown animal.
    Wide {
        /// The ratio.
        ratio: f64,
    },
    /// Narrow for a growing animal.
    Narrow {
        /// The ratio.
        ratio: f64,
    },
    /// Worth a remark, no more.
    Remark {
        /// The ratio.
        ratio: f64,
    },
    /// Too low.
    TooLow {
        /// The ratio.
        ratio: f64,
    },
    /// Too high.
    TooHigh {
        /// The ratio.
        ratio: f64,
    },
    /// One of the two is not known.
    NotKnown,
}

/// Divides two masses of which either may be unknown.
fn ratio(of: Option<NutrientMass>, to: Option<NutrientMass>) -> Option<f64> {
    let (of, to) = (of?, to?);
    (to > NutrientMass::ZERO)
        .then(|| of / to)
        .filter(|ratio| ratio.is_finite())
}

/// Calcium to phosphorus of the whole diet: never under 1, usually to 2, to 6 borne by grown animals whose phosphorus is
/// met; of growing ones 1.5 to 3.
pub fn calcium_to_phosphorus(
    calcium: Option<NutrientMass>,
    phosphorus: Option<NutrientMass>,
    state: State,
) -> RatioVerdict {
    let [narrow, most_young] = *CALCIUM_TO_PHOSPHORUS_YOUNG;
    match ratio(calcium, phosphorus) {
        None => RatioVerdict::NotKnown,
        Some(ratio) if ratio < *CALCIUM_TO_PHOSPHORUS_LEAST => RatioVerdict::TooLow { ratio },
        Some(ratio) if state == State::Growing => {
            if ratio < narrow {
                RatioVerdict::Narrow { ratio }
            } else if ratio <= most_young {
                RatioVerdict::Usual { ratio }
            } else {
                RatioVerdict::TooHigh { ratio }
            }
        }
        Some(ratio) if ratio <= *CALCIUM_TO_PHOSPHORUS_USUAL => RatioVerdict::Usual { ratio },
        Some(ratio) if ratio <= *CALCIUM_TO_PHOSPHORUS_MOST => RatioVerdict::Wide { ratio },
        Some(ratio) => RatioVerdict::TooHigh { ratio },
    }
}

/// Zinc to copper of the whole diet: 3 to 5.
pub fn zinc_to_copper(zinc: Option<NutrientMass>, copper: Option<NutrientMass>) -> RatioVerdict {
    match ratio(zinc, copper) {
        None => RatioVerdict::NotKnown,
        Some(ratio) if ratio < *ZINC_TO_COPPER_LEAST => RatioVerdict::TooLow { ratio },
        Some(ratio) if ratio <= *ZINC_TO_COPPER_MOST => RatioVerdict::Usual { ratio },
        Some(ratio) => RatioVerdict::TooHigh { ratio },
    }
}

/// Iron to copper of the whole diet: above 10 a remark, never an alarm.
pub fn iron_to_copper(iron: Option<NutrientMass>, copper: Option<NutrientMass>) -> RatioVerdict {
    match ratio(iron, copper) {
        None => RatioVerdict::NotKnown,
        Some(ratio) if ratio <= *IRON_TO_COPPER_REMARK => RatioVerdict::Usual { ratio },
        Some(ratio) => RatioVerdict::Remark { ratio },
    }
}
