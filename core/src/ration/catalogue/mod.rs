//! Typical foods by class, generic, until a label is typed.
//!
//! Forage stands in [`crate::forage::ForageClass`]; [`typical_forage`] gives what a class brings, so that hay and foods
//! can be looked through together with [`Typical`]. Every number knows its row, work and mark: [`TypicalFood::number`].
//! What no row says is unknown. Only a single substance (salt, oil, a sulphate) is taken to hold nothing of what it is
//! not made of.

mod known;
pub mod published;
#[cfg(test)]
mod tests;

pub use known::{CountedIn, KnownNumber};

use super::class::FoodClass;
use super::content::Content;
use super::food::{Food, typical_balancer};
use super::published::{BALANCER_DRY, BALANCER_RATE};
use crate::animal::LotId;
use crate::forage::{Fed, ForageClass, Lot, Supply, supply};
use crate::limits::{Nutrient, NutrientUnit};
use crate::sources::{Provenance, Published};
use crate::units::{DryFraction, EnergyDensity, ShareOfDm};
use published::Row;
use std::collections::BTreeMap;

/// A typical food.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum TypicalFood {
    /// Beet pulp without molasses, weighed dry.
    BeetPulp,
    /// Beet pulp with molasses, weighed dry.
    BeetPulpMolassed,
    /// Soya hulls.
    SoyaHulls,
    /// Lucerne chaff with nothing added.
    LucerneChaff,
    /// Lucerne pellets.
    LucernePellets,
    /// Wheat bran.
    WheatBran,
    /// Oats.
    Oats,
    /// Linseed, cooked or micronised.
    Linseed,
    /// Soybean meal.
    SoybeanMeal,
    /// Vegetable oil.
    Oil,
    /// Salt.
    Salt,
    /// Limestone.
    Limestone,
    /// Dicalcium phosphate.
    DicalciumPhosphate,
    /// Magnesium oxide.
    MagnesiumOxide,
    /// Copper sulphate.
    CopperSulphate,
    /// Zinc sulphate.
    ZincSulphate,
    /// Vitamin E powder.
    VitaminE,
    /// Selenium yeast.
    SeleniumYeast,
    /// Dried algae with DHA.
    DhaSource,
    /// Live yeast.
    LiveYeast,
    /// A balancer.
    Balancer,
    /// A complete fibre feed low in sugar.
    LowSugarFeed,
}

/// Anything typical that can be fed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Typical {
    /// Hay, haylage or straw of a class.
    Forage(ForageClass),
    /// A food.
    Food(TypicalFood),
}

impl Typical {
    /// Forage first, then foods, in the order in which a person is asked.
    pub fn all() -> impl Iterator<Item = Self> {
        let forage = ForageClass::ALL.iter().copied().map(Self::Forage);
        forage.chain(TypicalFood::ALL.iter().copied().map(Self::Food))
    }
}

/// What an untested forage of a class brings.
pub fn typical_forage(class: ForageClass) -> Supply {
    supply(&Lot::of_class(LotId(String::new()), "", class), Fed::Dry)
}

/// The rows of a food.
type Rows = &'static [&'static Published<Row>];

/// What is known of a typical food.
struct Profile {
    class: FoodClass,
    rows: Rows,
    /// For a single substance: what may be in it all the same, so that it is unknown and not nothing.
    pure: Option<&'static [Nutrient]>,
    most: &'static Published<f64>,
}

/// A number of the catalogue with the row it stands in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Stated {
    /// On dry matter: percent, mg/kg, IU/kg or Mcal/kg, see [`published`].
    pub value: f64,
    /// The row, with its work, place and mark.
    pub row: &'static Published<Row>,
}

