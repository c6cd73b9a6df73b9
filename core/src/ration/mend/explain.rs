//! What an answer says in the trade's terms.

use super::limit::Limit;
use super::published::DECIDES;
use super::rows::Rows;
use super::wanted::Aim;
use crate::ration::solve::{Mend, Shortfall, Side, Solution, Stands};
use crate::units::AsFed;

/// A limit that decides the ration.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Decides {
    /// Which.
    pub limit: Limit,
    /// Whether more of it is asked for than there would be, else less.
    pub at_least: bool,
    /// What one unit of the limit more (or, of a ceiling, less) costs a day: minor units where cost decides, else kilograms
    /// of bought food.
    pub price: f64,
}

/// A food that would be used if it were cheaper.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Pays {
    /// Its place among the foods.
    pub food: usize,
    /// It pays under this price of a kilogram, in minor units.
    pub under: f64,
}

/// A ration that keeps every limit.
#[derive(Clone, Debug, PartialEq)]
pub struct Mended {
    /// How much of each forage, as weighed out.
    pub forages: Vec<AsFed>,
    /// How much of each food.
    pub foods: Vec<AsFed>,
    /// What it costs a day in minor units; `None` when the price of something in it is not known.
    pub cost: Option<f64>,
    /// What decides it, what costs most first.
    pub decides: Vec<Decides>,
    /// Foods that would pay if they were cheaper, the nearest to it first; empty where cost does not decide.
    pub pays: Vec<Pays>,
    /// Foods on offer that were left out because nobody knows their price.
    pub without_price: Vec<usize>,
    /// Whether it holds with care for hay that nobody tested; else at the mean of its class, and a test would tell.
    pub with_care: bool,
    /// Whether zinc to copper is kept as usual; it is a wish.
    pub zinc_to_copper: bool,
}

/// A limit that is missed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Missed {
    /// Which.
    pub limit: Limit,
    /// Whether it is over it; else it is short of it.
    pub over: bool,
    /// By how much, in the limit's unit.
    pub by: f64,
}

/// A single change that would mend it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MendedBy {
    /// So much of a food that is not given, or more than was to be given.
    Food {
        /// Its place among the foods.
        food: usize,
        /// How much a day, at the least.
        to: AsFed,
    },
    /// Less of a food than was set.
    LessFood {
        /// Its place among the foods.
        food: usize,
        /// How much a day, at the most.
        to: AsFed,
    },
    /// More dry matter in all, in kilograms.
    DryMatter {
        /// To so much.
        to: f64,
    },
    /// More bought foods.
    MoreFoods {
        /// To so many.
        to: usize,
    },
}

/// What comes closest when nothing fits.
#[derive(Clone, Debug, PartialEq)]
pub struct Closest {
    /// How much of each forage.
    pub forages: Vec<AsFed>,
    /// How much of each food.
    pub foods: Vec<AsFed>,
    /// What it misses.
    pub missed: Vec<Missed>,
    /// Single changes that would mend it, the smallest first.
    pub mends: Vec<MendedBy>,
}

fn amounts(rows: &Rows<'_>, values: impl Iterator<Item = f64>) -> (Vec<AsFed>, Vec<AsFed>) {
    let mut forages: Vec<AsFed> = values.map(AsFed::kg).collect();
    let foods = forages.split_off(rows.forages.len().min(forages.len()));
    (forages, foods)
}

/// Whether any of it is given.
fn given(amount: AsFed) -> bool {
    AsFed::ZERO < amount
}

/// `priced` is the best ration before steps were made whole, whose prices say what decides; `whole` has the amounts.
pub(super) fn mended(rows: &Rows<'_>, priced: &Solution, whole: &Solution) -> Mended {
    let (forages, foods) = amounts(rows, whole.amounts.iter().map(|amount| amount.value));
    let of_forages = rows
        .forages
        .iter()
        .zip(&forages)
        .map(|(choice, fed)| (choice.price, *fed));
    let of_foods = rows
        .foods
        .iter()
        .zip(&foods)
        .map(|(choice, fed)| (choice.price, *fed));
    let cost = of_forages
        .chain(of_foods)
        .filter(|(_, fed)| given(*fed))
        .map(|(price, fed)| price.map(|price| price * fed.to_kg()))
        .sum();
    let without_price = rows
        .foods
        .iter()
        .enumerate()
        .filter(|(_, choice)| {
            choice.offered
                && !choice.is_locked()
                && choice.price.is_none()
                && rows.wanted.aim == Aim::Cheapest
                && rows.wanted.topping.offers(choice.food).is_ok()
        })
        .map(|(food, _)| food)
        .collect();
    Mended {
        cost,
        decides: decides(rows, priced),
        pays: pays(rows, priced, &foods),
        without_price,
        with_care: rows.asks.care,
        zinc_to_copper: rows
            .limits
            .iter()
            .any(|row| row.limit == Limit::ZincOverCopper),
        forages,
        foods,
    }
}

