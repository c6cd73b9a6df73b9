//! What came of a lot, as typed: how much, what bales and slices weigh, the price, moisture, how it is stored.

use super::left_of_lot::{self, In, amount};
use super::vet::read_day;
use tussock_core::forage::{
    BaleKind, ForageError, StoredBadly, bales_weighed, judge_heat, judge_moisture, slices_weighed,
};
use tussock_core::log::bodies::base::{Count, Decimal, FeedWeight, Reported};
use tussock_core::log::bodies::{DeliveryV1, HeatV1, HeldV1, LotV1, PriceV1, RodV1, StackTenths};
use tussock_core::log::{LogError, Name};
use tussock_core::units::parse::{MassUnit, ParseError, as_fed, number, temperature};
use tussock_core::units::{AsFed, Bounds, Currency, LocalDate, Money, MoneyError};

/// How bales are made, with the words that stand in a draft.
pub const BALES: [(BaleKind, &str); 3] = [
    (BaleKind::SmallSquare, "small"),
    (BaleKind::Round, "round"),
    (BaleKind::LargeSquare, "large"),
];

/// What spoils hay in store, with the words that stand in a draft.
pub const STORED: [(StoredBadly, &str); 3] = [
    (StoredBadly::OnGround, "ground"),
    (StoredBadly::Uncovered, "uncovered"),
    (StoredBadly::NoAir, "no-air"),
];

/// For what a price is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Per {
    /// A bale.
    Bale,
    /// A tonne.
    Tonne,
}

/// For what a price is, with the words that stand in a draft.
pub const PER: [(Per, &str); 2] = [(Per::Bale, "bale"), (Per::Tonne, "tonne")];

/// What a rod in the stack said, when it was no thermometer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Felt {
    /// It could be held.
    Held,
    /// It was too hot to hold.
    TooHot,
}

/// What a rod said, with the words that stand in a draft.
pub const FELT: [(Felt, &str); 2] = [(Felt::Held, "held"), (Felt::TooHot, "too-hot")];

/// The fields that hold a text, by their names in a draft.
pub const TEXTS: [&str; 11] = [
    "bought",
    "bale-weights",
    "bale-said",
    "slices",
    "price",
    "currency",
    "bought-on",
    "baled-on",
    "moisture",
    "lead",
    "rod",
];

/// What a price may be, in whole units.
const PRICE: Bounds = Bounds::new("price", 0.0, 1e9);

/// What was typed. What was left out stays not known.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Typed {
    /// What the amount is given in.
    pub unit: Option<In>,
    /// How much was bought.
    pub bought: String,
    /// How it is baled.
    pub bale: Option<BaleKind>,
    /// Bales that were weighed, one after the other.
    pub bale_weights: String,
    /// What a bale is said to weigh.
    pub bale_said: String,
    /// Slices that were weighed.
    pub slices: String,
    /// The price.
    pub price: String,
    /// For what.
    pub per: Option<Per>,
    /// Its currency.
    pub currency: String,
    /// The day it was bought.
    pub bought_on: String,
    /// The day it was baled.
    pub baled_on: String,
    /// Moisture in percent.
    pub moisture: String,
    /// What spoils it in store.
    pub stored: Vec<StoredBadly>,
    /// Days from order to delivery.
    pub lead: String,
    /// What a thermometer in the stack reads today.
    pub rod: String,
    /// What a rod without a thermometer felt like today.
    pub felt: Option<Felt>,
}

/// What is wrong with a field.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// How much was bought.
    Bought(left_of_lot::Wrong),
    /// A bale's weight.
    Bale(Bad),
    /// A slice's weight.
    Slice(Bad),
    /// The price.
    Price(Bad),
    /// A price for what?
    NoPer,
    /// The currency.
    Currency(MoneyError),
    /// The day it was bought cannot be read, or is still to come.
    BoughtOn,
    /// The day it was baled cannot be read, or is still to come.
    BaledOn,
    /// Moisture.
    Moisture(Bad),
    /// Days from order to delivery.
    Lead(Bad),
    /// The rod.
    Rod(Bad),
}

