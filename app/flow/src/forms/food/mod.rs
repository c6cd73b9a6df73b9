//! A food of the yard's own: what it is, its label as typed, its pack and price.

mod checked;
mod fields;
mod lines;
#[cfg(test)]
mod tests;

pub use checked::Checked;
pub use lines::{LineTyped, LineWrong, lines_of, lines_text};

use crate::acts::{Act, New};
use fields::{grams, kilograms, plain, rate_text, serving, weight};
use tussock_core::animal::FoodId;
use tussock_core::log::bodies::base::{FeedWeight, Reported};
use tussock_core::log::bodies::{FoodV2, LabelBasis};
use tussock_core::log::{Body, Known, LogError, Name, Subject};
use tussock_core::ration::{FoodClass, LabelFinding, TypicalFood};
use tussock_core::sources::RecordId;
use tussock_core::units::parse::{MassUnit, ParseError, as_fed, number};
use tussock_core::units::{Bounds, Currency, Money, MoneyError, PricePerKg};

/// The classes with the words that stand in a draft.
pub const CLASSES: [(FoodClass, &str); 10] = [
    (FoodClass::Balancer, "balancer"),
    (FoodClass::MineralMix, "mineral-mix"),
    (FoodClass::Source, "source"),
    (FoodClass::Fibre, "fibre"),
    (FoodClass::Legume, "legume"),
    (FoodClass::Compound, "compound"),
    (FoodClass::Cereal, "cereal"),
    (FoodClass::Protein, "protein"),
    (FoodClass::Fat, "fat"),
    (FoodClass::Other, "other"),
];

/// The bases with the words that stand in a draft.
pub const BASES: [(LabelBasis, &str); 2] = [
    (LabelBasis::AsFed, "as-fed"),
    (LabelBasis::DryMatter, "dry"),
];

/// What a price may be, in whole units.
const PRICE: Bounds = Bounds::new("price", 0.0, 1e6);

/// A field that holds a number or a word.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Field {
    /// The name.
    Name,
    /// Dry matter in percent.
    Dry,
    /// What a serving weighs.
    Serving,
    /// How much to feed, in grams for 100 kg of body weight.
    Rate,
    /// What a scoop weighs.
    Scoop,
    /// What a pack weighs.
    Pack,
    /// What a pack costs.
    Price,
    /// In which currency.
    Currency,
}

/// What is wrong.
#[derive(Clone, Debug, PartialEq)]
pub enum Wrong {
    /// No name.
    NoName,
    /// No class.
    NoClass,
    /// Lines of a label without what they are shares of.
    NoBasis,
    /// A field.
    Parse(Field, ParseError),
    /// The currency or the price.
    Money(MoneyError),
    /// A line, by its place.
    Line(usize, LineWrong),
    /// The label cannot be as it stands; which line it is, where it is one.
    Label(Option<usize>, LabelFinding),
    /// It cannot be stored.
    Log(LogError),
}

impl Wrong {
    /// The field it stands under; `None` for one of the class, the basis, a line or the whole.
    pub const fn field(&self) -> Option<Field> {
        match self {
            Self::NoName => Some(Field::Name),
            Self::Parse(field, _) => Some(*field),
            Self::Money(_) => Some(Field::Currency),
            Self::NoClass | Self::NoBasis | Self::Line(..) | Self::Label(..) | Self::Log(_) => None,
        }
    }
}

/// What is typed.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Typed {
    /// The name.
    pub name: String,
    /// What it is.
    pub class: Option<FoodClass>,
    /// The typical food whose numbers stand in while no label is typed.
    pub profile: Option<TypicalFood>,
    /// What the label's shares are of.
    pub basis: Option<LabelBasis>,
    /// Dry matter in percent.
    pub dry: String,
    /// What a serving weighs; a bare number is grams.
    pub serving: String,
    /// Grams for 100 kg of body weight a day.
    pub rate: String,
    /// What a scoop weighs; a bare number is grams.
    pub scoop: String,
    /// What a pack weighs; a bare number is kilograms.
    pub pack: String,
    /// What it costs.
    pub price: String,
    /// In which currency.
    pub currency: String,
    /// The label.
    pub lines: Vec<LineTyped>,
}

impl Typed {
    /// What is stored, as the form shows it.
    pub fn of(body: &FoodV2) -> Self {
        let weight = |held: &Option<FeedWeight>, unit: &str, of_kg: f64| {
            held.as_ref().map_or_else(String::new, |held| {
                let plain = || format!("{} {unit}", held.g.as_fed().to_kg() * of_kg);
                held.typed.clone().unwrap_or_else(plain)
            })
        };
        let text = |reported: &Reported| {
            let plain = || format!("{} {}", reported.value.digits(), reported.unit.as_str());
            reported.typed.clone().unwrap_or_else(plain)
        };
        Self {
            name: body.name.as_str().to_owned(),
            class: Some(body.class),
            profile: body.profile,
            basis: body.has_label().then_some(body.basis),
            dry: body
                .dry_matter
                .as_ref()
                .map(|dry| dry.value.digits().to_owned())
                .unwrap_or_default(),
            serving: body.serving.as_ref().map(text).unwrap_or_default(),
            rate: body.rate.as_ref().map(rate_text).unwrap_or_default(),
            scoop: weight(&body.scoop, "g", 1000.0),
            pack: weight(&body.pack, "kg", 1.0),
            price: body.price.map(Money::typed).unwrap_or_default(),
            currency: body
                .price
                .map(|price| price.currency.code())
                .unwrap_or_default(),
            lines: body.label.iter().filter_map(LineTyped::of).collect(),
        }
    }