impl TypicalFood {
    /// All of them, in the order in which a person is asked.
    pub const ALL: &'static [Self] = &[
        Self::BeetPulp,
        Self::BeetPulpMolassed,
        Self::SoyaHulls,
        Self::LucerneChaff,
        Self::LucernePellets,
        Self::WheatBran,
        Self::Oats,
        Self::Linseed,
        Self::SoybeanMeal,
        Self::Oil,
        Self::Salt,
        Self::Limestone,
        Self::DicalciumPhosphate,
        Self::MagnesiumOxide,
        Self::CopperSulphate,
        Self::ZincSulphate,
        Self::VitaminE,
        Self::SeleniumYeast,
        Self::DhaSource,
        Self::LiveYeast,
        Self::Balancer,
        Self::LowSugarFeed,
    ];

    /// A stable key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::BeetPulp => "beet_pulp",
            Self::BeetPulpMolassed => "beet_pulp_molassed",
            Self::SoyaHulls => "soya_hulls",
            Self::LucerneChaff => "lucerne_chaff",
            Self::LucernePellets => "lucerne_pellets",
            Self::WheatBran => "wheat_bran",
            Self::Oats => "oats",
            Self::Linseed => "linseed",
            Self::SoybeanMeal => "soybean_meal",
            Self::Oil => "oil",
            Self::Salt => "salt",
            Self::Limestone => "limestone",
            Self::DicalciumPhosphate => "dicalcium_phosphate",
            Self::MagnesiumOxide => "magnesium_oxide",
            Self::CopperSulphate => "copper_sulphate",
            Self::ZincSulphate => "zinc_sulphate",
            Self::VitaminE => "vitamin_e",
            Self::SeleniumYeast => "selenium_yeast",
            Self::DhaSource => "dha_source",
            Self::LiveYeast => "live_yeast",
            Self::Balancer => "balancer",
            Self::LowSugarFeed => "low_sugar_feed",
        }
    }

    /// The food of a key.
    pub fn from_key(key: &str) -> Option<Self> {
        Self::ALL.iter().copied().find(|food| food.key() == key)
    }

    /// What it is.
    pub const fn class(self) -> FoodClass {
        self.profile().class
    }

    #[allow(clippy::too_many_lines, reason = "one arm a food")]
    const fn profile(self) -> Profile {
        use published as p;
        let (class, rows, pure, most): (_, Rows, Option<&'static [Nutrient]>, _) = match self {
            Self::BeetPulp => (
                FoodClass::Fibre,
                &[
                    &p::BEET_PULP,
                    &p::BEET_PULP_SOIL,
                    &p::BEET_PULP_ENERGY,
                    &p::BEET_PULP_LYSINE,
                ],
                None,
                &p::MOST_FIBRE,
            ),
            Self::BeetPulpMolassed => (
                FoodClass::Fibre,
                &[
                    &p::BEET_PULP_MOLASSED,
                    &p::BEET_PULP_MOLASSED_SOIL,
                    &p::BEET_PULP_MOLASSED_ENERGY,
                    &p::BEET_PULP_LYSINE,
                ],
                None,
                &p::MOST_FIBRE,
            ),
            Self::SoyaHulls => (
                FoodClass::Fibre,
                &[
                    &p::SOYA_HULLS,
                    &p::SOYA_HULLS_SOIL,
                    &p::SOYA_HULLS_ENERGY,
                    &p::SOYA_HULLS_LYSINE,
                ],
                None,
                &p::MOST_FIBRE,
            ),
            Self::LucerneChaff => (
                FoodClass::Legume,
                &[
                    &p::LUCERNE_CHAFF,
                    &p::LUCERNE_CHAFF_ENERGY,
                    &p::LUCERNE_LYSINE,
                ],
                None,
                &p::MOST_LEGUME,
            ),
            Self::LucernePellets => (
                FoodClass::Legume,
                &[
                    &p::LUCERNE_PELLETS,
                    &p::LUCERNE_PELLETS_ENERGY,
                    &p::LUCERNE_LYSINE,
                ],
                None,
                &p::MOST_LEGUME,
            ),
            Self::WheatBran => (
                FoodClass::Cereal,
                &[
                    &p::WHEAT_BRAN,
                    &p::WHEAT_BRAN_SOIL,
                    &p::WHEAT_BRAN_ENERGY,
                    &p::WHEAT_BRAN_LYSINE,
                ],
                None,
                &p::MOST_CEREAL,
            ),
            Self::Oats => (
                FoodClass::Cereal,
                &[&p::OATS, &p::OATS_SOIL, &p::OATS_ENERGY, &p::OATS_LYSINE],
                None,
                &p::MOST_CEREAL,
            ),
            Self::Linseed => (FoodClass::Protein, &[&p::LINSEED], None, &p::MOST_PROTEIN),
            Self::SoybeanMeal => (
                FoodClass::Protein,
                &[&p::SOYBEAN_MEAL],
                None,
                &p::MOST_PROTEIN,
            ),
            Self::Oil => (
                FoodClass::Fat,
                &[&p::OIL],
                Some(&[Nutrient::VitaminE]),
                &p::MOST_FAT,
            ),
            Self::Salt => (FoodClass::Source, &[&p::SALT], Some(&[]), &p::MOST_MINERAL),
            Self::Limestone => (
                FoodClass::Source,
                &[&p::LIMESTONE],
                Some(&[Nutrient::Iron]),
                &p::MOST_MINERAL,
            ),
            Self::DicalciumPhosphate => (
                FoodClass::Source,
                &[&p::DICALCIUM_PHOSPHATE],
                Some(&[Nutrient::Iron]),
                &p::MOST_MINERAL,
            ),
            Self::MagnesiumOxide => (
                FoodClass::Source,
                &[&p::MAGNESIUM_OXIDE],
                Some(&[Nutrient::Iron]),
                &p::MOST_MINERAL,
            ),
            Self::CopperSulphate => (
                FoodClass::Source,
                &[&p::COPPER_SULPHATE],
                Some(&[]),
                &p::MOST_TRACE,
            ),
            Self::ZincSulphate => (
                FoodClass::Source,
                &[&p::ZINC_SULPHATE],
                Some(&[]),
                &p::MOST_TRACE,
            ),
            Self::VitaminE => (
                FoodClass::Source,
                &[&p::VITAMIN_E],
                Some(&[]),
                &p::MOST_TRACE,
            ),
            Self::SeleniumYeast => (
                FoodClass::Source,
                &[&p::SELENIUM_YEAST],
                Some(&[]),
                &p::MOST_TRACE,
            ),
            Self::DhaSource => (FoodClass::Source, &[&p::DHA_SOURCE], None, &p::MOST_MINERAL),
            Self::LiveYeast => (FoodClass::Other, &[&p::LIVE_YEAST], None, &p::MOST_MINERAL),
            Self::Balancer => (FoodClass::Balancer, &[], None, &BALANCER_RATE),
            Self::LowSugarFeed => (FoodClass::Compound, &[&p::LOW_SUGAR], None, &p::MOST_FIBRE),
        };
        Profile {
            class,
            rows,
            pure,
            most,
        }
    }

    /// A number of it, with where it stands; `None` when the catalogue does not say, and for the balancer, whose numbers
    /// stand in [`super::published`].
    pub fn number(self, content: Content) -> Option<Stated> {
        self.profile().rows.iter().find_map(|row| {
            row.value
                .iter()
                .find(|(found, _)| *found == content)
                .map(|(_, value)| Stated { value: *value, row })
        })
    }

    /// The food, as a ration takes it.
    pub fn food(self) -> Food {
        if self == Self::Balancer {
            return typical_balancer();
        }
        let profile = self.profile();
        let value = |content| self.number(content).map(|stated| stated.value);
        let dry =
            DryFraction::constant_percent(value(Content::DryMatter).unwrap_or(BALANCER_DRY.value));
        let pure = profile.pure.map(|_| *published::PURE);
        let share = |content| value(content).or(pure).map(ShareOfDm::percent);
        let mut per_kg = BTreeMap::new();
        for nutrient in Nutrient::ALL {
            let nothing = profile
                .pure
                .filter(|unknown| !unknown.contains(&nutrient))
                .map(|_| *published::PURE);
            if let Some(value) = value(Content::Of(nutrient)).or(nothing) {
                per_kg.insert(nutrient, as_fed(nutrient, value, dry));
            }
        }
        let rows = profile
            .rows
            .iter()
            .fold(Provenance::new(), |from, row| from.constant(row))
            .constant(profile.most);
        Food {
            id: None,
            name: String::new(),
            class: profile.class,
            profile: Some(self),
            dry,
            energy: value(Content::Energy)
                .or(pure)
                .map(EnergyDensity::mcal_per_kg),
            fibre: share(Content::NeutralFibre),
            sugar_starch: share(Content::SugarStarch).map(|share| share.as_fed(dry)),
            starch: share(Content::Starch).map(|share| share.as_fed(dry)),
            dha: share(Content::Dha).map(|share| share.as_fed(dry)),
            typical: true,
            from: match pure {
                Some(_) => rows.constant(&published::PURE),
                None => rows,
            },
            per_kg,
            rate_g_per_kg: **profile.most,
        }
    }
}

/// A number on dry matter as an amount in a kilogram as fed.
fn as_fed(nutrient: Nutrient, value: f64, dry: DryFraction) -> crate::limits::Amount {
    let in_dry = match nutrient.unit() {
        // Percent is ten grams a kilogram.
        NutrientUnit::Gram => nutrient.amount(value * 10.0),
        NutrientUnit::Milligram | NutrientUnit::InternationalUnit => nutrient.amount(value),
    };
    in_dry.scaled(dry.to_fraction())
}