/// Why a number was not taken.
#[derive(Clone, Debug, PartialEq)]
pub enum Bad {
    /// It cannot be read.
    Parse(ParseError),
    /// It is not believed.
    Forage(ForageError),
    /// It cannot be stored.
    Log(LogError),
}

impl From<ParseError> for Bad {
    fn from(error: ParseError) -> Self {
        Self::Parse(error)
    }
}
impl From<ForageError> for Bad {
    fn from(error: ForageError) -> Self {
        Self::Forage(error)
    }
}
impl From<LogError> for Bad {
    fn from(error: LogError) -> Self {
        Self::Log(error)
    }
}

/// Weights one after the other, parted by blanks or semicolons: "18.4 19.1; 18.8".
///
/// # Errors
/// One that cannot be read or stored.
pub fn weights(typed: &str) -> Result<Vec<FeedWeight>, Bad> {
    typed
        .split(|c: char| c.is_whitespace() || c == ';')
        .filter(|text| !text.is_empty())
        .map(|text| {
            let read = as_fed(text, MassUnit::Kg)?;
            Ok(FeedWeight::of(read, Some(text.to_owned()))?)
        })
        .collect()
}

fn masses(weights: &[FeedWeight]) -> Vec<AsFed> {
    weights.iter().map(|weight| weight.g.as_fed()).collect()
}

fn is_blank(text: &str) -> bool {
    text.trim().is_empty()
}

impl Typed {
    /// Puts what was typed into the body of a lot. Every field is as it was filled in from what is stored, so that what
    /// was taken out is gone; heat of the stack is added to what was seen before.
    ///
    /// # Errors
    /// Everything that is wrong.
    pub fn into_lot(&self, body: &mut LotV1, today: LocalDate) -> Result<(), Vec<Wrong>> {
        let mut wrong = Vec::new();
        let before = body.delivery.clone();
        let mut delivery = DeliveryV1 {
            bale: self.bale,
            stored: self.stored.clone(),
            heat: before.map(|before| before.heat).unwrap_or_default(),
            ..DeliveryV1::empty()
        };
        if !is_blank(&self.bought) {
            let read = match self.unit {
                Some(unit) => amount(unit, &self.bought),
                None => Err(left_of_lot::Wrong::NoUnit),
            };
            take(read, &mut delivery.bought, Wrong::Bought, &mut wrong);
        }
        match self.bales() {
            Ok(bales) => delivery.bales = bales,
            Err(bad) => wrong.push(Wrong::Bale(bad)),
        }
        match self.slice_weights() {
            Ok(slices) => delivery.slices = slices,
            Err(bad) => wrong.push(Wrong::Slice(bad)),
        }
        if !is_blank(&self.moisture) {
            let read = self.moisture(&delivery);
            take(read, &mut delivery.moisture, Wrong::Moisture, &mut wrong);
        }
        if !is_blank(&self.lead) {
            take(
                days(&self.lead),
                &mut delivery.lead_days,
                Wrong::Lead,
                &mut wrong,
            );
        }
        match past(&self.baled_on, today, Wrong::BaledOn) {
            Ok(day) => delivery.baled_on = day,
            Err(error) => wrong.push(error),
        }
        let bought_on = past(&self.bought_on, today, Wrong::BoughtOn);
        match self.rod() {
            Ok(rod) => delivery
                .heat
                .extend(rod.map(|rod| HeatV1 { on: today, rod })),
            Err(bad) => wrong.push(Wrong::Rod(bad)),
        }
        let price = self.price();
        match (bought_on, price) {
            (Ok(day), Ok(price)) if wrong.is_empty() => {
                body.bought_on = day;
                body.price = price;
                // Nothing said stays nothing stored.
                body.delivery = (delivery != DeliveryV1::empty()).then(|| Box::new(delivery));
                Ok(())
            }
            (day, price) => {
                wrong.extend(day.err());
                wrong.extend(price.err());
                Err(wrong)
            }
        }
    }