    /// The lines in which something was typed, each with its place.
    fn typed_lines(&self) -> impl Iterator<Item = (usize, &LineTyped)> {
        self.lines
            .iter()
            .enumerate()
            .filter(|(_, line)| !line.is_blank())
    }

    /// Whether a label is being typed.
    pub fn has_label(&self) -> bool {
        self.typed_lines().next().is_some()
    }

    /// The price of a kilogram, as far as it can be read.
    pub fn price_per_kg(&self) -> Option<PricePerKg> {
        let pack = as_fed(&self.pack, MassUnit::Kg).ok()?;
        self.money().ok().flatten()?.per_kg(pack)
    }

    fn money(&self) -> Result<Option<Money>, Wrong> {
        if self.price.trim().is_empty() {
            return Ok(None);
        }
        let typed = number(&self.price)
            .and_then(|typed| Ok(PRICE.check(typed)?))
            .map_err(|error| Wrong::Parse(Field::Price, error))?;
        let code = self.currency.trim().to_uppercase();
        Currency::from_code(&code)
            .and_then(|currency| Money::of(typed, currency))
            .map(Some)
            .map_err(Wrong::Money)
    }

    /// The body of the record, laid over what it said before: lines that are kept and not reckoned with stay.
    ///
    /// # Errors
    /// Everything that is wrong.
    pub fn body(&self, before: Option<&FoodV2>) -> Result<FoodV2, Vec<Wrong>> {
        let mut wrong = Vec::new();
        let name = if self.name.trim().is_empty() {
            wrong.push(Wrong::NoName);
            None
        } else {
            note(Name::new(self.name.trim()).map_err(Wrong::Log), &mut wrong)
        };
        if self.class.is_none() {
            wrong.push(Wrong::NoClass);
        }
        let dry_matter = note(plain(&self.dry, "%", Field::Dry), &mut wrong).flatten();
        let rate = note(plain(&self.rate, "g/100kg", Field::Rate), &mut wrong).flatten();
        let serving = note(serving(&self.serving), &mut wrong).flatten();
        let scoop = note(weight(&self.scoop, Field::Scoop, grams), &mut wrong).flatten();
        let pack = note(weight(&self.pack, Field::Pack, kilograms), &mut wrong).flatten();
        let price = note(self.money(), &mut wrong).flatten();
        let mut label = Vec::new();
        for (at, line) in self.typed_lines() {
            match line.stored() {
                Ok(line) => label.push(line),
                Err(faults) => wrong.extend(faults.into_iter().map(|fault| Wrong::Line(at, fault))),
            }
        }
        if self.has_label() && self.basis.is_none() {
            wrong.push(Wrong::NoBasis);
        }
        let out = self.checked().findings.into_iter();
        wrong.extend(
            out.filter(|(_, finding)| checked::leaves_out(finding))
                .map(|(at, finding)| Wrong::Label(at, finding)),
        );
        let kept = before
            .map(|before| before.label.as_slice())
            .unwrap_or_default();
        label.extend(kept.iter().filter(|line| line.content.is_none()).cloned());
        match (name, self.class) {
            (Some(name), Some(class)) if wrong.is_empty() => Ok(FoodV2 {
                name,
                class,
                profile: self.profile,
                basis: self.basis.unwrap_or(LabelBasis::AsFed),
                dry_matter,
                serving,
                label,
                rate,
                scoop,
                pack,
                price,
            }),
            _ => Err(wrong),
        }
    }

    /// The act that writes it: a new food, or a new version of one.
    ///
    /// # Errors
    /// Everything that is wrong.
    pub fn act(
        &self,
        yard: &Subject,
        id: &FoodId,
        before: Option<&FoodV2>,
    ) -> Result<Act, Vec<Wrong>> {
        let body = self.body(before)?;
        Ok(match before {
            Some(_) => Act::Change {
                id: RecordId(id.0.clone()),
                body: Body::Food(body),
                at: None,
            },
            None => add(yard, id, body),
        })
    }
}

/// The act that takes a typical food into the shed under a name: its numbers stand in until a label is typed.
///
/// # Errors
/// A name that cannot be stored.
pub fn take(food: TypicalFood, name: &str, yard: &Subject, id: &FoodId) -> Result<Act, LogError> {
    let body = FoodV2::typical(Name::new(name)?, food);
    Ok(add(yard, id, body))
}

fn add(yard: &Subject, id: &FoodId, body: FoodV2) -> Act {
    Act::Add(New {
        id: RecordId(id.0.clone()),
        subject: yard.clone(),
        at: None,
        known: Known::Seen,
        body: Body::Food(body),
    })
}

fn note<T>(read: Result<T, Wrong>, wrong: &mut Vec<Wrong>) -> Option<T> {
    read.map_err(|error| wrong.push(error)).ok()
}
