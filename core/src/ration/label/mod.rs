//! A label in its own units: brought to a kilogram as fed, and looked at for what cannot be.
//!
//! A label says percent, g/kg, mg/kg (ppm), IU, so much a serving or so much for 100 kg of body weight, on the feed as
//! fed or on dry matter. [`check_label`] turns each line into the nutrient's own unit in a kilogram as fed, and says what
//! is impossible or was likely typed with another unit, each with the content, the value and what is allowed. The label
//! is the person's: a line that cannot be is left out, never mended.

mod check;
mod names;
#[cfg(test)]
mod tests;
mod text;

pub use check::check_label;
pub use text::{FromText, PastedLabel, read_label};

use super::class::FoodClass;
use super::content::Content;
use crate::animal::FoodId;
use crate::sources::RecordId;

/// What an amount is counted in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measure {
    /// Grams.
    Gram,
    /// Milligrams.
    Milligram,
    /// Micrograms.
    Microgram,
    /// International units.
    InternationalUnit,
}

impl Measure {
    /// In grams; `None` for international units, which have no mass.
    pub const fn grams(self) -> Option<f64> {
        match self {
            Self::Gram => Some(1.0),
            Self::Milligram => Some(1.0 / 1000.0),
            Self::Microgram => Some(1.0 / 1000.0 / 1000.0),
            Self::InternationalUnit => None,
        }
    }
}

/// The unit of a line of a label.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LabelUnit {
    /// Percent of the basis; the same as grams in 100 g.
    Percent,
    /// So much in a kilogram of the basis. Milligrams in a kilogram are ppm.
    PerKg(Measure),
    /// So much in a serving, whatever the basis.
    PerServing(Measure),
    /// So much for 100 kg of body weight at the label's rate, whatever the basis.
    Per100KgBody(Measure),
    /// Megacalories in a kilogram of the basis.
    McalPerKg,
    /// Megajoules in a kilogram of the basis.
    MjPerKg,
}

/// The units with the words in which they are typed and stored, the first of each unit for showing.
const UNIT_WORDS: &[(&str, LabelUnit)] = &[
    ("%", LabelUnit::Percent),
    ("g/100g", LabelUnit::Percent),
    ("g/kg", LabelUnit::PerKg(Measure::Gram)),
    ("mg/kg", LabelUnit::PerKg(Measure::Milligram)),
    ("ppm", LabelUnit::PerKg(Measure::Milligram)),
    ("ug/kg", LabelUnit::PerKg(Measure::Microgram)),
    ("IU/kg", LabelUnit::PerKg(Measure::InternationalUnit)),
    ("g/serving", LabelUnit::PerServing(Measure::Gram)),
    ("mg/serving", LabelUnit::PerServing(Measure::Milligram)),
    ("ug/serving", LabelUnit::PerServing(Measure::Microgram)),
    (
        "IU/serving",
        LabelUnit::PerServing(Measure::InternationalUnit),
    ),
    ("g/100kg", LabelUnit::Per100KgBody(Measure::Gram)),
    ("mg/100kg", LabelUnit::Per100KgBody(Measure::Milligram)),
    ("ug/100kg", LabelUnit::Per100KgBody(Measure::Microgram)),
    (
        "IU/100kg",
        LabelUnit::Per100KgBody(Measure::InternationalUnit),
    ),
    ("Mcal/kg", LabelUnit::McalPerKg),
    ("MJ/kg", LabelUnit::MjPerKg),
];

impl LabelUnit {
    /// Every word that is understood.
    pub fn words() -> impl Iterator<Item = &'static str> {
        UNIT_WORDS.iter().map(|(word, _)| *word)
    }

    /// The unit of a word.
    pub fn from_word(word: &str) -> Option<Self> {
        UNIT_WORDS
            .iter()
            .find(|(known, _)| *known == word)
            .map(|(_, unit)| *unit)
    }

    /// The word of a unit.
    pub fn word(self) -> &'static str {
        UNIT_WORDS
            .iter()
            .find(|(_, unit)| *unit == self)
            .map_or("", |(word, _)| *word)
    }

    /// Whether it is a content of the basis, and not an amount of a serving or a dose.
    const fn is_content(self) -> bool {
        matches!(
            self,
            Self::Percent | Self::PerKg(_) | Self::McalPerKg | Self::MjPerKg
        )
    }
}

