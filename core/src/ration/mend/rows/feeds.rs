//! Amounts, kinds of forage, buckets and the sugar of the day.

use super::super::limit::Limit;
use super::super::published::{SUGAR_CARE, UNDER};
use super::super::wanted::ForageChoice;
use super::{LimitRow, Rows};
use crate::forage::{ForageClass, ForageKind, judge};
use crate::limits::published::LUCERNE_MOST;
use crate::limits::{MealLimit, straw_cap, sugar_limits};
use crate::ration::{Food, FoodClass};
use crate::units::{AsFed, DryMatter, ShareOfDm};

impl Rows<'_> {
    pub(super) fn amounts(&mut self) {
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
        if let Some(hay) = self.wanted.hay.map(DryMatter::to_kg) {
            self.row(Limit::Forage, [hay, hay], dry, |_| 0.0);
        }
        let parts: Vec<(usize, f64)> = self
            .forages
            .iter()
            .enumerate()
            .filter_map(|(at, forage)| Some((at, forage.part?)))
            .collect();
        // The last part follows from the others.
        let free = usize::from(parts.len() == self.forages.len());
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
            self.limits.push(LimitRow {
                limit: Limit::PartOf(at),
                terms,
                lower: 0.0,
                upper: 0.0,
            });
        }
        let careful_energy = self.asks.care || self.wanted.hay.is_none();
        if let Some(energy) = self.wanted.energy_least {
            self.row(
                Limit::Energy,
                [energy.to_mcal(), f64::INFINITY],
                |forage| {
                    // A floor is kept by the end that leaves it least.
                    let energy = if careful_energy {
                        forage.supply.energy.low
                    } else {
                        forage.supply.energy.value
                    };
                    energy.in_dry(AsFed::kg(1.0).dry(forage.dry)).to_mcal()
                },
                |food| {
                    food.energy_in(AsFed::kg(1.0))
                        .map_or(0.0, crate::units::Energy::to_mcal)
                },
            );
        }
    }

    pub(super) fn forage_kinds(&mut self) {
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
        let settled = self.forages.iter().all(|forage| forage.part.is_some());
        let part_of = |wanted: &dyn Fn(&ForageChoice<'_>) -> bool| -> f64 {
            let found = self.forages.iter().filter(|forage| wanted(forage));
            found.filter_map(|forage| forage.part).sum()
        };
        let straw = part_of(&is_straw);
        // Parts that are settled and break a limit by themselves are the plan's to mend, not the foods'.
        let over_straw = settled && straw > cap.most.to_fraction();
        let under_straw = settled && cap.least.is_some_and(|least| straw < least.to_fraction());
        let over_lucerne =
            settled && part_of(&|forage| forage.class == ForageClass::Lucerne) > *LUCERNE_MOST;
        let has_straw = self.forages.iter().any(is_straw);
        if has_straw && !over_straw {
            let most = cap.most.to_fraction();
            self.row(
                Limit::Straw,
                [f64::NEG_INFINITY, 0.0],
                |forage| part(is_straw(forage), forage.dry.to_fraction(), most),
                |food| counted(food, most, false),
            );
        }
        let least = cap.least.filter(|_| has_straw && !under_straw);
        if let Some(least) = least.map(crate::limits::ForagePart::to_fraction) {
            self.row(
                Limit::StrawAtLeast,
                [0.0, f64::INFINITY],
                |forage| part(is_straw(forage), forage.dry.to_fraction(), least),
                |food| counted(food, least, false),
            );
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
        if has_lucerne && !all_lucerne && !over_lucerne {
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
    pub(super) fn buckets(&mut self) {
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
    pub(super) fn sugar(&mut self) {
        let Some(limits) = sugar_limits(self.wanted.against.risk) else {
            return;
        };
        let most = limits.wsc_and_starch;
        let of_hay = |forage: &ForageChoice<'_>| {
            let belief = forage.sugar?.wsc_starch?;
            Some(belief.mean + belief.spread * *SUGAR_CARE)
        };
        let within = self.forages.iter().all(|forage| {
            let judged = forage.sugar.map(|sugar| judge(sugar, &limits));
            let within = judged.is_some_and(|judged| judged.verdict.is_within());
            // A hay that passes by its other measure is held by the balance alone.
            within && of_hay(forage).is_some_and(|share| share <= most)
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
}
