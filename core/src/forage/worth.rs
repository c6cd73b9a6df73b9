//! Does a laboratory test pay? What testing, soaking without a test and buying tested hay are expected to cost.
//!
//! A test that comes out within the limit saves the soaking; one that leaves the hay not proven means soaking, or tested
//! hay where that is known to cost less; one that comes out over means tested hay, or soaking where that is enough. Soaking is never a pass: hay that was over stays
//! not proven until the soaked hay is tested, so for an animal for which that is not enough hay over its limit is
//! replaced as soon as somebody can say what tested hay costs.

use super::chance::Belief;
use super::cost::Price;
use super::error::ForageError;
use super::published as p;
use super::sampling::{TestOutlook, test_outlook};
use crate::limits::Ends;
use crate::sources::Provenance;
use crate::units::{AsFed, Currency, DryFraction, DryMatter, Money, MoneyError, ShareOfDm};

/// A price of hay that a laboratory has tested.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum TestedPrice {
    /// As it is sold, with its dry matter.
    Sold(Price, DryFraction),
    /// For a kilogram of dry matter.
    KgDry(Money),
}

/// What becomes of this hay when tested hay is bought instead.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Otherwise {
    /// It is not bought, is sold, or others eat it: its price is saved.
    Saved,
    /// It is paid for and nobody eats it.
    LeftOver,
}

/// What the question is asked with. Nothing here is guessed: what nobody knows is `None`.
#[derive(Clone, Debug, PartialEq)]
pub struct WorthFor {
    /// How much there is of it, as fed.
    pub batch: AsFed,
    /// How much of it is fed a day, weighed dry, as fed.
    pub a_day: AsFed,
    /// Its dry matter.
    pub dry: DryFraction,
    /// What is believed of its sugar and starch before the test.
    pub believed: Belief,
    /// The limit it is held against.
    pub limit: ShareOfDm,
    /// What the test costs, sampling and post with it.
    pub test: Money,
    /// What more of this hay costs; `None` when not known, and then what soaking washes out has no price.
    pub hay: Option<Price>,
    /// What tested hay costs; `None` when there is none to be had or nobody knows.
    pub tested: Option<TestedPrice>,
    /// What becomes of this hay then.
    pub instead: Otherwise,
    /// Minutes of work a day for soaking.
    pub soak_minutes: f64,
    /// What an hour of that work is worth to the person; `None` when it is not to be counted.
    pub hour: Option<Money>,
    /// Dry matter that soaking takes, as parts.
    pub washed_out: Ends<f64>,
    /// Whether soaked hay that is not proven is enough for who eats it. It is not where doubt counts against.
    pub soaking_is_enough: bool,
}

/// What is done with the hay.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Doing {
    /// Fed as it comes.
    FeedAsItComes,
    /// Soaked; it remains not proven.
    Soak,
    /// Replaced by tested hay.
    BuyTested,
}

/// A way to go.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Way {
    /// Test, and act on what it says.
    Test,
    /// Soak without a test.
    Soak,
    /// Buy tested hay instead.
    BuyTested,
}

/// What a way costs until the batch would be eaten.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Cost {
    /// In minor units, as expected.
    pub minor: f64,
    /// Hours of work, as expected, whether they have a price or not.
    pub hours: f64,
}

/// What follows from one verdict of the test.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Branch {
    /// The chance of that verdict.
    pub chance: f64,
    /// What is done then.
    pub does: Doing,
    /// What that costs, the test not counted.
    pub cost: Cost,
}

/// What should be known beside the answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum WorthNote {
    /// Soaking does not settle it for who eats it: only a test of the soaked hay, or tested hay, can.
    SoakingSettlesNothing,
    /// Hay over the limit is soaked although that settles nothing, since nobody knows what tested hay costs.
    OverIsSoaked,
    /// The work is counted in hours and not in money.
    TimeHasNoPrice,
    /// What is washed out has no price, so soaking costs more than is shown.
    WashedOutHasNoPrice,
    /// The price of tested hay is not known, so buying it is not compared.
    NoTestedPrice,
}

/// From how much hay on a test pays.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct BreakEven {
    /// Days of feeding.
    pub days: f64,
    /// The hay that is eaten in them, as fed.
    pub hay: AsFed,
}