    fn bales(&self) -> Result<Vec<FeedWeight>, Bad> {
        let read = weights(&self.bale_weights)?;
        bales_weighed(&masses(&read))?;
        Ok(read)
    }

    fn slice_weights(&self) -> Result<Vec<FeedWeight>, Bad> {
        let read = weights(&self.slices)?;
        slices_weighed(&masses(&read))?;
        Ok(read)
    }

    fn moisture(&self, delivery: &DeliveryV1) -> Result<Reported, Bad> {
        let percent = number(&self.moisture)?;
        let loose = matches!(delivery.bought, Some(HeldV1::Weight { .. })) && self.bale.is_none();
        judge_moisture(percent, self.bale, loose)?;
        Ok(Reported {
            value: Decimal::new(&percent.to_string())?,
            unit: Name::new("%")?,
            typed: Some(self.moisture.trim().to_owned()),
        })
    }

    fn rod(&self) -> Result<Option<RodV1>, Bad> {
        if !is_blank(&self.rod) {
            let read = temperature(&self.rod)?;
            judge_heat(read)?;
            let celsius = StackTenths::of(read)?;
            return Ok(Some(RodV1::Read { celsius }));
        }
        Ok(self.felt.map(|felt| match felt {
            Felt::Held => RodV1::Held {},
            Felt::TooHot => RodV1::TooHot {},
        }))
    }

    fn price(&self) -> Result<Option<PriceV1>, Wrong> {
        let said = self.bale_weight_said()?;
        if is_blank(&self.price) {
            return Ok(None);
        }
        let per = self.per.ok_or(Wrong::NoPer)?;
        let code = self.currency.trim().to_uppercase();
        let currency = Currency::from_code(&code).map_err(Wrong::Currency)?;
        let bad = |error: ParseError| Wrong::Price(error.into());
        let typed = number(&self.price)
            .and_then(|typed| Ok(PRICE.check(typed)?))
            .map_err(bad)?;
        let price = Money::of(typed, currency).map_err(Wrong::Currency)?;
        Ok(Some(match per {
            Per::Tonne => PriceV1::Tonne { price },
            Per::Bale => PriceV1::Bale {
                price,
                weight: said,
            },
        }))
    }

    fn bale_weight_said(&self) -> Result<Option<FeedWeight>, Wrong> {
        let mut read = weights(&self.bale_said).map_err(Wrong::Bale)?;
        bales_weighed(&masses(&read)).map_err(|error| Wrong::Bale(error.into()))?;
        Ok(read.pop())
    }
}

/// The word that stands in a draft for a value; empty for none.
pub fn word_of<T: PartialEq>(words: &[(T, &'static str)], value: Option<T>) -> String {
    let found = value.and_then(|value| words.iter().find(|(held, _)| *held == value));
    found
        .map(|(_, word)| (*word).to_owned())
        .unwrap_or_default()
}

/// The value that a word in a draft stands for.
pub fn of_word<T: Copy>(words: &[(T, &'static str)], word: &str) -> Option<T> {
    let mut all = words.iter();
    all.find(|(_, held)| *held == word).map(|(value, _)| *value)
}

fn take<T, E>(
    read: Result<T, E>,
    into: &mut Option<T>,
    wrong: impl FnOnce(E) -> Wrong,
    all: &mut Vec<Wrong>,
) {
    match read {
        Ok(value) => *into = Some(value),
        Err(error) => all.push(wrong(error)),
    }
}

/// Whole days, rounded up: a delivery that takes a day and a half is there on the second.
fn days(typed: &str) -> Result<Count, Bad> {
    Ok(Count::of(number(typed)?)?)
}

/// A day that is not still to come; nothing typed is no day.
fn past(typed: &str, today: LocalDate, wrong: Wrong) -> Result<Option<LocalDate>, Wrong> {
    if is_blank(typed) {
        return Ok(None);
    }
    match read_day(typed) {
        Some(day) if day <= today => Ok(Some(day)),
        _ => Err(wrong),
    }
}

mod stored;

#[cfg(test)]
mod tests;
