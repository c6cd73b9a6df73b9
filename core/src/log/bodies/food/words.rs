//! The stored words of a food: its class, the typical food that stands in, what a line says, and the units.

use crate::log::error::{Allowed, LogError, Path};
use crate::log::stored::{Stored, text, words};
use crate::ration::{Content, FoodClass, TypicalFood};
use serde_json::Value;

words! {
    FoodClass {
        Legume = "legume",
        Fibre = "fibre",
        Cereal = "cereal",
        Protein = "protein",
        Fat = "fat",
        Balancer = "balancer",
        MineralMix = "mineral_mix",
        Source = "source",
        Compound = "compound",
        Other = "other",
    }
}
words! {
    TypicalFood {
        BeetPulp = "beet_pulp",
        BeetPulpMolassed = "beet_pulp_molassed",
        SoyaHulls = "soya_hulls",
        LucerneChaff = "lucerne_chaff",
        LucernePellets = "lucerne_pellets",
        WheatBran = "wheat_bran",
        Oats = "oats",
        Linseed = "linseed",
        SoybeanMeal = "soybean_meal",
        Oil = "oil",
        Salt = "salt",
        Limestone = "limestone",
        DicalciumPhosphate = "dicalcium_phosphate",
        MagnesiumOxide = "magnesium_oxide",
        CopperSulphate = "copper_sulphate",
        ZincSulphate = "zinc_sulphate",
        VitaminE = "vitamin_e",
        SeleniumYeast = "selenium_yeast",
        DhaSource = "dha_source",
        LiveYeast = "live_yeast",
        Balancer = "balancer",
        LowSugarFeed = "low_sugar_feed",
    }
}

/// The words of the contents.
pub(super) const CONTENTS: &[&str] = &[
    "dry_matter",
    "energy",
    "neutral_fibre",
    "sugar_starch",
    "starch",
    "dha",
    "crude_protein",
    "lysine",
    "calcium",
    "phosphorus",
    "magnesium",
    "potassium",
    "sodium",
    "chloride",
    "sulphur",
    "copper",
    "zinc",
    "manganese",
    "iron",
    "iodine",
    "selenium",
    "cobalt",
    "vitamin_a",
    "vitamin_d",
    "vitamin_e",
    "thiamin",
    "riboflavin",
];

impl Stored for Content {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        let word = text(value, path)?;
        Self::from_key(word).ok_or_else(|| path.refuse(word, Allowed::OneOf(CONTENTS)))
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(self.key()))
    }
}

/// The units of what is counted by mass.
pub(super) const MASS_WORDS: &[&str] = &[
    "%",
    "g/100g",
    "g/kg",
    "mg/kg",
    "ppm",
    "ug/kg",
    "g/serving",
    "mg/serving",
    "ug/serving",
    "g/100kg",
    "mg/100kg",
    "ug/100kg",
];
/// The units of what is counted in international units.
pub(super) const IU_WORDS: &[&str] = &["IU/kg", "IU/serving", "IU/100kg"];
/// The units of energy.
pub(super) const ENERGY_WORDS: &[&str] = &["Mcal/kg", "MJ/kg"];
/// The units in which a line of a label is understood.
pub(super) const LABEL_UNITS: &[&str] = &[
    "%",
    "g/100g",
    "g/kg",
    "mg/kg",
    "ppm",
    "ug/kg",
    "IU/kg",
    "g/serving",
    "mg/serving",
    "ug/serving",
    "IU/serving",
    "g/100kg",
    "mg/100kg",
    "ug/100kg",
    "IU/100kg",
    "Mcal/kg",
    "MJ/kg",
];
