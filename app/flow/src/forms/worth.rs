//! Does a laboratory test of a lot pay? What the records say, what was typed, and the answer. Nothing is written.

use crate::shelf::Shelf;
use crate::views::hay::strictest;
use tussock_core::animal::LotId;
use tussock_core::forage::{
    Belief, Fed, ForageError, ForageKind, Otherwise, Price, TestedPrice, WayOut, Worth, WorthFor,
    estimate, judge, worth_of_test,
};
use tussock_core::limits::{Ends, sugar_limits};
use tussock_core::log::Body;
use tussock_core::soak::{Recipe, Water, dry_loss};
use tussock_core::units::parse::{MassUnit, ParseError, as_fed, number};
use tussock_core::units::{AsFed, Currency, DryFraction, Money, ShareOfDm};

/// The currencies that are offered; any other is that of the lot's own price.
pub const CURRENCIES: [&str; 3] = ["GBP", "EUR", "USD"];

/// Why the question is not asked of a lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotAsked {
    /// No animal here needs a sugar limit.
    NoLimit,
    /// A test of it as it comes is no way out: it is within its limit, or tested already.
    Settled,
    /// It is haylage: it is not soaked, and passing is not enough for an animal at risk.
    Haylage,
    /// Its dry matter or its sugar is not known well enough.
    NotKnown,
}

/// What the records say of a lot for the question.
#[derive(Clone, Debug, PartialEq)]
pub struct About {
    /// Its name.
    pub name: String,
    /// Its dry matter.
    pub dry: DryFraction,
    /// What is believed of its sugar.
    pub believed: Belief,
    /// The limit for the strictest animal here.
    pub limit: ShareOfDm,
    /// Whether soaked hay that is not proven is enough for it.
    pub soaking_is_enough: bool,
    /// What it cost.
    pub price: Option<Price>,
}

impl About {
    /// The currency of what the lot cost.
    pub fn currency(&self) -> Option<Currency> {
        self.price.map(|price| match price {
            Price::Tonne(money) | Price::Bale { price: money, .. } => money.currency,
        })
    }
}

/// What the records say; the outer `None` when the lot is not there.
pub fn about(shelf: &Shelf, id: &LotId) -> Option<Result<About, NotAsked>> {
    let record = shelf.get(id.as_str()).filter(|record| !record.gone)?;
    let Ok(Body::Lot(body)) = Body::read(record) else {
        return None;
    };
    let Ok((lot, _)) = body.lot(&record.id) else {
        return Some(Err(NotAsked::NotKnown));
    };
    Some(match sugar_limits(strictest(shelf)) {
        None => Err(NotAsked::NoLimit),
        Some(_) if lot.class.kind() != ForageKind::Hay => Err(NotAsked::Haylage),
        Some(limits) => {
            let judged = judge(&estimate(&lot, Fed::Dry), &limits);
            if judged.ways_out.contains(&WayOut::Test) {
                match (judged.belief, lot.dry_matter()) {
                    (Some(believed), Some(dry)) => Ok(About {
                        name: lot.name.clone(),
                        dry: dry.value,
                        believed,
                        limit: judged.limit,
                        soaking_is_enough: !limits.doubt_counts_against,
                        price: lot.price,
                    }),
                    _ => Err(NotAsked::NotKnown),
                }
            } else {
                Err(NotAsked::Settled)
            }
        }
    })
}

/// A field.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Asked {
    /// How much there is.
    Batch,
    /// How much is fed a day.
    ADay,
    /// What the test costs.
    Test,
    /// What a tonne of this hay costs.
    Hay,
    /// What a tonne of tested hay costs.
    Tested,
    /// Minutes a day for soaking.
    Minutes,
    /// What an hour is worth.
    Hour,
}

impl Asked {
    /// All of them, in the order of the screen.
    pub const ALL: [Self; 7] = [
        Self::Batch,
        Self::ADay,
        Self::Minutes,
        Self::Test,
        Self::Hay,
        Self::Tested,
        Self::Hour,
    ];

    /// Its key in the draft.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Batch => "batch",
            Self::ADay => "a-day",
            Self::Test => "test",
            Self::Hay => "hay",
            Self::Tested => "tested",
            Self::Minutes => "minutes",
            Self::Hour => "hour",
        }
    }

    /// Whether there is no answer without it.
    pub const fn is_needed(self) -> bool {
        matches!(self, Self::Batch | Self::ADay | Self::Test | Self::Minutes)
    }
}

/// What was typed.
#[derive(Clone, Debug, PartialEq)]
pub struct Typed {
    /// The raw text of each field, in the order of [`Asked::ALL`].
    pub texts: [String; 7],
    /// The currency of every price.
    pub currency: Option<Currency>,
    /// What becomes of this hay when tested hay is bought.
    pub instead: Otherwise,
}

