//! The change slip: what goes out, comes in, gets more, less or stays the same from one ration to another.

#[cfg(test)]
mod tests;

use tussock_core::animal::LotId;
use tussock_core::forage::Fed;
use tussock_core::log::{DayRation, GivenFood, GivenForage};
use tussock_core::ration::Food;
use tussock_core::units::{AsFed, Cost, Currency, PricePerKg};

/// What is done with a line, in the order they stand on the slip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Change {
    /// It goes out.
    Out,
    /// It comes in.
    In,
    /// More of it.
    More,
    /// Less of it.
    Less,
    /// As much as before.
    Same,
}

impl Change {
    /// Every change, in the order of the slip.
    pub const ALL: [Self; 5] = [Self::Out, Self::In, Self::More, Self::Less, Self::Same];

    fn between(from: AsFed, to: AsFed, of: &Of) -> Self {
        let nothing = |mass: AsFed| mass.to_kg() < WEIGHED_KG;
        let step = match of {
            Of::Forage { .. } => HAY_WEIGHED_KG,
            Of::Food(_) => WEIGHED_KG,
        };
        if nothing(to) {
            Self::Out
        } else if nothing(from) {
            Self::In
        } else if step <= (to - from).to_kg() {
            Self::More
        } else if step <= (from - to).to_kg() {
            Self::Less
        } else {
            Self::Same
        }
    }
}

/// Under a gram nobody weighs anything.
const WEIGHED_KG: f64 = 0.001;
/// Hay is weighed in steps of a hanging scale: less than half of one is no change.
const HAY_WEIGHED_KG: f64 = 0.025;
/// The days of a month, for what it costs.
pub const MONTH_DAYS: f64 = 30.0;

/// What a line is about.
#[derive(Clone, Debug, PartialEq)]
pub enum Of {
    /// A forage.
    Forage {
        /// Its name.
        name: String,
        /// Whether it is soaked.
        fed: Fed,
    },
    /// A bought food.
    Food(
        /// Which.
        Box<Food>,
    ),
}

/// A line of the slip.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// What is done.
    pub change: Change,
    /// With what.
    pub of: Of,
    /// How much it was a day.
    pub from: AsFed,
    /// How much it is to be a day.
    pub to: AsFed,
    /// What it cost a day and what it will, in minor units; `None` when its price is not known.
    pub cost: Option<[Cost; 2]>,
}

/// What a day costs now and then.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Sum {
    /// Now, in minor units.
    pub now: f64,
    /// Then, in minor units.
    pub then: f64,
    /// Of which currency.
    pub currency: Currency,
}

impl Sum {
    /// The same over a month of 30 days.
    #[must_use]
    pub fn in_a_month(self) -> Self {
        Self {
            now: self.now * MONTH_DAYS,
            then: self.then * MONTH_DAYS,
            ..self
        }
    }
}

/// The slip.
#[derive(Clone, Debug, PartialEq)]
pub struct Slip {
    /// Its lines: out, in, more, less, same, hay before foods.
    pub lines: Vec<Line>,
    /// What a day costs; `None` when a price is not known or they are not of one currency.
    pub a_day: Option<Sum>,
    /// What the bought foods of a day cost, where the price of a hay is not known.
    pub bought_a_day: Option<Sum>,
}

impl Slip {
    /// Whether nothing changes.
    pub fn is_same(&self) -> bool {
        self.lines.iter().all(|line| line.change == Change::Same)
    }
}

/// The slip from one ration to another.
pub fn slip(now: &DayRation, proposed: &DayRation) -> Slip {
    let mut lines = hay(&now.forages, &proposed.forages);
    lines.extend(foods(&now.foods, &proposed.foods));
    lines.sort_by_key(|line| line.change);
    let a_day = now
        .cost()
        .zip(proposed.cost())
        .filter(|(now, then)| now.currency == then.currency)
        .map(|(now, then)| Sum {
            now: now.minor,
            then: then.minor,
            currency: now.currency,
        });
    let only_foods = |ration: &DayRation| DayRation {
        forages: Vec::new(),
        ..ration.clone()
    };
    let bought_a_day = match a_day {
        Some(_) => None,
        None => bought(&only_foods(now), &only_foods(proposed)),
    };
    Slip {
        lines,
        a_day,
        bought_a_day,
    }
}

/// What foods alone cost; none of them cost nothing.
fn bought(now: &DayRation, then: &DayRation) -> Option<Sum> {
    let currency = now.cost().or(then.cost())?.currency;
    let cost = |ration: &DayRation| match ration.cost() {
        _ if ration.foods.is_empty() => Some(0.0),
        Some(cost) => (cost.currency == currency).then_some(cost.minor),
        None => None,
    };
    Some(Sum {
        now: cost(now)?,
        then: cost(then)?,
        currency,
    })
}

fn line(of: Of, price: Option<PricePerKg>, from: AsFed, to: AsFed) -> Line {
    Line {
        change: Change::between(from, to, &of),
        of,
        from,
        to,
        cost: price.map(|price| [price.cost_of(from), price.cost_of(to)]),
    }
}

fn hay(now: &[GivenForage], then: &[GivenForage]) -> Vec<Line> {
    let key = |given: &GivenForage| -> (LotId, Fed) { (given.lot.clone(), given.fed) };
    all(now, then, key, |given| given.as_fed)
        .into_iter()
        .map(|(given, from, to)| {
            let of = Of::Forage {
                name: given.name.clone(),
                fed: given.fed,
            };
            line(of, given.price, from, to)
        })
        .collect()
}

fn foods(now: &[GivenFood], then: &[GivenFood]) -> Vec<Line> {
    let key = |given: &GivenFood| {
        let food = &given.of.food;
        // A typical profile has no id and no name.
        (food.id.clone(), food.name.clone(), food.profile)
    };
    all(now, then, key, |given| given.a_day)
        .into_iter()
        .map(|(given, from, to)| {
            let of = Of::Food(Box::new(given.of.food.clone()));
            line(of, given.of.price, from, to)
        })
        .collect()
}

/// Everything of either side, each once, with how much of it there is on both; what stands twice is added up.
fn all<'a, T, K: PartialEq>(
    now: &'a [T],
    then: &'a [T],
    key: impl Fn(&T) -> K,
    amount: impl Fn(&T) -> AsFed,
) -> Vec<(&'a T, AsFed, AsFed)> {
    let of = |side: &[T], wanted: &K| -> AsFed {
        side.iter()
            .filter(|one| key(one) == *wanted)
            .map(&amount)
            .sum()
    };
    let mut seen: Vec<K> = Vec::new();
    let mut found = Vec::new();
    for one in now.iter().chain(then) {
        let wanted = key(one);
        if seen.contains(&wanted) {
            continue;
        }
        let (from, to) = (of(now, &wanted), of(then, &wanted));
        // What is on neither side in earnest is no line.
        if WEIGHED_KG <= from.to_kg().max(to.to_kg()) {
            found.push((one, from, to));
        }
        seen.push(wanted);
    }
    found
}
