//! What is known of a typical food, number by number, as a person is shown it.

use super::published::PURE;
use super::{Content, TypicalFood};
use crate::limits::{Nutrient, NutrientUnit};
use crate::ration::food::Food;
use crate::ration::published as p;
use crate::sources::{Mark, Published, Work};

/// In what a number of the catalogue is counted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CountedIn {
    /// Percent of the food as fed.
    PercentAsFed,
    /// Percent of dry matter.
    PercentOfDry,
    /// Milligrams in a kilogram of dry matter.
    MgPerKgDry,
    /// International units in a kilogram of dry matter.
    IuPerKgDry,
    /// Megacalories in a kilogram of dry matter.
    McalPerKgDry,
    /// Grams in a kilogram as fed.
    GPerKg,
    /// Milligrams in a kilogram as fed.
    MgPerKg,
    /// International units in a kilogram as fed.
    IuPerKg,
}

/// A number with where it stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct KnownNumber {
    /// The number.
    pub value: f64,
    /// In what it is counted.
    pub unit: CountedIn,
    /// Its publication.
    pub work: Work,
    /// Where in it.
    pub place: &'static str,
    /// How far it can be trusted.
    pub mark: Mark,
}

impl TypicalFood {
    /// What is known of a content, with where it stands; `None` where it is not known. What is not in a single substance is
    /// nothing, and not unknown.
    pub fn known(self, content: Content) -> Option<KnownNumber> {
        match self {
            Self::Balancer => balancer(content),
            _ => stated(self, &self.food(), content),
        }
    }
}

/// A number of the catalogue; of a single substance, what is not in it is nothing and not unknown.
fn stated(food: TypicalFood, made: &Food, content: Content) -> Option<KnownNumber> {
    let unit = on_dry(content);
    if let Some(stated) = food.number(content) {
        return Some(of(stated.row, stated.value, unit));
    }
    let nothing = match content {
        Content::DryMatter => false,
        Content::Energy => made.energy.is_some(),
        Content::NeutralFibre => made.fibre.is_some(),
        Content::SugarStarch => made.sugar_starch.is_some(),
        Content::Starch => made.starch.is_some(),
        Content::Dha => made.dha.is_some(),
        Content::Of(nutrient) => made.per_kg(nutrient).is_some(),
    };
    nothing.then(|| of(&PURE, *PURE, unit))
}

const fn of<T>(row: &Published<T>, value: f64, unit: CountedIn) -> KnownNumber {
    KnownNumber {
        value,
        unit,
        work: row.work,
        place: row.place,
        mark: row.mark,
    }
}

/// In what the catalogue counts a content.
const fn on_dry(content: Content) -> CountedIn {
    match content {
        Content::DryMatter => CountedIn::PercentAsFed,
        Content::Energy => CountedIn::McalPerKgDry,
        Content::NeutralFibre | Content::SugarStarch | Content::Starch | Content::Dha => {
            CountedIn::PercentOfDry
        }
        Content::Of(nutrient) => match nutrient.unit() {
            NutrientUnit::Gram => CountedIn::PercentOfDry,
            NutrientUnit::Milligram => CountedIn::MgPerKgDry,
            NutrientUnit::InternationalUnit => CountedIn::IuPerKgDry,
        },
    }
}

/// A number of the typical balancer, which is from memory and as fed.
fn balancer(content: Content) -> Option<KnownNumber> {
    let (row, unit) = match content {
        Content::DryMatter => (&p::BALANCER_DRY, CountedIn::PercentAsFed),
        Content::SugarStarch => (&p::BALANCER_SUGAR_STARCH, CountedIn::PercentAsFed),
        Content::Energy | Content::NeutralFibre | Content::Starch | Content::Dha => return None,
        Content::Of(nutrient) => (
            match nutrient {
                Nutrient::CrudeProtein => &p::BALANCER_PROTEIN,
                Nutrient::Lysine => &p::BALANCER_LYSINE,
                Nutrient::Calcium => &p::BALANCER_CALCIUM,
                Nutrient::Phosphorus => &p::BALANCER_PHOSPHORUS,
                Nutrient::Copper => &p::BALANCER_COPPER,
                Nutrient::Zinc => &p::BALANCER_ZINC,
                Nutrient::Manganese => &p::BALANCER_MANGANESE,
                Nutrient::Selenium => &p::BALANCER_SELENIUM,
                Nutrient::VitaminE => &p::BALANCER_VITAMIN_E,
                Nutrient::Magnesium
                | Nutrient::Potassium
                | Nutrient::Sodium
                | Nutrient::Chloride
                | Nutrient::Sulphur
                | Nutrient::Iron
                | Nutrient::Iodine
                | Nutrient::Cobalt
                | Nutrient::VitaminA
                | Nutrient::VitaminD
                | Nutrient::Thiamin
                | Nutrient::Riboflavin => return None,
            },
            match nutrient.unit() {
                NutrientUnit::Gram => CountedIn::GPerKg,
                NutrientUnit::Milligram => CountedIn::MgPerKg,
                NutrientUnit::InternationalUnit => CountedIn::IuPerKg,
            },
        ),
    };
    Some(of(row, row.value, unit))
}