fn decides(rows: &Rows<'_>, priced: &Solution) -> Vec<Decides> {
    let least = *DECIDES * priced.cost.abs();
    let mut found: Vec<(f64, Decides)> = rows
        .limits
        .iter()
        .zip(&priced.sums)
        .filter(|(row, _)| !matches!(row.limit, Limit::DryMatter | Limit::PartOf(_)))
        .filter_map(|(row, sum)| {
            let at_least = match sum.stands {
                Stands::AtLower => true,
                Stands::AtUpper => false,
                Stands::Locked | Stands::Between => return None,
            };
            let price = sum.price.abs();
            let effect = price * rows.size(row);
            (effect > least).then_some((
                effect,
                Decides {
                    limit: row.limit,
                    at_least,
                    price,
                },
            ))
        })
        .collect();
    found.sort_by(|a, b| b.0.total_cmp(&a.0));
    found.into_iter().map(|(_, decides)| decides).collect()
}

fn pays(rows: &Rows<'_>, priced: &Solution, foods: &[AsFed]) -> Vec<Pays> {
    if rows.wanted.aim != Aim::Cheapest {
        return Vec::new();
    }
    let of_foods = priced.amounts.iter().skip(rows.forages.len());
    let mut found: Vec<(f64, Pays)> = rows
        .foods
        .iter()
        .zip(of_foods)
        .zip(foods)
        .enumerate()
        .filter(|(_, ((choice, _), fed))| {
            !given(**fed) && !choice.is_locked() && rows.usable(choice)
        })
        .filter_map(|(food, ((choice, amount), _))| {
            let price = choice.price?;
            let under = price - amount.price;
            (amount.price > 0.0 && under > 0.0)
                .then_some((amount.price / price, Pays { food, under }))
        })
        .collect();
    found.sort_by(|a, b| a.0.total_cmp(&b.0));
    found.into_iter().map(|(_, pays)| pays).collect()
}

pub(super) fn closest(rows: &Rows<'_>, shortfall: &Shortfall) -> Closest {
    let (forages, foods) = amounts(rows, shortfall.amounts.iter().copied());
    let missed = shortfall
        .missing
        .iter()
        .filter_map(|missing| {
            let row = rows.limits.get(missing.row)?;
            Some(Missed {
                limit: row.limit,
                over: missing.side == Side::Upper,
                by: missing.by,
            })
        })
        .collect();
    Closest {
        forages,
        foods,
        missed,
        mends: shortfall
            .mends
            .iter()
            .filter_map(|mended| mended_by(rows, mended.mend, mended.to))
            .collect(),
    }
}

/// A change that a person can make: of the limits only the dry matter, and a food no more than is usual of it and none
/// that this animal is not offered.
fn mended_by(rows: &Rows<'_>, mend: Mend, to: f64) -> Option<MendedBy> {
    let first_food = rows.forages.len();
    match mend {
        Mend::Column { column, side } => {
            let food = column.checked_sub(first_food)?;
            let choice = rows.foods.get(food)?;
            let to = AsFed::kg(to);
            match side {
                Side::Lower => Some(MendedBy::LessFood { food, to }),
                Side::Upper => {
                    let fits = rows.wanted.topping.offers(choice.food).is_ok();
                    let usual = to <= choice.food.most_a_day(rows.wanted.against.weight.likely);
                    (fits && usual).then_some(MendedBy::Food { food, to })
                }
            }
        }
        Mend::Row { row, side } => {
            let limit = rows.limits.get(row)?.limit;
            (limit == Limit::DryMatter && side == Side::Upper).then_some(MendedBy::DryMatter { to })
        }
        Mend::Bought => {
            let foods = (0..=rows.foods.len()).find(|count| to <= *count as f64)?;
            Some(MendedBy::MoreFoods { to: foods })
        }
    }
}
