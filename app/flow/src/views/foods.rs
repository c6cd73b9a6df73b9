//! Foods: the yard's own with class and price, the typical ones by class, and what is known of one.

use super::horses::kind_of_limit;
use crate::rows::Range;
use crate::shelf::Shelf;
use tussock_core::animal::FoodId;
use tussock_core::limits::{Nutrient, NutrientUnit};
use tussock_core::log::bodies::{FoodV2, PriceV1};
use tussock_core::log::{Body, Kind, LogError};
use tussock_core::ration::catalogue::published::PURE;
use tussock_core::ration::{Content, Food, FoodClass, TypicalFood, published as p};
use tussock_core::sources::{Mark, Published, Work};
use tussock_core::units::PricePerKg;

/// The most foods of a yard.
const MOST: u32 = 300;

/// What the screens ask the disk for.
pub fn needs() -> Vec<Range> {
    [Kind::Yard, Kind::Food, Kind::Lot]
        .iter()
        .map(|kind| kind_of_limit(kind, MOST))
        .collect()
}

/// Where the numbers of a food come from.
#[derive(Clone, Debug, PartialEq)]
pub enum Numbers {
    /// A label with so many lines.
    Label(usize),
    /// A typical food stands in.
    Typical(TypicalFood),
    /// Nothing was typed.
    NotKnown,
    /// What is stored cannot be reckoned with.
    Wrong(LogError),
}

/// A food of the yard as a row.
#[derive(Clone, Debug, PartialEq)]
pub struct FoodRow {
    /// Which.
    pub id: FoodId,
    /// Its name.
    pub name: String,
    /// What it is.
    pub class: FoodClass,
    /// What a kilogram costs; `None` while pack or price is not known.
    pub price: Option<PricePerKg>,
    /// Where its numbers come from.
    pub numbers: Numbers,
}

/// The foods of the yard, by name.
pub fn own(shelf: &Shelf) -> Vec<FoodRow> {
    let mut rows: Vec<FoodRow> = shelf
        .bodies(&Kind::Food)
        .into_iter()
        .filter_map(|(record, body)| {
            let Body::Food(body) = body else {
                return None;
            };
            let numbers = match body.food(&record.id) {
                Err(error) => Numbers::Wrong(error),
                Ok(Some(food)) => match food.profile.filter(|_| food.typical) {
                    Some(typical) => Numbers::Typical(typical),
                    None => Numbers::Label(body.label.len()),
                },
                Ok(None) => Numbers::NotKnown,
            };
            Some(FoodRow {
                id: FoodId(record.id.0.clone()),
                name: body.name.as_str().to_owned(),
                class: body.class,
                price: body.price_per_kg(),
                numbers,
            })
        })
        .collect();
    rows.sort_by(|a, b| (a.name.to_lowercase(), &a.id).cmp(&(b.name.to_lowercase(), &b.id)));
    rows
}

/// A food of the yard; `None` where it is not there or cannot be read.
pub fn one(shelf: &Shelf, id: &FoodId) -> Option<FoodV2> {
    let record = shelf.records().find(|record| record.id.0 == id.0)?;
    match Body::read(record) {
        Ok(Body::Food(body)) => Some(body),
        _ => None,
    }
}

/// The typical foods by class, in the order in which a person is asked; classes without one are left out.
pub fn catalogue() -> Vec<(FoodClass, Vec<TypicalFood>)> {
    FoodClass::ALL
        .iter()
        .map(|class| {
            let foods = TypicalFood::ALL.iter().copied();
            (
                *class,
                foods.filter(|food| food.class() == *class).collect(),
            )
        })
        .filter(|(_, foods): &(_, Vec<_>)| !foods.is_empty())
        .collect()
}

/// The currency that is offered for a price: the yard's, else that of what was bought last; empty where nobody said.
pub fn currency(shelf: &Shelf) -> String {
    let yard = shelf
        .bodies(&Kind::Yard)
        .into_iter()
        .find_map(|(_, body)| match body {
            Body::Yard(yard) => Some(yard.currency?.as_str().to_owned()),
            _ => None,
        });
    let bought = || {
        let foods = shelf.bodies(&Kind::Food).into_iter();
        foods
            .chain(shelf.bodies(&Kind::Lot))
            .find_map(|(_, body)| match body {
                Body::Food(food) => Some(food.price?.currency.code()),
                Body::Lot(lot) => Some(match lot.price? {
                    PriceV1::Bale { price, .. } | PriceV1::Tonne { price } => price.currency.code(),
                }),
                _ => None,
            })
    };
    yard.or_else(bought).unwrap_or_default()
}

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
#[derive(Clone, Debug, PartialEq)]
pub struct Number {
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

/// What is known of a content.
#[derive(Clone, Debug, PartialEq)]
pub struct NumberRow {
    /// Of what.
    pub content: Content,
    /// The number; `None` where it is not known.
    pub number: Option<Number>,
}

/// What is known of a typical food, content by content.
pub fn typical(food: TypicalFood) -> Vec<NumberRow> {
    let made = food.food();
    Content::all()
        .map(|content| NumberRow {
            content,
            number: match food {
                TypicalFood::Balancer => balancer(content),
                _ => stated(food, &made, content),
            },
        })
        .collect()
}

/// A number of the catalogue; of a single substance, what is not in it is nothing and not unknown.
fn stated(food: TypicalFood, made: &Food, content: Content) -> Option<Number> {
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

const fn of<T>(row: &Published<T>, value: f64, unit: CountedIn) -> Number {
    Number {
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
fn balancer(content: Content) -> Option<Number> {
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

#[cfg(test)]
mod tests;
