//! A food other than forage, with its label as typed.

use super::base::{FeedWeight, Reported};
use super::reported::{MG_PER_KG_IN_PERCENT, percent, rate_g_per_kg};
use crate::animal::FoodId;
use crate::limits::{Nutrient, NutrientUnit};
use crate::log::error::{Allowed, LogError, Path};
use crate::log::stored::{Name, Stored, choice, text, twin};
use crate::ration::{Food, FoodClass, FoodLabel, RationError};
use crate::sources::RecordId;
use crate::units::{Bounds, Money, OutOfRange};
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

/// Grams in a kilogram that make a percent.
const G_PER_KG_IN_PERCENT: f64 = 10.0;
/// The unit of the vitamins that are counted in international units.
const IU_WORDS: &[&str] = &["IU/kg"];

impl FoodV1 {
    /// The food behind a record; `None` when no label was typed, so that a typical profile may stand in.
    ///
    /// Errors: a unit that is not understood, a label on dry matter that does not say its dry matter, and those of
    /// [`Food::read`]; each with its field.
    pub fn food(&self, id: &RecordId) -> Result<Option<Food>, LogError> {
        if self.label.is_empty() {
            return Ok(None);
        }
        let record = Path::Record(id.0.as_str());
        let body = record.key("body");
        let dry_path = body.key("dry_matter");
        let dry_percent = match &self.dry_matter {
            Some(reported) => Some(percent(reported, &dry_path)?),
            None => None,
        };
        // What turns a content of the label's basis into one as fed.
        let part = match (self.basis, dry_percent) {
            (LabelBasis::AsFed, _) => 1.0,
            (LabelBasis::DryMatter, Some(dry)) => dry / 100.0,
            (LabelBasis::DryMatter, None) => return Err(dry_path.missing()),
        };
        let rate_path = body.key("rate");
        let rate = match &self.rate {
            Some(reported) => Some(rate_g_per_kg(reported, &rate_path)?),
            None => None,
        };
        let label_path = body.key("label");
        let mut read = FoodLabel {
            id: Some(FoodId(id.0.clone())),
            name: self.name.as_str().to_owned(),
            class: self.food_use.class(),
            dry_percent,
            per_kg: Vec::new(),
            energy_mcal_per_kg: None,
            fibre_percent: None,
            dha_percent: None,
            sugar_starch_percent: None,
            starch_percent: None,
            rate_g_per_kg: rate,
            record: Some(id.clone()),
        };
        for (index, line) in self.label.iter().enumerate() {
            let line_path = label_path.index(index);
            let path = line_path.key("reported");
            match line.content {
                None => {}
                Some(LabelContent::SugarStarch) => {
                    read.sugar_starch_percent = Some(percent(&line.reported, &path)? * part);
                }
                Some(LabelContent::Starch) => {
                    read.starch_percent = Some(percent(&line.reported, &path)? * part);
                }
                Some(LabelContent::Nutrient(nutrient)) => {
                    let value = in_own_unit(nutrient, &line.reported, &path)?;
                    read.per_kg.push((nutrient, value * part));
                }
            }
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
}

/// A content in a kilogram, in the unit the nutrient is shown in.
fn in_own_unit(nutrient: Nutrient, reported: &Reported, path: &Path<'_>) -> Result<f64, LogError> {
    match nutrient.unit() {
        NutrientUnit::Gram => Ok(percent(reported, path)? * G_PER_KG_IN_PERCENT),
        NutrientUnit::Milligram => Ok(percent(reported, path)? * MG_PER_KG_IN_PERCENT),
        NutrientUnit::InternationalUnit if reported.unit.as_str() == "IU/kg" => {
            Ok(reported.value.number())
        }
        NutrientUnit::InternationalUnit => Err(path
            .key("unit")
            .refuse(reported.unit.as_str(), Allowed::OneOf(IU_WORDS))),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::log::bodies::base::Decimal;

    fn line(content: LabelContent, value: &str, unit: &str) -> LabelLineV1 {
        LabelLineV1 {
            content: Some(content),
            name: None,
            reported: Reported {
                value: Decimal::new(value).unwrap(),
                unit: Name::new(unit).unwrap(),
                typed: None,
            },
        }
    }

    fn balancer(basis: LabelBasis, label: Vec<LabelLineV1>) -> FoodV1 {
        FoodV1 {
            name: Name::new("Balancer").unwrap(),
            food_use: FoodUse::Balancer,
            basis,
            dry_matter: None,
            label,
            rate: None,
            pack: None,
            price: None,
        }
    }

    #[test]
    fn every_content_has_its_word() {
        let nutrients = Nutrient::ALL.map(Nutrient::key);
        let words = [nutrients.as_slice(), &["sugar_starch", "starch"]].concat();
        assert_eq!(CONTENTS, words);
        for word in CONTENTS {
            let value = Value::from(*word);
            let read = LabelContent::read(Some(&value), &Path::Root).unwrap();
            assert_eq!(read.write(), Some(value));
        }
    }

    #[test]
    fn a_label_is_read_in_its_own_units() {
        let id = RecordId("balancer".to_owned());
        let label = vec![
            line(LabelContent::Nutrient(Nutrient::Calcium), "3.2", "%"),
            line(LabelContent::Nutrient(Nutrient::Copper), "400", "mg/kg"),
            line(LabelContent::Nutrient(Nutrient::VitaminE), "2500", "IU/kg"),
            line(LabelContent::SugarStarch, "14", "%"),
        ];
        let food = balancer(LabelBasis::AsFed, label.clone())
            .food(&id)
            .unwrap()
            .unwrap();
        for (nutrient, value) in [
            (Nutrient::Calcium, 32.0),
            (Nutrient::Copper, 400.0),
            (Nutrient::VitaminE, 2500.0),
        ] {
            assert_eq!(food.per_kg(nutrient), Some(nutrient.amount(value)));
        }
        assert!((food.sugar_starch.unwrap().to_percent() - 14.0).abs() < 1e-12);
        assert!(!food.typical);
        // On dry matter nothing can be said without the dry matter.
        let error = balancer(LabelBasis::DryMatter, label)
            .food(&id)
            .unwrap_err();
        assert_eq!(error.place().unwrap().field, "body.dry_matter");
        let none = balancer(LabelBasis::AsFed, Vec::new()).food(&id).unwrap();
        assert_eq!(none, None);
        let cups = vec![line(
            LabelContent::Nutrient(Nutrient::VitaminA),
            "1",
            "mg/kg",
        )];
        let error = balancer(LabelBasis::AsFed, cups).food(&id).unwrap_err();
        assert_eq!(error.place().unwrap().field, "body.label[0].reported.unit");
    }
}
