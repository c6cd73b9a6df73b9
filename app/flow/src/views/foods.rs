//! Foods: the yard's own with class and price, the typical ones by class, and what is known of one.

use super::horses::kind_of_limit;
use crate::rows::Range;
use crate::shelf::Shelf;
use tussock_core::animal::FoodId;
use tussock_core::log::bodies::{FoodV2, PriceV1};
use tussock_core::log::{Body, Kind, LogError};
use tussock_core::ration::{Content, FoodClass, KnownNumber, TypicalFood};
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

/// What is known of a content.
#[derive(Clone, Debug, PartialEq)]
pub struct NumberRow {
    /// Of what.
    pub content: Content,
    /// The number; `None` where it is not known.
    pub number: Option<KnownNumber>,
}

/// What is known of a typical food, content by content.
pub fn typical(food: TypicalFood) -> Vec<NumberRow> {
    Content::all()
        .map(|content| NumberRow {
            content,
            number: food.known(content),
        })
        .collect()
}

#[cfg(test)]
mod tests;