/// The answer.
#[derive(Clone, Debug, PartialEq)]
pub struct Worth {
    /// How many days the batch lasts as it comes.
    pub days: f64,
    /// The currency of every amount.
    pub currency: Currency,
    /// What the test is likely to say.
    pub outlook: TestOutlook,
    /// Within, not proven, over.
    pub branches: [Branch; 3],
    /// Testing and acting on the verdict; the test itself is in it.
    pub testing: Cost,
    /// Soaking without a test.
    pub soaking: Cost,
    /// The ends of that in money: hays lose less or more.
    pub soaking_ends: Ends<f64>,
    /// Buying tested hay; `None` when its price is not known.
    pub buying: Option<Cost>,
    /// The way that costs least. Where two cost the same, the test.
    pub cheapest: Way,
    /// What testing saves against the cheaper of the other two, in minor units; negative when it costs more.
    pub saves: f64,
    /// From how much hay on testing costs least; `None` when it never does.
    pub pays_from: Option<BreakEven>,
    /// Beside the answer.
    pub notes: Vec<WorthNote>,
    /// What it rests on.
    pub from: Provenance,
}

/// A cost a day.
#[derive(Clone, Copy)]
struct ADay {
    minor: f64,
    hours: f64,
}

impl ADay {
    const NOTHING: Self = Self {
        minor: 0.0,
        hours: 0.0,
    };

    fn over(self, days: f64) -> Cost {
        Cost {
            minor: self.minor * days,
            hours: self.hours * days,
        }
    }
}

/// What testing, soaking and buying cost, and from how much hay on a test pays.
///
/// All costs but the test grow with the days, so the break-even is the price of the test over what a day saves. The
/// chances are those of [`test_outlook`]. Ours; the arithmetic is that of an expected value.
///
/// # Errors
/// A value outside its range, and prices of more than one currency.
pub fn worth_of_test(of: &WorthFor) -> Result<Worth, ForageError> {
    let batch = p::BATCH_FIELD.check(of.batch.to_kg())?;
    let a_day = p::A_DAY_FIELD.check(of.a_day.to_kg())?;
    for part in [
        of.washed_out.least,
        of.washed_out.likely,
        of.washed_out.most,
    ] {
        p::LOSS_FIELD.check(part)?;
    }
    let minutes = p::SOAK_WORK_FIELD.check(of.soak_minutes)?;
    one_currency(of)?;
    let test = price_field(of.test)?;
    let days = batch / a_day;
    let dry_a_day = AsFed::kg(a_day).dry(of.dry);
    let hay_dry = of
        .hay
        .map(|price| minor_per_dry(price, of.dry))
        .transpose()?;
    let tested_dry = match of.tested {
        Some(TestedPrice::Sold(price, dry)) => Some(minor_per_dry(price, dry)?),
        Some(TestedPrice::KgDry(money)) => Some(price_field(money)?),
        None => None,
    };
    // numeric: minutes in an hour
    let hours = minutes / 60.0;
    let work = work(of, hours)?;
    let soak_minor = |lost: f64| work + extra(dry_a_day, lost).to_kg() * hay_dry.unwrap_or(0.0);
    let soak = ADay {
        minor: soak_minor(of.washed_out.likely),
        hours,
    };
    let buy = tested_dry.and_then(|tested| {
        let spared = match of.instead {
            Otherwise::Saved => hay_dry?,
            Otherwise::LeftOver => 0.0,
        };
        Some(ADay {
            minor: (tested - spared) * dry_a_day.to_kg(),
            hours: 0.0,
        })
    });
    let cheaper = match buy {
        Some(buy) if buy.minor < soak.minor => (Doing::BuyTested, buy),
        _ => (Doing::Soak, soak),
    };
    let over = match buy {
        Some(buy) if !of.soaking_is_enough => (Doing::BuyTested, buy),
        _ => cheaper,
    };
    let outlook = test_outlook(of.believed, of.limit);
    let branch = |chance, (does, cost): (Doing, ADay)| Branch {
        chance,
        does,
        cost: cost.over(days),
    };
    let tested = ADay {
        minor: outlook.not_proven * cheaper.1.minor + outlook.over * over.1.minor,
        hours: outlook.not_proven * cheaper.1.hours + outlook.over * over.1.hours,
    };
    let testing = Cost {
        minor: test + tested.over(days).minor,
        hours: tested.over(days).hours,
    };
    let other = cheaper.1.minor;
    let saves = other * days - testing.minor;
    let saved_a_day = other - tested.minor;
    Ok(Worth {
        days,
        currency: of.test.currency,
        outlook,
        branches: [
            branch(outlook.within, (Doing::FeedAsItComes, ADay::NOTHING)),
            branch(outlook.not_proven, cheaper),
            branch(outlook.over, over),
        ],
        testing,
        soaking: soak.over(days),
        soaking_ends: of.washed_out.map(|lost| soak_minor(lost) * days),
        buying: buy.map(|buy| buy.over(days)),
        cheapest: match cheaper.0 {
            _ if saves >= 0.0 => Way::Test,
            Doing::BuyTested => Way::BuyTested,
            Doing::Soak | Doing::FeedAsItComes => Way::Soak,
        },
        saves,
        pays_from: (saved_a_day > 0.0).then(|| {
            let days = test / saved_a_day;
            BreakEven {
                days,
                hay: AsFed::kg(days * a_day),
            }
        }),
        notes: notes(of, over.0, buy.is_some(), hay_dry.is_some()),
        from: Provenance::new()
            .constant(&p::TEST_SPREAD)
            .constant(&p::SURE_Z)
            .constant(&p::CHANCE_WITHIN)
            .constant(&p::CHANCE_OVER),
    })
}

