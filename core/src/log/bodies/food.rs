//! A food other than forage, with its label as typed.

#[cfg(test)]
mod tests;

use super::base::{FeedWeight, Reported};
use super::reported::{percent, rate_g_per_kg};
use crate::animal::FoodId;
use crate::limits::{Nutrient, NutrientUnit};
use crate::log::error::{Allowed, LogError, Path};
use crate::log::stored::{Name, Stored, choice, text, twin};
use crate::ration::{
    self, Content, Food, FoodClass, LabelField, LabelFinding, LabelLine, LabelUnit, RationError,
    RawLabel, check_label,
};
use crate::sources::RecordId;
use crate::units::{Bounds, DryFraction, Money, OutOfRange};
use serde_json::Value;

choice! {
    /// What a food is for.
    FoodUse {
        /// A balancer: little of it, with the minerals a hay lacks.
        Balancer = "balancer",
        /// A mineral mix or lick.
        Mineral = "mineral",
        /// Salt.
        Salt = "salt",
        /// Oil or fat.
        Oil = "oil",
        /// Fibre in a bucket: beet pulp, chaff, fibre cubes.
        Fibre = "fibre",
        /// A compound feed.
        Compound = "compound",
        /// Anything else.
        Other = "other",
    }
}
impl FoodUse {
    /// The class a ration judges it by. Fibre whose kind nobody said is not taken for lucerne.
    pub const fn class(self) -> FoodClass {
        match self {
            Self::Balancer => FoodClass::Balancer,
            Self::Mineral => FoodClass::MineralMix,
            Self::Salt => FoodClass::Source,
            Self::Oil => FoodClass::Fat,
            Self::Fibre => FoodClass::Fibre,
            Self::Compound => FoodClass::Compound,
            Self::Other => FoodClass::Other,
        }
    }
}
choice! {
    /// What the shares on a label are of.
    LabelBasis {
        /// Of the feed as it lies in the bag.
        AsFed = "as_fed",
        /// Of dry matter.
        DryMatter = "dry_matter",
    }
}

/// What a line of a label says, as far as it is reckoned with.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LabelContent {
    /// A nutrient.
    Nutrient(Nutrient),
    /// Sugar and starch together.
    SugarStarch,
    /// Starch alone.
    Starch,
}

/// The words of the contents.
const CONTENTS: &[&str] = &[
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
    "sugar_starch",
    "starch",
];

impl LabelContent {
    /// The same, as the room of rations says it.
    pub const fn content(self) -> Content {
        match self {
            Self::Nutrient(nutrient) => Content::Of(nutrient),
            Self::SugarStarch => Content::SugarStarch,
            Self::Starch => Content::Starch,
        }
    }
}

impl Stored for LabelContent {
    fn read(value: Option<&Value>, path: &Path<'_>) -> Result<Self, LogError> {
        let word = text(value, path)?;
        match word {
            "sugar_starch" => Ok(Self::SugarStarch),
            "starch" => Ok(Self::Starch),
            _ => Nutrient::ALL
                .into_iter()
                .find(|nutrient| nutrient.key() == word)
                .map(Self::Nutrient)
                .ok_or_else(|| path.refuse(word, Allowed::OneOf(CONTENTS))),
        }
    }

    fn write(&self) -> Option<Value> {
        Some(Value::from(match self {
            Self::Nutrient(nutrient) => nutrient.key(),
            Self::SugarStarch => "sugar_starch",
            Self::Starch => "starch",
        }))
    }
}

twin! {
    /// A line of a label.
    LabelLineV1 {
        /// What it says; `None` for a line that is kept and not reckoned with.
        content: Option<LabelContent>,
        /// The name as printed.
        name: Option<Name>,
        /// The value as printed.
        reported: Reported,
    }
}
twin! {
    /// A food other than forage.
    FoodV1 {
        /// Its name, as the person calls it.
        name: Name,
        /// What it is for.
        food_use: FoodUse,
        /// What the shares on its label are of.
        basis: LabelBasis,
        /// Its dry matter, when the label says it.
        dry_matter: Option<Reported>,
        /// The label; empty when nobody typed it, and then a typical profile stands in, marked as such.
        label: Vec<LabelLineV1>,
        /// How much the label says to feed a day, in `g/kg` or `g/100kg` of body weight.
        rate: Option<Reported>,
        /// What a pack weighs.
        pack: Option<FeedWeight>,
        /// What a pack costs.
        price: Option<Money>,
    }
}

