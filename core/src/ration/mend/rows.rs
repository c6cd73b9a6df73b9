//! The limits as rows, hay and foods as columns.

use super::limit::Limit;
use super::published::{ASKED_WHOLE, HAY_CARE, MISS_CEILING, MISS_NEVER, UNDER};
use super::wanted::{Aim, FoodChoice, ForageChoice, Wanted};
use crate::forage::{ForageClass, ForageKind, judge};
use crate::limits::published::{
    CALCIUM_TO_PHOSPHORUS_LEAST, CALCIUM_TO_PHOSPHORUS_MOST, LUCERNE_MOST, MOST_ADDED_SELENIUM,
    ZINC_TO_COPPER_LEAST, ZINC_TO_COPPER_MOST,
};
use crate::limits::{
    Amount, MealLimit, Nutrient, UpperContent, straw_cap, sugar_limits, upper_limit, vitamin_e_most,
};
use crate::ration::published::HAY_VITAMIN_E;
use crate::ration::solve::{Column, Problem, Row, SolveError};
use crate::ration::{Food, FoodClass};
use crate::units::{AsFed, DryMatter, ShareOfDm};

/// Which end of what is believed.
#[derive(Clone, Copy, PartialEq)]
enum End {
    Low,
    Mean,
    High,
}

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
        Self::asks(true, true),
        Self::asks(true, false),
        Self::asks(false, true),
        Self::LEAST,
    ];
    /// Only what must be.
    pub(super) const LEAST: Self = Self::asks(false, false);

    const fn asks(care: bool, zinc_to_copper: bool) -> Self {
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
    pub rows: Vec<LimitRow>,
}

/// A number of an amount in the nutrient's own unit.
pub(super) fn number(nutrient: Nutrient, amount: Amount) -> f64 {
    amount.times(nutrient.amount(1.0)).unwrap_or_default()
}

/// What a kilogram of a forage as fed holds of a nutrient, in its unit.
fn in_forage(forage: &ForageChoice<'_>, nutrient: Nutrient, end: End) -> Option<f64> {
    let dry = AsFed::kg(1.0).dry(forage.dry);
    if nutrient == Nutrient::VitaminE {
        return Some(HAY_VITAMIN_E.value * dry.to_kg());
    }
    let content = forage.supply.nutrient(nutrient)?;
    Some(number(
        nutrient,
        Amount::Mass(careful(content.value, content.spread, end).in_dry(dry)),
    ))
}

fn careful(value: ShareOfDm, spread: Option<ShareOfDm>, end: End) -> ShareOfDm {
    let spread = spread.unwrap_or(ShareOfDm::ZERO) * *HAY_CARE;
    match end {
        End::Mean => value,
        End::Low => (value - spread).max(ShareOfDm::ZERO),
        End::High => value + spread,
    }
}

/// What a kilogram of a food as fed holds of a nutrient, in its unit.
fn in_food(food: &Food, nutrient: Nutrient) -> Option<f64> {
    food.per_kg(nutrient).map(|amount| number(nutrient, amount))
}

/// One thing less so many times another. What rounding leaves of two that are equal is nothing.
fn less(of: Option<f64>, to: Option<f64>, times: f64) -> f64 {
    let (of, to) = (of.unwrap_or(0.0), times * to.unwrap_or(0.0));
    let left = of - to;
    if left.abs() <= f64::EPSILON * 10.0 * (of.abs() + to.abs()) {
        0.0
    } else {
        left
    }
}

