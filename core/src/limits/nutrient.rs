//! Nutrients, and an amount of one.

use crate::units::{Iu, NutrientMass};

/// A nutrient with a need. Energy stands apart, see [`super::energy_need`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Nutrient {
    /// Crude protein.
    CrudeProtein,
    /// Lysine.
    Lysine,
    /// Calcium.
    Calcium,
    /// Phosphorus.
    Phosphorus,
    /// Magnesium.
    Magnesium,
    /// Potassium.
    Potassium,
    /// Sodium.
    Sodium,
    /// Chloride.
    Chloride,
    /// Sulphur.
    Sulphur,
    /// Copper.
    Copper,
    /// Zinc.
    Zinc,
    /// Manganese.
    Manganese,
    /// Iron.
    Iron,
    /// Iodine.
    Iodine,
    /// Selenium.
    Selenium,
    /// Cobalt.
    Cobalt,
    /// Vitamin A.
    VitaminA,
    /// Vitamin D.
    VitaminD,
    /// Vitamin E.
    VitaminE,
    /// Thiamin (vitamin B1).
    Thiamin,
    /// Riboflavin (vitamin B2).
    Riboflavin,
}

/// The unit in which an amount of a nutrient is shown.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum NutrientUnit {
    /// Grams.
    Gram,
    /// Milligrams.
    Milligram,
    /// International units.
    InternationalUnit,
}

impl Nutrient {
    /// All of them, in the order they are shown.
    pub const ALL: [Self; 21] = {
        use Nutrient::{
            Calcium, Chloride, Cobalt, Copper, CrudeProtein, Iodine, Iron, Lysine, Magnesium,
            Manganese, Phosphorus, Potassium, Riboflavin, Selenium, Sodium, Sulphur, Thiamin,
            VitaminA, VitaminD, VitaminE, Zinc,
        };
        [
            CrudeProtein,
            Lysine,
            Calcium,
            Phosphorus,
            Magnesium,
            Potassium,
            Sodium,
            Chloride,
            Sulphur,
            Copper,
            Zinc,
            Manganese,
            Iron,
            Iodine,
            Selenium,
            Cobalt,
            VitaminA,
            VitaminD,
            VitaminE,
            Thiamin,
            Riboflavin,
        ]
    };

    /// The unit its amounts are shown in.
    pub const fn unit(self) -> NutrientUnit {
        match self {
            Self::CrudeProtein
            | Self::Lysine
            | Self::Calcium
            | Self::Phosphorus
            | Self::Magnesium
            | Self::Potassium
            | Self::Sodium
            | Self::Chloride
            | Self::Sulphur => NutrientUnit::Gram,
            Self::Copper
            | Self::Zinc
            | Self::Manganese
            | Self::Iron
            | Self::Iodine
            | Self::Selenium
            | Self::Cobalt
            | Self::Thiamin
            | Self::Riboflavin => NutrientUnit::Milligram,
            Self::VitaminA | Self::VitaminD | Self::VitaminE => NutrientUnit::InternationalUnit,
        }
    }

    /// A stable key for records and reference rows.
    pub const fn key(self) -> &'static str {
        match self {
            Self::CrudeProtein => "crude_protein",
            Self::Lysine => "lysine",
            Self::Calcium => "calcium",
            Self::Phosphorus => "phosphorus",
            Self::Magnesium => "magnesium",
            Self::Potassium => "potassium",
            Self::Sodium => "sodium",
            Self::Chloride => "chloride",
            Self::Sulphur => "sulphur",
            Self::Copper => "copper",
            Self::Zinc => "zinc",
            Self::Manganese => "manganese",
            Self::Iron => "iron",
            Self::Iodine => "iodine",
            Self::Selenium => "selenium",
            Self::Cobalt => "cobalt",
            Self::VitaminA => "vitamin_a",
            Self::VitaminD => "vitamin_d",
            Self::VitaminE => "vitamin_e",
            Self::Thiamin => "thiamin",
            Self::Riboflavin => "riboflavin",
        }
    }

    /// The nutrient of a key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.into_iter().find(|nutrient| nutrient.key() == key)
    }

    /// An amount of it from a number of its unit.
    pub const fn amount(self, value: f64) -> Amount {
        match self.unit() {
            NutrientUnit::Gram => Amount::Mass(NutrientMass::g(value)),
            NutrientUnit::Milligram => Amount::Mass(NutrientMass::mg(value)),
            NutrientUnit::InternationalUnit => Amount::Iu(Iu::iu(value)),
        }
    }

    /// An amount as a number of its unit; `None` when the amount is of the other sort (a mass of a vitamin counted in
    /// units, or units of a mineral).
    pub const fn in_unit(self, amount: Amount) -> Option<f64> {
        match (self.unit(), amount) {
            (NutrientUnit::Gram, Amount::Mass(mass)) => Some(mass.to_g()),
            (NutrientUnit::Milligram, Amount::Mass(mass)) => Some(mass.to_mg()),
            (NutrientUnit::InternationalUnit, Amount::Iu(units)) => Some(units.to_iu()),
            _ => None,
        }
    }
}

/// An amount of a nutrient.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// A mass.
    Mass(NutrientMass),
    /// International units.
    Iu(Iu),
}

impl Amount {
    /// The sum of two of the same sort; `None` when one is a mass and the other units.
    pub fn plus(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Mass(a), Self::Mass(b)) => Some(Self::Mass(a + b)),
            (Self::Iu(a), Self::Iu(b)) => Some(Self::Iu(a + b)),
            _ => None,
        }
    }

    /// This many times another of the same sort; `None` for two sorts or when the other is not above zero.
    pub fn times(self, other: Self) -> Option<f64> {
        match (self, other) {
            (Self::Mass(a), Self::Mass(b)) if b > NutrientMass::ZERO => Some(a / b),
            (Self::Iu(a), Self::Iu(b)) if b > Iu::ZERO => Some(a / b),
            _ => None,
        }
    }

    /// The amount times a factor.
    #[must_use]
    pub fn scaled(self, factor: f64) -> Self {
        match self {
            Self::Mass(mass) => Self::Mass(mass * factor),
            Self::Iu(units) => Self::Iu(units * factor),
        }
    }
}