/// What the contents of a label are of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LabelBasis {
    /// The feed as it lies in the bag.
    AsFed,
    /// Its dry matter.
    DryMatter,
}

/// One line of a label as typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LabelLine {
    /// Of what.
    pub content: Content,
    /// How much.
    pub value: f64,
    /// In which unit.
    pub unit: LabelUnit,
}

/// A label as typed.
#[derive(Clone, Debug, PartialEq)]
pub struct RawLabel {
    /// Its id.
    pub id: Option<FoodId>,
    /// Its name.
    pub name: String,
    /// What it is.
    pub class: FoodClass,
    /// What its contents are of.
    pub basis: LabelBasis,
    /// Dry matter in percent as fed, when it says it.
    pub dry_percent: Option<f64>,
    /// What a serving weighs in grams, when it says it.
    pub serving_g: Option<f64>,
    /// How much to feed, in grams a kilogram of body weight a day, when it says it.
    pub rate_g_per_kg: Option<f64>,
    /// Its lines.
    pub lines: Vec<LabelLine>,
    /// The record it stands in.
    pub record: Option<RecordId>,
}

/// A field of a label that is not a line.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum LabelField {
    /// Dry matter.
    DryMatter,
    /// What a serving weighs.
    Serving,
    /// How much to feed.
    Rate,
}

/// What is wrong with a label, or should be looked at again. Values are as typed, in the unit as typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum LabelFinding {
    /// More than the whole, less than nothing, or no number. The line is left out.
    Impossible {
        /// Of what.
        content: Content,
        /// As typed.
        value: f64,
        /// Its unit.
        unit: LabelUnit,
        /// What is possible, in that unit.
        allowed: [f64; 2],
        /// The unit in which the number would be usual, when there is one.
        likely: Option<LabelUnit>,
    },
    /// Outside what such a food holds. The line is kept.
    Unlikely {
        /// Of what.
        content: Content,
        /// As typed.
        value: f64,
        /// Its unit.
        unit: LabelUnit,
        /// What is usual of such a food, in that unit.
        allowed: [f64; 2],
        /// The unit in which the number would be usual, when there is one.
        likely: Option<LabelUnit>,
    },
    /// The unit cannot measure this: a mineral in IU, a vitamin by mass, energy in percent. The line is left out.
    UnitOfOtherSort {
        /// Of what.
        content: Content,
        /// Its unit.
        unit: LabelUnit,
    },
    /// The line cannot be reckoned without this field. It is left out.
    Needs {
        /// Of what.
        content: Content,
        /// Its unit.
        unit: LabelUnit,
        /// What is missing.
        field: LabelField,
    },
    /// A field outside its range; it is taken as not said.
    Field {
        /// Which.
        field: LabelField,
        /// As typed.
        value: f64,
        /// What is allowed.
        allowed: [f64; 2],
    },
    /// The same content twice with different numbers; the first is kept.
    GivenTwice {
        /// Of what.
        content: Content,
    },
    /// A part is more than its whole: starch above sugar and starch, lysine above protein.
    PartOverWhole {
        /// The part.
        part: Content,
        /// Its value in percent as fed.
        value: f64,
        /// The whole.
        whole: Content,
        /// Its value in percent as fed.
        most: f64,
    },
    /// Protein, fibre, sugar and starch together are more than the dry matter of the feed.
    PartsOverWhole {
        /// Their sum in percent as fed.
        sum: f64,
        /// The most, in percent as fed.
        most: f64,
    },
}