/// The units in which a line of a label is understood; those of a serving stand on no record, for none keeps its weight.
const LABEL_UNITS: &[&str] = &[
    "%", "g/100g", "g/kg", "mg/kg", "ppm", "ug/kg", "IU/kg", "g/100kg", "mg/100kg", "ug/100kg",
    "IU/100kg",
];

impl FoodV1 {
    /// The label as it was typed, for [`check_label`]: what cannot be is found there, line by line.
    ///
    /// Errors: a unit that is not understood, with its field.
    pub fn raw_label(&self, id: &RecordId) -> Result<RawLabel, LogError> {
        let record = Path::Record(id.0.as_str());
        let body = record.key("body");
        let dry_percent = match &self.dry_matter {
            Some(reported) => Some(percent(reported, &body.key("dry_matter"))?),
            None => None,
        };
        let rate_g_per_kg = match &self.rate {
            Some(reported) => Some(rate_g_per_kg(reported, &body.key("rate"))?),
            None => None,
        };
        let label_path = body.key("label");
        let mut lines = Vec::new();
        for (index, line) in self.label.iter().enumerate() {
            let Some(content) = line.content else {
                continue;
            };
            let word = line.reported.unit.as_str();
            let line_path = label_path.index(index);
            let path = line_path.key("reported");
            let unit = LABEL_UNITS
                .contains(&word)
                .then(|| LabelUnit::from_word(word))
                .flatten()
                .ok_or_else(|| path.key("unit").refuse(word, Allowed::OneOf(LABEL_UNITS)))?;
            lines.push(LabelLine {
                content: content.content(),
                value: line.reported.value.number(),
                unit,
            });
        }
        Ok(RawLabel {
            id: Some(FoodId(id.0.clone())),
            name: self.name.as_str().to_owned(),
            class: self.food_use.class(),
            basis: match self.basis {
                LabelBasis::AsFed => ration::LabelBasis::AsFed,
                LabelBasis::DryMatter => ration::LabelBasis::DryMatter,
            },
            dry_percent,
            serving_g: None,
            rate_g_per_kg,
            lines,
            record: Some(id.clone()),
        })
    }

    /// The food behind a record; `None` when no label was typed, so that a typical profile may stand in.
    ///
    /// Errors: a unit that is not understood or cannot measure its line, a line that lacks the label's dry matter or rate,
    /// a number that cannot be; each with its field. What is only unlikely is no error, see [`Self::raw_label`].
    pub fn food(&self, id: &RecordId) -> Result<Option<Food>, LogError> {
        if self.label.is_empty() {
            return Ok(None);
        }
        let record = Path::Record(id.0.as_str());
        let body = record.key("body");
        let (read, findings) = check_label(&self.raw_label(id)?);
        for finding in findings {
            self.refuse(finding, &body)?;
        }
        Food::read(read)
            .map(Some)
            .map_err(|error| LogError::OutOfRange {
                place: body.place(),
                range: match error {
                    RationError::OutOfRange(range) => range,
                    RationError::Content { nutrient, value } => OutOfRange {
                        bounds: Bounds::new(nutrient.key(), 0.0, f64::MAX),
                        value,
                    },
                },
            })
    }

    /// Refuses what leaves a line or a field out of the food.
    fn refuse(&self, finding: LabelFinding, body: &Path<'_>) -> Result<(), LogError> {
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
                let of_it = |line: &LabelLineV1| {
                    line.content.map(LabelContent::content) == Some(content)
                        && LabelUnit::from_word(line.reported.unit.as_str()) == Some(unit)
                };
                let index = self.label.iter().position(of_it).unwrap_or_default();
                let allowed = match content {
                    Content::Of(nutrient) if nutrient.unit() == NutrientUnit::InternationalUnit => {
                        IU_WORDS
                    }
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
}

/// The units of what is counted in international units.
const IU_WORDS: &[&str] = &["IU/kg", "IU/100kg"];
/// The units of what is counted by mass.
const MASS_WORDS: &[&str] = &[
    "%", "g/100g", "g/kg", "mg/kg", "ppm", "ug/kg", "g/100kg", "mg/100kg", "ug/100kg",
];