/// A content of dry matter as a number of the nutrient's unit in a kilogram of dry matter.
fn in_dry(nutrient: Nutrient, content: UpperContent) -> f64 {
    number(nutrient, content.in_dry(DryMatter::kg(1.0)))
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
            rows: Vec::new(),
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
        self.rows.push(LimitRow {
            limit,
            terms,
            lower,
            upper,
        });
    }

    fn amounts(&mut self) {
        let [least, most] = self.wanted.dry_matter.map(DryMatter::to_kg);
        let dry = |forage: &ForageChoice<'_>| forage.dry.to_fraction();
        let of_food = |food: &Food| food.dry.to_fraction();
        self.row(Limit::DryMatter, [least, most], dry, of_food);
        let forage_least = self.wanted.forage_least.to_kg();
        let counts = |food: &Food| {
            if food.class.is_forage() {
                of_food(food)
            } else {
                0.0
            }
        };
        self.row(Limit::Forage, [forage_least, f64::INFINITY], dry, counts);
        let parts: Vec<(usize, f64)> = self
            .forages
            .iter()
            .enumerate()
            .filter_map(|(at, forage)| Some((at, forage.part?)))
            .collect();
        // The last part follows from the others.
        let free = if parts.len() == self.forages.len() {
            1
        } else {
            0
        };
        for (at, part) in parts.iter().copied().skip(free) {
            let terms = self
                .forages
                .iter()
                .enumerate()
                .map(|(other, forage)| {
                    let own = if other == at { 1.0 } else { 0.0 };
                    forage.dry.to_fraction() * (own - part)
                })
                .chain(self.foods.iter().map(|_| 0.0))
                .collect();
            self.rows.push(LimitRow {
                limit: Limit::PartOf(at),
                terms,
                lower: 0.0,
                upper: 0.0,
            });
        }
        if let Some(energy) = self.wanted.energy_least {
            self.row(
                Limit::Energy,
                [energy.to_mcal(), f64::INFINITY],
                |forage| {
                    let energy = forage.supply.energy.value;
                    energy.in_dry(AsFed::kg(1.0).dry(forage.dry)).to_mcal()
                },
                |food| {
                    food.energy_in(AsFed::kg(1.0))
                        .map_or(0.0, crate::units::Energy::to_mcal)
                },
            );
        }
    }

    /// Needs of which it is known what the hay brings, and of what hay often lacks ([`ASKED_WHOLE`]) the whole need where
    /// some food brings it. Iron is never short where hay is fed.
    fn needs(&mut self) {
        let low = self.asks.low();
        let needs = self.wanted.against.needs;
        for need in &needs.rows {
            let nutrient = need.nutrient;
            if nutrient == Nutrient::Iron {
                continue;
            }
            let hay_known = self
                .forages
                .iter()
                .all(|forage| in_forage(forage, nutrient, low).is_some());
            let asked_whole = ASKED_WHOLE.value.contains(&nutrient);
            let brought = self.foods.iter().any(|choice| {
                asked_whole && in_food(choice.food, nutrient).is_some_and(|content| content > 0.0)
            });
            if !(hay_known || brought) {
                continue;
            }
            let least = number(nutrient, need.amount);
            self.row(
                Limit::Need(nutrient),
                [least, f64::INFINITY],
                |forage| in_forage(forage, nutrient, low).unwrap_or(0.0),
                |food| in_food(food, nutrient).unwrap_or(0.0),
            );
        }
    }

    fn ceilings(&mut self) {
        let high = self.asks.high();
        for nutrient in Nutrient::ALL {
            let Some(limit) = upper_limit(nutrient) else {
                continue;
            };
            // Selenium is warned of before its limit.
            let most = in_dry(nutrient, limit.warn.unwrap_or(limit.most)) * (1.0 - *UNDER);
            let over = |content: f64, dry: f64| content - most * dry;
            // Of a hay that breaks it alone only the foods are asked, and these may not make it worse.
            let broken = self.forages.iter().any(|forage| {
                in_forage(forage, nutrient, high)
                    .is_some_and(|content| over(content, forage.dry.to_fraction()) > 0.0)
            });
            self.row(
                Limit::Ceiling(nutrient),
                [f64::NEG_INFINITY, 0.0],
                |forage| match in_forage(forage, nutrient, high) {
                    _ if broken => 0.0,
                    Some(content) => over(content, forage.dry.to_fraction()),
                    // Unknown: as the balance has it, on what is known.
                    None => -most * forage.dry.to_fraction(),
                },
                |food| {
                    over(
                        in_food(food, nutrient).unwrap_or(0.0),
                        food.dry.to_fraction(),
                    )
                },
            );
        }
        let selenium = in_dry(
            Nutrient::Selenium,
            UpperContent::Share(*MOST_ADDED_SELENIUM),
        );
        self.row(
            Limit::AddedSelenium,
            [f64::NEG_INFINITY, 0.0],
            |forage| -selenium * forage.dry.to_fraction(),
            |food| {
                let added = if food.class.is_fortified() {
                    in_food(food, Nutrient::Selenium).unwrap_or(0.0)
                } else {
                    0.0
                };
                added - selenium * food.dry.to_fraction()
            },
        );
        if let Ok(most) = vitamin_e_most(self.wanted.against.weight.least) {
            let most = number(Nutrient::VitaminE, Amount::Iu(most));
            self.row(
                Limit::VitaminEByBody,
                [f64::NEG_INFINITY, most * (1.0 - *UNDER)],
                |_| 0.0,
                |food| in_food(food, Nutrient::VitaminE).unwrap_or(0.0),
            );
        }
    }

    /// `of - times * to`, each at the end that leaves least room.
    fn ratio(&mut self, limit: Limit, [of, to]: [Nutrient; 2], times: f64, at_least: bool) {
        let (of_end, to_end, bounds) = if at_least {
            (self.asks.low(), self.asks.high(), [0.0, f64::INFINITY])
        } else {
            (End::Mean, End::Mean, [f64::NEG_INFINITY, 0.0])
        };
        self.row(
            limit,
            bounds,
            |forage| {
                less(
                    in_forage(forage, of, of_end),
                    in_forage(forage, to, to_end),
                    times,
                )
            },
            |food| less(in_food(food, of), in_food(food, to), times),
        );
    }

    fn ratios(&mut self) {
        let known = |nutrient: Nutrient| {
            self.forages
                .iter()
                .all(|forage| in_forage(forage, nutrient, End::Mean).is_some())
        };
        let minerals = known(Nutrient::Calcium) && known(Nutrient::Phosphorus);
        let traces = known(Nutrient::Zinc) && known(Nutrient::Copper);
        let calcium = [Nutrient::Calcium, Nutrient::Phosphorus];
        if minerals {
            self.ratio(
                Limit::CalciumOverPhosphorus,
                calcium,
                *CALCIUM_TO_PHOSPHORUS_LEAST,
                true,
            );
            self.ratio(
                Limit::CalciumNotFarOver,
                calcium,
                *CALCIUM_TO_PHOSPHORUS_MOST,
                false,
            );
        }
        if traces && self.asks.zinc_to_copper {
            let zinc = [Nutrient::Zinc, Nutrient::Copper];
            // At the mean of both: it is a wish, and the spread of a class would never grant it.
            self.mean_ratio(Limit::ZincOverCopper, zinc, *ZINC_TO_COPPER_LEAST);
            self.ratio(Limit::ZincNotFarOver, zinc, *ZINC_TO_COPPER_MOST, false);
        }
    }

    fn mean_ratio(&mut self, limit: Limit, [of, to]: [Nutrient; 2], times: f64) {
        self.row(
            limit,
            [0.0, f64::INFINITY],
            |forage| {
                less(
                    in_forage(forage, of, End::Mean),
                    in_forage(forage, to, End::Mean),
                    times,
                )
            },
            |food| less(in_food(food, of), in_food(food, to), times),
        );
    }

    fn forage_kinds(&mut self) {
        let against = &self.wanted.against;
        let cap = straw_cap(against.kind, against.teeth);
        let is_straw = |forage: &ForageChoice<'_>| forage.class.kind() == ForageKind::Straw;
        let part = |holds: bool, dry: f64, most: f64| {
            if holds {
                dry * (1.0 - most)
            } else {
                -dry * most
            }
        };
        let counted = |food: &Food, most: f64, holds: bool| {
            if food.class.is_forage() {
                part(holds, food.dry.to_fraction(), most)
            } else {
                0.0
            }
        };
        if self.forages.iter().any(is_straw) {
            let most = cap.most.to_fraction();
            self.row(
                Limit::Straw,
                [f64::NEG_INFINITY, 0.0],
                |forage| part(is_straw(forage), forage.dry.to_fraction(), most),
                |food| counted(food, most, false),
            );
            if let Some(least) = cap.least.map(crate::limits::ForagePart::to_fraction) {
                self.row(
                    Limit::StrawAtLeast,
                    [0.0, f64::INFINITY],
                    |forage| part(is_straw(forage), forage.dry.to_fraction(), least),
                    |food| counted(food, least, false),
                );
            }
        }
        let most = *LUCERNE_MOST;
        let all_lucerne = self
            .forages
            .iter()
            .all(|forage| forage.class == ForageClass::Lucerne);
        let has_lucerne = self
            .foods
            .iter()
            .any(|choice| choice.food.class == FoodClass::Legume)
            || self
                .forages
                .iter()
                .any(|forage| forage.class == ForageClass::Lucerne);
        // Where lucerne is the only hay there is nothing to keep it under.
        if has_lucerne && !all_lucerne {
            self.row(
                Limit::Lucerne,
                [f64::NEG_INFINITY, 0.0],
                |forage| {
                    let lucerne = forage.class == ForageClass::Lucerne;
                    part(lucerne, forage.dry.to_fraction(), most)
                },
                |food| counted(food, most, food.class == FoodClass::Legume),
            );
        }
    }

    /// All buckets together: the foods are shared over them. What nobody knows is counted in full.
    fn buckets(&mut self) {
        let feeds = f64::from(self.wanted.feeds);
        let whole = |food: &Food| food.dry.to_fraction() * 1000.0;
        let sugar_starch = |food: &Food| {
            food.sugar_starch_in(AsFed::kg(1.0))
                .map(crate::units::NutrientMass::to_g)
        };
        let starch = |food: &Food| {
            food.starch_in(AsFed::kg(1.0))
                .map(crate::units::NutrientMass::to_g)
        };
        match self.wanted.meal.clone() {
            MealLimit::SugarAndStarch { meal, .. } => self.row(
                Limit::BucketSugar,
                [f64::NEG_INFINITY, meal.to_g() * feeds],
                |_| 0.0,
                |food| sugar_starch(food).unwrap_or_else(|| whole(food)),
            ),
            MealLimit::Starch { meal, day, .. } => self.row(
                Limit::BucketStarch,
                [
                    f64::NEG_INFINITY,
                    (meal.to_g() * feeds).min(day.to_g()) * (1.0 - *UNDER),
                ],
                |_| 0.0,
                |food| {
                    starch(food)
                        .or_else(|| sugar_starch(food))
                        .unwrap_or_else(|| whole(food))
                },
            ),
        }
    }

    /// Sugar and starch of the whole day, where the hay alone is within the limit: foods may not take it over.
    fn sugar(&mut self) {
        let Some(limits) = sugar_limits(self.wanted.against.risk) else {
            return;
        };
        let most = limits.wsc_and_starch;
        let of_hay = |forage: &ForageChoice<'_>| {
            let belief = forage.sugar?.wsc_starch?;
            Some(careful(belief.mean, Some(belief.spread), End::High))
        };
        let within = self.forages.iter().all(|forage| {
            let judged = forage.sugar.map(|sugar| judge(sugar, &limits));
            judged.is_some_and(|judged| judged.verdict.is_within())
        });
        if !within {
            return;
        }
        let over =
            |share: ShareOfDm, dry: DryMatter| share.in_dry(dry).to_g() - most.in_dry(dry).to_g();
        self.row(
            Limit::Sugar,
            [f64::NEG_INFINITY, 0.0],
            |forage| {
                let dry = AsFed::kg(1.0).dry(forage.dry);
                over(of_hay(forage).unwrap_or(ShareOfDm::ZERO), dry)
            },
            |food| {
                let dry = AsFed::kg(1.0).dry(food.dry);
                let share = food
                    .sugar_starch
                    .map_or(ShareOfDm::fraction(1.0), |share| share.of_dry(food.dry));
                over(share, dry)
            },
        );
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
            .rows
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