/// The dry matter that must be fed more so that as much is left after soaking.
fn extra(dry: DryMatter, lost: f64) -> DryMatter {
    dry * (lost / (1.0 - lost))
}

/// What the work of a day is worth; nothing where the person does not count it.
fn work(of: &WorthFor, hours: f64) -> Result<f64, ForageError> {
    Ok(match of.hour {
        Some(hour) => price_field(hour)? * hours,
        None => 0.0,
    })
}

fn price_field(money: Money) -> Result<f64, ForageError> {
    Ok(p::PRICE_FIELD.check(money.minor as f64)?)
}

/// Minor units for a kilogram of dry matter.
fn minor_per_dry(price: Price, dry: DryFraction) -> Result<f64, ForageError> {
    let (paid, weight) = match price {
        Price::Tonne(money) => (money, AsFed::kg(1000.0)),
        Price::Bale { price, weight } => (price, weight),
    };
    let weight = p::BATCH_FIELD.check(weight.to_kg())?;
    Ok(price_field(paid)? / AsFed::kg(weight).dry(dry).to_kg())
}

/// Nothing is converted: every price must be of the currency of the test.
fn one_currency(of: &WorthFor) -> Result<(), ForageError> {
    let paid = |price| match price {
        Price::Tonne(money) | Price::Bale { price: money, .. } => money,
    };
    let tested = of.tested.map(|tested| match tested {
        TestedPrice::Sold(price, _) => paid(price),
        TestedPrice::KgDry(money) => money,
    });
    let others = [of.hay.map(paid), tested, of.hour];
    match others
        .into_iter()
        .flatten()
        .find(|money| money.currency != of.test.currency)
    {
        Some(other) => Err(MoneyError::TwoCurrencies {
            first: of.test.currency,
            second: other.currency,
        }
        .into()),
        None => Ok(()),
    }
}

fn notes(of: &WorthFor, over: Doing, buys: bool, priced: bool) -> Vec<WorthNote> {
    let all = [
        (!of.soaking_is_enough, WorthNote::SoakingSettlesNothing),
        (
            !of.soaking_is_enough && over == Doing::Soak,
            WorthNote::OverIsSoaked,
        ),
        (of.hour.is_none(), WorthNote::TimeHasNoPrice),
        (!priced, WorthNote::WashedOutHasNoPrice),
        (!buys, WorthNote::NoTestedPrice),
    ];
    all.into_iter()
        .filter_map(|(holds, note)| holds.then_some(note))
        .collect()
}

#[cfg(test)]
mod tests;
