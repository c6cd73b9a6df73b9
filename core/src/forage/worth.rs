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
pub enum Instead {
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
    pub instead: Instead,
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
    let minutes = p::SOAK_WORK_FIELD.check(of.soak_minutes)?;
    for part in [
        of.washed_out.least,
        of.washed_out.likely,
        of.washed_out.most,
    ] {
        p::LOSS_FIELD.check(part)?;
    }
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
    let work = match of.hour {
        Some(hour) => price_field(hour)? * hours,
        None => 0.0,
    };
    let soak_minor = |lost: f64| work + extra(dry_a_day, lost).to_kg() * hay_dry.unwrap_or(0.0);
    let soak = ADay {
        minor: soak_minor(of.washed_out.likely),
        hours,
    };
    let buy = tested_dry.and_then(|tested| {
        let spared = match of.instead {
            Instead::Saved => hay_dry?,
            Instead::LeftOver => 0.0,
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
mod tests {
    use super::*;

    fn euro(minor: i64) -> Money {
        Money {
            minor,
            currency: Currency::from_code("EUR").unwrap(),
        }
    }

    fn asked() -> WorthFor {
        let dry = DryFraction::percent(88.0).unwrap();
        WorthFor {
            batch: AsFed::kg(1200.0),
            a_day: AsFed::kg(6.0),
            dry,
            believed: Belief::percent(10.0, 3.0),
            limit: ShareOfDm::percent(10.0),
            test: euro(4_500),
            hay: Some(Price::Tonne(euro(18_000))),
            tested: Some(TestedPrice::Sold(Price::Tonne(euro(30_000)), dry)),
            instead: Instead::Saved,
            soak_minutes: 15.0,
            hour: Some(euro(1_200)),
            washed_out: Ends::new(0.03, 0.06, 0.09),
            soaking_is_enough: true,
        }
    }

    #[test]
    fn two_hundred_days_of_soaking_cost_more_than_a_test() {
        let worth = worth_of_test(&asked()).unwrap();
        assert!((worth.days - 200.0).abs() < 1e-9);
        // 15 min at 12.00 an hour, and 6 % of 5.28 kg of dry matter made good at 0.2045 a kg.
        let a_day = 300.0 + 5.28 * (0.06 / 0.94) * (18_000.0 / 880.0);
        assert!((worth.soaking.minor - 200.0 * a_day).abs() < 1e-6);
        assert!((worth.soaking.hours - 50.0).abs() < 1e-9);
        // 120.00 a tonne more.
        assert!((worth.buying.unwrap().minor - 200.0 * 72.0).abs() < 1e-6);
        assert_eq!(worth.branches[2].does, Doing::BuyTested);
    }

    #[test]
    fn at_the_break_even_the_test_costs_as_much_as_the_cheaper_way() {
        for tested in [asked().tested, None] {
            let mut of = asked();
            of.tested = tested;
            let from = worth_of_test(&of).unwrap().pays_from.unwrap();
            of.batch = from.hay;
            let at = worth_of_test(&of).unwrap();
            let other = at.buying.map_or(at.soaking.minor, |buying| {
                buying.minor.min(at.soaking.minor)
            });
            assert!((at.testing.minor - other).abs() < 1e-6);
            assert!(at.saves.abs() < 1e-6);
            assert!((at.days - from.days).abs() < 1e-9);
            of.batch = from.hay * 0.9;
            assert_ne!(worth_of_test(&of).unwrap().cheapest, Way::Test);
            of.batch = from.hay * 1.1;
            assert_eq!(worth_of_test(&of).unwrap().cheapest, Way::Test);
        }
    }

    #[test]
    fn a_test_never_pays_where_it_would_ask_for_hay_that_costs_more_than_it_saves() {
        let mut of = asked();
        of.hour = None;
        of.soaking_is_enough = false;
        of.believed = Belief::percent(16.0, 2.0);
        let worth = worth_of_test(&of).unwrap();
        assert_eq!(worth.pays_from, None);
        assert_eq!(worth.cheapest, Way::Soak);
        assert!(worth.saves < 0.0);
    }

    #[test]
    fn no_value_of_time_is_an_answer_and_the_hours_are_still_shown() {
        let mut of = asked();
        of.hour = None;
        let worth = worth_of_test(&of).unwrap();
        assert!(worth.soaking.minor < 200.0 * 10.0);
        assert!((worth.soaking.hours - 50.0).abs() < 1e-9);
        assert!(worth.notes.contains(&WorthNote::TimeHasNoPrice));
    }

    #[test]
    fn hay_over_the_limit_is_replaced_where_soaking_is_not_enough() {
        let mut of = asked();
        of.hour = None;
        assert_eq!(worth_of_test(&of).unwrap().branches[2].does, Doing::Soak);
        of.soaking_is_enough = false;
        let strict = worth_of_test(&of).unwrap();
        assert_eq!(strict.branches[2].does, Doing::BuyTested);
        assert!(strict.notes.contains(&WorthNote::SoakingSettlesNothing));
        of.tested = None;
        let worth = worth_of_test(&of).unwrap();
        assert_eq!(worth.branches[2].does, Doing::Soak);
        assert!(worth.notes.contains(&WorthNote::OverIsSoaked));
        assert_eq!(worth.buying, None);
    }

    #[test]
    fn prices_of_two_currencies_are_refused() {
        let mut of = asked();
        of.hour = Some(Money {
            minor: 1_000,
            currency: Currency::from_code("GBP").unwrap(),
        });
        assert!(matches!(
            worth_of_test(&of),
            Err(ForageError::Money(MoneyError::TwoCurrencies { .. }))
        ));
    }

    #[test]
    fn what_cannot_be_is_refused_with_its_field() {
        for change in [
            |of: &mut WorthFor| of.batch = AsFed::ZERO,
            |of: &mut WorthFor| of.a_day = AsFed::ZERO,
            |of: &mut WorthFor| of.soak_minutes = -1.0,
            |of: &mut WorthFor| of.washed_out = Ends::exactly(1.0),
            |of: &mut WorthFor| of.test.minor = -1,
        ] {
            let mut of = asked();
            change(&mut of);
            assert!(matches!(
                worth_of_test(&of),
                Err(ForageError::OutOfRange(_))
            ));
        }
    }
}
