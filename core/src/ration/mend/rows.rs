//! The limits as rows, hay and foods as columns.

mod content;
mod feeds;
mod nutrients;

use super::limit::Limit;
use super::published::{MISS_CEILING, MISS_NEVER};
use super::wanted::{Aim, FoodChoice, ForageChoice, Wanted};
use crate::ration::Food;
use crate::ration::solve::{Column, Problem, Row, SolveError};
use crate::units::AsFed;
use content::End;

/// What is asked beyond what must be.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Asks {
    /// Hay that nobody tested is taken with care; else at the mean of its class.
    pub care: bool,
    /// Zinc to copper as usual.
    pub zinc_to_copper: bool,
}

impl Asks {
    /// What is tried, one after another.
    pub(super) const IN_ORDER: [Self; 4] = [
        Self::of(true, true),
        Self::of(true, false),
        Self::of(false, true),
        Self::LEAST,
    ];
    /// Only what must be.
    pub(super) const LEAST: Self = Self::of(false, false);

    const fn of(care: bool, zinc_to_copper: bool) -> Self {
        Self {
            care,
            zinc_to_copper,
        }
    }

    const fn low(self) -> End {
        if self.care { End::Low } else { End::Mean }
    }

    const fn high(self) -> End {
        if self.care { End::High } else { End::Mean }
    }
}

/// One row: what a kilogram as fed of each column brings, between two limits.
pub(super) struct LimitRow {
    pub limit: Limit,
    pub terms: Vec<f64>,
    pub lower: f64,
    pub upper: f64,
}

/// A mend as columns and rows. Columns are the forages, then the foods, in kilograms as fed.
pub(super) struct Rows<'a> {
    pub wanted: &'a Wanted<'a>,
    pub forages: &'a [ForageChoice<'a>],
    pub foods: &'a [FoodChoice<'a>],
    pub asks: Asks,
    pub limits: Vec<LimitRow>,
}

impl<'a> Rows<'a> {
    pub(super) fn new(
        wanted: &'a Wanted<'a>,
        forages: &'a [ForageChoice<'a>],
        foods: &'a [FoodChoice<'a>],
        asks: Asks,
    ) -> Self {
        let mut rows = Self {
            wanted,
            forages,
            foods,
            asks,
            limits: Vec::new(),
        };
        rows.amounts();
        rows.needs();
        rows.ceilings();
        rows.ratios();
        rows.forage_kinds();
        rows.buckets();
        rows.sugar();
        rows
    }

    /// A row by what a kilogram as fed of each forage and of each food brings.
    fn row(
        &mut self,
        limit: Limit,
        [lower, upper]: [f64; 2],
        forage: impl Fn(&ForageChoice<'_>) -> f64,
        food: impl Fn(&Food) -> f64,
    ) {
        let terms = self
            .forages
            .iter()
            .map(forage)
            .chain(self.foods.iter().map(|choice| food(choice.food)))
            .collect();
        self.limits.push(LimitRow {
            limit,
            terms,
            lower,
            upper,
        });
    }

    /// What a kilogram of a food costs, in what is best: minor units, or kilograms.
    fn cost_of_food(&self, food: &FoodChoice<'_>) -> f64 {
        match self.wanted.aim {
            Aim::Cheapest => food.price.unwrap_or(0.0),
            Aim::FewestFoods | Aim::Lightest => 1.0,
        }
    }

    /// Whether a food may be used: on offer, and with a price where cost decides. What a person set stays.
    pub(super) fn usable(&self, choice: &FoodChoice<'_>) -> bool {
        let least = choice.between[0];
        let set = AsFed::ZERO < least;
        let priced = self.wanted.aim != Aim::Cheapest || choice.price.is_some();
        set || (choice.offered && priced && self.wanted.topping.offers(choice.food).is_ok())
    }

    pub(super) fn problem(&self) -> Result<Problem, SolveError> {
        let forages = self.forages.iter().enumerate().map(|(at, forage)| {
            let [least, most] = forage.between.map(AsFed::to_kg);
            // Hay costs what it costs where cost decides; where weight does, it is no weight to buy.
            let cost = match self.wanted.aim {
                Aim::Cheapest => forage.price.unwrap_or(0.0),
                Aim::FewestFoods | Aim::Lightest => 0.0,
            };
            Column::new(&format!("forage {at}"), cost).between(least, most)
        });
        let foods = self.foods.iter().enumerate().map(|(at, choice)| {
            let [least, most] = choice.between.map(AsFed::to_kg);
            let most = if self.usable(choice) { most } else { least };
            let mut column = Column::new(&format!("food {at}"), self.cost_of_food(choice))
                .between(least, most)
                .bought();
            column.scale = choice.step.to_kg() * 10.0;
            if choice.whole_steps && least < most {
                column = column.in_doses(choice.step.to_kg());
            }
            column
        });
        let rows = self
            .limits
            .iter()
            .enumerate()
            .map(|(at, row)| {
                let mut made = Row::new(
                    &format!("limit {at}"),
                    row.terms.clone(),
                    row.lower,
                    row.upper,
                );
                made.scale = self.scale(row);
                made
            })
            .collect();
        Problem::new(
            forages.chain(foods).collect(),
            rows,
            self.wanted.at_most_bought,
        )
    }

    /// What a change of this row's limit is measured by: its limit, or of a row that compares, what the hay of a day turns
    /// over in it.
    pub(super) fn size(&self, row: &LimitRow) -> f64 {
        let larger = [row.lower, row.upper]
            .into_iter()
            .filter(|limit| limit.is_finite())
            .fold(0.0, |larger: f64, limit| larger.max(limit.abs()));
        if larger > 0.0 {
            return larger;
        }
        let [_, most] = self.wanted.dry_matter;
        let turned = row
            .terms
            .iter()
            .take(self.forages.len())
            .fold(0.0, |larger: f64, term| larger.max(term.abs()))
            * most.to_kg();
        if turned > 0.0 { turned } else { 1.0 }
    }

    /// What a shortfall of this row is measured by: what must not be broken weighs more than a ceiling, a ceiling more than
    /// a need.
    fn scale(&self, row: &LimitRow) -> f64 {
        let part = match row.limit {
            Limit::Need(_) | Limit::Energy | Limit::ZincOverCopper | Limit::ZincNotFarOver => 1.0,
            Limit::Ceiling(_)
            | Limit::AddedSelenium
            | Limit::VitaminEByBody
            | Limit::CalciumOverPhosphorus
            | Limit::CalciumNotFarOver => *MISS_CEILING,
            Limit::DryMatter
            | Limit::Forage
            | Limit::PartOf(_)
            | Limit::Straw
            | Limit::StrawAtLeast
            | Limit::Lucerne
            | Limit::BucketSugar
            | Limit::BucketStarch
            | Limit::Sugar => *MISS_NEVER,
        };
        self.size(row) * part
    }
}