/// What there is to say.
#[derive(Clone, Debug, PartialEq)]
pub struct Answered {
    /// The answer; `None` while something that is needed is not typed, or cannot be read.
    pub worth: Option<Result<Worth, ForageError>>,
    /// What cannot be read.
    pub wrong: Vec<(Asked, ParseError)>,
}

impl Typed {
    fn text(&self, asked: Asked) -> &str {
        Asked::ALL
            .iter()
            .zip(&self.texts)
            .find(|(field, _)| **field == asked)
            .map_or("", |(_, text)| text.trim())
    }

    /// The answer from what was typed and what the records say. A field left empty is not known, never nothing.
    pub fn answer(&self, about: &About) -> Answered {
        let mut wrong = Vec::new();
        let mut read = |asked: Asked, reads: fn(&str) -> Result<f64, ParseError>| {
            let text = self.text(asked);
            if text.is_empty() {
                return None;
            }
            reads(text).map_err(|error| wrong.push((asked, error))).ok()
        };
        let kg = |text: &str| as_fed(text, MassUnit::Kg).map(AsFed::to_kg);
        let batch = read(Asked::Batch, kg);
        let a_day = read(Asked::ADay, kg);
        let minutes = read(Asked::Minutes, number);
        let test = read(Asked::Test, number);
        let hay = read(Asked::Hay, number);
        let tested = read(Asked::Tested, number);
        let hour = read(Asked::Hour, number);
        let worth = || {
            let currency = self.currency?;
            let money = |amount: f64| Money::nearest(amount * MINOR, currency);
            let priced = |amount: Option<f64>| amount.and_then(money);
            Some(worth_of_test(&WorthFor {
                batch: AsFed::kg(batch?),
                a_day: AsFed::kg(a_day?),
                dry: about.dry,
                believed: about.believed,
                limit: about.limit,
                test: money(test?)?,
                hay: priced(hay).map(Price::Tonne),
                tested: priced(tested)
                    .map(|money| TestedPrice::Sold(Price::Tonne(money), about.dry)),
                instead: self.instead,
                soak_minutes: minutes?,
                hour: priced(hour),
                washed_out: washed_out(),
                soaking_is_enough: about.soaking_is_enough,
            }))
        };
        let worth = if wrong.is_empty() { worth() } else { None };
        Answered { worth, wrong }
    }
}

/// Minor units in one of the currencies that are offered.
const MINOR: f64 = 100.0;

/// What the usual cold soak takes of the dry matter.
fn washed_out() -> Ends<f64> {
    dry_loss(Recipe::usual(Water::TapWinter).soak()).part
}

#[cfg(test)]
mod tests {
    use super::*;
    use tussock_core::forage::Way;

    fn lot() -> About {
        About {
            name: "Lane field".into(),
            dry: DryFraction::percent(88.0).unwrap(),
            believed: Belief::percent(11.0, 3.0),
            limit: ShareOfDm::percent(10.0),
            soaking_is_enough: true,
            price: None,
        }
    }

    fn typed(texts: [&str; 7]) -> Typed {
        Typed {
            texts: texts.map(str::to_owned),
            currency: Currency::from_code("GBP").ok(),
            instead: Otherwise::Saved,
        }
    }

    #[test]
    fn an_answer_needs_four_fields_and_a_currency() {
        let full = typed(["1200", "6", "15", "45", "180", "", "10"]);
        let worth = full.answer(&lot()).worth.unwrap().unwrap();
        assert_eq!(worth.cheapest, Way::Test);
        assert_eq!(worth.buying, None);
        for needed in Asked::ALL.iter().filter(|asked| asked.is_needed()) {
            let mut less = full.clone();
            let place = Asked::ALL.iter().position(|asked| asked == needed).unwrap();
            less.texts[place].clear();
            assert_eq!(less.answer(&lot()).worth, None, "{needed:?}");
        }
        let mut less = full;
        less.currency = None;
        assert_eq!(less.answer(&lot()).worth, None);
    }

    #[test]
    fn what_cannot_be_read_is_said_at_its_field() {
        let answered = typed(["1200", "six", "15", "45", "", "", ""]).answer(&lot());
        assert_eq!(answered.worth, None);
        assert_eq!(answered.wrong.len(), 1);
        assert_eq!(answered.wrong[0].0, Asked::ADay);
    }

    #[test]
    fn no_value_of_time_is_an_answer() {
        let worth = typed(["1200", "6", "15", "45", "180", "300", ""])
            .answer(&lot())
            .worth
            .unwrap()
            .unwrap();
        assert!(worth.soaking.hours > 0.0);
        assert!(worth.pays_from.is_some());
    }
}
